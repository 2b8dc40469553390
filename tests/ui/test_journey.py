"""A teacher's whole way through the window, by clicks and keys."""

from __future__ import annotations

from pypdf import PdfReader
from PySide6.QtCore import QPointF, Qt
from PySide6.QtTest import QTest

from tests.ui.conftest import WAIT, make_lesson

LEFT = Qt.MouseButton.LeftButton
CTRL = Qt.KeyboardModifier.ControlModifier


def click_bar(window, row):
    view = window.bars.view
    QTest.mouseClick(view.viewport(), LEFT, pos=view.visualRect(view.model().index(row)).center())


def click_note(window, note):
    """Click on the note's head in the score."""
    score = window.score
    middle = score.from_image(score.image.rect_of(note)).center()
    QTest.mouseClick(score.viewport(), LEFT, pos=middle.toPoint())


def click_place(window, string, fret):
    neck = window.neck.neck
    window.neck.ensureVisible(*neck.centre_of(string, fret).toTuple())
    QTest.mouseClick(neck, LEFT, pos=neck.centre_of(string, fret))


def test_from_the_score_to_the_handout(qtbot, open_window, score_file, settled, tmp_path):
    window = open_window()
    session = window.session
    assert session.lesson is None

    # Import.
    make_lesson(qtbot, window, score_file)
    settled(window)
    assert session.lesson.title == "Ferry at dusk"
    assert window.bars.model.rowCount() == 4
    assert [n.midi for n in session.fingers.fingering.bars[0].notes] == [60, 64, 67, 69]

    # Select a bar, then a note of it.
    click_bar(window, 2)
    assert session.selection.position == 2
    note = session.selection.bar.notes[3]  # C5
    click_note(window, note.id)
    assert session.selection.note_id == note.id

    # Move it to another string by a click on an offered place.
    before = session.fingers.note_hands
    offered = window.neck.neck.picture.offers
    assert offered
    assert all(session.instrument.open_midi[s - 1] + f == 72 for s, f in offered)
    string, fret = min(offered, key=lambda place: place[1])
    click_place(window, string, fret)
    settled(window)
    moved = session.fingers.note_hands
    assert (moved.string, moved.fret) == (string, fret) != (before.string, before.fret)
    assert moved.pinned
    assert window.bars.model.rows[2].pins == 1

    # Right finger by a key.
    window.neck.neck.setFocus()
    QTest.keyClick(window.neck.neck, Qt.Key.Key_A)
    settled(window)
    assert session.fingers.note_hands.right == "a"

    # Write a note.
    window.notes.add_button.click()
    QTest.keyClicks(window.notes.words, "Let the open string ring.")
    QTest.keyClick(window.notes.words, Qt.Key.Key_Return, CTRL)
    assert [n.text for n in session.lesson.notes] == ["Let the open string ring."]
    assert session.lesson.notes[0].first_bar == 2
    assert session.lesson.notes[0].note == note.id

    # Undo the finger's way: note, right finger, then redo both.
    with_all = session.lesson
    window.menus["undo"].trigger()
    assert session.lesson.notes == ()
    window.menus["undo"].trigger()
    settled(window)
    assert [(p.string, p.right) for p in session.lesson.pins] == [(string, None)]
    window.menus["redo"].trigger()
    window.menus["redo"].trigger()
    settled(window)
    assert session.lesson == with_all

    # Grade it, quit and open again: everything is there.
    window.lesson_panel.grade.setValue(3)
    window.lesson_panel.practice.setValue(240)
    settled(window)
    kept, position, selected = session.lesson, session.selection.position, session.selection.note_id
    window.close()
    again = open_window()
    assert again.session.lesson == kept
    assert (again.session.selection.position, again.session.selection.note_id) == (
        position,
        selected,
    )
    assert again.session.fingers.note_hands == moved_with(again, moved)
    assert again.bars.view.currentIndex().row() == 2

    # Undo reaches back over the restart.
    again.menus["undo"].trigger()
    assert again.session.lesson.practice_minutes is None
    again.menus["redo"].trigger()
    settled(again)

    # The handout.
    again.menus["handout"].trigger()
    dialog = again.dialog
    out = tmp_path / "ferry.pdf"
    dialog.path.setText(str(out))
    dialog.save.click()
    qtbot.waitUntil(lambda: again.dialog is None, timeout=WAIT)
    text = " ".join(" ".join(page.extract_text() for page in PdfReader(out).pages).split())
    assert "Ferry at dusk" in text
    assert "Let the open string ring" in text


