"""Chords for a lead sheet's accompaniment that an instrument has under the tune.

For every group of strokes a few notes of its chord are chosen which the hand can hold together
with each note of the tune that sounds meanwhile: the bass first (the root, or else another note
of the chord, rather than none), then the third and the seventh. All groups of a piece are
chosen together, so that voices move little from one to the next.
"""

from __future__ import annotations

from bisect import insort
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from itertools import combinations, pairwise, product

from workbench.arranging.options import CLEAR, Options

Voicing = tuple[int, ...]  # MIDI numbers from the lowest, which the thumb plays; () is silence
Sung = tuple[Fraction, Fraction, int]  # start, end and MIDI number of a note of the tune

# Thousandths, in the unit of the declared terms (our judgement, no source)
BASS_FIFTH, BASS_OTHER = 400, 700  # the bass is the fifth, or another note, instead of the root
NO_THIRD, NO_SEVENTH = 500, 300  # neither the voicing nor the tune has it
DOUBLED, FEWER = 150, 500  # two of one name; a voice fewer than the letters ask for
DEEP, DEPTH, CLOSE = 48, 8, 4  # a bass lies near C3, the others near the tune, a semitone each
VOICE_MOVES = 10  # a semitone from one group to the next
NO_HAND = 3000  # the tune and the chord cannot be held together
WIDEST_BELOW = 19  # semitones from the tune down to the lowest inner note
BEST_OF_GROUP = 24  # so many voicings of a group are weighed with those before it


@dataclass(frozen=True)
class PatternStroke:
    """When it sounds, and which voices: 0 the thumb's, 1 and up the fingers'."""

    start: Fraction
    end: Fraction
    voices: tuple[int, ...]


@dataclass(frozen=True)
class PatternRound:
    """One round of the pattern under one chord. ``bass`` and ``chord`` are pitch classes, the
    chord's in the order in which they are wanted; ``tune`` is what sounds meanwhile;
    ``strong`` says that it begins a bar, ``again`` that the chord was there before."""

    start: Fraction
    end: Fraction
    strokes: tuple[PatternStroke, ...]
    bass: int
    chord: tuple[int, ...]
    tune: tuple[Sung, ...]
    strong: bool
    again: bool

    @cached_property
    def roofs(self) -> tuple[int, ...]:
        """The tune's MIDI number at the start of the group, then at that of each stroke."""
        starts = (self.start, *(s.start for s in self.strokes))
        return tuple(min((m for a, b, m in self.tune if a <= at < b), default=128) for at in starts)

    @cached_property
    def fingers(self) -> int:
        """How many voices the letters name beside the bass."""
        return max((v for s in self.strokes for v in s.voices), default=0)


def sounding_until(midi: int, start: Fraction, end: Fraction, tune: Sequence[Sung]) -> Fraction:
    """Until when a note may sound below the tune; its ``start`` where it may not at all."""
    for a, b, over in sorted(tune):
        if over <= midi and a < end and b > start:
            return max(a, start)
    return end


def voices_of(stroke: PatternStroke, voices: int) -> tuple[int, ...]:
    """The voices that a stroke sounds where the chord has so many beside the bass. A letter
    beyond them turns back, so that p i m a over two is p i m i and over one p i p i; of letters
    struck together those beyond are left out, and a bass alone is not struck by the fingers."""
    if len(stroke.voices) > 1 or voices < 1:
        return tuple(v for v in stroke.voices if v <= voices)
    return tuple(voices - abs(v % (2 * voices) - voices) for v in stroke.voices)


