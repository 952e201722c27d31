"""What a rulebook holds: the shapes of pack entries, and the frozen :class:`Rulebook` that the engine works with.

Every property is ``{low, typical, high, unit, source, basis}``. Values are kept in the canonical unit of their kind
(see :mod:`kilisho.units`); what the pack's author wrote stays in ``unit``. The models double as the published JSON
Schema of a pack.
"""

from __future__ import annotations

from enum import StrEnum
from typing import TYPE_CHECKING, Annotated, Any, Literal, Self, get_origin

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, model_validator
from pydantic.json_schema import SkipJsonSchema
from pydantic_core import PydanticCustomError

from kilisho.units import KINDS, UnknownUnitError, from_canonical, unit_of

Identifier = Annotated[str, Field(pattern=r"^[a-z][a-z0-9]*([_-][a-z0-9]+)*$", max_length=64)]
Text = Annotated[str, Field(min_length=3, max_length=1200)]
ABSOLUTE_ZERO = -273.15


class Basis(StrEnum):
    """How a figure is known."""

    published = "published"
    common_practice = "common_practice"
    from_memory = "from_memory"
    derived = "derived"
    judgement = "judgement"


class Severity(StrEnum):
    """Signal words in falling order of urgency."""

    danger = "danger"
    warning = "warning"
    caution = "caution"
    notice = "notice"


class Entry(BaseModel):
    """Base of everything in a pack: frozen, and closed to unknown keys."""

    model_config = ConfigDict(frozen=True, extra="forbid", allow_inf_nan=False)


class Known(Entry):
    """A statement that says how it is known and by whom."""

    basis: Basis = Field(description="How the figure is known.")
    source: tuple[Identifier, ...] = Field((), description="Ids of the pack's sources; required when basis is published.")
    note: Text | None = Field(None, description="What a reader must know about the figure, for instance how it was derived.")

    @model_validator(mode="after")
    def _published_names_a_source(self) -> Self:
        if self.basis is Basis.published and not self.source:
            raise PydanticCustomError("source_missing", "a published figure must name its source")
        return self


class Property(Known):
    """A figure with its range. ``low``, ``typical`` and ``high`` are in the canonical unit of the field's kind."""

    low: float | None = Field(None, description="Lowest value that is usual.")
    typical: float = Field(description="The value used when nobody has measured.")
    high: float | None = Field(None, description="Highest value that is usual.")
    unit: str = Field(description="UCUM code in which the pack states the figure.")
    kind: SkipJsonSchema[str] = Field("number", description="Kind of quantity; set by the field that holds the figure.")

    @model_validator(mode="after")
    def _in_order(self) -> Self:
        if not self.least <= self.typical <= self.most:
            raise PydanticCustomError("range_disordered", "low, typical and high must rise: {low}, {typical}, {high}", self._bounds())
        return self

    def _bounds(self) -> dict[str, Any]:
        return {"low": self.low, "typical": self.typical, "high": self.high}

    @property
    def least(self) -> float:
        """The low end, or the typical value where no range is known."""
        return self.typical if self.low is None else self.low

    @property
    def most(self) -> float:
        """The high end, or the typical value where no range is known."""
        return self.typical if self.high is None else self.high


def _canonical(kind: str, at_least: float, at_most: float) -> BeforeValidator:
    """Read low/typical/high in the stated unit, check the bounds of the field and keep canonical values."""

    def convert(value: Any) -> Any:
        if not isinstance(value, dict) or not isinstance(value.get("unit"), str):
            return value
        try:
            unit = unit_of(kind, value["unit"])
        except UnknownUnitError as error:
            raise PydanticCustomError("unknown_unit", "{reason}", {"reason": str(error)}) from None
        out = {**value, "kind": kind}
        for name in ("low", "typical", "high"):
            number = value.get(name)
            if isinstance(number, bool) or not isinstance(number, int | float):
                continue
            out[name] = number * unit.factor + unit.offset
            if not at_least <= out[name] <= at_most:
                limits = {
                    "name": name,
                    "least": from_canonical(at_least, kind, unit.code),
                    "most": from_canonical(at_most, kind, unit.code),
                }
                raise PydanticCustomError("out_of_range", f"{{name}} must lie from {{least}} to {{most}} {unit.code}", limits)
        return out

    return BeforeValidator(convert)


