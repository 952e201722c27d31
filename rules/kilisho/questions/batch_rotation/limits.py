"""How far a batch rotation is worked out."""

from __future__ import annotations

# Days that a charge is followed, and so the longest retention; a charge that is slower than that is no source of daily gas (judgement).
SHORTEST_RETENTION, LONGEST_RETENTION = 5, 300
# Digesters that one household recharges in turn; with more, one is opened every few days (judgement).
MOST_DIGESTERS = 24
