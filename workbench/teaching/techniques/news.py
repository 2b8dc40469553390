"""What is new: in a bar against earlier bars, in a lesson against earlier lessons.

A *move* is anything learned once: a technique, one of its kinds (the arpeggio
p i m), a grip, a position, a key.
"""

from __future__ import annotations

from collections.abc import Container, Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from hashlib import sha256
from typing import Literal, get_args

from workbench.fingering.types import Fingering
from workbench.instrument.model import Hand, Instrument, roman
from workbench.language.message import (
    KeyName,
    Listed,
    Message,
    Text,
    Unsaid,
    counted,
    in_a_row,
    mark,
    message,
)
from workbench.music.model import Piece
from workbench.teaching.bars.strokes import Stroke, strokes
from workbench.teaching.techniques.catalogue import Found, find_techniques, technique
from workbench.teaching.techniques.occurrence import Detail

# Techniques whose kinds are learned one by one.
BY_KIND = frozenset(
    {
        "alternation",
        "arpeggio",
        "strum",
        "thumb-finger",
        "fingers-together",
        "finger-swap",
        "compound-time",
    }
)
TOGETHER = "fingers-together"
PINCH = "thumb-finger"
_TOGETHER = {
    2: mark("two fingers together"),
    3: mark("three fingers together"),
    4: mark("four fingers together"),
}
SAME_LEVEL = 1.0  # grades a piece may lie above or below what was just learned


MoveKind = Literal["technique", "key", "position", "grip"]


@dataclass(frozen=True, order=True)
class Move:
    """Something that a bar asks of the player. ``name`` says which one of its ``kind``:
    "arpeggio: p i m", "2-0-1-0" (frets from the highest-numbered string, x not
    played), "V", "F major"."""

    kind: MoveKind
    name: str

    @property
    def words(self) -> Unsaid:
        """As a teacher would say it."""
        if self.kind == "technique":
            base, _, detail = self.name.partition(": ")
            said = message(technique(base).name)
            if base == TOGETHER and detail:
                said = message(_TOGETHER[len(detail.split())])
            elif base == PINCH and len(detail.split()) > 2:
                said = message("pinch of thumb and fingers")
            return Listed((said, " (", kind_words(detail), ")"), "") if detail else said
        if self.kind == "position":
            return message("position {position}", position=self.name)
        if self.kind == "grip":
            return message("the grip {grip}", grip=self.name)
        return message("the key of {key}", key=KeyName(self.name))


_TOLD = get_args(MoveKind)  # in the order in which a teacher names them


def weightiest(moves: Iterable[Move]) -> list[Move]:
    """Techniques before keys, positions and grips; each kind in the order given."""
    return sorted(moves, key=lambda m: _TOLD.index(m.kind))


@dataclass(frozen=True)
class MoveAt:
    """A move and the written bar where it is met."""

    move: Move
    bar: int


@dataclass(frozen=True)
class Profile:
    """What a lesson teaches: its moves in the order of the piece, with ``grade`` as a
    number whose fraction is the level (1.5: grade 1, middle). ``id`` is the lesson's;
    ``tune`` is the same for lessons on one piece, see ``tune_of``."""

    id: str
    title: str
    instrument: str
    grade: float
    moves: tuple[Move, ...]
    tune: str = ""


@dataclass(frozen=True)
class Seen:
    """A move of a piece: the bar where it first comes, the lesson that taught it first
    (None: new to these students) and whether other lessons on the shelf have it."""

    move: Move
    bar: int
    taught_in: Profile | None
    on_shelf: tuple[str, ...] = ()

    @property
    def sentence(self) -> Message:
        """For example "guide finger: known from 'First song'"."""
        if self.taught_in is not None:
            title = self.taught_in.title
            return message("{move}: known from '{title}'", move=self.move.words, title=title)
        return message("{move}: new", move=self.move.words)


