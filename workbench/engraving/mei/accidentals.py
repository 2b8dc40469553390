"""Accidentals: which signs a bar needs in its key."""

from __future__ import annotations

from fractions import Fraction

from workbench.engraving.mei.voices import Layer
from workbench.music.model import Key, Note

SIGNS = {-2: "ff", -1: "f", 0: "n", 1: "s", 2: "x"}
_SHARPS = "FCGDAEB"


def key_alters(key: Key) -> dict[str, int]:
    """Alteration of each step under the key signature."""
    if key.fifths >= 0:
        return dict.fromkeys(_SHARPS[: key.fifths], 1)
    return dict.fromkeys(_SHARPS[key.fifths :], -1)


def accidentals(layers: list[Layer], key: Key) -> dict[str, str]:
    """Head id (or grace note id) to the MEI sign it needs. A sign holds for its
    octave to the end of the bar, in all voices; a note tied in needs none."""
    signature = key_alters(key)
    state: dict[tuple[str, int], int] = {}
    row: list[tuple[Fraction, int, int, str, Note, bool]] = []
    for layer in layers:
        for grace in layer.trailing:
            row.append((grace.onset, 0, layer.number, grace.id, grace, False))
        for event in layer.events:
            for grace in event.graces:
                row.append((event.onset, 0, layer.number, grace.id, grace, False))
            for head in event.heads:
                row.append((event.onset, 1, layer.number, head.id, head.note, head.tie_in))
    out: dict[str, str] = {}
    for _, _, _, head_id, note, tied in sorted(row, key=lambda r: r[:4]):
        pitch = note.pitch
        place = (pitch.step, pitch.octave)
        if not tied and state.get(place, signature.get(pitch.step, 0)) != pitch.alter:
            out[head_id] = SIGNS.get(pitch.alter, "n")
            state[place] = pitch.alter
    return out
