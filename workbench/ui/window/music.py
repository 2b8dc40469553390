"""The commands that write music: a piece from nothing, and every correction of the music."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QObject

from workbench.language.speech import say
from workbench.ui.kit.parts import Words
from workbench.ui.window.dialogs import Dialogs
from workbench.ui.window.panels import Panels
from workbench.ui.writing.commands import MusicHand
from workbench.ui.writing.marks import MusicMarks
from workbench.ui.writing.pen import Pen
from workbench.ui.writing.writer import MusicWriter

Deed = Callable[[], object]


class MusicWriting(QObject):
    """Writing in the score. A command chosen in the menu begins writing where need be;
    ``pop_up`` opens that menu at the score, for a key. ``next`` tells what the next key writes.
    """

    def __init__(self, panels: Panels, dialogs: Dialogs, pop_up: Deed) -> None:
        super().__init__(panels)
        self._panels, self._dialogs, self._session = panels, dialogs, panels.session
        self.hand = MusicHand(self._session, Pen(self._session, self))
        self.marks = MusicMarks(self._session, self.hand, dialogs.over)
        self.writer = MusicWriter(self._session, self.hand, panels.score, pop_up)
        self.next = Words()
        self.next.setAccessibleName(say("Where the next note goes, and what it will be"))
        self.next.hide()
        self.hand.pen.started.connect(self.next.setVisible)
        self.hand.pen.moved.connect(self._tell)

    def deeds(self) -> dict[str, Deed]:
        """What the commands of the menu do, by their names."""
        hand, marks = self.hand, self.marks
        corrections: dict[str, Deed] = {
            "relength": hand.relength,
            "tie": hand.tie,
            "untie": hand.untie,
            "step-up": partial(hand.raise_steps, 1),
            "step-down": partial(hand.raise_steps, -1),
            "semitone-up": partial(hand.raise_semitones, 1),
            "semitone-down": partial(hand.raise_semitones, -1),
            "octave-up": partial(hand.raise_octaves, 1),
            "octave-down": partial(hand.raise_octaves, -1),
            "respell": hand.rename,
            "next-voice": hand.to_next_voice,
            "delete-note": hand.delete,
            "rest": hand.rest,
            "chord-name": self.writer.ask_chord,
            "insert-before": partial(hand.insert_bar, False),
            "insert-after": partial(hand.insert_bar, True),
            "duplicate-bars": lambda: hand.duplicate_bars(*self._span()),
            "delete-bars": lambda: hand.delete_bars(*self._span()),
            "key-signature": marks.key,
            "time-signature": partial(marks.time, False),
            "time-of-bar": partial(marks.time, True),
            "tempo": marks.tempo,
            "double-bar": marks.double_bar,
            "repeat-begins": partial(hand.toggle_repeat, False),
            "repeat-ends": partial(hand.toggle_repeat, True),
            "times": marks.times,
            "first-ending": partial(self._ending, (1,)),
            "second-ending": partial(self._ending, (2,)),
            "no-endings": partial(self._ending, ()),
            "jump": marks.jump,
            "segno": partial(marks.sign, "segno"),
            "coda": partial(marks.sign, "coda"),
            "to_coda": partial(marks.sign, "to_coda"),
            "fine": partial(marks.sign, "fine"),
            "pickup": marks.pickup,
            "titles": marks.titles,
        }
        written = {name: partial(self._correct, does) for name, does in corrections.items()}
        return {"new-piece": self.new_piece, **written}

    def _correct(self, does: Deed) -> None:
        self._begin()
        if self.hand.pen.writing:
            does()

    def _ending(self, passes: tuple[int, ...]) -> None:
        self.hand.set_endings(*self._span(), passes)

    def _span(self) -> tuple[int, int]:
        """First and last of the bars selected in the list, else the caret's bar."""
        bar, chosen = self.hand.pen.caret.bar, self._panels.bars.selected_bars
        if len(chosen) > 1 and bar in chosen:
            return chosen[0], chosen[-1]
        return bar, bar

    def new_piece(self) -> None:
        """Ask for a piece of empty bars; once it is made, it is written in."""
        from workbench.ui.writing.new_piece_dialog import NewPieceDialog

        dialog = NewPieceDialog(self._session, self._dialogs.over)
        dialog.accepted.connect(self._begin)
        self._dialogs.show(dialog)

    def _begin(self) -> None:
        if not self.hand.pen.writing:
            self._panels.teaching.show_view(0)
            self.hand.pen.begin()

    def toggle(self) -> None:
        """Begin writing, or end it."""
        if self.hand.pen.writing:
            self.hand.pen.end()
        else:
            self._begin()

    def _tell(self) -> None:
        """What the next key will write, in the status line."""
        lesson = self._session.lesson
        if lesson is not None and self.hand.pen.writing:
            caret = self.hand.pen.caret
            self.next.setText(f"{caret.where_words(lesson.piece)} – {caret.next_words()}")
