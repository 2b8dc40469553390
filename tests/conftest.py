"""Every test has a store and a log folder of its own: the user's are never touched."""

from __future__ import annotations

import os

import pytest

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")


@pytest.fixture(autouse=True)
def own_store(tmp_path, monkeypatch):
    monkeypatch.setenv("PLUCKWRIGHT_DB", f"sqlite:///{tmp_path / 'store.db'}")
    monkeypatch.setenv("PLUCKWRIGHT_LOGS", str(tmp_path / "logs"))
