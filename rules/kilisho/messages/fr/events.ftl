# of 7a2d75ae, reviewed: false
event-confirm_tests = Confirmer les essais
# of 7ef97fd4, reviewed: false
event-start_collecting = Commencer la collecte
# of 84134ce0, reviewed: false
event-bring_purchases = Apporter les achats
# of 033955d4, reviewed: false
event-fill = Remplir
# of 2d3ceb74, reviewed: false
event-first_gas = Premier gaz
# of 1f202daf, reviewed: false
event-flame_test = Essai de la flamme
# of f6e6666e, reviewed: false
event-feed_25_per_cent = Alimenter à 25 pour cent
# of 08882168, reviewed: false
event-feed_50_per_cent = Alimenter à 50 pour cent
# of ef0cc3b6, reviewed: false
event-feed_75_per_cent = Alimenter à 75 pour cent
# of a609e0fe, reviewed: false
event-feed_100_per_cent = Alimenter à 100 pour cent
# of 396c3cb1, reviewed: false
event-feed = Alimenter
# of a887a5be, reviewed: false
event-clear_sand = Ôter le sable
# of 7399c795, reviewed: false
event-soap_test = Essai au savon
# of d95e64d4, reviewed: false
event-desludging_due = Retrait de la boue à faire
