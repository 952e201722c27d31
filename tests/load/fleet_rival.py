"""The rules of a standard record written by hand as one lazy Polars query: what the fleet is measured against.

It is written for speed by somebody who knows the rules by heart and needs nothing else: ids are read as codes, figures are gathered by
code, bounds stand as numbers in the expressions, and shared parts are named once so that the engine works them out once. It gives the
verdict, the words of the aspects, the numbers, and the failed and unknown checks as bits, which is less than the fleet gives: no lists of
ids, no likely slips, no reasons for rows that are refused. ``test_fleet_rival.py`` holds both against each other.
"""

from __future__ import annotations

from typing import Any

import numpy as np
import polars as pl

from kilisho.fleet import Fleet
from kilisho.questions.installation import gas_range as grid
from kilisho.questions.installation.gas_range import COLDEST, LEAST_PLACE, MIDDLE_RETENTION, MOST_PLACE, RETENTIONS, TEMPERATURES, WARMEST

Expr = pl.Expr
STANDARD = """id structure total_volume substrate feed_mass water_volume feeding_interval biogas_measured mean_air_temperature animal
animal_count"""
COLUMNS = STANDARD.split()
# Seven figures of twelve places would round; the fleet's own arithmetic is in double precision too.
SOIL_OFFSET, GUESS, WATER_DENSITY = 1.5, 22.0, 1000.0
KNOTS = (12.5, 17.5, 22.5, 27.5, 33.0)
CURVES = {
    "shortest": (100.0, 60.0, 40.0, 30.0, 25.0),
    "design": (120.0, 95.0, 65.0, 50.0, 38.0),
    "longest": (150.0, 110.0, 80.0, 60.0, 50.0),
}


