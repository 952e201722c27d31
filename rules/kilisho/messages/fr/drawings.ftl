# of b833d36f, reviewed: false
drawing-day = jour { $day }
# of c0625b5f, reviewed: false
drawing-kilograms-of = { $name } [kg]
# of 54101007, reviewed: false
drawing-forecast-title = Prévision du gaz
# of 0936ab5c, reviewed: false
drawing-forecast-gas = Gaz [m³ par jour]
# of 4a29712d, reviewed: false
drawing-forecast-temperature = Température du substrat [°C]
# of 7d840dd0, reviewed: false
drawing-forecast-acid-risk = Risque d'acidité
# of 7eaaf829, reviewed: false
drawing-forecast-first-burnable-gas = premier gaz qui brûle
# of 9de535db, reviewed: false
drawing-forecast-key =
    Lignes : le typique. Hachuré : la plage où se trouvent neuf échantillons sur dix. Chaque palier est la moyenne de son jour, de sa semaine ou de son mois. Risque d'acidité : hachuré élevé, noir fort.
# of 6a5f27c2, reviewed: false
drawing-forecast-from =
    { $days ->
        [one] Un jour à partir du { $first }.
       *[other] { $days } jours à partir du { $first }.
    }
# of b4be1350, reviewed: false
drawing-forecast-total = En tout { $gas } de gaz.
# of f9bb9c25, reviewed: false
drawing-forecast-total-and-least = En tout { $gas } de gaz ; le moins, { $least }, au jour { $day }.
# of f22fb810, reviewed: false
drawing-forecast-burnable-after = Premier gaz qui brûle au bout de { $after }.
# of 4383212f, reviewed: false
drawing-forecast-share-that-starts = { $share } des échantillons démarrent.
# of 60efc574, reviewed: false
drawing-forecast-highest-acid-risk = Plus fort risque d'acidité : { $risk }.
# of 6c1ff09d, reviewed: false
acid_risk-low = faible
# of d9325e09, reviewed: false
acid_risk-raised = élevé
# of 6ef7c9b1, reviewed: false
acid_risk-high = fort
# of 93c22646, reviewed: false
drawing-hours-title = Le gaz au long du jour
# of 3869536d, reviewed: false
drawing-hours-gas = Gaz [m³ par heure]
# of 40bd5833, reviewed: false
drawing-hours-stored = Dans la réserve à la fin de l'heure [m³]
# of 2b0ef45d, reviewed: false
drawing-hours-key =
    Hachuré : gaz voulu à chaque heure ; en noir la part qui manque. Ligne : gaz produit. En bas : gaz dans la réserve.
# of 36ca2002, reviewed: false
drawing-hours-wanted-and-made = Voulu { $wanted }, produit { $made }.
# of 86faa363, reviewed: false
drawing-hours-gas-runs-out = Le gaz vient à manquer : { $spells }.
# of 40f4bf12, reviewed: false
drawing-hours-spell = { $start } à { $end }
# of d63464b6, reviewed: false
drawing-hours-gas-lasts = Aux débits typiques, le gaz ne manque pas.
# of d1627b4d, reviewed: false
drawing-charge-title = Gaz d'une charge
# of 0936ab5c, reviewed: false
drawing-charge-gas = Gaz [m³ par jour]
# of a9c1af89, reviewed: false
drawing-charge-gas-so-far = Gaz jusqu'ici [m³]
# of fe7280cb, reviewed: false
drawing-charge-recharge = recharge
# of e980c8c8, reviewed: false
drawing-charge-key =
    Lignes : le typique. Hachuré : la plage où se trouvent neuf échantillons sur dix. Tirets : gaz qui brûle ; le reste est laissé partir. Points : le jour de la recharge.
# of 095bcad8, reviewed: false
drawing-charge-gives = Une charge donne { $gas } de gaz en { $retention }.
# of 5b52aa5d, reviewed: false
drawing-charge-gives-nothing = Une charge ne donne aucun gaz sur lequel on puisse compter.
# of d5b0d618, reviewed: false
drawing-charge-in-turn =
    { $digesters ->
        [one] Un digesteur : il est rechargé tous les { $every }.
       *[other] { $digesters } digesteurs à tour de rôle : l'un d'eux est rechargé tous les { $every }.
    }
