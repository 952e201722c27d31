## The heap of each substrate in words; $name is the substrate
heap-gathered = { $days ->
    [one] { $name }: { $days } day brings { $brought }, of which { $left } are left at filling.
   *[other] { $name }: { $days } days bring { $brought }, of which { $left } are left at filling.
}
# $there is what lay on the heap before anybody gathered for it.
heap-added = { $days ->
    [one] { $name }: { $there } lay there, and { $days } day brings { $brought }, of which { $left } are left at filling.
   *[other] { $name }: { $there } lay there, and { $days } days bring { $brought }, of which { $left } are left at filling.
}
heap-needed = The charge needs { $needed }.
heap-short = That is { $short } too little.

## The whole stockpile, told after its heaps
stockpile-enough = That is enough.
stockpile-never = Own collection alone never suffices.
stockpile-enough-on = { $days ->
    [one] Own collection suffices after { $days } day, on { $date }.
   *[other] Own collection suffices after { $days } days, on { $date }.
}
# $keeps is a number of days.
stockpile-too-old = { $days ->
    [one] By then the oldest dung is { $days } day old, past the { $keeps } that it keeps under this cover.
   *[other] By then the oldest dung is { $days } days old, past the { $keeps } that it keeps under this cover.
}
assumed-cover = Nobody said that the heap is covered.

## Ways to close what is short
remedy-purchase = Take { $bought } from others.
remedy-never = Own collection never suffices.
# $keeps is a time with its unit.
remedy-wait = { $days ->
    [one] Wait until { $days } day of own dung lies there; dung keeps { $keeps } under this cover.
   *[other] Wait until { $days } days of own dung lie there; dung keeps { $keeps } under this cover.
}
remedy-starter = Replace the missing part by digested slurry from a working digester whose animals are healthy.
# $share and $least are percentages.
remedy-smaller-fill = Fill to { $share } of the total volume and add the rest as dung comes in; inlet and outlet must stay under slurry (usually from { $least }).

## The work
# $mass is what is bought or given, with its unit.
labour-hauling = { $mass } come from elsewhere. Hauling them to the farm is not counted in these hours: plan a cart or a vehicle for it.

## Filling
fill = Fill in one go: mix lump-free with water, keep out sand, stones and long straw.
# $names are facts to confirm, such as the water tightness test.
fill-refused = Do not fill. Not met: { $names }.
fill-when-there = Fill only when the missing part is there.
# $fill is how to fill, as whole sentences.
fill-once-confirmed = Once these are confirmed: { $names }. { $fill }

## From the full digester to the first feed, step by step
start-up-close = Close the gas outlet only after the air has been pushed out as far as the filling allows; keep every flame away from the plant.
start-up-vent = { $cycles ->
    [one] Let the first gas out into the open air, unburnt and down to no pressure, once the gas space has filled.
   *[other] Let the first gas out into the open air, unburnt and down to no pressure, each time the gas space has filled, { $cycles } times in all.
}
start-up-flame = Only then try the flame: outdoors, on the appliance at the end of its pipe, never at the dome, the lid or the outlet.
start-up-again = If it does not burn steadily with a blue flame, vent again, wait a day or two and try again; do not feed.
start-up-feed = Once it burns steadily for three days, begin the maintenance feed with a quarter of the full amount.
start-up-sours = Such a charge sours easily: charge with fresh cattle or buffalo dung alone, with digested slurry from a working digester where it can be had, and bring in the rest once it burns.
start-up-latrine = Nothing from the latrine is part of the charge: connect it once the gas burns, so that it drains straight in and nobody handles what it brings.

## The schedule
schedule-confirm = Confirm curing, water tightness and gas tightness; do not fill before.
schedule-collect = Start gathering clean dung under cover.
schedule-purchases = Have everything bought in and covered beside the digester.
schedule-first-gas = From now on gas forms, mixed with air: let it out in the open, unburnt, and keep every flame away.
schedule-flame = Try the flame outdoors on the appliance, after venting.
schedule-flame-unsure = Try the flame outdoors on the appliance, after venting; do not count on it without digested slurry from a working digester.
schedule-flame-sours = Try the flame outdoors on the appliance, after venting; do not count on it, since such a charge sours easily.
# $share is a percentage.
schedule-feed = Once it burns steadily for three days: feed { $share } of the full amount daily.
