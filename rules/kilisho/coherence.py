"""Does a merged rulebook hang together? Looks only at references between entries; each entry's own shape is checked before."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from kilisho.rulebook import GROUPS_OF_FACTS, NUMERIC_OPERATORS, Condition, Fact, FieldTest, RulebookData
from kilisho.units import KINDS, UnknownUnitError, unit_of

PathInPack = tuple[str | int, ...]


def incoherences(data: RulebookData) -> Iterator[tuple[PathInPack, str]]:
    """Path and expectation of every reference that leads nowhere and of every check that its subject cannot answer."""
    for path, section, name in _references(data):
        if name not in getattr(data, section):
            yield path, f"one of the {section} listed under {section}:, not {name!r}"
    yield from _condition_faults(data)
    yield from _unreadable(data)
    yield from _uncountable(data)
    yield from _disordered_ph(data)
    yield from _doubled_places(data)
    yield from _unchecked_structures(data)
    yield from _faults_of_symptoms(data)
    yield from _faults_of_causes(data)
    yield from _faults_of_evidence_figures(data)


# What the questions read by name; a pack may change these but not take them away or give them another kind.
FIGURES = {
    "batch_like_interval": "time",
    "biogas_stove_efficiency": "share",
    "carrying_distance": "length",
    "cold_mix_temperature": "temperature",
    "catch_up_share": "share",
    "cool_climate_to": "temperature",
    "cooking_hours": "number",
    "curing_time": "time",
    "dung_per_plant_volume": "loading",
    "fitting_in_diameters": "number",
    "fittings_of_length": "share",
    "gas_kept_when_even": "share",
    "evidence_some": "number",
    "evidence_strong": "number",
    "evidence_weak": "number",
    "gas_per_person": "volume_flow",
    "gas_storage_of_daily_gas": "share",
    "grit_held_in_mixing_tank": "share",
    "growth_model_reach": "share",
    "handling_time": "walking_time",
    "largest_cold_mix_loading": "loading",
    "largest_mix_ammonia_nitrogen": "density",
    "largest_mix_carbon_to_nitrogen": "number",
    "largest_mix_crop_residue_share": "share",
    "largest_mix_loading": "loading",
    "largest_slurry_total_solids": "share",
    "largest_starter_share": "share",
    "largest_urine_share": "share",
    "leak_share": "share",
    "least_carbon_to_nitrogen_with_urine": "number",
    "least_mix_carbon_to_nitrogen": "number",
    "least_slurry_total_solids": "share",
    "longest_regular_interval": "time",
    "mixing_rate": "work_rate",
    "nitrogen_in_diammonium_phosphate": "share",
    "nitrogen_in_urea": "share",
    "nitrogen_limit_elsewhere": "areic_mass",
    "organic_nitrogen_release": "share",
    "phosphate_in_diammonium_phosphate": "share",
    "phosphorus_settling": "share",
    "pipe_drop_limit": "pressure",
    "pipe_roughness_galvanised_steel": "length",
    "pipe_roughness_plastic": "length",
    "potash_in_potassium_chloride": "share",
    "season_of_stock": "time",
    "prior_common": "number",
    "prior_occasional": "number",
    "prior_rare": "number",
    "prior_very_common": "number",
    "sludge_allowance": "share",
    "sludge_density": "density",
    "slurry_ph_against_balance": "number",
    "slurry_storage_time": "time",
    "slurry_store_depth": "length",
    "slurry_store_freeboard": "length",
    "soil_depth": "length",
    "soil_diffusivity": "diffusivity",
    "soil_offset": "temperature_difference",
    "solids_in_gas": "share",
    "starter_share": "share",
    "temperate_climate_to": "temperature",
    "unknown_ammonium_share": "share",
    "unknown_digester_temperature": "temperature",
    "unknown_methane_share": "share",
    "unknown_potassium": "share",
    "unknown_yearly_swing": "temperature_difference",
    "vent_cycles": "number",
    "walking_speed": "speed",
    "warming_potential": "number",
    "water_density": "density",
}
DIVISORS = frozenset(
    {
        "catch_up_share",
        "cooking_hours",
        "dung_per_plant_volume",
        "least_slurry_total_solids",
        "mixing_rate",
        "nitrogen_in_urea",
        "phosphate_in_diammonium_phosphate",
        "potash_in_potassium_chloride",
        "season_of_stock",
        "sludge_density",
        "slurry_store_depth",
        "soil_diffusivity",
        "walking_speed",
        "water_density",
    }
)
# The rest of the whole is divided by.
LESS_THAN_WHOLE = frozenset({"leak_share"})
CURVES = ("design_retention", "feed_step", "first_burnable_gas")
RATIOS = {
    "hemisphere_with_tank": ("tank_depth_to_dome_radius",),
    "cylinder_with_drum": ("pit_height_to_diameter", "drum_clearance"),
    "tube": ("length_to_diameter",),
    "cylinder": ("height_to_diameter",),
}


def _unreadable(data: RulebookData) -> Iterator[tuple[PathInPack, str]]:
    """Figures, curves, ratios and entries that the questions need and the rulebook lacks or states in another kind."""
    for name, kind in FIGURES.items():
        figure = data.practice.figures.get(name)
        if figure is None or figure.kind != kind:
            yield ("practice", "figures", name), f"a figure of kind {kind}; the questions read it"
        elif name in DIVISORS and figure.least <= 0:
            yield ("practice", "figures", name), "more than 0"
        elif name in LESS_THAN_WHOLE and figure.most >= 1:
            yield ("practice", "figures", name), "less than 1"
    yield from ((("practice", "curves", name), "this curve; the questions read it") for name in CURVES if name not in data.practice.curves)
    for part in ("containers", "slurry_stores", "spreadings"):
        if not getattr(data.practice, part):
            yield ("practice", part), "at least one entry"
    if "cattle_urine" not in data.substrates:
        yield ("substrates", "cattle_urine"), "this substrate; urine in place of water is counted with its composition"
    for name, structure in data.structures.items():
        missing = [ratio for ratio in RATIOS[structure.geometry.shape] if ratio not in structure.geometry.ratios]
        yield from ((("structures", name, "geometry", "ratios"), f"{ratio} for this shape") for ratio in missing)


def _uncountable(data: RulebookData) -> Iterator[tuple[PathInPack, str]]:
    """Groups without a substrate: the fact that counts them would be 0 whatever is fed, and its checks would say nothing."""
    groups = {substrate.group for substrate in data.substrates.values()}
    for fact, group in GROUPS_OF_FACTS.items():
        if group not in groups:
            yield ("substrates",), f"a substrate of the group {group}; the fact {fact} counts them"


# A slope of growth needs room between its two pH in every draw from their ranges.
PH_THAT_FALL = ("upper_ph", "lower_ph"), ("acidifiers_upper_ph", "acidifiers_lower_ph"), ("lower_ph", "acidifiers_lower_ph")
LEAST_ROOM = 0.1


def _disordered_ph(data: RulebookData) -> Iterator[tuple[PathInPack, str]]:
    """Limits of pH whose ranges overlap: the process model would divide by nothing or turn the limit round."""
    for upper, lower in PH_THAT_FALL:
        if getattr(data.process, upper).least < getattr(data.process, lower).most + LEAST_ROOM:
            yield ("process", upper), f"a lowest value at least {LEAST_ROOM} above the highest of {lower}"


def _doubled_places(data: RulebookData) -> Iterator[tuple[PathInPack, str]]:
    """Two facts at one place of a safety check's body: the second would hide the first."""
    places: dict[tuple[str, str], str] = {}
    for name, fact in data.facts.items():
        first = places.setdefault((fact.group, fact.field), name)
        if first != name:
            yield ("facts", name, "field"), f"a place of its own; {first} stands at {fact.group}.{fact.field}"


