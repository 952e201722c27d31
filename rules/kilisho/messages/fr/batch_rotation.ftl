# of 88c565d0, reviewed: false
rotation-first-charge = Remplissez-le et fermez-le. Laissez sortir le premier gaz à l'air libre, sans le brûler, et tenez toute flamme à l'écart.
# of 38618325, reviewed: false
rotation-recharge = Remplissez-le de nouveau et fermez-le ; il a été vidé dans les jours depuis emptying_from. Ne l'ouvrez que sans pression et toutes flammes éteintes, aérez-le, videz-le de l'extérieur et n'y entrez jamais. Laissez sortir le premier gaz à l'air libre, sans le brûler.
# of b8bc281f, reviewed: false
rotation-first-day-unknown = Personne n'a dit quand a lieu le premier remplissage ; les saisons sont comptées à partir du Nouvel An.
