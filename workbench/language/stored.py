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
        return json.dumps(to_plain(told), separators=(",", ":"), ensure_ascii=False)
    return str(text)


def shown(text: str) -> str:
    """What ``kept`` wrote, in the language spoken now."""
    try:
        return str(read(text))
    except (ValueError, TypeError, AttributeError, KeyError, IndexError):
        return text  # a template that its fields do not fill


def read(text: str) -> str | Message:
    """What ``kept`` wrote, not said yet: to be a field of another sentence."""
    if not text.startswith(_MARK):
        return text
    try:
        found = from_plain(json.loads(text))
    except (ValueError, TypeError, AttributeError, KeyError):
        return text  # looks like one of ours and is none
    return found if isinstance(found, Message) else text


def written(name: str) -> set[str]:
    """The ways in which a name may stand in a kept text, to be looked for there."""
    return {name, *(json.dumps(name, ensure_ascii=plain)[1:-1] for plain in (True, False))}


def _unsaid(value: object) -> object:
    """What was said, with all that was said in its fields, as a message again."""
    if not isinstance(value, Said):
        return value
    fields = {name: _unsaid(held) for name, held in value.fields.items()}
    return message(value.text, sense=value.sense, **fields)
