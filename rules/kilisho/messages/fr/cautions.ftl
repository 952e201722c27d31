# of 48724341, reviewed: false
cautions-local_codes-text = Ces conseils ne remplacent ni la loi ni une personne agréée. Là où la réglementation locale, les services de santé, de l'eau ou vétérinaires, ou bien un ingénieur, un maçon ou un installateur de gaz agréé exigent davantage, faites ce qu'ils demandent.
# of caac8aa5, reviewed: false
cautions-never_enter-text = N'entrez jamais dans un digesteur, une fosse de sortie ou une fosse à digestat ou à lisier, et ne vous penchez jamais à l'intérieur, même si l'ouvrage est vide. Le gaz tue en quelques respirations et le nez n'avertit pas. Travaillez de l'extérieur avec des outils longs ; laissez l'entrée à une équipe formée et équipée.
# of 570155a3, reviewed: false
cautions-structure_by_licensed-text = Ces dimensions servent à la planification. L'ouvrage, sa fondation et son ferraillage relèvent d'un ingénieur agréé ou d'un maçon formé disposant d'un plan éprouvé, ainsi que de la réglementation locale de la construction.
# of fd06b2ed, reviewed: false
cautions-excavation_collapse-text = Les parois d'une fosse peuvent s'effondrer sans avertissement et ensevelir des personnes. Talutez-les ou étayez-les, tenez les déblais, les véhicules et les curieux loin du bord, gardez une échelle dans la fosse et faites juger le terrain par un constructeur formé ; cherchez d'abord les conduites et les câbles enterrés.
# of 1e508ae0, reviewed: false
cautions-open_pit_children-text = Clôturez la fosse ouverte et couvrez-la pour la nuit, afin qu'aucun enfant ni aucun animal n'y tombe pendant la construction.
# of 2d49f6a5, reviewed: false
cautions-fill_after_curing_and_tests-text = Ne remplissez pas avant que la maçonnerie ait fini de durcir, que la terre soit remblayée tout autour et que le digesteur ait réussi ses essais d'étanchéité à l'eau et au gaz. Une fuite sous le substrat ne peut plus être atteinte.
# of 74dc81f5, reviewed: false
cautions-first_gas-text = Le premier gaz est mêlé d'air et peut exploser. Laissez-le s'échapper en plein air, sans le brûler, loin de toute flamme, une ou deux fois, quand le manomètre atteint pour la première fois environ 4 kPa (40 cm d'eau) ; une poche travaille à plus basse pression : laissez donc s'échapper son premier remplissage.
# of 85500e54, reviewed: false
cautions-first_flame-text = Essayez la première flamme sur le réchaud, au bout du tuyau, en plein air, à au moins 10 m du digesteur. N'approchez jamais une flamme du digesteur, de son tuyau, de son entrée ou de sa sortie.
# of 658ec61d, reviewed: false
cautions-loads-text = Le premier remplissage représente des tonnes de fumier et d'eau. Gardez les seaux en dessous de 20 kg, utilisez des brouettes, soulevez le dos droit, relayez-vous, reposez-vous et buvez ; les enfants et les femmes enceintes ne portent pas.
# of 2d2d48df, reviewed: false
cautions-no_flame_no_smoking-text = Pas de flamme, défense de fumer, pas d'étincelles à moins de 5 m du digesteur, du réservoir de gaz, de l'entrée ou de la sortie.
# of c8673b32, reviewed: false
cautions-hygiene-text = Le fumier et le digestat portent des germes et des œufs de vers. Portez des gants et des bottes, couvrez les plaies, lavez-vous les mains au savon avant de manger et ne laissez ni petits enfants ni femmes enceintes les manipuler.
# of 46494f37, reviewed: false
cautions-keep_openings_covered-text = Refermez les couvercles de l'entrée et de la sortie après chaque alimentation. Des personnes, surtout des enfants, et des animaux sont morts dans des fosses ouvertes.
# of 2129f855, reviewed: false
cautions-antibiotics_disinfectants-text = Ne laissez entrer dans le digesteur ni le fumier d'animaux sous traitement, ni l'eau de lavage contenant du désinfectant, du produit antiparasitaire ou du savon : ils arrêtent les microbes. Compostez ce fumier et attendez une semaine ou plus après le dernier traitement.
# of 1d117ed5, reviewed: false
cautions-gas_line_by_licensed-text = Les tuyaux, les vannes et les appareils relèvent d'un installateur de gaz formé et de la réglementation locale. Un tuyau rigide jusqu'à la pièce, un tuyau souple pour le dernier mètre seulement, une vanne au digesteur et une à chaque appareil, une pente vers un purgeur d'eau, un arrête-flamme avant le brûleur, et un essai à l'eau savonneuse avant usage.
# of 94ae078e, reviewed: false
cautions-flame_gone_out-text = Quand une flamme s'éteint faute de gaz, fermez aussitôt le robinet : le gaz qui arrive ensuite se répand dans la pièce sans brûler. Allumez d'abord l'allumette, ouvrez ensuite le robinet, et fermez la vanne principale la nuit.
# of 2a1a2814, reviewed: false
cautions-gas_pressure_limits-text = N'augmentez pas la pression, pour obtenir une meilleure flamme, au-delà de ce pour quoi l'installation et l'appareil sont faits, et ne la laissez jamais tomber à zéro tant qu'une flamme brûle. Un appareil fait pour le gaz en bouteille ou le gaz de ville a besoin d'un autre injecteur avant de pouvoir brûler du biogaz.
# of 17c2bdf1, reviewed: false
cautions-digestate_not_sanitised-text = Un digesteur familial ne rend pas le digestat sans danger. Même à 35 °C, environ 40 % seulement des œufs de vers ronds étaient morts après 15 jours et 73 % après 45, et la plupart des installations sont plus froides. Respectez les délais d'attente et ne promettez à personne que le digestat est sain.
# of 7c800b0e, reviewed: false
cautions-slurry_store_drowning-text = Des personnes, surtout des enfants, et des animaux se noient dans les réserves de digestat ou de lisier, et une croûte ressemble à un sol ferme. Couvrez la réserve ou clôturez-la pour qu'aucun enfant n'y entre, gardez-y une échelle ou une corde, et ne la brassez ni ne la videz jamais en vous penchant au-dessus.
# of 51f01581, reviewed: false
cautions-slurry_off_water-text = Tenez le digestat à l'écart des puits, des cours d'eau, des pentes nues et des sols gorgés d'eau, et n'épandez pas avant une forte pluie : il empoisonne les poissons et l'eau potable. Les règles sur les distances, les saisons et les quantités sont locales ; suivez-les d'abord.
# of 44a38d6d, reviewed: false
cautions-salt_and_scorch-text = Le digestat frais brûle les jeunes plants et les feuilles. Diluez-le avec de l'eau ou donnez-le au sol à côté d'eux, et essayez-le d'abord sur quelques plantes.
# of 8bd8d8d2, reviewed: false
cautions-collapse_in_pit-text = Si quelqu'un s'effondre dans une fosse, ne le suivez pas. Appelez aussitôt des secouristes formés, tenez les autres à distance, soufflez de l'air frais à l'intérieur, et tirez la personne par une corde si elle y est attachée. Beaucoup de ceux qui sont morts dans des fosses y étaient entrés pour porter secours.
# of 8974b746, reviewed: false
cautions-gas_smell-text = Si vous sentez le gaz à l'intérieur : éteignez les flammes, ne touchez à aucun interrupteur, ouvrez portes et fenêtres, faites sortir tout le monde, fermez la vanne au digesteur. Cherchez la fuite uniquement à l'eau savonneuse. Le nez cesse vite de percevoir le gaz.
# of 944d25e0, reviewed: false
cautions-carbon_monoxide-text = Une flamme jaune ou qui fait de la suie produit du monoxyde de carbone, qui tue sans odeur. Gardez les aérations ouvertes, nettoyez le brûleur, et n'utilisez jamais à l'intérieur un appareil de chauffage sans conduit de fumée.
# of c01813fc, reviewed: false
cautions-emptying_suction-text = Ne retirez pas de substrat tant qu'une flamme brûle. Fermez d'abord la vanne principale, éteignez toutes les flammes et ouvrez l'évent, sinon de l'air est aspiré et le gaz devient explosif.
# of 19aeeb20, reviewed: false
cautions-not_a_certificate-text = Un contrôle sur papier ne certifie pas l'installation. Tout ce qui n'a pas été indiqué est inconnu et n'est pas sûr, et les gaz mesurés dans une fosse ne valent que pour l'instant de la mesure.
# of 5a8360bc, reviewed: false
cautions-engine_exhaust-text = Un moteur au biogaz produit du monoxyde de carbone. Faites-le tourner en plein air ou avec l'échappement conduit en plein air, jamais dans une maison ou une étable, tenez les personnes loin de sa courroie et de ses parties chaudes, et faites retirer du gaz le sulfure d'hydrogène en amont du moteur.
# of 6e14b9bf, reviewed: false
cautions-unattended_flame-text = Une flamme qui brûle des heures sans personne à côté exige une vanne de sécurité qui coupe le gaz quand elle s'éteint, une pièce bien aérée, et rien qui puisse brûler à proximité.
# of 335554df, reviewed: false
cautions-lamp_heat_and_mantle-text = Une lampe à gaz est brûlante : suspendez-la hors de portée des enfants et à un mètre au-dessous de tout ce qui peut brûler. Les vieux manchons contiennent du thorium ; n'en respirez pas la poussière et lavez-vous les mains.
# of 50b12f57, reviewed: false
cautions-out_into_fresh_air-text = Faites sortir aussitôt tout le monde à l'air frais, éteignez la flamme si cela ne prend pas de temps, fermez de l'extérieur la vanne au digesteur et appelez les secours médicaux. Personne ne retourne à l'intérieur avant que la pièce ait été longuement aérée. N'entrez pas dans une fosse à la suite de qui que ce soit.
# of 2c9f6142, reviewed: false
cautions-gas_fire-text = Éloignez tout le monde et appelez les pompiers. Fermez la vanne au digesteur si elle peut être atteinte sans danger. Laissez brûler le gaz enflammé jusqu'à ce que son arrivée soit coupée : le gaz qui s'échappe sans brûler peut exploser. Refroidissez de loin, avec de l'eau, ce qui est à proximité.
# of 328c62b8, reviewed: false
cautions-over_pressure-text = Tenez tout le monde loin de la poche, du couvercle et du dôme, et toutes les flammes et étincelles à au moins 10 m. Laissez le gaz s'échapper en plein air par la soupape de surpression ou la vanne du digesteur, arrêtez l'alimentation, et ne desserrez ni ne percez rien qui soit sous pression. Appelez le maçon.
# of 385837a6, reviewed: false
cautions-air_in_gas-text = Du gaz mêlé d'air peut exploser à l'intérieur du tuyau et du digesteur. Éteignez toutes les flammes, fermez la vanne du digesteur, et n'allumez rien avant que l'espace à gaz se soit rempli de nouveau et que ce gaz se soit échappé en plein air sans être brûlé.
# of 8c77c95b, reviewed: false
cautions-hydrogen_sulfide_air-text = Le sulfure d'hydrogène sent d'abord l'œuf pourri, puis il endort l'odorat : une odeur qui disparaît soudain n'est pas bon signe. Allez à l'air frais en marchant contre le vent, aérez les pièces, restez hors des fosses et des endroits bas, et ne sentez pas le gaz pour le tester.
# of 918faf75, reviewed: false
cautions-pathogens_human-text = Les excréments humains font passer des germes et des œufs de vers à travers le digesteur. Faites déboucher la latrine directement dedans pour que personne ne les manipule, stockez le digestat avant usage, et ne le mettez jamais sur des cultures qui se mangent crues.
# of 72abe67d, reviewed: false
cautions-pathogens_manure-text = Le fumier des animaux porte des germes qui rendent les gens malades. Portez des gants et des bottes, lavez-vous les mains au savon, et ne mettez pas de digestat sur les cultures qui se mangent crues.
# of 89d984ac, reviewed: false
cautions-ammonia_feed-text = Cette matière est riche en azote et son ammoniac peut arrêter le gaz ; dans les bâtiments fermés, l'ammoniac blesse aussi les yeux et les poumons. Diluez bien, mélangez avec de la bouse, et augmentez sa part lentement.
# of 41a185a2, reviewed: false
cautions-acid_feed-text = Cette matière s'acidifie vite. Commencez par de petites quantités, mélangez-la à du fumier, et arrêtez quand le substrat sent l'aigre ou que le pH descend en dessous de 6.8.
# of 08d2fb02, reviewed: false
cautions-floating_feed-text = Cette matière flotte et forme une croûte. Hachez-la court ou laissez-la d'abord pourrir, brassez chaque jour, et ne cassez une croûte que de l'extérieur.
# of f0331dd7, reviewed: false
cautions-grit_feed-text = Cette matière apporte du sable et du gravier qui comblent le digesteur au fil des années. Laissez-les se déposer dans la fosse de mélange et laissez-y le fond.
# of 4ef8778a, reviewed: false
cautions-animal_disease_import-text = Une matière venue d'une autre exploitation, d'un marché, d'une cuisine ou d'un lieu d'abattage peut transmettre des maladies animales. Demandez aux services vétérinaires, n'en prenez aucune dans les zones réglementées, et nettoyez véhicules et outils.
# of dc948750, reviewed: false
cautions-cyanide_feed-text = Cette matière peut dégager du cyanure quand elle est fraîche. Hachez-la en plein air, faites-la d'abord flétrir, tremper ou fermenter, tenez les animaux à l'écart, et apportez-en peu.
# of bf910220, reviewed: false
cautions-sharp_foreign_matter-text = Cette matière cache souvent du verre, du métal, des os ou du plastique. Triez-la avec une fourche et des gants ; les morceaux tranchants coupent les mains et percent les poches.
# of 26311114, reviewed: false
cautions-bag_puncture_pressure-text = Une poche se déchire sur les objets pointus, sous les sabots et au feu, et elle éclate sous la pression en lâchant tout son gaz. Clôturez-la et ombragez-la, tenez les flammes à 5 m, et ne bouchez jamais sa soupape de surpression.
# of 7d792448, reviewed: false
cautions-drum_corrosion-text = Une cloche qui rouille laisse fuir le gaz et devient trop faible pour qu'on y monte. Dérouillez-la et repeignez-la chaque année, gaz coupé et toutes flammes éteintes, ne montez jamais dessus, et vérifiez son guide.
# of c3a7e0fc, reviewed: false
cautions-dome_lid_pressure-text = La pression du gaz peut projeter le couvercle d'un dôme. Ne vous tenez jamais au-dessus du couvercle et ne le desserrez jamais sous pression ; laissez d'abord le gaz s'échapper en plein air, toutes flammes éteintes, jusqu'à ce que le manomètre tombe à zéro, et gardez la sortie dégagée.
# of d212b7b3, reviewed: false
cautions-batch_opening-text = Ouvrir une cuve discontinue, c'est ouvrir un espace à gaz. Brûlez d'abord le gaz ou laissez-le s'échapper, éteignez toute flamme à moins de 10 m, ouvrez du côté d'où vient le vent, aérez pendant des jours, et ne descendez pas dedans pour la vider ; laissez l'entrée à une équipe formée.
