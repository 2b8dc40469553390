"""Learn from scores that print fingers: choose them, see what is met before and after, then
put the fit in force or take it back."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import partial
from pathlib import Path

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QProgressBar,
    QPushButton,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from workbench.fingering.telling.words import sentence
from workbench.instrument.table import HANDS, INSTRUMENTS
from workbench.instrument.table import hand as find_hand
from workbench.instrument.table import instrument as find_instrument
from workbench.language.names import decimal
from workbench.language.speech import count, say
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.music.reading.apart import read_apart
from workbench.music.suffixes import SCORES, patterns
from workbench.store import learning
from workbench.store.setting_names import IMPORT_FOLDER
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.services import expect_a_score
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Caution, Faint, Heading, Words, Wrapped, plain_tip
from workbench.ui.kit.rows_table import RowsTable
from workbench.ui.views.grading.fit_buttons import FitButtons
from workbench.ui.views.grading.learning import reopen

KIND = "scores"  # of the work in the background


@dataclass(frozen=True)
class Score:
    """A chosen file: its piece once it is read, or the sentence that says why it is not."""

    path: Path
    piece: Piece | None = None
    wrong: str = ""

    @property
    def waits(self) -> bool:
        return self.piece is None and not self.wrong

    @property
    def marks(self) -> int:
        return learning.marks_of(self.piece) if self.piece else 0

    @property
    def words(self) -> str:
        if self.waits:
            return say("is being read …")
        if self.wrong:
            return self.wrong
        if not self.marks:
            return say("prints no left fingers or strings, and is passed over")
        return count(self.marks, "{n} printed finger or string", "{n} printed fingers and strings")


class ScoresDialog(QDialog):
    """Works in the background; nothing is in force before the teacher says so."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.scores: tuple[Score, ...] = ()
        self.fitted: learning.ScoresFit | None = None
        self._busy = ""  # the label of what runs
        self._shown: tuple[tuple[str, str], ...] = ()
        self.setWindowTitle(say("Learn from fingered scores"))
        self.setAccessibleName(self.windowTitle())
        self.add_button = QPushButton(say("A&dd scores …"))
        self.remove_button = QPushButton(say("&Remove the selected"))
        self.table = RowsTable(
            say("Scores to learn from"), (say("Score"), say("What it prints")), ()
        )
        self.table.setSelectionBehavior(RowsTable.SelectionBehavior.SelectRows)
        self.table.setToolTip(plain_tip(self.table.accessibleName()))
        self.instrument, self.hand = QComboBox(), QComboBox()
        self._fill_choices()
        self.learn_button = QPushButton(say("&Learn"))
        self.bar = QProgressBar()
        self.bar.setAccessibleName(say("Progress"))
        self.stop_button = QPushButton(say("&Stop"))
        self.problem = Caution()
        self.told = Wrapped()
        self.weights = RowsTable(
            say("Weights that changed"),
            (say("What it weighs"), say("Before"), say("Now")), (), lead=True,
        )  # fmt: skip
        self.weights.setToolTip(plain_tip(self.weights.accessibleName()))
        self._lay_out()
        self.add_button.clicked.connect(self._choose)
        self.remove_button.clicked.connect(self._remove)
        self.learn_button.clicked.connect(self.learn)
        self.stop_button.clicked.connect(self._stop)
        self.table.itemSelectionChanged.connect(self._refresh)
        for box in (self.instrument, self.hand):
            box.currentIndexChanged.connect(lambda _: self._forget())
        session.jobs.busy.connect(self._went)
        session.jobs.fault.connect(self._faulted)
        self._refresh()

    def _fill_choices(self) -> None:
        lesson = self.session.lesson
        for found in INSTRUMENTS.values():
            self.instrument.addItem(say(found.name), found.id)
        wanted = lesson.instrument if lesson else "guitar"
        if self.instrument.findData(wanted) < 0:
            self.instrument.addItem(say(find_instrument(wanted).name), wanted)
        self.instrument.setCurrentIndex(self.instrument.findData(wanted))
        for name in HANDS:
            self.hand.addItem(say(name), name)
        self.hand.setCurrentIndex(self.hand.findData(lesson.hand if lesson else "medium"))

    def _lay_out(self) -> None:
        above = QHBoxLayout()
        for button in (self.add_button, self.remove_button):
            above.addWidget(button)
        above.addStretch(1)
        form = QFormLayout()
        for label, box in (
            (say("&Instrument"), self.instrument), (say("&Hand"), self.hand),
        ):  # fmt: skip
            words = Words(label)
            words.setBuddy(box)
            box.setAccessibleName(label.replace("&", ""))
            form.addRow(words, box)
        going = QHBoxLayout()
        going.addWidget(self.learn_button)
        going.addWidget(self.bar, 1)
        going.addWidget(self.stop_button)
        buttons = FitButtons(say("Put it in &force"), self._apply, self._undo, self.reject)
        self.apply_button, self.undo_button = buttons.apply, buttons.undo
        layout = QVBoxLayout(self)
        layout.addWidget(Heading(say("Scores that print the fingers you would use")))
        layout.addWidget(
            Faint(
                say(
                    "The engine turns its weights towards what these scores print: ten fingers "
                    "at least, better some pages. Only lessons on instruments of the same size "
                    "change, and fingers that are fixed stay as they are."
                )
            )
        )
        layout.addLayout(above)
        layout.addWidget(self.table, 2)
        layout.addLayout(form)
        layout.addLayout(going)
        layout.addWidget(self.problem)
        layout.addWidget(self.told)
        layout.addWidget(self.weights, 3)
        layout.addWidget(buttons)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 46), em(self, 44))

    # The scores.

    def _choose(self) -> None:
        session = self.session
        folder = str(session.shelf.setting(IMPORT_FOLDER) or Path.home())
        expect_a_score()
        paths, _ = QFileDialog.getOpenFileNames(
            self, say("Learn from fingered scores"), folder,
            f"{say('Scores ({endings})', endings=patterns(SCORES))};;{say('All files (*)')}",
        )  # fmt: skip
        if paths:
            folder = str(Path(paths[0]).parent)
            session.guard(lambda: session.shelf.set_setting(IMPORT_FOLDER, folder))
            self.add(paths)

    def add(self, paths: Sequence[str | Path]) -> None:
        """Take these files too, and read them in the background."""
        known = {score.path for score in self.scores}
        new = [path for path in dict.fromkeys(map(Path, paths)) if path not in known]
        self.scores += tuple(Score(path) for path in new)
        self._forget()
        waiting = [score.path for score in self.scores if score.waits]

        def work(progress: Progress) -> list[Score]:
            found = []
            for at, path in enumerate(waiting):
                tick = partial(progress, at / len(waiting))
                try:
                    piece = read_apart(path, parts="all", tick=tick)
                    found.append(Score(path, piece))
                except BadInput as wrong:
                    found.append(Score(path, wrong=" ".join(str(wrong).split())))
            return found

        def arrived(found: list[Score]) -> None:
            read_now = {score.path: score for score in found}
            self.scores = tuple(read_now.get(s.path, s) for s in self.scores)
            self._ended()

        if waiting:
            self._begin(say("Reading the scores"))
            self.session.jobs.start(KIND, self._busy, work, arrived, lane=KIND)
        self._refresh()

    def _remove(self) -> None:
        gone = {index.row() for index in self.table.selectedIndexes()}
        self.scores = tuple(s for at, s in enumerate(self.scores) if at not in gone)
        self._forget()
        if self._busy:  # what is read need no longer be
            self.add(())

    # Learning.

    def learn(self) -> None:
        """Fit to the scores that print something, in the background."""
        self._forget()
        pieces = [score.piece for score in self.scores if score.piece and score.marks]
        on = find_instrument(self.instrument.currentData())
        of = find_hand(self.hand.currentData())
        shelf = self.session.shelf

        def work(progress: Progress) -> learning.ScoresFit:
            old = learning.studio_weights(shelf, on.scale_mm)
            return learning.fit_of_scores(
                pieces, on, of, old, lambda done, all_: progress(done / max(1, all_))
            )

        self._begin(say("Learning from fingered scores"))
        self.session.jobs.start(KIND, self._busy, work, self._show, lane=KIND, wrong=self._refused)
        self._refresh()

    def _show(self, fitted: learning.ScoresFit) -> None:
        self.fitted = fitted
        self.told.setText("\n".join(learning.told(fitted)))
        changes = fitted.found.changes
        if not changes:
            self.told.setText(f"{self.told.text()}\n{say('Nothing had to change.')}")
        from workbench.fingering.learning.preferences import worth_telling

        seen = worth_telling(changes)
        self.weights.setRowCount(len(seen))
        for row, c in enumerate(seen):
            texts = (sentence(c.term), decimal(c.before / 1000, 2), decimal(c.after / 1000, 2))
            for column, text in enumerate(texts):
                self.weights.setItem(row, column, QTableWidgetItem(text))
        self.weights.resizeRowsToContents()
        self._ended()

    def _refused(self, words: str) -> None:
        self.problem.say(words)
        self._ended()

    def _apply(self) -> None:
        session, fitted = self.session, self.fitted
        if fitted and session.guard(lambda: learning.put_in_force(session.shelf, fitted)):
            self.fitted = None
            self._in_force(say("It is in force: for new lessons, and as one step in those there."))

    def _undo(self) -> None:
        session = self.session
        if session.guard(lambda: learning.undo_fit(session.shelf)):
            self._forget()
            self._in_force(say("The weights are again what they were before the last fit."))

    def _in_force(self, words: str) -> None:
        reopen(self.session)
        self.told.setText(f"{self.told.text()}\n{words}".strip())
        self._refresh()

    # What can be done now.

    def _begin(self, label: str) -> None:
        self._busy = label
        self.problem.say("")
        self.bar.setRange(0, 0)

    def _went(self, label: str, share: float) -> None:
        if label and label == self._busy and share >= 0:
            self.bar.setRange(0, 100)
            self.bar.setValue(round(100 * share))

    def _stop(self) -> None:
        """Call off what runs; scores not read yet are taken off the list."""
        self.session.jobs.cancel(KIND)
        self.scores = tuple(score for score in self.scores if not score.waits)
        self._ended()

    def _faulted(self, _fault: object) -> None:
        if self._busy:
            self._stop()

    def _ended(self) -> None:
        self._busy = ""
        self._refresh()

    def _forget(self) -> None:
        """What was found no longer holds."""
        self.fitted = None
        self.told.setText("")
        self.problem.say("")
        self.weights.setRowCount(0)
        self._refresh()

    def _refresh(self) -> None:
        """The list, and which buttons can be pressed."""
        shown = tuple((score.path.name, score.words) for score in self.scores)
        if shown != self._shown:
            self._list(shown)
        busy = bool(self._busy)
        self.remove_button.setEnabled(bool(self.table.selectedIndexes()))
        self.learn_button.setEnabled(not busy and any(score.marks for score in self.scores))
        for box in (self.instrument, self.hand):
            box.setEnabled(not busy)
        self.stop_button.setEnabled(busy)
        self.bar.setVisible(busy)
        self.stop_button.setVisible(busy)
        self.apply_button.setEnabled(bool(self.fitted and self.fitted.found.changes))
        self.undo_button.setEnabled(not busy and learning.can_undo(self.session.shelf))

    def _list(self, shown: tuple[tuple[str, str], ...]) -> None:
        self._shown = shown
        self.table.setRowCount(len(shown))
        for row, texts in enumerate(shown):
            for column, text in enumerate(texts):
                item = QTableWidgetItem(text)
                item.setToolTip(plain_tip(str(self.scores[row].path) if not column else text))
                item.setFlags(item.flags() & ~Qt.ItemFlag.ItemIsEditable)
                self.table.setItem(row, column, item)
        self.table.resizeRowsToContents()
