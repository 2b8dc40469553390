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
    QVBoxLayout,
    QWidget,
)

from workbench.language.speech import say
from workbench.music.files import readable_name
from workbench.store.setting_names import TEXTS_FOLDER
from workbench.ui.bench.findings import LANE
from workbench.ui.bench.session import Session
from workbench.ui.kit.file_rows import FileField, add_row, ask_to_replace, form_layout
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Caution


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
        self.setWindowTitle(say("Export the {what}", what=what))
        self.setAccessibleName(self.windowTitle())
        self.form = QComboBox()
        for form in forms:
            self.form.addItem(f"{form.words} ({form.suffix})")
        self.file = FileField(self, say("Choose where the file goes"))
        self.path, self.browse = self.file.path, self.file.browse
        self.problem = Caution()
        rows = form_layout()
        add_row(rows, say("F&orm"), self.form)
        add_row(rows, say("&File"), self.file)
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Save | QDialogButtonBox.StandardButton.Cancel
        )
        self.save = self.buttons.button(QDialogButtonBox.StandardButton.Save)
        self.save.setText(say("&Write it"))
        layout = QVBoxLayout(self)
        layout.addLayout(rows)
        layout.addWidget(self.problem)
        layout.addStretch(1)
        layout.addWidget(self.buttons)
        lesson = session.lesson
        folder = Path(str(session.shelf.setting(TEXTS_FOLDER) or Path.home()))
        parts = (lesson.student, lesson.title) if lesson else ()
        self.path.setText(str(folder / f"{readable_name(*parts, what)}{forms[0].suffix}"))
        self.form.currentIndexChanged.connect(self._suit)
        self.buttons.accepted.connect(self.write)
        self.buttons.rejected.connect(self.reject)
        self._suit()

    def sizeHint(self) -> QSize:
        return QSize(em(self, 32), max(em(self, 10), super().sizeHint().height()))

    @property
    def target(self) -> Path | None:
        """The file to write, with the ending of its form; None where none is named."""
        return self.file.target((self._forms[self.form.currentIndex()].suffix,))

    def _suit(self) -> None:
        """Give the name the ending of the form."""
        form = self._forms[self.form.currentIndex()]
        self.file.kind = f"{form.words} (*{form.suffix})"
        self.file.suit(form.suffix, {one.suffix for one in self._forms})

    def write(self) -> None:
        """Write the file; one that is there is replaced only after a question."""
        target = self.target
        if target is None:
            self.problem.say(say("Say where the file goes: write a name, or choose one."))
            return
        self.question = ask_to_replace(self, target, lambda: self._write(target))

    def _write(self, target: Path) -> None:
        from workbench.music.files import write_text

        session, what = self._session, self._what
        text = self._forms[self.form.currentIndex()].text

        def written(_: object) -> None:
            session.guard(lambda: session.shelf.set_setting(TEXTS_FOLDER, str(target.parent)))
            session.told.emit(say("The {what} is written: {path}", what=what, path=target))

        self.save.setEnabled(False)
        session.jobs.start(
            "export", say("Writing the {what}", what=what),
            lambda _: write_text(target, text()), lambda _: self.accept(), lane=LANE,
            wrong=self._refused, anyway=written,
        )  # fmt: skip

    def _refused(self, sentence: str) -> None:
        self.problem.say(sentence)
        self.save.setEnabled(True)
