"""What a teacher decided follows the music when it is corrected."""

from __future__ import annotations

from dataclasses import replace

import pytest

from workbench.fingering.types import Pin
from workbench.music.edits.bars import delete_bars, duplicate_bars, insert_bars
from workbench.music.edits.fresh import new_piece
from workbench.music.edits.lengths import Length
from workbench.music.edits.notes import delete_notes, move_steps, write_note
from workbench.music.edits.signs import set_repeat, set_titles
from workbench.music.model import Pitch
from workbench.teaching.lessons.lesson import OPENING, BarNote, Lesson
from workbench.teaching.lessons.music_changed import with_piece


@pytest.fixture
def lesson():
    """Six bars of one note each, with something decided about every one."""
    piece = new_piece("Six bars", bars=6)
    for bar in range(6):
        piece = write_note(piece, bar, 0, 1, Pitch("G", 0, 4), Length())
    ids = [n.id for n in piece.notes]
    return Lesson(
        id="lesson", title="Six bars", piece=piece, instrument="ukulele", key="C major",
        pins=tuple(Pin(note, string=2, fret=3, left=3, right="i") for note in ids),
        notes=(
            BarNote("whole", "form", "All of it.", 0, 5),
            BarNote("one", "left hand", "**This** *bar*.", 2, 2),
            BarNote("few", "left hand", "These bars.", 2, 4),
            BarNote("note", "sound", "This note.", 2, 2, note=ids[2],
                    rejected=((ids[2], 3, 7, 1), (ids[3], 2, 3, 1))),
        ),
        sections=((0, "A"), (2, "B"), (4, "C")),
        script_edits=((OPENING, "Welcome."), (1, "Bar two."), (2, "Bar three."), (5, "The last.")),
        plan_done=("learn:0-1:1", "join:2-3:1", "review:4-5:2", "run:90"),
    )  # fmt: skip


def note_of(lesson, name):
    return next((n for n in lesson.notes if n.id == name), None)


def span(note):
    return note.first_bar, note.last_bar


def test_nothing_changed_is_the_same_lesson(lesson):
    assert with_piece(lesson, lesson.piece).lesson is lesson


def test_a_bar_put_in_moves_what_comes_after(lesson):
    made = insert_bars(lesson.piece, 2)
    carried = with_piece(lesson, made.piece, made.bars)
    new = carried.lesson
    assert tuple(map(str, carried.dropped)) == ()
    assert new.corrected
    assert new.pins == lesson.pins
    assert span(note_of(new, "whole")) == (0, 6)
    assert span(note_of(new, "one")) == (3, 3)
    assert span(note_of(new, "few")) == (3, 5)
    assert span(note_of(new, "note")) == (3, 3)
    assert new.sections == ((0, "A"), (3, "B"), (5, "C"))
    assert new.script_edits == (
        (OPENING, "Welcome."), (1, "Bar two."), (3, "Bar three."), (6, "The last."),
    )  # fmt: skip
    assert new.plan_done == ("learn:0-1:1", "join:3-4:1", "review:5-6:2", "run:90")


def test_deleted_bars_take_what_is_theirs_along_and_it_is_told(lesson):
    made = delete_bars(lesson.piece, 2, 3)
    carried = with_piece(lesson, made.piece, made.bars)
    new, told = carried.lesson, " ".join(map(str, carried.dropped))
    gone = {n.id for b in lesson.piece.bars[2:4] for n in b.notes}
    assert {p.note for p in new.pins} == {p.note for p in lesson.pins} - gone
    assert note_of(new, "one") is None
    assert note_of(new, "note") is None
    assert span(note_of(new, "few")) == (2, 2)
    assert span(note_of(new, "whole")) == (0, 3)
    assert new.sections == ((0, "A"), (2, "C"))
    assert new.script_edits == ((OPENING, "Welcome."), (1, "Bar two."), (3, "The last."))
    assert new.plan_done == ("learn:0-1:1", "review:2-3:2", "run:90")
    assert "2 pins went with their notes." in told
    assert "The remark “This bar.” went with its bar." in told
    assert "The remark “This note.” went with its bar." in told
    assert "The words of the script for 1 bar" in told
    assert "1 tick of the practice plan went with its bars." in told


def test_a_deleted_note_frees_what_was_said_of_it(lesson):
    gone = lesson.piece.bars[2].notes[0].id
    carried = with_piece(lesson, delete_notes(lesson.piece, [gone]))
    new = carried.lesson
    assert gone not in {p.note for p in new.pins}
    about = note_of(new, "note")
    assert about.note is None
    assert span(about) == (2, 2)
    assert [row[0] for row in about.rejected] == [lesson.piece.bars[3].notes[0].id]
    assert tuple(map(str, carried.dropped)) == (
        "1 pin went with its note.",
        "The remark “This note.” speaks of its bar from now on.",
    )
    assert new.script_edits == lesson.script_edits
    assert new.plan_done == lesson.plan_done


def test_a_note_of_another_pitch_keeps_its_right_finger(lesson):
    moved = lesson.piece.bars[1].notes[0].id
    carried = with_piece(lesson, move_steps(lesson.piece, moved, 1))
    pins = {p.note: p for p in carried.lesson.pins}
    assert pins[moved] == Pin(moved, right="i")
    assert len(pins) == 6
    assert tuple(map(str, carried.dropped)) == ("1 pin was let go: its note has another pitch.",)


def test_words_of_the_script_follow_their_time_through_a_repeat(lesson):
    repeated = set_repeat(lesson.piece, 1, end=True)
    new = with_piece(lesson, repeated).lesson
    # bars 1 and 2 are played twice now: what was said of bar 3 is said two places later
    assert new.script_edits == (
        (OPENING, "Welcome."), (1, "Bar two."), (4, "Bar three."), (7, "The last."),
    )  # fmt: skip


def test_a_copied_bar_leaves_what_is_said_with_the_first(lesson):
    made = duplicate_bars(lesson.piece, 2, 2)
    new = with_piece(lesson, made.piece, made.bars).lesson
    assert span(note_of(new, "one")) == (2, 2)
    assert span(note_of(new, "note")) == (2, 2)
    assert span(note_of(new, "few")) == (2, 5)
    assert new.sections == ((0, "A"), (2, "B"), (5, "C"))


def test_the_lesson_takes_a_new_title_unless_it_has_its_own(lesson):
    titled = set_titles(lesson.piece, "Six good bars", "", "")
    assert with_piece(lesson, titled).lesson.title == "Six good bars"
    own = replace(lesson, title="For Tuesday")
    assert with_piece(own, titled).lesson.title == "For Tuesday"
