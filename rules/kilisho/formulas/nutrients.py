"""What the digestate carries: organic matter, nitrogen, phosphorus and potassium, what storing and spreading lose, what plants find.

Nitrogen, phosphorus and potassium are not made or destroyed in a digester. What is counted as lost is ammonia that escapes from a store
or from the field; what is counted as settled stays in the digester's sludge until that is taken out.
"""

from __future__ import annotations

from kilisho.formulas.arrays import Numeric, least, most
from kilisho.formulas.gas import NORMAL_PRESSURE, biogas_density
from kilisho.quantities import given, quantity

# Standard atomic masses (IUPAC 2021, abridged), in g/mol.
_PHOSPHORUS, _POTASSIUM, _OXYGEN = 30.973761998, 39.0983, 15.999
PHOSPHATE_PER_PHOSPHORUS = (2 * _PHOSPHORUS + 5 * _OXYGEN) / (2 * _PHOSPHORUS)
POTASH_PER_POTASSIUM = (2 * _POTASSIUM + _OXYGEN) / (2 * _POTASSIUM)

GIVEN = (
    given("phosphorus_per_day", "mass_flow", "Phosphorus (as P) fed per day."),
    given("potassium_per_day", "mass_flow", "Potassium (as K) fed per day."),
    given("solids_in_gas", "share", "Organic matter that is broken down per mass of dry gas; the rest of the gas was water."),
    given("ammonia_loss_in_storage", "share", "Part of the ammonium nitrogen that escapes from the store."),
    given("ammonia_loss_in_spreading", "share", "Part of the ammonium nitrogen that escapes in the field."),
    given("organic_nitrogen_release", "share", "Part of the organic nitrogen that plants find in the first year."),
    given("phosphorus_settling", "share", "Part of the phosphorus that stays behind in the digester's sludge."),
    given("nitrogen_need", "areic_mass", "Nitrogen that a crop needs a year."),
    given("nitrogen_in_urea", "share", "Nitrogen in urea."),
    given("nitrogen_in_diammonium_phosphate", "share", "Nitrogen in diammonium phosphate."),
    given("phosphate_in_diammonium_phosphate", "share", "Phosphate (as P2O5) in diammonium phosphate."),
    given("potash_in_potassium_chloride", "share", "Potash (as K2O) in potassium chloride."),
)


@quantity("mass_flow", empirical="dry gas at 0 Cel and 101325 Pa; m3/d to kg/d")
def dry_biogas_mass_per_day(biogas_per_day_normal: Numeric, methane_share: Numeric) -> Numeric:
    """Methane and carbon dioxide that leave per day, without the water vapour."""
    return biogas_per_day_normal * biogas_density(methane_share, 0.0, NORMAL_PRESSURE)


@quantity("mass_flow")
def volatile_solids_destroyed_per_day(
    dry_biogas_mass_per_day: Numeric, solids_in_gas: Numeric, volatile_solids_per_day: Numeric
) -> Numeric:
    """Organic matter that became gas, never more than was fed; water that was taken up on the way weighs in the gas too."""
    return least(dry_biogas_mass_per_day * solids_in_gas, volatile_solids_per_day)


@quantity("mass_flow")
def volatile_solids_left_per_day(volatile_solids_per_day: Numeric, volatile_solids_destroyed_per_day: Numeric) -> Numeric:
    """Organic matter that is left after digestion."""
    return volatile_solids_per_day - volatile_solids_destroyed_per_day


@quantity("mass_flow")
def total_solids_left_per_day(total_solids_per_day: Numeric, volatile_solids_destroyed_per_day: Numeric) -> Numeric:
    """Dry matter that is left after digestion, grit that settles included."""
    return total_solids_per_day - volatile_solids_destroyed_per_day


@quantity("share")
def digestate_total_solids(total_solids_left_per_day: Numeric, digestate_mass_per_day: Numeric) -> Numeric:
    """Total solids of the digestate."""
    return total_solids_left_per_day / digestate_mass_per_day


