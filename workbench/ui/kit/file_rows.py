"""Rows of a dialog that writes a file: labelled fields, and where the file goes."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtWidgets import (
    QDialog,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QMessageBox,
    QPushButton,
    QWidget,
)

from workbench.language.speech import say
from workbench.music.suffixes import has_suffix
from workbench.ui.kit.parts import Words


def form_layout() -> QFormLayout:
    """Labels and fields that wrap where the dialog is narrow."""
    form = QFormLayout()
    form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
    form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
    return form


def add_row(form: QFormLayout, label: str, field: QWidget) -> None:
    """A field under its label, which also names it for those who do not see it."""
    words = Words(label)
    words.setBuddy(field.path if isinstance(field, FileField) else field)
    if not isinstance(field, FileField):
        field.setAccessibleName(label.replace("&", ""))
    form.addRow(words, field)


def ask_to_replace(parent: QWidget, path: Path, go: Callable[[], None]) -> QMessageBox | None:
    """Go on where no file of that name is there; else ask first. The question, if any."""
    if not path.exists():
        go()
        return None
    box = QMessageBox(parent)
    box.setIcon(QMessageBox.Icon.Question)
    box.setWindowTitle(say("Replace the file?"))
    box.setTextFormat(box.textFormat().PlainText)  # the name is made of a title
    box.setText(say("{name} is there already.", name=path.name))
    box.setInformativeText(say("Replace it, or keep it and give the new one another name?"))
    replace = box.addButton(say("&Replace"), QMessageBox.ButtonRole.AcceptRole)
    keep = box.addButton(say("&Keep it"), QMessageBox.ButtonRole.RejectRole)
    box.setDefaultButton(keep)
    box.setEscapeButton(keep)
    box.buttonClicked.connect(lambda button: go() if button is replace else None)
    box.open()
    return box


class FileField(QWidget):
    """A file to write, typed or chosen. ``kind`` is a line of the file dialog's filter."""

    def __init__(self, dialog: QDialog, choose_name: str) -> None:
        super().__init__(dialog)
        self._dialog, self.kind = dialog, ""
        self._proposed: str | None = None
        self.path = QLineEdit()
        self.path.setAccessibleName(say("File"))
        self.browse = QPushButton(say("&Choose …"))
        self.browse.setAccessibleName(choose_name)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.path, 1)
        row.addWidget(self.browse)
        self.browse.clicked.connect(self.choose)

    def choose(self) -> None:
        chosen, _ = QFileDialog.getSaveFileName(
            self, self._dialog.windowTitle(), self.path.text(), self.kind,
            options=QFileDialog.Option.DontConfirmOverwrite,
        )  # fmt: skip
        if chosen:
            self.path.setText(chosen)

    def propose(self, stem: str) -> None:
        """A name, in place of the one that was proposed before; one that the user gave
        stays."""
        path = Path(self.path.text().strip())
        if self._proposed is None or path.stem == self._proposed:
            self._proposed = stem
            self.path.setText(str(path.with_name(stem + path.suffix)))

    def target(self, known: tuple[str, ...]) -> Path | None:
        """The file to write, with the first ending of ``known`` where the name has none of
        them; None where none is named."""
        words = self.path.text().strip()
        if not Path(words).name:
            return None
        path = Path(words).expanduser()
        return path if has_suffix(path, known) else path.with_name(path.name + known[0])

    def suit(self, suffix: str, known: set[str]) -> None:
        """Give the name another ending, in place of one that is known."""
        path = Path(self.path.text().strip())
        if has_suffix(path, known):
            path = path.with_name(path.name[: -len(path.suffix)])
        if path.name:
            self.path.setText(str(path.with_name(path.name + suffix)))
