## Events of a batch rotation, as the titles of a calendar; the id after "event-" is that of the answer.
event-first_charge = First charge
event-open_and_empty = Open and empty
event-recharge = Recharge
