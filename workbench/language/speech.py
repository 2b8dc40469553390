"""Say a sentence in the chosen language.

Sentences are written in English where they are used. Their translations stand in
``resources/languages/pluckwright_CODE.ts``, the source format of Qt Linguist, one
context for all; a sentence without a translation is said in English. The files
are brought up to date by ``python -m workbench.language.gather``.

Call these functions when a sentence is needed, not when a module is loaded: the
language is chosen later. A table made at load time marks its words with ``mark``
and says them when they are shown.
"""

from __future__ import annotations

import os
import string
import xml.etree.ElementTree as ET
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from functools import cache
from pathlib import Path
from typing import Any, TypeVar

FOLDER = Path(__file__).resolve().parents[2] / "resources" / "languages"
OFFERED = {"en": "English", "de": "Deutsch"}  # each by its own name
CONTEXT = "Pluckwright"
VARIABLE = "PLUCKWRIGHT_LANGUAGE"

_chosen = "en"
_meanwhile: ContextVar[str] = ContextVar("meanwhile", default="")


def choose(code: str) -> None:
    """Speak this language from now on; one that is not offered means English.

    ``code`` may carry a country, as in ``de_AT`` or ``de-CH.UTF-8``.
    """
    global _chosen
    short = code.replace("-", "_").split("_")[0].split(".")[0].lower()
    _chosen = short if short in OFFERED else "en"


def from_environment() -> str:
    """The language that the variable ``PLUCKWRIGHT_LANGUAGE`` names; "" where it is not set."""
    return os.environ.get(VARIABLE, "").strip()


def chosen() -> str:
    """The code of the language spoken now."""
    return _meanwhile.get() or _chosen


@contextmanager
def speaking(code: str) -> Iterator[None]:
    """Speak another language inside, in this thread alone: for a text in two of them."""
    token = _meanwhile.set(code if code in OFFERED else "en")
    try:
        yield
    finally:
        _meanwhile.reset(token)


class Said(str):
    """A sentence that knows what it was made of: ``text`` in English, ``sense``, ``fields``."""

    text: str
    sense: str
    fields: Mapping[str, object]


def _told(words: str, text: str, sense: str, fields: Mapping[str, object]) -> Said:
    said = Said(words)
    said.text, said.sense, said.fields = text, sense, fields
    return said


def say(text: str, /, *, sense: str = "", **fields: object) -> str:
    """``text`` in the chosen language, its ``{fields}`` filled in.

    ``sense`` tells two meanings of one English word apart ("Open" the verb, "open"
    the string). Braces are fields only where fields are given.
    """
    words = _words(chosen()).get((text, sense), text)
    if fields:
        words = _german(words, fields) if chosen() == "de" else words.format(**fields)
    return _told(words, text, sense, fields)


class _Commas(string.Formatter):
    """Fields with decimals as German writes them: 1,5 and 98,5 %."""

    def format_field(self, value: Any, format_spec: str) -> str:
        text = str(super().format_field(value, format_spec))
        if isinstance(value, float) and format_spec[-1:] in ("f", "g", "%"):
            text = text.replace(".", ",").replace("%", "\u00a0%")
        return text


def _german(words: str, fields: Mapping[str, object]) -> str:
    return _Commas().vformat(words, (), fields)


def count(n: int, one: str, many: str, /, *, sense: str = "", **fields: object) -> str:
    """``one`` for exactly one, else ``many``, in the chosen language; ``{n}`` is the number."""
    return say(one if n == 1 else many, sense=sense, n=n, **fields)


Text = TypeVar("Text", bound=str)


def mark(text: Text, /, *, sense: str = "") -> Text:
    """``text`` itself, marked as a sentence that is said later."""
    return text


@cache
def _words(code: str) -> dict[tuple[str, str], str]:
    """Every finished translation of one language, by source and sense."""
    if code == "en":
        return {}
    return read_translations(FOLDER / f"pluckwright_{code}.ts")


def read_translations(path: Path) -> dict[tuple[str, str], str]:
    """The finished translations of a Qt Linguist source file, by source and sense.

    A file that is missing or spoilt gives none: English is better than no window.
    """
    try:
        root = ET.parse(path).getroot()
    except (OSError, ET.ParseError):
        return {}
    out: dict[tuple[str, str], str] = {}
    for message in root.iter("message"):
        translation = message.find("translation")
        if translation is None or translation.get("type") or not translation.text:
            continue
        source = message.findtext("source") or ""
        out[source, message.findtext("comment") or ""] = translation.text
    return out
