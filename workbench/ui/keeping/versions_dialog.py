"""The kept versions of the open lesson: what changed between two of them, and the way back."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QHBoxLayout,
    QInputDialog,
    QListWidget,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from workbench.language.speech import say
from workbench.store.rows import Version
from workbench.teaching.lessons.lesson import Lesson
from workbench.ui.bench.session import Session
from workbench.ui.keeping.changes_list import ChangesList
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Faint, Words

NOW = None  # the lesson as it is, among the versions


class VersionsDialog(QDialog):
    """Versions at the left, the newest first; at the right what changed since."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        assert session.lesson
        self._session, self._lesson_id = session, session.lesson.id
        self.versions: tuple[Version, ...] = ()
        self.setWindowTitle(say("Versions"))
        self.setAccessibleName(say("Versions"))
        self.list = QListWidget()
        self.list.setAccessibleName(say("Kept versions, the newest first"))
        self.other = QComboBox()
        self.other.setAccessibleName(say("Compare with"))
        self.changes = ChangesList(session)
        self.status = Faint()
        self.back_button = QPushButton(say("&Go back to it"))
        self.back_button.setToolTip(say("Make this version the present state; undo takes it back"))
        self.keep_button = QPushButton(say("&Keep the lesson as it is …"))
        self.delete_button = QPushButton(say("&Delete"))
        self.close_button = QPushButton(say("C&lose"))
        self._lay_out()
        self.list.currentRowChanged.connect(lambda _: self._compare())
        self.list.itemActivated.connect(lambda _: self.go_back())
        self.other.currentIndexChanged.connect(lambda _: self._compare())
        self.back_button.clicked.connect(self.go_back)
        self.keep_button.clicked.connect(self.keep)
        self.delete_button.clicked.connect(self.delete)
        self.close_button.clicked.connect(self.reject)
        self._fill()

    def _lay_out(self) -> None:
        left, right = QWidget(), QWidget()
        column = QVBoxLayout(left)
        label = Words(say("&Versions"))
        label.setBuddy(self.list)
        column.addWidget(label)
        column.addWidget(self.list, 1)
        beside = QVBoxLayout(right)
        row = QHBoxLayout()
        label = Words(say("&What changed up to"))
        label.setBuddy(self.other)
        row.addWidget(label)
        row.addWidget(self.other, 1)
        beside.addLayout(row)
        beside.addWidget(self.changes, 1)
        split = QSplitter()
        for side in (left, right):
            inner = side.layout()
            assert inner
            inner.setContentsMargins(0, 0, 0, 0)
            split.addWidget(side)
        split.setChildrenCollapsible(False)
        split.setSizes([em(self, 20), em(self, 28)])
        bottom = QHBoxLayout()
        for button in (self.back_button, self.keep_button, self.delete_button):
            bottom.addWidget(button)
        bottom.addStretch(1)
        bottom.addWidget(self.close_button)
        layout = QVBoxLayout(self)
        layout.addWidget(split, 1)
        layout.addWidget(self.status)
        layout.addLayout(bottom)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 50), em(self, 26))

    def _fill(self) -> None:
        self.versions = tuple(reversed(self._session.shelf.versions(self._lesson_id)))
        names = [f"{v.made.astimezone():%Y-%m-%d %H:%M}   {v.name}" for v in self.versions]
        for part in (self.list, self.other):
            part.blockSignals(True)
            part.clear()
        self.list.addItems(names)
        self.other.addItem(say("the lesson as it is now"), NOW)
        for name, version in zip(names, self.versions, strict=True):
            self.other.addItem(name, version.id)
        for part in (self.list, self.other):
            part.blockSignals(False)
        some = bool(self.versions)
        for button in (self.back_button, self.delete_button):
            button.setEnabled(some)
        if some:
            self.list.setCurrentRow(0)
        else:
            self.changes.clear()
            self.status.setText(say("No version is kept yet. Keep one before a larger change."))

    @property
    def current(self) -> Version | None:
        """The version that is selected."""
        row = self.list.currentRow()
        return self.versions[row] if 0 <= row < len(self.versions) else None

    def _compare(self) -> None:
        """What changed from the selected version to the other one, or to now. The earlier
        of two versions comes first, whichever is selected."""
        version, other = self.current, self.other.currentData()
        if version is None:
            return
        shelf, lesson_id = self._session.shelf, self._lesson_id
        made = {v.id: v.made for v in self.versions}
        turned = other is not NOW and made[other] < version.made

        def load() -> tuple[Lesson | None, Lesson | None]:
            one = shelf.load_version(version.id)
            two = shelf.load(lesson_id) if other is NOW else shelf.load_version(other)
            return (two, one) if turned else (one, two)

        self.changes.compare(load)

    def go_back(self) -> None:
        """Make the selected version the present state."""
        version = self.current
        if version is not None:
            self._session.go_back(version.id)
            self.status.setText(
                say("The lesson is as in '{name}' again; undo takes it back.", name=version.name)
            )
            self._compare()

    def keep(self) -> None:
        """Keep the lesson as it is now, under a name."""
        name, agreed = QInputDialog.getText(
            self, say("Keep a version"), say("What is this version called?")
        )
        if agreed and name.strip():
            session = self._session
            session.guard(lambda: session.shelf.keep_version(self._lesson_id, name.strip()))
            self.status.setText(say("Version '{name}' is kept.", name=name.strip()))
            self._fill()

    def delete(self) -> None:
        """Throw the selected version away."""
        version, shelf = self.current, self._session.shelf
        if version is None:
            return
        if self._session.guard(lambda: shelf.delete_version(version.id)):
            self.status.setText(
                say("Version '{name}' is deleted; the lesson itself is as it was.",
                    name=version.name)
            )  # fmt: skip
        self._fill()
