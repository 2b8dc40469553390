"""Techniques, practice plan, script and reading view, by clicks and keys."""

from __future__ import annotations

import re
from types import SimpleNamespace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from tests.ui.conftest import WAIT, make_lesson, write_score
from tests.ui.helpers import (
    answer,
    click_bar,
    click_row,
    click_tick,
    settle,
    show,
    write_note,
    write_words,
)
from workbench.teaching.grading.grade import evidence
from workbench.ui.choices import panel as choices
from workbench.ui.kit.parts import Caution

LINES = 12  # of text that the page of the script has room for, at least
LEFT = Qt.MouseButton.LeftButton
CTRL = Qt.KeyboardModifier.ControlModifier


def test_a_lesson_from_notes_to_the_script(qtbot, lesson_window, tmp_path):
    window, session = lesson_window, lesson_window.session

    # Notes of several kinds on several bars.
    write_note(window, 0, "right hand", "Thumb first, then let i and m take turns")
    write_note(window, 1, "listening", "Does the G ring through?")
    write_note(window, 2, "caution", "Shake out the hand before the stretch")
    assert [(n.kind, n.first_bar) for n in session.lesson.notes] == [
        ("right hand", 0), ("listening", 1), ("caution", 2),
    ]  # fmt: skip

    # The script says them in playing order.
    script = show(qtbot, window, "script")
    said = [str(cue.say) for cue in script.script.cues]
    assert "Thumb first, then let i and m take turns." in said[0]
    assert "Does the G ring through?" in said[1]
    assert "Shake out the hand before the stretch." in said[2]

    # Tick an item of the plan: it moves to what is done, and the plan is shorter.
    plan = show(qtbot, window, "plan")
    before = plan.plan
    item = next(i for i in before.items if i.kind == "learn")
    click_tick(plan, item.id)
    settle(qtbot, window, plan)
    assert session.lesson.plan_done == (item.id,)
    assert [i.id for i in plan.plan.done] == [item.id]
    assert item.id not in [i.id for i in plan.plan.items]
    assert plan.plan.minutes < before.minutes

    # Write other words for a bar.
    script = show(qtbot, window, "script")
    editor = write_words(script, 1, "Now the tune comes down by steps.")
    QTest.keyClick(editor, Qt.Key.Key_Return, CTRL)
    settle(qtbot, window, script)
    assert session.lesson.script_edits == ((1, "Now the tune comes down by steps."),)
    assert str(script.script.cues[1].say) == "Now the tune comes down by steps."
    assert script.script.cues[1].edited

    # Export it.
    window.menus["export-script"].trigger()
    dialog = window.dialog
    out = tmp_path / "ferry.vtt"
    dialog.form.setCurrentIndex(2)
    dialog.path.setText(str(out))
    dialog.save.click()
    qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
    text = out.read_text(encoding="utf-8")
    assert text.startswith("WEBVTT\n")  # W3C WebVTT: the first line of the file
    assert "Now the tune comes down by steps." in text
    assert "Does the G ring through?" not in text
    times = re.findall(r"^(\S+) --> (\S+)$", text, re.M)
    assert times and times == sorted(times)

    # Everything can be undone, one step after the other.
    whole = session.lesson
    window.menus["undo"].trigger()
    assert session.lesson.script_edits == ()
    settle(qtbot, window, script)
    assert "Does the G ring through?" in str(script.script.cues[1].say)
    window.menus["undo"].trigger()
    assert session.lesson.plan_done == ()
    plan = show(qtbot, window, "plan")
    assert not plan.plan.done
    window.menus["undo"].trigger()
    assert "Shake out" not in " ".join(n.text for n in session.lesson.notes)
    for _ in range(3):
        window.menus["redo"].trigger()
    assert session.lesson.script_edits == whole.script_edits
    assert session.lesson.plan_done == whole.plan_done
    settle(qtbot, window, plan)
    assert [i.id for i in plan.plan.done] == [item.id]


def test_ticks_are_there_when_the_window_opens_again(qtbot, lesson_window, open_window):
    plan = show(qtbot, lesson_window, "plan")
    item = next(i for i in plan.plan.items if i.kind == "learn")
    click_tick(plan, item.id)
    plan.week.setValue(4)
    lesson_window.close()
    again = open_window()
    plan = show(qtbot, again, "plan")
    assert [i.id for i in plan.plan.done] == [item.id]
    assert plan.week.value() == 4
    row = plan.row_of(item.id)
    assert plan.table.item(row, 0).checkState() == Qt.CheckState.Checked
    click_tick(plan, item.id)  # and away again
    settle(qtbot, again, plan)
    assert again.session.lesson.plan_done == ()


