"""Fingerings typed as figures."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.fingering.build import piece
from workbench.fingering.pins.typed import complete, figure, in_order, read_figures, write_figures
from workbench.fingering.types import Pin
from workbench.instrument.table import INSTRUMENTS
from workbench.music.errors import BadInput

UKULELE = INSTRUMENTS["ukulele"]
NOTES = in_order(piece("C5:1 E4:1 A4+F4:2").bars[0])
C5, E4, A4, F4 = (n.id for n in NOTES)


def test_notes_are_typed_as_they_sound_the_highest_first():
    assert [n.pitch.name for n in NOTES] == ["C5", "E4", "A4", "F4"]


@pytest.mark.parametrize(
    ("text", "pins"),
    [
        ("", ()),
        ("3", (Pin(C5, string=1, fret=3),)),
        ("2/8.4 0 -", (Pin(C5, string=2, fret=8, left=4), Pin(E4, string=2, fret=0, left=0))),
        ("2/ - 1/", (Pin(C5, string=2, fret=8), Pin(A4, string=1, fret=0, left=0))),
        (".3 - i a", (Pin(C5, left=3), Pin(A4, right="i"), Pin(F4, right="a"))),
        ("8.4M", (Pin(C5, string=2, fret=8, left=4, right="m"),)),
        ("1/4", (Pin(C5, string=1, fret=4),)),  # another pitch: refused later, with the reason
        ("7", (Pin(C5, string=None, fret=7),)),
    ],
)
def test_figures_are_read_and_completed(text, pins):
    assert read_figures(text, NOTES, UKULELE) == pins


@pytest.mark.parametrize("text", ["x", "3.5", "3/3/3", "3 0 0 1 2", "-1", "2/3.1q"])
def test_what_is_no_figure_is_named(text):
    with pytest.raises(BadInput) as wrong:
        read_figures(text, NOTES, UKULELE)
    assert "figures for 4 notes" in str(wrong.value) or "Figure 1" in str(wrong.value)


def test_completion_leaves_what_the_teacher_says():
    note = NOTES[0]
    assert complete(Pin(C5, left=2), note, UKULELE) == Pin(C5, left=2)
    assert complete(Pin(C5, fret=0), note, UKULELE) == Pin(C5, fret=0)
    assert complete(Pin(A4, string=1, left=2), NOTES[2], UKULELE) == Pin(
        A4, string=1, fret=0, left=2
    )


MAYBE = st.one_of
PINS = st.tuples(
    *(
        st.builds(
            lambda string, fret, left, right, note=note: Pin(
                note.id, string=string, fret=fret, left=left, right=right
            ),
            MAYBE(st.none(), st.integers(1, 4)), MAYBE(st.none(), st.integers(0, 12)),
            MAYBE(st.none(), st.integers(0, 4)), MAYBE(st.none(), st.sampled_from("pima")),
        )
        for note in NOTES
    )
)  # fmt: skip


@given(PINS)
def test_what_is_written_is_read_again(pins):
    asked = tuple(
        complete(pin, note, UKULELE)
        for pin, note in zip(pins, NOTES, strict=True)
        if figure(pin) != "-"
    )
    assert read_figures(write_figures(asked, NOTES), NOTES, UKULELE) == asked
