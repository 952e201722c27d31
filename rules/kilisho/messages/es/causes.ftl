# of 03c56ee1, reviewed: false
causes-pipe_leaks-name = Tubería, válvula o manguera con fuga al aire libre
# of cb6a5dcf, reviewed: false
causes-pipe_leaks-remedy = Cierre la válvula de la planta, rehaga la unión con cinta o sellador, cambie la manguera y la tubería agrietadas, y pruebe de nuevo con agua jabonosa. Lo que está fijo en una casa lo hace un instalador autorizado.
# of c1cac0ac, reviewed: false
causes-leak_indoors-name = Hay una fuga de gas dentro de un cuarto
# of 348bfbd8, reviewed: false
causes-leak_indoors-remedy = Saque a todas las personas, cierre la válvula de la planta, ventile el cuarto, y no use gas hasta que un instalador haya rehecho la unión o cambiado la llave o la manguera y el agua jabonosa no muestre nada.
# of 708f2c33, reviewed: false
causes-gas_line_holds_water-name = Hay agua detenida en la línea de gas
# of e445a2fe, reviewed: false
causes-gas_line_holds_water-remedy = Drene la trampa, y tienda de nuevo la tubería de modo que baje sin hundimientos hacia la planta o hacia una trampa; drene la trampa cada semana.
# of 7f54e1d6, reviewed: false
causes-burner_jet_blocked-name = El inyector o los orificios del quemador están tapados
# of d56a7c99, reviewed: false
causes-burner_jet_blocked-remedy = Destape con una aguja y lave el inyector y los orificios del quemador, séquelos, y limpie la hornilla cada semana.
# of dc05eddd, reviewed: false
causes-too_little_air-name = El quemador recibe muy poco aire
# of b791e79d, reviewed: false
causes-too_little_air-remedy = Abra el regulador de aire hasta que la llama sea corta y azul, y mantenga limpios los orificios y ventilado el cuarto.
# of 37dc93c5, reviewed: false
causes-too_much_air-name = El quemador recibe demasiado aire
# of 16881f80, reviewed: false
causes-too_much_air-remedy = Cierre un poco el regulador de aire hasta que la llama se asiente en el quemador y siga azul.
# of 0fd761ed, reviewed: false
causes-pressure_too_high_for_burner-name = La presión en el quemador es demasiado alta
# of 0f4c21e5, reviewed: false
causes-pressure_too_high_for_burner-remedy = Estrangule la válvula de la hornilla mientras el manómetro esté alto, cocine antes de que el depósito de gas esté lleno, o haga que un instalador ponga un regulador de presión.
# of bc7adf4b, reviewed: false
causes-valve_part_shut-name = Una válvula está medio cerrada o una manguera está doblada
# of 9c8f1145, reviewed: false
causes-valve_part_shut-remedy = Abra del todo cada válvula, enderece o acorte la manguera, y cambie la válvula que ya no gire.
# of ac0f89f9, reviewed: false
causes-pipe_too_narrow-name = La tubería es demasiado angosta o demasiado larga
# of 81499120, reviewed: false
causes-pipe_too_narrow-remedy = Tienda la tubería del siguiente diámetro más ancho, con menos codos, o acerque la hornilla.
# of 173bdea5, reviewed: false
causes-unconverted_burner-name = La hornilla o la lámpara fue hecha para otro gas
# of e094c11f, reviewed: false
causes-unconverted_burner-remedy = Use un quemador hecho para biogás, o haga que un instalador agrande el inyector y ajuste el aire.
# of 463b47c6, reviewed: false
causes-kitchen_not_aired-name = El cuarto con la llama no está ventilado
# of 3c9ada84, reviewed: false
causes-kitchen_not_aired-remedy = No use ninguna llama allí hasta que el cuarto tenga aberturas abajo y arriba que no se puedan cerrar; saque los calentadores sin ducto de salida de gases.
# of 8f701558, reviewed: false
causes-hydrogen_sulfide_high-name = Mucho sulfuro de hidrógeno en el gas
# of bb765649, reviewed: false
causes-hydrogen_sulfide_high-remedy = Ponga un filtro con óxido de hierro o lana de acero y renuévelo antes de que se agote, ventile la cocina, y cambie las partes oxidadas. Cambie el filtro al aire libre: puede calentarse por sí mismo en contacto con el aire.
# of 37ec233e, reviewed: false
causes-slurry_in_line-name = Entró mezcla en la línea de gas
# of 53e13693, reviewed: false
causes-slurry_in_line-remedy = Cierre la válvula de la planta con todas las llamas apagadas, drene y enjuague la línea al aire libre, alimente menos hasta que el nivel vuelva a su marca, y revise si hay una salida tapada o espuma.
# of cf9113c0, reviewed: false
causes-relief_seal_dry-name = El sello de agua del alivio de presión o de la trampa está seco
# of 9ac2989b, reviewed: false
causes-relief_seal_dry-remedy = Llene el sello con agua hasta su marca y no más, al aire libre, y mírelo todos los días.
# of 205f00a6, reviewed: false
causes-relief_stuck-name = El alivio de presión está tapado, congelado o no existe
# of eeabfffb, reviewed: false
causes-relief_stuck-remedy = Mantenga lejos a las personas y las llamas, deje salir gas al aire libre de inmediato, destape o descongele el alivio de presión desde fuera, y no ponga su sello más hondo de lo que la estructura soporta.
# of 74fa8cbd, reviewed: false
causes-air_in_first_gas-name = Todavía hay aire en el primer gas
# of a703ce92, reviewed: false
causes-air_in_first_gas-remedy = No encienda nada. Deje salir al aire libre, sin quemarlo y lejos de toda llama, el primer o los dos primeros espacios de gas llenos, y solo después pruebe la llama en la hornilla al aire libre.
# of 71873f52, reviewed: false
causes-start_not_finished-name = El arranque aún no ha tenido tiempo suficiente
# of 3b04fd53, reviewed: false
causes-start_not_finished-remedy = Espere sin alimentar: unas semanas donde hace calor, hasta tres meses donde hace frío. Empiece a alimentar, poco al principio, cuando el gas arda de forma constante.
# of 4a9e236e, reviewed: false
causes-too_few_microbes-name = Muy pocos microbios desde el comienzo
# of a45951c5, reviewed: false
causes-too_few_microbes-remedy = Deje de alimentar y traiga mezcla de un biodigestor en funcionamiento, de un décimo a un tercio del volumen, o estiércol de vaca fresco; luego espere.
# of a62ca360, reviewed: false
causes-underfed-name = Recibe muy poca alimentación
# of 843fdf64, reviewed: false
causes-underfed-remedy = Junte más estiércol: encierre a los animales de noche, mantenga un piso duro y limpio, únase con un vecino. Suba la alimentación como máximo un cuarto por semana; si no, planifique con menos gas.
# of fc6119ff, reviewed: false
causes-overfed-name = Está sobrealimentado y se agria
# of a5ea45d4, reviewed: false
causes-overfed-remedy = Deje de alimentar de tres días a una semana, hasta que el pH y la llama se recuperen; agregue algo de mezcla fresca de estiércol de vaca; ceniza de leña o agua de cal solo despacio y al último. Después empiece con la mitad de la alimentación.
# of 7de7fe05, reviewed: false
causes-quick_feed_soured-name = Un material nuevo o dulce lo agrió
# of 2591a668, reviewed: false
causes-quick_feed_soured-remedy = Deje fuera el material nuevo, no alimente nada por unos días y después solo estiércol de vaca; vuelva a traer el material nuevo con un décimo de los sólidos y súbalo a lo largo de semanas.
# of e9e12441, reviewed: false
causes-ammonia_from_droppings-name = El amoníaco de gallinaza o excrementos similares, o de la orina, lo frena
# of f44e1378, reviewed: false
causes-ammonia_from_droppings-remedy = Dé menos gallinaza o excrementos similares y menos orina, más estiércol de vaca y más agua, un poco de paja picada; se recupera en semanas, a medida que se renueva la mezcla.
# of 7eb9c779, reviewed: false
causes-medicine_in_dung-name = La medicina en el estiércol frena a los microbios
# of 3ff09a7d, reviewed: false
causes-medicine_in_dung-remedy = Mantenga fuera el estiércol de los animales tratados durante una semana o más después de la última dosis y compóstelo; alimente con estiércol de animales no tratados; agregue inóculo (mezcla de arranque) si el gas no vuelve.
# of 54247b1e, reviewed: false
causes-disinfectant_in_feed-name = El desinfectante, el baño antiparasitario o el jabón envenena a los microbios
# of 07204b80, reviewed: false
causes-disinfectant_in_feed-remedy = Desvíe el agua de lavado para que no entre en el biodigestor, deje fuera el estiércol y el agua de los días posteriores a la limpieza, y diluya lo que hay dentro con alimentación limpia durante unos días.
# of a8c72b54, reviewed: false
causes-too_much_water-name = Entra demasiada agua
# of 4f2f3de5, reviewed: false
causes-too_much_water-remedy = Mezcle tanta agua como estiércol si es estiércol de vaca, cave una zanja alrededor de las aberturas, tápelas, y mantenga fuera el agua de lavado y la lluvia.
# of 9da4ce05, reviewed: false
causes-slurry_too_thick-name = La mezcla es demasiado espesa
# of e585e01f, reviewed: false
causes-slurry_too_thick-remedy = Agregue agua balde por balde y agite con un palo largo desde fuera; de ahora en adelante mezcle agua y estiércol antes de alimentar; use orina o líquido reutilizado donde el agua escasea.
# of e8d9259b, reviewed: false
causes-irregular_feeding-name = Se alimenta a saltos
# of c9f58c2c, reviewed: false
causes-irregular_feeding-remedy = Dé la misma cantidad todos los días a la misma hora; nunca recupere de una sola vez los días perdidos.
# of f9e2fae1, reviewed: false
causes-cold_slurry-name = La mezcla está fría
# of 0ca52f21, reviewed: false
causes-cold_slurry-remedy = Cubra el suelo sobre el biodigestor con paja o un montículo, y una bolsa, con un cobertizo; mezcle con agua calentada al sol y alimente cerca del mediodía; alimente menos por debajo de 15 °C, y nada por debajo de 10.
# of 1e866aa4, reviewed: false
causes-scum_crust-name = Una costra de nata retiene el gas debajo
# of e7b035ef, reviewed: false
causes-scum_crust-remedy = Con todas las llamas apagadas, rompa la costra desde fuera con un palo largo y agite dos veces al día; una campana se gira. Deje fuera la paja y el pasto largo o píquelos. Si no se rompe, llame a un equipo capacitado; nadie se mete dentro.
# of 1c10ed93, reviewed: false
causes-foaming-name = La mezcla hace espuma
# of 310e2a8c, reviewed: false
causes-foaming-remedy = Deje de alimentar unos días, deje fuera grasa, jabón y material verde fresco, y agite; drene de la línea de gas lo que haya pasado.
# of 83184bbd, reviewed: false
causes-sand_and_sludge-name = Arena y lodo llenan el biodigestor
# of eaba8d61, reviewed: false
causes-sand_and_sludge-remedy = Haga que un equipo capacitado y equipado saque el lodo, y guarde de un décimo a un tercio de la mezcla como inóculo. Después deje asentar la mezcla y deje la arena en la fosa de mezcla.
# of 1b022be0, reviewed: false
causes-dome_leaks_gas-name = La cúpula o el tanque tiene una fuga de gas
# of c4489564, reviewed: false
causes-dome_leaks_gas-remedy = Haga que un albañil capacitado abra la grieta desde fuera, la rellene y recubra de nuevo el espacio de gas. El trabajo por dentro espera hasta que un equipo capacitado y equipado haya vaciado, ventilado y medido el interior.
# of 61012f76, reviewed: false
causes-lid_seal_leaks-name = El sello de arcilla de la tapa tiene fuga
# of 155f08ac, reviewed: false
causes-lid_seal_leaks-remedy = Deje que el manómetro baje a cero al aire libre con todas las llamas apagadas, luego apriete de nuevo la arcilla, ponga peso sobre la tapa y mantenga agua encima. Nadie se pone encima de la tapa.
# of b8429a6f, reviewed: false
causes-tank_leaks_slurry-name = El tanque tiene una fuga de mezcla
# of 6880e70b, reviewed: false
causes-tank_leaks_slurry-remedy = Deje de alimentar, marque hasta dónde baja el nivel (la grieta está justo encima), y haga que un albañil y un equipo de personas capacitados lo vacíen, ventilen y reparen; tenga en cuenta a las personas y los pozos cercanos.
# of d6ffb393, reviewed: false
causes-port_uncovered-name = La mezcla está por debajo de la boca interior y el gas escapa
# of b4eec85e, reviewed: false
causes-port_uncovered-remedy = Apague todas las llamas, rellene con mezcla o agua hasta al menos 20 cm sobre las bocas interiores, y saque solo tanto como entra.
# of 7fa45b63, reviewed: false
causes-bag_leaks-name = La bolsa está rota o tiene fuga
# of 1c90a1e6, reviewed: false
causes-bag_leaks-remedy = Con todas las llamas apagadas, suelde o pegue un parche de la misma lámina en la parte seca y limpia, apriete los collares, cerque la bolsa y protéjala del sol.
# of 65da50c3, reviewed: false
causes-drum_leaks-name = La campana tiene fuga
# of 96c016ad, reviewed: false
causes-drum_leaks-remedy = Cierre la válvula, apague todas las llamas, deje salir el gas al aire libre, luego quite el óxido, suelde lejos de la planta o ponga un parche, y pinte; píntela cada año.
# of fb007ae9, reviewed: false
causes-drum_stuck-name = La campana está trabada
# of 07982604, reviewed: false
causes-drum_stuck-remedy = Con todas las llamas apagadas, libere la guía desde el borde, rompa la nata alrededor de la campana, engrase la guía y gire la campana dos veces al día.
# of 105ad0ab, reviewed: false
causes-inlet_blocked-name = La entrada está tapada
# of e0b6a7c9, reviewed: false
causes-inlet_blocked-remedy = Empuje el tapón desde fuera hasta que pase, con un palo largo y agua, y después alimente sin paja ni grumos, a través de una rejilla.
# of 7d8f9998, reviewed: false
causes-outlet_blocked-name = La salida está tapada
# of 18532882, reviewed: false
causes-outlet_blocked-remedy = Deje de alimentar, deje salir gas al aire libre con todas las llamas apagadas, y destape la salida desde fuera con un palo largo; nadie se pone encima de la tapa.
# of fa234124, reviewed: false
causes-air_drawn_in-name = Se aspiró aire hacia el gas
# of a1350063, reviewed: false
causes-air_drawn_in-remedy = Apague todas las llamas, cierre la válvula de la planta, rellene hasta el nivel habitual, deje salir el siguiente espacio de gas lleno al aire libre sin quemarlo, y no encienda nada antes.
# of b1fe8b4a, reviewed: false
causes-gas_gathers_low-name = Se acumula gas en una fosa o un lugar bajo
# of a8f707e1, reviewed: false
causes-gas_gathers_low-remedy = Mantenga a todos fuera y lejos, llame a rescatistas capacitados o a un equipo capacitado, y deje que ellos lo ventilen; después lleve los venteos lejos de los lugares bajos, rellene o tape la fosa y cérquela.
# of 3b904a37, reviewed: false
causes-gas_not_used_up-name = Más gas del que se usa
# of 81e6952d, reviewed: false
causes-gas_not_used_up-remedy = Use el gas para otra comida, para calentar agua con ducto de salida de gases o para un vecino, o alimente menos; el gas sin quemar daña el clima y puede acumularse donde escapa.
# of 6e3430b6, reviewed: false
causes-expectation_too_high-name = Da lo que su alimentación puede dar
# of 542ff694, reviewed: false
causes-expectation_too_high-remedy = No hay nada dañado. Para más gas hace falta más o mejor alimentación o un biodigestor más caliente; si no, planifique menos comidas con gas.
