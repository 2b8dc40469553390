"""The JSON document that the command line prints of a piece that was read."""

from __future__ import annotations

from typing import Any

from workbench.music.codec import to_dict
from workbench.music.model import Bar, Piece
from workbench.music.order.form import playing_order, sections
from workbench.music.telling.form import form_in_words
from workbench.music.telling.warnings import warnings


def read_document(piece: Piece) -> dict[str, Any]:
    """Title, key, bars with notes, playing order and sections, JSON-safe.

    Quarter lengths are strings such as "3/2".
    """
    return {
        "title": piece.title,
        "composer": piece.composer,
        "key": piece.key.name,
        "tempo": piece.tempo,
        "parts": [to_dict(p) for p in piece.parts],
        "tunes": list(piece.tunes),
        "bars": [_bar(bar) for bar in piece.bars],
        "playing_order": list(playing_order(piece)),
        "sections": [to_dict(s) for s in sections(piece)],
        "form": form_in_words(piece),
        "warnings": list(warnings(piece)),
    }


def _bar(bar: Bar) -> dict[str, Any]:
    return {
        "index": bar.index,
        "number": bar.number,
        "time_signature": "{}/{}".format(*bar.time_signature),
        "length": str(bar.length),
        "pickup": bar.pickup,
        "key": bar.key.name,
        "repeat_start": bar.repeat_start,
        "repeat_end": bar.repeat_end,
        "times": bar.times,
        "endings": list(bar.endings),
        "segno": bar.segno,
        "coda": bar.coda,
        "to_coda": bar.to_coda,
        "fine": bar.fine,
        "jump": bar.jump,
        "notes": [
            {
                "id": note.id,
                "onset": str(note.onset),
                "duration": str(note.duration),
                "pitch": note.pitch.name,
                "midi": note.midi,
                "voice": note.voice,
                "part": note.part,
                "grace": note.grace,
            }
            for note in bar.notes
        ],
        "chords": [{"onset": str(c.onset), "text": c.text} for c in bar.chords],
    }
