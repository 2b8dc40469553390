"""Where the words of a note are written, and the list in which they are read."""

from __future__ import annotations

import html
from collections.abc import Iterable

from PySide6.QtCore import (
    QEvent,
    QMimeData,
    QModelIndex,
    QPersistentModelIndex,
    QRectF,
    QSize,
    Qt,
    QTimer,
    Signal,
)
from PySide6.QtGui import (
    QColor,
    QFocusEvent,
    QInputMethodEvent,
    QKeyEvent,
    QPainter,
    QPalette,
    QTextCursor,
    QTextDocument,
)
from PySide6.QtWidgets import (
    QAbstractItemView,
    QListWidget,
    QListWidgetItem,
    QPlainTextEdit,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from workbench.language.speech import say
from workbench.teaching.lessons.formatting import as_html, plain
from workbench.teaching.lessons.lesson import BarNote
from workbench.ui.kit.look import em
from workbench.ui.kit.mark_ink import MarkInk
from workbench.ui.kit.parts import plain_tip

PAUSE = 1500  # milliseconds
ID = Qt.ItemDataRole.UserRole
RICH = Qt.ItemDataRole.UserRole + 1
STRONG, EMPHASIS = "**", "*"
KEYS = {Qt.Key.Key_B: STRONG, Qt.Key.Key_I: EMPHASIS}


class NoteWords(QPlainTextEdit):
    """Writing that is kept when the writer turns away. Ctrl+B and Ctrl+I mark what is
    selected as **strong** and *emphasis*, or take the marks away."""

    left = Signal()
    paused = Signal()  # a moment after the last key

    def __init__(self) -> None:
        super().__init__()
        self.setTabChangesFocus(True)
        self.setAccessibleName(say("Words of the remark"))
        self.setPlaceholderText(say("What should the student know, feel or listen for here?"))
        self.setMinimumHeight(em(self, 3))
        self.ink = MarkInk(self.document())
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(PAUSE)
        self._pause.timeout.connect(self.paused)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if event.reason() != Qt.FocusReason.PopupFocusReason:
            self.left.emit()

    def event(self, event: QEvent) -> bool:
        """While one writes, the two keys are the writer's and not the window's."""
        override = event.type() == QEvent.Type.ShortcutOverride
        if override and isinstance(event, QKeyEvent) and _marks(event):
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        if enter and event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.left.emit()
        elif _marks(event):
            self.mark(_marks(event))
        else:
            super().keyPressEvent(event)
        self._pause.start()

    def inputMethodEvent(self, event: QInputMethodEvent) -> None:
        super().inputMethodEvent(event)
        self._pause.start()

    def insertFromMimeData(self, source: QMimeData) -> None:
        super().insertFromMimeData(source)
        self._pause.start()

    def mark(self, sign: str) -> None:
        """Put the sign around what is selected (around the word without a selection), or
        take it away where it is."""
        cursor = self.textCursor()
        if not cursor.hasSelection():
            cursor.select(QTextCursor.SelectionType.WordUnderCursor)
        words = cursor.selectedText()
        size = len(sign)
        doubled = sign == EMPHASIS and words.startswith(STRONG) and not words.startswith("***")
        if (
            len(words) > 2 * size
            and words.startswith(sign)
            and words.endswith(sign)
            and not doubled
        ):
            words = words[size:-size]
        else:
            words = f"{sign}{words}{sign}"
        start = cursor.selectionStart()
        cursor.insertText(words)
        if words == sign * 2:  # nothing was selected: write between the signs
            cursor.setPosition(start + size)
        else:
            cursor.setPosition(start)
            cursor.setPosition(start + len(words), QTextCursor.MoveMode.KeepAnchor)
        self.setTextCursor(cursor)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 12), em(self, 5))


def _marks(event: QKeyEvent) -> str:
    """The sign that a key stands for; "" for any other key."""
    if event.modifiers() != Qt.KeyboardModifier.ControlModifier:
        return ""
    return KEYS.get(Qt.Key(event.key()), "")


class NoteList(QListWidget):
    """Notes as they are read: their emphasis shown, each as tall as its words."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWordWrap(True)
        self.setItemDelegate(_RichRows(self))
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setMinimumHeight(em(self, 3))

    def fill(self, rows: Iterable[tuple[int, BarNote, str]]) -> None:
        """Show (number, note, what it is about)."""
        self.clear()
        for number, note, about in rows:
            head = f"{number}  {say(note.kind).upper()}"
            item = QListWidgetItem(f"{head}, {about}\n{plain(note.text)}")
            rich = f"<b>{number}</b> &nbsp;{html.escape(say(note.kind).upper())}"
            rich += f" &nbsp;{html.escape(about)}<br>{as_html(note.text)}"
            added = "; ".join(attached(note))
            if added:
                rich += f"<br><i>{html.escape(added)}</i>"
            item.setData(ID, note.id)
            item.setData(RICH, rich)
            item.setToolTip(plain_tip(plain(note.text)))
            self.addItem(item)

    def resizeEvent(self, event: object) -> None:
        super().resizeEvent(event)  # type: ignore[arg-type]
        self.scheduleDelayedItemsLayout()


def attached(note: BarNote) -> list[str]:
    """What hangs on a note, in words."""
    out = []
    if note.grip is not None:
        out.append(say("with a grip"))
    if note.rejected:
        out.append(say("tells why another fingering was not taken"))
    if note.link:
        out.append(say("leads to another lesson"))
    return out


class _RichRows(QStyledItemDelegate):
    """Paints formatted words."""

    def __init__(self, view: QListWidget) -> None:
        super().__init__(view)
        self._view = view

    def _page(
        self, index: QModelIndex | QPersistentModelIndex, ink: QColor | None
    ) -> QTextDocument:
        page = QTextDocument()
        page.setDefaultFont(self._view.font())
        page.setDocumentMargin(em(self._view, 0.25))
        colour = f' style="color:{ink.name()}"' if ink is not None else ""
        page.setHtml(f"<div{colour}>{index.data(RICH)}</div>")
        # As if the scroll bar were there, so that its coming changes nothing.
        room = self._view.width() - self._view.verticalScrollBar().sizeHint().width() - 6
        page.setTextWidth(max(em(self._view, 4), room))
        return page

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        return self._page(index, None).size().toSize()

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        full = QStyleOptionViewItem(option)
        self.initStyleOption(full, index)
        full.text = ""
        style = self._view.style()
        style.drawControl(QStyle.ControlElement.CE_ItemViewItem, full, painter, self._view)
        chosen = full.state & QStyle.StateFlag.State_Selected
        role = QPalette.ColorRole.HighlightedText if chosen else QPalette.ColorRole.Text
        page = self._page(index, self._view.palette().color(role))
        rect = QRectF(full.rect)
        painter.save()
        painter.setClipRect(rect)
        painter.translate(rect.topLeft())
        page.drawContents(painter)
        painter.restore()