def _of(kind: str, at_least: float = 0.0, at_most: float = 1e9) -> Any:
    schema: Any = {"x-kind": kind, "x-units": list(KINDS[kind].units)}
    return Annotated[Property, _canonical(kind, at_least, at_most), Field(json_schema_extra=schema)]


if TYPE_CHECKING:
    Share = Property
    PositiveShare = Property
    PositiveNumber = Property
    PositiveDensity = Property
    PositiveRate = Property
    Number = Property
    Volume = Property
    Length = Property
    Mass = Property
    Time = Property
    MassFlow = Property
    VolumeFlow = Property
    Pressure = Property
    Density = Property
    GasYield = Property
    Rate = Property
    SpecificFlow = Property
    GasUseRate = Property
    PositivePower = Property
    PartOfOne = Property
    PositiveConcentration = Property
    NitrogenNeed = Property
    Ph = Property
    HeatingValue = Property
    EmissionFactor = Property
    Bore = Property
else:
    Share = _of("share", 0, 1)
    PositiveShare = _of("share", 1e-5, 1)
    PositiveNumber = _of("number", 1e-3)
    PositiveDensity = _of("density", 20)
    PositiveRate = _of("rate", 1e-5, 10)
    Number = _of("number")
    Volume = _of("volume")
    Length = _of("length", 0, 20)
    Mass = _of("mass")
    Time = _of("time")
    MassFlow = _of("mass_flow")
    VolumeFlow = _of("volume_flow")
    Pressure = _of("pressure")
    Density = _of("density")
    GasYield = _of("gas_yield", 0, 2)
    Rate = _of("rate", 0, 10)
    SpecificFlow = _of("specific_flow", 0, 1)
    GasUseRate = _of("gas_use_rate")
    PositivePower = _of("power", 3.6e-3, 3.6e5)
    PartOfOne = _of("share", 1e-3, 0.99)
    NitrogenNeed = _of("areic_mass", 1e-4, 0.2)
    Ph = _of("number", 1, 13)
    PositiveConcentration = _of("density", 1e-4)
    HeatingValue = _of("heat_per_mass", 0.1, 150)
    EmissionFactor = _of("emission_factor", 0, 1)
    Bore = _of("length", 0.002, 1)


class Source(Entry):
    """Where figures come from; cited by id everywhere else."""

    title: Text
    author: Text | None = None
    year: int | None = Field(None, ge=1700, le=2100)
    publisher: Text | None = None
    locator: Text | None = Field(None, description="Section, page or table.")
    doi: str | None = None
    kind: Literal["standard", "handbook", "paper", "report", "law", "dataset", "web_page", "practice"]
    note: Text | None = None


class Named(Entry):
    """An entry that people have a name for."""

    name: Text = Field(description="What people call it, in English.")
    description: Text | None = None


class Dilution(Known):
    """How a substrate is usually diluted."""

    water_to_feed_by_volume: Number | None = Field(None, description="Volumes of water per volume of substrate as handled.")
    target_total_solids: Share | None = Field(None, description="Total solids of the slurry after mixing.")


Group = Literal["dung", "droppings", "poultry", "excreta", "urine", "crop_residue", "green_matter", "food_residue", "by_product"]
# Facts that follow from the group of what is fed, and the group that each counts.
GROUPS_OF_FACTS: dict[str, Group] = {"poultry_share": "poultry", "crop_residue_share": "crop_residue", "human_excreta_fed": "excreta"}


