"""What the bar list shows: one row for every bar played, with its marks in words."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import TypeVar
from weakref import finalize

from workbench.fingering.types import FingeredBar, Fingering
from workbench.language.fact import Fact
from workbench.language.message import (
    Figure,
    Message,
    Nth,
    SymbolName,
    Text,
    counted,
    in_a_row,
    mark,
    message,
)
from workbench.music.bar_names import bar_heading
from workbench.music.model import Bar, Piece
from workbench.music.order.form import playing_order
from workbench.teaching.bars.likeness import Likeness
from workbench.teaching.lessons.lesson import BarNote, Lesson
from workbench.teaching.lessons.sectioning import letters_of, section_starts

#: Which bars are listed: what they are called in code, and on the screen.
FILTERS = (
    ("all", mark("All bars")),
    ("unfinished", mark("Unfinished")),
    ("cuts", mark("With cut notes")),
    ("hardest", mark("Hardest")),
    ("no notes", mark("No remarks yet")),
    ("pins", mark("With pins")),
)
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

    ``turn`` is which time it is played, ``turns`` how often in all. ``form`` has its
    repeats, endings and jumps in words, ``jumps`` the jumps alone; ``chords`` its
    chord names. ``finished``: the teacher has settled it, see ``is_finished``.
    """

    position: int
    index: int
    number: str
    section: str
    starts_section: bool
    turn: int
    turns: int
    form: Text
    notes: int
    pins: int
    cuts: int
    impossible: Fact | None  # why it cannot be played
    finished: bool = False
    chords: Text = ""
    jumps: Text = ""
    endings: tuple[int, ...] = ()
    repeat_start: bool = False
    repeat_end: bool = False

    @property
    def title(self) -> Text:
        """For example ``Bar 5``, ``Pickup``, ``Bar 5, 2nd time``."""
        return in_a_row((self.short, self.which))

    @property
    def short(self) -> Message:
        """``Bar 5`` or ``Pickup``."""
        return bar_heading(self.number)

    @property
    def which(self) -> Text:
        """``2nd time`` where the bar is played more than once."""
        return message("{which} time", which=Nth(self.turn)) if self.turns > 1 else ""

    @property
    def marks(self) -> tuple[tuple[str, Message], ...]:
        """(icon name, words) of every mark on the row."""
        out = []
        if self.impossible:
            out.append(("impossible", message("cannot be played")))
        if self.notes:
            out.append(("note", counted(self.notes, "{n} remark", "{n} remarks")))
        if self.pins:
            out.append(("pin", counted(self.pins, "{n} pin", "{n} pins")))
        if self.cuts:
            out.append(("cut", message("{n} cut", n=self.cuts)))
        return tuple(out)

    @property
    def spoken(self) -> Text:
        """The row in words, for those who hear the window."""
        parts: list[Text] = [self.title]
        if self.section:
            parts.append(message("section {letter}", letter=self.section))
        return in_a_row((*parts, self.form, *(words for _, words in self.marks)))


@dataclass(frozen=True)
class BarFacts:
    """What is measured in a written bar, once the fingering is there: ``difficulty`` on
    the scale of grades (0-9; None: not known), ``share`` of the hardest bar's, and the
    earlier bar it is like, whose printed number is ``like_number``."""

    difficulty: float | None = None
    share: float = 0.0
    like: Likeness | None = None
    like_number: str = ""

    @property
    def figure(self) -> Text:
        """The difficulty with one decimal, "" where it is not known."""
        return "" if self.difficulty is None else Figure(self.difficulty, 1)

    @property
    def seen(self) -> Text:
        """For example "same grips as bar 3"; "" for a bar like none before."""
        return self.like.words(self.like_number) if self.like else ""

    @property
    def spoken(self) -> Text:
        """The facts in words."""
        hard = message("difficulty {figure}", figure=self.figure) if self.figure else ""
        return in_a_row((hard, self.seen))


NO_FACTS = BarFacts()
Facts = Mapping[int, BarFacts]  # by written bar


@once_a_piece
def order_of(piece: Piece) -> tuple[int, ...]:
    """Written bar indices as played."""
    return playing_order(piece)


@once_a_piece
def _score_letters(piece: Piece) -> tuple[str, ...]:
    return letters_of(section_starts(Lesson("", "", piece, "")), len(piece.bars))


def section_letters(lesson: Lesson) -> tuple[str, ...]:
    """The section letter of every written bar: the teacher's, else those of the score."""
    if lesson.sections:
        return letters_of(section_starts(lesson), len(lesson.piece.bars))
    return _score_letters(lesson.piece)


