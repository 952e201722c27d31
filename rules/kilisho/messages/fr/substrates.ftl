# of 71146b9d, reviewed: false
substrates-cattle_dung-name = Bouse fraîche de vaches laitières à l'étable
# of 03017fd8, reviewed: false
substrates-cattle_dung-handling-1 = Enlevez à la main la paille, les restes de fourrage et les pierres.
# of fab2cc19, reviewed: false
substrates-cattle_dung-handling-2 = Mélangez avec un volume égal d'eau, ou d'urine et d'eau, jusqu'à ce qu'il ne reste plus de grumeaux.
# of a730cfca, reviewed: false
substrates-cattle_dung-handling-3 = Introduisez-la le jour où elle tombe ; chaque jour passé sur le tas fait perdre du gaz.
# of c5bdc46e, reviewed: false
substrates-local_cattle_dung-name = Bouse fraîche de bovins de race locale nourris de fourrage grossier
# of 4d32a8c0, reviewed: false
substrates-local_cattle_dung-handling-1 = Ramassez dans l'enclos chaque matin, avant qu'elle sèche et soit piétinée.
# of 8b659239, reviewed: false
substrates-local_cattle_dung-handling-2 = Laissez la couche la plus basse, mêlée de terre ; elle ne fait que remplir le digesteur de sable.
# of 3da775e9, reviewed: false
substrates-local_cattle_dung-handling-3 = Faites tremper toute une nuit la bouse qui a une croûte sèche et cassez les grumeaux.
# of 09025405, reviewed: false
substrates-buffalo_dung-name = Bouse fraîche de buffle
# of fbd052c4, reviewed: false
substrates-buffalo_dung-handling-1 = Laissez les animaux sécher après le bain de boue pour que la boue ne se mêle pas à la bouse.
# of 579ee002, reviewed: false
substrates-buffalo_dung-handling-2 = Mélangez avec un volume égal d'eau jusqu'à ce qu'il ne reste plus de grumeaux.
# of 508944f8, reviewed: false
substrates-pig_manure-name = Déjections de porc, fraîches, sans urine
# of 00ba863e, reviewed: false
substrates-pig_manure-handling-1 = Laissez le sable se déposer dans la fosse de mélange et soutirez le mélange au-dessus.
# of c35d7d8e, reviewed: false
substrates-pig_manure-handling-2 = Démarrez le digesteur avec de la bouse et introduisez les déjections de porc sur plusieurs semaines, sinon il s'acidifie.
# of 9282fe8a, reviewed: false
substrates-pig_manure-handling-3 = Comptez l'eau de lavage comme eau de dilution ; plus de deux volumes raccourcissent la rétention.
# of ff29f3ea, reviewed: false
substrates-layer_droppings-name = Fientes de poules pondeuses, fraîches, sans litière
# of 9a11fdf3, reviewed: false
substrates-layer_droppings-handling-1 = Enlevez les plumes, les coquilles d'œufs et le sable ; écrasez les fientes sèches avant de mélanger.
# of b7b04ccc, reviewed: false
substrates-layer_droppings-handling-2 = Diluez à environ 6 % de matière sèche au plus.
# of 6bca15ca, reviewed: false
substrates-layer_droppings-handling-3 = Mélangez une part avec trois parts d'un autre fumier ; démarrez avec de la bouse et augmentez la part au fil des semaines.
# of 4249a5bb, reviewed: false
substrates-broiler_litter-name = Litière de poulets de chair : fientes avec litière, sèche
# of e8a965f6, reviewed: false
substrates-broiler_litter-handling-1 = N'apportez pas de litière de copeaux de bois ou de sciure ; elle ne se digère pas et bouche les tuyaux.
# of 36d28739, reviewed: false
substrates-broiler_litter-handling-2 = Tamisez les plumes et les pierres, puis faites tremper un jour dans l'eau de mélange.
# of c81ad528, reviewed: false
substrates-broiler_litter-handling-3 = Portez un masque pour manipuler la litière sèche : la poussière porte des germes.
# of 20365dd9, reviewed: false
substrates-broiler_litter-handling-4 = Attendez la fin du délai d'attente du médicament chez les volailles traitées avant d'utiliser leur litière.
# of 6cbd6e09, reviewed: false
substrates-goat_droppings-name = Crottes de chèvre, ramassées dans l'enclos
# of b76b4cba, reviewed: false
substrates-goat_droppings-handling-1 = Faites tremper de 12 à 24 heures et écrasez : les crottes entières flottent et traversent sans être digérées.
# of f6786d8b, reviewed: false
substrates-goat_droppings-handling-2 = Ramassez au balai sur un caillebotis ou un sol balayé, pas sur la terre nue.
# of 07fa3a22, reviewed: false
substrates-goat_droppings-handling-3 = Démarrez avec de la bouse ou avec du digestat d'un digesteur en marche.
# of 69ea9e3c, reviewed: false
substrates-sheep_droppings-name = Crottes de mouton, ramassées dans l'enclos
# of b76b4cba, reviewed: false
substrates-sheep_droppings-handling-1 = Faites tremper de 12 à 24 heures et écrasez : les crottes entières flottent et traversent sans être digérées.
# of f6786d8b, reviewed: false
substrates-sheep_droppings-handling-2 = Ramassez au balai sur un caillebotis ou un sol balayé, pas sur la terre nue.
# of 07fa3a22, reviewed: false
substrates-sheep_droppings-handling-3 = Démarrez avec de la bouse ou avec du digestat d'un digesteur en marche.
# of 53ffb512, reviewed: false
substrates-horse_dung-name = Crottin de cheval, frais, avec peu de litière
# of b110a34e, reviewed: false
substrates-horse_dung-handling-1 = N'apportez pas la paille de litière, ou hachez-la à quelques centimètres ; la paille longue flotte et forme une croûte.
# of 3fe67d46, reviewed: false
substrates-horse_dung-handling-2 = Cassez les boules dans l'eau de mélange et laissez-les tremper toute la nuit.
# of 61215485, reviewed: false
substrates-horse_dung-handling-3 = Démarrez avec de la bouse, qui apporte les microbes qui manquent à ce crottin.
# of 723be7ef, reviewed: false
substrates-horse_dung-handling-4 = N'apportez pas de crottin pendant un traitement aux vermifuges ou aux antibiotiques et pendant une semaine après.
# of 2c26ff41, reviewed: false
substrates-donkey_dung-name = Crottin d'âne, frais, avec peu de litière
# of b110a34e, reviewed: false
substrates-donkey_dung-handling-1 = N'apportez pas la paille de litière, ou hachez-la à quelques centimètres ; la paille longue flotte et forme une croûte.
# of 3fe67d46, reviewed: false
substrates-donkey_dung-handling-2 = Cassez les boules dans l'eau de mélange et laissez-les tremper toute la nuit.
# of 61215485, reviewed: false
substrates-donkey_dung-handling-3 = Démarrez avec de la bouse, qui apporte les microbes qui manquent à ce crottin.
# of 723be7ef, reviewed: false
substrates-donkey_dung-handling-4 = N'apportez pas de crottin pendant un traitement aux vermifuges ou aux antibiotiques et pendant une semaine après.
# of ae243929, reviewed: false
substrates-rabbit_droppings-name = Crottes de lapin, ramassées sous les clapiers
# of c805e0a4, reviewed: false
substrates-rabbit_droppings-handling-1 = Faites tremper toute une nuit et écrasez les crottes ; les crottes entières flottent.
# of 63bd3daf, reviewed: false
substrates-rabbit_droppings-handling-2 = N'apportez ni les poils ni le foin du clapier.
# of 07fa3a22, reviewed: false
substrates-rabbit_droppings-handling-3 = Démarrez avec de la bouse ou avec du digestat d'un digesteur en marche.
# of ba43e25b, reviewed: false
substrates-human_excreta-name = Excréments humains d'une latrine qui débouche dans le digesteur
# of 8c73828e, reviewed: false
substrates-human_excreta-description = Excréments tels qu'ils tombent, avec comme dilution l'eau de rinçage d'une latrine à chasse manuelle. L'urine qui suit le même chemin ajoute de l'azote, et son eau s'ajoute aussi.
# of 995c19c2, reviewed: false
substrates-human_excreta-handling-1 = Faites déboucher la latrine directement dans le digesteur ; personne ne manipule ni ne brasse la matière.
# of 9086089e, reviewed: false
substrates-human_excreta-handling-2 = Utilisez au plus un litre d'eau de rinçage par usage et pas de réservoir de chasse.
# of d69c329c, reviewed: false
substrates-human_excreta-handling-3 = Ne laissez entrer dans la cuvette ni eau de Javel, ni nettoyant fort, ni serviettes hygiéniques, ni plastique ; posez un piège à sable là où l'on s'essuie avec des pierres.
# of f1aef2fd, reviewed: false
substrates-human_excreta-handling-4 = Utilisez le digestat uniquement sur les arbres et les arbustes, jamais sur des légumes qui se mangent crus.
# of c6cdfa83, reviewed: false
substrates-cattle_urine-name = Urine de bovins, recueillie sur un sol drainé
# of ac55b225, reviewed: false
substrates-cattle_urine-handling-1 = Versez-la le jour même dans la fosse de mélange à la place de l'eau ; l'ammoniac se perd en quelques heures.
# of 4953ba21, reviewed: false
substrates-cattle_urine-handling-2 = Arrêtez-vous avant la quantité qui ferait descendre le mélange en dessous de 15 parts de carbone pour une d'azote.
# of 0cfaf54f, reviewed: false
substrates-cattle_urine-handling-3 = N'y laissez pas entrer l'eau de lavage du sol contenant du désinfectant ou du produit antiparasitaire.
# of 71a0ade2, reviewed: false
substrates-maize_stover-name = Cannes de maïs, tiges et feuilles sèches
# of 815b1960, reviewed: false
substrates-maize_stover-handling-1 = Hachez en morceaux de 2 à 6 cm ; même ainsi, attendez-vous à une croûte flottante.
# of 2abce0d7, reviewed: false
substrates-maize_stover-handling-2 = Laissez de côté les bases épaisses, les racines et les parties ligneuses.
# of 05b66e65, reviewed: false
substrates-maize_stover-handling-3 = Faites tremper plusieurs jours avec du digestat ou du fumier avant d'alimenter.
# of 96559090, reviewed: false
substrates-maize_stover-handling-4 = N'apportez-les qu'avec du fumier, jamais comme alimentation principale d'un digesteur continu.
# of 8e6506a9, reviewed: false
substrates-wheat_straw-name = Paille de blé, sèche
# of 815b1960, reviewed: false
substrates-wheat_straw-handling-1 = Hachez en morceaux de 2 à 6 cm ; même ainsi, attendez-vous à une croûte flottante.
# of 05b66e65, reviewed: false
substrates-wheat_straw-handling-2 = Faites tremper plusieurs jours avec du digestat ou du fumier avant d'alimenter.
# of 96559090, reviewed: false
substrates-wheat_straw-handling-3 = Ne l'apportez qu'avec du fumier, jamais comme alimentation principale d'un digesteur continu.
# of e3666205, reviewed: false
substrates-rice_straw-name = Paille de riz, sèche
# of 815b1960, reviewed: false
substrates-rice_straw-handling-1 = Hachez en morceaux de 2 à 6 cm ; même ainsi, attendez-vous à une croûte flottante.
# of 05b66e65, reviewed: false
substrates-rice_straw-handling-2 = Faites tremper plusieurs jours avec du digestat ou du fumier avant d'alimenter.
# of 96559090, reviewed: false
substrates-rice_straw-handling-3 = Ne l'apportez qu'avec du fumier, jamais comme alimentation principale d'un digesteur continu.
# of e3145381, reviewed: false
substrates-napier_grass-name = Herbe à éléphant (napier), fraîche, coupée à environ six semaines
# of e4ea1b84, reviewed: false
substrates-napier_grass-handling-1 = Coupez à environ 45 jours ; une herbe plus vieille donne moins de la moitié du gaz.
# of 5acc9a53, reviewed: false
substrates-napier_grass-handling-2 = Hachez à 3 cm ou moins et mélangez avec du fumier à masses égales.
# of 39004848, reviewed: false
substrates-napier_grass-handling-3 = L'herbe flétrie ou ensilée s'enfonce mieux que l'herbe fraîche.
# of 80e67afa, reviewed: false
substrates-banana_stem-name = Faux-tronc de bananier, haché
# of 6df88210, reviewed: false
substrates-banana_stem-handling-1 = Hachez en travers de la fibre, en morceaux de 2 à 3 cm ; les longs brins s'enroulent ensemble et bouchent l'entrée.
# of 4c10a4f4, reviewed: false
substrates-banana_stem-handling-2 = Comptez son jus comme eau de mélange.
# of e93c0d0b, reviewed: false
substrates-banana_stem-handling-3 = Apportez-le en même temps que du fumier.
# of 50ac980f, reviewed: false
substrates-cassava_peel-name = Épluchures de manioc, flétries
# of 842c3a45, reviewed: false
substrates-cassava_peel-handling-1 = Étalez en couche mince et laissez flétrir deux à trois jours, ou ensilez ou faites tremper, pour chasser le cyanure ; travaillez en plein air.
# of 93ea2373, reviewed: false
substrates-cassava_peel-handling-2 = Enlevez la terre en lavant ou en secouant, puis écrasez.
# of 95471d72, reviewed: false
substrates-cassava_peel-handling-3 = Augmentez la part lentement sur plusieurs semaines, toujours en même temps que du fumier.
# of c9111107, reviewed: false
substrates-cassava_peel-handling-4 = Ne laissez ni les gens ni les animaux boire l'eau de trempage.
# of d1e5304e, reviewed: false
substrates-potato_peel-name = Épluchures de pomme de terre
# of b723d9a9, reviewed: false
substrates-potato_peel-handling-1 = Enlevez la terre en lavant et hachez finement, à 1 cm ou moins.
# of f2775443, reviewed: false
substrates-potato_peel-handling-2 = Apportez-en un peu chaque jour avec du fumier ; un seul gros apport acidifie le digesteur.
# of f8781220, reviewed: false
substrates-coffee_pulp-name = Pulpe de café de la voie humide, sans parche
# of 49c59854, reviewed: false
substrates-coffee_pulp-handling-1 = Introduisez-la dans les quelques jours qui suivent le dépulpage ; elle s'acidifie vite en tas.
# of a3c1f3de, reviewed: false
substrates-coffee_pulp-handling-2 = Laissez de côté la parche et la coque sèche ; elles se digèrent à peine.
# of 3658f96f, reviewed: false
substrates-coffee_pulp-handling-3 = Introduisez-la lentement au début de la saison et tamponnez avec du fumier.
# of f066b70c, reviewed: false
substrates-water_hyacinth-name = Jacinthe d'eau, plantes entières, hachées et égouttées
# of 0b7a9539, reviewed: false
substrates-water_hyacinth-handling-1 = Égouttez, laissez flétrir un à trois jours et hachez en morceaux de 2 à 5 cm.
# of 73bf4d2d, reviewed: false
substrates-water_hyacinth-handling-2 = Coupez les racines là où la boue y colle.
# of 4c1dcfc3, reviewed: false
substrates-water_hyacinth-handling-3 = Ne prenez pas de plantes dans une eau qui reçoit des rejets industriels : elles accumulent les métaux.
# of 705c2d59, reviewed: false
substrates-water_hyacinth-handling-4 = Méfiez-vous des serpents et de l'eau profonde pendant la récolte.
# of d8ba6007, reviewed: false
substrates-kitchen_waste-name = Déchets de cuisine, triés, sans os ni emballages
# of 59212224, reviewed: false
substrates-kitchen_waste-handling-1 = Retirez les os, le plastique, le verre, les peaux d'agrumes et les morceaux de graisse, puis hachez finement, à 1 cm ou moins.
# of ee9f3a05, reviewed: false
substrates-kitchen_waste-handling-2 = Apportez-en un peu chaque jour avec du fumier ; arrêtez si le substrat sent l'aigre.
# of 2d0d3f56, reviewed: false
substrates-kitchen_waste-handling-3 = Les déchets contenant de la viande ne doivent pas atteindre des animaux, ni en chemin ni par le digestat : suivez les règles locales sur les sous-produits animaux.
# of 9c90b471, reviewed: false
substrates-vegetable_waste-name = Déchets de légumes et de marché, riches en feuilles
# of b91a4fc9, reviewed: false
substrates-vegetable_waste-handling-1 = Retirez la ficelle, le plastique et la terre, et hachez à 2 cm.
# of 1f47ea24, reviewed: false
substrates-vegetable_waste-handling-2 = Introduisez-les frais chaque jour ; les tas tournent à l'acide.
# of 015e81b2, reviewed: false
substrates-vegetable_waste-handling-3 = N'apportez pas de produits traités par pulvérisation ces derniers jours.
# of 43d1672c, reviewed: false
substrates-whey-name = Lactosérum de fromagerie
# of d79bffbe, reviewed: false
substrates-whey-handling-1 = Tamponnez avec un à deux volumes de fumier délayé et augmentez la part semaine après semaine.
# of 528bbeaa, reviewed: false
substrates-whey-handling-2 = Introduisez-le le jour même et par petites portions ; surveillez le pH et arrêtez quand il baisse.
# of 1ecdf187, reviewed: false
substrates-whey-handling-3 = N'apportez pas le lactosérum de vaches traitées avant la fin du délai d'attente du médicament.
# of 866ea316, reviewed: false
substrates-rumen_content-name = Contenu de panse de bovins abattus, provenant d'animaux inspectés
# of f03878fb, reviewed: false
substrates-rumen_content-handling-1 = N'en prenez que d'animaux qui ont passé l'inspection, et suivez les règles locales sur les sous-produits animaux.
# of 27051721, reviewed: false
substrates-rumen_content-handling-2 = Introduisez-le frais ; c'est un excellent ensemencement.
# of 2f0734f5, reviewed: false
substrates-rumen_content-handling-3 = Défaites le feutre de fibres dans la fosse de mélange, et laissez de côté le sang, la graisse, les onglons et le plastique avalé par l'animal.
# of c7c79fb2, reviewed: false
substrates-rumen_content-handling-4 = Portez des gants et des bottes, et couvrez les plaies.
