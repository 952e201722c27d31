# of 92ee81bb, reviewed: false
appliances-single_burner_stove-name = Hornilla de un quemador
# of a897a247, reviewed: false
appliances-double_burner_stove-name = Hornilla de dos quemadores
# of 2da8c3c9, reviewed: false
appliances-mantle_lamp-name = Lámpara de camisa
# of fda4dd9d, reviewed: false
appliances-refrigerator_100_litre-name = Refrigeradora de absorción de 100 litros
# of 7cabe6bb, reviewed: false
appliances-petrol_engine_per_kilowatt-name = Motor de gasolina a biogás, por kilovatio en el eje
# of 6486243d, reviewed: false
appliances-generator_per_kilowatt-name = Grupo electrógeno pequeño, por kilovatio de electricidad
# of da60be9a, reviewed: false
appliances-brooder_heater-name = Calentador para pollitos o lechones
