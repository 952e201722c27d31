"""The process model against handbook tables of gas by temperature and retention, with the typical cattle dung of the base pack.

Two kinds of figures, kept apart:

- calibration points. Sasse's 15 L/kg (20 Cel, 30 d) and 54 L/kg (33 Cel, 100 d) gave the rate and its temperature factor; Werner's 0.25
  m3/kg (25 Cel, 60 d) is the yield itself. They show what the model carries, not what it foretells. Sasse's are met within 8 %: the pack
  takes Werner's yield, which makes 68 L/kg of the 70 fitted, acids run out at 30 d, and gas is told at the temperature of the digester.
- validation. Werner's factor for a longer retention, 1.2 against 60 d at 25 Cel (3.6 m3 from 12 kg of volatile solids a day at 72 d):
  ours 1.10. First order in a stirred tank rises more slowly with retention than the handbook's chart; tolerance 10 %. Philippine
  practice, 0.034 m3 from a kilogram of moist dung at 30 d, temperature not printed and taken as 27.5 Cel: ours 0.025. Warm and well run
  plants do better than the handbooks' design figures; tolerance 30 %, which is the known departure and not an aim.
"""

from tests.reference.process_runs import fed_steadily, of_pack, yield_of
from tests.reference.record import check

# Sasse's dung has 16 % total solids, the pack 80 % of volatile solids in them; Werner's plant is fed at about 64 kg/m3.
VOLATILE_SOLIDS_OF_DUNG, SOLIDS = 0.128, 64.0
CALIBRATION = "Sasse 1988, section 4 (as printed; calibration point), process model"
YIELD = "Werner 1989, design yield (as printed; calibration point), process model"
WERNER = "Werner 1989, sample calculation (as printed), process model"
PHILIPPINE = "Philippine design practice (as printed; temperature taken), process model"


def litres_from_dung(temperature: float, retention: float) -> float:
    """Moist gas from a kilogram of fresh dung [L]."""
    run = fed_steadily(of_pack("cattle_dung"), temperature, retention, SOLIDS)
    return 1000 * VOLATILE_SOLIDS_OF_DUNG * yield_of(run, retention, SOLIDS)


def test_calibration_points() -> None:
    check("gas from cattle dung, 20 Cel, 30 d", litres_from_dung(20.0, 30.0), 15.0, 0.08, "L/kg", CALIBRATION)
    check("gas from cattle dung, 33 Cel, 100 d", litres_from_dung(33.0, 100.0), 54.0, 0.08, "L/kg", CALIBRATION)
    check("yield at 25 Cel, 60 d", litres_from_dung(25.0, 60.0) / 1000 / VOLATILE_SOLIDS_OF_DUNG, 0.25, 0.01, "m3/kg", YIELD)


def test_longer_retention() -> None:
    check("gas at 72 d over gas at 60 d, 25 Cel", litres_from_dung(25.0, 72.0) / litres_from_dung(25.0, 60.0), 1.2, 0.10, "1", WERNER)


def test_moist_dung_at_thirty_days() -> None:
    check("gas from moist dung, 30 d, 27.5 Cel", litres_from_dung(27.5, 30.0) / 1000, 0.034, 0.30, "m3/kg", PHILIPPINE)
