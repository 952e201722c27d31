## Words of the printed sheets. A sheet is two pages of A4 at most: words that are much longer than the English make a third.

### Every sheet

# Heads the box of dangers.
sheet-dangers = Read this first
sheet-container = Container
sheet-dung-or-feed = Dung or feed
sheet-water = Water
sheet-urine = Urine
sheet-full-weighs = Full of feed, one weighs
# $name is what is carried with, such as "bucket".
sheet-container-of = { $name }, { $volume }
sheet-whole-containers = Whole containers
sheet-days = Days
sheet-when = When
# Above a column of intervals such as "7 days".
sheet-again-every = Every
sheet-once = once
sheet-what-to-do = What to do
sheet-day = day { $day }
sheet-later-days =
    { $count ->
        [one] One later day stands in the calendar.
       *[other] { $count } later days stand in the calendar.
    }
# Heads a list of sentences that say what must hold, and does not.
sheet-failed = Not as it should be: these do not hold
# $title says what must hold.
sheet-failed-title = { $title }.
sheet-unknown = Not known
sheet-unknown-dangers = Nobody said whether these hold. Until somebody has looked, none of them is safe.
sheet-unknown-others =
    { $count ->
        [one] One more check, of lesser weight, lacks a fact; the full answer lists it.
       *[other] { $count } more checks, of lesser weight, lack a fact; the full answer lists them.
    }
sheet-all-known = Every check that belongs to this plan could be made.
sheet-measure = Measure first, for surer numbers
sheet-care = Take care
# Shown where the dangers stand there in two languages, which leaves no room for the rest.
sheet-lesser-cautions =
    { $count ->
        [one] One lesser caution is left out here to tell the dangers in English too; the full answer lists it.
       *[other] { $count } lesser cautions are left out here to tell the dangers in English too; the full answer lists them.
    }
sheet-notes = Notes
# A name and what stands beside it, such as "Cattle dung: 90 kg".
sheet-pair = { $name }: { $value }
sheet-brackets = Numbers in brackets are the range in which nine of ten cases lie.
sheet-assumed =
    { $count ->
        [one] One figure was assumed where nothing was stated; the answer lists it.
       *[other] { $count } figures were assumed where nothing was stated; the answer lists them.
    }
sheet-worked-out = Worked out by Kilisho with rulebook { $id } { $version } ({ $hash }).
# Shown in a language other than English as long as speakers have not read its sentences.
sheet-not-reviewed = No speaker has reviewed this translation yet. Where in doubt, ask somebody who reads English.
sheet-untranslated =
    { $count ->
        [one] One sentence is English for want of a translation.
       *[other] { $count } sentences are English for want of a translation.
    }

## Signal words, from the gravest on; a sheet shows them in capitals
signal-danger = danger
signal-warning = warning
signal-caution = caution
signal-notice = notice

### The sheet of a first charge

sheet-charge-title = First charge
sheet-what-goes-in = What goes in
sheet-in-one-go = In one go, once all is confirmed
sheet-slurry = Slurry
sheet-same-in-containers = The same, in whole containers
sheet-work = { $hours } of work.
sheet-work-days =
    { $days ->
        [one] { $hours } of work, in one day with the people who help.
       *[other] { $hours } of work, in { $days } days with the people who help.
    }
sheet-confirm = Confirm before filling
sheet-confirm-state = { $name }:
sheet-confirmed = confirmed
sheet-refused = NOT MET: do not fill
sheet-state-unknown = not known: do not fill before it is
sheet-gather = Gather enough
sheet-start-by = To have enough on the day of filling, start by { $date }.
# $name is who sells or gives it.
sheet-from = From { $name }: { $mass }.
sheet-ways = Ways to close what is missing:
sheet-no-way = { $mass } are missing, and no way to close that is open to this farm.
sheet-heap = The heap
sheet-first-flame = First gas and first flame
sheet-may-not-start = This charge may not start by itself. Get digested slurry from a working digester.
sheet-burns-after = Burnable gas after { $modelled } by the process model, after { $practice } in practice. Try no flame before its day above.
sheet-burns-in-practice = After { $practice } in practice. Try no flame before its day above.
# $steps are several of sheet-from-day with commas between them.
sheet-then-feed = Then feed, { $steps }.
sheet-from-day = from day { $day } on { $feed }

### The sheet of a maintenance feed

sheet-feed-title = Feeding the digester
sheet-at-each-feeding = At each feeding, every { $every }
sheet-at-each-feeding-daily = At each feeding, every day
sheet-weighed = The same, weighed and measured
sheet-urine-for-water = Urine, in place of water
sheet-expect = What to expect
sheet-mean-of-year = In the mean of the year
sheet-left-over = Not fed, for the field
sheet-gas-as-used = Gas, as used
sheet-digestate = Digestate
sheet-retention = Hydraulic retention time
sheet-storing = Storing, and after missed feedings
sheet-largest-feeding = At one feeding at most { $mass }.
sheet-missed =
    { $missed ->
        [one] One feeding was missed: make it up over { $over } feedings.
       *[other] { $missed } feedings were missed: make them up over { $over } feedings.
    }

### The sheet of a farm plan

sheet-plan-title = Biogas plan
sheet-from-on = From { $date } on; before that as the days below say.
sheet-bucket-weighs = { $container }; full of feed, one weighs { $load }.
# Heads a table of the plan's numbers.
sheet-in-numbers = The plan in numbers
sheet-built-already = The digester is chosen or built already.
sheet-volume-in-all = Digester, in all
sheet-gas-store = Gas that it stores
sheet-charge-feed = First filling, feed
sheet-charge-water = First filling, water
# $name is what is carried with, such as "bucket".
sheet-charge-in = First filling, { $name }
# Two numbers of containers.
sheet-feed-and-water = { $feed } of feed, { $water } of water
sheet-missing-so-far = Missing so far
sheet-gas-wanted = Gas wanted
sheet-of-it-covered = { $gas }, { $share } met
sheet-enough-for = Enough for
sheet-year = Gas through the first year
sheet-year-caption = Each bar is the typical gas of its month in m³ a day, the upright line what nine of ten such farms would get.
# $starts is a share in per cent.
sheet-year-starts = Such a charge starts by itself in { $starts } of cases only. Where it does not, these bars are gas that does not burn: add digested slurry from a working digester, and wait with feeding until it burns.
# $operation is the name of a part of the plan; $because a reason that begins with a small letter.
sheet-left-out = Not in this plan: { $operation }, since { $because }.

## Parts of a farm plan
operation-sizing = Sizing
operation-first_charge = First charge
operation-maintenance_feed = Maintenance feed
operation-gas_forecast = Gas forecast
operation-gas_use = Gas use
operation-digestate = Digestate
operation-safety_check = Safety check
