"""What can be done with the sounds of one moment, and what each way costs.

For every sound: keep it, lay it in another octave, or leave it out; kept ones
get a string and a fret. The cost of a way is the sum of the declared terms
that concern this moment alone; what passes from one moment to the next
(shortening, shifts, the bass line) is added by the search.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from workbench.arranging.decisions import GONE
from workbench.arranging.shapes import Places, Prices, Shapes, shapes
from workbench.arranging.sounds import BASS, FIFTH, OTHER, ROOT, SEVENTH, THIRD, TUNE
from workbench.arranging.weights import EASY_FRET, FIRST_POSITION, Wishes, weights
from workbench.instrument.model import Hand, Instrument

OCTAVES = (0, 1, -1, 2, -2, 3, -3)
MOST_OCTAVES = 3  # so many octaves are tried for a note of the accompaniment
MARGIN = 2600  # ways so much dearer than the best are not tried in large chords
SMALL = 3  # up to so many sounds every way is tried
MOST_KEPT = 200
_OUT = {BASS: "bass_out", THIRD: "third_out", SEVENTH: "seventh_out", ROOT: "root_out",
        FIFTH: "fifth_out", OTHER: "other_out", TUNE: "tune_out"}  # fmt: skip
OUT = None
# The lowest MIDI number from which on two notes so many semitones apart sound clear (low interval
# limits as arrangers are taught them: common practice, no source).
CLEAR = {1: 52, 2: 51, 3: 48, 4: 46}
UNHEARD = 500_000  # what it costs to go against the teacher's word


@dataclass(frozen=True)
class HeardSound:
    """A sound as one moment sees it: ``midi`` after the whole piece has moved, its role, the
    MIDI number it must stay under (already in its phrase's octave; None: no limit), how
    far below the tune it was (for notes that rub), whether it begins a bar, the
    teacher's word on it: the octaves it goes up, ``GONE``, or None; and whether the tune is
    silent."""

    midi: int
    role: str
    ceiling: int | None = None
    below: int = 99
    strong: bool = False
    wanted: int | str | None = None
    rest: bool = False


@dataclass(frozen=True)
class Option:
    """One way to sound a moment. ``octaves[i]`` is how many octaves sound i goes up, None
    where it is left out; ``places[i]`` its (string, fret). ``struck`` holds the places by
    string, ``position`` the lowest stopped fret (-1: none), ``hold`` what the grip costs to
    hold, ``excess`` the millimetres beyond comfort, ``tune`` the MIDI number of the tune
    struck (-1: none)."""

    cost: int
    octaves: tuple[int | None, ...]
    places: tuple[tuple[int, int] | None, ...]
    struck: Places
    position: int
    hold: int
    excess: int
    bass: int | None
    tune: int


class Options:
    """The ways of moments on an instrument, kept from one call to the next."""

    def __init__(
        self, instrument: Instrument, hand: Hand, wishes: Wishes, small: int = SMALL
    ) -> None:
        """``small``: up to so many sounds at once every way is tried."""
        self.small = small
        self.instrument, self.wishes = instrument, wishes
        self.weights = weights(wishes.strict)
        prices = Prices(*(self.weights[term] for term in Prices._fields))
        self.shapes: Shapes = shapes(instrument, hand, prices)
        self.top = min(wishes.top_fret, instrument.playable_frets)
        self._known: dict[tuple[HeardSound, ...], tuple[tuple[Option, ...], bool]] = {}
        self._where: dict[int, tuple[tuple[int, int], ...]] = {}

    def where(self, midi: int) -> tuple[tuple[int, int], ...]:
        """The (string, fret) places of a pitch up to the highest fret wished for."""
        if midi not in self._where:
            self._where[midi] = tuple(p for p in self.instrument.places(midi) if p[1] <= self.top)
        return self._where[midi]

    def octaves(self, heard: HeardSound) -> list[tuple[int, int]]:
        """The octaves a sound may go up, with their costs, cheapest first."""
        w, m = self.weights, heard.midi
        if heard.wanted is not None:
            return [(int(heard.wanted), 0)] if heard.wanted != GONE else []
        there = [k for k in OCTAVES if self.where(m + 12 * k)]
        if heard.role == TUNE:
            if 0 in there:
                return [(0, 0)]
            return [(k, w["tune_octave"] * abs(k)) for k in there]
        line = "bass" if heard.role == BASS else "inner"
        stays = 0 in there
        found = []
        for k in there:
            cost, high = w[f"{line}_octave"] * abs(k), m + 12 * k
            if k and stays:
                cost += w[f"{line}_leaves"]
            if heard.ceiling is not None:
                if high > heard.ceiling or (high == heard.ceiling and heard.below):
                    free = heard.rest and not self._below(heard)
                    cost += w["above_rest" if free else "tune_covered"]
                elif high == heard.ceiling - 1 and heard.below != 1:
                    cost += w["rub"]
            found.append((k, cost))
        found.sort(key=lambda row: (row[1], -row[0]))
        return found[:MOST_OCTAVES]

    def out(self, heard: HeardSound) -> int:
        """What leaving a sound out costs where nothing doubles it."""
        if heard.wanted is not None:
            return 0 if heard.wanted == GONE else UNHEARD
        term = _OUT[heard.role]
        cost = self.weights[term]
        if heard.role != TUNE and heard.ceiling is not None and not self._below(heard):
            none = "bass_none" if heard.role == BASS else "inner_none"
            cost = min(cost, self.weights[none])
        return cost * 3 // 2 if heard.role == BASS and heard.strong else cost

    def _below(self, heard: HeardSound) -> bool:
        """Whether the instrument has the sound in an octave below the tune."""
        top = 128 if heard.ceiling is None else heard.ceiling
        return any(self.where(m) for k in OCTAVES if (m := heard.midi + 12 * k) < top)

    def height(self, fret: int, tune: bool = False) -> int:
        """What a stopped note costs by its fret alone."""
        w = self.weights
        high = w["high"] + (w["tune_high"] if tune else 0)
        return (
            w["fret"] * fret
            + w["up"] * max(0, fret - FIRST_POSITION)
            + high * max(0, fret - EASY_FRET)
        )

    def whole(
        self,
        heard: Sequence[HeardSound],
        octaves: Sequence[int | None],
        places: Sequence[tuple[int, int] | None],
    ) -> int | None:
        """The full cost of one way; None where no hand can stop it. For checks: the search
        below adds the same terms bit by bit."""
        w = self.weights
        kept = [i for i, k in enumerate(octaves) if k is not None]
        pcs = {heard[i].midi % 12 for i in kept}
        total = 0
        for i, h in enumerate(heard):
            k = octaves[i]
            if k is None:
                out = self.out(h)
                free = h.role not in (TUNE, BASS) and h.wanted is None
                total += min(out, w["double_out"]) if free and h.midi % 12 in pcs else out
            else:
                total += dict(self.octaves(h))[k]
        bass = [heard[i].midi + 12 * (octaves[i] or 0) for i in kept if heard[i].role == BASS]
        inner = [
            heard[i].midi + 12 * (octaves[i] or 0)
            for i in kept
            if heard[i].role not in (BASS, TUNE)
        ]
        if heard and not kept and any(h.wanted != GONE for h in heard):
            total += w["hole"]
        if bass:
            over = "bass_over" if self.instrument.reentrant else "bass_inside"
            total += w[over] * sum(m < bass[0] for m in inner)
        pitches = sorted(heard[i].midi + 12 * (octaves[i] or 0) for i in kept)
        total += w["low_close"] * sum(a < CLEAR.get(b - a, 0) for a, b in pairwise(pitches))
        struck = tuple(sorted(p for p in places if p is not None))
        ease = self.shapes.ease(struck)
        if ease is None:
            return None
        total += ease.hold + w["finger"] * ease.fingers
        return total + sum(
            self.height(p[1], h.role == TUNE) for h, p in zip(heard, places, strict=True) if p
        )

    def ways(self, heard: tuple[HeardSound, ...]) -> tuple[tuple[Option, ...], bool]:
        """All ways, cheapest first, and whether really all are among them."""
        found = self._known.get(heard)
        if found is None:
            found = self._known[heard] = self._ways(heard)
        return found

    def _ways(self, heard: tuple[HeardSound, ...]) -> tuple[tuple[Option, ...], bool]:
        order = sorted(range(len(heard)), key=lambda i: (_first(heard[i]), -heard[i].midi))
        choices = [self.octaves(heard[i]) for i in order]
        outs = [self._least_out(heard[i]) for i in order]
        least = [min([o, *(c for _, c in ks)]) for o, ks in zip(outs, choices, strict=True)]
        rest = [sum(least[n:]) for n in range(len(order) + 1)]
        full = len(heard) <= self.small
        found: list[Option] = []
        best = [1 << 60]
        octaves: list[int | None] = [OUT] * len(heard)
        places: list[tuple[int, int] | None] = [None] * len(heard)

        def go(n: int, cost: int, used: int, pitches: tuple[int, ...]) -> None:
            if not full and cost + rest[n] > best[0] + MARGIN:
                return
            if n == len(order):
                total = self.whole(heard, octaves, places)
                if total is not None:
                    best[0] = min(best[0], total)
                    found.append(self._option(heard, octaves, places, total))
                return
            i = order[n]
            for k, more in choices[n]:
                midi = heard[i].midi + 12 * k
                if midi in pitches:
                    continue
                for place in self.where(midi):
                    places[i] = None  # the last place tried is no neighbour of this one
                    if used >> place[0] & 1 or not self._near(place, places):
                        continue
                    octaves[i], places[i] = k, place
                    go(n + 1, cost + more + self.height(place[1], heard[i].role == TUNE),
                       used | 1 << place[0], (*pitches, midi))  # fmt: skip
            octaves[i], places[i] = OUT, None
            go(n + 1, cost + outs[n], used, pitches)

        go(0, 0, 0, ())
        found.sort(key=lambda o: (o.cost, o.struck))
        if not full:
            within = [o for o in found if o.cost <= best[0] + MARGIN]
            return tuple(within[:MOST_KEPT]), False
        return tuple(found), True

    def _least_out(self, heard: HeardSound) -> int:
        out = self.out(heard)
        if heard.role in (TUNE, BASS) or heard.wanted is not None:
            return out
        return min(out, self.weights["double_out"])

    def _near(self, place: tuple[int, int], places: Sequence[tuple[int, int] | None]) -> bool:
        at, fret = self.shapes.at, place[1]
        return not fret or all(
            p is None or not p[1] or abs(at[p[1]] - at[fret]) <= self.shapes.widest for p in places
        )

    def _option(
        self,
        heard: tuple[HeardSound, ...],
        octaves: Sequence[int | None],
        places: Sequence[tuple[int, int] | None],
        cost: int,
    ) -> Option:
        struck = tuple(sorted(p for p in places if p is not None))
        ease = self.shapes.ease(struck)
        assert ease is not None
        tune = [h.midi + 12 * k for h, k in zip(heard, octaves, strict=True)
                if h.role == TUNE and k is not None]  # fmt: skip
        bass = [k for h, k in zip(heard, octaves, strict=True) if h.role == BASS]
        return Option(
            cost,
            tuple(octaves),
            tuple(places),
            struck,
            min((f for _, f in struck if f), default=-1),
            ease.hold,
            ease.excess,
            bass[0] if bass else None,
            max(tune, default=-1),
        )


def _first(heard: HeardSound) -> int:
    return 0 if heard.role == TUNE else 1 if heard.role == BASS else 2
