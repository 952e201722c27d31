# of 54263957, reviewed: false
event-first_charge = Premier remplissage
# of 83a7c7cd, reviewed: false
event-open_and_empty = Ouvrir et vider
# of ab63e910, reviewed: false
event-recharge = Recharger
