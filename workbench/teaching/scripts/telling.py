"""Which of the things in a bar its words speak of: a few at a time. What a piece goes on
using is explained where it comes again, what comes only here is named."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass

from workbench.teaching.techniques.news import Move, MoveAt

MOST = 3  # things explained at one bar (common practice of teachers, no source)
PATTERNS = frozenset({"arpeggio", "alternation"})  # each is a thing to learn by itself


@dataclass(frozen=True)
class Telling:
    """What is told at a bar: ``positions`` new in the piece; techniques ``new`` in it, to be
    explained; those met in ``earlier`` bars that had enough to tell, to be explained now;
    another kind (``patterns``) of what is explained; and ``also`` what is only named."""

    positions: tuple[str, ...] = ()
    new: tuple[Move, ...] = ()
    earlier: tuple[Move, ...] = ()
    patterns: tuple[Move, ...] = ()
    also: tuple[Move, ...] = ()


def base(move: Move) -> str:
    """The technique of a move, without its kind."""
    return move.name.partition(": ")[0]


def tellings(
    moves: Iterable[MoveAt],
    fresh: Mapping[int, Sequence[Move]],
    played: Sequence[int],
    own: Collection[int],
    known: Iterable[Move],
) -> dict[int, Telling]:
    """What is told by place in playing order, where there is anything.

    ``moves`` are all moves of the piece, ``fresh`` by written bar those met there first.
    The places ``own`` have the teacher's words: what is new there counts as explained.
    """
    here: dict[int, dict[str, Move]] = {}
    for row in moves:
        if row.move.kind == "technique":
            here.setdefault(row.bar, {}).setdefault(base(row.move), row.move)
    first: dict[int, int] = {}
    for place, bar in enumerate(played):
        first.setdefault(bar, place)
    places: dict[str, list[int]] = {}
    for bar, place in first.items():
        if place not in own:
            for name in here.get(bar, {}):
                places.setdefault(name, []).append(place)
    explained = {base(m) for m in known if m.kind == "technique"}
    waiting: list[str] = []
    out: dict[int, Telling] = {}
    for bar, place in first.items():
        new = [m for m in fresh.get(bar, ()) if m.kind == "technique"]
        if place in own:
            explained.update(base(m) for m in new)
            waiting = [name for name in waiting if name not in here.get(bar, {})]
            continue
        later = {name: [p for p in places.get(name, ()) if p > place] for name in here.get(bar, {})}
        kinds = {base(m): m for m in reversed(new) if base(m) not in explained}
        names = [n for n in dict.fromkeys(map(base, new)) if n in kinds and n not in waiting]
        names.sort(key=lambda n: -len(later[n]))  # what the piece is made of comes first
        positions = tuple(
            m.name for m in fresh.get(bar, ()) if m.kind == "position" and m.name != "I"
        )
        room = MOST - bool(positions)
        told, left = names[:room], names[room:]
        due = [n for n in waiting if n in here.get(bar, {})]
        now = due[: max(0, MOST - 1 - bool(positions) - len(told))]
        last = [n for n in (*left, *due) if n not in now and not later[n]]
        patterns = [m for m in new if base(m) in PATTERNS and base(m) in explained]
        explained.update((*told, *now, *last))
        waiting = [n for n in (*waiting, *left) if n not in explained]
        one = Telling(
            positions,
            tuple(kinds[n] for n in told),
            tuple(here[bar][n] for n in now),
            tuple(patterns[: max(0, room - len(told) - len(now))]),
            tuple(here[bar][n] for n in last),
        )
        if one != Telling():
            out[place] = one
    return out
