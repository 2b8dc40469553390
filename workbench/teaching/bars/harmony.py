"""Chords, keys and cadences found in the notes.

A bar gets one chord where its notes make one; else each half, else each beat
that does. Keys by correlation with the probe-tone profiles of Krumhansl and
Kessler 1982. A judgement, not a proof: teachers hear more than counts tell.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Literal

from workbench.fingering.shapes.chordname import ChordLabel, name_chord
from workbench.fingering.types import FingeredNote, Fingering
from workbench.language.message import Listed, SymbolName, Text, in_a_row, mark, message
from workbench.music.beats import beat_length, metric_onset
from workbench.music.model import STEP_SEMITONES, Bar, Key, Note, Piece
from workbench.music.order.form import Section, sections
from workbench.music.parsing.spelling import chord_names
from workbench.music.remembered import remembered
from workbench.music.ringing.sounds import sounds
from workbench.teaching.bars.strokes import fingered_notes

# Krumhansl and Kessler 1982, probe-tone ratings from the tonic up
MAJOR = (6.35, 2.23, 3.48, 2.33, 4.38, 4.09, 2.52, 5.19, 2.39, 3.66, 2.29, 2.88)
MINOR = (6.33, 2.68, 3.52, 5.38, 2.60, 3.53, 2.54, 4.75, 3.98, 2.69, 3.34, 3.17)
LEAST_CLASSES = 3  # different notes a chord needs to be named

# Symbols a bar may bear: more than these comes of passing notes more often than not
PLAIN = frozenset(
    ("", "m", "7", "m7", "maj7", "dim", "dim7", "m7b5", "aug", "sus4", "sus2", "6", "m6", "7sus4")
)


INVERSIONS = {
    1: mark("first inversion"),
    2: mark("second inversion"),
    3: mark("third inversion"),
}
Close = Literal["full close", "half close", "plagal close", "interrupted close"]
FULL: Close = mark("full close")
HALF: Close = mark("half close")
PLAGAL: Close = mark("plagal close")
INTERRUPTED: Close = mark("interrupted close")


@dataclass(frozen=True)
class HeardChord:
    """A chord from ``onset`` on in a written bar. ``grip`` shows the strings that are used
    of it as frets from the highest-numbered string (x: not played), "" without a fingering."""

    bar: int
    onset: Fraction
    duration: Fraction
    label: ChordLabel
    grip: str = ""

    @property
    def words(self) -> Listed:
        """For example "F/A, first inversion"."""
        return in_a_row((SymbolName(self.label.name), self.inversion))

    @property
    def inversion(self) -> Text:
        """ "first inversion" and so on; "" where the root is at the bottom."""
        turn = INVERSIONS.get(self.label.inversion or 0)
        return message(turn) if turn else ""


@dataclass(frozen=True)
class SectionKey:
    """The key heard in a section; ``written`` where the key signature says the same."""

    section: Section
    key: Key
    fit: float  # correlation, -1 to 1
    written: bool


@dataclass(frozen=True)
class Cadence:
    """How a section closes: ``kind`` (FULL, HALF, PLAGAL, INTERRUPTED), the chords that make it."""

    section: Section
    kind: Close
    chords: tuple[HeardChord, HeardChord]


@remembered
def chords(
    piece: Piece, fingering: Fingering | None = None, strings: int = 0
) -> tuple[HeardChord, ...]:
    """The chords of a piece in written order; nothing for bars that make none.

    ``strings`` is the number of strings, for the grips.
    """
    hands = fingered_notes(fingering) if fingering is not None else {}
    piece = sounds(piece).piece
    out: list[HeardChord] = []
    ringing: list[tuple[Fraction, Note]] = []
    ends = _ends(piece)
    for bar in piece.bars:
        notes = [n for n in bar.notes if not n.grace]
        spans = [(n.onset, n.onset + n.duration, n) for n in notes]
        spans += [(Fraction(0), end, n) for end, n in ringing if end > 0]
        found = _bar_chords(bar, spans, hands, strings)
        if not found and bar.index in ends:
            last = _closing(bar, spans, hands, strings)
            found = [last] if last else []
        out += found
        ringing = [(b - bar.length, n) for _, b, n in spans if b > bar.length]
    return tuple(out)


Span = tuple[Fraction, Fraction, Note]


def _ends(piece: Piece) -> set[int]:
    """The bars on which sections close: the last with notes, and those before a double
    bar, a repeat or a Fine."""
    sounding = [b.index for b in piece.bars if b.notes]
    marked = {b.index for b in piece.bars if b.double_bar or b.repeat_end or b.fine}
    return marked | set(sounding[-1:])


def _bar_chords(
    bar: Bar, spans: list[Span], hands: dict[str, FingeredNote], strings: int
) -> list[HeardChord]:
    beat = beat_length(bar.time_signature)
    whole = _chord(bar, Fraction(0), bar.length, spans, hands, strings)
    if whole is not None and len(whole.label.notes) <= LEAST_CLASSES:
        return [whole]
    for size in (bar.length / 2, beat):
        if size < beat or size % beat:
            continue
        count = int(bar.length / size)
        found = [_chord(bar, k * size, size, spans, hands, strings) for k in range(count)]
        parts = [c for c in found if c is not None]
        # every part has to make a chord before the bar is thought of as several
        if parts and (len(parts) == count or whole is None):
            return _merged(parts)
    return [] if whole is None else [whole]


def _chord(
    bar: Bar,
    start: Fraction,
    length: Fraction,
    spans: list[Span],
    hands: dict[str, FingeredNote],
    strings: int,
) -> HeardChord | None:
    end = start + length
    rows = [(a, n) for a, b, n in spans if a < end and b > start]
    beat = beat_length(bar.time_signature)
    for passing in (True, False):
        # passing notes are short and off the beat; without them a chord may be plain
        inside = [
            (a, n)
            for a, n in rows
            if passing or n.duration >= beat or metric_onset(bar, a) % beat == 0
        ]
        if len({n.midi % 12 for _, n in inside}) < LEAST_CLASSES:
            continue
        label = _label(bar, inside, start + beat)
        if label.inversion is not None and label.symbol in PLAIN:
            break
    else:
        return None
    grip = _grip([n for _, n in inside], hands, strings)
    return HeardChord(bar.index, start, length, label, grip)


def _label(bar: Bar, inside: Sequence[tuple[Fraction, Note]], first_beat: Fraction) -> ChordLabel:
    """The name of notes with their onsets, spelled as in the score. The bass is the lowest
    note of the first beat: what the bass does later is its line, not the harmony. Where
    the root lies lowest of all, later or not, the chord stands on it."""
    names = chord_names((n for _, n in inside), bar.key)
    midis = [n.midi for _, n in inside]
    early = [n.midi for a, n in inside if a < first_beat] or midis
    lowest = name_chord(midis, bass=min(midis), names=names)
    if lowest.inversion == 0 and lowest.symbol in PLAIN:
        return lowest
    return name_chord(midis, bass=min(early), names=names)


def _grip(notes: Sequence[Note], hands: dict[str, FingeredNote], strings: int) -> str:
    frets: dict[int, int] = {}
    for n in notes:
        hand = hands.get(n.id)
        if hand is not None and hand.string is not None and hand.fret is not None:
            frets.setdefault(hand.string, hand.fret)
    return "-".join(str(frets.get(s, "x")) for s in range(strings, 0, -1)) if frets else ""


def _closing(
    bar: Bar, spans: Sequence[Span], hands: dict[str, FingeredNote], strings: int
) -> HeardChord | None:
    """The chord on which a section ends, which often has no fifth or no third, or is the
    keynote alone in octaves. None where that is no chord's beginning either."""
    if not spans:
        return None
    start = max(Fraction(0), max(a for a, _, _ in spans))
    for notes in (
        [n for a, b, n in spans if a <= start < b],  # the last stroke, and what rings into it
        [n for _, _, n in spans],
    ):
        label = name_chord((n.midi for n in notes), names=chord_names(notes, bar.key))
        classes = {n.midi % 12 for n in notes}
        plain = label.inversion is not None and label.symbol in (PLAIN | {"5"})
        if plain and len(notes) > 1 and (len(classes) > 1 or tonic(bar.key) in classes):
            label = replace(label, name=label.name.replace("(no 5)", ""))
            begin = min((max(Fraction(0), a) for a, _, n in spans if n in notes), default=start)
            return HeardChord(bar.index, begin, bar.length - begin, label,
                              _grip(notes, hands, strings))  # fmt: skip
    return None


