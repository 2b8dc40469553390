"""The script of a tutorial: what is said and shown, bar by bar in playing order."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from workbench.fingering.types import Fingering
from workbench.instrument.model import Hand, Instrument
from workbench.music.errors import BadInput
from workbench.music.form import form_in_words, playing_order, sections
from workbench.music.model import Piece
from workbench.teaching.formatting import plain
from workbench.teaching.lesson import BarNote, Lesson
from workbench.teaching.seen import Move, MoveAt, grip_name, moves_of, new_in_bars
from workbench.teaching.strokes import bar_name, bar_seconds, by_bar, same_as, strokes
from workbench.teaching.techniques import technique

WORDS_A_MINUTE = 140.0  # calm explaining speech; common practice, no source
BREATH = 0.6  # seconds after each bar's talk


@dataclass(frozen=True)
class Cue:
    """One bar of the script.

    ``position`` counts bars in playing order from 0, ``bar`` is the written bar.
    ``say`` is spoken from ``start`` (seconds) for ``speaking`` seconds, then the
    bar is played for ``playing`` seconds. ``grips`` are frets from the
    highest-numbered string to string 1, as they come; ``right`` the right hand's
    pattern; ``new`` what is met for the first time; ``as_bar`` the written bar
    that was the same before, else None. ``edited`` where the teacher's own words
    stand.
    """

    position: int
    bar: int
    number: str
    say: str
    grips: tuple[str, ...]
    right: str
    new: tuple[Move, ...]
    as_bar: int | None
    start: float
    speaking: float
    playing: float
    chapter: str = ""
    edited: bool = False

    @property
    def end(self) -> float:
        """When the next bar begins, in seconds."""
        return self.start + self.speaking + self.playing


@dataclass(frozen=True)
class Script:
    """The whole script. ``opening`` is said before the first bar."""

    title: str
    opening: str
    opening_seconds: float
    cues: tuple[Cue, ...]

    @property
    def seconds(self) -> float:
        """Length in all."""
        return self.cues[-1].end if self.cues else self.opening_seconds

    def cue_at(self, seconds: float) -> Cue | None:
        """The cue that runs at that time; None before the first and after the last."""
        for cue in self.cues:
            if cue.start <= seconds < cue.end:
                return cue
        return None


def spoken_seconds(text: str) -> float:
    """How long the text takes to say."""
    words = len(plain(text).split())
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
        raise BadInput(f"'{lesson.title}' has no bars to explain; choose a score with music.")
    played = order if order is not None else playing_order(piece)
    edits = dict(lesson.script_edits)
    for position in edits:
        if not 0 <= position < len(played):
            raise BadInput(
                f"Script: there is no bar {position + 1} in playing order (it has {len(played)}); "
                "remove that edit."
            )
    first = same_as(piece, fingering)
    moves = moves_of(piece, fingering, instrument, hand)
    fresh = new_in_bars(_in_order(moves, played), known)
    rows = by_bar(strokes(piece, fingering))
    seconds = bar_seconds(piece)
    chapters = _chapters(lesson, played)
    opening = _opening(lesson)
    now = spoken_seconds(opening)
    opening_seconds = now
    met: dict[int, int] = {}
    said: set[str] = set()
    heard: set[int] = set()
    explained = {m.name.partition(": ")[0] for m in known if m.kind == "technique"}
    out: list[Cue] = []
    for position, bar in enumerate(played):
        as_bar = met.get(first[bar])
        met.setdefault(first[bar], bar)
        notes = [n for n in lesson.notes if _speaks_at(n, bar) and n.id not in said]
        said |= {n.id for n in notes}
        new = () if bar in heard else fresh.get(bar, ())
        heard.add(bar)
        text = _say(piece, bar, as_bar, new, notes, explained)
        say = edits.get(position, text)
        strokes_here = rows.get(bar, ())
        grips = dict.fromkeys(g for s in strokes_here if (g := grip_name(s, instrument.strings)))
        speaking = spoken_seconds(say)
        playing = seconds[bar] * 100.0 / max(1, lesson.tempo_percent)
        out.append(
            Cue(
                position,
                bar,
                piece.bars[bar].number,
                say,
                tuple(grips),
                " ".join("".join(s.right) for s in strokes_here if s.right),
                new,
                as_bar,
                now,
                speaking,
                playing,
                chapters.get(position, ""),
                position in edits,
            )
        )
        now += speaking + playing
    return Script(lesson.title, opening, opening_seconds, tuple(out))


def with_edit(lesson: Lesson, position: int, text: str | None) -> Lesson:
    """The lesson with the words at a place of the playing order replaced, or given back
    to the program where ``text`` is None or empty."""
    edits = {k: v for k, v in lesson.script_edits if k != position}
    if text and text.strip():
        edits[position] = text.strip()
    return replace(lesson, script_edits=tuple(sorted(edits.items())))


def _in_order(moves: Sequence[MoveAt], played: tuple[int, ...]) -> list[MoveAt]:
    """Moves as they are met in playing order, those of bars never played left out."""
    first: dict[int, int] = {}
    for k, bar in enumerate(played):
        first.setdefault(bar, k)
    return sorted((m for m in moves if m.bar in first), key=lambda m: first[m.bar])


def _speaks_at(note: BarNote, bar: int) -> bool:
    """A note is said once, at the first bar of what it covers that is played."""
    return note.first_bar <= bar <= note.last_bar


def _chapters(lesson: Lesson, played: tuple[int, ...]) -> dict[int, str]:
    """Chapter titles by place in playing order: sections each time they are entered."""
    piece = lesson.piece
    if lesson.sections:
        starts = sorted(lesson.sections)
        ends = [s for s, _ in starts[1:]] + [len(piece.bars)]
        spans = [(s, e - 1, name) for (s, name), e in zip(starts, ends, strict=True)]
    else:
        spans = [(s.first_bar, s.last_bar, s.letter) for s in sections(piece)]
    out: dict[int, str] = {}
    times: dict[str, int] = {}
    before: tuple[int, int] | None = None
    for position, bar in enumerate(played):
        at = next((k for k, (a, b, _) in enumerate(spans) if a <= bar <= b), None)
        if at is None:
            continue
        again = before is not None and (before[0] != at or bar <= before[1])
        if before is None or again:
            name = spans[at][2]
            times[name] = times.get(name, 0) + 1
            turn = f", time {times[name]}" if times[name] > 1 else ""
            out[position] = (f"Section {name}" if len(name) <= 2 else name) + turn
        before = (at, bar)
    return out


def _opening(lesson: Lesson) -> str:
    piece = lesson.piece
    by = f" by {piece.composer}" if piece.composer else ""
    said = [f"{lesson.title}{by}, in {lesson.key or piece.bars[0].key.name}."]
    form = form_in_words(piece)
    if form:
        said.append(f"The form: {form}")
    return " ".join(said)


def _say(
    piece: Piece,
    bar: int,
    as_bar: int | None,
    new: tuple[Move, ...],
    notes: Sequence[BarNote],
    explained: set[str],
) -> str:
    """What is said at a bar; a technique is explained once, its other kinds are named."""
    name = bar_name(piece.bars[bar])
    here = name[:1].upper() + name[1:]
    parts: list[str] = []
    if as_bar == bar:
        parts.append(f"{here} again.")
    elif as_bar is not None:
        parts.append(f"{here} is as in {bar_name(piece.bars[as_bar])}.")
    else:
        parts.append(f"{here}.")
    for move in new:
        if move.kind == "technique":
            entry = technique(move.name.partition(": ")[0])
            parts.append(f"New here: {move.words}.")
            if entry.id not in explained:
                explained.add(entry.id)
                parts.append(entry.asks)
        elif move.kind == "position" and move.name != "I":
            parts.append(f"New here: {move.words}.")
    parts += [_sentence(n.text) for n in notes]
    return " ".join(parts)


def _sentence(text: str) -> str:
    text = text.strip()
    return text if text.endswith((".", "!", "?", ":", "…")) or not text else text + "."
