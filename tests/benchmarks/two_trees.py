"""Two checkouts compared: start, memory and key to repaint, each in turn, by processor time.

    python tests/benchmarks/two_trees.py OLD NEW [TIMES]

A tree is run by itself in a process of its own, so that what else the machine does falls on both
alike. Says the middle ratio of NEW to OLD for each figure.
"""

from __future__ import annotations

import json
import os
import statistics
import subprocess
import sys

RUN = """
import importlib, json, os, resource, statistics, sys, tempfile, time
begun = time.process_time()
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

def one_of(name, *modules):
    for module in modules:
        try:
            return getattr(importlib.import_module(module), name)
        except (ImportError, AttributeError):
            pass
    raise SystemExit(f"no {name} here")

Shelf = one_of("Shelf", "workbench.store.shelf")
app_of = ("workbench.ui.window.app", "workbench.ui.app")
build, begin = one_of("build", *app_of), one_of("begin", *app_of)
Services = one_of("Services", "workbench.ui.bench.services", "workbench.ui.services")
app = QApplication([])
shelf = Shelf(tempfile.mkdtemp() + "/store.db")
window = build(shelf, Services(demo=lambda: ()))
window.resize(1400, 900)
window.show()
app.processEvents()
figures = {"start": time.process_time() - begun}
Lesson = one_of("Lesson", "workbench.teaching.lessons.lesson", "workbench.teaching.lesson")
song = one_of("song", "tests.sound.notes_made", "tests.benchmarks.test_sound")
shelf.add(Lesson("long", "Sixty-four", song(64), "guitar"))
begin(window)
session = window.session
session.open("long")

def settle():
    until = time.time() + 400
    while time.time() < until:
        app.processEvents()
        if (session.jobs.idle and getattr(session, "fingers", session).fingering
                and window.score.image is not None):
            return
        time.sleep(0.005)
    raise SystemExit("never at rest")

settle()
figures["memory"] = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
bars = window.bars.view
bars.setFocus()
for _ in range(2):  # the first time fills what is kept
    getattr(session, "selection", session).select(0)
    settle()
    took = []
    for _ in range(15):
        start = time.thread_time()
        QTest.keyClick(bars, Qt.Key.Key_Down)
        app.processEvents()
        took.append(time.thread_time() - start)
        settle()
figures["key to repaint"] = statistics.median(took)
print(json.dumps(figures), flush=True)
os._exit(0)
"""


def figures_of(tree: str) -> dict[str, float]:
    env = {**os.environ, "PYTHONPATH": tree, "QT_QPA_PLATFORM": "offscreen"}
    done = subprocess.run([sys.executable, "-c", RUN], cwd=tree, env=env, check=True,
                          stdout=subprocess.PIPE, text=True)  # fmt: skip
    return json.loads(done.stdout.splitlines()[-1])


def main(old: str, new: str, times: str = "5") -> None:
    ratios: dict[str, list[float]] = {}
    for _ in range(int(times)):
        before, now = figures_of(old), figures_of(new)
        for name, value in before.items():
            ratios.setdefault(name, []).append(now[name] / value)
    for name, found in ratios.items():
        print(f"{name}: {statistics.median(found):.2f}")


if __name__ == "__main__":
    main(*sys.argv[1:])
