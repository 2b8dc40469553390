"""A lead sheet (tune and chord symbols) made into a solo: the tune over a right-hand pattern.

A pattern is named by its letters, one for each stroke of a group: p plays the bass (the
root, or the bass after the stroke of the symbol), i, m and a notes of the chord below the
tune, the third and the seventh first; letters joined by + are struck together. Groups
repeat through the bar. Patterns by metre and level: common practice, no source.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from workbench.arranging.arrange import asked_moves, key_cost
from workbench.arranging.options import Options
from workbench.arranging.search import Search
from workbench.arranging.sounds import MADE, texture
from workbench.arranging.voicing import (
    PatternRound,
    PatternStroke,
    Sung,
    Voicing,
    Voicings,
    sounding_until,
    voices_of,
)
from workbench.arranging.weights import Wishes
from workbench.fingering.shapes.chordname import KINDS
from workbench.fingering.types import Level
from workbench.instrument.model import Hand, Instrument
from workbench.instrument.table import HANDS
from workbench.language.fact import fact
from workbench.music.errors import BadInput
from workbench.music.model import STEP_SEMITONES, Bar, ChordName, Note, Piece
from workbench.music.parsing.spelling import spell

FINGERS = "pima"
LINE_SHARE = 0.9  # of its moments at which a lead sheet has one note alone
HARDLY_WORSE = 1.25  # a tune stays in its key where another lies no better than by this
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
    """The tune with the accompaniment below it in voice 2, for no instrument yet: the notes of
    the chords close below the tune.

    A symbol holds until the next. Bars before the first symbol, and those of a symbol not
    known, stay without accompaniment; the latter are told among the warnings. Raises
    BadInput where the piece is no lead sheet.
    """
    groups = _groups(piece, pattern)
    return _accompanied(piece, groups, [_free(group) for _, group in groups])


def solo_on(
    piece: Piece, pattern: Pattern, instrument: Instrument, *, key: str | None = None,
    transpose: int | None = None, hand: Hand | None = None, wishes: Wishes | None = None,
) -> tuple[Piece, int]:  # fmt: skip
    """As ``solo``, of notes that the instrument has below the tune and the hand can hold with
    it, and the semitones by which it is to be moved there: to ``key`` or by ``transpose``, or
    without either by none where the tune lies well as written, else to where all of it lies
    best. Raises BadInput where the piece is no lead sheet or the key no key."""
    options = Options(instrument, hand or HANDS["medium"], wishes or Wishes())
    groups = _groups(piece, pattern)
    rounds = [group for _, group in groups]
    search = Search(texture(_accompanied(piece, groups, [_free(g) for g in rounds])), options)
    voicings = Voicings(options)
    found = {
        move: voicings.chosen(rounds, move)
        for move in asked_moves(search, piece.key, key, transpose)
    }
    line, where = search.texture.tune, options.where
    lost = {m: sum(not where(p + m) for p in line) for m in found}
    leaves = options.weights["tune_octave"]
    cost = {m: found[m][0] + key_cost(search, piece.key, m) + leaves * lost[m] for m in found}
    move = min(found, key=lambda m: (cost[m], abs(m)))
    if key is None and cost.get(0, cost[move] * 2) <= HARDLY_WORSE * cost[move]:
        move = 0
    return _accompanied(piece, groups, found[move][1]), move


def solos(
    piece: Piece, pattern: Pattern, instrument: Instrument, hand: Hand, wishes: Wishes
) -> Callable[[int], Piece]:
    """The solos for an instrument by the semitones that they are to be moved there; each in the
    pitch of the piece. Raises BadInput where it is no lead sheet."""
    groups = _groups(piece, pattern)
    voicings = Voicings(Options(instrument, hand, wishes))
    rounds = [group for _, group in groups]
    return lambda move: _accompanied(piece, groups, voicings.chosen(rounds, move)[1])


def _accompanied(
    piece: Piece, groups: list[tuple[int, PatternRound]], voicings: Sequence[Voicing]
) -> Piece:
    added: dict[int, list[Note]] = {}
    for (index, group), voicing in zip(groups, voicings, strict=True):
        row = added.setdefault(index, [])
        for note in _played(piece.bars[index], group, voicing):
            row.append(replace(note, id=f"{MADE}{index + 1}-{len(row) + 1}"))
    bars = []
    for bar in piece.bars:
        notes = sorted((*bar.notes, *added.get(bar.index, ())), key=lambda n: (n.onset, n.voice))
        bars.append(replace(bar, notes=tuple(notes)))
    unknown = [
        (bar.number, mark.text)
        for bar in piece.bars
        for mark in bar.chords
        if mark.text and not mark.text.upper().startswith("N") and tones(mark.text) is None
    ]
    told = tuple(
        fact("unknown chord", bar=number, symbol=text) for number, text in dict.fromkeys(unknown)
    )
    return replace(piece, bars=tuple(bars), warnings=(*piece.warnings, *told), written=())


def _groups(piece: Piece, pattern: Pattern) -> list[tuple[int, PatternRound]]:
    """The rounds of the pattern with the index of their bar; it begins anew with every chord.
    Raises BadInput where the piece is no lead sheet."""
    if not is_lead_sheet(piece):
        raise BadInput(
            "'{title}' is no lead sheet: that is one line of tune with chord symbols above "
            "at least half of its bars.",
            title=piece.title,
        )
    out: list[tuple[int, PatternRound]] = []
    now = ""
    for bar in piece.bars:
        tune = tuple((n.onset, n.onset + n.duration, n.midi) for n in bar.notes if not n.grace)
        for start, end, text in _spans(bar, now) if not bar.pickup else ():
            found = tones(text)
            if found is not None:
                out += [
                    (bar.index, _group(pattern, tune, at, end, found, at > start or text == now))
                    for at in _rounds(pattern, start, end)
                ]
            now = text
        now = bar.chords[-1].text if bar.chords else now
    return out


def _rounds(pattern: Pattern, start: Fraction, end: Fraction) -> Iterator[Fraction]:
    at = start
    while at < end:
        yield at
        at += pattern.step * len(pattern.strokes)


def _group(
    pattern: Pattern, tune: tuple[Sung, ...], start: Fraction, end: Fraction,
    found: tuple[int, tuple[int, ...]], again: bool,
) -> PatternRound:  # fmt: skip
    end = min(end, start + pattern.step * len(pattern.strokes))
    struck = {a for a, *_ in tune}
    strokes = []
    for at, letters in enumerate(pattern.strokes):
        begin = start + at * pattern.step
        voices = tuple(
            FINGERS.index(f)
            for f in letters
            if f != "a" or begin not in struck  # the ring finger has the tune
        )
        if begin < end and voices:
            strokes.append(PatternStroke(begin, min(end, begin + pattern.step), voices))
    sung = tuple(row for row in tune if row[0] < end and row[1] > start)
    return PatternRound(start, end, tuple(strokes), *found, sung, not start, again)


def _spans(bar: Bar, before: str) -> Iterator[tuple[Fraction, Fraction, str]]:
    marks = [ChordName(Fraction(0), before), *bar.chords]
    for at, mark in enumerate(marks):
        end = marks[at + 1].onset if at + 1 < len(marks) else bar.length
        if end > mark.onset:
            yield mark.onset, end, mark.text


def _played(bar: Bar, group: PatternRound, voicing: Voicing) -> Iterator[Note]:
    """The notes of a round: the bass rings through it, the others until the next stroke, none
    beyond the moment at which the tune goes below."""
    rows = [(s, voices_of(s, len(voicing) - 1)) for s in group.strokes]
    for stroke, voices in rows:
        for voice in voices if voicing else ():
            end = stroke.end
            if not voice:
                later = (s.start for s, others in rows if 0 in others and s.start > stroke.start)
                end = min(later, default=group.end)
            until = sounding_until(voicing[voice], stroke.start, end, group.tune)
            if until > stroke.start:
                yield _note(bar, stroke.start, until - stroke.start, voicing[voice])


def _free(group: PatternRound) -> Voicing:
    """Chord notes close below the tune, the bass below them, on no instrument."""
    roof = min((m for *_, m in group.tune), default=72)
    own = sorted(group.chord, key=lambda pc: pc == roof % 12)[: group.fingers]
    inner = sorted(_below(pc, roof - 1) for pc in own)
    low = _below(group.bass, min(roof - 3, BASS_TOP, min(inner, default=roof) - 1))
    return (low, *inner)


def _below(pitch_class: int, most: int) -> int:
    return most - (most - pitch_class) % 12


def _note(bar: Bar, onset: Fraction, length: Fraction, midi: int) -> Note:
    return Note("", onset, length, spell(midi, bar.key), VOICE)
