# of 88c565d0, reviewed: false
rotation-first-charge = Remplissez-le et fermez-le. Laissez sortir le premier gaz à l'air libre, sans le brûler, et tenez toute flamme à l'écart.
# of 1a4b614e, reviewed: false
rotation-recharge = Remplissez-le de nouveau une fois vide, et fermez-le. Ne l'ouvrez que sans pression et toutes flammes éteintes, aérez-le, videz-le de l'extérieur et n'y entrez jamais. Laissez sortir le premier gaz à l'air libre, sans le brûler.
# of 131be986, reviewed: false
rotation-emptying = Ne l'ouvrez que sans pression et toutes flammes éteintes, aérez-le, videz-le de l'extérieur et n'y entrez jamais.
# of b8bc281f, reviewed: false
rotation-first-day-unknown = Personne n'a dit quand a lieu le premier remplissage ; les saisons sont comptées à partir du Nouvel An.
