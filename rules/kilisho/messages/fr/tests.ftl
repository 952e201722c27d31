# of 7272f4e6, reviewed: false
tests-gauge_overnight-name = Manomètre pendant la nuit, vanne du digesteur fermée
# of 4a602bc4, reviewed: false
tests-gauge_overnight-how = Le soir, fermez la vanne au digesteur, marquez le manomètre, la hauteur de la cloche ou le remplissage de la poche, n'utilisez pas de gaz, et relisez le matin à la même température du substrat.
# of fb8e1ed8, reviewed: false
tests-gauge_overnight-outcomes-1-seen = La pression tombe bien que la vanne du digesteur soit fermée
# of 587f13b6, reviewed: false
tests-gauge_overnight-outcomes-2-seen = La pression tient la nuit, mais elle tombe quand la vanne du digesteur est ouverte et le réchaud fermé
# of c9cb6a1c, reviewed: false
tests-gauge_overnight-outcomes-3-seen = La pression tient dans les deux cas
# of 1274d2b5, reviewed: false
tests-soapy_water-name = Eau savonneuse sur les raccords, les vannes et le couvercle
# of 71f45f0e, reviewed: false
tests-soapy_water-how = Sous pression, passez au pinceau de l'eau savonneuse épaisse sur chaque raccord, chaque vanne, chaque tuyau souple et sur le joint du couvercle, et regardez si des bulles grossissent. De l'eau savonneuse et rien d'autre ; aucune flamme à proximité, et défense d'y fumer. À l'intérieur, ouvrez d'abord portes et fenêtres.
# of a6cda09b, reviewed: false
tests-soapy_water-outcomes-1-seen = Bulles sur un tuyau ou une vanne à l'extérieur
# of e1e1791e, reviewed: false
tests-soapy_water-outcomes-2-seen = Bulles sur un raccord à l'intérieur
# of 0028cb43, reviewed: false
tests-soapy_water-outcomes-3-seen = Bulles au couvercle ou dans l'eau qui le recouvre
# of 9dd11c74, reviewed: false
tests-soapy_water-outcomes-4-seen = Aucune bulle nulle part
# of e7236469, reviewed: false
tests-drain_line-name = Vidanger la conduite de gaz
# of ecdf5cda, reviewed: false
tests-drain_line-how = Éteignez toutes les flammes, fermez la vanne du digesteur, et ouvrez en plein air le purgeur ou le raccord le plus bas de la conduite. Recueillez et regardez ce qui s'écoule, refermez, et essayez de nouveau le réchaud.
# of d3f1eed5, reviewed: false
tests-drain_line-outcomes-1-seen = De l'eau s'écoule et la flamme est régulière ensuite
# of 214c2c7e, reviewed: false
tests-drain_line-outcomes-2-seen = Du substrat s'écoule
# of df66bbda, reviewed: false
tests-drain_line-outcomes-3-seen = Rien ne s'écoule
# of bc0d78cd, reviewed: false
tests-follow_the_line-name = Suivre la conduite du digesteur au réchaud
# of a391bd58, reviewed: false
tests-follow_the_line-how = Regardez chaque vanne, chaque coude et chaque tuyau souple du digesteur au réchaud : chaque vanne est-elle ouverte à fond, un tuyau souple est-il plié ou écrasé, quelle est la longueur et quel est le diamètre du tuyau ?
# of 0dd6c6bc, reviewed: false
tests-follow_the_line-outcomes-1-seen = Une vanne est à moitié fermée ou un tuyau souple est plié
# of 2108b2e8, reviewed: false
tests-follow_the_line-outcomes-2-seen = Tout est ouvert, mais la conduite est longue et mince
# of c5a63b75, reviewed: false
tests-follow_the_line-outcomes-3-seen = Tout est ouvert et la conduite est courte et large
# of 8297e4f3, reviewed: false
tests-clean_jet-name = Nettoyer l'injecteur et les trous du brûleur
# of 32dc00fa, reviewed: false
tests-clean_jet-how = Fermez le robinet, laissez refroidir le brûleur, démontez-le, débouchez à l'aiguille l'injecteur et les trous, lavez, séchez et remontez. Allumez ensuite : l'allumette d'abord, le robinet après.
# of df820dc3, reviewed: false
tests-clean_jet-outcomes-1-seen = La flamme est forte et bleue ensuite
# of c75bb586, reviewed: false
tests-clean_jet-outcomes-2-seen = La flamme est comme avant
# of bc2c2c1b, reviewed: false
tests-move_air_shutter-name = Déplacer la bague d'air
# of e5cbc68f, reviewed: false
tests-move_air_shutter-how = Pendant que le brûleur brûle dans une pièce aérée, ouvrez un peu la bague d'air, puis fermez-la un peu, et regardez la couleur et la hauteur de la flamme.
# of dc9d8bc5, reviewed: false
tests-move_air_shutter-outcomes-1-seen = Plus d'air rend bleue la flamme jaune
# of 54c73f6e, reviewed: false
tests-move_air_shutter-outcomes-2-seen = Moins d'air repose la flamme qui décollait
# of 03868f51, reviewed: false
tests-move_air_shutter-outcomes-3-seen = Cela change peu
# of a9b2a72b, reviewed: false
tests-jet_for_which_gas-name = Pour quel gaz le réchaud et l'injecteur ont été faits
# of 78a70ced, reviewed: false
tests-jet_for_which_gas-how = Lisez la plaque du réchaud ou de la lampe, ou demandez au vendeur : le biogaz exige un injecteur plus large et plus d'air que le gaz en bouteille.
# of b18f6420, reviewed: false
tests-jet_for_which_gas-outcomes-1-seen = Fait pour le gaz en bouteille ou le gaz naturel et jamais modifié
# of 496158e1, reviewed: false
tests-jet_for_which_gas-outcomes-2-seen = Fait ou modifié pour le biogaz
# of ea9e88cd, reviewed: false
tests-throttle_the_valve-name = Réduire le robinet du réchaud
# of 405f975d, reviewed: false
tests-throttle_the_valve-how = Pendant que la flamme brûle, fermez lentement le robinet du réchaud pour la réduire.
# of a85b4663, reviewed: false
tests-throttle_the_valve-outcomes-1-seen = La flamme se pose sur le brûleur
# of 2ffd0f43, reviewed: false
tests-throttle_the_valve-outcomes-2-seen = Elle reste décollée ou s'éteint
# of e85752b4, reviewed: false
tests-blackened_metal-name = Laine d'acier brillante ou argent dans le gaz
# of 96107f1f, reviewed: false
tests-blackened_metal-how = En plein air, du côté d'où vient le vent, tenez pendant une minute de la laine d'acier neuve ou une pièce d'argent polie dans le jet de gaz du brûleur non allumé, ou aspirez du gaz à travers un tube détecteur.
# of 61eeb064, reviewed: false
tests-blackened_metal-outcomes-1-seen = Le métal noircit aussitôt, ou le tube indique plus de 1000 ppm
# of 360323c1, reviewed: false
tests-blackened_metal-outcomes-2-seen = Le métal reste brillant ou le tube indique moins de 200 ppm
# of 1c4c0a48, reviewed: false
tests-vent_and_try_again-name = Laisser s'échapper le premier gaz et réessayer
# of 575facf7, reviewed: false
tests-vent_and_try_again-how = Sans aucune flamme à moins de 10 m, laissez s'échapper en plein air, sans le brûler, le gaz d'un espace à gaz plein, une ou deux fois, laissez-le se remplir de nouveau, puis essayez la flamme sur le réchaud en plein air.
# of 1ae3d175, reviewed: false
tests-vent_and_try_again-outcomes-1-seen = Le gaz brûle après le deuxième remplissage
# of 950e6999, reviewed: false
tests-vent_and_try_again-outcomes-2-seen = Le gaz ne brûle toujours pas
# of 2c6d0b71, reviewed: false
tests-days_since_filling-name = Compter les jours depuis le remplissage
# of b3cb0308, reviewed: false
tests-days_since_filling-how = Comptez les jours depuis le premier remplissage, sentez à quel point le substrat est chaud, et demandez avec quoi il a été rempli.
# of ea5d19a4, reviewed: false
tests-days_since_filling-outcomes-1-seen = Moins de trois semaines, ou jusqu'à trois mois là où il fait froid ; rempli de bouse ou avec ensemencement
# of a757a658, reviewed: false
tests-days_since_filling-outcomes-2-seen = Plus longtemps, ou rempli de fientes ou de plantes sans ensemencement
# of de7ac728, reviewed: false
tests-weigh_the_feed-name = Peser l'alimentation d'une semaine
# of 7f472312, reviewed: false
tests-weigh_the_feed-how = Pesez le fumier et l'eau de chaque alimentation pendant une semaine et comparez avec l'alimentation prévue pour ce digesteur ; notez les jours sans alimentation.
# of 6bc3fcac, reviewed: false
tests-weigh_the_feed-outcomes-1-seen = Moins que l'alimentation prévue
# of 6de80237, reviewed: false
tests-weigh_the_feed-outcomes-2-seen = Plus que l'alimentation prévue
# of 2a7896c6, reviewed: false
tests-weigh_the_feed-outcomes-3-seen = À peu près l'alimentation prévue, mais de façon irrégulière
# of 4c2e739b, reviewed: false
tests-weigh_the_feed-outcomes-4-seen = Comme prévu, chaque jour
# of cc87b199, reviewed: false
tests-gas_against_feed-name = Mesurer le gaz d'une semaine par rapport à son alimentation
# of a6453ef8, reviewed: false
tests-gas_against_feed-how = Lisez un compteur, ou comptez les heures de chaque brûleur à son débit connu, pendant une semaine d'alimentation pesée, et comparez avec le gaz que cette alimentation donne.
# of d425a653, reviewed: false
tests-gas_against_feed-outcomes-1-seen = Autant que ce que donne l'alimentation
# of ab7ff3ad, reviewed: false
tests-gas_against_feed-outcomes-2-seen = Nettement moins
# of d0396f23, reviewed: false
tests-ph_of_slurry-name = pH du substrat frais
# of dfc1f65b, reviewed: false
tests-ph_of_slurry-how = Puisez du substrat à la sortie avec une louche à long manche et plongez-y aussitôt un papier pH ou un pH-mètre ; faites-le trois jours différents.
# of ec85992b, reviewed: false
tests-ph_of_slurry-outcomes-1-seen = En dessous de 6.8 ou en baisse
# of 840451d7, reviewed: false
tests-ph_of_slurry-outcomes-2-seen = De 6.8 à 8
# of 5f21691e, reviewed: false
tests-ph_of_slurry-outcomes-3-seen = Au-dessus de 8
# of 1642ead1, reviewed: false
tests-ask_about_feed-name = Demander ce qui est entré, jour par jour
# of 7cd51cd1, reviewed: false
tests-ask_about_feed-how = Passez en revue le dernier mois avec tous ceux qui alimentent ou nettoient : nouvelles matières, quantités, médicaments, bains antiparasitaires, désinfectant, savon, eau de lavage et pluie, avec les jours.
# of 533e9f26, reviewed: false
tests-ask_about_feed-outcomes-1-seen = Des médicaments ont été donnés et le gaz a diminué ensuite
# of 380cd107, reviewed: false
tests-ask_about_feed-outcomes-2-seen = Du désinfectant, du produit antiparasitaire ou du savon est entré et le gaz a diminué ensuite
# of fd902ef8, reviewed: false
tests-ask_about_feed-outcomes-3-seen = Une matière nouvelle ou sucrée est entrée et le gaz a diminué ensuite
# of 3182357e, reviewed: false
tests-ask_about_feed-outcomes-4-seen = Rien de tel
# of b09dc0f3, reviewed: false
tests-ammonia_strip-name = Ammoniac dans le substrat
# of ba124946, reviewed: false
tests-ammonia_strip-how = Diluez dix fois du substrat pris à la sortie, trempez-y une bandelette de test d'ammonium, et multipliez par dix ; additionnez la part de fientes et d'urine dans l'alimentation.
# of d8137b5d, reviewed: false
tests-ammonia_strip-outcomes-1-seen = Plus de 3 g/L, ou beaucoup de fientes de volaille ou d'urine dans l'alimentation
# of 6cba2f8a, reviewed: false
tests-ammonia_strip-outcomes-2-seen = Moins de 1.5 g/L
# of 3e55ce88, reviewed: false
tests-pour_the_mix-name = Verser le mélange d'alimentation
# of 25ad4804, reviewed: false
tests-pour_the_mix-how = Retirez un bâton du mélange d'alimentation et regardez : un bon mélange s'écoule comme une bouillie claire. Comparez les seaux d'eau avec les seaux de fumier.
# of bd7d74e0, reviewed: false
tests-pour_the_mix-outcomes-1-seen = Il colle ou tombe en paquets
# of 962a08bc, reviewed: false
tests-pour_the_mix-outcomes-2-seen = Il goutte comme de l'eau
# of 9c24dd97, reviewed: false
tests-pour_the_mix-outcomes-3-seen = Il s'écoule lentement et régulièrement
# of 51ae56ff, reviewed: false
tests-slurry_thermometer-name = Température du substrat
# of e2e5f7d6, reviewed: false
tests-slurry_thermometer-how = Descendez dans le substrat, par l'entrée, un thermomètre dans une bouteille lestée, ou mesurez un seau de substrat au moment où il sort.
# of c5095bb5, reviewed: false
tests-slurry_thermometer-outcomes-1-seen = En dessous de 15 °C, ou plusieurs degrés de moins que dans les bons mois
# of cbac40c8, reviewed: false
tests-slurry_thermometer-outcomes-2-seen = 20 °C ou plus
# of 617a293d, reviewed: false
tests-dip_rod-name = Sonder de l'extérieur avec une longue tige
# of 63ffaf51, reviewed: false
tests-dip_rod-how = Debout, bien droit, à l'extérieur, toutes flammes éteintes, descendez une longue tige droite par l'entrée ou l'ouverture : sentez où commence une croûte et où la tige touche le sable.
# of 24da473b, reviewed: false
tests-dip_rod-outcomes-1-seen = Une croûte plus épaisse qu'une main
# of ef1fd964, reviewed: false
tests-dip_rod-outcomes-2-seen = La tige s'arrête bien au-dessus de la profondeur construite, dans le sable ou la boue
# of 64d8784e, reviewed: false
tests-dip_rod-outcomes-3-seen = Ni croûte ni dépôt
# of d60dbbfc, reviewed: false
tests-level_after_a_day-name = Niveau du substrat après une journée
# of c53f47bf, reviewed: false
tests-level_after_a_day-how = Laissez le gaz s'échapper jusqu'à ce que le manomètre soit à zéro, marquez le niveau du substrat à la sortie, n'apportez et ne retirez rien pendant un jour et une nuit, et regardez de nouveau.
# of 409eb982, reviewed: false
tests-level_after_a_day-outcomes-1-seen = Il a baissé
# of 73f07cc2, reviewed: false
tests-level_after_a_day-outcomes-2-seen = Il est au repère, mais l'orifice de l'entrée ou de la sortie est découvert ou presque
# of 2b172a0d, reviewed: false
tests-level_after_a_day-outcomes-3-seen = Il est au repère et les orifices sont bien recouverts
# of 72fa8933, reviewed: false
tests-rod_in_inlet-name = Pousser une perche dans l'entrée
# of 18bd7330, reviewed: false
tests-rod_in_inlet-how = Debout, bien droit, à l'extérieur, enfoncez une longue perche dans le tuyau d'entrée et versez ensuite un seau d'eau.
# of 96418c23, reviewed: false
tests-rod_in_inlet-outcomes-1-seen = La perche rencontre un bouchon et ensuite l'eau descend
# of ae2743f8, reviewed: false
tests-rod_in_inlet-outcomes-2-seen = La perche passe librement
# of b1742a65, reviewed: false
tests-rod_in_outlet-name = Pousser une perche dans la sortie
# of 365f318e, reviewed: false
tests-rod_in_outlet-how = Toutes flammes éteintes et personne au-dessus du couvercle, poussez de l'extérieur une longue perche dans la sortie et regardez si le substrat bouge.
# of efbc7eed, reviewed: false
tests-rod_in_outlet-outcomes-1-seen = Un bouchon cède et le substrat coule
# of 77d0a3c4, reviewed: false
tests-rod_in_outlet-outcomes-2-seen = Le passage est libre
# of 5562bae1, reviewed: false
tests-look_at_water_seal-name = Regarder la soupape de surpression et le purgeur
# of 6e3ecfc2, reviewed: false
tests-look_at_water_seal-how = Regardez l'eau dans la bouteille de la soupape et dans le purgeur : où est-elle par rapport à son repère, fait-elle des bulles, le gaz peut-il sortir à la pression pour laquelle elle est réglée ?
# of d083737f, reviewed: false
tests-look_at_water_seal-outcomes-1-seen = En dessous du repère ou à sec
# of f613b27f, reviewed: false
tests-look_at_water_seal-outcomes-2-seen = Trop remplie, gelée, ou son tuyau d'arrivée est bouché
# of 7f5c2a0f, reviewed: false
tests-look_at_water_seal-outcomes-3-seen = Au repère, et des bulles seulement quand la réserve de gaz est pleine
# of d039e502, reviewed: false
tests-look_at_bag-name = Inspecter toute la poche
# of 99b388b7, reviewed: false
tests-look_at_bag-how = Faites le tour de la poche à la lumière du jour, cherchez des trous, des endroits cassants et des colliers desserrés, et passez-y de l'eau savonneuse au pinceau.
# of e126782e, reviewed: false
tests-look_at_bag-outcomes-1-seen = Un trou, une déchirure, ou des bulles dans l'eau savonneuse
# of 2e8580c2, reviewed: false
tests-look_at_bag-outcomes-2-seen = Entière et étanche
# of a06eac7d, reviewed: false
tests-turn_drum-name = Tourner la cloche
# of 9cf2b421, reviewed: false
tests-turn_drum-how = Toutes flammes éteintes, tournez la cloche par ses poignées depuis le bord ; ne montez jamais dessus. Regardez ensuite les soudures et la gaine d'eau avec de l'eau savonneuse.
# of 0552aec4, reviewed: false
tests-turn_drum-outcomes-1-seen = Elle était coincée et monte après avoir été tournée
# of b2edf2b9, reviewed: false
tests-turn_drum-outcomes-2-seen = Elle tourne librement et des bulles apparaissent à une soudure
# of 8543eea9, reviewed: false
tests-turn_drum-outcomes-3-seen = Elle tourne librement et elle est étanche
# of 978ccc08, reviewed: false
tests-gauge_at_zero-name = Manomètre pendant l'utilisation du gaz
# of 39a77d5b, reviewed: false
tests-gauge_at_zero-how = Toutes flammes éteintes, regardez le manomètre pendant que l'on retire du substrat ou que l'on laisse s'échapper du gaz en plein air : descend-il à zéro ou en dessous ?
# of e43db4d5, reviewed: false
tests-gauge_at_zero-outcomes-1-seen = Il descend à zéro ou en dessous, ou la poche est aspirée à plat
# of 97fe4b8d, reviewed: false
tests-gauge_at_zero-outcomes-2-seen = Il reste au-dessus de zéro
# of 64a96a5a, reviewed: false
tests-foam_settles-name = Mousse dans un seau
# of d2c53ba6, reviewed: false
tests-foam_settles-how = Puisez de la mousse et du substrat à la sortie avec une louche à long manche, mélangez-y une poignée de cendre ou de la bouse fraîche délayée, et attendez un quart d'heure.
# of d9843447, reviewed: false
tests-foam_settles-outcomes-1-seen = Elle tient comme une mousse ferme
# of c3d77b9e, reviewed: false
tests-foam_settles-outcomes-2-seen = Ce n'est qu'un feutre de paille et de fumier
# of 07485712, reviewed: false
tests-gas_meter_by_trained-name = Détecteur de gaz aux mains d'une équipe formée
# of c2c98305, reviewed: false
tests-gas_meter_by_trained-how = Tenez tout le monde à distance et laissez une équipe formée, munie d'un appareil qui mesure l'oxygène, le méthane et le sulfure d'hydrogène, mesurer à l'endroit bas, de l'extérieur, au bout d'une corde et jamais en y entrant. Personne ne teste avec le nez, un animal ou une flamme.
# of 11e0f150, reviewed: false
tests-gas_meter_by_trained-outcomes-1-seen = L'appareil indique du gaz ou peu d'oxygène
# of d9f3cad4, reviewed: false
tests-gas_meter_by_trained-outcomes-2-seen = L'appareil indique maintenant un air propre
# of e1fbb3a1, reviewed: false
tests-look_at_vents-name = Regarder les ouvertures de la cuisine
# of c66f0ba5, reviewed: false
tests-look_at_vents-how = Regardez si la pièce où brûle la flamme a des ouvertures en bas et en haut qui ne peuvent pas être fermées, et si un appareil de chauffage sans conduit de fumée y brûle.
# of fe1c4603, reviewed: false
tests-look_at_vents-outcomes-1-seen = Moins de deux ouvertures, ou un appareil de chauffage sans conduit de fumée
# of d907c2e0, reviewed: false
tests-look_at_vents-outcomes-2-seen = Des ouvertures en bas et en haut et aucun appareil de chauffage sans conduit de fumée
