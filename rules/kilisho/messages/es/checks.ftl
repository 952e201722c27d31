# of 938499fd, reviewed: false
checks-cooked_crops_wait-title = Pasa un mes entre el digestato y la cosecha de los cultivos que se comen cocidos
# of d5fb6c42, reviewed: false
checks-cooked_crops_wait-why = Se encontró que la mayoría de los gérmenes del estiércol viven alrededor de un mes en el suelo, y manos desnudas y canastos tocan lo que después se cocina.
# of 694bbab2, reviewed: false
checks-cooked_crops_wait-do = Aplique el digestato antes de sembrar o cuando el cultivo es joven.
# of a8d48b3f, reviewed: false
checks-fodder_wait-title = Pasan seis semanas entre el digestato y el corte o pastoreo del forraje
# of d9590ac9, reviewed: false
checks-fodder_wait-why = Los gérmenes y los huevos de lombrices parásitas vuelven a los animales con el pasto.
# of 75436095, reviewed: false
checks-fodder_wait-do = Aplíquelo justo después de un corte o de un pastoreo, y no deje entrar a los animales hasta que termine la espera.
# of c4f35028, reviewed: false
checks-nitrogen_limit_elsewhere_kept-title = Ningún campo recibe más de 170 kg de nitrógeno de estiércol por hectárea y año
# of 73eeb0f8, reviewed: false
checks-nitrogen_limit_elsewhere_kept-why = Lo que pasa de lo que toman los cultivos es arrastrado como nitrato hacia los pozos y arroyos.
# of 71859e4e, reviewed: false
checks-nitrogen_limit_elsewhere_kept-do = Siga primero la norma local; si no la hay, repártalo en más superficie y en dosis más pequeñas mientras el cultivo crece.
# of e86066cc, reviewed: false
checks-slurry_store_holds-title = El depósito de digestato tiene cabida para lo que se junta entre dos aplicaciones
# of 1274e0f2, reviewed: false
checks-slurry_store_holds-why = Un depósito que rebosa manda digestato a los pozos y arroyos, y una aplicación apurada en tierra desnuda o mojada lo desperdicia.
# of 758c6956, reviewed: false
checks-slurry_store_holds-do = Constrúyalo más grande, o aplique más seguido en cultivos que crecen todo el año, como el pasto napier (pasto elefante) o el plátano.
# of 41040968, reviewed: false
checks-no_flame_at_digester-title = No hay llama abierta ni fuego a menos de 5 m del biodigestor
# of ab4c4e18, reviewed: false
checks-no_flame_at_digester-why = El gas que se fuga se enciende y la llama corre de vuelta hasta la planta.
# of 7fa4d107, reviewed: false
checks-no_flame_at_digester-do = Apague o retire el fuego ahora, y guarde una distancia de 5 m a toda parte que contenga gas.
# of cb3a769c, reviewed: false
checks-first_flame_not_at_digester-title = La primera llama nunca se enciende en el biodigestor ni en su tubería, entrada o salida
# of f40a9ee1, reviewed: false
checks-first_flame_not_at_digester-why = El primer gas está mezclado con aire, y una llama allí puede retroceder y hacer explotar la planta.
# of caf8e55e, reviewed: false
checks-first_flame_not_at_digester-do = Encienda solo en el aparato, al final de la tubería.
# of ba6a07db, reviewed: false
checks-first_flame_outdoors-title = La primera llama se prueba en la hornilla al aire libre
# of d06665f3, reviewed: false
checks-first_flame_outdoors-why = El primer gas puede contener aire, y mucho gas sin quemar se escapa antes de que la llama se sostenga.
# of 935e73ed, reviewed: false
checks-first_flame_outdoors-do = Lleve la hornilla al aire libre para la primera prueba, con la manguera extendida en todo su largo.
# of 0dbca6ce, reviewed: false
checks-first_flame_distance-title = La primera llama se prueba a 10 m o más del biodigestor
# of 28818b49, reviewed: false
checks-first_flame_distance-why = El gas alrededor de la planta y el aire en la tubería pueden encenderse.
# of 3eb7abdb, reviewed: false
checks-first_flame_distance-do = Lleve la hornilla a 10 m o más, y ponga un arrestallamas o un sello de agua en la línea.
# of a3a77891, reviewed: false
checks-leak_test_without_flame-title = Nadie busca fugas con una llama
# of b8a13054, reviewed: false
checks-leak_test_without_flame-why = Ha muerto gente en explosiones por buscar gas con un fósforo.
# of feeaafa1, reviewed: false
checks-leak_test_without_flame-do = Use agua jabonosa y nada más.
# of b3c2614f, reviewed: false
checks-leak_test_done-title = Las uniones se han probado con agua jabonosa
# of 5f79eb0c, reviewed: false
checks-leak_test_done-why = Una fuga pequeña no se ve y después de un rato tampoco se huele.
# of 220e116e, reviewed: false
checks-leak_test_done-do = Pase agua jabonosa con brocha por cada unión, válvula y extremo de manguera bajo presión y observe si salen burbujas.
# of 56735b7c, reviewed: false
checks-first_gas_vented-title = El primer gas se dejó salir al aire libre, sin quemar, antes de la primera llama
# of fc13b27e, reviewed: false
checks-first_gas_vented-why = El espacio de gas todavía contiene aire, y la mezcla de gas y aire puede explotar.
# of a9cddec6, reviewed: false
checks-first_gas_vented-do = Deje salir el gas al aire libre una o dos veces cuando el manómetro llegue por primera vez a unos 4 kPa (40 cm de agua), lejos de toda llama, y después pruebe la hornilla.
# of 9a838ebf, reviewed: false
checks-flame_before_valve-title = El fósforo se enciende antes de abrir la válvula de gas
# of fdeb05dc, reviewed: false
checks-flame_before_valve-why = El gas que sale primero se enciende de golpe en una llamarada.
# of 533b3166, reviewed: false
checks-flame_before_valve-do = Encienda el fósforo, acérquelo al quemador y después abra la válvula.
# of 883d7856, reviewed: false
checks-no_suction_with_flame-title = El biodigestor tiene presión siempre que se quema gas
# of 5c15abe8, reviewed: false
checks-no_suction_with_flame-why = Con presión cero entra aire por succión y el gas se vuelve explosivo.
# of d181bac4, reviewed: false
checks-no_suction_with_flame-do = Cierre la válvula principal, apague todas las llamas y complete con mezcla o agua hasta el nivel habitual.
# of 95663bf4, reviewed: false
checks-no_emptying_while_burning-title = No se saca mezcla mientras arde una llama
# of 62808dae, reviewed: false
checks-no_emptying_while_burning-why = Al sacar mezcla se succiona la llama o el aire hacia el espacio de gas.
# of 05a80c4c, reviewed: false
checks-no_emptying_while_burning-do = Apague todas las llamas y cierre la válvula antes de sacar mezcla, y mantenga abierto el venteo mientras tanto.
# of 1c8bde4c, reviewed: false
checks-main_valve_shut_at_night-title = La válvula principal se cierra de noche y cuando no hay nadie en casa
# of 248872b2, reviewed: false
checks-main_valve_shut_at_night-why = Una llave que queda abierta llena el cuarto de gas.
# of e0e9bba9, reviewed: false
checks-main_valve_shut_at_night-do = Haga que cerrar la válvula en la planta sea la última tarea del día.
# of c19a2834, reviewed: false
checks-kitchen_openings-title = El cuarto donde está el aparato tiene dos aberturas permanentes, una arriba y una abajo
# of 12baab95, reviewed: false
checks-kitchen_openings-why = El gas que se fuga y el monóxido de carbono de la llama deben poder salir.
# of 32cfbbf1, reviewed: false
checks-kitchen_openings-do = Haga una abertura de ventilación bajo el techo y otra cerca del piso; no use la hornilla en un cuarto cerrado.
# of 9df2ecba, reviewed: false
checks-clearance_above_flame-title = No hay nada que pueda arder a menos de 1 m por encima de una hornilla o lámpara
# of 50b979b2, reviewed: false
checks-clearance_above_flame-why = Los gases calientes suben y encienden un techo de paja.
# of af6f20b5, reviewed: false
checks-clearance_above_flame-do = Cambie de lugar la lámpara o la hornilla, o cuelgue encima una pantalla de metal.
# of 9999b59c, reviewed: false
checks-gas_not_vented_indoors-title = Ni el gas ni el agua de la trampa se dejan salir en un cuarto o invernadero
# of f515cb11, reviewed: false
checks-gas_not_vented_indoors-why = El gas envenena, quita el aire y puede explotar.
# of c56ee35e, reviewed: false
checks-gas_not_vented_indoors-do = Lleve todos los venteos y drenajes al aire libre.
# of 25228afa, reviewed: false
checks-gas_used_within_week-title = El gas se usa por lo menos una vez por semana
# of 82c8747c, reviewed: false
checks-gas_used_within_week-why = La presión sube hasta que la planta deja escapar gas o revienta.
# of d5724325, reviewed: false
checks-gas_used_within_week-do = Queme el gas en una hornilla o antorcha, o deje de alimentar.
# of 06f3bb5f, reviewed: false
checks-no_ignition_at_open_plant-title = Nadie fuma, usa teléfono, acciona interruptores ni produce chispas cerca de una planta de biogás abierta
# of eb7b54ba, reviewed: false
checks-no_ignition_at_open_plant-why = Basta una chispa para encender el gas que hay sobre un biodigestor abierto.
# of 98418bff, reviewed: false
checks-no_ignition_at_open_plant-do = Mantenga esas cosas a 5 m de distancia mientras haya algo abierto.
# of 31ce196c, reviewed: false
checks-no_gas_smell_indoors-title = No hay olor a gas en interiores
# of 8c4ac13a, reviewed: false
checks-no_gas_smell_indoors-why = El gas en un cuarto puede explotar o envenenar, y la nariz pronto deja de notarlo.
# of 0078742e, reviewed: false
checks-no_gas_smell_indoors-do = Apague las llamas, no toque ningún interruptor, abra puertas y ventanas, haga salir a todos y cierre la válvula en la planta; busque la fuga con agua jabonosa.
# of 0401ac27, reviewed: false
checks-methane_in_room_air_danger-title = El metano medido en el cuarto está por debajo de 0.5 %
# of d0a51cc8, reviewed: false
checks-methane_in_room_air_danger-why = Es la décima parte de lo que explota, el punto desde el cual el aire se considera peligroso.
# of 7d8804bf, reviewed: false
checks-methane_in_room_air_danger-do = Haga salir a todos, cierre la válvula en la planta, abra las puertas y no toque ningún interruptor.
# of 34acccd6, reviewed: false
checks-methane_in_room_air_much-title = El metano medido en el cuarto está por debajo de 0.25 %
# of 8ca1dc29, reviewed: false
checks-methane_in_room_air_much-why = Es la mitad de lo que se considera peligroso, y en otra parte del cuarto o bajo su techo puede haber más.
# of fe5b10d5, reviewed: false
checks-methane_in_room_air_much-do = Apague las llamas, no toque ningún interruptor, abra puertas y ventanas, cierre la válvula en la planta, y no use gas hasta que el agua jabonosa haya mostrado la fuga y esté cerrada.
# of 9e066fa0, reviewed: false
checks-methane_in_room_air_leak-title = El metano medido en el cuarto está por debajo de 0.1 %
# of bb602ba0, reviewed: false
checks-methane_in_room_air_leak-why = El aire casi no tiene metano propio, así que lo que un medidor muestra en un cuarto viene de una fuga.
# of a987342a, reviewed: false
checks-methane_in_room_air_leak-do = Cierre la válvula en la planta, ventile el cuarto y busque hoy mismo la fuga con agua jabonosa en cada unión, manguera y llave.
# of 7aa948f9, reviewed: false
checks-hydrogen_sulfide_air_danger-title = El aire que se respira no contiene más de 10 ppm de sulfuro de hidrógeno
# of 065cd7ed, reviewed: false
checks-hydrogen_sulfide_air_danger-why = Por encima de eso la gente se enferma en minutos, y con unos cientos cae sin aviso.
# of 37e6c061, reviewed: false
checks-hydrogen_sulfide_air_danger-do = Salga de inmediato en contra del viento y no vuelva a entrar sin un equipo de suministro de aire.
# of 1502d8c7, reviewed: false
checks-hydrogen_sulfide_air_short-title = El aire que se respira no contiene más de 5 ppm de sulfuro de hidrógeno
# of 7e2d22f7, reviewed: false
checks-hydrogen_sulfide_air_short-why = Es más de lo que los trabajadores pueden respirar aunque sea un cuarto de hora, y puede subir en unos instantes.
# of 810a5a96, reviewed: false
checks-hydrogen_sulfide_air_short-do = Salga al aire fresco contra el viento, mantenga alejados a los demás, cierre la válvula en la planta, y no deje que nadie se quede allí hasta que se encuentre la fuga y el aire mida menos.
# of 0899429a, reviewed: false
checks-hydrogen_sulfide_air_day-title = El aire que se respira no contiene más de 1 ppm de sulfuro de hidrógeno
# of f0743eed, reviewed: false
checks-hydrogen_sulfide_air_day-why = Es más de lo que los trabajadores pueden respirar día tras día, e indica que cerca se escapa gas.
# of 0d8ec0d0, reviewed: false
checks-hydrogen_sulfide_air_day-do = Ventile el lugar, busque la fuga con agua jabonosa, mantenga cerradas las tapas y las fosas, y mida de nuevo; no se guíe por el olor.
# of 16f13d04, reviewed: false
checks-carbon_monoxide_danger-title = El monóxido de carbono medido en el cuarto no pasa de 90 ppm
# of 6c2e12c4, reviewed: false
checks-carbon_monoxide_danger-why = Por encima de eso, un cuarto de hora hace daño; no tiene olor.
# of 4a902f42, reviewed: false
checks-carbon_monoxide_danger-do = Apague el aparato, saque a todos al aire fresco y pida ayuda si alguien se siente mareado.
# of f4efcd9a, reviewed: false
checks-carbon_monoxide_half_hour-title = El monóxido de carbono medido en el cuarto no pasa de 50 ppm
# of 44426901, reviewed: false
checks-carbon_monoxide_half_hour-why = Por encima de eso, media hora hace daño, primero a los niños y a las mujeres embarazadas; no tiene olor.
# of 84ea3bf0, reviewed: false
checks-carbon_monoxide_half_hour-do = Apague el aparato, saque a todos al aire fresco, abra puertas y ventanas, y no encienda nada allí hasta que el quemador y las aberturas de ventilación estén arreglados.
# of 5982964d, reviewed: false
checks-carbon_monoxide_hour-title = El monóxido de carbono medido en el cuarto no pasa de 25 ppm
# of 4218d1a2, reviewed: false
checks-carbon_monoxide_hour-why = Por encima de eso, una hora hace daño, y una comida puede tardar más en cocerse.
# of 0f98eae0, reviewed: false
checks-carbon_monoxide_hour-do = Apague el aparato, ventile el cuarto, limpie el quemador y ajuste su aire, y haga las aberturas de ventilación que falten antes de volver a encenderlo.
# of adcb0447, reviewed: false
checks-carbon_monoxide_eight_hours-title = El monóxido de carbono medido en el cuarto no pasa de 10 ppm
# of 22b02eea, reviewed: false
checks-carbon_monoxide_eight_hours-why = Por encima de eso, una jornada de trabajo o una noche en ese aire hace daño, y sale más mientras a la llama le falte aire.
# of 4ef28d2d, reviewed: false
checks-carbon_monoxide_eight_hours-do = Ventile el cuarto, no deje que nadie duerma allí mientras arda una llama, limpie el quemador, ajuste su aire y mida de nuevo.
# of 74cbbce6, reviewed: false
checks-no_unflued_heater-title = Ningún calentador de agua sin ducto de salida de gases funciona en interiores
# of cb52c4c7, reviewed: false
checks-no_unflued_heater-why = Su monóxido de carbono mata gente en los baños.
# of 3d893ae5, reviewed: false
checks-no_unflued_heater-do = Déjelo fuera de uso; póngalo al aire libre o instale un ducto de salida de gases como lo pide el reglamento local.
# of 6c4301de, reviewed: false
checks-flame_is_blue-title = La llama arde pareja y azul
# of 23d5352f, reviewed: false
checks-flame_is_blue-why = A una llama amarilla o con hollín le falta aire y produce monóxido de carbono; una llama que se despega se apaga y deja escapar gas.
# of 120d6de8, reviewed: false
checks-flame_is_blue-do = Limpie los orificios del quemador y ajuste el regulador de aire.
# of 6d3bf5f1, reviewed: false
checks-appliance_converted-title = No se usa ningún aparato de gas envasado o de gas de red sin conversión
# of cdcc699d, reviewed: false
checks-appliance_converted-why = Su inyector y sus orificios no sirven para biogás, de modo que la llama se despega o retrocede.
# of 18942e78, reviewed: false
checks-appliance_converted-do = Haga ampliar y probar el inyector y los orificios por alguien que conozca quemadores de biogás.
# of b215dbef, reviewed: false
checks-gas_supply_covers_demand-title = El gas del día alcanza para lo que se quiere usar por día
# of 1dd6b536, reviewed: false
checks-gas_supply_covers_demand-why = Lo que falta se quema como leña o se compra, y la gente pierde la confianza en la planta.
# of a9622d58, reviewed: false
checks-gas_supply_covers_demand-do = Alimente más si el biodigestor lo admite, queme el gas donde más vale, o use menos quemadores.
# of 340e5e98, reviewed: false
checks-gas_there_when_wanted-title = Por lo menos el 90 % del gas que se quiere está disponible cuando se quiere
# of 532aafbc, reviewed: false
checks-gas_there_when_wanted-why = La llama se apaga a mitad de una comida, y entonces puede salir gas sin quemar.
# of 7f47dd61, reviewed: false
checks-gas_there_when_wanted-do = Cierre la llave cuando se apague una llama; pase un uso a una hora con gas, o almacene más.
# of fe1102ce, reviewed: false
checks-gas_not_wasted-title = No se deja salir sin quemar más de la décima parte del gas
# of 76776298, reviewed: false
checks-gas_not_wasted-why = El gas que se deja salir puede encenderse, y su metano calienta el clima mucho más que una llama.
# of 5d617587, reviewed: false
checks-gas_not_wasted-do = Use el gas, almacene más o alimente menos; queme lo que sobra en una antorcha al aire libre.
# of d513f7b8, reviewed: false
checks-pipe_drop_usual-title = La tubería no pierde más de 0.5 kPa en la hora de mayor uso
# of 5952d470, reviewed: false
checks-pipe_drop_usual-why = Llega demasiado poca presión al quemador, y su llama se debilita o se apaga.
# of 0dd463cc, reviewed: false
checks-pipe_drop_usual-do = Use una tubería más ancha, un recorrido más corto o menos codos.
# of b02186d7, reviewed: false
checks-appliance_pressure_enough-title = El gas llega al aparato con la presión que este necesita
# of 5c4f3d0a, reviewed: false
checks-appliance_pressure_enough-why = Una llama sin presión retrocede o se apaga y deja escapar gas sin quemar.
# of 66bc18d6, reviewed: false
checks-appliance_pressure_enough-do = Use una tubería más ancha, encienda menos aparatos a la vez, o ponga peso sobre la campana o la bolsa como lo permite su fabricante, por debajo de su límite.
# of e2a2b798, reviewed: false
checks-losses_do_not_undo_savings-why = El metano calienta 27 veces lo que calienta el dióxido de carbono, de modo que una fuga de unos pocos por ciento puede anular lo que se gana con el combustible ahorrado.
# of acd7ea79, reviewed: false
checks-losses_do_not_undo_savings-do = Busque fugas con agua jabonosa, use todo el gas y queme lo que sobra.
# of dd9762a3, reviewed: false
checks-flame_arrester_fitted-title = Hay un arrestallamas o un sello de agua antes de los aparatos
# of 8a41dc26, reviewed: false
checks-flame_arrester_fitted-why = Una llama que retrocede no debe correr por la tubería hasta el depósito de gas.
# of b2a1ee81, reviewed: false
checks-flame_arrester_fitted-do = Instale uno en la línea, y límpielo cuando la llama se debilite.
# of 51935636, reviewed: false
checks-hydrogen_sulfide_gas_usual-title = El biogás no contiene más de 1,000 ppm de sulfuro de hidrógeno
# of 1d7efcf5, reviewed: false
checks-hydrogen_sulfide_gas_usual-why = Una cantidad mayor corroe las hornillas, y hasta una fuga pequeña en interiores es venenosa.
# of b4eee09e, reviewed: false
checks-hydrogen_sulfide_gas_usual-do = Instale o renueve un filtro de hierro, y mantenga la cocina bien ventilada.
# of fd3265d2, reviewed: false
checks-hydrogen_sulfide_gas_much-title = El biogás no contiene más de 3,000 ppm de sulfuro de hidrógeno
# of a58d50a2, reviewed: false
checks-hydrogen_sulfide_gas_much-why = Un gas así pone en peligro la vida de inmediato aun donde treinta veces más aire lo ha diluido, y pronto corroe hornillas y válvulas.
# of af82ac03, reviewed: false
checks-hydrogen_sulfide_gas_much-do = Ponga un filtro de hierro en la tubería antes de quemar más gas en interiores, pruebe cada unión con agua jabonosa, manténgase lejos de donde se deja salir gas, y cambie el filtro al aire libre.
# of 2b8754e7, reviewed: false
checks-household_pressure_scope-title = La presión del gas está por debajo de 5 kPa, como supone la norma para plantas domésticas
# of e2a7aaf2, reviewed: false
checks-household_pressure_scope-why = La norma internacional para plantas domésticas abarca solo menos de 5 kPa y menos de 100 MWh al año.
# of d8a656f7, reviewed: false
checks-household_pressure_scope-do = Trate la planta según las reglas para plantas más grandes y consulte a un instalador de gas autorizado.
# of 83569f1d, reviewed: false
checks-dome_pressure_tested-title = Una cúpula fija se mantiene dentro de los 8 kPa con que se prueban las cúpulas
# of 62bd91ac, reviewed: false
checks-dome_pressure_tested-why = Por encima de la presión de prueba, la tapa y la cúpula pueden levantarse o agrietarse.
# of efcef2d3, reviewed: false
checks-dome_pressure_tested-do = Use gas o déjelo salir al aire libre lejos de las llamas, y despeje la salida si está obstruida; en un plano, ensanche el tanque de compensación o baje su rebose.
# of cad7e6f0, reviewed: false
checks-dome_pressure_most-title = Una cúpula fija nunca pasa de 10 kPa
# of ce588f71, reviewed: false
checks-dome_pressure_most-why = La cúpula o su tapa puede salir despedida.
# of 805edfad, reviewed: false
checks-dome_pressure_most-do = Mantenga alejada a la gente, deje salir gas al aire libre ahora, deje de alimentar y llame al albañil.
# of b5b844bf, reviewed: false
checks-bag_pressure_most-title = Una bolsa nunca pasa de 1.5 kPa
# of 26438c09, reviewed: false
checks-bag_pressure_most-why = La bolsa puede reventar y soltar todo su gas.
# of 4a4773fe, reviewed: false
checks-bag_pressure_most-do = Deje salir gas al aire libre lejos de las llamas y baje la altura del sello de agua.
# of 2899627e, reviewed: false
checks-relief_on_bag-title = Una bolsa tiene un alivio de presión
# of 889b4a6e, reviewed: false
checks-relief_on_bag-why = Sin él, el gas que no se usa revienta la bolsa.
# of a33e94fc, reviewed: false
checks-relief_on_bag-do = Instale un alivio con sello de agua al aire libre antes de llenar la bolsa.
# of 71e0b7aa, reviewed: false
checks-relief_on_separate_holder-title = Un gasómetro separado tiene un alivio de presión
# of 6d7298a8, reviewed: false
checks-relief_on_separate_holder-why = Sin él, el gas que no se usa revienta el gasómetro.
# of 099009f0, reviewed: false
checks-relief_on_separate_holder-do = Instale un alivio con sello de agua al aire libre antes de dejar entrar gas.
# of eb56a12f, reviewed: false
checks-relief_setting_bag-title = El alivio de una bolsa se abre a 0.8 a 1.2 kPa
# of 58d4651c, reviewed: false
checks-relief_setting_bag-why = Un alivio que se abre más tarde no protege la bolsa.
# of b424cea0, reviewed: false
checks-relief_setting_bag-do = Ajuste el sello de agua a 8 a 12 cm de agua.
# of 266eacbd, reviewed: false
checks-relief_outlet_distance-title = La salida del alivio está a 5 m o más de edificios y caminos
# of 052d1592, reviewed: false
checks-relief_outlet_distance-why = El gas que se deja salir allí puede entrar en los cuartos o encontrar una llama.
# of 0bf77be7, reviewed: false
checks-relief_outlet_distance-do = Cambie de lugar la salida, y mantenga toda llama a 3 m o más de ella.
# of f55e412a, reviewed: false
checks-outlet_clear-title = La salida de una cúpula fija está despejada
# of d5bf623e, reviewed: false
checks-outlet_clear-why = La mezcla debe poder salir a medida que viene el gas, ya que nada más alivia la presión.
# of 3e6d6a90, reviewed: false
checks-outlet_clear-do = Despeje la salida desde afuera con una vara larga.
# of db1acae4, reviewed: false
checks-condensate_trap-title = La línea de gas tiene una trampa de agua de condensación o drena de vuelta a la planta
# of 0a752dc3, reviewed: false
checks-condensate_trap-why = El biogás es húmedo, y el agua en la tubería lo detiene o hace saltar la llama.
# of 5cae5a73, reviewed: false
checks-condensate_trap-do = Instale una trampa en el punto más bajo, en una caja enterrada con tapa, o tienda la tubería con caída hacia la planta.
# of cd2fd425, reviewed: false
checks-trap_water_level-title = El agua del sello de alivio y de la trampa está en su marca
# of f9890df2, reviewed: false
checks-trap_water_level-why = Una trampa seca deja escapar gas y una demasiado llena lo bloquea.
# of a98c7933, reviewed: false
checks-trap_water_level-do = Revise todos los días y llene hasta la marca, no más arriba.
# of 3608e60d, reviewed: false
checks-pipe_tightness-title = La tubería mantiene su presión durante 5 minutos con todas las llaves cerradas
# of 3525dc68, reviewed: false
checks-pipe_tightness-why = Una tubería con fuga llena de gas la cocina.
# of 56e072ee, reviewed: false
checks-pipe_tightness-do = Deje que el manómetro se estabilice 2 minutos y obsérvelo durante 5; si baja, cierre la válvula principal y rehaga las uniones.
# of 9cf160fe, reviewed: false
checks-no_leak_indoors-title = El agua jabonosa no muestra burbujas en interiores
# of d5a439ca, reviewed: false
checks-no_leak_indoors-why = El gas en un cuarto envenena y explota.
# of 4aaf1b45, reviewed: false
checks-no_leak_indoors-do = Cierre la válvula principal, ventile el cuarto y rehaga la unión antes de cualquier uso.
# of 9b62307b, reviewed: false
checks-no_entry-title = Nadie entra en el biodigestor, en la fosa de salida ni en una fosa de purines o digestato
# of e03221e2, reviewed: false
checks-no_entry-why = El gas de una fosa mata en pocas respiraciones, y quienes entran detrás para ayudar también mueren.
# of 9932eb3d, reviewed: false
checks-no_entry-do = No entre. Trabaje desde afuera con herramientas largas, y llame a un equipo capacitado y equipado.
# of 2e270ae8, reviewed: false
checks-entry_team_trained-title = Solo entra un equipo capacitado y equipado
# of e239a5fe, reviewed: false
checks-entry_team_trained-why = Sin capacitación y sin suministro de aire, hasta una entrada corta mata.
# of 551ca614, reviewed: false
checks-entry_team_trained-do = Detenga el plan y contrate a un equipo autorizado para espacios confinados.
# of dd3d4fb8, reviewed: false
checks-entry_ventilated-title = Antes de que entre un equipo, la fosa vaciada ha estado abierta y ventilándose por lo menos 2 días
# of b5632fc8, reviewed: false
checks-entry_ventilated-why = El gas permanece en la fosa y vuelve a subir cuando se agita el lodo.
# of 9363e697, reviewed: false
checks-entry_ventilated-do = Espere e inyecte aire fresco; siga midiendo todo el tiempo.
# of f1096c18, reviewed: false
checks-entry_oxygen-title = El aire de la fosa contiene de 19.5 a 23.5 % de oxígeno
# of f526a8f0, reviewed: false
checks-entry_oxygen-why = Menos que eso significa que otro gas ha ocupado su lugar.
# of 714cea6e, reviewed: false
checks-entry_oxygen-do = No entra nadie; siga ventilando y vuelva a medir.
# of 585e53a2, reviewed: false
checks-entry_flammable_gas-title = El aire de la fosa contiene menos de 0.5 % de metano
# of bbf37952, reviewed: false
checks-entry_flammable_gas-why = La décima parte del límite de explosión se considera peligrosa.
# of 714cea6e, reviewed: false
checks-entry_flammable_gas-do = No entra nadie; siga ventilando y vuelva a medir.
# of 40489145, reviewed: false
checks-entry_hydrogen_sulfide-title = El aire de la fosa no contiene más de 10 ppm de sulfuro de hidrógeno
# of 6e7ba03d, reviewed: false
checks-entry_hydrogen_sulfide-why = Derriba a la gente sin aviso, y el lodo agitado suelta más.
# of 714cea6e, reviewed: false
checks-entry_hydrogen_sulfide-do = No entra nadie; siga ventilando y vuelva a medir.
# of 54f4e1ca, reviewed: false
checks-entry_harness_and_watch-title = Quien entra lleva un arnés con una cuerda sostenida por dos personas que están afuera
# of fc880bba, reviewed: false
checks-entry_harness_and_watch-why = Así se puede sacar a una persona desmayada sin que nadie entre detrás de ella.
# of d09b3cb8, reviewed: false
checks-entry_harness_and_watch-do = No entra nadie hasta que estén el arnés, la cuerda y dos personas afuera.
# of 09b148ba, reviewed: false
checks-animal_test_not_relied_on-title = Nadie se fía de un animal pequeño para saber si el aire es bueno
# of 664ea828, reviewed: false
checks-animal_test_not_relied_on-why = Que un animal viva diez minutos no prueba que el aire sea bueno; solo lo prueba un medidor de gases.
# of 8228a283, reviewed: false
checks-animal_test_not_relied_on-do = Mida oxígeno, gas inflamable y sulfuro de hidrógeno con un medidor.
# of 281618a0, reviewed: false
checks-nobody_over_stirred_store-title = No hay ninguna persona ni animal en el edificio mientras se agita o vacía el depósito de purines que está debajo
# of c6eea392, reviewed: false
checks-nobody_over_stirred_store-why = Al agitar se suelta de golpe sulfuro de hidrógeno.
# of 14c07846, reviewed: false
checks-nobody_over_stirred_store-do = Desaloje el edificio, ábralo, póngase del lado de donde viene el viento y espere media hora después de agitar.
# of d66011cf, reviewed: false
checks-head_stays_above_rim-title = Nadie baja la cabeza por debajo del borde de una planta de biogás abierta
# of dc97bba7, reviewed: false
checks-head_stays_above_rim-why = El gas está justo debajo del borde, y una sola respiración puede hacer caer adentro a una persona.
# of aa2141d5, reviewed: false
checks-head_stays_above_rim-do = Manténgase de pie y derecho, y use herramientas largas.
# of e293d375, reviewed: false
checks-household_knows_no_rescue-title = Todos en la finca saben que no se debe entrar detrás de una persona que se desploma en una fosa
# of 42e62506, reviewed: false
checks-household_knows_no_rescue-why = Muchos de los muertos en fosas son personas que entraron a ayudar.
# of e3b4c339, reviewed: false
checks-household_knows_no_rescue-do = Enséñelo: no entrar detrás, jalar la cuerda, inyectar aire, llamar a rescatistas capacitados; cuelgue a la vista el número de emergencia.
# of 1e77eba8, reviewed: false
checks-load_light-title = Ninguna carga que se levanta pesa más de 16 kg
# of 36458fc3, reviewed: false
checks-load_light-why = Hasta ese peso, la mayoría de las mujeres puede levantar sin riesgo a la altura de la cintura.
# of 4c15cfed, reviewed: false
checks-load_light-do = Llene menos los baldes o reparta la carga.
# of b1c7fa04, reviewed: false
checks-load_bucket-title = Ninguna carga que se lleva a mano pesa más de 20 kg
# of 9ae95954, reviewed: false
checks-load_bucket-why = Un balde de 15 a 20 kg se puede llevar toda la mañana; más no.
# of 1c78dbf6, reviewed: false
checks-load_bucket-do = Llene menos los baldes, o use una carretilla.
# of 92303b91, reviewed: false
checks-load_most-title = Ninguna carga que se levanta pesa más de 25 kg
# of d4d99f6d, reviewed: false
checks-load_most-why = Las cargas más pesadas lesionan la espalda, incluso de hombres fuertes.
# of a6d82548, reviewed: false
checks-load_most-do = Use baldes más pequeños, una carretilla o dos personas.
# of 2ffd8fb6, reviewed: false
checks-load_extreme-title = Ninguna carga que se levanta pesa nunca más de 40 kg
# of e95fe539, reviewed: false
checks-load_extreme-why = Una carga así puede lesionar desde la primera vez que se levanta.
# of d27be320, reviewed: false
checks-load_extreme-do = No la levante; divídala o use ruedas.
# of b535312d, reviewed: false
checks-no_twisting-title = Nadie tuerce la espalda con una carga
# of d618a30a, reviewed: false
checks-no_twisting-why = Torcerse quita de 10 a 20 % de lo que se puede levantar sin riesgo.
# of 3549444b, reviewed: false
checks-no_twisting-do = Gire los pies.
# of 240c1261, reviewed: false
checks-carry_distance-title = Las cargas llenas no se llevan más de 10 m sin descanso
# of 322d800e, reviewed: false
checks-carry_distance-why = Llevarlas más lejos cansa y lesiona.
# of c29a2a5f, reviewed: false
checks-carry_distance-do = Use una carretilla, una carreta o un yugo de hombros, o acerque el montón.
# of cacaf8f5, reviewed: false
checks-children_do_not_carry-title = Los niños no acarrean estiércol ni agua para la planta
# of cd66cb9f, reviewed: false
checks-children_do_not_carry-why = Un niño no debe cargar más de la décima parte de su propio peso.
# of 63d23d71, reviewed: false
checks-children_do_not_carry-do = Que lo hagan los adultos.
# of e5c3ac1c, reviewed: false
checks-daily_mass_usual-title = Nadie mueve más de 3 t por día
# of dff73a84, reviewed: false
checks-daily_mass_usual-why = Las personas sin práctica se lesionan por la suma de muchas cargas.
# of 7a628049, reviewed: false
checks-daily_mass_usual-do = Reparta la primera carga entre más días o más personas.
# of f6482b7b, reviewed: false
checks-daily_mass_most-title = Nadie mueve más de 10 t por día en recorridos cortos
# of 043d389a, reviewed: false
checks-daily_mass_most-why = Esto es lo máximo para personas con práctica y con cargas adecuadas.
# of 00a4028c, reviewed: false
checks-daily_mass_most-do = Planifique de nuevo el trabajo con más días, más personas o una carreta.
# of 2d46e7ac, reviewed: false
checks-heat_most-title = La temperatura de globo y bulbo húmedo no pasa de 32 °C durante el trabajo pesado
# of ba94de83, reviewed: false
checks-heat_most-why = El golpe de calor mata.
# of b5c8a9cb, reviewed: false
checks-heat_most-do = Detenga el trabajo pesado hasta que esté más fresco.
# of 790c38c0, reviewed: false
checks-no_manure_from_restricted_zone-title = No llega estiércol de ninguna finca que esté dentro de una zona restringida por enfermedad
# of 88cb6df9, reviewed: false
checks-no_manure_from_restricted_zone-why = La peste porcina, la gripe aviar y la fiebre aftosa viajan con el estiércol, las ruedas y las botas.
# of 9b0bef16, reviewed: false
checks-no_manure_from_restricted_zone-do = Use solo estiércol propio, y consulte a la autoridad veterinaria.
# of 189aaa1f, reviewed: false
checks-vehicles_cleaned-title = Los vehículos y las carretillas se limpian antes de pasar de una finca a otra
# of 003c39a2, reviewed: false
checks-vehicles_cleaned-why = El estiércol en las ruedas lleva enfermedades.
# of 086a6d64, reviewed: false
checks-vehicles_cleaned-do = Lávelos y desinféctelos sobre piso duro, y no deje que esa agua entre en el biodigestor.
# of 32fadebc, reviewed: false
checks-hands_washed-title = Todos se lavan las manos con jabón después de alimentar y de trabajar con la mezcla o el digestato
# of d3742065, reviewed: false
checks-hands_washed-why = El estiércol, la mezcla y el digestato llevan gérmenes y huevos de lombrices parásitas.
# of 0cbb8693, reviewed: false
checks-hands_washed-do = Ponga jabón y agua junto a la fosa de mezcla, donde no puedan escurrir hacia ella.
# of 37f686b2, reviewed: false
checks-protective_clothing_worn-title = Se usan guantes y botas y las heridas están cubiertas
# of d7106e1d, reviewed: false
checks-protective_clothing_worn-why = Destapar desagües con las manos desnudas causó más de una infección al año por cada cinco personas.
# of 873b6d18, reviewed: false
checks-protective_clothing_worn-do = Dé a cada trabajador guantes y botas que se queden en la planta.
# of 0228d764, reviewed: false
checks-vulnerable_people_spared-title = Las mujeres embarazadas, los niños pequeños y las personas enfermas no manipulan estiércol, mezcla ni digestato
# of 0b85d979, reviewed: false
checks-vulnerable_people_spared-why = Infecciones que otros soportan hacen daño a estas personas o al niño por nacer.
# of 01e4b8ed, reviewed: false
checks-vulnerable_people_spared-do = Deje que otra persona se encargue de alimentar.
# of 85c22efd, reviewed: false
checks-latrine_retention-title = Con excretas humanas, el tiempo de retención hidráulica es de 40 días o más
# of d423b500, reviewed: false
checks-latrine_retention-why = Una estadía corta deja pasar más gérmenes, y ninguna estadía hace por sí sola seguro el digestato.
# of 30c12cab, reviewed: false
checks-latrine_retention-do = Alargue la estadía, y almacene el digestato antes de usarlo.
# of 82957a8b, reviewed: false
checks-excreta_digestate_stored-title = El digestato con excretas humanas se almacena un año antes de aplicarlo a cultivos alimenticios
# of 5e0f340a, reviewed: false
checks-excreta_digestate_stored-why = Los huevos de lombrices parásitas sobreviven a la digestión.
# of 2419c801, reviewed: false
checks-excreta_digestate_stored-do = Almacénelo un año en lugares cálidos, hasta dos años en lugares fríos, o haga compost con él a más de 50 °C durante más de una semana.
# of 529182b0, reviewed: false
checks-excreta_harvest_wait-title = Pasa por lo menos un mes desde la última aplicación de digestato con excretas humanas hasta la cosecha
# of 5c863d59, reviewed: false
checks-excreta_harvest_wait-why = El sol y el tiempo matan una parte de los gérmenes que quedan.
# of 09866a49, reviewed: false
checks-excreta_harvest_wait-do = Deje de usarlo un mes antes de la cosecha.
# of 324aba74, reviewed: false
checks-no_excreta_on_raw_crops-title = El digestato con excretas humanas nunca se aplica a cultivos que se comen crudos
# of 3c426505, reviewed: false
checks-no_excreta_on_raw_crops-why = Los gérmenes y los huevos de lombrices parásitas pasan por el biodigestor.
# of 2e430b61, reviewed: false
checks-no_excreta_on_raw_crops-do = Úselo en árboles, forraje o cultivos que se cocinan, y debajo de la tierra.
# of f4a7dc78, reviewed: false
checks-raw_crops_wait-title = Pasan por lo menos 90 días entre el digestato y la cosecha de los cultivos que se comen crudos
# of aced0493, reviewed: false
checks-raw_crops_wait-why = Los gérmenes necesitan ese tiempo para morir en el campo.
# of c66daf41, reviewed: false
checks-raw_crops_wait-do = Deje esos cultivos sin cosechar hasta entonces o cocínelos; use el digestato antes de sembrar.
# of 28355f62, reviewed: false
checks-raw_crops_in_soil_wait-title = Pasan por lo menos 120 días cuando la parte que se come cruda toca el suelo
# of 8266f040, reviewed: false
checks-raw_crops_in_soil_wait-why = Donde más tiempo viven los gérmenes es en el suelo.
# of 93b4e3cc, reviewed: false
checks-raw_crops_in_soil_wait-do = Espere, o use el digestato en otros cultivos.
# of c6a82274, reviewed: false
checks-digestate_not_sprayed-title = El digestato se lleva por surcos y no se rocía
# of cad68a96, reviewed: false
checks-digestate_not_sprayed-why = Las personas que regaron con él sin protección tuvieron un riesgo anual de diarrea de cerca de uno en cinco.
# of d6d6e780, reviewed: false
checks-digestate_not_sprayed-do = Use surcos o una regadera cerca del suelo, con botas y guantes.
# of bfce680a, reviewed: false
checks-lime_not_relied_on-title = Nadie se fía únicamente de la cal para matar los huevos de lombrices parásitas
# of 3da325de, reviewed: false
checks-lime_not_relied_on-why = Por debajo de unos 28 °C vivieron más de 70 días en cal fuerte.
# of 24eadb19, reviewed: false
checks-lime_not_relied_on-do = Use calor o un almacenamiento largo.
# of d92fb1f6, reviewed: false
checks-sludge_treated_as_infective-title = El lodo del fondo se almacena o se hace compost antes de usarlo
# of a6902115, reviewed: false
checks-sludge_treated_as_infective-why = Los huevos de lombrices parásitas y los quistes se asientan allí.
# of ec739862, reviewed: false
checks-sludge_treated_as_infective-do = Haga compost caliente con él o guárdelo un año, y manipúlelo con guantes.
# of 42c30d8d, reviewed: false
checks-household_volume-title = El biodigestor tiene el tamaño de una planta doméstica o de finca pequeña
# of e056b1d7, reviewed: false
checks-household_volume-why = Las plantas domésticas tienen de 4 a 20 m3; un número muy fuera de eso suele ser litros escritos en vez de metros cúbicos o al revés, y lo que vale para plantas sencillas no vale para plantas grandes.
# of f834da12, reviewed: false
checks-household_volume-do = Revise la unidad. Si el tamaño es correcto, haga diseñar y aprobar la planta como planta más grande o experimental.
# of 05a366b1, reviewed: false
checks-herd_covers_feed-title = El hato da lo que se alimenta al biodigestor
# of 9f208d85, reviewed: false
checks-herd_covers_feed-why = Se dice que se alimenta más de lo que dan estos animales, así que uno de los dos datos está mal o la alimentación va a faltar.
# of 7b860d93, reviewed: false
checks-herd_covers_feed-do = Pese el estiércol de un día; corrija el hato, su alojamiento o la alimentación.
# of e6a30cd7, reviewed: false
checks-feed_covers_demand-title = La alimentación disponible da el gas que se quiere
# of f6b0a886, reviewed: false
checks-feed_covers_demand-why = Un biodigestor más grande apenas saca más gas de la misma alimentación; lo que falta se quema como leña o se compra.
# of 6bfef731, reviewed: false
checks-feed_covers_demand-do = Tenga más animales o téngalos más tiempo en el establo, añada otra alimentación, o prevea menos horas de uso.
# of e86c9fec, reviewed: false
checks-stockpile_suffices-title = El estiércol propio alcanza para la primera carga
# of 168bf82e, reviewed: false
checks-stockpile_suffices-why = Un biodigestor a medio llenar no sella, y una carga que llega por partes arranca tarde.
# of 4ba5a0e7, reviewed: false
checks-stockpile_suffices-do = Empiece antes a juntar, espere, compre estiércol o agregue digestato; la respuesta enumera cuáles de estas cosas puede hacer esta finca.
# of 57ddecdd, reviewed: false
checks-first_filling_seals-title = El primer llenado cubre los extremos inferiores de la entrada y de la salida
# of 5673a369, reviewed: false
checks-first_filling_seals-why = El gas escapa por una entrada o salida cuyo extremo inferior no está bajo la mezcla, y entra aire.
# of 6d305e98, reviewed: false
checks-first_filling_seals-do = Llene más antes de cerrar la salida de gas; mida dónde terminan los extremos inferiores.
# of 357d0c21, reviewed: false
checks-first_filling_fits-title = El primer llenado deja libre el espacio de gas
# of 49637f64, reviewed: false
checks-first_filling_fits-why = La mezcla por encima del nivel normal ocupa el espacio de gas y puede llegar a la tubería de gas.
# of 8fc363b0, reviewed: false
checks-first_filling_fits-do = Cargue menos; el nivel normal está donde lo pone el plano de la estructura.
# of 56bd34d7, reviewed: false
checks-first_water_in_time-title = El agua de la primera carga se puede juntar en dos semanas
# of 7ecf644f, reviewed: false
checks-first_water_in_time-why = La carga se mezcla de una sola vez, así que su agua debe estar almacenada junto al biodigestor.
# of d09a38ec, reviewed: false
checks-first_water_in_time-do = Almacene de antemano agua de lluvia o de estanque, o alquile un tanque.
# of 67889895, reviewed: false
checks-dose_fits-title = Una alimentación es como máximo una quinta parte de la mezcla que hay en el biodigestor
# of 32aebcf4, reviewed: false
checks-dose_fits-why = Una dosis más grande empuja hacia afuera lo que se acaba de alimentar, enfría el biodigestor y puede acidificarlo.
# of 62b50c4e, reviewed: false
checks-dose_fits-do = Alimente dosis más pequeñas más seguido.
# of fba4f714, reviewed: false
checks-full_gas_pressure-title = La cúpula soporta la presión de su espacio de gas lleno
# of 27772de2, reviewed: false
checks-full_gas_pressure-why = El gas que nadie quema levanta la mezcla hasta su rebose; la cúpula soporta entonces toda la altura entre sus niveles, y por encima de su límite se agrieta o tiene fugas.
# of e9f36323, reviewed: false
checks-full_gas_pressure-do = Ensanche el tanque de compensación o baje su rebose, o construya dos cúpulas más pequeñas; haga que un ingeniero autorizado fije la presión de diseño en el plano.
# of d5427f44, reviewed: false
checks-rotation_meets_demand-title = Los biodigestores por lotes que trabajan por turnos cubren la demanda de gas todos los días
# of 7706d6ae, reviewed: false
checks-rotation_meets_demand-why = Algunos días el gas no llega a la demanda: en la época fría, o siempre que un biodigestor está abierto.
# of 278650e3, reviewed: false
checks-rotation_meets_demand-do = Construya más biodigestores o más grandes, agregue almacenamiento de gas, alimente lo que da más gas, o cocine con otra cosa en las semanas débiles; las opciones muestran hasta dónde llega cada número.
# of c0072694, reviewed: false
checks-charge_likely_starts-title = Es más probable que una carga arranque a que se acidifique o quede inactiva
# of a9a5bb81, reviewed: false
checks-charge_likely_starts-why = El modelo no encuentra gas que arda para la mayoría de las cargas razonablemente posibles; la alimentación es demasiado ácida, demasiado rica en amoníaco o demasiado fría para los microbios que trae.
# of 6d6bc3e3, reviewed: false
checks-charge_likely_starts-do = Deje en el biodigestor de una quinta a una tercera parte de mezcla vieja, mezcle con estiércol de vaca o diluya más; pruebe una carga antes de construir más biodigestores.
# of ed20733f, reviewed: false
checks-charge_surely_starts-title = Nueve de cada diez cargas arrancan
# of f9ae4c4d, reviewed: false
checks-charge_surely_starts-why = Una carga sin inóculo puede acidificarse y después dar gas pobre durante meses; con ella se detiene toda la rotación.
# of bdf5343d, reviewed: false
checks-charge_surely_starts-do = Deje una quinta parte de mezcla vieja en el biodigestor en cada recarga, y traiga mezcla de un biodigestor en funcionamiento para la primera carga.
# of 18ea247b, reviewed: false
checks-charge_mixes-title = La carga es lo bastante líquida para mezclarse
# of 1c4b6f02, reviewed: false
checks-charge_mixes-why = El gas se calcula para una mezcla que se puede mezclar, y el modelo solo se ha comparado con ese tipo de mezcla. Una carga más espesa se moja en forma despareja, arranca más tarde y da menos de lo que se dice.
# of b148874d, reviewed: false
checks-charge_mixes-do = Tome el gas indicado como lo máximo que se puede esperar; diluya más, o ponga la carga en capas con abundante mezcla vieja y mida la primera.
# of e9681dfe, reviewed: false
checks-acids_forecast-title = Los ácidos pronosticados se mantienen por debajo de la relación en que se deja de alimentar
# of a2820d90, reviewed: false
checks-acids_forecast-why = Con esta alimentación los ácidos se adelantan a los microbios que los consumen; el gas se vuelve pobre, y el biodigestor puede acidificarse y detenerse.
# of fa313ef0, reviewed: false
checks-acids_forecast-do = Alimente menos o más tarde, arranque con digestato, y mida el pH o los ácidos antes de cada aumento; deje de alimentar cuando el pH baje de 6.8.
# of e70fec78, reviewed: false
checks-feeding_without_gap-title = No pasan dos semanas sin alimentación
# of a1c5aa8d, reviewed: false
checks-feeding_without_gap-why = El gas baja día a día, y la primera alimentación grande posterior encuentra menos microbios.
# of 006a0462, reviewed: false
checks-feeding_without_gap-do = Indique la alimentación de esos días, o empiece de nuevo con una cuarta parte de la alimentación después de la interrupción.
# of b1025721, reviewed: false
checks-temperature_least-title = La mezcla está a 10 °C o más
# of c9864d35, reviewed: false
checks-temperature_least-why = Por debajo de eso el gas casi se detiene y la alimentación se vuelve ácido más tarde.
# of 03c5d747, reviewed: false
checks-temperature_least-do = Deje de alimentar hasta que haga más calor; aísle.
# of 88b2b33e, reviewed: false
checks-temperature_cool-title = La mezcla está a 15 °C o más
# of de5fb130, reviewed: false
checks-temperature_cool-why = Por debajo de eso hay poco gas.
# of cb1f205c, reviewed: false
checks-temperature_cool-do = Alimente menos, aísle, y alimente a primera hora de la tarde con mezcla calentada al sol.
# of 3877c0f1, reviewed: false
checks-temperature_usual-title = La mezcla está a 20 °C o más
# of 12f2b65a, reviewed: false
checks-temperature_usual-why = El gas aumenta con el calor hasta unos 35 °C.
# of 2c77fd94, reviewed: false
checks-temperature_usual-do = Aísle y alimente a primera hora de la tarde, cuando la mezcla preparada está más caliente.
# of e35e15ca, reviewed: false
checks-temperature_most-title = La mezcla no pasa de 40 °C
# of cc9441bb, reviewed: false
checks-temperature_most-why = Los microbios de las plantas domésticas no soportan más.
# of f2f5dca8, reviewed: false
checks-temperature_most-do = Dé sombra a la bolsa o detenga la calefacción.
# of dfcfc9b6, reviewed: false
checks-temperature_freezing-title = La mezcla está por encima del punto de congelación
# of e0d827a9, reviewed: false
checks-temperature_freezing-why = La mezcla que se congela revienta paredes, tuberías y bolsas, y obstruye la entrada y la salida.
# of e5d1024b, reviewed: false
checks-temperature_freezing-do = Revise la unidad de la temperatura. Si es correcta, no alimente nada, no deje salir presión a través del hielo, y consulte a quien construyó la planta.
# of ad95a0c5, reviewed: false
checks-slurry_freezes-title = La mezcla se mantiene muy por encima del punto de congelación en el mes más frío
# of bb829dbe, reviewed: false
checks-slurry_freezes-why = Cerca de 0 °C no hay gas, y la mezcla que se congela revienta paredes, tuberías y bolsas.
# of eebc05d9, reviewed: false
checks-slurry_freezes-do = Entierre más el biodigestor o aíslelo, o vacíelo antes de las heladas; una planta con calefacción es asunto de un ingeniero.
# of 356de4c5, reviewed: false
checks-slurry_too_hot-title = La mezcla se mantiene a 45 °C o menos en el mes más cálido
# of e5701f64, reviewed: false
checks-slurry_too_hot-why = Los microbios de las plantas domésticas mueren, y el gas y el amoníaco no siguen lo que aquí se calcula.
# of 9754846d, reviewed: false
checks-slurry_too_hot-do = Dé sombra al biodigestor o entiérrelo; revise la unidad de la temperatura.
# of dcebcbdb, reviewed: false
checks-frost-title = El mes más frío no tiene heladas
# of ded17254, reviewed: false
checks-frost-why = Las tuberías, las trampas de agua, los sellos de agua y la salida se congelan, de modo que el gas queda encerrado o un alivio no se abre.
# of a29378be, reviewed: false
checks-frost-do = Drene las trampas y tuberías antes de las heladas, entiérrelas o aíslelas, mantenga el alivio libre de hielo, y revise la salida y el manómetro todos los días.
# of 1f18fce9, reviewed: false
checks-cold_season-title = En el mes más frío hay por lo menos tres cuartas partes del gas habitual
# of 196fd1ea, reviewed: false
checks-cold_season-why = La mezcla fría da menos gas con la misma alimentación, y lo que se alimenta de más se vuelve ácido.
# of 01fa2d4f, reviewed: false
checks-cold_season-do = Alimente menos en los meses fríos, tenga otro combustible para ellos, no prometa más gas del que da el mes más frío, y aísle.
# of 23db0423, reviewed: false
checks-ph_least-title = La mezcla tiene un pH de 6.5 o más
# of 448b1a66, reviewed: false
checks-ph_least-why = Se ha vuelto ácida y el gas está a punto de detenerse.
# of 88a0d37e, reviewed: false
checks-ph_least-do = Deje de alimentar hasta que se recupere; agregue ceniza de leña o agua de cal solo despacio y como último recurso.
# of aeb983ea, reviewed: false
checks-ph_usual-title = La mezcla tiene un pH de 6.8 o más
# of 5f63901c, reviewed: false
checks-ph_usual-why = Está bajando hacia lo ácido, y el pH es lo último que se mueve.
# of 7087fef6, reviewed: false
checks-ph_usual-do = Alimente menos y busque la causa.
# of 25310028, reviewed: false
checks-ph_most-title = La mezcla tiene un pH de no más de 8
# of 59d0c41b, reviewed: false
checks-ph_most-why = Un pH mayor significa mucho amoníaco, sobre todo de la gallinaza o de la orina.
# of 6f37dcc8, reviewed: false
checks-ph_most-do = Diluya y mezcle con estiércol de vaca.
# of bbb60d10, reviewed: false
checks-carbon_to_nitrogen_least-title = La alimentación tiene una relación carbono/nitrógeno de 15 o más
# of 93456a1b, reviewed: false
checks-carbon_to_nitrogen_least-why = Por debajo de eso el amoníaco detiene a los microbios.
# of 5b5b68ac, reviewed: false
checks-carbon_to_nitrogen_least-do = Mezcle con estiércol de vaca o material vegetal picado, y use menos orina y gallinaza.
# of f1313fe2, reviewed: false
checks-carbon_to_nitrogen_usual-title = La alimentación tiene una relación carbono/nitrógeno de 20 a 30
# of 0ea11e78, reviewed: false
checks-carbon_to_nitrogen_usual-why = Allí los microbios encuentran lo que necesitan; 25 fue lo mejor a 35 °C.
# of 4bdc4440, reviewed: false
checks-carbon_to_nitrogen_usual-do = Combine alimentación húmeda y rica con alimentación seca y pobre.
# of 48fca1aa, reviewed: false
checks-carbon_to_nitrogen_most-title = La alimentación tiene una relación carbono/nitrógeno de no más de 35
# of cd06b7e2, reviewed: false
checks-carbon_to_nitrogen_most-why = Con demasiado poco nitrógeno la digestión es lenta.
# of a54f9e9d, reviewed: false
checks-carbon_to_nitrogen_most-do = Agregue orina o gallinaza, y ponga menos paja.
# of b6f3537f, reviewed: false
checks-total_ammonia_usual-title = El nitrógeno amoniacal total no pasa de 1.5 g/L
# of ae5893d7, reviewed: false
checks-total_ammonia_usual-why = Desde allí el amoníaco puede inhibir cuando el pH está por encima de alrededor de 7.5.
# of 132526f0, reviewed: false
checks-total_ammonia_usual-do = Agregue agua y estiércol de vaca.
# of d0c95008, reviewed: false
checks-total_ammonia_most-title = El nitrógeno amoniacal total no pasa de 3 g/L
# of faeaed12, reviewed: false
checks-total_ammonia_most-why = Los biodigestores que no están acostumbrados a eso se detienen.
# of 09244514, reviewed: false
checks-total_ammonia_most-do = Diluya con agua, no con líquido de la salida, y reduzca a la mitad la gallinaza y la orina.
# of e3b3a836, reviewed: false
checks-free_ammonia_usual-title = El amoníaco libre no pasa de 100 mg/L
# of 0789983b, reviewed: false
checks-free_ammonia_usual-why = El amoníaco libre es la parte que hace daño, y aumenta con el calor y el pH. Un pH que nadie midió se calcula a partir de la alimentación.
# of 6f37dcc8, reviewed: false
checks-free_ammonia_usual-do = Diluya y mezcle con estiércol de vaca.
# of 56e2ef5a, reviewed: false
checks-free_ammonia_most-title = El amoníaco libre no pasa de 250 mg/L
# of 3d7b1de4, reviewed: false
checks-free_ammonia_most-why = Un biodigestor que no está acostumbrado a eso se detiene; hasta 800 se soportó solo después de una adaptación. Un pH que nadie midió se calcula a partir de la alimentación.
# of b7f1fb33, reviewed: false
checks-free_ammonia_most-do = Reduzca ahora la gallinaza y la orina, y diluya.
# of c9f67db1, reviewed: false
checks-no_foam-title = No hay espuma en la salida ni en la tubería de gas
# of f6dc7c10, reviewed: false
checks-no_foam-why = La espuma viene de sobrecarga, grasa o medicamentos y bloquea el gas.
# of 29db0a06, reviewed: false
checks-no_foam-do = Deje de alimentar por algunos días y agite.
# of bde271c6, reviewed: false
checks-scum_most-title = La nata no tiene más de 20 cm de espesor
# of fa7648e7, reviewed: false
checks-scum_most-why = El gas sale entonces por la entrada en vez de por la tubería.
# of 1134ac3b, reviewed: false
checks-scum_most-do = Rómpala desde afuera y no use paja; si eso no da resultado, llame a un equipo capacitado y nunca se meta adentro.
# of 6c36b8b6, reviewed: false
checks-stirred_daily-title = La mezcla se agita por lo menos una vez al día
# of f7534a5b, reviewed: false
checks-stirred_daily-why = Agitar rompe la nata y lleva alimento a los microbios; dos veces es mejor.
# of 8e972d5b, reviewed: false
checks-stirred_daily-do = Agite con una vara por la entrada, o gire la campana.
# of f92e619d, reviewed: false
checks-acids_measured-title = Los ácidos volátiles son como máximo 0.4 veces la alcalinidad
# of 488d5596, reviewed: false
checks-acids_measured-why = Por encima de eso la mezcla está a punto de volverse ácida; la relación se mueve una o dos semanas antes que el pH.
# of a8049285, reviewed: false
checks-acids_measured-do = Alimente la mitad o nada hasta que baje, y busque qué cambió en la alimentación.
# of 176bc1a0, reviewed: false
checks-methane_usual-title = El biogás contiene por lo menos la mitad de metano
# of f68fc4fe, reviewed: false
checks-methane_usual-why = Con menos arde mal; se debe a una mezcla que se acidifica, a un arranque que no ha terminado o a aire.
# of 92772cc1, reviewed: false
checks-methane_usual-do = Mida el pH, pregunte qué se alimentó, y busque si hay aire en el gas antes de probar cualquier llama.
# of d9745e94, reviewed: false
checks-fed_lately-title = Se alimentó en los últimos tres días
# of 94944a89, reviewed: false
checks-fed_lately-why = El gas baja a los pocos días de la última alimentación; alimentar de manera irregular altera el biodigestor.
# of d7114d6f, reviewed: false
checks-fed_lately-do = Alimente la cantidad habitual, no lo que se dejó de alimentar.
# of 5ed94b2e, reviewed: false
checks-gas_not_below_expected-title = El gas medido está dentro de lo que da la alimentación
# of 211167fd, reviewed: false
checks-gas_not_below_expected-why = Llega menos gas al medidor de lo que da la alimentación incluso en el más pobre de estos biodigestores.
# of f78d726b, reviewed: false
checks-gas_not_below_expected-do = Busque fugas con agua jabonosa, y después revise el pH, el calor, la costra y el lodo.
# of 12149b53, reviewed: false
checks-gas_record_plausible-title = El gas medido es como máximo 1.5 veces lo que da la alimentación
# of 49f00452, reviewed: false
checks-gas_record_plausible-why = De esta alimentación no se puede obtener más, así que la alimentación o el gas están mal anotados.
# of f5fd3757, reviewed: false
checks-gas_record_plausible-do = Pese la alimentación durante una semana, y revise la unidad del medidor y si el volumen es el del día.
# of b427e77e, reviewed: false
checks-well_distance_least-title = Una planta de biogás que recibe excretas humanas está a 10 m o más de toda fuente de agua para beber
# of 5cbc586c, reviewed: false
checks-well_distance_least-why = La mezcla que se fuga lleva gérmenes de las excretas humanas al agua para beber.
# of a2986b9d, reviewed: false
checks-well_distance_least-do = Elija otro lugar, o deje de conectar la letrina; no construya a menos de 10 m del pozo.
# of 53a7a019, reviewed: false
checks-well_distance_usual-title = La planta y sus fosas de digestato están a 15 m o más de toda fuente de agua para beber
# of cb1c9d76, reviewed: false
checks-well_distance_usual-why = La mezcla o el digestato que se filtra lleva gérmenes y nitrato al pozo.
# of e867a445, reviewed: false
checks-well_distance_usual-do = Aleje la planta, o revístala, compruebe con agua que es estanca, y que el pozo de agua quede más arriba en la pendiente.
# of 50a4375c, reviewed: false
checks-well_distance_porous_ground-title = En arena, grava o roca fracturada la planta está a 30 m o más de toda fuente de agua para beber
# of fed990b6, reviewed: false
checks-well_distance_porous_ground-why = El agua corre rápido y sin filtrarse por un suelo grueso o fracturado, de modo que una fuga llega antes al pozo.
# of b1c4306a, reviewed: false
checks-well_distance_porous_ground-do = Mantenga 30 m, o haga que la autoridad del agua evalúe el suelo y el pozo antes de excavar.
# of e7442a38, reviewed: false
checks-groundwater_below_pit_least-title = El agua subterránea más alta del año queda por lo menos 1.5 m por debajo del fondo de la fosa
# of ad72ccf2, reviewed: false
checks-groundwater_below_pit_least-why = El agua subterránea alta levanta un tanque vacío, debilita su mampostería y arrastra las fugas.
# of d420b97e, reviewed: false
checks-groundwater_below_pit_least-do = Construya menos hondo y más ancho o en terreno elevado, y nunca vacíe la planta en la época de lluvias.
# of 83523ba5, reviewed: false
checks-groundwater_depth_masonry-title = Para una planta de mampostería, el agua subterránea más alta está por lo menos 4.5 m por debajo de la superficie
# of c9e64d01, reviewed: false
checks-groundwater_depth_masonry-why = La fosa de una planta doméstica de mampostería tiene unos 3 m de hondo y debe quedar 1.5 m por encima del agua.
# of 831ab7f2, reviewed: false
checks-groundwater_depth_masonry-do = Mida desde el fondo previsto de la fosa hasta el agua subterránea más alta; si es menos de 1.5 m, construya menos hondo o en otro lugar.
# of 3967dcc5, reviewed: false
checks-groundwater_out_of_pit-title = El agua subterránea no sube hasta la fosa de una planta de mampostería
# of a9f6e0e4, reviewed: false
checks-groundwater_out_of_pit-why = El agua que rodea el tanque lo hace flotar cuando está vacío y presiona sus paredes.
# of 4061b814, reviewed: false
checks-groundwater_out_of_pit-do = No excave allí sin una comprobación de flotación y un drenaje hechos por un ingeniero; elija un terreno más alto o un tipo poco profundo.
# of 6a6c822e, reviewed: false
checks-plant_outdoors-title = El biodigestor y el gasómetro están al aire libre, no dentro ni debajo de un edificio
# of 2fadb25a, reviewed: false
checks-plant_outdoors-why = El gas que se fuga se acumula en los cuartos, incluidos los establos, y puede envenenar o explotar.
# of a74d76ca, reviewed: false
checks-plant_outdoors-do = Construya la planta al aire libre; si hay una en interiores, déjela fuera de uso hasta que se traslade.
# of b4d7bf38, reviewed: false
checks-dwelling_distance_usual-title = El biodigestor y el gasómetro están a 3 m o más de toda vivienda
# of 7bed3830, reviewed: false
checks-dwelling_distance_usual-why = El gas que se fuga debe poder dispersarse al aire libre antes de llegar a un cuarto.
# of 6e127b98, reviewed: false
checks-dwelling_distance_usual-do = Aleje más la planta de la casa.
# of af5b75f1, reviewed: false
checks-dwelling_distance_bag-title = Una bolsa de gas de plástico está a 5 m o más de toda vivienda
# of a36d58e0, reviewed: false
checks-dwelling_distance_bag-why = Una bolsa puede rasgarse y soltar todo su gas de una vez.
# of f780a78b, reviewed: false
checks-dwelling_distance_bag-do = Dé más espacio a la bolsa, fuera del alcance de los niños y del fuego.
# of 1260a08f, reviewed: false
checks-kitchen_distance_pipe-title = La cocina está a no más de 30 m de la planta, o la tubería se ha calculado
# of d4677648, reviewed: false
checks-kitchen_distance_pipe-why = A más de 30 m, la tubería habitual de media pulgada o de tres cuartos puede dejar sin gas suficiente a la hornilla.
# of 441f5984, reviewed: false
checks-kitchen_distance_pipe-do = Calcule la tubería según su largo y el gas que se usa, y elija el diámetro más ancho.
# of 25319852, reviewed: false
checks-stable_distance_usual-title = El establo está a no más de 20 m de la entrada
# of 09cc5882, reviewed: false
checks-stable_distance_usual-why = El estiércol se acarrea todos los días durante años; la planta debe estar junto al establo más que junto a la cocina.
# of 762a155a, reviewed: false
checks-stable_distance_usual-do = Acerque la planta al establo, de preferencia con un canal directo a la entrada.
# of 0ff9bd2a, reviewed: false
checks-tree_distance_usual-title = Las copas de los árboles terminan a 5 m o más de la planta de biogás
# of 73de9439, reviewed: false
checks-tree_distance_usual-why = Las raíces llegan tan lejos como la copa, y la sombra enfría la mezcla.
# of eab980a8, reviewed: false
checks-tree_distance_usual-do = Cambie de lugar la planta, o recorte el árbol y ponga una barrera para raíces; mantenga 10 m hasta los árboles grandes.
# of 4301b951, reviewed: false
checks-road_distance-title = Los caminos y los pasos de vehículos están a 10 m o más
# of 43eee2b9, reviewed: false
checks-road_distance-why = El peso de las ruedas agrieta cúpulas y tuberías.
# of e7f99ce8, reviewed: false
checks-road_distance-do = Cambie de lugar la planta, o cérquela y ponga postes que detengan a los vehículos.
# of fdbe900a, reviewed: false
checks-not_flooded-title = El sitio no se inunda y no está en una línea de desagüe
# of ea3fe43d, reviewed: false
checks-not_flooded-why = El agua de inundación entra en la planta, hace flotar el tanque y esparce la mezcla.
# of ce5d3670, reviewed: false
checks-not_flooded-do = Elija un terreno más alto; levante los bordes de la entrada y la salida, y desvíe el agua de lluvia alrededor de la planta.
# of 7957c994, reviewed: false
checks-runoff_kept_away-title = El agua de techos y patios no llega a la planta ni a la tierra que la cubre
# of e7c17ab1, reviewed: false
checks-runoff_kept_away-why = El suelo mojado pierde su resistencia, y el agua fría baja la producción de gas.
# of 5f27cf17, reviewed: false
checks-runoff_kept_away-do = Lleve lejos las canaletas del techo y cave una zanja de desvío.
# of fd84ffe7, reviewed: false
checks-slope_moderate-title = El terreno no tiene más de 15 % de pendiente
# of 8ed5f42c, reviewed: false
checks-slope_moderate-why = En terreno empinado la planta puede ser empujada o puede deslizarse.
# of fbab7cec, reviewed: false
checks-slope_moderate-do = Haga una terraza y drene el sitio, y haga que lo revise un ingeniero; por encima de 30 % no construya sin obras de contención.
# of f8e0a0e0, reviewed: false
checks-soil_bears_evenly-title = El suelo es firme y soporta el peso de manera pareja
# of dd169ab1, reviewed: false
checks-soil_bears_evenly-why = La arcilla expansiva, el relleno, la turba, la arena fluyente y el terreno mitad roca se asientan de manera despareja y agrietan el tanque.
# of f4a5b4e4, reviewed: false
checks-soil_bears_evenly-do = Cave un pozo de prueba con el albañil, y elija otro lugar u otro tipo de biodigestor.
# of 7a586007, reviewed: false
checks-overflow_to_own_land-title = La salida descarga en tierra propia y utilizable de la finca
# of 7e8bf715, reviewed: false
checks-overflow_to_own_land-why = El digestato en un camino o en tierra de un vecino trae pleitos, y las promesas de llevárselo cada día no se cumplen.
# of 027ad1a7, reviewed: false
checks-overflow_to_own_land-do = Lleve la salida al campo propio, a un estanque o a fosas de compost.
# of 304e4f73, reviewed: false
checks-no_low_place_near_outlet-title = Ningún cuarto, establo o fosa está más abajo que una salida de gas o que la salida de digestato y a menos de 5 m de ella
# of 23650971, reviewed: false
checks-no_low_place_near_outlet-why = El dióxido de carbono y el sulfuro de hidrógeno son pesados y se juntan en los lugares bajos.
# of d452f95f, reviewed: false
checks-no_low_place_near_outlet-do = Cambie de lugar la salida o rellene el hueco.
# of 20b9ad4b, reviewed: false
checks-pipe_slope-title = La tubería de gas tiene una caída de por lo menos 1 % hacia la trampa o hacia la planta
# of 2ba9bcb8, reviewed: false
checks-pipe_slope-why = El agua se condensa en la tubería y bloquea el gas donde no puede escurrir.
# of 63637573, reviewed: false
checks-pipe_slope-do = Vuelva a tender la tubería con una caída pareja.
# of 5297c461, reviewed: false
checks-pipe_low_points_trapped-title = Cada punto bajo de la tubería de gas tiene una trampa de agua
# of a51da13b, reviewed: false
checks-pipe_low_points_trapped-why = El agua condensada cierra la tubería en cada hundimiento.
# of 8c23d57c, reviewed: false
checks-pipe_low_points_trapped-do = Levante el hundimiento para que la tubería drene, o ponga allí una trampa en una caja enterrada con tapa.
# of 0f548621, reviewed: false
checks-pipe_burial-title = La tubería de gas enterrada está a 0.3 m o más de profundidad
# of 6efdd518, reviewed: false
checks-pipe_burial-why = A una tubería poco enterrada la alcanzan los azadones, las pezuñas y la helada.
# of dcaf39b9, reviewed: false
checks-pipe_burial-do = Entiérrela más hondo, con cinta de aviso encima, y por debajo de la profundidad de la helada donde el suelo se congela.
# of e6cf9325, reviewed: false
checks-no_hose_as_fixed_line-title = La línea fija de gas es de tubería rígida, no de manguera
# of f8650769, reviewed: false
checks-no_hose_as_fixed_line-why = La manguera se corta, se agrieta y la roen las ratas.
# of a53b7c15, reviewed: false
checks-no_hose_as_fixed_line-do = Tienda tubería rígida; use manguera para gas solo en el último metro hasta el aparato.
# of 4cb8fdd6, reviewed: false
checks-plant_valve_fitted-title = Hay una válvula principal en la planta
# of abf19e75, reviewed: false
checks-plant_valve_fitted-why = Si se escapa gas en interiores, hay que cerrarlo desde afuera, sin entrar en el cuarto.
# of 233b9bda, reviewed: false
checks-plant_valve_fitted-do = Instale una válvula de gas en la planta antes de usar gas alguno.
# of 59f81129, reviewed: false
checks-appliance_valves_fitted-title = Cada aparato tiene su propia válvula
# of c6b3270b, reviewed: false
checks-appliance_valves_fitted-why = El gas sigue saliendo hacia el cuarto desde un aparato que no se puede cerrar.
# of 50de08e5, reviewed: false
checks-appliance_valves_fitted-do = Instale una válvula antes de cada hornilla y lámpara.
# of e82d37b2, reviewed: false
checks-openings_fenced-title = Ni los niños ni los animales pueden caer en ninguna fosa o abertura
# of 89c7d0d3, reviewed: false
checks-openings_fenced-why = La gente se ahoga o cae envenenada por el gas en las fosas abiertas de purines o digestato.
# of a7041da3, reviewed: false
checks-openings_fenced-do = Ponga hoy tapas fuertes en todas las aberturas o cérquelas.
# of 64a4666e, reviewed: false
checks-inlet_covered-title = La entrada tiene tapa
# of fe9dd43e, reviewed: false
checks-inlet_covered-why = Una entrada abierta deja entrar la lluvia y deja que caigan adentro niños, animales y piedras.
# of 47c34989, reviewed: false
checks-inlet_covered-do = Haga una tapa que un niño no pueda levantar y ciérrela después de cada alimentación.
# of e8807510, reviewed: false
checks-overflow_guarded-title = La fosa de salida está tapada o tiene baranda
# of c8025690, reviewed: false
checks-overflow_guarded-why = La salida es honda y despide gas; las personas que caen adentro no salen.
# of 3c3525b7, reviewed: false
checks-overflow_guarded-do = Póngale losas encima o cérquela antes de llenar la planta.
# of 7fccd0b4, reviewed: false
checks-water_tightness_not_failed-title = El biodigestor no ha fallado su prueba de agua
# of a01d00d3, reviewed: false
checks-water_tightness_not_failed-why = A una fuga bajo la mezcla no se puede llegar una vez lleno el biodigestor, y contamina el suelo.
# of 0085825c, reviewed: false
checks-water_tightness_not_failed-do = No llene. Encuentre y repare la grieta, deje remojar un día y vuelva a probar.
# of aabe479e, reviewed: false
checks-water_tightness_done-title = El biodigestor se ha probado con agua antes de llenarlo
# of 6cfc7303, reviewed: false
checks-water_tightness_done-why = Sin la prueba, una fuga aparece solo cuando ya hay que vaciar de nuevo el biodigestor.
# of df011a11, reviewed: false
checks-water_tightness_done-do = Llene con agua, deje remojar un día, complete hasta una marca y revise después de otro día. Solo donde el agua es demasiado escasa se puede omitir, asumiendo ese riesgo.
# of f7fe1af9, reviewed: false
checks-water_test_loss-title = En la prueba de agua el biodigestor pierde menos de 2 % de su volumen en un día
# of 1dad6d7a, reviewed: false
checks-water_test_loss-why = Una pérdida mayor significa una fuga y no solo remojo.
# of 605ab71b, reviewed: false
checks-water_test_loss-do = Repárelo y vuelva a probar antes de llenar.
# of c0ba6188, reviewed: false
checks-gas_tightness_passed-title = El espacio de gas ha pasado su prueba de hermeticidad
# of d9535167, reviewed: false
checks-gas_tightness_passed-why = Una cúpula o bolsa con fuga pierde gas donde vive gente, y bajo la mezcla no se puede reparar.
# of 081b0d15, reviewed: false
checks-gas_tightness_passed-do = No llene. Suba la presión con agua o aire, espere 24 horas, vuelva a recubrir todo lo que tenga fuga, y repita hasta que se mantenga.
# of 95e94b3a, reviewed: false
checks-gas_test_drop-title = En la prueba de gas la presión no baja más de 3 % en 24 horas
# of 063a1831, reviewed: false
checks-gas_test_drop-why = Una baja mayor significa una fuga en la cúpula, la tapa o la tubería.
# of 5d60db0d, reviewed: false
checks-gas_test_drop-do = Vuelva a recubrir la cúpula, asiente de nuevo la tapa y repita la prueba.
# of aeb092ad, reviewed: false
checks-gas_test_temperature_steady-title = Entre las lecturas de la prueba de gas la temperatura no difiere en más de 0.5 K
# of 5b2956e7, reviewed: false
checks-gas_test_temperature_steady-why = Un grado mueve la presión más que todo el margen permitido.
# of d87b8a61, reviewed: false
checks-gas_test_temperature_steady-do = Lea de amanecer a amanecer a la sombra y anote la temperatura.
# of 45eb49ac, reviewed: false
checks-cured_least-title = La mampostería y el revoque han curado por lo menos 7 días antes del llenado
# of a1dcb269, reviewed: false
checks-cured_least-why = El concreto joven se agrieta bajo carga.
# of 7ef375e6, reviewed: false
checks-cured_least-do = Espere, y mientras tanto mantenga todo mojado y a la sombra.
# of 0eb25a59, reviewed: false
checks-cured_usual-title = La mampostería y el revoque han curado 14 días antes del llenado
# of 79a50d79, reviewed: false
checks-cured_usual-why = Lo usual es de dos a tres semanas de curado húmedo.
# of 07cb57b4, reviewed: false
checks-cured_usual-do = Espere hasta que pasen dos semanas, y mójelo todos los días.
# of 201c6077, reviewed: false
checks-backfilled_before_pressure-title = La tierra está rellenada y apisonada alrededor de la pared y sobre la cúpula antes de cualquier presión
# of aa2ee33e, reviewed: false
checks-backfilled_before_pressure-why = El peso de la tierra sujeta la cúpula contra el gas.
# of d6a187be, reviewed: false
checks-backfilled_before_pressure-do = Rellene en capas apisonadas de 15 a 30 cm antes de probar o llenar.
# of b7ef045b, reviewed: false
checks-dome_cover_depth-title = Hay por lo menos 0.4 m de tierra sobre la cúpula
# of cc7ad93e, reviewed: false
checks-dome_cover_depth-why = Menos tierra no pesa más que lo que empuja la presión del gas.
# of 8b2ec097, reviewed: false
checks-dome_cover_depth-do = Agregue tierra antes de encerrar el gas.
# of df4bc6c9, reviewed: false
checks-gas_space_coated-title = El espacio de gas de una cúpula de mampostería tiene un recubrimiento hermético al gas
# of 7bdaf61c, reviewed: false
checks-gas_space_coated-why = El ladrillo, el concreto y el revoque dejan pasar el gas.
# of 0c3c4a72, reviewed: false
checks-gas_space_coated-do = Haga recubrir el interior con cera, látex o pintura sintética antes del llenado, por un albañil que trabaje con aire en movimiento.
# of d2b635bc, reviewed: false
checks-no_cracks-title = La cúpula no muestra grietas
# of 368ba189, reviewed: false
checks-no_cracks-why = El gas se escapa por las grietas.
# of f2e21f13, reviewed: false
checks-no_cracks-do = Haga que el albañil abra la grieta, la rellene con mortero rico en capas y le pase capas de sellado con brocha.
# of 4d91218b, reviewed: false
checks-not_emptied_at_high_groundwater-title = La planta no se vacía mientras el agua subterránea está por encima de su fondo
# of cea0fd95, reviewed: false
checks-not_emptied_at_high_groundwater-why = Un tanque vacío flota hacia arriba o se derrumba hacia adentro.
# of 48dd37cc, reviewed: false
checks-not_emptied_at_high_groundwater-do = Vacíe en la época seca, o baje primero el agua subterránea.
# of a229c8ca, reviewed: false
checks-vent_open_while_emptying-title = El venteo de gas está abierto mientras se saca mezcla
# of 9f89c3fd, reviewed: false
checks-vent_open_while_emptying-why = Sin él, la succión hace entrar aire y puede agrietar la cúpula.
# of 3ffcb96b, reviewed: false
checks-vent_open_while_emptying-do = Deje que el manómetro baje a cero con todas las llamas apagadas, abra el venteo y saque la mezcla despacio.
# of 4722209a, reviewed: false
checks-pit_walls_supported-title = Las paredes de una fosa de más de 1.2 m de hondo tienen talud o están apuntaladas
# of af518c65, reviewed: false
checks-pit_walls_supported-why = Las paredes de tierra caen sin aviso y sepultan a la gente.
# of 09425793, reviewed: false
checks-pit_walls_supported-do = Deje de excavar; haga talud en las paredes o apuntálelas, mantenga la tierra sacada y a la gente lejos del borde, y siga el reglamento local.
# of d330218e, reviewed: false
checks-built_by_trained_mason-title = Un albañil o fabricante capacitado construye la planta según un plano comprobado
# of 287818e2, reviewed: false
checks-built_by_trained_mason-why = La mala construcción es una causa principal de plantas fracasadas, y una cúpula agrietada es peligrosa.
# of fc4ce550, reviewed: false
checks-built_by_trained_mason-do = Contrate a un albañil capacitado, y a un ingeniero autorizado donde lo pida el reglamento.
# of 57399def, reviewed: false
checks-users_trained-title = A los usuarios se les enseñó la mezcla, las válvulas, la prueba de fugas, la trampa, la llama y la regla de nunca entrar
# of c79afc5e, reviewed: false
checks-users_trained-why = Los errores de uso son la razón más común por la que las plantas se detienen.
# of 45248d48, reviewed: false
checks-users_trained-do = Capacite a todos los que la van a manejar antes de entregarla.
# of dec80581, reviewed: false
checks-level_above_port-title = La mezcla está por lo menos 0.2 m por encima de la parte superior de las bocas de entrada y salida
# of 7c229dbf, reviewed: false
checks-level_above_port-why = Con un nivel más bajo el gas se escapa por la boca.
# of 6827cc63, reviewed: false
checks-level_above_port-do = Complete con agua o mezcla, y no saque más de lo que entra.
# of f8f95dfb, reviewed: false
checks-first_fill_whole-title = La primera carga llena el biodigestor hasta su nivel de trabajo de una sola vez
# of c81f1aa6, reviewed: false
checks-first_fill_whole-why = Un arranque lleno da gas antes; una mezcla más líquida es mejor que un biodigestor medio vacío.
# of 98792e74, reviewed: false
checks-first_fill_whole-do = Junte más estiércol, o complete con agua dentro de lo razonable, y rellene pronto.
# of fe5b2f35, reviewed: false
checks-first_fill_least-title = La primera carga llena por lo menos la mitad del biodigestor
# of e1f1f398, reviewed: false
checks-first_fill_least-why = La entrada y la salida deben terminar por debajo de la mezcla, o el gas se escapa por ellas.
# of 169c8547, reviewed: false
checks-first_fill_least-do = Espere y junte más estiércol antes de llenar.
# of 6e6282d2, reviewed: false
checks-heap_age_month-title = El estiércol más viejo de la primera carga no tiene más de un mes
# of cd7bf45f, reviewed: false
checks-heap_age_month-why = El estiércol tapado se conserva alrededor de un mes y después ha perdido mucho de su gas.
# of 0d150cd5, reviewed: false
checks-heap_age_month-do = Empiece más tarde a juntar, use lo más viejo para el campo y mantenga tapado el montón.
# of f1f1d310, reviewed: false
checks-heap_age_uncovered-title = El estiércol que está destapado no tiene más de 10 días
# of 611abaa3, reviewed: false
checks-heap_age_uncovered-why = El sol y la lluvia le quitan la fuerza, y el estiércol húmedo empieza a digerirse en el montón.
# of ca331be5, reviewed: false
checks-heap_age_uncovered-do = Cubra el montón con una lona y manténgalo a la sombra y seco por encima.
# of 7c6e2457, reviewed: false
checks-starter_for_other_feed-title = La alimentación que no arranca por sí sola recibe por lo menos 10 % de inóculo
# of fd50336e, reviewed: false
checks-starter_for_other_feed-why = Solo el estiércol de vaca y de búfalo trae suficientes microbios; otra alimentación se vuelve ácida sin ellos.
# of 5f86ee6f, reviewed: false
checks-starter_for_other_feed-do = Traiga mezcla de una planta en funcionamiento, o arranque solo con estiércol fresco de vaca.
# of 9ad1d40d, reviewed: false
checks-no_excreta_without_starter-title = Las excretas humanas no son parte de una primera carga que tiene poco inóculo
# of 3b733d81, reviewed: false
checks-no_excreta_without_starter-why = Dan amoníaco antes de que los microbios lo puedan soportar, y llevan enfermedades mientras se manipulan.
# of 96f2e583, reviewed: false
checks-no_excreta_without_starter-do = Arranque con estiércol de vaca y conecte la letrina una vez que el gas arda.
# of c710aac8, reviewed: false
checks-no_poultry_start_without_starter-title = La gallinaza es como máximo una quinta parte de una primera carga que tiene poco inóculo
# of b9dadaab, reviewed: false
checks-no_poultry_start_without_starter-why = Su amoníaco detiene un biodigestor joven.
# of 1a1f9421, reviewed: false
checks-no_poultry_start_without_starter-do = Arranque con estiércol de vaca y agregue después la gallinaza paso a paso.
# of 219d644d, reviewed: false
checks-first_charge_carbon_to_nitrogen-title = La primera carga tiene una relación carbono/nitrógeno de no más de 30
# of d99aed41, reviewed: false
checks-first_charge_carbon_to_nitrogen-why = Con demasiado poco nitrógeno los microbios se multiplican despacio.
# of 1b33d730, reviewed: false
checks-first_charge_carbon_to_nitrogen-do = Agregue estiércol o algo de orina, y ponga menos paja.
# of c7dabe9f, reviewed: false
checks-no_feed_before_gas-title = No se agrega nada después de la primera carga hasta que el gas arda de manera estable
# of 0da1d26d, reviewed: false
checks-no_feed_before_gas-why = Alimentar antes de tiempo acidifica la mezcla.
# of e24ab443, reviewed: false
checks-no_feed_before_gas-do = Espere, y empiece con alimentaciones pequeñas cuando el gas arda.
# of 31e1d1b1, reviewed: false
checks-slurry_total_solids_most-title = La mezcla preparada no tiene más de 12 % de sólidos totales
# of 08361a5d, reviewed: false
checks-slurry_total_solids_most-why = Una mezcla espesa forma ácido y nata y no fluye.
# of 569fce2b, reviewed: false
checks-slurry_total_solids_most-do = Agregue agua u orina hasta que un palo pasado por ella no deje surco.
# of af0948fb, reviewed: false
checks-slurry_total_solids_least-title = La mezcla preparada tiene por lo menos 4 % de sólidos totales
# of 0155a35a, reviewed: false
checks-slurry_total_solids_least-why = Una mezcla muy líquida llena de agua el biodigestor, pasa de largo y da poco gas.
# of e90e2785, reviewed: false
checks-slurry_total_solids_least-do = Use menos agua y no deje entrar lluvia ni agua de lavado.
# of 2761e31c, reviewed: false
checks-slurry_total_solids_usual-title = La mezcla preparada tiene de 5 a 10 % de sólidos totales
# of c162c1fe, reviewed: false
checks-slurry_total_solids_usual-why = En este rango fluye, se mezcla y da la mayor cantidad de gas para su volumen.
# of e51374d5, reviewed: false
checks-slurry_total_solids_usual-do = Cambie el agua de a un balde por vez.
# of da88a6e8, reviewed: false
checks-water_enough-title = Hay cada día tanta agua como necesita la alimentación
# of 8df8c6d0, reviewed: false
checks-water_enough-why = Alimentar espeso por falta de agua es una de las principales causas de fracaso.
# of 9f921d72, reviewed: false
checks-water_enough-do = Use orina y agua de lavado sin jabón, devuelva parte del líquido de la salida, o construya más pequeño o para una alimentación más seca.
# of 7731fea9, reviewed: false
checks-water_half-title = Hay por lo menos la mitad del agua que necesita la alimentación
# of 228c5fc5, reviewed: false
checks-water_half-why = Con menos de la mitad, una planta de este tipo no se puede manejar.
# of 4990e524, reviewed: false
checks-water_half-do = No construya hasta que se encuentre agua, por ejemplo un tanque de lluvia, o elija un biodigestor seco por lotes.
# of 2f3e6340, reviewed: false
checks-recycled_liquid_share-title = No más de la mitad del líquido de mezcla se devuelve de la salida
# of e6ca1caf, reviewed: false
checks-recycled_liquid_share-why = La sal y el amoníaco se duplican cuando se devuelve la mitad, y más allá de eso aumentan rápido.
# of f3f5e271, reviewed: false
checks-recycled_liquid_share-do = Agregue agua fresca.
# of f4aa28e4, reviewed: false
checks-rain_kept_out-title = La lluvia y el agua de descarga no corren hacia la entrada ni la salida
# of 5f73912b, reviewed: false
checks-rain_kept_out-why = Diluyen y enfrían la mezcla y arrastran afuera a los microbios.
# of 7320f31e, reviewed: false
checks-rain_kept_out-do = Tape las aberturas y cave una zanja.
# of dfbe27a4, reviewed: false
checks-toilet_flush-title = Un inodoro conectado se descarga con no más de 1 litro
# of f66ecce7, reviewed: false
checks-toilet_flush-why = Un tanque de descarga ahoga el biodigestor.
# of 63afd1fb, reviewed: false
checks-toilet_flush-do = Use una taza de descarga por vertido a mano.
# of 1abb56a4, reviewed: false
checks-no_carbide-title = No entra carburo de calcio en el biodigestor
# of 62618b1f, reviewed: false
checks-no_carbide-why = Con agua da acetileno, que explota.
# of d3d02e40, reviewed: false
checks-no_carbide-do = Manténgalo lejos del estiércol de la finca; si entró algo, apague todas las llamas y manténgase lejos.
# of aaa88cc9, reviewed: false
checks-no_carcass-title = No entran animales muertos ni desechos de matanza en el biodigestor
# of 91c2587e, reviewed: false
checks-no_carcass-why = Las enfermedades pasan por un biodigestor doméstico, y la ley restringe esos desechos.
# of 2a29b535, reviewed: false
checks-no_carcass-do = Entiérrelos o hágalos compost como lo dice la ley veterinaria.
# of adcd9cc8, reviewed: false
checks-no_poisons-title = No entra en la alimentación ningún plaguicida, desinfectante, desecho de metal, fertilizante ni planta venenosa
# of 6338630e, reviewed: false
checks-no_poisons-why = Matan a los microbios, y el gas se detiene por semanas.
# of a9e13e0f, reviewed: false
checks-no_poisons-do = Lleve a otro lado el agua de baños antiparasitarios y de lavado durante 2 a 3 días, y no use plantas fumigadas, urea, ajo ni hojas de durazno.
# of 596fc011, reviewed: false
checks-no_antibiotics-title = No entra en la alimentación estiércol de animales tratados con antibióticos
# of db78ddbd, reviewed: false
checks-no_antibiotics-why = Los antibióticos en el estiércol detienen a los microbios.
# of a536805c, reviewed: false
checks-no_antibiotics-do = Haga compost con ese estiércol hasta que pase una semana o más después del tratamiento.
# of dc7c8372, reviewed: false
checks-medicine_withdrawn-title = El último tratamiento con antibiótico o contra lombrices fue hace por lo menos 7 días
# of 45314432, reviewed: false
checks-medicine_withdrawn-why = El medicamento sale con el estiércol durante días.
# of 6a8e7fab, reviewed: false
checks-medicine_withdrawn-do = Mientras tanto haga compost con ese estiércol; espere 14 días después de tratar a todo el hato.
# of a328d851, reviewed: false
checks-no_cyanide_plants-title = La cáscara fresca de yuca, los brotes de sorgo y plantas parecidas se marchitaron o remojaron antes de alimentarlos
# of 4eb108b6, reviewed: false
checks-no_cyanide_plants-why = Las partes frescas sueltan cianuro, que hace daño a la gente que las pica y a los microbios.
# of 82ed99a5, reviewed: false
checks-no_cyanide_plants-do = Déjelos marchitar o fermentar al aire libre y empiece con poco.
# of 87866bff, reviewed: false
checks-no_grit-title = No hay tierra, arena, piedras, huesos ni harina de huesos en la alimentación
# of 862bddf7, reviewed: false
checks-no_grit-why = Se hunden y llenan el biodigestor hasta que hay que vaciarlo.
# of 5c009730, reviewed: false
checks-no_grit-do = Recoja el estiércol de un piso duro, deje que la arena se asiente en la fosa de mezcla y deje allí lo último.
# of 6134af5c, reviewed: false
checks-no_foreign_matter-title = No hay plástico, madera ni plumas en la alimentación
# of b67b6fa6, reviewed: false
checks-no_foreign_matter-why = No se digieren; flotan y tapan las tuberías.
# of 5cf394c1, reviewed: false
checks-no_foreign_matter-do = Sáquelos antes de mezclar.
# of c791955b, reviewed: false
checks-no_sharp_things-title = No hay metal ni vidrio en la alimentación
# of b9f2d2b1, reviewed: false
checks-no_sharp_things-why = Las cosas cortantes cortan las manos y perforan las bolsas.
# of ca4d0cb1, reviewed: false
checks-no_sharp_things-do = Sáquelas con una horqueta y use guantes.
# of 03bb8ab0, reviewed: false
checks-bedding_straw_little-title = La paja de cama se mantiene fuera de la alimentación
# of d63a69d8, reviewed: false
checks-bedding_straw_little-why = La paja larga flota, forma una costra y tapa la entrada y la salida.
# of 382f5776, reviewed: false
checks-bedding_straw_little-do = Sáquela con rastrillo, o píquela a 1 a 4 cm y déjela pudrir primero.
# of 6c1f8ab5, reviewed: false
checks-no_oil-title = No entra aceite, grasa ni combustible en la alimentación
# of 913a7370, reviewed: false
checks-no_oil-why = Las películas de aceite y los ácidos grasos detienen a los microbios y hacen espuma.
# of 760868bd, reviewed: false
checks-no_oil-do = Manténgalos afuera.
# of 1418a386, reviewed: false
checks-no_soap-title = No entra jabón ni agua de lavado en la alimentación
# of 4eb380ce, reviewed: false
checks-no_soap-why = El jabón daña a los microbios y hace espuma.
# of 80bc2a30, reviewed: false
checks-no_soap-do = Lleve el agua de lavado al huerto.
# of 8ca6a076, reviewed: false
checks-particle_length_usual-title = El material vegetal está picado a 1 a 4 cm
# of a4a315ba, reviewed: false
checks-particle_length_usual-why = Los trozos cortos se digieren y fluyen.
# of 389cf358, reviewed: false
checks-particle_length_usual-do = Píquelo, y déjelo pudrir algunos días.
# of 6c03ec03, reviewed: false
checks-crop_residue_more-title = Los residuos de cultivos no son más de 25 % de los sólidos que se alimentan
# of 936a2170, reviewed: false
checks-crop_residue_more-why = Una cantidad mayor flota en un biodigestor sin agitación.
# of b4aa2589, reviewed: false
checks-crop_residue_more-do = Píquelos y déjelos pudrir primero, agite todos los días, o use menos.
# of 6ebe26a5, reviewed: false
checks-crop_residue_most-title = Los residuos de cultivos no son más de 40 % de los sólidos que se alimentan en un biodigestor sin agitación
# of 48ffe0da, reviewed: false
checks-crop_residue_most-why = La costra cierra el biodigestor y hay que sacarla cavando.
# of 9334cf72, reviewed: false
checks-crop_residue_most-do = Digiéralos en un tanque por lotes, o hágalos compost.
# of 3d571357, reviewed: false
checks-poultry_share_usual-title = La gallinaza es alrededor de una quinta parte del estiércol mezclado
# of 7bc9a09a, reviewed: false
checks-poultry_share_usual-why = Una parte en cinco dio el mejor rendimiento con estiércol de vaca.
# of 4514d5bf, reviewed: false
checks-poultry_share_usual-do = Mezcle con más estiércol de vaca.
# of c9e61a12, reviewed: false
checks-poultry_share_most-title = La gallinaza no es más de la mitad de la alimentación
# of 092ba5e0, reviewed: false
checks-poultry_share_most-why = Sin dilución y sin una adaptación lenta, el amoníaco detiene el gas.
# of d9288cde, reviewed: false
checks-poultry_share_most-do = Redúzcala por debajo de la mitad, diluya bien, y auméntela despacio a lo largo de meses.
# of ab370d2c, reviewed: false
checks-acid_feed_share-title = La fruta, el suero de leche, el ensilado y los restos de comida no son más de 25 % de los sólidos volátiles que se alimentan
# of 30e7d00f, reviewed: false
checks-acid_feed_share-why = Se acidifican pronto, y con ellos también la mezcla.
# of bc9d7365, reviewed: false
checks-acid_feed_share-do = Mezcle con estiércol y aumente despacio la proporción.
# of aa530977, reviewed: false
checks-feeding_daily-title = La planta se alimenta todos los días
# of 7e4294aa, reviewed: false
checks-feeding_daily-why = Una alimentación pareja da una llama pareja; las plantas examinadas pasaban hambre y después recibían de más.
# of b1ee787a, reviewed: false
checks-feeding_daily-do = Alimente todos los días a la misma hora.
# of 50ecdcd2, reviewed: false
checks-feeding_three_days-title = La planta se alimenta por lo menos una vez cada tres días
# of 24a7af1c, reviewed: false
checks-feeding_three_days-why = El gas sube y baja, y las dosis grandes traen ácido.
# of b35714e9, reviewed: false
checks-feeding_three_days-do = Alimente cantidades más pequeñas más seguido.
# of 04ba761e, reviewed: false
checks-feeding_weekly-title = La planta se alimenta por lo menos una vez por semana
# of af9b675c, reviewed: false
checks-feeding_weekly-why = Con más de una semana entre alimentaciones, en el oficio ya no se habla de alimentación regular.
# of 1266fd4c, reviewed: false
checks-feeding_weekly-do = Divida la alimentación en porciones diarias o de dos días.
# of bd58d1a4, reviewed: false
checks-feeding_fortnight-title = La planta se alimenta más seguido que una vez cada dos semanas
# of 430a118e, reviewed: false
checks-feeding_fortnight-why = Con dos semanas trabaja más como un biodigestor por lotes, con una larga interrupción del gas.
# of 2897d362, reviewed: false
checks-feeding_fortnight-do = Alimente más seguido, o planifíquela como biodigestor por lotes con un segundo que se turne con él.
# of d2ce10b6, reviewed: false
checks-feed_increase_slow-title = La alimentación diaria no aumenta más de 25 % en una semana
# of 2beb9fbe, reviewed: false
checks-feed_increase_slow-why = Los microbios se adaptan despacio.
# of 6dd1347f, reviewed: false
checks-feed_increase_slow-do = Aumente la alimentación por pasos a lo largo de uno o dos tiempos de retención.
# of dfdaab2a, reviewed: false
checks-loading_simple-title = La carga orgánica no pasa de 1.5 kg/m3/d
# of cc5b63f6, reviewed: false
checks-loading_simple-why = Ese es el tope para una planta de finca sencilla; la sobrecarga se muestra en un pH que baja.
# of df0421a4, reviewed: false
checks-loading_simple-do = Alimente menos, o construya más grande.
# of a5416d57, reviewed: false
checks-loading_most-title = La carga orgánica está por debajo de 2.5 kg/m3/d
# of 7e741f3a, reviewed: false
checks-loading_most-why = Hasta 2.4 se soportó por encima de 20 °C en una planta bien arrancada; más allá es probable que se acidifique.
# of d30d42e9, reviewed: false
checks-loading_most-do = Reduzca ahora la alimentación a la mitad y auméntela de nuevo por pasos.
# of d64e997f, reviewed: false
checks-loading_cold-title = Por debajo de 18 °C la carga orgánica no pasa de 0.8 kg/m3/d
# of 53c782c3, reviewed: false
checks-loading_cold-why = Los microbios fríos comen despacio, y lo que dejan se vuelve ácido.
# of 68e80e69, reviewed: false
checks-loading_cold-do = Alimente menos en la época fría o caliente la planta.
# of dbc97f24, reviewed: false
checks-retention_least-title = El tiempo de retención hidráulica es de 30 días o más
# of 5769a48e, reviewed: false
checks-retention_least-why = Una estadía más corta arrastra afuera a los microbios y deja vivos más gérmenes.
# of 70ec6f10, reviewed: false
checks-retention_least-do = Alimente menos mezcla, use menos agua, o construya más grande.
# of 0769464e, reviewed: false
checks-retention_usual-title = El tiempo de retención hidráulica es de 40 días o más
# of 942ca170, reviewed: false
checks-retention_usual-why = Las plantas sencillas sin calefacción deben tener 40 días, y de 60 a 80 son comunes.
# of 340de15e, reviewed: false
checks-retention_usual-do = Alimente un poco menos, o construya el tamaño siguiente.
# of f49dc52e, reviewed: false
checks-retention_below_25-title = Por debajo de 25 °C el tiempo de retención hidráulica es de 40 días o más
# of 96f968e4, reviewed: false
checks-retention_below_25-why = La digestión es más lenta en una mezcla más fría.
# of add3b6e5, reviewed: false
checks-retention_below_25-do = Construya más grande o alimente menos.
# of a1c0f391, reviewed: false
checks-retention_below_20-title = Por debajo de 20 °C el tiempo de retención hidráulica es de 60 días o más
# of bff9731a, reviewed: false
checks-retention_below_20-why = Las plantas de zonas altas y frías se construyen para unos 70 días.
# of c3f8f01e, reviewed: false
checks-retention_below_20-do = Construya más grande, alimente menos, o aísle.
# of 4d88b4fe, reviewed: false
checks-retention_below_15-title = Por debajo de 15 °C el tiempo de retención hidráulica es de 100 días o más
# of b9f8764e, reviewed: false
checks-retention_below_15-why = La digestión en frío toma más de cien días.
# of 66c09b17, reviewed: false
checks-retention_below_15-do = Aísle o cubra la planta, o no cuente con su gas.
# of c19f5ddc, reviewed: false
checks-retention_most-title = El tiempo de retención hidráulica no pasa de 120 días
# of c93d5192, reviewed: false
checks-retention_most-why = Una estadía más larga agrega poco gas, así que la planta es más grande de lo que pide su alimentación.
# of 75556c08, reviewed: false
checks-retention_most-do = Junte más estiércol, o construya más pequeño.
# of 15f3bcce, reviewed: false
checks-fed_share_least-title = La planta recibe por lo menos la mitad de su alimentación de diseño
# of 66c294be, reviewed: false
checks-fed_share_least-why = La mayoría de las plantas domésticas que decepcionan pasan hambre.
# of f5c7e917, reviewed: false
checks-fed_share_least-do = Junte más estiércol, encierre a los animales de noche, o espere menos gas.
# of a63e0053, reviewed: false
checks-fed_share_usual-title = La planta recibe por lo menos 80 % de su alimentación de diseño
# of 4f9079cd, reviewed: false
checks-fed_share_usual-why = El gas baja con la alimentación.
# of 68528bb1, reviewed: false
checks-fed_share_usual-do = Junte más estiércol.
# of b7f808aa, reviewed: false
checks-total_volume_possible_least-title = El volumen total es al menos la mitad del menor que se construye de este tipo
# of d425c651, reviewed: false
checks-total_volume_possible_least-why = Nadie lo construye tan pequeño, así que el número o su unidad están mal.
# of 6ce3b962, reviewed: false
checks-total_volume_possible_least-do = Revise la unidad, luego el punto decimal; busque el tamaño en el plano.
# of 1b12a8c7, reviewed: false
checks-total_volume_possible_most-title = El volumen total es a lo sumo el doble del mayor que se construye de este tipo
# of 102a1048, reviewed: false
checks-total_volume_possible_most-why = Nadie lo construye tan grande; litros escritos en lugar de metros cúbicos es el error habitual.
# of 6ce3b962, reviewed: false
checks-total_volume_possible_most-do = Revise la unidad, luego el punto decimal; busque el tamaño en el plano.
# of a12e3662, reviewed: false
checks-gas_storage_possible-title = El depósito de gas es de un tercio a tres veces lo usual para este tamaño
# of 9fd8e258, reviewed: false
checks-gas_storage_possible-why = No concuerda con el volumen total, así que uno de los dos está mal.
# of 26a199ce, reviewed: false
checks-gas_storage_possible-do = Revise ambas unidades; tome el depósito del plano o del descenso del nivel de la mezcla.
# of 19ba941f, reviewed: false
checks-air_temperature_possible-title = La media anual de la temperatura del aire es la de un lugar donde se cría ganado
# of 2fb78b9e, reviewed: false
checks-air_temperature_possible-why = Ningún lugar habitado tiene esa media; grados Fahrenheit escritos en lugar de Celsius es el error habitual.
# of 50ee3d17, reviewed: false
checks-air_temperature_possible-do = Revise la unidad, y que sea la media de un año y no de un día.
# of 05c21d9f, reviewed: false
checks-feed_mass_possible_most-title = La alimentación no supera lo que soporta un biodigestor sencillo
# of 412c08c8, reviewed: false
checks-feed_mass_possible_most-why = Más de tres veces lo máximo que soporta un biodigestor sencillo no se alimenta por mucho tiempo, así que la masa o el volumen están mal registrados.
# of 6fc62bd8, reviewed: false
checks-feed_mass_possible_most-do = Revise las unidades de la alimentación y del volumen, y si la masa es la de un día; pese la alimentación durante una semana.
# of e187b02a, reviewed: false
checks-feed_mass_possible_least-title = Lo que se alimenta es más que migajas
# of a2b6ff5d, reviewed: false
checks-feed_mass_possible_least-why = Tan poco no lo pesa nadie, así que la masa o el volumen están mal registrados.
# of e9faa330, reviewed: false
checks-feed_mass_possible_least-do = Revise las unidades de la alimentación y del volumen; toneladas escritas en lugar de kilogramos es un error habitual.
# of 2a8dbdd0, reviewed: false
checks-feed_within_herd-title = La alimentación es a lo sumo el doble de lo máximo que puede dar el hato
# of ccfea407, reviewed: false
checks-feed_within_herd-why = Estos animales no dan tanto, así que la alimentación, las cabezas o la unidad están mal registradas, salvo que se compre estiércol.
# of 9cdd7d57, reviewed: false
checks-feed_within_herd-do = Cuente los animales y pese el estiércol de un día; revise la unidad de la alimentación.
# of 4296742a, reviewed: false
checks-water_volume_possible_most-title = El agua es a lo sumo tres veces lo máximo con que se diluye este material
# of 7c918971, reviewed: false
checks-water_volume_possible_most-why = Nadie acarrea tanto, así que está mal registrada, o entra agua de lluvia y de lavado.
# of c364250d, reviewed: false
checks-water_volume_possible_most-do = Revise la unidad y si el volumen es el de un día; no deje entrar agua de lluvia ni de lavado.
# of 0903d837, reviewed: false
checks-water_volume_possible_least-title = El agua que se agrega es más que un chorrito
# of 56c822e0, reviewed: false
checks-water_volume_possible_least-why = Tan poca no la mide nadie; metros cúbicos escritos en lugar de litros es el error habitual.
# of 4912706b, reviewed: false
checks-water_volume_possible_least-do = Revise la unidad; cuente los baldes de un día.
# of d29022b5, reviewed: false
checks-gas_measured_possible_most-title = El gas medido es a lo sumo una vez y media lo máximo que da la alimentación
# of 86332f26, reviewed: false
checks-gas_measured_possible_most-why = De esta alimentación no se saca tanto, así que la alimentación o el gas están mal registrados.
# of a846ec1e, reviewed: false
checks-gas_measured_possible_most-do = Revise la unidad del medidor y si el volumen es el de un día; luego pese la alimentación durante una semana.
# of 6c28af86, reviewed: false
checks-gas_measured_possible_least-title = El gas medido es más que un rastro
# of af482805, reviewed: false
checks-gas_measured_possible_least-why = Una planta que da tan poco no da nada, y ningún medidor doméstico lo lee; miles de litros escritos en lugar de metros cúbicos es un error habitual.
# of d8716286, reviewed: false
checks-gas_measured_possible_least-do = Revise la unidad del medidor; si está bien, busque una fuga.
# of 141bc083, reviewed: false
checks-gas_pressure_possible-title = La presión del gas es a lo sumo cinco veces la mayor en uso
# of 639999ed, reviewed: false
checks-gas_pressure_possible-why = La planta habría reventado o perdido su sello, así que el número o su unidad están mal.
# of c359d054, reviewed: false
checks-gas_pressure_possible-do = Lea otra vez el manómetro y revise la unidad; si está bien, cierre el gas, manténgase lejos y llame a quien construyó la planta.
# of e2cdd440, reviewed: false
checks-ph_possible-title = El pH es uno que tiene la mezcla de un biodigestor
# of ddfbedc5, reviewed: false
checks-ph_possible-why = Aun la mezcla agria y la gallinaza pura están entre esos límites, así que la lectura o el punto decimal están mal.
# of 9e396336, reviewed: false
checks-ph_possible-do = Mida de nuevo con papel nuevo o un medidor calibrado.
# of 73638941, reviewed: false
checks-visited_after_commissioning-title = La visita es posterior a la puesta en marcha
# of 2f988dc1, reviewed: false
checks-visited_after_commissioning-why = Una de las dos fechas está mal, así que no se conocen la edad ni el arranque.
# of 2b88614d, reviewed: false
checks-visited_after_commissioning-do = Busque ambas fechas; fíjese en el orden de día y mes.
# of fe036f1e, reviewed: false
checks-size_feeds_herd-title = El biodigestor es lo bastante grande para lo que da el hato
# of a9bf314a, reviewed: false
checks-size_feeds_herd-why = Con el agua usual, el estiércol del hato saldría antes de digerirse, aun a la retención más corta que es usual aquí.
# of b3f36964, reviewed: false
checks-size_feeds_herd-do = Alimente parte del estiércol y composte el resto, o construya un segundo biodigestor.
# of be59fc21, reviewed: false
checks-herd_fills_size-title = El hato da lo suficiente para el biodigestor
# of 97e01b39, reviewed: false
checks-herd_fills_size-why = Menos de la mitad de lo que lo llena a la retención usual más larga; el hogar paga por un volumen que no da gas.
# of b90d7ebb, reviewed: false
checks-herd_fills_size-do = Cuente de nuevo los animales; agregue otro material o construya los próximos más pequeños.
# of 98262224, reviewed: false
checks-gas_is_measured-title = Se midió el gas de un día
# of 323fc519, reviewed: false
checks-gas_is_measured-why = Sin ello nadie puede decir si se pierde gas.
# of 04030540, reviewed: false
checks-gas_is_measured-do = Lea un medidor durante una semana o cuente las horas de cada quemador.
# of 8767dd99, reviewed: false
checks-gas_far_below_expected-title = El gas medido es al menos cuatro quintos de lo mínimo que da la alimentación
# of 68fbc199, reviewed: false
checks-gas_far_below_expected-why = Una planta sana de cada veinte está un poco por debajo del rango; tan por debajo, se pierde gas o la mezcla está enferma.
# of 4cfe3fbb, reviewed: false
checks-gas_far_below_expected-do = Busque fugas con agua jabonosa, luego mire el pH, el calor, la costra y el lodo, y pese la alimentación durante una semana.
# of f3f97830, reviewed: false
checks-gas_not_above_expected-title = El gas medido está dentro de lo que puede dar la alimentación
# of fde99de1, reviewed: false
checks-gas_not_above_expected-why = Más de lo que da la alimentación aun en el mejor de estos biodigestores, así que la alimentación o el gas están mal registrados, o se alimenta también con otra cosa.
# of 847b534f, reviewed: false
checks-gas_not_above_expected-do = Pregunte qué más entra, pese la alimentación durante una semana y revise el medidor.
# of f1e1e335, reviewed: false
checks-running_steadily-title = Se ha alimentado durante al menos una retención
# of e3aac22e, reviewed: false
checks-running_steadily-why = Hasta entonces el gas sigue creciendo, así que no se compara con el de una alimentación pareja.
# of 8440ebfe, reviewed: false
checks-running_steadily-do = Mida de nuevo el gas cuando el biodigestor se haya alimentado durante una retención.
# of 5079dd4c, reviewed: false
checks-losses_do_not_undo_savings-title = El metano que se pierde calienta menos que lo que se ahorra
