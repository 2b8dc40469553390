"""Sentences that are kept and read again later, perhaps in another language.

What ``say`` gives knows the sentence it was made of and its fields; ``kept`` writes those
down, ``shown`` says them again. A text that is no such sentence (a name, a label of an
older file) is kept and shown as it is.
"""

from __future__ import annotations

import json
from typing import Any

from workbench.language.speech import Said, say

_MARK = '{"say":'


def kept(text: str) -> str:
    """What stands for a text in a file or table."""
    return json.dumps(_plain(text), separators=(",", ":")) if isinstance(text, Said) else text


def shown(text: str) -> str:
    """What ``kept`` wrote, in the language spoken now."""
    if not text.startswith(_MARK):
        return text
    try:
        return str(_said(json.loads(text)))
    except (ValueError, TypeError, AttributeError, KeyError, IndexError):
        return text  # looks like one of ours and is none


def _plain(value: object) -> Any:
    if isinstance(value, Said):
        found = {"say": value.text, "sense": value.sense}
        return found | {"fields": {k: _plain(v) for k, v in value.fields.items()}}
    return value if isinstance(value, int | float | str) else str(value)


def _said(value: Any) -> Any:
    if not isinstance(value, dict):
        return value
    fields = {k: _said(v) for k, v in value["fields"].items()}
    return say(value["say"], sense=value["sense"], **fields)
