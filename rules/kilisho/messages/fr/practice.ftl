# of 71244562, reviewed: false
practice-containers-bucket-name = Seau de 20 litres
# of 5e283b5b, reviewed: false
practice-containers-small_bucket-name = Seau de 10 litres
# of c24cff0a, reviewed: false
practice-containers-jerrycan-name = Jerrican
# of 608dbb26, reviewed: false
practice-containers-basket-name = Panier porté sur la tête
# of 976ccd9c, reviewed: false
practice-containers-wheelbarrow-name = Brouette
# of 8e193256, reviewed: false
practice-containers-drum-name = Fût à pétrole
# of e63a774a, reviewed: false
practice-containers-hand_cart-name = Charrette à bras
# of 54c1c88f, reviewed: false
practice-containers-donkey_panniers-name = Paire de paniers de bât pour âne
# of 283cddc3, reviewed: false
practice-containers-ox_cart-name = Charrette à bœufs
# of 5afd8218, reviewed: false
practice-containers-pickup-name = Pick-up à benne remplie à ras
# of 974e01cc, reviewed: false
practice-covers-uncovered-name = Tas à l'air libre
# of 5dfffbe4, reviewed: false
practice-covers-roof-name = Sous un toit
# of dcc04afd, reviewed: false
practice-covers-sheet-name = Tassé, à l'ombre et sous une bâche
# of 2a077780, reviewed: false
practice-covers-pit-name = Fosse couverte
# of 68d995df, reviewed: false
practice-slurry_stores-open_pit-name = Fosse ou cuve ouverte
# of bd45232c, reviewed: false
practice-slurry_stores-covered_pit-name = Fosse ou cuve avec un couvercle, une bâche ou une croûte épaisse
# of dd884a92, reviewed: false
practice-spreadings-broadcast-name = Versé ou jeté en surface
# of 3a9b3a81, reviewed: false
practice-spreadings-covered_furrow-name = Versé dans des sillons ou des trous et couvert de terre aussitôt
# of 266d356d, reviewed: false
practice-spreadings-irrigation_water-name = Conduit dans des sillons avec l'eau d'irrigation
# of 76e87253, reviewed: false
practice-manure_managements-solid_storage-name = Tas de fumier solide, gardé des mois
# of a397391d, reviewed: false
practice-manure_managements-dry_lot-name = Laissé dans un enclos de terre et enlevé de temps en temps
# of dd5fdee4, reviewed: false
practice-manure_managements-daily_spread-name = Porté au champ dans la journée
# of 82d117b6, reviewed: false
practice-manure_managements-pasture-name = Laissé là où paissent les animaux
# of 0a36c8fa, reviewed: false
practice-manure_managements-burned_as_fuel-name = Séché et brûlé
# of 4df57d2a, reviewed: false
practice-manure_managements-deep_bedding-name = Piétiné dans une litière qui reste plus d'un mois
# of c4b57d7e, reviewed: false
practice-manure_managements-liquid_slurry-name = Lisier en fosse ou en cuve, vidée deux fois par an
# of 89a1f42a, reviewed: false
practice-manure_managements-pit_storage-name = Lisier dans une fosse sous les animaux, vidée chaque mois
# of 3c500efd, reviewed: false
practice-measurements-phosphorus-text = Un laboratoire de sols ou d'aliments du bétail mesure le phosphore d'un échantillon séché ; demandez s'il l'exprime en P ou en P2O5.
# of 0dfc0597, reviewed: false
practice-measurements-potassium-text = Un laboratoire de sols ou d'aliments du bétail mesure le potassium d'un échantillon séché ; demandez s'il l'exprime en K ou en K2O.
# of cde72637, reviewed: false
practice-measurements-nitrogen_need-text = Demandez au service de vulgarisation ou à un laboratoire de sols l'azote dont cette culture a besoin ici avec votre rendement, et indiquez-le.
# of 3fb6744f, reviewed: false
practice-measurements-total_solids-text = Pesez quelque 200 g de la matière fraîche, séchez-la en couches minces dans une étuve à environ 105 °C (ou pendant quelques jours de soleil) jusqu'à ce qu'elle ne perde plus de poids, et pesez de nouveau ; la part qui reste est la matière sèche. Trois échantillons de jours différents.
# of 50869e23, reviewed: false
practice-measurements-volatile_solids_share-text = Un laboratoire brûle un échantillon séché à 550 °C : ce qui part en brûlant est volatil. Sans laboratoire, cherchez dans le fumier la terre et le sable, qui font baisser cette part.
# of 1e831f39, reviewed: false
practice-measurements-bulk_density-text = Pesez un seau vide, plein d'eau et plein de la matière telle qu'elle est transportée ; le poids de la matière divisé par celui de l'eau, tous deux sans le seau, est sa densité en kilogrammes par litre.
# of 56562efd, reviewed: false
practice-measurements-dung_per_day-text = Ramassez et pesez tout le fumier des animaux pendant un jour et une nuit entiers, trois jours différents, et divisez par le nombre de têtes.
# of 56562efd, reviewed: false
practice-measurements-dung_per_live_weight-text = Ramassez et pesez tout le fumier des animaux pendant un jour et une nuit entiers, trois jours différents, et divisez par le nombre de têtes.
# of 4563bb09, reviewed: false
practice-measurements-collectable_share_stall-text = Pesez ce qui est réellement ramassé en un jour plutôt que ce qui tombe.
# of bf902f20, reviewed: false
practice-measurements-collectable_share_night_pen-text = Pesez ce qui se trouve dans l'enclos chaque matin pendant trois jours.
# of 7b531432, reviewed: false
practice-measurements-collectable_share_grazing-text = Pesez ce qui est réellement rapporté à la maison en un jour.
# of c5d7da05, reviewed: false
practice-measurements-urine_per_day-text = Mesurez ce qui coule dans la fosse à urine en un jour, trois jours sans pluie.
# of dd9160bd, reviewed: false
practice-measurements-fill_share-text = Prenez le volume de substrat au niveau normal sur le plan du constructeur, ou mesurez le niveau et les dimensions intérieures avant le remplissage, de l'extérieur et jamais en entrant dans un digesteur qui a servi.
# of e288a8c1, reviewed: false
practice-measurements-gas_storage_share-text = Prenez le volume de stockage sur le plan du constructeur ; dans un dôme, c'est le bassin de compensation entre le niveau le plus bas et le niveau du trop-plein.
# of 10a8b201, reviewed: false
practice-measurements-digester_temperature-text = Suspendez un thermomètre dans du substrat qui vient d'être puisé à la sortie, chaque semaine pendant la saison froide et la saison chaude.
# of e3c8c16e, reviewed: false
practice-measurements-soil_offset-text = Mesurez la température du substrat à la sortie, chaque semaine pendant la saison froide et la saison chaude.
# of be8d4d3c, reviewed: false
practice-measurements-yearly_swing-text = Demandez à la station météo la plus proche les douze moyennes mensuelles de la température de l'air.
# of 60c8c09b, reviewed: false
practice-measurements-soil_depth-text = Prenez la profondeur du milieu du substrat sous le sol sur le plan ou avec une jauge plongée dans la sortie ; indiquez-la comme profondeur du digesteur.
# of 54e956c0, reviewed: false
practice-measurements-biogas_yield-text = Faites faire un essai en discontinu, ou lisez chaque jour un compteur de gaz pendant un mois d'alimentation régulière et divisez par la matière volatile apportée.
# of 12ab9a6d, reviewed: false
practice-measurements-methane_share-text = Faites mesurer le gaz en plein air, au brûleur, avec un analyseur portable, par une personne formée.
# of a4c82ce0, reviewed: false
practice-measurements-nitrogen_share-text = Un laboratoire de sols ou d'aliments du bétail mesure l'azote total d'un échantillon séché.
# of 4c8c60db, reviewed: false
practice-measurements-ammonium_share-text = Un laboratoire mesure l'ammonium et l'azote total du digestat frais.
# of 15313d7f, reviewed: false
practice-measurements-carbon_to_nitrogen_of_feed-text = Un laboratoire de sols ou d'aliments du bétail mesure le carbone et l'azote d'un échantillon séché.
# of 124c2e50, reviewed: false
practice-measurements-slurry_ph-text = Plongez un papier pH ou un pH-mètre dans du substrat frais pris à la sortie, aussitôt après l'avoir puisé.
# of 27d4fc95, reviewed: false
practice-measurements-settling_share-text = Laissez reposer un seau de mélange d'alimentation un quart d'heure, versez ce qui est au-dessus, séchez et pesez le sable, et comparez avec les cendres de la matière.
# of ed7cc696, reviewed: false
practice-measurements-gas_per_hour-text = Lisez un compteur de gaz avant et après une heure de combustion, sans rien d'autre d'allumé, trois jours différents ; sans compteur, regardez de combien une cloche descend pendant cette heure.
# of be4e6038, reviewed: false
practice-measurements-gas_per_person-text = Lisez un compteur de gaz, ou comptez les heures de chaque brûleur, pendant une semaine de cuisine habituelle, et divisez par le nombre de personnes et de jours.
# of 5d84f3c6, reviewed: false
practice-measurements-biogas_stove_efficiency-text = Chauffez de 50 K une marmite d'eau pesée avec du gaz mesuré au compteur : 4.19 kJ par kilogramme et kelvin, divisés par la chaleur du gaz.
# of 9a29e7f2, reviewed: false
practice-measurements-fuel_stove_efficiency-text = Pesez le combustible que le ménage brûle en une semaine de cuisine habituelle avant qu'il y ait du gaz ; cela vaut mieux que n'importe quel rendement.
# of ebd62497, reviewed: false
practice-measurements-leak_share-text = Fermez la vanne le soir et lisez la pression le matin à la même température ; l'eau savonneuse sur chaque raccord montre par où elle s'en va.
# of d2e21774, reviewed: false
practice-measurements-walking_speed-text = Chronométrez un aller-retour avec charge du tas au digesteur.
# of fba548c5, reviewed: false
practice-measurements-mixing_rate-text = Chronométrez le mélange des dix premiers seaux.
