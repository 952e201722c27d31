## Measured gas against the gas that this feed should give.
diagnosis-gas-below = Less gas than this feed gives even in the poorest of such digesters: look for a leak first, then for souring, cold, crust and sludge, and weigh whether the feed is really what was stated.
diagnosis-gas-inside = The gas lies inside what this feed gives in this digester, so it needs no fault to explain it. More gas needs more or better feed or a warmer digester; a fall within this range may still be the beginning of a trouble.
diagnosis-gas-above = More gas than this feed gives: check the record of feed and gas, and the unit of the meter.
diagnosis-gas-not-measured = No measured gas was stated, so it cannot be said whether less comes than should: read a meter or count burner hours.
diagnosis-gas-unknown = What gas should come is not known without digester and feed, so it cannot be said whether less comes than should.

## How far to trust a diagnosis.
diagnosis-statement = The order of the causes is a judgement from what was stated, not a finding: test before anything is opened or rebuilt, and mind that two troubles may come together. What nobody stated is unknown and speaks neither for nor against. Shares are parts of the weight of the causes that something stated speaks for, and of something else. Nobody enters a digester or pit, and nobody looks for gas with a flame.

## A diagnosis in one or two sentences.
# $title is a check of the rulebook that failed, told as what should be: "No open flame within 5 m".
diagnosis-not-met = Not met: { $title }
# $names are symptoms and checks that failed; they are names of the rulebook, with a capital.
diagnosis-act-at-once = Act at once: { $names }.
# $name is a cause of the rulebook, with a capital; $share its part of the weight of all, such as "60 %".
diagnosis-likeliest = What was stated speaks most for: { $name } ({ $share } of the weight).
diagnosis-nothing-speaks = Nothing stated speaks for any cause of the rulebook; the tests below are those that common causes ask for.

## What speaks for or against a cause.
# $names are facts of the rulebook, of which a reading joins one or several: "pH of the slurry; temperature of the slurry".
diagnosis-facts = { $names }
