"""The script of a tutorial: what is said and shown, bar by bar in playing order."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from workbench.fingering.types import Fingering
from workbench.instrument.model import Hand, Instrument
from workbench.language.message import Text, message
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.music.order.form import in_one_part, playing_order, sections
from workbench.teaching.bars.grip_words import grip_text
from workbench.teaching.bars.strokes import bar_seconds, by_bar, same_as, strokes
from workbench.teaching.lessons.formatting import plain
from workbench.teaching.lessons.lesson import CLOSING, OPENING, BarNote, Lesson, sectioned
from workbench.teaching.scripts.spans import Quiet, quiet_words
from workbench.teaching.scripts.telling import Telling, tellings
from workbench.teaching.scripts.words import at_bar, closing_words, opening_words
from workbench.teaching.techniques.news import Move, MoveAt, grip_name, moves_of, new_in_bars

WORDS_A_MINUTE = 140.0  # calm explaining speech; common practice, no source
BREATH = 0.6  # seconds after each bar's talk


@dataclass(frozen=True, kw_only=True)
class Cue:
    """One bar of the script.

    ``position`` counts bars in playing order from 0, ``bar`` is the written bar.
    ``say`` is spoken from ``start`` (seconds) for ``speaking`` seconds, then the
    bar is played for ``playing`` seconds: words take their time in the language spoken
    when the script was made. ``grips`` are frets from the
    highest-numbered string to string 1, as they come; ``right`` the right hand's
    pattern; ``new`` what is met for the first time; ``as_bar`` the written bar
    that was the same before, else None. ``through`` is the last place that the words
    speak of: where bars are alike in having nothing to say, one speaks for them all and
    the others (``covered``) say nothing. ``edited`` where the teacher's own words
    stand; ``notes`` are the teaching notes that belong here, for their pictures.
    """

    position: int
    bar: int
    number: str
    say: Text
    grips: tuple[str, ...]
    right: str
    new: tuple[Move, ...]
    as_bar: int | None
    start: float
    speaking: float
    playing: float
    chapter: Text = ""
    edited: bool = False
    notes: tuple[BarNote, ...] = ()
    through: int = -1
    covered: bool = False

    @property
    def end(self) -> float:
        """When the next bar begins, in seconds."""
        return self.start + self.speaking + self.playing

    @property
    def pictures(self) -> tuple[str, ...]:
        """The grips that the notes picture, written as ``grips`` are."""
        return tuple(grip_text(n.grip) for n in self.notes if n.grip is not None)


@dataclass(frozen=True)
class Chapter:
    """A section as it is entered: its name, the place in playing order where it begins,
    when (seconds) and how long it takes."""

    name: Text
    position: int
    start: float
    seconds: float


@dataclass(frozen=True, kw_only=True)
class Script:
    """The whole script. ``opening`` is said before the first bar, ``closing`` after the
    last; ``edited`` holds which of them (OPENING, CLOSING) are the teacher's words."""

    title: str
    opening: Text
    opening_seconds: float
    cues: tuple[Cue, ...]
    closing: Text = ""
    closing_seconds: float = 0.0
    edited: frozenset[int] = frozenset()

    @property
    def closing_start(self) -> float:
        """When the closing words begin, in seconds."""
        return self.cues[-1].end if self.cues else self.opening_seconds

    @property
    def seconds(self) -> float:
        """Length in all."""
        return self.closing_start + self.closing_seconds

    @property
    def chapters(self) -> tuple[Chapter, ...]:
        """The sections in the order in which they are played."""
        entered = [c for c in self.cues if c.chapter]
        ends = [*(c.start for c in entered[1:]), self.closing_start]
        return tuple(
            Chapter(c.chapter, c.position, c.start, end - c.start)
            for c, end in zip(entered, ends, strict=True)
        )

    def words_at(self, place: int) -> str:
        """What is said at a place in playing order, or at OPENING or CLOSING, in words."""
        if place == OPENING:
            return str(self.opening)
        return str(self.closing if place == CLOSING else self.cues[place].say)

    def is_edited(self, place: int) -> bool:
        """Whether the teacher's own words stand there."""
        return place in self.edited if place < 0 else self.cues[place].edited

    def speaker(self, place: int) -> int:
        """The place whose words speak for a place in playing order: mostly itself."""
        while place > 0 and self.cues[place].covered:
            place -= 1
        return place


def spoken_seconds(text: Text) -> float:
    """How long the text takes to say, in the language spoken now."""
    words = len(plain(str(text)).split())
    return words * 60.0 / WORDS_A_MINUTE + BREATH if words else 0.0