def _unchecked_structures(data: RulebookData) -> Iterator[tuple[PathInPack, str]]:
    """Structures that no check names would slip past every check of a kind of structure."""
    named = {value for check in data.checks.values() if "structure_kind" in check.when for value in _values(check.when["structure_kind"])}
    for name, structure in data.structures.items():
        if name not in named and structure.checked_as not in named:
            yield ("structures", name, "checked_as"), f"the structure whose checks hold for it: {', '.join(sorted(named))}"


def _values(condition: Condition) -> set[str]:
    [(_, bound)] = condition.operators
    return {str(value) for value in bound} if isinstance(bound, tuple) else {str(bound)}


def _references(data: RulebookData) -> Iterator[tuple[PathInPack, str, str]]:
    """Every reference of an entry to another: where it stands, the section it points into, and the id."""
    for path, ids in _cited(data):
        yield from (((*path, "source"), "sources", name) for name in ids)
    for name, animal in data.animals.items():
        yield ("animals", name, "substrate"), "substrates", animal.substrate
    for name, substrate in data.substrates.items():
        yield from ((("substrates", name, "cautions"), "cautions", caution) for caution in substrate.cautions)
    for name, appliance in data.appliances.items():
        yield from ((("appliances", name, "cautions"), "cautions", caution) for caution in appliance.cautions)
    for name, structure in data.structures.items():
        yield from ((("structures", name, "cautions"), "cautions", caution) for caution in structure.cautions)
        yield from ((("structures", name, "confirm_before_filling"), "facts", fact) for fact in structure.confirm_before_filling)
    yield from _references_of_diagnosis(data)


