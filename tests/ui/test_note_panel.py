"""Teaching notes: what they are about, how they are written, what hangs on them."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from tests.ui.conftest import WAIT, make_lesson, write_score
from tests.ui.helpers import choose, click_bar, nameless, write
from workbench.fingering.telling.words import words
from workbench.teaching.lessons.lesson import NOTE_KINDS, SCOPES
from workbench.ui.notes.scope import BAR, BARS, NOTE, SECTION
from workbench.ui.notes.words import RICH

CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def panel(lesson_window):
    click_bar(lesson_window, 1)
    return lesson_window.notes


def test_a_note_is_about_a_note_a_bar_several_bars_or_a_section(panel, lesson_window):
    session, scope = lesson_window.session, panel.scope
    session.edit("Sections", lambda old: _sectioned(old, ((0, "A"), (2, "B"))))
    write(panel, "Listen")
    assert session.lesson.notes[0].scope == SCOPES[BAR]

    choose(scope.reach, NOTE)
    choose(scope.note, 2)
    note = session.lesson.notes[0]
    assert (note.scope, note.note) == (SCOPES[NOTE], session.lesson.piece.bars[1].notes[2].id)
    assert panel.list.item(0).text().startswith("1  LEFT HAND, F4, beat 3")

    choose(scope.reach, BARS)
    choose(scope.first, 1)
    choose(scope.last, 3)
    note = session.lesson.notes[0]
    assert (note.scope, note.first_bar, note.last_bar, note.note) == (SCOPES[BARS], 1, 3, None)
    assert "bars 2–4" in panel.list.item(0).text()

    choose(scope.reach, SECTION)
    note = session.lesson.notes[0]
    assert (note.section, note.first_bar, note.last_bar) == ("A", 0, 1)
    choose(scope.section, 1)
    note = session.lesson.notes[0]
    assert (note.section, note.first_bar, note.last_bar) == ("B", 2, 3)
    click_bar(lesson_window, 3)
    assert "section B" in panel.list.item(0).text()

    choose(scope.reach, BAR)
    choose(scope.bar, 3)
    note = session.lesson.notes[0]
    assert (note.scope, note.first_bar, note.section) == (SCOPES[BAR], 3, None)


def _sectioned(lesson, sections):
    from dataclasses import replace

    return replace(lesson, sections=sections)


@pytest.mark.parametrize("kind", range(len(NOTE_KINDS)))
def test_every_kind_can_be_chosen(panel, lesson_window, kind):
    write(panel, "Something")
    choose(panel.kind, kind)
    assert lesson_window.session.lesson.notes[0].kind == NOTE_KINDS[kind]
    assert NOTE_KINDS[kind].upper() in panel.list.item(0).text()


def test_words_are_marked_by_keys_and_read_with_their_emphasis(panel, lesson_window):
    panel.add_button.click()
    words = panel.words
    QTest.keyClicks(words, "Let it ring")
    words.moveCursor(words.textCursor().MoveOperation.Start)
    QTest.keyClick(words, Qt.Key.Key_B, CTRL)
    assert words.toPlainText() == "**Let** it ring"
    QTest.keyClick(words, Qt.Key.Key_B, CTRL)  # and away again
    assert words.toPlainText() == "Let it ring"
    words.moveCursor(words.textCursor().MoveOperation.End)
    QTest.keyClick(words, Qt.Key.Key_I, CTRL)
    QTest.keyClick(words, Qt.Key.Key_Return, CTRL)
    assert lesson_window.session.lesson.notes[0].text == "Let it *ring*"
    assert "Let it <em>ring</em>" in panel.list.item(0).data(RICH)
    assert panel.list.item(0).text().endswith("Let it ring")
    assert lesson_window.session.lesson.pins == ()  # Ctrl+B was the writer's, not the window's


def test_a_grip_is_typed_or_taken_from_the_fretboard(panel, lesson_window):
    session = lesson_window.session
    write(panel, "This grip")
    panel.attached.actions_by_kind["grip"].trigger()
    dialog = panel.dialog
    assert nameless(dialog) == []
    frets = {n.string: n.fret for n in session.fingers.bar_hands.notes if n.onset == 0}
    taken = "-".join(str(frets.get(s, "x")) for s in (4, 3, 2, 1))
    assert dialog.frets.text() == taken
    dialog.frets.setText("2-0-1")
    assert "one fret for each" in dialog.problem.words.text() and not dialog.ok.isEnabled()
    dialog.frets.setText("2 0 1 x")
    dialog.ok.click()
    assert session.lesson.notes[0].grip == (2, 0, 1, None)
    assert panel.attached.box.grip == (2, 0, 1, None)
    assert panel.attached.grip.isVisibleTo(panel)
    assert "with a grip" in panel.list.item(0).data(RICH)
    panel.attached.grip.off.click()
    assert session.lesson.notes[0].grip is None
    lesson_window.menus["undo"].trigger()
    assert session.lesson.notes[0].grip == (2, 0, 1, None)


def test_why_not_the_other_fingering(qtbot, panel, lesson_window):
    session = lesson_window.session
    qtbot.waitUntil(lambda: bool(session.fingers.choices), timeout=WAIT)
    panel.add_button.click()  # no words yet: the reason becomes them
    panel.attached.actions_by_kind["rejected"].trigger()
    dialog = panel.dialog
    assert nameless(dialog) == []
    other = dialog.choices[0]
    assert dialog.why.text() == words(other.reason)
    moved = {n.id for n in dialog.neck._hands.notes} & {row[0] for row in dialog.other_rows}
    assert moved
    dialog.ok.click()
    note = session.lesson.notes[0]
    now = {n.id: (n.string, n.fret, n.left) for n in session.fingers.bar_hands.notes}
    assert note.why == note.text == words(other.reason)
    assert note.rejected and all(now[row[0]] != row[1:] for row in note.rejected)
    assert panel.attached.rejected.isVisibleTo(panel)
    assert panel.attached.why.text() == words(other.reason)
    drawn = {m.note.id: (m.note.string, m.note.fret) for m in
             panel.attached.neck.figure.picture.markers}  # fmt: skip
    assert all(drawn[row[0]] == row[1:3] for row in note.rejected)


def test_a_fingering_put_together_by_hand_tells_its_cost(qtbot, panel, lesson_window):
    session = lesson_window.session
    write(panel, "Not so")
    panel.attached.actions_by_kind["rejected"].trigger()
    dialog = panel.dialog
    row = next(r for r in range(dialog.table.rowCount()) if dialog._box(r, 1).count() > 1)
    place = dialog._box(row, 1)
    choose(place, (place.currentIndex() + 1) % place.count())
    assert dialog.choice.currentIndex() == 0
    assert dialog.other_rows
    dialog.why.clear()
    dialog.cost_button.click()
    qtbot.waitUntil(lambda: dialog.why.text() != "", timeout=WAIT)
    string, fret = place.currentData()
    dialog.ok.click()
    rejected = {r[0]: r[1:3] for r in session.lesson.notes[0].rejected}
    assert rejected[dialog.ids[row]] == (string, fret)
    assert session.lesson.pins == ()  # asked only, nothing is changed


def test_a_link_opens_the_lesson_that_teaches_the_move(
    qtbot, panel, lesson_window, tmp_path, settled
):
    window, session = lesson_window, lesson_window.session
    first = session.lesson
    make_lesson(qtbot, window, write_score(tmp_path / "other.musicxml", ("C4 E4 G4 A4",)))
    settled(window)
    write(panel, "As you know")
    panel.attached.actions_by_kind["link"].trigger()
    dialog = panel.dialog
    assert nameless(dialog) == []
    dialog.search.setText("no such words anywhere")
    assert not dialog.ok.isEnabled()
    dialog.search.setText("Ferry")
    assert dialog.list.count() == 1
    dialog.ok.click()
    second = session.lesson
    assert second.notes[0].link == first.id
    assert "Ferry at dusk" in panel.attached.where.text()
    panel.attached.open_button.click()
    assert session.lesson.id == first.id

    # Gone from the shelf: it says so.
    session.open(second.id)
    settled(window)
    session.shelf.delete(first.id)
    panel.attached.open_lesson()
    assert "no longer on the shelf" in window.notice.words.text()
    session.changed.emit()
    assert "no longer on the shelf" in panel.attached.where.text()
    assert not panel.attached.open_button.isVisibleTo(panel)


def test_figures_are_mirrored_for_a_left_handed_player(qtbot, panel, lesson_window):
    session = lesson_window.session
    lesson_window.session.set_left_handed(True)
    qtbot.waitUntil(lambda: bool(session.fingers.choices), timeout=WAIT)
    write(panel, "Look")
    panel.attached.actions_by_kind["grip"].trigger()
    assert panel.dialog.picture.mirrored
    panel.dialog.frets.setText("0003")
    panel.dialog.ok.click()
    panel.attached.actions_by_kind["rejected"].trigger()
    assert panel.dialog.neck.neck.mirrored
    panel.dialog.ok.click()
    assert panel.attached.box.mirrored
    assert panel.attached.neck.figure.neck.mirrored
    lesson_window.session.set_left_handed(False)
    session.changed.emit()
    assert not panel.attached.box.mirrored
    assert not panel.attached.neck.figure.neck.mirrored


def test_without_a_lesson_nothing_can_be_begun_and_headings_stand_on_top(open_window):
    window = open_window()
    assert window.session.lesson is None
    assert not window.notes.add_button.isEnabled()
    choices = window.choices
    assert not choices.list.isVisible() and not choices.take_button.isEnabled()
    assert choices.heading.y() < choices.heading.height()
