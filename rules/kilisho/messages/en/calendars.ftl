## Words of the calendars, which stand in an event's title and in its description.

# $event is what is done, such as "Recharge"; $digester the number of the digester of several.
calendar-event-of-digester = { $event }, digester { $digester }
# $farm is the name that the farm was given.
calendar-event-at-farm = { $event } - { $farm }
# $times is a number with decimals where it needs them.
calendar-times-a-day = { $times } times a day.
calendar-every = Every { $rhythm }; the calendar shows whole days.
# $signal is the signal word in capitals, such as "DANGER".
calendar-caution = { $signal }: { $text }
