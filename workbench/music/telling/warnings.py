"""What a teacher should know of a score as it was read, in the language spoken now.

Every kind of warning that reading (or making a solo of a lead sheet) leaves in a piece has
its sentence here and nowhere else.
"""

from __future__ import annotations

from typing import Any

from workbench.language.fact import TEXT, Fact
from workbench.language.names import chord_words, key_words, pitch_words
from workbench.language.speech import mark, say
from workbench.music.model import Piece

#: For each kind the sentence for one and for several (or the same one twice).
_SENTENCES: dict[str, tuple[str, str]] = {
    "quarter tones": (
        mark(
            "{n} quarter tone (bar {bars}): frets give half tones, so it is read as the nearest "
            "one."
        ),
        mark(
            "{n} quarter tones (bars {bars}): frets give half tones, so they are read as the "
            "nearest ones."
        ),
    ),
    "no length": (
        mark(
            "{n} note of no or negative length was left out (bars {bars}{more}); check the score."
        ),
        mark(
            "{n} notes of no or negative length were left out (bars {bars}{more}); check the "
            "score."
        ),
    ),
    "fingers of some instrument": (
        mark(
            "The score prints a finger at {n} note and does not say for what instrument; it is "
            "kept where you choose the instrument and leave the pitch as written."
        ),
        mark(
            "The score prints fingers at {n} notes and does not say for what instrument; they "
            "are kept where you choose the instrument and leave the pitch as written."
        ),
    ),
    "fingers": (
        mark(
            "The score prints the fingering of {n} note; it is kept where it fits the instrument "
            "and the key."
        ),
        mark(
            "The score prints the fingering of {n} notes; it is kept where it fits the instrument "
            "and the key."
        ),
    ),
    "no signature": (
        mark("The score has no key signature; it is shown in {key}, as it is heard."),
    ) * 2,
    "signature to and fro": (
        mark(
            "The key signature goes to and fro from bar {first} to bar {last}; {key} is kept "
            "there."
        ),
    ) * 2,
    "signature against notes": (
        mark(
            "From bar {first} to bar {last} the notes go against the signature of {was}; it is "
            "shown in {key}, as it is heard."
        ),
    ) * 2,
    "unequal parts": (
        mark("The parts have different numbers of bars; the missing ones are rests."),
    ) * 2,
    "bar too long": (
        mark(
            "Bar {number} lasts {length} quarter notes where {beats}/{unit} has {nominal}; kept "
            "as written."
        ),
    ) * 2,
    "bar too short": (
        mark(
            "Bar {number} lasts {length} quarter notes where {beats}/{unit} has {nominal}; "
            "filled up with a rest."
        ),
    ) * 2,
    "clash": (
        mark(
            "Bar {number}, beat {beat}: {low} and {high} begin together; an accidental may be "
            "wrong in the score. Compare that bar with the print."
        ),
        mark(
            "In {n} places two accidentals of one note begin together, first {low} and {high} in "
            "bar {number}, beat {beat}; some may be wrong in the score. Compare those bars with "
            "the print."
        ),
    ),
    "other part": (mark("Part 1 has no pitched notes; part {part} is taken instead."),) * 2,
    "jumps without a place": (
        mark(
            "The tune bears D.C., D.S., Fine, Segno or Coda marks whose bars cannot be told "
            "from the text; set them by hand."
        ),
    ) * 2,
    "unknown chord": (
        mark("Bar {bar}: the chord symbol {symbol} is not known; there the tune is alone."),
    ) * 2,
}  # fmt: skip
#: Kinds that tell of what may be wrong in the score itself.
_DOUBTS = ("clash", "no length", "bar too long", "bar too short")
_NAMES = {"key": key_words, "symbol": chord_words, "low": pitch_words, "high": pitch_words}


def warnings(piece: Piece) -> tuple[str, ...]:
    """All warnings of a piece, as sentences."""
    return tuple(warning(found) for found in piece.warnings)


def doubts(piece: Piece) -> tuple[str, ...]:
    """Those warnings of a piece that tell of what may be wrong in the score itself."""
    return tuple(warning(found) for found in piece.warnings if found.kind in _DOUBTS)


def warning(found: Fact) -> str:
    """One of ``Piece.warnings`` as a sentence."""
    fields = dict(found.fields)
    if found.kind == TEXT:
        return str(fields["text"])
    one, many = _SENTENCES[found.kind]
    said: dict[str, Any] = {
        name: _NAMES[name](str(v)) if name in _NAMES else v for name, v in fields.items()
    }
    return say(one if fields.get("n") == 1 else many, **said)