class Substrate(Named):
    """Something that can be fed. Solids are mass shares, nitrogen and minerals are shares of total solids."""

    group: Group = Field(
        description="poultry: of any bird, with or without litter; droppings: pellets of other animals. Facts about the feed count groups."
    )
    total_solids: PositiveShare = Field(description="Dry matter, share of fresh mass.")
    volatile_solids: PositiveShare = Field(description="Organic part, share of total solids.")
    bulk_density: PositiveDensity = Field(description="As handled in a bucket.")
    nitrogen: PositiveShare = Field(description="Total nitrogen, share of total solids.")
    carbon_to_nitrogen: PositiveNumber = Field(description="Carbon to nitrogen ratio by mass.")
    phosphorus: Share | None = Field(None, description="Phosphorus (as P), share of total solids.")
    potassium: Share | None = Field(None, description="Potassium (as K), share of total solids.")
    ammonium_share: Share | None = Field(None, description="Part of the nitrogen that becomes ammonium in the digester.")
    biogas_yield: GasYield = Field(
        description="Biogas as used per mass of volatile solids, at 25 Cel and 60 d retention in a mixed digester."
    )
    methane_share: PositiveShare = Field(description="Methane in the biogas, by volume.")
    methane_potential: GasYield = Field(description="Ultimate methane, normal volume per mass of volatile solids.")
    degradation_rate: PositiveRate = Field(description="First-order rate at 20 Cel in an unstirred digester.")
    quick_share: Share | None = Field(
        None, description="Part of the degradable matter that sours on the day of feeding (sugar, starch); none when absent."
    )
    settling_share: Share = Field(description="Part of the ash that settles as grit.")
    dilution: Dilution
    growth_model: Literal["cattle", "swine"] | None = Field(
        None,
        description="Family of the growth kinetics of Chen and Hashimoto; gives the high end of the gas where the digester is warm enough.",
    )
    retention_factor: PositiveNumber = Field(description="Retention needed against cattle dung at the same temperature.")
    starts_unaided: bool = Field(description="Brings enough methane-forming microbes to start a digester without starter slurry.")
    largest_share: Share | None = Field(None, description="Largest share of the fed volatile solids that is usual in simple digesters.")
    handling: tuple[Text, ...] = Field((), description="What to do before feeding it.")
    cautions: tuple[Identifier, ...] = Field((), description="Ids of cautions that go with it.")


class Collectable(Entry):
    """Share of what the animal gives that can be gathered, by housing."""

    stall: Share
    night_pen: Share
    grazing: Share


class Animal(Named):
    """An animal (or a person using a linked latrine) as a source of substrate."""

    substrate: Identifier = Field(description="Id of the substrate that it gives.")
    live_weight: Mass
    dung_per_day: MassFlow = Field(description="Fresh dung per head before collection losses.")
    dung_per_live_weight: SpecificFlow = Field(description="Fresh dung per live weight and day.")
    urine_per_day: VolumeFlow
    collectable: Collectable
    urine_collectable: Collectable
    rule_of_thumb_gas: VolumeFlow | None = Field(None, description="What the trade expects per head and day; shown beside the model.")


class Geometry(Entry):
    """A shape the engine can dimension, with its proportions."""

    shape: Literal["hemisphere_with_tank", "cylinder_with_drum", "tube", "cylinder"]
    ratios: dict[Identifier, PositiveNumber] = Field(description="Proportions that the shape needs, by name.")


class BuildableSizes(Known):
    """Total volumes that masons and makers offer."""

    unit: Literal["m3"]
    total_volumes: tuple[Annotated[float, Field(gt=0, le=1000)], ...] = Field(min_length=1)


class Structure(Named):
    """A kind of digester."""

    operation: Literal["continuous", "batch"]
    fill_share: PositiveShare = Field(description="Slurry at the normal level, share of total volume.")
    least_fill_share: PositiveShare = Field(description="Smallest filling that still seals inlet and outlet.")
    gas_storage_share: PositiveShare = Field(description="Usable gas storage, share of total volume.")
    depth: Length | None = Field(None, description="Of the middle of the slurry below ground; 0 above ground; practice's when absent.")
    tanks_in_series: Annotated[int, Field(ge=1, le=20)] = Field(description="Stirred tanks that stand for its mixing.")
    operating_pressure: Pressure = Field(description="Gauge pressure in use; high is the safe limit.")
    geometry: Geometry
    buildable_sizes: BuildableSizes
    checked_as: Identifier | None = Field(
        None, description="Id of the structure whose checks hold for it too; itself when absent, if checks name it."
    )
    confirm_before_filling: tuple[Identifier, ...] = Field(description="Facts that must be known before the first charge.")
    cautions: tuple[Identifier, ...] = ()


