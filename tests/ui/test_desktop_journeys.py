"""Habits of a desktop: tour, layout, language, colours and text size, full screen, recents."""

from __future__ import annotations

import shutil
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog
from shiboken6 import isValid

from tests.ui.conftest import WAIT, make_lesson, settle, write_score
from workbench.language import speech
from workbench.store.setting_names import TOUR_TAKEN
from workbench.store.shelf import Shelf
from workbench.ui.bench.services import Services
from workbench.ui.help.browser import HelpWindow
from workbench.ui.kit import look
from workbench.ui.window import app as ui_app
from workbench.ui.window.tour import STOPS


@pytest.fixture
def plain_look():
    """Whatever a test dresses the program in, the next one finds it as it was."""
    yield
    look.apply(look.Look("light", 100))


def activate(qtbot, window):
    with qtbot.waitActive(window):
        window.activateWindow()


# The tour.


def test_the_tour_is_offered_once_a_lesson_is_open_and_can_be_skipped(
    qtbot, open_window, score_file
):
    window = open_window()
    window.guide.offer()
    assert window.guide.tour is None
    make_lesson(qtbot, window, score_file)
    settle(qtbot, window)
    assert window.guide.tour is not None and window.guide.tour.isVisible()
    window.guide.tour.skip_button.click()
    assert window.guide.tour is None and window.session.shelf.setting(TOUR_TAKEN) is True
    window.guide.offer()
    assert window.guide.tour is None


def test_the_tour_goes_to_every_control_back_and_to_its_end(qtbot, lesson_window):
    window = lesson_window
    window.resize(1100, 700)
    activate(qtbot, window)
    window.guide.begin()
    tour, seen = window.guide.tour, []
    for _ in STOPS:
        assert tour.target.isVisible() and tour.geometry().intersects(window.rect())
        around = tour.frame.geometry()
        middle = tour.target.mapTo(window, tour.target.visibleRegion().boundingRect().center())
        assert around.contains(middle)
        spoken = tour.target.visibleRegion().boundingRect()
        spoken.moveTo(tour.target.mapTo(window, spoken.topLeft()))
        assert not tour.geometry().intersects(spoken)  # the card covers nothing it speaks of
        seen.append(tour.title.text())
        QTest.keyClick(tour, Qt.Key.Key_Return)
    assert len(set(seen)) == len(STOPS)
    assert window.guide.tour is None
    window.guide.begin()  # again, from the beginning
    tour = window.guide.tour
    assert tour.title.text() == seen[0] and not tour.back_button.isEnabled()
    window.guide.tour.next_button.click()
    window.guide.tour.back_button.click()
    assert window.guide.tour.title.text() == seen[0]
    QTest.keyClick(window.guide.tour, Qt.Key.Key_Escape)
    assert window.guide.tour is None


def test_large_text_in_a_small_window_leaves_what_the_tour_shows_in_sight(qtbot, lesson_window):
    """At 200 % in 1100 by 700 nothing lies beside: the card lies flat at the edge."""
    window = lesson_window
    window.resize(1100, 700)
    window.set_look(scale=200)
    activate(qtbot, window)
    window.guide.begin()
    tour = window.guide.tour
    for at, stop in enumerate(STOPS):
        tour.go(at)
        QApplication.processEvents()
        seen = tour.target.visibleRegion().boundingRect()
        seen.moveTo(tour.target.mapTo(window, seen.topLeft()))
        over = tour.geometry() & seen
        hidden = 0 if over.isEmpty() else over.width() * over.height()
        assert hidden <= 0.02 * seen.width() * seen.height(), stop.title
        for button in (tour.skip_button, tour.back_button, tour.next_button):
            need = button.sizeHint().width() if button.isVisible() else 0
            assert button.width() >= need, (stop.title, button.text())
        assert window.rect().contains(tour.geometry())
    window.set_look(scale=100)


def test_the_tour_sees_that_its_advice_was_followed(qtbot, lesson_window):
    window = lesson_window
    window.guide.begin()
    before = window.guide.tour.state.text()
    window.session.selection.select(2)
    assert window.guide.tour.state.text() != before and "1" in window.guide.tour.state.text()


