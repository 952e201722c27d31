# of 35bb1299, reviewed: false
sheet-dangers = À lire d'abord
# of 0c7823e8, reviewed: false
sheet-container = Récipient
# of 7508da17, reviewed: false
sheet-dung-or-feed = Fumier ou matière
# of 7ca7dea9, reviewed: false
sheet-water = Eau
# of 26a42b03, reviewed: false
sheet-urine = Urine
# of 4aab9349, reviewed: false
sheet-full-weighs = Plein, un pèse
# of 10ce92c5, reviewed: false
sheet-container-of = { $name }, { $volume }
# of 39132c40, reviewed: false
sheet-whole-containers = Récipients entiers
# of e08c0aa8, reviewed: false
sheet-days = Jours
# of cf9c7aa2, reviewed: false
sheet-when = Quand
# of 9b8617fd, reviewed: false
sheet-again-every = Tous les
# of 200651a8, reviewed: false
sheet-once = une fois
# of f47f1edc, reviewed: false
sheet-what-to-do = Que faire
# of b833d36f, reviewed: false
sheet-day = jour { $day }
# of f6b2cdc9, reviewed: false
sheet-later-days =
    { $count ->
        [one] Un jour plus tardif est dans le calendrier.
       *[other] { $count } jours plus tardifs sont dans le calendrier.
    }
# of 6e177bda, reviewed: false
sheet-failed = Pas comme il faut : ceci n'est pas rempli
# of 474cd296, reviewed: false
sheet-failed-title = { $title }.
# of 117adf01, reviewed: false
sheet-unknown = Pas connu
# of 33f4cf39, reviewed: false
sheet-unknown-dangers = Personne n'a dit si ceci est rempli. Tant que personne n'a regardé, rien de cela n'est sûr.
# of b48b0d4d, reviewed: false
sheet-unknown-others =
    { $count ->
        [one] À un autre contrôle, de moindre poids, il manque un fait ; la réponse complète le liste.
       *[other] À { $count } autres contrôles, de moindre poids, il manque un fait ; la réponse complète les liste.
    }
# of 68f881db, reviewed: false
sheet-all-known = Tous les contrôles de ce plan ont pu être faits.
# of 7359807c, reviewed: false
sheet-measure = À mesurer d'abord, pour des chiffres plus sûrs
# of a08fcd84, reviewed: false
sheet-care = Prenez garde
# of c840421a, reviewed: false
sheet-lesser-cautions =
    { $count ->
        [one] Une mise en garde moindre est omise ici pour dire les dangers aussi en anglais ; la réponse complète la liste.
       *[other] { $count } mises en garde moindres sont omises ici pour dire les dangers aussi en anglais ; la réponse complète les liste.
    }
# of 8a7525b1, reviewed: false
sheet-notes = Notes
# of b5f82bb7, reviewed: false
sheet-pair = { $name } : { $value }
# of 287ea966, reviewed: false
sheet-brackets = Les nombres entre parenthèses sont la plage où se trouvent neuf cas sur dix.
# of 3cc70d06, reviewed: false
sheet-assumed =
    { $count ->
        [one] Un chiffre a été supposé là où rien n'était indiqué ; la réponse le liste.
       *[other] { $count } chiffres ont été supposés là où rien n'était indiqué ; la réponse les liste.
    }
# of b6b2c0c9, reviewed: false
sheet-worked-out = Calculé par Kilisho avec le référentiel { $id } { $version } ({ $hash }).
# of fc2ff759, reviewed: false
sheet-not-reviewed = Aucun locuteur n'a encore relu cette traduction. En cas de doute, demandez à quelqu'un qui lit l'anglais.
# of 1a9b10b0, reviewed: false
sheet-untranslated =
    { $count ->
        [one] Une phrase est en anglais faute de traduction.
       *[other] { $count } phrases sont en anglais faute de traduction.
    }
# of 123fd666, reviewed: false
signal-danger = danger
# of 4bd9354b, reviewed: false
signal-warning = avertissement
# of 3cf083c2, reviewed: false
signal-caution = attention
# of 9368a7d2, reviewed: false
signal-notice = avis
# of 54263957, reviewed: false
sheet-charge-title = Premier remplissage
# of 09153c03, reviewed: false
sheet-what-goes-in = Ce qui entre
# of 6424ffa1, reviewed: false
sheet-in-one-go = En une fois, quand tout est confirmé
# of ac5b36b6, reviewed: false
sheet-slurry = Mélange
# of 597ff84f, reviewed: false
sheet-same-in-containers = La même chose, en récipients entiers
# of 80234c2b, reviewed: false
sheet-work = { $hours } de travail.
# of d9d08026, reviewed: false
sheet-work-days =
    { $days ->
        [one] { $hours } de travail, en un jour avec les personnes qui aident.
       *[other] { $hours } de travail, en { $days } jours avec les personnes qui aident.
    }
