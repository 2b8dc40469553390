"""A lead sheet (tune and chord symbols) made into a solo: the tune over a right-hand pattern.

A pattern is named by its letters, one for each stroke of a group: p plays the bass (the
root, or the bass after the stroke of the symbol), i, m and a notes of the chord below the
tune, the third and the seventh first; letters joined by + are struck together. Groups
repeat through the bar. Patterns by metre and level: common practice, no source.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction

from workbench.fingering.shapes.chordname import KINDS
from workbench.fingering.types import Level
from workbench.language.fact import fact
from workbench.music.errors import BadInput
from workbench.music.model import STEP_SEMITONES, Bar, ChordName, Note, Piece
from workbench.music.parsing.spelling import spell

FINGERS = "pima"
LINE_SHARE = 0.9  # of its moments at which a lead sheet has one note alone
VOICE = 2  # of the accompaniment
BASS_TOP = 60  # MIDI: the bass lies below it where that is below the tune
PICKED = re.compile(r"^[pima](\+[pima])*( [pima](\+[pima])*)*$")
_SYMBOL = re.compile(r"^([A-G])([#b♯♭]*)([^/]*)(?:/([A-G])([#b♯♭]*))?$")
_OTHER_NAMES = {
    "M7": "maj7", "Maj7": "maj7", "j7": "maj7", "Δ": "maj7", "Δ7": "maj7", "maj": "", "M": "",
    "min": "m", "mi": "m", "-": "m", "min7": "m7", "mi7": "m7", "-7": "m7", "o": "dim",
    "°": "dim", "o7": "dim7", "°7": "dim7", "+": "aug", "ø": "m7b5", "ø7": "m7b5",
    "sus": "sus4", "+7": "aug7", "7+": "aug7", "6/9": "69", "2": "sus2",
}  # fmt: skip


@dataclass(frozen=True)
class Pattern:
    """``letters`` are its name, ``step`` the quarter lengths from stroke to stroke."""

    letters: str
    step: Fraction

    @property
    def strokes(self) -> tuple[str, ...]:
        """The letters of each stroke, such as ("p", "im")."""
        return tuple(word.replace("+", "") for word in self.letters.split())


_EIGHTH, _QUARTER = Fraction(1, 2), Fraction(1)
#: By the kind of metre, from easy to less easy.
PATTERNS: dict[str, tuple[Pattern, ...]] = {
    "even": (
        Pattern("p", Fraction(2)), Pattern("p i+m", _QUARTER), Pattern("p i m i", _EIGHTH),
        Pattern("p i m a", _EIGHTH),
    ),
    "three": (
        Pattern("p", Fraction(3)), Pattern("p i+m i+m", _QUARTER), Pattern("p i m a m i", _EIGHTH),
    ),
    "compound": (
        Pattern("p", Fraction(3, 2)), Pattern("p i m", _EIGHTH), Pattern("p i m a m i", _EIGHTH),
    ),
}  # fmt: skip
_FOR_LEVEL = {"beginner": 0, "easy": 1, "middle": 2, "advanced": 3}


def metre_of(bar: Bar) -> str:
    """The kind of a bar's metre, a key of ``PATTERNS``."""
    beats, unit = bar.time_signature
    if unit >= 8 and beats % 3 == 0:
        return "compound"
    return "three" if beats % 3 == 0 else "even"


def patterns_for(piece: Piece) -> tuple[Pattern, ...]:
    """The patterns of the metre that most bars have."""
    kinds = [metre_of(bar) for bar in piece.bars]
    return PATTERNS[max(PATTERNS, key=kinds.count)]


def pattern_for(piece: Piece, level: Level) -> Pattern:
    """The pattern of a level in the piece's metre."""
    offered = patterns_for(piece)
    return offered[min(_FOR_LEVEL.get(level, 1), len(offered) - 1)]


def pattern_named(piece: Piece, letters: str) -> Pattern:
    """The pattern of these letters; one of one's own takes its strokes in eighths.

    Raises BadInput where it is no pattern.
    """
    words = " ".join(letters.split())
    known = {p.letters: p for p in patterns_for(piece)}
    if words in known:
        return known[words]
    if not PICKED.match(words):
        raise BadInput(
            "'{letters}' is no right-hand pattern; write the letters p i m a with spaces, "
            "as in {known}.",
            letters=letters,
            known=", ".join(f"'{name}'" for name in known),
        )
    return Pattern(words, _EIGHTH)


def is_lead_sheet(piece: Piece) -> bool:
    """Whether it is a single line with chord symbols over at least half of its bars."""
    notes = [(bar.index, n.onset) for bar in piece.bars for n in bar.notes if not n.grace]
    named = sum(bool(bar.chords) for bar in piece.bars)
    return (
        bool(notes)
        and len(set(notes)) >= LINE_SHARE * len(notes)
        and 2 * named >= sum(not bar.pickup for bar in piece.bars)
    )


