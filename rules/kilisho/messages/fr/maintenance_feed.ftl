# of 521201d4, reviewed: false
assumed-feed = Rien ne dit combien on alimente : c'est ce qui maintient le temps de rétention de calcul.
# of b2a39951, reviewed: false
urine = Selon le métier, l'urine augmente le gaz. Le modèle ne compte aucun gaz de l'urine elle-même : elle économise l'eau, apporte de l'azote et tamponne l'acidité, et aide le plus là où l'alimentation manque d'azote ; trop d'urine freine les microbes.
# of 4d6eb8cb, reviewed: false
between-feedings = Réserve qui égalise le gaz entre deux alimentations ; ce que demandent les heures d'usage vient en plus, voir le dimensionnement.
# of e61ed34b, reviewed: false
trade-gas = Le gaz par tête selon le métier vaut pour un digesteur chaud, un fumier abondant et une longue rétention ; ici le substrat est à { $temperature } et reste { $retention }.
# of 8b7adcfd, reviewed: false
trade-gas-inside = Il est dans la plage du modèle.
# of 228421c7, reviewed: false
trade-gas-outside = Il est hors de la plage du modèle : prévoyez avec le chiffre du modèle.
# of c91c43d0, reviewed: false
operation-batch-structure = Ce type de digesteur se charge une fois et se laisse ; il n'est pas fait pour être alimenté régulièrement.
# of 1c8ef87f, reviewed: false
operation-batch-like = Avec { $every } entre les alimentations, c'est une alimentation par lots : attendez-vous à du gaz par vagues.
# of a9ca9cf7, reviewed: false
operation-irregular = Plus de { $longest } entre les alimentations, ce n'est plus une alimentation régulière ; le gaz montera et baissera.
# of d13160a3, reviewed: false
operation-regular = Alimentation régulière : chaque fois la même quantité.
# of 0087223a, reviewed: false
storing-fresh = Donnez-le frais.
# of 1cff4514, reviewed: false
storing-covered = Gardez le fumier à l'ombre et couvert jusqu'à l'alimentation, le plus vieux d'abord ; alimentez chaque fois avec la même quantité.
# of 64339916, reviewed: false
catching-up = Ne donnez jamais d'un coup ce qui a été manqué : au plus { $extra } de plus que d'habitude ; faites une pause si le gaz baisse ou si le substrat s'acidifie.
# of 1cc475da, reviewed: false
clean-feed = N'alimentez qu'avec du fumier propre : ôtez la paille, les restes, les pierres et le plastique, et ramassez-le sur un sol dur.
# of 7cad3d25, reviewed: false
clean-mixing = Mélangez jusqu'à ce qu'il n'y ait plus de grumeaux, laissez reposer un quart d'heure pour que le sable se dépose, puis laissez entrer le mélange et laissez le sable derrière.
# of 163eebbb, reviewed: false
clean-tank = Ôtez le sable de la fosse de mélange une fois par semaine.
# of 174ae438, reviewed: false
clean-covers = Remettez les couvercles de l'entrée et de la sortie après chaque alimentation.
# of b71c10ad, reviewed: false
upkeep-feed = Alimenter : mélanger, laisser déposer le sable, faire entrer, couvrir.
# of 6182c8c1, reviewed: false
upkeep-sand = Ôtez le sable de la fosse de mélange ; purgez l'eau de condensation.
# of a74541a7, reviewed: false
upkeep-soap = Contrôlez les joints, les vannes et les appareils à l'eau savonneuse.
# of 2cc82d88, reviewed: false
upkeep-desludge = La boue peut avoir rempli sa part du digesteur : faites-la retirer par une équipe formée. Personne n'entre.
