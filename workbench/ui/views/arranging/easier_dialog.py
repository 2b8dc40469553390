"""Easier and harder versions of the lesson's piece, aimed at a grade."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Signal
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QListWidgetItem,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from workbench.arranging.decisions import decisions
from workbench.instrument.table import hand as find_hand
from workbench.language.names import as_first_word
from workbench.language.speech import count, say
from workbench.music.model import Piece
from workbench.store.grading import studio_model
from workbench.teaching.lessons import edits
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Caution, Faint, plain_tip
from workbench.ui.kit.word_list import WordList

if TYPE_CHECKING:
    from workbench.teaching.grading.easier import LaidVersion

JOB = "easier and harder"


class EasierDialog(QDialog):
    """The versions, easiest first, and what the chosen one has otherwise than the lesson now;
    ``source`` is the original that they are laid from."""

    listed = Signal()  # the versions are there

    def __init__(self, session: Session, source: Piece, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        assert session.lesson is not None
        self._session, self._source, self._lesson = session, source, session.lesson
        self.versions: tuple[LaidVersion, ...] = ()
        self.setWindowTitle(say("Easier and harder versions"))
        self.setAccessibleName(self.windowTitle())
        self.grade = QSpinBox()
        self.grade.setRange(0, 8)
        self.grade.setValue(3 if self._lesson.grade is None else self._lesson.grade)
        self.grade.setAccessibleName(say("Grade to aim at"))
        self.grade.setToolTip(
            plain_tip(say("The fullest version that asks no more than this is chosen"))
        )
        self.list = WordList()
        self.list.setAccessibleName(say("Versions, the easiest first"))
        self.list.setToolTip(plain_tip(self.list.accessibleName()))
        self.differs = WordList()
        self.differs.setAccessibleName(say("What it has otherwise than the lesson now"))
        self.differs.setToolTip(plain_tip(self.differs.accessibleName()))
        self.aim = Faint(say("Laying the versions and estimating their grades …"))
        self.problem = Caution()
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
        self.take = buttons.addButton(
            say("&Take this version"), QDialogButtonBox.ButtonRole.AcceptRole
        )
        self.take.setEnabled(False)
        form = QFormLayout()
        form.addRow(say("Aim at &grade"), self.grade)
        layout = QVBoxLayout(self)
        layout.addLayout(form)
        layout.addWidget(self.aim)
        layout.addWidget(self.list, 1)
        layout.addWidget(self.differs, 2)
        layout.addWidget(
            Faint(
                say(
                    "All are in the key of the lesson, so that a group may play them together. "
                    "Your decisions on single notes hold. Undo brings the present one back."
                )
            )
        )
        layout.addWidget(self.problem)
        layout.addWidget(buttons)
        self.grade.valueChanged.connect(self._aim)
        self.list.currentRowChanged.connect(self._chosen)
        buttons.accepted.connect(self._take)
        buttons.rejected.connect(self.reject)
        self._lay()

    def sizeHint(self) -> QSize:
        return QSize(em(self, 34), em(self, 34))

    def _lay(self) -> None:
        """Lay and grade the versions in the background."""
        lesson, source, instrument = self._lesson, self._source, self._session.instrument
        model = studio_model(self._session.shelf)

        def work(progress: Progress) -> tuple[LaidVersion, ...]:
            from workbench.teaching.grading.easier import versions

            return versions(
                source, instrument, find_hand(lesson.hand), transpose=lesson.transposition,
                settings=lesson.settings, top_fret=lesson.top_fret, model=model,
                base=lesson.wishes, wanted=decisions(lesson.wanted), told=progress,
            )  # fmt: skip

        self._session.jobs.start(
            JOB, say("Laying easier and harder versions"), work, self._arrived,
            wrong=self.problem.say,
        )  # fmt: skip

    def _arrived(self, found: tuple[LaidVersion, ...]) -> None:
        self.versions = found
        self.list.clear()
        for one in found:
            notes = len(one.placed.piece.notes)
            words = say(
                "{strict}, up to fret {fret}: {grade}, {notes}",
                strict=say(one.wishes.strict), fret=one.wishes.top_fret, grade=one.grade.words,
                notes=count(notes, "{n} note", "{n} notes"),
            )  # fmt: skip
            self.list.addItem(QListWidgetItem(as_first_word(words)))
        self._aim()
        self.listed.emit()

    def _aim(self) -> None:
        """Choose the version for the grade aimed at."""
        if not self.versions:
            return
        from workbench.teaching.grading.easier import aimed

        chosen = aimed(self.versions, self.grade.value())
        self.list.setCurrentRow(self.versions.index(chosen))
        beyond = chosen.grade.number > self.grade.value()
        self.aim.setText(
            say("Even the easiest asks more than this grade.") if beyond
            else say("The fullest that asks no more than this grade is chosen.")
        )  # fmt: skip

    def _chosen(self, row: int) -> None:
        self.differs.clear()
        self.take.setEnabled(0 <= row < len(self.versions))
        if not self.take.isEnabled():
            return
        from workbench.teaching.grading.easier import differs

        told = differs(self._lesson.piece, self.versions[row].placed.piece)
        for words in told or (say("It is the version that the lesson has now."),):
            self.differs.addItem(str(words))

    def _take(self) -> None:
        session, lesson = self._session, self._lesson
        placed = self.versions[self.list.currentRow()].placed
        now = session.lesson
        if now is None or now.id != lesson.id or now.piece is not lesson.piece:
            self.problem.say(say("The lesson has changed meanwhile; open this window again."))
            self.take.setEnabled(False)
            return
        wanted, instrument = decisions(lesson.wanted), session.instrument
        if session.edit(
            say("Take an easier or harder version"),
            lambda old: edits.redecided(old, placed, wanted, instrument),
        ):
            self.accept()

    def done(self, result: int) -> None:
        self._session.jobs.cancel(JOB)
        super().done(result)
