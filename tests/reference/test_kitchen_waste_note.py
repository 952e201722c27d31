"""Calculation note on a small kitchen-waste digester with a hemispherical gas space, author unknown. As printed.

Slip: the note reads the radius of a cap 0.7 m high off a drawing as 0.9 m and so gets 1.070 m3. On the note's own sphere of radius 1.03
m a cap of 0.7 m has a rim of 0.974 m and holds 1.226 m3. We reproduce the printed figure with the printed rim and test the corrected
cap against numerical integration. Tolerance 0.05 % for the printed figures is their last digit.
"""

from scipy.integrate import quad
from tests.reference.record import check, note

from kilisho.formulas.geometry import cap_volume, hemisphere_volume, spherical_segment_volume

SOURCE = "Kitchen-waste digester note (as printed)"


def test_printed_volumes() -> None:
    check("hemisphere, R 1.03 m", float(hemisphere_volume(1.03)), 2.289, 5e-4, "m3", SOURCE)
    check("cap 0.7 m high with the rim as drawn, 0.9 m", float(spherical_segment_volume(0.9, 0.0, 0.7)), 1.070, 5e-4, "m3", SOURCE)


def test_corrected_cap() -> None:
    by_slices = quad(lambda height: 3.141592653589793 * (2 * 1.03 * height - height**2), 0, 0.7)[0]
    check(
        "cap 0.7 m high on that sphere (printed 1.070, slip)",
        float(cap_volume(1.03, 0.7)),
        by_slices,
        1e-12,
        "m3",
        "scipy.integrate (general library)",
    )
    note(
        SOURCE,
        "the rim of the cap was measured off the drawing as 0.9 m; on the sphere it is 0.974 m, and the cap holds 1.226 m3, not 1.070.",
    )
