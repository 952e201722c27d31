"""Werner, U., Stoehr, U., Hees, N. 1989. Biogas Plants in Animal Husbandry. GATE/GTZ. Pages 38, 66 and 113. As printed.

Page 113, floating drum, sample calculation after Sasse 1984. The page rounds at every step to two digits after the point and takes pi
as 3.14; tolerance 1 % is that rounding. (It prints the radius of the gasholder as 0.82 m where its own formula gives 0.826.)

Page 38, farm plant: 0.25 m3 biogas per kilogram of volatile solids at 25 Cel and 60 d. Our handbook model gives 3 % more; the printed
figure is a design mean of two digits (the same book's range is 0.09 to 0.31), tolerance 4 %. Enlarging the plant from 15 to 18 m3 (72
d; the page prints 75 d, but 18 m3 over 0.25 m3/d is 72 d) raises the yield by the printed factor 1.2. A first-order stirred digester
cannot do that: 1.2 = 18/15 is the limit of a rate near 0, where gas grows in step with retention. Ours is 1.10. Tolerance 9 %, the
distance of 0.0149 1/d from that limit; the factor is read off a chart and is not used in the code.

Page 66, table 5.14, properties at 0 Cel and 1013 mbar. Slips in the column for 60 % methane: the ratio of densities is printed 0.83,
yet 1.2 kg/m3 over air's 1.293 is 0.93 (and the 65 % column has 0.91, which must be the lighter gas); the Wobbe index 6.59 carries the
slip, 6.0 / sqrt(0.83). We test against the corrected 0.93. The explosive limit there, 6 %, contradicts the 7.7 % of the 65 % column
(0.05/0.65): leaner gas cannot have the lower limit. We test the 65 % column. Its heating value, 6.8 kWh/m3, needs 68 % methane and is
left out. Tolerances are half of the last printed digit, except density 1.2 (real 1.22 rounds to it): 2 %.
"""

from tests.reference.record import check, note

from kilisho.formulas import gas, geometry
from kilisho.formulas.kinetics import mixed_share, temperature_corrected_rate

DRUM = "Werner et al. 1989, p 113 (as printed)"
FARM = "Werner et al. 1989, p 38 (as printed)"
GAS = "Werner et al. 1989, table 5.14 (as printed)"
ULTIMATE_PER_VOLATILE_SOLIDS, RATE_AT_20 = 0.547, 0.0090
MEGAJOULES_PER_KILOWATT_HOUR = 3.6


def test_floating_drum_dimensions() -> None:
    drum_radius = geometry.cylinder_radius(1.5, 0.7 / (2 * 0.826))
    check("radius of a 1.5 m3 drum, 0.7 m high", float(drum_radius), 0.82, 0.01, "m", DRUM)
    pit = geometry.cylinder_volume(0.85, 0.7)
    check("cylinder of the pit, r 0.85 m, h 0.7 m", float(pit), 1.58, 0.01, "m3", DRUM)
    bowl_radius = geometry.hemisphere_radius((8.45 - 1.58) / 1.1)
    check("radius of the bowl below the pit", float(bowl_radius), 1.45, 0.01, "m", DRUM)
    bowl_to_cone = geometry.hemisphere_volume(1.45) / geometry.cone_volume(1.45, 1.45 / 5)
    check("bowl over bottom cone of height R/5", float(bowl_to_cone), 10.0, 1e-12, "1", DRUM)
    whole = geometry.cylinder_volume(0.85, 0.7) + geometry.hemisphere_volume(1.45) + geometry.cone_volume(1.45, 0.29)
    check("pit, bowl and cone with the printed R 1.45 m", float(whole), 8.45, 0.02, "m3", DRUM)
    note(
        DRUM,
        "the printed bowl radius is rounded up from 1.439 to 1.45 m, which adds 2 % to the volume (cube of the radius): tolerance 2 %.",
    )


def gas_per_volatile_solids(retention: float) -> float:
    rate = temperature_corrected_rate(RATE_AT_20, 25.0)
    return float(ULTIMATE_PER_VOLATILE_SOLIDS * mixed_share(rate, retention, 1.0))


def test_farm_plant_yield() -> None:
    check("biogas from cattle dung, 25 Cel, 60 d", gas_per_volatile_solids(60.0), 0.25, 0.04, "m3/kg", FARM)
    factor = gas_per_volatile_solids(72.0) / gas_per_volatile_solids(60.0)
    check("yield at 72 d over yield at 60 d", factor, 1.2, 0.09, "1", FARM)
    note(FARM, "retention is printed as 75 d; 18 m3 over 0.25 m3/d is 72 d. The factor 1.2 is the limit of a very slow digestion.")


def test_gas_properties() -> None:
    kilowatt_hours = gas.heating_value_lower(0.6) / MEGAJOULES_PER_KILOWATT_HOUR
    check("lower heating value, 60 % methane", float(kilowatt_hours), 6.0, 0.0084, "kWh/m3", GAS)
    check("lower heating value, methane", float(gas.heating_value_lower(1.0)) / 3.6, 9.9, 0.01, "kWh/m3", GAS)
    check("density, methane", float(gas.biogas_density(1.0, 0.0, 101325.0)), 0.72, 0.007, "kg/m3", GAS)
    check("density, carbon dioxide", float(gas.biogas_density(0.0, 0.0, 101325.0)), 1.98, 0.0026, "kg/m3", GAS)
    check("density, 60 % methane", float(gas.biogas_density(0.6, 0.0, 101325.0)), 1.2, 0.02, "kg/m3", GAS)
    check("density, 65 % methane", float(gas.biogas_density(0.65, 0.0, 101325.0)), 1.15, 0.01, "kg/m3", GAS)
    check("relative density, methane", float(gas.relative_density(1.0)), 0.55, 0.01, "1", GAS)
    check("relative density, 65 % methane", float(gas.relative_density(0.65)), 0.91, 0.02, "1", GAS)
    note(GAS, "the 65 % column has 1 % of other gas, so its density over air's is 0.89 to 0.91: tolerance 2 %.")


def test_relative_density_against_the_corrected_slip() -> None:
    corrected = 1.2 / 1.293
    check("relative density, 60 % methane (printed 0.83, slip)", float(gas.relative_density(0.6)), corrected, 0.02, "1", GAS)
    note(
        GAS,
        "0.83 for 60 % methane is a slip: 1.2 / 1.293 = 0.93. The printed Wobbe index carries it.",
    )


def test_explosive_limit() -> None:
    check("lower explosive limit, 65 % methane", float(gas.lower_explosive_limit(0.65)), 0.077, 0.0065, "1", GAS)
    check("lower explosive limit, methane", float(gas.lower_explosive_limit(1.0)), 0.05, 1e-12, "1", GAS)
    note(
        GAS,
        "the 6 % printed for 60 % methane is below the 7.7 % printed for 65 %, which cannot be. It errs low, as 4.4 % for methane "
        "(IEC 60079-20-1) does; whoever sets an alarm takes a small share of the lowest figure, on methane in air.",
    )
