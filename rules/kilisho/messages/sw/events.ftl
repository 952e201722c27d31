# of 7a2d75ae, reviewed: false
event-confirm_tests = Thibitisha majaribio
# of 7ef97fd4, reviewed: false
event-start_collecting = Anza kukusanya
# of 84134ce0, reviewed: false
event-bring_purchases = Leta vilivyonunuliwa
# of 033955d4, reviewed: false
event-fill = Jaza
# of 2d3ceb74, reviewed: false
event-first_gas = Gesi ya kwanza
# of 1f202daf, reviewed: false
event-flame_test = Jaribio la mwali
# of f6e6666e, reviewed: false
event-feed_25_per_cent = Lisha asilimia 25
# of 08882168, reviewed: false
event-feed_50_per_cent = Lisha asilimia 50
# of ef0cc3b6, reviewed: false
event-feed_75_per_cent = Lisha asilimia 75
# of a609e0fe, reviewed: false
event-feed_100_per_cent = Lisha asilimia 100
# of 396c3cb1, reviewed: false
event-feed = Lisha
# of a887a5be, reviewed: false
event-clear_sand = Ondoa mchanga
# of 7399c795, reviewed: false
event-soap_test = Jaribio la sabuni
# of d95e64d4, reviewed: false
event-desludging_due = Wakati wa kuondoa mashapo
