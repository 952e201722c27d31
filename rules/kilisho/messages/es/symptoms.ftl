# of b0dd5ef9, reviewed: false
symptoms-no_gas_after_start-name = Sin gas desde el primer llenado
# of f32958aa, reviewed: false
symptoms-no_gas_after_start-seen = El biodigestor se llenó por primera vez y no salió gas, o casi nada.
# of 6503d885, reviewed: false
symptoms-first_gas_does_not_burn-name = El primer gas no arde
# of a0afbca7, reviewed: false
symptoms-first_gas_does_not_burn-seen = Un biodigestor nuevo da gas y presión, pero el gas apaga el fósforo o no se mantiene encendido.
# of 48e2745c, reviewed: false
symptoms-gas_fell_slowly-name = El gas bajó despacio
# of e03f518a, reviewed: false
symptoms-gas_fell_slowly-seen = A lo largo de semanas o meses la hornilla arde cada vez menos tiempo.
# of da964eca, reviewed: false
symptoms-gas_fell_suddenly-name = El gas bajó de repente
# of 7943d661, reviewed: false
symptoms-gas_fell_suddenly-seen = De un día para otro, o en una semana, hubo mucho menos gas.
# of 2425da96, reviewed: false
symptoms-gas_stopped-name = El gas se acabó del todo
# of 75187931, reviewed: false
symptoms-gas_stopped-seen = Dio gas durante mucho tiempo y ahora no da nada.
# of 1e9d7882, reviewed: false
symptoms-gas_always_little-name = Nunca tanto gas como se prometió
# of 641a4c3b, reviewed: false
symptoms-gas_always_little-seen = Funciona, pero el gas nunca ha alcanzado para las comidas que se prometieron.
# of 0eb165e3, reviewed: false
symptoms-gas_falls_in_cold_season-name = Menos gas solo en la época fría
# of 3960baea, reviewed: false
symptoms-gas_falls_in_cold_season-seen = Cada año el gas baja cuando hace frío y vuelve con los meses cálidos.
# of 328702a4, reviewed: false
symptoms-gas_comes_in_waves-name = El gas viene por oleadas
# of a69c93e0, reviewed: false
symptoms-gas_comes_in_waves-seen = Unos días hay de sobra, otros días nada.
# of b39431ef, reviewed: false
symptoms-gas_steady_but_short-name = El gas es constante, pero no alcanza
# of 4af24f70, reviewed: false
symptoms-gas_steady_but_short-seen = Hay tanto gas como siempre; hay más comidas, invitados o lámparas, o nunca alcanzó para todo.
# of 9624907a, reviewed: false
symptoms-gas_left_over-name = Sobra gas
# of 3287e7f8, reviewed: false
symptoms-gas_left_over-seen = La familia no logra usar todo el gas; sale burbujeando por la salida o por el alivio de presión.
# of 276325a8, reviewed: false
symptoms-gas_at_inlet_or_outlet-name = Sale gas en burbujas por la entrada o la salida
# of 36a41091, reviewed: false
symptoms-gas_at_inlet_or_outlet-seen = Suben burbujas en la entrada o la salida mientras llega poco gas a la hornilla.
# of ab5072a5, reviewed: false
symptoms-hiss_or_bubbles_at_joint-name = Silbido o burbujas de jabón en una unión
# of f231b196, reviewed: false
symptoms-hiss_or_bubbles_at_joint-seen = En algún punto de la tubería, la válvula o la manguera silba, o el agua jabonosa hace burbujas allí.
# of 5936f63b, reviewed: false
symptoms-gas_smells_of_rotten_eggs-name = Fuerte olor a huevos podridos
# of 54584c14, reviewed: false
symptoms-gas_smells_of_rotten_eggs-seen = El gas, o la llama, huele fuertemente a huevos podridos.
# of d690630d, reviewed: false
symptoms-flame_does_not_light-name = La llama no enciende
# of 9515e2d1, reviewed: false
symptoms-flame_does_not_light-seen = Con la válvula abierta y un fósforo en el quemador no arde nada.
# of 8945609b, reviewed: false
symptoms-flame_weak-name = La llama es pequeña y débil
# of 68f0c7c2, reviewed: false
symptoms-flame_weak-seen = La llama es azul pero pequeña, y la comida tarda mucho más que antes.
# of d7ff4c9a, reviewed: false
symptoms-flame_yellow-name = La llama es amarilla
# of 27db372e, reviewed: false
symptoms-flame_yellow-seen = La llama es amarilla o anaranjada y larga, en vez de corta y azul.
# of 98e3cf13, reviewed: false
symptoms-soot_on_pots-name = Hollín en las ollas
# of 25a11af2, reviewed: false
symptoms-soot_on_pots-seen = Las ollas se ponen negras con la llama de gas.
# of e0d82010, reviewed: false
symptoms-flame_lifts-name = La llama se despega del quemador
# of 675d6dde, reviewed: false
symptoms-flame_lifts-seen = La llama queda separada de los orificios del quemador, ruge y se apaga sola.
# of affb6a5c, reviewed: false
symptoms-flame_goes_out-name = La llama se apaga sola
# of 9d02cf5d, reviewed: false
symptoms-flame_goes_out-seen = Enciende, arde un rato y luego se apaga.
# of bbf3eb28, reviewed: false
symptoms-flame_strikes_back-name = La llama retrocede dentro del quemador
# of ba644aac, reviewed: false
symptoms-flame_strikes_back-seen = Con un estallido la llama salta hacia atrás y arde dentro del quemador o en el inyector.
# of f6bed6c9, reviewed: false
symptoms-flame_pulses-name = La llama salta o palpita
# of 64055072, reviewed: false
symptoms-flame_pulses-seen = La llama crece y se encoge de forma rítmica, y el manómetro salta con ella.
# of d8baf516, reviewed: false
symptoms-stove_rusts-name = La hornilla o la lámpara se oxida hasta perforarse
# of 87efd5b6, reviewed: false
symptoms-stove_rusts-seen = El quemador, el inyector o la lámpara se corroen en uno o dos años; el latón se pone negro.
# of 1f6202b9, reviewed: false
symptoms-pressure_high_no_flame-name = La presión es alta, pero no hay llama
# of 84146d5a, reviewed: false
symptoms-pressure_high_no_flame-seen = El manómetro de la planta está alto, o la bolsa o la campana está llena, pero sale poco o nada de la hornilla.
# of adf87a48, reviewed: false
symptoms-pressure_zero-name = La presión se queda en cero
# of 43c875ba, reviewed: false
symptoms-pressure_zero-seen = El manómetro no sube, o la bolsa o la campana sigue vacía, de día y de noche.
# of 04757cf7, reviewed: false
symptoms-pressure_falls_overnight-name = La presión baja durante la noche
# of 0c8b1b81, reviewed: false
symptoms-pressure_falls_overnight-seen = Al anochecer hay presión, por la mañana ya no está aunque nadie usó gas.
# of dc85efd2, reviewed: false
symptoms-bulging_bag_or_lid-name = La bolsa o la tapa se abomba
# of f91d7a2c, reviewed: false
symptoms-bulging_bag_or_lid-seen = La bolsa está tensa como el cuero de un tambor, o la tapa de la cúpula se levanta, tiene fugas o se ha movido.
# of 4d218ac3, reviewed: false
symptoms-slurry_level_falls-name = El nivel de la mezcla baja
# of a48def7f, reviewed: false
symptoms-slurry_level_falls-seen = La mezcla en la salida está más baja cada día aunque no se sacó nada.
# of 4d7a954a, reviewed: false
symptoms-outlet_overflows-name = La salida se desborda
# of ec56b2ec, reviewed: false
symptoms-outlet_overflows-seen = La mezcla rebosa por el borde de la salida o de la cámara de expansión.
# of 3e945463, reviewed: false
symptoms-outlet_not_flowing-name = No sale nada por la salida
# of 422a5445, reviewed: false
symptoms-outlet_not_flowing-seen = Entra alimentación, pero no sale mezcla por el rebosadero.
# of 9386bc59, reviewed: false
symptoms-inlet_backs_up-name = La entrada se atasca
# of 9a64c80b, reviewed: false
symptoms-inlet_backs_up-seen = La alimentación se queda en la entrada o en la fosa de mezcla y no baja.
# of d3f0dbc9, reviewed: false
symptoms-slurry_thick-name = La mezcla es espesa
# of 04afb645, reviewed: false
symptoms-slurry_thick-seen = La alimentación mezclada o la mezcla en la salida queda parada como una papilla espesa y apenas corre.
# of 495efed5, reviewed: false
symptoms-slurry_watery-name = La mezcla es aguada
# of 10c19025, reviewed: false
symptoms-slurry_watery-seen = Lo que sale es ralo y pálido como agua sucia.
# of 1023c01c, reviewed: false
symptoms-scum_seen-name = Costra de nata
# of cc55f5d9, reviewed: false
symptoms-scum_seen-seen = Una costra seca o afieltrada flota sobre la mezcla; un palo topa con ella.
# of 4607760f, reviewed: false
symptoms-foam-name = Espuma
# of 932d6443, reviewed: false
symptoms-foam-seen = Hay espuma en la salida o entra espuma en la tubería de gas.
# of 09061ffe, reviewed: false
symptoms-sour_smell-name = Olor agrio
# of 7587835c, reviewed: false
symptoms-sour_smell-seen = La mezcla huele agria o a vómito, y puede verse gris.
# of 0a91c28c, reviewed: false
symptoms-ammonia_smell-name = Olor picante a amoníaco
# of b165a4c2, reviewed: false
symptoms-ammonia_smell-seen = La mezcla o la salida pica en la nariz y los ojos como un gallinero.
# of 0c80170a, reviewed: false
symptoms-undigested_dung_comes_out-name = La mezcla huele a estiércol fresco
# of bf6201bb, reviewed: false
symptoms-undigested_dung_comes_out-seen = Lo que sale se ve y huele como estiércol fresco y atrae moscas.
# of 42bc7a39, reviewed: false
symptoms-sand_in_slurry-name = Arena en la mezcla
# of f0fd3846, reviewed: false
symptoms-sand_in_slurry-seen = Hay arena y piedritas en la fosa de mezcla, en la salida o en la mezcla.
# of 9fbf7179, reviewed: false
symptoms-slurry_in_gas_pipe-name = Mezcla en la tubería de gas
# of 3f5986a2, reviewed: false
symptoms-slurry_in_gas_pipe-seen = Sale mezcla de la tubería de gas, de la trampa o de la hornilla.
# of b5834292, reviewed: false
symptoms-water_in_pipe-name = Agua en la tubería de gas
# of 2263c596, reviewed: false
symptoms-water_in_pipe-seen = La tubería gorgotea, o sale agua por una unión, por la trampa o por la hornilla.
# of b478809b, reviewed: false
symptoms-trap_or_relief_dry-name = El sello de agua está bajo
# of 49279743, reviewed: false
symptoms-trap_or_relief_dry-seen = La botella o la trampa que sella la línea tiene poca agua o nada.
# of 13b85425, reviewed: false
symptoms-relief_blocked-name = El alivio de presión está tapado, congelado o demasiado lleno
# of d3d1cd68, reviewed: false
symptoms-relief_blocked-seen = El sello de agua nunca burbujea aunque el depósito de gas está lleno; está congelado o lleno hasta el borde, o su tubo está tapado.
# of 3be1c2eb, reviewed: false
symptoms-relief_bubbles_always-name = El alivio de presión burbujea todo el tiempo
# of 25ec4f92, reviewed: false
symptoms-relief_bubbles_always-seen = El gas burbujea por el sello de agua de día y de noche, también cuando hay poco gas.
# of 585310d7, reviewed: false
symptoms-crack_or_wet_patch-name = Grieta o mancha húmeda
# of 60c625d7, reviewed: false
symptoms-crack_or_wet_patch-seen = La mampostería muestra una grieta, o el suelo junto al biodigestor está mojado de mezcla.
# of b38ae6e0, reviewed: false
symptoms-bubbles_over_dome-name = Burbujas u olor sobre la cúpula
# of 2d460c54, reviewed: false
symptoms-bubbles_over_dome-seen = Después de llover suben burbujas del suelo mojado sobre la cúpula, o allí huele a gas.
# of 766e749d, reviewed: false
symptoms-lid_seal_dry-name = El sello de arcilla de la tapa está seco
# of 751fbad3, reviewed: false
symptoms-lid_seal_dry-seen = La arcilla alrededor de la tapa se ha secado o agrietado, o el agua sobre la tapa ya no está o burbujea.
# of 9f2de31c, reviewed: false
symptoms-bag_slack_or_torn-name = La bolsa está floja o rota
# of 615f263c, reviewed: false
symptoms-bag_slack_or_torn-seen = La bolsa cuelga floja, o muestra un agujero, una rasgadura o una parte quebradiza.
# of 0540b865, reviewed: false
symptoms-drum_does_not_rise-name = La campana no sube
# of 59581ddf, reviewed: false
symptoms-drum_does_not_rise-seen = La campana flotante se queda abajo aunque se alimenta el biodigestor.
# of 4d1619b5, reviewed: false
symptoms-drum_sinks_quickly-name = La campana baja rápido
# of dc692aea, reviewed: false
symptoms-drum_sinks_quickly-seen = La campana sube con el gas y baja de nuevo en unas horas sin que se use.
# of fbefad9e, reviewed: false
symptoms-drum_rusty-name = La campana está oxidada
# of f7991b5b, reviewed: false
symptoms-drum_rusty-seen = La pintura de la campana se descascara, se ve óxido, o burbujea gas en sus costuras.
# of 5c045ef9, reviewed: false
symptoms-drum_tilted-name = La campana está inclinada o trabada
# of 0c25dc51, reviewed: false
symptoms-drum_tilted-seen = La campana está torcida o se pega en su guía y se mueve a tirones.
# of 413a35cb, reviewed: false
symptoms-fed_more_than_usual-name = Se alimentó más de lo habitual
# of 54fa3348, reviewed: false
symptoms-fed_more_than_usual-seen = En las últimas semanas se dio más alimentación que antes.
# of 96153bd8, reviewed: false
symptoms-fed_less_than_usual-name = Se alimentó menos de lo habitual
# of 8febd633, reviewed: false
symptoms-fed_less_than_usual-seen = Menos animales, menos estiércol u otro uso para él: se da menos alimentación que antes.
# of 41cea249, reviewed: false
symptoms-feeding_irregular-name = Se alimenta de vez en cuando
# of 1a189bee, reviewed: false
symptoms-feeding_irregular-seen = Se alimenta al azar: días sin nada, luego mucho de una vez.
# of 209e6dba, reviewed: false
symptoms-feed_changed-name = Un material nuevo
# of 5e9e161b, reviewed: false
symptoms-feed_changed-seen = Entró algo distinto que antes: residuos de cocina, fruta, suero, otra clase de estiércol.
# of 77847f75, reviewed: false
symptoms-straw_fed-name = Paja o pasto en la alimentación
# of 07b50112, reviewed: false
symptoms-straw_fed-seen = Entró cama, paja, hojas o pasto largo con el estiércol.
# of 97067202, reviewed: false
symptoms-droppings_or_urine_fed-name = Mucha gallinaza o excrementos similares, o mucha orina, en la alimentación
# of 74b17c11, reviewed: false
symptoms-droppings_or_urine_fed-seen = El estiércol de aves o de cerdo, o mucha orina, forma buena parte de la alimentación.
# of b88a257c, reviewed: false
symptoms-animals_treated-name = Los animales recibieron medicinas
# of b5ee3519, reviewed: false
symptoms-animals_treated-seen = En las últimas semanas se dieron a los animales antibióticos o desparasitantes.
# of 3b665d48, reviewed: false
symptoms-disinfectant_or_soap-name = Entró desinfectante, baño antiparasitario o jabón
# of 4c15f2ba, reviewed: false
symptoms-disinfectant_or_soap-seen = Se limpió el establo o la letrina con desinfectante o jabón, o se bañó a los animales contra parásitos, y el agua entró.
# of 204c2bff, reviewed: false
symptoms-much_water_or_rain-name = Entró mucha agua
# of 0cae0c0c, reviewed: false
symptoms-much_water_or_rain-seen = Lluvia, agua de lavado o mucha más agua de mezcla que lo habitual corrió al biodigestor.
# of da63de26, reviewed: false
symptoms-little_water_used-name = Casi no se mezcla agua
# of 5cd210af, reviewed: false
symptoms-little_water_used-seen = El agua escasea, y el estiércol se da casi como cae.
# of ebeb14c4, reviewed: false
symptoms-not_emptied_for_years-name = Sin vaciar durante años
# of 4250a22d, reviewed: false
symptoms-not_emptied_for_years-seen = Ha funcionado muchos años sin que se sacaran la arena y el lodo.
# of 9c5071f9, reviewed: false
symptoms-cold_weather-name = Tiempo frío
# of 76bb0242, reviewed: false
symptoms-cold_weather-seen = Hace semanas que hace frío, y la mezcla se siente fría al tacto.
# of 7b8e478d, reviewed: false
symptoms-no_starter_used-name = Arrancó sin inóculo
# of 1a6507f9, reviewed: false
symptoms-no_starter_used-seen = Se llenó por primera vez sin mezcla de un biodigestor en funcionamiento, y no con estiércol de vaca fresco.
# of 2c2ea44f, reviewed: false
symptoms-recently_started-name = Llenado hace poco
# of 0d41dd63, reviewed: false
symptoms-recently_started-seen = El primer llenado tiene solo unos días o semanas.
# of 226b0ff4, reviewed: false
symptoms-just_emptied_or_repaired-name = Recién vaciado o reparado
# of fb06777b, reviewed: false
symptoms-just_emptied_or_repaired-seen = El biodigestor, su tapa o su tubería de gas se abrió o se vació hace poco.
# of 05f26d8f, reviewed: false
symptoms-slurry_taken_out-name = Se sacó mucha mezcla
# of 3f40a783, reviewed: false
symptoms-slurry_taken_out-seen = Se sacó de una vez mucha mezcla de la salida o del biodigestor.
# of 6b330895, reviewed: false
symptoms-new_stove_or_pipe-name = Hornilla o tubería nueva
# of 73609d60, reviewed: false
symptoms-new_stove_or_pipe-seen = La hornilla, la lámpara o la tubería es nueva, más larga que antes, o fue hecha para otro gas.
# of 5c7367fd, reviewed: false
symptoms-valve_or_hose_moved-name = Se movió una válvula o una manguera
# of e4cb0514, reviewed: false
symptoms-valve_or_hose_moved-seen = Alguien giró una válvula, o movió la hornilla o su manguera, antes de que empezara el problema.
# of 21e9d6c9, reviewed: false
symptoms-kitchen_closed-name = El cuarto con la llama está cerrado
# of 2cdc7e2f, reviewed: false
symptoms-kitchen_closed-seen = Puertas y ventanas están cerradas mientras arde, y ninguna abertura en la pared queda abierta.
# of b0d9ee5e, reviewed: false
symptoms-gas_not_used-name = No se usó gas durante días
# of ceacca7b, reviewed: false
symptoms-gas_not_used-seen = Nadie cocinó con gas durante varios días.
# of e55403e5, reviewed: false
symptoms-gas_smell_indoors-name = Olor a gas en interiores
# of 17aa9dbf, reviewed: false
symptoms-gas_smell_indoors-seen = Huele a gas en la cocina o en otro cuarto.
# of 2e85d182, reviewed: false
symptoms-gas_smell_in_pit-name = Olor a gas en una fosa o un lugar bajo
# of 0b7423a5, reviewed: false
symptoms-gas_smell_in_pit-seen = Huele a gas o a huevos podridos en una fosa o junto a ella, en la salida o en otro lugar bajo, o el olor estaba allí y desapareció de repente.
# of 715b3e2b, reviewed: false
symptoms-person_collapsed-name = Alguien se ha desplomado
# of 2810ec78, reviewed: false
symptoms-person_collapsed-seen = Alguien está tendido sin fuerzas o sin conocimiento dentro o al lado de una fosa, de la salida, del biodigestor o de la cocina.
# of 33b1e8ab, reviewed: false
symptoms-headache_in_kitchen-name = Dolor de cabeza, mareo o náuseas cerca de la llama
# of 4fe9e7ef, reviewed: false
symptoms-headache_in_kitchen-seen = A las personas en el cuarto con la hornilla, la lámpara o el calentador les duele la cabeza, sienten mareo o náuseas, y se sienten mejor afuera.
# of 0fa4f343, reviewed: false
symptoms-fire_or_explosion-name = Incendio o explosión
# of 0f5a1d7f, reviewed: false
symptoms-fire_or_explosion-seen = Arde gas donde no debe, algo cerca del gas está en llamas, o hubo un estallido.
