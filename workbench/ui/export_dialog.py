"""Where a written text goes, and in which form."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QSize
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.ui.findings import LANE
from workbench.ui.look import em
from workbench.ui.parts import Caution
from workbench.ui.session import Session

FOLDER = "texts.folder"


@dataclass(frozen=True)
class Form:
    """One form of a text: its file's ending, what it is, and what writes it."""

    suffix: str
    words: str
    text: Callable[[], str]


class ExportDialog(QDialog):
    """Writes a text in the background, whole or not at all."""

    def __init__(
        self, session: Session, what: str, forms: tuple[Form, ...], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._session, self._what, self._forms = session, what, forms
        self.setWindowTitle(f"Export the {what}")
        self.setAccessibleName(f"Export the {what}")
        self.form = QComboBox()
        for form in forms:
            self.form.addItem(f"{form.words} ({form.suffix})")
        self.path = QLineEdit()
        self.browse = QPushButton("&Choose …")
        self.browse.setAccessibleName("Choose where the file goes")
        self.problem = Caution()
        rows = QFormLayout()
        rows.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        rows.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        where = QHBoxLayout()
        where.addWidget(self.path, 1)
        where.addWidget(self.browse)
        for label, field in (("F&orm", self.form), ("&File", self.path)):
            words = QLabel(label)
            words.setBuddy(field)
            field.setAccessibleName(label.replace("&", ""))
            rows.addRow(words, where if field is self.path else self.form)
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Save | QDialogButtonBox.StandardButton.Cancel
        )
        self.save = self.buttons.button(QDialogButtonBox.StandardButton.Save)
        self.save.setText("&Write it")
        layout = QVBoxLayout(self)
        layout.addLayout(rows)
        layout.addWidget(self.problem)
        layout.addStretch(1)
        layout.addWidget(self.buttons)
        lesson = session.lesson
        title = lesson.title if lesson else what
        name = "".join(c if c.isalnum() or c in " -_" else "-" for c in title).strip()
        folder = Path(str(session.shelf.setting(FOLDER) or Path.home()))
        self.path.setText(str(folder / f"{name or what} {what}{forms[0].suffix}"))
        self.form.currentIndexChanged.connect(self._suit)
        self.path.textChanged.connect(self._warn)
        self.browse.clicked.connect(self._choose)
        self.buttons.accepted.connect(self.write)
        self.buttons.rejected.connect(self.reject)
        self._warn()

    def sizeHint(self) -> QSize:
        return QSize(em(self, 32), max(em(self, 10), super().sizeHint().height()))

    @property
    def target(self) -> Path | None:
        """The file to write, with the ending of its form; None where none is named."""
        words = self.path.text().strip()
        if not Path(words).name:
            return None
        path, suffix = Path(words), self._forms[self.form.currentIndex()].suffix
        return path if path.suffix.lower() == suffix else path.with_name(path.name + suffix)

    def _suit(self) -> None:
        """Give the name the ending of the form."""
        path = Path(self.path.text().strip())
        if path.suffix.lower() in {form.suffix for form in self._forms}:
            path = path.with_suffix("")
        if path.name:
            suffix = self._forms[self.form.currentIndex()].suffix
            self.path.setText(str(path.with_name(path.name + suffix)))

    def _warn(self) -> None:
        target = self.target
        there = target is not None and target.is_file()
        self.problem.say("There is a file of that name; it will be replaced." if there else "")

    def _choose(self) -> None:
        form = self._forms[self.form.currentIndex()]
        chosen, _ = QFileDialog.getSaveFileName(
            self, self.windowTitle(), self.path.text(), f"{form.words} (*{form.suffix})",
            options=QFileDialog.Option.DontConfirmOverwrite,
        )  # fmt: skip
        if chosen:
            self.path.setText(chosen)

    def write(self) -> None:
        """Write the file."""
        from workbench.handout.text_file import write_text

        target, session = self.target, self._session
        if target is None:
            self.problem.say("Say where the file goes: write a name, or choose one.")
            return
        text = self._forms[self.form.currentIndex()].text

        def arrived(_: object) -> None:
            session.guard(lambda: session.shelf.set_setting(FOLDER, str(target.parent)))
            session.told.emit(f"The {self._what} is written: {target}")
            self.accept()

        self.save.setEnabled(False)
        session.jobs.start(
            "export", f"Writing the {self._what}",
            lambda _: write_text(target, text()), arrived, lane=LANE, wrong=self._refused,
        )  # fmt: skip

    def _refused(self, sentence: str) -> None:
        self.problem.say(sentence)
        self.save.setEnabled(True)
