"""Sections made, moved and named by the teacher."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.teaching.hand_made import bar, build, n
from workbench.music.errors import BadInput
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.sectioning import (
    letters_of,
    make_section,
    move_start,
    name_section,
    next_letter,
    section_starts,
)

BARS = 12


def lesson(*sections):
    piece, _ = build(*(bar(n("C4", 4)) for _ in range(BARS)))
    return Lesson("l", "Study", piece, "ukulele", sections=sections)


def letters(made):
    return "".join(letters_of(section_starts(made), BARS))


def test_the_score_shows_its_own_sections_until_the_teacher_makes_some():
    assert letters(lesson()) == "A" * BARS
    piece = lesson().piece
    bars = tuple(replace(b, double_bar=b.index == 3) for b in piece.bars)
    other = replace(piece, bars=tuple(
        replace(b, notes=tuple(replace(x, pitch=replace(x.pitch, octave=5)) for x in b.notes))
        if b.index > 3 else b for b in bars
    ))  # fmt: skip
    assert letters(replace(lesson(), piece=other)) == "AAAABBBBBBBB"


def test_a_section_in_the_middle_leaves_the_rest_its_letter():
    made = make_section(lesson(), 4, 7, "B")
    assert letters(made) == "AAAABBBBAAAA"
    assert made.sections == ((0, "A"), (4, "B"), (8, "A"))
    assert letters(make_section(made, 6, 9, " C ")) == "AAAABBCCCCAA"
    assert letters(make_section(made, 0, 11, "A")) == "A" * BARS


def test_an_edge_moves_but_swallows_no_neighbour():
    made = lesson((0, "A"), (4, "B"), (8, "C"))
    assert letters(move_start(made, 4, 6)) == "AAAAAABBCCCC"
    assert letters(move_start(made, 4, 11)) == "AAAAAAABCCCC"
    assert letters(move_start(made, 4, 0)) == "ABBBBBBBCCCC"
    assert letters(move_start(made, 8, 11)) == "AAAABBBBBBBC"
    for start, words in ((5, "No section begins"), (0, "begins with the piece")):
        with pytest.raises(BadInput, match=words):
            move_start(made, start, 2)


def test_letters_are_edited_and_an_empty_one_joins():
    made = lesson((0, "A"), (4, "B"), (8, "C"))
    assert letters(name_section(made, 4, "D")) == "AAAADDDDCCCC"
    assert letters(name_section(made, 4, " ")) == "AAAAAAAACCCC"
    assert letters(name_section(made, 6, "E")) == "AAAABBEECCCC"
    with pytest.raises(BadInput, match="give it a letter"):
        name_section(made, 0, "")


@pytest.mark.parametrize(("first", "last", "letter"), [(-1, 2, "A"), (3, 2, "A"), (3, BARS, "A"),
                                                       (1, 2, "  ")])  # fmt: skip
def test_what_cannot_be_a_section(first, last, letter):
    with pytest.raises(BadInput, match="section needs"):
        make_section(lesson(), first, last, letter)


def test_the_next_letter_is_the_first_that_is_free():
    assert next_letter(lesson()) == "B"
    assert next_letter(lesson((0, "A"), (2, "C"))) == "B"
    full = [(k, chr(65 + k)) for k in range(26)]
    assert next_letter(replace(lesson(), sections=tuple(full))) == "AA"


@given(st.lists(st.tuples(st.integers(0, BARS - 1), st.integers(0, BARS - 1)), max_size=6))
def test_the_bars_asked_for_and_no_others_change_their_letter(spans):
    made = lesson()
    for a, b in spans:
        first, last = min(a, b), max(a, b)
        before, letter = letters(made), next_letter(made)
        made = make_section(made, first, last, letter)
        after = letters(made)
        assert after[first : last + 1] == letter * (last + 1 - first)
        assert after[:first] + after[last + 1 :] == before[:first] + before[last + 1 :]
