"""What the bar list shows: one row for every bar played, with its marks in words."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import TypeVar
from weakref import finalize

from workbench.fingering.types import FingeredBar, Fingering
from workbench.music.form import Section, playing_order, sections
from workbench.music.model import Bar, Piece
from workbench.teaching.lesson import BarNote, Lesson

FILTERS = ("all bars", "with cut notes", "without teaching notes", "hardest", "with pins")
HARDEST_SHARE = 5  # the hardest fifth of the bars


T = TypeVar("T")


def once_a_piece(work: Callable[[Piece], T]) -> Callable[[Piece], T]:
    """Remember the result as long as the very piece lives: hashing one costs its length."""
    known: dict[int, T] = {}

    def remembered(piece: Piece) -> T:
        if id(piece) not in known:
            known[id(piece)] = work(piece)
            finalize(piece, known.pop, id(piece), None)
        return known[id(piece)]

    return remembered


@dataclass(frozen=True)
class BarRow:
    """A bar as played. ``position`` counts in playing order, ``index`` in written order.

    ``turn`` is which time it is played, ``turns`` how often in all. ``effort`` is its
    share of the greatest effort of any bar (0-1). ``same_as`` is the printed number of
    an earlier bar with the same music, "" where there is none; ``chords`` its chord names.
    """

    position: int
    index: int
    number: str
    section: str
    starts_section: bool
    turn: int
    turns: int
    form: str
    notes: int
    pins: int
    cuts: int
    effort: float
    impossible: str | None
    same_as: str
    chords: str = ""

    @property
    def title(self) -> str:
        """For example ``Bar 5``, ``Pickup``, ``Bar 5, 2nd time``."""
        return f"{self.short}, {self.which}" if self.which else self.short

    @property
    def short(self) -> str:
        """``Bar 5`` or ``Pickup``."""
        return "Pickup" if self.number == "0" else f"Bar {self.number}"

    @property
    def which(self) -> str:
        """``2nd time`` where the bar is played more than once."""
        return f"{ordinal(self.turn)} time" if self.turns > 1 else ""

    @property
    def marks(self) -> tuple[tuple[str, str], ...]:
        """(icon name, words) of every mark on the row."""
        out = []
        if self.impossible:
            out.append(("impossible", "cannot be played"))
        if self.notes:
            out.append(("note", counted(self.notes, "note")))
        if self.pins:
            out.append(("pin", counted(self.pins, "pin")))
        if self.cuts:
            out.append(("cut", f"{self.cuts} cut"))
        return tuple(out)

    @property
    def spoken(self) -> str:
        """The row in words, for those who hear the window."""
        parts = [self.title]
        if self.section:
            parts.append(f"section {self.section}")
        parts += [part for part in (self.form, *(words for _, words in self.marks)) if part]
        if self.same_as:
            parts.append(f"same music as bar {self.same_as}")
        return ", ".join(parts)


def ordinal(number: int) -> str:
    """1st, 2nd, 3rd, 4th ... 11th."""
    if number % 100 in (11, 12, 13):
        return f"{number}th"
    return f"{number}{ {1: 'st', 2: 'nd', 3: 'rd'}.get(number % 10, 'th') }"


def counted(number: int, word: str) -> str:
    """1 note, 2 notes."""
    return f"{number} {word}" if number == 1 else f"{number} {word}s"


@once_a_piece
def order_of(piece: Piece) -> tuple[int, ...]:
    """Written bar indices as played."""
    return playing_order(piece)


@once_a_piece
def sections_of(piece: Piece) -> tuple[Section, ...]:
    """The sections that the score itself shows."""
    return sections(piece)


def section_letters(lesson: Lesson) -> tuple[str, ...]:
    """The section letter of every written bar: the teacher's, else those of the score."""
    letters = [""] * len(lesson.piece.bars)
    if lesson.sections:
        starts = sorted(lesson.sections)
        for (first, letter), after in zip(
            starts, [*(s for s, _ in starts[1:]), len(letters)], strict=True
        ):
            letters[first:after] = [letter] * (after - first)
    else:
        for section in sections_of(lesson.piece):
            width = section.last_bar + 1 - section.first_bar
            letters[section.first_bar : section.last_bar + 1] = [section.letter] * width
    return tuple(letters)


