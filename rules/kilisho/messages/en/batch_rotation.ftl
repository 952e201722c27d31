## What to do at a charge of a batch digester.
rotation-first-charge = Fill and close it. Let the first gas out in the open, unburnt, and keep every flame away.
rotation-recharge = Refill it once it is empty, and close it. Open it only without pressure and with all flames out, air it, empty it from outside and never enter. Let the first gas out in the open, unburnt.
rotation-emptying = Open it only without pressure and with all flames out, air it, empty it from outside and never enter.

## Why something was assumed.
rotation-first-day-unknown = Nobody said when the first charge is; seasons are counted from New Year.
