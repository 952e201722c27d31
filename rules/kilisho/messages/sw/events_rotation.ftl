# of 54263957, reviewed: false
event-first_charge = Ujazaji wa kwanza
# of 83a7c7cd, reviewed: false
event-open_and_empty = Fungua na ondoa tope
# of ab63e910, reviewed: false
event-recharge = Jaza upya
