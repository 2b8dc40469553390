"""Fingers and strings that a score prints are held, and slips of the print are named."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.fingering.editions import (
    GUITAR,
    NAMES,
    STUDIES,
    missing,
    placed,
    printed_rows,
    rest_slow,
)
from workbench.arranging.arrange import arrange
from workbench.fingering.hand.grips import grips, neck
from workbench.fingering.pins.printed import printed_pins
from workbench.fingering.telling.words import words
from workbench.instrument.table import hand, instrument
from workbench.music.model import Bar, Note, Piece, Pitch, WrittenFingers
from workbench.music.reading.score import read_score

MEDIUM = hand("medium")
SPELT = (("C", 0), ("C", 1), ("D", 0), ("E", -1), ("E", 0), ("F", 0), ("F", 1), ("G", 0),
         ("A", -1), ("A", 0), ("B", -1), ("B", 0))  # fmt: skip


@pytest.mark.parametrize("name", rest_slow(NAMES))
def test_every_finger_an_edition_prints_becomes_a_pin_or_is_named(name):
    piece, rows = placed(name), list(printed_rows(name))
    got = printed_pins(piece, GUITAR, MEDIUM)
    out = {slip.note for slip in got.left_out}
    told = {pin.note: (pin.left, pin.string) for pin in got.pins}
    assert rows and not missing(rows, piece, told, out)
    assert all(slip.bar_number in words(slip.reason) for slip in got.left_out)
    # editions make few slips: most of those left out stand in transcriptions of two voices
    assert len(out) <= max(1, len(rows) // 7)


# -- small cases -----------------------------------------------------------------------------


def note(name, midi, onset=0, voice=1):
    step, alter = SPELT[midi % 12]
    return Note(name, Fraction(onset), Fraction(1), Pitch(step, alter, midi // 12 - 1), voice)


def piece_of(notes, written):
    bar = Bar(index=0, number="1", time_signature=(4, 4), length=Fraction(4), notes=tuple(notes))
    return Piece("Small", (bar,), written=tuple(written))


def marks(name, midi, **printed):
    return WrittenFingers(name, midi=midi, **printed)


def pins_of(notes, written, on=GUITAR, **options):
    got = printed_pins(piece_of(notes, written), on, MEDIUM, **options)
    return {p.note: p for p in got.pins}, got.left_out


def test_a_finger_alone_is_a_pin_on_the_finger_and_a_string_one_on_the_string():
    pins, out = pins_of(
        [note("a", 64), note("b", 67, 1)],
        [marks("a", 64, left=4), marks("b", 67, string=2)],
    )
    assert (pins["a"].left, pins["a"].string, pins["a"].fret) == (4, None, None)
    assert (pins["b"].left, pins["b"].string) == (None, 2)
    assert out == ()


def test_an_edition_for_the_instrument_is_not_arranged_anew():
    piece = read_score(STUDIES / "sor-op60-01.mxl", parts="all")
    assert arrange(piece, GUITAR).piece == piece


def test_a_finger_of_another_pitch_is_dropped():
    pins, out = pins_of([note("a", 65)], [marks("a", 64, left=4)])
    assert pins == {} and out == ()


def test_fewest_marks_are_left_out_and_named_by_bar_and_beat():
    # A major at the second fret, 1 2 3 on strings 4 3 2; the 4 on open A cannot be
    chord = [note("top", 61), note("mid", 57), note("low", 52), note("bass", 45)]
    right = [marks("top", 61, left=3), marks("mid", 57, left=2), marks("low", 52, left=1)]
    pins, out = pins_of(chord, [*right, marks("bass", 45, left=0)])
    assert len(pins) == 4 and out == ()
    pins, out = pins_of(
        [note("top", 61, 2), note("mid", 57, 2), note("low", 52, 2), note("bass", 40, 2)],
        [*right, marks("bass", 40, left=4)],
    )
    assert {n: p.left for n, p in pins.items()} == {"top": 3, "mid": 2, "low": 1}
    assert [(s.note, s.bar_number, s.beat) for s in out] == [("bass", "1", 3)]
    told = words(out[0].reason)
    assert told.startswith("Bar 1, beat 3: the printed finger 4 on E2 is left out: ")


def test_one_finger_at_two_frets_leaves_one_of_them():
    pins, out = pins_of(
        [note("a", 65), note("b", 48, 0, 2)], [marks("a", 65, left=1, string=1),
         marks("b", 48, left=1, string=5)],
    )  # fmt: skip
    assert [s.note for s in out] == ["b"]
    assert pins["a"].left == 1 and (pins["b"].left, pins["b"].string) == (None, 5)


def test_two_stems_of_one_sound_are_pinned_once_and_a_printed_unison_twice():
    stems = [note("a", 64), note("b", 64, 0, 2)]
    pins, out = pins_of(stems, [marks("a", 64, left=1), marks("b", 64, left=1)])
    assert list(pins) == ["a"] and out == ()
    pins, out = pins_of(stems, [marks("a", 64, left=0), marks("b", 64, left=4)])
    assert {n: (p.left, p.apart) for n, p in pins.items()} == {"a": (0, False), "b": (4, True)}
    assert out == ()


def test_fingers_of_a_part_that_says_nothing_count_where_the_instrument_is_chosen():
    written = [marks("a", 65, left=1, doubtful=True)]
    assert pins_of([note("a", 65)], written)[0]["a"].left == 1
    assert pins_of([note("a", 65)], written, chosen=False) == ({}, ())


def test_another_instruments_fingering_is_left_out_in_one_sentence():
    # a scale in first position of the guitar: its 0 are no open strings of the ukulele
    scale = {59: 0, 62: 3, 64: 0, 65: 1, 67: 3, 69: 4}
    notes = [note(f"n{i}", m, Fraction(i, 2)) for i, m in enumerate(scale)]
    written = [
        marks(f"n{i}", m, left=f, string=2 if m < 64 else 1)
        for i, (m, f) in enumerate(scale.items())
    ]
    assert len(pins_of(notes, written)[0]) == 6
    pins, out = pins_of(notes, written, on=instrument("ukulele-low-g"))
    assert pins == {} and len(out) == 1 and "another instrument" in words(out[0].reason)


@settings(max_examples=60, deadline=None)
@given(st.data())
def test_what_a_hand_can_hold_is_held_and_one_slip_costs_one_mark(data):
    midis = data.draw(st.lists(st.integers(40, 76), min_size=2, max_size=4, unique=True))
    notes = [note(f"n{m}", m) for m in sorted(midis, reverse=True)]
    ways = grips(notes, GUITAR, neck(GUITAR, MEDIUM), {})
    if not ways:
        return
    way = data.draw(st.sampled_from(ways[:400]))
    written = [
        marks(n.id, n.midi, left=finger, string=string)
        for n, (string, _, finger) in zip(notes, way.places, strict=True)
    ]
    pins, out = pins_of(notes, written)
    assert out == () and len(pins) == len(notes)
    at = data.draw(st.integers(0, len(notes) - 1))
    wrong = data.draw(st.integers(0, 4))
    written[at] = marks(notes[at].id, notes[at].midi, left=wrong, string=way.places[at][0])
    _, out = pins_of(notes, written)
    assert len(out) <= 1
