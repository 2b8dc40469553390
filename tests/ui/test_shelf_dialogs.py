"""The shelf, versions, copies, parts of a score, sections, another instrument."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QInputDialog

from tests.ui.conftest import WAIT, make_lesson, write_score
from tests.ui.helpers import listed, on_shelf, pick
from workbench.music.errors import BadInput
from workbench.ui.bench.services import Services

PARTS = """<?xml version="1.0" encoding="UTF-8"?>
<score-partwise version="4.0">
  <work><work-title>Two together</work-title></work>
  <part-list>
    <score-part id="P1"><part-name>Flute</part-name></score-part>
    <score-part id="P2"><part-name>Viola</part-name></score-part>
  </part-list>
  <part id="P1"><measure number="1">{head}{flute}</measure></part>
  <part id="P2"><measure number="1">{head}{viola}</measure></part>
</score-partwise>
"""
ABC = "X:1\nT:First tune\nM:4/4\nL:1/4\nK:C\nCEGA|\n\nX:2\nT:Second tune\nM:3/4\nL:1/4\nK:C\nGEC|\n"


def whole_note(pitch):
    return (
        f"<note><pitch><step>{pitch[0]}</step><octave>{pitch[1]}</octave></pitch>"
        "<duration>4</duration><type>whole</type></note>"
    )


@pytest.fixture
def answers(monkeypatch):
    """What the teacher writes into the next small question."""
    given = []

    def answer(*_given, **_named):
        return (given.pop(0), True) if given else ("", False)

    monkeypatch.setattr(QInputDialog, "getText", answer)
    return given


def test_lessons_are_found_copied_archived_deleted_and_restored(qtbot, lesson_window, answers):
    window, shelf = lesson_window, lesson_window.session.shelf
    page = on_shelf(qtbot, window)
    filters = page.filters
    listed(qtbot, page, ["Ferry at dusk"])
    QTest.keyClicks(filters.search, "harbour")
    listed(qtbot, page, 0)
    assert not page.open_button.isEnabled()
    filters.search.clear()
    QTest.keyClicks(filters.search, "fer")
    listed(qtbot, page, 1)

    answers.append("Ada")
    page.copy_button.click()
    listed(qtbot, page, 2)
    assert sorted(row.student for row in page.rows) == ["", "Ada"]
    pick(page, student="Ada")
    copied = page.picked[0].id
    page.archive_button.click()
    listed(qtbot, page, 1)
    assert [row.student for row in page.rows] == [""]
    filters.place.setCurrentIndex(1)
    qtbot.waitUntil(lambda: [row.id for row in page.rows] == [copied], timeout=WAIT)
    page.archive_button.click()
    filters.place.setCurrentIndex(0)
    listed(qtbot, page, 2)
    pick(page, id=copied)
    page.delete_button.click()
    listed(qtbot, page, 1)
    assert len(shelf.lessons()) == 1
    filters.place.setCurrentIndex(2)
    qtbot.waitUntil(lambda: [row.id for row in page.rows] == [copied], timeout=WAIT)
    assert not page.open_button.isEnabled()
    page.delete_button.click()
    listed(qtbot, page, 0)
    assert len(shelf.lessons()) == 2


def test_opening_another_lesson_and_back_keeps_each_ones_bar(
    qtbot, lesson_window, tmp_path, settled
):
    window, session = lesson_window, lesson_window.session
    first = session.lesson.id
    session.selection.select(3)
    make_lesson(qtbot, window, write_score(tmp_path / "b.musicxml", ("G4 G4 E4 E4", "C4 E4 G4 C5")))
    settled(window)
    assert session.lesson.id != first and session.selection.position == 0
    page = on_shelf(qtbot, window)
    listed(qtbot, page, 2)
    pick(page, id=first)
    page.open_button.click()
    settled(window)
    assert (session.lesson.id, session.selection.position) == (first, 3)


def test_deleting_the_open_lesson_empties_the_bench_and_undo_fills_it(
    qtbot, lesson_window, settled
):
    window = lesson_window
    here = window.session.lesson.id
    page = on_shelf(qtbot, window)
    listed(qtbot, page, 1)
    page.delete_button.click()
    assert window.session.lesson is None
    assert window.bars.model.rowCount() == 0
    assert not window.menus["handout"].isEnabled()
    assert not window.lesson_panel.isEnabled()
    listed(qtbot, page, 0)
    assert page.undo_button.isVisible()
    page.undo_button.click()
    listed(qtbot, page, 1)
    assert not page.undo_button.isVisible()
    assert window.session.lesson.id == here
    settled(window)


def test_versions_are_kept_and_gone_back_to(lesson_window, answers, settled):
    window, session = lesson_window, lesson_window.session
    answers.append("Before the concert")
    window.openers.keep_version()
    session.hand_edits.set_right("p")  # no note selected: refused
    assert "Select a note" in window.notice.words.text()
    session.selection.select_note(session.selection.bar.notes[0].id)
    session.hand_edits.set_right("m")
    settled(window)
    assert len(session.lesson.pins) == 1
    window.menus.menu("versions").aboutToShow.emit()
    (action,) = window.menus.menu("versions").actions()
    assert action.text().startswith("Before the concert")
    action.trigger()
    settled(window)
    assert session.lesson.pins == ()
    window.menus["undo"].trigger()
    settled(window)
    assert len(session.lesson.pins) == 1


def test_a_copy_for_another_student_is_opened(lesson_window, answers, settled):
    window, session = lesson_window, lesson_window.session
    first = session.lesson
    answers.append("Ben")
    window.openers.copy()
    settled(window)
    assert session.lesson.student == "Ben"
    assert session.lesson.id != first.id
    assert session.lesson.piece == first.piece
    assert "for Ben" in window.title.text()


def test_the_parts_of_a_score_are_chosen(qtbot, open_window, tmp_path, settled):
    from tests.ui.conftest import ATTRIBUTES

    path = tmp_path / "two.musicxml"
    path.write_text(PARTS.format(head=ATTRIBUTES, flute=whole_note("A4"), viola=whole_note("E4")))
    window = open_window()
    window.import_score(str(path))
    qtbot.waitUntil(lambda: window.dialog is not None, timeout=WAIT)
    dialog = window.dialog
    parts = dialog.parts
    assert [parts.item(i).text() for i in range(2)] == ["Flute: 1 note", "Viola: 1 note"]
    parts.item(0).setCheckState(Qt.CheckState.Unchecked)
    assert dialog.problem.words.text() == "Tick at least one part."
    assert not dialog.make_button.isEnabled()
    parts.item(1).setCheckState(Qt.CheckState.Checked)
    qtbot.waitUntil(lambda: dialog.make_button.isEnabled(), timeout=WAIT)
    assert [n.midi for n in dialog.piece.notes] == [64]


def test_a_tune_of_a_book_is_chosen(qtbot, open_window, tmp_path):
    path = tmp_path / "book.abc"
    path.write_text(ABC)
    window = open_window()
    window.import_score(str(path))
    qtbot.waitUntil(lambda: window.dialog is not None, timeout=WAIT)
    dialog = window.dialog
    assert dialog.tune.count() == 2
    dialog.tune.setCurrentIndex(1)
    dialog.tune.activated.emit(1)
    qtbot.waitUntil(lambda: dialog.heading.text() == "Second tune", timeout=WAIT)
    assert [n.midi for n in dialog.piece.notes] == [67, 64, 60]


def test_an_own_tuning_and_its_mistakes(qtbot, open_window, score_file, settled):
    window = open_window()
    window.import_score(str(score_file))
    qtbot.waitUntil(lambda: window.dialog is not None, timeout=WAIT)
    dialog = window.dialog
    fields = dialog.fields
    fields.instrument.setCurrentIndex(fields.instrument.count() - 1)
    fields.tuning.setText("G4,C4,H4,A4@345")
    dialog.make_button.click()
    assert "'H4' is no pitch" in dialog.problem.words.text()
    fields.tuning.setText("G4,C4,E4,A4@345")
    dialog.make_button.click()
    qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
    settled(window)
    assert window.session.lesson.instrument == "custom:G4,C4,E4,A4@345"
    assert window.session.fingers.fingering.audit.notes == 16


def test_the_first_start_lays_out_the_demo_shelf(qtbot, open_window, settled):
    window = open_window(Services())
    qtbot.waitUntil(lambda: window.session.lesson is not None, timeout=WAIT)
    settled(window)
    rows = window.session.shelf.lessons()
    assert len(rows) >= 4
    assert window.bars.model.rowCount() > 0
    assert all(bar.impossible is None for bar in window.session.fingers.fingering.bars)


def test_a_second_start_opens_the_lesson_without_solving_it_anew(
    qtbot, lesson_window, open_window, settled
):
    settled(lesson_window)
    qtbot.waitUntil(
        lambda: (
            lesson_window.session.shelf.cached_fingering(lesson_window.session.lesson) is not None
        ),
        timeout=WAIT,
    )
    lesson_window.close()

    def never(*_given):
        raise BadInput("Nothing is to be solved.")

    window = open_window(Services(demo=lambda: (), solver=never), wait=False)
    qtbot.waitUntil(lambda: window.session.fingers.fingering is not None, timeout=WAIT)
    assert window.session.fingers.fingering == lesson_window.session.fingers.fingering