def test_the_plan_flows_with_what_it_is_given(qtbot, lesson_window):
    window, session = lesson_window, lesson_window.session
    plan = show(qtbot, window, "plan")
    days = len(plan.plan.days)
    plan.daily.setValue(10)
    settle(qtbot, window, plan)
    assert session.lesson.minutes_a_day == 10
    assert len(plan.plan.days) > days
    plan.first.setValue(5)
    settle(qtbot, window, plan)
    assert plan.plan.days[0].day == 5
    assert str(plan.plan.cautions[0]) in plan.caution.words.text()
    window.menus["undo"].trigger()
    settle(qtbot, window, plan)
    assert plan.daily.value() == session.lesson.minutes_a_day == 20


def test_what_to_do_where_playing_hurts_is_read_once(qtbot, lesson_window, monkeypatch):
    """The plan says it; the wide bar beside it and the whole lesson do not say it again."""
    window, session = lesson_window, lesson_window.session
    stretch = SimpleNamespace(wide=True, fingers=(1, 4), apart=102.0, comfort=84.0)
    monkeypatch.setattr(choices, "widest", lambda *_: stretch)

    def read(view, side):
        window.teaching.setCurrentWidget(view)
        window.side.setCurrentIndex(side)
        settle(qtbot, window, view)
        session.selection.select(1 - session.selection.position)
        cautions = [c.words.text() for c in window.findChildren(Caution) if c.isVisible()]
        return [text for text in cautions if "hurts" in text or "pain" in text]

    plan = show(qtbot, window, "plan")
    for side in (0, 1):
        assert len(read(plan, side)) == 1
        assert len(read(window.teaching.score, side)) == 1
    window.side.setCurrentIndex(0)
    window.teaching.setCurrentWidget(plan)
    assert "in comfort" in window.choices.caution.words.text(), "the fact is told all the same"


def test_the_estimate_stands_beside_the_teachers_word(qtbot, lesson_window):
    window, session = lesson_window, lesson_window.session
    view = show(qtbot, window, "grade")
    estimate = view.judged.analysis.estimate
    assert "Your word: not given yet." in view.grade.text()
    assert f"Estimate: {estimate.words}." in view.grade.text()
    assert session.lesson.grade is None
    window.lesson_panel.grade.setValue(7)
    settle(qtbot, window, view)
    assert "Your word: grade 7." in view.grade.text()
    assert f"Estimate: {estimate.words}." in view.grade.text()
    assert session.lesson.grade == 7
    assert str(evidence(view.judged.analysis.features)[0]) in view.evidence.text()
    # The chart runs along the bars: a chosen one is selected in the lesson.
    chart = view.effort.view
    assert [bar for bar, _, _ in chart.chart.columns] == [0, 1, 2, 3]
    QTest.mouseClick(chart, LEFT, pos=chart.column(2).center().toPoint())
    assert session.selection.bar_index == 2
    view.take_button.click()
    settle(qtbot, window, view)
    assert (session.lesson.grade, session.lesson.grade_level) == (estimate.number, estimate.level)


def test_the_plan_is_exported(qtbot, lesson_window, tmp_path):
    window = lesson_window
    window.teaching.export_plan()
    out = tmp_path / "plan"
    window.dialog.path.setText(str(out))
    window.dialog.save.click()
    qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
    text = (tmp_path / "plan.md").read_text(encoding="utf-8")
    assert text.startswith("# Ferry at dusk: practice plan")


def test_an_export_that_cannot_be_written_says_so_in_its_dialog(qtbot, lesson_window, tmp_path):
    window = lesson_window
    window.menus["export-script"].trigger()
    dialog = window.dialog
    dialog.path.setText(str(tmp_path / "no such folder" / "script.md"))
    dialog.save.click()
    qtbot.waitUntil(lambda: "cannot be written" in dialog.problem.words.text(), timeout=WAIT)
    assert dialog.save.isEnabled()
    there = tmp_path / "there.md"
    there.write_text("old", encoding="utf-8")
    dialog.path.setText(str(there))
    dialog.save.click()
    assert "there.md is there already" in dialog.question.text()
    answer(dialog.question, "Keep it")
    assert there.read_text(encoding="utf-8") == "old" and dialog.isVisible()
    dialog.save.click()
    answer(dialog.question, "Replace")
    qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
    assert there.read_text(encoding="utf-8").startswith("# Ferry at dusk")


