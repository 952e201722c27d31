"""Tables as files: NDJSON, CSV, an Arrow stream or Parquet to record batches for :mod:`kilisho.fleet`, and the answers back again.

A file is read piece by piece, so memory does not grow with its length, and every row keeps its place: one that cannot be read becomes a row
with its fault. What is wrong with the file as a whole raises :class:`kilisho.faults.RefusedError` before the first row is given.
"""

from __future__ import annotations

from kilisho.fleet.exchange.formats import FORMATS, Format
from kilisho.fleet.exchange.incoming import Incoming
from kilisho.fleet.exchange.validating import Terms, Told, told
from kilisho.fleet.writers import SummaryWriter

__all__ = ("FORMATS", "Format", "Incoming", "SummaryWriter", "Terms", "Told", "told")
