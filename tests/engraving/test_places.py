"""From a point of the engraving to a place in the music, and back."""

from __future__ import annotations

from fractions import Fraction

import pytest
from PySide6.QtCore import QPointF, QRectF

from tests.engraving.small_pieces import bar, fingered, piece, walk
from workbench.engraving.app import ensure_gui
from workbench.engraving.pointing import Place
from workbench.engraving.strip import Strip
from workbench.instrument.table import instrument


@pytest.fixture(scope="module", params=["ukulele", "guitar"])
def drawn(request):
    ensure_gui()
    player = instrument(request.param)
    made = walk()
    fingering = fingered(made, player)
    return made, fingering, Strip(900.0).image(made, fingering, player)


def test_a_head_stands_at_its_bar_moment_and_pitch(drawn) -> None:
    made, _, image = drawn
    for note in made.notes:
        place = image.place_at(image.rect_of(f"head-{note.id}").center())
        assert (place.bar, place.onset) == (made.bar_of[note.id], note.onset)
        assert place.pitch == (note.pitch.step, note.pitch.octave)
        assert place.string is None


def test_a_figure_stands_on_its_string(drawn) -> None:
    made, fingering, image = drawn
    for note in made.notes:
        figure = image.rect_of(f"t-{note.id}")
        if figure is not None:
            place = image.place_at(figure.center())
            assert (place.onset, place.string) == (note.onset, fingering.note(note.id).string)
            assert place.step is None


def test_the_way_back_leads_to_the_same_place(drawn) -> None:
    made, _, image = drawn
    for written in made.bars:
        moment = Fraction(0)
        while moment < written.length:
            for height in ({"step": 30}, {"string": 2}):
                place = Place(written.index, moment, **height)
                point = image.point_of(place)
                assert image.place_at(point) == place
                assert image.column_of(place).center().x() == pytest.approx(point.x(), abs=0.5)
            moment += Fraction(1, 2)


def test_a_rest_has_its_own_moment_where_it_is_drawn() -> None:
    ensure_gui()
    player = instrument("ukulele")
    made = piece([bar(0, "C4:1 r:1 E4:1/2 r:1/2 r:1"), bar(1, "r:4")])
    image = Strip(900.0).image(made, fingered(made, player), player)
    names = [name for name in image.placed[0].system.flat.ids if name.startswith("rest-")]
    assert len(names) == 3
    for name, moment in zip(names, (Fraction(1), Fraction(5, 2), Fraction(3)), strict=True):
        assert image.place_at(image.rect_of(name).center()).onset == moment
    inside = image.point_of(Place(1, Fraction(2), step=30))
    assert image.bar_at(inside) == 1


def test_beside_the_music_is_no_place(drawn) -> None:
    _, _, image = drawn
    assert image.place_at(QPointF(-50, -50)) is None
    assert image.point_of(Place(99, Fraction(0))) is None
    assert image.column_of(Place(99, Fraction(0))) is None


def test_a_rectangle_catches_the_notes_inside_it_in_order(drawn) -> None:
    made, _, image = drawn
    fourth = made.bars[4]
    in_time = sorted(fourth.notes, key=lambda note: (note.onset, -note.midi))
    assert image.notes_in(image.bar_rect(4)) == tuple(note.id for note in in_time)
    first = image.rect_of(f"head-{in_time[0].id}")
    assert image.notes_in(first) == (in_time[0].id,)
    assert image.notes_in(QRectF(-20, -20, 5, 5)) == ()
