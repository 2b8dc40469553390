"""The Music menu: a piece from nothing, and every correction of the music."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu

from workbench.language.speech import say
from workbench.ui.kit.parts import Words
from workbench.ui.writing.commands import MusicHand
from workbench.ui.writing.marks import SIGNS, MusicMarks
from workbench.ui.writing.writer import MusicWriter

if TYPE_CHECKING:
    from workbench.ui.window.window import Window

Add = Callable[..., QAction]  # menu, words, what it does, keys, lesson=


class MusicMenu(QObject):
    """Fills the menu; a command chosen in it begins writing where need be. Keys after a
    tab are those of the score strip while music is written."""

    def __init__(self, window: Window, menu: QMenu, add: Add) -> None:
        super().__init__(window)
        self._window, self._menu, self._add_action = window, menu, add
        session = window.session
        self.hand = MusicHand(session, self)
        self.marks = MusicMarks(session, self.hand, window)
        self.writer = MusicWriter(session, self.hand, window.score, self._pop_up)
        self.next = Words()
        self.next.setAccessibleName(say("Where the next note goes, and what it will be"))
        window.statusBar().insertPermanentWidget(0, self.next)
        self.next.hide()
        add(menu, say("&New piece …"), self.new_piece, "Ctrl+Shift+N")
        self.write = add(menu, say("&Write music"), self._toggle, "Ctrl+M", lesson=True)
        self.write.setCheckable(True)
        menu.addSeparator()
        self._note_menu(menu.addMenu(say("N&ote at hand")))
        self._bar_menu(menu.addMenu(say("&Bar")))
        self._repeat_menu(menu.addMenu(say("&Repeats and jumps")))
        self._piece_menu(menu)
        self.hand.started.connect(self._started)
        self.hand.moved.connect(self._tell)

    def _add(self, menu: QMenu, words: str, does: Callable[[], object]) -> None:
        def run() -> None:
            self._begin()
            if self.hand.writing:
                does()

        self._add_action(menu, words, run, lesson=True)

    def _note_menu(self, menu: QMenu) -> None:
        hand = self.hand
        for words, key, does in (
            (say("Change its &length to the chosen one"), "L", hand.relength),
            (say("&Tie to the next"), "T", hand.tie),
            (say("&Untie"), "Shift+T", hand.untie),
            (say("A st&ep higher"), "Alt+Up", partial(hand.raise_steps, 1)),
            (say("A ste&p lower"), "Alt+Down", partial(hand.raise_steps, -1)),
            (say("A &semitone higher"), "Alt+Shift+Up", partial(hand.raise_semitones, 1)),
            (say("A se&mitone lower"), "Alt+Shift+Down", partial(hand.raise_semitones, -1)),
            (say("An &octave higher"), "PgUp", partial(hand.raise_octaves, 1)),
            (say("An o&ctave lower"), "PgDown", partial(hand.raise_octaves, -1)),
            (say("Spell it other&wise"), "N", hand.rename),
            (say("Give it to the next &voice"), "Shift+V", hand.to_next_voice),
            (say("&Delete it"), "Del", hand.delete),
            (say("Write a &rest"), "R", hand.rest),
            (say("Chord n&ame …"), "S", self.writer.ask_chord),
        ):
            self._add(menu, f"{words}\t{key}", does)

    def _bar_menu(self, menu: QMenu) -> None:
        hand, marks = self.hand, self.marks
        self._add(menu, say("Insert a bar &before"), partial(hand.insert_bar, False))
        self._add(menu, say("Insert a bar &after"), partial(hand.insert_bar, True))
        self._add(menu, say("&Write again after it"), lambda: hand.duplicate_bars(*self._span()))
        self._add(menu, say("&Delete"), lambda: hand.delete_bars(*self._span()))
        menu.addSeparator()
        self._add(menu, say("&Key signature …"), marks.key)
        self._add(menu, say("&Time signature …"), partial(marks.time, False))
        self._add(menu, say("Time signature of this bar a&lone …"), partial(marks.time, True))
        self._add(menu, say("Te&mpo …"), marks.tempo)
        self._add(menu, say("D&ouble bar line"), marks.double_bar)

    def _repeat_menu(self, menu: QMenu) -> None:
        hand, marks = self.hand, self.marks
        self._add(menu, say("Repeat &begins here") + "\t(", partial(hand.toggle_repeat, False))
        self._add(menu, say("Repeat &ends here") + "\t)", partial(hand.toggle_repeat, True))
        self._add(menu, say("How many &times …"), marks.times)
        for words, passes in (
            (say("&First ending"), (1,)),
            (say("&Second ending"), (2,)),
            (say("&Dissolve the endings"), ()),
        ):
            self._add(menu, words, partial(self._ending, passes))
        menu.addSeparator()
        self._add(menu, say("&Jump …"), marks.jump)
        for name, words in SIGNS:
            self._add(menu, say(words), partial(marks.sign, name))

    def _piece_menu(self, menu: QMenu) -> None:
        self._add(menu, say("&Pickup …"), self.marks.pickup)
        self._add(menu, say("&Title, composer, arranger …"), self.marks.titles)

    def _ending(self, passes: tuple[int, ...]) -> None:
        self.hand.set_endings(*self._span(), passes)

    def _span(self) -> tuple[int, int]:
        """First and last of the bars selected in the list, else the caret's bar."""
        bar, chosen = self.hand.caret.bar, self._window.bars.selected_bars
        if len(chosen) > 1 and bar in chosen:
            return chosen[0], chosen[-1]
        return bar, bar

    def _pop_up(self) -> None:
        """The menu at the score, for a key."""
        self._menu.popup(self._window.score.viewport().mapToGlobal(self.writer.foot()))

    def new_piece(self) -> None:
        """Ask for a piece of empty bars; once it is made, it is written in."""
        from workbench.ui.writing.new_piece_dialog import NewPieceDialog

        dialog = NewPieceDialog(self._window.session, self._window)
        dialog.accepted.connect(self._begin)
        self._window.show_dialog(dialog)

    def _begin(self) -> None:
        if not self.hand.writing:
            self._window.teaching.setCurrentIndex(0)
            self.hand.begin()

    def _toggle(self) -> None:
        if self.hand.writing:
            self.hand.end()
        else:
            self._begin()
        self.write.setChecked(self.hand.writing)

    def _started(self, on: bool) -> None:
        self.write.setChecked(on)
        self.next.setVisible(on)

    def _tell(self) -> None:
        """What the next key will write, in the status line."""
        lesson = self._window.session.lesson
        if lesson is not None and self.hand.writing:
            caret = self.hand.caret
            self.next.setText(f"{caret.where_words(lesson.piece)} – {caret.next_words()}")
