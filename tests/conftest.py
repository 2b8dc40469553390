"""Every test has a store and a log folder of its own: the user's are never touched."""

from __future__ import annotations

import os

import hypothesis
import pytest

from workbench.language import speech

# The same examples every time, and no verdict by the clock of a busy machine.
hypothesis.settings.register_profile("steady", derandomize=True, deadline=None, database=None)
hypothesis.settings.load_profile("steady")

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")


@pytest.fixture(autouse=True)
def own_store(tmp_path, monkeypatch):
    monkeypatch.setenv("PLUCKWRIGHT_DB", f"sqlite:///{tmp_path / 'store.db'}")
    monkeypatch.setenv("PLUCKWRIGHT_LOGS", str(tmp_path / "logs"))
    # English, whatever the machine speaks; back to it after a test of another language.
    monkeypatch.setenv("PLUCKWRIGHT_LANGUAGE", "en")
    speech.choose("en")


@pytest.fixture(scope="session", autouse=True)
def one_application(qapp):
    """A whole application from the first test on: a process can only ever have one, and
    the one that drawing alone would make has no room for windows."""
    return qapp
