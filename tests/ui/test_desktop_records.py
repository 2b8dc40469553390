"""What is kept of a lesson and taken out of the program: undo history, versions, paper,
the error report."""

from __future__ import annotations

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QFileDialog, QInputDialog

from tests.ui.conftest import WAIT, settle
from workbench.ui.bench.services import Services


def shown(qtbot, window):
    """Wait until the changes are told."""
    qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    return " ".join(window.dialog.changes.told)


@pytest.fixture
def taught(qtbot, lesson_window):
    """Three steps on the lesson: a pin, a title, a grade."""
    session = lesson_window.session
    session.selection.select_note(session.selection.bar.notes[0].id)
    session.hand_edits.set_right("m")
    panel = lesson_window.lesson_panel
    panel.title.setText("Ferry at dawn")
    panel.title.editingFinished.emit()
    panel.grade.setValue(3)
    settle(qtbot, lesson_window)
    assert (session.lesson.title, session.lesson.grade) == ("Ferry at dawn", 3)
    return lesson_window


# The undo history.


def test_any_step_of_the_history_is_gone_to_and_back(qtbot, taught):
    window, session = taught, taught.session
    now = session.lesson
    window.openers.show_history()
    dialog = window.dialog
    count = dialog.list.count()
    assert count == len(session.shelf.history(now.id).steps) == 4
    assert not dialog.go_button.isEnabled()  # it is the present one
    dialog.list.setCurrentRow(count - 1)  # the oldest
    told = shown(qtbot, window)
    assert "Ferry at dusk" in told and "not pinned any more" in told
    dialog.go_button.click()
    settle(qtbot, window)
    assert session.lesson.title == "Ferry at dusk" and session.lesson.pins == ()
    assert session.lesson.grade is None
    # All steps are still there; the last one brings everything back.
    assert dialog.list.count() == count and dialog.list.currentRow() == count - 1
    dialog.list.setCurrentRow(0)
    shown(qtbot, window)
    dialog.list.itemActivated.emit(dialog.list.item(0))
    settle(qtbot, window)
    assert session.lesson == now


def test_a_new_step_takes_the_undone_ones_out_of_the_history(qtbot, taught):
    window, session = taught, taught.session
    window.menus["undo"].trigger()
    window.menus["undo"].trigger()
    panel = window.lesson_panel
    panel.grade.setValue(5)
    settle(qtbot, window)
    window.openers.show_history()
    assert window.dialog.list.count() == 3
    assert session.lesson.grade == 5 and session.lesson.title == "Ferry at dusk"
    shown(qtbot, window)


# Versions.


def test_versions_are_compared_and_gone_back_to(qtbot, taught, monkeypatch):
    window, session = taught, taught.session
    names = iter(["First try", "After the concert"])
    monkeypatch.setattr(QInputDialog, "getText", lambda *_a, **_k: (next(names), True))
    window.openers.compare_versions()
    dialog = window.dialog
    assert not dialog.back_button.isEnabled()
    dialog.keep_button.click()
    assert shown(qtbot, window) == "Nothing is different."
    first = session.lesson
    dialog.close()
    window.lesson_panel.grade.setValue(6)
    window.openers.keep_version()
    window.lesson_panel.grade.setValue(7)
    settle(qtbot, window)
    window.openers.compare_versions()
    dialog = window.dialog
    assert [v.name for v in dialog.versions] == ["After the concert", "First try"]
    dialog.list.setCurrentRow(1)
    assert "3" in shown(qtbot, window) and "now 7" in shown(qtbot, window)
    dialog.other.setCurrentIndex(dialog.other.findData(dialog.versions[0].id))
    assert "now 6" in shown(qtbot, window)
    dialog.back_button.click()
    settle(qtbot, window)
    assert session.lesson == first
    window.menus["undo"].trigger()
    assert session.lesson.grade == 7
    settle(qtbot, window)
    dialog.delete_button.click()
    assert [v.name for v in session.shelf.versions(first.id)] == ["After the concert"]
    assert session.lesson.grade == 7
    shown(qtbot, window)


# Paper.


