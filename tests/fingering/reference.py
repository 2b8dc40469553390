"""The declared cost of the left hand said again, one step at a time, in plain Python.

Nothing here comes from the lattice, its states or its terms: places, fingers,
what stays down, every term and the sum over all sequences are stated anew from
the rules as a player would word them, so that the engine can be held to them.
Only for small music: ``brute_force`` walks through every sequence there is.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from fractions import Fraction
from itertools import combinations, product
from math import ceil, floor, hypot, prod

from tests.fingering.reference_score import Jump, Score
from workbench.fingering.types import Pin
from workbench.instrument.model import Hand, Instrument
from workbench.music.model import Note

NEAR = 4  # semitones that a melody may move and still belong on neighbouring strings
Q_HALF = Fraction(1, 2)
LONGEST_CUT = 32  # sixteenths
WEAKNESS = (0, 0, 1, 2)
Finger = tuple[int, int, int]  # fret, first string, last string; fret 0: lifted
UP: Finger = (0, 0, 0)
Places = tuple[tuple[int, int, int], ...]  # (string, fret, finger) of the beginning notes


@dataclass(frozen=True)
class Left:
    """The left hand after a moment: fingers 1-4, the note ringing on each string
    (string 1 first), and its position in half frets (0: nowhere yet)."""

    fingers: tuple[Finger, Finger, Finger, Finger]
    ring: tuple[str | None, ...]
    place: int


Way = tuple[Left, dict[str, int]]


class Player:
    """One left hand on one instrument, with the weights of its effort."""

    def __init__(self, instrument: Instrument, hand: Hand, weights: dict[str, int]) -> None:
        self.instrument, self.weights = instrument, weights
        a, b, c = hand.comfort_12, hand.comfort_14, hand.comfort_24
        self.easy = self._pairs(a, b, c)
        most = self._pairs(hand.max_12, hand.max_14, hand.max_24)
        inner = {
            (1, 3): (hand.max_12 + 2 * hand.max_14) / 3,
            (2, 3): hand.max_24 * 0.787,
            (3, 4): hand.max_24 * 0.79,
        }
        self.most = {**most, **{k: round(v) for k, v in inner.items()}}

    @staticmethod
    def _pairs(one_two: float, one_four: float, two_four: float) -> dict[tuple[int, int], int]:
        mm = {
            (1, 2): one_two,
            (1, 3): (one_two + one_four) / 2,
            (1, 4): one_four,
            (2, 3): two_four * 2 / 3,
            (2, 4): two_four,
            (3, 4): two_four * 3 / 4,
        }
        return {k: round(v) for k, v in mm.items()}

    # -- millimetres -----------------------------------------------------------

    def wire(self, fret: float) -> float:
        return self.instrument.sounding_scale_mm * (1 - 2 ** (-fret / 12))

    def tip(self, fret: int) -> float:
        """Where a finger presses: 6 mm behind the fret, or midway where that is nearer."""
        return self.wire(fret) - min(6.0, (self.wire(fret) - self.wire(fret - 1)) / 2)

    def span(self, a: Finger, b: Finger) -> int:
        across = self.strings_between(a, b) * self.instrument.spacing_mm / 2  # fingers bend
        return round(hypot(self.tip(a[0]) - self.tip(b[0]), across))

    @staticmethod
    def strings_between(a: Finger, b: Finger) -> int:
        return max(0, a[1] - b[2], b[1] - a[2])

    def stands(self, fingers: tuple[Finger, ...], limit: dict[tuple[int, int], int]) -> bool:
        """Whether the fingers are in order, none in another's place, no pair beyond its limit."""
        for (f, g), most in limit.items():
            a, b = fingers[f - 1], fingers[g - 1]
            if not a[0] or not b[0]:
                continue
            if a[0] > b[0] or self.span(a, b) > most:
                return False
            if a[0] == b[0] and not (a[2] < b[1] or b[2] < a[1]):
                return False
        return True

    # -- ways to stop notes ------------------------------------------------------

    def grips(self, notes: tuple[Note, ...], pins: dict[str, Pin]) -> list[Places]:
        """Every (string, fret, finger) for notes that begin together."""
        each = []
        for n in notes:
            some = []
            for string, open_note in enumerate(self.instrument.open_midi, 1):
                fret = n.midi - open_note
                if 0 <= fret <= self.instrument.playable_frets:
                    some += [(string, fret, f) for f in ((0,) if fret == 0 else (1, 2, 3, 4))]
            p = pins.get(n.id)
            if p:
                asked = (p.string, p.fret, p.left)
                some = [s for s in some if all(w in (None, x) for w, x in zip(asked, s))]  # noqa: B905
            each.append(some)
        return [p for p in product(*each) if self._holds(p)]

    def _holds(self, places: Places) -> bool:
        if len({s for s, _, _ in places}) < len(places):
            return False
        sounded = {s for s, _, _ in places}
        for finger in (1, 2, 3, 4):
            mine = [(s, r) for s, r, f in places if f == finger]
            if len({r for _, r in mine}) > 1:
                return False
            if finger > 1 and mine:  # only finger 1 may lie over strings that are silent
                strings = [s for s, _ in mine]
                if any(s not in sounded for s in range(min(strings), max(strings))):
                    return False
        fingers = self.laid(places)
        for fret, low, high in fingers:
            if fret and any(low <= s <= high and r < fret for s, r, _ in places):
                return False
        return self.stands(fingers, self.most)

    @staticmethod
    def laid(places: Places) -> tuple[Finger, Finger, Finger, Finger]:
        """The fingers that places ask for."""
        out = []
        for finger in (1, 2, 3, 4):
            mine = [(s, r) for s, r, f in places if f == finger]
            strings = [s for s, _ in mine]
            out.append((mine[0][1], min(strings), max(strings)) if mine else UP)
        return (out[0], out[1], out[2], out[3])

    # -- one step ------------------------------------------------------------------

    def steps(
        self, old: Left, places: Places, score: Score, t: int, jump: Jump | None = None
    ) -> list[Way]:
        """All ways from a hand to the next places: the hand after, and the terms.

        A finger that may stay does stay (its note goes on, or returns soon); where
        the hand could not stand so, or not in comfort, any finger may be lifted.
        At a jump nothing stays.
        """
        time = jump.time if jump else score.moments[t].time
        asked = self.laid(places)
        played = {s: r for s, r, _ in places}
        stopper = [self._stopper(old, s) for s in range(1, self.instrument.strings + 1)]
        goes_on = [n if score.rings_on(n, time) else None for n in old.ring]
        if jump:
            goes_on = [None] * len(goes_on)
        may: set[int] = set()
        holding = {f for f, n in zip(stopper, goes_on, strict=True) if f and n}
        soon = set() if jump else score.soon(t)
        lasting = holding | {
            f for f, n in zip(stopper, old.ring, strict=True) if f and score.sounds_up_to(n, time)
        }
        for f in (1, 2, 3, 4):
            fret, low, high = old.fingers[f - 1]
            if not fret:
                continue
            returns = low == high and self.instrument.open_midi[low - 1] + fret in soon
            if asked[f - 1][0]:
                if f == 1 and f in lasting and asked[0][0] == fret:
                    _, low, high = _union(old.fingers[0], asked[0])
                else:
                    continue
            elif f not in holding and not returns:
                continue
            if not any(low <= s <= high and r < fret for s, r in played.items()):
                may.add(f)
        out: list[Way] = []
        todo, seen = [frozenset() if jump else frozenset(may)], set()
        while todo:
            stay = todo.pop()
            if stay in seen:
                continue
            seen.add(stay)
            fingers = self._after(old, asked, stay)
            if jump or self.stands(fingers, self.most):
                out.append(
                    self._way(old, asked, played, places, stay, fingers, stopper, goes_on,
                              holding, score, time, t, bool(jump and jump.rest_first),
                              jump.source if jump else score.moments[t].parent, bool(jump))
                )  # fmt: skip
            if not jump and not self.stands(fingers, self.easy):
                todo += [stay - {f} for f in stay]
            elif 1 in stay and asked[0][0] and 1 not in holding:
                todo.append(stay - {1})  # it may hop as well
        own = self.habits(places)
        return [(after, {**terms, **own}) for after, terms in out]

    def habits(self, places: Places) -> dict[str, int]:
        """How often the notes stopped now show each habit that has a weight."""
        stopped = [p for p in places if p[1] > 0]
        out = {}
        for name in (n for n, w in self.weights.items() if n.startswith("habit") and w):
            _, who, what, amount, *more = name.split()
            if what == "string":
                many = sum((s, f) == (int(amount), int(who)) for s, _, f in stopped)
            elif what == "fret":
                same = {10: range(10, 40), 7: range(7, 10)}.get(int(amount), (int(amount),))
                many = sum(r in same and f == int(who) for _, r, f in stopped)
            else:
                a, b = (int(x) for x in who.split("-"))
                lie = (int(amount), int(more[1]))
                many = sum(
                    (min(3, q - r), max(-2, min(2, t - s))) == lie
                    for s, r, f in stopped
                    for t, q, g in stopped
                    if (f, g) == (a, b)
                )
            if many:
                out[name] = many
        return out

    def _stopper(self, hand: Left, string: int) -> int:
        """The finger that decides a string's pitch: the highest fret laid on it. 0: open."""
        on = [(r, -f) for f, (r, a, b) in enumerate(hand.fingers, 1) if r and a <= string <= b]
        return -max(on)[1] if on else 0

    @staticmethod
    def _after(
        old: Left, asked: tuple[Finger, ...], stay: frozenset[int]
    ) -> tuple[Finger, Finger, Finger, Finger]:
        out = []
        for f in (1, 2, 3, 4):
            if asked[f - 1][0]:
                wide = f == 1 and 1 in stay
                out.append(_union(old.fingers[0], asked[0]) if wide else asked[f - 1])
            else:
                out.append(old.fingers[f - 1] if f in stay else UP)
        return (out[0], out[1], out[2], out[3])

    def _way(
        self,
        old: Left,
        asked: tuple[Finger, ...],
        played: dict[int, int],
        places: Places,
        stay: frozenset[int],
        fingers: tuple[Finger, Finger, Finger, Finger],
        stopper: list[int],
        goes_on: list[str | None],
        holding: set[int],
        score: Score,
        time: Fraction,
        t: int,
        quiet: bool,
        came: int,
        jumped: bool,
    ) -> Way:
        notes = score.moments[t].notes
        ring: list[str | None] = [None] * self.instrument.strings
        for n, (string, _, _) in zip(notes, places, strict=True):
            ring[string - 1] = n.id
        lost = cut = faded = taken = 0
        for string, note in enumerate(goes_on, 1):
            if note is None:
                continue
            f = stopper[string - 1]
            laid = [x for x in fingers if x[0] and x[1] <= string <= x[2]]
            pitch_kept = all(x[0] <= old.fingers[f - 1][0] for x in laid) if f else not laid
            if string not in played and pitch_kept and (f == 0 or f in stay):
                ring[string - 1] = note
            elif score.left_over(note, time) > 0:
                lost += min(LONGEST_CUT, ceil(score.left_over(note, time) * 4))
                cut += 1
            elif string in played:
                taken += 1
            else:
                faded += 1
        says = [x[0] - f + 1 for f, x in enumerate(fingers, 1) if x[0]]
        # the middle of what the fingers say, in half frets, halves rounded up
        place = max(2, floor(Fraction(2 * sum(says), len(says)) + Q_HALF)) if says else old.place
        after = Left(fingers, tuple(ring), place)

        new: list[int] = []  # fingers that stop a note which they did not stop already
        put: list[int] = []  # of these, the ones that come through the air
        guided: list[int] = []
        for f in (1, 2, 3, 4):
            was, now = old.fingers[f - 1], asked[f - 1]
            if not now[0]:
                continue
            touch = was[0] > 0 and was[1] <= now[2] and now[1] <= was[2]
            if (touch and was[0] == now[0]) or (f == 1 and 1 in stay):
                continue
            new.append(f)
            (guided if touch else put).append(f)
        rolled = 1 in stay and asked[0][0] > 0 and fingers[0] != old.fingers[0]
        ringing_up_to = {
            f
            for f, n in zip(stopper, old.ring, strict=True)
            if f and not quiet and score.sounds_up_to(n, time)
        }
        way = apart = 0
        if old.place and place:
            way = round(abs(self.wire(place / 2) - self.wire(old.place / 2)))
            apart = abs(place - old.place)
        opens = set(self.instrument.open_midi)
        lowest = min((asked[f - 1][0] for f in new), default=99)
        wider = [
            f
            for f in (1, 2, 3, 4)
            if asked[f - 1][0]
            and f not in new
            and old.fingers[f - 1][0]
            and _wider(fingers[f - 1], old.fingers[f - 1])
        ]
        come = {*new, *wider}
        keeping = {f for f in stay if f in holding}
        at_work = {f: fingers[f - 1] for f in (1, 2, 3, 4) if asked[f - 1][0] or f in keeping}
        skipped = 0
        tune_before = [n for n in score.moments[came].notes if n.voice == 1] if came >= 0 else []
        tune_now = [(n, p[0]) for n, p in zip(notes, places, strict=True) if n.voice == 1]
        if tune_before and tune_now and abs(tune_before[0].midi - tune_now[0][0].midi) <= NEAR:
            left_string = old.ring.index(tune_before[0].id) + 1
            skipped = max(0, abs(left_string - tune_now[0][1]) - 1)
        led = bool(guided)
        busy = bool(ringing_up_to)
        moved = apart >= 4
        chords = score.broken
        long_notes = all(n.duration >= Q_HALF for n in notes)
        higher = sum(
            sorted(self.instrument.places(n.midi), key=lambda x: x[1]).index((string, fret))
            for n, (string, fret, _) in zip(notes, places, strict=True)
        )
        terms = {
            **self.holding(at_work, come),
            "place": len(put),
            **(self._among(asked, played) if come else {}),
            "hinge": int(rolled),
            "high": sum(max(0, asked[f - 1][0] - 4) for f in new),
            "hop": sum(
                f in ringing_up_to and asked[f - 1][0] != old.fingers[f - 1][0] for f in put
            ),
            "hop_across": sum(
                f in ringing_up_to and asked[f - 1][0] == old.fingers[f - 1][0] for f in put
            ),
            "swap": sum(
                g != f
                and old.fingers[g - 1][0] == asked[f - 1][0]
                and _overlap(old.fingers[g - 1], asked[f - 1])
                for f in new
                for g in (1, 2, 3, 4)
            ),
            "slide": sum(f in ringing_up_to for f in guided),
            "guide": sum(
                abs(round(self.tip(asked[f - 1][0])) - round(self.tip(old.fingers[f - 1][0])))
                for f in guided
            ),
            "led_by_4": int(4 in guided),
            "lean": apart if busy and not moved and not led and not keeping else 0,
            "free_lean": apart if not busy and not moved and not led and not keeping else 0,
            "whole_lean": int(apart == 2),
            "move": int(moved and busy),
            "blind": int(moved and not led),
            "shift": way if busy else 0,
            "free_shift": 0 if busy else way,
            "free_shift_tune": 0 if busy or chords else way,
            "far_held": sum(WEAKNESS[f - 1] * (fingers[f - 1][1] - 1) for f in come)
            if long_notes
            else 0,
            "cut": lost,
            "cuts": cut,
            "faded": faded,
            "taken": taken,
            "taken_broken": taken if chords else 0,
            "blocked": sum(4 - f for f in keeping if fingers[f - 1][0] > lowest),
            "relaxed": int(
                fingers[0][0] > 0
                and fingers[1][0] == fingers[0][0] + 1
                and not fingers[2][0]
                and bool(asked[0][0] or asked[1][0])
            ),
            "open_only": int(not any(r for _, r, _ in places)),
            "unsteady": sum(
                r > 0 and n.midi in opens for n, (_, r, _) in zip(notes, places, strict=True)
            ),
            "leap": skipped,
            "position": len(new) if place > 3 else 0,
            "middle": int(bool(come) and 6 < place <= 12),
            "inverted": sum(
                a.midi > b.midi
                and self.instrument.open_midi[p[0] - 1] < self.instrument.open_midi[q[0] - 1]
                for a, p in zip(notes, places, strict=True)
                for b, q in zip(notes, places, strict=True)
            ),
            "displaced": higher,
            "displaced_held": higher if long_notes else 0,
            "arched": sum(
                high > low and f not in come and any(p[1] == 0 and p[0] < low for p in places)
                for f, (_, low, high) in at_work.items()
            ),
            "slur": 0 if jumped else self._slurs(old, places, stopper, notes, score),
        }  # fmt: skip
        return after, {k: v for k, v in terms.items() if v}

    @staticmethod
    def _slurs(
        old: Left,
        places: Places,
        stopper: list[int],
        notes: tuple[Note, ...],
        score: Score,
    ) -> int:
        """3 for a slur across strings, 1 where no higher finger rises or no lower one falls."""
        out = 0
        for n, (string, fret, finger) in zip(notes, places, strict=True):
            before = score.slurred.get(n.id)
            if before is None or before not in old.ring:
                continue
            came_from = old.ring.index(before) + 1
            f = stopper[came_from - 1]
            was = old.fingers[f - 1][0] if f else 0
            if came_from != string:
                out += 3
            elif fret > was:
                out += f > 0 and finger <= f
            else:
                out += finger > 0 and finger >= f
        return out

    @staticmethod
    def _among(asked: tuple[Finger, ...], played: dict[int, int]) -> dict[str, int]:
        """What barres and the nut make of the strings that sound with the fingers."""
        open_strings = [s for s, r in played.items() if r == 0]
        down = {f: x for f, x in enumerate(asked, 1) if x[0]}
        count: Counter[str] = Counter()
        for f, (fret, low, high) in down.items():
            if high == low:
                continue
            count["barre_open"] += bool(open_strings)
            count["barre_arched"] += any(s < low for s in open_strings)
            count["barre_inner"] += low > 1 and (f > 1 or any(s < low for s in played))
            count["beneath"] += sum(played.get(s) != fret for s in range(low, high + 1))
            count["over_silent"] += sum(s not in played for s in range(low, high + 1))
        if open_strings and down and all(x[0] <= 3 for x in down.values()):
            count["nut_out"] = min(abs(x[0] - f) for f, x in down.items())
            count["nut_below"] = sum(max(0, f - x[0]) for f, x in down.items())
        count["crowded"] = int(len(down) > len({x[0] for x in down.values()}))
        count["lone"] = int(len(down) == 1 and all(f not in (1, x[0]) for f, x in down.items()))
        return dict(count)

    def holding(self, hand: dict[int, Finger], come: set[int]) -> dict[str, int]:
        """What it costs that the fingers ``come`` have joined the others of a hand."""
        count: Counter[str] = Counter()
        for f in come:
            fret, low, high = hand[f]
            back = 12 * max(0, f - fret) // fret**2
            laid = high > low
            count["third"] += f == 3
            count["fourth"] += f == 4
            count["third_treble"] += f == 3 and low <= 2 and fret >= 3
            count["fourth_bass"] += f == 4 and low >= 4
            count["second_treble"] += max(0, 3 - low) if f == 2 else 0
            count["third_first"] += f == 3 and low == 1
            count["fourth_inner"] += f == 4 and low in (3, 4)
            count["fourth_up"] += f == 4 and fret >= 5
            count["first_bass"] += f == 1 and low >= 4 and not laid
            count["second_on_3"] += f == 2 and fret == 3
            count["cramped"] += back if f < 4 else 0
            count["cramped_4"] += back if f == 4 else 0
            count["far"] += WEAKNESS[f - 1] * (low - 1)
            for name, finger in (("barre", 1), ("barre_2", 2), ("barre_3", 3), ("barre_4", 4)):
                count[name] += laid and f == finger
            count["barre_width"] += max(0, high - low - 1)
            count["barre_wide"] += high - low > 1 and f > 1
            count["wide_4"] += high - low > 1 and f == 4
        for f, g in combinations(sorted(hand), 2):
            if f not in come and g not in come:
                continue
            a, b = hand[f], hand[g]
            side = (b[1] + b[2]) - (a[1] + a[2])  # half strings towards the bass
            up = b[0] - a[0]
            over = max(0, self.span(a, b) - self.easy[f, g])
            count["crossed"] += up == 0 and side > 0
            count["against_slant"] += max(0, side) if up > 0 else 0
            count["twisted"] += up > 0 and side > 0 and g == f + 1
            count["level"] += up == 0 and f == 1 and g < 4
            tips = a[1] == a[2], b[1] == b[2]
            count["apart_24"] += up == 0 and (f, g) == (2, 4) and all(tips)
            count["weak_pair"] += b[1] == 1 and (f, g) == (3, 4) and all(tips)
            count["third_by_barre"] += tips == (False, True) and (f, g) == (1, 3) and b[1] == 1
            count["fourth_by_barre"] += up == 1 and (f, g) == (1, 4) and not tips[0]
            count["stretch"] += over
            count["beyond"] += over > 0
            if any(f < h < g for h in hand):
                continue
            wide = max(0, up - (g - f))
            count["shared_far"] += max(0, abs(side) - 2) if up == 0 else 0
            count["skipped" if tips[0] else "skipped_by_barre"] += max(0, g - f - max(1, up))
            name = {(1, 2): "spread_12", (2, 3): "spread_23", (3, 4): "spread_34"}
            count[name.get((f, g), "spread_outer")] += wide
            count["spread_to_barre"] += wide > 0 and b[2] > b[1]
        return dict(count)

    def price(self, terms: dict[str, int]) -> int:
        return sum(self.weights[k] * v for k, v in terms.items())


