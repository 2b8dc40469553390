"""The window outlives the references that Qt's Python bindings drop."""

from __future__ import annotations

import subprocess
import sys

CODE = """
from PySide6.QtCore import QCoreApplication, QObject, Signal
from workbench.ui.spare import spare_references

class Bell(QObject):
    rings = Signal(str, float)

app = QCoreApplication([])
spare_references()
bell = Bell()
for _ in range(50_000):
    bell.rings.emit("", 0.0)
print("alive")
"""


def test_very_many_signals_do_not_end_the_program():
    done = subprocess.run([sys.executable, "-c", CODE], capture_output=True, text=True)
    assert (done.returncode, done.stdout.strip()) == (0, "alive"), done.stderr
