# of a228c279, reviewed: false
installation-verdict-danger = Un contrôle de niveau danger n'est pas rempli : arrêtez ce qu'il nomme et remédiez-y avant toute autre chose.
# of 7397429a, reviewed: false
installation-verdict-doubtful = Un nombre du relevé ne peut pas être juste ; ce qui en découle n'est pas jugé avant qu'il soit corrigé.
# of b20f3559, reviewed: false
installation-verdict-faulty = La taille, l'alimentation ou le gaz est en défaut ; les constats disent que faire.
# of 355ef7e2, reviewed: false
installation-verdict-attention = Pas de défaut de taille, d'alimentation ni de gaz, mais un contrôle de niveau avertissement ou attention n'est pas rempli.
# of 69549c4b, reviewed: false
installation-verdict-unknown = Rien de ce qui a été indiqué ne fait échouer un contrôle, mais tout n'a pas été indiqué : ce n'est pas un certificat de bon état.
# of 6360cabb, reviewed: false
installation-verdict-sound = Tous les contrôles ont eu leur réponse et aucun de niveau attention ou plus grave n'a échoué.
# of 597bdb35, reviewed: false
installation-substrate = Ce qui est donné n'a pas été indiqué : ce que donne l'animal.
# of 721ae5e0, reviewed: false
installation-housing = L'endroit où se tiennent les animaux n'a pas été indiqué.
