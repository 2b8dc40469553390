"""A score comes in: which tune and parts, on what, in which key; known pieces are offered."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.arranging.arrange import Arranged, arrange
from workbench.arranging.leadsheet import is_lead_sheet, patterns_for, solo, solo_on
from workbench.arranging.words import counted
from workbench.fingering.pins.printed import PrintedPins
from workbench.instrument.suiting import suited
from workbench.language.names import key_words
from workbench.language.speech import count, say
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.music.reading.apart import read_apart
from workbench.music.telling.warnings import warnings
from workbench.store.learning import as_learnt
from workbench.store.rows import PieceRow
from workbench.teaching.lessons import edits
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Caution, Faint, Heading, Words
from workbench.ui.lesson.playing_fields import PlayingFields


class ImportDialog(QDialog):
    """Makes a new lesson from a score file, or (``path`` empty) of a piece of the shelf,
    which is called ``title`` there."""

    def __init__(
        self, session: Session, path: str, piece: Piece, parent: QWidget | None = None, *,
        title: str = "",
    ) -> None:  # fmt: skip
        super().__init__(parent)
        self._session, self._path, self.piece = session, path, piece
        self._read = piece  # as it stands in the score
        self._title = title
        self._same: PieceRow | None = None
        name = say("New lesson from a score") if path else say("New lesson of a piece")
        self.setWindowTitle(name)
        self.setAccessibleName(name)
        self.heading = Heading("")
        self.about = Faint()
        self.known = Caution()
        self.open_button = QPushButton(say("&Open the lesson that is there"))
        self.tune = QComboBox()
        self.tune.setAccessibleName(say("Tune"))
        self.parts = QListWidget()
        self.parts.setAccessibleName(say("Parts to take"))
        self.solo = QComboBox()
        self.solo.setAccessibleName(say("Accompaniment"))
        self.solo.setToolTip(
            say("A lead sheet becomes a solo: its tune over a right-hand pattern from its chords")
        )
        self.form = QFormLayout()
        for label, field in (
            (say("T&une"), self.tune), (say("&Parts"), self.parts),
            (say("Acco&mpaniment"), self.solo),
        ):  # fmt: skip
            words = Words(label)
            words.setBuddy(field)
            self.form.addRow(words, field)
        self.fields = PlayingFields(session, new=True)
        self.printed = QCheckBox(say("Hold to the &fingering that the score prints"))
        self.printed.setToolTip(
            say(
                "Printed fingers and strings become fixed, and the rest is fingered around "
                "them. Without it everything is fingered anew."
            )
        )
        self.printed.setChecked(True)
        self.problem = Caution()
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel
        )
        self.make_button = self.buttons.button(QDialogButtonBox.StandardButton.Ok)
        self.make_button.setText(say("&Make the lesson"))
        layout = QVBoxLayout(self)
        for part in (self.heading, self.about, self.known, self.open_button):
            layout.addWidget(part)
        layout.addLayout(self.form)
        layout.addWidget(self.fields)
        layout.addWidget(self.printed)
        layout.addWidget(self.problem)
        layout.addStretch(1)
        layout.addWidget(self.buttons)

        self.buttons.accepted.connect(self.make)
        self.buttons.rejected.connect(self.reject)
        self.open_button.clicked.connect(self._open_known)
        self.tune.activated.connect(lambda _: self._read_again())
        self.parts.itemChanged.connect(lambda _: self._read_again())
        self.solo.activated.connect(lambda _: self._show(self._read))
        self._list_choices()
        self._show(piece)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 30), max(em(self, 22), super().sizeHint().height()))

    def _list_choices(self) -> None:
        tunes, parts = (self.piece.tunes, self.piece.parts) if self._path else ((), ())
        self.tune.addItems([f"{at}  {name}" for at, name in enumerate(tunes, 1)])
        self.form.setRowVisible(self.tune, len(tunes) > 1)
        for part in parts:
            name = part.name or say("Part {number}", number=part.number)
            notes = count(part.notes, "{n} note", "{n} notes")
            item = QListWidgetItem(f"{name}: {notes}")
            item.setData(Qt.ItemDataRole.UserRole, part.number)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setCheckState(
                Qt.CheckState.Checked if part is parts[0] else Qt.CheckState.Unchecked
            )
            self.parts.addItem(item)
        self.parts.setMaximumHeight(em(self, 1.6) * min(6, max(2, len(parts))))
        self.form.setRowVisible(self.parts, len(parts) > 1)

    @property
    def choice(self) -> tuple[int, list[int]]:
        """The number of the tune, and those of the parts."""
        rows = [self.parts.item(at) for at in range(self.parts.count())]
        taken = [
            row.data(Qt.ItemDataRole.UserRole)
            for row in rows
            if row.checkState() == Qt.CheckState.Checked
        ]
        return max(0, self.tune.currentIndex()) + 1, taken

    def _read_again(self) -> None:
        path, (tune, parts) = self._path, self.choice
        if self.parts.count() > 1 and not parts:
            self.problem.say(say("Tick at least one part."))
            self.make_button.setEnabled(False)
            return
        self.make_button.setEnabled(False)
        self._session.jobs.start(
            "read again",
            say("Reading the score"),
            lambda progress: read_apart(
                path, tune=tune, parts=parts or None, tick=lambda: progress(-1.0)
            ),
            self._show,
            wrong=self._refused,
        )

    def _show(self, piece: Piece) -> None:
        if piece is not self._read or not self.solo.count():
            self._read = piece
            self._offer_patterns(piece)
        chosen = self.solo.currentData()
        piece = self.piece = solo(piece, chosen) if chosen is not None else piece
        self.problem.say("")
        self.make_button.setEnabled(True)
        self.heading.setText(self._title or piece.title or Path(self._path).stem)
        bars = sum(not bar.pickup for bar in piece.bars)
        said = [
            ", ".join(
                (
                    count(bars, "{n} bar", "{n} bars"),
                    count(len(piece.notes), "{n} note", "{n} notes"),
                    key_words(piece.key.name),
                )
            )
        ]
        if piece.composer:
            said.insert(0, piece.composer)
        self.about.setText(" ".join([f"{'; '.join(said)}.", *warnings(piece)]))
        self.printed.setVisible(bool(piece.written))
        self._same = self._session.shelf.find_same(piece)
        if self._same and self._path:
            lessons = count(self._same.lessons, "{n} lesson", "{n} lessons")
            self.known.say(
                say(
                    "This music is on your shelf already: '{title}', with {lessons}. "
                    "Open it, or make another lesson on the same piece.",
                    title=self._same.title,
                    lessons=lessons,
                )
            )
        else:
            self.known.say("")
        self.open_button.setVisible(bool(self._same and self._same.lessons))
        lesson = self._session.lesson
        usual, capo, hand = (
            (lesson.instrument, lesson.capo, lesson.hand) if lesson else ("ukulele", 0, "medium")
        )
        instrument = suited(piece, usual)
        capo = capo if instrument == usual else 0
        sheet = (self._read, chosen) if chosen is not None else None
        self.fields.fill(piece, instrument, capo, hand, sheet=sheet)

    def _offer_patterns(self, piece: Piece) -> None:
        """Offer the patterns of the metre where the score is a lead sheet."""
        self.solo.clear()
        self.solo.addItem(say("the tune alone"), None)
        found = is_lead_sheet(piece)
        for pattern in patterns_for(piece) if found else ():
            self.solo.addItem(pattern.letters, pattern)
        self.form.setRowVisible(self.solo, found)

    def _open_known(self) -> None:
        assert self._same
        rows = self._session.shelf.lessons(piece_id=self._same.id, archived=None)
        if rows and self._session.open(rows[0].id):
            self.accept()

    def make(self) -> None:
        """Arrange the piece and put the lesson on the shelf, in the background."""
        try:
            instrument, choice = self.fields.playing(), self.fields.key_choice()
        except BadInput as wrong:
            self.problem.say(str(wrong))
            return
        session, piece, same, path = self._session, self.piece, self._same, self._path
        read, pattern = self._read, self.solo.currentData()
        hand = self.fields.hand.currentText()
        printed = self.printed.isChecked()

        def lay() -> tuple[Piece, Arranged]:
            if pattern is None:
                return piece, arrange(piece, instrument, **choice)
            made, move = solo_on(read, pattern, instrument, **choice)
            return made, arrange(
                made, instrument, transpose=move, hand=choice["hand"], wishes=choice["wishes"]
            )

        def arrived(found: tuple[Piece, Arranged]) -> None:
            piece, placed = found
            lesson = edits.new_lesson(placed, instrument, hand, None if printed else PrintedPins())
            made, learnt = [""], [lesson]

            def keep_piece() -> None:
                learnt[0] = as_learnt(session.shelf, lesson)
                there = same if pattern is None else session.shelf.find_same(piece)
                if there and _same_notes(session.shelf.load_piece(there.id), piece):
                    made[0] = there.id
                else:
                    made[0] = session.shelf.add_piece(piece, path).id

            if session.guard(keep_piece) and session.add(learnt[0], made[0]):
                words = say("'{title}' is on your shelf.", title=lesson.title)
                altered = counted(placed.changes)
                session.told.emit(f"{words} {altered}".strip())
                if altered:
                    session.laid.emit()
                self.accept()
            else:
                self.make_button.setEnabled(True)

        self.make_button.setEnabled(False)
        session.jobs.start(
            "arrange", say("Laying the piece on the instrument"),
            lambda _: lay(), arrived,
            wrong=self._refused,
        )  # fmt: skip

    def _refused(self, sentence: str) -> None:
        self.problem.say(sentence)
        self.make_button.setEnabled(True)


def _same_notes(kept: Piece, piece: Piece) -> bool:
    """Whether the notes are called alike: what became of each is found by its name."""
    return [n.id for n in kept.notes] == [n.id for n in piece.notes]
