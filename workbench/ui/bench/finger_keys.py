"""Keys that finger the selected note, wherever the music has the focus."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent

from workbench.language.speech import mark
from workbench.ui.bench.session import Session

#: (keys, what they do), for the shortcut list.
NOTE_KEYS = (
    (mark("Left, Right"), mark("previous or next note")),
    (mark("Alt+Up, Alt+Down"), mark("move the note to the string above or below")),
    (mark("Up, Down"), mark("on the fretboard: the same; in the bar list: previous or next bar")),
    (mark("0 to 4"), mark("left finger (0: open string)")),
    (mark("P, I, M, A"), mark("right finger: thumb, index, middle, ring")),
    (mark("Backspace, Delete"), mark("let the note free again (or the whole bar)")),
    (mark("Esc"), mark("select no note")),
    (mark("Double click"), mark("on the fretboard: pin the note as it is fingered")),
    (mark("+, -"), mark("on the fretboard: zoom")),
    (mark("F"), mark("on the fretboard: all frets, or those that the piece uses")),
    (mark("Page Up, Page Down, Home, End"), mark("on the fretboard: along the neck")),
)
_PLAIN = (Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.KeypadModifier)


def handle(session: Session, event: QKeyEvent, *, strings: bool = False) -> bool:
    """Do what the key says; False where it says nothing. With ``strings`` the plain
    arrows Up and Down change the string as well."""
    if session.lesson is None:
        return False
    key, modifiers = event.key(), event.modifiers()
    upright = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}
    alt = bool(modifiers & Qt.KeyboardModifier.AltModifier)
    if key in upright and (alt or (strings and modifiers in _PLAIN)):
        session.hand_edits.step_string(upright[Qt.Key(key)])
        return True
    if modifiers not in _PLAIN:
        return False
    if key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
        session.selection.step_note(1 if key == Qt.Key.Key_Right else -1)
    elif Qt.Key.Key_0 <= key <= Qt.Key.Key_4:
        session.hand_edits.set_left(key - Qt.Key.Key_0)
    elif event.text().lower() in ("p", "i", "m", "a"):
        session.hand_edits.set_right(event.text().lower())
    elif key in (Qt.Key.Key_Backspace, Qt.Key.Key_Delete):
        session.hand_edits.free_note()
    elif key == Qt.Key.Key_Escape and session.selection.note_id:
        session.selection.select_note(None)
    else:
        return False
    return True
