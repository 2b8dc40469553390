"""Moving a piece to another key, spelled as that key asks.

Every spelled pitch has a place on the line of fifths (... Bb -2, F -1, C 0,
G 1, D 2 ...). A transposition moves all places by the same number of fifths
and all MIDI numbers by the same number of semitones, so that intervals keep
their names: what was a minor third stays one. Moving there and back gives
the same piece, unless a signature beyond seven or an accidental beyond the
double ones had to be written enharmonically.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from workbench.language.message import message
from workbench.music.errors import BadInput
from workbench.music.model import STEP_SEMITONES, Bar, ChordName, Key, Note, Piece, Pitch

_LINE = "FCGDAEB"
_MOST_FIFTHS = 7  # signatures of more sharps or flats do not exist
_MOST_ALTER = 2  # beyond double sharps and flats nothing can be printed

_KEY = re.compile(
    r"""^\s*([A-Ga-g])\s*([#b♯♭]|sharp|flat|is|-flat|-sharp)?\s*
        (major|maj|dur|minor|min|moll|m)?\s*$""",
    re.VERBOSE | re.IGNORECASE,
)
_CHORD = re.compile(r"(^|(?<=/))([A-G])(##|bb|[#b♯♭])?")


@dataclass(frozen=True)
class Shift:
    """A transposition: ``semitones`` up (negative: down), and ``fifths``
    along the line of fifths, which decide the spelling."""

    semitones: int
    fifths: int

    @property
    def back(self) -> Shift:
        """The transposition that undoes this one."""
        return Shift(-self.semitones, -self.fifths)


def place(step: str, alter: int) -> int:
    """Place of a spelled note on the line of fifths, C = 0, G = 1, F = -1."""
    return _LINE.index(step) - 1 + 7 * alter


def spelled(at: int) -> tuple[str, int]:
    """Step and alteration of a place on the line of fifths."""
    return _LINE[(at + 1) % 7], (at + 1) // 7


def parse_key(text: str, like: Key) -> Key:
    """The key that ``text`` names: ``F``, ``F major``, ``Bb``, ``Dm``, ``D minor``.

    A letter alone takes the mode of ``like``, the key the piece is in, since
    moving a piece does not change its mode. Raises BadInput where it names
    no key, or one with more than seven sharps or flats.
    """
    found = _KEY.match(text)
    if not found:
        raise BadInput(
            "Key '{text}' is not understood; write it like F, Bb, D minor or F#m.", text=text
        )
    step, sign, mode = found.groups()
    # "M" is major and "m" minor; all other words do not mind their case
    minor = mode is not None and mode != "M" and mode.lower() in ("m", "min", "minor", "moll")
    named = ("minor" if minor else "major") if mode else like.mode
    alter = 0 if not sign else (1 if sign.lower() in ("#", "♯", "sharp", "-sharp", "is") else -1)
    fifths = place(step.upper(), alter) - (3 if named == "minor" else 0)
    if abs(fifths) > _MOST_FIFTHS:
        other = enharmonic(Key(fifths, named))
        raise BadInput(
            "Key '{text}' would need {number} {signs}; write it as {other}.",
            text=text,
            number=abs(fifths),
            signs=message("sharps") if fifths > 0 else message("flats"),
            other=other.name,
        )
    return Key(fifths, named)


def enharmonic(key: Key) -> Key:
    """The same key with the other spelling where a signature passes seven."""
    if key.fifths > _MOST_FIFTHS:
        return replace(key, fifths=key.fifths - 12)
    if key.fifths < -_MOST_FIFTHS:
        return replace(key, fifths=key.fifths + 12)
    return key


def shift_to_key(source: Key, target: Key, semitones: int) -> Shift:
    """The shift from one signature to another that moves by ``semitones``.

    ValueError where those semitones do not lead there.
    """
    fifths = target.fifths - source.fifths
    if (7 * fifths - semitones) % 12:
        raise ValueError(f"{semitones} semitones do not lead from {source} to {target}")
    return Shift(semitones, fifths)


def shift_by(source: Key, semitones: int) -> Shift:
    """The shift by ``semitones`` that ends in the key of fewest sharps or flats.

    Six sharps or six flats: the kind the source has; flats where it has none.
    """

    def strain(fifths: int) -> tuple[int, bool]:
        ends = source.fifths + fifths
        return abs(ends), (ends > 0) != (source.fifths > 0)

    turn = (7 * semitones) % 12
    return Shift(semitones, min((turn + 12 * k for k in (-2, -1, 0, 1)), key=strain))


def move_pitch(pitch: Pitch, shift: Shift) -> Pitch:
    """The pitch moved; beyond double accidentals it is written enharmonically."""
    step, alter = spelled(place(pitch.step, pitch.alter) + shift.fifths)
    if abs(alter) > _MOST_ALTER:
        turns = -12 if alter > 0 else 12
        step, alter = spelled(place(step, alter) + turns)
    return _at(step, alter, pitch.midi + shift.semitones)


def _at(step: str, alter: int, midi: int) -> Pitch:
    octave, rest = divmod(midi - alter - STEP_SEMITONES[step], 12)
    if rest:
        raise ValueError(f"{step}{alter:+d} does not sound MIDI {midi}")
    return Pitch(step, alter, octave - 1)


def move_octaves(pitch: Pitch, octaves: int) -> Pitch:
    """The pitch moved by whole octaves (negative: down), spelled as before."""
    return replace(pitch, octave=pitch.octave + octaves)


def move_chord(text: str, shift: Shift) -> str:
    """A chord symbol with its root and bass moved: ``Bb7/D`` up a tone is ``C7/E``.

    Signs stay of the kind used (``b`` or ``♭``); no double accidentals are
    written; what starts with no note name (``N.C.``) stays as it is.
    """
    curly = "♯" in text or "♭" in text
    if re.match(r"^\s*N\.?\s*C\.?", text, re.IGNORECASE):
        return text

    def moved(found: re.Match[str]) -> str:
        sign = found.group(3) or ""
        alter = sum(1 if c in "#♯" else -1 for c in sign)
        step, alter = spelled(place(found.group(2), alter) + shift.fifths)
        if abs(alter) > 1:
            step, alter = spelled(place(step, alter) + (-12 if alter > 0 else 12))
        return step + ("", "♯" if curly else "#", "♭" if curly else "b")[alter]

    return _CHORD.sub(moved, text)


def transposed(piece: Piece, shift: Shift) -> Piece:
    """The piece moved by ``shift``: pitches, key signatures and chord names.

    A bar whose signature would pass seven sharps or flats is written in the
    enharmonic key.
    """
    if shift == Shift(0, 0):
        return piece
    key = enharmonic(replace(piece.key, fifths=piece.key.fifths + shift.fifths))
    return replace(piece, key=key, bars=tuple(_bar(bar, shift) for bar in piece.bars))


def _bar(bar: Bar, shift: Shift) -> Bar:
    key = enharmonic(replace(bar.key, fifths=bar.key.fifths + shift.fifths))
    here = Shift(shift.semitones, key.fifths - bar.key.fifths)
    return replace(
        bar,
        key=key,
        notes=tuple(_note(note, here) for note in bar.notes),
        chords=tuple(ChordName(c.onset, move_chord(c.text, here)) for c in bar.chords),
    )


def _note(note: Note, shift: Shift) -> Note:
    return replace(note, pitch=move_pitch(note.pitch, shift))
