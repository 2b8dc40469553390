"""Values go to JSON and come back equal."""

from __future__ import annotations

import json
from dataclasses import dataclass
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from workbench.fingering.types import (
    Audit,
    Barre,
    FingeredBar,
    FingeredNote,
    Fingering,
    JoinCut,
    Pin,
    Settings,
)
from workbench.language.fact import fact
from workbench.music.codec import from_dict, piece_from_dict, piece_to_dict, to_dict
from workbench.music.errors import BadInput
from workbench.music.model import Bar, ChordName, Key, Note, PartInfo, Piece, Pitch
from workbench.teaching.lessons.lesson import BarNote, Lesson

TEXT = st.text(max_size=12)
TIME = st.fractions(min_value=0, max_value=64, max_denominator=1920)
PITCH = st.builds(Pitch, st.sampled_from("CDEFGAB"), st.integers(-2, 2), st.integers(-1, 9))
NOTE = st.builds(
    Note, TEXT, TIME, TIME, PITCH, st.integers(1, 12), st.integers(1, 9), st.booleans(),
    st.none() | st.tuples(st.integers(2, 9), st.integers(2, 9)), st.booleans(), st.booleans(),
    st.lists(TEXT, max_size=2).map(tuple),
)  # fmt: skip
KEY = st.builds(Key, st.integers(-7, 7), st.sampled_from(["major", "minor"]))
TEMPO = st.none() | st.floats(5, 999, allow_nan=False)
BAR = st.builds(
    Bar, index=st.integers(0, 99), number=TEXT,
    time_signature=st.tuples(st.integers(1, 12), st.just(8)), length=TIME,
    notes=st.lists(NOTE, max_size=3).map(tuple), key=KEY, tempo=TEMPO,
    chords=st.builds(ChordName, TIME, TEXT).map(lambda c: (c,)),
    endings=st.lists(st.integers(1, 4), max_size=3).map(tuple),
)  # fmt: skip
PIECE = st.builds(
    Piece, TEXT, st.lists(BAR, max_size=3).map(tuple), TEXT, TEXT, KEY, st.floats(5, 999),
    st.lists(st.builds(PartInfo, st.integers(1, 9), TEXT, st.integers(0, 9)), max_size=2)
    .map(tuple), st.lists(TEXT, max_size=2).map(tuple),
)  # fmt: skip


def there_and_back(value):
    return from_dict(type(value), json.loads(json.dumps(to_dict(value), allow_nan=False)))


@settings(max_examples=60, deadline=None)
@given(PIECE)
def test_a_piece_comes_back_equal(piece):
    assert piece_from_dict(json.loads(json.dumps(piece_to_dict(piece)))) == piece


def test_values_of_the_layers_above_come_back_equal():
    played = FingeredNote(
        "n1-1",
        0,
        Fraction(1, 3),
        Fraction(1),
        60,
        string=None,
        fret=None,
        left=None,
        right="p",
        held=Fraction(1, 2),
        cut_reason=fact("string taken", string=1),
        cut_kind="string",
    )
    bar = FingeredBar(
        0, "1", (played,), (Barre(Fraction(0), 2, (1, 2)),), planted=((Fraction(1, 3), 1, 2, 3),)
    )
    audit = Audit(1, 1, 0.5, (JoinCut("n1-1", 3, 0, fact("hop at join", finger=1)),))
    fingering = Fingering(7, True, (bar,), audit, None, {"hop": 7})
    lesson = Lesson(
        "l1", "Ein Stück", Piece("Ein Stück", ()), "ukulele",
        settings=Settings(weights=(("hop", 3),)), pins=(Pin("n1-1", string=2, left=1),),
        notes=(BarNote("b", "form", "*so*", 0, 1, rejected=(("n1-1", 1, 2, 3),),
                       grip=(None, 0, 1, 0)),), sections=((0, "A"),),
    )  # fmt: skip
    assert there_and_back(fingering) == fingering
    assert there_and_back(lesson) == lesson


def test_fractions_stay_exact_and_readable():
    data = to_dict(Note("n", Fraction(1, 3), Fraction(3, 2), Pitch("C", 0, 4)))
    assert (data["onset"], data["duration"]) == ("1/3", "3/2")


def test_older_and_newer_data_open():
    data = piece_to_dict(Piece("P", ()))
    del data["composer"]
    data["something new"] = 1
    assert piece_from_dict(data) == Piece("P", ())


@pytest.mark.parametrize(
    ("change", "where"),
    [
        (lambda d: d.pop("title"), "Piece.title"),
        (lambda d: d.update(title=3), "Piece.title"),
        (lambda d: d.update(tempo="fast"), "Piece.tempo"),
        (lambda d: d.update(tempo=float("nan")), "Piece.tempo"),
        (lambda d: d.update(bars={}), "Piece.bars"),
        (lambda d: d.update(key={"fifths": True}), "Piece.key.fifths"),
        (lambda d: d["bars"][0].update(length="1/0"), "Piece.bars[0].length"),
        (lambda d: d["bars"][0].update(time_signature=[4]), "Piece.bars[0].time_signature"),
    ],
)
def test_damaged_data_is_named(change, where):
    data = piece_to_dict(
        Piece("P", (Bar(index=0, number="1", time_signature=(4, 4), length=Fraction(4)),))
    )
    change(data)
    with pytest.raises(BadInput, match=where.replace("[", r"\[").replace(".", r"\.")):
        piece_from_dict(data)


def test_data_that_is_no_group_of_fields():
    with pytest.raises(BadInput, match="Piece"):
        piece_from_dict([1, 2])


def test_what_json_cannot_hold_is_refused():
    @dataclass(frozen=True)
    class Odd:
        value: float

    with pytest.raises(TypeError):
        to_dict(Odd(float("inf")))


def test_one_of_a_few_words_is_held_to_them():
    assert from_dict(Settings, {"level": "easy"}).level == "easy"
    with pytest.raises(BadInput, match=r"Settings\.level.*'beginner' / 'easy'.*'wizard'"):
        from_dict(Settings, {"level": "wizard"})
