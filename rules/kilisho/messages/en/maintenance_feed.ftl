assumed-feed = Nothing says how much is fed: it is what keeps the design retention.
urine = The trade finds that urine raises the gas. The model counts no gas from urine itself: it saves water, brings nitrogen and a buffer against souring, and helps most where the feed is short of nitrogen; too much of it holds the microbes back.
between-feedings = Storage that evens out the gas between two feedings; what the hours of use need comes on top, see the sizing.

## The trade's gas for the herd beside the model's
# $temperature and $retention are amounts with their units.
trade-gas = The trade's gas per head holds for a warm digester, plentiful dung and a long retention; here the slurry is at { $temperature } and stays { $retention }.
trade-gas-inside = It lies within the model's range.
trade-gas-outside = It lies outside the model's range: plan with the model's figure.

## Whether this is still regular feeding; $every and $longest are times with their unit
operation-batch-structure = This kind of digester is charged once and left; it is not made for regular feeding.
operation-batch-like = At { $every } between feedings this is batch feeding: expect gas in waves.
operation-irregular = More than { $longest } between feedings is no longer regular feeding; gas will rise and fall.
operation-regular = Regular feeding: the same amount each time.

## Keeping feed and catching up
storing-fresh = Feed it fresh.
storing-covered = Keep dung shaded and covered until it is fed, oldest first; feed each time the same amount.
# $extra is a percentage.
catching-up = Never feed at once what was missed: at most { $extra } more than usual; pause if the gas falls or sours.

## Keeping sand out
clean-feed = Feed only clean dung: take out straw, leftovers, stones and plastic, and gather it from a hard floor.
clean-mixing = Mix until there are no lumps, let the mix stand a quarter of an hour so that sand sinks, then let it in and leave the sand behind.
clean-tank = Clear the sand out of the mixing tank once a week.
clean-covers = Put the covers back on inlet and outlet after every feeding.

## The schedule
upkeep-feed = Feed: mix, let the sand settle, let in, cover.
upkeep-sand = Clear sand out of the mixing tank; drain the condensate.
upkeep-soap = Test joints, valves and appliances with soapy water.
upkeep-desludge = Sludge may fill its share of the digester by now: have a trained team remove it. Nobody enters.