def test_what_is_printed_is_the_handout(qtbot, lesson_window, tmp_path):
    window = lesson_window
    window.openers.print_handout("student")
    qtbot.waitUntil(lambda: window.dialog is not None, timeout=WAIT)
    preview = window.dialog
    pages = preview.handout.count
    assert preview.pages.pageCount() == pages >= 1
    printer = preview.printer
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "paper.pdf"))
    with qtbot.waitSignal(window.session.told, timeout=WAIT):
        preview.print_now()
    qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
    # Read by another program: pypdf.
    paper = PdfReader(tmp_path / "paper.pdf")
    assert len(paper.pages) == pages
    assert "Ferry at dusk" in " ".join(paper.pages[0].extract_text().split())
    wide, tall = paper.pages[0].mediabox.width, paper.pages[0].mediabox.height
    # ISO 216: A4 is 210 by 297 mm; a point is 1/72 inch.
    assert (wide * 25.4 / 72, tall * 25.4 / 72) == pytest.approx((210, 297), abs=0.5)


def test_other_paper_and_another_reader_are_laid_out_anew(qtbot, lesson_window, tmp_path):
    window = lesson_window
    window.openers.print_handout("student")
    qtbot.waitUntil(lambda: window.dialog is not None, timeout=WAIT)
    preview = window.dialog
    for box, row in ((preview.paper, 1), (preview.audience, 1)):
        box.setCurrentIndex(row)
        box.activated.emit(row)
        qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    options = preview.handout.options
    assert (options.paper, options.audience) == ("letter", "teacher")
    printer = preview.printer
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "letter.pdf"))
    preview.print_now()
    qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
    size = PdfReader(tmp_path / "letter.pdf").pages[0].mediabox
    # ANSI/ASME Y14.1: Letter is 8.5 by 11 inches.
    assert (size.width / 72, size.height / 72) == pytest.approx((8.5, 11), abs=0.02)


def test_no_printer_is_told_and_a_printer_that_fails_too(
    qtbot, lesson_window, monkeypatch, tmp_path
):
    from workbench.ui.paper import printing

    window = lesson_window
    window.openers.print_handout("teacher")
    qtbot.waitUntil(lambda: window.dialog is not None, timeout=WAIT)
    preview = window.dialog
    monkeypatch.setattr(printing.QPrinterInfo, "availablePrinterNames", staticmethod(list))
    preview.print_button.click()
    assert "knows no printer" in preview.problem.words.text()
    preview.printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    preview.printer.setOutputFileName(str(tmp_path / "not" / "there" / "x.pdf"))
    preview.print_now()
    qtbot.waitUntil(lambda: window.session.jobs.idle, timeout=WAIT)
    assert "printer does not answer" in preview.problem.words.text()
    assert preview.isVisible() and preview.print_button.isEnabled()


# The error report.


def test_the_error_report_is_saved_and_copied_as_it_is_read(
    qtbot, lesson_window, monkeypatch, tmp_path
):
    window = lesson_window
    try:
        raise ZeroDivisionError("inside")
    except ZeroDivisionError as fault:
        window.session.report(fault)
    assert window.notice.isVisible()
    window.notice.report_button.click()
    dialog = window.dialog
    text = dialog.text.toPlainText()
    assert "ZeroDivisionError" in text and "4 bars" in text
    assert "Ferry" not in text  # no words of the lesson
    path = tmp_path / "report.txt"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_a, **_k: (str(path), ""))
    dialog.save_button.click()
    assert path.read_text(encoding="utf-8") == dialog.report == text
    dialog.copy_button.click()
    assert QApplication.clipboard().text() == text
    path = tmp_path / "missing" / "report.txt"
    dialog.save_button.click()
    told = dialog.problem.words.text()
    assert path.name in told and str(path.parent) in told and not path.exists()
    assert "ZeroDivisionError" in (tmp_path / "logs" / "fault.log").read_text(encoding="utf-8")


def test_the_report_of_a_window_without_a_lesson_says_so(qtbot, open_window):
    window = open_window(Services(demo=lambda: ()))
    window.openers.show_report()
    text = window.dialog.text.toPlainText()
    assert "No lesson was open." in text and "No fault" in text
    QTest.keyClick(window.dialog, Qt.Key.Key_Escape)
    assert window.dialog is None


def test_a_report_does_not_say_where_the_shelf_is(open_window, tmp_path):
    window = open_window()
    window.openers.show_report()
    assert str(tmp_path) not in window.dialog.report
