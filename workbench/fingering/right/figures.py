"""What the right hand meets, moment by moment: strings, haste, and whose string is whose.

A figure is a broken chord: at least three moments running, each on other strings than the one
before. While it lasts i, m and a keep a string each and the thumb has those below (common
practice; so printed in Carcassi's method, op. 59). Which strings are the thumb's otherwise
goes by the instrument: the half away from the floor, so 4 to 6 of a guitar, and 4 and 3 of a
ukulele, re-entrant or not.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Sequence
from itertools import groupby, pairwise
from typing import NamedTuple

from workbench.fingering.lattice.layers import Frame, LatticeLayer
from workbench.music.model import Note

ORDER = "pima"
#: Seconds between two plucks within which no finger of i, m, a is asked twice where another
#: can do it: more than three a second (common practice, no source).
QUICK = 1 / 3
#: (seconds at most, quarters of weight that a repetition has within them)
HASTE = ((QUICK, 16), (0.75, 4), (1.5, 2))

#: (seconds at most, quarters of weight) of a thumb that plucks two strings running: it is slower
#: than two fingers that take turns, but a bass line is its own (common practice, no source).
THUMB_HASTE = ((0.2, 5), (0.28, 2))

#: Semitones from which a note of the lower voice between two lower ones is no bass: the figure
#: turns there, and a finger takes it.
TURN = 2

#: Whose a sound is for the right hand: what is told beside each string of a moment.
INNER, TUNE, BASS = PARTS = 0, 1, 2

#: Chords that follow within this weight of haste are strummed to and fro by the index finger,
#: slower ones downwards by the thumb.
SLOW_STRUM = 4

Row = tuple[tuple[int, int], ...]  # (string, part), highest-numbered string first


class Plucking(NamedTuple):
    """What the right hand meets at a layer. ``strings``: (string, INNER, TUNE or BASS) from
    the highest number to 1; ``home``: the finger that owns each string while a
    figure lasts; ``gap``: quarters of weight a repetition has here, by ``HASTE``, else 1;
    ``strum``: the finger that strums them all in one stroke, "" where they are plucked;
    ``thumb``: quarters that two strings running cost the thumb, by ``THUMB_HASTE``, else 0;
    ``over``: a lower note, struck before, sounds on below what is struck."""

    strings: tuple[tuple[int, int], ...]
    home: tuple[tuple[int, str], ...]
    gap: int
    strings_in_all: int
    strum: str = ""
    thumb: int = 0
    over: bool = False


def thumbs(string: int, count: int) -> bool:
    """Whether a string lies in the thumb's region on an instrument of ``count`` strings."""
    return 2 * string > count


def full(strings: Collection[int], count: int) -> bool:
    """Whether strings sounded at once can be strummed: neighbours, four or more of a guitar's,
    three or more where there are four."""
    least = 3 if count <= 4 else 4
    return len(strings) >= least and max(strings) - min(strings) == len(strings) - 1


def moments(frame: Frame, strings: dict[str, int], count: int, tempo: float) -> list[Plucking]:
    """What the right hand meets, layer by layer; ``count``: strings of the instrument."""
    by_bar: dict[int, list[Row]] = {}
    chords: dict[int, list[tuple[Note, ...]]] = {}
    place: dict[int, int] = {}
    voices = {n.id: n.voice for layer in frame.layers for n in layer.notes}
    least: dict[int, int] = {}
    for layer in frame.layers:
        first = [n.midi for n in layer.notes if n.voice == 1]
        least[layer.bar] = min([least.get(layer.bar, 128), *first])
    waits = [_wait(frame, layer, tempo) for layer in frame.layers]
    turned, dips = _turned(frame, waits)
    for layer in frame.layers:
        rows = by_bar.setdefault(layer.bar, [])
        place[layer.index] = len(rows)
        chords.setdefault(layer.bar, []).append(layer.notes)
        rows.append(_row(layer, strings, count, voices, least, turned, dips))
    homes = {bar: figures(rows, count) for bar, rows in by_bar.items()}
    strummed = {bar: strums(chords[bar], rows, count) for bar, rows in by_bar.items()}
    gaps = [next((weight for most, weight in HASTE if w <= most), 1) for w in waits]
    hasty = {
        layer.bar
        for layer, gap in zip(frame.layers, gaps, strict=True)
        if gap > SLOW_STRUM and strummed[layer.bar][place[layer.index]]
    }
    out: list[Plucking] = []
    for layer, gap, wait in zip(frame.layers, gaps, waits, strict=True):
        at = place[layer.index]
        own = tuple(sorted(homes[layer.bar][at].items()))
        finger = "i" if layer.bar in hasty else "p"
        strum = finger if strummed[layer.bar][at] else ""
        thumb = next((weight for most, weight in THUMB_HASTE if wait <= most), 0)
        over = min(n.midi for n in layer.slots) < min(n.midi for n in layer.notes)
        out.append(Plucking(by_bar[layer.bar][at], own, gap, count, strum, thumb, over))
    return out


