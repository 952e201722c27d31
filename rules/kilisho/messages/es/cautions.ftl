# of 48724341, reviewed: false
cautions-local_codes-text = Estos consejos no reemplazan la ley ni a una persona autorizada. Donde el reglamento local, la autoridad de salud, de agua o veterinaria, o un ingeniero, albañil o instalador de gas autorizado pidan más, haga lo que piden.
# of caac8aa5, reviewed: false
cautions-never_enter-text = No entre nunca en un biodigestor, una fosa de salida o una fosa de purines o digestato, ni se incline hacia dentro, ni siquiera si están vacíos. El gas mata en unas pocas respiraciones y la nariz no avisa. Trabaje desde fuera con herramientas largas; deje la entrada a un equipo de personas capacitado y equipado.
# of 570155a3, reviewed: false
cautions-structure_by_licensed-text = Estas dimensiones sirven para planificar. La estructura, su cimentación y su armadura corresponden a un ingeniero autorizado o a un albañil capacitado con un plano probado, y al reglamento local de construcción.
# of fd06b2ed, reviewed: false
cautions-excavation_collapse-text = Las paredes de una fosa pueden caer sin aviso y sepultar a las personas. Deles talud o apuntálelas, mantenga la tierra sacada, los vehículos y los curiosos lejos del borde, tenga una escalera en la fosa y deje que un constructor capacitado juzgue el terreno; busque antes si hay tuberías y cables enterrados.
# of 1e508ae0, reviewed: false
cautions-open_pit_children-text = Cerque la fosa abierta y tápela por la noche, para que ningún niño ni animal caiga en ella mientras usted construye.
# of 2d49f6a5, reviewed: false
cautions-fill_after_curing_and_tests-text = No llene antes de que la mampostería haya curado, la tierra esté de nuevo rellenada alrededor y el biodigestor haya pasado sus pruebas de estanqueidad al agua y al gas. A una fuga bajo la mezcla no se puede llegar.
# of 74dc81f5, reviewed: false
cautions-first_gas-text = El primer gas está mezclado con aire y puede explotar. Déjelo salir al aire libre y sin quemarlo, lejos de toda llama, una o dos veces, cuando el manómetro llegue por primera vez a unos 4 kPa (40 cm de agua); una bolsa trabaja a menor presión, así que deje salir su primer llenado.
# of 85500e54, reviewed: false
cautions-first_flame-text = Pruebe la primera llama en la hornilla al final de la tubería, al aire libre, al menos a 10 m del biodigestor. Nunca acerque una llama al biodigestor, a su tubería, a su entrada ni a su salida.
# of 658ec61d, reviewed: false
cautions-loads-text = La primera carga son toneladas de estiércol y agua. Mantenga los baldes por debajo de 20 kg, use carretillas, levante con la espalda recta, túrnense, descansen y beban; los niños y las mujeres embarazadas no cargan.
# of 2d2d48df, reviewed: false
cautions-no_flame_no_smoking-text = Ninguna llama, nadie que fume y ninguna chispa a menos de 5 m del biodigestor, del gasómetro, de la entrada o de la salida.
# of c8673b32, reviewed: false
cautions-hygiene-text = El estiércol, la mezcla y el digestato llevan gérmenes y huevos de lombrices parásitas. Use guantes y botas, cubra las heridas, lávese las manos con jabón antes de comer, y no deje que los manipulen niños pequeños ni mujeres embarazadas.
# of 46494f37, reviewed: false
cautions-keep_openings_covered-text = Cierre las tapas de la entrada y la salida después de cada alimentación. Personas, sobre todo niños, y animales han muerto en fosas abiertas.
# of 2129f855, reviewed: false
cautions-antibiotics_disinfectants-text = Mantenga fuera del biodigestor el estiércol de animales en tratamiento con medicinas, y el agua de lavado con desinfectante, baño antiparasitario o jabón: detienen a los microbios. Composte ese estiércol, y espere una semana o más después del último tratamiento.
# of 1d117ed5, reviewed: false
cautions-gas_line_by_licensed-text = Tuberías, válvulas y aparatos corresponden a un instalador de gas capacitado y al reglamento local. Tubería rígida hasta el cuarto, manguera solo en el último metro, una válvula en la planta y una en cada aparato, una pendiente hacia una trampa de agua, un arrestallamas antes del quemador, y una prueba con agua jabonosa antes de usarla.
# of 94ae078e, reviewed: false
cautions-flame_gone_out-text = Cuando una llama se apague por falta de gas, cierre la llave de inmediato: el gas que llega después sale sin quemarse al cuarto. Encienda primero el fósforo y abra después la llave, y cierre la válvula principal por la noche.
# of 2a1a2814, reviewed: false
cautions-gas_pressure_limits-text = No suba la presión, para lograr una llama mejor, por encima de aquella para la que están hechos la planta y el aparato, y nunca la deje bajar a cero mientras arde una llama. Un aparato para gas envasado o gas de red necesita otro inyector antes de poder quemar biogás.
# of 17c2bdf1, reviewed: false
cautions-digestate_not_sanitised-text = Un biodigestor doméstico no hace seguro el digestato. Incluso a 35 °C solo cerca del 40 % de los huevos de lombriz intestinal (áscaris) estaban muertos después de 15 días y el 73 % después de 45, y la mayoría de las plantas son más frías. Respete los tiempos de espera, y no le prometa a nadie que el digestato está limpio.
# of 7c800b0e, reviewed: false
cautions-slurry_store_drowning-text = Personas, sobre todo niños, y animales se ahogan en los depósitos de purines o digestato, y una costra parece suelo firme. Tape el depósito o cérquelo de modo que ningún niño entre, tenga allí una escalera o una cuerda, y nunca lo agite ni lo vacíe inclinándose sobre él.
# of 51f01581, reviewed: false
cautions-slurry_off_water-text = Mantenga el digestato lejos de pozos, arroyos, laderas desnudas y suelos encharcados, y no lo esparza antes de una lluvia fuerte: envenena a los peces y el agua de beber. Las reglas sobre distancias, épocas y cantidades son locales; sígalas primero.
# of 44a38d6d, reviewed: false
cautions-salt_and_scorch-text = El digestato fresco quema plántulas y hojas. Rebájelo con agua o aplíquelo al suelo junto a ellas, y pruébelo primero en unas pocas plantas.
# of 8bd8d8d2, reviewed: false
cautions-collapse_in_pit-text = Si alguien se desploma en una fosa, no entre tras esa persona. Llame de inmediato a rescatistas capacitados, mantenga lejos a los demás, sople aire fresco hacia dentro, y jale la cuerda si la persona está amarrada a una. Muchos de los muertos en fosas entraron a ayudar.
# of 8974b746, reviewed: false
cautions-gas_smell-text = Si huele a gas en interiores: apague las llamas, no toque ningún interruptor, abra puertas y ventanas, saque a todas las personas, cierre la válvula en la planta. Busque la fuga solo con agua jabonosa. La nariz pronto deja de notar el gas.
# of 944d25e0, reviewed: false
cautions-carbon_monoxide-text = Una llama amarilla o con hollín produce monóxido de carbono, que mata sin olor. Mantenga abiertas las aberturas de ventilación, limpie el quemador, y nunca use en interiores un calentador sin ducto de salida de gases.
# of c01813fc, reviewed: false
cautions-emptying_suction-text = No saque mezcla mientras arda una llama. Antes cierre la válvula principal, apague todas las llamas y abra el venteo; si no, se aspira aire y el gas se vuelve explosivo.
# of 19aeeb20, reviewed: false
cautions-not_a_certificate-text = Un control en papel no certifica la planta. Lo que no se indicó se desconoce y no es seguro, y los gases medidos en una fosa valen solo para el momento de la medición.
# of 5a8360bc, reviewed: false
cautions-engine_exhaust-text = Un motor a biogás produce monóxido de carbono. Hágalo funcionar al aire libre o con el escape llevado al aire libre, nunca en una casa o un establo, mantenga a la gente lejos de su correa y de sus partes calientes, y haga quitar el sulfuro de hidrógeno del gas antes del motor.
# of 6e14b9bf, reviewed: false
cautions-unattended_flame-text = Una llama que arde durante horas sin nadie cerca necesita una válvula de seguridad que cierre el gas cuando se apague, un cuarto ventilado, y que no haya nada combustible cerca.
# of 335554df, reviewed: false
cautions-lamp_heat_and_mantle-text = Una lámpara de gas está caliente: cuélguela fuera del alcance de los niños y un metro por debajo de todo lo que pueda arder. Las camisas viejas contienen torio; no respire su polvo, y lávese las manos.
# of 50b12f57, reviewed: false
cautions-out_into_fresh_air-text = Saque a todas las personas al aire fresco de inmediato, apague la llama si eso no toma tiempo, cierre desde fuera la válvula en la planta, y pida ayuda médica. Nadie vuelve antes de que el cuarto se haya ventilado por largo rato. No entre en una fosa tras nadie.
# of 2c9f6142, reviewed: false
cautions-gas_fire-text = Aleje a todas las personas y llame a los bomberos. Cierre la válvula en la planta si se puede llegar a ella sin peligro. Deje arder el gas que arde hasta que se cierre su suministro: el gas que sale sin quemarse puede explotar. Enfríe con agua, desde lejos, lo que está cerca.
# of 328c62b8, reviewed: false
cautions-over_pressure-text = Mantenga a todas las personas lejos de la bolsa, la tapa y la cúpula, y toda llama y chispa a 10 m por lo menos. Deje salir gas al aire libre por el alivio de presión o por la válvula de la planta, deje de alimentar, y no afloje ni perfore nada que esté a presión. Llame al albañil.
# of 385837a6, reviewed: false
cautions-air_in_gas-text = El gas mezclado con aire puede explotar dentro de la tubería y del biodigestor. Apague todas las llamas, cierre la válvula de la planta, y no encienda nada hasta que el espacio de gas se haya llenado de nuevo y se haya dejado salir al aire libre sin quemarlo.
# of 8c77c95b, reviewed: false
cautions-hydrogen_sulfide_air-text = El sulfuro de hidrógeno huele primero a huevos podridos y después adormece la nariz: un olor que desaparece de repente no es buena señal. Salga al aire fresco contra el viento, ventile los cuartos, manténgase fuera de fosas y lugares bajos, y no huela el gas para probarlo.
# of 918faf75, reviewed: false
cautions-pathogens_human-text = Las excretas humanas llevan gérmenes y huevos de lombrices parásitas a través del biodigestor. Deje que la letrina descargue directamente en él para que nadie las manipule, almacene el digestato antes de usarlo, y nunca lo aplique a cultivos que se comen crudos.
# of 72abe67d, reviewed: false
cautions-pathogens_manure-text = El estiércol de los animales lleva gérmenes que enferman a las personas. Use guantes y botas, lávese las manos con jabón, y no ponga digestato en cultivos que se comen crudos.
# of 89d984ac, reviewed: false
cautions-ammonia_feed-text = Este material es rico en nitrógeno y su amoníaco puede detener el gas; en galpones cerrados el amoníaco también daña los ojos y los pulmones. Dilúyalo bien, combínelo con estiércol de vaca, y suba su parte despacio.
# of 41a185a2, reviewed: false
cautions-acid_feed-text = Este material se agria rápido. Empiece con poco, mézclelo con estiércol, y pare cuando la mezcla huela agria o el pH baje de 6.8.
# of 08d2fb02, reviewed: false
cautions-floating_feed-text = Este material flota y forma una costra. Píquelo corto o deje que se pudra antes, agite todos los días, y rompa una costra solo desde fuera.
# of f0331dd7, reviewed: false
cautions-grit_feed-text = Este material trae arena y piedrecillas que con los años llenan el biodigestor. Deje que se asienten en la fosa de mezcla y deje allí el último resto.
# of 4ef8778a, reviewed: false
cautions-animal_disease_import-text = El material de otra finca, un mercado, una cocina o un matadero puede llevar enfermedades de los animales. Pregunte a la autoridad veterinaria, no tome nada de zonas restringidas, y limpie vehículos y herramientas.
# of dc948750, reviewed: false
cautions-cyanide_feed-text = Este material puede soltar cianuro cuando está fresco. Píquelo al aire libre, déjelo marchitar, remójelo o ferméntelo antes, mantenga lejos a los animales, y dé poco.
# of bf910220, reviewed: false
cautions-sharp_foreign_matter-text = Este material esconde a menudo vidrio, metal, huesos o plástico. Sepárelos con una horquilla y guantes; los pedazos filosos cortan las manos y perforan las bolsas.
# of 26311114, reviewed: false
cautions-bag_puncture_pressure-text = Una bolsa se rompe con objetos filosos, pezuñas y fuego, y revienta por presión, soltando todo su gas. Cérquela y dele sombra, mantenga las llamas a 5 m, y nunca cierre su alivio de presión.
# of 7d792448, reviewed: false
cautions-drum_corrosion-text = Una campana oxidada deja escapar gas y se debilita tanto que ya no aguanta a una persona. Quítele el óxido y píntela cada año con el gas cerrado y todas las llamas apagadas, nunca se pare sobre ella, y revise su guía.
# of c3a7e0fc, reviewed: false
cautions-dome_lid_pressure-text = La presión del gas puede lanzar la tapa de una cúpula. Nunca se ponga encima de la tapa ni la afloje bajo presión; deje primero que el manómetro baje a cero, al aire libre y con todas las llamas apagadas, y mantenga despejada la salida.
# of d212b7b3, reviewed: false
cautions-batch_opening-text = Abrir un tanque por lotes es abrir un espacio de gas. Queme o deje salir primero el gas, apague toda llama a menos de 10 m, ábralo desde el lado de donde viene el viento, ventílelo durante días, y no se meta a vaciarlo; deje la entrada a un equipo capacitado.
