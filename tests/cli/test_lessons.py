"""Lessons of the store on the command line."""

from __future__ import annotations

from dataclasses import replace

import pypdf
import pytest

from workbench.handout.parts.words import grade_words
from workbench.music.model import Bar, Note, Piece, Pitch
from workbench.store.grading import apply_fit, printed_grade
from workbench.store.shelf import Shelf
from workbench.teaching.grading.grade import shipped_model
from workbench.teaching.lessons.lesson import Lesson


@pytest.fixture
def kept() -> Lesson:
    notes = tuple(
        Note(f"n{beat}", beat_of(beat), beat_of(1), Pitch("CDEF"[beat], 0, 4)) for beat in range(4)
    )
    piece = Piece(
        "Stairs", (Bar(index=0, number="1", time_signature=(4, 4), length=beat_of(4), notes=notes),)
    )
    lesson = Lesson("stairs-for-ada", "Stairs", piece, "ukulele-low-g", student="Ada", grade=1)
    with Shelf() as shelf:
        shelf.add(lesson)
    return lesson


def beat_of(number: int):
    from fractions import Fraction

    return Fraction(number)


def test_an_emptied_bin_leaves_no_trace(call, kept, tmp_path):
    with Shelf() as shelf:
        shelf.add(replace(kept, id="gone", student="Xanthippe"))
        shelf.delete("gone")
    assert [row["id"] for row in call("lessons", "--bin", "--json").json] == ["gone"]
    assert call("lessons", "--empty-bin", "--json").json == {"erased": 1}
    assert call("lessons", "--bin", "--json").json == []
    assert [row["id"] for row in call("lessons", "--json").json] == [kept.id]
    for path in tmp_path.glob("store.db*"):
        assert b"Xanthippe" not in path.read_bytes(), path


def test_a_student_is_erased_by_name(call, kept, tmp_path):
    with Shelf() as shelf:
        shelf.add(replace(kept, id="hers", student="Xanthippe"))
    got = call("lessons", "--erase-student", "Xanthippe")
    assert (got.status, got.out) == (0, "1 lesson is gone for good.\n")
    assert call("lessons", "--erase-student", "Nobody").out == "0 lessons are gone for good.\n"
    assert [row["id"] for row in call("lessons", "--json").json] == [kept.id]
    for path in tmp_path.glob("store.db*"):
        assert b"Xanthippe" not in path.read_bytes(), path


def test_the_list_names_what_is_kept(call, kept):
    (row,) = call("lessons", "--json").json
    assert {name: row[name] for name in ("id", "title", "instrument", "grade", "student")} == {
        "id": "stairs-for-ada",
        "title": "Stairs",
        "instrument": "ukulele-low-g",
        "grade": 1,
        "student": "Ada",
    }
    assert "T" in row["updated"]
    plain = call("lessons").out
    assert "stairs-for-ada" in plain and "Ada" in plain


def test_lessons_are_searched(call, kept):
    assert len(call("lessons", "--json", "--search", "stai").json) == 1
    assert call("lessons", "--json", "--search", "waltz").json == []
    assert call("lessons", "--json", "--instrument", "guitar").json == []


def test_a_lesson_is_fingered_on_its_own_instrument(call, kept):
    got = call("finger", "stairs-for-ada", "--json")
    assert got.status == 0, got.err
    assert got.json["instrument"] == "ukulele-low-g"
    assert got.json["tuning"] == [69, 64, 60, 55]


def test_a_lesson_makes_a_page(call, kept, tmp_path):
    got = call("handout", "stairs-for-ada", "-o", tmp_path / "page.pdf", "--json")
    assert got.status == 0, got.err
    assert got.json["pages"] == 1


def test_a_name_that_is_neither_file_nor_lesson(call, kept):
    got = call("handout", "stairs-for-bob", "-o", "page.pdf")
    assert got.status == 2
    assert "neither a score file nor the id of a lesson" in got.err


def test_a_damaged_store_is_told_and_left_as_it_is(call, tmp_path, monkeypatch):
    broken = tmp_path / "broken.db"
    broken.write_bytes(b"this is no database, " * 400)
    monkeypatch.setenv("PLUCKWRIGHT_DB", f"sqlite:///{broken}")
    before = broken.read_bytes()
    got = call("lessons")
    assert (got.status, got.out) == (2, "")
    assert got.err.count("\n") == 1 and "broken.db" in got.err
    assert broken.read_bytes() == before


def test_a_page_says_the_grade_printed_before(call, tmp_path):
    """An estimate on paper outlives another model; a score that is not kept leaves no trace."""
    strict = replace(shipped_model(), name="strict", cuts=tuple(0.01 * k for k in range(1, 9)))
    notes = tuple(
        Note(f"n{beat}", beat_of(beat), beat_of(1), Pitch("CDEF"[beat], 0, 4)) for beat in range(4)
    )
    piece = Piece(
        "Stairs", (Bar(index=0, number="1", time_signature=(4, 4), length=beat_of(4), notes=notes),)
    )
    with Shelf() as shelf:
        shelf.add(Lesson("stairs", "Stairs", piece, "ukulele"))
    page = tmp_path / "page.pdf"
    for what in ("plan", "page"):
        got = call("handout", "stairs", "-o", page, "--what", what)
        assert got.status == 0, got.err
        with Shelf() as shelf:
            printed = printed_grade(shelf, "stairs")
            assert (printed is not None) == (what == "page")
    with Shelf() as shelf:
        apply_fit(shelf, strict)
    assert call("handout", "stairs", "-o", page).status == 0
    with Shelf() as shelf:
        assert printed_grade(shelf, "stairs") == printed
    said = " ".join(pypdf.PdfReader(page).pages[0].extract_text().split())
    assert grade_words(printed.number, printed.level) in said


def test_a_page_of_a_score_is_judged_by_the_model_in_force(call, tune, tmp_path):
    """As the verbs ``grade`` and ``plan`` judge it; a page of a score keeps nothing."""
    strict = replace(shipped_model(), name="strict", cuts=tuple(0.01 * k for k in range(1, 9)))
    with Shelf() as shelf:
        apply_fit(shelf, strict)
    told, plan = call("grade", tune, "--json").json, call("plan", tune, "--json").json
    plain = call("plan", tune, "--json", "--uncalibrated").json
    assert told["model"] == "strict" and plan["minutes_total"] != plain["minutes_total"]
    page, sheet = tmp_path / "page.pdf", tmp_path / "plan.pdf"
    assert call("handout", tune, "-o", page).status == 0
    assert call("handout", tune, "-o", sheet, "--what", "plan").status == 0
    assert grade_words(told["grade"], told["level"]) in words(page)
    last = plan["days"][-1]["day"]
    assert f"in {last} day" in words(sheet) and plain["days"][-1]["day"] != last


def words(path):
    return " ".join(" ".join(p.extract_text().split()) for p in pypdf.PdfReader(path).pages)
