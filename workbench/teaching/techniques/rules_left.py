"""Rules for what the left hand does, and for how long notes are kept."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from workbench.instrument.model import roman
from workbench.language.message import Message, mark, message
from workbench.music.ringing.slurs import slurred
from workbench.teaching.bars.measure import WIDE, reach_of, reach_of_bar
from workbench.teaching.bars.strokes import Place, Stroke
from workbench.teaching.techniques.occurrence import (
    Detail,
    Music,
    Occurrence,
    Rule,
    at_stroke,
    over_run,
    runs_where,
)

MOVES = {
    "guide": "guide-finger",
    "planted": "planted-finger",
    "hop": "hop",
    "shift": "shift",
}
CUTS = {
    "hop": mark("the finger is needed on another string"),
    "string": mark("its string is needed for another note"),
    "barre": mark("the barre comes or goes"),
    "shift": mark("the hand moves on"),
    "stretch": mark("the hand does not reach so far"),
}


def moves(music: Music) -> Iterator[Occurrence]:
    """Guide fingers, planted fingers, hops and shifts, as the fingering names them."""
    before: frozenset[Place] = frozenset()
    for stroke in music.strokes:
        named = {p.hands.move for p in stroke.notes}
        for move, technique in MOVES.items():
            if move not in named:
                continue
            hit = [p for p in stroke.notes if p.hands.move == move and p.stopped]
            if move == "planted":  # the note played again at once needs no telling
                hit = [p for p in hit if p.place not in before]
            if hit:
                fingers = ", ".join(sorted({str(p.hands.left) for p in hit}))
                detail: Detail = message("finger {finger}", finger=fingers)
                if move == "shift" and stroke.position is not None:
                    detail = to_position(stroke.position)
                ids = tuple(p.note.id for p in hit)
                yield Occurrence(technique, stroke.bar, stroke.onset, ids, detail)
        before = stroke.places


def open_string_shift(music: Music) -> Iterator[Occurrence]:
    """Open strings alone just before the hand lands elsewhere: three frets away or more,
    or two where the fingering itself names a shift."""
    left: int | None = None  # the position that was left
    open_now: Stroke | None = None
    for stroke in music.strokes:
        if not stroke.grip:
            open_now = stroke if stroke.notes else None
            continue
        place = stroke.position
        if place is not None and open_now is not None and left is not None:
            named = any(p.hands.move == "shift" for p in stroke.notes)
            if abs(place - left) >= (2 if named else 3):
                yield at_stroke("open-string-shift", open_now, to_position(place))
        left, open_now = place, None


def finger_swap(music: Music) -> Iterator[Occurrence]:
    """Two fingers or more, followed by two or more that are all others."""
    for before, now in pairwise(music.strokes):
        first = sorted({f for f, _, _ in before.places})
        then = sorted({f for f, _, _ in now.places})
        if len(first) >= 2 and len(then) >= 2 and not set(first) & set(then):
            detail = "-".join(map(str, first)) + " to " + "-".join(map(str, then))
            yield over_run("finger-swap", (before, now), detail)


def barres(music: Music) -> Iterator[Occurrence]:
    """Barres as the fingering lays them, with the notes they stop."""
    for bar in music.fingering.bars:
        for barre in bar.barres:
            full = len(barre.strings) >= music.instrument.strings
            ids = tuple(
                n.id
                for n in bar.notes
                if n.shares is None
                and n.onset >= barre.onset
                and n.fret == barre.fret
                and n.left == barre.finger
            )
            name = "full-barre" if full else "partial-barre"
            fret = message("fret {fret}", fret=barre.fret)
            yield Occurrence(name, bar.index, barre.onset, ids, fret)


def stretch(music: Music) -> Iterator[Occurrence]:
    """The widest moment of a bar, where two fingers open more than halfway from their
    comfortable to their greatest span."""
    for bar in music.fingering.bars:
        rows = music.bars.get(bar.index, ())
        if not rows:
            continue
        reaches = [(reach_of(s, music.instrument, music.hand), s) for s in rows]
        reach, widest = max(reaches, key=lambda r: r[0].share)
        laid = reach_of_bar(bar.reach_mm, music.hand)
        if max(reach.strain, laid.strain) > WIDE:
            yield at_stroke("stretch", widest, f"{max(reach.mm, laid.mm):.0f} mm")


def slurs(music: Music) -> Iterator[Occurrence]:
    """Two slurred notes on one string: the left hand sounds the second. From a grace note
    the slur is told where its main note is."""
    hands = {n.id: n for bar in music.fingering.bars for n in bar.notes}
    lead = {i: n.shares or i for i, n in hands.items()}
    struck = {p.note.id: s for s in music.strokes for p in s.notes}
    joined = {lead[b]: lead[a] for b, a in slurred(music.piece).items() if {a, b} <= set(hands)}
    for after, before in joined.items():
        there, here = hands[after], hands[before]
        if here.string is None or here.string != there.string:
            continue
        stroke = struck.get(before) or struck.get(after)
        if stroke is not None:
            name = "slur-up" if there.midi > here.midi else "slur-down"
            yield Occurrence(name, stroke.bar, stroke.onset, (before, after))


def high_position(music: Music) -> Iterator[Occurrence]:
    """The first moment of each stay in the fifth position or above."""
    up = False
    for stroke in music.strokes:
        place = stroke.position
        if place is None:
            continue
        if place >= 5 and not up:
            said = message("position {position}", position=roman(place))
            yield at_stroke("high-position", stroke, said)
        up = place >= 5


def position(music: Music) -> Iterator[Occurrence]:
    """Four stopped strokes or more, with no more than open strings between them, that all
    lie in one position from the second to the fourth."""
    run: list[Stroke] = []

    def found() -> Iterator[Occurrence]:
        if len(run) >= 4 and run[0].position is not None and 2 <= run[0].position <= 4:
            place = message("position {position}", position=roman(run[0].position))
            yield over_run("position", run, place)

    for stroke in music.strokes:
        if stroke.position is None:
            continue
        if run and stroke.position != run[-1].position:
            yield from found()
            run = []
        run.append(stroke)
    yield from found()


def held_voice(music: Music) -> Iterator[Occurrence]:
    """A note really held while two others or more begin."""
    begun: dict[str, int] = {}
    for stroke in music.strokes:
        for p in stroke.ringing:
            begun[p.note.id] = begun.get(p.note.id, 0) + 1
    for stroke in music.strokes:
        ids = tuple(p.note.id for p in stroke.notes if begun.get(p.note.id, 0) >= 2)
        if ids:
            yield Occurrence("held-voice", stroke.bar, stroke.onset, ids)


def cut_note(music: Music) -> Iterator[Occurrence]:
    """Notes let go before their written end."""
    for stroke in music.strokes:
        for p in stroke.notes:
            if p.hands.cut_kind or p.hands.cut_reason:
                detail: Detail = message(CUTS[p.hands.cut_kind]) if p.hands.cut_kind in CUTS else ""
                yield Occurrence("cut-note", stroke.bar, stroke.onset, (p.note.id,), detail)


def campanella(music: Music) -> Iterator[Occurrence]:
    """Three single notes or more, a step apart, each on another string than the last."""

    def joined(a: Stroke, b: Stroke) -> bool:
        here, there = a.notes[0], b.notes[0]
        step = 1 <= abs(here.note.midi - there.note.midi) <= 2
        strings = here.hands.string is not None and here.hands.string != there.hands.string
        return step and strings

    for line in music.lines:
        for run in runs_where(line, joined, 3):
            yield over_run("campanella", run)


def parallel(music: Music) -> Iterator[Occurrence]:
    """Two strokes or more in a row of two notes a third (or a sixth) apart, moving."""
    thirds, sixths = message("thirds"), message("sixths")
    kinds = {3: thirds, 4: thirds, 8: sixths, 9: sixths}
    run: list[Stroke] = []
    now: Message | None = None

    def found() -> Iterator[Occurrence]:
        if len(run) >= 2 and len({s.notes[0].note.midi for s in run}) >= 2:
            yield over_run("parallel-thirds", run, now or "")

    for stroke in music.strokes:
        pair = [p.note.midi for p in stroke.notes]
        kind = kinds.get(pair[0] - pair[1]) if len(pair) == 2 else None
        if kind != now:
            yield from found()
            run, now = [], kind
        if kind:
            run.append(stroke)
    yield from found()


def to_position(position: int) -> Message:
    """ "to position V"."""
    return message("to position {position}", position=roman(position))


RULES: tuple[Rule, ...] = (
    moves,
    open_string_shift,
    finger_swap,
    barres,
    stretch,
    slurs,
    position,
    high_position,
    held_voice,
    cut_note,
    campanella,
    parallel,
)
