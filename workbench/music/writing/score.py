"""Write a Piece as MusicXML 4.0, and as a Standard MIDI File.

MusicXML is written element by element, so that what we hold exactly stays
exact; the score is one part, and each voice keeps its number.
"""

from __future__ import annotations

import io
import math
import zipfile
from collections.abc import Mapping
from fractions import Fraction
from pathlib import Path
from typing import Protocol
from xml.etree import ElementTree
from xml.etree.ElementTree import Element, SubElement

from workbench.music import suffixes
from workbench.music.errors import BadInput
from workbench.music.files import write_whole
from workbench.music.model import Piece
from workbench.music.notation.segments import Chord, layers, split_at_bars
from workbench.music.notation.values import strong_points
from workbench.music.suffixes import has_suffix
from workbench.music.writing.barxml import BarWriter, rests
from workbench.music.writing.midiwriting import midi_bytes
from workbench.music.writing.notexml import PlayedNote

_DOCTYPE = (
    '<?xml version="1.0" encoding="UTF-8"?>\n'
    '<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" '
    '"http://www.musicxml.org/dtds/partwise.dtd">\n'
)
_CONTAINER = (
    '<?xml version="1.0" encoding="UTF-8"?>\n'
    '<container><rootfiles><rootfile full-path="score.musicxml" '
    'media-type="application/vnd.recordare.musicxml+xml"/></rootfiles></container>\n'
)


def form_of_export(path: str | Path) -> str:
    """ "MusicXML" or "MIDI", as the name of the file asks for; BadInput for other names."""
    if has_suffix(path, suffixes.MUSICXML):
        return "MusicXML"
    if has_suffix(path, suffixes.MIDI):
        return "MIDI"
    raise BadInput("{path}: end the name with .musicxml, .mxl (packed) or .mid.", path=path)


class FingeredPiece(Protocol):
    """What the writer needs of a fingering: the note of an id, or KeyError."""

    def note(self, note_id: str, /) -> PlayedNote: ...


class NamedInstrument(Protocol):
    """What the writer needs of an instrument."""

    @property
    def name(self) -> str: ...


def write_musicxml(
    piece: Piece,
    path: str | Path,
    fingering: FingeredPiece | None = None,
    instrument: NamedInstrument | None = None,
) -> None:
    """Write the piece to ``path`` (packed if it ends in .mxl), whole or not at all.

    With a fingering each sound bears string, fret, left-hand finger and
    plucking finger. Raises BadInput where the file cannot be written.
    """
    data = musicxml_bytes(piece, fingering, instrument)
    if has_suffix(path, (suffixes.PACKED,)):
        data = _packed(data)
    write_whole(path, data)


def musicxml_bytes(
    piece: Piece,
    fingering: FingeredPiece | None = None,
    instrument: NamedInstrument | None = None,
) -> bytes:
    """The MusicXML document; the same bytes for the same piece."""

    def look(note_id: str) -> PlayedNote | None:
        if fingering is None:
            return None
        try:
            played = fingering.note(note_id)
        except KeyError:
            return None
        # a sound with two stems is fingered once, at the note that stands for it
        return None if played.shares else played

    root = Element("score-partwise", {"version": "4.0"})
    _header(root, piece, instrument)
    part = SubElement(root, "part", {"id": "P1"})
    spare = max((n.voice for n in piece.notes), default=1) + 1
    rows = [
        layers(segments, spare, strong_points(bar.time_signature, bar.length))
        for bar, segments in zip(piece.bars, split_at_bars(piece), strict=True)
    ]
    writer = BarWriter(piece, _divisions(piece, rows), look)
    for bar, voices in zip(piece.bars, rows, strict=True):
        part.append(writer.bar(bar, voices))
    ElementTree.indent(root, space=" ")
    return (_DOCTYPE + ElementTree.tostring(root, encoding="unicode") + "\n").encode("utf-8")


def write_midi(
    piece: Piece,
    path: str | Path,
    *,
    program: int = 24,
    held: Mapping[str, Fraction] | None = None,
) -> None:
    """Write the piece in playing order as a Standard MIDI File, whole or not at all.
    ``held`` gives the quarter lengths that notes are really held, by note id.

    ``program`` is the General MIDI sound from 0 (24: nylon-string guitar).
    Raises BadInput where the file cannot be written.
    """
    write_whole(path, midi_bytes(piece, program, held))


def _header(root: Element, piece: Piece, instrument: NamedInstrument | None) -> None:
    work = SubElement(root, "work")
    SubElement(work, "work-title").text = _legal(piece.title)
    people = [("composer", piece.composer), ("arranger", piece.arranger)]
    identification = SubElement(root, "identification")
    for kind, name in people:
        if name:
            SubElement(identification, "creator", {"type": kind}).text = _legal(name)
    encoding = SubElement(identification, "encoding")
    SubElement(encoding, "software").text = "Pluckwright"
    parts = SubElement(root, "part-list")
    part = SubElement(parts, "score-part", {"id": "P1"})
    own = piece.parts[0].name if piece.parts else ""
    SubElement(part, "part-name").text = _legal(instrument.name if instrument else own)


def _legal(text: str) -> str:
    """Text without the control characters XML forbids."""
    return "".join(c for c in text if c >= " " or c in "\t\n") if text else ""


def _divisions(piece: Piece, rows: list[dict[int, list[Chord]]]) -> int:
    lengths: set[Fraction] = set()
    for bar in piece.bars:
        lengths |= {bar.length, *(c.onset for c in bar.chords)}
        lengths |= {d.onset for d in bar.dynamics}
    for bar, voices in zip(piece.bars, rows, strict=True):
        for chords in voices.values():
            end = Fraction(0)
            for chord in chords:
                lengths |= {chord.onset, chord.duration, *(v.sounding for v in chord.values)}
                lengths |= {v.sounding for v in rests(bar, end, chord.onset)}
                end = chord.onset + chord.duration
            lengths |= {v.sounding for v in rests(bar, end, bar.length)}
    return math.lcm(*(x.denominator for x in lengths), 1)


def _packed(data: bytes) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, content in (
            ("META-INF/container.xml", _CONTAINER.encode()),
            ("score.musicxml", data),
        ):
            archive.writestr(zipfile.ZipInfo(name, (1980, 1, 1, 0, 0, 0)), content)
    return out.getvalue()
