"""Music written and corrected in the window, by keys, menus and clicks."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QInputDialog

from tests.ui.conftest import WAIT
from workbench.handout.sheets.page import make_handout
from workbench.music.order.form import playing_order
from workbench.teaching.lessons.lesson import BarNote
from workbench.ui.help.shortcut_list import ShortcutList
from workbench.ui.writing.marks import MusicMarks

CTRL, ALT = (
    Qt.KeyboardModifier.ControlModifier,
    Qt.KeyboardModifier.AltModifier,
)
KEY = Qt.Key


def press(window, keys):
    """Type into the score; a space between keys is nothing."""
    for sign in keys.replace(" ", ""):
        QTest.keyClick(window.score, sign)


def choose(window, *words):
    """Choose from the menus by words, such as "Music", "Bar", "Delete"."""
    menu = window.menuBar()
    for word in words:
        action = next(
            a for a in menu.actions()
            if a.text().split("\t")[0].replace("&", "").rstrip(" …") == word
        )  # fmt: skip
        menu = action.menu()
    assert action.isEnabled()
    action.trigger()


def shortcut(qtbot, window, key, modifiers=CTRL):
    """A key of the menus; it works only in a window in front."""
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow, timeout=WAIT)
    QTest.keyClick(window.score, key, modifiers)


def names(bar, voice=1):
    return [(n.pitch.name, n.onset, n.duration) for n in bar.notes if n.voice == voice]


@pytest.fixture
def new_piece(qtbot, open_window, settled):
    """A window with a piece of empty bars, being written in."""
    window = open_window()
    begin_piece(qtbot, window, "Slow air")
    settled(window)
    return window


def begin_piece(qtbot, window, title, bars=4, pickup=0):
    choose(window, "Music", "New piece")
    qtbot.waitUntil(lambda: window.dialog is not None, timeout=WAIT)
    dialog = window.dialog
    dialog.title.setText(title)
    dialog.composer.setText("Nobody")
    dialog.key.setCurrentText("G major")
    dialog.meter.setCurrentText("3/4")
    dialog.tempo.setValue(100)
    dialog.bars.setValue(bars)
    dialog.pickup.setCurrentIndex(pickup)
    dialog.make()
    qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)


def test_a_piece_written_from_nothing(qtbot, new_piece, settled):
    window, session = new_piece, new_piece.session
    hand = window.music.hand
    assert hand.pen.writing
    assert session.lesson.title == "Slow air"
    assert session.lesson.piece.composer == "Nobody"
    assert session.lesson.piece.bars[0].key.fifths == 1
    assert session.lesson.piece.tempo == 100
    assert window.music.next.isVisible()
    assert "quarter note" in window.music.next.text()

    # Bar 1: three quarters; F is sharp in this key. Bar 2: a half tied to the next bar.
    press(window, "G A B 2 F")
    assert "half note" in window.music.next.text()
    press(window, "4 G G")
    piece = session.lesson.piece
    assert names(piece.bars[0]) == [("G4", 0, 1), ("A4", 1, 1), ("B4", 2, 1)]
    assert names(piece.bars[1]) == [("F#4", 0, 2), ("G4", 2, 1)]
    assert names(piece.bars[2]) == [("G4", 0, 1)]
    QTest.keyClick(window.score, KEY.Key_Left)
    QTest.keyClick(window.score, KEY.Key_Left)
    press(window, "T")
    assert names(session.lesson.piece.bars[1])[1] == ("G4", 2, 2)
    assert names(session.lesson.piece.bars[2]) == []

    # The second voice under bar 1, a chord and a chord name.
    window.score.setFocus()
    for _ in range(8):
        QTest.keyClick(window.score, KEY.Key_Left)
    QTest.keyClick(window.score, KEY.Key_Home)
    press(window, "V 2 .")
    for _ in range(4):
        QTest.keyClick(window.score, KEY.Key_Down)
    press(window, "D")
    assert names(session.lesson.piece.bars[0], voice=2) == [("D4", 0, 3)]
    QTest.keyClick(window.score, KEY.Key_Left)
    assert hand.pen.caret.bar == 0
    press(window, "S")
    field = window.music.writer.chord
    assert field is not None
    field.setText("G")
    QTest.keyClick(field, KEY.Key_Return)
    assert [c.text for c in session.lesson.piece.bars[0].chords] == ["G"]
    assert window.music.writer.chord is None

    # Bars 1 to 2 are played twice, with two endings after them.
    for index, passes in ((1, "First ending"), (2, "Second ending")):
        session.selection.select(session.selection.position_of(index), None)
        choose(window, "Music", "Repeats and jumps", passes)
    assert playing_order(session.lesson.piece) == (0, 1, 0, 2, 3)

    # It is fingered, drawn, and remembered as written.
    settled(window)
    assert not session.last_fault
    assert {n.midi for n in session.fingers.fingering.bars[0].notes} == {62, 67, 69, 71}
    QTest.keyClick(window.score, KEY.Key_Escape)
    assert not hand.pen.writing
    assert not window.music.next.isVisible()
    assert session.shelf.load(session.lesson.id).piece == session.lesson.piece

    # Undone step by step, it is empty again.
    for _ in range(30):
        if not session.lesson.piece.notes and not session.lesson.piece.bars[0].chords:
            break
        shortcut(qtbot, window, KEY.Key_Z)
    assert not session.lesson.piece.notes
    assert playing_order(session.lesson.piece) == (0, 1, 2, 3)


def test_two_empty_pieces_are_two(qtbot, new_piece, settled):
    window = new_piece
    first = window.session.lesson.id
    begin_piece(qtbot, window, "Slow air", pickup=2)
    settled(window)
    shelf = window.session.shelf
    second = window.session.lesson.id
    assert shelf.lesson_row(first).piece_id != shelf.lesson_row(second).piece_id
    assert window.session.lesson.piece.bars[0].pickup
    assert window.session.lesson.piece.bars[0].length == 1


def test_an_empty_piece_faults_nowhere(qtbot, new_piece, settled, tmp_path):
    window, session = new_piece, new_piece.session
    failed = []
    session.failed.connect(failed.append)
    for tab in range(window.teaching.count()):
        window.teaching.setCurrentIndex(tab)
        settled(window)
    window.side.setCurrentIndex(1)
    settled(window)
    path = tmp_path / "empty.pdf"
    assert make_handout(session.lesson, session.fingers.fingering, path) >= 1
    window.openers.change_music()
    settled(window)
    assert not session.last_fault
    assert not failed


def test_a_piece_needs_a_title(qtbot, open_window):
    window = open_window()
    choose(window, "Music", "New piece")
    window.dialog.make()
    assert "title" in window.dialog.problem.words.text()
    assert window.session.lesson is None
    window.dialog.reject()


def test_a_wrong_pitch_is_corrected(qtbot, lesson_window, settled):
    window, session = lesson_window, lesson_window.session
    note = session.lesson.piece.bars[0].notes[1]
    session.selection.select_note(note.id)
    shortcut(qtbot, window, KEY.Key_M)
    hand = window.music.hand
    assert hand.pen.writing
    assert hand.pen.note.id == note.id
    QTest.keyClick(window.score, KEY.Key_Up, ALT)
    now = session.lesson.piece.bars[0].notes[1]
    assert (now.id, now.pitch.name) == (note.id, "F4")
    assert session.lesson.corrected
    settled(window)
    assert session.fingers.fingering.bars[0].notes[1].midi == 65
    shortcut(qtbot, window, KEY.Key_M)
    assert not hand.pen.writing
    shortcut(qtbot, window, KEY.Key_Z)
    assert session.lesson.piece.bars[0].notes[1].pitch.name == "E4"
    assert not session.lesson.corrected


def test_a_fret_is_written_in_the_tablature(qtbot, lesson_window, settled):
    window, session = lesson_window, lesson_window.session
    session.selection.select_note(session.lesson.piece.bars[0].notes[0].id)
    choose(window, "Music", "Write music")
    press(window, "J")
    string = window.music.hand.pen.caret.string
    press(window, "2")
    note = session.lesson.piece.bars[0].notes[0]
    assert note.midi == session.instrument.open_midi[string - 1] + 2
    assert [(p.string, p.fret) for p in session.lesson.pins if p.note == note.id] == [(string, 2)]
    settled(window)
    assert not session.last_fault


def test_a_click_puts_the_caret(qtbot, lesson_window):
    window, session = lesson_window, lesson_window.session
    choose(window, "Music", "Write music")
    score, note = window.score, session.lesson.piece.bars[2].notes[2]
    middle = score.from_image(score.image.rect_of(f"head-{note.id}")).center()
    QTest.mouseClick(score.viewport(), Qt.MouseButton.LeftButton, pos=middle.toPoint())
    caret = window.music.hand.pen.caret
    assert (caret.bar, caret.onset) == (2, 2)
    assert session.selection.note_id == note.id
    assert "Bar 3, beat 3" in window.music.next.text()


def test_a_deleted_bar_tells_what_went_with_it(qtbot, lesson_window, settled):
    window, session = lesson_window, lesson_window.session
    about = BarNote("n1", "left hand", "Keep the first finger down.", 1, 1)
    session.edit("Note", lambda lesson: lesson.__class__(**{**vars(lesson), "notes": (about,)}))
    settled(window)
    told = []
    session.told.connect(told.append)
    session.selection.select(1, None)
    choose(window, "Music", "Bar", "Delete")
    assert len(session.lesson.piece.bars) == 3
    assert session.lesson.notes == ()
    words = " ".join(told)
    assert "Bar 2 went" in words
    assert "Keep the first finger down." in words
    settled(window)
    assert window.bars.model.rowCount() == 3
    session.undo()
    assert session.lesson.notes == (about,)
    assert len(session.lesson.piece.bars) == 4


def test_what_cannot_be_done_is_told_in_a_sentence(qtbot, lesson_window):
    window, session = lesson_window, lesson_window.session
    before = session.lesson
    session.selection.select(2, None)
    choose(window, "Music", "Repeats and jumps", "Second ending")
    assert "mark the first ending first" in window.notice.words.text()
    assert session.lesson is before
    QTest.keyClick(window.score, KEY.Key_L)
    assert "No note is at hand" in window.notice.words.text()


@pytest.mark.parametrize(
    ("ask", "answer", "check"),
    [
        (MusicMarks.key, "D major", lambda p: [b.key.fifths for b in p.bars] == [0, 2, 2, 2]),
        (lambda m: m.time(False), "2/4", lambda p: len(p.bars) == 7),
        (lambda m: m.time(True), "2/4", lambda p: [b.length for b in p.bars] == [4, 2, 2, 4, 4]),
        (MusicMarks.pickup, "quarter note", lambda p: p.bars[0].pickup and p.bars[0].length == 1),
        (MusicMarks.jump, "D.C.", lambda p: p.bars[1].jump == "D.C."),
        (MusicMarks.tempo, 72, lambda p: p.bars[1].tempo == 72),
        (MusicMarks.times, 3, lambda p: p.bars[1].repeat_end and p.bars[1].times == 3),
        (MusicMarks.titles, "Late ferry", lambda p: p.title == p.arranger == "Late ferry"),
        (MusicMarks.double_bar, None, lambda p: p.bars[1].double_bar),
        (lambda m: m.sign("segno"), None, lambda p: p.bars[1].segno),
    ],
)
def test_what_is_asked_about_a_bar(qtbot, lesson_window, monkeypatch, ask, answer, check):
    window, session = lesson_window, lesson_window.session
    for name in ("getItem", "getInt", "getText"):
        monkeypatch.setattr(QInputDialog, name, lambda *_, **__: (answer, True))
    session.selection.select(1, None)
    choose(window, "Music", "Write music")
    ask(window.music.marks)
    assert check(session.lesson.piece), session.lesson.piece
    session.undo()
    assert not check(session.lesson.piece)


def test_instrument_and_key_keep_corrections(qtbot, lesson_window, settled):
    window, session = lesson_window, lesson_window.session
    session.selection.select_note(session.lesson.piece.bars[0].notes[1].id)
    choose(window, "Music", "Note at hand", "A step higher")
    for times in (1, 2):
        window.openers.change_music()
        settled(window)
        fields = window.dialog.fields
        fields.key.setEditText(("D major", "E major")[times - 1])
        window.dialog.place()
        qtbot.waitUntil(lambda: window.dialog is None, timeout=WAIT)
        settled(window)
        assert session.lesson.transposition % 12 == 2 * times
        # F4, put right from E4, is two semitones higher each time
        assert session.lesson.piece.bars[0].notes[1].midi % 12 == (65 + 2 * times) % 12


def test_keys_of_writing_are_listed(qtbot, lesson_window):
    shown = ShortcutList(lesson_window)
    table = shown.table
    rows = [
        tuple(table.item(row, column).text() for column in range(3))
        for row in range(table.rowCount())
    ]
    assert ("R", "write a rest", "While music is written") in rows
    assert ("T", "Tie to the next", "Music, Note at hand") in rows
    assert ("Ctrl+M", "Write music", "Music") in rows