# of e8faee72, reviewed: false
drawing-heap-title = Le tas face au besoin
# of 378fa15b, reviewed: false
drawing-heap-about = Tas en kilogrammes par jour jusqu'au remplissage, face à ce que demande la charge.
# of 55d1258c, reviewed: false
drawing-heap-key =
    Ligne épaisse : ce qu'il y a sur le tas. Tirets : ce que demande la charge, hachuré sa plage. La barre au bout : plage du tas le jour du remplissage.
# of 12edfaa4, reviewed: false
drawing-heap-filling-day = jour du remplissage : { $mass }
# of f4dca48a, reviewed: false
drawing-heap-filling-on = remplissage, { $date } : { $mass }
# of d2639014, reviewed: false
drawing-heap-needed = besoin { $mass }
# of f4201186, reviewed: false
drawing-section-dome = Dôme fixe avec son bassin
# of aeaf9908, reviewed: false
drawing-section-drum = Cloche flottante
# of 9a409895, reviewed: false
drawing-section-bag = Poche, en long et en travers
# of 4a103f5f, reviewed: false
drawing-section-cylinder = Cylindre
# of c6bb1948, reviewed: false
drawing-section-title = { $shape }, { $volume }
# of bf28ef64, reviewed: false
drawing-section-about = Coupe à l'échelle.
# of 6cd30352, reviewed: false
drawing-section-no-structural-design = Dessin de planification à l'échelle. Ce n'est pas un calcul de structure : ne construisez pas d'après lui.
# of ff31866a, reviewed: false
drawing-section-dome-dashed = Tirets : passages d'entrée et de sortie (non dimensionnés), et les deux niveaux avec la réserve de gaz pleine.
# of 85f52f89, reviewed: false
drawing-section-drum-dashed = La cloche est dessinée pleine de gaz. Tirets : sa jupe dans le substrat (non dimensionnée).
# of 736ae709, reviewed: false
drawing-section-bag-film = Tour du film { $length }.
# of 3bf5f375, reviewed: false
drawing-section-person = Le personnage mesure { $height } et n'est là que pour l'échelle.
# of 3f2f7e00, reviewed: false
drawing-section-scale = { $length } ; toutes les longueurs en mètres
# of aed7c516, reviewed: false
drawing-section-slurry = substrat
# of 2fe840e1, reviewed: false
drawing-section-gas = gaz
# of 266bfd2c, reviewed: false
drawing-section-measure = { $name } : { $measure }
# of 50ce3004, reviewed: false
drawing-section-total-volume = Volume intérieur total
# of ac5b36b6, reviewed: false
drawing-section-working-volume = Substrat
# of d2e95aba, reviewed: false
drawing-section-gas-storage-volume = Réserve de gaz
# of 24d19d7b, reviewed: false
drawing-section-inner-diameter = Diamètre intérieur
# of 18eda86c, reviewed: false
drawing-section-inner-height = Hauteur intérieure
# of 5383886c, reviewed: false
drawing-section-slurry-depth = Profondeur du substrat
# of d57074c1, reviewed: false
drawing-section-slurry-depth-at-rest = Profondeur du substrat au repos
# of 7480264a, reviewed: false
drawing-section-gas-space-height-at-rest = Hauteur de l'espace à gaz au repos
# of 3c6736ae, reviewed: false
drawing-section-compensation-tank-diameter = Diamètre du bassin de compensation
# of 296cdbcc, reviewed: false
drawing-section-compensation-tank-depth = Profondeur du bassin de compensation
# of 1b18d34c, reviewed: false
drawing-section-pit-diameter = Diamètre de la fosse
# of 72cae512, reviewed: false
drawing-section-drum-diameter = Diamètre de la cloche
# of f6d41a31, reviewed: false
drawing-section-gas-height-in-full-drum = Hauteur du gaz, cloche pleine
# of adc95605, reviewed: false
drawing-section-length = Longueur
# of 54a71934, reviewed: false
drawing-section-diameter = Diamètre
# of bfe2eca4, reviewed: false
drawing-section-height = Hauteur
# of 6b3c1232, reviewed: false
drawing-buckets-title = Ce qui entre à une alimentation
# of 4d76e675, reviewed: false
drawing-year-title = Le gaz au long de l'année
