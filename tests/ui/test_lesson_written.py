"""A whole lesson written through the window: from the score to the script, and found again."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from tests.ui.conftest import WAIT, write_score
from tests.ui.helpers import choose, click_bar, click_tick, settle, show, write, write_words
from workbench.teaching.lessons.lesson import CLOSING, NOTE_KINDS, OPENING
from workbench.ui.notes.scope import BARS, NOTE, SECTION

CTRL = Qt.KeyboardModifier.ControlModifier
TUNE = ("C4 E4 G4 A4", "A4 G4 F4 E4", "D4 F4 B4 C5", "C4 E4 G4 A4", "A4 G4 F4 E4", "E4 D4 C4 C4")


def test_a_full_lesson_is_written_and_found_again(qtbot, open_window, settled, tmp_path):
    window = open_window()
    session, panel = window.session, window.notes

    # The score is read and moved to another key.
    window.import_score(str(write_score(tmp_path / "ferry.musicxml", TUNE)))
    qtbot.waitUntil(lambda: window.dialog is not None, timeout=WAIT)
    dialog = window.dialog
    qtbot.waitUntil(lambda: session.jobs.idle, timeout=WAIT)
    dialog.fields.key.setEditText("F")
    dialog.make_button.click()
    qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
    settled(window)
    assert session.lesson.key == "F major" and session.lesson.transposition in (5, -7)

    # Sections, and a pin on a note.
    window.session.edit("Sections", lambda old: _with_sections(old))
    note = session.lesson.piece.bars[1].notes[0].id
    click_bar(window, 1)
    session.selection.select_note(note)
    window.neck.neck.setFocus()
    QTest.keyClick(window.neck.neck, Qt.Key.Key_A)
    settled(window)
    assert [p.right for p in session.lesson.pins if p.note == note] == ["a"]

    # Notes of every reach, each of another kind.
    write(panel, "This one *sings*")
    assert panel.scope.reach.currentIndex() == NOTE
    choose(panel.kind, NOTE_KINDS.index("sound"))
    session.selection.select_note(None)
    click_bar(window, 2)
    write(panel, "Only this bar")
    write(panel, "Both of these bars")
    choose(panel.scope.reach, BARS)
    choose(panel.scope.last, 3)
    choose(panel.kind, NOTE_KINDS.index("rhythm"))
    write(panel, "All of the first part")
    choose(panel.scope.reach, SECTION)
    choose(panel.scope.section, 0)
    choose(panel.kind, NOTE_KINDS.index("caution"))
    reaches = {n.text: n.scope for n in session.lesson.notes}
    assert reaches == {
        "This one *sings*": "one note",
        "Only this bar": "one bar",
        "Both of these bars": "several bars",
        "All of the first part": "a section",
    }

    # Why not the other one, and a grip beside it.
    click_bar(window, 2)
    qtbot.waitUntil(lambda: bool(session.fingers.choices), timeout=WAIT)
    panel.list.setCurrentRow(next(
        row for row in range(panel.list.count()) if "Only this" in panel.list.item(row).text()
    ))  # fmt: skip
    panel.attached.actions_by_kind["rejected"].trigger()
    panel.dialog.ok.click()
    panel.attached.actions_by_kind["grip"].trigger()
    panel.dialog.frets.setText("2-0-1-0")
    panel.dialog.ok.click()
    hung = next(n for n in session.lesson.notes if n.text == "Only this bar")
    assert hung.rejected and hung.why and hung.grip == (2, 0, 1, 0)

    # An exercise is added, and an item of the plan ticked.
    view = show(qtbot, window, "techniques")
    qtbot.waitUntil(lambda: view.exercise.exercise is not None, timeout=WAIT)
    view.exercise.note_button.click()
    assert session.lesson.notes[-1].text.startswith("Exercise at ")
    plan = show(qtbot, window, "plan")
    item = next(i for i in plan.plan.items if i.kind == "learn")
    click_tick(plan, item.id)
    settle(qtbot, window, plan)

    # The script: opening, a bar and closing in the teacher's words.
    script = show(qtbot, window, "script")
    told = " ".join(str(cue.say) for cue in script.script.cues)
    for words in ("This one *sings*.", "Both of these bars.", "All of the first part."):
        assert told.count(words) == 1
    for place, words in ((OPENING, "Hello again."), (0, "Softly now."), (CLOSING, "Well done.")):
        editor = write_words(script, place, words)
        QTest.keyClick(editor, Qt.Key.Key_Return, CTRL)
        settle(qtbot, window, script)
        qtbot.waitUntil(
            lambda place=place, words=words: script.script.words_at(place) == words, timeout=WAIT
        )
    assert script.page.place == CLOSING  # the last place: the key keeps, and stays
    QTest.keyClick(script.page.words, Qt.Key.Key_Escape)
    assert not script.writing and script.place == CLOSING
    assert script.table.item(script.row_of(OPENING), 1).text() == "Opening\nyour words"
    assert script.table.item(script.row_of(CLOSING), 1).text() == "Closing\nyour words"
    script.back_button.click()
    settle(qtbot, window, script)
    assert str(script.script.closing).startswith("That was Ferry at dusk.")

    # Everything is exported.
    written = {}
    for form, name in enumerate(("script.md", "cues.srt", "cues.vtt", "chapters.txt")):
        window.menus["export-script"].trigger()
        window.dialog.form.setCurrentIndex(form)
        window.dialog.path.setText(str(tmp_path / name))
        window.dialog.save.click()
        qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
        written[name] = (tmp_path / name).read_text(encoding="utf-8")
    assert "Picture of the grip 2-0-1-0" in written["script.md"]
    assert hung.why in written["script.md"]
    for name in ("script.md", "cues.srt", "cues.vtt"):
        assert "Hello again." in written[name] and "Softly now." in written[name]
    assert [row.split(" ", 1)[1] for row in written["chapters.txt"].splitlines()] == [
        "Opening", "Section A", "Section B", "Closing",
    ]  # fmt: skip

    # Closed and opened again: everything is still there.
    click_bar(window, 4)
    whole = session.lesson
    window.close()
    again = open_window()
    assert again.session.lesson == whole and again.session.selection.position == 4
    click_bar(again, 2)
    texts = [again.notes.list.item(row).text() for row in range(again.notes.list.count())]
    assert any("Only this bar" in text for text in texts)
    assert any("All of the first part" in text and "section A" in text for text in texts)
    plan = show(qtbot, again, "plan")
    assert [i.id for i in plan.plan.done] == [item.id]
    script = show(qtbot, again, "script")
    assert str(script.script.opening) == "Hello again."
    assert str(script.script.cues[0].say) == "Softly now."


def _with_sections(lesson):

    return replace(lesson, sections=((0, "A"), (3, "B")))