def form_words(bar: Bar) -> Text:
    """Repeats, endings and jumps of a bar, in words."""
    words: list[Text] = []
    if bar.endings:
        which = in_a_row(map(Nth, bar.endings), message(" and "))
        words.append(message("{which} ending", which=which))
    if bar.repeat_start:
        words.append(message("repeat from here"))
    if bar.repeat_end:
        words.append(message("repeat"))
    return in_a_row((*words, *jump_words(bar)))


def jump_words(bar: Bar) -> list[Text]:
    """Signs and jumps of a bar, as they are printed."""
    words: list[Text] = (
        ["Segno"] * bar.segno + ["Coda"] * bar.coda + [message("to Coda")] * bar.to_coda
    )
    words += ["Fine"] * bar.fine
    return [*words, bar.jump] if bar.jump else words


def notes_of_bar(lesson: Lesson, index: int, letters: tuple[str, ...]) -> tuple[BarNote, ...]:
    """The teaching notes that speak of a written bar."""
    return tuple(
        note
        for note in lesson.notes
        if note.first_bar <= index <= note.last_bar
        or (note.section and note.section == letters[index])
    )


def note_counts(lesson: Lesson, letters: tuple[str, ...]) -> list[int]:
    """How many teaching notes speak of each written bar."""
    out = [0] * len(letters)
    for note in lesson.notes:
        inside = range(note.first_bar, min(note.last_bar + 1, len(letters)))
        for index in inside:
            out[index] += 1
        if note.section:
            for index, letter in enumerate(letters):
                out[index] += letter == note.section and index not in inside
    return out


def bar_rows(lesson: Lesson, fingering: Fingering | None) -> tuple[BarRow, ...]:
    """All rows, in playing order."""
    return tuple(_rows(lesson, fingering))


def _rows(lesson: Lesson, fingering: Fingering | None) -> Iterator[BarRow]:
    piece = lesson.piece
    order = order_of(piece)
    letters = section_letters(lesson)
    by_index: dict[int, FingeredBar] = {b.index: b for b in fingering.bars} if fingering else {}
    pins = Counter(piece.bar_of[p.note] for p in lesson.pins if p.note in piece.bar_of)
    notes = note_counts(lesson, letters)
    all_turns = Counter(order)
    turns: Counter[int] = Counter()
    before = ""
    for position, index in enumerate(order):
        bar, hands = piece.bars[index], by_index.get(index)
        turns[index] += 1
        impossible = hands.impossible if hands else None
        yield BarRow(
            position=position,
            index=index,
            number=bar.number,
            section=letters[index],
            starts_section=letters[index] != before or position == 0,
            turn=turns[index],
            turns=all_turns[index],
            form=form_words(bar),
            notes=notes[index],
            pins=pins[index],
            cuts=sum(note.cut_reason is not None for note in hands.notes) if hands else 0,
            impossible=impossible,
            finished=not bar.notes or (not impossible and bool(notes[index] or pins[index])),
            chords=in_a_row((SymbolName(chord.text) for chord in bar.chords), "  "),
            jumps=in_a_row(jump_words(bar)),
            endings=bar.endings,
            repeat_start=bar.repeat_start,
            repeat_end=bar.repeat_end,
        )
        before = letters[index]


def kept(rows: tuple[BarRow, ...], which: str, facts: Facts) -> list[BarRow]:
    """The rows that pass one of ``FILTERS``.

    A bar is unfinished while it cannot be played, or the teacher has neither pinned nor
    written anything in it; a bar of rest is finished, and so is one with the same music
    as a finished bar. The hardest are the fifth of the bars that ask most.
    """
    if which == "unfinished":
        done = {row.index for row in rows if row.finished}
        return [row for row in rows if row.index not in done and not _known(row, facts, done)]
    if which == "hardest":
        values = sorted((f.difficulty or 0.0 for f in facts.values()), reverse=True)
        least = values[max(0, len(values) // HARDEST_SHARE - 1)] if values else 0.0
        return [r for r in rows if (facts.get(r.index, NO_FACTS).difficulty or 0) >= least > 0]
    tests: dict[str, Callable[[BarRow], bool]] = {
        "cuts": lambda row: row.cuts > 0,
        "no notes": lambda row: row.notes == 0,
        "pins": lambda row: row.pins > 0,
    }
    return [row for row in rows if which not in tests or tests[which](row)]


def _known(row: BarRow, facts: Facts, done: set[int]) -> bool:
    like = facts.get(row.index, NO_FACTS).like
    return bool(like and like.kind == "music" and like.bar in done and not row.impossible)


def note_numbers(notes: Iterable[BarNote]) -> dict[str, int]:
    """Note id to its number in the score: in the order of the bars."""
    ordered = sorted(notes, key=lambda note: (note.first_bar, note.last_bar))
    return {note.id: at for at, note in enumerate(ordered, 1)}
