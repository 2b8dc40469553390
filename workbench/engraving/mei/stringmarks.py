"""Which notes bear the number of their string in a circle."""

from __future__ import annotations

from collections.abc import Mapping

from workbench.engraving.options import EVERY
from workbench.fingering.types import FingeredNote
from workbench.instrument.model import Instrument
from workbench.music.model import Piece


def strings_told(
    piece: Piece,
    fingered: Mapping[str, FingeredNote],
    instrument: Instrument | None,
    which: str,
) -> dict[str, int]:
    """String number by note id. Where the score prints one it is told as long as the note
    is still played there; with EVERY also where a note lies on another string than in the
    lowest position, each time the melody comes to that string anew."""
    if not which:
        return {}
    out = {
        w.note: w.string
        for w in piece.written
        if w.string is not None and (w.note not in fingered or fingered[w.note].string == w.string)
    }
    if which != EVERY or instrument is None:
        return out
    last: dict[tuple[int, int], int] = {}
    for bar in piece.bars:
        for note in sorted(bar.notes, key=lambda n: (n.onset, -n.midi)):
            mark = fingered.get(note.id)
            if mark is None or mark.string is None:
                continue
            voice = (note.part, note.voice)
            usual = min(instrument.places(note.midi), key=lambda p: p[1])[0]
            if mark.string != usual and last.get(voice) != mark.string:
                out[note.id] = mark.string
            last[voice] = mark.string if mark.string != usual else 0
    return out
