"""The techniques in a fingered piece: which, where, and what each asks."""

from __future__ import annotations

import json
from dataclasses import dataclass
from functools import cache
from typing import Literal

from workbench.fingering.types import Fingering
from workbench.instrument.model import Hand, Instrument
from workbench.language.message import Message, message
from workbench.music.bar_names import bars_named
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.music.remembered import remembered
from workbench.teaching.grading.demands import FOLDER
from workbench.teaching.lessons.lesson import NoteKind
from workbench.teaching.techniques import rules_left, rules_music, rules_right
from workbench.teaching.techniques.occurrence import Music, Occurrence

#: Kinds of exercise.
Drill = Literal["loop", "slow", "right hand alone", "left hand alone", "rhythm alone"]
FAMILIES: tuple[NoteKind, ...] = ("left hand", "right hand", "sound", "rhythm", "form")


@dataclass(frozen=True)
class Technique:
    """An entry of the catalogue: what it asks, what to watch for, and the kinds of
    exercise (see ``exercises``) that serve it. ``family`` is a kind of bar note."""

    id: str
    name: str
    family: NoteKind
    asks: str
    watch: str
    drills: tuple[Drill, ...]


@dataclass(frozen=True)
class Found:
    """A technique with all its places in a piece, in written order."""

    technique: Technique
    occurrences: tuple[Occurrence, ...]

    @property
    def bars(self) -> tuple[int, ...]:
        """Written bars in which it occurs."""
        return tuple(sorted({o.bar for o in self.occurrences}))

    def words(self, piece: Piece) -> Message:
        """For example "guide finger in bars 3, 7: A finger stays ..."."""
        return message(
            "{technique} in {bars}: {asks}",
            technique=message(self.technique.name),
            bars=bars_named(piece, self.bars),
            asks=message(self.technique.asks),
        )


@cache
def catalogue() -> tuple[Technique, ...]:
    """All techniques the rules can find."""
    data = json.loads((FOLDER / "catalogue.json").read_text(encoding="utf-8"))
    return tuple(
        Technique(r["id"], r["name"], r["family"], r["asks"], r["watch"], tuple(r["drills"]))
        for r in data["techniques"]
    )


def technique(name: str) -> Technique:
    """The entry of that id. Raises BadInput where there is none."""
    for t in catalogue():
        if t.id == name:
            return t
    raise BadInput(
        "Technique '{name}' is not in the catalogue; choose one that it lists.", name=name
    )


@remembered
def find_techniques(
    piece: Piece, fingering: Fingering, instrument: Instrument, hand: Hand
) -> tuple[Found, ...]:
    """Every technique that occurs, in the order in which they first come.

    Raises BadInput where the fingering belongs to another piece.
    """
    music = Music(piece, fingering, instrument, hand)
    places: dict[str, list[Occurrence]] = {}
    for rule in (*rules_right.RULES, *rules_left.RULES, *rules_music.RULES):
        for o in rule(music):
            places.setdefault(o.technique, []).append(o)
    found = [
        Found(technique(name), tuple(sorted(rows, key=lambda o: (o.bar, o.onset, o.notes))))
        for name, rows in places.items()
    ]
    rank = {t.id: k for k, t in enumerate(catalogue())}
    found.sort(key=lambda f: (f.occurrences[0].bar, f.occurrences[0].onset, rank[f.technique.id]))
    return tuple(found)
