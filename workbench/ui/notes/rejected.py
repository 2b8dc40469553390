""" "Why not the other one": a fingering that was not taken, and the reason."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import (
    QComboBox,
    QHeaderView,
    QLineEdit,
    QPushButton,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from workbench.fingering.telling.words import words as told
from workbench.fingering.types import FingeredBar, Pin
from workbench.language.speech import say
from workbench.music.bar_names import bar_name
from workbench.teaching.lessons.lesson import RejectedNote
from workbench.teaching.lessons.playing import fingered_on
from workbench.teaching.lessons.rejected import Rejected, differing, fingered_otherwise
from workbench.ui.bench.session import Session
from workbench.ui.kit.asking import Asking
from workbench.ui.kit.look import em
from workbench.ui.neck.grip_neck import GripNeck, frets_for
from workbench.ui.notes.scope import note_name

PLACE, FINGER = 1, 2


class RejectedDialog(Asking):
    """One of the other fingerings of the bar, or one put together by hand."""

    def __init__(
        self, session: Session, hands: FingeredBar, rejected: Rejected, why: str,
        parent: QWidget | None = None,
    ) -> None:  # fmt: skip
        super().__init__(say("Why not the other one"), say("&Attach it"), parent)
        self._session, self._hands = session, hands
        assert session.lesson
        self._lesson = session.lesson
        bar = session.lesson.piece.bars[hands.index]
        self._filling = False
        self.choice = QComboBox()
        self.choice.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.choice.setMinimumContentsLength(20)
        self.choices = tuple(
            c for c in session.fingers.choices or () if differing(hands, _rows_of(c.notes))
        )
        self.choice.addItem(say("Put together by hand"))
        self.choice.addItems([told(found.reason) for found in self.choices])
        self.table = QTableWidget(0, 3)
        self.table.setHorizontalHeaderLabels([say("Note"), say("Place"), say("Finger")])
        self.table.verticalHeader().hide()
        header = self.table.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(PLACE, QHeaderView.ResizeMode.Stretch)
        self.table.setTabKeyNavigation(False)
        self.neck = GripNeck(session.instrument, session.left_handed)
        self.why = QLineEdit()
        self.why.setPlaceholderText(say("Why the hand does not take it"))
        self.cost_button = QPushButton(say("&What would it cost?"))
        self.cost_button.setToolTip(say("Finger the piece that way and write down what it brings"))
        layout = QVBoxLayout(self)
        layout.addWidget(self.field(say("&Other fingering"), self.choice))
        layout.addWidget(self.choice)
        layout.addWidget(self.field(say("&Notes of {bar}", bar=bar_name(bar.number)), self.table))
        layout.addWidget(self.table, 3)
        layout.addWidget(self.neck, 2)
        layout.addWidget(self.field(say("&Reason"), self.why))
        layout.addWidget(self.why)
        layout.addWidget(self.cost_button, 0, Qt.AlignmentFlag.AlignLeft)
        layout.addWidget(self.problem)
        layout.addWidget(self.buttons)
        self.ids = [n.id for n in sorted(bar.notes, key=lambda n: (n.onset, -n.midi))]
        named = {n.id: note_name(n, bar) for n in bar.notes}
        played = {n.id: n for n in hands.notes}
        self.ids = [i for i in self.ids if i in played]
        for row, note in enumerate(self.ids):
            self.table.insertRow(row)
            item = QTableWidgetItem(named[note])
            item.setFlags(Qt.ItemFlag.ItemIsEnabled)
            self.table.setItem(row, 0, item)
            self._boxes(row, named[note], played[note].midi)
        self.choice.activated.connect(self._chosen)
        self.cost_button.clicked.connect(self.ask_cost)
        self.why.setText(why)
        if rejected:
            self._set({r[0]: (r[1], r[2], r[3]) for r in rejected})
        elif self.choices:
            self.choice.setCurrentIndex(1)
            self._chosen(1)
        else:
            self._set({})

    def sizeHint(self) -> QSize:
        return QSize(em(self, 32), em(self, 32))

    def _boxes(self, row: int, name: str, midi: int) -> None:
        place, finger = QComboBox(), QComboBox()
        place.setAccessibleName(say("Place of {note}", note=name))
        for string, fret in self._session.instrument.places(midi):
            words = (
                say("string {string} open", string=string)
                if fret == 0
                else say("string {string}, fret {fret}", string=string, fret=fret)
            )
            place.addItem(words, (string, fret))
        finger.setAccessibleName(say("Left finger of {note}", note=name))
        for number in range(5):
            finger.addItem(str(number), number)
        place.activated.connect(self._placed)
        finger.activated.connect(self._by_hand)
        self.table.setCellWidget(row, PLACE, place)
        self.table.setCellWidget(row, FINGER, finger)

    def _box(self, row: int, column: int) -> QComboBox:
        box = self.table.cellWidget(row, column)
        assert isinstance(box, QComboBox)
        return box

    def _set(self, other: dict[str, tuple[int | None, int | None, int | None]]) -> None:
        """Show the present fingering with some notes elsewhere."""
        now = {n.id: (n.string, n.fret, n.left) for n in self._hands.notes}
        for row, note in enumerate(self.ids):
            string, fret, left = other.get(note, now[note])
            box = self._box(row, PLACE)
            for at in range(box.count()):
                if tuple(box.itemData(at)) == (string, fret):
                    box.setCurrentIndex(at)
            self._box(row, FINGER).setCurrentIndex(left or 0)
        self._show()

    def _chosen(self, at: int) -> None:
        if at > 0:
            found = self.choices[at - 1]
            self._set({n.id: (n.string, n.fret, n.left) for n in found.notes})
            self.why.setText(told(found.reason))
            self.why.setCursorPosition(0)

    def _placed(self) -> None:
        """An open string takes no finger, a stopped one needs some."""
        for row in range(self.table.rowCount()):
            fret = (self._box(row, PLACE).currentData() or (0, 0))[1]
            finger = self._box(row, FINGER)
            if fret == 0:
                finger.setCurrentIndex(0)
            elif finger.currentIndex() == 0:
                finger.setCurrentIndex(min(4, fret))
        self._by_hand()

    def _by_hand(self) -> None:
        self.choice.setCurrentIndex(0)
        self._show()

    @property
    def other_rows(self) -> Rejected:
        """The notes that lie elsewhere than now."""
        rows = []
        for row, note in enumerate(self.ids):
            place = self._box(row, PLACE).currentData()
            if place is not None:
                rows.append((note, place[0], place[1], self._box(row, FINGER).currentData()))
        return differing(self._hands, rows)

    def _show(self) -> None:
        rejected = self.other_rows
        other = fingered_otherwise(self._hands, rejected)
        self.neck.show_bar(other, say("the other fingering"), frets_for(other))
        wrong = ""
        if not rejected:
            wrong = say("Put at least one note elsewhere, or on another finger.")
        elif any((fret == 0) != (left == 0) for _, _, fret, left in rejected):
            wrong = say("An open string takes finger 0, a stopped note one of 1 to 4.")
        self.problem.say(wrong)
        self.ok.setEnabled(not wrong)
        self.cost_button.setEnabled(not wrong)

    def ask_cost(self) -> None:
        """Finger the piece with these places and write down what that brings."""
        from workbench.ui.bench.verdict import price

        lesson, session, before = self._lesson, self._session, self._session.fingers.fingering
        if before is None:
            return
        mine = {
            note: Pin(note, string=string, fret=fret, left=left)
            for note, string, fret, left in self.other_rows
        }
        pins = (*(p for p in lesson.pins if p.note not in mine), *mine.values())

        make = session.services.solver

        def work(progress: object) -> object:
            solver = make(lesson, *fingered_on(lesson), lambda a, b: None)
            return solver.with_pins(pins)

        def done(found: object) -> None:
            self.cost_button.setEnabled(True)
            self.why.setText(price(before, found))  # type: ignore[arg-type]

        self.cost_button.setEnabled(False)
        session.jobs.start("cost", say("Fingering it the other way"), work, done, lane="work")

    def done(self, result: int) -> None:
        self._session.jobs.cancel("cost")
        super().done(result)


def _rows_of(notes: object) -> list[RejectedNote]:
    return [
        (n.id, n.string, n.fret, n.left or 0)
        for n in notes  # type: ignore[attr-defined]
        if n.string is not None and n.fret is not None
    ]
