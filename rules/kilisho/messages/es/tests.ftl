# of 7272f4e6, reviewed: false
tests-gauge_overnight-name = Manómetro durante la noche con la válvula de la planta cerrada
# of 4a602bc4, reviewed: false
tests-gauge_overnight-how = Al anochecer cierre la válvula en el biodigestor, marque el manómetro, la altura de la campana o el llenado de la bolsa, no use gas, y léalo de nuevo por la mañana con la mezcla a la misma temperatura.
# of fb8e1ed8, reviewed: false
tests-gauge_overnight-outcomes-1-seen = Baja aunque la válvula de la planta está cerrada
# of 587f13b6, reviewed: false
tests-gauge_overnight-outcomes-2-seen = Se mantiene durante la noche, pero baja cuando la válvula de la planta está abierta y la hornilla cerrada
# of c9cb6a1c, reviewed: false
tests-gauge_overnight-outcomes-3-seen = Se mantiene de las dos maneras
# of 1274d2b5, reviewed: false
tests-soapy_water-name = Agua jabonosa en uniones, válvulas y tapa
# of 71f45f0e, reviewed: false
tests-soapy_water-how = Bajo presión, aplique con brocha agua jabonosa espesa en cada unión, válvula y manguera y en el sello de la tapa, y observe si crecen burbujas. Agua jabonosa y nada más; ninguna llama y nadie que fume cerca. En interiores abra primero puertas y ventanas.
# of a6cda09b, reviewed: false
tests-soapy_water-outcomes-1-seen = Burbujas en tubería o válvula al aire libre
# of e1e1791e, reviewed: false
tests-soapy_water-outcomes-2-seen = Burbujas en una unión en interiores
# of 0028cb43, reviewed: false
tests-soapy_water-outcomes-3-seen = Burbujas en la tapa o en el agua sobre ella
# of 9dd11c74, reviewed: false
tests-soapy_water-outcomes-4-seen = Ninguna burbuja en ninguna parte
# of e7236469, reviewed: false
tests-drain_line-name = Drenar la línea de gas
# of ecdf5cda, reviewed: false
tests-drain_line-how = Apague todas las llamas, cierre la válvula de la planta, y abra al aire libre la trampa o la unión más baja de la línea. Recoja y mire lo que sale, ciérrela, y pruebe la hornilla de nuevo.
# of d3f1eed5, reviewed: false
tests-drain_line-outcomes-1-seen = Sale agua y después la llama es constante
# of 214c2c7e, reviewed: false
tests-drain_line-outcomes-2-seen = Sale mezcla
# of df66bbda, reviewed: false
tests-drain_line-outcomes-3-seen = No sale nada
# of bc0d78cd, reviewed: false
tests-follow_the_line-name = Recorrer la línea desde la planta hasta la hornilla
# of a391bd58, reviewed: false
tests-follow_the_line-how = Mire cada válvula, codo y manguera desde la planta hasta la hornilla: ¿está cada válvula abierta del todo?, ¿hay una manguera doblada o aplastada?, ¿qué largo y qué ancho tiene la tubería?
# of 0dd6c6bc, reviewed: false
tests-follow_the_line-outcomes-1-seen = Una válvula está medio cerrada o una manguera está doblada
# of 2108b2e8, reviewed: false
tests-follow_the_line-outcomes-2-seen = Todo está abierto pero la línea es larga y delgada
# of c5a63b75, reviewed: false
tests-follow_the_line-outcomes-3-seen = Todo está abierto y la línea es corta y ancha
# of 8297e4f3, reviewed: false
tests-clean_jet-name = Limpiar el inyector y los orificios del quemador
# of 32dc00fa, reviewed: false
tests-clean_jet-how = Cierre la válvula, deje enfriar el quemador, quítelo, destape con una aguja el inyector y los orificios, lave, seque y vuelva a ponerlo. Luego enciéndalo: primero el fósforo, después la válvula.
# of df820dc3, reviewed: false
tests-clean_jet-outcomes-1-seen = Después la llama es fuerte y azul
# of c75bb586, reviewed: false
tests-clean_jet-outcomes-2-seen = La llama está como antes
# of bc2c2c1b, reviewed: false
tests-move_air_shutter-name = Mover el regulador de aire
# of e5cbc68f, reviewed: false
tests-move_air_shutter-how = Mientras arde en un cuarto ventilado, abra un poco el regulador de aire, luego ciérrelo un poco, y observe el color y la altura de la llama.
# of dc9d8bc5, reviewed: false
tests-move_air_shutter-outcomes-1-seen = Más aire vuelve azul la llama amarilla
# of 54c73f6e, reviewed: false
tests-move_air_shutter-outcomes-2-seen = Menos aire asienta la llama que se despega
# of 03868f51, reviewed: false
tests-move_air_shutter-outcomes-3-seen = Cambia poco
# of a9b2a72b, reviewed: false
tests-jet_for_which_gas-name = Para qué gas se hicieron la hornilla y el inyector
# of 78a70ced, reviewed: false
tests-jet_for_which_gas-how = Lea la placa de la hornilla o de la lámpara o pregunte al vendedor: el biogás necesita un inyector más ancho y más aire que el gas envasado.
# of b18f6420, reviewed: false
tests-jet_for_which_gas-outcomes-1-seen = Hecha para gas envasado o natural y nunca cambiada
# of 496158e1, reviewed: false
tests-jet_for_which_gas-outcomes-2-seen = Hecha o cambiada para biogás
# of ea9e88cd, reviewed: false
tests-throttle_the_valve-name = Estrangular la válvula en la hornilla
# of 405f975d, reviewed: false
tests-throttle_the_valve-how = Mientras arde, cierre despacio la válvula de la hornilla.
# of a85b4663, reviewed: false
tests-throttle_the_valve-outcomes-1-seen = La llama se asienta en el quemador
# of 2ffd0f43, reviewed: false
tests-throttle_the_valve-outcomes-2-seen = Sigue despegada o se apaga
# of e85752b4, reviewed: false
tests-blackened_metal-name = Lana de acero brillante o plata en el gas
# of 96107f1f, reviewed: false
tests-blackened_metal-how = Al aire libre sostenga lana de acero nueva o una moneda de plata pulida en el chorro de gas del quemador sin encender durante un minuto, desde el lado de donde viene el viento, o haga pasar gas por un tubo detector.
# of 61eeb064, reviewed: false
tests-blackened_metal-outcomes-1-seen = Se ennegrece de inmediato, o el tubo muestra más de 1000 ppm
# of 360323c1, reviewed: false
tests-blackened_metal-outcomes-2-seen = Sigue brillante o el tubo muestra menos de 200 ppm
# of 1c4c0a48, reviewed: false
tests-vent_and_try_again-name = Dejar salir el primer gas y probar de nuevo
# of 575facf7, reviewed: false
tests-vent_and_try_again-how = Sin ninguna llama a menos de 10 m, deje salir al aire libre un espacio de gas lleno, sin quemarlo, una o dos veces, deje que se llene de nuevo, y luego pruebe la llama en la hornilla al aire libre.
# of 1ae3d175, reviewed: false
tests-vent_and_try_again-outcomes-1-seen = Arde después del segundo llenado
# of 950e6999, reviewed: false
tests-vent_and_try_again-outcomes-2-seen = Todavía no arde
# of 2c6d0b71, reviewed: false
tests-days_since_filling-name = Contar los días desde el llenado
# of b3cb0308, reviewed: false
tests-days_since_filling-how = Cuente los días desde el primer llenado, sienta qué tan caliente está la mezcla, y pregunte con qué se llenó.
# of ea5d19a4, reviewed: false
tests-days_since_filling-outcomes-1-seen = Menos de tres semanas, o hasta tres meses donde hace frío; llenado con estiércol de vaca o inóculo
# of a757a658, reviewed: false
tests-days_since_filling-outcomes-2-seen = Más tiempo, o llenado con gallinaza o excrementos similares o con plantas, sin inóculo
# of de7ac728, reviewed: false
tests-weigh_the_feed-name = Pesar la alimentación de una semana
# of 7f472312, reviewed: false
tests-weigh_the_feed-how = Pese el estiércol y el agua de cada alimentación durante una semana y compare con la alimentación planificada de este biodigestor; anote los días sin alimentación.
# of 6bc3fcac, reviewed: false
tests-weigh_the_feed-outcomes-1-seen = Menos que la alimentación planificada
# of 6de80237, reviewed: false
tests-weigh_the_feed-outcomes-2-seen = Más que la alimentación planificada
# of 2a7896c6, reviewed: false
tests-weigh_the_feed-outcomes-3-seen = Más o menos la alimentación planificada, pero a saltos
# of 4c2e739b, reviewed: false
tests-weigh_the_feed-outcomes-4-seen = Todos los días según lo planificado
# of cc87b199, reviewed: false
tests-gas_against_feed-name = Medir el gas de una semana frente a su alimentación
# of a6453ef8, reviewed: false
tests-gas_against_feed-how = Lea un medidor, o cuente las horas de cada quemador con su consumo conocido, durante una semana en que se pesa la alimentación, y compare con el gas que da esa alimentación.
# of d425a653, reviewed: false
tests-gas_against_feed-outcomes-1-seen = Tanto como da la alimentación
# of ab7ff3ad, reviewed: false
tests-gas_against_feed-outcomes-2-seen = Claramente menos
# of d0396f23, reviewed: false
tests-ph_of_slurry-name = pH de la mezcla fresca
# of dfc1f65b, reviewed: false
tests-ph_of_slurry-how = Saque mezcla de la salida con un cucharón largo y meta en ella de inmediato papel de pH o un medidor; hágalo en tres días.
# of ec85992b, reviewed: false
tests-ph_of_slurry-outcomes-1-seen = Menos de 6.8 o bajando
# of 840451d7, reviewed: false
tests-ph_of_slurry-outcomes-2-seen = De 6.8 a 8
# of 5f21691e, reviewed: false
tests-ph_of_slurry-outcomes-3-seen = Más de 8
# of 1642ead1, reviewed: false
tests-ask_about_feed-name = Preguntar qué entró, día por día
# of 7cd51cd1, reviewed: false
tests-ask_about_feed-how = Repase el último mes con todos los que alimentan o limpian: materiales nuevos, cantidades, medicinas, baños antiparasitarios, desinfectante, jabón, agua de lavado y lluvia, con los días.
# of 533e9f26, reviewed: false
tests-ask_about_feed-outcomes-1-seen = Se dio medicina y después bajó el gas
# of 380cd107, reviewed: false
tests-ask_about_feed-outcomes-2-seen = Entró desinfectante, baño antiparasitario o jabón y después bajó el gas
# of fd902ef8, reviewed: false
tests-ask_about_feed-outcomes-3-seen = Entró un material nuevo o dulce y después bajó el gas
# of 3182357e, reviewed: false
tests-ask_about_feed-outcomes-4-seen = Nada de eso
# of b09dc0f3, reviewed: false
tests-ammonia_strip-name = Amoníaco en la mezcla
# of ba124946, reviewed: false
tests-ammonia_strip-how = Diluya diez veces mezcla de la salida, sumerja una tira de prueba de amonio, y multiplique por diez; sume la parte de gallinaza o excrementos similares y de orina en la alimentación.
# of d8137b5d, reviewed: false
tests-ammonia_strip-outcomes-1-seen = Más de 3 g/L, o mucha gallinaza u orina en la alimentación
# of 6cba2f8a, reviewed: false
tests-ammonia_strip-outcomes-2-seen = Menos de 1.5 g/L
# of 3e55ce88, reviewed: false
tests-pour_the_mix-name = Verter la alimentación mezclada
# of 25ad4804, reviewed: false
tests-pour_the_mix-how = Saque un palo de la alimentación mezclada y observe: una buena mezcla escurre como una papilla rala. Compare los baldes de agua con los baldes de estiércol.
# of bd7d74e0, reviewed: false
tests-pour_the_mix-outcomes-1-seen = Se pega o cae en grumos
# of 962a08bc, reviewed: false
tests-pour_the_mix-outcomes-2-seen = Gotea como agua
# of 9c24dd97, reviewed: false
tests-pour_the_mix-outcomes-3-seen = Escurre despacio y parejo
# of 51ae56ff, reviewed: false
tests-slurry_thermometer-name = Temperatura de la mezcla
# of e2e5f7d6, reviewed: false
tests-slurry_thermometer-how = Baje un termómetro en una botella con peso dentro de la mezcla desde la entrada, o mida un balde de mezcla tal como sale.
# of c5095bb5, reviewed: false
tests-slurry_thermometer-outcomes-1-seen = Por debajo de 15 °C, o varios grados más fría que en los meses buenos
# of cbac40c8, reviewed: false
tests-slurry_thermometer-outcomes-2-seen = 20 °C o más caliente
# of 617a293d, reviewed: false
tests-dip_rod-name = Sondear desde fuera con una vara larga
# of 63ffaf51, reviewed: false
tests-dip_rod-how = De pie y erguido, desde fuera y con todas las llamas apagadas, baje una vara larga y recta por la entrada o la abertura: sienta dónde empieza una costra y dónde la vara topa con arena.
# of 24da473b, reviewed: false
tests-dip_rod-outcomes-1-seen = Una costra más gruesa que una mano
# of ef1fd964, reviewed: false
tests-dip_rod-outcomes-2-seen = La vara se detiene muy por encima de la profundidad construida, en arena o lodo
# of 64d8784e, reviewed: false
tests-dip_rod-outcomes-3-seen = Ni costra ni sedimento
# of d60dbbfc, reviewed: false
tests-level_after_a_day-name = Nivel de la mezcla después de un día
# of c53f47bf, reviewed: false
tests-level_after_a_day-how = Deje salir gas hasta que el manómetro esté en cero, marque el nivel de la mezcla en la salida, no alimente ni saque nada durante un día y una noche, y mire de nuevo.
# of 409eb982, reviewed: false
tests-level_after_a_day-outcomes-1-seen = Ha bajado
# of 73f07cc2, reviewed: false
tests-level_after_a_day-outcomes-2-seen = Está en la marca, pero la boca interior de la entrada o de la salida está descubierta o casi
# of 2b172a0d, reviewed: false
tests-level_after_a_day-outcomes-3-seen = Está en la marca con las bocas interiores bien cubiertas
# of 72fa8933, reviewed: false
tests-rod_in_inlet-name = Empujar un palo por la entrada
# of 18bd7330, reviewed: false
tests-rod_in_inlet-how = De pie y erguido, desde fuera, empuje un palo largo por el tubo de entrada y vierta detrás un balde de agua.
# of 96418c23, reviewed: false
tests-rod_in_inlet-outcomes-1-seen = El palo topa con un tapón y después el agua baja
# of ae2743f8, reviewed: false
tests-rod_in_inlet-outcomes-2-seen = El palo pasa libremente
# of b1742a65, reviewed: false
tests-rod_in_outlet-name = Empujar un palo por la salida
# of 365f318e, reviewed: false
tests-rod_in_outlet-how = Con todas las llamas apagadas y nadie sobre la tapa, empuje un palo largo desde fuera dentro de la salida y observe si la mezcla se mueve.
# of efbc7eed, reviewed: false
tests-rod_in_outlet-outcomes-1-seen = Un tapón cede y la mezcla fluye
# of 77d0a3c4, reviewed: false
tests-rod_in_outlet-outcomes-2-seen = El paso está libre
# of 5562bae1, reviewed: false
tests-look_at_water_seal-name = Mirar el alivio de presión y la trampa
# of 6e3ecfc2, reviewed: false
tests-look_at_water_seal-how = Mire el agua en la botella del alivio de presión y en la trampa: ¿dónde está respecto a su marca?, ¿burbujea?, ¿puede salir gas a la presión para la que está ajustado?
# of d083737f, reviewed: false
tests-look_at_water_seal-outcomes-1-seen = Por debajo de la marca o seco
# of f613b27f, reviewed: false
tests-look_at_water_seal-outcomes-2-seen = Demasiado lleno, congelado, o el tubo que lleva a él está tapado
# of 7f5c2a0f, reviewed: false
tests-look_at_water_seal-outcomes-3-seen = En la marca y burbujea solo cuando el depósito de gas está lleno
# of d039e502, reviewed: false
tests-look_at_bag-name = Revisar toda la bolsa
# of 99b388b7, reviewed: false
tests-look_at_bag-how = Camine alrededor de la bolsa con luz de día, busque agujeros, partes quebradizas y collares flojos, y aplíqueles agua jabonosa con brocha.
# of e126782e, reviewed: false
tests-look_at_bag-outcomes-1-seen = Un agujero, una rasgadura o burbujas en el agua jabonosa
# of 2e8580c2, reviewed: false
tests-look_at_bag-outcomes-2-seen = Entera y sin fugas
# of a06eac7d, reviewed: false
tests-turn_drum-name = Girar la campana
# of 9cf2b421, reviewed: false
tests-turn_drum-how = Con todas las llamas apagadas, gire la campana por sus manijas desde el borde; nunca se pare sobre ella. Luego revise con agua jabonosa las costuras y la camisa de agua.
# of 0552aec4, reviewed: false
tests-turn_drum-outcomes-1-seen = Estaba trabada y sube después de girarla
# of b2edf2b9, reviewed: false
tests-turn_drum-outcomes-2-seen = Gira libremente y se ven burbujas en una costura
# of 8543eea9, reviewed: false
tests-turn_drum-outcomes-3-seen = Gira libremente y no tiene fugas
# of 978ccc08, reviewed: false
tests-gauge_at_zero-name = Manómetro mientras se usa gas
# of 39a77d5b, reviewed: false
tests-gauge_at_zero-how = Con todas las llamas apagadas, observe el manómetro mientras se saca mezcla o se deja salir gas al aire libre: ¿baja a cero o menos?
# of e43db4d5, reviewed: false
tests-gauge_at_zero-outcomes-1-seen = Baja a cero o menos, o la bolsa queda aplastada por succión
# of 97fe4b8d, reviewed: false
tests-gauge_at_zero-outcomes-2-seen = Se queda por encima de cero
# of 64a96a5a, reviewed: false
tests-foam_settles-name = Espuma en un balde
# of d2c53ba6, reviewed: false
tests-foam_settles-how = Saque espuma y mezcla de la salida con un cucharón largo, revuelva con un puñado de ceniza o de mezcla fresca de estiércol de vaca, y espere un cuarto de hora.
# of d9843447, reviewed: false
tests-foam_settles-outcomes-1-seen = Queda como espuma firme
# of c3d77b9e, reviewed: false
tests-foam_settles-outcomes-2-seen = Es solo una capa de paja y estiércol
# of 07485712, reviewed: false
tests-gas_meter_by_trained-name = Medidor de gases en manos de un equipo capacitado
# of c2c98305, reviewed: false
tests-gas_meter_by_trained-how = Mantenga lejos a todas las personas y deje que un equipo capacitado, con un medidor de oxígeno, metano y sulfuro de hidrógeno, mida en el lugar bajo desde fuera, con una cuerda y nunca entrando. Nadie prueba con la nariz, con un animal ni con una llama.
# of 11e0f150, reviewed: false
tests-gas_meter_by_trained-outcomes-1-seen = El medidor muestra gas o poco oxígeno
# of d9f3cad4, reviewed: false
tests-gas_meter_by_trained-outcomes-2-seen = El medidor muestra aire limpio ahora
# of e1fbb3a1, reviewed: false
tests-look_at_vents-name = Mirar las aberturas de la cocina
# of c66f0ba5, reviewed: false
tests-look_at_vents-how = Mire si el cuarto con la llama tiene aberturas abajo y arriba que no se puedan cerrar, y si funciona allí un calentador sin ducto de salida de gases.
# of fe1c4603, reviewed: false
tests-look_at_vents-outcomes-1-seen = Menos de dos aberturas, o un calentador sin ducto de salida de gases
# of d907c2e0, reviewed: false
tests-look_at_vents-outcomes-2-seen = Aberturas abajo y arriba y ningún calentador sin ducto de salida de gases