@quantity("mass_flow")
def digestate_nitrogen_per_day(nitrogen_per_day: Numeric, urine_nitrogen_per_day: Numeric) -> Numeric:
    """Nitrogen that leaves with the digestate: all that was fed (conservation; gas carries off a trace)."""
    return nitrogen_per_day + urine_nitrogen_per_day


@quantity("mass_flow")
def digestate_ammonium_per_day(ammonium_nitrogen_per_day: Numeric, urine_ammonium_per_day: Numeric) -> Numeric:
    """Nitrogen that leaves as ammonium."""
    return ammonium_nitrogen_per_day + urine_ammonium_per_day


@quantity("mass_flow")
def organic_nitrogen_per_day(digestate_nitrogen_per_day: Numeric, digestate_ammonium_per_day: Numeric) -> Numeric:
    """Nitrogen that leaves bound in organic matter."""
    return digestate_nitrogen_per_day - digestate_ammonium_per_day


@quantity("share")
def digestate_ammonium_share(digestate_ammonium_per_day: Numeric, digestate_nitrogen_per_day: Numeric) -> Numeric:
    """Part of the digestate's nitrogen that is ammonium."""
    return digestate_ammonium_per_day / digestate_nitrogen_per_day


@quantity("density")
def nitrogen_concentration(digestate_nitrogen_per_day: Numeric, digestate_per_day: Numeric) -> Numeric:
    """Nitrogen in the digestate as it leaves the digester."""
    return digestate_nitrogen_per_day / digestate_per_day


@quantity("mass_flow")
def nitrogen_lost_in_storage(digestate_ammonium_per_day: Numeric, ammonia_loss_in_storage: Numeric) -> Numeric:
    """Nitrogen that escapes as ammonia from the store."""
    return digestate_ammonium_per_day * ammonia_loss_in_storage


@quantity("mass_flow")
def ammonium_after_storage(digestate_ammonium_per_day: Numeric, nitrogen_lost_in_storage: Numeric) -> Numeric:
    """Ammonium nitrogen that is brought to the field."""
    return digestate_ammonium_per_day - nitrogen_lost_in_storage


@quantity("mass_flow")
def nitrogen_lost_in_spreading(ammonium_after_storage: Numeric, ammonia_loss_in_spreading: Numeric) -> Numeric:
    """Nitrogen that escapes as ammonia in the field."""
    return ammonium_after_storage * ammonia_loss_in_spreading


@quantity("mass_flow")
def nitrogen_spread_per_day(digestate_nitrogen_per_day: Numeric, nitrogen_lost_in_storage: Numeric) -> Numeric:
    """Nitrogen that is brought to the field."""
    return digestate_nitrogen_per_day - nitrogen_lost_in_storage


@quantity("mass_flow")
def available_nitrogen_per_day(
    ammonium_after_storage: Numeric,
    nitrogen_lost_in_spreading: Numeric,
    organic_nitrogen_per_day: Numeric,
    organic_nitrogen_release: Numeric,
) -> Numeric:
    """Nitrogen that plants find in the first year: the ammonium that is left and part of the organic nitrogen."""
    return ammonium_after_storage - nitrogen_lost_in_spreading + organic_nitrogen_per_day * organic_nitrogen_release


@quantity("mass_flow")
def nitrogen_for_later_years(organic_nitrogen_per_day: Numeric, organic_nitrogen_release: Numeric) -> Numeric:
    """Nitrogen that stays in the soil's organic matter beyond the first year."""
    return organic_nitrogen_per_day * (1 - organic_nitrogen_release)


@quantity("share")
def nitrogen_availability(available_nitrogen_per_day: Numeric, digestate_nitrogen_per_day: Numeric) -> Numeric:
    """Part of the digestate's nitrogen that plants find in the first year."""
    return available_nitrogen_per_day / digestate_nitrogen_per_day


