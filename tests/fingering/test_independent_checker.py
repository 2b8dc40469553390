"""Excerpts of real scores (music21's corpus), fingered and judged by an independent checker:
200 under the mark ``slow``, a fifth of them always."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from random import Random

import pytest

from tests.fingering.build import piece
from tests.fingering.excerpts import taken
from tests.fingering.hand_check import complaints
from workbench.fingering.engine import solve
from workbench.fingering.types import FingeredNote, Pin
from workbench.instrument.model import Instrument
from workbench.instrument.table import hand, instrument
from workbench.music.model import Piece

UKULELE, GUITAR = instrument("ukulele"), instrument("guitar")
SETS: tuple[tuple[str, Instrument, int, int, int, str | None, str], ...] = (
    # folder, instrument, excerpts, bars, every n-th file, parts, hand
    ("ryansMammoth", UKULELE, 90, 4, 11, None, "medium"),
    ("ryansMammoth", instrument("ukulele-low-g"), 20, 8, 47, None, "small"),
    ("ryansMammoth", GUITAR, 30, 4, 31, None, "medium"),
    ("essenFolksong", UKULELE, 24, 4, 1, None, "large"),
    ("bach", UKULELE, 20, 4, 19, None, "small"),
    ("bach", GUITAR, 16, 2, 23, "all", "large"),
)


def pinned(music: Piece, on: Instrument, chance: Random) -> tuple[Pin, ...]:
    """A string for one note in ten, and a right finger for one single note in ten."""
    out = []
    for n in music.notes:
        places = [p for p in on.places(n.midi) if p[1] <= 7]
        if places and chance.random() < 0.1:
            alone = sum(m.onset == n.onset for m in music.bars[music.bar_of[n.id]].notes) == 1
            right = chance.choice("pima") if alone else None
            out.append(Pin(n.id, string=chance.choice(places)[0], right=right))
    return tuple(out)


def some_and_all() -> list[object]:
    """Every set with a fifth of its excerpts, and whole where slow tests are run."""
    out: list[object] = []
    for row in SETS:
        name = f"{row[0]}-{row[1].id}-{row[3]}bars"
        out.append(pytest.param(row, row[2] // 5, id=name))
        out.append(pytest.param(row, row[2], id=f"{name}-all", marks=pytest.mark.slow))
    return out


@pytest.mark.parametrize(("row", "number"), some_and_all())
def test_fingerings_of_real_scores_are_sound(
    row: tuple[str, Instrument, int, int, int, str | None, str], number: int
) -> None:
    folder, on, _, bars, step, parts, size = row
    chance = Random(number)
    seen = silent = notes = 0
    for name, music in taken(folder, on, number, bars, step, parts):
        pins = pinned(music, on, chance) if seen % 2 else ()
        f = solve(music, on, hand(size), pins=pins)
        mute = {n.id for bar in f.bars for n in bar.notes if n.string is None}
        kept = tuple(p for p in pins if p.note not in mute)
        assert complaints(f, music, on, hand(size), kept) == [], name
        seen += 1
        if not pins:
            silent += len(mute)
            notes += f.audit.notes
    assert seen == number
    print(f"{folder} on {on.id}: {silent} of {notes} unpinned notes cannot be played")
    assert silent <= notes // 50


def spoiled(n: FingeredNote, **what: object) -> FingeredNote:
    return replace(n, **what)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("index", "what", "word"),
    [
        (0, {"fret": 4}, "does not sound"),
        (0, {"left": 0}, "by finger"),
        (0, {"held": Fraction(3)}, "held"),
        (0, {"held": Fraction(1, 2)}, "reason"),
        (1, {"left": 4}, "above finger"),
        (1, {"right": "a"}, "crosses"),
        (2, {"string": 2, "fret": 1, "left": 2}, "one string at once"),
        (0, {"string": None, "fret": None, "left": None}, "silent without a reason"),
    ],
)
def test_the_checker_sees_what_is_wrong(index: int, what: dict[str, object], word: str) -> None:
    """Notes of a sound fingering spoiled one by one, so that the checker is seen to bite."""
    music = piece("C5+F4:1 F4:1")
    pins = (Pin("b0v1n0a", left=3),)
    f = solve(music, UKULELE, hand("medium"), pins=pins)
    assert complaints(f, music, UKULELE, hand("medium"), pins) == []
    row = list(f.bars[0].notes)
    row[index] = spoiled(row[index], **what)
    if index == 2:
        row[0] = spoiled(row[0], string=2, fret=8)
    bad = replace(f, bars=(replace(f.bars[0], notes=tuple(row)),))
    assert any(word in c for c in complaints(bad, music, UKULELE, hand("medium"), pins))