class Voicings:
    """The voicings of one instrument and hand."""

    def __init__(self, options: Options) -> None:
        self.options = options
        self._ease: dict[tuple[tuple[int, ...], int], int] = {}
        self._known: dict[object, list[tuple[int, Voicing]]] = {}

    def chosen(self, groups: Sequence[PatternRound], semitones: int) -> tuple[int, list[Voicing]]:
        """The cost of the groups moved by ``semitones``, and a voicing for each, in the pitch
        of the piece as it is."""
        rows: list[dict[Voicing, tuple[int, Voicing | None]]] = []
        for group in groups:
            before = rows[-1] if rows else {}
            row: dict[Voicing, tuple[int, Voicing | None]] = {}
            for cost, voicing in self._ways(group, semitones):
                best: tuple[int, Voicing | None] = (0, None)
                if before:
                    best = min(
                        (done + _moved(last, voicing, group.again), last)
                        for last, (done, _) in before.items()
                    )
                row[voicing] = cost + best[0], best[1]
            rows.append(row)
        if not rows:
            return 0, []
        total, at = min((cost, voicing) for voicing, (cost, _) in rows[-1].items())
        out = [at]
        for row in reversed(rows[1:]):
            last = row[out[-1]][1]
            assert last is not None
            out.append(last)
        return total, [tuple(m - semitones for m in v) for v in reversed(out)]

    def _ways(self, group: PatternRound, semitones: int) -> list[tuple[int, Voicing]]:
        """The cheapest voicings of a group, moved, with their costs."""
        key = (
            semitones, group.bass, group.chord, group.strong, group.end - group.start,
            tuple((s.start - group.start, s.end - group.start, s.voices) for s in group.strokes),
            tuple((a - group.start, b - group.start, m) for a, b, m in group.tune),
        )  # fmt: skip
        if key not in self._known:
            self._known[key] = self._best(group, semitones)
        return self._known[key]

    def _best(self, group: PatternRound, semitones: int) -> list[tuple[int, Voicing]]:
        sung = sorted({m + semitones for *_, m in group.tune})
        by_ear = [(self._cost(group, v, semitones), v) for v in self._all(group, semitones)]
        found: list[tuple[int, Voicing]] = []
        for cost, voicing in sorted(by_ear):
            if len(found) >= BEST_OF_GROUP and cost > found[-1][0]:
                break  # the hand only adds to what is lost to the ear
            held = sum(self._held(voicing, t) for t in sung) // max(1, len(sung))
            insort(found, (cost + held, voicing))
            del found[BEST_OF_GROUP:]
        return found

    def _all(self, group: PatternRound, semitones: int) -> Iterator[Voicing]:
        yield ()
        top = max((m for *_, m in group.tune), default=72) + semitones
        names = {(pc + semitones) % 12 for pc in group.chord}
        low = min(self.options.instrument.open_midi)
        there = [m for m in range(low, top) if m % 12 in names and self.options.where(m)]
        wanted = (group.bass + semitones) % 12
        basses = [m for m in range(low, top) if m % 12 == wanted and self.options.where(m)]
        if len(basses) < 2:  # none at all, or one that may not go with the tune
            basses = sorted({*basses, *there})
        most = min(group.fingers, self.options.instrument.strings - 2)
        for bass in basses:
            over = [m for m in there if m > bass and top - m <= WIDEST_BELOW]
            for size in range(most + 1):
                yield from ((bass, *rest) for rest in combinations(over, size))

    def _cost(self, group: PatternRound, voicing: Voicing, semitones: int) -> int:
        """What is missed, and how it sounds."""
        w = self.options.weights
        sung = sorted({m + semitones for *_, m in group.tune})
        total = 0
        missed = w["bass_out"] * 3 // 2 if group.strong else w["bass_out"]
        thumb = any(0 in s.voices for s in group.strokes)
        low, *roofs = (m + semitones for m in group.roofs)
        if thumb and not (voicing and voicing[0] < low):
            total += missed
        for stroke, roof in zip(group.strokes, roofs, strict=True):
            asked = len(set(stroke.voices) - {0})
            sounds = sum(
                voicing[v] < roof
                for v in voices_of(stroke, len(voicing) - 1)
                if voicing and (v or 0 not in stroke.voices)
            )
            total += w["inner_none"] * max(0, asked - sounds)
        if not voicing:
            return total
        away = (voicing[0] - semitones - group.bass) % 12
        total += 0 if not away else BASS_FIFTH if away == 7 else BASS_OTHER
        names = [m % 12 for m in voicing]
        heard = {*names, *(m % 12 for m in sung)}
        wanted = [(pc + semitones) % 12 for pc in group.chord]
        if group.fingers:
            total += NO_THIRD * (wanted[0] not in heard)
            total += NO_SEVENTH * (len(wanted) > 3 and wanted[1] not in heard)
        total += DOUBLED * (len(names) - len(set(names)))
        most = min(group.fingers, self.options.instrument.strings - 2)
        total += FEWER * (most + 1 - len(voicing))
        near = sung[0] if sung else 72
        total += DEPTH * abs(voicing[0] - DEEP) + CLOSE * sum(abs(near - m) for m in voicing[1:])
        close = sum(a < CLEAR.get(b - a, 0) for a, b in pairwise(voicing))
        return total + w["low_close"] * close + w["rub"] * sum(m + 1 in sung for m in voicing)

    def _held(self, voicing: Voicing, tune: int) -> int:
        """What the hand pays for a note of the tune over what sounds below it."""
        below = tuple(m for m in voicing if m < tune)
        key = below, tune
        if key not in self._ease:
            self._ease[key] = self._hand(below, tune)
        return self._ease[key]

    def _hand(self, below: Voicing, tune: int) -> int:
        options, w = self.options, self.options.weights
        if not options.where(tune):
            return NO_HAND
        best = NO_HAND + min(options.height(fret, tune=True) for _, fret in options.where(tune))
        for places in product(*(options.where(m) for m in (*below, tune))):
            if len({string for string, _ in places}) < len(places):
                continue
            ease = options.shapes.ease(tuple(sorted(places)))
            if ease is not None:
                high = sum(options.height(fret) for _, fret in places[:-1])
                high += options.height(places[-1][1], tune=True)
                best = min(best, ease.hold + w["finger"] * ease.fingers + high)
        return best


def _moved(one: Voicing, other: Voicing, again: bool) -> int:
    if not one or not other:
        return 0
    far = sum(abs(a - b) for a, b in zip(one[1:], other[1:], strict=False))
    return VOICE_MOVES * (far + (abs(one[0] - other[0]) if again else 0))
