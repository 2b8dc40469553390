"""What arranging keeps and what it asks of the hand, over published guitar studies and
music21's corpus: ``python -m tests.arranging.proof [--studies N] [--corpus N] [--bars N]
[--kind KIND]``.

Everything is measured on the arranged music and its fingering, not on the search. "Unsaid" counts
notes of the tune that changed without a line in the list of changes saying where and why. The tune
here is plainer than in the code under test: the highest note struck where nothing sounds
above it and no note of its beat, the one before or the one after is more than a fifth higher.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import combinations, pairwise
from math import hypot
from pathlib import Path

from tests.fingering.excerpts import files
from tests.fingering.hand_check import complaints, tip
from workbench.arranging.arrange import Arranged, arrange
from workbench.arranging.ceiling import cut_off
from workbench.arranging.keys import by_key, candidate_keys
from workbench.arranging.weights import TOP_FRET
from workbench.arranging.words import sentence
from workbench.fingering.engine import solve
from workbench.fingering.types import FingeredNote, Fingering
from workbench.instrument.model import Hand, Instrument
from workbench.instrument.table import hand as find_hand
from workbench.instrument.table import instrument as find_instrument
from workbench.music.errors import BadInput
from workbench.music.model import Note, Piece
from workbench.music.reading.score import read_score

STUDIES = Path(__file__).parents[1] / "data" / "guitar-editions"
#: Kind of source, folder of the corpus, parts taken.
CORPUS = (
    ("chorales", "bach", "all"),
    ("fiddle tunes", "ryansMammoth", None),
    ("quartets", "mozart", "all"),
    ("songs", "essenFolksong", None),
)
INSTRUMENTS = ("ukulele", "ukulele-low-g", "guitar")
MEDIUM = find_hand("medium")


@dataclass
class Figures:
    """Counts over one kind of source on one instrument."""

    pieces: int = 0
    tune: int = 0
    tune_kept: int = 0
    on_top: int = 0
    notes: int = 0
    unplayed: int = 0
    high: int = 0
    nowhere_lower: int = 0
    above: int = 0
    grips: int = 0
    wide: int = 0
    bass: int = 0
    bass_over: int = 0
    faults: list[str] = field(default_factory=list)
    fourth: int = 0
    ranked: int = 0
    unsaid: int = 0
    where: list[str] = field(default_factory=list)


def times(piece: Piece) -> dict[str, tuple[Fraction, Fraction]]:
    """Start and end of every note in quarter lengths from the beginning."""
    out = {}
    for bar in piece.bars:
        for n in bar.notes:
            start = piece.starts[bar.index] + n.onset
            out[n.id] = start, start + n.duration
    return out


def tune_of(piece: Piece) -> list[Note]:
    """The tune by ear of the plainest kind."""
    span = times(piece)
    notes = [n for n in piece.notes if not n.grace]
    at: dict[Fraction, list[Note]] = {}
    for n in notes:
        at.setdefault(span[n.id][0], []).append(n)
    lone = all(
        span[a.id][1] <= span[b.id][0] or (span[a.id][0] == span[b.id][0] and a.midi == b.midi)
        for a, b in pairwise(notes)
    )
    tops = {time: max(n.midi for n in group) for time, group in at.items()}
    out = []
    for time, group in sorted(at.items()):
        top = max(group, key=lambda n: n.midi)
        covered = any(span[n.id][0] < time < span[n.id][1] and n.midi > top.midi for n in notes)
        before = [m for t, m in tops.items() if time - 2 <= t < time]
        after = [m for t, m in tops.items() if time < t <= time + 2]
        near = min(max(before or after or [0]), max(after or before or [0]))
        if not covered and (lone or near - top.midi <= 7):
            out.append(top)
    return out


def measure(into: Figures, name: str, source: Piece, wood: Instrument, hand: Hand) -> None:
    """Arrange and finger a piece, and add what is found."""
    placed = arrange(source, wood, hand=hand)
    done = placed.piece
    fingering = solve(done, cut_off(wood, done, TOP_FRET), hand)
    into.pieces += 1
    _tune(into, name, source, placed)
    _hand(into, name, done, fingering, wood, hand)
    _bass(into, source, done)


def _tune(into: Figures, name: str, source: Piece, placed: Arranged) -> None:
    done = placed.piece
    said = {c.note: sentence(c) for c in placed.changes}
    now = {n.id: n for n in done.notes}
    span, heard = times(source), times(done)
    move = _move(source, done)
    for note in tune_of(source):
        into.tune += 1
        got = now.get(note.id)
        kept = (
            got is not None
            and (got.midi - note.midi - move) % 12 == 0
            and heard[got.id] == span[note.id]
        )
        into.tune_kept += kept
        if not kept:
            into.where.append(f"{name}: {said.get(note.id, 'nothing said')}")
            into.unsaid += note.id not in said
            continue
        assert got is not None
        over = [
            n for n in done.notes
            if not n.grace and n.midi > got.midi
            and heard[n.id][0] <= heard[got.id][0] < heard[n.id][1]
        ]  # fmt: skip
        into.on_top += not over


def _move(source: Piece, done: Piece) -> int:
    """What everything moved by, octaves aside, from the notes themselves."""
    was = {n.id: n.midi for n in source.notes}
    steps = [(n.midi - was[n.id]) % 12 for n in done.notes]
    return max(set(steps), key=steps.count) if steps else 0


def _hand(
    into: Figures, name: str, done: Piece, fingering: Fingering, wood: Instrument, hand: Hand
) -> None:
    rows = [n for bar in fingering.bars for n in bar.notes]
    into.notes += len(rows)
    into.unplayed += sum(n.string is None for n in rows)
    into.high += sum((n.fret or 0) > 7 for n in rows)
    into.nowhere_lower += sum(
        all(fret > 7 for _, fret in wood.places(n.midi)) for n in rows if n.string is not None
    )
    into.above += sum((n.fret or 0) > TOP_FRET for n in rows)
    start = times(done)
    begun: dict[Fraction, list[FingeredNote]] = {}
    for n in rows:
        if n.string is not None:
            begun.setdefault(start[n.id][0], []).append(n)
    for time in begun:
        held = [n for n in rows if n.string is not None
                and start[n.id][0] <= time < start[n.id][0] + n.held]  # fmt: skip
        into.grips += 1
        into.wide += _wide(held, wood, hand)
    plain = not any(b.repeat_end or b.jump or b.endings for b in done.bars)
    if plain:
        into.faults += [f"{name}: {c}" for c in complaints(fingering, done, wood, hand)]


def _wide(held: list[FingeredNote], wood: Instrument, hand: Hand) -> bool:
    comfort = {
        (1, 2): hand.comfort_12, (1, 3): (hand.comfort_12 + hand.comfort_14) / 2,
        (1, 4): hand.comfort_14, (2, 3): hand.comfort_24 * 2 / 3, (2, 4): hand.comfort_24,
        (3, 4): hand.comfort_24 * 3 / 4,
    }  # fmt: skip
    down: dict[int, list[tuple[int, int]]] = {}
    for n in held:
        if n.left and n.fret and n.string:
            down.setdefault(n.left, []).append((n.fret, n.string))
    for f, g in combinations(sorted(down), 2):
        a, b = down[f], down[g]
        low, high = min(s for _, s in a), max(s for _, s in a)
        across = min(max(0, low - s, s - high) for _, s in b)
        along = tip(wood, a[0][0]) - tip(wood, b[0][0])
        if hypot(along, across * wood.spacing_mm / 2) > comfort[f, g] + 1:
            return True
    return False


def _bass(into: Figures, source: Piece, done: Piece) -> None:
    """Onsets at which what was below the tune now lies above it."""
    was, now = {n.id: n for n in source.notes}, {n.id: n for n in done.notes}
    start = times(source)
    at: dict[Fraction, list[str]] = {}
    for n in source.notes:
        if not n.grace:
            at.setdefault(start[n.id][0], []).append(n.id)
    for top in tune_of(source):
        if top.id not in now:
            continue
        lower = [i for i in at[start[top.id][0]] if i in now and was[i].midi < top.midi]
        if lower:
            into.bass += 1
            into.bass_over += any(now[i].midi > now[top.id].midi for i in lower)


def shortened(piece: Piece, bars: int) -> Piece:
    """The first bars of a piece, without repeats."""
    from dataclasses import replace

    taken = tuple(b.without_form() for b in piece.bars[:bars])
    ids = {n.id for b in taken for n in b.notes}
    return replace(piece, bars=taken, written=tuple(w for w in piece.written if w.note in ids))


def sources(studies: int, corpus: int, only: str | None = None) -> Iterator[tuple[str, str, Piece]]:
    """Kind, name and piece: evenly taken studies and corpus pieces, of one kind or of all."""
    found = sorted(STUDIES.glob("*.mxl")) if only in (None, "guitar studies") else []
    for path in found[:: max(1, len(found) // max(1, studies))][:studies]:
        yield "guitar studies", path.stem, read_score(path)
    for kind, folder, parts in CORPUS:
        if only not in (None, kind):
            continue
        each, paths = corpus // len(CORPUS), files(folder)
        taken = 0
        for path in paths[:: max(1, len(paths) // max(1, 2 * each))]:
            if taken == each:
                break
            try:
                piece = read_score(path, parts=parts)
            except BadInput:
                continue
            if piece.notes:
                taken += 1
                yield kind, path.stem, piece


def gather(
    studies: int, corpus: int, bars: int, instruments: tuple[str, ...] = INSTRUMENTS,
    ranked: bool = True, told: Callable[[str], None] | None = None, only: str | None = None,
) -> dict[tuple[str, str], Figures]:  # fmt: skip
    """The figures of every kind of source on every instrument; ``told`` takes each piece's
    name when it is its turn."""
    out: dict[tuple[str, str], Figures] = {}
    for kind, name, piece in sources(studies, corpus, only):
        if told is not None:
            told(f"{kind}: {name}")
        for wood in instruments:
            into = out.setdefault((kind, wood), Figures())
            on = find_instrument(wood)
            measure(into, name, shortened(piece, bars), on, MEDIUM)
            if ranked and kind == "guitar studies" and wood != "guitar":
                first = by_key(candidate_keys(piece, on, MEDIUM))[:3]
                into.ranked += 1
                into.fourth += 5 in [c.transposition for c in first]
    return out


def table(found: dict[tuple[str, str], Figures]) -> list[str]:
    """The figures as rows in Markdown."""

    def share(part: int, whole: int) -> str:
        return f"{100 * part / whole:.1f}" if whole else "-"

    rows = [
        "| source | instrument | pieces | tune kept % | unsaid | on top % | above fret 7 % | "
        "nowhere lower % | above ceiling | wide grips % | bass over | not played | faults | "
        "fourth up in first 3 |",
        "| --- | --- |" + " ---: |" * 12,
    ]
    for (kind, wood), f in sorted(found.items()):
        rows.append(
            f"| {kind} | {wood} | {f.pieces} | {share(f.tune_kept, f.tune)} | "
            f"{f.unsaid} | "
            f"{share(f.on_top, f.tune_kept)} | {share(f.high, f.notes)} | "
            f"{share(f.nowhere_lower, f.notes)} | {f.above} | "
            f"{share(f.wide, f.grips)} | {f.bass_over} of {f.bass} | {f.unplayed} of {f.notes} | "
            f"{len(f.faults)} | {f'{f.fourth} of {f.ranked}' if f.ranked else '-'} |"
        )
    return rows


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--studies", type=int, default=43)
    parser.add_argument("--corpus", type=int, default=100)
    parser.add_argument("--bars", type=int, default=16)
    parser.add_argument("--no-ranking", action="store_true")
    parser.add_argument("--kind", choices=("guitar studies", *(kind for kind, _, _ in CORPUS)))
    options = parser.parse_args()
    found = gather(
        options.studies, options.corpus, options.bars, ranked=not options.no_ranking,
        told=lambda words: print(words, file=sys.stderr, flush=True),
        only=options.kind,
    )  # fmt: skip
    print("\n".join(table(found)))
    for (kind, wood), f in sorted(found.items()):
        for line in (*f.faults[:5], *sorted(set(f.where))[:8]):
            print(f"  {kind}, {wood}: {line}")


if __name__ == "__main__":
    main()
