# of 92ee81bb, reviewed: false
appliances-single_burner_stove-name = Réchaud à un brûleur
# of a897a247, reviewed: false
appliances-double_burner_stove-name = Réchaud à deux brûleurs
# of 2da8c3c9, reviewed: false
appliances-mantle_lamp-name = Lampe à manchon
# of fda4dd9d, reviewed: false
appliances-refrigerator_100_litre-name = Réfrigérateur à absorption de 100 litres
# of 7cabe6bb, reviewed: false
appliances-petrol_engine_per_kilowatt-name = Moteur à essence au biogaz, par kilowatt à l'arbre
# of 6486243d, reviewed: false
appliances-generator_per_kilowatt-name = Petit groupe électrogène, par kilowatt d'électricité
# of da60be9a, reviewed: false
appliances-brooder_heater-name = Chauffage pour poussins ou porcelets
