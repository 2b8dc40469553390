"""Tunes of several voices in ABC, written as people write them: line by line, a voice each.

The ABC standard (2.1, section 7) lets a tune go back to a voice as often as it likes, by a
field V: or by [V:] within a line, to call it by any word, and to announce the voices in its
head. The reading library makes a part of every such place and knows numbers alone, so each
voice is given to it in one run, numbered.
"""

from __future__ import annotations

import re

_HEAD = re.compile(r"(?m)^K:.*$\n?")
_FIELD = re.compile(r"^\s*V:\s*(\S+)\s*(.*?)\s*$")
_NAME = re.compile(r"\b(?:name|nm)\s*=\s*\"([^\"]*)\"")
_INLINE = re.compile(r"\[V:\s*([^\]\s]+)\s*([^\]]*)\]")


def each_voice_once(tune: str) -> str:
    """The text of a tune with the music of each voice in one run, in the order in which they
    first come; as it is where it names no two voices with music."""
    key = _HEAD.search(tune)
    if key is None:
        return tune
    told: dict[str, str] = {}
    head = []
    for line in tune[: key.end()].splitlines():
        field = _FIELD.match(line)
        if field:
            told[field[1]] = field[2]
        else:
            head.append(line)
    music: dict[str, list[str]] = {}
    before: list[str] = []
    now = before
    for line in tune[key.end() :].splitlines():
        field = _FIELD.match(line)
        if field:
            now = music.setdefault(field[1], [])
            told[field[1]] = field[2] or told.get(field[1], "")
            continue
        text, *others = _INLINE.split(line)
        if text.strip():
            now.append(text)
        for name, about, words in zip(others[::3], others[1::3], others[2::3], strict=True):
            now = music.setdefault(name, [])
            told[name] = about.strip() or told.get(name, "")
            if words.strip():
                now.append(words)
    sung = {name: lines for name, lines in music.items() if lines}
    if len(sung) < 2:
        return tune
    runs: list[str] = []
    for number, (name, lines) in enumerate(sung.items(), 1):
        runs += [f"V:{number} {told[name]}".rstrip(), *lines]
    return "\n".join([*head, *before, *runs, ""])


def voice_names(tune: str) -> tuple[str, ...]:
    """The names that a tune gives its voices, in the order in which they come; "" for one that
    has none."""
    names: dict[str, str] = {}
    for line in tune.splitlines():
        field = _FIELD.match(line)
        if field:
            found = _NAME.search(field[2])
            names[field[1]] = found[1] if found else names.get(field[1], "")
    return tuple(names.values())
