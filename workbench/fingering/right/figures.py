"""What the right hand meets, moment by moment: strings, haste, and whose string is whose.

A figure is a broken chord: at least three moments running, each on other strings than the one
before. While it lasts i, m and a keep a string each and the thumb has those below (common
practice; so printed in Carcassi's method, op. 59). Which strings are the thumb's otherwise
goes by the instrument: the half away from the floor, so 4 to 6 of a guitar, and 4 and 3 of a
ukulele, re-entrant or not.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from itertools import pairwise
from typing import NamedTuple

from workbench.fingering.lattice.layers import Frame, Layer
from workbench.music.model import Note

ORDER = "pima"
#: Seconds between two plucks within which no finger of i, m, a is asked twice where another
#: can do it: more than three a second (common practice, no source).
QUICK = 1 / 3
#: (seconds at most, quarters of weight that a repetition has within them)
HASTE = ((QUICK, 16), (0.75, 4), (1.5, 2))

#: Chords that follow within this weight of haste are strummed to and fro by the index finger,
#: slower ones downwards by the thumb.
SLOW_STRUM = 4

Row = tuple[tuple[int, int], ...]  # (string, voice), highest-numbered string first


class Moment(NamedTuple):
    """What the right hand meets at a layer. ``strings``: (string, voice) from
    the highest number to 1; ``home``: the finger that owns each string while a
    figure lasts; ``gap``: quarters of weight a repetition has here, by ``HASTE``, else 1;
    ``strum``: the finger that strums them all in one stroke, "" where they are plucked."""

    strings: tuple[tuple[int, int], ...]
    home: tuple[tuple[int, str], ...]
    gap: int
    strings_in_all: int
    strum: str = ""


def thumbs(string: int, count: int) -> bool:
    """Whether a string lies in the thumb's region on an instrument of ``count`` strings."""
    return 2 * string > count


def full(strings: Collection[int], count: int) -> bool:
    """Whether strings sounded at once can be strummed: neighbours, four or more of a guitar's,
    three or more where there are four."""
    least = 3 if count <= 4 else 4
    return len(strings) >= least and max(strings) - min(strings) == len(strings) - 1


def moments(frame: Frame, strings: dict[str, int], count: int, tempo: float) -> list[Moment]:
    """What the right hand meets, layer by layer; ``count``: strings of the instrument."""
    by_bar: dict[int, list[Row]] = {}
    chords: dict[int, list[tuple[Note, ...]]] = {}
    place: dict[int, int] = {}
    voices = {n.id: n.voice for layer in frame.layers for n in layer.notes}
    least: dict[int, int] = {}
    for layer in frame.layers:
        first = [n.midi for n in layer.notes if n.voice == 1]
        least[layer.bar] = min([least.get(layer.bar, 128), *first])
    for layer in frame.layers:
        rows = by_bar.setdefault(layer.bar, [])
        place[layer.index] = len(rows)
        chords.setdefault(layer.bar, []).append(layer.notes)
        rows.append(_row(layer, strings, count, voices, least))
    homes = {bar: figures(rows, count) for bar, rows in by_bar.items()}
    strummed = {bar: strums(chords[bar], rows, count) for bar, rows in by_bar.items()}
    gaps = [_gap(frame, layer, tempo) for layer in frame.layers]
    hasty = {
        layer.bar
        for layer, gap in zip(frame.layers, gaps, strict=True)
        if gap > SLOW_STRUM and strummed[layer.bar][place[layer.index]]
    }
    out: list[Moment] = []
    for layer, gap in zip(frame.layers, gaps, strict=True):
        at = place[layer.index]
        own = tuple(sorted(homes[layer.bar][at].items()))
        finger = "i" if layer.bar in hasty else "p"
        strum = finger if strummed[layer.bar][at] else ""
        out.append(Moment(by_bar[layer.bar][at], own, gap, count, strum))
    return out


