# of 1bb7c8b1, reviewed: false
plan-digester-working = le digesteur est déjà en marche
# of f1ba20eb, reviewed: false
plan-nothing-to-charge = ni troupeau ni alimentation n'est indiqué
# of c22c0026, reviewed: false
plan-no-day-of-charge = il faut un premier remplissage avec le jour où le digesteur est prêt
# of 632dac75, reviewed: false
plan-no-use-stated = rien ne dit à quoi sert le gaz
# of 005f34b9, reviewed: false
plan-no-crops = aucune culture n'est indiquée
# of 0a11c588, reviewed: false
plan-refused = { $faults }
# of 58e30a8b, reviewed: false
plan-charged-once = ce type de digesteur est rempli une fois puis laissé ; demandez batch-rotation pour son gaz et ses prochains remplissages
# of 41cddbb2, reviewed: false
plan-left-over = La ferme a { $mass } de plus à donner que ce digesteur n'en reçoit : cela reste pour le champ, ou pour un digesteur plus grand. Le donner aussi laisserait à chaque kilogramme moins de temps dans le digesteur.
