"""``fit``: weights fitted to the shelf's choices, and taken back."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.fingering.build import piece
from workbench.fingering.types import Pin
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import Lesson


@pytest.fixture
def store(tmp_path, monkeypatch):
    url = f"sqlite:///{tmp_path / 'shelf.db'}"
    monkeypatch.setenv("PLUCKWRIGHT_DB", url)
    return url


def lesson(*pins: Pin) -> Lesson:
    return Lesson("one", "Trial", piece("Bb4+F#4:2", "F4+D4:2"), "ukulele", pins=pins)


def test_fit_changes_every_lesson_and_undo_brings_the_weights_back(store, call):
    pins = (Pin("b0v1n0a", string=1, fret=1, left=1), Pin("b0v1n0b", string=2, fret=2, left=2))
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


# -- grades ----------------------------------------------------------------------------------

TUNES = ("C4:4 E4:4", "C4:2 E4:2 G4:2 A4:2", "G4:1 A4:1 C5:1 B4:1", "Bb4:1 F4:1 D4:1 C5:1",
         "C4:.5 E4:.5 G4:.5 A4:.5 B4:.5 C5:.5 D5:.5 E5:.5",
         "F#4:.5 G#4:.5 C#5:.5 D#5:.5")  # fmt: skip


def graded(store, words):
    """Lessons with the teacher's grades on the shelf."""
    with Shelf(store) as shelf:
        for k, (tune, (number, level)) in enumerate(zip(TUNES, words, strict=True)):
            shelf.add(
                Lesson(
                    f"tune{k}", f"Tune {k}", piece(tune), "ukulele", grade=number,
                    grade_level=level,
                )
            )  # fmt: skip


WORDS = ((1, "early"), (1, "late"), (2, ""), (3, "middle"), (3, "late"), (5, ""))


def test_fit_to_grades_moves_the_estimate_and_undo_brings_it_back(store, call):
    graded(store, WORDS)
    before = call("grade", "tune5", "--json").json
    assert before["model"] == "as shipped"
    told = call("fit", "--grades", "--json").json
    assert [p["title"] for p in told["pieces"]] == [f"Tune {k}" for k in range(6)]
    assert told["pieces"][0]["word"] == {"grade": 1, "level": "early"}
    assert told["error_left_out"] is not None and told["in_force"]
    after = call("grade", "tune5", "--json").json
    assert after["score"] != before["score"]
    assert {"grade": after["grade"], "level": after["level"]} == told["pieces"][5]["after"]
    assert after["teachers_word"] == {"grade": 5, "level": None}
    plain = call("grade", "tune5", "--json", "--uncalibrated").json
    assert (plain["score"], plain["model"]) == (before["score"], "as shipped")
    assert call("fit", "--grades", "--undo").status == 0
    assert call("grade", "tune5", "--json").json["score"] == before["score"]
    assert call("fit", "--grades", "--undo").status == 2


def test_a_dry_run_puts_nothing_in_force(store, call):
    graded(store, WORDS)
    told = call("fit", "--grades", "--dry-run")
    assert "your grade" in told.out and "Nothing is put in force" in told.out
    assert call("grade", "tune5", "--json").json["model"] == "as shipped"
    assert call("fit", "--dry-run").status == 2


def test_too_few_grades_are_refused_in_one_sentence(store, call):
    told = call("fit", "--grades")
    assert told.status == 2 and "too few to learn from" in told.err


def test_grading_a_file_makes_no_store(tmp_path, monkeypatch, call, tune):
    place = tmp_path / "none" / "lessons.db"
    monkeypatch.setenv("PLUCKWRIGHT_DB", str(place))
    assert call("grade", tune).status == 0
    assert not place.exists()
