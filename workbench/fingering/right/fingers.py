"""The right hand: p i m a for every plucked note, by a least-cost path.

The strings are given by the left hand. A state is what each finger plucks now
and which of i, m, a plucked last. Fingers never cross: from the highest-numbered
string to string 1 they run p, i, m, a. On a re-entrant tuning the string order
decides, not the pitch.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field, replace
from itertools import combinations
from typing import NamedTuple

from workbench.fingering.lattice.layers import Frame, LatticeLayer
from workbench.fingering.right.figures import BASS, ORDER, TUNE, Plucking, moments, thumbs
from workbench.fingering.types import STYLES, Pin, Style
from workbench.language.fact import Fact, fact

Hold = tuple[tuple[int, str], ...]  # (string, finger), highest-numbered string first


@dataclass(frozen=True)
class Plucker:
    """Who plucks: ``count`` strings of the instrument, ``tempo`` in quarters a minute, the
    ``weights`` of the right hand's terms and the ``style`` of its runs."""

    count: int
    tempo: float
    weights: dict[str, int]
    style: Style


class State(NamedTuple):
    """What each finger plucks now, and which of i, m, a plucked last and where."""

    hold: Hold
    last: str  # i, m or a that plucked last, "" before the first
    last_string: int


Rows = list[list[tuple[int, int]]]  # by state before: (state, cost)


@dataclass
class Memo:
    """Prices and steps known from earlier sweeps with the same weights and style."""

    prices: dict[tuple[State, State, Plucking], int] = field(default_factory=dict)
    layers: dict[object, tuple[list[State], Rows]] = field(default_factory=dict)


def holds(moment: Plucking, wanted: dict[int, str]) -> list[Hold]:
    """All assignments without crossing; the thumb takes what the fingers leave."""
    strings = [s for s, _ in moment.strings]
    n = len(strings)
    out: list[Hold] = []
    if n > 4:  # the thumb sweeps the lowest strings
        fingers = "p" * (n - 3) + "ima"
        out.append(tuple(zip(strings, fingers, strict=True)))
    else:
        for choice in combinations(ORDER, n):
            out.append(tuple(zip(strings, choice, strict=True)))
    if moment.strum:
        out.insert(0, tuple((s, moment.strum) for s in strings))
    kept = [h for h in out if all(wanted.get(s) in (None, f) for s, f in h)]
    if kept:
        return kept
    # the teacher's word may cross the fingers; then the rest follows in order
    free = iter([f for f in ORDER if f not in wanted.values()] * 2)
    return [tuple((s, wanted.get(s) or next(free)) for s in strings)]


