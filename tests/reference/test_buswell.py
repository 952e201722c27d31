"""Theoretical methane yields by class of substance, Angelidaki and Sanders 2004, and VDI 4630 (both recalled, to be confirmed).

They take 22.4 L/mol for methane, the ideal volume; real methane has 22.36 (0.18 %), and they print two or three digits. Tolerance 0.5
%. The formula masses are checked against the general library chemicals (elements' masses in the fifth digit: 1e-4).

An older German text (as printed in an online summary) gives 50 % methane for glucose and 71 % for tripalmitin; 70.6 % rounds to it.
"""

import chemicals
import pytest
from tests.reference.record import check

from kilisho.formulas.theoretical_yield import buswell

CLASSES = "Angelidaki and Sanders 2004 (recalled, to be confirmed)"


@pytest.mark.parametrize(
    ("substance", "atoms", "litres"),
    [
        ("carbohydrate C6H10O5", (6, 10, 5, 0, 0), 0.415),
        ("protein C5H7NO2", (5, 7, 2, 1, 0), 0.496),
        ("fat C57H104O6", (57, 104, 6, 0, 0), 1.014),
    ],
)
def test_classes_of_substance(substance: str, atoms: tuple[int, ...], litres: float) -> None:
    check(f"methane from {substance}", float(buswell(*map(float, atoms)).methane_yield_normal), litres, 0.005, "m3/kg", CLASSES)


def test_glucose() -> None:
    glucose = buswell(6.0, 12.0, 6.0)
    check("methane from glucose", float(glucose.methane_yield_normal), 0.373, 0.005, "m3/kg", "VDI 4630 (recalled, to be confirmed)")
    check("methane share, glucose", float(glucose.methane_share), 0.50, 1e-12, "1", "Online summary of Buswell and Boyle (as printed)")
    assert (glucose.methane, glucose.carbon_dioxide, glucose.water_taken_up) == (3.0, 3.0, 0.0)


def test_tripalmitin() -> None:
    share = float(buswell(51.0, 98.0, 6.0).methane_share)
    check("methane share, tripalmitin", share, 0.71, 0.007, "1", "Online summary of Buswell and Boyle (as printed)")


def test_masses() -> None:
    expected = chemicals.molecular_weight({"C": 5, "H": 7, "N": 1, "O": 2, "S": 1})
    check("mass of C5H7NO2S", float(buswell(5.0, 7.0, 2.0, 1.0, 1.0).molar_mass), expected, 1e-4, "g/mol", "chemicals (general library)")


def test_atoms_balance() -> None:
    """C, H and O going in with the water come out in the gases, for a substance with nitrogen and sulphur (cysteine)."""
    c, h, o, n, s = 3.0, 7.0, 2.0, 1.0, 1.0
    got = buswell(c, h, o, n, s)
    assert got.methane + got.carbon_dioxide == pytest.approx(c)
    assert 4 * got.methane + 3 * got.ammonia + 2 * got.hydrogen_sulphide == pytest.approx(h + 2 * got.water_taken_up)
    assert 2 * got.carbon_dioxide == pytest.approx(o + got.water_taken_up)
    assert (got.ammonia, got.hydrogen_sulphide) == (n, s)