# What an appliance burns the gas for, by the trade's words.
Purpose = Literal["cooking", "heating", "refrigeration", "lighting", "shaft_power", "electricity", "other"]


class Appliance(Named):
    """Something that burns the gas."""

    purpose: Purpose = Field(
        "other",
        description="What its gas is for. Only that of cooking takes the place of cooking fuels; other, as where nobody says it, of none.",
    )
    gas_per_hour: GasUseRate
    electric_power: PositivePower | None = Field(
        None, description="Electricity that one makes at gas_per_hour; for the purpose electricity, and for no other."
    )
    usual_hours_per_day: Number = Field(description="Hours of use a day in a household.")
    least_pressure: Pressure | None = Field(None, description="Gauge pressure at its tap below which it burns badly or goes out.")
    cautions: tuple[Identifier, ...] = Field((), description="Ids of cautions that go with it.")

    @model_validator(mode="after")
    def _power_of_a_generator(self) -> Self:
        if (self.purpose == "electricity") != (self.electric_power is not None):
            raise PydanticCustomError("power_without_purpose", "the purpose electricity and electric_power go together")
        if self.electric_power is not None and self.gas_per_hour.least <= 0:
            raise PydanticCustomError("power_of_no_gas", "what makes electricity takes gas: gas_per_hour must be more than 0")
        return self


class Fuel(Named):
    """Something that a household burns, or electricity, in whose place the gas can come."""

    heating_value: HeatingValue | None = Field(None, description="Lower heating value as burnt; absent for electricity.")
    density: PositiveDensity | None = Field(None, description="Of a liquid fuel, which people count in litres.")
    stove_efficiency: PositiveShare = Field(description="Part of its heat that reaches the pot; of electricity, on a hot plate.")
    emission_factor: EmissionFactor = Field(description="Carbon dioxide per heat; of electricity, as it comes from the grid.")
    non_renewable_share: Share = Field(description="Part that does not grow again; 1 for what is dug up.")


class Pipe(Named):
    """A size of gas pipe as it is sold."""

    material: Literal["galvanised_steel", "plastic"]
    inner_diameter: Bore = Field(description="True bore; the nominal inch is not the bore.")


class Container(Named):
    """Something that material is carried in."""

    volume: Volume
    carried_by: Literal["hand", "head", "barrow", "cart", "animal", "vehicle"]


class Cover(Named):
    """How a heap is kept, with what it loses per day."""

    volatile_solids_loss: Rate
    nitrogen_loss: Rate
    moisture_loss: Rate = Field(description="Share of the heap's water that evaporates per day.")
    covered: bool = Field(description="Whether rain and sun are kept off.")
    keeps_for: Time = Field(description="Age up to which the dung is still good for a first charge; high is the limit.")


class SlurryStore(Named):
    """How digestate is kept until it is spread."""

    covered: bool = Field(description="Whether rain, sun and wind are kept off.")
    dug: bool = Field(True, description="Whether a hole is dug for it; false for a tank or bag that stands on the ground.")
    ammonia_loss: Share = Field(description="Part of the ammonium nitrogen that escapes while it is kept.")


class Spreading(Named):
    """How digestate is brought to the field."""

    ammonia_loss: Share = Field(description="Part of the ammonium nitrogen that escapes in the field.")


class ManureManagement(Named):
    """How manure is kept where no digester takes it: part of its methane potential that the air gets, by the mean air of the year.

    The figures ``cool_climate_to`` and ``temperate_climate_to`` of practice part the climates.
    """

    methane_conversion_cool: Share = Field(description="In a cool climate.")
    methane_conversion_temperate: Share = Field(description="Between cool and warm.")
    methane_conversion_warm: Share = Field(description="In a warm climate.")

    @model_validator(mode="after")
    def _rising(self) -> Self:
        if not self.methane_conversion_cool.typical <= self.methane_conversion_temperate.typical <= self.methane_conversion_warm.typical:
            raise PydanticCustomError("climates_disordered", "a warmer climate must not give less methane")
        return self