# The language.


@pytest.fixture
def first_of_many(qtbot, tmp_path, empty_store, score_file, monkeypatch):
    """A window with a lesson; the list of the windows that take each other's place; and
    their shelf."""
    shutil.copy(empty_store, tmp_path / "store.db")
    opened, build = [], ui_app.build
    monkeypatch.setattr(ui_app, "build", lambda *a: opened.append(build(*a)) or opened[-1])
    with Shelf() as shelf:
        window = ui_app.build(shelf, Services(demo=lambda: ()))
        window.show()
        make_lesson(qtbot, window, score_file)
        settle(qtbot, window)
        yield opened
        for one in opened:
            if isValid(one):
                one.close()


def menu_titles(window):
    return [action.text().replace("&", "") for action in window.menuBar().actions()]


def test_another_language_takes_this_windows_place_and_goes_back(qtbot, first_of_many):
    opened = first_of_many
    session = opened[0].session
    session.selection.select(2)
    shelf, lesson = session.shelf, session.lesson
    size = opened[0].size()
    opened[0].menus.choices("language")["de"].trigger()
    german = opened[1]
    settle(qtbot, german)
    qtbot.waitUntil(lambda: not isValid(opened[0]), timeout=WAIT)
    assert speech.chosen() == "de" and german.isVisible() and german.size() == size
    assert "Ansicht" in menu_titles(german) and "View" not in menu_titles(german)
    assert german.menus.choices("language")["de"].isChecked()
    assert german.session.lesson.id == lesson.id and german.session.selection.position == 2
    assert german.session.shelf is shelf
    # What is done in the new window is kept, and undone in the one after it.
    german.session.edit("Titel", lambda old: replace(old, title="Fähre"))
    german.menus.choices("language")["en"].trigger()
    english = opened[2]
    settle(qtbot, english)
    assert speech.chosen() == "en" and "View" in menu_titles(english)
    assert english.session.lesson.title == "Fähre"
    english.menus["undo"].trigger()
    assert english.session.lesson.title == lesson.title
    settle(qtbot, english)


# Recent lessons.


def test_recent_lessons_are_a_key_press_away(qtbot, lesson_window, tmp_path):
    window, session = lesson_window, lesson_window.session
    menu, first = window.menus.menu("recent"), session.lesson.id
    menu.aboutToShow.emit()
    (nothing,) = menu.actions()
    assert not nothing.isEnabled()
    make_lesson(qtbot, window, write_score(tmp_path / "b.musicxml", ("G4 G4 E4 E4",)))
    settle(qtbot, window)
    second = session.lesson.id
    menu.aboutToShow.emit()
    (action,) = menu.actions()
    assert action.text().startswith("&1 ") and "Ferry at dusk" in action.text()
    action.trigger()
    settle(qtbot, window)
    assert session.lesson.id == first
    menu.aboutToShow.emit()
    menu.actions()[0].trigger()
    settle(qtbot, window)
    assert session.lesson.id == second


# Layout, full screen, text size, colours.


def test_sizes_tabs_and_zoom_are_found_again(qtbot, lesson_window, open_window, plain_look):
    window = lesson_window
    wide = window.width()
    window.resize(wide, 700)  # the screen of the tests is 800 pixels high
    window.panels.middle.setSizes([200, 400])
    window.side.setCurrentIndex(1)
    window.teaching.setCurrentIndex(0)
    window.score.set_zoom(1.5)
    settle(qtbot, window)
    share = _share(window.panels.middle)
    window.teaching.setCurrentIndex(2)
    window.close()
    again = open_window()
    assert again.height() == 700
    assert again.teaching.view == 2
    again.resize(wide, 700)  # and 800 wide, where one part is seen at a time
    assert (again.side.currentIndex(), again.teaching.currentIndex()) == (1, 2)
    assert again.score.zoom == pytest.approx(1.5)
    again.teaching.setCurrentIndex(0)
    assert _share(again.panels.middle) == pytest.approx(share, abs=0.02)
    again.forget_layout()
    assert (again.side.currentIndex(), again.teaching.currentIndex()) == (0, 0)
    assert again.score.zoom == pytest.approx(1.0)
    assert _share(again.panels.middle) > share + 0.1


