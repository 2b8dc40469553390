"""Emphasis shown as it will be read while it is written: the signs around it are hidden."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QSyntaxHighlighter, QTextCharFormat, QTextDocument

from workbench.teaching.lessons.formatting import marked


class MarkInk(QSyntaxHighlighter):
    """Dresses the words of a document: *emphasis* slanted, **strong** bold, no stars."""

    def __init__(self, document: QTextDocument) -> None:
        super().__init__(document)
        self._sign = QTextCharFormat()
        self._sign.setForeground(QColor(Qt.GlobalColor.transparent))
        self._sign.setFontPointSize(1)

    def highlightBlock(self, text: str) -> None:
        for part in marked(text):
            dress = QTextCharFormat()
            if part.sign:
                dress = self._sign
            else:
                if part.strong:
                    dress.setFontWeight(QFont.Weight.Bold)
                dress.setFontItalic(part.emphasis)
            self.setFormat(part.start, part.end - part.start, dress)
