"""From notes to sounds: what slurs, slides, rolled chords, graces and the strings make of them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from workbench.music.model import Piece
from workbench.sound.sounding import GRACE_SECONDS, Sounding

ROLL_SECONDS = 0.035  # from one note of a rolled chord to the next
SLIDE_SECONDS = 0.022  # on every fret that a slide passes


def as_played(
    found: Sequence[Sounding], piece: Piece, slurs: Mapping[str, str]
) -> tuple[Sounding, ...]:
    """The sounds of notes that are given by their start, then by pitch. ``slurs`` gives for
    every note that the left hand sounds the one it is slurred from."""
    made = _leading_graces(list(found), piece)
    made = _rolled(made, piece)
    made = one_at_a_time(made)
    return _slurred(made, piece, slurs)


def _leading_graces(found: list[Sounding], piece: Piece) -> list[Sounding]:
    """Move grace notes before the note they lead to, in their written order."""
    rank = {n.id: i for bar in piece.bars for i, n in enumerate(bar.notes) if n.grace}
    by_start: dict[float, list[Sounding]] = {}
    for sounding in found:
        if sounding.note in rank:
            by_start.setdefault(sounding.start, []).append(sounding)
    if not by_start:
        return found
    moved = [s for s in found if s.note not in rank]
    for start, graces in by_start.items():
        graces.sort(key=lambda s: rank[s.note])
        lead = GRACE_SECONDS * len(graces)
        late = min(lead, start)
        if late < lead:  # nothing comes before the beginning: the main notes wait
            moved = [
                replace(s, start=start - late + lead, seconds=s.seconds - lead + late)
                if s.start == start
                else s
                for s in moved
            ]
        for place, grace in enumerate(graces):
            at = start - late + GRACE_SECONDS * place
            moved.append(replace(grace, start=at))
    return sorted(moved, key=lambda s: (s.start, s.midi))


def _rolled(found: list[Sounding], piece: Piece) -> list[Sounding]:
    """Spread rolled chords from the lowest note up."""
    marked = {n.id for n in piece.notes if "arpeggio" in n.articulations}
    if not marked:
        return found
    chords: dict[float, list[Sounding]] = {}
    for s in found:
        if s.note in marked:
            chords.setdefault(s.start, []).append(s)
    late = {}
    for chord in chords.values():
        for place, s in enumerate(sorted(chord, key=lambda s: s.midi)):
            late[id(s)] = min(place * ROLL_SECONDS, s.seconds / 2)
    out = [
        replace(s, start=s.start + late[id(s)], seconds=s.seconds - late[id(s)])
        if id(s) in late
        else s
        for s in found
    ]
    return sorted(out, key=lambda s: (s.start, s.midi))


def one_at_a_time(found: Sequence[Sounding]) -> list[Sounding]:
    """End a note where its string is struck again."""
    next_start: dict[object, float] = {}
    out = []
    for s in reversed(found):
        string: object = s.string if s.string is not None else ("pitch", s.midi)
        left = next_start.get(string, float("inf")) - s.start
        if left <= 0:
            continue
        next_start[string] = s.start
        ends = "struck" if left <= s.seconds + 0.05 else s.ends
        seconds = min(s.seconds, left)
        if seconds > 0:
            out.append(replace(s, seconds=seconds, ends=ends))
    return list(reversed(out))


def _slurred(found: list[Sounding], piece: Piece, slurs: Mapping[str, str]) -> tuple[Sounding, ...]:
    """Let slurred and slid notes carry on from the one before on their string."""
    led_to = dict.fromkeys(slurs, False) | _slid_notes(piece)
    if not led_to:
        return tuple(found)
    out: list[Sounding] = []
    last_on: dict[int, int] = {}  # string: place in out
    last_of: dict[str, int] = {}  # note: place in out
    for s in found:
        slides = led_to.get(s.note, False)
        place = last_on.get(s.string or 0) if slides else last_of.get(slurs.get(s.note, ""))
        before = out[place] if place is not None else None
        if (
            s.note in led_to
            and before is not None
            and place is not None
            and before.string == s.string
            and s.node == before.node == 1
            and s.midi != before.midi
            and before.end >= s.start - 0.05
        ):
            if led_to[s.note]:
                before, passing = _slide(before, s)
                out[place] = before
                for step in passing:
                    out.append(step)
                    before = step
            else:
                before = replace(before, seconds=s.start - before.start, ends="slurred")
                out[place] = before
            s = replace(s, after=before, gain=before.gain)
        if s.string is not None:
            last_on[s.string] = len(out)
        last_of[s.note] = len(out)
        out.append(s)
    return tuple(sorted(out, key=lambda s: (s.start, s.midi)))


def _slide(before: Sounding, to: Sounding) -> tuple[Sounding, list[Sounding]]:
    """The note slid from, shortened, and the frets passed on the way."""
    way = 1 if to.midi > before.midi else -1
    passed = range(before.midi + way, to.midi, way)
    room = to.start - before.start
    step = min(SLIDE_SECONDS, room / 2 / max(1, len(passed)))
    leave = to.start - step * len(passed)
    first = replace(before, seconds=leave - before.start, ends="slurred")
    steps, last = [], first
    for place, midi in enumerate(passed):
        last = replace(
            to, start=leave + place * step, seconds=step, midi=midi, gain=first.gain,
            after=last, ends="slurred",
        )  # fmt: skip
        steps.append(last)
    return first, steps


def _slid_notes(piece: Piece) -> dict[str, bool]:
    """Ids of the notes that a slide of their voice leads to."""
    out = {}
    sliding: set[tuple[int, int]] = set()
    for bar in piece.bars:
        for n in sorted(bar.notes, key=lambda n: (n.onset, not n.grace)):
            line = (n.part, n.voice)
            if line in sliding:
                out[n.id] = True
                sliding.discard(line)
            if "slide" in n.articulations:
                sliding.add(line)
    return out
