# of 7a2d75ae, reviewed: false
event-confirm_tests = Confirmar las pruebas
# of 7ef97fd4, reviewed: false
event-start_collecting = Empezar a recolectar
# of 84134ce0, reviewed: false
event-bring_purchases = Traer lo comprado
# of 033955d4, reviewed: false
event-fill = Llenar
# of 2d3ceb74, reviewed: false
event-first_gas = Primer gas
# of 1f202daf, reviewed: false
event-flame_test = Prueba de la llama
# of f6e6666e, reviewed: false
event-feed_25_per_cent = Alimentar el 25 por ciento
# of 08882168, reviewed: false
event-feed_50_per_cent = Alimentar el 50 por ciento
# of ef0cc3b6, reviewed: false
event-feed_75_per_cent = Alimentar el 75 por ciento
# of a609e0fe, reviewed: false
event-feed_100_per_cent = Alimentar el 100 por ciento
# of 396c3cb1, reviewed: false
event-feed = Alimentar
# of a887a5be, reviewed: false
event-clear_sand = Sacar la arena
# of 7399c795, reviewed: false
event-soap_test = Prueba con jabón
# of d95e64d4, reviewed: false
event-desludging_due = Toca sacar el lodo