@quantity("density")
def available_nitrogen_concentration(available_nitrogen_per_day: Numeric, digestate_per_day: Numeric) -> Numeric:
    """Nitrogen that plants find in the first year, per volume of digestate."""
    return available_nitrogen_per_day / digestate_per_day


@quantity("density")
def spread_nitrogen_concentration(nitrogen_spread_per_day: Numeric, digestate_per_day: Numeric) -> Numeric:
    """Nitrogen in the digestate as it is brought to the field."""
    return nitrogen_spread_per_day / digestate_per_day


@quantity("areic_volume")
def digestate_per_area(nitrogen_need: Numeric, available_nitrogen_concentration: Numeric) -> Numeric:
    """Digestate a year that covers the nitrogen need of a crop."""
    return nitrogen_need / available_nitrogen_concentration


@quantity("mass_flow")
def settled_phosphorus_per_day(phosphorus_per_day: Numeric, phosphorus_settling: Numeric) -> Numeric:
    """Phosphorus that stays behind in the sludge."""
    return phosphorus_per_day * phosphorus_settling


@quantity("mass_flow")
def digestate_phosphorus_per_day(phosphorus_per_day: Numeric, settled_phosphorus_per_day: Numeric) -> Numeric:
    """Phosphorus that leaves with the digestate (conservation)."""
    return phosphorus_per_day - settled_phosphorus_per_day


@quantity("mass_flow")
def digestate_potassium_per_day(potassium_per_day: Numeric) -> Numeric:
    """Potassium that leaves with the digestate: all that was fed, since it stays dissolved."""
    return potassium_per_day * 1.0


@quantity("density")
def phosphorus_concentration(digestate_phosphorus_per_day: Numeric, digestate_per_day: Numeric) -> Numeric:
    """Phosphorus (as P) in the digestate."""
    return digestate_phosphorus_per_day / digestate_per_day


@quantity("density")
def potassium_concentration(digestate_potassium_per_day: Numeric, digestate_per_day: Numeric) -> Numeric:
    """Potassium (as K) in the digestate."""
    return digestate_potassium_per_day / digestate_per_day


@quantity("mass_flow")
def phosphate_per_day(digestate_phosphorus_per_day: Numeric) -> Numeric:
    """Phosphorus of the digestate counted as P2O5, as fertilisers are sold."""
    return digestate_phosphorus_per_day * PHOSPHATE_PER_PHOSPHORUS


@quantity("mass_flow")
def potash_per_day(digestate_potassium_per_day: Numeric) -> Numeric:
    """Potassium of the digestate counted as K2O, as fertilisers are sold."""
    return digestate_potassium_per_day * POTASH_PER_POTASSIUM


@quantity("mass_flow")
def diammonium_phosphate_equivalent(phosphate_per_day: Numeric, phosphate_in_diammonium_phosphate: Numeric) -> Numeric:
    """Diammonium phosphate that would bring as much phosphorus."""
    return phosphate_per_day / phosphate_in_diammonium_phosphate


@quantity("mass_flow")
def urea_equivalent(
    available_nitrogen_per_day: Numeric,
    diammonium_phosphate_equivalent: Numeric,
    nitrogen_in_diammonium_phosphate: Numeric,
    nitrogen_in_urea: Numeric,
) -> Numeric:
    """Urea that would bring the available nitrogen which the diammonium phosphate does not; none where it brings enough."""
    brought = diammonium_phosphate_equivalent * nitrogen_in_diammonium_phosphate
    return (most(available_nitrogen_per_day, brought) - brought) / nitrogen_in_urea


@quantity("mass_flow")
def potassium_chloride_equivalent(potash_per_day: Numeric, potash_in_potassium_chloride: Numeric) -> Numeric:
    """Potassium chloride that would bring as much potassium."""
    return potash_per_day / potash_in_potassium_chloride
