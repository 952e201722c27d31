# Amounts: $shown is the number as it is written, $count chooses the plural.
unit-years = { $count ->
    [one] { $shown } year
   *[other] { $shown } years
}
unit-days = { $count ->
    [one] { $shown } day
   *[other] { $shown } days
}
unit-hours = { $count ->
    [one] { $shown } hour
   *[other] { $shown } hours
}
unit-kilograms_a_day = { $shown } kg a day
unit-kilograms_a_cubic_metre_and_day = { $shown } kg/m³ a day
unit-litres_a_day = { $shown } L a day
unit-cubic_metres_a_day = { $shown } m³ a day
unit-cubic_metres_an_hour = { $shown } m³ an hour
amount-range = { $amount } ({ $low } to { $high })