class Rival:
    """The query, with the tables that it gathers from."""

    def __init__(self, fleet: Fleet) -> None:
        self.figures = figures = fleet.desk.figures
        self.order = [check.compiled.id for check in fleet.desk.checks]
        self.passed_over = {check.compiled.id for check in fleet.desk.checks if check.compiled.check.only_if_stated}
        self.low, self.high = _filled(fleet)
        self.enums = {name: pl.Enum(list(getattr(figures, f"{name}s"))) for name in ("structure", "substrate", "animal")}
        self.tables = {
            **figures.of_structure,
            **figures.of_substrate,
            **{name: table[:-1][::3] for name, table in figures.of_animal.items()},
            "given_substrate": figures.substrate_of_animal[:-1].astype(np.float64),
            "crop": np.array(figures.facts_of_substrate["crop_residue_share"]),
            "poultry": np.array(figures.facts_of_substrate["poultry_share"]),
            "excreta": np.array(figures.facts_of_substrate["human_excreta_fed"], float),
            "is_bag": np.array([kind == "bag" for kind in figures.kinds], float),
            "is_dome": np.array([kind == "fixed_dome" for kind in figures.kinds], float),
            "is_stirred": np.array([kind in ("fixed_dome", "floating_drum", "bag") for kind in figures.kinds], float),
        }
        self.ends: dict[str, tuple[Expr, Expr]] = {}

    def gathered(self, name: str, code: str) -> Expr:
        """A figure by code, null where the code is."""
        return pl.lit(pl.Series(self.tables[name])).gather(pl.col(code)).fill_nan(None)

    def query(self, frame: pl.LazyFrame) -> pl.LazyFrame:
        """Verdicts, numbers and bits of every row, in order."""
        self.ends.clear()
        frame = self._read(frame)
        frame = self._sized(frame)
        frame = self._fed(frame)
        frame = self._watered(frame)
        frame = self._gassed(frame)
        self._judge()
        return frame.select(*self._told())

    def check(self, name: str, subject: Expr, fails: Expr, when: Expr | None = None) -> None:
        """How a check ends; ``when`` is null where its condition is not known."""
        applies = pl.lit(True) if when is None else when.fill_null(True)
        missing = subject.is_null() if when is None else subject.is_null() | when.is_null()
        sure = fails if when is None else fails & when
        self.ends[name] = sure.fill_null(False), missing & applies

    def failed(self, *names: str) -> Expr:
        """Where any of the checks fails."""
        found = self.ends[names[0]][0]
        for name in names[1:]:
            found = found | self.ends[name][0]
        return found

    def open(self, *names: str) -> Expr:
        """Where any of the checks cannot be answered."""
        found = self.ends[names[0]][1]
        for name in names[1:]:
            found = found | self.ends[name][1]
        return found

    def _read(self, frame: pl.LazyFrame) -> pl.LazyFrame:
        bounds = {
            "total_volume": (1e-4, 1e6),
            "feed_mass": (0, 1e7),
            "water_volume": (0, 1e7),
            "feeding_interval": (0.04, 365),
            "biogas_measured": (0, 1e6),
            "mean_air_temperature": (-100, 400),
            "animal_count": (0, 1e7),
        }
        inside = [pl.col(name).is_between(*ends).fill_null(True) for name, ends in bounds.items()]
        words = [pl.col(name).cast(pl.String).cast(enum, strict=False) for name, enum in self.enums.items()]
        unread = [pl.col(name).is_not_null() & word.is_null() for name, word in zip(self.enums, words, strict=True)]
        refused = pl.col("total_volume").is_null() | pl.col("structure").is_null()
        for good in inside:
            refused = refused | ~good
        for bad in unread:
            refused = refused | bad
        refused = refused | (pl.col("animal_count").floor() != pl.col("animal_count")).fill_null(False)
        codes = [word.to_physical().alias(f"{name}_code") for name, word in zip(self.enums, words, strict=True)]
        return frame.with_columns(refused.alias("refused"), *codes, (pl.col("water_volume") * 0.001).alias("water"))

    def _sized(self, frame: pl.LazyFrame) -> pl.LazyFrame:
        names = ("smallest_built", "largest_built", "fill_share", "tanks_in_series", "is_bag", "is_dome", "is_stirred")
        frame = frame.with_columns(self.gathered(name, "structure_code").alias(name) for name in names)
        volume, air = pl.col("total_volume"), pl.col("mean_air_temperature")
        self.check("total_volume_possible_least", volume, volume / pl.col("smallest_built") < 0.5)
        self.check("total_volume_possible_most", volume, volume / pl.col("largest_built") > 2)
        self.check("air_temperature_possible", air, ~air.is_between(-10, 36))
        wrong = self.failed("total_volume_possible_least", "total_volume_possible_most")
        return frame.with_columns(
            pl.when(wrong).then(None).otherwise(volume * pl.col("fill_share")).alias("working"),
            pl.when(self.failed("air_temperature_possible")).then(None).otherwise(air + SOIL_OFFSET).alias("warmth"),
        ).with_columns(self._curve(name).alias(name) for name in CURVES)

    def _curve(self, name: str) -> Expr:
        values, found = CURVES[name], pl.lit(CURVES[name][0])
        for place in range(4):
            width = KNOTS[place + 1] - KNOTS[place]
            found = found + (pl.col("warmth") - KNOTS[place]).clip(0, width) * ((values[place + 1] - values[place]) / width)
        return found

    def _fed(self, frame: pl.LazyFrame) -> pl.LazyFrame:
        given = self.gathered("given_substrate", "animal_code")
        heads = ("dung_per_head", "most_dung_per_head", "slurry_per_head")
        frame = frame.with_columns(
            given.alias("given"),
            pl.coalesce(pl.col("substrate_code").cast(pl.Int64), given.cast(pl.Int64)).alias("fed_code"),
            *(self.gathered(name, "animal_code").alias(name) for name in heads),
        )
        names = ("total_solids", "volatile_solids_share", "bulk_density", "degradation_rate", "biogas_potential", "usual_water_to_feed")
        frame = frame.with_columns(self.gathered(name, "fed_code").alias(name) for name in (*names, "wettest_water_to_feed"))
        frame = frame.with_columns(self.gathered(name, "fed_code").alias(name) for name in ("crop", "poultry", "excreta"))
        feed, count, working = pl.col("feed_mass"), pl.col("animal_count"), pl.col("working")
        own, herd = pl.col("given") == pl.col("fed_code"), count * pl.col("dung_per_head")
        frame = frame.with_columns(
            (feed * pl.col("total_solids") * pl.col("volatile_solids_share") / working).alias("loading"),
            pl.when(own).then(_finite(feed / (count * pl.col("most_dung_per_head")))).alias("to_herd_most"),
            _finite(pl.when(own).then(herd).otherwise(count * pl.col("dung_per_head") * 0.0) / feed).alias("sufficiency"),
            (count * pl.col("slurry_per_head") * pl.col("shortest") / working).alias("to_largest"),
            (count * pl.col("slurry_per_head") * pl.col("longest") / working).alias("to_smallest"),
        )
        loading = pl.col("loading")
        self.check("feed_mass_possible_most", loading, loading > 8)
        self.check("feed_mass_possible_least", loading, loading < 0.01, loading > 0)
        self.check("feed_within_herd", pl.col("to_herd_most"), pl.col("to_herd_most") > 2)
        wrong = self.failed("feed_mass_possible_most", "feed_mass_possible_least", "feed_within_herd")
        return frame.with_columns(pl.when(wrong).then(None).otherwise(feed).alias("feed"))

    def _watered(self, frame: pl.LazyFrame) -> pl.LazyFrame:
        feed, density = pl.col("feed"), pl.col("bulk_density")
        frame = frame.with_columns(
            (feed / density).alias("volume"), (feed / pl.when(density < WATER_DENSITY).then(WATER_DENSITY).otherwise(density)).alias("room")
        )
        frame = frame.with_columns(
            _finite(pl.col("water") / (pl.col("volume") * pl.col("wettest_water_to_feed"))).alias("to_wettest"),
            ((pl.col("room") + pl.col("volume") * pl.col("usual_water_to_feed")) * pl.col("design") / pl.col("working")).alias("fed_share"),
        )
        wettest = pl.col("to_wettest")
        self.check("water_volume_possible_most", wettest, wettest > 3)
        self.check("water_volume_possible_least", wettest, wettest < 0.02, wettest > 0)
        wrong = self.failed("water_volume_possible_most", "water_volume_possible_least")
        frame = frame.with_columns(pl.when(wrong).then(None).otherwise(pl.col("water")).alias("stated_water"))
        liquid = pl.coalesce(pl.col("stated_water"), pl.col("volume") * pl.col("usual_water_to_feed"))
        frame = frame.with_columns(liquid.alias("liquid"), (pl.col("room") + liquid).alias("slurry"))
        known = pl.col("stated_water").is_not_null()
        mass = feed + pl.col("liquid") * WATER_DENSITY
        return frame.with_columns(
            (pl.col("working") / pl.col("slurry")).alias("retention"),
            pl.when(known).then(_finite(feed * pl.col("total_solids") / mass)).alias("solids"),
            pl.when(known).then(pl.col("slurry") * pl.col("feeding_interval") / pl.col("working")).alias("dose"),
        ).with_columns(pl.when(known).then(_finite(pl.col("retention"))).alias("known_retention"))

    def _gassed(self, frame: pl.LazyFrame) -> pl.LazyFrame:
        solids = pl.col("feed") * pl.col("total_solids") * pl.col("volatile_solids_share")
        warmth, retention, tanks = pl.col("warmth").fill_null(GUESS), pl.col("retention"), pl.col("tanks_in_series")
        rate = pl.col("degradation_rate") * pl.lit(1.106).pow(pl.min_horizontal(warmth, pl.lit(35.0)) - 20.0)
        share = 1.0 - (1.0 + rate * retention / tanks).pow(-tanks)
        case = pl.col("warmth").is_null().cast(pl.Int64) + 2 * pl.col("stated_water").is_null().cast(pl.Int64)
        group = (pl.col("fed_code") * len(self.figures.structures) + pl.col("structure_code").cast(pl.Int64)) * 4 + case
        row = _held((warmth - COLDEST) * ((TEMPERATURES - 1) / (WARMEST - COLDEST)), TEMPERATURES)
        place = (retention / (retention + MIDDLE_RETENTION) - LEAST_PLACE) * ((RETENTIONS - 1) / (MOST_PLACE - LEAST_PLACE))
        frame = frame.with_columns(
            (solids * pl.col("biogas_potential") * share).alias("expected"),
            group.alias("group"),
            row.alias("row"),
            _held(place.fill_nan(None), RETENTIONS).alias("column"),
        )
        below, beside = pl.col("row").cast(pl.Int64), pl.col("column").cast(pl.Int64)
        frame = frame.with_columns(
            (pl.col("group") * (TEMPERATURES * RETENTIONS) + below * RETENTIONS + beside).alias("corner"),
            (pl.col("row") - below).alias("above"),
            (pl.col("column") - beside).alias("beyond"),
        )
        frame = frame.with_columns(
            (pl.col("expected") * self._weighed(self.low)).alias("expected_low"),
            (pl.col("expected") * self._weighed(self.high)).alias("expected_high"),
        )
        measured = pl.col("biogas_measured")
        names = {"gas_ratio": "expected", "to_low": "expected_low", "to_high": "expected_high"}
        return frame.with_columns(_finite(measured / pl.col(over)).alias(name) for name, over in names.items())

    def _weighed(self, table: Any) -> Expr:
        corner, above, beyond, both = pl.col("corner"), pl.col("above"), pl.col("beyond"), pl.col("above") * pl.col("beyond")
        series = pl.lit(pl.Series(table))
        return (
            series.gather(corner) * (1.0 - above - beyond + both)
            + series.gather(corner + 1) * (beyond - both)
            + series.gather(corner + RETENTIONS) * (above - both)
            + series.gather(corner + (RETENTIONS + 1)) * both
        )

    def _judge(self) -> None:
        """Every check that a standard record can answer, with its bounds as the rulebook has them."""
        volume, retention, warmth, loading = pl.col("total_volume"), pl.col("known_retention"), pl.col("warmth"), pl.col("loading")
        solids, interval, share = pl.col("solids"), pl.col("feeding_interval"), pl.col("fed_share")
        stirred, excreta = pl.col("is_stirred") > 0, pl.col("excreta") > 0
        self.check("latrine_retention", retention, retention < 40, excreta)
        self.check("gas_measured_possible_most", pl.col("to_high"), pl.col("to_high") > 1.5)
        self.check("gas_measured_possible_least", pl.col("to_low"), pl.col("to_low") < 0.02, pl.col("to_low") > 0)
        self.check("size_feeds_herd", pl.col("to_largest"), pl.col("to_largest") > 1.5)
        self.check("herd_fills_size", pl.col("to_smallest"), pl.col("to_smallest") < 0.5)
        self.check("gas_far_below_expected", pl.col("to_low"), pl.col("to_low") < 0.8)
        self.check("dose_fits", pl.col("dose"), pl.col("dose") > 0.2)
        self.check("temperature_least", warmth, warmth < 10)
        self.check("temperature_cool", warmth, warmth < 15)
        self.check("temperature_most", warmth, warmth > 40)
        self.check("temperature_freezing", warmth, warmth <= 0)
        self.check("temperature_usual", warmth, warmth < 20)
        self.check("gas_not_below_expected", pl.col("to_low"), pl.col("to_low") < 1)
        self.check("gas_not_above_expected", pl.col("to_high"), pl.col("to_high") > 1)
        self.check("slurry_total_solids_most", solids, solids > 0.12, stirred)
        self.check("slurry_total_solids_least", solids, solids < 0.04, stirred)
        self.check("slurry_total_solids_usual", solids, ~solids.is_between(0.05, 0.10), stirred)
        self.check("crop_residue_most", pl.col("crop"), pl.col("crop") > 0.4, stirred)
        self.check("crop_residue_more", pl.col("crop"), pl.col("crop") > 0.25, stirred)
        self.check("poultry_share_most", pl.col("poultry"), pl.col("poultry") > 0.5)
        self.check("poultry_share_usual", pl.col("poultry"), pl.col("poultry") > 0.2)
        self.check("feeding_daily", interval, interval > 1)
        self.check("feeding_three_days", interval, interval > 3)
        self.check("feeding_weekly", interval, interval > 7)
        self.check("feeding_fortnight", interval, interval >= 14)
        self.check("loading_simple", loading, loading > 1.5)
        self.check("loading_most", loading, loading > 2.5)
        self.check("loading_cold", loading, loading > 0.8, warmth < 18)
        self.check("retention_least", retention, retention < 30)
        self.check("retention_usual", retention, retention < 40)
        self.check("retention_below_25", retention, retention < 40, warmth < 25)
        self.check("retention_below_20", retention, retention < 60, warmth < 20)
        self.check("retention_below_15", retention, retention < 100, warmth < 15)
        self.check("retention_most", retention, retention > 120)
        self.check("fed_share_least", share, share < 0.5)
        self.check("fed_share_usual", share, share < 0.8)
        self.check("household_volume", volume, ~volume.is_between(2, 50))
        self.check("herd_covers_feed", pl.col("sufficiency"), pl.col("sufficiency") < 0.9)
        self.check("gas_is_measured", pl.lit(1), pl.col("biogas_measured").is_null())
        self._leave_open(excreta)

    def _leave_open(self, excreta: Expr) -> None:
        """What a standard record never states: unknown in every row, or in those to which it may apply."""
        nothing, never = pl.lit(None, dtype=pl.Float64), pl.lit(False)
        of_kind = {
            "relief_on_bag": "is_bag",
            "bag_pressure_most": "is_bag",
            "gas_space_coated": "is_dome",
            "dome_pressure_tested": "is_dome",
            "dome_pressure_most": "is_dome",
        }
        for name in self.order:
            if name in self.ends:
                continue
            if name in of_kind:
                self.check(name, nothing, never, pl.col(of_kind[name]) > 0)
            elif name in ("well_distance_least", "no_excreta_on_raw_crops"):
                self.check(name, nothing, never, excreta)
            else:
                self.ends[name] = never, pl.lit(name not in self.passed_over)

    def _told(self) -> list[Expr]:
        words, refused = self._words(), pl.col("refused")
        numbers = {
            "digester_temperature": "warmth",
            "hydraulic_retention_time": "known_retention",
            "organic_loading_rate": "loading",
            "slurry_total_solids": "solids",
            "fed_share_of_design": "fed_share",
            "herd_to_largest_herd": "to_largest",
            "herd_to_smallest_herd": "to_smallest",
            "expected": "expected",
            "expected_low": "expected_low",
            "expected_high": "expected_high",
            "gas_ratio": "gas_ratio",
            "gas_ratio_low": "to_high",
            "gas_ratio_high": "to_low",
        }
        return [
            pl.col("id"),
            pl.when(refused).then(pl.lit("refused")).otherwise(words.pop("verdict")).alias("verdict"),
            *(pl.when(~refused).then(word).alias(name) for name, word in words.items()),
            *(pl.when(~refused).then(pl.col(key)).alias(name) for name, key in numbers.items()),
            *(pl.when(~refused).then(self._bits(*of)).alias(name) for name, of in BITS.items()),
        ]

    def _bits(self, which: int, half: int) -> Expr:
        found = pl.lit(0, dtype=pl.UInt64)
        for place, name in enumerate(self.order[half * 64 : half * 64 + 64]):
            found = found + self.ends[name][which].cast(pl.UInt64) * (1 << place)
        return found

    def _words(self) -> dict[str, Expr]:
        doubt = self.failed(*(name for name in self.order if name in DOUBT))
        size = _first((self.failed("size_feeds_herd"), "too_small"), (self.failed("herd_fills_size"), "too_large"))
        size = size.when(self.open("size_feeds_herd", "herd_fills_size")).then(pl.lit("unknown")).otherwise(pl.lit("fitting"))
        feeding = _first(*((self.failed(*names), word) for word, names in FEEDING.items()))
        asked = [name for names in FEEDING.values() for name in names]
        feeding = feeding.when(self.open(*asked)).then(pl.lit("unknown")).otherwise(pl.lit("fitting"))
        gas = _first(*((self.failed(name), word) for word, name in GAS.items()))
        gas = gas.when(self.open(*GAS.values())).then(pl.lit("unknown")).otherwise(pl.lit("inside"))
        faulty = self.failed(*asked, "size_feeds_herd", "herd_fills_size", "gas_far_below_expected")
        verdict = _first((doubt, "doubtful"), (faulty, "faulty"), (self.failed(*ATTENTION), "attention")).otherwise(pl.lit("unknown"))
        record = pl.when(doubt).then(pl.lit("doubtful")).otherwise(pl.lit("possible"))
        return {"verdict": verdict, "record": record, "size": size, "feeding": feeding, "gas": gas, "safety": pl.lit("open")}