# of f5039ddd, reviewed: false
sheet-confirm = À confirmer avant de remplir
# of 90305c1b, reviewed: false
sheet-confirm-state = { $name } :
# of 9599915b, reviewed: false
sheet-confirmed = confirmé
# of affdb72f, reviewed: false
sheet-refused = NON REMPLI : ne remplissez pas
# of f7e9cc9a, reviewed: false
sheet-state-unknown = pas connu : ne remplissez pas avant de le savoir
# of ec614930, reviewed: false
sheet-gather = Ramasser assez
# of 76308488, reviewed: false
sheet-start-by = Pour en avoir assez le jour du remplissage, commencez au plus tard le { $date }.
# of fa8386c6, reviewed: false
sheet-from = De { $name } : { $mass }.
# of b9f7be15, reviewed: false
sheet-ways = Moyens de combler ce qui manque :
# of 21718460, reviewed: false
sheet-no-way = Il manque { $mass }, et cette ferme n'a aucun moyen de le combler.
# of ce7f082d, reviewed: false
sheet-heap = Le tas
# of 8df80bf9, reviewed: false
sheet-first-flame = Premier gaz et première flamme
# of 949f0fcd, reviewed: false
sheet-may-not-start = Cette charge peut ne pas démarrer d'elle-même. Procurez-vous du digestat d'un digesteur en marche.
# of 8b9ef43b, reviewed: false
sheet-burns-after = Gaz qui brûle au bout de { $modelled } selon le modèle du procédé, de { $practice } en pratique. N'essayez aucune flamme avant son jour, indiqué plus haut.
# of b6e6165f, reviewed: false
sheet-burns-in-practice = Au bout de { $practice } en pratique. N'essayez aucune flamme avant son jour, indiqué plus haut.
# of 630c478b, reviewed: false
sheet-then-feed = Alimentez ensuite, { $steps }.
# of 79099ed7, reviewed: false
sheet-from-day = à partir du jour { $day } avec { $feed }
# of a4cc3298, reviewed: false
sheet-feed-title = Alimenter le digesteur
# of d16af94c, reviewed: false
sheet-at-each-feeding = À chaque alimentation, tous les { $every }
# of b79e2300, reviewed: false
sheet-at-each-feeding-daily = À chaque alimentation, chaque jour
# of 31eecde3, reviewed: false
sheet-weighed = La même chose, pesée et mesurée
# of 4852ca70, reviewed: false
sheet-urine-for-water = Urine, à la place d'eau
# of 7ef84dcd, reviewed: false
sheet-expect = À quoi s'attendre
# of bb75a604, reviewed: false
sheet-mean-of-year = En moyenne de l'année
# of 49c579d7, reviewed: false
sheet-left-over = Non donné, pour le champ
# of 52cbe86b, reviewed: false
sheet-gas-as-used = Gaz, tel qu'il est utilisé
# of 1bebe9c4, reviewed: false
sheet-digestate = Digestat
# of bd2d0cb4, reviewed: false
sheet-retention = Temps de rétention hydraulique
# of fe380a99, reviewed: false
sheet-storing = Garder, et après des alimentations manquées
# of 500e8043, reviewed: false
sheet-largest-feeding = À une alimentation, au plus { $mass }.
# of b659f006, reviewed: false
sheet-missed =
    { $missed ->
        [one] Une alimentation a été manquée : rattrapez-la sur { $over } alimentations.
       *[other] { $missed } alimentations ont été manquées : rattrapez-les sur { $over } alimentations.
    }
# of 3246953f, reviewed: false
sheet-plan-title = Plan de biogaz
# of ef1852a3, reviewed: false
sheet-from-on = À partir du { $date } ; avant, comme le disent les jours ci-dessous.
# of 9daedf56, reviewed: false
sheet-bucket-weighs = { $container } ; plein de matière, un pèse { $load }.
# of c928adf3, reviewed: false
sheet-in-numbers = Le plan en chiffres
# of 38b61cfc, reviewed: false
sheet-built-already = Le digesteur est déjà choisi ou construit.
# of 31cc12b5, reviewed: false
sheet-volume-in-all = Digesteur, en tout
# of 4b0830cb, reviewed: false
sheet-gas-store = Gaz qu'il garde
# of fdfcfebf, reviewed: false
sheet-charge-feed = Premier remplissage, matière
# of f77b4ee6, reviewed: false
sheet-charge-water = Premier remplissage, eau
# of e066e3f3, reviewed: false
sheet-charge-in = Premier remplissage, { $name }
# of 7dea4fa1, reviewed: false
sheet-feed-and-water = { $feed } de matière, { $water } d'eau
# of 355e8bdf, reviewed: false
sheet-missing-so-far = Manque jusqu'ici
# of 48ed126b, reviewed: false
sheet-gas-wanted = Gaz voulu
# of 148753e4, reviewed: false
sheet-of-it-covered = { $gas }, couvert { $share }
# of f77ab324, reviewed: false
sheet-enough-for = Suffit pour
# of 56df9237, reviewed: false
sheet-year = Le gaz de la première année
# of e24ea360, reviewed: false
sheet-year-caption = Chaque barre est le gaz typique de son mois en m³ par jour ; le trait vertical, ce qu'auraient neuf fermes pareilles sur dix.
# of bacee11c, reviewed: false
sheet-year-starts = Un tel remplissage ne démarre de lui-même que dans { $starts } des cas. Sinon, ces barres sont du gaz qui ne brûle pas : ajoutez du digestat d'un digesteur qui marche, et attendez pour alimenter que cela brûle.
# of 6d6d7319, reviewed: false
sheet-left-out = Pas dans ce plan : { $operation }, car { $because }.
# of d6f81311, reviewed: false
operation-sizing = Dimensionnement
# of 54263957, reviewed: false
operation-first_charge = Premier remplissage
# of 3be6d193, reviewed: false
operation-maintenance_feed = Alimentation d'entretien
# of 54101007, reviewed: false
operation-gas_forecast = Prévision du gaz
# of 6b8ec261, reviewed: false
operation-gas_use = Usage du gaz
# of 1bebe9c4, reviewed: false
operation-digestate = Digestat
# of e92cb2cb, reviewed: false
operation-safety_check = Contrôle de sécurité