def test_the_script_is_written_bar_by_bar_on_a_page(qtbot, lesson_window):
    """A page of text, the music beside it, and the keys to go on and back."""
    window, session = lesson_window, lesson_window.session
    script = show(qtbot, window, "script")
    editor = write_words(script, 0, "First the thumb.")
    page = script.page
    lines = editor.viewport().height() // editor.fontMetrics().lineSpacing()
    assert page.isVisible() and lines >= LINES
    settle(qtbot, window, script)
    assert page.music.image is not None
    for position, words in ((1, "Now it comes down."), (2, "And up again.")):
        QTest.keyClick(editor, Qt.Key.Key_Return, CTRL)
        settle(qtbot, window, script)
        assert (page.place, session.selection.position) == (position, position)
        QTest.keyClick(editor, Qt.Key.Key_A, CTRL)
        QTest.keyClicks(editor, words)
    QTest.keyClick(editor, Qt.Key.Key_Return, CTRL | Qt.KeyboardModifier.ShiftModifier)
    settle(qtbot, window, script)
    assert page.place == 1 and editor.toPlainText() == "Now it comes down."
    QTest.keyClick(editor, Qt.Key.Key_Escape)
    assert not script.writing and script.cue.position == 1
    assert session.lesson.script_edits == (
        (0, "First the thumb."), (1, "Now it comes down."), (2, "And up again."),
    )  # fmt: skip


def test_the_page_follows_a_bar_that_is_chosen_elsewhere(qtbot, lesson_window):
    window, session = lesson_window, lesson_window.session
    script = show(qtbot, window, "script")
    write_words(script, 0, "Begin softly.")
    click_bar(window, 3)
    settle(qtbot, window, script)
    assert script.page.place == 3
    assert script.page.written == script.script.words_at(3)
    assert session.lesson.script_edits == ((0, "Begin softly."),)


def test_stars_are_never_seen_where_words_are_written(qtbot, lesson_window):
    from PySide6.QtGui import QTextLayout

    window = lesson_window
    script = show(qtbot, window, "script")
    write_words(script, 0, "Let **i and m** take turns")
    for editor in (script.page.words, window.notes.words):
        editor.setPlainText("Let **i and m** take turns")
        layout = editor.document().firstBlock().layout()
        hidden = {
            at
            for part in layout.formats()
            if isinstance(part, QTextLayout.FormatRange)
            and part.format.foreground().color().alpha() == 0
            for at in range(part.start, part.start + part.length)
        }
        assert hidden == {4, 5, 13, 14}


def test_words_that_were_not_changed_are_not_the_teachers(qtbot, lesson_window):
    window, session = lesson_window, lesson_window.session
    script = show(qtbot, window, "script")
    script.write_button.click()
    for _ in range(3):
        QTest.keyClick(script.page.words, Qt.Key.Key_Return, CTRL)
    QTest.keyClick(script.page.words, Qt.Key.Key_Escape)
    settle(qtbot, window, script)
    assert session.lesson.script_edits == ()


def test_words_are_taken_back(qtbot, lesson_window):
    window, session = lesson_window, lesson_window.session
    script = show(qtbot, window, "script")
    own = str(script.script.cues[0].say)
    assert not script.back_button.isEnabled()
    write_words(script, 0, "My own words")
    script.commit()
    settle(qtbot, window, script)
    assert script.back_button.isEnabled()
    script.back_button.click()
    settle(qtbot, window, script)
    assert session.lesson.script_edits == ()
    assert str(script.script.cues[0].say) == own


def test_half_written_words_are_kept_when_the_window_closes(qtbot, lesson_window, open_window):
    script = show(qtbot, lesson_window, "script")
    write_words(script, 2, "Breathe here")
    lesson_window.close()
    again = open_window()
    assert again.session.lesson.script_edits == ((2, "Breathe here"),)


def test_the_script_and_the_bars_select_each_other(qtbot, lesson_window):
    window, session = lesson_window, lesson_window.session
    script = show(qtbot, window, "script")
    click_bar(window, 3)
    assert script.cue.position == 3
    script.table.setCurrentCell(script.row_of(1), 2)
    assert session.selection.position == 1
    assert window.bars.view.currentIndex().row() == 1


def test_a_note_can_be_selected_after_the_script_was_open(qtbot, lesson_window):
    window, session = lesson_window, lesson_window.session
    script = show(qtbot, window, "script")
    window.teaching.setCurrentWidget(window.teaching.score)
    for bar in (0, 2):
        for note in session.lesson.piece.bars[bar].notes[:2]:
            session.selection.select(bar, note.id)
            assert (session.selection.note_id, script.cue.position) == (note.id, bar)