def _merged(parts: list[HeardChord]) -> list[HeardChord]:
    """Neighbours of one name become one chord."""
    out: list[HeardChord] = []
    for chord in parts:
        last = out[-1] if out else None
        if (
            last
            and last.label.name == chord.label.name
            and (last.onset + last.duration == chord.onset)
        ):
            whole = last.duration + chord.duration
            out[-1] = HeardChord(last.bar, last.onset, whole, last.label, last.grip)
        else:
            out.append(chord)
    return out


def key_heard(notes: Iterable[Note]) -> tuple[Key, float] | None:
    """The key whose profile fits best, and how well (correlation); None without notes or
    where all twelve are equal."""
    import numpy as np  # takes long to load

    weights = np.zeros(12)
    for n in notes:
        weights[n.midi % 12] += float(n.duration)
    if weights.std() == 0:
        return None
    best: tuple[float, Key] | None = None
    for tonic in range(12):
        for mode, profile in (("major", MAJOR), ("minor", MINOR)):
            fit = float(np.corrcoef(np.roll(profile, tonic), weights)[0, 1])
            if best is None or fit > best[0] + 1e-12:
                best = (fit, key_on(tonic, mode))
    return None if best is None else (best[1], best[0])


def key_on(tonic: int, mode: str) -> Key:
    """The key on a pitch class with the fewest sharps or flats."""
    home = (tonic + 3) % 12 if mode == "minor" else tonic % 12
    fifths = (home * 7) % 12
    return Key(fifths if fifths <= 6 else fifths - 12, mode)