class Crop(Named):
    """A crop that digestate can feed."""

    nitrogen_need: NitrogenNeed = Field(description="Nitrogen that it needs a year at the yields of small farms, from all sources.")
    eaten_raw: bool = Field(description="Whether people eat any of it uncooked.")
    edible_part_touches_soil: bool = Field(description="Whether what is eaten grows in the soil or lies on it.")
    fodder: bool = Field(False, description="Whether animals eat it fresh.")
    handling: tuple[Text, ...] = Field((), description="When and how digestate is brought to it.")


class CurvePoint(Entry):
    """Low, typical and high at one temperature [Cel]."""

    at: float
    low: Annotated[float, Field(ge=0)]
    typical: Annotated[float, Field(ge=0)]
    high: Annotated[float, Field(ge=0)]

    @model_validator(mode="after")
    def _in_order(self) -> Self:
        if not self.low <= self.typical <= self.high:
            raise PydanticCustomError("range_disordered", "low, typical and high must rise")
        return self


class Curve(Known):
    """A table of values against digester temperature (Cel), read by straight lines, flat beyond its ends."""

    of: Literal["temperature"]
    unit: Literal["d"]
    points: tuple[CurvePoint, ...] = Field(min_length=2)

    @model_validator(mode="after")
    def _rising(self) -> Self:
        places = [point.at for point in self.points]
        if places != sorted(set(places)):
            raise PydanticCustomError("curve_disordered", "the points of a curve must rise in temperature")
        return self


class Measurement(Known):
    """How a farm measures a quantity that an answer would be narrower for."""

    text: Text
    stated_as: Identifier | None = Field(None, description="Member of a request that takes it, where it is not called like the quantity.")


class Practice(Entry):
    """How the work is done: the figures that are neither substrate nor structure."""

    containers: dict[Identifier, Container]
    covers: dict[Identifier, Cover]
    slurry_stores: dict[Identifier, SlurryStore]
    spreadings: dict[Identifier, Spreading]
    manure_managements: dict[Identifier, ManureManagement]
    curves: dict[Identifier, Curve]
    figures: dict[Identifier, PracticeFigure]
    measurements: dict[Identifier, Measurement] = Field(
        default_factory=dict, description="By quantity: how to measure it. Only these are proposed as the first to measure."
    )


# Whatever goes through the practice section by section (merging packs, the catalogue) reads these.
SECTIONS_OF_PRACTICE = tuple(Practice.model_fields)


class Process(Entry):
    """What the process model must be told of microbes and feeds; the same names as ``kilisho.process.Parameters``."""

    growth_factor: PositiveNumber = Field(description="Multiplies the greatest growth rate of the methanogens.")
    cell_yield: PartOfOne = Field(description="Cells grown per acids taken up, both as chemical oxygen demand.")
    half_saturation: PositiveConcentration = Field(description="Acids at half the growth, as chemical oxygen demand.")
    decay_share: PartOfOne = Field(description="Decay of the methanogens, share of their greatest growth rate.")
    free_ammonia_limit: PositiveConcentration = Field(description="Free ammonia nitrogen that halves growth.")
    upper_ph: Ph = Field(description="pH at which growth begins to fall.")
    lower_ph: Ph = Field(description="pH at which 5 % of the growth is left.")
    acidifiers_upper_ph: Ph = Field(description="pH at which the forming of acids begins to fall.")
    acidifiers_lower_ph: Ph = Field(description="pH at which 5 % of the forming of acids is left.")
    ammonia_need: Density = Field(description="Ammonia nitrogen that halves growth for want of it.")
    early_gas_share: Share = Field(description="Part of the carbon dioxide that comes as acids are formed.")
    gas_held: PositiveNumber = Field(description="Volume of dissolved carbon dioxide per volume of slurry under that gas.")
    oxygen_demand: Number = Field(description="Chemical oxygen demand of volatile solids, kg/kg.")
    methanogens_of_ruminants: Number = Field(description="Methanogens in the volatile solids of fresh dung of ruminants, kg/kg.")
    methanogens_of_others: Number = Field(description="Methanogens in the volatile solids of other fresh feeds, kg/kg.")
    base_of_dung: Number = Field(description="Positive charge of dung that makes alkalinity, over that of its potassium.")
    base_of_others: Number = Field(description="The same for feeds that are not dung.")
    early_ammonium_share: Share = Field(description="Ammonium in the nitrogen of fresh feed over that after digestion.")
    slurry_methanogens: Density = Field(description="Methanogens in working cattle slurry, as chemical oxygen demand.")
    slurry_acids: Density = Field(description="Acids in working cattle slurry, as chemical oxygen demand.")
    slurry_ammonia: Density = Field(description="Ammonia nitrogen in working cattle slurry.")
    slurry_fixed_alkalinity: Density = Field(description="Alkalinity of working cattle slurry beside ammonia's, as calcium carbonate.")


