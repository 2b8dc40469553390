"""What is heard shown in the window: score, bar list and fretboard follow the sound."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from workbench.engraving.above import ABOVE
from workbench.language.speech import say
from workbench.sound.player import SILENCE, Heard
from workbench.ui.score.heard_paint import show_heard

if TYPE_CHECKING:
    from workbench.ui.player.conductor import Conductor
    from workbench.ui.window.window import Window


class Follower(QObject):
    """Hands what is heard to the parts that show it."""

    def __init__(self, window: Window, conductor: Conductor) -> None:
        super().__init__(window)
        self._window, self._conductor = window, conductor
        self._bar = -1
        conductor.heard.connect(self.show)
        conductor.state.connect(lambda on: None if on else self.show(SILENCE))

    def show(self, heard: Heard) -> None:
        """Show what is heard now; silence shows the selection again."""
        window = self._window
        show_heard(window.score, heard.bar, heard.notes, heard.missed)
        pair = window.teaching.arranging.pair
        original = heard.version == 1 and self._conductor.against_original
        notes = frozenset(ABOVE + n for n in heard.notes) if original else heard.notes
        show_heard(pair, heard.bar, notes, heard.missed)
        window.neck.show_heard(heard.bar, heard.notes)
        if heard.position != self._bar:
            self._bar = heard.position
            window.bars.show_heard(heard.position, heard.bar)
            self._name_bar(heard.bar)

    def _name_bar(self, bar: int) -> None:
        """The heading above the fretboard says which bar is on it."""
        window, lesson = self._window, self._window.session.lesson
        if bar < 0 or lesson is None:
            window.tell_moment()
            return
        number = lesson.piece.bars[bar].number
        window.neck_heading.setText(say("Fretboard: what is heard in bar {bar}", bar=number))
        window.moment.setText("")
