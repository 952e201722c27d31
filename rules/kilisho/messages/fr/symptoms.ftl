# of b0dd5ef9, reviewed: false
symptoms-no_gas_after_start-name = Pas de gaz depuis le premier remplissage
# of f32958aa, reviewed: false
symptoms-no_gas_after_start-seen = Le digesteur a été rempli pour la première fois et aucun gaz n'est venu, ou presque pas.
# of 6503d885, reviewed: false
symptoms-first_gas_does_not_burn-name = Le premier gaz ne brûle pas
# of a0afbca7, reviewed: false
symptoms-first_gas_does_not_burn-seen = Un digesteur neuf donne du gaz et de la pression, mais le gaz éteint l'allumette ou ne reste pas allumé.
# of 48e2745c, reviewed: false
symptoms-gas_fell_slowly-name = Le gaz a diminué lentement
# of e03f518a, reviewed: false
symptoms-gas_fell_slowly-seen = Au fil des semaines ou des mois, le réchaud brûle de moins en moins longtemps.
# of da964eca, reviewed: false
symptoms-gas_fell_suddenly-name = Le gaz a diminué brusquement
# of 7943d661, reviewed: false
symptoms-gas_fell_suddenly-seen = D'un jour à l'autre, ou en une semaine, il y a eu beaucoup moins de gaz.
# of 2425da96, reviewed: false
symptoms-gas_stopped-name = Le gaz s'est complètement arrêté
# of 75187931, reviewed: false
symptoms-gas_stopped-seen = L'installation a donné du gaz pendant longtemps et n'en donne plus.
# of 1e9d7882, reviewed: false
symptoms-gas_always_little-name = Jamais autant de gaz que promis
# of 641a4c3b, reviewed: false
symptoms-gas_always_little-seen = L'installation marche, mais le gaz n'a jamais suffi pour les repas qui avaient été promis.
# of 0eb165e3, reviewed: false
symptoms-gas_falls_in_cold_season-name = Moins de gaz en saison froide seulement
# of 3960baea, reviewed: false
symptoms-gas_falls_in_cold_season-seen = Chaque année, le gaz diminue quand il fait froid et revient avec les mois chauds.
# of 328702a4, reviewed: false
symptoms-gas_comes_in_waves-name = Le gaz vient par vagues
# of a69c93e0, reviewed: false
symptoms-gas_comes_in_waves-seen = Certains jours il y en a en abondance, d'autres jours rien.
# of b39431ef, reviewed: false
symptoms-gas_steady_but_short-name = Le gaz est régulier, mais insuffisant
# of 4af24f70, reviewed: false
symptoms-gas_steady_but_short-seen = Il y a toujours autant de gaz ; les repas, les invités ou les lampes sont devenus plus nombreux, ou bien le gaz n'a jamais suffi pour tous.
# of 9624907a, reviewed: false
symptoms-gas_left_over-name = Il reste du gaz
# of 3287e7f8, reviewed: false
symptoms-gas_left_over-seen = Le ménage ne peut pas utiliser tout le gaz ; il sort en bulles par la sortie ou par la soupape de surpression.
# of 276325a8, reviewed: false
symptoms-gas_at_inlet_or_outlet-name = Du gaz sort en bulles à l'entrée ou à la sortie
# of 36a41091, reviewed: false
symptoms-gas_at_inlet_or_outlet-seen = Des bulles montent à l'entrée ou à la sortie, alors que peu de gaz arrive au réchaud.
# of ab5072a5, reviewed: false
symptoms-hiss_or_bubbles_at_joint-name = Sifflement ou bulles de savon à un raccord
# of f231b196, reviewed: false
symptoms-hiss_or_bubbles_at_joint-seen = Quelque part sur le tuyau, la vanne ou le tuyau souple, cela siffle, ou l'eau savonneuse y fait des bulles.
# of 5936f63b, reviewed: false
symptoms-gas_smells_of_rotten_eggs-name = Forte odeur d'œuf pourri
# of 54584c14, reviewed: false
symptoms-gas_smells_of_rotten_eggs-seen = Le gaz, ou la flamme, sent fortement l'œuf pourri.
# of d690630d, reviewed: false
symptoms-flame_does_not_light-name = La flamme ne s'allume pas
# of 9515e2d1, reviewed: false
symptoms-flame_does_not_light-seen = Robinet ouvert et allumette au brûleur, rien ne brûle.
# of 8945609b, reviewed: false
symptoms-flame_weak-name = La flamme est petite et faible
# of 68f0c7c2, reviewed: false
symptoms-flame_weak-seen = La flamme est bleue mais petite, et le repas prend bien plus de temps qu'avant.
# of d7ff4c9a, reviewed: false
symptoms-flame_yellow-name = La flamme est jaune
# of 27db372e, reviewed: false
symptoms-flame_yellow-seen = La flamme est jaune ou orange et longue, au lieu d'être courte et bleue.
# of 98e3cf13, reviewed: false
symptoms-soot_on_pots-name = Suie sur les marmites
# of 25a11af2, reviewed: false
symptoms-soot_on_pots-seen = Les marmites noircissent à la flamme du gaz.
# of e0d82010, reviewed: false
symptoms-flame_lifts-name = La flamme décolle du brûleur
# of 675d6dde, reviewed: false
symptoms-flame_lifts-seen = La flamme se tient à distance des trous du brûleur, gronde et se souffle elle-même.
# of affb6a5c, reviewed: false
symptoms-flame_goes_out-name = La flamme s'éteint toute seule
# of 9d02cf5d, reviewed: false
symptoms-flame_goes_out-seen = Elle s'allume, brûle un moment, puis s'éteint.
# of bbf3eb28, reviewed: false
symptoms-flame_strikes_back-name = Retour de flamme dans le brûleur
# of ba644aac, reviewed: false
symptoms-flame_strikes_back-seen = Avec un claquement, la flamme saute en arrière et brûle à l'intérieur du brûleur ou à l'injecteur.
# of f6bed6c9, reviewed: false
symptoms-flame_pulses-name = La flamme saute ou palpite
# of 64055072, reviewed: false
symptoms-flame_pulses-seen = La flamme grandit et rétrécit en cadence, et le manomètre saute avec elle.
# of d8baf516, reviewed: false
symptoms-stove_rusts-name = Le réchaud ou la lampe est rongé par la rouille
# of 87efd5b6, reviewed: false
symptoms-stove_rusts-seen = Le brûleur, l'injecteur ou la lampe se corrodent en un an ou deux ; le laiton noircit.
# of 1f6202b9, reviewed: false
symptoms-pressure_high_no_flame-name = La pression est haute, mais il n'y a pas de flamme
# of 84146d5a, reviewed: false
symptoms-pressure_high_no_flame-seen = Le manomètre du digesteur est haut, ou la poche ou la cloche est pleine, et pourtant il ne sort rien ou presque rien du réchaud.
# of adf87a48, reviewed: false
symptoms-pressure_zero-name = La pression reste à zéro
# of 43c875ba, reviewed: false
symptoms-pressure_zero-seen = Le manomètre ne monte pas, ou la poche ou la cloche reste vide, jour et nuit.
# of 04757cf7, reviewed: false
symptoms-pressure_falls_overnight-name = La pression tombe pendant la nuit
# of 0c8b1b81, reviewed: false
symptoms-pressure_falls_overnight-seen = Le soir il y a de la pression, le matin elle a disparu alors que personne n'a utilisé de gaz.
# of dc85efd2, reviewed: false
symptoms-bulging_bag_or_lid-name = La poche ou le couvercle bombe
# of f91d7a2c, reviewed: false
symptoms-bulging_bag_or_lid-seen = La poche est tendue comme une peau de tambour, ou le couvercle du dôme se soulève, fuit ou s'est déplacé.
# of 4d218ac3, reviewed: false
symptoms-slurry_level_falls-name = Le niveau du substrat baisse
# of a48def7f, reviewed: false
symptoms-slurry_level_falls-seen = À la sortie, le substrat est plus bas chaque jour alors que rien n'a été retiré.
# of 4d7a954a, reviewed: false
symptoms-outlet_overflows-name = La sortie déborde
# of ec56b2ec, reviewed: false
symptoms-outlet_overflows-seen = Le substrat passe par-dessus le bord de la sortie ou du bassin de compensation.
# of 3e945463, reviewed: false
symptoms-outlet_not_flowing-name = Rien ne coule de la sortie
# of 422a5445, reviewed: false
symptoms-outlet_not_flowing-seen = L'alimentation entre, mais aucun digestat ne sort au trop-plein.
# of 9386bc59, reviewed: false
symptoms-inlet_backs_up-name = L'entrée refoule
# of 9a64c80b, reviewed: false
symptoms-inlet_backs_up-seen = L'alimentation reste dans l'entrée ou la fosse de mélange et ne descend pas.
# of d3f0dbc9, reviewed: false
symptoms-slurry_thick-name = Le substrat est épais
# of 04afb645, reviewed: false
symptoms-slurry_thick-seen = Le mélange d'alimentation, ou le substrat à la sortie, se tient comme une bouillie et ne coule presque pas.
# of 495efed5, reviewed: false
symptoms-slurry_watery-name = Le substrat est très liquide
# of 10c19025, reviewed: false
symptoms-slurry_watery-seen = Ce qui sort est clair et pâle comme de l'eau sale.
# of 1023c01c, reviewed: false
symptoms-scum_seen-name = Croûte flottante
# of cc55f5d9, reviewed: false
symptoms-scum_seen-seen = Une croûte sèche ou feutrée flotte sur le substrat ; une perche bute dessus.
# of 4607760f, reviewed: false
symptoms-foam-name = Mousse
# of 932d6443, reviewed: false
symptoms-foam-seen = De la mousse se tient à la sortie ou entre dans le tuyau de gaz.
# of 09061ffe, reviewed: false
symptoms-sour_smell-name = Odeur aigre
# of 7587835c, reviewed: false
symptoms-sour_smell-seen = Le substrat sent l'aigre ou le vomi, et peut paraître gris.
# of 0a91c28c, reviewed: false
symptoms-ammonia_smell-name = Odeur piquante d'ammoniac
# of b165a4c2, reviewed: false
symptoms-ammonia_smell-seen = Le substrat ou la sortie pique le nez et les yeux comme un poulailler.
# of 0c80170a, reviewed: false
symptoms-undigested_dung_comes_out-name = Le substrat sent le fumier frais
# of bf6201bb, reviewed: false
symptoms-undigested_dung_comes_out-seen = Ce qui sort a l'aspect et l'odeur du fumier frais et attire les mouches.
# of 42bc7a39, reviewed: false
symptoms-sand_in_slurry-name = Sable dans le substrat
# of f0fd3846, reviewed: false
symptoms-sand_in_slurry-seen = Il y a du sable et de petites pierres dans la fosse de mélange, à la sortie ou dans le substrat.
# of 9fbf7179, reviewed: false
symptoms-slurry_in_gas_pipe-name = Substrat dans le tuyau de gaz
# of 3f5986a2, reviewed: false
symptoms-slurry_in_gas_pipe-seen = Du substrat sort du tuyau de gaz, du purgeur ou du réchaud.
# of b5834292, reviewed: false
symptoms-water_in_pipe-name = Eau dans le tuyau de gaz
# of 2263c596, reviewed: false
symptoms-water_in_pipe-seen = Le tuyau gargouille, ou de l'eau sort à un raccord, au purgeur ou au réchaud.
# of b478809b, reviewed: false
symptoms-trap_or_relief_dry-name = Le niveau de la garde d'eau est bas
# of 49279743, reviewed: false
symptoms-trap_or_relief_dry-seen = La bouteille ou le purgeur qui ferme la conduite contient peu d'eau ou n'en contient pas.
# of 13b85425, reviewed: false
symptoms-relief_blocked-name = La soupape de surpression est bouchée, gelée ou trop remplie
# of d3d1cd68, reviewed: false
symptoms-relief_blocked-seen = La garde d'eau ne fait jamais de bulles alors que la réserve de gaz est pleine ; elle est gelée ou remplie à ras bord, ou son tuyau est bouché.
# of 3be1c2eb, reviewed: false
symptoms-relief_bubbles_always-name = La soupape de surpression fait des bulles tout le temps
# of 25ec4f92, reviewed: false
symptoms-relief_bubbles_always-seen = Du gaz passe en bulles à travers la garde d'eau jour et nuit, même quand il y a peu de gaz.
# of 585310d7, reviewed: false
symptoms-crack_or_wet_patch-name = Fissure ou tache humide
# of 60c625d7, reviewed: false
symptoms-crack_or_wet_patch-seen = La maçonnerie présente une fissure, ou le sol à côté du digesteur est mouillé de substrat.
# of b38ae6e0, reviewed: false
symptoms-bubbles_over_dome-name = Bulles ou odeur au-dessus du dôme
# of 2d460c54, reviewed: false
symptoms-bubbles_over_dome-seen = Après la pluie, des bulles montent du sol mouillé au-dessus du dôme, ou cela y sent le gaz.
# of 766e749d, reviewed: false
symptoms-lid_seal_dry-name = Le joint d'argile du couvercle est sec
# of 751fbad3, reviewed: false
symptoms-lid_seal_dry-seen = L'argile autour du couvercle a séché ou s'est fissurée, ou l'eau au-dessus du couvercle a disparu ou fait des bulles.
# of 9f2de31c, reviewed: false
symptoms-bag_slack_or_torn-name = La poche est flasque ou déchirée
# of 615f263c, reviewed: false
symptoms-bag_slack_or_torn-seen = La poche est lâche et pend, ou présente un trou, une déchirure ou un endroit cassant.
# of 0540b865, reviewed: false
symptoms-drum_does_not_rise-name = La cloche ne monte pas
# of 59581ddf, reviewed: false
symptoms-drum_does_not_rise-seen = La cloche flottante reste en bas bien que le digesteur soit alimenté.
# of 4d1619b5, reviewed: false
symptoms-drum_sinks_quickly-name = La cloche redescend vite
# of dc692aea, reviewed: false
symptoms-drum_sinks_quickly-seen = La cloche monte avec le gaz et redescend en quelques heures sans que l'on s'en serve.
# of fbefad9e, reviewed: false
symptoms-drum_rusty-name = La cloche est rouillée
# of f7991b5b, reviewed: false
symptoms-drum_rusty-seen = La peinture de la cloche s'écaille, la rouille apparaît, ou du gaz fait des bulles à ses soudures.
# of 5c045ef9, reviewed: false
symptoms-drum_tilted-name = La cloche est penchée ou coincée
# of 0c25dc51, reviewed: false
symptoms-drum_tilted-seen = La cloche est de travers, ou elle accroche à son guide et bouge par à-coups.
# of 413a35cb, reviewed: false
symptoms-fed_more_than_usual-name = Plus d'alimentation que d'habitude
# of 54fa3348, reviewed: false
symptoms-fed_more_than_usual-seen = Ces dernières semaines, on a alimenté plus qu'avant.
# of 96153bd8, reviewed: false
symptoms-fed_less_than_usual-name = Moins d'alimentation que d'habitude
# of 8febd633, reviewed: false
symptoms-fed_less_than_usual-seen = Moins d'animaux, moins de fumier, ou un autre usage du fumier : on alimente moins qu'avant.
# of 41cea249, reviewed: false
symptoms-feeding_irregular-name = Alimentation de temps en temps
# of 1a189bee, reviewed: false
symptoms-feeding_irregular-seen = On alimente au hasard : des jours sans rien, puis beaucoup d'un coup.
# of 209e6dba, reviewed: false
symptoms-feed_changed-name = Une nouvelle matière
# of 5e9e161b, reviewed: false
symptoms-feed_changed-seen = Autre chose qu'avant est entré : déchets de cuisine, fruits, lactosérum, une autre sorte de fumier.
# of 77847f75, reviewed: false
symptoms-straw_fed-name = Paille ou herbe dans l'alimentation
# of 07b50112, reviewed: false
symptoms-straw_fed-seen = De la litière, de la paille, des feuilles ou de l'herbe longue sont entrées avec le fumier.
# of 97067202, reviewed: false
symptoms-droppings_or_urine_fed-name = Beaucoup de fientes ou d'urine dans l'alimentation
# of 74b17c11, reviewed: false
symptoms-droppings_or_urine_fed-seen = Les fientes de volaille, les déjections de porc ou beaucoup d'urine forment une bonne part de l'alimentation.
# of b88a257c, reviewed: false
symptoms-animals_treated-name = Les animaux ont reçu des médicaments
# of b5ee3519, reviewed: false
symptoms-animals_treated-seen = Les animaux ont reçu des antibiotiques ou des vermifuges ces dernières semaines.
# of 3b665d48, reviewed: false
symptoms-disinfectant_or_soap-name = Du désinfectant, du produit antiparasitaire ou du savon est entré
# of 4c15f2ba, reviewed: false
symptoms-disinfectant_or_soap-seen = L'étable ou la latrine a été nettoyée au désinfectant ou au savon, ou les animaux ont été passés au bain antiparasitaire, et l'eau est entrée.
# of 204c2bff, reviewed: false
symptoms-much_water_or_rain-name = Beaucoup d'eau est entrée
# of 0cae0c0c, reviewed: false
symptoms-much_water_or_rain-seen = De la pluie, de l'eau de lavage ou bien plus d'eau de mélange que d'habitude a coulé dans le digesteur.
# of da63de26, reviewed: false
symptoms-little_water_used-name = Presque pas d'eau dans le mélange
# of 5cd210af, reviewed: false
symptoms-little_water_used-seen = L'eau est rare, et le fumier est introduit presque tel qu'il tombe.
# of ebeb14c4, reviewed: false
symptoms-not_emptied_for_years-name = Pas vidé depuis des années
# of 4250a22d, reviewed: false
symptoms-not_emptied_for_years-seen = Il fonctionne depuis de nombreuses années sans que le sable et la boue du fond aient été retirés.
# of 9c5071f9, reviewed: false
symptoms-cold_weather-name = Temps froid
# of 76bb0242, reviewed: false
symptoms-cold_weather-seen = Il fait froid depuis des semaines, et le substrat est froid au toucher.
# of 7b8e478d, reviewed: false
symptoms-no_starter_used-name = Démarré sans digestat d'ensemencement
# of 1a6507f9, reviewed: false
symptoms-no_starter_used-seen = Il a été rempli la première fois sans digestat d'un digesteur en marche, et pas avec de la bouse fraîche.
# of 2c2ea44f, reviewed: false
symptoms-recently_started-name = Rempli depuis peu
# of 0d41dd63, reviewed: false
symptoms-recently_started-seen = Le premier remplissage ne date que de quelques jours ou semaines.
# of 226b0ff4, reviewed: false
symptoms-just_emptied_or_repaired-name = Vidé ou réparé récemment
# of fb06777b, reviewed: false
symptoms-just_emptied_or_repaired-seen = Le digesteur, son couvercle ou son tuyau de gaz a été ouvert ou vidé il y a peu de temps.
# of 05f26d8f, reviewed: false
symptoms-slurry_taken_out-name = Beaucoup de substrat retiré
# of 3f40a783, reviewed: false
symptoms-slurry_taken_out-seen = Beaucoup de substrat a été retiré d'un coup de la sortie ou du digesteur.
# of 6b330895, reviewed: false
symptoms-new_stove_or_pipe-name = Nouveau réchaud ou nouveau tuyau
# of 73609d60, reviewed: false
symptoms-new_stove_or_pipe-seen = Le réchaud, la lampe ou le tuyau est neuf, plus long qu'avant, ou était fait pour un autre gaz.
# of 5c7367fd, reviewed: false
symptoms-valve_or_hose_moved-name = Une vanne ou un tuyau souple a été déplacé
# of e4cb0514, reviewed: false
symptoms-valve_or_hose_moved-seen = Quelqu'un a tourné une vanne, ou déplacé le réchaud ou son tuyau souple, avant que le problème commence.
# of 21e9d6c9, reviewed: false
symptoms-kitchen_closed-name = La pièce où brûle la flamme est fermée
# of 2cdc7e2f, reviewed: false
symptoms-kitchen_closed-seen = Portes et fenêtres sont fermées pendant que la flamme brûle, et aucune ouverture dans le mur ne reste ouverte.
# of b0d9ee5e, reviewed: false
symptoms-gas_not_used-name = Le gaz n'a pas été utilisé pendant des jours
# of ceacca7b, reviewed: false
symptoms-gas_not_used-seen = Personne n'a cuisiné au gaz pendant plusieurs jours.
# of e55403e5, reviewed: false
symptoms-gas_smell_indoors-name = Odeur de gaz à l'intérieur
# of 17aa9dbf, reviewed: false
symptoms-gas_smell_indoors-seen = Cela sent le gaz dans la cuisine ou dans une autre pièce.
# of 2e85d182, reviewed: false
symptoms-gas_smell_in_pit-name = Odeur de gaz dans une fosse ou un endroit bas
# of 0b7423a5, reviewed: false
symptoms-gas_smell_in_pit-seen = Cela sent le gaz ou l'œuf pourri dans une fosse, à la sortie ou dans un autre endroit bas, ou juste à côté, ou bien l'odeur y était et a soudain disparu.
# of 715b3e2b, reviewed: false
symptoms-person_collapsed-name = Quelqu'un s'est effondré
# of 2810ec78, reviewed: false
symptoms-person_collapsed-seen = Quelqu'un est étendu sans force ou sans connaissance dans une fosse, la sortie, le digesteur ou la cuisine, ou juste à côté.
# of 33b1e8ab, reviewed: false
symptoms-headache_in_kitchen-name = Maux de tête, vertiges ou nausées près de la flamme
# of 4fe9e7ef, reviewed: false
symptoms-headache_in_kitchen-seen = Les personnes qui sont dans la pièce avec le réchaud, la lampe ou l'appareil de chauffage ont mal à la tête, des vertiges ou des nausées, et se sentent mieux dehors.
# of 0fa4f343, reviewed: false
symptoms-fire_or_explosion-name = Incendie ou explosion
# of 0f5a1d7f, reviewed: false
symptoms-fire_or_explosion-seen = Du gaz brûle là où il ne doit pas, quelque chose près du gaz est en feu, ou il y a eu une détonation.
