# of 38c9ff27, reviewed: false
facts-distance_to_well-name = Distancia a la fuente de agua de beber más cercana
# of 5ad04ff0, reviewed: false
facts-distance_to_well-description = Desde el borde más cercano del biodigestor o de la fosa de digestato, medida sobre el suelo.
# of 21c57e66, reviewed: false
facts-distance_to_dwelling-name = Distancia a la vivienda más cercana
# of 70da58ac, reviewed: false
facts-distance_to_dwelling-description = Desde la pared más cercana de una casa donde viven o duermen personas.
# of f2d554d5, reviewed: false
facts-distance_to_kitchen-name = Distancia a la cocina
# of b48e3cf9, reviewed: false
facts-distance_to_kitchen-description = Largo del recorrido de la tubería de gas.
# of 0b2059ce, reviewed: false
facts-distance_to_stable-name = Distancia al establo
# of f0777e92, reviewed: false
facts-distance_to_stable-description = Desde donde cae el estiércol hasta la entrada.
# of 9bf57270, reviewed: false
facts-distance_to_tree-name = Distancia al árbol más cercano
# of 174355a3, reviewed: false
facts-distance_to_tree-description = Hasta el borde de su copa.
# of 95f609de, reviewed: false
facts-distance_to_road-name = Distancia al camino o paso de vehículos más cercano
# of 024c45a9, reviewed: false
facts-groundwater_depth-name = Profundidad hasta el agua subterránea más alta
# of ae6f51fb, reviewed: false
facts-groundwater_depth-description = Desde la superficie del suelo hasta el agua subterránea más alta del año.
# of efa578f5, reviewed: false
facts-groundwater_below_pit-name = Suelo seco debajo de la fosa
# of 8035b76b, reviewed: false
facts-groundwater_below_pit-description = Desde el piso de la fosa hacia abajo hasta el agua subterránea más alta del año; negativo cuando el agua está dentro de la fosa.
# of 059d91ba, reviewed: false
facts-pit_depth-name = Profundidad de la fosa
# of 83c2caf8, reviewed: false
facts-inside_building-name = La planta está dentro o debajo de una construcción
# of 853cc67e, reviewed: false
facts-inside_building-description = Vale también para un establo o galpón que se usa para otra cosa.
# of a0fe54de, reviewed: false
facts-soil_class-name = Terreno en el sitio
# of 1636b743, reviewed: false
facts-flood_prone-name = El sitio se inunda o está en una línea de desagüe
# of 1b1830b4, reviewed: false
facts-runoff_reaches_plant-name = El agua del techo o del patio llega a la planta
# of e5c4e3cd, reviewed: false
facts-slope-name = Pendiente del terreno
# of f28b16c8, reviewed: false
facts-overflow_to_own_land-name = La salida descarga en tierra propia aprovechable
# of 61aa8b43, reviewed: false
facts-low_place_near_outlet-name = Un cuarto, establo o fosa está más bajo que una salida de gas o de digestato y a menos de 5 m de ella
# of 2dcd26cb, reviewed: false
facts-latrine_linked-name = Hay una letrina conectada a la planta
# of 1917688b, reviewed: false
facts-pit_walls_supported-name = Las paredes de la fosa tienen talud o están apuntaladas
# of 3e2aaf1d, reviewed: false
facts-structure_kind-name = Tipo de biodigestor
# of fa7100c8, reviewed: false
facts-cured_for-name = Tiempo de curado
# of e09dda43, reviewed: false
facts-cured_for-description = Días desde el último colado o repello.
# of a72ed627, reviewed: false
facts-water_tightness_test-name = Prueba de agua del biodigestor
# of a7b4fab6, reviewed: false
facts-gas_tightness_test-name = Prueba de estanqueidad al gas del espacio de gas
# of c59e127a, reviewed: false
facts-water_test_loss-name = Pérdida en la prueba de agua
# of 83996057, reviewed: false
facts-water_test_loss-description = Parte del volumen del biodigestor que se pierde en un día, después de un día de remojo.
# of 24a552cf, reviewed: false
facts-gas_test_drop-name = Presión perdida en la prueba de gas
# of 23d5387b, reviewed: false
facts-gas_test_drop-description = Parte de la presión inicial que se pierde en 24 horas.
# of 777c8358, reviewed: false
facts-gas_test_temperature_change-name = Diferencia de temperatura entre las lecturas de la prueba de gas
# of 0adaf29e, reviewed: false
facts-gas_test_temperature_change-description = Sin signo.
# of f4c2e4d4, reviewed: false
facts-inlet_covered-name = La entrada tiene tapa
# of 2a9fd18f, reviewed: false
facts-overflow_guarded-name = La fosa de salida está tapada o tiene baranda
# of 06065bb0, reviewed: false
facts-openings_fenced-name = Todas las fosas y aberturas tienen tapa o cerca
# of 7135d30b, reviewed: false
facts-openings_fenced-description = De modo que no pueda caer en ellas ni un niño ni un animal.
# of d3f0078e, reviewed: false
facts-backfilled-name = La tierra está rellenada y apisonada alrededor de la pared y sobre la cúpula
# of fc5e55de, reviewed: false
facts-dome_cover_depth-name = Tierra encima de la cúpula
# of 855052c6, reviewed: false
facts-gas_space_coated-name = El espacio de gas tiene un recubrimiento hermético al gas
# of 50c211cb, reviewed: false
facts-dome_cracked-name = Se ven grietas en la cúpula o la pared
# of 47c53782, reviewed: false
facts-emptied_at_high_groundwater-name = La planta se vacía mientras el agua subterránea está por encima de su piso
# of 1836ece5, reviewed: false
facts-vent_open_while_emptying-name = El venteo de gas está abierto mientras se saca mezcla
# of 063d9045, reviewed: false
facts-built_by_trained_mason-name = Construido por un albañil o fabricante capacitado según un plano probado
# of a56bff99, reviewed: false
facts-outlet_clear-name = La salida está despejada
# of 1699cae2, reviewed: false
facts-level_above_port-name = Nivel de la mezcla por encima de la parte superior de las bocas interiores de entrada y salida
# of c626c488, reviewed: false
facts-digester_temperature-name = Temperatura de la mezcla
# of bd2d0cb4, reviewed: false
facts-hydraulic_retention_time-name = Tiempo de retención hidráulica
# of e7e17c33, reviewed: false
facts-hydraulic_retention_time-description = Volumen de mezcla al nivel de trabajo dividido entre la mezcla alimentada por día.
# of 2fbdc5ed, reviewed: false
facts-scum_thickness-name = Espesor de la nata
# of 3cad2c3d, reviewed: false
facts-first_fill_share-name = Primer llenado
# of c1fe1373, reviewed: false
facts-first_fill_share-description = Parte del volumen total que llena la primera carga.
# of 7d750cde, reviewed: false
facts-first_gas_vented-name = El primer gas se dejó salir al aire libre, sin quemarlo
# of e5d473e1, reviewed: false
facts-gas_pressure-name = Presión del gas en el biodigestor
# of c391a36a, reviewed: false
facts-gas_pressure-description = Respecto al aire libre, por ejemplo la altura de una columna de agua.
# of b48c0abe, reviewed: false
facts-gas_sufficiency-name = Gas de un día dividido entre el gas que se quiere por día
# of 03bb170d, reviewed: false
facts-gas_use_covered-name = Parte del gas deseado que está disponible a las horas en que se quiere
# of 62e196cb, reviewed: false
facts-gas_vented_share-name = Parte del gas que se deja salir sin quemar porque el depósito de gas está lleno
# of 6f1bad23, reviewed: false
facts-pipe_pressure_drop-name = Presión perdida en la tubería de gas a la hora de mayor uso
# of f193c809, reviewed: false
facts-appliance_pressure_ratio-name = Presión del gas en el aparato dividida entre la mínima que necesita
# of fb53c40a, reviewed: false
facts-appliance_pressure_ratio-description = Mientras arde todo lo que se usa a la hora de mayor uso.
# of 9977d61b, reviewed: false
facts-flame_arrester-name = Hay un arrestallamas o sello de agua en la línea antes de los aparatos
# of 5813eaa2, reviewed: false
facts-hydrogen_sulfide_in_gas-name = Sulfuro de hidrógeno en el biogás
# of 12eed560, reviewed: false
facts-condensate_trap-name = La línea de gas tiene una trampa de agua de condensación o desagua hacia la planta
# of 5391f1ef, reviewed: false
facts-trap_water_level-name = Nivel del agua en el sello de alivio y en la trampa
# of 78d9e8e3, reviewed: false
facts-pressure_relief-name = Hay un alivio de presión instalado
# of 14f44f6d, reviewed: false
facts-relief_opens_at-name = Presión a la que se abre el alivio de presión
# of 767032d2, reviewed: false
facts-relief_outlet_to_building-name = Distancia de la salida del alivio de presión a construcciones y caminos
# of 25161ef6, reviewed: false
facts-separate_gas_holder-name = El gas se guarda en un gasómetro o una bolsa aparte
# of 969f754a, reviewed: false
facts-flame_distance-name = Distancia del biodigestor a la llama o fuego más cercano
# of df68c3b7, reviewed: false
facts-flame_distance-description = El lugar más cercano donde arde algo; indique la distancia a la hornilla si no arde nada más.
# of 94b8a1e0, reviewed: false
facts-first_flame_place-name = Lugar de la primera llama
# of 3936ce65, reviewed: false
facts-first_flame_distance-name = Distancia del biodigestor al lugar de la primera llama
# of 3693d870, reviewed: false
facts-leak_test_method-name = Cómo se buscan las fugas
# of de4075d8, reviewed: false
facts-leak_found-name = Burbujas en la prueba con agua jabonosa
# of d7bec5bf, reviewed: false
facts-pipe_tightness_test-name = Prueba de presión de las tuberías
# of d9354179, reviewed: false
facts-plant_valve-name = Válvula principal en la planta
# of dfcf8b99, reviewed: false
facts-appliance_valve-name = Válvula en cada aparato
# of db30d084, reviewed: false
facts-main_valve_shut_at_night-name = La válvula principal se cierra por la noche y cuando no hay nadie en casa
# of 4358c831, reviewed: false
facts-hose_as_fixed_line-name = Una manguera sirve de línea fija de gas
# of 99ba71e4, reviewed: false
facts-pipe_slope-name = Pendiente de la tubería de gas hacia la trampa o la planta
# of 3d62270e, reviewed: false
facts-untrapped_low_points-name = Puntos bajos de la tubería de gas sin trampa
# of d377b4dd, reviewed: false
facts-pipe_burial_depth-name = Profundidad de la tubería de gas bajo el suelo
# of 12e42054, reviewed: false
facts-gas_in_use-name = Se está quemando gas
# of c342230f, reviewed: false
facts-slurry_removed_while_burning-name = Se saca mezcla mientras arde una llama
# of 5fdb3d78, reviewed: false
facts-flame_before_valve-name = El fósforo se enciende antes de abrir la válvula de gas
# of dfb0f521, reviewed: false
facts-flame_colour-name = Llama
# of 53da7d31, reviewed: false
facts-kitchen_openings-name = Aberturas permanentes en el cuarto con el aparato
# of 044bff75, reviewed: false
facts-clearance_above_flame-name = Distancia por encima de la llama a cualquier cosa que pueda arder
# of 239e0209, reviewed: false
facts-gas_vented_indoors-name = Se deja salir gas o agua de la trampa en un cuarto o invernadero
# of f8a018ad, reviewed: false
facts-days_without_gas_use-name = Tiempo sin usar gas
# of 2aeb79e4, reviewed: false
facts-ignition_near_open_plant-name = Cigarrillos, teléfonos, interruptores o chispas a menos de 5 m de una planta abierta
# of e55403e5, reviewed: false
facts-gas_smell_indoors-name = Olor a gas en interiores
# of 3561a55b, reviewed: false
facts-gas_meter_used-name = Se usó un medidor de gases en el aire del cuarto
# of 23af2097, reviewed: false
facts-methane_in_room_air-name = Metano en el aire del cuarto
# of dfd6d0b9, reviewed: false
facts-hydrogen_sulfide_in_breathed_air-name = Sulfuro de hidrógeno en el aire que se respira
# of 2a32309f, reviewed: false
facts-carbon_monoxide_in_room_air-name = Monóxido de carbono en el aire del cuarto
# of cb1327e6, reviewed: false
facts-unflued_water_heater_indoors-name = Un calentador de agua sin ducto de salida de gases funciona en interiores
# of cd399a12, reviewed: false
facts-unconverted_appliance-name = Se usa sin convertir un aparato para gas envasado o gas de red
# of d691650d, reviewed: false
facts-water_sufficiency-name = Agua disponible frente al agua necesaria
# of e34ed387, reviewed: false
facts-water_sufficiency-description = Agua que se puede conseguir por día dividida entre el agua que necesita la alimentación.
# of 41191520, reviewed: false
facts-recycled_liquid_share-name = Líquido de la salida devuelto, como parte del líquido de mezcla
# of 5437b478, reviewed: false
facts-rain_enters_digester-name = Entra lluvia o agua de descarga por la entrada o la salida
# of 9149e6f1, reviewed: false
facts-toilet_flush_volume-name = Agua de una descarga del inodoro conectado
# of be3180c7, reviewed: false
facts-slurry_total_solids-name = Sólidos totales de la mezcla preparada
# of e7d1bdae, reviewed: false
facts-slurry_total_solids-description = Tal como se alimenta, después de mezclar con agua u orina.
# of aba153e9, reviewed: false
facts-feed_contains-name = Qué se encuentra en la alimentación
# of 012a4b2a, reviewed: false
facts-feed_contains-description = Una lista vacía dice que alguien miró y no encontró nada de ello.
# of 8eafbc21, reviewed: false
facts-feeding_interval-name = Tiempo entre alimentaciones
# of 2e61fe57, reviewed: false
facts-organic_loading_rate-name = Carga orgánica
# of 44edcd8a, reviewed: false
facts-organic_loading_rate-description = Sólidos volátiles alimentados por día por cada metro cúbico de mezcla en el biodigestor.
# of 4e47897d, reviewed: false
facts-carbon_to_nitrogen-name = Relación carbono a nitrógeno de la alimentación
# of cb2af9d1, reviewed: false
facts-total_ammonia_nitrogen-name = Nitrógeno amoniacal total
# of 33e6a4fb, reviewed: false
facts-free_ammonia-name = Amoníaco libre
# of 3fd3eda5, reviewed: false
facts-slurry_ph-name = pH de la mezcla en el biodigestor
# of aac1ded5, reviewed: false
facts-heap_age-name = Edad del estiércol más viejo del montón al llenar
# of 8390042a, reviewed: false
facts-heap_covered-name = El montón de estiércol está cubierto
# of 6671d625, reviewed: false
facts-starter_share-name = Inóculo (mezcla de arranque)
# of 28a71546, reviewed: false
facts-starter_share-description = Parte de la primera carga que es digestato de una planta en funcionamiento.
# of 9ce7eea0, reviewed: false
facts-starts_unaided-name = La alimentación trae sus propios microbios
# of 0f8d0d48, reviewed: false
facts-starts_unaided-description = Vale para estiércol fresco de vaca y de búfalo.
# of d6997ba8, reviewed: false
facts-fed_share_of_design-name = Alimentación frente a la alimentación de diseño
# of e8f1bbb4, reviewed: false
facts-crop_residue_share-name = Residuos de cultivos, como parte de los sólidos totales alimentados
# of c0e3a075, reviewed: false
facts-poultry_share-name = Gallinaza, como parte de la masa alimentada
# of f6e4893b, reviewed: false
facts-human_excreta_fed-name = Se alimentan excretas humanas
# of b4de3a9a, reviewed: false
facts-acid_feed_share-name = Fruta, suero, ensilaje y residuos de comida, como parte de los sólidos volátiles alimentados
# of 77c0fff5, reviewed: false
facts-particle_length-name = Largo de los pedazos más largos en la alimentación
# of dac6dce0, reviewed: false
facts-animals_treated-name = Los animales fueron tratados con antibióticos o desparasitantes en el último mes
# of e499502b, reviewed: false
facts-days_since_medicine-name = Tiempo desde el último tratamiento
# of b9882e78, reviewed: false
facts-weekly_feed_increase-name = Aumento de la alimentación diaria en una semana
# of 54dfa6f9, reviewed: false
facts-fed_before_gas_burns-name = Se agregó alimentación después de la primera carga antes de que el gas ardiera de forma constante
# of 7a66d594, reviewed: false
facts-foam_seen-name = Espuma en la salida o en la tubería de gas
# of f6aa3087, reviewed: false
facts-stirs_per_day-name = Agitaciones por día
# of 8e367bcc, reviewed: false
facts-manure_from_restricted_zone-name = El estiércol viene de una finca dentro de una zona de restricción por enfermedad
# of 08fe7979, reviewed: false
facts-manure_from_other_farms-name = El estiércol viene de otras fincas
# of 54c48271, reviewed: false
facts-vehicles_cleaned-name = Los vehículos y carretillas se limpian entre una finca y otra
# of 11a44cf8, reviewed: false
facts-entry_planned-name = Alguien piensa entrar en el biodigestor o en una fosa
# of 97788bbd, reviewed: false
facts-entry_planned-description = Cualquier persona, por cualquier motivo, en el biodigestor, la fosa de salida o la fosa de purines o digestato.
# of 05e7a02d, reviewed: false
facts-entry_team_trained-name = Quienes entran son un equipo capacitado y equipado para espacios confinados
# of 22954933, reviewed: false
facts-ventilated_for-name = Tiempo que la fosa vaciada ha estado abierta y ventilada
# of 4681cfad, reviewed: false
facts-oxygen_in_entry_air-name = Oxígeno en el aire de la fosa
# of 5b42cc19, reviewed: false
facts-methane_in_entry_air-name = Metano en el aire de la fosa
# of 384a55c4, reviewed: false
facts-hydrogen_sulfide_in_entry_air-name = Sulfuro de hidrógeno en el aire de la fosa
# of e24b8d2e, reviewed: false
facts-harness_and_two_outside-name = Arnés con una cuerda que sostienen dos personas desde fuera
# of d09b36a4, reviewed: false
facts-animal_test_relied_on-name = El aire se juzga bajando un animal pequeño
# of 60163b78, reviewed: false
facts-people_or_animals_over_stirred_store-name = Hay personas o animales en la construcción mientras se agita o se vacía el depósito que está debajo
# of 3d47147f, reviewed: false
facts-head_below_rim-name = Alguien baja la cabeza por debajo del borde de una planta abierta
# of 4c64f2a1, reviewed: false
facts-household_knows_no_rescue-name = Todos saben que no deben entrar tras una persona que se desploma en una fosa
# of e0a16b9f, reviewed: false
facts-users_trained-name = A los usuarios se les mostró cómo manejar la planta
# of 8f51aa75, reviewed: false
facts-load_carried-name = La carga más pesada que lleva una persona
# of f6368198, reviewed: false
facts-twisting_when_lifting-name = Se tuerce la espalda con una carga
# of 93d52d77, reviewed: false
facts-carry_distance-name = Distancia que se llevan las cargas sin descanso
# of 72066055, reviewed: false
facts-children_carry_loads-name = Los niños cargan estiércol o agua para la planta
# of e13933fa, reviewed: false
facts-daily_mass_per_person-name = Masa que mueve una persona en un día
# of 546282ae, reviewed: false
facts-wet_bulb_globe_temperature-name = Temperatura de globo y bulbo húmedo durante el trabajo pesado
# of 6699d465, reviewed: false
facts-hand_washing-name = Las manos se lavan con jabón después de alimentar y de trabajar con la mezcla o el digestato
# of 2766cc3c, reviewed: false
facts-protective_clothing-name = Se usan guantes y botas y se cubren las heridas
# of 794ef391, reviewed: false
facts-vulnerable_people_handle_slurry-name = Mujeres embarazadas, niños pequeños o personas enfermas manipulan estiércol, mezcla o digestato
# of a0f0a543, reviewed: false
facts-digestate_on_raw_crops-name = Se aplica digestato a cultivos que se comen crudos
# of 25e9fe23, reviewed: false
facts-edible_part_touches_soil-name = La parte que se come toca el suelo
# of bc7aa4d3, reviewed: false
facts-days_to_harvest-name = Tiempo desde el último digestato hasta la cosecha
# of e0056d66, reviewed: false
facts-digestate_stored_for-name = Almacenamiento del digestato antes de usarlo
# of 874a5b28, reviewed: false
facts-digestate_sprayed-name = El digestato se rocía
# of e2dcaea2, reviewed: false
facts-lime_only_treatment-name = Se confía solo en la cal para matar huevos de lombrices parásitas
# of d92fb1f6, reviewed: false
facts-sludge_stored_or_composted-name = El lodo del fondo se almacena o composta antes de usarlo
# of 9ed0e2cb, reviewed: false
facts-stockpile_sufficiency-name = Estiércol en el montón frente al estiércol necesario
# of 240f98a9, reviewed: false
facts-stockpile_sufficiency-description = El día del llenado, solo lo recogido en la propia finca.
# of 839e0beb, reviewed: false
facts-seal_margin-name = Primer llenado frente al mínimo que sella la entrada y la salida
# of d704803a, reviewed: false
facts-fill_margin-name = Primer llenado frente al máximo que admite la estructura
# of 21e9dfa4, reviewed: false
facts-water_days-name = Días para juntar el agua de la primera carga
# of 9087aaa3, reviewed: false
facts-total_volume-name = Volumen total del biodigestor
# of 8f8ad428, reviewed: false
facts-total_volume-description = Mezcla y espacio de gas juntos.
# of d366937a, reviewed: false
facts-supply_sufficiency-name = Lo que da el hato frente a lo que se alimenta
# of 6eb8f575, reviewed: false
facts-feed_sufficiency-name = Gas de la alimentación disponible frente al gas que se quiere
# of 13482b99, reviewed: false
facts-feed_sufficiency-description = De lo que dan los animales, o de la alimentación indicada, en un biodigestor que alcanza para toda ella.
# of 65d7e0f0, reviewed: false
facts-dose_share-name = Mezcla de una alimentación frente al volumen de trabajo
# of c4b48dab, reviewed: false
facts-rotation_sufficiency-name = Suministro constante de gas de los biodigestores por lotes en turno frente a la demanda
# of 0bf0955c, reviewed: false
facts-rotation_sufficiency-description = De la rotación que se indica, o de la mayor cuando ninguna cubre la demanda.
# of 7ce50edf, reviewed: false
facts-charge_start_reliability-name = Cargas que llegan a dar gas que arde
# of 7fb095e1, reviewed: false
facts-charge_start_reliability-description = Parte de las cargas plausibles de este material, dilución, inóculo y temperatura, según el modelo del proceso.
# of fada7abd, reviewed: false
facts-full_gas_pressure_margin-name = Presión del espacio de gas lleno frente a la que soporta la estructura
# of e8183de3, reviewed: false
facts-full_gas_pressure_margin-description = Presión manométrica con la mezcla en el rebosadero, dividida entre la presión de operación más alta de este tipo de estructura.
# of 455938f7, reviewed: false
facts-coldest_month_air_temperature-name = Aire en el mes más frío
# of b96b607e, reviewed: false
facts-coldest_month_air_temperature-description = Promedio del mes, de día y de noche.
# of 7d49aff9, reviewed: false
facts-coldest_slurry_temperature-name = Mezcla en el mes más frío
# of 09df1094, reviewed: false
facts-warmest_slurry_temperature-name = Mezcla en el mes más cálido
# of 293f9c5c, reviewed: false
facts-cold_season_gas_share-name = Gas en el mes más frío frente al promedio del año
# of e969d0af, reviewed: false
facts-cold_season_gas_share-description = Con la misma alimentación; el promedio del año es el que corresponde a su temperatura media.
# of 7b8441d0, reviewed: false
facts-digestate_on_fodder-name = Se aplica digestato a forraje o pasturas
# of 41262265, reviewed: false
facts-nitrogen_per_area-name = Nitrógeno del estiércol en el campo que más recibe
# of e11be87a, reviewed: false
facts-nitrogen_per_area-description = Nitrógeno total por año, de todo el estiércol y el digestato, tal como se lleva al campo.
# of e26ebce6, reviewed: false
facts-slurry_store_sufficiency-name = Depósito de digestato frente a lo que se junta entre dos aplicaciones
# of d23db8a2, reviewed: false
facts-acid_ratio_forecast-name = Relación más alta prevista entre ácidos volátiles y alcalinidad
# of 81353237, reviewed: false
facts-acid_ratio_forecast-description = Del biodigestor típico después de su primer mes; es una previsión y no una medición.
# of 207814f7, reviewed: false
facts-longest_feeding_gap-name = El lapso más largo que no cubre ningún plan de alimentación
# of 8138a6e0, reviewed: false
facts-gas_ratio-name = Gas medido frente al gas que se espera de la alimentación
# of 2955b37c, reviewed: false
facts-gas_ratio-description = Frente al valor típico de lo que esta alimentación da en este biodigestor a su temperatura.
# of 6dce636b, reviewed: false
facts-gas_ratio_to_low-name = Gas medido frente al mínimo que se espera de la alimentación
# of a7b8fdd1, reviewed: false
facts-gas_ratio_to_low-description = Por debajo de 1 hay menos gas del que tendrían diecinueve de cada veinte fincas como esta.
# of a2ca34b8, reviewed: false
facts-methane_in_gas-name = Metano en el biogás
# of ae50fed1, reviewed: false
facts-methane_in_gas-description = En volumen, del gas tal como sale del biodigestor.
# of 83eb4b18, reviewed: false
facts-volatile_acids_to_alkalinity-name = Ácidos volátiles frente a la alcalinidad de la mezcla
# of 71820242, reviewed: false
facts-volatile_acids_to_alkalinity-description = Ambos en la misma unidad, tal como se midieron.
# of cb4431b4, reviewed: false
facts-days_since_feeding-name = Tiempo desde la última alimentación
# of 36dce85f, reviewed: false
facts-digester_age-name = Tiempo desde que el biodigestor se llenó por primera vez
# of bb580a91, reviewed: false
facts-total_volume_to_smallest-name = Volumen total frente al menor que se construye de este tipo
# of c7dcc51b, reviewed: false
facts-total_volume_to_largest-name = Volumen total frente al mayor que se construye de este tipo
# of 813f3d2b, reviewed: false
facts-gas_storage_to_usual-name = Depósito de gas frente a lo usual para el volumen total
# of c785d217, reviewed: false
facts-herd_to_largest_herd-name = Estiércol del hato frente a lo máximo que admite el biodigestor
# of 1041db11, reviewed: false
facts-herd_to_largest_herd-description = Con el agua usual, a la retención más corta que es usual a su temperatura.
# of 40970afc, reviewed: false
facts-herd_to_smallest_herd-name = Estiércol del hato frente a lo mínimo que llena el biodigestor
# of 25ec9f4a, reviewed: false
facts-herd_to_smallest_herd-description = Con el agua usual, a la retención más larga que es usual a su temperatura.
# of 9f25cf16, reviewed: false
facts-mean_air_temperature-name = Aire, media del año
# of 496ace8e, reviewed: false
facts-feed_to_herd_most-name = Alimentación frente a lo máximo que puede dar el hato
# of 2533fa83, reviewed: false
facts-water_to_wettest-name = Agua de mezcla frente a lo máximo con que se diluye este material
# of bfcac76f, reviewed: false
facts-gas_ratio_to_high-name = Gas medido frente a lo máximo que se espera de la alimentación
# of f3a523ae, reviewed: false
facts-gas_pressure_to_highest-name = Presión del gas frente a la mayor en uso con este tipo de biodigestor
# of 98262224, reviewed: false
facts-gas_is_measured-name = Se midió el gas de un día
# of 7ad14ada, reviewed: false
facts-age_at_visit-name = Tiempo desde la puesta en marcha hasta la visita
# of 983d2788, reviewed: false
facts-age_over_retention-name = Edad del biodigestor frente a la retención de diseño
# of 535e0a69, reviewed: false
facts-methane_loss_over_saving-name = Calentamiento por el metano que se pierde frente a lo que se ahorra
