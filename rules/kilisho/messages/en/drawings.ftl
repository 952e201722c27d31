## Words of the drawings. A drawing is 390 pixels wide: short words keep it readable, long ones are wrapped.

### Every drawing

# A mark below a time axis: the day counted from the first.
drawing-day = day { $day }
# $name is what an axis shows, with its unit beside it.
drawing-kilograms-of = { $name } [kg]

### The gas forecast

drawing-forecast-title = Gas forecast
drawing-forecast-gas = Gas [m³ a day]
drawing-forecast-temperature = Slurry temperature [°C]
drawing-forecast-acid-risk = Acid risk
drawing-forecast-first-burnable-gas = first burnable gas
drawing-forecast-key =
    Lines: typical. Hatched: the range in which nine of ten of the samples lie. Each step is the mean of its day, week or month. Acid risk: hatched raised, black high.
drawing-forecast-from =
    { $days ->
        [one] One day from { $first }.
       *[other] { $days } days from { $first }.
    }
drawing-forecast-total = In all { $gas } of gas.
drawing-forecast-total-and-least = In all { $gas } of gas; least { $least }, on day { $day }.
drawing-forecast-burnable-after = First burnable gas after { $after }.
drawing-forecast-share-that-starts = { $share } of the samples start.
drawing-forecast-highest-acid-risk = Highest acid risk: { $risk }.
acid_risk-low = low
acid_risk-raised = raised
acid_risk-high = high

### The hours of a day

drawing-hours-title = Gas through the day
drawing-hours-gas = Gas [m³ an hour]
drawing-hours-stored = In the store at the end of the hour [m³]
drawing-hours-key =
    Hatched: gas that is wanted in each hour; black the part of it that is not there. Line: gas that is made. Below: gas in the store.
drawing-hours-wanted-and-made = Wanted { $wanted }, made { $made }.
# $spells are times of day, such as "06:49 to 07:00".
drawing-hours-gas-runs-out = The gas runs out: { $spells }.
drawing-hours-spell = { $start } to { $end }
drawing-hours-gas-lasts = At typical rates the gas does not run out.

### The gas of a batch charge

drawing-charge-title = Gas of one charge
drawing-charge-gas = Gas [m³ a day]
drawing-charge-gas-so-far = Gas so far [m³]
drawing-charge-recharge = recharge
drawing-charge-key =
    Lines: typical. Hatched: the range in which nine of ten of the samples lie. Dashed: gas that burns; the rest is let off. Dotted: the day of recharging.
drawing-charge-gives = One charge gives { $gas } of gas in { $retention }.
drawing-charge-gives-nothing = One charge gives no gas that could be counted on.
drawing-charge-in-turn =
    { $digesters ->
        [one] One digester: it is recharged every { $every }.
       *[other] { $digesters } digesters in turn: one is recharged every { $every }.
    }

### The stockpile

drawing-heap-title = Stockpile against need
drawing-heap-about = Heaps in kilograms by day until filling, against what the charge needs.
drawing-heap-key =
    Thick line: what lies on the heap. Dashed: what the charge needs, hatched its range. The bar at the end: range of the heap on the day of filling.
drawing-heap-filling-day = filling day: { $mass }
drawing-heap-filling-on = filling, { $date }: { $mass }
drawing-heap-needed = needed { $mass }

### The section of a digester

drawing-section-dome = Fixed dome with its tank
drawing-section-drum = Floating drum
drawing-section-bag = Bag, along and across
drawing-section-cylinder = Cylinder
# $shape is one of the four titles above, $volume the whole inner volume.
drawing-section-title = { $shape }, { $volume }
drawing-section-about = Section to scale.
drawing-section-no-structural-design = Planning drawing to scale. It is no structural design: do not build from it.
drawing-section-dome-dashed = Dashed: inlet and outlet passages (not sized), and both levels with the gas store full.
drawing-section-drum-dashed = The drum is drawn full of gas. Dashed: its skirt in the slurry (not sized).
drawing-section-bag-film = Circumference of the film { $length }.
drawing-section-person = The figure is { $height } tall and stands there for scale only.
drawing-section-scale = { $length }; all lengths in metres
drawing-section-slurry = slurry
drawing-section-gas = gas
# A measured length or volume and its figure.
drawing-section-measure = { $name }: { $measure }
drawing-section-total-volume = Whole inner volume
drawing-section-working-volume = Slurry
drawing-section-gas-storage-volume = Gas store
drawing-section-inner-diameter = Inner diameter
drawing-section-inner-height = Inner height
drawing-section-slurry-depth = Slurry depth
drawing-section-slurry-depth-at-rest = Slurry depth at rest
drawing-section-gas-space-height-at-rest = Gas space height at rest
drawing-section-compensation-tank-diameter = Compensation tank diameter
drawing-section-compensation-tank-depth = Compensation tank depth
drawing-section-pit-diameter = Pit diameter
drawing-section-drum-diameter = Drum diameter
drawing-section-gas-height-in-full-drum = Gas height in the full drum
drawing-section-length = Length
drawing-section-diameter = Diameter
drawing-section-height = Height

### Figures of the sheets

drawing-buckets-title = What goes in at one feeding
drawing-year-title = Gas through the year
