# of 98796c81, reviewed: false
fuels-firewood-name = Bois de feu sur foyer ouvert
# of 2632c885, reviewed: false
fuels-charcoal-name = Charbon de bois
# of cfa222cc, reviewed: false
fuels-bottled_gas-name = Gaz en bouteille (GPL)
# of af4c1c28, reviewed: false
fuels-paraffin-name = Pétrole lampant (kérosène)
# of 27c9e3ce, reviewed: false
fuels-electricity-name = Électricité du réseau
