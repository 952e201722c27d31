## The limits of a mix, as names in a list. $of is a substrate of the rulebook.
mix-limit-least-total-solids = Total solids of the slurry, at least
mix-limit-largest-total-solids = Total solids of the slurry, at most
mix-limit-least-ratio = Carbon to nitrogen ratio, at least
mix-limit-largest-ratio = Carbon to nitrogen ratio, at most
mix-limit-ammonia = Ammonia nitrogen in the slurry, at most
mix-limit-loading = Organic loading rate, at most
mix-limit-retention = Hydraulic retention time, at least
mix-limit-crop-residues = Share of crop residues, at most
mix-limit-water = Water, at most
mix-limit-available = { $of }, at most what there is
mix-limit-share = Share of { $of }, at most
mix-limit-gas-demand = Biogas, at least

## Why a limit holds the recipe back, and what one step beyond it would be. $bound is the limit, $step the step, both with their units.
mix-holds-least-total-solids = The slurry is as thin as is allowed ({ $bound }). One step more would be thinner slurry by { $step }.
mix-holds-largest-total-solids = The slurry is as thick as is allowed ({ $bound }). One step more would be thicker slurry by { $step }.
mix-holds-least-ratio = The feed is as rich in nitrogen as is allowed ({ $bound }). One step more would be a lower carbon to nitrogen ratio by { $step }.
mix-holds-largest-ratio = The feed is as poor in nitrogen as is allowed ({ $bound }). One step more would be a higher carbon to nitrogen ratio by { $step }.
mix-holds-ammonia = Ammonia is at its limit ({ $bound }). One step more would be more ammonia by { $step }.
mix-holds-loading = The digester gets as much organic matter as it bears ({ $bound }). One step more would be a higher loading by { $step }.
mix-holds-retention = The slurry stays as short as is allowed ({ $bound }). One step more would be a shorter stay by { $step }.
mix-holds-crop-residues = Crop residues, which float, are at their limit ({ $bound }). One step more would be more crop residues by { $step }.
mix-holds-water = All water is used ({ $bound }). One step more would be { $step } more water.
mix-holds-available = All of { $of } is used ({ $bound }). One step more would be { $step } more of it.
mix-holds-share = { $of } is at its largest share of the volatile solids ({ $bound }). One step more would be a share larger by { $step }.
mix-holds-gas-demand = The gas that is asked for decides ({ $bound }). One step more would be asking for less gas by { $step }.

## What that step would bring; each stands after one of the sentences above.
mix-step-brings-gas = That would bring { $gas } of biogas.
# $cost is a bare number, in whatever currency the prices were stated.
mix-step-saves = That would save { $cost } a day in the currency of the prices.
# $share is a percentage.
mix-step-eases = That would lower the largest use of what there is by { $share } points.
mix-step-nothing = That would bring nothing by itself.

## Where no mix keeps all limits.
mix-none = No mix of what is on hand keeps all limits. A limit that is relaxed costs safety of operation: read the findings of a recipe that you ask for with it. No limit of operation is offered more than four times as wide; where that is not enough, other substrates are needed.
# Each says which limit could give way; $after and $before are its new and its present bound with their units.
mix-allow-least-total-solids = Allow thinner slurry: { $after } instead of { $before }.
mix-allow-largest-total-solids = Allow thicker slurry: { $after } instead of { $before }.
mix-allow-least-ratio = Allow a lower carbon to nitrogen ratio: { $after } instead of { $before }.
mix-allow-largest-ratio = Allow a higher carbon to nitrogen ratio: { $after } instead of { $before }.
mix-allow-ammonia = Allow more ammonia: { $after } instead of { $before }.
mix-allow-loading = Allow a higher loading: { $after } instead of { $before }.
mix-allow-retention = Allow a shorter stay: { $after } instead of { $before }.
mix-allow-crop-residues = Allow more crop residues: { $after } instead of { $before }.
mix-allow-water = Allow more water: { $after } instead of { $before }.
mix-allow-available = Allow more { $of }: { $after } instead of { $before }.
mix-allow-share = Allow a larger share of { $of }: { $after } instead of { $before }.
mix-allow-gas-demand = Allow asking for less gas: { $after } instead of { $before }.

## The recipe.
mix-proved = No mix within the limits is better by more than this part, by the model and the typical figures.
mix-price-unknown = No price was stated.
