"""Sentences that are kept and read again later, perhaps in another language.

What ``say`` gives knows the sentence it was made of and its fields; ``kept`` writes those
down, ``shown`` says them again. A text that is no such sentence (a name, a label of an
older file) is kept and shown as it is.
"""

from __future__ import annotations

import json

from workbench.language.message import Message, from_plain, message, to_plain
from workbench.language.speech import Said

_MARK = '{"say":'


def kept(text: str | Message) -> str:
    """What stands for a text in a file or table."""
    told = _unsaid(text)
    if isinstance(told, Message):
        return json.dumps(to_plain(told), separators=(",", ":"))
    return str(text)


def shown(text: str) -> str:
    """What ``kept`` wrote, in the language spoken now."""
    if not text.startswith(_MARK):
        return text
    try:
        return str(from_plain(json.loads(text)))
    except (ValueError, TypeError, AttributeError, KeyError, IndexError):
        return text  # looks like one of ours and is none


def _unsaid(value: object) -> object:
    """What was said, with all that was said in its fields, as a message again."""
    if not isinstance(value, Said):
        return value
    fields = {name: _unsaid(held) for name, held in value.fields.items()}
    return message(value.text, sense=value.sense, **fields)
