"""Exercises made from a bar: seen as music and on the neck, heard, kept, written out."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QBoxLayout,
    QComboBox,
    QFileDialog,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from workbench.language.names import as_first_word
from workbench.language.speech import say
from workbench.music.files import readable_name
from workbench.music.suffixes import PDF, SOUND
from workbench.store.setting_names import TEXTS_FOLDER
from workbench.teaching.lessons import edits
from workbench.teaching.lessons.lesson import BarNote
from workbench.teaching.techniques.catalogue import Technique
from workbench.teaching.techniques.exercises import Exercise, exercises_for
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.session import Session
from workbench.ui.kit.file_rows import ask_to_replace
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Faint, Words, Wrapped
from workbench.ui.neck.grip_neck import GripNeck, frets_for
from workbench.ui.score.strip import MusicStrip

SLOWEST, FASTEST = 20, 150  # percent of the piece's tempo


class ExercisePane(QWidget):
    """The exercises that serve a technique, one at a time."""

    wants_heard = Signal(object, float)  # the exercise, percent of the tempo it is written in

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self._technique: Technique | None = None
        self.exercises: tuple[Exercise, ...] = ()
        self.kind = QComboBox()
        self.kind.setAccessibleName(say("Exercise"))
        self.kind.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.kind.setMinimumContentsLength(8)
        self.text = Wrapped()
        self.text.setAccessibleName(say("What to do"))
        self.music = MusicStrip(session, "exercise")
        self.neck_row = QVBoxLayout()
        self.neck: GripNeck | None = None
        self._neck_for: object = None
        self.tempo = QSpinBox()
        self.tempo.setRange(SLOWEST, FASTEST)
        self.tempo.setSingleStep(5)
        self.tempo.setSuffix(" %")
        self.tempo.setAccessibleName(say("Tempo of the exercise"))
        self.speed = Faint()
        self.hear_button = QPushButton(say("&Hear it"))
        self.hear_button.setToolTip(say("Play or stop the exercise; it repeats four times"))
        self.sound_button = QPushButton(say("Save as so&und …"))
        self.strip_button = QPushButton(say("Save as &picture …"))
        self.strip_button.setToolTip(say("A strip of music as PDF or PNG"))
        self.note_button = QPushButton(say("Add to the &remarks"))
        self.note_button.setToolTip(say("Write the exercise as a remark on its bar"))
        self._lay_out()
        self.kind.activated.connect(lambda _: self._show())
        self.tempo.valueChanged.connect(lambda _: self._tell_speed())
        self.hear_button.clicked.connect(self.hear)
        self.sound_button.clicked.connect(lambda: self.save(sound=True))
        self.strip_button.clicked.connect(lambda: self.save(sound=False))
        self.note_button.clicked.connect(self.keep)

    def _lay_out(self) -> None:
        self.top = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        for words, field, share in (
            (say("E&xercise"), self.kind, 1), (say("Te&mpo"), self.tempo, 0),
        ):  # fmt: skip
            row = QHBoxLayout()
            row.addWidget(_label(words, field))
            row.addWidget(field, 1)
            self.top.addLayout(row, share)
        self.buttons = QGridLayout()
        self.set_narrow(False)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(self.top)
        layout.addWidget(self.speed)
        layout.addWidget(self.text)
        layout.addWidget(self.music)
        layout.addLayout(self.neck_row)
        layout.addLayout(self.buttons)

    def set_narrow(self, narrow: bool) -> None:
        """One thing below the other where there is little room, else two side by side."""
        self.top.setDirection(
            QBoxLayout.Direction.TopToBottom if narrow else QBoxLayout.Direction.LeftToRight
        )
        for at, button in enumerate(
            (self.hear_button, self.sound_button, self.note_button, self.strip_button)
        ):
            self.buttons.removeWidget(button)
            self.buttons.addWidget(button, *divmod(at, 1 if narrow else 2))

    # What is shown.

    @property
    def exercise(self) -> Exercise | None:
        """The exercise that is shown."""
        at = self.kind.currentIndex()
        return self.exercises[at] if 0 <= at < len(self.exercises) else None

    def show_for(self, technique: Technique | None, bar: int) -> None:
        """The exercises for a technique, made from a written bar."""
        session = self._session
        before = self.exercise
        self._technique = technique
        made: tuple[Exercise, ...] = ()
        if (
            technique is not None
            and session.lesson is not None
            and session.fingers.fingering is not None
        ):
            given = (session.lesson.piece, session.fingers.fingering, session.instrument)
            made = exercises_for(technique, *given, bar)
        self.exercises = made
        self.kind.clear()
        self.kind.addItems([as_first_word(say(e.kind)) for e in made])
        kinds = [e.kind for e in made]
        if before is not None and before.kind in kinds:
            self.kind.setCurrentIndex(kinds.index(before.kind))
        self._show()

    def _show(self) -> None:
        exercise = self.exercise
        for part in (self.kind, self.tempo, self.hear_button, self.sound_button,
                     self.note_button, self.strip_button):  # fmt: skip
            part.setEnabled(exercise is not None)
        if exercise is None:
            self.text.setText(say("This bar gives nothing to an exercise."))
            self.speed.setText("")
            self.music.show_music(None, None)
            if self.neck is not None:
                self.neck.hide()
            return
        self.text.setText(str(exercise.text))
        self.tempo.setValue(exercise.tempo_percent)
        self._tell_speed()
        self.music.show_music(exercise.piece, exercise.fingering)
        self._show_neck(exercise)

    def _show_neck(self, exercise: Exercise) -> None:
        wanted = (self._session.instrument, self._session.left_handed)
        if self.neck is None or wanted != self._neck_for:
            if self.neck is not None:
                self.neck_row.removeWidget(self.neck)
                self.neck.deleteLater()
            self.neck = GripNeck(*wanted)
            self.neck.setMinimumHeight(em(self, 6))
            self.neck_row.addWidget(self.neck)
            self._neck_for = wanted
        bar = exercise.fingering.bars[0]
        self.neck.show()
        self.neck.show_bar(bar, str(exercise.title), frets_for(bar))

    def _tell_speed(self) -> None:
        exercise = self.exercise
        if exercise is not None:
            beats = exercise.piece.tempo * self.tempo.value() / exercise.tempo_percent
            self.speed.setText(say("{beats} quarter notes a minute.", beats=f"{beats:.0f}"))

    # What can be done with it.

    def keep(self) -> None:
        """Write the exercise as a note on its bar."""
        exercise, technique = self.exercise, self._technique
        if exercise is None or technique is None:
            return
        text = say(
            "Exercise at {percent} % of the tempo: {what}",
            percent=self.tempo.value(),
            what=exercise.text,
        )
        bar = exercise.bar
        note = BarNote(edits.fresh_id("note"), technique.family, text, bar, bar)
        if self._session.edit(say("Add an exercise"), lambda lesson: edits.put_note(lesson, note)):
            self._session.told.emit(say("The exercise is a remark on its bar now."))

    def hear(self) -> None:
        """Hand the exercise to the window's player."""
        exercise = self.exercise
        if exercise is not None:
            self.wants_heard.emit(exercise, 100.0 * self.tempo.value() / exercise.tempo_percent)

    def _sound(self, path: Path, then: Callable[[Path], None]) -> None:
        from workbench.ui.paper.exercise_files import write_sound

        exercise, percent = self.exercise, self.tempo.value()
        if exercise is None:
            return
        instrument = self._session.instrument

        def work(progress: Progress) -> Path:
            return write_sound(exercise, instrument, percent, path, progress)

        self._session.jobs.start("exercise sound", say("Making the sound"), work, then)

    def save(self, *, sound: bool, path: str = "") -> None:
        """Write the exercise as a sound or as a strip of music; asks where without a path."""
        from workbench.ui.paper.exercise_files import SUFFIXES

        if self.exercise is None:
            return
        asked = not path
        if asked:
            path = self._ask(sound)
        if not path:
            return
        target = Path(path)
        wanted = (SOUND,) if sound else SUFFIXES
        if target.suffix.lower() not in wanted:
            target = target.with_name(target.name + wanted[0])
            if asked:  # the dialog asked about the name without its ending
                self.question = ask_to_replace(self, target, lambda: self._save(sound, target))
                return
        self._save(sound, target)

    def _save(self, sound: bool, target: Path) -> None:
        from workbench.ui.paper.exercise_files import write_strip

        exercise, session = self.exercise, self._session
        if exercise is None:
            return

        def written(made: Path) -> None:
            session.guard(lambda: session.shelf.set_setting(TEXTS_FOLDER, str(made.parent)))
            session.told.emit(say("The exercise is written: {path}", path=made))

        if sound:
            self._sound(target, written)
            return
        instrument = session.instrument
        session.jobs.start(
            "exercise strip", say("Writing the exercise"),
            lambda _: write_strip(exercise, instrument, target), written, lane="engrave",
        )  # fmt: skip

    def _ask(self, sound: bool) -> str:
        exercise = self.exercise
        assert exercise
        title = readable_name(str(exercise.title)) or say("exercise")
        folder = Path(str(self._session.shelf.setting(TEXTS_FOLDER) or Path.home()))
        if sound:
            name, what, forms = title + SOUND, say("Save the sound"), say("Sound (*.wav)")
        else:
            name, what = title + PDF, say("Save the exercise")
            forms = ";;".join((say("PDF (*.pdf)"), say("Picture (*.png)")))
        chosen, _ = QFileDialog.getSaveFileName(self, what, str(folder / name), forms)
        return chosen


def _label(words: str, field: QWidget) -> QLabel:
    label = Words(words)
    label.setBuddy(field)
    return label
