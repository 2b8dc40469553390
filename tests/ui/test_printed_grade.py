"""What a handout of the window says of the grade stays, until the teacher changes it."""

from __future__ import annotations

from dataclasses import replace

import pypdf
import pytest
from PySide6.QtPrintSupport import QPrinter

from workbench.handout.offered import OFFERED
from workbench.handout.options import HandoutOptions
from workbench.handout.parts.words import grade_words
from workbench.store.grading import apply_fit, printed_grade
from workbench.teaching.grading.grade import shipped_model
from workbench.ui.paper.handout_dialog import HandoutDialog
from workbench.ui.paper.printing import PrintPreview, compose

STRICT = replace(shipped_model(), name="strict", cuts=tuple(0.01 * k for k in range(1, 9)))
WAIT = 30_000


def text(path):
    return " ".join(" ".join(p.extract_text().split()) for p in pypdf.PdfReader(path).pages)


@pytest.fixture
def make(qtbot, lesson_window, settled, tmp_path):
    """Makes one of the products as a teacher does; its text."""
    numbers = iter(range(99))

    def make(kind):
        session = lesson_window.session
        dialog = HandoutDialog(session, parent=lesson_window)
        dialog.what.setCurrentIndex(list(OFFERED).index(kind))
        path = tmp_path / f"made{next(numbers)}.pdf"
        dialog.path.setText(str(path))
        with qtbot.waitSignal(dialog.accepted, timeout=WAIT):
            dialog.save.click()
        settled(lesson_window)
        return text(path)

    return make


@pytest.mark.parametrize("kind", ["page", "book"])
def test_an_estimate_that_was_printed_stays(lesson_window, make, kind):
    session = lesson_window.session
    shelf, lesson = session.shelf, session.lesson
    assert make("plan") and printed_grade(shelf, lesson.id) is None
    make(kind)
    printed = printed_grade(shelf, lesson.id)
    assert printed is not None and printed.model == shipped_model().name
    apply_fit(shelf, STRICT)
    assert grade_words(printed.number, printed.level) in make("page")
    assert printed_grade(shelf, lesson.id) == printed


def test_the_grade_of_a_fitted_model_is_printed(lesson_window, make):
    session = lesson_window.session
    apply_fit(session.shelf, STRICT)
    said = make("page")
    printed = printed_grade(session.shelf, session.lesson.id)
    assert printed.model == "strict" and grade_words(printed.number, printed.level) in said


def test_only_what_goes_to_the_printer_counts_as_printed(qtbot, lesson_window, settled, tmp_path):
    session = lesson_window.session
    shelf, lesson = session.shelf, session.lesson
    handout = compose(lesson, session.fingers.fingering, HandoutOptions(), shelf)
    preview = PrintPreview(session, handout, lesson, session.fingers.fingering, lesson_window)
    settled(lesson_window)
    assert printed_grade(shelf, lesson.id) is None
    preview.printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    preview.printer.setOutputFileName(str(tmp_path / "paper.pdf"))
    with qtbot.waitSignal(preview.accepted, timeout=WAIT):
        preview.print_now()
    assert printed_grade(shelf, lesson.id) == handout.extras.grade is not None