def tones(symbol: str) -> tuple[int, tuple[int, ...]] | None:
    """The pitch classes of the bass, and of the chord in the order in which they are wanted
    above it (third, seventh, fifth, the others, root); None for a symbol not known."""
    found = _SYMBOL.match(symbol.replace(" ", ""))
    if not found:
        return None
    step, sign, kind, low, low_sign = found.groups()
    kind = _OTHER_NAMES.get(kind, kind)
    known = next((k for k in KINDS if k.symbol == kind), None)
    if known is None:
        return None
    root = (STEP_SEMITONES[step] + _alter(sign)) % 12
    bass = (STEP_SEMITONES[low] + _alter(low_sign or "")) % 12 if low else root
    want = {3: 0, 4: 0, 7: 1, 6: 2, 5: 3, 1: 9}
    order = sorted(known.degrees, key=lambda d: (want.get(d[0], 4), d[0]))
    return bass, tuple((root + semitones) % 12 for _, semitones in order)


def _alter(sign: str) -> int:
    return sum(1 if c in "#♯" else -1 for c in sign)


def solo(piece: Piece, pattern: Pattern) -> Piece:
    """The tune with the accompaniment below it in voice 2, to be laid on an instrument.

    A symbol holds until the next. Bars before the first symbol, and those of a symbol not
    known, stay without accompaniment; the latter are told among the warnings. Raises
    BadInput where the piece is no lead sheet.
    """
    if not is_lead_sheet(piece):
        raise BadInput(
            "'{title}' is no lead sheet: that is one line of tune with chord symbols above "
            "at least half of its bars.",
            title=piece.title,
        )
    bars, now, unknown = [], "", []
    line = _Line(piece)
    for bar in piece.bars:
        spans = list(_spans(bar, now))
        now = bar.chords[-1].text if bar.chords else now
        added: list[Note] = []
        for start, end, text in spans:
            found = tones(text)
            if found is None:
                if text and not text.upper().startswith("N"):
                    unknown.append((bar.number, text))
                continue
            for note in _strokes(bar, line, pattern, start, end, *found):
                added.append(replace(note, id=f"acc{bar.index + 1}-{len(added) + 1}"))
        if bar.pickup:
            added = []
        notes = sorted((*bar.notes, *added), key=lambda n: (n.onset, n.voice))
        bars.append(replace(bar, notes=tuple(notes)))
    told = tuple(
        fact("unknown chord", bar=number, symbol=text) for number, text in dict.fromkeys(unknown)
    )
    return replace(piece, bars=tuple(bars), warnings=(*piece.warnings, *told), written=())


class _Line:
    """What of the tune sounds when."""

    def __init__(self, piece: Piece) -> None:
        self._bars: dict[int, list[tuple[Fraction, Fraction, int]]] = {}
        for bar in piece.bars:
            for n in bar.notes:
                if not n.grace:
                    row = (n.onset, n.onset + n.duration, n.midi)
                    self._bars.setdefault(bar.index, []).append(row)

    def over(self, bar: Bar, start: Fraction, end: Fraction) -> int:
        """The lowest note of the tune between two moments of a bar."""
        row = self._bars.get(bar.index, [])
        inside = [midi for a, b, midi in row if a < end and b > start]
        return min(inside or [midi for *_, midi in row], default=72)

    def struck(self, bar: Bar, onset: Fraction) -> bool:
        return any(a == onset for a, *_ in self._bars.get(bar.index, []))


def _spans(bar: Bar, before: str) -> Iterator[tuple[Fraction, Fraction, str]]:
    marks = [ChordName(Fraction(0), before), *bar.chords]
    for at, mark in enumerate(marks):
        end = marks[at + 1].onset if at + 1 < len(marks) else bar.length
        if end > mark.onset:
            yield mark.onset, end, mark.text


def _strokes(
    bar: Bar, line: _Line, pattern: Pattern, start: Fraction, end: Fraction, bass: int,
    chord: tuple[int, ...],
) -> Iterator[Note]:  # fmt: skip
    """The strokes of a pattern while one chord lasts; it begins anew with every chord."""
    strokes, at, count = pattern.strokes, start, 0
    most = max((FINGERS.index(f) for f in "".join(strokes)), default=0)
    group = pattern.step * len(strokes)
    while at < end:
        letters = strokes[count % len(strokes)]
        until = min(end, at + pattern.step)
        if "p" in letters:
            last = min(end, at + group)
            roof = line.over(bar, at, last)
            over_it = min(_voicing(chord, roof, most), default=roof)
            low = _below(bass, min(roof - 3, BASS_TOP, over_it - 1))
            yield _note(bar, at, last - at, low)
        wanted = [FINGERS.index(f) for f in letters if f != "p"]
        roof = line.over(bar, at, until)
        voicing = _voicing(chord, roof, most)
        for finger in wanted:
            if finger == 3 and line.struck(bar, at):
                continue  # the ring finger has the tune
            if finger - 1 < len(voicing):
                yield _note(bar, at, until - at, voicing[finger - 1])
        at, count = until, count + 1


def _below(pitch_class: int, most: int) -> int:
    return most - (most - pitch_class) % 12


def _voicing(chord: tuple[int, ...], roof: int, most: int) -> tuple[int, ...]:
    """At most so many notes of the chord close below the tune, from the lowest; the tune is
    doubled, at the octave, only where there would be fewer."""
    own = sorted(chord, key=lambda pc: pc == roof % 12)[:most]
    return tuple(sorted(_below(pc, roof - 1) for pc in own))


def _note(bar: Bar, onset: Fraction, length: Fraction, midi: int) -> Note:
    return Note("", onset, length, spell(midi, bar.key), VOICE)
