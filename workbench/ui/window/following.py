"""What is heard shown in the window: score, bar list and fretboard follow the sound."""

from __future__ import annotations

from PySide6.QtCore import QObject

from workbench.engraving import ids
from workbench.language.speech import say
from workbench.sound.hearing import SILENCE, Heard
from workbench.ui.player.conductor import Conductor
from workbench.ui.score.heard_paint import show_heard
from workbench.ui.window.panels import Panels


class Follower(QObject):
    """Hands what is heard to the parts that show it."""

    def __init__(self, panels: Panels, conductor: Conductor) -> None:
        super().__init__(panels)
        self._panels, self._conductor = panels, conductor
        self._bar = -1
        conductor.heard.connect(self.show)
        conductor.state.connect(lambda on: None if on else self.show(SILENCE))

    def show(self, heard: Heard) -> None:
        """Show what is heard now; silence shows the selection again."""
        panels = self._panels
        show_heard(panels.score, heard.bar, heard.notes, heard.missed)
        original = heard.version == 1 and self._conductor.against_original
        notes = frozenset(ids.over(n) for n in heard.notes) if original else heard.notes
        show_heard(panels.teaching.arranging.pair, heard.bar, notes, heard.missed)
        panels.neck.show_heard(heard.bar, heard.notes)
        if heard.position != self._bar:
            self._bar = heard.position
            panels.bars.show_heard(heard.position, heard.bar)
            self._name_bar(heard.bar)

    def _name_bar(self, bar: int) -> None:
        """The heading above the fretboard says which bar is on it."""
        panels, lesson = self._panels, self._panels.session.lesson
        if bar < 0 or lesson is None:
            panels.tell_moment()
            return
        number = lesson.piece.bars[bar].number
        panels.neck_heading.setText(say("Fretboard: what is heard in bar {bar}", bar=number))
        panels.moment.setText("")
