"""Keys of writing music: what each does, and how it is told."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent

from workbench.language.speech import mark
from workbench.music.edits.lengths import MOST_DOTS
from workbench.ui.writing.commands import MusicHand

#: Number keys on the staff: the value's own name, halves of a whole note.
VALUE_KEYS = {
    1: Fraction(4), 2: Fraction(2), 4: Fraction(1), 8: Fraction(1, 2), 6: Fraction(1, 4),
    3: Fraction(1, 8),
}  # fmt: skip

#: (keys, what they do) while music is written, for the list of keys.
WRITING_KEYS = (
    (mark("A to G"), mark("write the note of that letter nearest to the caret")),
    (mark("Shift with A to G"), mark("add it to the chord at the caret")),
    (mark("Return"), mark("write the note on the caret's line; with Shift add it to the chord")),
    (mark("1, 2, 4, 8, 6, 3"), mark("on the staff: whole, half, quarter, eighth, 16th, 32nd")),
    (mark("0 to 9"), mark("in the tablature: the fret on the caret's string")),
    ("< >", mark("next shorter or longer value")),
    (". /", mark("dots; triplet")),
    ("+ - =", mark("the next note sharp, flat, natural")),
    (mark("Left, Right, Up, Down"), mark("move the caret through moments and lines")),
    (mark("Home, End"), mark("first and last moment of the bar")),
    (mark("Space"), mark("go on by the chosen length")),
    (mark("R"), mark("write a rest")),
    (mark("J"), mark("between staff and tablature")),
    (mark("V"), mark("write in the next voice; with Shift give it the note at hand")),
    (mark("L"), mark("give the note at hand the chosen length")),
    (mark("T"), mark("tie the note at hand to the next; with Shift untie it")),
    (mark("N"), mark("spell the note at hand otherwise")),
    (mark("Alt+Up, Alt+Down"), mark("move the note at hand by a step; with Shift a semitone")),
    (mark("Page Up, Page Down"), mark("move the note at hand by an octave")),
    (mark("Backspace, Delete"), mark("delete the note at hand")),
    (mark("S"), mark("chord name over the caret")),
    ("( )", mark("a repeat begins or ends with the bar")),
    (mark("M"), mark("everything else about the bar")),
    (mark("Esc"), mark("back to fingering")),
)

_PLAIN = Qt.KeyboardModifier.NoModifier
_SHIFT = Qt.KeyboardModifier.ShiftModifier
_ALT = Qt.KeyboardModifier.AltModifier
_CTRL = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.MetaModifier

Command = Callable[[], object]


class Keyboard:
    """Finds the command of a key. ``chord_name`` and ``bar_marks`` open what they ask with."""

    def __init__(self, hand: MusicHand, chord_name: Command, bar_marks: Command) -> None:
        self._hand, self._chord_name, self._bar_marks = hand, chord_name, bar_marks

    def command(self, event: QKeyEvent) -> Command | None:
        """What a key asks for; None where it says nothing here."""
        modifiers = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        if modifiers & _CTRL:
            return None
        key = Qt.Key(event.key())
        if modifiers & _ALT:
            return self._with_alt(key, bool(modifiers & _SHIFT))
        shift = bool(modifiers & _SHIFT)
        found = self._by_key(key, shift)
        if found is not None:
            return found
        text = event.text().upper()
        if len(text) != 1:
            return None
        return self._by_letter(text, shift) if text.isalpha() else self._by_sign(text)

    def _with_alt(self, key: Qt.Key, shift: bool) -> Command | None:
        hand = self._hand
        by = {Qt.Key.Key_Up: 1, Qt.Key.Key_Down: -1}.get(key)
        if by is None:
            return None
        if shift:
            return lambda: hand.raise_semitones(by)
        if hand.pen.caret.tablature:
            return lambda: hand.to_string(-by)
        return lambda: hand.raise_steps(by)

    def _by_key(self, key: Qt.Key, shift: bool) -> Command | None:
        hand = self._hand
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            return hand.pen.on if hand.pen.caret.tablature else lambda: hand.here(chord=shift)
        return {
            Qt.Key.Key_Escape: hand.pen.end,
            Qt.Key.Key_Left: lambda: hand.pen.step(-1),
            Qt.Key.Key_Right: lambda: hand.pen.step(1),
            Qt.Key.Key_Up: lambda: hand.pen.line(1),
            Qt.Key.Key_Down: lambda: hand.pen.line(-1),
            Qt.Key.Key_Home: lambda: hand.pen.to_bar_end(False),
            Qt.Key.Key_End: lambda: hand.pen.to_bar_end(True),
            Qt.Key.Key_PageUp: lambda: hand.raise_octaves(1),
            Qt.Key.Key_PageDown: lambda: hand.raise_octaves(-1),
            Qt.Key.Key_Space: hand.pen.on,
            Qt.Key.Key_Backspace: hand.delete,
            Qt.Key.Key_Delete: hand.delete,
        }.get(key)

    def _by_letter(self, letter: str, shift: bool) -> Command | None:
        hand = self._hand
        if letter in "ABCDEFG":
            return lambda: hand.letter(letter, chord=shift)
        plain: dict[str, Command] = {
            "R": hand.rest, "J": hand.pen.change_staff, "V": hand.pen.next_voice,
            "L": hand.relength,
            "T": hand.tie, "N": hand.rename, "S": self._chord_name, "M": self._bar_marks,
        }  # fmt: skip
        shifted: dict[str, Command] = {"T": hand.untie, "V": hand.to_next_voice}
        return (shifted if shift else plain).get(letter)

    def _by_sign(self, sign: str) -> Command | None:
        hand = self._hand
        length = hand.pen.caret.length
        if sign.isdigit():
            number = int(sign)
            if hand.pen.caret.tablature:
                return lambda: hand.figure(number)
            base = VALUE_KEYS.get(number)
            return None if base is None else lambda: hand.pen.value(base)
        alters = {"+": 1, "#": 1, "-": -1, "=": 0}
        if sign in alters:
            alter = alters[sign]
            same = hand.pen.caret.alter == alter
            return lambda: hand.pen.choose(alter=None if same else alter)
        return {
            "<": lambda: hand.pen.choose_length(length.stepped(1)),
            ">": lambda: hand.pen.choose_length(length.stepped(-1)),
            ".": lambda: hand.pen.dots((length.dots + 1) % (MOST_DOTS + 1)),
            "/": lambda: hand.pen.triplet(not length.triplet),
            "(": lambda: hand.toggle_repeat(False),
            ")": lambda: hand.toggle_repeat(True),
        }.get(sign)
