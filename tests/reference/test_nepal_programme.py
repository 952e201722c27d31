"""Nepal's fixed-dome design of 1990, 4 m3 size: dimensions 1.020, 0.860, 0.650 and 1.130 m on a drawing (as printed; the labels were
lost).

Read as radius of the pit, height of its wall, rise of the dome and radius of the dome's sphere, they close: (1.02**2 + 0.65**2) / 1.3
is 1.125 m against 1.130 printed, and pit plus dome hold 4.017 m3 against the nominal 4. Tolerance 1 %: dimensions are set to whole
centimetres.
"""

from tests.reference.record import check

from kilisho.formulas.geometry import cap_height, cap_volume, cylinder_volume, spherical_segment_volume

SOURCE = "Nepal fixed dome, 4 m3 size (as printed)"
PIT_RADIUS, WALL, RISE, SPHERE_RADIUS = 1.020, 0.860, 0.650, 1.130


def test_four_cubic_metre_plant() -> None:
    by_sphere = cylinder_volume(PIT_RADIUS, WALL) + cap_volume(SPHERE_RADIUS, RISE)
    check("pit and dome, dome from the sphere's radius", float(by_sphere), 4.0, 0.01, "m3", SOURCE)
    by_rim = cylinder_volume(PIT_RADIUS, WALL) + spherical_segment_volume(PIT_RADIUS, 0.0, RISE)
    check("pit and dome, dome from its rim", float(by_rim), 4.0, 0.01, "m3", SOURCE)


def test_rise_of_the_dome() -> None:
    rise = cap_height(SPHERE_RADIUS, spherical_segment_volume(PIT_RADIUS, 0.0, RISE))
    check("rise of the dome, from its volume and its sphere", float(rise), RISE, 0.01, "m", SOURCE)
