# of bcd45182, reviewed: false
animals-dairy_cow-name = Vache laitière, croisée ou améliorée
# of c32bf8a2, reviewed: false
animals-local_cow-name = Vache ou bœuf de race locale
# of 38faefb7, reviewed: false
animals-buffalo-name = Buffle, adulte
# of 6551fc6c, reviewed: false
animals-sow-name = Truie avec sa portée
# of 0e0d92eb, reviewed: false
animals-fattening_pig-name = Porc à l'engrais
# of ea14b811, reviewed: false
animals-layer_hen-name = Poule pondeuse
# of d484e7dc, reviewed: false
animals-broiler-name = Poulet de chair, moyenne sur sa vie
# of d1c9e8b5, reviewed: false
animals-broiler-description = Le chiffre journalier est la litière (fientes sèches avec litière) par volaille, puisque c'est ce que donne l'enclos.
# of bb8a7c9a, reviewed: false
animals-goat-name = Chèvre, adulte
# of 27151e55, reviewed: false
animals-sheep-name = Mouton, adulte
# of 34605f1b, reviewed: false
animals-horse-name = Cheval, petit, de travail
# of 1ebc55c5, reviewed: false
animals-donkey-name = Âne
# of e551d7a8, reviewed: false
animals-rabbit-name = Lapin, lapine reproductrice
# of 4353d8da, reviewed: false
animals-person-name = Personne utilisant une latrine qui débouche dans le digesteur
# of b5c70050, reviewed: false
animals-person-description = Le logement se lit comme l'usage de la latrine : stall pour les personnes à la maison toute la journée, night_pen pour les personnes absentes le jour, grazing pour aucune latrine reliée.
