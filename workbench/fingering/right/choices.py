"""Other right hands for one bar whose left hand stays as it is, with the reason of each."""

from __future__ import annotations

from collections import Counter

from workbench.fingering.lattice.layers import Frame
from workbench.fingering.right.figures import Plucking, moments
from workbench.fingering.right.fingers import (
    Memo,
    Plucker,
    State,
    Trellis,
    after_state,
    price,
    window_frame,
)
from workbench.language.fact import Fact, fact
from workbench.music.model import Note

NEVER = 2**40


def other_rights(
    who: Plucker,
    frame: Frame,
    bar: int,
    strings: dict[str, int],
    present: dict[str, str],
    pinned: set[str],
    most: int,
) -> list[tuple[dict[str, str], Fact]]:
    """Up to ``most`` (finger by note id, reason) for a bar, the easiest first. ``present``:
    the right hand as it is, which the other bars and the ``pinned`` notes keep."""
    if not frame.of_bar[bar] or most < 1:
        return []
    window = window_frame(frame, bar)
    notes = [n for t in window.of_bar[0] for n in window.layers[t].notes]
    own = {n.id for n in notes}
    met = moments(window, strings, who.count, who.tempo)
    shown = {n.id for layer in window.layers for n in layer.notes}
    kept = {i: f for i, f in present.items() if i in shown and (i not in own or i in pinned)}
    trellis = Trellis(who, window, strings, met, kept, Memo())
    now = {i: present[i] for i in own}
    before = _terms(who, window, strings, met, {**kept, **now})
    found: dict[tuple[str, ...], tuple[int, dict[str, str]]] = {}
    for n in notes:
        for finger in "pima":
            if n.id in pinned or finger == now[n.id]:
                continue
            picked, cost = trellis.sweep({n.id: finger})
            if cost >= NEVER:
                continue
            pattern = tuple(picked[x.id] for x in notes)
            if pattern not in found or cost < found[pattern][0]:
                found[pattern] = (cost, picked)
    out = []
    for _, picked in sorted(found.values(), key=lambda x: (x[0], sorted(x[1].items())))[:most]:
        after = _terms(who, window, strings, met, picked)
        mine = {i: picked[i] for i in own}
        out.append((mine, _reason(notes, now, mine, before, after)))
    return out


def asked_right(
    who: Plucker,
    frame: Frame,
    bar: int,
    strings: dict[str, int],
    present: dict[str, str],
    asked: dict[str, str],
) -> tuple[dict[str, str], Fact] | None:
    """A bar's right hand with the fingers ``asked`` for by note id, the other notes' the
    best beside them, and what that brings against ``present``; None where one finger
    would have to do two things at once. The other bars keep theirs."""
    window = window_frame(frame, bar)
    notes = [n for t in window.of_bar[0] for n in window.layers[t].notes]
    own = {n.id for n in notes}
    met = moments(window, strings, who.count, who.tempo)
    shown = {n.id for layer in window.layers for n in layer.notes}
    kept = {i: f for i, f in present.items() if i in shown and i not in own}
    wanted = {i: f for i, f in asked.items() if i in own}
    for t in window.of_bar[0]:
        if met[t].strum and {wanted.get(n.id) for n in window.layers[t].notes} == {met[t].strum}:
            continue
        fingers = [wanted[n.id] for n in window.layers[t].notes if wanted.get(n.id, "p") != "p"]
        if len(set(fingers)) < len(fingers):
            return None
    trellis = Trellis(who, window, strings, met, {**kept, **wanted}, Memo())
    picked, _ = trellis.sweep({})
    now = {i: present[i] for i in own}
    before = _terms(who, window, strings, met, {**kept, **now})
    after = _terms(who, window, strings, met, picked)
    mine = {i: picked[i] for i in own}
    return mine, _reason(notes, now, mine, before, after)


def bar_terms(
    who: Plucker,
    frame: Frame,
    bar: int,
    strings: dict[str, int],
    picked: dict[str, str],
) -> Counter[str]:
    """Cost by term, in thousandths, of a given right hand in a bar, from the moment before it to
    those right after. ``picked``: finger by note id, of all that is plucked there."""
    if not frame.of_bar[bar]:
        return Counter()
    window = window_frame(frame, bar)
    met = moments(window, strings, who.count, who.tempo)
    return _terms(who, window, strings, met, picked)


def _terms(
    who: Plucker,
    window: Frame,
    strings: dict[str, int],
    met: list[Plucking],
    picked: dict[str, str],
) -> Counter[str]:
    """Cost by term, in thousandths, of a given right hand in the window."""
    out: Counter[str] = Counter()
    states: list[State] = []
    for layer in window.layers:
        a = states[layer.parent] if layer.parent >= 0 else State((), "", 0)
        rows = sorted(((strings[n.id], picked[n.id]) for n in layer.notes), reverse=True)
        b = after_state(a, tuple(rows))
        out.update(price(a, b, met[layer.index], who))
        states.append(b)
    return out


def _reason(
    notes: list[Note],
    now: dict[str, str],
    mine: dict[str, str],
    before: Counter[str],
    after: Counter[str],
) -> Fact:
    moved = tuple(
        fact("plucks", finger=mine[n.id], note=n.pitch.name)
        for n in notes
        if mine[n.id] != now[n.id]
    )
    change = {t: after[t] - before[t] for t in {*before, *after} if after[t] != before[t]}
    worse = sorted((t for t in change if change[t] > 0), key=lambda t: -change[t])
    better = sorted((t for t in change if change[t] < 0), key=lambda t: change[t])
    return fact(
        "right hand",
        moved=moved,
        good=tuple(fact("less", term=t) for t in better[:1]),
        bad=tuple(fact("more", term=t) for t in worse[:1]),
        effort=sum(change.values()),
    )
