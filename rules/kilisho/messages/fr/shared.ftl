# of 80b50150, reviewed: false
sentences-2 = { $first } { $second }
# of fefbd491, reviewed: false
assumed-structure = Le type de digesteur n'a pas été indiqué.
# of 3466065f, reviewed: false
assumed-substrate = Ni le troupeau ni l'alimentation n'ont été indiqués.
# of 5117f4c5, reviewed: false
assumed-housing = Le logement de { $animal } n'a pas été indiqué.
# of 47c4e6f1, reviewed: false
assumed-altitude = Personne n'a dit à quelle altitude se trouve le lieu ; plus il est haut, plus le gaz prend de place.
