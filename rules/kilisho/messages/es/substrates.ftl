# of 71146b9d, reviewed: false
substrates-cattle_dung-name = Estiércol de vaca, fresco, de ganado lechero estabulado
# of 03017fd8, reviewed: false
substrates-cattle_dung-handling-1 = Saque a mano la paja, los restos de forraje y las piedras.
# of fab2cc19, reviewed: false
substrates-cattle_dung-handling-2 = Mezcle con un volumen igual de agua, o de orina y agua, hasta que no queden grumos.
# of a730cfca, reviewed: false
substrates-cattle_dung-handling-3 = Úselo el mismo día en que cae; con cada día en el montón se pierde gas.
# of c5bdc46e, reviewed: false
substrates-local_cattle_dung-name = Estiércol de vaca, fresco, de ganado criollo alimentado con forraje tosco
# of 4d32a8c0, reviewed: false
substrates-local_cattle_dung-handling-1 = Recójalo del corral cada mañana, antes de que se seque y lo pisoteen.
# of 8b659239, reviewed: false
substrates-local_cattle_dung-handling-2 = Deje la capa más baja, que está mezclada con tierra; solo llena de arena el biodigestor.
# of 3da775e9, reviewed: false
substrates-local_cattle_dung-handling-3 = Remoje durante la noche el estiércol que tiene costra seca y deshaga los grumos.
# of 09025405, reviewed: false
substrates-buffalo_dung-name = Estiércol de búfalo, fresco
# of fbd052c4, reviewed: false
substrates-buffalo_dung-handling-1 = Deje que los animales se sequen después del revolcadero, para que no entre lodo en el estiércol.
# of 579ee002, reviewed: false
substrates-buffalo_dung-handling-2 = Mezcle con un volumen igual de agua hasta que no queden grumos.
# of 508944f8, reviewed: false
substrates-pig_manure-name = Estiércol de cerdo, fresco, sin orina
# of 00ba863e, reviewed: false
substrates-pig_manure-handling-1 = Deje que la arena se asiente en la fosa de mezcla y saque la mezcla por encima de ella.
# of c35d7d8e, reviewed: false
substrates-pig_manure-handling-2 = Arranque el biodigestor con estiércol de vaca e introduzca el de cerdo a lo largo de varias semanas; si no, se agria.
# of 9282fe8a, reviewed: false
substrates-pig_manure-handling-3 = Cuente el agua de lavado como agua de dilución; más de dos volúmenes acortan la retención.
# of ff29f3ea, reviewed: false
substrates-layer_droppings-name = Gallinaza de gallinas ponedoras, fresca, sin cama
# of 9a11fdf3, reviewed: false
substrates-layer_droppings-handling-1 = Saque plumas, cáscaras de huevo y arena; triture la gallinaza seca antes de mezclar.
# of b7b04ccc, reviewed: false
substrates-layer_droppings-handling-2 = Diluya hasta cerca de 6 % de sólidos totales como máximo.
# of 6bca15ca, reviewed: false
substrates-layer_droppings-handling-3 = Mezcle una parte con tres partes de otro estiércol; arranque con estiércol de vaca y suba la proporción a lo largo de semanas.
# of 4249a5bb, reviewed: false
substrates-broiler_litter-name = Cama de pollos de engorde: gallinaza con material de cama, seca
# of e8a965f6, reviewed: false
substrates-broiler_litter-handling-1 = No dé cama de viruta de madera ni de aserrín; no se digiere y tapa los tubos.
# of 36d28739, reviewed: false
substrates-broiler_litter-handling-2 = Cierna para sacar plumas y piedras, luego remoje un día en el agua de mezcla.
# of c81ad528, reviewed: false
substrates-broiler_litter-handling-3 = Use mascarilla al manipular cama seca: el polvo lleva gérmenes.
# of 20365dd9, reviewed: false
substrates-broiler_litter-handling-4 = Deje que las aves en tratamiento con medicinas cumplan el periodo de retiro antes de usar su cama.
# of 6cbd6e09, reviewed: false
substrates-goat_droppings-name = Estiércol de cabra, bolitas del corral
# of b76b4cba, reviewed: false
substrates-goat_droppings-handling-1 = Remoje de 12 a 24 horas y triture: las bolitas enteras flotan y pasan sin digerirse.
# of f6786d8b, reviewed: false
substrates-goat_droppings-handling-2 = Bárralo de un piso de listones o de un piso que se barre, no de la tierra desnuda.
# of 07fa3a22, reviewed: false
substrates-goat_droppings-handling-3 = Arranque con estiércol de vaca o con mezcla de un biodigestor en funcionamiento.
# of 69ea9e3c, reviewed: false
substrates-sheep_droppings-name = Estiércol de oveja, bolitas del corral
# of b76b4cba, reviewed: false
substrates-sheep_droppings-handling-1 = Remoje de 12 a 24 horas y triture: las bolitas enteras flotan y pasan sin digerirse.
# of f6786d8b, reviewed: false
substrates-sheep_droppings-handling-2 = Bárralo de un piso de listones o de un piso que se barre, no de la tierra desnuda.
# of 07fa3a22, reviewed: false
substrates-sheep_droppings-handling-3 = Arranque con estiércol de vaca o con mezcla de un biodigestor en funcionamiento.
# of 53ffb512, reviewed: false
substrates-horse_dung-name = Estiércol de caballo, fresco, con poca cama
# of b110a34e, reviewed: false
substrates-horse_dung-handling-1 = Deje fuera la paja de cama o píquela a unos pocos centímetros; la paja larga flota y hace nata.
# of 3fe67d46, reviewed: false
substrates-horse_dung-handling-2 = Deshaga las bolas en el agua de mezcla y déjelas remojar durante la noche.
# of 61215485, reviewed: false
substrates-horse_dung-handling-3 = Arranque con estiércol de vaca, que trae los microbios que a este estiércol le faltan.
# of 723be7ef, reviewed: false
substrates-horse_dung-handling-4 = No use el estiércol durante el tratamiento con desparasitantes o antibióticos ni en la semana siguiente.
# of 2c26ff41, reviewed: false
substrates-donkey_dung-name = Estiércol de burro, fresco, con poca cama
# of b110a34e, reviewed: false
substrates-donkey_dung-handling-1 = Deje fuera la paja de cama o píquela a unos pocos centímetros; la paja larga flota y hace nata.
# of 3fe67d46, reviewed: false
substrates-donkey_dung-handling-2 = Deshaga las bolas en el agua de mezcla y déjelas remojar durante la noche.
# of 61215485, reviewed: false
substrates-donkey_dung-handling-3 = Arranque con estiércol de vaca, que trae los microbios que a este estiércol le faltan.
# of 723be7ef, reviewed: false
substrates-donkey_dung-handling-4 = No use el estiércol durante el tratamiento con desparasitantes o antibióticos ni en la semana siguiente.
# of ae243929, reviewed: false
substrates-rabbit_droppings-name = Estiércol de conejo, bolitas de debajo de las jaulas
# of c805e0a4, reviewed: false
substrates-rabbit_droppings-handling-1 = Remoje durante la noche y triture las bolitas; las enteras flotan.
# of 63bd3daf, reviewed: false
substrates-rabbit_droppings-handling-2 = Deje fuera el pelo y el heno de la jaula.
# of 07fa3a22, reviewed: false
substrates-rabbit_droppings-handling-3 = Arranque con estiércol de vaca o con mezcla de un biodigestor en funcionamiento.
# of ba43e25b, reviewed: false
substrates-human_excreta-name = Heces humanas de una letrina que descarga en el biodigestor
# of 8c73828e, reviewed: false
substrates-human_excreta-description = Heces tal como caen, con el agua de arrastre de una letrina de arrastre manual como dilución. La orina que va por la misma vía añade nitrógeno, y también su agua.
# of 995c19c2, reviewed: false
substrates-human_excreta-handling-1 = Deje que la letrina descargue directamente en el biodigestor; nadie manipula ni revuelve el material.
# of 9086089e, reviewed: false
substrates-human_excreta-handling-2 = Use como máximo un litro de agua de arrastre por uso y ningún tanque de descarga.
# of d69c329c, reviewed: false
substrates-human_excreta-handling-3 = No eche en la taza cloro, limpiadores fuertes, toallas sanitarias ni plástico; ponga un desarenador donde se usan piedras para limpiarse.
# of f1aef2fd, reviewed: false
substrates-human_excreta-handling-4 = Use el digestato solo en árboles y arbustos, nunca en hortalizas que se comen crudas.
# of c6cdfa83, reviewed: false
substrates-cattle_urine-name = Orina de vaca, recogida de un piso con drenaje
# of ac55b225, reviewed: false
substrates-cattle_urine-handling-1 = Viértala en la fosa de mezcla en lugar de agua el mismo día; el amoníaco se pierde en horas.
# of 4953ba21, reviewed: false
substrates-cattle_urine-handling-2 = Quédese por debajo de la cantidad que baja la mezcla a menos de 15 partes de carbono por una de nitrógeno.
# of 0cfaf54f, reviewed: false
substrates-cattle_urine-handling-3 = Mantenga fuera de ella el agua de lavado del piso con desinfectante o baño antiparasitario.
# of 71a0ade2, reviewed: false
substrates-maize_stover-name = Rastrojo de maíz, tallos y hojas secos
# of 815b1960, reviewed: false
substrates-maize_stover-handling-1 = Pique a 2 a 6 cm; aun así espere nata.
# of 2abce0d7, reviewed: false
substrates-maize_stover-handling-2 = Deje fuera las bases gruesas de los tallos, las raíces y las partes leñosas.
# of 05b66e65, reviewed: false
substrates-maize_stover-handling-3 = Remoje varios días con mezcla o estiércol antes de alimentar.
# of 96559090, reviewed: false
substrates-maize_stover-handling-4 = Delo solo junto con estiércol, nunca como alimentación principal de un biodigestor continuo.
# of 8e6506a9, reviewed: false
substrates-wheat_straw-name = Paja de trigo, seca
# of 815b1960, reviewed: false
substrates-wheat_straw-handling-1 = Pique a 2 a 6 cm; aun así espere nata.
# of 05b66e65, reviewed: false
substrates-wheat_straw-handling-2 = Remoje varios días con mezcla o estiércol antes de alimentar.
# of 96559090, reviewed: false
substrates-wheat_straw-handling-3 = Dela solo junto con estiércol, nunca como alimentación principal de un biodigestor continuo.
# of e3666205, reviewed: false
substrates-rice_straw-name = Paja de arroz, seca
# of 815b1960, reviewed: false
substrates-rice_straw-handling-1 = Pique a 2 a 6 cm; aun así espere nata.
# of 05b66e65, reviewed: false
substrates-rice_straw-handling-2 = Remoje varios días con mezcla o estiércol antes de alimentar.
# of 96559090, reviewed: false
substrates-rice_straw-handling-3 = Dela solo junto con estiércol, nunca como alimentación principal de un biodigestor continuo.
# of e3145381, reviewed: false
substrates-napier_grass-name = Pasto elefante (napier), fresco, cortado a unas seis semanas
# of e4ea1b84, reviewed: false
substrates-napier_grass-handling-1 = Corte a unos 45 días; el pasto más viejo da menos de la mitad del gas.
# of 5acc9a53, reviewed: false
substrates-napier_grass-handling-2 = Pique a 3 cm o menos y mezcle con estiércol, uno a uno por masa.
# of 39004848, reviewed: false
substrates-napier_grass-handling-3 = El pasto marchito o ensilado se hunde mejor que el fresco.
# of 80e67afa, reviewed: false
substrates-banana_stem-name = Pseudotallo de banano, picado
# of 6df88210, reviewed: false
substrates-banana_stem-handling-1 = Pique a través de la fibra a 2 a 3 cm; las hebras largas se enredan y tapan la entrada.
# of 4c10a4f4, reviewed: false
substrates-banana_stem-handling-2 = Cuente su jugo como agua de mezcla.
# of e93c0d0b, reviewed: false
substrates-banana_stem-handling-3 = Delo junto con estiércol.
# of 50ac980f, reviewed: false
substrates-cassava_peel-name = Cáscara de yuca (mandioca), marchita
# of 842c3a45, reviewed: false
substrates-cassava_peel-handling-1 = Extienda en capa delgada y deje marchitar de dos a tres días, o ensile o remoje, para expulsar el cianuro; trabaje al aire libre.
# of 93ea2373, reviewed: false
substrates-cassava_peel-handling-2 = Lave o sacuda la tierra, luego triture.
# of 95471d72, reviewed: false
substrates-cassava_peel-handling-3 = Suba la proporción despacio a lo largo de varias semanas, siempre junto con estiércol.
# of c9111107, reviewed: false
substrates-cassava_peel-handling-4 = No deje que personas ni animales beban el agua de remojo.
# of d1e5304e, reviewed: false
substrates-potato_peel-name = Cáscara de papa
# of b723d9a9, reviewed: false
substrates-potato_peel-handling-1 = Lave la tierra y muela a 1 cm o menos.
# of f2775443, reviewed: false
substrates-potato_peel-handling-2 = Dé un poco cada día junto con estiércol; una sola carga grande agria el biodigestor.
# of f8781220, reviewed: false
substrates-coffee_pulp-name = Pulpa de café del beneficio húmedo, sin pergamino
# of 49c59854, reviewed: false
substrates-coffee_pulp-handling-1 = Dela a los pocos días del despulpado; en el montón se agria rápido.
# of a3c1f3de, reviewed: false
substrates-coffee_pulp-handling-2 = Deje fuera el pergamino y la cascarilla seca; apenas se digieren.
# of 3658f96f, reviewed: false
substrates-coffee_pulp-handling-3 = Introdúzcala despacio al comienzo de la temporada y amortigüe la acidez con estiércol.
# of f066b70c, reviewed: false
substrates-water_hyacinth-name = Jacinto de agua, plantas enteras, picadas y escurridas
# of 0b7a9539, reviewed: false
substrates-water_hyacinth-handling-1 = Escurra, deje marchitar de uno a tres días y pique a 2 a 5 cm.
# of 73bf4d2d, reviewed: false
substrates-water_hyacinth-handling-2 = Corte las raíces donde tengan lodo pegado.
# of 4c1dcfc3, reviewed: false
substrates-water_hyacinth-handling-3 = No tome plantas de aguas que reciben desechos industriales: acumulan metales.
# of 705c2d59, reviewed: false
substrates-water_hyacinth-handling-4 = Cuídese de las serpientes y del agua profunda al recogerlo.
# of d8ba6007, reviewed: false
substrates-kitchen_waste-name = Residuos de cocina, separados, sin huesos ni empaques
# of 59212224, reviewed: false
substrates-kitchen_waste-handling-1 = Separe huesos, plástico, vidrio, cáscaras de cítricos y pedazos de grasa, luego muela a 1 cm o menos.
# of ee9f3a05, reviewed: false
substrates-kitchen_waste-handling-2 = Dé un poco cada día junto con estiércol; pare si la mezcla huele agria.
# of 2d0d3f56, reviewed: false
substrates-kitchen_waste-handling-3 = Los residuos con carne no deben llegar a los animales, ni en el camino ni con el digestato: siga las reglas locales sobre subproductos animales.
# of 9c90b471, reviewed: false
substrates-vegetable_waste-name = Residuos de verduras y de mercado, de hoja
# of b91a4fc9, reviewed: false
substrates-vegetable_waste-handling-1 = Separe cuerdas, plástico y tierra, y pique a 2 cm.
# of 1f47ea24, reviewed: false
substrates-vegetable_waste-handling-2 = Delos frescos cada día; los montones se vuelven ácidos.
# of 015e81b2, reviewed: false
substrates-vegetable_waste-handling-3 = No use productos que se fumigaron en los últimos días.
# of 43d1672c, reviewed: false
substrates-whey-name = Suero de la elaboración de queso
# of d79bffbe, reviewed: false
substrates-whey-handling-1 = Amortigüe la acidez con uno a dos volúmenes de mezcla de estiércol y suba la proporción semana a semana.
# of 528bbeaa, reviewed: false
substrates-whey-handling-2 = Delo el mismo día y en porciones pequeñas; vigile el pH y pare cuando baje.
# of 1ecdf187, reviewed: false
substrates-whey-handling-3 = Deje fuera el suero de vacas tratadas hasta que termine el periodo de retiro.
# of 866ea316, reviewed: false
substrates-rumen_content-name = Contenido ruminal de ganado bovino sacrificado, de animales inspeccionados
# of f03878fb, reviewed: false
substrates-rumen_content-handling-1 = Tómelo solo de animales que pasaron la inspección, y siga las reglas locales sobre subproductos animales.
# of 27051721, reviewed: false
substrates-rumen_content-handling-2 = Delo fresco; es un excelente inóculo.
# of 2f0734f5, reviewed: false
substrates-rumen_content-handling-3 = Deshaga la masa de fibra en la fosa de mezcla, y deje fuera la sangre, la grasa, las pezuñas y el plástico que tragó el animal.
# of c7c79fb2, reviewed: false
substrates-rumen_content-handling-4 = Use guantes y botas, y cubra las heridas.
