"""The score strip: its size and parts, notes chosen by hand, what it tells, its menu."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from PySide6.QtCore import QObject, QPointF, Qt, QTimer
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from tests.sound.notes_made import song
from tests.ui.conftest import WAIT
from workbench.fingering.types import FingeredNote
from workbench.language.fact import fact
from workbench.music.model import Note, Pitch
from workbench.teaching.lessons.lesson import Lesson
from workbench.ui.score import old_images
from workbench.ui.score.tips import note_tip

LEFT = Qt.MouseButton.LeftButton
CTRL = Qt.KeyboardModifier.ControlModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def window(lesson_window, settled):
    lesson_window.resize(1400, 900)
    settled(lesson_window)
    return lesson_window


@pytest.fixture
def score(window):
    return window.score


def ids(session, bar):
    return [note.id for note in session.lesson.piece.bars[bar].notes]


def middle(score, note):
    """Where a note's head lies in the viewport."""
    return score.from_image(score.image.rect_of(f"head-{note}")).center()


def click(score, note, modifier=Qt.KeyboardModifier.NoModifier):
    QTest.mouseClick(score.viewport(), LEFT, modifier, middle(score, note).toPoint())


def drag(score, start, end, modifier=Qt.KeyboardModifier.NoModifier):
    view, way = score.viewport(), end - start
    QTest.mousePress(view, LEFT, modifier, start.toPoint())
    for part in (0.3, 0.7, 1.0):
        QTest.mouseMove(view, (start + way * part).toPoint())
    QTest.mouseRelease(view, LEFT, modifier, end.toPoint())


def around(score, notes):
    """Corners of a band about these notes."""
    places = [middle(score, note) for note in notes]
    xs, ys = [p.x() for p in places], [p.y() for p in places]
    return QPointF(min(xs) - 12, min(ys) - 30), QPointF(max(xs) + 8, max(ys) + 30)


# Size.


def test_the_row_makes_the_score_larger_and_smaller_and_says_how_large(qtbot, score):
    wide, systems = score.image.size.width() * score.scale, len(score.image.placed)
    for _ in range(2):
        score.bar.larger.trigger()
    assert score.zoom == pytest.approx(1.15**2) and score.bar.whole.text() == "132 %"
    at_once = score.image.size.width() * score.scale
    assert at_once == pytest.approx(wide * 1.15**2)
    score.bar.smaller.trigger()
    assert score.bar.whole.text() == "115 %"
    score.bar.whole.trigger()
    assert score.zoom == 1.0 and score.bar.whole.text() == "100 %"
    for _ in range(30):
        score.bar.smaller.trigger()
    assert score.zoom == 0.5
    for _ in range(30):
        score.bar.larger.trigger()
    assert score.zoom == 3.0
    # A little later the systems are laid out anew for the width there is.
    qtbot.waitUntil(lambda: len(score.image.placed) > systems, timeout=WAIT)


def test_fit_shows_a_long_piece_at_once_or_as_small_as_can_be_read(qtbot, window, settled):
    score, session = window.score, window.session
    assert session.add(Lesson("long", "Twenty bars", song(20), "guitar"))
    settled(window)
    assert score.image.size.height() * score.scale > score.viewport().height()
    score.bar.fit.trigger()

    def fits():
        high = score.image.size.height() * score.scale
        return high <= score.viewport().height() or score.zoom == 0.5

    qtbot.waitUntil(lambda: fits() and session.jobs.idle, timeout=WAIT)
    assert score.zoom < 1.0


# Parts.


def drawn(score, start):
    """How many things of that kind the score shows: t- figures, fl- and fr- fingers."""
    return sum(
        name.startswith(start) for item in score.image.placed for name in item.system.rects()
    )


@pytest.mark.parametrize(
    ("part", "kind", "words"),
    [("tab", "t-", "T&ablature"), ("left", "fl-", "L&eft fingers"),
     ("right", "fr-", "&Right fingers")],
)  # fmt: skip
def test_parts_are_left_out_on_the_row_and_in_the_menu_alike(
    qtbot, window, settled, part, kind, words
):
    score, on_row = window.score, window.score.bar.parts[part]
    (in_menu,) = (action for action in window.menus.actions if action.text() == words)
    qtbot.waitUntil(lambda: drawn(score, kind) > 0, timeout=WAIT)
    on_row.trigger()
    qtbot.waitUntil(lambda: drawn(score, kind) == 0, timeout=WAIT)
    assert not in_menu.isChecked() and not score.shows[part]
    in_menu.trigger()
    qtbot.waitUntil(lambda: drawn(score, kind) > 0, timeout=WAIT)
    assert on_row.isChecked() and score.shows[part]
    settled(window)


