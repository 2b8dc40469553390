"""Names for pitches that come as bare MIDI numbers."""

from __future__ import annotations

from dataclasses import replace

from workbench.music.model import STEP_SEMITONES, Key, Piece, Pitch

_LINE = "FCGDAEB"  # the line of fifths; C is place 0


def spell(midi: int, key: Key) -> Pitch:
    """The pitch of a MIDI number as a key spells it.

    Twelve neighbours on the line of fifths, from three flatter than the
    major keynote to eight sharper: in C and in A minor Eb to G# (common
    practice: holds the leading note of the minor and the usual chromatic ones).
    """
    place = key.fifths - 3 + (7 * midi - (key.fifths - 3)) % 12
    step = _LINE[(place + 1) % 7]
    alter = (place + 1) // 7
    octave = (midi - STEP_SEMITONES[step] - alter) // 12 - 1
    return Pitch(step, alter, octave)


def spelled(piece: Piece, key: Key | None = None) -> Piece:
    """The piece with every note spelled by its bar's key, or by ``key`` where given,
    which then is the key of the piece."""
    bars = []
    for bar in piece.bars:
        here = key or bar.key
        notes = tuple(replace(n, pitch=spell(n.midi, here)) for n in bar.notes)
        bars.append(replace(bar, notes=notes, key=here))
    return replace(piece, bars=tuple(bars), key=key or piece.key)