def moved_with(window, moved):
    """The moved note as the reopened window has it, its right finger included."""
    from dataclasses import replace

    return replace(moved, right="a", move=window.session.fingers.note_hands.move)


def test_dragging_a_finger_to_another_string(lesson_window, settled):
    window = lesson_window
    session, neck = window.session, window.neck.neck
    note = session.selection.bar.notes[3]  # A4, the open first string
    session.selection.select_note(note.id)
    here = session.fingers.note_hands
    place = min(neck.picture.offers, key=lambda p: p[1])
    start = neck.centre_of(here.string, here.fret)
    QTest.mousePress(neck, LEFT, pos=start)
    QTest.mouseMove(neck, (start + neck.centre_of(*place)) / 2)
    QTest.mouseMove(neck, neck.centre_of(*place))
    QTest.mouseRelease(neck, LEFT, pos=neck.centre_of(*place))
    settled(window)
    assert (session.fingers.note_hands.string, session.fingers.note_hands.fret) == place


def test_dropped_beside_the_rings_a_finger_stays(lesson_window, settled):
    window = lesson_window
    session, neck = window.session, window.neck.neck
    session.selection.select_note(session.selection.bar.notes[3].id)
    before = session.lesson
    start = neck.centre_of(session.fingers.note_hands.string, session.fingers.note_hands.fret)
    wrong = neck.centre_of(4, 6)
    assert (4, 6) not in neck.picture.offers
    QTest.mousePress(neck, LEFT, pos=start)
    QTest.mouseMove(neck, wrong)
    QTest.mouseRelease(neck, LEFT, pos=wrong)
    assert session.lesson == before


def test_keys_move_notes_and_fingers(lesson_window, settled):
    window = lesson_window
    session, neck = window.session, window.neck.neck
    neck.setFocus()
    QTest.keyClick(neck, Qt.Key.Key_Right)
    assert session.selection.note_id == session.selection.bar.notes[0].id
    QTest.keyClick(neck, Qt.Key.Key_Right)
    note = session.selection.bar.notes[1]  # E4: open string 2, or string 3 fret 4
    assert session.selection.note_id == note.id
    QTest.keyClick(neck, Qt.Key.Key_Down)
    settled(window)
    assert (session.fingers.note_hands.string, session.fingers.note_hands.fret) == (3, 4)
    QTest.keyClick(neck, Qt.Key.Key_4)
    settled(window)
    assert session.fingers.note_hands.left == 4
    QTest.keyClick(neck, Qt.Key.Key_0)  # no open string there
    assert "Finger 0 is the open string" in window.notice.words.text()
    assert session.fingers.note_hands.left == 4
    QTest.keyClick(neck, Qt.Key.Key_Backspace)
    settled(window)
    assert session.lesson.pins == ()
    QTest.keyClick(neck, Qt.Key.Key_Escape)
    assert session.selection.note_id is None


def test_enter_takes_another_fingering(qtbot, lesson_window, settled):
    window = lesson_window
    session = window.session
    click_bar(window, 1)
    qtbot.waitUntil(lambda: bool(session.fingers.choices), timeout=WAIT)
    wanted = session.fingers.choices[0].notes
    window.choices.list.setFocus()
    QTest.keyClick(window.choices.list, Qt.Key.Key_Return)
    settled(window)
    got = session.fingers.bar_hands.notes
    assert [(n.string, n.fret, n.left) for n in got] == [(n.string, n.fret, n.left) for n in wanted]
    assert len(session.shelf.choices()) == 1


