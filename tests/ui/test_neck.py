"""The drawn neck against the twelve-tone rule, and clicks on it."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from math import hypot
from types import SimpleNamespace

import pytest
from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from tests.teaching.hand_made import bar, build, n
from workbench.fingering.telling.moments import Way, moments
from workbench.fingering.telling.reaches import reach_of, widest
from workbench.fingering.types import Barre, Pin
from workbench.instrument.table import HANDS, INSTRUMENTS
from workbench.ui.choices.panel import stretch_caution
from workbench.ui.neck.layout import NeckLayout
from workbench.ui.neck.moment_words import moment_words
from workbench.ui.neck.paint import Ghost, tag
from workbench.ui.neck.picture import picture_of
from workbench.ui.neck.reach import beside, bracket
from workbench.ui.neck.view import ZOOMS


def layout(name, mirrored=False):
    return NeckLayout(INSTRUMENTS[name], 2.0, 24.0, 60.0, 18.0, 30.0, mirrored)


@pytest.mark.parametrize("name", sorted(INSTRUMENTS))
def test_frets_are_spaced_by_the_twelve_tone_rule(name):
    # Equal temperament: the string from each fret to the saddle is shorter than from the
    # fret before by the twelfth root of two; at the twelfth fret it is halved.
    neck = layout(name)
    scale = neck.instrument.scale_mm * 2.0
    saddle = neck.fret_x(0) + scale
    rest = [saddle - neck.fret_x(fret) for fret in range(neck.frets + 1)]
    for before, after in pairwise(rest):
        assert before / after == pytest.approx(2 ** (1 / 12))
    assert rest[12] == pytest.approx(scale / 2)


@pytest.mark.parametrize("mirrored", [False, True])
@pytest.mark.parametrize("name", ["ukulele", "guitar"])
def test_a_click_on_a_drawn_finger_finds_its_place(name, mirrored):
    neck = layout(name, mirrored)
    for string in range(1, neck.instrument.strings + 1):
        for fret in range(neck.frets + 1):
            at = neck.place_at(neck.finger_x(fret), neck.string_y(string))
            assert at == (string, fret)


def test_fingers_press_behind_their_fret():
    neck = layout("guitar")
    for fret in range(1, neck.frets + 1):
        assert neck.fret_x(fret - 1) < neck.finger_x(fret) < neck.fret_x(fret)


def test_a_left_handed_neck_is_the_mirror_image():
    right, left = layout("ukulele"), layout("ukulele", True)
    for fret in range(right.frets + 1):
        assert right.fret_x(fret) + left.fret_x(fret) == pytest.approx(right.width)
        assert right.finger_x(fret) + left.finger_x(fret) == pytest.approx(right.width)
    assert left.string_y(1) == right.string_y(1)


def test_beside_the_neck_there_is_no_place():
    neck = layout("ukulele")
    assert neck.place_at(neck.width + 50, neck.string_y(1)) is None
    assert neck.place_at(neck.fret_x(3), neck.string_y(4) + 40) is None
    assert neck.place_at(2, neck.string_y(1)) is None


# What is on the neck, from hand-made bars.


def moments_bar():
    """Two grips: fingers 1 and 3 down on frets 1 and 5, then 3 on another string."""
    _, fingering = build(
        bar(
            n("F4", 2, 0, string=3, left=3),
            n("F4", 2, 0, string=2, left=1, voice=2),
            n("D5", 2, 2, string=1, left=3),
            n("F4", 2, 2, string=2, left=1, voice=2),
        )
    )
    return fingering.bars[0]


def shown(hands, chosen, neighbour=lambda by: None):
    ukulele = INSTRUMENTS["ukulele"]
    return picture_of(hands, chosen, ukulele, HANDS["medium"], neighbour)


def test_the_grip_before_and_the_one_after_are_told_apart():
    hands = moments_bar()
    first = shown(hands, hands.notes[0].id)
    assert [(g.string, g.fret, g.was, g.will) for g in first.ghosts] == [(1, 5, 0, 3)]
    assert first.goes == (Way(3, (3, 5), (1, 5)),) and first.comes == ()
    last = shown(hands, hands.notes[2].id)
    assert [(g.string, g.fret, g.was, g.will) for g in last.ghosts] == [(3, 5, 3, 0)]
    assert last.comes == (Way(3, (3, 5), (1, 5)),) and last.goes == ()


def test_the_bars_on_either_side_lend_their_grips():
    hands = moments_bar()
    (one, two) = moments(hands)
    sides = {-1: two, 1: one}
    first = shown(hands, hands.notes[0].id, sides.get)
    # The finger leaves string 1 for string 3 and goes back: one place, both before and after.
    assert [(g.string, g.fret, g.was, g.will, g.text) for g in first.ghosts] == [(1, 5, 3, 3, "3")]
    assert Ghost(1, 5, 4, 3).text == "4·3"


def test_a_planted_finger_is_told_from_one_that_moves():
    hands = moments_bar()
    stays = {m.note.id: m.stays for m in shown(hands, hands.notes[2].id).markers if m.now}
    by_left = {n.left: stays[n.id] for n in hands.notes if n.id in stays}
    assert by_left == {1: True, 3: False}


def test_a_finger_that_stays_down_without_sounding_is_shown_and_measured():
    hands = moments_bar()
    alone = replace(hands, notes=hands.notes[:3], planted=((hands.notes[2].onset, 1, 2, 1),))
    picture = shown(alone, alone.notes[2].id)
    assert picture.silent == ((1, 2, 1),) and picture.reach.fingers == (1, 3)
    assert (2, 1) not in {(ghost.string, ghost.fret) for ghost in picture.ghosts}
    sounding = replace(hands, planted=alone.planted)
    assert shown(sounding, sounding.notes[2].id).silent == ()


def test_tags_point_back_and_on():
    box = QRectF(0, 0, 20, 10)
    before, after, both = (tag(box, *ways) for ways in ((1, 0), (0, 1), (1, 1)))
    assert [len(shape) for shape in (before, after, both)] == [5, 5, 6]
    assert QPointF(0, 5) in list(before) and QPointF(20, 5) not in list(before)
    assert QPointF(20, 5) in list(after) and QPointF(0, 5) not in list(after)


def test_the_words_of_the_reach_stand_where_the_neck_is_in_sight():
    seen = (0.0, 430.0)
    assert beside((100, 180), 200, 10, seen, False) == 190
    assert beside((300, 380), 200, 10, seen, False) == 90, "no room beyond, but before"
    assert beside((100, 330), 200, 10, seen, False) == 230, "over the bracket, but whole"
    assert beside((300, 380), 200, 10, seen, True) == 90
    assert beside((10, 90), 200, 10, seen, True) == 100
    assert beside((500, 580), 200, 10, (400.0, 830.0), False) == 590, "scrolled along"


@pytest.mark.parametrize("mirrored", [False, True])
def test_the_bracket_is_as_long_as_the_reach(mirrored):
    hands = moments_bar()
    reach = shown(hands, hands.notes[0].id).reach
    # Twelve-tone rule: fret n of a scale of 381 mm lies at 381 (1 - 2^(-n/12)); tips stand
    # 6 mm behind, one string apart, which
    # counts half: fingers bend across the neck.
    along = 381 * (2 ** (-1 / 12) - 2 ** (-5 / 12))
    apart = hypot(along, INSTRUMENTS["ukulele"].spacing_mm / 2)
    assert reach.fingers == (1, 3) and reach.apart == pytest.approx(apart)
    neck = layout("ukulele", mirrored)
    start, end, easy = bracket(neck, reach)
    assert start == pytest.approx(neck.finger_x(1))
    assert abs(end - start) == pytest.approx(apart * neck.scale)
    assert abs(easy - start) == pytest.approx(reach.comfort * neck.scale)
    assert (end < start) == mirrored
    assert str(reach.words) == f"1–3: Reach {apart:.0f} mm of {reach.comfort:.0f} mm in comfort."


def test_reach_is_measured_against_the_hand_and_from_the_barre():
    hands = moments_bar()
    ukulele = INSTRUMENTS["ukulele"]
    now = moments(hands)[0].pressed
    small, large = (reach_of(now, (), ukulele, HANDS[name]) for name in ("small", "large"))
    assert small.apart == large.apart and small.comfort < large.comfort
    easy = replace(HANDS["large"], comfort_12=80.0, comfort_14=120.0)
    assert small.wide and not reach_of(now, (), ukulele, easy).wide
    barre = Barre(hands.notes[0].onset, 1, (1, 2, 3), 1)
    assert reach_of(now, [barre], ukulele, HANDS["small"]).apart < small.apart
    assert reach_of({(3, 5): 3}, (), ukulele, HANDS["small"]) is None


# Hands on it, in the window.


@pytest.fixture
def neck_view(qtbot, lesson_window):
    """The fretboard on bar 3 (D4 F4 B4 C5), its last note selected, with the focus."""
    session = lesson_window.session
    session.selection.select(2)
    session.selection.select_note(session.fingers.bar_hands.notes[3].id)
    lesson_window.neck.neck.setFocus()
    return lesson_window.neck


def press(view, *keys):
    for key in keys:
        QTest.keyClick(view.neck, key)


def test_keys_zoom_around_the_selected_finger(neck_view):
    neck, bar = neck_view.neck, neck_view.horizontalScrollBar()
    note = neck_view.neck._session.fingers.note_hands

    def at():
        return neck.centre_of(note.string, note.fret).x() - bar.value()

    wide = neck.width()
    press(neck_view, Qt.Key.Key_Plus, Qt.Key.Key_Plus, Qt.Key.Key_Plus, Qt.Key.Key_Plus)
    assert neck.width() > wide * 1.4
    where = at()
    assert 0 <= where <= neck_view.viewport().width()
    press(neck_view, Qt.Key.Key_Minus)
    assert neck.width() > wide
    press(neck_view, *[Qt.Key.Key_Minus] * 20)
    assert neck.zoom == ZOOMS[0]


@pytest.mark.parametrize("mirrored", [False, True])
def test_keys_go_along_the_neck(neck_view, mirrored):
    neck_view.neck._session.set_left_handed(mirrored)
    neck_view.set_zoom(3.0)
    bar = neck_view.horizontalScrollBar()
    nut, end = (bar.maximum(), 0) if mirrored else (0, bar.maximum())
    press(neck_view, Qt.Key.Key_End)
    assert bar.value() == end
    press(neck_view, Qt.Key.Key_PageUp)
    assert 0 < bar.value() < bar.maximum()
    press(neck_view, Qt.Key.Key_Home)
    assert bar.value() == nut


def test_the_wheel_zooms_about_the_pointer_and_else_goes_along(neck_view):
    neck, bar = neck_view.neck, neck_view.horizontalScrollBar()
    neck_view.set_zoom(2.0)
    bar.setValue(200)
    under = neck.neck.along(bar.value() + 300)
    turn(neck_view, 300, 120, Qt.KeyboardModifier.ControlModifier)
    assert neck.zoom == pytest.approx(2.3)
    assert abs(neck.neck.along(bar.value() + 300) - under) * neck.neck.scale < 2
    before = bar.value()
    turn(neck_view, 300, -120)
    assert bar.value() > before


def turn(view, x, by, keys=Qt.KeyboardModifier.NoModifier):
    point = QPointF(x, 20)
    event = QWheelEvent(
        point, view.viewport().mapToGlobal(point), QPoint(), QPoint(0, by),
        Qt.MouseButton.NoButton, keys, Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(view.viewport(), event)


def test_a_double_click_pins_the_finger_as_it_is(neck_view, lesson_window):
    session, neck = lesson_window.session, neck_view.neck
    hands = session.fingers.note_hands
    session.selection.select_note(None)
    at = neck.centre_of(hands.string, hands.fret)
    QTest.mouseClick(neck, Qt.MouseButton.LeftButton, pos=at)
    assert session.lesson.pins == ()
    QTest.mouseDClick(neck, Qt.MouseButton.LeftButton, pos=at)
    (pin,) = session.lesson.pins
    assert pin == Pin(
        hands.id, string=hands.string, fret=hands.fret, left=hands.left, right=hands.right
    )


def test_a_double_click_on_another_place_moves_the_note_once(neck_view, lesson_window):
    session, neck = lesson_window.session, neck_view.neck
    note, place = session.selection.note_id, neck.picture.offers[0]
    neck_view.ensureVisible(*neck.centre_of(*place).toTuple())
    at = neck.centre_of(*place)
    QTest.mouseClick(neck, Qt.MouseButton.LeftButton, pos=at)
    QTest.mouseDClick(neck, Qt.MouseButton.LeftButton, pos=at)
    assert session.lesson.pins == (Pin(note, string=place[0], fret=place[1]),)


def test_the_reach_is_told_in_words_too(neck_view, lesson_window):
    reach = neck_view.neck.picture.reach
    described = neck_view.neck.accessibleDescription()
    assert ("in comfort" in described) == (reach is not None)
    assert reach is None or str(reach.words) in described


def test_one_grip_has_one_reach_and_one_caution(lesson_window):
    """What is said of the reach stands on the neck; the caution beside the fingerings names
    the same fingers and figures, and nothing else in the window says it again."""
    session, hands = lesson_window.session, moments_bar()
    small = HANDS["small"]
    reach = widest(hands, INSTRUMENTS["guitar"], small)
    assert reach is not None and reach.wide
    stands = [reach_of(m.pressed, (), INSTRUMENTS["guitar"], small) for m in moments(hands)]
    assert reach == max(stands, key=lambda r: r.apart / r.comfort)
    at = SimpleNamespace(
        lesson=session.lesson, hand=small, instrument=INSTRUMENTS["guitar"],
        selection=SimpleNamespace(bar=session.selection.bar),
        fingers=SimpleNamespace(bar_hands=hands, note_hands=hands.notes[0]),
    )  # fmt: skip
    said = stretch_caution(at)
    assert f"{reach.apart:.0f} mm" in said and f"{reach.comfort:.0f} mm" in said
    assert "{} and {}".format(*reach.fingers) in said and "hurts" in said
    above = " ".join(moment_words(at))
    assert "hurt" not in above and " mm" not in above
    at.hand = replace(small, comfort_12=900, comfort_14=900, comfort_24=900)
    assert stretch_caution(at) == ""


def test_the_frets_in_use_fill_the_width_and_a_key_shows_all(neck_view, lesson_window):
    neck = neck_view.neck
    used = max(n.fret or 0 for b in lesson_window.session.fingers.fingering.bars for n in b.notes)
    wide = neck_view.viewport().width()
    layout = neck.neck
    shown = sum(layout.fret_x(fret) <= wide for fret in range(1, layout.frets + 1))
    assert shown == max(5, used + 1) < layout.frets
    QTest.keyClick(neck, Qt.Key.Key_F)
    assert neck.neck.width <= wide and neck_view.horizontalScrollBar().maximum() == 0
    QTest.keyClick(neck, Qt.Key.Key_F)
    assert neck.neck.width == pytest.approx(layout.width)
