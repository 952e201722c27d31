# of 351450b7, reviewed: false
fault-volume_missing = indiquez total_volume, working_volume ou les deux
# of 38ead25f, reviewed: false
fault-exceeds_total_volume = ne doit pas dépasser total_volume
# of 0b7d8b2a, reviewed: false
fault-two_dilutions = indiquez water_to_feed_by_volume ou target_total_solids, pas les deux
# of 0ba9bcf1, reviewed: false
fault-shares_of_substrates = les parts de tous les substrats doivent faire 1
# of 287181ac, reviewed: false
fault-mass_for_some = indiquez la masse de chaque substrat ou d'aucun
# of 9d1d304f, reviewed: false
fault-mass_and_share = indiquez des masses ou des parts, pas les deux
# of 6804654b, reviewed: false
fault-substrate_twice = nommez chaque substrat une seule fois
# of a62a8c45, reviewed: false
fault-amount_missing = indiquez available, per_day ou les deux
# of e1a75ba2, reviewed: false
fault-month_out_of_range = n'est pas une température possible de l'air dans cette unité
# of 807c197f, reviewed: false
fault-mass_or_shares_unknown = indiquez sa masse ou les parts : aucun animal du troupeau ne le donne
# of 5d60fa4e, reviewed: false
fault-no_gas_for_demand = ne peut pas couvrir une demande de gaz : aucun de ces substrats ne donne de gaz
# of 006c29e0, reviewed: false
fault-demand_twice = indiquez la demande une seule fois : gas_demand, appliances ou people_cooked_for
# of 97a9211c, reviewed: false
fault-nothing_to_size_for = indiquez un troupeau avec des animaux, une alimentation avec des masses, ou une demande de gaz
# of e708001b, reviewed: false
fault-starter_fills_digester = doit laisser de la place au mélange frais
# of 3cf4737d, reviewed: false
fault-charge_and_starter_too_large = la charge et son ensemencement font plus de substrat que total_volume n'en contient
# of d74a31ea, reviewed: false
fault-fuel_twice = nommez chaque combustible une seule fois
# of 2f1846ee, reviewed: false
fault-not_manure = seuls la bouse, les fientes et l'urine d'animaux comptent ici comme fumier
# of f69495b5, reviewed: false
fault-shares_of_fuels = les parts de tous les combustibles ne doivent pas dépasser 1
# of 17700121, reviewed: false
fault-substrate_gives_no_gas = ce substrat ne donne pas de gaz
# of fa728bab, reviewed: false
fault-nothing_to_use = indiquez appliances, people_cooked_for, gas_demand ou biogas_per_day
# of be2db2d0, reviewed: false
fault-nothing_to_forecast = indiquez un premier remplissage, une alimentation d'entretien, ou les deux
# of 5deaa2ba, reviewed: false
fault-until_before_from = ne doit pas être avant from
# of 3ebfbfb0, reviewed: false
fault-plans_overlap = commence avant qu'un autre plan ne soit fini ; indiquez une seule alimentation pour chaque jour
# of fc6edc1f, reviewed: false
fault-mass_unknown = indiquez sa masse : aucun animal du troupeau ne le donne
# of 8c864625, reviewed: false
fault-mass_expected = une alimentation s'indique par des masses, ou se prend du troupeau
# of 3dfb4100, reviewed: false
fault-charge_too_large = la charge fait plus de substrat que total_volume n'en contient
# of 24740440, reviewed: false
fault-masses_too_large = les masses indiquées font plus de substrat que total_volume n'en contient
# of d950a26d, reviewed: false
fault-fact_denied = contredit ce qui découle du reste de la requête ; omettez-le ou faites-les concorder
# of 82994942, reviewed: false
fault-use_without_length = finit comme il commence ; un jour entier va de 00:00 à 24:00
# of 1b3bd5c7, reviewed: false
fault-use_overlaps = les heures se chevauchent ; listez à part un second appareil qui brûle en même temps
# of 0a20065b, reviewed: false
fault-hours_denied = contredit les heures d'usage ; indiquez l'un des deux
# of 735d7c47, reviewed: false
fault-not_fed_daily = un digesteur discontinu se remplit une fois ; un mélange quotidien est pour d'autres
# of 3d32d5d8, reviewed: false
fault-demand_missing = indiquez le gaz que doit donner le mélange le moins cher ; sans cela, le moins cher est aucun
# of ebbb9a67, reviewed: false
fault-volume_unstated = indiquez working_volume ou le digesteur
# of 1da25d81, reviewed: false
fault-volume_twice = indiquez-le dans le digesteur
# of 050d2d39, reviewed: false
fault-available_unknown = indiquez available ou stock : aucun animal du troupeau ne le donne
# of 1e041134, reviewed: false
fault-nothing_to_mix = indiquez au moins un substrat dont il y a quelque chose
# of 671bac13, reviewed: false
fault-nothing_to_charge = indiquez un substrat qui est ramassé pour le remplissage ; une latrine se raccorde une fois que le gaz brûle
# of 67d1177a, reviewed: false
fault-retention_twice = indiquez hydraulic_retention_time ou le digesteur, pas les deux
# of b986de5e, reviewed: false
fault-water_and_dilution = indiquez water ou dilution, pas les deux
# of 1c8df9f0, reviewed: false
fault-urine_twice = l'alimentation nomme déjà l'urine de bovin
# of 02eddb36, reviewed: false
fault-daily_mass_unknown = indiquez la masse de chaque substrat par jour, ou un troupeau qui la donne
# of 9b568c1b, reviewed: false
fault-gas_exceeds_feed = avec ces propriétés, il partirait en gaz plus qu'il n'est donné
# of 93eeaffd, reviewed: false
fault-symptom_twice = nommez chaque symptôme une seule fois, comme vu ou comme non vu
# of c998fa51, reviewed: false
fault-nothing_to_diagnose = indiquez un symptôme, un relevé ou un fait
# of a74806bf, reviewed: false
fault-temperature_twice = diffère de /climate/digester_temperature
# of 2c776bdd, reviewed: false
fault-gas_from_nothing = avec ces propriétés, l'alimentation ne donne pas de gaz, et pourtant du gaz a été mesuré
# of dacd3047, reviewed: false
fault-calendar_needs_date = un calendrier a besoin de cette date
# of 1c8c2cb6, reviewed: false
fault-drawing_needs_hours = le dessin a besoin du gaz par jour et des heures d'horloge de chaque appareil
# of bd552fc1, reviewed: false
fault-outside_forecast = doit se trouver dans la prévision, du { $first } au { $last }
# of eb822dbe, reviewed: false
fault-too_many_substrates = au plus { $most } substrats en tout ; le même avec d'autres valeurs mesurées compte encore une fois
# of d748b0c5, reviewed: false
fault-ready_too_early_or_late = doit se trouver de 0 à { $most } jours après /stockpile/starts_on
# of 7da88abd, reviewed: false
fault-differs_from_group = diffère de ce que dit { $group }
# of d002d724, reviewed: false
fault-limits_disordered = doit être inférieur à { $other }
# of f0b2651f, reviewed: false
fault-number_in_unit = un nombre en { $unit }, ou un objet avec value et unit
# of 318b87e0, reviewed: false
fault-value_and_unit = un objet avec exactement value et { $key }
# of 6e228bb6, reviewed: false
fault-unit_expected = { $key } doit être un code UCUM, en texte
# of a8f68452, reviewed: false
fault-unknown_unit = n'est pas une unité que ce champ connaît ; utilisez l'une de { $allowed }
# of 6e5d4651, reviewed: false
fault-out_of_range = doit être d'au moins { $least } et d'au plus { $most }
# of b1a5ec7a, reviewed: false
fault-out_of_range_in_unit = doit être d'au moins { $least } et d'au plus { $most } { $unit }
# of b2bcf1c2, reviewed: false
fault-out_of_range_mind_unit = doit être d'au moins { $least } et d'au plus { $most } { $unit } ; attention à l'unité
# of ef06b86b, reviewed: false
fault-whole_number = un nombre entier
# of 9241d54b, reviewed: false
fault-plain_number = un nombre sans unité
# of 9921ea22, reviewed: false
fault-date_expected = un jour existant sous la forme YYYY-MM-DD, de { $first } à { $last }
# of ed50d401, reviewed: false
fault-yes_no_expected = true ou false
# of ee2b455f, reviewed: false
fault-text_expected = un texte de 1 à { $longest } caractères
# of ced72f18, reviewed: false
fault-clock_expected = une heure sous la forme HH:MM sur 24 h
# of 72435ddd, reviewed: false
fault-id_expected = un id en texte d'au plus { $longest } caractères
# of cf6370a0, reviewed: false
fault-unknown_id = n'est pas un id de { $section } du référentiel
# of 7e9a3158, reviewed: false
fault-not_one_of = doit être l'un de { $allowed }
# of 0b9136dd, reviewed: false
fault-list_of = une liste d'au plus { $most } parmi : { $allowed }
# of 1a182e37, reviewed: false
fault-too_few_items = a trop peu d'éléments
# of fe1341b9, reviewed: false
fault-too_many_items = a trop d'éléments
# of 34c333d1, reviewed: false
fault-missing = ce membre est obligatoire
# of a7e98e8f, reviewed: false
fault-no_such_member = il n'y a pas de tel membre ici
# of ce38118b, reviewed: false
fault-object_expected = un objet était attendu
# of 1509e4f7, reviewed: false
fault-list_expected = une liste était attendue
# of e88ff115, reviewed: false
fault-structure_twice = diffère de /structure ; indiquez un seul type de digesteur
# of 1eeec20a, reviewed: false
fault-ready_before_building = ne doit pas être avant /construction/starts_on
# of 6c491d1d, reviewed: false
fault-months_deny = diffère de ce que donne /climate/monthly_air_temperature ; omettez-le ou faites-les concorder