def _any_kind(value: Any) -> Any:
    if not isinstance(value, dict) or value.get("kind") not in KINDS:
        raise PydanticCustomError("unknown_kind", "kind must be one of {kinds}", {"kinds": ", ".join(KINDS)})
    return _convert_any(value)


def _convert_any(value: dict[str, Any]) -> dict[str, Any]:
    kind = value["kind"]
    try:
        unit = unit_of(kind, str(value.get("unit")))
    except UnknownUnitError as error:
        raise PydanticCustomError("unknown_unit", "{reason}", {"reason": str(error)}) from None
    numeric = {n: v for n in ("low", "typical", "high") if isinstance(v := value.get(n), int | float) and not isinstance(v, bool)}
    return {**value, **{n: v * unit.factor + unit.offset for n, v in numeric.items()}}


class _PracticeFigure(Property):
    kind: str = Field(description="Kind of quantity, as in the table of units.")
    description: Text


PracticeFigure = Annotated[_PracticeFigure, BeforeValidator(_any_kind)]


class Fact(Named):
    """Something a caller can state about a farm; checks read it. Also says where it stands in a safety check's body."""

    group: Literal["site", "structure", "gas", "feed", "people", "water", "digestate"]
    field: Identifier = Field(description="Its name inside the group of the request.")
    kind: str = Field(description="yes_no, one_of, list_of, structure (an id of structures), or a kind of quantity.")
    unit: str | None = Field(None, description="For a quantity: the unit of a bare number.")
    values: tuple[Identifier, ...] = Field((), description="For one_of and list_of: what may be said.")
    at_least: float | None = Field(None, description="For a quantity: smallest meaningful value, in unit.")
    at_most: float | None = Field(None, description="For a quantity: largest meaningful value, in unit.")
    implies: dict[Identifier, bool] = Field(default_factory=dict, description="Facts that hold when this one is stated at all.")

    @model_validator(mode="after")
    def _complete(self) -> Self:
        if self.kind in ("one_of", "list_of"):
            complete = bool(self.values)
        elif self.kind in ("yes_no", "structure"):
            complete = True
        else:
            complete = self.kind in KINDS and self.unit in KINDS[self.kind].units and None not in (self.at_least, self.at_most)
        if not complete:
            raise PydanticCustomError(
                "fact_incomplete", "a {kind} fact needs values, or a known kind with unit, at_least and at_most", {"kind": self.kind}
            )
        return self


Scalar = bool | float | str
NUMERIC_OPERATORS = frozenset({"at_least", "at_most", "more_than", "less_than", "between"})


class Condition(Entry):
    """What is asked of one fact or quantity. Exactly one operator; numbers are in ``unit``."""

    at_least: float | None = None
    at_most: float | None = None
    more_than: float | None = None
    less_than: float | None = None
    between: tuple[float, float] | None = None
    is_: Annotated[Scalar | None, Field(alias="is")] = None
    one_of: tuple[Scalar, ...] | None = None
    none_of: tuple[Scalar, ...] | None = None
    includes_none_of: tuple[str, ...] | None = None
    unit: str | None = Field(None, description="UCUM code of the bounds; required for a quantity that has a dimension.")

    @model_validator(mode="after")
    def _one_operator(self) -> Self:
        if len(self.operators) != 1:
            raise PydanticCustomError("one_operator", "a condition holds exactly one operator")
        return self

    @property
    def operators(self) -> list[tuple[str, Any]]:
        """The operators that are stated, with their bounds."""
        names = [name for name in type(self).model_fields if name != "unit"]
        return [(name, getattr(self, name)) for name in names if getattr(self, name) is not None]


