"""Names for pitches that come as bare MIDI numbers."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import replace

from workbench.music.model import STEP_SEMITONES, Key, Note, Piece, Pitch

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


def chord_names(notes: Iterable[Note], key: Key) -> dict[int, str]:
    """How chords on these notes are spelled, by pitch class: as the notes are, the rest
    by the key. A C flat, F flat, E sharp, B sharp or a double sign that the key does not
    bring gives way to the plain name."""
    places = [*range(key.fifths - 1, key.fifths + 6)]
    if key.mode == "minor":
        places.append(key.fifths + 8)  # the leading note
    scale = {_name(_LINE[(p + 1) % 7], (p + 1) // 7) for p in places}
    met: Counter[tuple[int, str]] = Counter()
    for note in notes:
        met[note.midi % 12, _name(*_parts(note.pitch))] += 1
    out: dict[int, str] = {}
    for (place, name), _ in sorted(met.items(), key=lambda x: (-x[1], x[0])):
        if name in scale or not _odd(name):
            out.setdefault(place, name)
    for place in range(12):
        if place not in out:
            name = _name(*_parts(spell(60 + place, key)))
            out[place] = _PLAIN.get(place, name) if _odd(name) and name not in scale else name
    return out


_PLAIN = {0: "C", 2: "D", 4: "E", 5: "F", 7: "G", 9: "A", 11: "B"}


def _parts(pitch: Pitch) -> tuple[str, int]:
    return pitch.step, pitch.alter


def _name(step: str, alter: int) -> str:
    return step + ("#" * alter if alter > 0 else "b" * -alter)


def _odd(name: str) -> bool:
    return name in ("Cb", "Fb", "E#", "B#") or len(name) > 2


def spelled(piece: Piece, key: Key | None = None) -> Piece:
    """The piece with every note spelled by its bar's key, or by ``key`` where given,
    which then is the key of the piece."""
    bars = []
    for bar in piece.bars:
        here = key or bar.key
        notes = tuple(replace(n, pitch=spell(n.midi, here)) for n in bar.notes)
        bars.append(replace(bar, notes=notes, key=here))
    return replace(piece, bars=tuple(bars), key=key or piece.key)