def _references_of_diagnosis(data: RulebookData) -> Iterator[tuple[PathInPack, str, str]]:
    for section in ("symptoms", "causes", "tests"):
        for name, entry in getattr(data, section).items():
            yield from (((section, name, "cautions"), "cautions", caution) for caution in entry.cautions)
    for name, cause in data.causes.items():
        yield ("causes", name, "test"), "tests", cause.test
        yield from ((("causes", name, "explains"), "symptoms", symptom) for symptom in cause.explains)
        yield from ((("causes", name, "denied_by"), "symptoms", symptom) for symptom in cause.denied_by)
        yield from ((("causes", name, "structures"), "structures", structure) for structure in cause.structures)
    for name, test in data.tests.items():
        yield from ((("tests", name, "answered_by"), "facts", fact) for fact in test.answered_by)
        for i, outcome in enumerate(test.outcomes):
            for field in ("points_to", "rules_out"):
                yield from ((("tests", name, "outcomes", i, field), "causes", cause) for cause in getattr(outcome, field))


def _cited(value: Any, path: PathInPack = ()) -> Iterator[tuple[PathInPack, tuple[str, ...]]]:
    if isinstance(value, dict):
        for key, inner in value.items():
            yield from _cited(inner, (*path, key))
    elif hasattr(type(value), "model_fields"):
        if getattr(value, "source", ()):
            yield path, value.source
        for name in type(value).model_fields:
            yield from _cited(getattr(value, name), (*path, name))


def _condition_faults(data: RulebookData) -> Iterator[tuple[PathInPack, str]]:
    """Checks and evidence that speak of unknown facts, or ask something of a fact that its kind cannot answer."""
    for name, cause in data.causes.items():
        for i, evidence in enumerate(cause.readings):
            for subject, condition in evidence.when.items():
                yield from _faults_of_condition(("causes", name, "readings", i, "when", subject), subject, condition, data)
    for name, check in data.checks.items():
        for where, subject, condition in [(("must",), check.subject, check.must), *((("when", s), s, c) for s, c in check.when.items())]:
            path = ("checks", name, "subject") if where == ("must",) and subject not in data.facts else ("checks", name, *where)
            yield from _faults_of_condition(path, subject, condition, data)


def _faults_of_condition(path: PathInPack, subject: str, condition: Condition, data: RulebookData) -> Iterator[tuple[PathInPack, str]]:
    fact = data.facts.get(subject)
    faults = [f"a fact listed under facts:, not {subject!r}"] if fact is None else _misfits(fact, condition)
    yield from ((path, fault) for fault in faults)


