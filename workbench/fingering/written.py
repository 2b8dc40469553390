"""The fingering that a score prints, as pins on the piece laid on an instrument."""

from __future__ import annotations

from collections import Counter

from workbench.fingering.types import Pin
from workbench.instrument.model import Instrument
from workbench.music.model import Note, Piece, WrittenFingers


def written_pins(piece: Piece, instrument: Instrument) -> tuple[Pin, ...]:
    """Pins for what the source prints and what still fits.

    A place on the neck is kept where it sounds the note on this instrument, so not
    after a move to another key, and where no other note begun at the same moment has
    its string. A left finger goes with its place; a plucking finger stays in any case.
    """
    notes = {note.id: (bar.index, note) for bar in piece.bars for note in bar.notes}
    places: dict[str, tuple[int, int] | None] = {}
    for written in piece.written:
        if written.note in notes:
            places[written.note] = _place(written, notes[written.note][1], instrument)
    taken = Counter(
        (notes[name][0], notes[name][1].onset, place[0])
        for name, place in places.items()
        if place is not None
    )
    out = []
    for written in piece.written:
        if written.note not in notes:
            continue
        bar, note = notes[written.note]
        place = places[written.note]
        if place is not None and taken[bar, note.onset, place[0]] > 1:
            place = None
        pin = _pin(written, place)
        if pin is not None:
            out.append(pin)
    return tuple(out)


def _place(
    written: WrittenFingers, note: Note, instrument: Instrument
) -> tuple[int, int] | None:
    """String and fret as printed; where one of them is missing the one that fits it."""
    if written.string is None and written.fret is None:
        return None
    fits = [
        (string, fret)
        for string, fret in instrument.places(note.midi)
        if written.string in (None, string) and written.fret in (None, fret)
    ]
    return fits[0] if len(fits) == 1 else None


def _pin(written: WrittenFingers, place: tuple[int, int] | None) -> Pin | None:
    left = written.left
    if place is None:
        # without its string a finger number may belong to another place or key
        left = None
    elif left is not None and (left == 0) != (place[1] == 0):
        left = None
    if place is None and left is None and written.right is None:
        return None
    string, fret = place or (None, None)
    return Pin(written.note, string, fret, left, written.right)
