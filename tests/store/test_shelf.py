"""Pieces and lessons come back exactly, and are known again."""

from __future__ import annotations

import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings

from tests.store.lessons_made import any_lesson, fingering, lesson, piece
from workbench.music.errors import BadInput
from workbench.music.model import Pitch
from workbench.music.reading.score import read_score
from workbench.store.edition import edition_of, engine_places
from workbench.store.rows import View
from workbench.store.shelf import Shelf


def test_reopening_brings_back_exactly_what_was_there(file):
    made = lesson()
    with Shelf(file) as shelf:
        row = shelf.add_piece(made.piece, "scores/boat.musicxml")
        shelf.add(made, row.id)
        changed = replace(made, title="Boat Song, slower", tempo_percent=70)
        shelf.save(changed, "Title")
        shelf.save_view(made.id, View(6, "n2-1", 1.5, {"scroll": 0.25, "order": "written"}))
    with Shelf(file) as shelf:
        assert shelf.load(made.id) == changed
        assert shelf.view(made.id) == View(6, "n2-1", 1.5, {"scroll": 0.25, "order": "written"})
        assert shelf.load_piece(row.id) == made.piece
        assert shelf.piece(row.id).source == "boat.musicxml"
        (listed,) = shelf.lessons()
        assert shelf.lesson_row(made.id) == listed
        assert (listed.title, listed.grade, listed.techniques, listed.piece_id) == (
            "Boat Song, slower", 2, ("pickup", "guide finger"), row.id,
        )  # fmt: skip


