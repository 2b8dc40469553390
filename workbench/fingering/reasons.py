"""The difference between two fingerings of a bar, in plain words and as a table."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from workbench.fingering.legato import held_fraction
from workbench.fingering.types import FingeredBar, FingeredNote, Fingering
from workbench.fingering.weights import LEFT_TERMS, gain, sentence
from workbench.instrument.model import Hand
from workbench.language.speech import say

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
    return say("{text} beat", text=text) if q <= 1 else say("{text} beats", text=text)


def moved(a: FingeredBar, b: FingeredBar) -> list[str]:
    """What b puts elsewhere than a, shortest description first."""
    out = []
    for x, y in zip(a.notes, b.notes, strict=True):
        if (x.string, x.fret) != (y.string, y.fret):
            out.append(
                say(
                    "{note} on string {string}, fret {fret}",
                    note=name(x),
                    string=y.string,
                    fret=y.fret,
                )
            )
        elif x.left != y.left:
            out.append(say("finger {finger} on the {note}", finger=y.left, note=name(x)))
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
    head = "; ".join(seen[:3]) + (say(" and more") if len(seen) > 3 else "")
    gains, pains = _cuts(a, b), _cuts(b, a)
    good = [say("keeps the {note} to its full length", note=x) for x in gains]
    bad = [say("cuts the {note}", note=x) for x in pains]
    if b.reach_mm - a.reach_mm >= 3:
        over = b.reach_mm > hand.comfort_14
        limit = (
            say(" (your setting for this hand is {comfort:.0f} mm)", comfort=hand.comfort_14)
            if over
            else ""
        )
        bad.append(say("asks a reach of {reach:.0f} mm", reach=b.reach_mm) + limit)
    elif a.reach_mm - b.reach_mm >= 3:
        good.append(
            say(
                "needs only {reach:.0f} mm of reach instead of {other:.0f}",
                reach=b.reach_mm,
                other=a.reach_mm,
            )
        )
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
        tail = (tail + say(", but ") if tail else "") + "; ".join(bad)
    effort = (whole_b.cost - whole_a.cost) / 1000
    sign = say("more effort") if effort >= 0 else say("less effort")
    return say(
        "{what}: {difference} ({effort:.1f} {more_or_less}).",
        what=head,
        difference=tail or say("no other difference"),
        effort=abs(effort),
        more_or_less=sign,
    )


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
        Row(
            say("written length held"),
            f"{held_fraction(a):.0%}",
            f"{held_fraction(b):.0%}",
        ),
        Row(say("notes cut"), *(str(sum(n.held < n.duration for n in x.notes)) for x in (a, b))),
        Row(
            say("greatest reach"),
            f"{a.reach_mm:.0f} mm",
            f"{b.reach_mm:.0f} mm",
        ),
        Row(say("barres"), str(len(a.barres)), str(len(b.barres))),
        Row(
            say("effort"),
            f"{a.effort / 1000:.1f}",
            f"{b.effort / 1000:.1f}",
        ),
    ]
    for kind, label in (
        ("hop", say("hops")),
        ("guide", say("guide fingers")),
        ("planted", say("planted")),
    ):
        rows.append(Row(label, *(str(sum(n.move == kind for n in x.notes)) for x in (a, b))))
    for x, y in zip(a.notes, b.notes, strict=True):
        first, second = _figure(x), _figure(y)
        if first != second:
            rows.append(
                Row(
                    say("{note} at beat {beat:g}", note=name(x), beat=float(x.onset) + 1),
                    first,
                    second,
                )
            )
    return tuple(rows)


def _figure(n: FingeredNote) -> str:
    if n.string is None:
        return say("not played")
    cut = (
        ""
        if n.held >= n.duration
        else say(", held {held} of {written}", held=length(n.held), written=length(n.duration))
    )
    return say(
        "string {string} fret {fret} finger {finger} {right}{cut}",
        string=n.string,
        fret=n.fret,
        finger=n.left,
        right=n.right,
        cut=cut,
    )
