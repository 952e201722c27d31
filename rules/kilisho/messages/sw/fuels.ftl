# of 98796c81, reviewed: false
fuels-firewood-name = Kuni kwenye moto wa wazi
# of 2632c885, reviewed: false
fuels-charcoal-name = Mkaa
# of cfa222cc, reviewed: false
fuels-bottled_gas-name = Gesi ya mtungi (LPG)
# of af4c1c28, reviewed: false
fuels-paraffin-name = Mafuta ya taa
# of 27c9e3ce, reviewed: false
fuels-electricity-name = Umeme wa gridi
