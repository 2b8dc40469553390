"""The window never makes its user wait: no work on the interface thread takes longer
in one go than a few pages of plain text do, in journeys through short and long lessons."""

from __future__ import annotations

import gc
import time

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QComboBox, QTabWidget

from tests.sound.notes_made import song
from tests.ui.conftest import WAIT
from tests.ui.watch_blocks import LIMIT, Watch
from workbench.sound.device import SoundCard
from workbench.sound.hearing import WHO
from workbench.sound.player import Player
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.demo import demo_lessons
from workbench.teaching.lessons.lesson import NOTE_KINDS, BarNote, Lesson
from workbench.ui.bench.services import Services
from workbench.ui.player.spans import SPANS
from workbench.ui.window import app as ui_app

CTRL = Qt.KeyboardModifier.ControlModifier
LONG_WAIT = 6 * WAIT


def noted(name: str, bars: int) -> Lesson:
    """A lesson of so many bars in two voices, a teaching note on every fourth of them."""
    notes = tuple(
        BarNote(f"{name}-{at}", NOTE_KINDS[0], f"Keep the thumb steady in bar {at + 1}.", at, at)
        for at in range(0, bars, 4)
    )
    return Lesson(name, f"Song of {bars} bars", song(bars), "guitar", notes=notes)


def test_the_watch_tells_of_a_block(qtbot) -> None:
    with Watch() as watch:
        watch.do("being idle", lambda: qtbot.wait(30))
        watch.do("waiting for others", lambda: time.sleep(1.5 * LIMIT * watch.page))

        def busy() -> None:
            # Far beyond the limit: the watch asks the processor's pace again beside a block.
            until = time.thread_time() + 5 * LIMIT * watch.page
            while time.thread_time() < until:
                pass

        watch.do("counting", busy)
        with watch.unwatched():
            busy()
    assert [one.doing for one in watch.busy] == ["counting"]
    assert "busy" in watch.busy[0].where
    assert watch.longest["being idle"] < LIMIT


@pytest.fixture
def journey(tidied, qtbot, tmp_path):
    """Opens a window on lessons, and lets go of it."""
    opened = []

    def start(watch, *lessons, **services):
        with watch.unwatched():
            import workbench.ui.shelf.dialog  # read once in a program's life  # noqa: F401

            gc.collect()  # what other tests left is not the window's to look through
            tidied.spare()
            shelf = Shelf(tmp_path / "blocks.db")
            shelf.save_all(lessons)
            shelf.set_setting("window.lesson", lessons[0].id)
            # Before it is shown nobody can wait for it to answer; how soon it is shown is
            # measured elsewhere.
            window = ui_app.build(shelf, Services(demo=lambda: (), **services))
        opened.append((window, shelf))
        qtbot.addWidget(window)
        window.resize(1500, 950)
        watch.do("showing the window", window.show)
        watch.do("opening the lesson", lambda: ui_app.begin(window))
        ready(qtbot, window)
        return window

    yield start
    for window, shelf in opened:
        window.close()
        shelf.close()


def ready(qtbot, window) -> None:
    """Wait until all that was asked for is there and shown."""
    session = window.session

    def done() -> None:
        # What is asked for only after a pause counts as well; dialogs come and go.
        assert session.jobs.idle, f"at work: {session.jobs.awaited}"
        assert session.fingers.fingering is not None, "no fingering"
        assert window.score.image is not None, "no page of the score"
        left = [
            timer for timer in window.findChildren(QTimer)
            if timer.isSingleShot() and timer.isActive()
        ]  # fmt: skip
        assert not left, f"still to come: {[timer.parent() for timer in left]}"

    qtbot.waitUntil(done, timeout=LONG_WAIT)


