# of 905190b7, reviewed: false
unit-years = { $count ->
    [one] { $shown } an
   *[other] { $shown } ans
}
# of d36b5147, reviewed: false
unit-days = { $count ->
    [one] { $shown } jour
   *[other] { $shown } jours
}
# of 132a2c16, reviewed: false
unit-hours = { $count ->
    [one] { $shown } heure
   *[other] { $shown } heures
}
# of 3ed03781, reviewed: false
unit-kilograms_a_day = { $shown } kg par jour
# of 2044a672, reviewed: false
unit-kilograms_a_cubic_metre_and_day = { $shown } kg/m³ par jour
# of 28c908ad, reviewed: false
unit-litres_a_day = { $shown } L par jour
# of 9caa1834, reviewed: false
unit-cubic_metres_a_day = { $shown } m³ par jour
# of 67f466f3, reviewed: false
unit-cubic_metres_an_hour = { $shown } m³ par heure
# of 3f3f0c1d, reviewed: false
amount-range = { $amount } ({ $low } à { $high })
