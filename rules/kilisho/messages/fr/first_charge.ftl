# of 3050d5d9, reviewed: false
heap-gathered = { $days ->
    [one] { $name } : { $days } jour apporte { $brought }, dont il reste { $left } au remplissage.
   *[other] { $name } : { $days } jours apportent { $brought }, dont il reste { $left } au remplissage.
}
# of 2b8e4856, reviewed: false
heap-added = { $days ->
    [one] { $name } : il y avait déjà { $there }, et { $days } jour apporte { $brought }, dont il reste { $left } au remplissage.
   *[other] { $name } : il y avait déjà { $there }, et { $days } jours apportent { $brought }, dont il reste { $left } au remplissage.
}
# of 87e1e527, reviewed: false
heap-needed = Le remplissage demande { $needed }.
# of bf0dcb04, reviewed: false
heap-short = Il manque { $short }.
# of b1d64ed2, reviewed: false
stockpile-enough = Cela suffit.
# of c6db9583, reviewed: false
stockpile-never = La collecte propre seule ne suffit jamais.
# of 9e4febea, reviewed: false
stockpile-enough-on = { $days ->
    [one] La collecte propre suffit au bout de { $days } jour, le { $date }.
   *[other] La collecte propre suffit au bout de { $days } jours, le { $date }.
}
# of a8b111d4, reviewed: false
stockpile-too-old = { $days ->
    [one] La bouse la plus vieille a alors { $days } jour, au-delà des { $keeps } pendant lesquels elle se garde sous cette couverture.
   *[other] La bouse la plus vieille a alors { $days } jours, au-delà des { $keeps } pendant lesquels elle se garde sous cette couverture.
}
# of 87f10549, reviewed: false
assumed-cover = Personne n'a dit que le tas est couvert.
# of 91c3ef9f, reviewed: false
remedy-purchase = Prenez { $bought } chez d'autres.
# of d1631aa6, reviewed: false
remedy-never = La collecte propre ne suffit jamais.
# of 90c2e415, reviewed: false
remedy-wait = { $days ->
    [one] Attendez d'avoir { $days } jour de fumier propre ; sous cette couverture, le fumier se garde { $keeps }.
   *[other] Attendez d'avoir { $days } jours de fumier propre ; sous cette couverture, le fumier se garde { $keeps }.
}
# of 4c1ff892, reviewed: false
remedy-starter = Remplacez la part manquante par du digestat d'un digesteur en marche dont les animaux sont sains.
# of e53da417, reviewed: false
remedy-smaller-fill = Remplissez à { $share } du volume total et ajoutez le reste à mesure que le fumier arrive ; l'entrée et la sortie doivent rester sous le substrat (d'ordinaire à partir de { $least }).
# of 28f54969, reviewed: false
labour-hauling = { $mass } viennent d'ailleurs. Leur transport jusqu'à la ferme n'est pas compté dans ces heures : prévoyez pour cela une charrette ou un véhicule.
# of 18692639, reviewed: false
fill = Remplissez en une seule fois : mélangez avec de l'eau sans laisser de grumeaux, tenez à l'écart le sable, les pierres et la paille longue.
# of 863436c9, reviewed: false
fill-refused = Ne remplissez pas. Non rempli : { $names }.
# of bbc9073e, reviewed: false
fill-when-there = Ne remplissez que lorsque la part manquante est là.
# of 25815919, reviewed: false
fill-once-confirmed = Une fois ceci confirmé : { $names }. { $fill }
# of 387b1389, reviewed: false
start-up-close = Ne fermez la sortie de gaz qu'après que l'air a été chassé autant que le remplissage le permet ; tenez toute flamme loin de l'installation.
# of dca7f451, reviewed: false
start-up-vent = { $cycles ->
    [one] Laissez sortir le premier gaz à l'air libre, sans le brûler et jusqu'à ce qu'il n'y ait plus de pression, une fois que l'espace à gaz s'est rempli.
   *[other] Laissez sortir le premier gaz à l'air libre, sans le brûler et jusqu'à ce qu'il n'y ait plus de pression, chaque fois que l'espace à gaz s'est rempli, { $cycles } fois en tout.
}
# of c7f330f8, reviewed: false
start-up-flame = Alors seulement, essayez la flamme : en plein air, sur l'appareil au bout de son tuyau, jamais au dôme, au couvercle ni à la sortie.
# of 4fb52b19, reviewed: false
start-up-again = Si elle ne brûle pas régulièrement avec une flamme bleue, laissez de nouveau sortir le gaz, attendez un jour ou deux et réessayez ; n'alimentez pas.
# of e504801b, reviewed: false
start-up-feed = Une fois qu'elle brûle régulièrement pendant trois jours, commencez l'alimentation d'entretien avec le quart de la quantité complète.
# of 75e16dfa, reviewed: false
start-up-sours = Un tel remplissage s'acidifie facilement : remplissez avec de la bouse fraîche de vache ou de buffle seule, avec du digestat d'un digesteur en marche là où on peut en avoir, et ajoutez le reste une fois que le gaz brûle.
# of 634ab5d1, reviewed: false
start-up-latrine = Rien de la latrine ne fait partie du premier remplissage : raccordez-la une fois que le gaz brûle, pour qu'elle débouche directement dans le digesteur et que personne ne manipule ce qu'elle apporte.
# of e0480309, reviewed: false
schedule-confirm = Confirmez le durcissement, l'étanchéité à l'eau et l'étanchéité au gaz ; ne remplissez pas avant.
# of 5ce5191a, reviewed: false
schedule-collect = Commencez à ramasser du fumier propre sous couverture.
# of 4c08ca58, reviewed: false
schedule-purchases = Ayez tout ce qui est acheté sur place, couvert, à côté du digesteur.
# of 9ab20bab, reviewed: false
schedule-first-gas = À partir de maintenant, du gaz se forme, mêlé d'air : laissez-le sortir à l'air libre, sans le brûler, et tenez toute flamme à l'écart.
# of 4d8c33cf, reviewed: false
schedule-flame = Essayez la flamme en plein air sur l'appareil, après avoir laissé sortir le gaz.
# of 63f0102b, reviewed: false
schedule-flame-unsure = Essayez la flamme en plein air sur l'appareil, après avoir laissé sortir le gaz ; n'y comptez pas sans digestat d'un digesteur en marche.
# of 9db4993b, reviewed: false
schedule-flame-sours = Essayez la flamme en plein air sur l'appareil, après avoir laissé sortir le gaz ; n'y comptez pas, car un tel remplissage s'acidifie facilement.
# of 45aa9973, reviewed: false
schedule-feed = Une fois qu'elle brûle régulièrement pendant trois jours : alimentez chaque jour avec { $share } de la quantité complète.
