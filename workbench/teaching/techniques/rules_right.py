"""Rules for what the right hand does."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from workbench.fingering.right.plucking import together
from workbench.language.message import message
from workbench.teaching.bars.strokes import Stroke
from workbench.teaching.techniques.occurrence import (
    Music,
    Occurrence,
    Rule,
    at_stroke,
    over_run,
    runs_where,
)

FINGERS = ("i", "m", "a")


def _finger(stroke: Stroke) -> str | None:
    return stroke.notes[0].hands.right


def _string(stroke: Stroke) -> int | None:
    return stroke.notes[0].hands.string


def alternation(music: Music) -> Iterator[Occurrence]:
    """Four single notes or more with i m a, no finger twice running; arpeggios are not meant."""

    def joined(a: Stroke, b: Stroke) -> bool:
        here, there = _finger(a), _finger(b)
        return here in FINGERS and there in FINGERS and here != there

    broken = {i for o in arpeggio(music) for i in o.notes}
    for line in music.lines:
        for run in runs_where(line, joined, 4):
            if all(s.ids[0] in broken for s in run):
                continue
            used = [f for f in FINGERS if any(_finger(s) == f for s in run)]
            yield over_run("alternation", run, " ".join(used))


def repeated_notes(music: Music) -> Iterator[Occurrence]:
    """The same note on the same string three times or more in a row."""

    def joined(a: Stroke, b: Stroke) -> bool:
        same = a.notes[0].note.midi == b.notes[0].note.midi
        return same and _string(a) == _string(b) is not None

    for line in music.lines:
        for run in runs_where(line, joined, 3):
            yield over_run("repeated-notes", run)


def several(music: Music) -> Iterator[Occurrence]:
    """Two strings or more at once: a strum, a pinch or fingers together."""
    for stroke in music.strokes:
        right = stroke.right
        kind = together([p.hands for p in stroke.notes])
        if kind == "strum":
            yield at_stroke("strum", stroke, " ".join(right))
        elif right == ("p", "i", "m"):
            yield at_stroke("pim-chord", stroke)
        elif len(right) == 4:
            yield at_stroke("pima-chord", stroke)
        elif kind == "pinch":
            yield at_stroke("thumb-finger", stroke, " ".join(right))
        elif kind:
            yield at_stroke("fingers-together", stroke, " ".join(right))


def arpeggio(music: Music) -> Iterator[Occurrence]:
    """Three single notes or more in one bar, each on another string and with another
    finger than the one before, three strings at least, not stepwise like a scale, no
    note cut at once by the next."""

    def joined(a: Stroke, b: Stroke) -> bool:
        here, there = a.notes[0], b.notes[0]
        apart = abs(here.note.midi - there.note.midi) > 2
        strings = _string(a) is not None and _string(a) != _string(b)
        fingers = _finger(a) is not None and _finger(a) != _finger(b)
        return a.bar == b.bar and apart and strings and fingers and not here.hands.cut_kind

    for line in music.lines:
        for run in runs_where(line, joined, 3):
            if len({_string(s) for s in run}) >= 3 and len({_finger(s) for s in run}) >= 3:
                yield over_run("arpeggio", run, " ".join(_finger(s) or "" for s in run))


def thumb_alone(music: Music) -> Iterator[Occurrence]:
    """Three single notes or more in a row with the thumb."""
    for line in music.lines:
        for run in runs_where(line, lambda a, b: _finger(a) == _finger(b) == "p", 3):
            yield over_run("thumb-alone", run)


def string_skip(music: Music) -> Iterator[Occurrence]:
    """From one single note to the next with the same kind of finger over a string between."""
    for line in music.lines:
        for a, b in pairwise(line):
            one, two = _string(a), _string(b)
            fingers = _finger(a) in FINGERS and _finger(b) in FINGERS
            if one is not None and two is not None and fingers and abs(one - two) >= 2:
                said = message("string {first} to {second}", first=one, second=two)
                yield over_run("string-skip", (a, b), said)


def rest_stroke(music: Music) -> Iterator[Occurrence]:
    """Notes marked to be played with a rest stroke."""
    for stroke in music.strokes:
        rests = tuple(p.note.id for p in stroke.notes if p.hands.stroke == "rest")
        if rests:
            yield Occurrence("rest-stroke", stroke.bar, stroke.onset, rests)


RULES: tuple[Rule, ...] = (
    alternation,
    repeated_notes,
    several,
    arpeggio,
    thumb_alone,
    string_skip,
    rest_stroke,
)