def _share(splitter):
    """How much of a splitter its first part has."""
    sizes = splitter.sizes()
    return sizes[0] / sum(sizes)


def test_a_spoilt_layout_does_not_keep_the_window_shut(qtbot, lesson_window, open_window):
    shelf = lesson_window.session.shelf
    lesson_window.close()
    shelf.set_setting("window.state", {"scale": "big", "side": 99, "zoom": "x", "across": "%%"})
    again = open_window()
    assert again.look.scale == 100 and again.score.zoom == pytest.approx(1.0)


def test_full_screen_and_back_by_one_key(qtbot, lesson_window):
    window = lesson_window
    activate(qtbot, window)
    QTest.keyClick(window, Qt.Key.Key_F11)
    qtbot.waitUntil(window.isFullScreen, timeout=WAIT)
    assert window.menus["full-screen"].isChecked()
    QTest.keyClick(window, Qt.Key.Key_F11)
    qtbot.waitUntil(lambda: not window.isFullScreen(), timeout=WAIT)
    assert not window.menus["full-screen"].isChecked()
    window.showFullScreen()  # the system did it: the menu follows
    qtbot.waitUntil(window.menus["full-screen"].isChecked, timeout=WAIT)
    window.showNormal()


def test_text_grows_and_shrinks_by_keys_and_stops_at_its_ends(qtbot, lesson_window, plain_look):
    window = lesson_window
    activate(qtbot, window)
    both = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    points = [window.font().pointSizeF()]
    QTest.keyClick(window, Qt.Key.Key_Plus, both)
    assert window.look.scale == look.SCALES[1]
    assert window.menus.choices("text-size")[f"{look.SCALES[1]} %"].isChecked()
    assert window.font().pointSizeF() == pytest.approx(points[0] * look.SCALES[1] / 100)
    QTest.keyClick(window, Qt.Key.Key_Minus, both)
    QTest.keyClick(window, Qt.Key.Key_Minus, both)  # no smaller than the smallest
    assert window.look.scale == look.SCALES[0] and window.font().pointSizeF() == points[0]
    window.menus.choices("text-size")["200 %"].trigger()
    QTest.keyClick(window, Qt.Key.Key_Plus, both)
    assert window.look.scale == 200
    assert window.font().pointSizeF() == pytest.approx(2 * points[0])


@pytest.mark.parametrize(("theme", "colours"), [("light", look.LIGHT), ("dark", look.DARK)])
def test_colours_reach_everything_that_is_painted(qtbot, lesson_window, plain_look, theme, colours):
    window = lesson_window
    other = {"light": "dark", "dark": "light"}[theme]
    window.menus.choices("colours")[other].trigger()
    settle(qtbot, window)
    window.menus.choices("colours")[theme].trigger()
    settle(qtbot, window)
    assert window.look.theme == theme and window.menus.choices("colours")[theme].isChecked()
    assert QApplication.palette().window().color().name().upper() == colours.ground
    grounds = {colours.ground, colours.panel, colours.wood}
    for part in (window.score.viewport(), window.neck.neck, window.bars.view.viewport()):
        image = part.grab().toImage()
        corner = image.pixelColor(image.width() - 2, image.height() - 2)
        assert min(_apart(corner.name(), ground) for ground in grounds) < 24, type(part).__name__


def _apart(one, two):
    """How far two colours are apart at most in red, green or blue, of 255."""
    return max(abs(int(one[i : i + 2], 16) - int(two[i : i + 2], 16)) for i in (1, 3, 5))


def test_help_inside_a_dialog_opens_at_the_dialog(qtbot, lesson_window):
    window = lesson_window
    window.openers.compare_versions()
    dialog = window.dialog
    assert isinstance(dialog, QDialog)

    def asked() -> bool:
        # A window that was shown just before may take the focus back once.
        dialog.activateWindow()
        dialog.list.setFocus()
        QTest.keyClick(dialog.list, Qt.Key.Key_F1)
        return dialog.findChild(HelpWindow) is not None

    qtbot.waitUntil(asked)
    assert dialog.findChild(HelpWindow).topic == "versions"
