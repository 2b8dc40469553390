"""The name of a chord from its sounding notes, with inversion.

The lowest sounding note decides the inversion, whatever string it is on: with
re-entrant tuning that is seldom the highest-numbered string. Chord kinds and
the notes players leave out of them: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import lru_cache

from workbench.music.model import STEP_SEMITONES, STEPS

_DEGREES = {1: 0, 2: 2, 3: 4, 4: 5, 5: 7, 6: 9, 7: 11, 9: 14, 11: 17, 13: 21}
_SHARP_ROOTS = ("C", "C#", "D", "Eb", "E", "F", "F#", "G", "G#", "A", "Bb", "B")  # minor kinds
_FLAT_ROOTS = ("C", "Db", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B")

ROOTLESS = 3  # a missing root counts for so many notes more

# Symbol after the root, degrees (in brackets: welcome but not expected), degrees
# that may be left out. Plainer kinds first.
_ROWS: tuple[tuple[str, str, str], ...] = (
    ("", "1 3 5", "5"),
    ("m", "1 b3 5", "5"),
    ("5", "1 5", ""),
    ("7", "1 3 5 b7", "5"),
    ("m7", "1 b3 5 b7", "5"),
    ("maj7", "1 3 5 7", "5"),
    ("dim", "1 b3 b5", ""),
    ("dim7", "1 b3 b5 bb7", ""),
    ("m7b5", "1 b3 b5 b7", ""),
    ("aug", "1 3 #5", ""),
    ("sus4", "1 4 5", ""),
    ("sus2", "1 2 5", ""),
    ("6", "1 3 5 6", ""),
    ("m6", "1 b3 5 6", ""),
    ("7sus4", "1 4 5 b7", "5"),
    ("add9", "1 3 5 9", ""),
    ("madd9", "1 b3 5 9", ""),
    ("9", "1 3 5 b7 9", "5"),
    ("m9", "1 b3 5 b7 9", "5"),
    ("maj9", "1 3 5 7 9", "5"),
    ("69", "1 3 5 6 9", "5"),
    ("m69", "1 b3 5 6 9", "5"),
    ("mmaj7", "1 b3 5 7", "5"),
    ("7b5", "1 3 b5 b7", ""),
    ("aug7", "1 3 #5 b7", ""),
    ("maj7b5", "1 3 b5 7", ""),
    ("maj7#5", "1 3 #5 7", ""),
    ("mmaj7b5", "1 b3 b5 7", ""),
    ("9sus4", "1 4 5 b7 9", "5"),
    ("7b9", "1 3 5 b7 b9", "5"),
    ("7#9", "1 3 5 b7 #9", "5"),
    ("9b5", "1 3 b5 b7 9", ""),
    ("aug9", "1 3 #5 b7 9", ""),
    ("7b9#5", "1 3 #5 b7 b9", ""),
    ("m9b5", "1 b3 b5 b7 9", ""),
    ("mmaj9", "1 b3 5 7 9", "5"),
    ("alt", "1 3 b5", ""),
    ("13", "1 3 5 b7 9 (11) 13", "5 9"),
    ("m11", "1 b3 5 b7 9 11", "5 9"),
    ("11", "1 3 5 b7 9 11", "3 5 9"),
    ("9#11", "1 3 5 b7 9 #11", "5 9"),
    ("maj11", "1 3 5 7 9 11", "3 5 9"),
    ("maj13", "1 3 5 7 9 (11) 13", "5 9"),
    ("mmaj11", "1 b3 5 7 9 11", "5 9"),
    ("13b9", "1 3 5 b7 b9 13", "5"),
    ("13b5b9", "1 3 b5 b7 b9 13", ""),
    ("7b9b13", "1 3 5 b7 b9 b13", "5"),
    ("7#9b13", "1 3 5 b7 #9 b13", "5"),
)


# Symbols that a reader of chord names knows; the others are exact and tell nobody anything.
COMMON = frozenset(
    ("", "m", "5", "7", "m7", "maj7", "dim", "dim7", "m7b5", "aug", "sus4", "sus2", "6", "m6",
     "7sus4", "add9", "madd9", "9", "m9", "maj9", "69", "mmaj7", "7b9", "7#9")
)  # fmt: skip


@dataclass(frozen=True)
class _Kind:
    symbol: str
    degrees: tuple[tuple[int, int], ...]  # (degree number, semitones above the root)
    required: frozenset[int]  # pitch classes above the root
    allowed: frozenset[int]
    usual: frozenset[int]  # those that are missed when they are not there
    rootless: bool  # five notes or more: players leave the root to the bass


@dataclass(frozen=True)
class ChordLabel:
    """A chord name.

    ``name`` is for example ``Am7/G``, empty where the notes make no chord we
    know. ``inversion`` is 0 with the root lowest, 1 with the third (or what
    stands for it), 2 the fifth, 3 the seventh or sixth; None where there is no
    name or the lowest note is foreign to the chord. ``notes`` are the note
    names, lowest first; ``also`` other names the same notes may bear, likelier
    first.
    """

    name: str
    root: str | None
    symbol: str
    bass: str | None
    inversion: int | None
    notes: tuple[str, ...]
    also: tuple[str, ...] = ()


def _degree(word: str) -> tuple[int, int]:
    number = int(word.lstrip("#b"))
    alter = word.count("#") - word.count("b")
    return number, (_DEGREES[number] + alter) % 12


def _kind(symbol: str, degrees: str, omit: str) -> _Kind:
    parts = tuple(_degree(w.strip("()")) for w in degrees.split())
    allowed = frozenset(s for _, s in parts)
    usual = frozenset(_degree(w)[1] for w in degrees.split() if "(" not in w)
    required = usual - {_degree(w)[1] for w in omit.split()}
    return _Kind(symbol, parts, required, allowed, usual, len(parts) > 4)


KINDS: tuple[_Kind, ...] = tuple(_kind(*row) for row in _ROWS)


@dataclass(frozen=True)
class _Reading:
    """One way to hear the notes; smaller is likelier."""

    missing: int
    not_in_bass: bool
    rank: int
    root: int
    kind: _Kind


Names = tuple[tuple[int, str], ...]  # pitch class, how the music spells it


def name_chord(
    midis: Iterable[int], *, bass: int | None = None, names: Mapping[int, str] | None = None
) -> ChordLabel:
    """Name the chord of the sounding MIDI numbers (any order, doublings allowed).

    ``bass`` is the MIDI number of the harmony's bass where that is not the lowest note;
    ``names`` tells how the music spells pitch classes, such as {10: "Bb"}.
    """
    sounding = sorted(set(midis))
    low = [] if bass is None else [bass % 12]
    order = tuple(dict.fromkeys([*low, *(m % 12 for m in sounding)]))
    return _name(order, tuple(sorted((names or {}).items())))


@lru_cache(maxsize=4096)
def _name(order: tuple[int, ...], spelled: Names = ()) -> ChordLabel:
    """``order`` holds the pitch classes, the lowest sounding one first."""
    if not order:
        return ChordLabel("", None, "", None, None, ())
    own = dict(spelled)
    notes = tuple(own.get(p, _FLAT_ROOTS[p]) for p in order)
    if len(order) == 1:
        return ChordLabel(notes[0], notes[0], "", notes[0], 0, notes)
    readings = _readings(frozenset(order), order[0])
    if readings:
        texts = [_text(r, order[0], own) for r in readings]
        first = readings[0]
        names = _spelling(first, own)
        symbols = [d[1] for d in first.kind.degrees]
        return ChordLabel(
            texts[0],
            _root_name(first, own),
            first.kind.symbol,
            names[order[0]],
            symbols.index((order[0] - first.root) % 12),
            tuple(names[p] for p in order),
            tuple(dict.fromkeys(texts[1:])),
        )
    return _over_foreign_bass(order, notes, own)


def _over_foreign_bass(
    order: tuple[int, ...], notes: tuple[str, ...], own: Mapping[int, str]
) -> ChordLabel:
    upper = frozenset(order[1:])
    readings = [r for r in _readings(upper, -1) if not r.missing] if len(upper) > 2 else []
    if not readings:
        return ChordLabel("", None, "", notes[0], None, notes)
    names = {order[0]: notes[0]} | _spelling(readings[0], own)
    texts = [f"{_root_name(r, own)}{r.kind.symbol}/{notes[0]}" for r in readings]
    return ChordLabel(
        texts[0],
        _root_name(readings[0], own),
        readings[0].kind.symbol,
        notes[0],
        None,
        tuple(names[p] for p in order),
        tuple(texts[1:]),
    )


def _readings(present: frozenset[int], bass: int) -> list[_Reading]:
    """All kinds on all roots that hold exactly these pitch classes, likeliest first."""
    found = []
    for root in range(12):
        above = frozenset((p - root) % 12 for p in present)
        for rank, kind in enumerate(KINDS):
            if not above <= kind.allowed:
                continue
            rootless = root not in present
            if rootless and not (kind.rootless and len(present) >= 4):
                continue
            if not kind.required - ({0} if rootless else set()) <= above:
                continue
            missing = len(kind.usual - above) + (ROOTLESS if rootless else 0)
            found.append(_Reading(missing, root != bass, rank, root, kind))
    found.sort(key=lambda r: (r.missing, r.not_in_bass, r.rank, r.root))
    return [r for r in found if r.missing <= found[0].missing + 1 or r.missing > ROOTLESS]


def _root_name(reading: _Reading, own: Mapping[int, str]) -> str:
    if reading.root in own:
        return own[reading.root]
    minor = 3 in reading.kind.allowed and 4 not in reading.kind.allowed
    return (_SHARP_ROOTS if minor else _FLAT_ROOTS)[reading.root]


def _spelling(reading: _Reading, own: Mapping[int, str]) -> dict[int, str]:
    """Pitch class to note name: as the music spells it, else by the letters of the
    chord's degrees."""
    root = _root_name(reading, own)
    out = {}
    for number, semitones in reading.kind.degrees:
        letter = STEPS[(STEPS.index(root[0]) + number - 1) % 7]
        pitch = (reading.root + semitones) % 12
        alter = (pitch - STEP_SEMITONES[letter] + 6) % 12 - 6
        out[pitch] = letter + ("#" * alter if alter > 0 else "b" * -alter)
    return out | {p: name for p, name in own.items() if p in out}


def _text(reading: _Reading, bass: int, own: Mapping[int, str]) -> str:
    text = f"{_root_name(reading, own)}{reading.kind.symbol}"
    if reading.missing == 1 and reading.kind.symbol in ("", "m"):
        text += "(no 5)"
    if bass == reading.root:
        return text
    return f"{text}/{_spelling(reading, own)[bass]}"