@dataclass(frozen=True)
class Suggestion:
    """A piece of the shelf to teach next: what it takes up again, what it adds, why."""

    profile: Profile
    reused: tuple[Move, ...]
    new: tuple[Move, ...]
    score: float

    @property
    def reason(self) -> Message:
        again = in_a_row(m.words for m in weightiest(self.reused)[:3])
        return message(
            "Takes up again {again}; adds {added}.",
            again=again or message("nothing in particular"),
            added=listed(self.new, message("nothing new")),
        )


@dataclass(frozen=True)
class Pair:
    """Two pieces to work on side by side: what they share, and what the second adds."""

    first: Profile
    second: Profile
    shared: tuple[Move, ...]
    only_second: tuple[Move, ...]


def listed(moves: Sequence[Move], none: Text) -> Text:
    """The three weightiest moves in words and how many more there are; ``none`` without any."""
    more = len(moves) - 3
    words = in_a_row(m.words for m in weightiest(moves)[:3])
    if more > 0:
        return counted(more, "{names} and {n} more", "{names} and {n} more", names=words)
    return words or none


def kind_words(detail: Detail) -> Text:
    """The kind of a technique, such as "p i m", "1-2 to 3-4" or "fret 3", as it is said."""
    if not isinstance(detail, str):
        return detail
    before, to, after = detail.partition(" to ")
    return message("{before} to {after}", before=before, after=after) if to else detail


def grip_name(stroke: Stroke, strings: int) -> str | None:
    """The grip as frets from the highest-numbered string; None below two stopped strings."""
    frets: dict[int, int] = {}
    for p in stroke.ringing + stroke.notes:
        if p.hands.string is not None and p.hands.fret is not None:
            frets[p.hands.string] = p.hands.fret
    if sum(1 for f in frets.values() if f > 0) < 2:
        return None
    return "-".join(str(frets.get(s, "x")) for s in range(strings, 0, -1))


def moves_of(
    piece: Piece,
    fingering: Fingering,
    instrument: Instrument,
    hand: Hand,
    found: tuple[Found, ...] | None = None,
) -> tuple[MoveAt, ...]:
    """Every move with every bar where it is met, in written order, once a bar."""
    rows: dict[tuple[int, Move], None] = {}
    for f in found if found is not None else find_techniques(piece, fingering, instrument, hand):
        for o in f.occurrences:
            name = f.technique.id
            if o.detail and name in BY_KIND:
                name += f": {o.detail}"
            rows[(o.bar, Move("technique", name))] = None
    for stroke in strokes(piece, fingering):
        grip = grip_name(stroke, instrument.strings)
        if grip:
            rows[(stroke.bar, Move("grip", grip))] = None
        if stroke.position is not None:
            rows[(stroke.bar, Move("position", roman(stroke.position)))] = None
    for bar in piece.bars:
        if bar.notes:
            rows[(bar.index, Move("key", bar.key.name))] = None
    return tuple(MoveAt(move, bar) for bar, move in sorted(rows, key=lambda r: (r[0], r[1])))


def profile(
    lesson: str,
    title: str,
    grade: float,
    piece: Piece,
    fingering: Fingering,
    instrument: Instrument,
    hand: Hand,
) -> Profile:
    """What a lesson teaches, to be compared with others."""
    moves = dict.fromkeys(m.move for m in moves_of(piece, fingering, instrument, hand))
    return Profile(lesson, title, instrument.id, grade, tuple(moves), tune_of(piece))


def new_in_bars(moves: Iterable[MoveAt], known: Iterable[Move] = ()) -> dict[int, tuple[Move, ...]]:
    """For every written bar the moves met there for the first time in the piece, those
    ``known`` before left out."""
    met = set(known)
    out: dict[int, list[Move]] = {}
    for row in moves:
        if row.move not in met:
            met.add(row.move)
            out.setdefault(row.bar, []).append(row.move)
    return {bar: tuple(rows) for bar, rows in out.items()}


