"""A shelf in a file of its own, and a clock that moves on with every look."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from workbench.store.shelf import Shelf


class Clock:
    """Seconds pass only when somebody looks."""

    def __init__(self) -> None:
        self.time = datetime(2024, 3, 1, 9, 0, tzinfo=UTC)

    def __call__(self) -> datetime:
        self.time += timedelta(seconds=1)
        return self.time


@pytest.fixture
def clock():
    return Clock()


@pytest.fixture
def file(tmp_path):
    return tmp_path / "shelf" / "lessons.db"


@pytest.fixture
def shelf(file, clock):
    with Shelf(file, now=clock, wait_seconds=0.1) as open_shelf:
        yield open_shelf
