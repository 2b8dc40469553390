"""The cheapest arrangement of a piece, moment by moment.

A state is what sounds on which string, where the hand stands and in which
octave the bass runs; a step strikes the next sounds in one of their ways and
says what of the old goes on sounding. A phrase of the tune keeps one octave,
so there is one table of states for each; at the joins of phrases the tables
meet. States are dropped only where a cheaper one can do all they could, or,
beyond ``width``, as the dearest: then ``proved`` is False.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from typing import Any

from workbench.arranging.decisions import GONE, Decision, Decisions
from workbench.arranging.options import UNHEARD, HeardSound, Option, Options
from workbench.arranging.sounds import BASS, OTHER, TUNE, Texture
from workbench.arranging.weights import CUT_MOST, EASY_FRET, SHIFT_MOST, Wishes
from workbench.instrument.table import HANDS, INSTRUMENTS

# Share of a phrase's tune that may leave its line for the phrase to lie in another octave
# (our judgement, no source)
PHRASE_LOST = 0.2
# Share of the sounds, and of the moments, that music written for the instrument may lack on it
# (of 43 published guitar studies none has more than 0.012 on the guitar, of chorales and
# quartets half have more)
STAYS_LOST = 0.02
Held = tuple[tuple[int, int] | None, ...]  # (sound, fret) on each string from string 1
_Table = dict[tuple[Held, int, int | None], tuple[int, Any]]


@dataclass(frozen=True)
class Effort:
    """How wide the search looks: states kept at a moment, ways tried of a moment."""

    width: int
    ways: int


QUICK = Effort(5, 10)
THOROUGH = Effort(60, 80)
EXACT = Effort(1 << 30, 1 << 30)


@dataclass(frozen=True)
class Laid:
    """An arrangement: for every sound the octaves it goes up beyond the whole piece (None:
    left out), its (string, fret), and the moment at which it is cut (None: never); the
    tune's octave for every phrase; the cost by ``terms`` declared, and whether it is
    proved least. ``excess`` holds millimetres beyond comfort by moment."""

    octaves: tuple[int | None, ...]
    places: tuple[tuple[int, int] | None, ...]
    cuts: tuple[int | None, ...]
    phrase_octaves: tuple[int, ...]
    cost: int
    proved: bool
    excess: tuple[int, ...]


def _place(one: Decision) -> int | str | None:
    return GONE if one.gone else one.octaves


def _pins(place: int | str | None) -> bool:
    return place is not None


class Search:
    """The search for one texture on one instrument."""

    def __init__(self, texture: Texture, options: Options, wanted: Decisions | None = None) -> None:
        """``wanted`` holds the teacher's decisions by note id."""
        self.texture, self.options = texture, options
        decided = [
            [wanted[n.id] for n in s.notes if n.id in wanted] if wanted else []
            for s in texture.sounds
        ]
        self.wanted = [next(filter(_pins, map(_place, d)), None) for d in decided]
        self.whole = {i for i, d in enumerate(decided) if any(one.whole for one in d)}
        self.weights = options.weights
        self.shift = options.shapes.shift
        self.tuning = options.instrument.open_midi
        self._cut: dict[tuple[int, int], int] = {}
        self.stays = self._stays()

    def lay(
        self,
        semitones: int,
        effort: Effort = THOROUGH,
        *,
        most: int | None = None,
        tick: Callable[[int], None] | None = None,
    ) -> Laid | None:
        """The piece moved by ``semitones``; ``tick(moment)`` is told of each moment. None as
        soon as it is clear that it costs more than ``most``."""
        texture = self.texture
        start: Held = (None,) * len(self.tuning)
        tables: dict[int, _Table] = {0: {(start, 0, None): (0, None)}}
        choices = self.phrase_choices(semitones)
        proved, before = True, -1
        for m in range(len(texture.moments)):
            number = texture.phrase[m]
            if number != before:
                tables = self._join(tables, choices[number], number, first=before < 0)
                before = number
            grown: dict[int, _Table] = {}
            for octave, table in tables.items():
                ways, all_ways = self.options.ways(self.heard(m, semitones, octave))
                if len(ways) > effort.ways:
                    ways, all_ways = ways[: effort.ways], False
                grown[octave] = self._step(m, table, ways, octave)
                grown[octave], whole = self._kept(grown[octave], m, effort.width)
                proved = proved and whole and all_ways
            tables = grown
            if most is not None and all(v[0] > most for t in tables.values() for v in t.values()):
                return None
            if tick is not None:
                tick(m)
        best = min((v for t in tables.values() for v in t.values()), key=lambda v: v[0])
        return self._told(best, proved)

    def _stays(self) -> frozenset[int]:
        """The sounds that stay as written while the piece does: where it is one player's music
        that lies on the instrument (hardly a pitch that it lacks, hardly a moment that no hand
        can stop), all at moments that a hand can stop; else none."""
        texture, where = self.texture, self.options.where
        if self.options.wishes.strict in ("easy", "sparse") or not texture.one_players:
            return frozenset()
        if sum(not where(s.midi) for s in texture.sounds) > STAYS_LOST * len(texture.sounds):
            return frozenset()
        known: dict[tuple[int, ...], bool] = {}
        stays: set[int] = set()
        missed = 0
        for struck in texture.struck:
            pitches = tuple(texture.sounds[i].midi for i in struck)
            if pitches not in known:
                heard = tuple(HeardSound(midi, OTHER, wanted=0) for midi in pitches)
                ways, _ = self.options.ways(heard)
                known[pitches] = any(None not in way.octaves for way in ways)
            if known[pitches]:
                stays |= set(struck)
            missed += not known[pitches]
        return frozenset(stays) if missed <= STAYS_LOST * len(texture.struck) else frozenset()

    @cached_property
    def shapes_kept(self) -> int | None:
        """The semitones that leave the shapes of the left hand as they are: where guitar music
        is laid on an instrument whose strings stand to each other as the guitar's upper ones
        do, octaves aside (a ukulele: a fourth up). None for any other."""
        mine, guitar = self.tuning, INSTRUMENTS["guitar"]
        up = mine[0] - guitar.open_midi[0]
        alike = 4 <= len(mine) < guitar.strings and all(
            (a - b - up) % 12 == 0 for a, b in zip(mine, guitar.open_midi, strict=False)
        )
        if not alike or not self.texture.one_players or self.texture.made:
            return None
        there = Search(self.texture, Options(guitar, HANDS["medium"], Wishes()))
        return up if there.stays else None

    def phrase_choices(self, semitones: int) -> list[list[int]]:
        """The octaves tried for the tune in every phrase: that of the piece wherever all of
        it is on the instrument and it lies well there; or else those as well that lose
        few of its notes, at most ``PHRASE_LOST`` of them or as few as any."""
        lines: list[list[int]] = []
        for m, number in enumerate(self.texture.phrase):
            while len(lines) <= number:
                lines.append([])
            lines[number] += [
                s.midi + semitones
                for s in (self.texture.sounds[i] for i in self.texture.struck[m])
                if s.role == TUNE
            ]
        if self.stays and not semitones:
            return [[0] for _ in lines]
        lost = [
            {o: sum(not self.options.where(p + 12 * o) for p in line) for o in (0, 1, -1, 2, -2)}
            for line in lines
        ]
        few = [
            max(min(row.values()), int(PHRASE_LOST * len(line)))
            for row, line in zip(lost, lines, strict=True)
        ]
        # all of it an octave lower is another move of the whole, not one of its phrases
        lower = all(row[-1] <= most for row, most in zip(lost, few, strict=True))
        out = []
        for line, row, most in zip(lines, lost, few, strict=True):
            near: tuple[int, ...] = (0,)
            if row[0] > most:
                near = tuple(row)
            elif row[0]:
                near = (0, 1, -1)
            elif not lower and self._high(line):
                near = (0, -1)
            out.append([o for o in near if row[o] <= most])
        return out

    def _high(self, line: list[int]) -> bool:
        """Whether a phrase lies so high that another octave is worth a try."""
        lowest = [min((fret for _, fret in self.options.where(p)), default=0) for p in line]
        high = sum(self.options.height(f, tune=True) for f in lowest if f > EASY_FRET)
        return high > self.weights["phrase_octave"] * len(line)

    def heard(self, m: int, semitones: int, octave: int) -> tuple[HeardSound, ...]:
        """The sounds struck at a moment as its ways are looked up."""
        out = []
        for i in self.texture.struck[m]:
            s = self.texture.sounds[i]
            wanted = self.wanted[i]
            if wanted is None and not semitones and i in self.stays:
                wanted = 0
            if s.role == TUNE:
                k = wanted - octave if isinstance(wanted, int) else wanted
                out.append(HeardSound(s.midi + semitones + 12 * octave, TUNE, wanted=k))
                continue
            ceiling = None if s.ceiling is None else s.ceiling + semitones + 12 * octave
            below = 99 if s.ceiling is None else s.ceiling - s.midi
            out.append(
                HeardSound(
                    s.midi + semitones,
                    s.role,
                    ceiling,
                    below if below in (0, 1) else 99,
                    s.strong and s.role == BASS,
                    wanted,
                    s.rest and ceiling is not None,
                )
            )
        return tuple(out)

    def _join(
        self, tables: dict[int, _Table], octaves: list[int], number: int, first: bool
    ) -> dict[int, _Table]:
        """The tables carried into the next phrase."""
        notes = sum(
            self.texture.sounds[i].role == TUNE
            for m, p in enumerate(self.texture.phrase)
            if p == number
            for i in self.texture.struck[m]
        ) if octaves != [0] else 0  # fmt: skip
        out: dict[int, _Table] = {}
        for octave in octaves:
            table: _Table = {}
            for was, old in tables.items():
                more = self.weights["phrase_octave"] * notes * abs(octave)
                if was != octave:
                    more += self.weights["phrase_join"]
                for key, (cost, node) in old.items():
                    if key not in table or cost + more < table[key][0]:
                        table[key] = cost + more, node
            out[octave] = table
        return out

    def cut_cost(self, sound: int, m: int) -> int:
        """What it costs to end a sound at moment ``m``."""
        key = sound, m
        if key not in self._cut:
            s = self.texture.sounds[sound]
            left = min(s.end - self.texture.moments[m], Fraction(CUT_MOST))
            term = "cut_tune" if s.role == TUNE else "cut_bass" if s.role == BASS else "cut_inner"
            self._cut[key] = UNHEARD if sound in self.whole else round(self.weights[term] * left)
        return self._cut[key]

    def over(self, held: int, fret: int, string: int, m: int, tune: int) -> bool:
        """Whether a held sound lies above the tune struck now, and did not in the source."""
        if tune < 0 or self.tuning[string] + fret <= tune:
            return False
        line = [
            self.texture.sounds[i].midi
            for i in self.texture.struck[m]
            if self.texture.sounds[i].role == TUNE
        ]
        return bool(line) and self.texture.sounds[held].midi <= max(line)

    def _step(self, m: int, table: _Table, ways: tuple[Option, ...], octave: int) -> _Table:
        w, until, struck = self.weights, self.texture.until, self.texture.struck[m]
        shift, ease = self.shift, self.options.shapes.ease
        leap, covered, per_mm = w["bass_leap"], w["tune_covered"], w["shift"]
        out: _Table = {}
        for (held, hand, bass), (before, node) in table.items():
            for way in ways:
                cost = before + way.cost
                if way.position >= 0 and hand != way.position:
                    if hand:
                        cost += min(SHIFT_MOST, per_mm * shift[hand][way.position])
                    stands = way.position
                else:
                    stands = hand
                runs = bass
                if way.bass is not None:
                    if bass is not None and bass != way.bass:
                        cost += leap
                    runs = way.bass
                taken = {s for s, _ in way.struck}
                left: list[tuple[int, int, int]] = []
                ended: list[int] = []
                for s, row in enumerate(held):
                    if row is None:
                        continue
                    if s + 1 in taken:
                        ended.append(row[0])
                        cost += self.cut_cost(row[0], m)
                    else:
                        left.append((s, row[0], row[1]))
                for gone, more in self._held(left, way, m, ease, covered):
                    total = cost + more
                    now: list[tuple[int, int] | None] = [None] * len(held)
                    for at, (s, sound, fret) in enumerate(left):
                        if not gone >> at & 1 and until[sound] > m + 1:
                            now[s] = sound, fret
                    for i, place in zip(struck, way.places, strict=True):
                        if place is not None and until[i] > m + 1:
                            now[place[0] - 1] = i, place[1]
                    key = tuple(now), stands, runs
                    if key not in out or total < out[key][0]:
                        cut = (*ended, *(left[a][1] for a in range(len(left)) if gone >> a & 1))
                        out[key] = total, (node, m, way, octave, cut)
        return out

    def _held(
        self, left: list[tuple[int, int, int]], way: Option, m: int, ease: Any, covered: int
    ) -> list[tuple[int, int]]:
        """What of the held sounds ends now (as bits), and the cost of each choice worth trying."""
        if not left:
            return [(0, 0)]
        found: list[tuple[int, int]] = []
        over = [self.over(sound, fret, s, m, way.tune) for s, sound, fret in left]
        for gone in range(1 << len(left)):
            more, places = 0, way.struck
            for at, (s, sound, fret) in enumerate(left):
                if gone >> at & 1:
                    more += self.cut_cost(sound, m)
                else:
                    places += ((s + 1, fret),)
                    more += covered if over[at] else 0
            got = ease(tuple(sorted(places)))
            if got is not None:
                extra = got.hold - way.hold
                found.append((gone, more + extra))
                if not gone and not more and not extra:
                    break  # to end a sound before it is in the way is never cheaper
        return found

    def _kept(self, table: _Table, m: int, width: int) -> tuple[_Table, bool]:
        """The states that no other makes needless, at most ``width`` of them."""
        rows = sorted(table.items(), key=lambda row: row[1][0])
        if not rows:
            return table, True
        (held, hand, bass), (least, _) = rows[0]
        # the most it costs the cheapest state to be free for whatever another goes on to do
        ends = {
            row: self.cut_cost(row[0], m + 1)
            for row in held
            if row is not None and m + 1 < len(self.texture.moments)
        }
        leap = self.weights["bass_leap"]
        kept: _Table = {}
        for key, value in rows:
            more = SHIFT_MOST if key[1] != hand else 0
            more += leap if key[2] != bass else 0
            for s, row in enumerate(held):
                if row is not None and row != key[0][s]:
                    more += ends.get(row, 0)
            if value[0] <= least + more:
                if len(kept) >= width:
                    return kept, False
                kept[key] = value
        return kept, True

    def _told(self, best: tuple[int, Any], proved: bool) -> Laid:
        texture = self.texture
        octaves: list[int | None] = [None] * len(texture.sounds)
        places: list[tuple[int, int] | None] = [None] * len(texture.sounds)
        cuts: list[int | None] = [None] * len(texture.sounds)
        phrases = [0] * (max(texture.phrase, default=-1) + 1)
        excess = [0] * len(texture.moments)
        cost, node = best
        while node is not None:
            node, m, way, octave, ended = node
            phrases[texture.phrase[m]] = octave
            excess[m] = way.excess
            for i, k, place in zip(texture.struck[m], way.octaves, way.places, strict=True):
                octaves[i], places[i] = k, place
                if k is not None and texture.sounds[i].role == TUNE:
                    octaves[i] = k + octave
            for sound in ended:
                cuts[sound] = m
        return Laid(
            tuple(octaves), tuple(places), tuple(cuts), tuple(phrases), cost, proved,
            tuple(excess),
        )  # fmt: skip
