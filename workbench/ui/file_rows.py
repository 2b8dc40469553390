"""Rows of a dialog that writes a file: labelled fields, and where the file goes."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import (
    QDialog,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QWidget,
)

from workbench.language.speech import say
from workbench.ui.parts import Words


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


def file_stem(title: str, otherwise: str) -> str:
    """A file name made of a title."""
    name = "".join(c if c.isalnum() or c in " -_" else "-" for c in title).strip()
    return name or otherwise


class FileField(QWidget):
    """A file to write, typed or chosen. ``kind`` is a line of the file dialog's filter."""

    def __init__(self, dialog: QDialog, choose_name: str) -> None:
        super().__init__(dialog)
        self._dialog, self.kind = dialog, ""
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

    def suit(self, suffix: str, known: set[str]) -> None:
        """Give the name another ending, in place of one that is known."""
        path = Path(self.path.text().strip())
        if path.suffix.lower() in known:
            path = path.with_suffix("")
        if path.name:
            self.path.setText(str(path.with_name(path.name + suffix)))
