"""The process model: how solids become acids and gas, day by day, in a digester that is filled, fed, missed, overfed or cold.

``simulate(history, conditions, parameters)`` runs it; :mod:`kilisho.process.feedstocks` turns the properties of packs into its terms.
"""

from kilisho.process.feedstocks import Feedstock, feedstock, mixed
from kilisho.process.history import Conditions, History, Start, working_slurry
from kilisho.process.parameters import Parameters
from kilisho.process.run import Run, cod_gap, nitrogen_gap
from kilisho.process.simulate import simulate
from kilisho.process.steady import Routine, steady_start

__all__ = [
    "Conditions",
    "Feedstock",
    "History",
    "Parameters",
    "Routine",
    "Run",
    "Start",
    "cod_gap",
    "feedstock",
    "mixed",
    "nitrogen_gap",
    "simulate",
    "steady_start",
    "working_slurry",
]