def _wider(now: Finger, was: Finger) -> bool:
    return now[1] < was[1] or now[2] > was[2]


def _overlap(a: Finger, b: Finger) -> bool:
    return a[1] <= b[2] and b[1] <= a[2]


def _union(a: Finger, b: Finger) -> Finger:
    return (b[0], min(a[1], b[1]), max(a[2], b[2]))


def nowhere(instrument: Instrument) -> Left:
    """The hand before the piece."""
    return Left((UP, UP, UP, UP), (None,) * instrument.strings, 0)


def size(score: Score, player: Player, pins: dict[str, Pin]) -> int:
    """How many sequences of grips there are."""
    return prod(len(player.grips(m.notes, pins)) for m in score.moments)


def brute_force(score: Score, player: Player, pins: dict[str, Pin]) -> int:
    """The least cost over all sequences of grips and all choices of what stays, with jumps."""
    grips = [player.grips(m.notes, pins) for m in score.moments]
    known: dict[object, list[tuple[Left, int]]] = {}

    def ways(old: Left, places: Places, t: int) -> list[tuple[Left, int]]:
        key = (old, places, t)
        if key not in known:
            known[key] = [(h, player.price(x)) for h, x in player.steps(old, places, score, t)]
        return known[key]

    def go(t: int, hands: list[Left], chosen: list[Places], spent: int) -> int:
        if t == len(score.moments):
            return spent + sum(
                player.price(jump_terms(player, score, j, hands[j.source], chosen[j.target]))
                for j in score.jumps
            )
        up = score.moments[t].parent
        old = hands[up] if up >= 0 else nowhere(player.instrument)
        return min(
            go(t + 1, [*hands, hand], [*chosen, places], spent + price)
            for places in grips[t]
            for hand, price in ways(old, places, t)
        )

    return go(0, [], [], 0)


def jump_terms(
    player: Player, score: Score, jump: Jump, hand: Left, places: Places
) -> dict[str, int]:
    """The terms of a jump of the playing order; a rest at its far end gives the hand time."""
    ((_, terms),) = player.steps(hand, places, score, jump.target, jump)
    return terms
