# of 905190b7, reviewed: false
unit-years = { $count ->
    [one] { $shown } año
   *[other] { $shown } años
}
# of d36b5147, reviewed: false
unit-days = { $count ->
    [one] { $shown } día
   *[other] { $shown } días
}
# of 132a2c16, reviewed: false
unit-hours = { $count ->
    [one] { $shown } hora
   *[other] { $shown } horas
}
# of 3ed03781, reviewed: false
unit-kilograms_a_day = { $shown } kg al día
# of 2044a672, reviewed: false
unit-kilograms_a_cubic_metre_and_day = { $shown } kg/m³ al día
# of 28c908ad, reviewed: false
unit-litres_a_day = { $shown } L al día
# of 9caa1834, reviewed: false
unit-cubic_metres_a_day = { $shown } m³ al día
# of 67f466f3, reviewed: false
unit-cubic_metres_an_hour = { $shown } m³ por hora
# of 3f3f0c1d, reviewed: false
amount-range = { $amount } ({ $low } a { $high })
