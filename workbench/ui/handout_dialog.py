"""What kind of handout, and where to."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QSize
from PySide6.QtWidgets import (
    QCheckBox,
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

from workbench.ui.look import em
from workbench.ui.parts import Caution
from workbench.ui.session import Session

if TYPE_CHECKING:
    from workbench.handout.page import Extras
    from workbench.store.shelf import Shelf
    from workbench.teaching.lesson import Lesson

REMEMBERED = "handout.options"


def extras_of(shelf: Shelf, lesson: Lesson) -> Extras:
    """What the shelf knows of a lesson that its page wants. Takes a while; for a job."""
    from workbench.handout.page import Extras
    from workbench.store.sheet_facts import known_grips, lesson_history

    return Extras(lesson_history(shelf, lesson.id), known_grips(shelf, lesson))


class HandoutDialog(QDialog):
    """Makes the PDF in the background; choices are remembered."""

    def __init__(
        self, session: Session, left_handed: bool = False, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._session = session
        self.setWindowTitle("Handout")
        self.setAccessibleName("Handout")
        self.audience, self.paper = QComboBox(), QComboBox()
        self.audience.addItem("for the student", "student")
        self.audience.addItem("for the teacher", "teacher")
        self.paper.addItem("A4", "a4")
        self.paper.addItem("Letter", "letter")
        self.large = QCheckBox("&Large print")
        self.left_handed = QCheckBox("Left-&handed diagrams")
        self.studio, self.contact = QLineEdit(), QLineEdit()
        self.path = QLineEdit()
        self.browse = QPushButton("&Choose …")
        self.browse.setAccessibleName("Choose where the PDF goes")
        self.problem = Caution()
        form = QFormLayout()
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        for label, field in (
            ("&Made", self.audience), ("&Paper", self.paper), ("&Studio", self.studio),
            ("C&ontact", self.contact),
        ):  # fmt: skip
            words = QLabel(label)
            words.setBuddy(field)
            field.setAccessibleName(label.replace("&", ""))
            form.addRow(words, field)
        form.addRow(self.large)
        form.addRow(self.left_handed)
        where = QHBoxLayout()
        where.addWidget(self.path, 1)
        where.addWidget(self.browse)
        words = QLabel("&File")
        words.setBuddy(self.path)
        self.path.setAccessibleName("File")
        form.addRow(words, where)
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Save | QDialogButtonBox.StandardButton.Cancel
        )
        self.save = self.buttons.button(QDialogButtonBox.StandardButton.Save)
        self.save.setText("Make the &PDF")
        layout = QVBoxLayout(self)
        layout.addLayout(form)
        layout.addWidget(self.problem)
        layout.addStretch(1)
        layout.addWidget(self.buttons)
        self.browse.clicked.connect(self._choose)
        self.buttons.accepted.connect(self.make)
        self.buttons.rejected.connect(self.reject)
        self._recall(left_handed)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 30), max(em(self, 16), super().sizeHint().height()))

    def _recall(self, left_handed: bool) -> None:
        kept = self._session.shelf.setting(REMEMBERED, {})
        self.audience.setCurrentIndex(max(0, self.audience.findData(kept.get("audience"))))
        self.paper.setCurrentIndex(max(0, self.paper.findData(kept.get("paper"))))
        self.large.setChecked(bool(kept.get("large")))
        self.left_handed.setChecked(left_handed)
        self.studio.setText(str(kept.get("studio", "")))
        self.contact.setText(str(kept.get("contact", "")))
        lesson = self._session.lesson
        assert lesson
        name = "".join(c if c.isalnum() or c in " -_" else "-" for c in lesson.title).strip()
        folder = Path(str(kept.get("folder") or Path.home()))
        self.path.setText(str(folder / f"{name or 'handout'}.pdf"))

    def _choose(self) -> None:
        chosen, _ = QFileDialog.getSaveFileName(
            self, "Handout", self.path.text(), "PDF (*.pdf)",
            options=QFileDialog.Option.DontConfirmOverwrite,
        )  # fmt: skip
        if chosen:
            self.path.setText(chosen)

    @property
    def options(self) -> dict[str, Any]:
        """What the handout is made for."""
        return {
            "audience": self.audience.currentData(),
            "paper": self.paper.currentData(),
            "large": self.large.isChecked(),
            "left_handed": self.left_handed.isChecked(),
            "studio": self.studio.text().strip(),
            "contact": self.contact.text().strip(),
        }

    def make(self) -> None:
        """Make the PDF."""
        session = self._session
        lesson, fingering = session.lesson, session.fingering
        path, options = self.path.text().strip(), self.options
        if not path:
            self.problem.say("Say where the PDF goes: write a file name, or choose one.")
            return
        if fingering is None or lesson is None:
            self.problem.say("The fingering is still being worked out; try again in a moment.")
            return
        kept = {k: v for k, v in options.items() if k != "left_handed"}
        session.guard(
            lambda: session.shelf.set_setting(
                REMEMBERED, {**kept, "folder": str(Path(path).parent)}
            )
        )
        handout = session.services.handout

        def arrived(pages: int) -> None:
            count = f"{pages} page" + ("s" if pages != 1 else "")
            session.told.emit(f"The handout is made: {count}, {path}")
            self.accept()

        self.save.setEnabled(False)
        session.jobs.start(
            "handout", "Making the handout",
            lambda _: handout(lesson, fingering, path, options, extras_of(session.shelf, lesson)),
            arrived, wrong=self._refused,
        )  # fmt: skip

    def _refused(self, sentence: str) -> None:
        self.problem.say(sentence)
        self.save.setEnabled(True)
