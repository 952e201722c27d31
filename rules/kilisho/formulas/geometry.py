"""Volumes of the bodies that digesters are built from, and the dimensions that give a wanted volume."""

from __future__ import annotations

from kilisho.formulas.arrays import Numeric, asin, cbrt, copysign, cos, least, most, sin, sqrt

_PI = 3.141592653589793
_SQRT3 = 1.7320508075688772
_SMALLEST_SEGMENT = 1e-15
_NEWTON_STEPS = 6


def hemisphere_volume(radius: Numeric) -> Numeric:
    """Volume of a hemisphere [m3]; radius [m], at least 0."""
    return 2.0 / 3.0 * _PI * radius * radius * radius


def hemisphere_radius(volume: Numeric) -> Numeric:
    """Radius [m] of the hemisphere of a volume [m3], at least 0."""
    return cbrt(1.5 * volume / _PI)


def cap_volume(radius: Numeric, height: Numeric) -> Numeric:
    """Volume of a spherical cap [m3]; radius of the sphere [m], above 0; height of the cap [m], 0 to twice the radius."""
    return _PI * height * height * (radius - height / 3.0)


def cap_height(radius: Numeric, cap_volume: Numeric) -> Numeric:
    """Height of the spherical cap that holds a volume.

    Parameters
    ----------
    radius : radius of the sphere [m], above 0.
    cap_volume : volume of the cap [m3], 0 to the whole sphere; a float outside raises ValueError, an array element becomes NaN.

    Returns
    -------
    Height of the cap [m], exact to rounding.

    Notes
    -----
    With u the height over the radius and v the volume over radius cubed, the cubic ``u**3 - 3 u**2 + 3 v / pi = 0`` has the wanted
    root ``1 - cos(t) + sqrt(3) sin(t)`` with ``sin(3 t / 2)**2 = 3 v / (4 pi)``. Writing it through half angles leaves no
    difference of near-equal numbers, so shallow caps stay exact.
    """
    share_of_sphere = 0.75 * cap_volume / (_PI * radius * radius * radius)
    third_angle = 2.0 / 3.0 * asin(sqrt(share_of_sphere))
    half_sine = sin(0.5 * third_angle)
    return radius * (2.0 * half_sine * half_sine + _SQRT3 * sin(third_angle))


def spherical_segment_volume(lower_radius: Numeric, upper_radius: Numeric, height: Numeric) -> Numeric:
    """Volume [m3] of a slice of a sphere between two parallel circles of the radii [m], ``height`` [m] apart; all at least 0."""
    return _PI * height / 6.0 * (3.0 * lower_radius * lower_radius + 3.0 * upper_radius * upper_radius + height * height)


def cylinder_volume(radius: Numeric, height: Numeric) -> Numeric:
    """Volume of a cylinder [m3]; radius and height [m], at least 0."""
    return _PI * radius * radius * height


def cylinder_radius(volume: Numeric, height_to_diameter: Numeric) -> Numeric:
    """Radius [m] of the cylinder of a volume [m3] whose height is ``height_to_diameter`` [1], above 0, times its diameter."""
    return cbrt(volume / (2.0 * _PI * height_to_diameter))


def cone_volume(radius: Numeric, height: Numeric) -> Numeric:
    """Volume of a cone [m3]; radius of the base and height [m], at least 0."""
    return cylinder_volume(radius, height) / 3.0


def tube_segment_area(radius: Numeric, fill_height: Numeric) -> Numeric:
    """Wetted cross-section of a lying tube.

    Parameters
    ----------
    radius : of the tube [m], above 0.
    fill_height : slurry level above the lowest line of the tube [m], 0 to the diameter.

    Returns
    -------
    Area [m2], 0 to the full circle.
    """
    # sin(angle/4)**2 = height over diameter: unlike the arc cosine this keeps its precision for a shallow fill.
    angle = 4.0 * asin(sqrt(fill_height / (2.0 * radius)))
    return 0.5 * radius * radius * (angle - sin(angle))


def tube_fill_height(radius: Numeric, area_share: Numeric) -> Numeric:
    """Slurry level in a lying tube of which a share of the cross-section is wetted.

    Parameters
    ----------
    radius : of the tube [m], above 0.
    area_share : wetted share of the circle [1], 0 to 1.

    Returns
    -------
    Level above the lowest line [m]; exact to about 1e-9 of the radius.

    Notes
    -----
    ``angle - sin(angle) = 2 pi share`` has no closed root. Newton's method is started from the cube root that bounds the angle from
    below; the function is convex up to a half-filled tube, so a fixed number of steps suffices and floats and arrays take the same way.
    The fuller half follows by symmetry.
    """
    target = 2.0 * _PI * most(least(area_share, 1.0 - area_share), _SMALLEST_SEGMENT)
    angle = cbrt(6.0 * target)
    for _ in range(_NEWTON_STEPS):
        angle = angle - (angle - sin(angle) - target) / (1.0 - cos(angle))
    return radius * (1.0 - copysign(cos(0.5 * angle), 0.5 - area_share))