def test_two_voices_have_their_inks_and_a_legend_until_they_are_let_be(qtbot, window, settled):
    score, session = window.score, window.session
    legend = score.bar.legend
    assert not legend.isVisible()  # the tune has one voice
    assert session.add(Lesson("two", "Two voices", song(2), "guitar"))
    settled(window)
    assert legend.isVisible() and "stems down" in legend.accessibleName()
    inked = score.grab().toImage()
    score.bar.parts["voices"].trigger()
    qtbot.waitUntil(lambda: not legend.isVisible(), timeout=WAIT)
    settled(window)
    assert score.grab().toImage() != inked


# Choosing notes.


def test_ctrl_and_click_takes_notes_in_and_out(score, window):
    session = window.session
    a, b, c, _ = ids(session, 0)
    click(score, b)
    assert session.selection.note_ids == (b,)
    click(score, a, CTRL)
    click(score, c, CTRL)
    assert session.selection.note_ids == (a, b, c)
    click(score, b, CTRL)
    assert session.selection.note_ids == (a, c)
    click(score, b)
    assert session.selection.note_ids == (b,)


def test_a_band_takes_what_lies_in_it_and_with_ctrl_adds_to_it(score, window):
    session = window.session
    notes = ids(session, 0)
    drag(score, *around(score, notes[1:3]))
    assert session.selection.note_ids == tuple(notes[1:3])
    start, end = around(score, notes[3:])
    drag(score, start, end, CTRL)
    assert session.selection.note_ids == tuple(notes[1:])
    # A hand that trembles does not draw a band.
    at = middle(score, notes[0])
    drag(score, at, at + QPointF(2, 1))
    assert session.selection.note_ids == (notes[0],)


def test_shift_and_arrows_reach_over_the_bar_line_and_back(score, window):
    session = window.session
    last, over = ids(session, 0)[3], ids(session, 1)
    click(score, last)
    for _ in range(2):
        QTest.keyClick(score, Qt.Key.Key_Right, SHIFT)
    assert session.selection.note_ids == (last, *over[:2]) and session.selection.note_bars == (0, 1)
    QTest.keyClick(score, Qt.Key.Key_Left, SHIFT)
    assert session.selection.note_ids == (last, over[0])
    QTest.keyClick(score, Qt.Key.Key_A, CTRL)
    assert session.selection.note_ids == tuple(ids(session, 0))


# The menu.


def menu_at(qtbot, score, note):
    at = middle(score, note).toPoint()
    QApplication.sendEvent(
        score.viewport(),
        QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, score.viewport().mapToGlobal(at)),
    )
    qtbot.waitUntil(lambda: isinstance(QApplication.activePopupWidget(), QMenu), timeout=WAIT)
    return QApplication.activePopupWidget()


def entry(menu, words):
    (found,) = (action for action in menu.actions() if action.text() == words)
    return found


def pins(session):
    return {pin.note for pin in session.lesson.pins}


def test_the_menu_pins_and_frees_the_chosen_notes(qtbot, score, window, settled):
    session = window.session
    a, b, c, _ = ids(session, 1)
    click(score, a)
    click(score, b, CTRL)
    menu = menu_at(qtbot, score, b)  # on one of them: all of them are meant
    entry(menu, "&Pin these 2 notes as they are").trigger()
    menu.close()
    settled(window)
    assert pins(session) == {a, b}
    menu = menu_at(qtbot, score, c)  # on another: that one is chosen
    assert session.selection.note_ids == (c,)
    menu.close()
    click(score, a)
    menu = menu_at(qtbot, score, a)
    entry(menu, "&Free this note").trigger()
    menu.close()
    settled(window)
    assert pins(session) == {b}


