"""Playing order and sections of small pieces of our own (rules: common practice)."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.music.small_scores import piece
from workbench.music.errors import BadInput
from workbench.music.model import Key, Piece
from workbench.music.order.form import playing_order, sections
from workbench.music.telling.form import form_in_words

START, END = {"repeat_start": True}, {"repeat_end": True}
FIRST, SECOND = {"endings": (1,), "repeat_end": True}, {"endings": (2,)}

CASES = {
    "straight on": ([{}, {}, {}], [0, 1, 2]),
    "repeat from the beginning": ([{}, END, {}], [0, 1, 0, 1, 2]),
    "repeat of one bar": ([{}, START | END, {}], [0, 1, 1, 2]),
    "repeat without a start goes back to the one before": ([END, {}, END], [0, 0, 1, 2, 1, 2]),
    "three times": ([START | END | {"times": 3}, {}], [0, 0, 0, 1]),
    "two endings": ([{}, FIRST, SECOND, {}], [0, 1, 0, 2, 3]),
    "two endings after a start": ([{}, START, FIRST, SECOND], [0, 1, 2, 1, 3]),
    "long endings": (
        [{}, {"endings": (1,)}, FIRST, SECOND, SECOND, {}],
        [0, 1, 2, 0, 3, 4, 5],
    ),
    "last ending with a closing repeat": ([{}, FIRST, SECOND | END, {}], [0, 1, 0, 2, 3]),
    "ending for two passes": (
        [{}, {"endings": (1, 2), "repeat_end": True}, {"endings": (3,)}],
        [0, 1, 0, 1, 0, 2],
    ),
    "a first ending alone": ([{}, FIRST, {}], [0, 1, 0, 2]),
    "a first ending implies its repeat": ([{}, {"endings": (1,)}, SECOND], [0, 1, 0, 2]),
    "repeat after endings": ([{}, FIRST, SECOND, {}, END], [0, 1, 0, 2, 3, 4, 3, 4]),
    "a repeat starts in the last ending": (
        [START, FIRST, SECOND | START, END],
        [0, 1, 0, 2, 3, 2, 3],
    ),
    "a lone second ending": ([{}, END, SECOND, {}], [0, 1, 0, 1, 2, 3]),
    "D.C. al Fine, repeats not again": (
        [{}, END | {"fine": True}, {}, {"jump": "D.C. al Fine"}],
        [0, 1, 0, 1, 2, 3, 0, 1],
    ),
    "D.C. takes the last ending": (
        [{}, FIRST, SECOND | {"fine": True}, {"jump": "D.C. al Fine"}],
        [0, 1, 0, 2, 3, 0, 2],
    ),
    "plain D.C. stops at a Fine": (
        [{}, {"fine": True}, {"jump": "D.C."}],
        [0, 1, 2, 0, 1],
    ),
    "plain D.C. without Fine": ([{}, {"jump": "D.C."}], [0, 1, 0, 1]),
    "D.S. al Fine": (
        [{}, {"segno": True}, {"fine": True}, {"jump": "D.S. al Fine"}],
        [0, 1, 2, 3, 1, 2],
    ),
    "D.S. al Coda": (
        [{}, {"segno": True}, {"to_coda": True}, {"jump": "D.S. al Coda"}, {"coda": True}, {}],
        [0, 1, 2, 3, 1, 2, 4, 5],
    ),
    "D.C. al Coda without a To Coda sign": (
        [{}, {"jump": "D.C. al Coda"}, {"coda": True}],
        [0, 1, 0, 1, 2],
    ),
    "a repeat in the Coda is taken": (
        [{}, {"to_coda": True}, {"jump": "D.C. al Coda"}, START | {"coda": True}, END],
        [0, 1, 2, 0, 1, 3, 4, 3, 4],
    ),
    "a jump inside a repeat waits for the last pass": (
        [{"fine": True}, {"jump": "D.C. al Fine"}, END],
        [0, 1, 2, 0, 1, 0],
    ),
    "D.C. at a repeat is taken after it": (
        [{"fine": True}, START, END | {"jump": "D.C. al Fine"}],
        [0, 1, 2, 1, 2, 0],
    ),
    "D.S. without a sign goes to the beginning": ([{}, {"jump": "D.S."}], [0, 1, 0, 1]),
    "a Fine without a jump is passed": ([{"fine": True}, {}], [0, 1]),
    "played once": ([END | {"times": 1}, {}], [0, 1]),
    "no bars": ([], []),
}


@pytest.mark.parametrize("name", CASES)
def test_playing_order(name):
    marks, order = CASES[name]
    assert list(playing_order(piece(*marks))) == order


MARK = st.fixed_dictionaries(
    {},
    optional={
        "repeat_start": st.booleans(), "repeat_end": st.booleans(), "times": st.integers(0, 5),
        "endings": st.sampled_from([(), (1,), (2,), (1, 2), (3,)]), "segno": st.booleans(),
        "coda": st.booleans(), "to_coda": st.booleans(), "fine": st.booleans(),
        "jump": st.sampled_from(
            ["", "D.C.", "D.C. al Fine", "D.C. al Coda", "D.S.", "D.S. al Fine", "D.S. al Coda"]
        ),
    },
)  # fmt: skip


@settings(max_examples=300, deadline=None)
@given(st.lists(MARK, max_size=8))
def test_any_signs_come_to_an_end(marks):
    small = piece(*marks)
    order = playing_order(small)
    assert all(0 <= i < len(marks) for i in order)
    assert len(order) <= 40 * (len(marks) + 1)
    covered = [i for s in sections(small) for i in range(s.first_bar, s.last_bar + 1)]
    assert covered == list(range(len(marks)))
    assert isinstance(form_in_words(small), str)


def test_a_repeat_without_end_is_refused():
    with pytest.raises(BadInput, match="Bar 1"):
        playing_order(piece(END | {"times": 10**9}))


def letters(small):
    return [(s.letter, s.first_bar, s.last_bar) for s in sections(small)]


def test_sections_by_rehearsal_marks():
    small = piece({}, {"section": "A"}, {}, {"section": "Chorus"})
    assert letters(small) == [("Intro", 0, 0), ("A", 1, 2), ("Chorus", 3, 3)]


def test_sections_by_repeats_and_double_bars():
    small = piece({}, FIRST, SECOND, {}, {"double_bar": True}, {}, {"coda": True})
    assert letters(small) == [("A", 0, 2), ("B", 3, 4), ("C", 5, 5), ("Coda", 6, 6)]


def test_the_same_music_has_the_same_letter():
    small = piece(*[{"double_bar": True}] * 15)
    # bars 0, 7 and 14 hold the same pitch
    assert [s.letter for s in sections(small)] == list("ABCDEFGABCDEFGA")


def test_a_change_of_key_begins_a_section_and_a_pickup_belongs_to_the_next():
    small = piece({"pickup": True, "repeat_end": True}, {}, {"key": Key(-1)}, {"key": Key(-1)})
    assert letters(small) == [("A", 0, 1), ("B", 2, 3)]


def test_form_in_words():
    small = piece({}, FIRST, SECOND | {"fine": True}, {}, {"jump": "D.C. al Fine"})
    assert form_in_words(small) == (
        "A twice with first and second ending, B, then D.C. (from the beginning) to the Fine: A."
    )
    short = replace(small.bars[0], pickup=True, length=Fraction(1))
    upbeat = replace(small, bars=(short, *small.bars[1:]))
    assert form_in_words(upbeat).startswith("Pickup, then A twice")
    assert form_in_words(Piece("", ())) == ""


def test_a_first_bar_written_full_with_rests_is_no_section_of_its_own():
    """As in the lead sheets of music21's corpus: two beats of rest, the upbeat, a repeat."""
    small = piece({}, {"repeat_start": True}, FIRST, SECOND)
    note = replace(small.bars[0].notes[0], onset=Fraction(2), duration=Fraction(2))
    late = replace(small, bars=(replace(small.bars[0], notes=(note,)), *small.bars[1:]))
    assert letters(small)[0] == ("A", 0, 0)
    assert letters(late) == [("A", 0, 3)]
    assert form_in_words(late) == "A twice with first and second ending."
