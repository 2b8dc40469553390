"""No verb opens the window; a score file alone opens it on that score."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

import workbench.ui.window.app as app

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture
def opened(monkeypatch):
    """What the window was asked to open, instead of a window."""
    calls = []
    monkeypatch.setenv("QT_QPA_PLATFORM", "offscreen")
    monkeypatch.setattr(app, "run", lambda files=(): calls.append(list(files)) or 0)
    return calls


def test_no_verb_opens_the_window(call, opened):
    assert call().status == 0
    assert opened == [[]]


def test_a_score_alone_opens_the_window_on_it(call, opened, tune):
    assert call(tune).status == 0
    assert opened == [[str(tune)]]


def test_a_word_that_is_neither_verb_nor_file_is_told(call, opened):
    got = call("nothing-of-that-name.xml")
    assert got.status == 2 and "nothing-of-that-name.xml" in got.err
    assert opened == []


def test_a_verb_that_draws_nothing_loads_no_window_toolkit():
    """Reading and fingering start quickly and work where Qt's libraries are missing."""
    code = (
        "import sys; from workbench.cli import main; main(['shape', '2,0,1,0', '--json']); "
        "main(['finger', 'demo', '--json']); "
        "sys.exit(any(name.startswith('PySide6') for name in sys.modules))"
    )
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True)
    assert done.returncode == 0, done.stderr