def test_a_place_of_a_technique_leads_to_its_bar(qtbot, lesson_window):
    window, session = lesson_window, lesson_window.session
    view = show(qtbot, window, "techniques")
    assert view.list.count() == len(view.analysis.found) > 0
    for row, found in enumerate(view.analysis.found):
        click_row(view.list, row)
        assert view.places.count() == len(found.occurrences)
        assert view.asks.text() == found.technique.asks
    click_row(view.places, view.places.count() - 1)
    place = found.occurrences[-1]
    assert session.selection.bar_index == place.bar
    assert session.selection.note_id in (None, *place.notes)
    assert window.bars.view.currentIndex().row() == session.selection.position


def test_what_was_taught_before_and_what_to_teach_next(qtbot, lesson_window, tmp_path, settled):
    window, session = lesson_window, lesson_window.session
    first = session.lesson
    view = show(qtbot, window, "techniques")
    assert all(seen.taught_in is None for seen in view.seen)
    assert view.compared.text() == "No other fingered lesson is on the shelf to compare with."

    # A second lesson for the same student: the tune's moves are known, the new grip is not.
    other = write_score(tmp_path / "other.musicxml", ("C4 E4 G4 A4", "D5 C5 A4 G4", "E5 D5 C5 C4"))
    make_lesson(qtbot, window, other)
    settled(window)
    view = show(qtbot, window, "techniques")
    qtbot.waitUntil(
        lambda: view.company is not None and view.company.here.id == session.lesson.id,
        timeout=WAIT,
    )
    known = {s.move for s in view.seen if s.taught_in is not None}
    assert known
    assert {s.taught_in.id for s in view.seen if s.taught_in is not None} == {first.id}
    assert any(s.taught_in is None for s in view.seen)

    # From the first lesson, the second is what takes up its moves.
    session.open(first.id)
    settled(window)
    qtbot.waitUntil(
        lambda: view.company.here.id == first.id and bool(view.suggestions), timeout=WAIT
    )
    assert view.suggestions[0].profile.title == "Ferry at dusk"
    second = view.suggestions[0].profile.id
    assert second != first.id
    assert [p.second.id for p in view.pairs] == [second]
    assert view.next.item(1).text().startswith("Side by side: Ferry at dusk")
    view.next.setCurrentRow(0)
    view.open_button.click()
    assert session.lesson.id == second


@pytest.fixture
def reading(qtbot, lesson_window):
    window = lesson_window
    window.teaching.read()
    qtbot.waitUntil(lambda: window.teaching.reading is not None, timeout=WAIT)
    return window.teaching.reading


def test_the_reading_view_turns_by_pedal_and_key(reading, lesson_window):
    assert reading.isFullScreen()
    assert reading.place == 0
    for at, key in enumerate((Qt.Key.Key_PageDown, Qt.Key.Key_Space, Qt.Key.Key_Down), 1):
        QTest.keyClick(reading, key)
        assert reading.place == at
        assert reading.bar.text() == f"Bar {at + 1}"
    assert reading.coming.text() == "The end"
    QTest.keyClick(reading, Qt.Key.Key_PageDown)
    assert reading.place == 3
    QTest.keyClick(reading, Qt.Key.Key_PageUp)
    assert (reading.place, reading.coming.text()) == (2, "Next: bar 4")
    session = lesson_window.session
    shown = {m.note.id for m in reading.here.picture.markers}
    assert shown == {n.id for n in session.lesson.piece.bars[2].notes}
    coming = {m.note.id for m in reading.there.picture.markers}
    assert coming == {n.id for n in session.lesson.piece.bars[3].notes}
    QTest.keyClick(reading, Qt.Key.Key_Escape)
    assert session.selection.position == 2


def test_the_reading_view_shows_the_bar_and_what_comes_before_and_after(
    qtbot, reading, lesson_window
):
    bars = lesson_window.session.lesson.piece.bars
    for at in (0, 2):
        with qtbot.waitSignal(reading.music.engraved, timeout=WAIT):
            reading.go(at)
        qtbot.waitUntil(
            lambda at=at: all(reading.music.image.rects_of_note(n.id) for n in bars[at].notes),
            timeout=WAIT,
        )
    assert str(reading.script.opening) in reading.opening.text()
    assert str(reading.script.closing) in reading.closing.text()


