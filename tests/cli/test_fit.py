"""``fit``: weights fitted to the shelf's choices, and taken back."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.fingering.build import piece
from workbench.fingering.types import Pin
from workbench.store.shelf import Shelf
from workbench.teaching.lesson import Lesson


@pytest.fixture
def store(tmp_path, monkeypatch):
    url = f"sqlite:///{tmp_path / 'shelf.db'}"
    monkeypatch.setenv("PLUCKWRIGHT_DB", url)
    return url


def lesson(*pins: Pin) -> Lesson:
    return Lesson("one", "Trial", piece("Bb4+F#4:2", "F4+D4:2"), "ukulele", pins=pins)


def test_fit_changes_every_lesson_and_undo_brings_the_weights_back(store, call):
    pins = (Pin("b0v1n0a", 1, 1, 1), Pin("b0v1n0b", 2, 2, 3))
    with Shelf(store) as shelf:
        shelf.add(lesson(*pins))
        shelf.add(replace(lesson(), id="two", title="Other"))
    told = call("fit", "--json")
    assert told.status == 0
    assert told.json["choices"] == 1 and told.json["reproduced_after"] == 1
    assert told.json["reproduced_before"] == 0 and told.json["changes"]
    with Shelf(store) as shelf:
        weights = shelf.load("two").settings.weights
        assert dict(weights) == told.json["weights"]
    assert call("fit", "--undo").status == 0
    with Shelf(store) as shelf:
        assert shelf.load("one").settings.weights == ()
        assert shelf.load("two").settings.weights == ()


def test_without_choices_fit_says_what_to_do(store, call):
    told = call("fit")
    assert told.status == 2 and "pin some fingers" in told.err
    assert call("fit", "--undo").status == 2
