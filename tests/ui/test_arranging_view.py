"""The arranging view: what was altered under its original, and the teacher's word on it."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtTest import QTest

from tests.ui.conftest import ATTRIBUTES, SCORE, WAIT, make_lesson, settle
from workbench.arranging.changes import OCTAVE, tally
from workbench.arranging.words import sentence

NOTE = (
    "<note>{chord}<pitch><step>{step}</step><octave>{octave}</octave></pitch>"
    "<duration>{long}</duration><voice>{voice}</voice></note>"
)


def write_guitar_page(path, inner=()):
    """Four bars with a tune and a bass that no ukulele has as written; ``inner`` notes are
    struck with every note of the tune."""
    bars = []
    tunes = ("E5 G5 E5 C5", "F5 A5 F5 D5", "D5 F5 D5 B4", "C5 E5 D5 C5")
    for number, (tune, bass) in enumerate(zip(tunes, ("C3", "D3", "G2", "C3"), strict=True), 1):
        notes = "".join(
            NOTE.format(chord="", step=n[0], octave=n[1], long=1, voice=1) for n in tune.split()
        )
        notes += "<backup><duration>4</duration></backup>" + NOTE.format(
            chord="", step=bass[0], octave=bass[1], long=4, voice=2
        )
        for name in inner:
            notes += "<backup><duration>4</duration></backup>" + 4 * NOTE.format(
                chord="", step=name[0], octave=name[1], long=1, voice=3
            )
        head = ATTRIBUTES if number == 1 else ""
        bars.append(f'<measure number="{number}">{head}{notes}</measure>')
    path.write_text(SCORE.format(bars="".join(bars)), encoding="utf-8")
    return path


@pytest.fixture
def arranged_window(qtbot, open_window, tmp_path):
    """A window just after an import that altered something."""
    window = open_window()
    make_lesson(qtbot, window, write_guitar_page(tmp_path / "page.musicxml"))
    settle(qtbot, window)
    view = window.teaching.arranging
    qtbot.waitUntil(lambda: view.pair.image is not None, timeout=WAIT)
    return window


def done(qtbot, window):
    """Wait for what was asked for to be laid and drawn."""
    qtbot.waitUntil(
        lambda: window.session.jobs.idle and window.session.fingers.fingering is not None,
        timeout=WAIT,
    )


def altered(window):
    """A note that lies in another octave."""
    return next(c.note for c in window.session.lesson.arranged if c.kind == OCTAVE)


def test_an_import_that_altered_something_opens_the_view_with_a_line_that_counts(arranged_window):
    window = arranged_window
    view = window.teaching.arranging
    assert window.teaching.currentWidget() is view
    n = tally(window.session.lesson.arranged)
    counted = {int(word) for word in view.line.text().replace(",", " ").split() if word.isdigit()}
    assert counted == {n["dropped"], n["moved"], n["shortened"]} - {0}
    assert view.list.count() == len({sentence(c) for c in window.session.lesson.arranged})


def test_original_and_arrangement_stand_bar_under_bar(arranged_window):
    """Heads that begin together stand under each other, the original's higher up."""
    window = arranged_window
    image = window.teaching.arranging.pair.image
    for bar in window.session.lesson.piece.bars:
        for note in bar.notes:
            below, above = image.rect_of(f"head-{note.id}"), image.rect_of(f"head-o-{note.id}")
            assert abs(below.center().x() - above.center().x()) < 2 * below.width()
            assert above.bottom() < below.top()


def test_what_is_decided_is_kept_and_can_be_undone(qtbot, arranged_window):
    window = arranged_window
    view, session = window.teaching.arranging, window.session
    before = session.lesson.piece
    note = altered(window)
    view.pair.choose_note(note)
    view.buttons["out"].click()
    done(qtbot, window)
    assert note not in session.lesson.piece.bar_of
    assert (note, "gone") in session.lesson.wanted
    view.buttons["restore"].click()
    done(qtbot, window)
    assert note in session.lesson.piece.bar_of
    session.undo()
    done(qtbot, window)
    session.undo()
    done(qtbot, window)
    assert session.lesson.piece == before and session.lesson.wanted == ()


