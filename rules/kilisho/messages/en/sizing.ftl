## How the gas storage that the use asks for was found
storage-by-hours = hours of use
storage-by-share = share of a day's gas

# $retention is a time, $temperature a temperature, each with its unit.
trade-size = The trade sizes by dung per plant volume whatever the temperature; this size keeps { $retention } of retention in the coldest month at { $temperature }. A smaller plant costs less and gives less gas from the same dung.
dimensions-statement = Inner planning dimensions. Structural design, excavation and materials belong to a licensed engineer or mason and the local code.
dome-statement = For these planning dimensions. Pressure follows the levels of the real drawing; the design pressure of a dome, its overflow and its tests belong to a licensed engineer and the local code.
