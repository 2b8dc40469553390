"""A lesson whose music was corrected: what the teacher decided goes with it.

Pins, teaching notes, sections, words of the script and ticks of the plan speak of notes
and bars; here they follow them, and what has lost its note or bar is told in words.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace

from workbench.fingering.types import Pin
from workbench.language.message import Message, counted, message
from workbench.music.model import Piece
from workbench.music.order.form import playing_order
from workbench.teaching.lessons.formatting import plain
from workbench.teaching.lessons.lesson import BarNote, Lesson

#: Ids of plan items that name two written bars, such as ``learn:4-7:2``.
_ITEM = re.compile(r"(learn|review|join):(\d+)-(\d+):(\d+)\Z")

Bars = Sequence[int | None]


@dataclass(frozen=True)
class CarriedOver:
    """The lesson on its corrected music, and sentences on what could not go with it."""

    lesson: Lesson
    dropped: tuple[Message, ...] = ()


def with_piece(lesson: Lesson, piece: Piece, bars: Bars | None = None) -> CarriedOver:
    """The lesson on a corrected piece.

    ``bars`` says for every written bar of the piece before where its music is now, None
    where it is gone; without it the bars are the same. A note that was deleted loses its
    pin; one of another pitch keeps only the right finger of it. A teaching note about a
    deleted note speaks of its bar from now on, one about deleted bars goes with them.
    """
    old = lesson.piece
    if piece == old:
        return CarriedOver(lesson)
    where: Bars = bars if bars is not None else tuple(range(len(old.bars)))
    told: list[Message] = []
    pins = _pins(lesson, piece, told)
    notes = _notes(lesson, piece, where, told)
    script = lesson.script_edits
    if not _same_form(old, piece):
        order = playing_order(piece)
        places = _places(playing_order(old), order, where)
        script = tuple(
            sorted(
                (places.get(at, at) if at >= 0 else at, words)
                for at, words in lesson.script_edits
                if at < 0 or at in places
            )
        )
        lost = len(lesson.script_edits) - len(script)
        if lost:
            told.append(
                counted(
                    lost,
                    "The words of the script for {n} bar that is no longer played went with it.",
                    "The words of the script for {n} bars that are no longer played went with "
                    "them.",
                )
            )
    done = _ticks(lesson, where, told)
    out = replace(
        lesson,
        piece=piece,
        title=piece.title if lesson.title == old.title else lesson.title,
        key=piece.key.name if piece.key != old.key else lesson.key,
        pins=pins,
        notes=notes,
        sections=_sections(lesson, piece, where),
        script_edits=script,
        plan_done=done,
        corrected=True,
    )
    return CarriedOver(out, tuple(told))


def _pins(lesson: Lesson, piece: Piece, told: list[Message]) -> tuple[Pin, ...]:
    before = {n.id: n.midi for n in lesson.piece.notes}
    now = {n.id: n.midi for n in piece.notes}
    kept: list[Pin] = []
    gone = moved = 0
    for pin in lesson.pins:
        if pin.note not in now:
            gone += pin.note in before
        elif now[pin.note] == before.get(pin.note):
            kept.append(pin)
        else:
            moved += pin.string is not None or pin.left is not None
            if pin.right is not None:
                kept.append(Pin(pin.note, right=pin.right))
    if gone:
        told.append(counted(gone, "{n} pin went with its note.", "{n} pins went with their notes."))
    if moved:
        told.append(
            counted(
                moved,
                "{n} pin was let go: its note has another pitch.",
                "{n} pins were let go: their notes have another pitch.",
            )
        )
    return tuple(kept)


def _notes(lesson: Lesson, piece: Piece, where: Bars, told: list[Message]) -> tuple[BarNote, ...]:
    now = piece.bar_of
    kept: list[BarNote] = []
    freed: list[str] = []
    for note in lesson.notes:
        left = [
            there
            for bar in range(note.first_bar, note.last_bar + 1)
            if bar < len(where) and (there := where[bar]) is not None
        ]
        if not left:
            told.append(message("The remark “{words}” went with its bar.", words=_start(note.text)))
            continue
        first, last = min(left), max(left)
        if note.last_bar == len(lesson.piece.bars) - 1 and note.first_bar == 0:
            last = len(piece.bars) - 1  # about the whole piece
        about = note.note
        if about is not None and about not in now:
            freed.append(_start(note.text))
            about = None
        elif about is not None:
            first = last = now[about]
        rejected = tuple(row for row in note.rejected if row[0] in now)
        kept.append(replace(note, first_bar=first, last_bar=last, note=about, rejected=rejected))
    told += [message("The remark “{words}” speaks of its bar from now on.", words=w) for w in freed]
    return tuple(kept)


def _sections(lesson: Lesson, piece: Piece, where: Bars) -> tuple[tuple[int, str], ...]:
    """Each section begins where the first of its bars that is left begins."""
    starts = sorted(lesson.sections)
    if not starts:
        return ()
    ends = [s for s, _ in starts[1:]] + [len(lesson.piece.bars)]
    out: dict[int, str] = {}
    for (first, letter), end in zip(starts, ends, strict=True):
        left = [there for bar in range(first, end) if (there := where[bar]) is not None]
        if left:
            out.setdefault(min(left), letter)
    return tuple(sorted(out.items()))


def _same_form(one: Piece, other: Piece) -> bool:
    """Whether two pieces are played in the same order, as far as a glance tells."""
    if len(one.bars) != len(other.bars):
        return False
    return all(
        replace(a, notes=(), chords=()) == replace(b, notes=(), chords=())
        for a, b in zip(one.bars, other.bars, strict=True)
    )


def _places(before: tuple[int, ...], now: tuple[int, ...], where: Bars) -> dict[int, int]:
    """Place in the playing order before to the place now: the same bar, the same time."""
    found: dict[tuple[int, int], int] = {}
    times: dict[int, int] = {}
    for at, bar in enumerate(now):
        times[bar] = times.get(bar, 0) + 1
        found[bar, times[bar]] = at
    out: dict[int, int] = {}
    times = {}
    for at, bar in enumerate(before):
        times[bar] = times.get(bar, 0) + 1
        there = where[bar] if bar < len(where) else None
        if there is not None and (there, times[bar]) in found:
            out[at] = found[there, times[bar]]
    return out


def _ticks(lesson: Lesson, where: Bars, told: list[Message]) -> tuple[str, ...]:
    out: list[str] = []
    lost = 0
    for item in lesson.plan_done:
        found = _ITEM.match(item)
        if not found:
            out.append(item)
            continue
        kind, first, last, part = found[1], int(found[2]), int(found[3]), found[4]
        ends = [where[bar] if bar < len(where) else None for bar in (first, last)]
        if None in ends:
            lost += 1
        else:
            out.append(f"{kind}:{ends[0]}-{ends[1]}:{part}")
    if lost:
        told.append(
            counted(
                lost,
                "{n} tick of the practice plan went with its bars.",
                "{n} ticks of the practice plan went with their bars.",
            )
        )
    return tuple(out)


def _start(text: str, most: int = 40) -> str:
    words = " ".join(plain(text).split())
    return words if len(words) <= most else words[: most - 1].rstrip() + "…"
