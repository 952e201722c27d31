"""`kilisho keys new NAME`: makes an API key. Nothing keeps it but whoever reads the output."""

from __future__ import annotations

import sys
from argparse import ArgumentTypeError, Namespace
from typing import Any

from kilisho_api.keys import NAME, line_of, new_key

MADE = 0


def add_command(group: Any) -> None:
    """Add `keys` to the commands of `kilisho`."""
    keys = group.add_parser("keys", help="make API keys")
    parts = keys.add_subparsers(title="commands", required=True, metavar="COMMAND")
    about = "Print a new key, once, for its holder; and the line for the file that KILISHO_API_KEYS names."
    new = parts.add_parser("new", help="make a key", description=about)
    new.add_argument("name", type=_name, metavar="NAME", help="its holder: small letters, digits, dots, hyphens and underscores")
    new.set_defaults(run=run)


def run(chosen: Namespace) -> int:
    """Write the key and its line to standard output."""
    key = new_key()
    sys.stdout.write(f"key:  {key}\nline: {line_of(chosen.name, key)}\n")
    return MADE


def _name(text: str) -> str:
    if not NAME.fullmatch(text):
        raise ArgumentTypeError("expected up to 64 small letters, digits, dots, hyphens and underscores")
    return text
