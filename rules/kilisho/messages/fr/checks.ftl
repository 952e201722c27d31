# of 938499fd, reviewed: false
checks-cooked_crops_wait-title = Un mois s'écoule entre l'apport de digestat et la récolte des cultures qui se mangent cuites
# of d5fb6c42, reviewed: false
checks-cooked_crops_wait-why = On a constaté que la plupart des germes du fumier vivent environ un mois dans le sol ; or les mains et les paniers touchent à l'état cru ce qui sera cuit plus tard.
# of 694bbab2, reviewed: false
checks-cooked_crops_wait-do = Apportez le digestat avant la plantation ou quand la culture est jeune.
# of a8d48b3f, reviewed: false
checks-fodder_wait-title = Six semaines s'écoulent entre l'apport de digestat et la coupe ou le pâturage du fourrage
# of d9590ac9, reviewed: false
checks-fodder_wait-why = Les germes et les œufs de vers retournent aux animaux avec l'herbe.
# of 75436095, reviewed: false
checks-fodder_wait-do = Épandez juste après une coupe ou un pâturage, et tenez les animaux à l'écart jusqu'à la fin du délai.
# of c4f35028, reviewed: false
checks-nitrogen_limit_elsewhere_kept-title = Aucun champ ne reçoit plus de 170 kg d'azote de fumier par hectare et par an
# of 73eeb0f8, reviewed: false
checks-nitrogen_limit_elsewhere_kept-why = Ce que les cultures n'absorbent pas descend sous forme de nitrate jusqu'aux puits et aux cours d'eau.
# of 71859e4e, reviewed: false
checks-nitrogen_limit_elsewhere_kept-do = Suivez d'abord la règle locale ; s'il n'y en a pas, épandez sur une plus grande surface, en doses plus petites, pendant que la culture pousse.
# of e86066cc, reviewed: false
checks-slurry_store_holds-title = La réserve de digestat contient tout ce qui s'accumule entre deux épandages
# of 1274e0f2, reviewed: false
checks-slurry_store_holds-why = Une réserve qui déborde envoie le digestat vers les puits et les cours d'eau, et un épandage hâtif sur un sol nu ou détrempé le gaspille.
# of 758c6956, reviewed: false
checks-slurry_store_holds-do = Construisez-la plus grand, ou épandez plus souvent sur des cultures qui poussent toute l'année, comme l'herbe à éléphant ou les bananiers.
# of 41040968, reviewed: false
checks-no_flame_at_digester-title = Aucune flamme nue ni aucun feu ne se trouve à moins de 5 m du digesteur
# of ab4c4e18, reviewed: false
checks-no_flame_at_digester-why = Le gaz qui fuit prend feu et la flamme remonte jusqu'à l'installation.
# of 7fa4d107, reviewed: false
checks-no_flame_at_digester-do = Éteignez ou éloignez le feu maintenant, et gardez 5 m de distance avec toute partie qui contient du gaz.
# of cb3a769c, reviewed: false
checks-first_flame_not_at_digester-title = La première flamme n'est jamais allumée au digesteur, à son tuyau, à son entrée ou à sa sortie
# of f40a9ee1, reviewed: false
checks-first_flame_not_at_digester-why = Le premier gaz est mélangé à de l'air, et une flamme à cet endroit peut remonter et faire exploser l'installation.
# of caf8e55e, reviewed: false
checks-first_flame_not_at_digester-do = Allumez uniquement à l'appareil, au bout du tuyau.
# of ba6a07db, reviewed: false
checks-first_flame_outdoors-title = La première flamme est essayée sur le réchaud, dehors
# of d06665f3, reviewed: false
checks-first_flame_outdoors-why = Le premier gaz peut contenir de l'air, et beaucoup de gaz non brûlé s'échappe avant que la flamme tienne.
# of 935e73ed, reviewed: false
checks-first_flame_outdoors-do = Portez le réchaud dehors pour le premier essai, avec le tuyau souple déroulé sur toute sa longueur.
# of 0dbca6ce, reviewed: false
checks-first_flame_distance-title = La première flamme est essayée à 10 m au moins du digesteur
# of 28818b49, reviewed: false
checks-first_flame_distance-why = Le gaz autour de l'installation et l'air dans le tuyau peuvent s'enflammer.
# of 3eb7abdb, reviewed: false
checks-first_flame_distance-do = Éloignez le réchaud à 10 m ou plus, et placez un arrête-flamme ou une garde d'eau sur la conduite.
# of a3a77891, reviewed: false
checks-leak_test_without_flame-title = Personne ne cherche les fuites avec une flamme
# of b8a13054, reviewed: false
checks-leak_test_without_flame-why = Des gens sont morts dans des explosions en cherchant du gaz avec une allumette.
# of feeaafa1, reviewed: false
checks-leak_test_without_flame-do = Utilisez de l'eau savonneuse et rien d'autre.
# of b3c2614f, reviewed: false
checks-leak_test_done-title = Les raccords ont été contrôlés à l'eau savonneuse
# of 5f79eb0c, reviewed: false
checks-leak_test_done-why = Une petite fuite ne se voit pas et, au bout d'un moment, son odeur ne se sent plus.
# of 220e116e, reviewed: false
checks-leak_test_done-do = Passez au pinceau de l'eau savonneuse sur chaque raccord, chaque vanne et chaque bout de tuyau souple sous pression, et regardez s'il y a des bulles.
# of 56735b7c, reviewed: false
checks-first_gas_vented-title = Le premier gaz a été évacué dehors, sans le brûler, avant la première flamme
# of fc13b27e, reviewed: false
checks-first_gas_vented-why = L'espace à gaz contient encore de l'air, et le mélange peut exploser.
# of a9cddec6, reviewed: false
checks-first_gas_vented-do = Évacuez le gaz dehors une ou deux fois quand le manomètre atteint pour la première fois environ 4 kPa (40 cm d'eau), loin de toute flamme, et essayez ensuite le réchaud.
# of 9a838ebf, reviewed: false
checks-flame_before_valve-title = L'allumette est allumée avant l'ouverture du robinet de gaz
# of fdeb05dc, reviewed: false
checks-flame_before_valve-why = Le gaz qui sort d'abord s'enflamme d'un seul coup.
# of 533b3166, reviewed: false
checks-flame_before_valve-do = Allumez l'allumette, tenez-la près du brûleur, puis ouvrez le robinet.
# of 883d7856, reviewed: false
checks-no_suction_with_flame-title = Le digesteur est sous pression chaque fois que l'on brûle du gaz
# of 5c15abe8, reviewed: false
checks-no_suction_with_flame-why = À pression nulle, de l'air est aspiré et le gaz devient explosif.
# of d181bac4, reviewed: false
checks-no_suction_with_flame-do = Fermez la vanne principale, éteignez toutes les flammes, et remettez du substrat ou de l'eau jusqu'au niveau habituel.
# of 95663bf4, reviewed: false
checks-no_emptying_while_burning-title = On ne retire pas de substrat pendant qu'une flamme brûle
# of 62808dae, reviewed: false
checks-no_emptying_while_burning-why = Retirer du substrat aspire la flamme ou de l'air dans l'espace à gaz.
# of 05a80c4c, reviewed: false
checks-no_emptying_while_burning-do = Éteignez toutes les flammes et fermez la vanne avant de retirer du substrat, et gardez l'évent ouvert pendant ce temps.
# of 1c8bde4c, reviewed: false
checks-main_valve_shut_at_night-title = La vanne principale est fermée la nuit et quand personne n'est à la maison
# of 248872b2, reviewed: false
checks-main_valve_shut_at_night-why = Un robinet laissé ouvert remplit la pièce de gaz.
# of e0e9bba9, reviewed: false
checks-main_valve_shut_at_night-do = Faites de la fermeture de la vanne au digesteur le dernier travail de la journée.
# of c19a2834, reviewed: false
checks-kitchen_openings-title = La pièce où se trouve l'appareil a deux ouvertures permanentes, l'une en haut et l'autre en bas
# of 12baab95, reviewed: false
checks-kitchen_openings-why = Le gaz qui fuit et le monoxyde de carbone de la flamme doivent pouvoir sortir.
# of 32cfbbf1, reviewed: false
checks-kitchen_openings-do = Percez une ouverture sous le toit et une autre près du sol ; n'utilisez pas le réchaud dans une pièce fermée.
# of 9df2ecba, reviewed: false
checks-clearance_above_flame-title = Rien qui puisse brûler ne se trouve à moins de 1 m au-dessus d'un réchaud ou d'une lampe
# of 50b979b2, reviewed: false
checks-clearance_above_flame-why = Les gaz chauds montent et enflamment un toit de chaume.
# of af6f20b5, reviewed: false
checks-clearance_above_flame-do = Déplacez la lampe ou le réchaud, ou suspendez un écran de métal au-dessus.
# of 9999b59c, reviewed: false
checks-gas_not_vented_indoors-title = Ni gaz ni eau de purgeur ne sont évacués dans une pièce ou une serre
# of f515cb11, reviewed: false
checks-gas_not_vented_indoors-why = Le gaz empoisonne, prend la place de l'air et peut exploser.
# of c56ee35e, reviewed: false
checks-gas_not_vented_indoors-do = Conduisez dehors chaque évent et chaque purge.
# of 25228afa, reviewed: false
checks-gas_used_within_week-title = Le gaz est utilisé au moins une fois par semaine
# of 82c8747c, reviewed: false
checks-gas_used_within_week-why = La pression monte jusqu'à ce que l'installation lâche du gaz ou éclate.
# of d5724325, reviewed: false
checks-gas_used_within_week-do = Brûlez le gaz dans un réchaud ou une torchère, ou arrêtez l'alimentation.
# of 06f3bb5f, reviewed: false
checks-no_ignition_at_open_plant-title = Personne ne fume, ne téléphone, n'actionne d'interrupteur ni ne fait d'étincelles près d'une installation ouverte
# of eb7b54ba, reviewed: false
checks-no_ignition_at_open_plant-why = Une étincelle suffit pour enflammer le gaz au-dessus d'un digesteur ouvert.
# of 98418bff, reviewed: false
checks-no_ignition_at_open_plant-do = Gardez tout cela à 5 m tant que quelque chose est ouvert.
# of 31ce196c, reviewed: false
checks-no_gas_smell_indoors-title = Il n'y a pas d'odeur de gaz à l'intérieur
# of 8c4ac13a, reviewed: false
checks-no_gas_smell_indoors-why = Du gaz dans une pièce peut exploser ou empoisonner, et le nez cesse vite de le remarquer.
# of 0078742e, reviewed: false
checks-no_gas_smell_indoors-do = Éteignez les flammes, ne touchez à aucun interrupteur, ouvrez portes et fenêtres, faites sortir tout le monde et fermez la vanne au digesteur ; cherchez la fuite à l'eau savonneuse.
# of 0401ac27, reviewed: false
checks-methane_in_room_air_danger-title = Le méthane mesuré dans la pièce est inférieur à 0.5 %
# of d0a51cc8, reviewed: false
checks-methane_in_room_air_danger-why = C'est le dixième de la teneur qui explose, le seuil à partir duquel l'air est considéré comme dangereux.
# of 7d8804bf, reviewed: false
checks-methane_in_room_air_danger-do = Faites sortir tout le monde, fermez la vanne au digesteur, ouvrez les portes, ne touchez à aucun interrupteur.
# of 34acccd6, reviewed: false
checks-methane_in_room_air_much-title = Le méthane mesuré dans la pièce est inférieur à 0.25 %
# of 8ca1dc29, reviewed: false
checks-methane_in_room_air_much-why = C'est la moitié de la teneur considérée comme dangereuse, et ailleurs dans la pièce ou sous son toit il peut y en avoir plus.
# of fe5b10d5, reviewed: false
checks-methane_in_room_air_much-do = Éteignez les flammes, ne touchez à aucun interrupteur, ouvrez portes et fenêtres, fermez la vanne au digesteur, et n'utilisez pas de gaz avant que l'eau savonneuse ait montré la fuite et qu'elle soit fermée.
# of 9e066fa0, reviewed: false
checks-methane_in_room_air_leak-title = Le méthane mesuré dans la pièce est inférieur à 0.1 %
# of bb602ba0, reviewed: false
checks-methane_in_room_air_leak-why = L'air ne contient presque pas de méthane par lui-même : ce qu'un appareil de mesure montre dans une pièce vient donc d'une fuite.
# of a987342a, reviewed: false
checks-methane_in_room_air_leak-do = Fermez la vanne au digesteur, aérez la pièce et cherchez la fuite dès aujourd'hui à l'eau savonneuse sur chaque raccord, tuyau souple et robinet.
# of 7aa948f9, reviewed: false
checks-hydrogen_sulfide_air_danger-title = L'air respiré ne contient pas plus de 10 ppm de sulfure d'hydrogène
# of 065cd7ed, reviewed: false
checks-hydrogen_sulfide_air_danger-why = Au-delà, on tombe malade en quelques minutes, et à quelques centaines de ppm on s'effondre sans avertissement.
# of 37e6c061, reviewed: false
checks-hydrogen_sulfide_air_danger-do = Partez aussitôt contre le vent et n'y retournez pas sans appareil à apport d'air.
# of 1502d8c7, reviewed: false
checks-hydrogen_sulfide_air_short-title = L'air respiré ne contient pas plus de 5 ppm de sulfure d'hydrogène
# of 7e2d22f7, reviewed: false
checks-hydrogen_sulfide_air_short-why = C'est plus que ce que des travailleurs peuvent respirer, même un quart d'heure, et la teneur peut monter en quelques instants.
# of 810a5a96, reviewed: false
checks-hydrogen_sulfide_air_short-do = Allez à l'air frais contre le vent, tenez les autres à l'écart, fermez la vanne au digesteur, et ne laissez personne y rester tant que la fuite n'est pas trouvée et que la teneur mesurée dans l'air n'a pas baissé.
# of 0899429a, reviewed: false
checks-hydrogen_sulfide_air_day-title = L'air respiré ne contient pas plus de 1 ppm de sulfure d'hydrogène
# of f0743eed, reviewed: false
checks-hydrogen_sulfide_air_day-why = C'est plus que ce que des travailleurs peuvent respirer jour après jour, et cela indique que du gaz s'échappe tout près.
# of 0d8ec0d0, reviewed: false
checks-hydrogen_sulfide_air_day-do = Aérez l'endroit, cherchez la fuite à l'eau savonneuse, gardez couvercles et fosses fermés, et mesurez de nouveau ; ne vous fiez pas à l'odeur.
# of 16f13d04, reviewed: false
checks-carbon_monoxide_danger-title = Le monoxyde de carbone mesuré dans la pièce ne dépasse pas 90 ppm
# of 6c2e12c4, reviewed: false
checks-carbon_monoxide_danger-why = Au-delà, un quart d'heure suffit pour nuire ; il n'a pas d'odeur.
# of 4a902f42, reviewed: false
checks-carbon_monoxide_danger-do = Éteignez l'appareil, emmenez tout le monde à l'air frais et appelez les secours si quelqu'un a des vertiges.
# of f4efcd9a, reviewed: false
checks-carbon_monoxide_half_hour-title = Le monoxyde de carbone mesuré dans la pièce ne dépasse pas 50 ppm
# of 44426901, reviewed: false
checks-carbon_monoxide_half_hour-why = Au-delà, une demi-heure suffit pour nuire, d'abord aux enfants et aux femmes enceintes ; il n'a pas d'odeur.
# of 84ea3bf0, reviewed: false
checks-carbon_monoxide_half_hour-do = Éteignez l'appareil, emmenez tout le monde à l'air frais, ouvrez portes et fenêtres, et n'y allumez rien tant que le brûleur et les aérations ne sont pas remis en état.
# of 5982964d, reviewed: false
checks-carbon_monoxide_hour-title = Le monoxyde de carbone mesuré dans la pièce ne dépasse pas 25 ppm
# of 4218d1a2, reviewed: false
checks-carbon_monoxide_hour-why = Au-delà, une heure suffit pour nuire, et un repas peut cuire plus longtemps.
# of 0f98eae0, reviewed: false
checks-carbon_monoxide_hour-do = Éteignez l'appareil, aérez la pièce, nettoyez le brûleur et réglez son air, et percez les aérations qui manquent avant de le rallumer.
# of adcb0447, reviewed: false
checks-carbon_monoxide_eight_hours-title = Le monoxyde de carbone mesuré dans la pièce ne dépasse pas 10 ppm
# of 22b02eea, reviewed: false
checks-carbon_monoxide_eight_hours-why = Au-delà, une journée de travail ou une nuit dans cet air nuit, et il en vient davantage tant que la flamme manque d'air.
# of 4ef28d2d, reviewed: false
checks-carbon_monoxide_eight_hours-do = Aérez la pièce, ne laissez personne y dormir tant qu'une flamme brûle, nettoyez le brûleur, réglez son air et mesurez de nouveau.
# of 74cbbce6, reviewed: false
checks-no_unflued_heater-title = Aucun chauffe-eau sans conduit de fumée ne brûle à l'intérieur
# of cb52c4c7, reviewed: false
checks-no_unflued_heater-why = Son monoxyde de carbone tue des gens dans les salles de bain.
# of 3d893ae5, reviewed: false
checks-no_unflued_heater-do = Mettez-le hors service ; installez-le dehors ou posez un conduit de fumée comme le demande la réglementation locale.
# of 6c4301de, reviewed: false
checks-flame_is_blue-title = La flamme brûle bleue et régulière
# of 23d5352f, reviewed: false
checks-flame_is_blue-why = Une flamme jaune ou qui fait de la suie manque d'air et produit du monoxyde de carbone ; une flamme qui se décolle s'éteint et laisse échapper du gaz.
# of 120d6de8, reviewed: false
checks-flame_is_blue-do = Nettoyez les trous du brûleur et réglez la bague d'air.
# of 6d3bf5f1, reviewed: false
checks-appliance_converted-title = Aucun appareil à gaz en bouteille ou à gaz de ville n'est utilisé sans transformation
# of cdcc699d, reviewed: false
checks-appliance_converted-why = Son injecteur et ses orifices ne conviennent pas au biogaz : la flamme se décolle ou revient en arrière.
# of 18942e78, reviewed: false
checks-appliance_converted-do = Faites agrandir et essayer l'injecteur et les orifices par quelqu'un qui connaît les brûleurs à biogaz.
# of b215dbef, reviewed: false
checks-gas_supply_covers_demand-title = Le gaz d'une journée atteint la quantité que l'on veut par jour
# of 1dd6b536, reviewed: false
checks-gas_supply_covers_demand-why = Ce qui manque est remplacé par du bois ou acheté, et les gens perdent confiance dans l'installation.
# of a9622d58, reviewed: false
checks-gas_supply_covers_demand-do = Alimentez davantage si le digesteur le supporte, brûlez le gaz là où il est le plus utile, ou utilisez moins de brûleurs.
# of 340e5e98, reviewed: false
checks-gas_there_when_wanted-title = Au moins 90 % du gaz voulu est là au moment où on le veut
# of 532aafbc, reviewed: false
checks-gas_there_when_wanted-why = La flamme s'éteint au milieu d'un repas, et du gaz peut ensuite sortir sans brûler.
# of 7f47dd61, reviewed: false
checks-gas_there_when_wanted-do = Fermez le robinet quand une flamme s'éteint ; déplacez un usage à une heure où il y a du gaz, ou stockez davantage.
# of fe1102ce, reviewed: false
checks-gas_not_wasted-title = Pas plus d'un dixième du gaz est évacué sans être brûlé
# of 76776298, reviewed: false
checks-gas_not_wasted-why = Le gaz évacué peut prendre feu, et son méthane réchauffe le climat bien plus que ne le ferait une flamme.
# of 5d617587, reviewed: false
checks-gas_not_wasted-do = Utilisez le gaz, stockez davantage ou alimentez moins ; brûlez ce qui reste dans une torchère, dehors.
# of d513f7b8, reviewed: false
checks-pipe_drop_usual-title = Le tuyau ne perd pas plus de 0.5 kPa à l'heure où l'on consomme le plus
# of 5952d470, reviewed: false
checks-pipe_drop_usual-why = Trop peu de pression arrive au brûleur, et sa flamme faiblit ou s'éteint.
# of 0dd463cc, reviewed: false
checks-pipe_drop_usual-do = Prenez un tuyau plus large, un chemin plus court ou moins de coudes.
# of b02186d7, reviewed: false
checks-appliance_pressure_enough-title = Le gaz arrive à l'appareil avec la pression dont celui-ci a besoin
# of 5c4f3d0a, reviewed: false
checks-appliance_pressure_enough-why = Une flamme sans pression revient en arrière, ou s'éteint et laisse échapper du gaz non brûlé.
# of 66bc18d6, reviewed: false
checks-appliance_pressure_enough-do = Prenez un tuyau plus large, allumez moins d'appareils à la fois, ou lestez la cloche ou la poche comme son fabricant le permet, en restant sous sa limite.
# of e2a2b798, reviewed: false
checks-losses_do_not_undo_savings-why = Le méthane réchauffe 27 fois plus que le dioxyde de carbone : une fuite de quelques pour cent peut donc annuler le gain du combustible économisé.
# of acd7ea79, reviewed: false
checks-losses_do_not_undo_savings-do = Cherchez les fuites à l'eau savonneuse, utilisez tout le gaz, et brûlez ce qui reste.
# of dd9762a3, reviewed: false
checks-flame_arrester_fitted-title = Un arrête-flamme ou une garde d'eau se trouve avant les appareils
# of 8a41dc26, reviewed: false
checks-flame_arrester_fitted-why = Un retour de flamme ne doit pas courir le long du tuyau jusqu'au stockage de gaz.
# of b2a1ee81, reviewed: false
checks-flame_arrester_fitted-do = Posez-en un sur la conduite, et nettoyez-le quand la flamme faiblit.
# of 51935636, reviewed: false
checks-hydrogen_sulfide_gas_usual-title = Le biogaz ne contient pas plus de 1000 ppm de sulfure d'hydrogène
# of 1d7efcf5, reviewed: false
checks-hydrogen_sulfide_gas_usual-why = Une teneur plus forte ronge les réchauds, et même une petite fuite à l'intérieur est toxique.
# of b4eee09e, reviewed: false
checks-hydrogen_sulfide_gas_usual-do = Posez ou renouvelez un filtre à fer, et gardez la cuisine bien aérée.
# of fd3265d2, reviewed: false
checks-hydrogen_sulfide_gas_much-title = Le biogaz ne contient pas plus de 3000 ppm de sulfure d'hydrogène
# of a58d50a2, reviewed: false
checks-hydrogen_sulfide_gas_much-why = Un tel gaz met aussitôt la vie en danger même là où trente fois plus d'air l'a dilué, et il ronge vite réchauds et vannes.
# of af82ac03, reviewed: false
checks-hydrogen_sulfide_gas_much-do = Placez un filtre à fer dans la conduite avant de brûler encore du gaz à l'intérieur, testez chaque raccord à l'eau savonneuse, tenez-vous loin de l'endroit où le gaz est évacué, et changez le filtre dehors.
# of 2b8754e7, reviewed: false
checks-household_pressure_scope-title = La pression du gaz est inférieure à 5 kPa, comme le suppose la norme pour les ménages
# of e2a7aaf2, reviewed: false
checks-household_pressure_scope-why = La norme internationale pour les installations domestiques ne couvre que moins de 5 kPa et moins de 100 MWh par an.
# of d8a656f7, reviewed: false
checks-household_pressure_scope-do = Traitez l'installation selon les règles des plus grandes et consultez un installateur de gaz agréé.
# of 83569f1d, reviewed: false
checks-dome_pressure_tested-title = Un dôme fixe reste dans la limite des 8 kPa auxquels les dômes sont éprouvés
# of 62bd91ac, reviewed: false
checks-dome_pressure_tested-why = Au-dessus de la pression d'épreuve, le couvercle et le dôme peuvent se soulever ou se fissurer.
# of efcef2d3, reviewed: false
checks-dome_pressure_tested-do = Utilisez du gaz ou évacuez-le dehors loin des flammes, et débouchez une sortie bouchée ; sur un plan, élargissez le bassin de compensation ou abaissez son trop-plein.
# of cad7e6f0, reviewed: false
checks-dome_pressure_most-title = Un dôme fixe n'est jamais au-dessus de 10 kPa
# of ce588f71, reviewed: false
checks-dome_pressure_most-why = Le dôme ou son couvercle peut être projeté.
# of 805edfad, reviewed: false
checks-dome_pressure_most-do = Éloignez les gens, évacuez du gaz dehors maintenant, arrêtez l'alimentation et appelez le maçon.
# of b5b844bf, reviewed: false
checks-bag_pressure_most-title = Une poche n'est jamais au-dessus de 1.5 kPa
# of 26438c09, reviewed: false
checks-bag_pressure_most-why = La poche peut éclater et lâcher tout son gaz.
# of 4a4773fe, reviewed: false
checks-bag_pressure_most-do = Évacuez du gaz dehors, loin des flammes, et réglez la garde d'eau plus bas.
# of 2899627e, reviewed: false
checks-relief_on_bag-title = Une poche a une soupape de surpression
# of 889b4a6e, reviewed: false
checks-relief_on_bag-why = Sans elle, le gaz que l'on n'utilise pas fait éclater la poche.
# of a33e94fc, reviewed: false
checks-relief_on_bag-do = Posez dehors une soupape de surpression à garde d'eau avant de remplir la poche.
# of 71e0b7aa, reviewed: false
checks-relief_on_separate_holder-title = Un réservoir de gaz séparé a une soupape de surpression
# of 6d7298a8, reviewed: false
checks-relief_on_separate_holder-why = Sans elle, le gaz que l'on n'utilise pas fait éclater le réservoir.
# of 099009f0, reviewed: false
checks-relief_on_separate_holder-do = Posez dehors une soupape de surpression à garde d'eau avant d'y laisser entrer du gaz.
# of eb56a12f, reviewed: false
checks-relief_setting_bag-title = La soupape de surpression d'une poche s'ouvre entre 0.8 et 1.2 kPa
# of 58d4651c, reviewed: false
checks-relief_setting_bag-why = Une soupape qui s'ouvre plus tard ne protège pas la poche.
# of b424cea0, reviewed: false
checks-relief_setting_bag-do = Réglez la garde d'eau à une hauteur de 8 à 12 cm d'eau.
# of 266eacbd, reviewed: false
checks-relief_outlet_distance-title = La sortie de la soupape de surpression est à 5 m au moins des bâtiments et des chemins
# of 052d1592, reviewed: false
checks-relief_outlet_distance-why = Le gaz qui s'en échappe peut entrer dans des pièces ou rencontrer une flamme.
# of 0bf77be7, reviewed: false
checks-relief_outlet_distance-do = Déplacez cette sortie, et gardez toute flamme à 3 m ou plus d'elle.
# of f55e412a, reviewed: false
checks-outlet_clear-title = La sortie d'un dôme fixe est dégagée
# of d5bf623e, reviewed: false
checks-outlet_clear-why = Le substrat doit pouvoir sortir à mesure que le gaz vient, car rien d'autre ne fait baisser la pression.
# of 3e6d6a90, reviewed: false
checks-outlet_clear-do = Débouchez la sortie depuis l'extérieur avec une longue perche.
# of db1acae4, reviewed: false
checks-condensate_trap-title = La conduite de gaz a un purgeur d'eau de condensation, ou elle s'égoutte vers l'installation
# of 0a752dc3, reviewed: false
checks-condensate_trap-why = Le biogaz est humide, et l'eau dans le tuyau l'arrête ou fait sauter la flamme.
# of 5cae5a73, reviewed: false
checks-condensate_trap-do = Posez un purgeur au point le plus bas, dans une fosse à couvercle, ou posez le tuyau en pente vers l'installation.
# of cd2fd425, reviewed: false
checks-trap_water_level-title = L'eau de la garde de la soupape et celle du purgeur sont à leur repère
# of f9890df2, reviewed: false
checks-trap_water_level-why = Un purgeur à sec laisse échapper le gaz, et un purgeur trop plein le bloque.
# of a98c7933, reviewed: false
checks-trap_water_level-do = Regardez chaque jour et remplissez jusqu'au repère, pas au-dessus.
# of 3608e60d, reviewed: false
checks-pipe_tightness-title = La tuyauterie tient sa pression pendant 5 minutes, tous les robinets étant fermés
# of 3525dc68, reviewed: false
checks-pipe_tightness-why = Un tuyau qui fuit remplit la cuisine de gaz.
# of 56e072ee, reviewed: false
checks-pipe_tightness-do = Laissez le manomètre se stabiliser 2 minutes et observez-le pendant 5 ; s'il baisse, fermez la vanne principale et refaites les raccords.
# of 9cf160fe, reviewed: false
checks-no_leak_indoors-title = L'eau savonneuse ne montre aucune bulle à l'intérieur
# of d5a439ca, reviewed: false
checks-no_leak_indoors-why = Du gaz dans une pièce empoisonne et explose.
# of 4aaf1b45, reviewed: false
checks-no_leak_indoors-do = Fermez la vanne principale, aérez la pièce et refaites le raccord avant toute utilisation.
# of 9b62307b, reviewed: false
checks-no_entry-title = Personne n'entre dans le digesteur, dans la fosse de sortie ni dans une fosse à lisier ou à digestat
# of e03221e2, reviewed: false
checks-no_entry-why = Le gaz d'une fosse tue en quelques respirations, et ceux qui suivent pour aider meurent aussi.
# of 9932eb3d, reviewed: false
checks-no_entry-do = N'y entrez pas. Travaillez de l'extérieur avec de longs outils, et appelez une équipe formée et équipée.
# of 2e270ae8, reviewed: false
checks-entry_team_trained-title = Seule une équipe formée et équipée entre
# of e239a5fe, reviewed: false
checks-entry_team_trained-why = Sans formation ni apport d'air, même une entrée courte tue.
# of 551ca614, reviewed: false
checks-entry_team_trained-do = Arrêtez le projet et engagez une équipe agréée pour les espaces confinés.
# of dd3d4fb8, reviewed: false
checks-entry_ventilated-title = Avant l'entrée d'une équipe, la fosse vidée est restée ouverte et aérée au moins 2 jours
# of b5632fc8, reviewed: false
checks-entry_ventilated-why = Le gaz s'attarde dans la fosse et remonte quand on remue la boue.
# of 9363e697, reviewed: false
checks-entry_ventilated-do = Attendez et soufflez de l'air frais ; mesurez de nouveau, tout le temps.
# of f1096c18, reviewed: false
checks-entry_oxygen-title = L'air de la fosse contient 19.5 à 23.5 % d'oxygène
# of f526a8f0, reviewed: false
checks-entry_oxygen-why = S'il y en a moins, c'est qu'un autre gaz a pris sa place.
# of 714cea6e, reviewed: false
checks-entry_oxygen-do = Personne n'entre ; continuez d'aérer et mesurez de nouveau.
# of 585e53a2, reviewed: false
checks-entry_flammable_gas-title = L'air de la fosse contient moins de 0.5 % de méthane
# of bbf37952, reviewed: false
checks-entry_flammable_gas-why = Un dixième de la limite d'explosion est considéré comme dangereux.
# of 714cea6e, reviewed: false
checks-entry_flammable_gas-do = Personne n'entre ; continuez d'aérer et mesurez de nouveau.
# of 40489145, reviewed: false
checks-entry_hydrogen_sulfide-title = L'air de la fosse ne contient pas plus de 10 ppm de sulfure d'hydrogène
# of 6e7ba03d, reviewed: false
checks-entry_hydrogen_sulfide-why = Il abat les gens sans avertissement, et la boue remuée en dégage davantage.
# of 714cea6e, reviewed: false
checks-entry_hydrogen_sulfide-do = Personne n'entre ; continuez d'aérer et mesurez de nouveau.
# of 54f4e1ca, reviewed: false
checks-entry_harness_and_watch-title = Toute personne qui entre porte un harnais attaché à une corde que tiennent deux personnes dehors
# of fc880bba, reviewed: false
checks-entry_harness_and_watch-why = Une personne qui s'effondre peut alors être tirée dehors sans que quelqu'un la suive.
# of d09b3cb8, reviewed: false
checks-entry_harness_and_watch-do = Personne n'entre tant que le harnais, la corde et deux personnes dehors ne sont pas là.
# of 09b148ba, reviewed: false
checks-animal_test_not_relied_on-title = Personne ne se fie à un petit animal pour savoir si l'air est bon
# of 664ea828, reviewed: false
checks-animal_test_not_relied_on-why = Un animal qui survit dix minutes ne prouve pas que l'air est bon ; seul un détecteur de gaz le prouve.
# of 8228a283, reviewed: false
checks-animal_test_not_relied_on-do = Mesurez l'oxygène, le gaz inflammable et le sulfure d'hydrogène avec un détecteur.
# of 281618a0, reviewed: false
checks-nobody_over_stirred_store-title = Aucune personne et aucun animal ne se trouve dans le bâtiment pendant que l'on brasse ou vide la fosse à lisier qui est dessous
# of c6eea392, reviewed: false
checks-nobody_over_stirred_store-why = Le brassage libère d'un coup du sulfure d'hydrogène.
# of 14c07846, reviewed: false
checks-nobody_over_stirred_store-do = Évacuez le bâtiment, ouvrez-le, tenez-vous du côté d'où vient le vent et attendez une demi-heure après le brassage.
# of d66011cf, reviewed: false
checks-head_stays_above_rim-title = Personne ne penche la tête sous le bord d'une installation ouverte
# of dc97bba7, reviewed: false
checks-head_stays_above_rim-why = Le gaz est juste sous le bord, et une seule respiration peut faire tomber une personne dedans.
# of aa2141d5, reviewed: false
checks-head_stays_above_rim-do = Tenez-vous debout et utilisez de longs outils.
# of e293d375, reviewed: false
checks-household_knows_no_rescue-title = Tout le monde sur l'exploitation sait qu'il ne faut pas suivre une personne qui s'effondre dans une fosse
# of 42e62506, reviewed: false
checks-household_knows_no_rescue-why = Parmi les morts dans les fosses, beaucoup étaient entrés pour aider.
# of e3b4c339, reviewed: false
checks-household_knows_no_rescue-do = Apprenez-le à tous : ne pas suivre, tirer la corde, souffler de l'air, appeler des secours formés ; affichez le numéro d'urgence.
# of 1e77eba8, reviewed: false
checks-load_light-title = Aucune charge ne pèse plus de 16 kg
# of 36458fc3, reviewed: false
checks-load_light-why = Jusqu'à ce poids, la plupart des femmes peuvent soulever sans danger à hauteur de la taille.
# of 4c15cfed, reviewed: false
checks-load_light-do = Remplissez moins les seaux ou partagez la charge.
# of b1c7fa04, reviewed: false
checks-load_bucket-title = Aucune charge portée à la main ne pèse plus de 20 kg
# of 9ae95954, reviewed: false
checks-load_bucket-why = Un seau de 15 à 20 kg peut être porté toute la matinée ; plus lourd, non.
# of 1c78dbf6, reviewed: false
checks-load_bucket-do = Remplissez moins les seaux, ou utilisez une brouette.
# of 92303b91, reviewed: false
checks-load_most-title = Aucune charge ne pèse plus de 25 kg
# of d4d99f6d, reviewed: false
checks-load_most-why = Des charges plus lourdes blessent le dos, même celui d'hommes forts.
# of a6d82548, reviewed: false
checks-load_most-do = Utilisez des seaux plus petits, une brouette, ou portez à deux.
# of 2ffd8fb6, reviewed: false
checks-load_extreme-title = Aucune charge ne pèse jamais plus de 40 kg
# of e95fe539, reviewed: false
checks-load_extreme-why = Une telle charge peut blesser dès la première levée.
# of d27be320, reviewed: false
checks-load_extreme-do = Ne la soulevez pas ; divisez-la ou utilisez des roues.
# of b535312d, reviewed: false
checks-no_twisting-title = Personne ne tord le dos avec une charge
# of d618a30a, reviewed: false
checks-no_twisting-why = La torsion enlève 10 à 20 % de ce que l'on peut soulever sans danger.
# of 3549444b, reviewed: false
checks-no_twisting-do = Tournez les pieds.
# of 240c1261, reviewed: false
checks-carry_distance-title = Les charges pleines ne sont pas portées plus loin que 10 m sans repos
# of 322d800e, reviewed: false
checks-carry_distance-why = Porter plus loin fatigue et blesse.
# of c29a2a5f, reviewed: false
checks-carry_distance-do = Utilisez une brouette, une charrette ou une palanche, ou rapprochez le tas.
# of cacaf8f5, reviewed: false
checks-children_do_not_carry-title = Les enfants ne portent ni fumier ni eau pour l'installation
# of cd66cb9f, reviewed: false
checks-children_do_not_carry-why = Un enfant ne devrait pas porter plus d'un dixième de son propre poids.
# of 63d23d71, reviewed: false
checks-children_do_not_carry-do = Laissez ce travail aux adultes.
# of e5c3ac1c, reviewed: false
checks-daily_mass_usual-title = Personne ne déplace plus de 3 t par jour
# of dff73a84, reviewed: false
checks-daily_mass_usual-why = Les personnes sans entraînement se blessent par la somme de nombreuses charges.
# of 7a628049, reviewed: false
checks-daily_mass_usual-do = Répartissez le premier remplissage sur plus de jours ou plus de personnes.
# of f6482b7b, reviewed: false
checks-daily_mass_most-title = Personne ne déplace plus de 10 t par jour sur de courts trajets
# of 043d389a, reviewed: false
checks-daily_mass_most-why = C'est le maximum pour des personnes entraînées avec de bonnes charges.
# of 00a4028c, reviewed: false
checks-daily_mass_most-do = Refaites le plan de travail avec plus de jours, plus de personnes ou une charrette.
# of 2d46e7ac, reviewed: false
checks-heat_most-title = La température au thermomètre-globe mouillé (WBGT) ne dépasse pas 32 °C pendant le travail lourd
# of ba94de83, reviewed: false
checks-heat_most-why = Le coup de chaleur tue.
# of b5c8a9cb, reviewed: false
checks-heat_most-do = Arrêtez le travail lourd jusqu'à ce qu'il fasse plus frais.
# of 790c38c0, reviewed: false
checks-no_manure_from_restricted_zone-title = Aucun fumier ne vient d'une exploitation située dans une zone sous restriction pour maladie animale
# of 88cb6df9, reviewed: false
checks-no_manure_from_restricted_zone-why = La peste porcine, la grippe aviaire et la fièvre aphteuse voyagent avec le fumier, les roues et les bottes.
# of 9b0bef16, reviewed: false
checks-no_manure_from_restricted_zone-do = N'utilisez que votre propre fumier, et consultez l'autorité vétérinaire.
# of 189aaa1f, reviewed: false
checks-vehicles_cleaned-title = Les véhicules et les brouettes sont nettoyés avant de passer d'une exploitation à une autre
# of 003c39a2, reviewed: false
checks-vehicles_cleaned-why = Le fumier sur les roues transporte des maladies.
# of 086a6d64, reviewed: false
checks-vehicles_cleaned-do = Lavez-les et désinfectez-les sur un sol dur, et ne laissez pas cette eau aller dans le digesteur.
# of 32fadebc, reviewed: false
checks-hands_washed-title = Tout le monde se lave les mains au savon après l'alimentation du digesteur et le travail avec le digestat
# of d3742065, reviewed: false
checks-hands_washed-why = Le fumier et le digestat portent des germes et des œufs de vers.
# of 0cbb8693, reviewed: false
checks-hands_washed-do = Mettez du savon et de l'eau à côté de la fosse de mélange, là où ils ne peuvent pas y couler.
# of 37f686b2, reviewed: false
checks-protective_clothing_worn-title = On porte des gants et des bottes, et les coupures sont couvertes
# of d7106e1d, reviewed: false
checks-protective_clothing_worn-why = Déboucher les conduits à mains nues a donné plus d'une infection par an pour cinq personnes.
# of 873b6d18, reviewed: false
checks-protective_clothing_worn-do = Donnez à chaque travailleur des gants et des bottes qui restent à l'installation.
# of 0228d764, reviewed: false
checks-vulnerable_people_spared-title = Les femmes enceintes, les petits enfants et les malades ne manipulent ni fumier ni digestat
# of 0b85d979, reviewed: false
checks-vulnerable_people_spared-why = Des infections que d'autres supportent leur nuisent, à eux ou à l'enfant à naître.
# of 01e4b8ed, reviewed: false
checks-vulnerable_people_spared-do = Confiez l'alimentation à une autre personne.
# of 85c22efd, reviewed: false
checks-latrine_retention-title = Avec des excréments humains, le temps de rétention hydraulique est d'au moins 40 jours
# of d423b500, reviewed: false
checks-latrine_retention-why = Un séjour court laisse passer plus de germes, et aucun séjour ne rend à lui seul le digestat sûr.
# of 30c12cab, reviewed: false
checks-latrine_retention-do = Allongez le séjour, et stockez le digestat avant de l'utiliser.
# of 82957a8b, reviewed: false
checks-excreta_digestate_stored-title = Le digestat contenant des excréments humains est stocké un an avant d'aller sur des cultures alimentaires
# of 5e0f340a, reviewed: false
checks-excreta_digestate_stored-why = Les œufs de vers survivent à la digestion.
# of 2419c801, reviewed: false
checks-excreta_digestate_stored-do = Stockez-le un an dans les endroits chauds, jusqu'à deux ans dans les endroits frais, ou compostez-le à plus de 50 °C pendant plus d'une semaine.
# of 529182b0, reviewed: false
checks-excreta_harvest_wait-title = Au moins un mois s'écoule entre le dernier apport de digestat contenant des excréments humains et la récolte
# of 5c863d59, reviewed: false
checks-excreta_harvest_wait-why = Le soleil et le temps tuent une partie des germes qui restent.
# of 09866a49, reviewed: false
checks-excreta_harvest_wait-do = Cessez de l'utiliser un mois avant la récolte.
# of 324aba74, reviewed: false
checks-no_excreta_on_raw_crops-title = Le digestat contenant des excréments humains ne va jamais sur des cultures qui se mangent crues
# of 3c426505, reviewed: false
checks-no_excreta_on_raw_crops-why = Des germes et des œufs de vers traversent le digesteur.
# of 2e430b61, reviewed: false
checks-no_excreta_on_raw_crops-do = Utilisez-le sur les arbres, le fourrage ou les cultures qui se mangent cuites, et sous la terre.
# of f4a7dc78, reviewed: false
checks-raw_crops_wait-title = Au moins 90 jours s'écoulent entre l'apport de digestat et la récolte des cultures qui se mangent crues
# of aced0493, reviewed: false
checks-raw_crops_wait-why = Il faut ce temps aux germes pour mourir dans le champ.
# of c66daf41, reviewed: false
checks-raw_crops_wait-do = Ne récoltez pas ces cultures avant ce délai, ou faites-les cuire ; utilisez le digestat avant la plantation.
# of 28355f62, reviewed: false
checks-raw_crops_in_soil_wait-title = Au moins 120 jours s'écoulent quand la partie mangée crue touche le sol
# of 8266f040, reviewed: false
checks-raw_crops_in_soil_wait-why = C'est dans le sol que les germes vivent le plus longtemps.
# of 93b4e3cc, reviewed: false
checks-raw_crops_in_soil_wait-do = Attendez, ou utilisez le digestat sur d'autres cultures.
# of c6a82274, reviewed: false
checks-digestate_not_sprayed-title = Le digestat est conduit dans des sillons et n'est pas pulvérisé
# of cad68a96, reviewed: false
checks-digestate_not_sprayed-why = Les gens qui arrosaient avec lui sans protection avaient un risque annuel de diarrhée d'environ un sur cinq.
# of d6d6e780, reviewed: false
checks-digestate_not_sprayed-do = Utilisez des sillons ou un arrosoir tenu près du sol, avec des bottes et des gants.
# of bfce680a, reviewed: false
checks-lime_not_relied_on-title = Personne ne compte sur la chaux seule pour tuer les œufs de vers
# of 3da325de, reviewed: false
checks-lime_not_relied_on-why = Au-dessous d'environ 28 °C, ils ont survécu à plus de 70 jours de fort chaulage.
# of 24eadb19, reviewed: false
checks-lime_not_relied_on-do = Utilisez la chaleur ou un long stockage.
# of d92fb1f6, reviewed: false
checks-sludge_treated_as_infective-title = La boue de fond est stockée ou compostée avant d'être utilisée
# of a6902115, reviewed: false
checks-sludge_treated_as_infective-why = Les œufs de vers et les kystes s'y déposent.
# of ec739862, reviewed: false
checks-sludge_treated_as_infective-do = Compostez-la à chaud ou gardez-la un an, et manipulez-la avec des gants.
# of 42c30d8d, reviewed: false
checks-household_volume-title = Le digesteur a la taille d'une installation de ménage ou de petite exploitation
# of e056b1d7, reviewed: false
checks-household_volume-why = Les installations domestiques contiennent 4 à 20 m3 ; un chiffre très éloigné vient souvent de litres notés pour des mètres cubes, ou l'inverse, et ce qui vaut pour les installations simples ne vaut pas pour les grandes.
# of f834da12, reviewed: false
checks-household_volume-do = Vérifiez l'unité. Si la taille est juste, faites concevoir et approuver l'installation comme une grande installation ou une installation d'essai.
# of 05a366b1, reviewed: false
checks-herd_covers_feed-title = Le troupeau donne ce dont on alimente le digesteur
# of 9f208d85, reviewed: false
checks-herd_covers_feed-why = L'alimentation indiquée dépasse ce que donnent ces animaux : l'un des deux chiffres est donc faux, ou l'alimentation viendra à manquer.
# of 7b860d93, reviewed: false
checks-herd_covers_feed-do = Pesez le fumier d'un jour ; corrigez le troupeau, son logement ou l'alimentation.
# of e6a30cd7, reviewed: false
checks-feed_covers_demand-title = L'alimentation disponible donne le gaz voulu
# of f6b0a886, reviewed: false
checks-feed_covers_demand-why = Un digesteur plus grand ne tire guère plus de gaz de la même alimentation ; ce qui manque est remplacé par du bois ou acheté.
# of 6bfef731, reviewed: false
checks-feed_covers_demand-do = Gardez plus d'animaux ou gardez-les plus longtemps à l'étable, ajoutez d'autres substrats, ou prévoyez moins d'heures d'utilisation.
# of e86c9fec, reviewed: false
checks-stockpile_suffices-title = Le fumier de l'exploitation suffit pour le premier remplissage
# of 168bf82e, reviewed: false
checks-stockpile_suffices-why = Un digesteur à moitié rempli n'est pas étanche, et un remplissage qui vient par morceaux démarre tard.
# of 4ba5a0e7, reviewed: false
checks-stockpile_suffices-do = Commencez la collecte plus tôt, attendez, achetez du fumier ou ajoutez du digestat ; la réponse indique lesquelles de ces solutions sont possibles sur cette exploitation.
# of 57ddecdd, reviewed: false
checks-first_filling_seals-title = Le premier remplissage couvre le pied de l'entrée et celui de la sortie
# of 5673a369, reviewed: false
checks-first_filling_seals-why = Le gaz s'échappe par une entrée ou une sortie dont le pied n'est pas sous le substrat, et l'air y pénètre.
# of 6d305e98, reviewed: false
checks-first_filling_seals-do = Remplissez plus haut avant de fermer la sortie du gaz ; mesurez où se terminent les pieds.
# of 357d0c21, reviewed: false
checks-first_filling_fits-title = Le premier remplissage laisse libre l'espace à gaz
# of 49637f64, reviewed: false
checks-first_filling_fits-why = Le substrat au-dessus du niveau normal prend l'espace à gaz et peut atteindre le tuyau de gaz.
# of 8fc363b0, reviewed: false
checks-first_filling_fits-do = Remplissez moins ; le niveau normal est celui qu'indique le plan de l'ouvrage.
# of 56bd34d7, reviewed: false
checks-first_water_in_time-title = L'eau du premier remplissage peut être réunie en deux semaines
# of 7ecf644f, reviewed: false
checks-first_water_in_time-why = Le remplissage se mélange en une seule fois : l'eau doit donc être stockée à côté du digesteur.
# of d09a38ec, reviewed: false
checks-first_water_in_time-do = Stockez à l'avance de l'eau de pluie ou de mare, ou louez un réservoir.
# of 67889895, reviewed: false
checks-dose_fits-title = Une dose d'alimentation ne dépasse pas un cinquième du substrat dans le digesteur
# of 32aebcf4, reviewed: false
checks-dose_fits-why = Une dose plus grande pousse dehors ce qui vient d'être introduit, refroidit le digesteur et peut le rendre acide.
# of 62b50c4e, reviewed: false
checks-dose_fits-do = Alimentez en doses plus petites et plus souvent.
# of fba4f714, reviewed: false
checks-full_gas_pressure-title = Le dôme supporte la pression de son espace à gaz plein
# of 27772de2, reviewed: false
checks-full_gas_pressure-why = Le gaz que personne ne brûle soulève le substrat jusqu'à son trop-plein ; le dôme supporte alors toute la hauteur entre ses niveaux, et au-dessus de sa limite il se fissure ou fuit.
# of e9f36323, reviewed: false
checks-full_gas_pressure-do = Élargissez le bassin de compensation ou abaissez son trop-plein, ou construisez deux dômes plus petits ; faites fixer la pression de calcul sur le plan par un ingénieur agréé.
# of d5427f44, reviewed: false
checks-rotation_meets_demand-title = Les digesteurs discontinus, à tour de rôle, couvrent la demande de gaz chaque jour
# of 7706d6ae, reviewed: false
checks-rotation_meets_demand-why = Certains jours, le gaz ne suffit pas à la demande : à la saison froide, ou chaque fois qu'un digesteur est ouvert.
# of 278650e3, reviewed: false
checks-rotation_meets_demand-do = Construisez des digesteurs plus grands ou plus nombreux, ajoutez du stockage de gaz, mettez des matières qui donnent plus de gaz, ou cuisinez avec autre chose pendant les semaines faibles ; les options montrent jusqu'où va chaque nombre.
# of c0072694, reviewed: false
checks-charge_likely_starts-title = Une charge a plus de chances de démarrer que de s'acidifier ou de rester inerte
# of a9a5bb81, reviewed: false
checks-charge_likely_starts-why = Le modèle ne trouve pas de gaz qui brûle pour la plupart des charges plausibles ; les matières sont trop acides, trop riches en ammoniac ou trop froides pour les microbes qu'elles apportent.
# of 6d6bc3e3, reviewed: false
checks-charge_likely_starts-do = Laissez dans le digesteur un cinquième à un tiers d'ancien substrat, mélangez avec de la bouse de vache, ou diluez davantage ; essayez une charge avant de construire d'autres digesteurs.
# of ed20733f, reviewed: false
checks-charge_surely_starts-title = Neuf charges sur dix démarrent
# of f9ae4c4d, reviewed: false
checks-charge_surely_starts-why = Une charge sans digestat d'ensemencement peut s'acidifier et donner ensuite un gaz pauvre pendant des mois ; une rotation s'arrête avec elle.
# of bdf5343d, reviewed: false
checks-charge_surely_starts-do = Laissez dans le digesteur un cinquième d'ancien substrat à chaque nouvelle charge, et apportez du digestat d'un digesteur en marche pour le premier remplissage.
# of 18ea247b, reviewed: false
checks-charge_mixes-title = La charge est assez fluide pour se mélanger
# of 1c4b6f02, reviewed: false
checks-charge_mixes-why = Le gaz est calculé pour un substrat qui se mélange, et le modèle n'a été confronté qu'à de tels substrats. Une charge plus épaisse se mouille inégalement, démarre plus tard et donne moins que ce qui est annoncé.
# of b148874d, reviewed: false
checks-charge_mixes-do = Prenez le gaz annoncé comme le maximum à espérer ; diluez davantage, ou disposez la charge en couches avec beaucoup d'ancien substrat et mesurez la première.
# of e9681dfe, reviewed: false
checks-acids_forecast-title = Les acides prévus restent sous le rapport auquel on arrête l'alimentation
# of a2820d90, reviewed: false
checks-acids_forecast-why = Avec cette alimentation, les acides vont plus vite que les microbes qui les mangent ; le gaz devient pauvre, et le digesteur peut s'acidifier et s'arrêter.
# of fa313ef0, reviewed: false
checks-acids_forecast-do = Alimentez moins ou plus tard, démarrez avec du digestat, et contrôlez le pH ou les acides avant chaque augmentation ; arrêtez l'alimentation quand le pH descend sous 6.8.
# of e70fec78, reviewed: false
checks-feeding_without_gap-title = Jamais deux semaines ne passent sans alimentation
# of a1c5aa8d, reviewed: false
checks-feeding_without_gap-why = Le gaz baisse de jour en jour, et la première grosse alimentation qui suit trouve moins de microbes.
# of 006a0462, reviewed: false
checks-feeding_without_gap-do = Indiquez l'alimentation de ces jours, ou recommencez après l'interruption avec un quart de l'alimentation.
# of b1025721, reviewed: false
checks-temperature_least-title = Le substrat est à 10 °C ou plus
# of c9864d35, reviewed: false
checks-temperature_least-why = Au-dessous, le gaz s'arrête presque et les matières introduites se changent plus tard en acide.
# of 03c5d747, reviewed: false
checks-temperature_least-do = Arrêtez l'alimentation jusqu'à ce qu'il fasse plus chaud ; isolez.
# of 88b2b33e, reviewed: false
checks-temperature_cool-title = Le substrat est à 15 °C ou plus
# of de5fb130, reviewed: false
checks-temperature_cool-why = Au-dessous, il y a peu de gaz.
# of cb1f205c, reviewed: false
checks-temperature_cool-do = Alimentez moins, isolez, et alimentez en début d'après-midi avec un mélange chauffé au soleil.
# of 3877c0f1, reviewed: false
checks-temperature_usual-title = Le substrat est à 20 °C ou plus
# of 12f2b65a, reviewed: false
checks-temperature_usual-why = Le gaz augmente avec la chaleur jusqu'à environ 35 °C.
# of 2c77fd94, reviewed: false
checks-temperature_usual-do = Isolez et alimentez en début d'après-midi, quand le mélange est le plus chaud.
# of e35e15ca, reviewed: false
checks-temperature_most-title = Le substrat n'est pas à plus de 40 °C
# of cc9441bb, reviewed: false
checks-temperature_most-why = Les microbes des installations domestiques n'en supportent pas davantage.
# of f2f5dca8, reviewed: false
checks-temperature_most-do = Mettez la poche à l'ombre ou arrêtez le chauffage.
# of dfcfc9b6, reviewed: false
checks-temperature_freezing-title = Le substrat est au-dessus du point de gel
# of e0d827a9, reviewed: false
checks-temperature_freezing-why = Un substrat qui gèle fait éclater murs, tuyaux et poches, et bouche l'entrée et la sortie.
# of e5d1024b, reviewed: false
checks-temperature_freezing-do = Vérifiez l'unité de la température. Si elle est juste, n'alimentez pas du tout, ne relâchez aucune pression à travers la glace, et consultez celui qui a construit l'installation.
# of ad95a0c5, reviewed: false
checks-slurry_freezes-title = Le substrat reste bien au-dessus du point de gel pendant le mois le plus froid
# of bb829dbe, reviewed: false
checks-slurry_freezes-why = Près de 0 °C il n'y a pas de gaz, et un substrat qui gèle fait éclater murs, tuyaux et poches.
# of eebc05d9, reviewed: false
checks-slurry_freezes-do = Enterrez le digesteur plus profondément ou isolez-le, ou videz-le avant le gel ; une installation chauffée est l'affaire d'un ingénieur.
# of 356de4c5, reviewed: false
checks-slurry_too_hot-title = Le substrat reste à 45 °C ou moins pendant le mois le plus chaud
# of e5701f64, reviewed: false
checks-slurry_too_hot-why = Les microbes des installations domestiques meurent, et le gaz et l'ammoniac ne suivent pas ce qui est calculé ici.
# of 9754846d, reviewed: false
checks-slurry_too_hot-do = Mettez le digesteur à l'ombre ou enterrez-le ; vérifiez l'unité de la température.
# of dcebcbdb, reviewed: false
checks-frost-title = Le mois le plus froid est sans gel
# of ded17254, reviewed: false
checks-frost-why = Les tuyaux, les purgeurs d'eau, les gardes d'eau et la sortie gèlent, si bien que le gaz est enfermé ou qu'une soupape ne s'ouvre pas.
# of a29378be, reviewed: false
checks-frost-do = Videz les purgeurs et les tuyaux avant le gel, enterrez-les ou isolez-les, gardez la soupape de surpression libre de glace, et regardez chaque jour la sortie et le manomètre.
# of 1f18fce9, reviewed: false
checks-cold_season-title = Pendant le mois le plus froid, il y a au moins les trois quarts du gaz habituel
# of 196fd1ea, reviewed: false
checks-cold_season-why = Un substrat froid donne moins de gaz pour la même alimentation, et ce que l'on ajoute en plus se change en acide.
# of 01fa2d4f, reviewed: false
checks-cold_season-do = Alimentez moins pendant les mois froids, gardez un autre combustible pour ces mois, ne promettez pas plus de gaz que n'en donne le mois le plus froid, et isolez.
# of 23db0423, reviewed: false
checks-ph_least-title = Le pH du substrat est d'au moins 6.5
# of 448b1a66, reviewed: false
checks-ph_least-why = Le substrat est devenu acide et le gaz est sur le point de s'arrêter.
# of 88a0d37e, reviewed: false
checks-ph_least-do = Arrêtez l'alimentation jusqu'au retour à la normale ; n'ajoutez de la cendre de bois ou de l'eau de chaux que lentement et en tout dernier lieu.
# of aeb983ea, reviewed: false
checks-ph_usual-title = Le pH du substrat est d'au moins 6.8
# of 5f63901c, reviewed: false
checks-ph_usual-why = Le substrat va vers l'acidité, et le pH est le dernier à bouger.
# of 7087fef6, reviewed: false
checks-ph_usual-do = Alimentez moins et cherchez la cause.
# of 25310028, reviewed: false
checks-ph_most-title = Le pH du substrat ne dépasse pas 8
# of 59d0c41b, reviewed: false
checks-ph_most-why = Au-dessus, cela veut dire beaucoup d'ammoniac, qui vient surtout des fientes ou de l'urine.
# of 6f37dcc8, reviewed: false
checks-ph_most-do = Diluez et mélangez avec de la bouse de vache.
# of bbb60d10, reviewed: false
checks-carbon_to_nitrogen_least-title = Le rapport carbone sur azote de l'alimentation est d'au moins 15
# of 93456a1b, reviewed: false
checks-carbon_to_nitrogen_least-why = Au-dessous, l'ammoniac arrête les microbes.
# of 5b5b68ac, reviewed: false
checks-carbon_to_nitrogen_least-do = Mélangez avec de la bouse de vache ou des végétaux hachés, et mettez moins d'urine et de fientes.
# of f1313fe2, reviewed: false
checks-carbon_to_nitrogen_usual-title = Le rapport carbone sur azote de l'alimentation est de 20 à 30
# of 0ea11e78, reviewed: false
checks-carbon_to_nitrogen_usual-why = À ces valeurs, les microbes trouvent ce qu'il leur faut ; 25 était le meilleur à 35 °C.
# of 4bdc4440, reviewed: false
checks-carbon_to_nitrogen_usual-do = Mélangez des matières humides et riches avec des matières sèches et pauvres.
# of 48fca1aa, reviewed: false
checks-carbon_to_nitrogen_most-title = Le rapport carbone sur azote de l'alimentation ne dépasse pas 35
# of cd06b7e2, reviewed: false
checks-carbon_to_nitrogen_most-why = Avec trop peu d'azote, la digestion est lente.
# of a54f9e9d, reviewed: false
checks-carbon_to_nitrogen_most-do = Ajoutez de l'urine ou des fientes, et mettez moins de paille.
# of b6f3537f, reviewed: false
checks-total_ammonia_usual-title = L'azote ammoniacal total ne dépasse pas 1.5 g/L
# of ae5893d7, reviewed: false
checks-total_ammonia_usual-why = À partir de là, l'ammoniac peut freiner la digestion quand le pH est au-dessus d'environ 7.5.
# of 132526f0, reviewed: false
checks-total_ammonia_usual-do = Ajoutez de l'eau et de la bouse de vache.
# of d0c95008, reviewed: false
checks-total_ammonia_most-title = L'azote ammoniacal total ne dépasse pas 3 g/L
# of faeaed12, reviewed: false
checks-total_ammonia_most-why = Les digesteurs qui n'y sont pas habitués s'arrêtent.
# of 09244514, reviewed: false
checks-total_ammonia_most-do = Diluez avec de l'eau, pas avec du liquide de sortie, et réduisez de moitié les fientes et l'urine.
# of e3b3a836, reviewed: false
checks-free_ammonia_usual-title = L'ammoniac libre ne dépasse pas 100 mg/L
# of 0789983b, reviewed: false
checks-free_ammonia_usual-why = L'ammoniac libre est la partie qui nuit, et il augmente avec la chaleur et le pH. Un pH que personne n'a mesuré est calculé à partir de l'alimentation.
# of 6f37dcc8, reviewed: false
checks-free_ammonia_usual-do = Diluez et mélangez avec de la bouse de vache.
# of 56e2ef5a, reviewed: false
checks-free_ammonia_most-title = L'ammoniac libre ne dépasse pas 250 mg/L
# of 3d7b1de4, reviewed: false
checks-free_ammonia_most-why = Un digesteur qui n'y est pas habitué s'arrête ; jusqu'à 800 n'ont été supportés qu'après adaptation. Un pH que personne n'a mesuré est calculé à partir de l'alimentation.
# of b7f1fb33, reviewed: false
checks-free_ammonia_most-do = Réduisez maintenant les fientes et l'urine, et diluez.
# of c9f67db1, reviewed: false
checks-no_foam-title = Il n'y a pas de mousse dans la sortie ni dans le tuyau de gaz
# of f6dc7c10, reviewed: false
checks-no_foam-why = La mousse vient d'une surcharge, de graisse ou de médicaments, et bloque le gaz.
# of 29db0a06, reviewed: false
checks-no_foam-do = Arrêtez l'alimentation pendant quelques jours et brassez.
# of bde271c6, reviewed: false
checks-scum_most-title = La croûte flottante n'a pas plus de 20 cm d'épaisseur
# of fa7648e7, reviewed: false
checks-scum_most-why = Le gaz sort alors par l'entrée au lieu de sortir par le tuyau.
# of 1134ac3b, reviewed: false
checks-scum_most-do = Cassez-la de l'extérieur, ne mettez plus de paille ; si cela échoue, appelez une équipe formée et ne descendez jamais dedans.
# of 6c36b8b6, reviewed: false
checks-stirred_daily-title = Le substrat est brassé au moins une fois par jour
# of f7534a5b, reviewed: false
checks-stirred_daily-why = Le brassage casse la croûte flottante et apporte l'alimentation aux microbes ; deux fois, c'est mieux.
# of 8e972d5b, reviewed: false
checks-stirred_daily-do = Brassez avec une perche par l'entrée, ou tournez la cloche.
# of f92e619d, reviewed: false
checks-acids_measured-title = Les acides volatils sont au plus à 0.4 de l'alcalinité
# of 488d5596, reviewed: false
checks-acids_measured-why = Au-dessus, le substrat est sur le point de devenir acide ; ce rapport bouge une à deux semaines avant le pH.
# of a8049285, reviewed: false
checks-acids_measured-do = Donnez la moitié de l'alimentation ou rien jusqu'à ce que ce rapport baisse, et cherchez ce qui a changé dans l'alimentation.
# of 176bc1a0, reviewed: false
checks-methane_usual-title = Le biogaz contient au moins la moitié de méthane
# of f68fc4fe, reviewed: false
checks-methane_usual-why = Avec moins, il brûle mal ; cela vient d'un substrat qui s'acidifie, d'un démarrage qui n'est pas terminé, ou d'air.
# of 92772cc1, reviewed: false
checks-methane_usual-do = Mesurez le pH, demandez de quoi le digesteur a été alimenté, et cherchez s'il y a de l'air dans le gaz avant d'essayer la moindre flamme.
# of d9745e94, reviewed: false
checks-fed_lately-title = Le digesteur a été alimenté dans les trois derniers jours
# of 94944a89, reviewed: false
checks-fed_lately-why = Le gaz baisse dans les jours qui suivent la dernière alimentation ; une alimentation par à-coups dérègle le digesteur.
# of d7114d6f, reviewed: false
checks-fed_lately-do = Mettez la quantité habituelle, pas ce qui a manqué.
# of 5ed94b2e, reviewed: false
checks-gas_not_below_expected-title = Le gaz mesuré reste dans les limites de ce que donne l'alimentation
# of 211167fd, reviewed: false
checks-gas_not_below_expected-why = Il arrive au compteur moins de gaz que n'en donne l'alimentation même dans le moins productif de ces digesteurs.
# of f78d726b, reviewed: false
checks-gas_not_below_expected-do = Cherchez les fuites à l'eau savonneuse, puis regardez le pH, la chaleur, la croûte et la boue.
# of 12149b53, reviewed: false
checks-gas_record_plausible-title = Le gaz mesuré ne dépasse pas 1.5 fois ce que donne l'alimentation
# of 49f00452, reviewed: false
checks-gas_record_plausible-why = On ne peut pas tirer davantage de cette alimentation : l'alimentation ou le gaz est donc mal noté.
# of f5fd3757, reviewed: false
checks-gas_record_plausible-do = Pesez l'alimentation pendant une semaine, et vérifiez l'unité du compteur et si le volume est bien celui du jour.
# of b427e77e, reviewed: false
checks-well_distance_least-title = Une installation qui reçoit des excréments humains est à 10 m au moins de toute source d'eau potable
# of 5cbc586c, reviewed: false
checks-well_distance_least-why = Le substrat qui fuit porte dans l'eau potable les germes des excréments humains.
# of a2986b9d, reviewed: false
checks-well_distance_least-do = Choisissez un autre endroit, ou ne raccordez plus la latrine ; ne construisez pas à moins de 10 m du puits.
# of 53a7a019, reviewed: false
checks-well_distance_usual-title = L'installation et ses fosses à digestat sont à 15 m au moins de toute source d'eau potable
# of cb1c9d76, reviewed: false
checks-well_distance_usual-why = Le substrat ou le digestat qui s'infiltre apporte des germes et du nitrate dans le puits.
# of e867a445, reviewed: false
checks-well_distance_usual-do = Éloignez l'installation, ou revêtez-la, prouvez avec de l'eau qu'elle est étanche, et placez-la de sorte que le puits soit en amont.
# of 50a4375c, reviewed: false
checks-well_distance_porous_ground-title = Dans le sable, le gravier ou la roche fracturée, l'installation est à 30 m au moins de toute source d'eau potable
# of fed990b6, reviewed: false
checks-well_distance_porous_ground-why = L'eau court vite et sans filtration dans un sol grossier ou fracturé : une fuite atteint donc le puits plus tôt.
# of b1c4306a, reviewed: false
checks-well_distance_porous_ground-do = Gardez 30 m, ou faites juger le sol et le puits par l'autorité de l'eau avant de creuser.
# of e7442a38, reviewed: false
checks-groundwater_below_pit_least-title = Le niveau le plus haut de la nappe dans l'année reste à 1.5 m au moins sous le fond de la fosse
# of ad72ccf2, reviewed: false
checks-groundwater_below_pit_least-why = Une nappe haute soulève une cuve vide, affaiblit sa maçonnerie et emporte les fuites.
# of d420b97e, reviewed: false
checks-groundwater_below_pit_least-do = Construisez moins profond et plus large ou sur un terrain surélevé, et ne videz jamais l'installation en saison des pluies.
# of 83523ba5, reviewed: false
checks-groundwater_depth_masonry-title = Pour une installation en maçonnerie, le niveau le plus haut de la nappe est à 4.5 m au moins sous la surface
# of c9e64d01, reviewed: false
checks-groundwater_depth_masonry-why = La fosse d'une installation domestique en maçonnerie a environ 3 m de profondeur et devrait rester à 1.5 m au-dessus de l'eau.
# of 831ab7f2, reviewed: false
checks-groundwater_depth_masonry-do = Mesurez du fond prévu de la fosse jusqu'au niveau le plus haut de la nappe ; s'il y a moins de 1.5 m, construisez moins profond ou ailleurs.
# of 3967dcc5, reviewed: false
checks-groundwater_out_of_pit-title = La nappe ne monte pas dans la fosse d'une installation en maçonnerie
# of a9f6e0e4, reviewed: false
checks-groundwater_out_of_pit-why = L'eau qui se tient contre la cuve la fait flotter quand elle est vide et pousse sur ses murs.
# of 4061b814, reviewed: false
checks-groundwater_out_of_pit-do = Ne creusez pas à cet endroit sans un contrôle de flottabilité et un drainage faits par un ingénieur ; choisissez un terrain plus haut ou un type peu profond.
# of 6a6c822e, reviewed: false
checks-plant_outdoors-title = Le digesteur et le réservoir de gaz sont en plein air, ni dans un bâtiment ni sous un bâtiment
# of 2fadb25a, reviewed: false
checks-plant_outdoors-why = Le gaz qui fuit s'accumule dans les pièces, étables comprises, et peut empoisonner ou exploser.
# of a74d76ca, reviewed: false
checks-plant_outdoors-do = Construisez l'installation dehors ; mettez hors service celle qui se trouve à l'intérieur jusqu'à ce qu'elle soit déplacée.
# of b4d7bf38, reviewed: false
checks-dwelling_distance_usual-title = Le digesteur et le réservoir de gaz sont à 3 m au moins de toute habitation
# of 7bed3830, reviewed: false
checks-dwelling_distance_usual-why = Le gaz qui fuit doit pouvoir se disperser à l'air libre avant d'atteindre une pièce.
# of 6e127b98, reviewed: false
checks-dwelling_distance_usual-do = Éloignez l'installation de la maison.
# of af5b75f1, reviewed: false
checks-dwelling_distance_bag-title = Une poche à gaz en plastique est à 5 m au moins de toute habitation
# of a36d58e0, reviewed: false
checks-dwelling_distance_bag-why = Une poche peut se déchirer et lâcher tout son gaz d'un coup.
# of f780a78b, reviewed: false
checks-dwelling_distance_bag-do = Donnez plus d'espace à la poche, hors de portée des enfants et du feu.
# of 1260a08f, reviewed: false
checks-kitchen_distance_pipe-title = La cuisine est à 30 m au plus de l'installation, ou le diamètre du tuyau a été calculé
# of d4677648, reviewed: false
checks-kitchen_distance_pipe-why = Au-delà de 30 m, le tuyau habituel d'un demi-pouce ou de trois quarts de pouce peut ne pas donner assez de gaz au réchaud.
# of 441f5984, reviewed: false
checks-kitchen_distance_pipe-do = Calculez le tuyau d'après sa longueur et le gaz utilisé, et prenez le plus gros diamètre.
# of 25319852, reviewed: false
checks-stable_distance_usual-title = L'étable est à 20 m au plus de l'entrée
# of 09cc5882, reviewed: false
checks-stable_distance_usual-why = Le fumier est porté chaque jour pendant des années ; la place de l'installation est près de l'étable plutôt que près de la cuisine.
# of 762a155a, reviewed: false
checks-stable_distance_usual-do = Rapprochez l'installation de l'étable, de préférence avec une rigole qui va droit dans l'entrée.
# of 0ff9bd2a, reviewed: false
checks-tree_distance_usual-title = La couronne des arbres s'arrête à 5 m au moins de l'installation
# of 73de9439, reviewed: false
checks-tree_distance_usual-why = Les racines vont aussi loin que la couronne, et l'ombre refroidit le substrat.
# of eab980a8, reviewed: false
checks-tree_distance_usual-do = Déplacez l'installation, ou taillez l'arbre et posez une barrière contre les racines ; gardez 10 m de distance avec les grands arbres.
# of 4301b951, reviewed: false
checks-road_distance-title = Les routes et les pistes de véhicules sont à 10 m au moins
# of 43eee2b9, reviewed: false
checks-road_distance-why = Le poids des roues fissure les dômes et les tuyaux.
# of e7f99ce8, reviewed: false
checks-road_distance-do = Déplacez l'installation, ou clôturez-la et plantez des bornes qui arrêtent les véhicules.
# of fdbe900a, reviewed: false
checks-not_flooded-title = Le terrain n'est pas inondable et n'est pas sur une ligne d'écoulement
# of ea3fe43d, reviewed: false
checks-not_flooded-why = L'eau d'inondation entre dans l'installation, fait flotter la cuve et répand le substrat.
# of ce5d3670, reviewed: false
checks-not_flooded-do = Choisissez un terrain plus haut ; relevez les bords de l'entrée et de la sortie et faites passer l'eau d'orage autour de l'installation.
# of 7957c994, reviewed: false
checks-runoff_kept_away-title = L'eau des toits et de la cour n'atteint ni l'installation ni le sol qui la recouvre
# of e7c17ab1, reviewed: false
checks-runoff_kept_away-why = Un sol mouillé perd sa résistance, et l'eau froide fait baisser la production de gaz.
# of 5f27cf17, reviewed: false
checks-runoff_kept_away-do = Dirigez ailleurs les gouttières du toit et creusez un fossé de dérivation.
# of fd84ffe7, reviewed: false
checks-slope_moderate-title = La pente du terrain ne dépasse pas 15 %
# of 8ed5f42c, reviewed: false
checks-slope_moderate-why = Sur un terrain raide, l'installation peut être poussée ou glisser.
# of fbab7cec, reviewed: false
checks-slope_moderate-do = Aménagez une terrasse et drainez le terrain, et faites-le examiner par un ingénieur ; au-dessus de 30 %, ne construisez pas sans ouvrages de soutènement.
# of f8e0a0e0, reviewed: false
checks-soil_bears_evenly-title = Le sol est ferme et porte également partout
# of dd169ab1, reviewed: false
checks-soil_bears_evenly-why = L'argile gonflante, le remblai, la tourbe, le sable boulant et le terrain à demi rocheux se tassent inégalement et fissurent la cuve.
# of f4a5b4e4, reviewed: false
checks-soil_bears_evenly-do = Creusez une fosse d'essai avec le maçon, et choisissez un autre endroit ou un autre type de digesteur.
# of 7a586007, reviewed: false
checks-overflow_to_own_land-title = La sortie se vide sur une terre utilisable de l'exploitation elle-même
# of 7e8bf715, reviewed: false
checks-overflow_to_own_land-why = Du digestat sur une route ou sur la terre d'un voisin amène des querelles, et les promesses de l'enlever chaque jour ne sont pas tenues.
# of 027ad1a7, reviewed: false
checks-overflow_to_own_land-do = Conduisez la sortie vers votre propre champ, un bassin ou des fosses à compost.
# of 304e4f73, reviewed: false
checks-no_low_place_near_outlet-title = Aucune pièce, étable ou fosse ne se trouve à la fois plus bas qu'une sortie de gaz ou que la sortie du digestat et à moins de 5 m d'elle
# of 23650971, reviewed: false
checks-no_low_place_near_outlet-why = Le dioxyde de carbone et le sulfure d'hydrogène sont lourds et s'accumulent dans les endroits bas.
# of d452f95f, reviewed: false
checks-no_low_place_near_outlet-do = Déplacez la sortie ou comblez le creux.
# of 20b9ad4b, reviewed: false
checks-pipe_slope-title = Le tuyau de gaz a une pente d'au moins 1 % vers le purgeur ou l'installation
# of 2ba9bcb8, reviewed: false
checks-pipe_slope-why = L'eau se condense dans le tuyau et bloque le gaz là où elle ne peut pas s'écouler.
# of 63637573, reviewed: false
checks-pipe_slope-do = Reposez le tuyau avec une pente régulière.
# of 5297c461, reviewed: false
checks-pipe_low_points_trapped-title = Chaque point bas du tuyau de gaz a un purgeur d'eau
# of a51da13b, reviewed: false
checks-pipe_low_points_trapped-why = L'eau condensée ferme le tuyau à chaque creux.
# of 8c23d57c, reviewed: false
checks-pipe_low_points_trapped-do = Relevez le creux pour que le tuyau s'égoutte, ou mettez-y un purgeur dans une fosse à couvercle.
# of 0f548621, reviewed: false
checks-pipe_burial-title = Le tuyau de gaz enterré est à 0.3 m de profondeur au moins
# of 6efdd518, reviewed: false
checks-pipe_burial-why = Un tuyau peu profond est touché par les houes, les sabots et le gel.
# of dcaf39b9, reviewed: false
checks-pipe_burial-do = Enterrez-le plus profondément, avec un ruban avertisseur au-dessus, et sous la profondeur du gel là où il gèle.
# of e6cf9325, reviewed: false
checks-no_hose_as_fixed_line-title = La conduite de gaz fixe est en tuyau rigide, pas en tuyau souple
# of f8650769, reviewed: false
checks-no_hose_as_fixed_line-why = Le tuyau souple est coupé, se fendille et est rongé par les rats.
# of a53b7c15, reviewed: false
checks-no_hose_as_fixed_line-do = Posez un tuyau rigide ; n'utilisez du tuyau souple à gaz que pour le dernier mètre jusqu'à l'appareil.
# of 4cb8fdd6, reviewed: false
checks-plant_valve_fitted-title = Une vanne principale se trouve au digesteur
# of abf19e75, reviewed: false
checks-plant_valve_fitted-why = Si du gaz s'échappe à l'intérieur, il faut pouvoir le fermer dehors, sans entrer dans la pièce.
# of 233b9bda, reviewed: false
checks-plant_valve_fitted-do = Posez une vanne à gaz au digesteur avant toute utilisation de gaz.
# of 59f81129, reviewed: false
checks-appliance_valves_fitted-title = Chaque appareil a son propre robinet
# of c6b3270b, reviewed: false
checks-appliance_valves_fitted-why = Le gaz continue de couler dans la pièce à partir d'un appareil que l'on ne peut pas fermer.
# of 50de08e5, reviewed: false
checks-appliance_valves_fitted-do = Posez un robinet avant chaque réchaud et chaque lampe.
# of e82d37b2, reviewed: false
checks-openings_fenced-title = Les enfants et les animaux ne peuvent tomber dans aucune fosse ni aucune ouverture
# of 89c7d0d3, reviewed: false
checks-openings_fenced-why = Des gens se noient ou sont asphyxiés par le gaz dans des fosses à lisier ou à digestat ouvertes.
# of a7041da3, reviewed: false
checks-openings_fenced-do = Mettez des couvercles solides sur toutes les ouvertures ou clôturez-les aujourd'hui.
# of 64a4666e, reviewed: false
checks-inlet_covered-title = L'entrée a un couvercle
# of fe9dd43e, reviewed: false
checks-inlet_covered-why = Une entrée ouverte laisse entrer la pluie et laisse tomber dedans des enfants, des animaux et des pierres.
# of 47c34989, reviewed: false
checks-inlet_covered-do = Faites un couvercle qu'un enfant ne peut pas soulever et fermez-le après chaque alimentation.
# of e8807510, reviewed: false
checks-overflow_guarded-title = La fosse de sortie est couverte ou entourée d'un garde-corps
# of c8025690, reviewed: false
checks-overflow_guarded-why = La sortie est profonde et dégage du gaz ; les gens qui y tombent n'en ressortent pas.
# of 3c3525b7, reviewed: false
checks-overflow_guarded-do = Posez des dalles dessus ou clôturez-la avant de remplir l'installation.
# of 7fccd0b4, reviewed: false
checks-water_tightness_not_failed-title = Le digesteur n'a pas échoué à son essai à l'eau
# of a01d00d3, reviewed: false
checks-water_tightness_not_failed-why = Une fuite sous le substrat ne peut plus être atteinte une fois le digesteur rempli, et elle souille le sol.
# of 0085825c, reviewed: false
checks-water_tightness_not_failed-do = Ne remplissez pas. Trouvez la fissure et réparez-la, laissez imbiber un jour, et refaites l'essai.
# of aabe479e, reviewed: false
checks-water_tightness_done-title = Le digesteur a été essayé à l'eau avant le remplissage
# of 6cfc7303, reviewed: false
checks-water_tightness_done-why = Sans l'essai, une fuite ne se voit que lorsqu'il faut de nouveau vider le digesteur.
# of df011a11, reviewed: false
checks-water_tightness_done-do = Remplissez d'eau, laissez imbiber un jour, complétez jusqu'à un repère et regardez un jour plus tard. On ne peut se passer de cet essai que là où l'eau manque trop, en prenant ce risque.
# of f7fe1af9, reviewed: false
checks-water_test_loss-title = Pendant l'essai à l'eau, le digesteur perd moins de 2 % de son volume en un jour
# of 1dad6d7a, reviewed: false
checks-water_test_loss-why = Une perte plus grande signifie une fuite et pas seulement l'imbibition.
# of 605ab71b, reviewed: false
checks-water_test_loss-do = Réparez et refaites l'essai avant de remplir.
# of c0ba6188, reviewed: false
checks-gas_tightness_passed-title = L'espace à gaz a réussi son essai d'étanchéité
# of d9535167, reviewed: false
checks-gas_tightness_passed-why = Un dôme ou une poche qui fuit perd du gaz là où vivent des gens, et on ne peut pas le réparer sous le substrat.
# of 081b0d15, reviewed: false
checks-gas_tightness_passed-do = Ne remplissez pas. Montez la pression avec de l'eau ou de l'air, attendez 24 heures, repassez une couche sur tout ce qui fuit, et recommencez jusqu'à ce que cela tienne.
# of 95e94b3a, reviewed: false
checks-gas_test_drop-title = Pendant l'essai au gaz, la pression ne baisse pas de plus de 3 % en 24 heures
# of 063a1831, reviewed: false
checks-gas_test_drop-why = Une baisse plus grande signifie une fuite dans le dôme, le couvercle ou le tuyau.
# of 5d60db0d, reviewed: false
checks-gas_test_drop-do = Repassez une couche sur le dôme, reposez le couvercle et refaites l'essai.
# of aeb092ad, reviewed: false
checks-gas_test_temperature_steady-title = Entre les lectures de l'essai au gaz, la température ne diffère pas de plus de 0.5 K
# of 5b2956e7, reviewed: false
checks-gas_test_temperature_steady-why = Un degré fait bouger la pression de plus que toute la tolérance permise.
# of d87b8a61, reviewed: false
checks-gas_test_temperature_steady-do = Lisez d'une aube à l'autre, à l'ombre, et notez la température.
# of 45eb49ac, reviewed: false
checks-cured_least-title = La maçonnerie et l'enduit ont durci pendant au moins 7 jours avant le remplissage
# of a1dcb269, reviewed: false
checks-cured_least-why = Un béton jeune se fissure sous la charge.
# of 7ef375e6, reviewed: false
checks-cured_least-do = Attendez, et gardez le tout mouillé et à l'ombre pendant ce temps.
# of 0eb25a59, reviewed: false
checks-cured_usual-title = La maçonnerie et l'enduit ont durci pendant 14 jours avant le remplissage
# of 79a50d79, reviewed: false
checks-cured_usual-why = Deux à trois semaines de cure humide sont habituelles.
# of 07cb57b4, reviewed: false
checks-cured_usual-do = Attendez que deux semaines soient passées, et mouillez chaque jour.
# of 201c6077, reviewed: false
checks-backfilled_before_pressure-title = La terre est remise et damée autour du mur et sur le dôme avant toute pression
# of aa2ee33e, reviewed: false
checks-backfilled_before_pressure-why = Le poids de la terre tient le dôme contre le gaz.
# of d6a187be, reviewed: false
checks-backfilled_before_pressure-do = Remblayez en couches damées de 15 à 30 cm avant d'essayer ou de remplir.
# of b7ef045b, reviewed: false
checks-dome_cover_depth-title = Au moins 0.4 m de terre recouvre le dôme
# of cc7ad93e, reviewed: false
checks-dome_cover_depth-why = Moins de terre ne compense pas la pression du gaz.
# of 8b2ec097, reviewed: false
checks-dome_cover_depth-do = Ajoutez de la terre avant d'enfermer le gaz.
# of df4bc6c9, reviewed: false
checks-gas_space_coated-title = L'espace à gaz d'un dôme en maçonnerie a un revêtement étanche au gaz
# of 7bdaf61c, reviewed: false
checks-gas_space_coated-why = La brique, le béton et l'enduit laissent passer le gaz.
# of 0c3c4a72, reviewed: false
checks-gas_space_coated-do = Faites revêtir l'intérieur de cire, de latex ou de peinture synthétique avant le remplissage, par un maçon qui travaille dans de l'air en mouvement.
# of d2b635bc, reviewed: false
checks-no_cracks-title = Le dôme ne montre aucune fissure
# of 368ba189, reviewed: false
checks-no_cracks-why = Le gaz s'échappe par les fissures.
# of f2e21f13, reviewed: false
checks-no_cracks-do = Faites ouvrir la fissure par le maçon, qui la remplit de mortier riche en plusieurs couches et y passe au pinceau des couches d'étanchéité.
# of 4d91218b, reviewed: false
checks-not_emptied_at_high_groundwater-title = L'installation n'est pas vidée tant que la nappe est au-dessus de son fond
# of cea0fd95, reviewed: false
checks-not_emptied_at_high_groundwater-why = Une cuve vide remonte en flottant ou s'effondre.
# of 48dd37cc, reviewed: false
checks-not_emptied_at_high_groundwater-do = Videz en saison sèche, ou rabattez d'abord la nappe.
# of a229c8ca, reviewed: false
checks-vent_open_while_emptying-title = L'évent de gaz est ouvert pendant que l'on retire du substrat
# of 9f89c3fd, reviewed: false
checks-vent_open_while_emptying-why = Sans cela, la succion fait entrer de l'air et peut fissurer le dôme.
# of 3ffcb96b, reviewed: false
checks-vent_open_while_emptying-do = Laissez le manomètre descendre à zéro avec toutes les flammes éteintes, ouvrez l'évent, et retirez le substrat lentement.
# of 4722209a, reviewed: false
checks-pit_walls_supported-title = Les parois d'une fosse de plus de 1.2 m de profondeur sont taillées en pente ou étayées
# of af518c65, reviewed: false
checks-pit_walls_supported-why = Les parois de terre tombent sans avertissement et ensevelissent les gens.
# of 09425793, reviewed: false
checks-pit_walls_supported-do = Arrêtez de creuser ; taillez les parois en pente ou étayez-les, gardez les déblais et les gens loin du bord, et suivez la réglementation locale.
# of d330218e, reviewed: false
checks-built_by_trained_mason-title = Un maçon ou un fabricant formé construit l'installation d'après un plan éprouvé
# of 287818e2, reviewed: false
checks-built_by_trained_mason-why = Une mauvaise construction est une cause principale d'échec des installations, et un dôme fissuré est dangereux.
# of fc4ce550, reviewed: false
checks-built_by_trained_mason-do = Engagez un maçon formé, et un ingénieur agréé là où la réglementation le demande.
# of 57399def, reviewed: false
checks-users_trained-title = On a montré aux utilisateurs le mélange, les vannes, la recherche de fuites, le purgeur, la flamme et la règle de ne jamais entrer
# of c79afc5e, reviewed: false
checks-users_trained-why = Les erreurs d'utilisation sont la raison la plus fréquente de l'arrêt des installations.
# of 45248d48, reviewed: false
checks-users_trained-do = Avant de remettre l'installation, formez tous ceux qui la feront marcher.
# of dec80581, reviewed: false
checks-level_above_port-title = Le substrat est à 0.2 m au moins au-dessus du haut des ouvertures d'entrée et de sortie
# of 7c229dbf, reviewed: false
checks-level_above_port-why = À un niveau plus bas, le gaz s'échappe par l'ouverture.
# of 6827cc63, reviewed: false
checks-level_above_port-do = Complétez avec de l'eau ou du mélange, et ne retirez pas plus que ce qui entre.
# of f8f95dfb, reviewed: false
checks-first_fill_whole-title = Le premier remplissage emplit le digesteur jusqu'à son niveau de service en une seule fois
# of c81f1aa6, reviewed: false
checks-first_fill_whole-why = Un démarrage à plein donne du gaz plus tôt ; un mélange plus clair vaut mieux qu'un digesteur à moitié vide.
# of 98792e74, reviewed: false
checks-first_fill_whole-do = Réunissez plus de fumier, ou complétez avec de l'eau sans excès, et faites l'appoint bientôt.
# of fe5b2f35, reviewed: false
checks-first_fill_least-title = Le premier remplissage emplit au moins la moitié du digesteur
# of e1f1f398, reviewed: false
checks-first_fill_least-why = L'entrée et la sortie doivent se terminer sous le substrat, sinon le gaz s'échappe par là.
# of 169c8547, reviewed: false
checks-first_fill_least-do = Attendez et réunissez plus de fumier avant de remplir.
# of 6e6282d2, reviewed: false
checks-heap_age_month-title = Le fumier le plus ancien du premier remplissage n'a pas plus d'un mois
# of cd7bf45f, reviewed: false
checks-heap_age_month-why = Le fumier couvert se garde environ un mois et a ensuite perdu une grande part de son gaz.
# of 0d150cd5, reviewed: false
checks-heap_age_month-do = Commencez la collecte plus tard, utilisez le plus ancien pour le champ, et gardez le tas couvert.
# of f1f1d310, reviewed: false
checks-heap_age_uncovered-title = Le fumier laissé sans couverture n'a pas plus de 10 jours
# of 611abaa3, reviewed: false
checks-heap_age_uncovered-why = Le soleil et la pluie lui prennent sa force, et le fumier humide commence à digérer dans le tas.
# of ca331be5, reviewed: false
checks-heap_age_uncovered-do = Couvrez le tas d'une bâche et gardez-le à l'ombre et sec sur le dessus.
# of 7c6e2457, reviewed: false
checks-starter_for_other_feed-title = Les matières qui ne démarrent pas d'elles-mêmes reçoivent au moins 10 % de digestat d'ensemencement
# of fd50336e, reviewed: false
checks-starter_for_other_feed-why = Seules les bouses de vache et de buffle apportent assez de microbes ; sans eux, les autres matières s'acidifient.
# of 5f86ee6f, reviewed: false
checks-starter_for_other_feed-do = Apportez du digestat d'une installation en marche, ou démarrez avec de la bouse de vache fraîche seule.
# of 9ad1d40d, reviewed: false
checks-no_excreta_without_starter-title = Un premier remplissage qui a peu de digestat d'ensemencement ne contient pas d'excréments humains
# of 3b733d81, reviewed: false
checks-no_excreta_without_starter-why = Ils donnent de l'ammoniac avant que les microbes puissent le supporter, et portent des maladies pendant qu'on les manipule.
# of 96f2e583, reviewed: false
checks-no_excreta_without_starter-do = Démarrez avec de la bouse de vache et raccordez la latrine une fois que le gaz brûle.
# of c710aac8, reviewed: false
checks-no_poultry_start_without_starter-title = Les fientes de volaille font au plus un cinquième d'un premier remplissage qui a peu de digestat d'ensemencement
# of b9dadaab, reviewed: false
checks-no_poultry_start_without_starter-why = Leur ammoniac arrête un jeune digesteur.
# of 1a1f9421, reviewed: false
checks-no_poultry_start_without_starter-do = Démarrez avec de la bouse de vache et ajoutez les fientes plus tard, pas à pas.
# of 219d644d, reviewed: false
checks-first_charge_carbon_to_nitrogen-title = Le rapport carbone sur azote du premier remplissage ne dépasse pas 30
# of d99aed41, reviewed: false
checks-first_charge_carbon_to_nitrogen-why = Avec trop peu d'azote, les microbes se multiplient lentement.
# of 1b33d730, reviewed: false
checks-first_charge_carbon_to_nitrogen-do = Ajoutez du fumier ou un peu d'urine, et mettez moins de paille.
# of c7dabe9f, reviewed: false
checks-no_feed_before_gas-title = Rien n'est ajouté après le premier remplissage tant que le gaz ne brûle pas régulièrement
# of 0da1d26d, reviewed: false
checks-no_feed_before_gas-why = Une alimentation trop précoce rend le substrat acide.
# of e24ab443, reviewed: false
checks-no_feed_before_gas-do = Attendez, et commencez par de petites alimentations quand le gaz brûle.
# of 31e1d1b1, reviewed: false
checks-slurry_total_solids_most-title = Le mélange n'a pas plus de 12 % de matière sèche
# of 08361a5d, reviewed: false
checks-slurry_total_solids_most-why = Un mélange épais forme de l'acide et une croûte flottante et ne coule pas.
# of 569fce2b, reviewed: false
checks-slurry_total_solids_most-do = Ajoutez de l'eau ou de l'urine jusqu'à ce qu'un bâton que l'on y passe ne laisse plus de sillon.
# of af0948fb, reviewed: false
checks-slurry_total_solids_least-title = Le mélange a au moins 4 % de matière sèche
# of 0155a35a, reviewed: false
checks-slurry_total_solids_least-why = Un mélange clair remplit le digesteur d'eau, est entraîné au travers et donne peu de gaz.
# of e90e2785, reviewed: false
checks-slurry_total_solids_least-do = Mettez moins d'eau et empêchez l'eau de pluie et de lavage d'entrer.
# of 2761e31c, reviewed: false
checks-slurry_total_solids_usual-title = Le mélange a 5 à 10 % de matière sèche
# of c162c1fe, reviewed: false
checks-slurry_total_solids_usual-why = Dans cette plage, il coule, se mélange et donne le plus de gaz pour son volume.
# of e51374d5, reviewed: false
checks-slurry_total_solids_usual-do = Changez l'eau d'un seau à la fois.
# of da88a6e8, reviewed: false
checks-water_enough-title = Il y a chaque jour autant d'eau que l'alimentation en demande
# of 8df8c6d0, reviewed: false
checks-water_enough-why = Alimenter trop épais par manque d'eau est une cause majeure d'échec.
# of 9f921d72, reviewed: false
checks-water_enough-do = Utilisez de l'urine et de l'eau de lavage sans savon, remettez une partie du liquide de sortie, ou construisez plus petit ou pour des matières plus sèches.
# of 7731fea9, reviewed: false
checks-water_half-title = Il y a au moins la moitié de l'eau que l'alimentation demande
# of 228c5fc5, reviewed: false
checks-water_half-why = Avec moins de la moitié, une installation de ce type ne peut pas marcher.
# of 4990e524, reviewed: false
checks-water_half-do = Ne construisez pas avant d'avoir trouvé de l'eau, par exemple avec une citerne de pluie, ou choisissez un digesteur discontinu à sec.
# of 2f3e6340, reviewed: false
checks-recycled_liquid_share-title = Pas plus de la moitié du liquide de mélange revient de la sortie
# of e6ca1caf, reviewed: false
checks-recycled_liquid_share-why = Le sel et l'ammoniac doublent quand la moitié est remise et augmentent vite au-delà.
# of f3f5e271, reviewed: false
checks-recycled_liquid_share-do = Ajoutez de l'eau neuve.
# of f4aa28e4, reviewed: false
checks-rain_kept_out-title = L'eau de pluie et l'eau de chasse ne coulent ni dans l'entrée ni dans la sortie
# of 5f73912b, reviewed: false
checks-rain_kept_out-why = Elles éclaircissent et refroidissent le substrat et entraînent les microbes dehors.
# of 7320f31e, reviewed: false
checks-rain_kept_out-do = Couvrez les ouvertures et creusez un fossé.
# of dfbe27a4, reviewed: false
checks-toilet_flush-title = Des toilettes raccordées sont rincées avec 1 litre au plus
# of f66ecce7, reviewed: false
checks-toilet_flush-why = Un réservoir de chasse noie le digesteur.
# of 63afd1fb, reviewed: false
checks-toilet_flush-do = Utilisez une cuvette à rinçage manuel.
# of 1abb56a4, reviewed: false
checks-no_carbide-title = Aucun carbure de calcium n'entre dans le digesteur
# of 62618b1f, reviewed: false
checks-no_carbide-why = Avec l'eau, il donne de l'acétylène, qui explose.
# of d3d02e40, reviewed: false
checks-no_carbide-do = Tenez-le loin du fumier de l'exploitation ; s'il en est entré, éteignez toutes les flammes et restez à l'écart.
# of aaa88cc9, reviewed: false
checks-no_carcass-title = Ni animaux morts ni déchets d'abattage ne vont dans le digesteur
# of 91c2587e, reviewed: false
checks-no_carcass-why = Les maladies traversent un digesteur domestique, et la loi limite l'usage de ces déchets.
# of 2a29b535, reviewed: false
checks-no_carcass-do = Enterrez-les ou compostez-les comme le dit la loi vétérinaire.
# of adcd9cc8, reviewed: false
checks-no_poisons-title = Ni pesticide, ni désinfectant, ni déchet métallique, ni engrais, ni plante toxique n'entre dans l'alimentation
# of 6338630e, reviewed: false
checks-no_poisons-why = Ils tuent les microbes, et le gaz s'arrête pendant des semaines.
# of a9e13e0f, reviewed: false
checks-no_poisons-do = Conduisez ailleurs pendant 2 à 3 jours l'eau des bains antiparasitaires et l'eau de lavage, et écartez les plantes traitées, l'urée, l'ail et les feuilles de pêcher.
# of 596fc011, reviewed: false
checks-no_antibiotics-title = Aucun fumier d'animaux sous antibiotiques n'entre dans l'alimentation
# of db78ddbd, reviewed: false
checks-no_antibiotics-why = Les antibiotiques dans le fumier arrêtent les microbes.
# of a536805c, reviewed: false
checks-no_antibiotics-do = Compostez ce fumier jusqu'à une semaine ou plus après le traitement.
# of dc7c8372, reviewed: false
checks-medicine_withdrawn-title = Le dernier traitement antibiotique ou vermifuge remonte à 7 jours au moins
# of 45314432, reviewed: false
checks-medicine_withdrawn-why = Les médicaments sortent avec le fumier pendant des jours.
# of 6a8e7fab, reviewed: false
checks-medicine_withdrawn-do = Compostez ce fumier pendant ce temps ; attendez 14 jours après le traitement de tout le troupeau.
# of a328d851, reviewed: false
checks-no_cyanide_plants-title = Les épluchures de manioc, pousses de sorgho et plantes semblables, si elles sont fraîches, ont flétri ou trempé avant l'alimentation
# of 4eb108b6, reviewed: false
checks-no_cyanide_plants-why = Fraîches, elles dégagent du cyanure, qui nuit aux gens qui les hachent et aux microbes.
# of 82ed99a5, reviewed: false
checks-no_cyanide_plants-do = Faites-les flétrir ou fermenter en plein air et commencez avec peu.
# of 87866bff, reviewed: false
checks-no_grit-title = Il n'y a ni terre, ni sable, ni pierres, ni os, ni farine d'os dans l'alimentation
# of 862bddf7, reviewed: false
checks-no_grit-why = Ils coulent au fond et remplissent le digesteur jusqu'à ce qu'il faille le vider.
# of 5c009730, reviewed: false
checks-no_grit-do = Ramassez le fumier sur un sol dur, laissez le sable se déposer dans la fosse de mélange, et laissez-y le fond.
# of 6134af5c, reviewed: false
checks-no_foreign_matter-title = Il n'y a ni plastique, ni bois, ni plumes dans l'alimentation
# of b67b6fa6, reviewed: false
checks-no_foreign_matter-why = Ils ne se digèrent pas ; ils flottent et bouchent les tuyaux.
# of 5cf394c1, reviewed: false
checks-no_foreign_matter-do = Retirez-les avant de mélanger.
# of c791955b, reviewed: false
checks-no_sharp_things-title = Il n'y a ni métal ni verre dans l'alimentation
# of b9f2d2b1, reviewed: false
checks-no_sharp_things-why = Les objets tranchants coupent les mains et percent les poches.
# of ca4d0cb1, reviewed: false
checks-no_sharp_things-do = Retirez-les avec une fourche et portez des gants.
# of 03bb8ab0, reviewed: false
checks-bedding_straw_little-title = La paille de litière est écartée de l'alimentation
# of d63a69d8, reviewed: false
checks-bedding_straw_little-why = La longue paille flotte, forme une croûte et bouche l'entrée et la sortie.
# of 382f5776, reviewed: false
checks-bedding_straw_little-do = Retirez-la au râteau, ou hachez-la en morceaux de 1 à 4 cm et laissez-la d'abord pourrir.
# of 6c1f8ab5, reviewed: false
checks-no_oil-title = Ni huile, ni graisse, ni carburant n'entre dans l'alimentation
# of 913a7370, reviewed: false
checks-no_oil-why = Les films d'huile et les acides gras arrêtent les microbes et font de la mousse.
# of 760868bd, reviewed: false
checks-no_oil-do = Gardez-les dehors.
# of 1418a386, reviewed: false
checks-no_soap-title = Ni savon ni eau de lavage n'entre dans l'alimentation
# of 4eb380ce, reviewed: false
checks-no_soap-why = Le savon nuit aux microbes et fait de la mousse.
# of 80bc2a30, reviewed: false
checks-no_soap-do = Conduisez l'eau de lavage au jardin.
# of 8ca6a076, reviewed: false
checks-particle_length_usual-title = Les végétaux sont hachés en morceaux de 1 à 4 cm
# of a4a315ba, reviewed: false
checks-particle_length_usual-why = Les morceaux courts se digèrent et coulent.
# of 389cf358, reviewed: false
checks-particle_length_usual-do = Hachez-les, et laissez-les pourrir quelques jours.
# of 6c03ec03, reviewed: false
checks-crop_residue_more-title = Les résidus de culture ne dépassent pas 25 % de la matière sèche introduite
# of 936a2170, reviewed: false
checks-crop_residue_more-why = Une part plus grande flotte dans un digesteur sans brassage.
# of b4aa2589, reviewed: false
checks-crop_residue_more-do = Hachez-les et laissez-les pourrir d'abord, brassez chaque jour, ou mettez-en moins.
# of 6ebe26a5, reviewed: false
checks-crop_residue_most-title = Dans un digesteur sans brassage, les résidus de culture ne dépassent pas 40 % de la matière sèche introduite
# of 48ffe0da, reviewed: false
checks-crop_residue_most-why = La croûte ferme le digesteur et il faut la creuser pour l'enlever.
# of 9334cf72, reviewed: false
checks-crop_residue_most-do = Digérez-les dans une cuve discontinue, ou compostez-les.
# of 3d571357, reviewed: false
checks-poultry_share_usual-title = Les fientes de volaille font environ un cinquième du fumier mélangé
# of 7bc9a09a, reviewed: false
checks-poultry_share_usual-why = Une part sur cinq a donné le meilleur rendement avec la bouse de vache.
# of 4514d5bf, reviewed: false
checks-poultry_share_usual-do = Ajoutez plus de bouse de vache au mélange.
# of c9e61a12, reviewed: false
checks-poultry_share_most-title = Les fientes de volaille ne dépassent pas la moitié de l'alimentation
# of 092ba5e0, reviewed: false
checks-poultry_share_most-why = Sans dilution ni lente adaptation, l'ammoniac arrête le gaz.
# of d9288cde, reviewed: false
checks-poultry_share_most-do = Réduisez-les à moins de la moitié, diluez bien, et augmentez-les lentement sur des mois.
# of ab370d2c, reviewed: false
checks-acid_feed_share-title = Les fruits, le petit-lait, l'ensilage et les déchets alimentaires ne dépassent pas 25 % de la matière volatile introduite
# of 30e7d00f, reviewed: false
checks-acid_feed_share-why = Ils s'acidifient vite, et le substrat avec eux.
# of bc9d7365, reviewed: false
checks-acid_feed_share-do = Mélangez avec du fumier et augmentez la part lentement.
# of aa530977, reviewed: false
checks-feeding_daily-title = L'installation est alimentée chaque jour
# of 7e4294aa, reviewed: false
checks-feeding_daily-why = Une alimentation régulière donne une flamme régulière ; des installations visitées lors d'enquêtes étaient affamées puis suralimentées.
# of b1ee787a, reviewed: false
checks-feeding_daily-do = Alimentez chaque jour à la même heure.
# of 50ecdcd2, reviewed: false
checks-feeding_three_days-title = L'installation est alimentée au moins tous les trois jours
# of 24a7af1c, reviewed: false
checks-feeding_three_days-why = Le gaz varie fortement et les grosses doses amènent de l'acide.
# of b35714e9, reviewed: false
checks-feeding_three_days-do = Mettez des quantités plus petites et plus souvent.
# of 04ba761e, reviewed: false
checks-feeding_weekly-title = L'installation est alimentée au moins une fois par semaine
# of af9b675c, reviewed: false
checks-feeding_weekly-why = Au-delà d'une semaine entre deux alimentations, les gens du métier ne parlent plus d'alimentation régulière.
# of 1266fd4c, reviewed: false
checks-feeding_weekly-do = Divisez l'alimentation en portions pour un jour ou pour deux jours.
# of bd58d1a4, reviewed: false
checks-feeding_fortnight-title = L'installation est alimentée plus souvent qu'une fois toutes les deux semaines
# of 430a118e, reviewed: false
checks-feeding_fortnight-why = À ce rythme, elle marche plutôt comme un digesteur discontinu, avec une longue interruption du gaz.
# of 2897d362, reviewed: false
checks-feeding_fortnight-do = Alimentez plus souvent, ou prévoyez-la comme un digesteur discontinu avec un second à tour de rôle.
# of d2ce10b6, reviewed: false
checks-feed_increase_slow-title = L'alimentation journalière n'augmente pas de plus de 25 % en une semaine
# of 2beb9fbe, reviewed: false
checks-feed_increase_slow-why = Les microbes s'adaptent lentement.
# of 6dd1347f, reviewed: false
checks-feed_increase_slow-do = Augmentez l'alimentation par étapes sur une ou deux fois le temps de rétention.
# of dfdaab2a, reviewed: false
checks-loading_simple-title = La charge organique ne dépasse pas 1.5 kg/m3/d
# of cc5b63f6, reviewed: false
checks-loading_simple-why = C'est le plafond pour une installation agricole simple ; la surcharge se voit à un pH qui baisse.
# of df0421a4, reviewed: false
checks-loading_simple-do = Alimentez moins, ou construisez plus grand.
# of a5416d57, reviewed: false
checks-loading_most-title = La charge organique est inférieure à 2.5 kg/m3/d
# of 7e741f3a, reviewed: false
checks-loading_most-why = Jusqu'à 2.4 ont été supportés au-dessus de 20 °C dans une installation bien démarrée ; au-delà, l'acidification est probable.
# of d30d42e9, reviewed: false
checks-loading_most-do = Réduisez maintenant l'alimentation de moitié et remontez-la par étapes.
# of d64e997f, reviewed: false
checks-loading_cold-title = Au-dessous de 18 °C, la charge organique ne dépasse pas 0.8 kg/m3/d
# of 53c782c3, reviewed: false
checks-loading_cold-why = Les microbes froids mangent lentement, et ce qu'ils laissent se change en acide.
# of 68e80e69, reviewed: false
checks-loading_cold-do = Alimentez moins pendant la saison fraîche ou réchauffez l'installation.
# of dbc97f24, reviewed: false
checks-retention_least-title = Le temps de rétention hydraulique est d'au moins 30 jours
# of 5769a48e, reviewed: false
checks-retention_least-why = Un séjour plus court entraîne les microbes dehors et laisse plus de germes en vie.
# of 70ec6f10, reviewed: false
checks-retention_least-do = Introduisez moins de mélange, mettez moins d'eau, ou construisez plus grand.
# of 0769464e, reviewed: false
checks-retention_usual-title = Le temps de rétention hydraulique est d'au moins 40 jours
# of 942ca170, reviewed: false
checks-retention_usual-why = Les installations simples sans chauffage devraient avoir 40 jours, et 60 à 80 sont courants.
# of 340de15e, reviewed: false
checks-retention_usual-do = Alimentez un peu moins, ou construisez la taille au-dessus.
# of f49dc52e, reviewed: false
checks-retention_below_25-title = Au-dessous de 25 °C, le temps de rétention hydraulique est d'au moins 40 jours
# of 96f968e4, reviewed: false
checks-retention_below_25-why = La digestion est plus lente dans un substrat plus frais.
# of add3b6e5, reviewed: false
checks-retention_below_25-do = Construisez plus grand ou alimentez moins.
# of a1c0f391, reviewed: false
checks-retention_below_20-title = Au-dessous de 20 °C, le temps de rétention hydraulique est d'au moins 60 jours
# of bff9731a, reviewed: false
checks-retention_below_20-why = Dans les collines fraîches, on construit les installations pour environ 70 jours.
# of c3f8f01e, reviewed: false
checks-retention_below_20-do = Construisez plus grand, alimentez moins, ou isolez.
# of 4d88b4fe, reviewed: false
checks-retention_below_15-title = Au-dessous de 15 °C, le temps de rétention hydraulique est d'au moins 100 jours
# of b9f8764e, reviewed: false
checks-retention_below_15-why = La digestion à froid prend plus de cent jours.
# of 66c09b17, reviewed: false
checks-retention_below_15-do = Isolez ou couvrez l'installation, ou ne comptez pas sur son gaz.
# of c19f5ddc, reviewed: false
checks-retention_most-title = Le temps de rétention hydraulique ne dépasse pas 120 jours
# of c93d5192, reviewed: false
checks-retention_most-why = Un séjour plus long ajoute peu de gaz : l'installation est donc plus grande que son alimentation.
# of 75556c08, reviewed: false
checks-retention_most-do = Réunissez plus de fumier, ou construisez plus petit.
# of 15f3bcce, reviewed: false
checks-fed_share_least-title = L'installation reçoit au moins la moitié de l'alimentation pour laquelle elle est conçue
# of 66c294be, reviewed: false
checks-fed_share_least-why = La plupart des installations domestiques qui déçoivent sont affamées.
# of f5c7e917, reviewed: false
checks-fed_share_least-do = Réunissez plus de fumier, parquez les animaux la nuit, ou attendez-vous à moins de gaz.
# of a63e0053, reviewed: false
checks-fed_share_usual-title = L'installation reçoit au moins 80 % de l'alimentation pour laquelle elle est conçue
# of 4f9079cd, reviewed: false
checks-fed_share_usual-why = Le gaz baisse avec l'alimentation.
# of 68528bb1, reviewed: false
checks-fed_share_usual-do = Réunissez plus de fumier.
# of b7f808aa, reviewed: false
checks-total_volume_possible_least-title = Le volume total est au moins la moitié du plus petit que l'on construit de ce type
# of d425c651, reviewed: false
checks-total_volume_possible_least-why = Personne ne le construit si petit : le nombre ou son unité est donc faux.
# of 6ce3b962, reviewed: false
checks-total_volume_possible_least-do = Contrôlez l'unité, puis le point décimal ; cherchez la taille sur le plan.
# of 1b12a8c7, reviewed: false
checks-total_volume_possible_most-title = Le volume total est au plus le double du plus grand que l'on construit de ce type
# of 102a1048, reviewed: false
checks-total_volume_possible_most-why = Personne ne le construit si grand ; des litres écrits pour des mètres cubes, c'est l'erreur habituelle.
# of 6ce3b962, reviewed: false
checks-total_volume_possible_most-do = Contrôlez l'unité, puis le point décimal ; cherchez la taille sur le plan.
# of a12e3662, reviewed: false
checks-gas_storage_possible-title = La réserve de gaz est du tiers au triple de ce qui est habituel pour cette taille
# of 9fd8e258, reviewed: false
checks-gas_storage_possible-why = Elle ne va pas avec le volume total : l'un des deux est donc faux.
# of 26a199ce, reviewed: false
checks-gas_storage_possible-do = Contrôlez les deux unités ; prenez la réserve sur le plan ou d'après la baisse du niveau du substrat.
# of 19ba941f, reviewed: false
checks-air_temperature_possible-title = La moyenne annuelle de la température de l'air est celle d'un lieu où l'on élève du bétail
# of 2fb78b9e, reviewed: false
checks-air_temperature_possible-why = Aucun lieu habité n'a une telle moyenne ; des degrés Fahrenheit écrits pour des degrés Celsius, c'est l'erreur habituelle.
# of 50ee3d17, reviewed: false
checks-air_temperature_possible-do = Contrôlez l'unité, et que c'est bien la moyenne d'une année et non d'un jour.
# of 05c21d9f, reviewed: false
checks-feed_mass_possible_most-title = L'alimentation n'est pas plus que ce que supporte un digesteur simple
# of 412c08c8, reviewed: false
checks-feed_mass_possible_most-why = Plus de trois fois le plus que supporte un digesteur simple ne se donne pas longtemps : la masse ou le volume est donc mal noté.
# of 6fc62bd8, reviewed: false
checks-feed_mass_possible_most-do = Contrôlez les unités de l'alimentation et du volume, et si la masse est celle d'un jour ; pesez l'alimentation pendant une semaine.
# of e187b02a, reviewed: false
checks-feed_mass_possible_least-title = Ce qui est donné est plus que des miettes
# of a2b6ff5d, reviewed: false
checks-feed_mass_possible_least-why = Personne ne pèse si peu : la masse ou le volume est donc mal noté.
# of e9faa330, reviewed: false
checks-feed_mass_possible_least-do = Contrôlez les unités de l'alimentation et du volume ; des tonnes écrites pour des kilogrammes, c'est une erreur habituelle.
# of 2a8dbdd0, reviewed: false
checks-feed_within_herd-title = L'alimentation est au plus le double du plus que peut donner le troupeau
# of ccfea407, reviewed: false
checks-feed_within_herd-why = Ces animaux ne donnent pas tant : l'alimentation, le nombre de têtes ou l'unité est donc mal noté, à moins que du fumier ne soit acheté.
# of 9cdd7d57, reviewed: false
checks-feed_within_herd-do = Comptez les animaux et pesez le fumier d'un jour ; contrôlez l'unité de l'alimentation.
# of 4296742a, reviewed: false
checks-water_volume_possible_most-title = L'eau est au plus le triple du plus dont on dilue cette matière
# of 7c918971, reviewed: false
checks-water_volume_possible_most-why = Personne n'en porte autant : elle est donc mal notée, ou bien l'eau de pluie et de lavage y entre.
# of c364250d, reviewed: false
checks-water_volume_possible_most-do = Contrôlez l'unité et si le volume est celui d'un jour ; tenez à l'écart l'eau de pluie et de lavage.
# of 0903d837, reviewed: false
checks-water_volume_possible_least-title = L'eau ajoutée est plus qu'un filet
# of 56c822e0, reviewed: false
checks-water_volume_possible_least-why = Personne n'en mesure si peu ; des mètres cubes écrits pour des litres, c'est l'erreur habituelle.
# of 4912706b, reviewed: false
checks-water_volume_possible_least-do = Contrôlez l'unité ; comptez les seaux d'un jour.
# of d29022b5, reviewed: false
checks-gas_measured_possible_most-title = Le gaz mesuré est au plus une fois et demie le plus que donne l'alimentation
# of 86332f26, reviewed: false
checks-gas_measured_possible_most-why = On n'en tire pas tant de cette alimentation : l'alimentation ou le gaz est donc mal noté.
# of a846ec1e, reviewed: false
checks-gas_measured_possible_most-do = Contrôlez l'unité du compteur et si le volume est celui d'un jour, puis pesez l'alimentation pendant une semaine.
# of 6c28af86, reviewed: false
checks-gas_measured_possible_least-title = Le gaz mesuré est plus qu'une trace
# of af482805, reviewed: false
checks-gas_measured_possible_least-why = Une installation qui en donne si peu n'en donne pas, et aucun compteur domestique ne le lit ; des milliers de litres écrits pour des mètres cubes, c'est une erreur habituelle.
# of d8716286, reviewed: false
checks-gas_measured_possible_least-do = Contrôlez l'unité du compteur ; si elle est juste, cherchez une fuite.
# of 141bc083, reviewed: false
checks-gas_pressure_possible-title = La pression du gaz est au plus cinq fois la plus haute en usage
# of 639999ed, reviewed: false
checks-gas_pressure_possible-why = L'installation aurait éclaté ou chassé sa garde d'eau : le nombre ou son unité est donc faux.
# of c359d054, reviewed: false
checks-gas_pressure_possible-do = Relisez le manomètre et contrôlez l'unité ; si c'est juste, coupez le gaz, tenez-vous à l'écart et appelez qui a construit l'installation.
# of e2cdd440, reviewed: false
checks-ph_possible-title = Le pH est de ceux qu'a le substrat d'un digesteur
# of ddfbedc5, reviewed: false
checks-ph_possible-why = Même le substrat acidifié et les fientes pures sont entre ces limites : le relevé ou le point décimal est donc faux.
# of 9e396336, reviewed: false
checks-ph_possible-do = Mesurez de nouveau avec un papier neuf ou un appareil étalonné.
# of 73638941, reviewed: false
checks-visited_after_commissioning-title = La visite est postérieure à la mise en service
# of 2f988dc1, reviewed: false
checks-visited_after_commissioning-why = L'une des deux dates est fausse : l'âge et le démarrage ne sont donc pas connus.
# of 2b88614d, reviewed: false
checks-visited_after_commissioning-do = Cherchez les deux dates ; attention à l'ordre du jour et du mois.
# of fe036f1e, reviewed: false
checks-size_feeds_herd-title = Le digesteur est assez grand pour ce que donne le troupeau
# of a9bf314a, reviewed: false
checks-size_feeds_herd-why = Avec l'eau habituelle, le fumier du troupeau sortirait avant d'être digéré, même à la rétention la plus courte qui est habituelle ici.
# of b3f36964, reviewed: false
checks-size_feeds_herd-do = Donnez une partie du fumier et compostez le reste, ou construisez un second digesteur.
# of be59fc21, reviewed: false
checks-herd_fills_size-title = Le troupeau donne assez pour le digesteur
# of 97e01b39, reviewed: false
checks-herd_fills_size-why = Moins de la moitié de ce qui le remplit à la plus longue rétention habituelle ; le ménage paie un volume qui ne donne pas de gaz.
# of b90d7ebb, reviewed: false
checks-herd_fills_size-do = Recomptez les animaux ; ajoutez une autre matière, ou construisez les prochains plus petits.
# of 98262224, reviewed: false
checks-gas_is_measured-title = Le gaz d'un jour a été mesuré
# of 323fc519, reviewed: false
checks-gas_is_measured-why = Sans cela, personne ne peut dire si du gaz se perd.
# of 04030540, reviewed: false
checks-gas_is_measured-do = Relevez un compteur pendant une semaine, ou comptez les heures de chaque brûleur.
# of 8767dd99, reviewed: false
checks-gas_far_below_expected-title = Le gaz mesuré est au moins les quatre cinquièmes du moins que donne l'alimentation
# of 68fbc199, reviewed: false
checks-gas_far_below_expected-why = Une installation saine sur vingt est un peu au-dessous de la plage ; si loin au-dessous, du gaz se perd ou le substrat est malade.
# of 4cfe3fbb, reviewed: false
checks-gas_far_below_expected-do = Cherchez des fuites à l'eau savonneuse, puis regardez le pH, la chaleur, la croûte et la boue, et pesez l'alimentation pendant une semaine.
# of f3f97830, reviewed: false
checks-gas_not_above_expected-title = Le gaz mesuré est dans ce que peut donner l'alimentation
# of fde99de1, reviewed: false
checks-gas_not_above_expected-why = Plus que n'en donne l'alimentation même dans le meilleur de ces digesteurs : l'alimentation ou le gaz est donc mal noté, ou autre chose est donné aussi.
# of 847b534f, reviewed: false
checks-gas_not_above_expected-do = Demandez ce qui y entre d'autre, pesez l'alimentation pendant une semaine et contrôlez le compteur.
# of f1e1e335, reviewed: false
checks-running_steadily-title = Il a été alimenté pendant au moins une rétention
# of e3aac22e, reviewed: false
checks-running_steadily-why = Jusque-là, le gaz augmente encore : il n'est donc pas comparé à celui d'une alimentation régulière.
# of 8440ebfe, reviewed: false
checks-running_steadily-do = Mesurez de nouveau le gaz quand le digesteur aura été alimenté pendant une rétention.
# of 5079dd4c, reviewed: false
checks-losses_do_not_undo_savings-title = Le méthane perdu réchauffe moins que ce qui est économisé
