"""The help: its contents at the left, a page at the right, words to find above."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, QUrl
from PySide6.QtGui import QKeyEvent, QTextCursor
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QSplitter,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from workbench.language.speech import say
from workbench.ui.help.topics import START, HelpPage, found, pages, topic_of
from workbench.ui.kit.look import colours, em
from workbench.ui.kit.parts import Words

TOPIC = Qt.ItemDataRole.UserRole


class HelpWindow(QWidget):
    """A window of its own that stays open beside the work."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(say("Help"))
        self.setAccessibleName(say("Help"))
        self.search = QLineEdit()
        self.search.setPlaceholderText(say("Words to find in the help"))
        self.search.setAccessibleName(say("Find in the help"))
        label = Words(say("&Find"))
        label.setBuddy(self.search)
        self.contents = QListWidget()
        self.contents.setAccessibleName(say("Pages of the help"))
        self.page = QTextBrowser()
        self.page.setAccessibleName(say("Page"))
        self.page.setOpenLinks(False)
        self.none = Words(say("No page has these words."))
        self.none.hide()
        self.close_button = QPushButton(say("C&lose"))
        top = QHBoxLayout()
        top.addWidget(label)
        top.addWidget(self.search, 1)
        top.addWidget(self.close_button)
        split = QSplitter()
        split.addWidget(self.contents)
        split.addWidget(self.page)
        split.setStretchFactor(1, 1)
        split.setChildrenCollapsible(False)
        split.setSizes([em(self, 13), em(self, 33)])
        layout = QVBoxLayout(self)
        layout.addLayout(top)
        layout.addWidget(self.none)
        layout.addWidget(split, 1)
        self.search.textChanged.connect(self._find)
        self.contents.currentItemChanged.connect(lambda item, _: self._show_item(item))
        self.page.anchorClicked.connect(self._follow)
        self.close_button.clicked.connect(self.close)
        self._list(pages())

    def sizeHint(self) -> QSize:
        return QSize(em(self, 48), em(self, 32))

    @property
    def topic(self) -> str:
        """The topic of the page that is shown."""
        item = self.contents.currentItem()
        return str(item.data(TOPIC)) if item else ""

    def show_topic(self, topic: str) -> None:
        """Turn to a page."""
        self.search.clear()
        topics = [page.topic for page in pages()]
        self.contents.setCurrentRow(topics.index(topic if topic in topics else START))

    def _list(self, listed: tuple[HelpPage, ...]) -> None:
        self.contents.blockSignals(True)
        self.contents.clear()
        for page in listed:
            item = QListWidgetItem(page.title)
            item.setData(TOPIC, page.topic)
            self.contents.addItem(item)
        self.contents.blockSignals(False)

    def _find(self, words: str) -> None:
        shown = self.topic
        listed = found(words)
        self._list(listed)
        self.none.setVisible(not listed)
        topics = [page.topic for page in listed]
        if topics:
            keep = topics.index(shown) if shown in topics and not words else 0
            self.contents.setCurrentRow(keep)
        if words and topics:
            self._light_up(words.split()[0])

    def _show_item(self, item: QListWidgetItem | None) -> None:
        if item is None:
            return
        text = next(p.text for p in pages() if p.topic == item.data(TOPIC))
        c = colours(self)
        self.page.document().setDefaultStyleSheet(f"a {{ color: {c.accent}; }}")
        self.page.document().setDocumentMargin(em(self, 0.7))
        self.page.setMarkdown(text)
        self.page.moveCursor(QTextCursor.MoveOperation.Start)

    def _light_up(self, word: str) -> None:
        """Select the first place of a word on the page."""
        self.page.moveCursor(QTextCursor.MoveOperation.Start)
        self.page.find(word)

    def _follow(self, url: QUrl) -> None:
        self.show_topic(url.fileName().removesuffix(".md"))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.close()
        elif event.key() in (Qt.Key.Key_Down, Qt.Key.Key_Up) and self.search.hasFocus():
            self.contents.setFocus()
        else:
            super().keyPressEvent(event)


def help_at(window: QWidget, control: QWidget | None) -> HelpWindow:
    """Open the help of a window, or turn to it, at the page of a control in it."""
    help_window = window.findChild(
        HelpWindow, options=Qt.FindChildOption.FindDirectChildrenOnly
    ) or HelpWindow(window)
    help_window.show_topic(topic_of(control or window))
    help_window.show()
    help_window.raise_()
    help_window.activateWindow()
    help_window.contents.setFocus()
    return help_window
