"""The gas that a substance of known composition would give if all of it were digested (Buswell, with Boyle's nitrogen and sulphur)."""

from __future__ import annotations

from typing import NamedTuple

from kilisho.formulas.arrays import Numeric
from kilisho.formulas.gas import IDEAL_MOLAR_VOLUME, NORMAL_PRESSURE, compression_factor

_CARBON, _HYDROGEN, _OXYGEN, _NITROGEN, _SULPHUR = 12.011, 1.008, 15.999, 14.007, 32.06


class TheoreticalYield(NamedTuple):
    """Products of complete digestion, per mole of substance [mol/mol] and per mass of it [m3/kg, normal]."""

    methane: Numeric
    carbon_dioxide: Numeric
    ammonia: Numeric
    hydrogen_sulphide: Numeric
    water_taken_up: Numeric
    molar_mass: Numeric
    methane_yield_normal: Numeric
    carbon_dioxide_yield_normal: Numeric

    @property
    def methane_share(self) -> Numeric:
        """Methane over methane and carbon dioxide, by amount of substance [1]; more carbon dioxide stays dissolved in reality."""
        return self.methane / (self.methane + self.carbon_dioxide)


def buswell(carbon: Numeric, hydrogen: Numeric, oxygen: Numeric, nitrogen: Numeric = 0.0, sulphur: Numeric = 0.0) -> TheoreticalYield:
    """Products of the complete digestion of a substance.

    Parameters
    ----------
    carbon, hydrogen, oxygen, nitrogen, sulphur : atoms in one formula unit [1], at least 0, carbon above 0.

    Returns
    -------
    TheoreticalYield; its molar mass is in g/mol, its yields in m3/kg (the same number as L/g) of normal real gas.

    Notes
    -----
    An upper bound: lignin does not digest and the bacteria keep a part; real substrates give 0.4 to 0.9 of it.

    References
    ----------
    Buswell and Mueller 1952; Boyle 1977 (from memory).
    """
    methane = carbon / 2.0 + hydrogen / 8.0 - oxygen / 4.0 - 3.0 * nitrogen / 8.0 - sulphur / 4.0
    carbon_dioxide = carbon - methane
    water = carbon - hydrogen / 4.0 - oxygen / 2.0 + 3.0 * nitrogen / 4.0 + sulphur / 2.0
    mass = _CARBON * carbon + _HYDROGEN * hydrogen + _OXYGEN * oxygen + _NITROGEN * nitrogen + _SULPHUR * sulphur
    litres = 1000.0 * IDEAL_MOLAR_VOLUME / mass
    return TheoreticalYield(
        methane=methane,
        carbon_dioxide=carbon_dioxide,
        ammonia=nitrogen,
        hydrogen_sulphide=sulphur,
        water_taken_up=water,
        molar_mass=mass,
        methane_yield_normal=methane * litres * compression_factor(1.0, 0.0, NORMAL_PRESSURE),
        carbon_dioxide_yield_normal=carbon_dioxide * litres * compression_factor(0.0, 0.0, NORMAL_PRESSURE),
    )
