"""Groups, settings, choices, copies, versions and the bin."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.store.lessons_made import fingering, lesson, piece
from workbench.language.fact import fact
from workbench.music.errors import BadInput
from workbench.store.shelf import Shelf


def test_groups_hold_their_students(file):
    with Shelf(file) as shelf:
        shelf.set_group("Tuesday", ["Zoë", "Jo", "Jo", " ", "ann"])
        shelf.set_group("Empty")
        shelf.set_group("Gone", ["x"])
        shelf.delete_group("Gone")
    with Shelf(file) as shelf:
        found = [(g.name, g.students) for g in shelf.groups()]
        assert found == [("Empty", ()), ("Tuesday", ("ann", "Jo", "Zoë"))]
        shelf.set_group("Tuesday", ["Jo"])
        assert shelf.groups()[1].students == ("Jo",)
        with pytest.raises(BadInput, match="group's name"):
            shelf.set_group("  ")


def test_settings_are_kept_as_they_are(file):
    layout = {"splitter": [220, 640, 300], "state": "AAAA/w==", "maximised": True}
    with Shelf(file) as shelf:
        shelf.set_settings({"studio": "Quay Street ♪", "layout": layout, "theme": "dark"})
        shelf.set_setting("theme", None)
        with pytest.raises(TypeError):
            shelf.set_settings({"studio": "lost", "bad": {1, 2}})
    with Shelf(file) as shelf:
        assert shelf.settings() == {"studio": "Quay Street ♪", "layout": layout}
        assert shelf.setting("theme", "light") == "light"


def test_choices_are_kept_to_learn_from(file):
    bar = fingering().bars[0]
    with Shelf(file) as shelf:
        shelf.save(lesson())
        kept = shelf.remember_choice(
            "alternative",
            lesson_id="lesson-1",
            bar=1,
            chosen=bar.notes,
            rejected=bar.notes[:1],
            chosen_terms={"shift": 3},
            rejected_terms={"stretch": 9},
            instrument="ukulele",
            hand="small",
            level="beginner",
            reason=fact("keeps", note="F"),
        )
        with pytest.raises(BadInput, match="'pin' or an 'alternative'"):
            shelf.remember_choice("whim", lesson_id=None, bar=0, chosen=())
    with Shelf(file) as shelf:
        (found,) = shelf.choices()
        assert replace(found, made=kept.made) == kept
        assert (found.chosen, found.rejected_terms) == (bar.notes, {"stretch": 9})
        shelf.delete("lesson-1")
        shelf.empty_bin(0)
        assert shelf.choices()[0].lesson_id is None, "a choice outlives its lesson"


def test_a_copy_for_another_student_goes_its_own_way(shelf):
    made = lesson(plan_done=("day 1",))
    shelf.save(made)
    shelf.save(replace(made, capo=1))
    copy = shelf.duplicate(made.id, student="Jo")
    assert copy == replace(made, capo=1, id=copy.id, student="Jo", plan_done=())
    assert shelf.load(copy.id) == copy
    shelf.save(replace(copy, title="Jo's own"))
    assert shelf.load(made.id).title == made.title
    assert len(shelf.history(copy.id).steps) == 2
    assert shelf.pieces()[0].lessons == 2


def test_versions_can_be_looked_at_thrown_away_and_taken_back(shelf):
    made = lesson()
    shelf.save(made)
    spring = shelf.keep_version(made.id, "Spring term")
    moved = replace(made, piece=piece(shift=3), notes=())
    shelf.save(moved)
    summer = shelf.keep_version(made.id, "Summer term")
    assert [v.name for v in shelf.versions(made.id)] == ["Spring term", "Summer term"]
    assert spring.made < summer.made
    assert shelf.load_version(spring.id) == made
    assert shelf.load(made.id) == moved, "looking changes nothing"
    shelf.go_back(spring.id)
    assert shelf.load(made.id) == made
    assert shelf.undo(made.id) == moved
    shelf.delete_version(summer.id)
    assert shelf.versions(made.id) == (spring,)
    assert shelf.load(made.id) == moved
    with pytest.raises(BadInput, match="not on the shelf any more"):
        shelf.load_version(summer.id)


def test_the_bin_keeps_what_is_fresh(shelf, clock):
    shelf.save(lesson("old"))
    shelf.save(lesson("fresh"))
    shelf.delete("old")
    shelf.delete_piece(shelf.pieces()[0].id)
    clock.time = clock.time.replace(month=5)
    shelf.delete("fresh")
    assert shelf.empty_bin(older_than_days=30) == 1
    assert [row.id for row in shelf.lessons(deleted=True)] == ["fresh"]
    shelf.restore("fresh")
    assert shelf.load("fresh") == lesson("fresh"), "its piece stays for it"
    with pytest.raises(BadInput):
        shelf.load("old")