def seen_before(
    moves: Iterable[MoveAt], earlier: Sequence[Profile], shelf: Sequence[Profile] = ()
) -> tuple[Seen, ...]:
    """Each move of a piece once, with where it was first taught.

    ``earlier`` are the student's lessons, oldest first; ``shelf`` any others that
    might be shown as "also in".
    """
    first: dict[Move, Profile] = {}
    for p in earlier:
        for move in p.moves:
            first.setdefault(move, p)
    elsewhere: dict[Move, list[str]] = {}
    for p in shelf:
        for move in p.moves:
            elsewhere.setdefault(move, []).append(p.title)
    out: dict[Move, Seen] = {}
    for row in moves:
        if row.move not in out:
            out[row.move] = Seen(
                row.move, row.bar, first.get(row.move), tuple(elsewhere.get(row.move, ()))
            )
    return tuple(out.values())


def tune_of(piece: Piece) -> str:
    """What tells pieces apart by their tune alone: the top notes of every bar, from the first
    one on. The same for a copy, in another key, and on an instrument for which lower notes
    were moved or left out; empty without notes."""
    told, first = [], None
    for bar in piece.bars:
        tops: dict[Fraction, int] = {}
        for n in bar.notes:
            tops[n.onset] = max(n.midi, tops.get(n.onset, n.midi))
        if first is None and tops:
            first = tops[min(tops)]
        rows = sorted(tops.items())
        told.append([(str(onset), (midi - (first or 0)) % 12) for onset, midi in rows])
    return sha256(repr(told).encode()).hexdigest() if first is not None else ""


def teach_next(
    shelf: Sequence[Profile],
    taught: Sequence[Profile],
    most: int = 5,
    within: float = SAME_LEVEL,
    has: Container[str] = (),
) -> tuple[Suggestion, ...]:
    """Pieces of the shelf that fit after the lessons ``taught`` (oldest first): for the
    same instrument, ``within`` so many grades of the last one, taking up what the last lesson
    brought as new and adding few moves; best first. Never a piece that the student has:
    one of ``taught``, of the lessons named by ``has``, or another lesson on such a piece.
    Nothing where nothing was taught.
    """
    if not taught or most < 1:
        return ()
    last = taught[-1]
    before = {m for p in taught[:-1] for m in p.moves}
    known = before | set(last.moves)
    fresh = [m for m in last.moves if m not in before] or list(last.moves)
    done = {p.id for p in taught}
    tunes = {p.tune for p in (*taught, *shelf) if p.tune and (p.id in done or p.id in has)}
    out = []
    for p in shelf:
        near = abs(p.grade - last.grade) <= within and p.instrument == last.instrument
        if not near or p.id in done or p.id in has or p.tune in tunes:
            continue
        own = set(p.moves)
        reused = tuple(m for m in fresh if m in own)
        new = tuple(m for m in p.moves if m not in known)
        score = (
            len(reused) / len(fresh)
            - 0.05 * abs(len(new) - 2)
            - 0.1 * abs(p.grade - last.grade - 0.2)
        )
        if reused:
            out.append(Suggestion(p, reused, new, score))
    out.sort(key=lambda s: (-s.score, s.profile.title, s.profile.id))
    return tuple(out[:most])


def pairs(shelf: Sequence[Profile], of: Profile, most: int = 5) -> tuple[Pair, ...]:
    """Partners for a piece: near in grade, on the same instrument, with the largest
    share of moves in common, each with something of its own first among equals."""
    own = set(of.moves)
    rows = []
    for p in shelf:
        if p.id == of.id or p.instrument != of.instrument or (p.tune and p.tune == of.tune):
            continue
        if abs(p.grade - of.grade) > SAME_LEVEL:
            continue
        other = set(p.moves)
        both = own & other
        if not both:
            continue
        pair = Pair(
            of,
            p,
            tuple(m for m in of.moves if m in both),
            tuple(m for m in p.moves if m not in both),
        )
        rows.append((len(both) / len(own | other), bool(pair.only_second), pair))
    rows.sort(key=lambda r: (-r[0], not r[1], r[2].second.title))
    return tuple(r[2] for r in rows[:most])