def walk(qtbot, watch, window) -> None:
    """What a teacher does with a lesson in a few minutes."""
    session, bars = window.session, window.bars.view

    def do(doing, action) -> None:
        watch.do(doing, action)
        ready(qtbot, window)

    last = len(session.selection.order) - 1
    for position in (1, 2, last, last // 2, 3):
        do("selecting a bar", lambda position=position: session.selection.select(position))
    for _ in range(3):
        do("selecting a note", lambda: QTest.keyClick(window.score, Qt.Key.Key_Right))
    do("a right finger", lambda: QTest.keyClick(window.score, Qt.Key.Key_A))
    do("another string", lambda: QTest.keyClick(window.score, Qt.Key.Key_Down,
                                                Qt.KeyboardModifier.AltModifier))  # fmt: skip
    do("pinning the bar", window.choices.keep)
    for _ in range(3):
        do("undo", window.menus["undo"].trigger)
    do("redo", window.menus["redo"].trigger)
    do("a new note", window.notes.new_note)
    do("writing", lambda: QTest.keyClicks(window.notes.words, "Listen to the bass."))
    do("keeping the note", lambda: QTest.keyClick(window.notes.words, Qt.Key.Key_Return, CTRL))
    do("selecting rows", bars.selectAll)
    for box in window.bars.findChildren(QComboBox):
        for at in (*range(1, box.count()), 0):
            do(f"filter: {box.itemText(at)}", lambda box=box, at=at: box.setCurrentIndex(at))
    for tabs in window.findChildren(QTabWidget):
        if tabs.isVisible():
            for at in (*range(1, tabs.count()), 0):
                name = tabs.tabText(at)
                do(f"tab: {name}", lambda tabs=tabs, at=at: tabs.setCurrentIndex(at))
    do("zoom", lambda: window.score.set_zoom(1.4))
    do("no tablature", lambda: window.score.show_parts(tab=False))
    do("a narrower window", lambda: window.resize(1300, 900))
    do("the shelf", window.menus["shelf"].trigger)
    do("closing the shelf", window.dialog.close)


def listen(qtbot, watch, window) -> None:
    """Play, change how it is played while it goes on, follow it, and stop."""
    conductor = window.conductor
    with watch.unwatched():
        conductor.opened = lambda: Player(lambda: SoundCard(null=True))
        conductor.set_span(SPANS[4])
    watch.do("playing", conductor.toggle)
    with watch.unwatched():  # nobody waits for the window while the device starts
        qtbot.waitUntil(lambda: bool(window.score.heard[1]), timeout=LONG_WAIT)
    watch.do("following", lambda: qtbot.wait(400))
    for doing, how in (
        ("another tempo", {"tempo": 70.0}), ("a loop", {"loop": True}),
        ("a metronome", {"metronome": True}), ("one voice", {"who": WHO[1]}),
    ):  # fmt: skip
        watch.do(doing, lambda how=how: conductor.set_manner(**how))
        watch.do(f"{doing} followed", lambda: qtbot.wait(150))
    watch.do("stopping", conductor.toggle)
    ready(qtbot, window)


def export(qtbot, watch, window, tmp_path) -> None:
    """Print the handout."""
    watch.do("the handout", window.menus["handout"].trigger)
    ready(qtbot, window)
    target = tmp_path / "page.pdf"
    window.dialog.path.setText(str(target))
    watch.do("printing", window.dialog.save.click)
    qtbot.waitUntil(lambda: window.dialog is None, timeout=LONG_WAIT)
    ready(qtbot, window)
    assert target.stat().st_size > 1000


def told(watch) -> str:
    rows = sorted(watch.longest.items(), key=lambda row: -row[1])
    print("\n" + "\n".join(f"{took:6.1f} pages  {doing}" for doing, took in rows[:12]))
    return watch.report()


def test_with_the_demo(qtbot, journey, tmp_path) -> None:
    with Watch() as watch:
        with watch.unwatched():
            lessons = demo_lessons()
        window = journey(watch, *lessons)
        walk(qtbot, watch, window)
        listen(qtbot, watch, window)
        export(qtbot, watch, window, tmp_path)
        watch.do("another lesson", lambda: window.session.open(lessons[1].id))
        ready(qtbot, window)
    assert not told(watch)


@pytest.mark.slow
def test_with_a_lesson_of_256_bars(qtbot, journey, tmp_path) -> None:
    with Watch() as watch:
        with watch.unwatched():
            lessons = (noted("short", 4), noted("long", 256))
        window = journey(watch, *lessons)
        watch.do("the long lesson", lambda: window.session.open("long"))
        ready(qtbot, window)
        walk(qtbot, watch, window)
        listen(qtbot, watch, window)
        watch.do("the short lesson", lambda: window.session.open("short"))
        ready(qtbot, window)
        watch.do("the long lesson again", lambda: window.session.open("long"))
        ready(qtbot, window)
    assert not told(watch)
