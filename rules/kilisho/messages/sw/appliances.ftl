# of 92ee81bb, reviewed: false
appliances-single_burner_stove-name = Jiko lenye kichomeo kimoja
# of a897a247, reviewed: false
appliances-double_burner_stove-name = Jiko lenye vichomeo viwili
# of 2da8c3c9, reviewed: false
appliances-mantle_lamp-name = Taa ya gesi yenye wavu (mantili)
# of fda4dd9d, reviewed: false
appliances-refrigerator_100_litre-name = Friji ya gesi (ya ufyonzaji) ya lita 100
# of 7cabe6bb, reviewed: false
appliances-petrol_engine_per_kilowatt-name = Injini ya petroli inayotumia biogesi, kwa kilowati kwenye shafti
# of 6486243d, reviewed: false
appliances-generator_per_kilowatt-name = Jenereta ndogo, kwa kilowati ya umeme
# of da60be9a, reviewed: false
appliances-brooder_heater-name = Hita ya vifaranga au watoto wa nguruwe