def make_script(
    lesson: Lesson,
    fingering: Fingering,
    instrument: Instrument,
    hand: Hand,
    *,
    known: Sequence[Move] = (),
    order: tuple[int, ...] | None = None,
) -> Script:
    """The script of a lesson.

    ``known`` are moves of earlier lessons, which are not explained again;
    ``order`` the written bars in playing order where it is known already. The
    teacher's edits stand in place of what would be said. Raises BadInput for a
    lesson without bars or an edit of a bar that is not played.
    """
    piece = lesson.piece
    if not piece.bars:
        raise BadInput(
            "'{title}' has no bars to explain; choose a score with music.", title=lesson.title
        )
    played = order if order is not None else playing_order(piece)
    edits = dict(lesson.script_edits)
    _check(edits, len(played))
    marked = sectioned(lesson)
    first = same_as(piece, fingering)
    moves = _in_order(moves_of(piece, fingering, instrument, hand), played)
    fresh = new_in_bars(moves, known)
    telling = tellings(moves, fresh, played, edits, known)
    rows = by_bar(strokes(piece, fingering))
    seconds = bar_seconds(piece)
    chapters = _chapters(marked, played)
    letters = _letters(marked)
    opening: Text = edits.get(OPENING, opening_words(lesson, marked))
    now = spoken_seconds(opening)
    met: dict[int, int] = {}
    told: set[str] = set()
    heard: set[int] = set()
    taught: list[Move] = []
    bars: list[_Said] = []
    for position, bar in enumerate(played):
        as_bar = met.get(first[bar])
        met.setdefault(first[bar], bar)
        notes = tuple(n for n in lesson.notes if n.id not in told and _speaks_at(n, bar, letters))
        told |= {n.id for n in notes}
        new = () if bar in heard else fresh.get(bar, ())
        heard.add(bar)
        taught += new
        text: Text = edits.get(position) or at_bar(
            piece, bar, as_bar, telling.get(position, Telling()), notes
        )
        bars.append(_Said(text, as_bar, notes, new))
    quiet = [Quiet(k, played[k], said.as_bar) for k, said in enumerate(bars) if not said.text]
    spans = quiet_words(piece, quiet, chapters)
    out: list[Cue] = []
    through = -1
    for position, (bar, said) in enumerate(zip(played, bars, strict=True)):
        spoken = said.text
        covered = not spoken and position <= through
        if not spoken and not covered:
            spoken, through = spans[position]
        strokes_here = rows.get(bar, ())
        grips = dict.fromkeys(g for s in strokes_here if (g := grip_name(s, instrument.strings)))
        cue = Cue(
            position=position,
            bar=bar,
            number=piece.bars[bar].number,
            say=spoken,
            grips=tuple(grips),
            right=" ".join("".join(s.right) for s in strokes_here if s.right),
            new=said.new,
            as_bar=said.as_bar,
            start=now,
            speaking=spoken_seconds(spoken),
            playing=seconds[bar] * 100.0 / max(1, lesson.tempo_percent),
            chapter=chapters.get(position, ""),
            edited=position in edits,
            notes=said.notes,
            through=max(position, through) if not said.text and not covered else position,
            covered=covered,
        )
        out.append(cue)
        now = cue.end
    closing: Text = edits.get(CLOSING, closing_words(lesson, taught))
    return Script(
        title=lesson.title,
        opening=opening,
        opening_seconds=spoken_seconds(opening),
        cues=tuple(out),
        closing=closing,
        closing_seconds=spoken_seconds(closing),
        edited=frozenset({OPENING, CLOSING} & set(edits)),
    )


@dataclass(frozen=True)
class _Said:
    """What a bar has to say, before bars without words are taken together."""

    text: Text
    as_bar: int | None
    notes: tuple[BarNote, ...]
    new: tuple[Move, ...]


def with_edit(lesson: Lesson, place: int, text: str | None) -> Lesson:
    """The lesson with the words at a place of the playing order (or OPENING, CLOSING)
    replaced, or given back to the program where ``text`` is None or empty."""
    edits = {k: v for k, v in lesson.script_edits if k != place}
    if text and text.strip():
        edits[place] = text.strip()
    return replace(lesson, script_edits=tuple(sorted(edits.items())))


def _check(edits: dict[int, str], played: int) -> None:
    for place in edits:
        if not CLOSING <= place < played:
            raise BadInput(
                "Script: there is no bar {bar} in playing order (it has {count}); "
                "remove that edit.",
                bar=place + 1,
                count=played,
            )


def _in_order(moves: Sequence[MoveAt], played: tuple[int, ...]) -> list[MoveAt]:
    """Moves as they are met in playing order, those of bars never played left out."""
    first: dict[int, int] = {}
    for k, bar in enumerate(played):
        first.setdefault(bar, k)
    return sorted((m for m in moves if m.bar in first), key=lambda m: first[m.bar])


def _letters(piece: Piece) -> dict[int, str]:
    """The section letter of every written bar."""
    return {bar: s.letter for s in sections(piece) for bar in range(s.first_bar, s.last_bar + 1)}


def _speaks_at(note: BarNote, bar: int, letters: dict[int, str]) -> bool:
    """A note is said once, at the first bar of what it covers that is played."""
    if note.section is not None and note.section == letters.get(bar):
        return True
    return note.first_bar <= bar <= note.last_bar


def _chapters(piece: Piece, played: tuple[int, ...]) -> dict[int, Text]:
    """Chapter titles by place in playing order: sections each time they are entered."""
    spans = [(s.first_bar, s.last_bar, s.letter) for s in sections(piece)]
    at = [next(k for k, (a, b, _) in enumerate(spans) if a <= bar <= b) for bar in played]
    out: dict[int, Text] = {}
    times: dict[str, int] = {}
    entered = [0, *(
        k
        for k, ((before, now), (left, bar)) in enumerate(
            zip(pairwise(at), pairwise(played), strict=True), 1
        )
        if before != now or bar <= left
    )] if played else []  # fmt: skip
    for position in entered:
        name = spans[at[position]][2]
        times[name] = times.get(name, 0) + 1
        title: Text = message("The piece") if in_one_part(piece) else section_title(name)
        if times[name] > 1:
            title = message("{section}, time {time}", section=title, time=times[name])
        out[position] = title
    return out


def section_title(name: str) -> Text:
    """ "Section A" for a letter, a name of its own as it is."""
    return message("Section {letter}", letter=name) if len(name) <= 2 else name
