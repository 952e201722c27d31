## What to do at a charge of a batch digester.
rotation-first-charge = Fill and close it. Let the first gas out in the open, unburnt, and keep every flame away.
# emptying_from is a member of the answer and stays as it is.
rotation-recharge = Refill and close it; it was emptied in the days since emptying_from. Open it only without pressure and with all flames out, air it, empty it from outside and never enter. Let the first gas out in the open, unburnt.

## Why something was assumed.
rotation-first-day-unknown = Nobody said when the first charge is; seasons are counted from New Year.
