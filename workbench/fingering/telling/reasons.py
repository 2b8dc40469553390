"""The difference between two fingerings of a bar: what moves, what it gains, what it costs."""

from __future__ import annotations

from workbench.fingering.habits import is_habit
from workbench.fingering.lattice.terms import LEFT_TERMS
from workbench.fingering.types import FingeredBar, FingeredNote, Fingering
from workbench.fingering.weights import RIGHT_TERMS
from workbench.instrument.model import Hand
from workbench.language.fact import Fact, fact

FELT = 500  # thousandths: one finger that need not pluck twice running
COUNTED = 0.25  # quarter lengths; less is the gap that a hopping finger leaves
STEP_NAMES = ("C", "C#", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B")


def name(n: FingeredNote) -> str:
    """The note's name as spelled in the score, without its octave."""
    return n.pitch.rstrip("0123456789-") or STEP_NAMES[n.midi % 12]


def moved(a: FingeredBar, b: FingeredBar) -> tuple[Fact, ...]:
    """What b puts elsewhere than a, each once; where notes of one name go different ways,
    with the number of the note among them."""
    changes: dict[str, list[Fact | None]] = {}
    for x, y in zip(a.notes, b.notes, strict=True):
        if x.shares is None:
            changes.setdefault(name(x), []).append(_change(x, y))
    out: dict[Fact, None] = {}
    for row in changes.values():
        for nth, change in enumerate(row, 1):
            if change is not None:
                out[change if len(set(row)) == 1 else numbered(change, nth)] = None
    return tuple(out)


def _change(x: FingeredNote, y: FingeredNote) -> Fact | None:
    if (x.string, x.fret) != (y.string, y.fret):
        return fact("place", note=name(x), string=y.string or 0, fret=y.fret or 0)
    return fact("finger", finger=y.left or 0, note=name(x)) if x.left != y.left else None


def numbered(change: Fact, nth: int) -> Fact:
    """A change of the ``nth`` note of its name in the bar."""
    return fact(f"nth {change.kind}", nth=nth, **dict(change.fields))


def difference(
    a: FingeredBar, b: FingeredBar, whole_a: Fingering, whole_b: Fingering, hand: Hand
) -> Fact:
    """What b does instead of a, what it gains, what it costs, either hand. The terms of the right
    hand are those of the bar in both."""
    gains, pains = _cuts(a, b), _cuts(b, a)
    good = [_by("keeps", x, much) for x, much in gains.items()]
    bad = [_by("cuts", x, much) for x, much in pains.items()]
    if b.reach_mm - a.reach_mm >= 3:
        if b.reach_mm > hand.comfort_14:
            bad.append(fact("wide reach", reach=b.reach_mm, comfort=hand.comfort_14))
        else:
            bad.append(fact("reach", reach=b.reach_mm))
    elif a.reach_mm - b.reach_mm >= 3:
        if b.reach_mm < 1:
            good.append(fact("no reach", other=a.reach_mm))
        else:
            good.append(fact("less reach", reach=b.reach_mm, other=a.reach_mm))
    left = {*LEFT_TERMS, *filter(is_habit, (*whole_a.terms, *whole_b.terms))}
    dearer = {t: whole_b.terms.get(t, 0) - whole_a.terms.get(t, 0) for t in sorted(left)}
    told = {"stretch", "cut"} | ({"hop", "hop_across", "cuts"} if gains or pains else set())
    worse = sorted((t for t in dearer if dearer[t] > 0 and t not in told), key=lambda t: -dearer[t])
    better = sorted((t for t in dearer if dearer[t] < 0 and t not in told), key=lambda t: dearer[t])
    if better and not good:
        good.append(fact("less", term=better[0]))
    if worse and (not bad or dearer[worse[0]] >= 1500):
        bad.append(fact("more", term=worse[0]))
    plucking = {t: whole_b.terms.get(t, 0) - whole_a.terms.get(t, 0) for t in RIGHT_TERMS}
    right = sum(plucking.values())
    if right <= -FELT:
        good.append(fact("less", term=min(plucking, key=lambda t: plucking[t])))
        if whole_b.cost + right < whole_a.cost:
            good.append(fact("both hands"))
    elif right >= FELT:
        bad.append(fact("more", term=max(plucking, key=lambda t: plucking[t])))
    return fact(
        "difference",
        moved=moved(a, b),
        good=tuple(good),
        bad=tuple(bad),
        effort=whole_b.cost - whole_a.cost,
    )


def _cuts(a: FingeredBar, b: FingeredBar) -> dict[str, float]:
    """Notes that a cuts and b holds longer by name, and by how many quarter lengths at most."""
    out: dict[str, float] = {}
    for x, y in zip(a.notes, b.notes, strict=True):
        if x.held < y.held:
            out[name(x)] = max(out.get(name(x), 0.0), float(y.held - x.held))
    return out


def _by(kind: str, note: str, much: float) -> Fact:
    """A note kept or cut, with how much of it where that can be counted."""
    if much < COUNTED:
        return fact(kind, note=note)
    much = round(4 * much) / 4
    return fact(f"{kind} one", note=note) if much == 1 else fact(f"{kind} by", note=note, much=much)
