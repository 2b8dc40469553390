"""The commands of sound: what can be heard, compared and written as sound."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from workbench.language.speech import say
from workbench.music.order.form import playing_order
from workbench.sound.hearing import HeardVersion, Manner, Trainer
from workbench.ui.player.spans import SPANS
from workbench.ui.window.dialogs import Dialogs
from workbench.ui.window.panels import Panels

if TYPE_CHECKING:
    from workbench.teaching.planning.items import PlanItem
    from workbench.teaching.techniques.exercises import Exercise

#: Commands in the order of SPANS.
PLAYS = ("play-note", "play-bar", "play-selected", "play-section", "play-whole")


class SoundCommands(QObject):
    """What the Sound menu does."""

    def __init__(self, panels: Panels, dialogs: Dialogs) -> None:
        super().__init__(panels)
        self._panels, self._dialogs, self._session = panels, dialogs, panels.session
        self._conductor = panels.conductor
        panels.teaching.arranging.wants_heard.connect(self.against_original)
        panels.teaching.plan.practise.connect(self.practise)
        panels.teaching.techniques.exercise.wants_heard.connect(self.exercise)

    def deeds(self) -> dict[str, Callable[[], object]]:
        """What the commands of the menu do, by their names."""
        spans = dict(zip(PLAYS, SPANS, strict=True))
        return {
            "play": self._conductor.toggle,
            **{name: partial(self._play, span) for name, span in spans.items()},
            "against-written": self.against_written,
            "against-other": self.against_other,
            "against-original": self.against_original,
            "trainer": self.trainer,
            "tuner": self.tuner,
            "export-sound": self.export,
            "pack": self.pack,
        }

    def practise(self, item: PlanItem) -> None:
        """A plan's item in a loop, counted in, at its tempo: climbing where it is to climb."""
        low, high = item.tempo_from or item.tempo_to, item.tempo_to
        trainer = Trainer(low, 5.0, 2, high) if low < high else None
        manner = Manner(tempo=high, loop=True, count_in=True, trainer=trainer)
        self._conductor.play_bars(item.bars, manner)

    def exercise(self, exercise: Exercise, percent: float) -> None:
        """An exercise, as often as it is to be repeated."""
        if self._conductor.playing:
            self._conductor.stop()
            return
        from workbench.sound.programme import Programme

        instrument = self._session.instrument
        self._conductor.start(
            Programme(exercise.piece, exercise.fingering, instrument,
                      playing_order(exercise.piece), Manner(tempo=percent),
                      bank=self._conductor.bank())
        )  # fmt: skip

    def _play(self, which: str) -> None:
        self._conductor.set_span(which)
        self._conductor.play(which)

    def against_written(self) -> None:
        """The chosen span as the fingers hold it, then with every note as long as written."""
        lesson = self._session.lesson
        if lesson is not None and self._fingered():
            self._conductor.play(self._conductor.span, HeardVersion(lesson.piece))

    def against_other(self) -> None:
        """The selected bar as it is fingered, then as the chosen other fingering has it."""
        from dataclasses import replace

        session = self._session
        fingering, choices = session.fingers.fingering, session.fingers.choices
        if session.lesson is None or not self._fingered():
            return
        assert fingering
        at = max(0, self._panels.choices.list.currentRow())
        other = choices[at] if choices and at < len(choices) else None
        if other is None or other.bar is None:
            session.failed.emit(say("This bar has no other fingering to compare with yet."))
            return
        bars = tuple(
            other.bar if bar.index == session.selection.bar_index else bar for bar in fingering.bars
        )
        changed = replace(fingering, bars=bars)
        version = HeardVersion(session.lesson.piece, changed, session.instrument)
        self._conductor.play(SPANS[1], version)

    def against_original(self) -> None:
        """The chosen span of the arrangement against the score it was made of."""
        session = self._session
        if session.lesson is None:
            return
        lesson_id = session.lesson.id

        def play() -> None:
            found = session.shelf.lesson_row(lesson_id).piece_id
            original = session.shelf.load_piece(found) if found else None
            assert session.lesson
            if original is None or len(original.bars) != len(session.lesson.piece.bars):
                session.failed.emit(
                    say("The bars of the original are no longer those of this lesson; "
                        "it cannot be played against it.")
                )  # fmt: skip
                return
            self._conductor.play(self._conductor.span, HeardVersion(original))

        session.guard(play)

    def _fingered(self) -> bool:
        if self._session.fingers.fingering is None:
            self._session.failed.emit(say("Wait until the lesson is fingered, then listen."))
            return False
        return True

    def trainer(self) -> None:
        from workbench.ui.player.trainer import TrainerDialog

        self._dialogs.show(TrainerDialog(self._conductor, self._dialogs.over))

    def tuner(self) -> None:
        from workbench.ui.player.tuner import TunerDialog

        self._dialogs.show(TunerDialog(self._conductor, self._dialogs.over))

    def export(self) -> None:
        from workbench.ui.window.sound_files import export_sound

        export_sound(self._conductor, self._dialogs.over)

    def pack(self) -> None:
        from workbench.ui.window.sound_files import make_pack

        make_pack(self._conductor, self._dialogs.over)
