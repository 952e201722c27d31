## The balance of a day.
digestate-balance = Mass of slurry in is mass of digestate out and of gas; what became gas is gone from the organic matter. Grit that settles is counted with the digestate: it comes out when the digester is emptied.

## Nutrients.
digestate-nitrogen = All nitrogen that is fed leaves with the digestate: digestion turns part of it into ammonium, which plants take at once and the air takes as easily. What store and field lose is ammonia; what is bound in organic matter comes over the years.
digestate-phosphorus = All phosphorus that is fed leaves with the digestate, but for what settles with the sludge and comes out at desludging.
digestate-potassium = All potassium that is fed stays dissolved and leaves with the digestate; an open or leaking store washes it out.
digestate-nutrient-unknown = Not told: nobody knows how much of it these substrates hold. State it from a laboratory's figure.
digestate-fertiliser = Bought fertiliser that brings the nitrogen which plants find in the first year, and the phosphorus and potassium in full. Digestate brings organic matter besides, which no fertiliser does.

## The limit of manure nitrogen.
digestate-limit-elsewhere = Nobody stated a local limit. This is a common rule elsewhere, shown as a yardstick and not applied: local rules first.
digestate-limit-stated = The stated limit is kept: no field gets more.

## Germs: nothing here may call digestate clean.
digestate-not-safe = A household digester does not sanitise, whatever its temperature and retention: part of the germs and worm eggs live on. The waits make the risk smaller and do not take it away; wash, peel and cook what grows on fed soil.
# After the sentence above, where human excreta are fed.
digestate-excreta-first = With human excreta in the feed, store it first as long as is told here, and keep it off everything that is eaten raw.
digestate-waiting = From the last digestate to harvest, cutting or grazing; the longest that any check of the rulebook asks. Local rules first.

## The store until the next spreading.
digestate-store = Upright walls; a pit with slopes needs more room at the rim. Rain into an open store comes on top and what dries up comes off: neither is counted. The store must be tight, lie downhill of wells, and be covered or fenced so that no child and no animal falls in.
# After the sentence above, where it is so.
digestate-store-overflows = The store there is overflows before the next spreading: spread earlier on what grows, or build a larger one.

## Why something was assumed.
digestate-store-unknown = Nobody said how the digestate is kept until it is spread.
digestate-spreading-unknown = Nobody said how the digestate is spread.
digestate-urine-unknown = Urine was not stated; what is mixed in brings more nitrogen and potassium.