def _turned(frame: Frame, waits: Sequence[float]) -> tuple[set[str], set[str]]:
    """Notes of a lower voice at which a quick broken accompaniment turns: at the moments on
    both sides that voice is lower by a leap. And those at which it dips: on both sides it is
    higher."""
    low = [min((n.midi for n in x.notes if n.voice > 1), default=None) for x in frame.layers]
    beside: list[list[int]] = [[] for _ in frame.layers]
    for layer in frame.layers:
        if layer.parent >= 0:
            beside[layer.index].append(layer.parent)
            beside[layer.parent].append(layer.index)
    turned: set[str] = set()
    dips: set[str] = set()
    for layer, wait in zip(frame.layers, waits, strict=True):
        notes = [m for x in beside[layer.index] if (m := low[x]) is not None]
        if len(notes) < 2 or len(notes) < len(beside[layer.index]):
            continue
        own = [n for n in layer.notes if n.voice > 1]
        dips |= {n.id for n in own if n.midi < min(notes)}
        if wait <= QUICK:
            turned |= {n.id for n in own if n.midi - max(notes) >= TURN}
    return turned, dips


def _row(
    layer: LatticeLayer,
    strings: dict[str, int],
    count: int,
    voices: dict[str, int],
    least: dict[int, int],
    turned: set[str],
    dips: set[str],
) -> Row:
    """A moment's strings, each with its part. A lower voice in name only, above the first or on
    the fingers' strings alone, is no bass; nor is a voice over a lower one that sounds, nor, there
    or on the thumb's string beside them, what stands between two lower ones, or over a bass of
    its own voice that is held, save where it dips towards that."""
    heard = [(n.midi, voices.get(n.id, n.voice)) for n in layer.slots]
    sounding = [midi for midi, voice in heard if voice == 1]
    held = _held(layer)
    out = []
    for n in layer.notes:
        under = all(n.midi <= m for m in sounding)
        middle = any(midi < n.midi and voice > n.voice for midi, voice in heard)
        lowest = least[layer.bar] < 128 and n.midi < least[layer.bar]
        part = TUNE
        if n.voice > 1 and middle:
            part = INNER
        elif n.voice > 1 and under and (lowest or thumbs(strings[n.id], count)):
            near = 2 * (strings[n.id] - 1) <= count  # the thumb's last string, or the fingers'
            over = n.midi > held.get(n.voice, 128) and n.id not in dips
            part = INNER if near and (n.id in turned or over) else BASS
        out.append((strings[n.id], part))
    return tuple(sorted(out, reverse=True))


def _held(layer: LatticeLayer) -> dict[int, int]:
    """The lowest note of each lower voice that was struck before and is written to sound on."""
    out: dict[int, int] = {}
    for n in layer.slots[len(layer.notes) :]:
        if n.voice > 1 and n.onset + n.duration > layer.onset >= n.onset:
            out[n.voice] = min(n.midi, out.get(n.voice, 128))
    return out


def _wait(frame: Frame, layer: LatticeLayer, tempo: float) -> float:
    """Seconds since the moment before."""
    if layer.parent < 0:
        return float("inf")
    return float((layer.time - frame.layers[layer.parent].time) * 60 / max(1.0, tempo))


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
            out += _of_run(run, count)
            run = []
        run.append(row)
    return out + _of_run(run, count)


def _of_run(run: list[Row], count: int) -> list[dict[int, str]]:
    """The owners at every moment of a run; without a bass, chords between single notes end a
    figure."""
    if any(part == BASS for row in run for _, part in row):
        return [_owners(run, count)] * len(run)
    out: list[dict[int, str]] = []
    for _, rows in groupby(run, lambda row: len(row) > 1):
        part = list(rows)
        out += [_owners(part, count)] * len(part)
    return out


def _upper(row: Row) -> set[int]:
    """Strings of all but the bass, or of the bass where it is alone."""
    return {s for s, part in row if part != BASS} or {s for s, _ in row}


def _goes_on(a: Row, b: Row) -> bool:
    """Whether b may belong to the same figure: other strings, or the same chord again."""
    one, two = _upper(a), _upper(b)
    return not one & two or (one == two and len(one) > 1)


def _owners(run: Sequence[Row], count: int) -> dict[int, str]:
    """Finger by string in moments that run on. Where a bass voice takes part (not in most
    of them together with the upper one) its strings are the thumb's and the upper voice may
    have chords; else they are single notes. A bass that lies folded in, all of it nearer the
    floor than a string of the upper voice, leaves the thumb that string."""
    if len(run) < 3 or all(_upper(a) == _upper(b) for a, b in pairwise(run)):
        return {}
    own = sorted({s for r in run for s, _ in r}, reverse=True)
    parts = [(s, part) for r in run for s, part in r]
    struck, as_bass = (Counter(s for s, part in parts if part in of) for of in (PARTS, (BASS,)))
    bass = {s for s in own if 2 * as_bass[s] > struck[s]}
    both = sum(len({s in bass for s, _ in r}) > 1 for r in run)
    upper = [s for s in own if s not in bass]
    folded = bool(bass and upper) and max(bass) < max(upper)
    if not bass or 2 * both > len(run) or folded:
        if any(len(r) > 1 for r in run) or len(own) < 3:
            return {}
        if len(own) <= len(ORDER):
            first = "p" if len(own) == len(ORDER) or thumbs(own[0], count) else "i"
            return dict(zip(own, ORDER[ORDER.index(first) :], strict=False))
        bass, upper = set(), own
    low, high = upper[:-3], upper[-3:]
    if len(high) < 2 or (bass and min(bass) < high[0]):
        return {}
    if any(not thumbs(s, count) for s in low) or all(thumbs(s, count) for s in own):
        return {}
    return {**dict.fromkeys([*bass, *low], "p"), **dict(zip(high, _fingers(high), strict=True))}


def _fingers(strings: list[int]) -> str:
    """One finger a string: i m a; i m on two neighbours, i a over a string between."""
    if len(strings) == 2:
        return "im" if strings[0] - strings[1] == 1 else "ia"
    return "ima"
