"""By which method the gas storage that the use asks for was found: as an id, the same in every language, and in words."""

from __future__ import annotations

from typing import Final, Literal

from kilisho.messages import Message, say

StorageMethod = Literal["hours_of_use", "share_of_a_day_s_gas"]
BY_HOURS: Final = "hours_of_use"
BY_SHARE: Final = "share_of_a_day_s_gas"


def name_of(method: StorageMethod) -> Message:
    """The method in words."""
    return say("storage-by-hours") if method == BY_HOURS else say("storage-by-share")