def _row(
    layer: Layer, strings: dict[str, int], count: int, voices: dict[str, int], least: dict[int, int]
) -> Row:
    """A moment's strings, each with voice 2 for the bass and 1 for all else: a lower voice in
    name only, above the first or on the fingers' strings alone, is no bass."""
    sounding = [n.midi for n in layer.slots if voices.get(n.id, n.voice) == 1]
    out = []
    for n in layer.notes:
        under = all(n.midi <= m for m in sounding)
        lowest = least[layer.bar] < 128 and n.midi < least[layer.bar]
        bass = n.voice > 1 and under and (lowest or thumbs(strings[n.id], count))
        out.append((strings[n.id], 2 if bass else 1))
    return tuple(sorted(out, reverse=True))


def _gap(frame: Frame, layer: Layer, tempo: float) -> int:
    """Weight of a repetition at a moment, by the seconds since the one before."""
    if layer.parent < 0:
        return 1
    wait = (layer.time - frame.layers[layer.parent].time) * 60 / max(1.0, tempo)
    return next((weight for most, weight in HASTE if wait <= most), 1)


def strums(chords: Sequence[tuple[Note, ...]], rows: Sequence[Row], count: int) -> list[bool]:
    """For every moment of a bar whether it is strummed: a chord on one stem over ``full``
    strings that is more than the hand's four fingers pluck, or one in a bar of nothing but
    such chords (common practice, no source). Chords with a bass of their own are plucked."""
    able = [
        full([s for s, _ in row], count) and len({v for _, v in row}) == 1 and not _graced(chord)
        for chord, row in zip(chords, rows, strict=True)
    ]
    every = len(able) > 1 and all(able)
    return [ok and (every or len(row) > len(ORDER)) for ok, row in zip(able, rows, strict=True)]


def _graced(chord: tuple[Note, ...]) -> bool:
    return any(n.grace for n in chord)


def figures(rows: Sequence[Row], count: int) -> list[dict[int, str]]:
    """For every moment of a bar the finger that owns each string while a figure lasts,
    nothing where there is none."""
    out: list[dict[int, str]] = []
    run: list[Row] = []
    for row in rows:
        if run and not _goes_on(run[-1], row):
            out += [_owners(run, count)] * len(run)
            run = []
        run.append(row)
    return out + [_owners(run, count)] * len(run)


def _upper(row: Row) -> set[int]:
    """Strings of the first voice, or all where it is silent."""
    return {s for s, voice in row if voice == 1} or {s for s, _ in row}


def _goes_on(a: Row, b: Row) -> bool:
    """Whether b may belong to the same figure: other strings, or the same chord again."""
    one, two = _upper(a), _upper(b)
    return not one & two or (one == two and len(one) > 1)


def _owners(run: Sequence[Row], count: int) -> dict[int, str]:
    """Finger by string in moments that run on. Where a bass voice takes part (not in most
    of them together with the upper one) its strings are the thumb's and the upper voice may
    have chords; else they are single notes."""
    if len(run) < 3 or all(_upper(a) == _upper(b) for a, b in pairwise(run)):
        return {}
    own = sorted({s for r in run for s, _ in r}, reverse=True)
    bass = {s for r in run for s, voice in r if voice > 1}
    both = sum(len({voice > 1 for _, voice in r}) > 1 for r in run)
    if bass and 2 * both <= len(run):
        upper = [s for s in own if s not in bass]
    elif any(len(r) > 1 for r in run) or len(own) < 3:
        return {}
    elif len(own) <= len(ORDER):
        first = "p" if len(own) == len(ORDER) or thumbs(own[0], count) else "i"
        return dict(zip(own, ORDER[ORDER.index(first) :], strict=False))
    else:
        bass, upper = set(), own
    low, high = upper[:-3], upper[-3:]
    if len(high) < 2 or (bass and min(bass) < high[0]):
        return {}
    if any(not thumbs(s, count) for s in low):
        return {}
    return {**dict.fromkeys([*bass, *low], "p"), **dict(zip(high, _fingers(high), strict=True))}


def _fingers(strings: list[int]) -> str:
    """One finger a string: i m a; i m on two neighbours, i a over a string between."""
    if len(strings) == 2:
        return "im" if strings[0] - strings[1] == 1 else "ia"
    return "ima"
