# of 351450b7, reviewed: false
fault-volume_missing = indique total_volume, working_volume o ambos
# of 38ead25f, reviewed: false
fault-exceeds_total_volume = no debe superar total_volume
# of 0b7d8b2a, reviewed: false
fault-two_dilutions = indique water_to_feed_by_volume o target_total_solids, no ambos
# of 0ba9bcf1, reviewed: false
fault-shares_of_substrates = las partes de todos los sustratos deben sumar 1
# of 287181ac, reviewed: false
fault-mass_for_some = indique la masa de cada sustrato o de ninguno
# of 9d1d304f, reviewed: false
fault-mass_and_share = indique masas o partes, no ambas
# of 6804654b, reviewed: false
fault-substrate_twice = nombre cada sustrato una sola vez
# of a62a8c45, reviewed: false
fault-amount_missing = indique available, per_day o ambos
# of e1a75ba2, reviewed: false
fault-month_out_of_range = no es una temperatura posible del aire en esta unidad
# of 807c197f, reviewed: false
fault-mass_or_shares_unknown = indique su masa o las partes: ningún animal del hato lo da
# of 5d60fa4e, reviewed: false
fault-no_gas_for_demand = no puede cubrir una demanda de gas: ninguno de estos sustratos da gas
# of 006c29e0, reviewed: false
fault-demand_twice = indique la demanda una sola vez: gas_demand, appliances o people_cooked_for
# of 97a9211c, reviewed: false
fault-nothing_to_size_for = indique un hato con animales, una alimentación con masas o una demanda de gas
# of e708001b, reviewed: false
fault-starter_fills_digester = debe dejar espacio para mezcla fresca
# of 3cf4737d, reviewed: false
fault-charge_and_starter_too_large = la carga y su inóculo hacen más mezcla de la que cabe en total_volume
# of d74a31ea, reviewed: false
fault-fuel_twice = nombre cada combustible una sola vez
# of 2f1846ee, reviewed: false
fault-not_manure = aquí solo cuentan como estiércol las heces, la gallinaza y la orina de animales
# of f69495b5, reviewed: false
fault-shares_of_fuels = las partes de todos los combustibles no deben superar 1
# of 17700121, reviewed: false
fault-substrate_gives_no_gas = este sustrato no da gas
# of fa728bab, reviewed: false
fault-nothing_to_use = indique appliances, people_cooked_for, gas_demand o biogas_per_day
# of be2db2d0, reviewed: false
fault-nothing_to_forecast = indique una primera carga, una alimentación de mantenimiento o ambas
# of 5deaa2ba, reviewed: false
fault-until_before_from = no debe ser anterior a from
# of 3ebfbfb0, reviewed: false
fault-plans_overlap = comienza antes de que termine otro plan; indique una sola alimentación para cada día
# of fc6edc1f, reviewed: false
fault-mass_unknown = indique su masa: ningún animal del hato lo da
# of 8c864625, reviewed: false
fault-mass_expected = una alimentación se indica con masas o se toma del hato
# of 3dfb4100, reviewed: false
fault-charge_too_large = la carga hace más mezcla de la que cabe en total_volume
# of 24740440, reviewed: false
fault-masses_too_large = las masas indicadas hacen más mezcla de la que cabe en total_volume
# of d950a26d, reviewed: false
fault-fact_denied = contradice lo que se deduce del resto de la solicitud; omítalo o haga que concuerden
# of 82994942, reviewed: false
fault-use_without_length = termina cuando empieza; un día entero es de 00:00 a 24:00
# of 1b3bd5c7, reviewed: false
fault-use_overlaps = las horas se superponen; ponga por separado un segundo aparato que arde al mismo tiempo
# of 0a20065b, reviewed: false
fault-hours_denied = contradice las horas de uso; indique uno de los dos
# of 735d7c47, reviewed: false
fault-not_fed_daily = un biodigestor por lotes se llena una vez; una mezcla diaria es para otros
# of 3d32d5d8, reviewed: false
fault-demand_missing = indique el gas que debe dar la mezcla más barata; sin eso, la más barata es ninguna
# of ebbb9a67, reviewed: false
fault-volume_unstated = indique working_volume o el biodigestor
# of 1da25d81, reviewed: false
fault-volume_twice = indíquelo en el biodigestor
# of 050d2d39, reviewed: false
fault-available_unknown = indique available o stock: ningún animal del hato lo da
# of 1e041134, reviewed: false
fault-nothing_to_mix = indique al menos un sustrato del que haya algo
# of 671bac13, reviewed: false
fault-nothing_to_charge = indique un sustrato que se recoge para la carga; una letrina se conecta una vez que el gas arda
# of 67d1177a, reviewed: false
fault-retention_twice = indique hydraulic_retention_time o el biodigestor, no ambos
# of b986de5e, reviewed: false
fault-water_and_dilution = indique water o dilution, no ambos
# of 1c8df9f0, reviewed: false
fault-urine_twice = la alimentación ya nombra la orina de bovino
# of 02eddb36, reviewed: false
fault-daily_mass_unknown = indique la masa de cada sustrato por día, o un hato que lo dé
# of 9b568c1b, reviewed: false
fault-gas_exceeds_feed = con estas propiedades saldría como gas más de lo que se alimenta
# of 93eeaffd, reviewed: false
fault-symptom_twice = nombre cada síntoma una sola vez, como visto o como no visto
# of c998fa51, reviewed: false
fault-nothing_to_diagnose = indique un síntoma, una lectura o un hecho
# of a74806bf, reviewed: false
fault-temperature_twice = difiere de /climate/digester_temperature
# of 2c776bdd, reviewed: false
fault-gas_from_nothing = con estas propiedades la alimentación no da gas, y sin embargo se midió gas
# of dacd3047, reviewed: false
fault-calendar_needs_date = un calendario necesita esta fecha
# of 1c8c2cb6, reviewed: false
fault-drawing_needs_hours = el dibujo necesita el gas por día y las horas de reloj de cada aparato
# of bd552fc1, reviewed: false
fault-outside_forecast = debe estar dentro del pronóstico, de { $first } a { $last }
# of eb822dbe, reviewed: false
fault-too_many_substrates = a lo sumo { $most } sustratos en total; el mismo con otros valores medidos cuenta de nuevo
# of d748b0c5, reviewed: false
fault-ready_too_early_or_late = debe estar de 0 a { $most } días después de /stockpile/starts_on
# of 7da88abd, reviewed: false
fault-differs_from_group = difiere de lo que dice { $group }
# of d002d724, reviewed: false
fault-limits_disordered = debe estar por debajo de { $other }
# of f0b2651f, reviewed: false
fault-number_in_unit = un número en { $unit }, o un objeto con value y unit
# of 318b87e0, reviewed: false
fault-value_and_unit = un objeto con exactamente value y { $key }
# of 6e228bb6, reviewed: false
fault-unit_expected = { $key } debe ser un código UCUM, como texto
# of a8f68452, reviewed: false
fault-unknown_unit = no es una unidad que este campo conozca; use una de { $allowed }
# of 6e5d4651, reviewed: false
fault-out_of_range = debe ser al menos { $least } y a lo sumo { $most }
# of b1a5ec7a, reviewed: false
fault-out_of_range_in_unit = debe ser al menos { $least } y a lo sumo { $most } { $unit }
# of b2bcf1c2, reviewed: false
fault-out_of_range_mind_unit = debe ser al menos { $least } y a lo sumo { $most } { $unit }; fíjese en la unidad
# of ef06b86b, reviewed: false
fault-whole_number = un número entero
# of 9241d54b, reviewed: false
fault-plain_number = un número sin unidad
# of 9921ea22, reviewed: false
fault-date_expected = un día existente como YYYY-MM-DD, de { $first } a { $last }
# of ed50d401, reviewed: false
fault-yes_no_expected = true o false
# of ee2b455f, reviewed: false
fault-text_expected = texto de 1 a { $longest } caracteres
# of ced72f18, reviewed: false
fault-clock_expected = una hora como HH:MM en el reloj de 24 h
# of 72435ddd, reviewed: false
fault-id_expected = un id como texto de a lo sumo { $longest } caracteres
# of cf6370a0, reviewed: false
fault-unknown_id = no es un id de { $section } del libro de reglas
# of 7e9a3158, reviewed: false
fault-not_one_of = debe ser uno de { $allowed }
# of 0b9136dd, reviewed: false
fault-list_of = una lista de a lo sumo { $most } de: { $allowed }
# of 1a182e37, reviewed: false
fault-too_few_items = tiene muy pocos elementos
# of fe1341b9, reviewed: false
fault-too_many_items = tiene demasiados elementos
# of 34c333d1, reviewed: false
fault-missing = este miembro es obligatorio
# of a7e98e8f, reviewed: false
fault-no_such_member = aquí no hay tal miembro
# of ce38118b, reviewed: false
fault-object_expected = se esperaba un objeto
# of 1509e4f7, reviewed: false
fault-list_expected = se esperaba una lista
# of e88ff115, reviewed: false
fault-structure_twice = difiere de /structure; indique un solo tipo de biodigestor
# of 1eeec20a, reviewed: false
fault-ready_before_building = no debe ser anterior a /construction/starts_on
# of 6c491d1d, reviewed: false
fault-months_deny = difiere de lo que da /climate/monthly_air_temperature; omítalo o haga que concuerden
