# of 38c9ff27, reviewed: false
facts-distance_to_well-name = Distance à la source d'eau potable la plus proche
# of 5ad04ff0, reviewed: false
facts-distance_to_well-description = Du bord le plus proche du digesteur ou de la fosse à digestat, le long du sol.
# of 21c57e66, reviewed: false
facts-distance_to_dwelling-name = Distance à l'habitation la plus proche
# of 70da58ac, reviewed: false
facts-distance_to_dwelling-description = Du mur le plus proche d'une maison où des gens vivent ou dorment.
# of f2d554d5, reviewed: false
facts-distance_to_kitchen-name = Distance à la cuisine
# of b48e3cf9, reviewed: false
facts-distance_to_kitchen-description = Longueur du trajet du tuyau de gaz.
# of 0b2059ce, reviewed: false
facts-distance_to_stable-name = Distance à l'étable
# of f0777e92, reviewed: false
facts-distance_to_stable-description = De l'endroit où tombe le fumier jusqu'à l'entrée.
# of 9bf57270, reviewed: false
facts-distance_to_tree-name = Distance à l'arbre le plus proche
# of 174355a3, reviewed: false
facts-distance_to_tree-description = Jusqu'au bord de sa couronne.
# of 95f609de, reviewed: false
facts-distance_to_road-name = Distance à la route ou à la piste carrossable la plus proche
# of 024c45a9, reviewed: false
facts-groundwater_depth-name = Profondeur du niveau le plus haut de la nappe
# of ae6f51fb, reviewed: false
facts-groundwater_depth-description = De la surface du sol au niveau le plus haut de la nappe dans l'année.
# of efa578f5, reviewed: false
facts-groundwater_below_pit-name = Sol sec sous la fosse
# of 8035b76b, reviewed: false
facts-groundwater_below_pit-description = Du fond de la fosse jusqu'au niveau le plus haut de la nappe dans l'année ; négatif quand l'eau monte dans la fosse.
# of 059d91ba, reviewed: false
facts-pit_depth-name = Profondeur de la fosse
# of 83c2caf8, reviewed: false
facts-inside_building-name = L'installation se trouve dans un bâtiment ou sous un bâtiment
# of 853cc67e, reviewed: false
facts-inside_building-description = Vrai aussi pour une étable ou un hangar utilisé à autre chose.
# of a0fe54de, reviewed: false
facts-soil_class-name = Terrain du site
# of 1636b743, reviewed: false
facts-flood_prone-name = Le site est inondable ou se trouve sur un passage d'écoulement des eaux
# of 1b1830b4, reviewed: false
facts-runoff_reaches_plant-name = L'eau des toits ou de la cour atteint l'installation
# of e5c4e3cd, reviewed: false
facts-slope-name = Pente du terrain
# of f28b16c8, reviewed: false
facts-overflow_to_own_land-name = La sortie se déverse sur un terrain utilisable de l'exploitation
# of 61aa8b43, reviewed: false
facts-low_place_near_outlet-name = Une pièce, une étable ou une fosse se trouve plus bas qu'une sortie de gaz ou de digestat et à moins de 5 m de celle-ci
# of 2dcd26cb, reviewed: false
facts-latrine_linked-name = Une latrine est reliée à l'installation
# of 1917688b, reviewed: false
facts-pit_walls_supported-name = Les parois de la fosse sont talutées ou étayées
# of 3e2aaf1d, reviewed: false
facts-structure_kind-name = Type de digesteur
# of fa7100c8, reviewed: false
facts-cured_for-name = Temps de durcissement
# of e09dda43, reviewed: false
facts-cured_for-description = Jours depuis le dernier coulage ou le dernier enduit.
# of a72ed627, reviewed: false
facts-water_tightness_test-name = Essai à l'eau du digesteur
# of a7b4fab6, reviewed: false
facts-gas_tightness_test-name = Essai d'étanchéité au gaz de l'espace à gaz
# of c59e127a, reviewed: false
facts-water_test_loss-name = Perte lors de l'essai à l'eau
# of 83996057, reviewed: false
facts-water_test_loss-description = Part du volume du digesteur perdue en un jour, après un jour d'imbibition.
# of 24a552cf, reviewed: false
facts-gas_test_drop-name = Pression perdue lors de l'essai au gaz
# of 23d5387b, reviewed: false
facts-gas_test_drop-description = Part de la pression de départ perdue en 24 heures.
# of 777c8358, reviewed: false
facts-gas_test_temperature_change-name = Écart de température entre les lectures de l'essai au gaz
# of 0adaf29e, reviewed: false
facts-gas_test_temperature_change-description = Sans signe.
# of f4c2e4d4, reviewed: false
facts-inlet_covered-name = L'entrée a un couvercle
# of 2a9fd18f, reviewed: false
facts-overflow_guarded-name = La fosse de sortie est couverte ou entourée d'un garde-corps
# of 06065bb0, reviewed: false
facts-openings_fenced-name = Toutes les fosses et ouvertures sont fermées par un couvercle ou clôturées
# of 7135d30b, reviewed: false
facts-openings_fenced-description = De sorte que ni un enfant ni un animal ne puisse y tomber.
# of d3f0078e, reviewed: false
facts-backfilled-name = La terre est remblayée et damée autour du mur et sur le dôme
# of fc5e55de, reviewed: false
facts-dome_cover_depth-name = Terre au-dessus du dôme
# of 855052c6, reviewed: false
facts-gas_space_coated-name = L'espace à gaz a un enduit étanche au gaz
# of 50c211cb, reviewed: false
facts-dome_cracked-name = Des fissures se voient dans le dôme ou le mur
# of 47c53782, reviewed: false
facts-emptied_at_high_groundwater-name = L'installation est vidée alors que la nappe est au-dessus de son fond
# of 1836ece5, reviewed: false
facts-vent_open_while_emptying-name = L'évent de gaz est ouvert pendant que l'on retire du substrat
# of 063d9045, reviewed: false
facts-built_by_trained_mason-name = Construite par un maçon ou un fabricant formé, d'après un plan éprouvé
# of a56bff99, reviewed: false
facts-outlet_clear-name = La sortie est dégagée
# of 1699cae2, reviewed: false
facts-level_above_port-name = Niveau du substrat au-dessus du haut des orifices d'entrée et de sortie
# of c626c488, reviewed: false
facts-digester_temperature-name = Température du substrat
# of bd2d0cb4, reviewed: false
facts-hydraulic_retention_time-name = Temps de rétention hydraulique
# of e7e17c33, reviewed: false
facts-hydraulic_retention_time-description = Volume de substrat au niveau de service divisé par le substrat apporté par jour.
# of 2fbdc5ed, reviewed: false
facts-scum_thickness-name = Épaisseur de la croûte flottante
# of 3cad2c3d, reviewed: false
facts-first_fill_share-name = Premier remplissage
# of c1fe1373, reviewed: false
facts-first_fill_share-description = Part du volume total remplie par le premier remplissage.
# of 7d750cde, reviewed: false
facts-first_gas_vented-name = Le premier gaz a été évacué en plein air, sans être brûlé
# of e5d473e1, reviewed: false
facts-gas_pressure-name = Pression du gaz dans le digesteur
# of c391a36a, reviewed: false
facts-gas_pressure-description = Par rapport à l'air libre, par exemple la hauteur d'une colonne d'eau.
# of b48c0abe, reviewed: false
facts-gas_sufficiency-name = Gaz d'une journée rapporté au gaz voulu par jour
# of 03bb170d, reviewed: false
facts-gas_use_covered-name = Part du gaz voulu qui est disponible aux heures où il est voulu
# of 62e196cb, reviewed: false
facts-gas_vented_share-name = Part du gaz évacuée sans être brûlée parce que la réserve est pleine
# of 6f1bad23, reviewed: false
facts-pipe_pressure_drop-name = Pression perdue dans le tuyau de gaz à l'heure de pointe
# of f193c809, reviewed: false
facts-appliance_pressure_ratio-name = Pression du gaz à l'appareil rapportée au minimum qu'il lui faut
# of fb53c40a, reviewed: false
facts-appliance_pressure_ratio-description = Pendant que brûle tout ce qui est utilisé à l'heure de pointe.
# of 9977d61b, reviewed: false
facts-flame_arrester-name = Un arrête-flamme ou une garde d'eau se trouve dans la conduite avant les appareils
# of 5813eaa2, reviewed: false
facts-hydrogen_sulfide_in_gas-name = Sulfure d'hydrogène dans le biogaz
# of 12eed560, reviewed: false
facts-condensate_trap-name = La conduite de gaz a un purgeur d'eau de condensation ou s'égoutte vers l'installation
# of 5391f1ef, reviewed: false
facts-trap_water_level-name = Niveau d'eau dans la garde d'eau de la soupape et dans le purgeur
# of 78d9e8e3, reviewed: false
facts-pressure_relief-name = Une soupape de surpression est posée
# of 14f44f6d, reviewed: false
facts-relief_opens_at-name = Pression à laquelle la soupape de surpression s'ouvre
# of 767032d2, reviewed: false
facts-relief_outlet_to_building-name = Distance entre la sortie de la soupape de surpression et les bâtiments et passages
# of 25161ef6, reviewed: false
facts-separate_gas_holder-name = Le gaz est stocké dans un réservoir ou une poche à part
# of 969f754a, reviewed: false
facts-flame_distance-name = Distance du digesteur à la flamme ou au feu le plus proche
# of df68c3b7, reviewed: false
facts-flame_distance-description = L'endroit le plus proche où quelque chose brûle ; indiquez la distance au réchaud si rien d'autre ne brûle.
# of 94b8a1e0, reviewed: false
facts-first_flame_place-name = Lieu de la première flamme
# of 3936ce65, reviewed: false
facts-first_flame_distance-name = Distance du digesteur au lieu de la première flamme
# of 3693d870, reviewed: false
facts-leak_test_method-name = Façon de chercher les fuites
# of de4075d8, reviewed: false
facts-leak_found-name = Bulles lors de l'essai à l'eau savonneuse
# of d7bec5bf, reviewed: false
facts-pipe_tightness_test-name = Essai de pression de la tuyauterie
# of d9354179, reviewed: false
facts-plant_valve-name = Vanne principale au digesteur
# of dfcf8b99, reviewed: false
facts-appliance_valve-name = Vanne à chaque appareil
# of db30d084, reviewed: false
facts-main_valve_shut_at_night-name = La vanne principale est fermée la nuit et quand personne n'est à la maison
# of 4358c831, reviewed: false
facts-hose_as_fixed_line-name = Un tuyau souple sert de conduite de gaz fixe
# of 99ba71e4, reviewed: false
facts-pipe_slope-name = Pente du tuyau de gaz vers le purgeur ou l'installation
# of 3d62270e, reviewed: false
facts-untrapped_low_points-name = Points bas du tuyau de gaz sans purgeur
# of d377b4dd, reviewed: false
facts-pipe_burial_depth-name = Profondeur du tuyau de gaz sous le sol
# of 12e42054, reviewed: false
facts-gas_in_use-name = Du gaz est en train de brûler
# of c342230f, reviewed: false
facts-slurry_removed_while_burning-name = Du substrat est retiré pendant qu'une flamme brûle
# of 5fdb3d78, reviewed: false
facts-flame_before_valve-name = L'allumette est allumée avant l'ouverture du robinet de gaz
# of dfb0f521, reviewed: false
facts-flame_colour-name = Flamme
# of 53da7d31, reviewed: false
facts-kitchen_openings-name = Ouvertures permanentes dans la pièce où se trouve l'appareil
# of 044bff75, reviewed: false
facts-clearance_above_flame-name = Distance au-dessus de la flamme jusqu'à ce qui peut brûler
# of 239e0209, reviewed: false
facts-gas_vented_indoors-name = Du gaz ou l'eau du purgeur est évacué dans une pièce ou une serre
# of f8a018ad, reviewed: false
facts-days_without_gas_use-name = Temps sans utiliser le gaz
# of 2aeb79e4, reviewed: false
facts-ignition_near_open_plant-name = Fumeurs, téléphones, interrupteurs ou étincelles à moins de 5 m d'une installation ouverte
# of e55403e5, reviewed: false
facts-gas_smell_indoors-name = Odeur de gaz à l'intérieur
# of 3561a55b, reviewed: false
facts-gas_meter_used-name = Un détecteur de gaz a été utilisé dans l'air de la pièce
# of 23af2097, reviewed: false
facts-methane_in_room_air-name = Méthane dans l'air de la pièce
# of dfd6d0b9, reviewed: false
facts-hydrogen_sulfide_in_breathed_air-name = Sulfure d'hydrogène dans l'air respiré
# of 2a32309f, reviewed: false
facts-carbon_monoxide_in_room_air-name = Monoxyde de carbone dans l'air de la pièce
# of cb1327e6, reviewed: false
facts-unflued_water_heater_indoors-name = Un chauffe-eau sans conduit de fumée brûle à l'intérieur
# of cd399a12, reviewed: false
facts-unconverted_appliance-name = Un appareil à gaz en bouteille ou à gaz de ville est utilisé sans avoir été modifié
# of d691650d, reviewed: false
facts-water_sufficiency-name = Eau disponible rapportée à l'eau nécessaire
# of e34ed387, reviewed: false
facts-water_sufficiency-description = Eau que l'on peut avoir par jour divisée par l'eau dont l'alimentation a besoin.
# of 41191520, reviewed: false
facts-recycled_liquid_share-name = Liquide de sortie réutilisé, part du liquide de mélange
# of 5437b478, reviewed: false
facts-rain_enters_digester-name = De la pluie ou de l'eau de chasse coule dans l'entrée ou la sortie
# of 9149e6f1, reviewed: false
facts-toilet_flush_volume-name = Eau pour une chasse de la toilette reliée
# of be3180c7, reviewed: false
facts-slurry_total_solids-name = Matière sèche du mélange d'alimentation
# of e7d1bdae, reviewed: false
facts-slurry_total_solids-description = Tel qu'il est apporté, après mélange avec de l'eau ou de l'urine.
# of aba153e9, reviewed: false
facts-feed_contains-name = Ce que l'on trouve dans l'alimentation
# of 012a4b2a, reviewed: false
facts-feed_contains-description = Une liste vide veut dire que quelqu'un a regardé et n'a rien trouvé de tout cela.
# of 8eafbc21, reviewed: false
facts-feeding_interval-name = Temps entre deux alimentations
# of 2e61fe57, reviewed: false
facts-organic_loading_rate-name = Charge organique
# of 44edcd8a, reviewed: false
facts-organic_loading_rate-description = Matière volatile apportée par jour pour chaque mètre cube de substrat dans le digesteur.
# of 4e47897d, reviewed: false
facts-carbon_to_nitrogen-name = Rapport carbone sur azote de l'alimentation
# of cb2af9d1, reviewed: false
facts-total_ammonia_nitrogen-name = Azote ammoniacal total
# of 33e6a4fb, reviewed: false
facts-free_ammonia-name = Ammoniac libre
# of 3fd3eda5, reviewed: false
facts-slurry_ph-name = pH du substrat dans le digesteur
# of aac1ded5, reviewed: false
facts-heap_age-name = Âge du fumier le plus vieux du tas au moment du remplissage
# of 8390042a, reviewed: false
facts-heap_covered-name = Le tas de fumier est couvert
# of 6671d625, reviewed: false
facts-starter_share-name = Digestat d'ensemencement
# of 28a71546, reviewed: false
facts-starter_share-description = Part du premier remplissage qui est du digestat d'une installation en marche.
# of 9ce7eea0, reviewed: false
facts-starts_unaided-name = L'alimentation apporte ses propres microbes
# of 0f8d0d48, reviewed: false
facts-starts_unaided-description = Vrai pour la bouse fraîche de bovins et de buffles.
# of d6997ba8, reviewed: false
facts-fed_share_of_design-name = Alimentation rapportée à l'alimentation prévue à la conception
# of e8f1bbb4, reviewed: false
facts-crop_residue_share-name = Résidus de culture, part de la matière sèche apportée
# of c0e3a075, reviewed: false
facts-poultry_share-name = Fientes de volaille, part de la masse apportée
# of f6e4893b, reviewed: false
facts-human_excreta_fed-name = Des excréments humains sont apportés
# of b4de3a9a, reviewed: false
facts-acid_feed_share-name = Fruits, lactosérum, ensilage et déchets alimentaires, part de la matière volatile apportée
# of 77c0fff5, reviewed: false
facts-particle_length-name = Longueur des plus longs morceaux de l'alimentation
# of dac6dce0, reviewed: false
facts-animals_treated-name = Des animaux ont reçu des antibiotiques ou des vermifuges au cours du dernier mois
# of e499502b, reviewed: false
facts-days_since_medicine-name = Temps depuis le dernier traitement
# of b9882e78, reviewed: false
facts-weekly_feed_increase-name = Augmentation de l'alimentation journalière en une semaine
# of 54dfa6f9, reviewed: false
facts-fed_before_gas_burns-name = De l'alimentation a été ajoutée après le premier remplissage avant que le gaz brûle régulièrement
# of 7a66d594, reviewed: false
facts-foam_seen-name = Mousse à la sortie ou dans le tuyau de gaz
# of f6aa3087, reviewed: false
facts-stirs_per_day-name = Brassages par jour
# of 8e367bcc, reviewed: false
facts-manure_from_restricted_zone-name = Le fumier vient d'une exploitation située dans une zone réglementée pour cause de maladie
# of 08fe7979, reviewed: false
facts-manure_from_other_farms-name = Le fumier vient d'autres exploitations
# of 54c48271, reviewed: false
facts-vehicles_cleaned-name = Les véhicules et les brouettes sont nettoyés entre les exploitations
# of 11a44cf8, reviewed: false
facts-entry_planned-name = Quelqu'un prévoit d'entrer dans le digesteur ou dans une fosse
# of 97788bbd, reviewed: false
facts-entry_planned-description = N'importe qui, pour n'importe quelle raison, dans le digesteur, la fosse de sortie ou une fosse à digestat ou à lisier.
# of 05e7a02d, reviewed: false
facts-entry_team_trained-name = Ceux qui entrent sont une équipe formée et équipée pour les espaces confinés
# of 22954933, reviewed: false
facts-ventilated_for-name = Temps pendant lequel la fosse vidée est restée ouverte et aérée
# of 4681cfad, reviewed: false
facts-oxygen_in_entry_air-name = Oxygène dans l'air de la fosse
# of 5b42cc19, reviewed: false
facts-methane_in_entry_air-name = Méthane dans l'air de la fosse
# of 384a55c4, reviewed: false
facts-hydrogen_sulfide_in_entry_air-name = Sulfure d'hydrogène dans l'air de la fosse
# of e24b8d2e, reviewed: false
facts-harness_and_two_outside-name = Harnais attaché à une corde tenue par deux personnes à l'extérieur
# of d09b36a4, reviewed: false
facts-animal_test_relied_on-name = On juge l'air en y descendant un petit animal
# of 60163b78, reviewed: false
facts-people_or_animals_over_stirred_store-name = Des personnes ou des animaux sont dans le bâtiment pendant que la réserve de lisier située dessous est brassée ou vidée
# of 3d47147f, reviewed: false
facts-head_below_rim-name = Quelqu'un penche la tête plus bas que le rebord d'une installation ouverte
# of 4c64f2a1, reviewed: false
facts-household_knows_no_rescue-name = Chacun sait qu'il ne faut pas suivre une personne qui s'effondre dans une fosse
# of e0a16b9f, reviewed: false
facts-users_trained-name = On a montré aux utilisateurs comment faire marcher l'installation
# of 8f51aa75, reviewed: false
facts-load_carried-name = Charge la plus lourde portée par une personne
# of f6368198, reviewed: false
facts-twisting_when_lifting-name = On tord le dos avec une charge
# of 93d52d77, reviewed: false
facts-carry_distance-name = Distance sur laquelle des charges sont portées sans repos
# of 72066055, reviewed: false
facts-children_carry_loads-name = Des enfants portent du fumier ou de l'eau pour l'installation
# of e13933fa, reviewed: false
facts-daily_mass_per_person-name = Masse qu'une personne déplace en un jour
# of 546282ae, reviewed: false
facts-wet_bulb_globe_temperature-name = Température au thermomètre-globe mouillé pendant le travail lourd
# of 6699d465, reviewed: false
facts-hand_washing-name = On se lave les mains au savon après l'alimentation et le travail du digestat
# of 2766cc3c, reviewed: false
facts-protective_clothing-name = On porte des gants et des bottes et les plaies sont couvertes
# of 794ef391, reviewed: false
facts-vulnerable_people_handle_slurry-name = Des femmes enceintes, de petits enfants ou des malades manipulent du fumier ou du digestat
# of a0f0a543, reviewed: false
facts-digestate_on_raw_crops-name = Du digestat est mis sur des cultures qui se mangent crues
# of 25e9fe23, reviewed: false
facts-edible_part_touches_soil-name = La partie qui se mange touche le sol
# of bc7aa4d3, reviewed: false
facts-days_to_harvest-name = Temps du dernier apport de digestat à la récolte
# of e0056d66, reviewed: false
facts-digestate_stored_for-name = Stockage du digestat avant usage
# of 874a5b28, reviewed: false
facts-digestate_sprayed-name = Le digestat est pulvérisé
# of e2dcaea2, reviewed: false
facts-lime_only_treatment-name = On compte sur la chaux seule pour tuer les œufs de vers
# of d92fb1f6, reviewed: false
facts-sludge_stored_or_composted-name = La boue du fond est stockée ou compostée avant usage
# of 9ed0e2cb, reviewed: false
facts-stockpile_sufficiency-name = Fumier en tas rapporté au fumier nécessaire
# of 240f98a9, reviewed: false
facts-stockpile_sufficiency-description = Le jour du remplissage, uniquement ce que vous avez ramassé vous-même.
# of 839e0beb, reviewed: false
facts-seal_margin-name = Premier remplissage rapporté au minimum qui rend étanches l'entrée et la sortie
# of d704803a, reviewed: false
facts-fill_margin-name = Premier remplissage rapporté au maximum que l'ouvrage peut recevoir
# of 21e9dfa4, reviewed: false
facts-water_days-name = Jours pour rassembler l'eau du premier remplissage
# of 9087aaa3, reviewed: false
facts-total_volume-name = Volume total du digesteur
# of 8f8ad428, reviewed: false
facts-total_volume-description = Substrat et espace à gaz ensemble.
# of d366937a, reviewed: false
facts-supply_sufficiency-name = Ce que donne le troupeau rapporté à ce qui est apporté
# of 6eb8f575, reviewed: false
facts-feed_sufficiency-name = Gaz de l'alimentation disponible rapporté au gaz voulu
# of 13482b99, reviewed: false
facts-feed_sufficiency-description = De ce que donnent les animaux, ou de l'alimentation indiquée, dans un digesteur assez grand pour la recevoir tout entière.
# of 65d7e0f0, reviewed: false
facts-dose_share-name = Mélange d'une alimentation rapporté au volume utile
# of c4b48dab, reviewed: false
facts-rotation_sufficiency-name = Production régulière de gaz des digesteurs discontinus à tour de rôle rapportée à la demande
# of 0bf0955c, reviewed: false
facts-rotation_sufficiency-description = De la rotation indiquée, ou de la plus grande là où aucune ne couvre la demande.
# of 7ce50edf, reviewed: false
facts-charge_start_reliability-name = Charges qui parviennent à donner un gaz qui brûle
# of 7fb095e1, reviewed: false
facts-charge_start_reliability-description = Part des charges plausibles de cette matière, cette dilution, cet ensemencement et cette température, d'après le modèle du procédé.
# of fada7abd, reviewed: false
facts-full_gas_pressure_margin-name = Pression de l'espace à gaz plein rapportée à ce que l'ouvrage supporte
# of e8183de3, reviewed: false
facts-full_gas_pressure_margin-description = Pression relative avec le substrat au trop-plein, rapportée à la plus haute pression de service de ce type d'ouvrage.
# of 455938f7, reviewed: false
facts-coldest_month_air_temperature-name = Air du mois le plus froid
# of b96b607e, reviewed: false
facts-coldest_month_air_temperature-description = Moyenne du mois, jour et nuit.
# of 7d49aff9, reviewed: false
facts-coldest_slurry_temperature-name = Substrat du mois le plus froid
# of 09df1094, reviewed: false
facts-warmest_slurry_temperature-name = Substrat du mois le plus chaud
# of 293f9c5c, reviewed: false
facts-cold_season_gas_share-name = Gaz du mois le plus froid rapporté à la moyenne de l'année
# of e969d0af, reviewed: false
facts-cold_season_gas_share-description = Avec la même alimentation ; la moyenne de l'année est celle à sa température moyenne.
# of 7b8441d0, reviewed: false
facts-digestate_on_fodder-name = Du digestat est mis sur du fourrage ou un pâturage
# of 41262265, reviewed: false
facts-nitrogen_per_area-name = Azote du fumier sur la parcelle qui en reçoit le plus
# of e11be87a, reviewed: false
facts-nitrogen_per_area-description = Azote total par an, de tout le fumier et de tout le digestat, tel qu'il est apporté à la parcelle.
# of e26ebce6, reviewed: false
facts-slurry_store_sufficiency-name = Réserve de digestat rapportée à ce qui s'accumule entre deux épandages
# of d23db8a2, reviewed: false
facts-acid_ratio_forecast-name = Plus haut rapport prévu entre acides volatils et alcalinité
# of 81353237, reviewed: false
facts-acid_ratio_forecast-description = Du digesteur typique après son premier mois ; une prévision et non une mesure.
# of 207814f7, reviewed: false
facts-longest_feeding_gap-name = Plus longue période qu'aucun plan d'alimentation ne couvre
# of 8138a6e0, reviewed: false
facts-gas_ratio-name = Gaz mesuré rapporté au gaz attendu de l'alimentation
# of 2955b37c, reviewed: false
facts-gas_ratio-description = Par rapport à la valeur typique de ce que cette alimentation donne dans ce digesteur à sa température.
# of 6dce636b, reviewed: false
facts-gas_ratio_to_low-name = Gaz mesuré rapporté au minimum attendu de l'alimentation
# of a7b8fdd1, reviewed: false
facts-gas_ratio_to_low-description = En dessous de 1, il y a moins de gaz que n'en auraient dix-neuf sur vingt de ces exploitations.
# of a2ca34b8, reviewed: false
facts-methane_in_gas-name = Méthane dans le biogaz
# of ae50fed1, reviewed: false
facts-methane_in_gas-description = En volume, dans le gaz tel qu'il sort du digesteur.
# of 83eb4b18, reviewed: false
facts-volatile_acids_to_alkalinity-name = Acides volatils rapportés à l'alcalinité du substrat
# of 71820242, reviewed: false
facts-volatile_acids_to_alkalinity-description = Les deux dans la même unité, tels que mesurés.
# of cb4431b4, reviewed: false
facts-days_since_feeding-name = Temps depuis la dernière alimentation
# of 36dce85f, reviewed: false
facts-digester_age-name = Temps depuis le premier remplissage du digesteur
# of bb580a91, reviewed: false
facts-total_volume_to_smallest-name = Volume total par rapport au plus petit que l'on construit de ce type
# of c7dcc51b, reviewed: false
facts-total_volume_to_largest-name = Volume total par rapport au plus grand que l'on construit de ce type
# of 813f3d2b, reviewed: false
facts-gas_storage_to_usual-name = Réserve de gaz par rapport à l'usage pour le volume total
# of c785d217, reviewed: false
facts-herd_to_largest_herd-name = Fumier du troupeau par rapport au plus que prend le digesteur
# of 1041db11, reviewed: false
facts-herd_to_largest_herd-description = Avec l'eau habituelle, à la rétention la plus courte qui est habituelle à sa température.
# of 40970afc, reviewed: false
facts-herd_to_smallest_herd-name = Fumier du troupeau par rapport au moins qui remplit le digesteur
# of 25ec9f4a, reviewed: false
facts-herd_to_smallest_herd-description = Avec l'eau habituelle, à la rétention la plus longue qui est habituelle à sa température.
# of 9f25cf16, reviewed: false
facts-mean_air_temperature-name = Air, moyenne de l'année
# of 496ace8e, reviewed: false
facts-feed_to_herd_most-name = Alimentation par rapport au plus que peut donner le troupeau
# of 2533fa83, reviewed: false
facts-water_to_wettest-name = Eau de mélange par rapport au plus dont on dilue cette matière
# of bfcac76f, reviewed: false
facts-gas_ratio_to_high-name = Gaz mesuré par rapport au plus que l'on attend de l'alimentation
# of f3a523ae, reviewed: false
facts-gas_pressure_to_highest-name = Pression du gaz par rapport à la plus haute en usage avec ce type de digesteur
# of 98262224, reviewed: false
facts-gas_is_measured-name = Le gaz d'un jour a été mesuré
# of 7ad14ada, reviewed: false
facts-age_at_visit-name = Temps de la mise en service à la visite
# of 983d2788, reviewed: false
facts-age_over_retention-name = Âge du digesteur par rapport à la rétention de calcul
# of 535e0a69, reviewed: false
facts-methane_loss_over_saving-name = Réchauffement par le méthane perdu par rapport à ce qui est économisé