Operation = Literal[
    "sizing",
    "first_charge",
    "maintenance_feed",
    "feed_mix",
    "gas_forecast",
    "batch_rotation",
    "gas_use",
    "digestate",
    "farm_plan",
    "safety_check",
    "diagnosis",
    "validate_installation",
]

# What a failed check says of an installation. Each word belongs to one aspect: record (doubtful), size (too_small, too_large), feeding
# (starved to too_seldom) or gas (below to not_measured).
Word = Literal[
    "doubtful",
    "too_small",
    "too_large",
    "starved",
    "too_wet",
    "too_dry",
    "overfed",
    "too_seldom",
    "below",
    "low",
    "above",
    "not_measured",
]
# Numbers of an installation's record that people write in the wrong unit or with a shifted decimal point.
Slipping = Literal[
    "total_volume",
    "gas_storage_volume",
    "mean_air_temperature",
    "feed_mass",
    "water_volume",
    "biogas_measured",
    "gas_pressure",
    "ph",
]


class Slip(Entry):
    """Whose unit has probably slipped where a check fails. The check's subject must be in proportion to that number."""

    member: Slipping = Field(description="Member of an installation's record. What follows from it is not judged where the check fails.")
    likely: tuple[float, float] = Field(description="Where the subject lies, in the unit of must, once the number is read in its own unit.")

    @model_validator(mode="after")
    def _rising(self) -> Self:
        if self.likely[0] >= self.likely[1]:
            raise PydanticCustomError("range_disordered", "the two ends of likely must rise")
        return self


class Check(Known):
    """A declarative check: what must hold of one subject, when, how bad it is if not, why, and what to do."""

    title: Text
    topic: Literal["siting", "gas", "water", "feed", "process", "structure", "commissioning", "hygiene", "handling", "entry"]
    subject: Identifier = Field(description="Id of a fact or name of a quantity.")
    must: Condition
    when: dict[Identifier, Condition] = Field(default_factory=dict, description="All must hold for the check to apply.")
    severity: Severity
    absolute: bool = Field(False, description="Holds everywhere: no later pack may soften or remove it.")
    alarm: bool = Field(False, description="A failure calls for action at once, although it is below danger level.")
    only_if_stated: bool = Field(
        False, description="Not asked where its subject is not known: a graver check of the same subject says then what is missing."
    )
    why: Text
    do: Text
    asked_in: tuple[Operation, ...] = Field(("safety_check",), description="Operations that evaluate it.")
    finds: Word | None = Field(None, description="What a failure says of an installation whose record is validated.")
    slip: Slip | None = Field(None, description="For a check of whether a record is possible.")

    @model_validator(mode="after")
    def _no_danger_is_passed_over(self) -> Self:
        if self.only_if_stated and self.severity is Severity.danger:
            raise PydanticCustomError("danger_passed_over", "a check of danger level is asked whether its subject is known or not")
        return self

    @model_validator(mode="after")
    def _slip_of_a_number(self) -> Self:
        if self.slip is not None and not NUMERIC_OPERATORS.issuperset(name for name, _ in self.must.operators):
            raise PydanticCustomError("slip_of_no_number", "slip belongs to a check that bounds a number")
        return self


class Caution(Known):
    """A sentence that stands beside the answer whatever the facts are."""

    signal: Severity
    text: Text
    shown_in: tuple[Operation, ...] = ()


Strength = Literal["strong", "some", "weak"]
HowCommon = Literal["very_common", "common", "occasional", "rare"]
Effort = Literal["look", "by_hand", "instrument", "trained"]
Urgency = Literal["at_once", "today", "this_week", "when_convenient"]


