"""The moments of a bar, and the teacher's word on it at once."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from tests.teaching.hand_made import bar, build, n
from workbench.fingering.telling.moments import Way, moment_of, moments, pinned, ways
from workbench.fingering.telling.words import quarters, spoken
from workbench.fingering.types import Barre, Pin
from workbench.language.fact import fact


def fingered():
    _, fingering = build(
        bar(
            n("C4", 4, 0, string=3, voice=2),
            n("A4", 1, 0, string=2, left=3),
            n("B4", 1, 1, string=1, left=1),
            n("C5", 2, 2, string=1, left=3),
        )
    )
    return fingering.bars[0]


def test_a_moment_has_what_begins_and_what_is_held():
    found = moments(fingered())
    assert [m.onset for m in found] == [0, 1, 2]
    assert [n.id for n in found[1].begins] == ["b0n2"]
    assert [n.id for n in found[1].held] == ["b0n0"]
    assert moment_of(fingered(), "b0n3") == found[2]
    assert moment_of(fingered(), None) == found[0]


def test_a_note_cut_short_is_not_held():
    whole = fingered()
    cut = replace(whole, notes=(replace(whole.notes[0], held=Fraction(1)), *whole.notes[1:]))
    assert [n.id for n in moments(cut)[1].held] == []


def test_fingers_that_go_elsewhere():
    first, _, last = moments(fingered())
    assert ways(first, last) == (Way(3, (2, 5), (1, 3)),)
    assert ways(None, last) == ()


def test_a_barre_stays_while_its_strings_sound_in_turn():
    _, fingering = build(bar(n("F4", 2, 0, string=2, left=1), n("B4", 2, 2, string=1, left=1)))
    whole = replace(fingering.bars[0], notes=(
        fingering.bars[0].notes[0], replace(fingering.bars[0].notes[1], fret=1),
    ))  # fmt: skip
    assert ways(*moments(whole)) == (Way(1, (2, 1), (1, 1)),)
    laid = replace(whole, barres=(Barre(Fraction(0), 1, (1, 2), 1),))
    assert ways(*moments(laid)) == ()


def test_pins_show_before_the_bar_is_fingered_anew():
    whole = fingered()
    shown = pinned(whole, [Pin("b0n3", string=3, fret=12), Pin("b0n2", right="a")])
    assert (shown.notes[3].string, shown.notes[3].fret, shown.notes[3].left) == (3, 12, None)
    assert shown.notes[3].pinned
    assert (shown.notes[2].string, shown.notes[2].left, shown.notes[2].right) == (1, 1, "a")
    assert pinned(whole, [Pin("elsewhere", string=1, fret=0)]) is whole


def test_notes_in_words():
    note = fingered().notes[1]
    assert spoken(note) == "string 2 fret 5, left finger 3, right finger m"
    cut = replace(note, held=Fraction(1, 2), cut_reason=fact("out of stretch", note="C"))
    assert spoken(cut).endswith("held ½ of 1 quarters")
    shown = [quarters(Fraction(v)) for v in ("3", "3/2", "1/3", "4/3")]
    assert shown == ["3", "1½", "1/3", "1 1/3"]