def test_accepting_marks_the_line_and_changes_no_note(qtbot, arranged_window):
    window = arranged_window
    view, session = window.teaching.arranging, window.session
    piece, note = session.lesson.piece, altered(window)
    view.pair.choose_note(note)
    QTest.keyClick(view.list, Qt.Key.Key_Return)
    done(qtbot, window)
    assert session.lesson.piece is piece
    assert view.list.currentItem().text().startswith("✓")
    rows = view.list.count()
    view.filter.setCurrentIndex(1)
    own = {sentence(c) for c in session.lesson.arranged if c.note == note}
    assert view.list.count() == rows - len(own)


def test_a_click_chooses_the_note_in_either_score(qtbot, arranged_window):
    window = arranged_window
    view = window.teaching.arranging
    note = window.session.lesson.piece.bars[1].notes[0].id
    for name in (f"head-{note}", f"head-o-{note}"):
        view.pair.choose_note("")
        rect = view.pair.from_image(view.pair.image.rect_of(name))
        point = QPointF(rect.center()).toPoint()
        QTest.mouseClick(view.pair.viewport(), Qt.MouseButton.LeftButton, pos=point)
        assert view.pair.chosen == note
        assert window.session.selection.note_id == note


def test_another_voice(qtbot, arranged_window):
    window = arranged_window
    view, session = window.teaching.arranging, window.session
    bass = next(n.id for n in session.lesson.piece.bars[0].notes if n.voice == 2)
    view.pair.choose_note(bass)
    view.act("voice", voice=1)
    done(qtbot, window)
    assert next(n for n in session.lesson.piece.notes if n.id == bass).voice == 1


def test_months_later_the_original_is_there(qtbot, arranged_window, open_window):
    arranged_window.close()
    window = open_window()
    settle(qtbot, window)
    window.teaching.setCurrentWidget(window.teaching.arranging)
    pair = window.teaching.arranging.pair
    qtbot.waitUntil(lambda: pair.image is not None, timeout=WAIT)
    assert pair.above is not None and len(pair.fates) == len(pair.above.notes)


def test_a_version_for_a_grade_is_taken_and_given_back(qtbot, open_window, tmp_path):
    window = open_window()
    page = write_guitar_page(tmp_path / "page.musicxml", inner=("A4", "F4", "C4"))
    make_lesson(qtbot, window, page)
    settle(qtbot, window)
    window.teaching.setCurrentWidget(window.teaching.arranging)
    qtbot.waitUntil(lambda: window.teaching.arranging.easier.isEnabled(), timeout=WAIT)
    view, session = window.teaching.arranging, window.session
    before = session.lesson
    view.easier.click()
    dialog = view.dialog
    qtbot.waitUntil(lambda: len(dialog.versions) >= 2, timeout=WAIT)
    assert dialog.list.count() == len(dialog.versions)
    # the highest grade chooses the fullest, grade 0 the easiest there is
    dialog.grade.setValue(8)
    full = dialog.versions[dialog.list.currentRow()]
    assert len(full.placed.piece.notes) == max(len(v.placed.piece.notes) for v in dialog.versions)
    dialog.grade.setValue(0)
    easy = dialog.versions[dialog.list.currentRow()]
    assert easy.grade.number == 0 or easy is dialog.versions[0]
    assert easy.placed.transposition == before.transposition
    fewer = len(before.piece.notes) - len(easy.placed.piece.notes)
    assert fewer > 0 and dialog.differs.count() >= 1
    dialog.take.click()
    done(qtbot, window)
    now = session.lesson
    assert now.piece == easy.placed.piece and now.strict == easy.wishes.strict
    assert now.top_fret == easy.wishes.top_fret
    session.undo()
    assert session.lesson.piece == before.piece and session.lesson.strict == before.strict