# Failed and unknown checks as bits: the first 64 of the rulebook's order, and the rest.
BITS = {"failed_0": (0, 0), "failed_1": (0, 1), "unknown_0": (1, 0), "unknown_1": (1, 1)}
DOUBT = (
    "total_volume_possible_least",
    "total_volume_possible_most",
    "air_temperature_possible",
    "feed_mass_possible_most",
    "feed_mass_possible_least",
    "feed_within_herd",
    "water_volume_possible_most",
    "water_volume_possible_least",
    "gas_measured_possible_most",
    "gas_measured_possible_least",
)
FEEDING = {
    "starved": ("fed_share_least",),
    "too_wet": ("slurry_total_solids_least",),
    "too_dry": ("slurry_total_solids_most",),
    "overfed": ("loading_most", "loading_cold", "retention_least"),
    "too_seldom": ("feeding_weekly", "feeding_fortnight"),
}
GAS = {
    "below": "gas_far_below_expected",
    "low": "gas_not_below_expected",
    "above": "gas_not_above_expected",
    "not_measured": "gas_is_measured",
}
ATTENTION = (
    "latrine_retention",
    "dose_fits",
    "temperature_least",
    "temperature_cool",
    "temperature_most",
    "temperature_freezing",
    "gas_not_below_expected",
    "crop_residue_most",
    "poultry_share_most",
    "loading_simple",
    "retention_below_25",
    "retention_below_20",
    "retention_below_15",
    "gas_not_above_expected",
    "household_volume",
    "herd_covers_feed",
    "slurry_total_solids_usual",
    "crop_residue_more",
    "feeding_three_days",
    "retention_usual",
    "fed_share_usual",
)


