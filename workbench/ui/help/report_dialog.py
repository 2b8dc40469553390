"""An error report that the teacher can read, copy and keep. It goes nowhere by itself."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from PySide6.QtCore import QSize
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import (
    QDialog,
    QFileDialog,
    QHBoxLayout,
    QPlainTextEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.files import write_whole
from workbench.ui.bench.session import Session
from workbench.ui.help.report import report_text
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Caution, Faint, Words, Wrapped


class ReportDialog(QDialog):
    """What happened in plain words, then the report itself."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(say("Error report"))
        self.setAccessibleName(say("Error report"))
        self.report = report_text(session)
        self.words = Wrapped(_what_happened(session))
        self.text = QPlainTextEdit(self.report)
        self.text.setReadOnly(True)
        self.text.setTabChangesFocus(True)
        self.text.setLineWrapMode(QPlainTextEdit.LineWrapMode.NoWrap)
        self.text.setAccessibleName(say("The report"))
        label = Words(say("The &report"))
        label.setBuddy(self.text)
        self.problem = Caution()
        self.status = Faint()
        self.save_button = QPushButton(say("&Save …"))
        self.copy_button = QPushButton(say("&Copy"))
        self.copy_button.setToolTip(say("Put the report on the clipboard"))
        self.close_button = QPushButton(say("C&lose"))
        self.close_button.setDefault(True)
        buttons = QHBoxLayout()
        buttons.addWidget(self.save_button)
        buttons.addWidget(self.copy_button)
        buttons.addStretch(1)
        buttons.addWidget(self.close_button)
        layout = QVBoxLayout(self)
        for part in (self.words, label):
            layout.addWidget(part)
        layout.addWidget(self.text, 1)
        layout.addWidget(
            Faint(
                say(
                    "The report holds the versions of the program and the system, the size of the "
                    "lesson and where the program went wrong, but no names and no words of your "
                    "lessons. Nothing is sent: save it or copy it, and give it to whoever looks "
                    "after the program."
                )
            )
        )
        layout.addWidget(self.problem)
        layout.addWidget(self.status)
        layout.addLayout(buttons)
        self.save_button.clicked.connect(self.save)
        self.copy_button.clicked.connect(self.copy)
        self.close_button.clicked.connect(self.reject)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 44), em(self, 28))

    def save(self) -> None:
        """Ask where the report goes, and write it there."""
        name = f"pluckwright-report-{date.today():%Y-%m-%d}.txt"
        chosen, _ = QFileDialog.getSaveFileName(
            self, say("Save the report"), str(Path.home() / name), say("Text (*.txt)")
        )
        if not chosen:
            return
        try:
            write_whole(chosen, self.report.encode())
        except BadInput as wrong:
            self.problem.say(str(wrong))
            return
        self.problem.say("")
        self.status.setText(say("The report is in {path}.", path=chosen))

    def copy(self) -> None:
        """Put the report on the clipboard."""
        QGuiApplication.clipboard().setText(self.report)
        self.status.setText(say("The report is on the clipboard."))


def _what_happened(session: Session) -> str:
    if not session.last_fault:
        return say("Nothing has gone wrong since the window was opened.")
    return say(
        "The program made a mistake of its own. Your lesson is kept up to the last change, and "
        "you can go on working; if the same thing happens again, close the window and open it "
        "anew. What follows tells those who mend the program where it went wrong."
    )