@given(made=any_lesson)
@settings(
    max_examples=60,
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
def test_any_lesson_comes_back_exactly(file, made):
    with Shelf(file) as shelf:
        shelf.save(made)
    with Shelf(file) as shelf:
        assert shelf.load("any") == made


def test_the_same_music_is_known_whatever_it_is_called(shelf):
    first = shelf.add_piece(piece(), "boat.mxl")
    again = piece(title="Boat Song (2)", composer="anon.")
    renamed = replace(
        again,
        tempo=120.0,
        bars=tuple(
            replace(
                bar,
                number=f"{bar.number}x",
                notes=tuple(replace(n, id=f"other{n.id}") for n in reversed(bar.notes)),
            )
            for bar in again.bars
        ),
    )
    assert shelf.find_same(renamed).id == first.id
    assert shelf.find_same(renamed).lessons == 0


def test_the_same_file_read_twice_is_one_piece(shelf, tmp_path):
    first, copy, other = (tmp_path / name for name in ("a.abc", "copied.abc", "other.abc"))
    tune = "X:1\nT:{}\nM:3/4\nL:1/8\nK:F\n|:C2|F2A2c2|{}2G2E2|F4:|\n"
    first.write_text(tune.format("Boat Song", "B"))
    copy.write_text(tune.format("Boat Song again", "B"))
    other.write_text(tune.format("Boat Song", "A"))
    row = shelf.add_piece(read_score(first), str(first))
    assert (row.title, row.source) == ("Boat Song", "a.abc")
    assert shelf.find_same(read_score(first)) == row
    assert shelf.find_same(read_score(copy)) == row
    assert shelf.find_same(read_score(other)) is None


@pytest.mark.parametrize(
    "change",
    [
        lambda bar: replace(bar, notes=bar.notes[1:]),
        lambda bar: replace(bar, repeat_end=not bar.repeat_end),
        lambda bar: replace(bar, time_signature=(6, 8)),
        lambda bar: replace(
            bar, notes=(replace(bar.notes[0], pitch=Pitch("B", -1, 3)), *bar.notes[1:])
        ),
        lambda bar: replace(bar, notes=(replace(bar.notes[0], voice=3), *bar.notes[1:])),
    ],
)
def test_other_music_is_another_piece(shelf, change):
    made = piece()
    shelf.add_piece(made)
    bars = list(made.bars)
    bars[2] = change(bars[2])
    assert shelf.find_same(replace(made, bars=tuple(bars))) is None


def test_several_lessons_hang_on_one_piece(shelf):
    row = shelf.add_piece(piece())
    shelf.add(lesson("one"), row.id)
    moved = piece(shift=2)
    shelf.add(lesson("two", piece=moved, transposition=3), row.id)
    assert {r.id for r in shelf.lessons(piece_id=row.id)} == {"one", "two"}
    assert shelf.piece(row.id).lessons == 2
    assert shelf.load("two").piece == moved


def test_a_lesson_saved_without_its_piece_finds_or_brings_it(shelf):
    shelf.save(lesson("one"))
    shelf.save(lesson("two", student="Jo"))
    shelf.save(lesson("three", piece=piece(shift=1)))
    assert [p.lessons for p in shelf.pieces()] == [2, 1]


def test_pieces_are_found_by_words_without_accents(shelf):
    shelf.add_piece(piece(title="Pièce en forme", composer="Zoë Ånd"))
    shelf.add_piece(piece(title="Boat Song"))
    assert [p.title for p in shelf.pieces("piece zoe")] == ["Pièce en forme"]
    assert len(shelf.pieces()) == 2


def test_a_deleted_piece_is_no_longer_offered_and_can_come_back(shelf):
    row = shelf.add_piece(piece())
    shelf.save(lesson())
    shelf.delete_piece(row.id)
    assert shelf.pieces() == () and shelf.find_same(piece()) is None
    assert shelf.load("lesson-1").piece == piece()
    shelf.restore_piece(row.id)
    assert shelf.find_same(piece()).id == row.id


def test_what_is_not_there_is_said_in_a_sentence(shelf):
    for call in (shelf.load, shelf.undo, shelf.history, shelf.delete, shelf.lesson_row):
        with pytest.raises(BadInput, match="Lesson nowhere is not on the shelf"):
            call("nowhere")
    with pytest.raises(BadInput, match="Piece nowhere is not on the shelf"):
        shelf.load_piece("nowhere")
    with pytest.raises(BadInput, match="Piece nowhere"):
        shelf.add(lesson(), "nowhere")
    assert shelf.lessons() == () and shelf.pieces() == ()
    with pytest.raises(BadInput, match="1 to 200 characters"):
        shelf.save(lesson(""))
    shelf.save(lesson())
    with pytest.raises(BadInput, match="on the shelf already"):
        shelf.add(lesson())


def test_a_fingering_is_found_by_what_it_depends_on_and_nothing_else(shelf):
    made = lesson()
    assert shelf.cached_fingering(made) is None
    shelf.put_fingering(made, fingering())
    assert shelf.cached_fingering(made) == fingering()
    told = replace(made, title="x", notes=(), grade=None, student="Jo", id="y")
    assert shelf.cached_fingering(told) == fingering()
    for change in (
        {"pins": ()},
        {"capo": 2},
        {"hand": "small"},
        {"instrument": "guitar"},
        {"settings": replace(made.settings, level="advanced")},
        {"piece": piece(shift=1)},
    ):
        assert shelf.cached_fingering(replace(made, **change)) is None
    assert shelf.cached_fingering(made, "weights of another day") is None
    shelf.put_fingering(made, fingering(cost=99))
    assert shelf.cached_fingering(made).cost == 99


def test_a_fingering_of_another_engine_is_solved_again(shelf, tmp_path, monkeypatch):
    shelf.put_fingering(lesson(), fingering())
    assert shelf.cached_fingering(lesson()) == fingering()
    monkeypatch.setattr("workbench.store.fingerings.engine_edition", lambda: "another")
    assert shelf.cached_fingering(lesson()) is None
    (tmp_path / "weights.json").write_text("{}")
    before = edition_of(tmp_path)
    (tmp_path / "notes.txt").write_text("does not count")
    assert edition_of(tmp_path) == before
    (tmp_path / "weights.json").write_text("{ }")
    assert edition_of(tmp_path) != before
    before = edition_of(tmp_path)
    room = tmp_path / "hand"
    room.mkdir()
    (room / "reach.py").write_text("FAR = 1")
    nested = edition_of(tmp_path)
    (room / "reach.py").rename(room / "near.py")
    assert len({before, nested, edition_of(tmp_path)}) == 3


def test_the_edition_covers_all_that_a_fingering_depends_on():
    """Every module of the program that the engine has imported, words and tables apart."""
    program = (
        "import sys, workbench.fingering.engine;"
        "print(*(m.__file__ for n, m in sys.modules.items() if n.startswith('workbench.')))"
    )
    shown = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True)
    counted = [place.resolve() for place in engine_places()]
    for name in shown.stdout.split():
        file = Path(name).resolve()
        if "language" in file.parts or file.name in ("__init__.py", "errors.py", "remembered.py"):
            continue
        assert any(file == place or place in file.parents for place in counted), file


def test_the_oldest_fingerings_are_let_go(shelf):
    shelf.store.most_fingerings = 3
    lessons = [lesson(capo=capo) for capo in range(5)]
    for made in lessons:
        shelf.put_fingering(made, fingering(made.capo))
    found = [shelf.cached_fingering(made) for made in lessons]
    assert [f and f.cost for f in found] == [None, None, 2, 3, 4]


def test_a_changed_piece_is_never_taken_for_an_earlier_one(shelf):
    """Pieces of equal age and address must not be mixed up in memory."""
    for shift in range(100):
        shelf.save(lesson(piece=piece(shift=shift % 7, title=str(shift))))
    assert shelf.load("lesson-1").piece == piece(shift=99 % 7, title="99")
