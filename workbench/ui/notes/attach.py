"""What hangs on a note, shown under its words: a grip, a rejected fingering, a lesson."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QMenu,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.teaching.bars.grip_words import grip_text
from workbench.teaching.lessons.lesson import BarNote
from workbench.teaching.lessons.rejected import fingered_otherwise
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Heading, Wrapped
from workbench.ui.neck.grip_neck import GripNeck, frets_for
from workbench.ui.notes.figures import GripBox


class Attachments(QWidget):
    """Cards under the words. ``wants`` names what is to be chosen anew ("grip",
    "rejected", "link"), ``removed`` what is to be taken off."""

    wants = Signal(str)
    removed = Signal(str)

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self.link: str | None = None
        self.button = QPushButton(say("&Attach"))
        self.button.setToolTip(say("Hang a grip, another fingering or a lesson on this remark"))
        menu = QMenu(self.button)
        self.actions_by_kind = {}
        for kind, words in (
            ("grip", say("&Grip picture …")),
            ("rejected", say("&Why not the other fingering …")),
            ("link", say("&Lesson that teaches the move …")),
        ):
            action = menu.addAction(words)
            action.triggered.connect(lambda _=False, kind=kind: self.wants.emit(kind))
            self.actions_by_kind[kind] = action
        self.button.setMenu(menu)
        self.box = GripBox()
        self.grip = _Card(say("Grip"), self.box, lambda: self.removed.emit("grip"))
        self.neck = _RejectedNeck(session)
        self.why = Wrapped()
        self.rejected = _Card(
            say("Not this way"), self.neck, lambda: self.removed.emit("rejected"), self.why
        )
        self.where = Wrapped()
        self.open_button = QPushButton(say("O&pen it"))
        self.open_button.setToolTip(say("Open the lesson that teaches the move"))
        self.open_button.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.linked = _Card(
            say("Taught in another lesson"), self.open_button,
            lambda: self.removed.emit("link"), self.where,
        )  # fmt: skip
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        for card in (self.grip, self.rejected, self.linked):
            layout.addWidget(card)
        self.open_button.clicked.connect(self.open_lesson)

    def fill(self, note: BarNote | None) -> None:
        """Show what hangs on a note."""
        self.button.setEnabled(note is not None)
        session, mirrored = self._session, self._session.left_handed
        self.grip.setVisible(note is not None and note.grip is not None)
        if note is not None and note.grip is not None:
            self.box.mirrored = mirrored
            self.box.show_grip(note.grip)
            self.grip.name.setText(say("Grip {grip}", grip=grip_text(note.grip)))
        hands = None
        if note is not None and note.rejected and session.lesson is not None:
            home = session.lesson.piece.bar_of.get(note.rejected[0][0], -1)
            hands = session.fingers.hands_of(home)
        self.rejected.setVisible(note is not None and bool(note.rejected))
        if note is not None and note.rejected:
            self.why.setText(note.why)
            self.neck.setVisible(hands is not None)
            if hands is not None:
                other = fingered_otherwise(hands, note.rejected)
                self.neck.mirror(mirrored)
                self.neck.figure.show_bar(other, say("the rejected fingering"), frets_for(other))
        self.link = note.link if note is not None else None
        self.linked.setVisible(self.link is not None)
        if self.link is not None:
            found = self._lesson_name(self.link)
            gone = say("The lesson this remark leads to is no longer on the shelf.")
            self.where.setText(found or gone)
            self.open_button.setVisible(bool(found))

    def _lesson_name(self, lesson: str) -> str:
        try:
            row = self._session.shelf.lesson_row(lesson)
        except BadInput:
            return ""
        if row.deleted is not None:
            return ""
        if row.student:
            return say("{title}, for {student}", title=row.title, student=row.student)
        return row.title

    def open_lesson(self) -> None:
        """Open the lesson that teaches the move; say so where it is gone."""
        if self.link is None:
            return
        if self._lesson_name(self.link):
            self._session.open(self.link)
        else:
            self._session.failed.emit(
                say(
                    "The lesson this remark leads to is no longer on the shelf; point to another "
                    "one, or remove the link."
                )
            )
            self.fill_again()

    def fill_again(self) -> None:
        """The linked lesson went away: show that."""
        self.where.setText(say("The lesson this remark leads to is no longer on the shelf."))
        self.open_button.hide()


class _RejectedNeck(QWidget):
    """The neck with the fingering that was not taken, made anew for each instrument."""

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self._for: object = None
        self.figure: GripNeck
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(0, 0, 0, 0)

    def mirror(self, mirrored: bool) -> None:
        """Be ready for the present instrument and hand."""
        wanted = (self._session.instrument, mirrored)
        if wanted == self._for:
            return
        if self._for is not None:
            self._layout.removeWidget(self.figure)
            self.figure.deleteLater()
        self._for = wanted
        self.figure = GripNeck(*wanted)
        self._layout.addWidget(self.figure)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 12), em(self, 7))


class _Card(QFrame):
    """One thing that hangs on the note, with a button that takes it off."""

    def __init__(
        self, name: str, part: QWidget, remove: Callable[[], None], words: QWidget | None = None
    ) -> None:
        super().__init__()
        self.setFrameShape(QFrame.Shape.StyledPanel)
        self.name = Heading(name)
        self.name.setWordWrap(True)
        self.off = QPushButton(say("Remove"))
        self.off.setAccessibleName(say("Remove: {what}", what=name))
        self.off.setToolTip(say("Take this off the remark; undo brings it back"))
        self.off.clicked.connect(remove)
        top = QHBoxLayout()
        top.addWidget(self.name, 1)
        top.addWidget(self.off)
        layout = QVBoxLayout(self)
        gap = em(self, 0.3)
        layout.setContentsMargins(gap, gap, gap, gap)
        layout.addLayout(top)
        if words is not None:
            layout.addWidget(words)
        side = Qt.AlignmentFlag(0)
        if isinstance(part, GripBox | QPushButton):
            side = Qt.AlignmentFlag.AlignLeft
        layout.addWidget(part, 0, side)