def test_a_half_written_note_is_kept_when_the_window_closes(qtbot, lesson_window, open_window):
    window = lesson_window
    window.notes.add_button.click()
    QTest.keyClicks(window.notes.words, "Breathe before the leap")
    window.close()
    again = open_window()
    assert [n.text for n in again.session.lesson.notes] == ["Breathe before the leap"]


def test_one_note_for_several_bars(lesson_window):
    window = lesson_window
    view = window.bars.view
    click_bar(window, 1)
    pos = view.visualRect(view.model().index(3)).center()
    QTest.mouseClick(view.viewport(), LEFT, Qt.KeyboardModifier.ShiftModifier, pos)
    window.notes.add_button.click()
    QTest.keyClicks(window.notes.words, "All one breath")
    window.notes.commit()
    (note,) = window.session.lesson.notes
    assert (note.first_bar, note.last_bar) == (1, 3)
    assert [row.notes for row in window.bars.model.rows] == [0, 1, 1, 1]


def test_notes_are_changed_and_deleted(lesson_window):
    window = lesson_window
    panel, session = window.notes, window.session
    panel.add_button.click()
    QTest.keyClicks(panel.words, "Slowly")
    panel.commit()
    panel.kind.setCurrentIndex(3)
    panel.kind.activated.emit(3)
    assert [(n.kind, n.text) for n in session.lesson.notes] == [("rhythm", "Slowly")]
    panel.delete_button.click()
    assert session.lesson.notes == ()
    assert not panel.words.isEnabled()
    window.menus["undo"].trigger()
    assert [n.text for n in session.lesson.notes] == ["Slowly"]


def test_the_same_piece_is_offered_as_the_same(qtbot, lesson_window, tmp_path):
    from tests.ui.conftest import write_score

    window = lesson_window
    first = window.session.lesson.id
    window.import_score(str(write_score(tmp_path / "another name.musicxml")))
    qtbot.waitUntil(lambda: window.dialog is not None, timeout=WAIT)
    dialog = window.dialog
    assert "on your shelf already" in dialog.known.words.text()
    dialog.open_button.click()
    assert window.session.lesson.id == first
    assert len(window.session.shelf.pieces()) == 1


def test_another_key_keeps_the_notes(qtbot, lesson_window, settled):
    window, session = lesson_window, lesson_window.session
    window.notes.add_button.click()
    QTest.keyClicks(window.notes.words, "Stay")
    window.notes.commit()
    window.openers.change_music()
    dialog = window.dialog
    qtbot.waitUntil(lambda: session.jobs.idle, timeout=WAIT)
    dialog.fields.key.setEditText("D")
    dialog.ok.click()
    qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
    settled(window)
    assert session.lesson.key == "D major"
    assert [n.midi for n in session.fingers.fingering.bars[0].notes] == [62, 66, 69, 71]
    assert [n.text for n in session.lesson.notes] == ["Stay"]
    window.menus["undo"].trigger()
    settled(window)
    assert session.lesson.key == "C major"


def test_a_key_that_is_none_is_refused_in_the_dialog(qtbot, lesson_window):
    window = lesson_window
    before = window.session.lesson
    window.openers.change_music()
    dialog = window.dialog
    qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    dialog.fields.key.setEditText("H sharp")
    dialog.ok.click()
    qtbot.waitUntil(lambda: bool(dialog.problem.words.text()), timeout=WAIT)
    assert "H sharp" in dialog.problem.words.text()
    assert dialog.ok.isEnabled()
    assert window.session.lesson == before


def test_clicking_the_score_beside_a_note_selects_the_bar(lesson_window):
    window = lesson_window
    score = window.score
    rect = score.from_image(score.image.bar_rect(1))
    corner = QPointF(rect.right() - 3, rect.top() + 2)
    QTest.mouseClick(score.viewport(), LEFT, pos=corner.toPoint())
    assert (window.session.selection.bar_index, window.session.selection.note_id) == (1, None)
