# Events of schedules and calendars, as short as a title.

## First charge
event-confirm_tests = Confirm tests
event-start_collecting = Start collecting
event-bring_purchases = Bring purchases
event-fill = Fill
event-first_gas = First gas
event-flame_test = Flame test
event-feed_25_per_cent = Feed 25 per cent
event-feed_50_per_cent = Feed 50 per cent
event-feed_75_per_cent = Feed 75 per cent
event-feed_100_per_cent = Feed 100 per cent

## Maintenance feed
event-feed = Feed
event-clear_sand = Clear sand
event-soap_test = Soap test
event-desludging_due = Desludging due
