"""Make the pictures of the README from the real thing: the window and a handout.

    .venv/bin/python resources/pictures/make.py

Needs no display. The store is a passing one; nobody's lessons are touched.
"""

from __future__ import annotations

import os
import tempfile
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QElapsedTimer
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QApplication

from workbench.commands.prepare import fingering_of
from workbench.handout.options import HandoutOptions, page_size
from workbench.handout.sheets.page import Handout
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.demo import demo_lessons
from workbench.ui.window.app import begin, build

HERE = Path(__file__).resolve().parent
WINDOW = (1440, 900)
BAR = 2  # position in playing order: a bar with notes, pins and a guide finger
DOTS_A_POINT = 1.5


def settle(app: QApplication, seconds: float) -> None:
    """Let the window's work come to rest."""
    clock = QElapsedTimer()
    clock.start()
    while clock.elapsed() < 1000 * seconds:
        app.processEvents()


def window_picture(app: QApplication, folder: Path) -> None:
    """The window on the first demo lesson."""
    with Shelf(folder / "pictures.db") as shelf:
        window = build(shelf)
        window.resize(*WINDOW)
        window.show()
        begin(window)
        settle(app, 3)
        window.session.select(BAR)
        settle(app, 3)
        window.grab().save(str(HERE / "window.png"))
        window.close()
        settle(app, 0.5)


def handout_picture() -> None:
    """The first page of the first demo lesson, as it is printed."""
    lesson = demo_lessons()[0]
    options = HandoutOptions()
    size = page_size(options).sizePoints() * DOTS_A_POINT
    page = QImage(size, QImage.Format.Format_RGB32)
    page.fill(0xFFFFFFFF)
    handout = Handout(lesson, fingering_of(lesson), options)
    painter = QPainter(page)
    painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
    painter.scale(DOTS_A_POINT, DOTS_A_POINT)
    handout.paint_page(painter, 0)
    painter.end()
    page.save(str(HERE / "handout.png"))


def main() -> None:
    app = QApplication([])
    with tempfile.TemporaryDirectory() as folder:
        window_picture(app, Path(folder))
    handout_picture()


if __name__ == "__main__":
    main()