def tonic(key: Key) -> int:
    """Pitch class of the key's first degree."""
    return (key.fifths * 7 + (9 if key.mode == "minor" else 0)) % 12


@remembered
def section_keys(piece: Piece) -> tuple[SectionKey, ...]:
    """The key heard in every section; the written one where the notes fit it nearly as well
    (within 0.05; for a piece in one part 0.2, as the way through other keys is in it)."""
    out = []
    piece = sounds(piece).piece
    parts = sections(piece)
    near = 0.05 if len(parts) > 1 else 0.2
    for section in parts:
        bars = piece.bars[section.first_bar : section.last_bar + 1]
        notes = [n for b in bars for n in b.notes]
        found = key_heard(notes)
        if found is None:
            continue
        key, fit = found
        written = bars[0].key
        if key != written and fit_of(notes, written) >= fit - near:
            key, fit = written, fit_of(notes, written)
        out.append(SectionKey(section, key, fit, key == written))
    return tuple(out)


def fit_of(notes: Iterable[Note], key: Key) -> float:
    """How well the notes fit a key: correlation with its profile; 0 where there is none."""
    import numpy as np  # takes long to load

    weights = np.zeros(12)
    for n in notes:
        weights[n.midi % 12] += float(n.duration)
    if weights.std() == 0:
        return 0.0
    profile = np.roll(MAJOR if key.mode == "major" else MINOR, tonic(key))
    return float(np.corrcoef(profile, weights)[0, 1])


def root_class(label: ChordLabel) -> int | None:
    """Pitch class of a chord's root, None where it has none."""
    if not label.root:
        return None
    step, signs = label.root[0], label.root[1:]
    return (STEP_SEMITONES[step] + signs.count("#") - signs.count("b")) % 12


def cadences(piece: Piece, heard: tuple[HeardChord, ...] | None = None) -> tuple[Cadence, ...]:
    """The closes at the ends of sections, where the last two chords make one."""
    rows = heard if heard is not None else chords(piece)
    out = []
    for found in section_keys(piece):
        a, b = found.section.first_bar, found.section.last_bar
        inside = [c for c in rows if a <= c.bar <= b]
        last = [
            c for k, c in enumerate(inside) if k == 0 or c.label.root != inside[k - 1].label.root
        ]
        if not inside or len(last) < 2 or inside[-1].bar < b - 1:
            continue
        kind = _close(last[-2].label, last[-1].label, tonic(found.key))
        if kind:
            out.append(Cadence(found.section, kind, (last[-2], last[-1])))
    return tuple(out)


def _close(before: ChordLabel, last: ChordLabel, home: int) -> Close | None:
    one, two = root_class(before), root_class(last)
    if one is None or two is None:
        return None
    degrees = ((one - home) % 12, (two - home) % 12)
    major = not before.symbol.startswith(("m", "dim")) or before.symbol.startswith("maj")
    if degrees == (7, 0) and major:
        return FULL
    if degrees == (5, 0):
        return PLAGAL
    if degrees[1] == 7:
        return HALF
    if degrees[0] == 7 and degrees[1] in (8, 9):
        return INTERRUPTED
    return None
