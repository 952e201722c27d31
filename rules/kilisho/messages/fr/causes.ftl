# of 03c56ee1, reviewed: false
causes-pipe_leaks-name = Un tuyau, une vanne ou un tuyau souple fuit à l'extérieur
# of cb6a5dcf, reviewed: false
causes-pipe_leaks-remedy = Fermez la vanne du digesteur, refaites le raccord avec du ruban ou de la pâte d'étanchéité, remplacez le tuyau souple et le tuyau fissurés, et vérifiez de nouveau à l'eau savonneuse. Un installateur agréé fait ce qui est fixe dans une maison.
# of c1cac0ac, reviewed: false
causes-leak_indoors-name = Du gaz fuit à l'intérieur d'une pièce
# of 348bfbd8, reviewed: false
causes-leak_indoors-remedy = Faites sortir tout le monde, fermez la vanne du digesteur, aérez la pièce, et n'utilisez pas de gaz avant qu'un installateur ait refait le raccord ou remplacé le robinet ou le tuyau souple et que l'eau savonneuse ne montre plus rien.
# of 708f2c33, reviewed: false
causes-gas_line_holds_water-name = De l'eau stagne dans la conduite de gaz
# of e445a2fe, reviewed: false
causes-gas_line_holds_water-remedy = Vidangez le purgeur, et reposez le tuyau pour qu'il descende sans creux vers le digesteur ou vers un purgeur ; vidangez le purgeur chaque semaine.
# of 7f54e1d6, reviewed: false
causes-burner_jet_blocked-name = L'injecteur ou les trous du brûleur sont bouchés
# of d56a7c99, reviewed: false
causes-burner_jet_blocked-remedy = Débouchez à l'aiguille et lavez l'injecteur et les trous du brûleur, séchez-les, et nettoyez le réchaud chaque semaine.
# of dc05eddd, reviewed: false
causes-too_little_air-name = Le brûleur reçoit trop peu d'air
# of b791e79d, reviewed: false
causes-too_little_air-remedy = Ouvrez la bague d'air jusqu'à ce que la flamme soit courte et bleue, et gardez les trous propres et la pièce aérée.
# of 37dc93c5, reviewed: false
causes-too_much_air-name = Le brûleur reçoit trop d'air
# of 16881f80, reviewed: false
causes-too_much_air-remedy = Fermez un peu la bague d'air jusqu'à ce que la flamme se pose sur le brûleur et reste bleue.
# of 0fd761ed, reviewed: false
causes-pressure_too_high_for_burner-name = La pression au brûleur est trop haute
# of 0f4c21e5, reviewed: false
causes-pressure_too_high_for_burner-remedy = Réduisez le robinet du réchaud tant que le manomètre est haut, cuisinez avant que la réserve de gaz soit pleine, ou faites poser un détendeur par un installateur.
# of bc7adf4b, reviewed: false
causes-valve_part_shut-name = Une vanne est à moitié fermée ou un tuyau souple est plié
# of 9c8f1145, reviewed: false
causes-valve_part_shut-remedy = Ouvrez toutes les vannes à fond, redressez ou raccourcissez le tuyau souple, et remplacez une vanne qui ne tourne plus.
# of ac0f89f9, reviewed: false
causes-pipe_too_narrow-name = Le tuyau est trop étroit ou trop long
# of 81499120, reviewed: false
causes-pipe_too_narrow-remedy = Posez un tuyau du diamètre au-dessus, avec moins de coudes, ou rapprochez le réchaud.
# of 173bdea5, reviewed: false
causes-unconverted_burner-name = Le réchaud ou la lampe était fait pour un autre gaz
# of e094c11f, reviewed: false
causes-unconverted_burner-remedy = Utilisez un brûleur fait pour le biogaz, ou faites élargir l'injecteur et régler l'air par un installateur.
# of 463b47c6, reviewed: false
causes-kitchen_not_aired-name = La pièce où brûle la flamme n'est pas aérée
# of 3c9ada84, reviewed: false
causes-kitchen_not_aired-remedy = N'y utilisez aucune flamme avant que la pièce ait des ouvertures en bas et en haut qui ne peuvent pas être fermées ; enlevez les appareils de chauffage sans conduit de fumée.
# of 8f701558, reviewed: false
causes-hydrogen_sulfide_high-name = Beaucoup de sulfure d'hydrogène dans le gaz
# of bb765649, reviewed: false
causes-hydrogen_sulfide_high-remedy = Posez un filtre à l'oxyde de fer ou à la laine d'acier et renouvelez-le avant qu'il soit épuisé, aérez la cuisine, et remplacez les pièces rouillées. Changez le filtre en plein air : il peut s'échauffer tout seul à l'air.
# of 37ec233e, reviewed: false
causes-slurry_in_line-name = Du substrat est entré dans la conduite de gaz
# of 53e13693, reviewed: false
causes-slurry_in_line-remedy = Toutes flammes éteintes, fermez la vanne du digesteur, vidangez et rincez la conduite en plein air, alimentez moins jusqu'à ce que le niveau soit revenu à son repère, et cherchez si la sortie est bouchée ou s'il y a de la mousse.
# of cf9113c0, reviewed: false
causes-relief_seal_dry-name = La garde d'eau de la soupape ou du purgeur est à sec
# of 9ac2989b, reviewed: false
causes-relief_seal_dry-remedy = Remplissez la garde d'eau jusqu'à son repère et pas au-dessus, en plein air, et regardez-la chaque jour.
# of 205f00a6, reviewed: false
causes-relief_stuck-name = La soupape de surpression est bouchée, gelée ou absente
# of eeabfffb, reviewed: false
causes-relief_stuck-remedy = Tenez à distance les personnes et les flammes, laissez aussitôt le gaz s'échapper en plein air, débouchez ou dégelez la soupape de l'extérieur, et ne réglez pas sa garde d'eau plus profond que ce que l'ouvrage supporte.
# of 74fa8cbd, reviewed: false
causes-air_in_first_gas-name = Il y a encore de l'air dans le premier gaz
# of a703ce92, reviewed: false
causes-air_in_first_gas-remedy = N'allumez rien. Laissez s'échapper en plein air, sans le brûler et loin de toute flamme, le gaz du premier ou des deux premiers remplissages complets de l'espace à gaz, et seulement ensuite essayez la flamme sur le réchaud en plein air.
# of 71873f52, reviewed: false
causes-start_not_finished-name = Le démarrage n'a pas encore eu assez de temps
# of 3b04fd53, reviewed: false
causes-start_not_finished-remedy = Attendez sans alimenter : quelques semaines là où il fait chaud, jusqu'à trois mois là où il fait froid. Commencez à alimenter, peu au début, quand le gaz brûle régulièrement.
# of 4a9e236e, reviewed: false
causes-too_few_microbes-name = Trop peu de microbes dès le départ
# of a45951c5, reviewed: false
causes-too_few_microbes-remedy = Arrêtez l'alimentation et apportez du digestat d'un digesteur en marche, d'un dixième à un tiers du volume, ou de la bouse fraîche ; ensuite attendez.
# of a62ca360, reviewed: false
causes-underfed-name = Le digesteur reçoit trop peu d'alimentation
# of 843fdf64, reviewed: false
causes-underfed-remedy = Ramassez plus de fumier : enfermez les animaux la nuit, gardez un sol dur et propre, associez-vous à un voisin. Augmentez l'alimentation d'un quart au plus par semaine ; sinon prévoyez moins de gaz.
# of fc6119ff, reviewed: false
causes-overfed-name = Le digesteur est trop alimenté et s'acidifie
# of a5ea45d4, reviewed: false
causes-overfed-remedy = Arrêtez l'alimentation de trois jours à une semaine, jusqu'à ce que le pH et la flamme soient revenus ; ajoutez un peu de bouse fraîche délayée ; cendre de bois ou eau de chaux seulement lentement et en dernier. Reprenez ensuite avec la moitié de l'alimentation.
# of 7de7fe05, reviewed: false
causes-quick_feed_soured-name = Une matière nouvelle ou sucrée l'a acidifié
# of 2591a668, reviewed: false
causes-quick_feed_soured-remedy = Laissez de côté la nouvelle matière, n'apportez rien pendant quelques jours, puis seulement de la bouse ; réintroduisez la nouvelle matière à un dixième de la matière sèche et augmentez-la au fil des semaines.
# of e9e12441, reviewed: false
causes-ammonia_from_droppings-name = L'ammoniac des fientes ou de l'urine le freine
# of f44e1378, reviewed: false
causes-ammonia_from_droppings-remedy = Apportez moins de fientes et d'urine, plus de bouse et plus d'eau, un peu de paille hachée ; il se rétablit en quelques semaines, à mesure que le substrat est renouvelé.
# of 7eb9c779, reviewed: false
causes-medicine_in_dung-name = Des médicaments dans le fumier freinent les microbes
# of 3ff09a7d, reviewed: false
causes-medicine_in_dung-remedy = Écartez le fumier des animaux traités pendant une semaine ou plus après la dernière dose et compostez-le ; apportez le fumier d'animaux non traités ; ajoutez du digestat d'ensemencement si le gaz ne revient pas.
# of 54247b1e, reviewed: false
causes-disinfectant_in_feed-name = Du désinfectant, du produit antiparasitaire ou du savon empoisonne les microbes
# of 07204b80, reviewed: false
causes-disinfectant_in_feed-remedy = Faites passer l'eau de lavage à côté du digesteur, n'apportez ni le fumier ni l'eau des jours qui suivent le nettoyage, et diluez ce qui est à l'intérieur avec une alimentation propre pendant quelques jours.
# of a8c72b54, reviewed: false
causes-too_much_water-name = Trop d'eau entre
# of 4f2f3de5, reviewed: false
causes-too_much_water-remedy = Pour la bouse, mélangez autant d'eau que de bouse ; creusez une rigole autour des ouvertures, couvrez-les, et tenez dehors l'eau de lavage et la pluie.
# of 9da4ce05, reviewed: false
causes-slurry_too_thick-name = Le substrat est trop épais
# of e585e01f, reviewed: false
causes-slurry_too_thick-remedy = Ajoutez de l'eau seau par seau et brassez de l'extérieur avec une longue perche ; désormais, mélangez l'eau et le fumier avant d'alimenter ; utilisez de l'urine ou du liquide réutilisé là où l'eau manque.
# of e8d9259b, reviewed: false
causes-irregular_feeding-name = L'alimentation est irrégulière
# of c9f58c2c, reviewed: false
causes-irregular_feeding-remedy = Apportez la même quantité chaque jour à la même heure ; ne rattrapez jamais en une fois les jours manqués.
# of f9e2fae1, reviewed: false
causes-cold_slurry-name = Le substrat est froid
# of 0ca52f21, reviewed: false
causes-cold_slurry-remedy = Couvrez de paille ou d'une butte le sol au-dessus du digesteur, ou une poche avec un abri ; mélangez avec de l'eau chauffée au soleil et alimentez vers midi ; alimentez moins en dessous de 15 °C, et pas du tout en dessous de 10.
# of 1e866aa4, reviewed: false
causes-scum_crust-name = Une croûte flottante retient le gaz en dessous
# of e7b035ef, reviewed: false
causes-scum_crust-remedy = Toutes flammes éteintes, cassez la croûte de l'extérieur avec une longue perche et brassez deux fois par jour ; une cloche se tourne. N'apportez ni paille ni herbe longue, ou hachez-les. Si la croûte ne casse pas, appelez une équipe formée ; personne ne descend à l'intérieur.
# of 1c10ed93, reviewed: false
causes-foaming-name = Le substrat mousse
# of 310e2a8c, reviewed: false
causes-foaming-remedy = Arrêtez l'alimentation quelques jours, laissez de côté graisse, savon et verdure fraîche, et brassez ; vidangez de la conduite de gaz ce qui y est passé.
# of 83184bbd, reviewed: false
causes-sand_and_sludge-name = Du sable et de la boue comblent le digesteur
# of eaba8d61, reviewed: false
causes-sand_and_sludge-remedy = Faites retirer la boue par une équipe formée et équipée, et gardez d'un dixième à un tiers du substrat comme ensemencement. Ensuite, laissez reposer le mélange et laissez le sable dans la fosse de mélange.
# of 1b022be0, reviewed: false
causes-dome_leaks_gas-name = Le dôme ou la cuve laisse fuir le gaz
# of c4489564, reviewed: false
causes-dome_leaks_gas-remedy = Faites ouvrir la fissure de l'extérieur par un maçon formé, faites-la combler et faites enduire de nouveau l'espace à gaz. Le travail à l'intérieur attend qu'une équipe formée et équipée l'ait vidé, aéré et contrôlé par des mesures.
# of 61012f76, reviewed: false
causes-lid_seal_leaks-name = Le joint d'argile du couvercle fuit
# of 155f08ac, reviewed: false
causes-lid_seal_leaks-remedy = Laissez le gaz s'échapper en plein air, toutes flammes éteintes, jusqu'à ce que le manomètre tombe à zéro, puis pressez de nouveau l'argile, lestez le couvercle et gardez de l'eau par-dessus. Personne ne se tient au-dessus du couvercle.
# of b8429a6f, reviewed: false
causes-tank_leaks_slurry-name = La cuve perd du substrat
# of 6880e70b, reviewed: false
causes-tank_leaks_slurry-remedy = Arrêtez l'alimentation, marquez jusqu'où le niveau baisse (la fissure est juste au-dessus), et faites vider, aérer et réparer la cuve par un maçon formé et une équipe formée ; pensez aux personnes et aux puits du voisinage.
# of d6ffb393, reviewed: false
causes-port_uncovered-name = Le substrat est plus bas que l'orifice et le gaz s'échappe
# of b4eec85e, reviewed: false
causes-port_uncovered-remedy = Éteignez toutes les flammes, complétez avec du substrat ou de l'eau jusqu'à au moins 20 cm au-dessus des orifices, et ne retirez pas plus que ce qui entre.
# of 7fa45b63, reviewed: false
causes-bag_leaks-name = La poche est déchirée ou fuit
# of 1c90a1e6, reviewed: false
causes-bag_leaks-remedy = Toutes flammes éteintes, soudez ou collez une pièce du même film sur l'endroit sec et propre, resserrez les colliers, clôturez la poche et protégez-la du soleil.
# of 65da50c3, reviewed: false
causes-drum_leaks-name = La cloche fuit
# of 96c016ad, reviewed: false
causes-drum_leaks-remedy = Fermez la vanne, éteignez toutes les flammes, laissez le gaz s'échapper en plein air, puis dérouillez, soudez loin de l'installation ou posez une pièce, et peignez ; repeignez-la chaque année.
# of fb007ae9, reviewed: false
causes-drum_stuck-name = La cloche est coincée
# of 07982604, reviewed: false
causes-drum_stuck-remedy = Toutes flammes éteintes, dégagez le guide depuis le bord, cassez la croûte autour de la cloche, graissez le guide et tournez la cloche deux fois par jour.
# of 105ad0ab, reviewed: false
causes-inlet_blocked-name = L'entrée est bouchée
# of e0b6a7c9, reviewed: false
causes-inlet_blocked-remedy = De l'extérieur, poussez le bouchon à travers avec une longue perche et de l'eau, puis alimentez sans paille ni grumeaux, à travers une grille.
# of 7d8f9998, reviewed: false
causes-outlet_blocked-name = La sortie est bouchée
# of 18532882, reviewed: false
causes-outlet_blocked-remedy = Arrêtez l'alimentation, laissez le gaz s'échapper en plein air, toutes flammes éteintes, et débouchez la sortie de l'extérieur avec une longue perche ; personne ne se tient au-dessus du couvercle.
# of fa234124, reviewed: false
causes-air_drawn_in-name = De l'air a été aspiré dans le gaz
# of a1350063, reviewed: false
causes-air_drawn_in-remedy = Éteignez toutes les flammes, fermez la vanne du digesteur, complétez jusqu'au niveau habituel, laissez s'échapper en plein air, sans le brûler, le gaz du prochain remplissage complet de l'espace à gaz, et n'allumez rien avant.
# of b1fe8b4a, reviewed: false
causes-gas_gathers_low-name = Du gaz s'accumule dans une fosse ou un endroit bas
# of a8f707e1, reviewed: false
causes-gas_gathers_low-remedy = Tenez tout le monde dehors et à distance, appelez des secouristes formés ou une équipe formée, et laissez-les aérer ; ensuite, dirigez les évents loin des endroits bas, comblez ou couvrez la fosse et clôturez-la.
# of 3b904a37, reviewed: false
causes-gas_not_used_up-name = Plus de gaz que l'on n'en utilise
# of 81e6952d, reviewed: false
causes-gas_not_used_up-remedy = Utilisez le gaz pour un repas de plus, pour de l'eau chaude avec un conduit de fumée ou pour un voisin, ou alimentez moins ; le gaz non brûlé nuit au climat et peut s'accumuler là où il s'échappe.
# of 6e3430b6, reviewed: false
causes-expectation_too_high-name = L'installation donne ce que son alimentation peut donner
# of 542ff694, reviewed: false
causes-expectation_too_high-remedy = Rien n'est cassé. Plus de gaz demande une alimentation plus abondante ou meilleure, ou un digesteur plus chaud ; sinon prévoyez moins de repas au gaz.
