# of b41e65bc, reviewed: false
diagnosis-gas-below = Moins de gaz que n'en donne cette alimentation même dans le plus mauvais de ces digesteurs : cherchez d'abord une fuite, puis l'acidité, le froid, la croûte et la boue, et demandez-vous si l'alimentation est vraiment celle indiquée.
# of 58cfb554, reviewed: false
diagnosis-gas-inside = Le gaz est dans les limites de ce que donne cette alimentation dans ce digesteur : il n'y a pas besoin d'un défaut pour l'expliquer. Pour plus de gaz, il faut une alimentation plus abondante ou meilleure, ou un digesteur plus chaud ; une baisse dans ces limites peut tout de même être le début d'un trouble.
# of 6a732288, reviewed: false
diagnosis-gas-above = Plus de gaz que n'en donne cette alimentation : contrôlez le relevé de l'alimentation et du gaz, et l'unité du compteur.
# of f8180bd6, reviewed: false
diagnosis-gas-not-measured = Aucun gaz mesuré n'a été indiqué : on ne peut donc pas dire s'il en vient moins qu'il ne faudrait. Relevez un compteur ou comptez les heures de brûleur.
# of a2bbf02d, reviewed: false
diagnosis-gas-unknown = Sans digesteur ni alimentation, on ne sait pas combien de gaz devrait venir : on ne peut donc pas dire s'il en vient moins qu'il ne faudrait.
# of 8dc13c4d, reviewed: false
diagnosis-statement = L'ordre des causes est un jugement d'après ce qui a été indiqué, non un constat : vérifiez avant d'ouvrir ou de reconstruire quoi que ce soit, et pensez que deux troubles peuvent venir ensemble. Ce que personne n'a indiqué est inconnu et ne parle ni pour ni contre. Les parts sont des fractions du poids des causes en faveur desquelles parle quelque chose d'indiqué, et d'autre chose encore. Personne n'entre dans un digesteur ni dans une fosse, et personne ne cherche le gaz avec une flamme.
# of 6606fc70, reviewed: false
diagnosis-not-met = Non rempli : { $title }
# of 065d470d, reviewed: false
diagnosis-act-at-once = Agissez tout de suite : { $names }.
# of 387b0c32, reviewed: false
diagnosis-likeliest = Ce qui a été indiqué parle surtout pour : { $name } ({ $share } du poids).
# of 95990c9f, reviewed: false
diagnosis-nothing-speaks = Rien de ce qui a été indiqué ne parle pour une cause du référentiel ; les essais ci-dessous sont ceux que demandent les causes courantes.
# of 73f61bd2, reviewed: false
diagnosis-facts = { $names }