def test_a_pedal_that_sends_other_keys_is_learnt(qtbot, reading, lesson_window):
    window = lesson_window
    QTest.keyClick(reading, Qt.Key.Key_F13)
    assert reading.place == 0
    reading.learn_pedal()
    dialog = reading.dialog
    QTest.keyClick(dialog.onward, Qt.Key.Key_F13)
    QTest.keyClick(dialog.back, Qt.Key.Key_F13)
    dialog.ok.click()
    assert "cannot turn both ways" in dialog.problem.words.text()
    dialog.back.forget()
    QTest.keyClick(dialog.back, Qt.Key.Key_F14)
    dialog.ok.click()
    QTest.keyClick(reading, Qt.Key.Key_F13)
    QTest.keyClick(reading, Qt.Key.Key_PageDown)
    QTest.keyClick(reading, Qt.Key.Key_F14)
    assert reading.place == 1
    QTest.keyClick(reading, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: window.teaching.reading is None, timeout=WAIT)
    window.teaching.read()
    qtbot.waitUntil(lambda: window.teaching.reading is not None, timeout=WAIT)
    before = window.teaching.reading.place
    QTest.keyClick(window.teaching.reading, Qt.Key.Key_F13)  # kept
    assert window.teaching.reading.place == before + 1


def test_the_reading_view_keeps_its_size_and_colours(qtbot, reading, lesson_window):
    size = reading.words[0].text.font().pointSizeF()
    dark = reading.dark
    QTest.keyClick(reading, Qt.Key.Key_Plus)
    QTest.keyClick(reading, Qt.Key.Key_D)
    assert reading.words[0].text.font().pointSizeF() > size
    assert reading.dark != dark
    ground = reading.palette().window().color().lightnessF()
    assert (ground < 0.5) == reading.dark
    larger, chosen = reading.size_at, reading.dark
    QTest.keyClick(reading, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: lesson_window.teaching.reading is None, timeout=WAIT)
    lesson_window.teaching.read()
    qtbot.waitUntil(lambda: lesson_window.teaching.reading is not None, timeout=WAIT)
    again = lesson_window.teaching.reading
    assert (again.size_at, again.dark) == (larger, chosen)


def test_long_words_are_scrolled_before_the_bar_is_turned(qtbot, lesson_window):
    window = lesson_window
    script = show(qtbot, window, "script")
    write_words(script, 0, "word " * 120)
    script.commit()
    settle(qtbot, window, script)
    window.session.selection.select(0)
    window.teaching.read()
    qtbot.waitUntil(lambda: window.teaching.reading is not None, timeout=WAIT)
    reading = window.teaching.reading
    reading.showNormal()
    reading.resize(900, 500)
    qtbot.waitUntil(lambda: reading.words[0].height() > 600, timeout=WAIT)
    scroll = reading.area.verticalScrollBar()
    seen = [scroll.value()]
    for _ in range(30):
        QTest.keyClick(reading, Qt.Key.Key_PageDown)
        if reading.place != 0:
            break
        seen.append(scroll.value())
    assert reading.place == 1
    assert len(seen) > 1 and seen == sorted(set(seen))
    end = reading.words[0].geometry().bottom()
    assert seen[-1] + reading.area.viewport().height() >= end


def test_the_views_follow_the_colours(qtbot, lesson_window):
    window = lesson_window
    plan = show(qtbot, window, "plan")
    for theme, dark in (("dark", True), ("light", False)):
        window.set_look(theme=theme)
        settle(qtbot, window, plan)
        heading = plan.table.item(0, 0).background().color()
        assert (heading.lightnessF() < 0.5) == dark


def test_another_lesson_closes_the_reading_view(qtbot, reading, lesson_window, score_file):
    window, session = lesson_window, lesson_window.session
    first = session.lesson.id
    QTest.keyClick(reading, Qt.Key.Key_End)
    copy = session.shelf.duplicate(first, student="Ada")
    session.open(copy.id)
    qtbot.waitUntil(lambda: window.teaching.reading is None, timeout=WAIT)
    assert session.selection.position == 0


def test_everything_in_the_views_has_a_name(qtbot, lesson_window):
    from PySide6.QtWidgets import QAbstractButton, QAbstractItemView, QAbstractSpinBox, QComboBox

    for name in ("techniques", "plan", "script"):
        view = show(qtbot, lesson_window, name)
        for kind in (QAbstractButton, QAbstractItemView, QAbstractSpinBox, QComboBox):
            for part in view.findChildren(kind):
                if part.objectName().startswith("qt_") or not part.isVisible():
                    continue
                if isinstance(part.parent(), QComboBox | QAbstractItemView):
                    continue
                words = part.accessibleName() or getattr(part, "text", lambda: "")()
                assert words.strip(), f"{part} in {name}"


def test_the_views_are_among_the_keys(lesson_window):
    lesson_window.openers.show_keys()
    table = lesson_window.dialog.table
    keys = {table.item(row, 1).text(): table.item(row, 0).text() for row in range(table.rowCount())}
    for words in ("Techniques", "Practice plan", "Script", "Export the script", "Read the script"):
        assert keys[words]
