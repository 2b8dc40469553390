"""The difference between two fingerings of a bar, in plain words and as a table."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from workbench.fingering.legato import held_fraction
from workbench.fingering.types import FingeredBar, FingeredNote, Fingering
from workbench.fingering.weights import LEFT_TERMS, gain, sentence
from workbench.instrument.model import Hand

STEP_NAMES = ("C", "C♯", "D", "E♭", "E", "F", "F♯", "G", "A♭", "A", "B♭", "B")


@dataclass(frozen=True)
class Row:
    """One line of a comparison: what, and its figure in either fingering."""

    what: str
    first: str
    second: str


def name(n: FingeredNote) -> str:
    return STEP_NAMES[n.midi % 12]


def length(q: Fraction) -> str:
    """A quarter length in words a teacher uses: ``1 1/2 beats`` counted in quarters."""
    whole, part = divmod(q, 1)
    text = str(whole) if whole or not part else ""
    if part:
        text = f"{text} {part}".strip()
    return f"{text} beat" if q <= 1 else f"{text} beats"


def moved(a: FingeredBar, b: FingeredBar) -> list[str]:
    """What b puts elsewhere than a, shortest description first."""
    out = []
    for x, y in zip(a.notes, b.notes, strict=True):
        if (x.string, x.fret) != (y.string, y.fret):
            out.append(f"{name(x)} on string {y.string}, fret {y.fret}")
        elif x.left != y.left:
            out.append(f"finger {y.left} on the {name(x)}")
    return out


def difference(
    a: FingeredBar, b: FingeredBar, whole_a: Fingering, whole_b: Fingering, hand: Hand
) -> str:
    """One or two sentences: what b does instead of a, what it gains, what it costs."""
    what = moved(a, b)
    seen: list[str] = []
    for w in what:
        if w not in seen:
            seen.append(w)
    head = "; ".join(seen[:3]) + (" and more" if len(seen) > 3 else "")
    gains, pains = _cuts(a, b), _cuts(b, a)
    good = [f"keeps the {x} to its full length" for x in gains]
    bad = [f"cuts the {x}" for x in pains]
    if b.reach_mm - a.reach_mm >= 3:
        over = b.reach_mm > hand.comfort_14
        limit = f" (your setting for this hand is {hand.comfort_14:.0f} mm)" if over else ""
        bad.append(f"asks a reach of {b.reach_mm:.0f} mm" + limit)
    elif a.reach_mm - b.reach_mm >= 3:
        good.append(f"needs only {b.reach_mm:.0f} mm of reach instead of {a.reach_mm:.0f}")
    dearer = {t: whole_b.terms.get(t, 0) - whole_a.terms.get(t, 0) for t in LEFT_TERMS}
    told = {"stretch", "cut"} | ({"hop"} if gains or pains else set())
    worse = sorted((t for t in dearer if dearer[t] > 0 and t not in told), key=lambda t: -dearer[t])
    better = sorted((t for t in dearer if dearer[t] < 0 and t not in told), key=lambda t: dearer[t])
    if better and not good:
        good.append(gain(better[0]))
    if worse and (not bad or dearer[worse[0]] >= 1500):
        bad.append(sentence(worse[0]))
    tail = "; ".join(good)
    if bad:
        tail = (tail + ", but " if tail else "") + "; ".join(bad)
    effort = (whole_b.cost - whole_a.cost) / 1000
    sign = "more" if effort >= 0 else "less"
    return f"{head}: {tail or 'no other difference'} ({abs(effort):.1f} {sign} effort)."


def _cuts(a: FingeredBar, b: FingeredBar) -> list[str]:
    """Names of notes that a cuts and b holds longer."""
    out = []
    for x, y in zip(a.notes, b.notes, strict=True):
        if x.held < y.held and name(x) not in out:
            out.append(name(x))
    return out


def compare(a: FingeredBar, b: FingeredBar) -> tuple[Row, ...]:
    """The comparison table of two fingerings of one bar."""
    rows = [
        Row("written length held", f"{held_fraction(a):.0%}", f"{held_fraction(b):.0%}"),
        Row("notes cut", *(str(sum(n.held < n.duration for n in x.notes)) for x in (a, b))),
        Row("greatest reach", f"{a.reach_mm:.0f} mm", f"{b.reach_mm:.0f} mm"),
        Row("barres", str(len(a.barres)), str(len(b.barres))),
        Row("effort", f"{a.effort / 1000:.1f}", f"{b.effort / 1000:.1f}"),
    ]
    for kind, label in (("hop", "hops"), ("guide", "guide fingers"), ("planted", "planted")):
        rows.append(Row(label, *(str(sum(n.move == kind for n in x.notes)) for x in (a, b))))
    for x, y in zip(a.notes, b.notes, strict=True):
        first, second = _figure(x), _figure(y)
        if first != second:
            rows.append(Row(f"{name(x)} at beat {float(x.onset) + 1:g}", first, second))
    return tuple(rows)


def _figure(n: FingeredNote) -> str:
    if n.string is None:
        return "not played"
    cut = "" if n.held >= n.duration else f", held {length(n.held)} of {length(n.duration)}"
    return f"string {n.string} fret {n.fret} finger {n.left} {n.right}{cut}"