def repeat(a: State, b: State, m: Plucking) -> int:
    """Quarters of a quick repetition: a finger that plucks twice running."""
    old = {f for _, f in a.hold}
    own = dict(m.home)
    size = len(b.hold)
    if size > 2 and len(a.hold) > 2:
        return 0  # chord after chord: every finger has its string
    gap = min(m.gap, 4) if size == len(a.hold) == 2 else m.gap  # two fingers move as one
    total = 0
    for i, (string, f) in enumerate(b.hold):
        top = i == size - 1
        if f in old:
            if f == "p" and own.get(string) == "p" and (string, f) not in a.hold:
                continue  # the thumb glides over its strings in a figure
            if f == "p":
                near = (string, f) in a.hold or (string + 1, f) in a.hold  # it glides
                total += m.thumb // 2 if near else m.thumb
            else:
                total += gap if top else max(1, gap // 4)
        elif f == a.last and top and len(m.home) < 3:
            total += 1
    return total


def bass(a: State, b: State, m: Plucking) -> int:
    """Bass notes without the thumb: the lower voice, and the lowest string of a chord where it
    is one of the thumb's and no bass struck before sounds on below it."""
    own = dict(m.home)
    out = 0
    for (string, part), (_, f) in zip(m.strings, b.hold, strict=True):
        out += part == BASS and f != "p" and own.get(string, "p") == "p"
    low = thumbs(m.strings[0][0], m.strings_in_all) and not m.over
    chord = len(m.strings) >= 3 and not m.home and low
    if chord and b.hold[0][1] != "p" and m.strings[0][1] != BASS:
        out += 1
    return out


def thumb_up(a: State, b: State, m: Plucking) -> int:
    """Halves of a melody note taken by the thumb: 2 on the strings near the floor, else 1."""
    out = 0
    for (string, part), (_, f) in zip(m.strings, b.hold, strict=True):
        if f == "p" and part == TUNE and len(m.strings) == 1 and not m.home:
            out += 1 if thumbs(string, m.strings_in_all) else 2
        elif f == "p" and part == TUNE and len(m.strings) == 2 and not m.home:
            out += 0 if thumbs(string, m.strings_in_all) else 2
    return out


def style(a: State, b: State, m: Plucking, wanted: Style) -> int:
    """Melody notes plucked by a finger outside the chosen alternation."""
    if len(m.strings) > 2 or m.home:
        return 0
    fingers = STYLES[wanted]
    return sum(f not in fingers and f != "p" for _, f in b.hold)


def awkward(a: State, b: State, m: Plucking) -> int:
    """1 where two successive notes cross strings against the order of the fingers."""
    if not a.last or len(m.strings) > 2 or m.home:
        return 0
    string, f = b.hold[-1]
    if f == "p" or string == a.last_string or f == a.last:
        return 0
    nearer = string < a.last_string
    return int(nearer != (ORDER.index(f) > ORDER.index(a.last)))


def region(a: State, b: State, m: Plucking) -> int:
    """Strings by which a finger leaves its side of the instrument: the thumb towards the floor
    (twice, in a part that is no bass), i, m and a away from it."""
    half = m.strings_in_all // 2
    out = 0
    for (string, part), (_, f) in zip(m.strings, b.hold, strict=True):
        if f == "p":
            out += max(0, half + 1 - string) * (1 if part == BASS else 2)
        else:
            out += max(0, string - max(3, half) + (f == "a"))
    return out


def crossing(a: State, b: State, m: Plucking) -> int:
    """Strings by which the thumb comes to the floor's side of a finger from one moment to the
    next, or on the same string with it."""
    if m.gap < 2 or not a.hold:
        return 0
    thumb = [s for s, f in b.hold if f == "p"]
    before = [s for s, f in a.hold if f == "p"]
    out = 0
    if thumb:
        out += max([0, *(s - min(thumb) + 1 for s, f in a.hold if f != "p")])
    if before:
        out += max([0, *(s - min(before) + 1 for s, f in b.hold if f != "p")])
    return out


def wander(a: State, b: State, m: Plucking) -> int:
    """Strings that fingers move from one moment to the next."""
    old = {f: s for s, f in a.hold}
    return sum(abs(old[f] - s) for s, f in b.hold if f in old)


def spread(a: State, b: State, m: Plucking) -> int:
    """Strings by which neighbours of a chord lie off the spacing of their fingers."""
    out = 0
    for (s, f), (t, g) in zip(b.hold, b.hold[1:], strict=False):
        if f != "p":
            out += abs((s - t) - (ORDER.index(g) - ORDER.index(f)))
        elif len(b.hold) > 2:
            out += 2 * (ORDER.index(g) - 1)  # in a chord the fingers begin with i
    return out


def home(a: State, b: State, m: Plucking) -> int:
    """Fingers off the string that is theirs while a figure lasts."""
    own = dict(m.home)
    return sum(own.get(s, f) != f for s, f in b.hold)


def lead(a: State, b: State, m: Plucking, wanted: Style) -> int:
    """1 where a melody after a rest does not begin with the leading finger of the style."""
    fingers = STYLES[wanted]
    leader = fingers[-1]
    free = not a.last or m.gap == 1
    return int(free and not m.home and b.hold[-1][1] not in (leader, "p"))


def strummed(hold: Hold) -> bool:
    """Whether one finger sounds all strings in one stroke."""
    return len(hold) > 2 and len({f for _, f in hold}) == 1


def price(a: State, b: State, m: Plucking, who: Plucker) -> dict[str, int]:
    """Terms of one step in thousandths, those that are not nothing."""
    if strummed(b.hold):
        return {}
    wanted = who.style
    found = {
        "strum": int(bool(m.strum)),
        "repeat": repeat(a, b, m),
        "bass": bass(a, b, m),
        "thumb_up": thumb_up(a, b, m) if wanted != "thumb" else thumb_up(a, b, m) // 2,
        "style": style(a, b, m, wanted),
        "awkward": awkward(a, b, m),
        "region": region(a, b, m),
        "crossing": crossing(a, b, m),
        "wander": wander(a, b, m),
        "spread": spread(a, b, m),
        "home": home(a, b, m),
        "lead": lead(a, b, m, wanted),
    }
    return {k: v * who.weights[k] for k, v in found.items() if v}


def after_state(a: State, hold: Hold) -> State:
    string, finger = hold[-1]
    if finger == "p":
        return State(hold, a.last, a.last_string)
    return State(hold, finger, string)


def solve_right(
    who: Plucker,
    frame: Frame,
    strings: dict[str, int],
    pins: dict[str, Pin],
    present: dict[str, str] | None = None,
    memo: Memo | None = None,
) -> tuple[dict[str, str], int]:
    """(finger by note id, cost). Exact: a sweep over the tree of layers. Equal
    figures get equal patterns where that costs no more than a repetition for each
    bar. ``present``: fingers of other bars that stay as they are."""
    found = moments(frame, strings, who.count, who.tempo)
    fixed = {**(present or {}), **{n: p.right for n, p in pins.items() if p.right}}
    trellis = Trellis(who, frame, strings, found, fixed, memo or Memo())
    picked, cost = trellis.sweep({})
    agreed: dict[str, str] = {}
    for rows in _alike(frame, strings, found):
        patterns = Counter(tuple(picked[i] for i in ids) for ids in rows)
        if len(patterns) < 2:
            continue
        trials = []
        for pattern, _ in patterns.most_common(2):
            wish = {i: f for ids in rows for i, f in zip(ids, pattern, strict=True)}
            trial = {**agreed, **{i: f for i, f in wish.items() if i not in fixed}}
            trials.append((trellis.sweep(trial), trial))
        (other, dearer), trial = min(trials, key=lambda x: x[0][1])
        if dearer - cost <= 4 * who.weights["repeat"] * (len(rows) - 1):
            picked, cost, agreed = other, dearer, trial
    return picked, cost


def window_frame(frame: Frame, bar: int) -> Frame:
    """The layers of one bar with the one before it and those right after it, as a frame."""
    own = frame.of_bar[bar]
    parent = frame.layers[own[0]].parent
    chosen = [*([parent] if parent >= 0 else []), *own]
    chosen += [c for c in frame.children[own[-1]] if c not in chosen]
    place = {t: i for i, t in enumerate(chosen)}
    layers = tuple(
        replace(frame.layers[t], index=i, parent=place.get(frame.layers[t].parent, -1))
        for t, i in place.items()
    )
    return Frame(layers, (), (), (tuple(place[t] for t in own),))


def _alike(frame: Frame, strings: dict[str, int], found: list[Plucking]) -> list[list[list[str]]]:
    """Groups of bars with the same strings and rhythm, each bar as its note ids."""
    shape: dict[tuple[object, ...], list[list[str]]] = {}
    for bar in frame.of_bar:
        layers = [frame.layers[t] for t in bar]
        key = tuple((x.onset, found[x.index].strings) for x in layers)
        ids = [n.id for x in layers for n in x.notes]
        if ids:
            shape.setdefault(key, []).append(ids)
    return [rows for rows in shape.values() if len(rows) > 1]


class Trellis:
    """All states of the right hand with their steps, swept under wishes for single notes."""

    def __init__(
        self,
        who: Plucker,
        frame: Frame,
        strings: dict[str, int],
        found: list[Plucking],
        fixed: dict[str, str],
        memo: Memo,
    ) -> None:
        self.frame, self.strings = frame, strings
        self.states: list[list[State]] = []
        self.steps: list[Rows] = []
        for layer in frame.layers:
            m = found[layer.index]
            old = self.states[layer.parent] if layer.parent >= 0 else [State((), "", 0)]
            ask = {strings[n.id]: fixed[n.id] for n in layer.notes if n.id in fixed}
            key = (tuple(old), m, tuple(ask.items()))
            if key not in memo.layers:
                memo.layers[key] = self._grow(who, old, m, ask, memo)
            states, rows = memo.layers[key]
            self.states.append(states)
            self.steps.append(rows)

    @staticmethod
    def _grow(
        who: Plucker, old: list[State], m: Plucking, ask: dict[int, str], memo: Memo
    ) -> tuple[list[State], Rows]:
        index: dict[State, int] = {}
        rows: Rows = []
        ways = holds(m, ask)
        for a in old:
            row = []
            for hold in ways:
                b = after_state(a, hold)
                key = (a, b, m)
                if key not in memo.prices:
                    memo.prices[key] = sum(price(a, b, m, who).values())
                row.append((index.setdefault(b, len(index)), memo.prices[key]))
            rows.append(row)
        return list(index), rows

    def _against(self, t: int, wish: dict[str, str]) -> list[int]:
        """0 for states of a layer that meet the wishes, else a cost no path can pay."""
        asked = {self.strings[n.id]: wish[n.id] for n in self.frame.layers[t].notes if n.id in wish}
        if not asked:
            return [0] * len(self.states[t])
        return [
            0 if all(asked.get(s, f) == f for s, f in b.hold) else 2**40 for b in self.states[t]
        ]

    def sweep(self, wish: dict[str, str]) -> tuple[dict[str, str], int]:
        """(finger by note id, cost) of the best path under the wishes."""
        best = [self._against(t, wish) for t in range(len(self.states))]
        value = 0
        for t in range(len(self.states) - 1, -1, -1):
            parent, below = self.frame.layers[t].parent, best[t]
            up = [min([c + below[b] for b, c in row]) for row in self.steps[t]]
            if parent >= 0:
                best[parent] = [x + u for x, u in zip(best[parent], up, strict=True)]
            else:
                value += up[0]
        picked: dict[str, str] = {}
        chosen = [0] * len(self.states)
        for t, layer in enumerate(self.frame.layers):
            at = chosen[layer.parent] if layer.parent >= 0 else 0
            below = best[t]
            chosen[t] = min((c + below[b], i, b) for i, (b, c) in enumerate(self.steps[t][at]))[2]
            by_string = dict(self.states[t][chosen[t]].hold)
            picked.update({n.id: by_string[self.strings[n.id]] for n in layer.notes})
        return picked, value


def faults(
    frame: Frame, strings: dict[str, int], picked: dict[str, str]
) -> list[tuple[LatticeLayer, Fact]]:
    """Repetitions of a finger on successive melody notes, named."""
    out: list[tuple[LatticeLayer, Fact]] = []
    for layer in frame.layers:
        if layer.parent < 0:
            continue
        if strummed(tuple((strings[n.id], picked[n.id]) for n in layer.notes)):
            continue
        before = {picked[n.id] for n in frame.layers[layer.parent].notes if n.voice == 1}
        for n in layer.notes:
            if n.voice == 1 and picked[n.id] in before and picked[n.id] != "p":
                out.append((layer, fact("twice", finger=picked[n.id], note=n.pitch.name)))
    return out
