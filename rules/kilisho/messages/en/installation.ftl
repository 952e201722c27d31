## The verdict on an installation in one sentence.
installation-verdict-danger = A check of danger level failed: stop what it names, and put it right before anything else.
installation-verdict-doubtful = A number of the record cannot be right; what follows from it is not judged until it is corrected.
installation-verdict-faulty = Size, feeding or gas is at fault; the findings say what to do.
installation-verdict-attention = No fault of size, feeding or gas, but a check of warning or caution level failed.
installation-verdict-unknown = Nothing that was stated fails a check, but not everything was stated: this is no clean bill.
installation-verdict-sound = Every check was answered and none of caution level or worse failed.

## Why something was assumed.
installation-substrate = What is fed was not stated: what the animal gives.
installation-housing = Where the animals stand was not stated.
