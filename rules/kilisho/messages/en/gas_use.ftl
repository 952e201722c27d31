## What the greatest flow in the pipe rests on.
use-busiest-hour = the busiest of the stated hours
use-all-at-once = all appliances at once
use-cooking-hours = a day's gas within the usual hours of cooking

## The pipe.
use-no-pipe-serves = No size of the rulebook keeps the limit: shorten the pipe, lay two, or burn less at once.
# $size is the name of a pipe of the rulebook.
use-pipe-at-least = At least: { $size }. It keeps the limit even at the high end of the flow; every wider one does too.

## Hours and feed.
use-hours-unknown = State the hours of use of every appliance to follow the gas through the day.
use-feed-needed = Fed evenly, at 25 Cel and 60 days' retention; a colder digester needs more. Size the digester to know.

## What the gas is burnt for.
use-for-cooking = Cooking
use-for-heating = Heating
use-for-refrigeration = Refrigeration
use-for-lighting = Lighting
use-for-shaft-power = Engine power
use-for-electricity = Electricity
use-for-other = Other uses
# $gas is an amount of gas a day.
use-not-for-cooking = Gas for other uses than cooking: { $gas }. It does not count in the place of cooking fuels.
use-cooking-counts = It counts in the place of cooking fuels.
use-electricity-counts = It replaces no cooking fuel. The electricity made of it counts in the place of as much electricity, where that is among the fuels.
use-electricity-uncounted = It replaces no cooking fuel. The electricity made of it counts for nothing, as no electricity is among the fuels: state it if it is bought or generated now.
use-light-uncounted = It replaces no cooking fuel. Lamp oil or candles that it may save are not counted: the rulebook has no figures to compare lamps by their light.
use-other-uncounted = It replaces no cooking fuel. What it may save in other ways is not counted: the rulebook has no figures to compare it by.

## Carbon dioxide saved against methane lost.
use-saves = The saved fuel outweighs the methane that is lost, over the whole range.
use-harms = The methane that is lost warms more than the saved fuel would have: find the leaks and use all gas.
use-uncertain = Leaks and venting may undo what the saved fuel gains: only a tight plant whose gas is all used is sure to help.
# The same three where it is counted, too, what the manure would have given off if it had been kept as before.
use-saves-with-manure = The saved fuel and the methane that the manure no longer gives off outweigh the methane that is lost, over the whole range.
use-harms-with-manure = The methane that is lost warms more than the saved fuel and the methane of the manure would have: find the leaks and use all gas.
use-uncertain-with-manure = Leaks and venting may undo what the saved fuel and manure gain: only a tight plant whose gas is all used is sure to help.

## What the balance of emissions does not count.
use-left-out-fire = Methane, nitrous oxide and soot of the fire that is replaced, and the making of charcoal: they would raise what is saved.
use-left-out-uses = What gas saves that is not for cooking, such as lamp oil, engine fuel or electricity: it would raise what is saved.
use-left-out-manure = Methane that the dung would have given off on a heap or field, which the digester may spare.
use-left-out-nitrous-oxide = Nitrous oxide that the manure would have given off as it was kept before.
use-left-out-slip = Methane that slips unburnt through the burner, or comes from the digested slurry after it has left the plant.
use-left-out-fertiliser = Fertiliser that the digested slurry replaces, and the building of the plant.

## Why something was assumed.
use-store-unknown = Nobody stated the store: it is taken as large as this use needs.
use-pipe-material-unknown = Nobody stated it; it is the rougher one.
use-feed-unknown = Nobody said what would be fed.
use-climate-unknown = Nobody stated the air's mean temperature: of cool, temperate and warm, cool is taken, where manure gives off least methane.
