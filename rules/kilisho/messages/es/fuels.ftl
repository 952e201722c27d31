# of 98796c81, reviewed: false
fuels-firewood-name = Leña en fuego abierto
# of 2632c885, reviewed: false
fuels-charcoal-name = Carbón vegetal
# of cfa222cc, reviewed: false
fuels-bottled_gas-name = Gas envasado (GLP)
# of af4c1c28, reviewed: false
fuels-paraffin-name = Queroseno (kerosene)
# of 27c9e3ce, reviewed: false
fuels-electricity-name = Electricidad de la red
