"""A window on a store of the test's own."""

from __future__ import annotations

import contextlib
import os
import shutil
import sqlite3

import pytest

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from workbench.store.shelf import Shelf
from workbench.ui.bench.services import Services
from workbench.ui.bench.tidying import Tidying
from workbench.ui.window import app as ui_app

WAIT = 120_000  # milliseconds; reached only when something hangs

SCORE = """<?xml version="1.0" encoding="UTF-8"?>
<score-partwise version="4.0">
  <work><work-title>Ferry at dusk</work-title></work>
  <part-list><score-part id="P1"><part-name>Melody</part-name></score-part></part-list>
  <part id="P1">{bars}</part>
</score-partwise>
"""
ATTRIBUTES = (
    "<attributes><divisions>1</divisions><key><fifths>0</fifths><mode>major</mode></key>"
    "<time><beats>4</beats><beat-type>4</beat-type></time>"
    "<clef><sign>G</sign><line>2</line></clef></attributes>"
)
TUNE = ("C4 E4 G4 A4", "A4 G4 F4 E4", "D4 F4 B4 C5", "E4 D4 C4 C4")


def write_score(path, bars=TUNE):
    """A MusicXML file of four quarter notes a bar."""
    text = []
    for number, bar in enumerate(bars, 1):
        notes = "".join(
            f"<note><pitch><step>{n[0]}</step><octave>{n[1]}</octave></pitch>"
            "<duration>1</duration><type>quarter</type></note>"
            for n in bar.split()
        )
        text.append(
            f'<measure number="{number}">{ATTRIBUTES if number == 1 else ""}{notes}</measure>'
        )
    path.write_text(SCORE.format(bars="".join(text)), encoding="utf-8")
    return path


@pytest.fixture(autouse=True)
def tidied(qapp):
    """Widgets are let go of in their own thread, as in the program."""
    tidying = Tidying(qapp)
    yield tidying
    tidying.tidy()
    tidying.end()


@pytest.fixture
def score_file(tmp_path):
    return write_score(tmp_path / "ferry.musicxml")


@pytest.fixture(scope="session")
def empty_store(tmp_path_factory):
    """A store with its tables made, to be copied: making them is the slow part."""
    path = tmp_path_factory.mktemp("store") / "store.db"
    Shelf(path).close()
    return path


@pytest.fixture
def open_window(qtbot, tmp_path, empty_store):
    """Opens windows on one and the same store, as one start after another."""
    opened = []
    shutil.copy(empty_store, tmp_path / "store.db")

    def start(services=None, wait=True):
        shelf = Shelf()
        window = ui_app.build(shelf, services or Services(demo=lambda: ()))
        qtbot.addWidget(window)
        window.show()
        ui_app.begin(window)
        opened.append((window, shelf))
        if wait:
            settle(qtbot, window)
        return window

    yield start
    for window, shelf in opened:
        window.close()
        shelf.close()


def settle(qtbot, window):
    """Wait until nothing runs in the background, and what it brought is shown."""
    qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    lesson = window.session.lesson
    if lesson is not None:
        qtbot.waitUntil(
            lambda: (
                window.session.fingers.fingering is not None
                and window.score.image is not None
                and window.session.jobs.idle
            ),
            timeout=WAIT,
        )


@pytest.fixture
def settled(qtbot):
    return lambda window: settle(qtbot, window)


@pytest.fixture(scope="session")
def lesson_store(tmp_path_factory):
    """Where the store with the lesson below is kept once a window has made it."""
    return tmp_path_factory.mktemp("lesson") / "store.db"


@pytest.fixture
def lesson_window(qtbot, tmp_path, open_window, score_file, settled, lesson_store):
    """A window with a new lesson on the little tune: made by the window's own import for the
    first test of a run, and copied for those that follow."""
    if not lesson_store.exists():
        window = open_window()
        make_lesson(qtbot, window, score_file)
        settled(window)
        source = sqlite3.connect(tmp_path / "store.db")
        with contextlib.closing(source), contextlib.closing(sqlite3.connect(lesson_store)) as copy:
            source.backup(copy)
        return window
    shutil.copy(lesson_store, tmp_path / "store.db")
    return open_window()


def make_lesson(qtbot, window, path):
    window.import_score(str(path))
    qtbot.waitUntil(lambda: window.dialog is not None, timeout=WAIT)
    dialog = window.dialog
    qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    dialog.make_button.click()
    qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
