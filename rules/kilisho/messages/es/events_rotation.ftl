# of 54263957, reviewed: false
event-first_charge = Primera carga
# of 83a7c7cd, reviewed: false
event-open_and_empty = Abrir y vaciar
# of ab63e910, reviewed: false
event-recharge = Recargar