def form_words(bar: Bar) -> str:
    """Repeats, endings and jumps of a bar, in words."""
    words = []
    if bar.endings:
        words.append(" and ".join(ordinal(turn) for turn in bar.endings) + " ending")
    if bar.repeat_start:
        words.append("repeat from here")
    if bar.repeat_end:
        words.append("repeat")
    words += ["Segno"] * bar.segno + ["Coda"] * bar.coda + ["to Coda"] * bar.to_coda
    words += ["Fine"] * bar.fine
    if bar.jump:
        words.append(bar.jump)
    return ", ".join(words)


@once_a_piece
def repeats_of(piece: Piece) -> tuple[str, ...]:
    """For every written bar the number of the first earlier one with the same music."""
    seen: dict[tuple[tuple[Fraction, Fraction, int, int, bool], ...], str] = {}
    out = []
    for bar in piece.bars:
        music = tuple(
            sorted((n.onset, n.duration, n.midi, n.voice, n.grace) for n in bar.notes)
        )
        out.append(seen.get(music, "") if music else "")
        seen.setdefault(music, bar.number)
    return tuple(out)


def notes_of_bar(lesson: Lesson, index: int, letters: tuple[str, ...]) -> tuple[BarNote, ...]:
    """The teaching notes that speak of a written bar."""
    return tuple(
        note
        for note in lesson.notes
        if note.first_bar <= index <= note.last_bar
        or (note.section and note.section == letters[index])
    )


def bar_rows(lesson: Lesson, fingering: Fingering | None) -> tuple[BarRow, ...]:
    """All rows, in playing order."""
    return tuple(_rows(lesson, fingering))


def _rows(lesson: Lesson, fingering: Fingering | None) -> Iterator[BarRow]:
    piece = lesson.piece
    order = order_of(piece)
    letters = section_letters(lesson)
    same = repeats_of(piece)
    by_index: dict[int, FingeredBar] = {b.index: b for b in fingering.bars} if fingering else {}
    hardest = max((b.effort for b in by_index.values()), default=0) or 1
    pins = {index: 0 for index in range(len(piece.bars))}
    for pin in lesson.pins:
        if pin.note in piece.bar_of:
            pins[piece.bar_of[pin.note]] += 1
    notes = [len(notes_of_bar(lesson, index, letters)) for index in range(len(piece.bars))]
    turns: dict[int, int] = {}
    before = ""
    for position, index in enumerate(order):
        bar, hands = piece.bars[index], by_index.get(index)
        turns[index] = turns.get(index, 0) + 1
        yield BarRow(
            position=position,
            index=index,
            number=bar.number,
            section=letters[index],
            starts_section=letters[index] != before or position == 0,
            turn=turns[index],
            turns=order.count(index),
            form=form_words(bar),
            notes=notes[index],
            pins=pins[index],
            cuts=sum(note.cut_reason is not None for note in hands.notes) if hands else 0,
            effort=hands.effort / hardest if hands else 0.0,
            impossible=hands.impossible if hands else None,
            same_as=same[index],
            chords="  ".join(chord.text for chord in bar.chords),
        )
        before = letters[index]


def keeps(row: BarRow, which: str, rows: tuple[BarRow, ...]) -> bool:
    """Whether a row passes one of ``FILTERS``."""
    if which == "with cut notes":
        return row.cuts > 0
    if which == "without teaching notes":
        return row.notes == 0
    if which == "with pins":
        return row.pins > 0
    if which == "hardest":
        efforts = sorted((other.effort for other in rows), reverse=True)
        return row.effort > 0 and row.effort >= efforts[max(0, len(efforts) // HARDEST_SHARE - 1)]
    return True