def _faults_of_symptoms(data: RulebookData) -> Iterator[tuple[PathInPack, str]]:
    """Symptoms that nothing explains, that imply what their fact cannot be, or that imply two things of one fact."""
    explained = {symptom for cause in data.causes.values() for symptom in cause.explains}
    implied: dict[str, Any] = {}
    for name, symptom in data.symptoms.items():
        if name not in explained:
            yield ("symptoms", name), "a cause under causes: that explains it"
        for fact, value in symptom.implies.items():
            path = ("symptoms", name, "implies", fact)
            yield from _faults_of_condition(path, fact, Condition.model_validate({"is": value}), data)
            if implied.setdefault(fact, value) != value:
                yield path, f"{implied[fact]!r}, as another symptom implies"


def _faults_of_causes(data: RulebookData) -> Iterator[tuple[PathInPack, str]]:
    """Causes that a symptom both speaks for and against, and those that their own test cannot tell."""
    for name, cause in data.causes.items():
        if both := cause.explains.keys() & cause.denied_by.keys():
            yield ("causes", name, "denied_by"), f"symptoms that it does not explain; it explains {', '.join(sorted(both))}"
        test = data.tests.get(cause.test)
        if test is not None and not _tells(test, name):
            yield (
                ("causes", name, "test"),
                "a test with an outcome that points to this cause and another that rules it out or leaves it open",
            )
    for name, test in data.tests.items():
        for i, outcome in enumerate(test.outcomes):
            if set(outcome.points_to) & set(outcome.rules_out):
                yield ("tests", name, "outcomes", i), "a cause pointed to or ruled out, not both"


def _tells(test: FieldTest, cause: str) -> bool:
    pointing = sum(cause in outcome.points_to for outcome in test.outcomes)
    return 0 < pointing < len(test.outcomes)


# Figures that stand for words must keep the words' order in every draw from their ranges.
WORDS_IN_ORDER = (
    ("evidence_weak", "evidence_some", "evidence_strong"),
    ("prior_rare", "prior_occasional", "prior_common", "prior_very_common"),
)


def _faults_of_evidence_figures(data: RulebookData) -> Iterator[tuple[PathInPack, str]]:
    figures = data.practice.figures
    for words in WORDS_IN_ORDER:
        least = 1.0 if words[0].startswith("evidence") else 1e-6
        for word in words:
            if word in figures and figures[word].least < least:
                yield ("practice", "figures", word), f"a lowest value of at least {least:g}, which the word before it reaches"
            least = figures[word].most if word in figures else least


def _misfits(fact: Fact, condition: Condition) -> Iterator[str]:
    [(operator, bound)] = condition.operators
    if fact.kind in KINDS:
        yield from _misfits_of_quantity(fact, operator, bound, condition.unit)
    elif operator in NUMERIC_OPERATORS or (fact.kind == "list_of") != (operator == "includes_none_of"):
        yield f"an operator that fits a {fact.kind} fact, not {operator}"
    elif fact.values:
        known = set(bound) if isinstance(bound, tuple) else {bound}
        if known - set(fact.values):
            yield f"values among {', '.join(fact.values)}"
    elif fact.kind == "yes_no" and not isinstance(bound, bool):
        yield "is: true or is: false"


def _misfits_of_quantity(fact: Fact, operator: str, bound: object, unit: str | None) -> Iterator[str]:
    if operator not in NUMERIC_OPERATORS:
        yield f"a bound such as at_least, since the fact is a {fact.kind}"
    if isinstance(bound, tuple) and list(bound) != sorted(bound):
        yield "two bounds that rise"
    if unit is None and (KINDS[fact.kind].canonical.code != "1" or fact.kind == "share"):
        yield f"a unit of {fact.kind}, such as {KINDS[fact.kind].canonical.code}"
    elif unit is not None:
        try:
            unit_of(fact.kind, unit)
        except UnknownUnitError as error:
            yield str(error)