def test_the_menu_gives_a_right_finger(qtbot, score, window, settled):
    session = window.session
    note = ids(session, 2)[1]
    click(score, note)
    menu = menu_at(qtbot, score, note)
    fingers = entry(menu, "&Right finger").menu()
    entry(fingers, "a, ring").trigger()
    menu.close()
    settled(window)
    assert session.fingers.note_hands.right == "a" and pins(session) == {note}


def test_the_menu_begins_a_teaching_note_about_the_chosen_notes(qtbot, score, window, settled):
    session, panel = window.session, window.notes
    last, first = ids(session, 0)[3], ids(session, 1)[0]
    window.side.setCurrentIndex(1)
    click(score, last)
    click(score, first, CTRL)
    menu = menu_at(qtbot, score, first)
    entry(menu, "&Remark about them …").trigger()
    menu.close()
    assert window.side.currentIndex() == 0 and panel.isVisible()
    QTest.keyClicks(panel.words, "Over the line in one breath")
    QTest.keyClick(panel.words, Qt.Key.Key_Return, CTRL)
    (note,) = session.lesson.notes
    assert (note.first_bar, note.last_bar, note.note) == (0, 1, None)
    click(score, first)
    menu = menu_at(qtbot, score, first)
    entry(menu, "&Remark about it …").trigger()
    menu.close()
    QTest.keyClicks(panel.words, "Listen")
    QTest.keyClick(panel.words, Qt.Key.Key_Return, CTRL)
    assert session.lesson.notes[1].note == first
    settled(window)


# Tips.

QUARTER = Note("n", Fraction(0), Fraction(1), Pitch("E", 0, 4))
OPEN = FingeredNote(
    "n", 0, Fraction(0), Fraction(1), 64, string=1, fret=0, left=0, right="m", held=Fraction(1)
)


def test_a_tip_tells_place_and_both_lengths(score, window):
    session = window.session
    first = session.fingers.bar_hands.notes[0]
    lines = score.tip_at(middle(score, first.id)).split("\n")
    assert lines[0] == "C4"
    assert lines[1].startswith(f"String {first.string} ")
    assert lines[2] == "Written: quarter note (1 quarters)"
    assert lines[3].startswith("Held: ")
    assert score.tip_at(QPointF(2, 2)) == ""


def test_a_tip_tells_how_long_a_note_is_held_and_why_it_is_cut():
    assert note_tip(QUARTER, OPEN).split("\n") == [
        "E4", "String 1 open, right finger m", "Written: quarter note (1 quarters)",
        "Held: all of it",
    ]  # fmt: skip
    cut = replace(OPEN, fret=2, left=3, held=Fraction(1, 2), pinned=True,
                  cut_reason=fact("out of stretch", note="C"), cut_kind="hop")  # fmt: skip
    assert note_tip(QUARTER, cut, voice=2).split("\n") == [
        "E4, voice 2",
        "String 1 fret 2, left finger 3, right finger m, pinned",
        "Written: quarter note (1 quarters)",
        "Held: ½ quarters",
        "Cut short: the hand cannot hold the C and reach the next grip in comfort",
    ]


def test_a_tip_of_a_note_that_has_no_place_says_why():
    low = fact("too many notes", notes=5, strings=4)
    stuck = replace(OPEN, string=None, fret=None, left=None, impossible=low)
    lines = note_tip(QUARTER, stuck).split("\n")
    assert lines[1] == "No place: 5 notes at once, but only 4 strings"
    assert not any(line.startswith("Held") for line in lines)


def test_an_image_that_is_shown_no_more_is_let_go_of_little_by_little(qtbot, monkeypatch):
    monkeypatch.setattr(old_images, "AT_ONCE", 0.0)  # no time for a second one in one go
    gone, goes = [], []

    class Dying:
        def __del__(self) -> None:
            gone.append(len(goes))

    class ShownOnce:
        def __init__(self) -> None:
            self.placed = tuple(Dying() for _ in range(5))

    over, beat = QObject(), QTimer()
    old = old_images.OldImages(over)
    old.take(None)
    old.take(ShownOnce())
    assert not gone
    beat.timeout.connect(lambda: goes.append(1))
    beat.start(0)
    qtbot.waitUntil(lambda: len(gone) == 5, timeout=WAIT)
    assert len(set(gone)) == 5  # none in one go with another