class Symptom(Named):
    """Something that a household sees, smells, hears or remembers without an instrument."""

    group: Literal["gas", "flame", "pressure", "slurry", "structure", "history", "people"]
    seen: Text = Field(description="What it looks like, in the household's words.")
    alarm: bool = Field(False, description="Somebody may get hurt: shown above all causes with what to do at once.")
    cautions: tuple[Identifier, ...] = Field((), description="Ids of the cautions that say what to do at once; required for an alarm.")
    implies: dict[Identifier, Scalar] = Field(default_factory=dict, description="Facts that it states, for the checks.")

    @model_validator(mode="after")
    def _alarm_says_what_to_do(self) -> Self:
        if self.alarm and not self.cautions:
            raise PydanticCustomError("alarm_without_caution", "an alarm names the cautions that say what to do at once")
        return self


class Evidence(Entry):
    """Facts that speak for or against a cause where all of their conditions hold; a fact that nobody stated says nothing."""

    when: dict[Identifier, Condition] = Field(min_length=1)
    speaks: Literal["for", "against"] = "for"
    strength: Strength


class Cause(Known, Named):
    """A trouble of household digesters: what it explains, what speaks against it, how it is confirmed and put right.

    The words of strength and frequency stand for the figures ``evidence_...`` and ``prior_...`` of practice.
    """

    group: Literal["pipe_and_appliance", "start_up", "feed", "process", "structure", "use"]
    how_common: HowCommon
    structures: tuple[Identifier, ...] = Field((), description="Kinds of digester that can have it; all when empty.")
    explains: dict[Identifier, Strength] = Field(
        min_length=1, description="Symptoms that it brings about, and how much each speaks for it."
    )
    denied_by: dict[Identifier, Strength] = Field(default_factory=dict, description="Symptoms that speak against it.")
    readings: tuple[Evidence, ...] = Field((), description="Facts that speak for or against it.")
    test: Identifier = Field(description="Id of the test that confirms it or rules it out.")
    remedy: Text
    urgency: Urgency
    cautions: tuple[Identifier, ...] = ()


class Outcome(Entry):
    """What a test may show, and what follows. A cause that it does not name stays as likely as it was."""

    seen: Text
    points_to: tuple[Identifier, ...] = Field((), description="Causes that would show this.")
    rules_out: tuple[Identifier, ...] = Field((), description="Causes that would not show this.")


class FieldTest(Known, Named):
    """A test on the farm that tells causes apart. None needs a flame near gas, or anyone in a digester or pit."""

    effort: Effort = Field(description="look: eyes, nose and log book; by_hand: simple tools; then an instrument; then a trained person.")
    how: Text
    outcomes: tuple[Outcome, ...] = Field(min_length=2)
    answered_by: tuple[Identifier, ...] = Field((), description="Facts that are the result of this test: where one is stated, it is done.")
    cautions: tuple[Identifier, ...] = ()


class PackHeader(Entry):
    """Which pack this is."""

    id: Identifier
    version: Annotated[str, Field(pattern=r"^\d+\.\d+\.\d+$")]
    title: Text
    region: Text | None = None


Practice.model_rebuild()


class RulebookData(Entry):
    """All layers merged: what the JSON Schema of a complete rulebook describes."""

    pack: PackHeader
    sources: dict[Identifier, Source] = {}
    substrates: dict[Identifier, Substrate]
    animals: dict[Identifier, Animal]
    structures: dict[Identifier, Structure]
    appliances: dict[Identifier, Appliance]
    fuels: dict[Identifier, Fuel]
    pipes: dict[Identifier, Pipe]
    crops: dict[Identifier, Crop]
    practice: Practice
    process: Process
    facts: dict[Identifier, Fact]
    checks: dict[Identifier, Check]
    cautions: dict[Identifier, Caution]
    symptoms: dict[Identifier, Symptom]
    causes: dict[Identifier, Cause]
    tests: dict[Identifier, FieldTest]


# Sections of entries by id.
SECTIONS = tuple(name for name, field in RulebookData.model_fields.items() if get_origin(field.annotation) is dict)
