"""How soon the window shows, and how soon a click is seen, as ratios within one run."""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from tests.sound.notes_made import song
from workbench.store.setting_names import LAST_LESSON
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import Lesson
from workbench.ui.bench.services import Services
from workbench.ui.window import app as ui_app

BARE = """
import time
from PySide6.QtWidgets import QApplication, QWidget
app = QApplication([]); w = QWidget(); w.show(); app.processEvents()
print(time.time())
"""
OURS = """
import time
from PySide6.QtWidgets import QApplication
from workbench.store.shelf import Shelf
from workbench.ui.window.app import build
app = QApplication([]); w = build(Shelf()); w.show(); app.processEvents()
print(time.time())
"""


def shown_after(program: str) -> float:
    """Seconds from the start of a process to its window on the screen, with the compiled
    modules of the start before kept, as they are for a user."""
    kept = Path(tempfile.gettempdir()) / "pluckwright-compiled"
    around = {k: v for k, v in os.environ.items() if k != "PYTHONDONTWRITEBYTECODE"}
    start = time.time()
    done = subprocess.run(
        [sys.executable, "-c", program], capture_output=True, text=True, check=True,
        env={**around, "QT_QPA_PLATFORM": "offscreen", "PYTHONPYCACHEPREFIX": str(kept)},
    )  # fmt: skip
    return float(done.stdout.split()[-1]) - start


def test_window_is_shown_soon(benchmark):
    """Against a bare window of the same toolkit: what our own start adds."""
    shown_after(OURS)  # the store's tables are made the first time
    # in turn, and the least of each: whatever else runs weighs on both alike
    taken = [(shown_after(OURS), shown_after(BARE)) for _ in range(5)]
    benchmark.pedantic(shown_after, args=(OURS,), rounds=1)
    mine, theirs = (min(row) for row in zip(*taken, strict=True))
    benchmark.extra_info.update(shown_s=mine, bare_s=theirs, ratio=mine / theirs)
    print(f"\nwindow shown after {mine:.2f} s, a bare one after {theirs:.2f} s")
    assert mine / theirs < 12


def settle(application: QApplication, window: Any, seconds: float = 120.0) -> None:
    """Let everything that goes on behind the window end."""
    until = time.time() + seconds
    session = window.session
    while time.time() < until:
        application.processEvents()
        if session.jobs.idle and session.fingers.fingering and window.score.image is not None:
            return
        time.sleep(0.005)
    raise AssertionError("the window does not come to rest")


@pytest.fixture(scope="module")
def lesson_window(tmp_path_factory):
    """A window with a lesson of 64 bars in two voices."""
    application = QApplication.instance() or QApplication([])
    shelf = Shelf(tmp_path_factory.mktemp("speed") / "store.db")
    shelf.add(Lesson("long", "Sixty-four", song(64), "guitar"))
    window = ui_app.build(shelf, Services(demo=lambda: ()))
    window.resize(1400, 900)
    window.show()
    ui_app.begin(window)
    settle(application, window)
    yield window
    window.close()
    shelf.close()


def test_click_on_a_bar_is_seen_at_once(benchmark, lesson_window):
    """From the click in the bar list to the window painted with that bar; beside it
    the time to paint the whole window anew, which a click must not take many times."""
    window = lesson_window
    bars = window.bars.view
    rows = [0, 3]

    def click() -> None:
        rows.reverse()
        index = bars.model().index(rows[0], 0)
        where = bars.visualRect(index).center()
        QTest.mouseClick(bars.viewport(), Qt.MouseButton.LeftButton, pos=QPoint(where))
        QApplication.processEvents()

    benchmark.pedantic(click, rounds=15, warmup_rounds=3)
    seen = benchmark.stats.stats.median
    assert window.session.selection.position == rows[0]
    whole = painted_whole(window)
    benchmark.extra_info.update(click_s=seen, whole_window_s=whole, ratio=seen / whole)
    print(f"\nclick seen after {1000 * seen:.0f} ms; whole window painted in {1000 * whole:.0f} ms")
    assert seen / whole < 4


def painted_whole(window: Any) -> float:
    """Median processor time of the interface thread to paint the whole window."""
    took = []
    for _ in range(5):
        start = time.thread_time()
        window.grab()
        took.append(time.thread_time() - start)
    return statistics.median(took)


SIZES = (16, 64, 256)
PRESSES = 12


def key_to_repaint(application: QApplication, window: Any, key: Qt.Key) -> tuple[float, float]:
    """Medians of wall time, and of processor time of the interface thread, from a key
    pressed in the bar list until the window is painted."""
    bars = window.bars.view
    wall, thread = [], []
    for _ in range(PRESSES):
        start, busy = time.perf_counter(), time.thread_time()
        QTest.keyClick(bars, key)
        application.processEvents()  # the paint events that the key has asked for
        wall.append(time.perf_counter() - start)
        thread.append(time.thread_time() - busy)
        settle(application, window)
    return statistics.median(wall), statistics.median(thread)


def test_a_key_is_seen_at_once_however_long_the_lesson(benchmark, tmp_path):
    """The next bar by key, in lessons of 16, 64 and 256 bars. The share that the window
    itself takes is the processor time of its thread: on 64 bars a small multiple of
    the whole window painted once, on 256 bars not much more than on 16."""
    application = QApplication.instance() or QApplication([])
    shelf = Shelf(tmp_path / "store.db")
    shelf.save_all(Lesson(f"bars{n}", f"{n} bars", song(n), "guitar") for n in SIZES)
    shelf.set_setting(LAST_LESSON, f"bars{SIZES[0]}")
    window = ui_app.build(shelf, Services(demo=lambda: ()))
    window.resize(1400, 900)
    window.show()
    ui_app.begin(window)
    busy, whole = {}, {}
    try:
        for size in SIZES:
            window.session.open(f"bars{size}")
            settle(application, window)
            window.session.selection.select(0)
            settle(application, window)
            window.bars.view.setFocus()
            key_to_repaint(application, window, Qt.Key.Key_Down)  # caches fill
            window.session.selection.select(0)
            settle(application, window)
            wall, busy[size] = key_to_repaint(application, window, Qt.Key.Key_Down)
            whole[size] = painted_whole(window)
            assert window.session.selection.position == PRESSES
            print(f"\n{size} bars: key to repaint {1000 * wall:.1f} ms,"
                  f" {1000 * busy[size]:.1f} ms of it work of the window;"
                  f" whole window painted in {1000 * whole[size]:.1f} ms")  # fmt: skip
            benchmark.extra_info[f"bars_{size}"] = {"wall_s": wall, "thread_s": busy[size]}
        benchmark.pedantic(key_to_repaint, args=(application, window, Qt.Key.Key_Up), rounds=1)
    finally:
        window.close()
        shelf.close()
    assert busy[64] / whole[64] < 2.5
    assert busy[256] / busy[16] < 2.5
