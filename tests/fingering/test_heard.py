"""Two stems of one sound are one sound to whoever counts, measures, plays or draws.

A prelude figure as guitar scores write it: the bass note bears a quaver of the upper voice
and a minim of the lower one (common practice, no source).
"""

from __future__ import annotations

from fractions import Fraction

from lxml import etree

from workbench.engraving.mei.document import to_mei
from workbench.engraving.options import MeiOptions
from workbench.fingering.telling.heard import heard, sounding
from workbench.fingering.types import Audit, FingeredBar, FingeredNote, Fingering
from workbench.handout.parts.grips import grips_of
from workbench.instrument.table import hand, instrument
from workbench.music.model import Bar, Note, Piece, Pitch
from workbench.music.writing.midiwriting import midi_bytes
from workbench.music.writing.score import musicxml_bytes
from workbench.sound.timing import bar_times, soundings
from workbench.teaching.bars.harmony import chords
from workbench.teaching.bars.measure import measure_bars
from workbench.teaching.bars.strokes import strokes

GUITAR = instrument("guitar")
HALF = Fraction(1, 2)
#: pitch, onset, length, voice, string, fret, left, id of the note whose sound it shares
ROWS = (
    ("C3", 0, HALF, 1, 5, 3, 3, None),
    ("G3", HALF, HALF, 1, 3, 0, 0, None),
    ("C4", 1, HALF, 1, 2, 1, 1, None),
    ("E4", 3 * HALF, HALF, 1, 1, 0, 0, None),
    ("C3", 0, Fraction(2), 2, 5, 3, 3, "n1"),
)


def figure(shared=True):
    notes, played = [], []
    for number, (name, onset, length, voice, string, fret, left, lead) in enumerate(ROWS, 1):
        pitch = Pitch(name[0], 0, int(name[1]))
        note = Note(f"n{number}", Fraction(onset), length, pitch, voice)
        notes.append(note)
        played.append(
            FingeredNote(
                note.id, 0, note.onset, length, note.midi,
                string=string, fret=fret, left=left, right="pima"[number % 4], held=length,
                shares=lead if shared else None,
            )
        )  # fmt: skip
    bar = Bar(index=0, number="1", time_signature=(2, 4), length=Fraction(2), notes=tuple(notes))
    fingered = FingeredBar(0, "1", tuple(played))
    return Piece("Figure", (bar,)), Fingering(0, True, (fingered,), Audit(4, 0, 1.0))


def test_one_note_a_sound_held_for_the_longer_value():
    piece, fingering = heard(*figure())
    assert [n.id for n in piece.notes] == ["n1", "n2", "n3", "n4"]
    assert piece.notes[0].duration == 2
    first = fingering.note("n1")
    assert (first.duration, first.held, first.string) == (2, 2, 5)


def test_a_unison_on_two_strings_stays_two():
    given = figure(shared=False)
    assert heard(*given) == given
    assert [len(s.notes) for s in strokes(*given)] == [2, 1, 1, 1]


def test_teaching_counts_sounds():
    piece, fingering = figure()
    rows = strokes(piece, fingering)
    assert [s.ids for s in rows] == [("n1",), ("n2",), ("n3",), ("n4",)]
    assert [p.note.id for p in rows[-1].ringing] == ["n1"]  # the bass rings under the figure
    (measured,) = measure_bars(piece, fingering, GUITAR, hand("medium"))
    assert measured.together == 0 and measured.onsets == 4
    (chord,) = chords(piece, fingering, 6)
    assert chord.label.name == "C" and chord.grip == "x-3-x-0-1-0"


def test_it_is_heard_once_and_as_long_as_it_rings():
    piece, fingering = figure()
    times = bar_times(piece, (0,))
    found = soundings(piece, times, fingering, GUITAR)
    assert len(found) == 4
    assert found[0].seconds == max(s.seconds for s in found) == times[0].seconds
    plain = soundings(piece, times)
    assert len(plain) == 4 and plain[0].seconds == times[0].seconds


def test_midi_strikes_it_once():
    piece, _ = figure()
    assert midi_bytes(piece, 24).count(bytes((0x90, 48, 80))) == 1


def test_export_keeps_both_stems_and_fingers_one():
    text = musicxml_bytes(*figure(), GUITAR).decode()
    assert text.count("<step>C</step>") == 3  # two stems of C3, and C4
    assert text.count("<string>5</string>") == 1


def test_the_page_shows_both_stems_one_figure_and_one_finger():
    piece, fingering = figure()
    found = to_mei(piece, fingering, GUITAR, MeiOptions())
    root = etree.fromstring(found.mei.encode())
    mei = "{http://www.music-encoding.org/ns/mei}"
    staff, tab = (next(root.iter(f"{mei}measure")).findall(f"{mei}staff")[k] for k in (0, 1))
    assert len([n for n in staff.iter(f"{mei}note") if n.get("pname") == "c"]) == 3
    figures = [(n.get("tab.course"), n.get("tab.fret")) for n in tab.iter(f"{mei}note")]
    assert figures == [("5", "3"), ("3", "0"), ("2", "1"), ("1", "0")]
    fingers = {mark.id: mark.text for mark in found.fingers}
    assert fingers["fl-n1"] == "3" and "fl-n5" not in fingers and "fr-n5" not in fingers


def test_grip_boxes_see_one_string():
    piece, fingering = figure()
    assert len(sounding(fingering.bars[0])) == 4
    for grip in grips_of(piece, fingering, GUITAR):
        assert grip.frets[4] in (3, None)
