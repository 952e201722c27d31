# of 905190b7, reviewed: false
unit-years = { $count ->
    [one] mwaka { $shown }
   *[other] miaka { $shown }
}
# of d36b5147, reviewed: false
unit-days = { $count ->
    [one] siku { $shown }
   *[other] siku { $shown }
}
# of 132a2c16, reviewed: false
unit-hours = { $count ->
    [one] saa { $shown }
   *[other] saa { $shown }
}
# of 3ed03781, reviewed: false
unit-kilograms_a_day = { $shown } kg kwa siku
# of 2044a672, reviewed: false
unit-kilograms_a_cubic_metre_and_day = { $shown } kg/m³ kwa siku
# of 28c908ad, reviewed: false
unit-litres_a_day = { $shown } L kwa siku
# of 9caa1834, reviewed: false
unit-cubic_metres_a_day = { $shown } m³ kwa siku
# of 67f466f3, reviewed: false
unit-cubic_metres_an_hour = { $shown } m³ kwa saa
# of 3f3f0c1d, reviewed: false
amount-range = { $amount } ({ $low } hadi { $high })
