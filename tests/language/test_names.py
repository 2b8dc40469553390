"""Names of notes and keys and numbers, as either language writes them."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction as F

import pytest
from music21 import pitch

from tests.fingering.build import piece as build
from workbench.engraving.charts.kit import Format, axes, draw
from workbench.engraving.mei.document import to_mei
from workbench.fingering.types import Audit, Fingering
from workbench.handout.parts.words import facts, pretty_pitch, tuning_words
from workbench.instrument.table import hand, instrument
from workbench.language.names import (
    chord_typed,
    chord_words,
    decimal,
    key_words,
    note_words,
    ordinal,
    percent,
    pitch_words,
    plain,
)
from workbench.language.speech import choose, say, speaking
from workbench.music.model import ChordName, Key
from workbench.teaching.bars.form_words import form_and_harmony
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.techniques.occurrence import Music
from workbench.teaching.techniques.rules_music import accidentals


@pytest.fixture
def german():
    choose("de")
    yield
    choose("en")


def test_english_names_have_real_signs():
    assert [pitch_words(p) for p in ("Bb4", "B3", "F#2", "Cb5", "C-1")] == [
        "B♭4", "B3", "F♯2", "C♭5", "C-1",
    ]  # fmt: skip
    assert note_words("Eb4") == "E♭" and note_words("G") == "G"
    assert [key_words(k) for k in ("Bb major", "F# minor")] == ["B♭ major", "F♯ minor"]
    assert (decimal(1.25, 2), plain(1.5), percent(0.875, 1)) == ("1.25", "1.5", "87.5%")


# outside reference: music21's own German names of pitches
@pytest.mark.parametrize("step", "CDEFGAB")
@pytest.mark.parametrize("signs", ["", "#", "b", "##", "bb"])
def test_german_names_are_those_of_the_library(german, step, signs):
    name = step + signs
    if name == "Bbb":  # the library says B with a second "es"; Heses (Duden, from memory)
        assert note_words(name) == "Heses"
        return
    assert note_words(name) == pitch.Pitch(name.replace("b", "-")).german
    assert pitch_words(f"{name}3") == note_words(name) + "3"


def test_german_keys_and_numbers(german):
    keys = ("E minor", "Eb major", "Bb major", "B minor", "F# minor", "Ab minor", "C")
    assert [key_words(k) for k in keys] == [
        "e-Moll", "Es-Dur", "B-Dur", "h-Moll", "fis-Moll", "as-Moll", "C",
    ]  # fmt: skip
    assert key_words("in any key") == "in any key"
    assert (decimal(1.25, 2), plain(1.5), percent(0.875, 1)) == ("1,25", "1,5", "87,5\u00a0%")
    assert decimal(-0.01) == "0,0"


def test_the_page_and_the_form_speak_german(german):
    """Keys, notes, tuning and decimals where they are shown."""
    key = Key(1, "minor")
    piece = replace(build("B4:1 E4+G4:1 F#4:1 Bb4:1", marks={0: {"key": key}}), key=key)
    lesson = Lesson("l", "Lied", piece, "guitar", key="E minor")
    guitar = instrument("guitar")
    assert ("Tonart", "e-Moll") in facts(lesson, guitar, "", "")
    assert "2\u00a0H3" in tuning_words(guitar)
    assert pretty_pitch(piece.notes[0].pitch) == "H4"
    assert any("e-Moll und G-Dur" in line for line in form_and_harmony(piece))
    music = Music(piece, Fingering(0, True, (), Audit(0, 0, 1.0)), guitar, hand("medium"))
    assert [str(o.detail) for o in accidentals(music)] == ["B"], "B flat is the only note outside"
    assert say("effort {cost:.1f}", cost=1.25) == "effort 1,2"
    assert say("{share:.0%} held", share=0.5) == "50\u00a0% held"


@pytest.mark.parametrize(
    ("name", "english", "german"),
    [
        ("Bbm7/F#", "B♭m7/F♯", "B♭m7/F♯"),
        ("Fm/Ab", "Fm/A♭", "Fm/A♭"),
        ("F#m7b5/A", "F♯m7♭5/A", "F♯m7♭5/A"),
        ("B7#9", "B7♯9", "H7♯9"),
        ("G/B", "G/B", "G/H"),
        ("Cadd9", "Cadd9", "Cadd9"),
        ("Bbb", "B♭♭", "B♭♭"),
        ("Bm", "Bm", "Hm"),
        ("Bridge", "Bridge", "Bridge"),
        ("N.C.", "N.C.", "N.C."),
        ("Bmaj7(#5)/D#", "Bmaj7(♯5)/D♯", "Hmaj7(♯5)/D♯"),
    ],
)
def test_chords_bear_real_signs(name, english, german):
    assert chord_words(name) == english
    with speaking("de"):
        assert chord_words(name) == german


@pytest.mark.parametrize(
    ("typed", "english", "german"),
    [
        ("H7", "H7", "B7"), ("B7", "B7", "Bb7"), ("B♭m", "Bbm", "Bbm"), ("G/H", "G/H", "G/B"),
        ("F♯m7", "F#m7", "F#m7"), ("Bridge", "Bridge", "Bridge"), ("Csus4", "Csus4", "Csus4"),
    ],
)  # fmt: skip
def test_a_chord_is_taken_as_it_is_written_in_that_language(typed, english, german):
    assert chord_typed(typed) == english
    with speaking("de"):
        assert chord_typed(typed) == german


def test_what_is_shown_of_a_chord_can_be_typed_again():
    for name in ("B7", "Bbm7/F#", "C/B", "Ebmaj7", "Bdim", "B"):
        with speaking("de"):
            assert chord_typed(chord_words(name)) == name
        assert chord_typed(chord_words(name)) == name


def test_the_score_names_its_chords_in_the_readers_language(german):
    """A chord symbol over the notes is called as the grip beside it."""
    piece = build("B4:1 D4:1 F#4:1 B4:1")
    piece = replace(piece, bars=(replace(piece.bars[0], chords=(ChordName(F(0), "B7/D#"),)),))
    mei = to_mei(piece).mei
    assert ">H7/D♯</harm>" in mei
    with speaking("en"):
        assert ">B7/D♯</harm>" in to_mei(piece).mei


def test_figures_beside_a_chart_have_the_readers_decimal_sign(german):
    def paint(figure):
        ax = figure.add_subplot()
        ax.plot([0, 1], [0, 0.5])
        axes(ax, Format())

    def svg():
        return draw("trial", "Trial", "", 120, Format(), paint).svg.decode()

    assert ">0,2<" in svg() and ">0.2<" not in svg()
    with speaking("en"):
        assert ">0.2<" in svg() and ">0,2<" not in svg()


@pytest.mark.parametrize(
    ("number", "word"), [(1, "1st"), (2, "2nd"), (3, "3rd"), (4, "4th"), (11, "11th"), (22, "22nd")]
)
def test_ordinals(number, word):
    assert ordinal(number) == word