def _first(*cases: tuple[Expr, str]) -> Any:
    found: Any = pl
    for condition, word in cases:
        found = found.when(condition).then(pl.lit(word))
    return found


def _finite(value: Expr) -> Expr:
    return pl.when(value.is_finite()).then(value)


def _held(position: Expr, points: int) -> Expr:
    return position.clip(0.0, points - 1 - 1e-9)


def _filled(fleet: Fleet) -> tuple[Any, Any]:
    """The grid of gas ranges of every pair and case."""
    ranges, figures = fleet.desk.gas_range, fleet.desk.figures
    groups = np.arange(len(figures.substrates) * len(figures.structures) * grid.CASES)
    with np.errstate(all="ignore"):
        ranges.shares(groups, np.full(groups.size, 20.0), np.full(groups.size, 50.0))
    return ranges._low, ranges._high


def answer(table: Any, rival: Rival) -> pl.DataFrame:
    """A table of Arrow memory answered by the query."""
    frame = pl.from_arrow(table)
    assert isinstance(frame, pl.DataFrame)
    return rival.query(frame.lazy().select(COLUMNS)).collect()


def with_lists(answered: pl.DataFrame, rival: Rival) -> pl.DataFrame:
    """The failed checks as lists of ids too, from the bits: told once for each distinct pair and joined, which is the fastest here."""
    bits = ("failed_0", "failed_1")
    distinct = answered.select(bits).unique().drop_nulls()
    ids = [
        [name for place, name in enumerate(rival.order) if (first | second << 64) >> place & 1] for first, second in distinct.iter_rows()
    ]
    told = distinct.with_columns(pl.Series("failed", ids, dtype=pl.List(pl.String)))
    return answered.join(told, on=bits, how="left", maintain_order="left")
