"""The difference between two fingerings of a bar: what moves, what it gains, what it costs."""

from __future__ import annotations

from workbench.fingering.types import FingeredBar, FingeredNote, Fingering
from workbench.fingering.weights import LEFT_TERMS
from workbench.instrument.model import Hand
from workbench.language.fact import Fact, fact

STEP_NAMES = ("C", "C#", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B")


def name(n: FingeredNote) -> str:
    """The note's name as spelled in the score, without its octave."""
    return n.pitch.rstrip("0123456789-") or STEP_NAMES[n.midi % 12]


def moved(a: FingeredBar, b: FingeredBar) -> tuple[Fact, ...]:
    """What b puts elsewhere than a, each once."""
    out: dict[Fact, None] = {}
    for x, y in zip(a.notes, b.notes, strict=True):
        if (x.string, x.fret) != (y.string, y.fret):
            out[fact("place", note=name(x), string=y.string or 0, fret=y.fret or 0)] = None
        elif x.left != y.left:
            out[fact("finger", finger=y.left or 0, note=name(x))] = None
    return tuple(out)


def difference(
    a: FingeredBar, b: FingeredBar, whole_a: Fingering, whole_b: Fingering, hand: Hand
) -> Fact:
    """What b does instead of a, what it gains, what it costs."""
    gains, pains = _cuts(a, b), _cuts(b, a)
    good = [fact("keeps", note=x) for x in gains]
    bad = [fact("cuts", note=x) for x in pains]
    if b.reach_mm - a.reach_mm >= 3:
        if b.reach_mm > hand.comfort_14:
            bad.append(fact("wide reach", reach=b.reach_mm, comfort=hand.comfort_14))
        else:
            bad.append(fact("reach", reach=b.reach_mm))
    elif a.reach_mm - b.reach_mm >= 3:
        good.append(fact("less reach", reach=b.reach_mm, other=a.reach_mm))
    dearer = {t: whole_b.terms.get(t, 0) - whole_a.terms.get(t, 0) for t in LEFT_TERMS}
    told = {"stretch", "cut"} | ({"hop"} if gains or pains else set())
    worse = sorted((t for t in dearer if dearer[t] > 0 and t not in told), key=lambda t: -dearer[t])
    better = sorted((t for t in dearer if dearer[t] < 0 and t not in told), key=lambda t: dearer[t])
    if better and not good:
        good.append(fact("less", term=better[0]))
    if worse and (not bad or dearer[worse[0]] >= 1500):
        bad.append(fact("more", term=worse[0]))
    return fact(
        "difference",
        moved=moved(a, b),
        good=tuple(good),
        bad=tuple(bad),
        effort=whole_b.cost - whole_a.cost,
    )


def _cuts(a: FingeredBar, b: FingeredBar) -> list[str]:
    """Names of notes that a cuts and b holds longer, each once."""
    both = zip(a.notes, b.notes, strict=True)
    return list(dict.fromkeys(name(x) for x, y in both if x.held < y.held))
