"""Every sentence that people read: said in English by id, kept as a message, and told in the language that was asked for.

English sentences of the code stand in ``en/*.ftl`` (Fluent); those of a rulebook stand in its packs, and their message id is the path
of the field, such as ``checks-distance_to_well-why``. Other languages have a folder each, with both kinds.
"""

from kilisho.messages.amounts import Amount, Day, Listed, Number, Parameter
from kilisho.messages.languages import DEFAULT, LANGUAGES, Language, with_overlays
from kilisho.messages.message import Message
from kilisho.messages.saying import in_a_row, say
from kilisho.messages.translating import told_in

__all__ = (
    "DEFAULT",
    "LANGUAGES",
    "Amount",
    "Day",
    "Language",
    "Listed",
    "Message",
    "Number",
    "Parameter",
    "in_a_row",
    "say",
    "told_in",
    "with_overlays",
)
