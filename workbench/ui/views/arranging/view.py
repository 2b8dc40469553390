"""What arranging altered, seen bar by bar under the original, and the teacher's word on it."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QPoint, Qt, Signal
from PySide6.QtGui import QKeyEvent, QShowEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QListWidgetItem,
    QMenu,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.arranging.changes import DROPPED, OCTAVE, PHRASE, SHORTENED, Change
from workbench.arranging.decisions import decisions
from workbench.arranging.sounds import TUNE
from workbench.arranging.transpose import shift_by, transposed
from workbench.arranging.words import counted, sentence
from workbench.language.speech import mark, say
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.teaching.lessons import arrangement, edits
from workbench.teaching.lessons.arrangement import ACCEPT, DOWN, FREED, OUT, RESTORE, UP, VOICE
from workbench.ui.bench.session import Session
from workbench.ui.kit.flow import FlowLayout
from workbench.ui.kit.look import em
from workbench.ui.kit.panes import Panes
from workbench.ui.kit.parts import Caution, Faint, Heading, Scrolled, plain_tip
from workbench.ui.kit.word_list import WordList
from workbench.ui.views.arranging.easier_dialog import EasierDialog
from workbench.ui.views.arranging.pair_view import PairView, fate_words

if TYPE_CHECKING:
    from workbench.arranging.arrange import Arranged

JOB = "lay anew"
MOST_VOICES = 4
LEAST = 24  # em of height for scores and list together
#: Name on the button, what it does.
ACTS = (
    (RESTORE, mark("&Restore"), mark("Let the note sound again, in full; the rest is laid "
                                     "around it")),
    (OUT, mark("Lea&ve out"), mark("Leave the note out; the rest is laid anew")),
    (UP, mark("Octave &up"), mark("Lay the note an octave higher")),
    (DOWN, mark("Octave &down"), mark("Lay the note an octave lower")),
    (ACCEPT, mark("A&ccept"), mark("Agree with what was done: it stays so")),
    (FREED, mark("Let it &free"), mark("Take back what was decided of the note")),
)  # fmt: skip
STEPS = {
    RESTORE: mark("Restore a note of the original"), OUT: mark("Leave a note out"),
    UP: mark("Lay a note an octave higher"), DOWN: mark("Lay a note an octave lower"),
    ACCEPT: mark("Accept what arranging did"), FREED: mark("Free a note of the arrangement"),
    VOICE: mark("Give a note to another voice"),
}  # fmt: skip
Keeps = Callable[[Change, bool], bool]  # change, accepted
FILTERS: tuple[tuple[str, Keeps], ...] = (
    (mark("All that was altered"), lambda c, seen: True),
    (mark("Not accepted yet"), lambda c, seen: not seen),
    (mark("Left out"), lambda c, seen: c.kind == DROPPED),
    (mark("In another octave"), lambda c, seen: c.kind in (OCTAVE, PHRASE)),
    (mark("Ends early"), lambda c, seen: c.kind == SHORTENED),
    (mark("Of the tune"), lambda c, seen: c.role == TUNE),
)


class ArrangingView(QWidget):
    """The pair of scores, the list of what was altered, and what can be done about it."""

    wants_heard = Signal()  # original, then arrangement

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self._source: Piece | None = None
        self._source_of = ""  # lesson the original was read for
        self._moved: tuple[Piece | None, int, Piece | None] = (None, 0, None)
        self.line = Heading("")
        self.warning = Caution()
        self.hint = Faint()
        self.pair = PairView(session)
        self.in_key = QCheckBox(say("Original in the &key of the arrangement"))
        self.filter = QComboBox()
        self.filter.setAccessibleName(say("What the list shows"))
        self.filter.setToolTip(plain_tip(say("What the list shows")))
        for name, _ in FILTERS:
            self.filter.addItem(say(name))
        self.list = _Changes(self)
        self.list.setAccessibleName(say("What was altered, by bar"))
        self.list.setToolTip(plain_tip(say("What was altered, by bar")))
        self.about = Faint()
        self.buttons: dict[str, QPushButton] = {}
        self.voice = QPushButton(say("To another &voice"))
        self.voice.setToolTip(say("Give the note to another voice of the arrangement"))
        self.voices = QMenu(self.voice)
        self.voice.setMenu(self.voices)
        self.hear = QPushButton(say("&Hear both"))
        self.hear.setToolTip(say("The original, then this arrangement"))
        self.easier = QPushButton(say("Ea&sier, harder …"))
        self.easier.setToolTip(say("Versions of the piece for other grades, in the same key"))
        self.dialog: EasierDialog | None = None
        self.undo = QPushButton(say("Und&o"))
        self.undo.setToolTip(say("Take back the last change of the lesson"))
        self._lay_out()
        self.in_key.toggled.connect(self.refresh)
        self.filter.currentIndexChanged.connect(lambda _: self._list())
        self.list.currentItemChanged.connect(lambda now, _: self._from_list(now))
        self.pair.chosen_note.connect(self._from_score)
        self.pair.wants_menu.connect(self._menu)
        self.voices.aboutToShow.connect(self._list_voices)
        self.hear.clicked.connect(self.wants_heard)
        self.easier.clicked.connect(self.ask_easier)
        self.undo.clicked.connect(session.undo)
        session.opened.connect(self._opened)
        session.changed.connect(self.refresh)
        self.refresh()

    def _lay_out(self) -> None:
        below = QWidget()
        column = QVBoxLayout(below)
        column.setContentsMargins(0, 0, 0, 0)
        top = FlowLayout(gap=em(self, 0.35))
        for control in (self.filter, self.in_key, self.hear, self.easier, self.undo):
            top.addWidget(control)
        column.addLayout(top)
        column.addWidget(self.list, 1)
        column.addWidget(self.about)
        row = FlowLayout(gap=em(self, 0.35))
        for act, name, words in ACTS:
            button = self.buttons[act] = QPushButton(say(name))
            button.setToolTip(say(words))
            button.clicked.connect(partial(self.act, act))
            if act == ACCEPT:
                row.addWidget(self.voice)
            row.addWidget(button)
        column.addLayout(row)
        self.splitter = Panes(Qt.Orientation.Vertical)
        self.splitter.setObjectName("arranging")
        self.splitter.addWidget(self.pair)
        self.splitter.addWidget(Scrolled(below, say("What can be done about it")))
        self.splitter.setStretchFactor(0, 3)
        self.splitter.setStretchFactor(1, 2)
        self.splitter.setChildrenCollapsible(False)
        layout = QVBoxLayout(self)
        for part in (self.line, self.warning, self.hint):
            layout.addWidget(part)
        self._shape()
        layout.addWidget(Scrolled(self.splitter, say("The whole view")), 1)

    def _shape(self) -> None:
        """Where there is little height, the view scrolls rather than that scores and list have
        a line each."""
        self.splitter.setMinimumHeight(em(self, LEAST))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._shape()

    # What is shown.

    def _opened(self) -> None:
        lesson = self._session.lesson
        if lesson is None or lesson.id != self._source_of:
            self._source, self._source_of = None, ""
        self.refresh()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.refresh()

    def refresh(self) -> None:
        """Show the lesson's arrangement; the original is read when it is first looked at."""
        session, lesson = self._session, self._session.lesson
        if not self.isVisible():
            return
        if lesson is None:
            self.line.setText(say("No lesson is open"))
            self._show(None)
        elif self._source_of != lesson.id:
            self.line.setText(say("Reading the original …"))
            lesson_id, shelf = lesson.id, session.shelf

            def read(_progress: object) -> Piece:
                return shelf.load_piece(shelf.lesson_row(lesson_id).piece_id)

            def done(piece: Piece) -> None:
                if session.lesson is not None and session.lesson.id == lesson_id:
                    self._source, self._source_of = piece, lesson_id
                    self.refresh()

            session.jobs.start(
                "original", say("Reading the original"), read, done, lane="shelf",
                wrong=lambda words: self._show(None, words),
            )  # fmt: skip
        else:
            self._show(self._source)

    def _show(self, source: Piece | None, hint: str = "") -> None:
        lesson = self._session.lesson
        if lesson is not None and source is not None:
            if arrangement.comparable(lesson, source):
                fates = arrangement.fates(lesson, source)
                self.pair.show_pair(self._above(source), fates)
                if not arrangement.open_to_decisions(lesson, source):
                    hint = say(
                        "The music was corrected in this lesson, so it is not laid anew from its "
                        "original; correct single notes in the Music menu."
                    )
            else:
                self.pair.show_pair(None, {})
                hint = say("The bars of the original are no longer those of this lesson; they "
                           "cannot be set under each other.")  # fmt: skip
            self.line.setText(
                counted(lesson.arranged) or say("Nothing had to change: every note stays.")
            )
        else:
            self.pair.show_pair(None, {})
        self.line.setAccessibleName(self.line.text())
        self.hint.setText(hint or (legend() if self.pair.above is not None else ""))
        self._warn()
        self._list()
        self._allow()

    def _above(self, source: Piece) -> Piece:
        """The original as it is to be seen: as written, or in the arrangement's key."""
        lesson = self._session.lesson
        assert lesson is not None
        if not self.in_key.isChecked() or not lesson.transposition:
            return source
        if self._moved[0] is not source or self._moved[1] != lesson.transposition:
            shift = shift_by(source.key, lesson.transposition)
            self._moved = source, lesson.transposition, transposed(source, shift)
        assert self._moved[2] is not None
        return self._moved[2]

    def _warn(self) -> None:
        """Say where the tune had to change."""
        lesson = self._session.lesson
        found = [c for c in (lesson.arranged if lesson else ())
                 if c.role == TUNE and c.kind in (OCTAVE, DROPPED)]  # fmt: skip
        bars = ", ".join(dict.fromkeys(c.bar_number for c in found))
        words = say("The tune had to change in bar {bars}. Listen whether it bears it.", bars=bars)
        self.warning.say(words if found else "")

    def _list(self) -> None:
        lesson = self._session.lesson
        self.list.blockSignals(True)
        self.list.clear()
        if lesson is not None:
            said, keeps, told = decisions(lesson.wanted), FILTERS[self.filter.currentIndex()][1], ""
            for change in lesson.arranged:
                seen = change.note in said and said[change.note].accepted
                # two stems of one sound change alike, and are told once
                if not keeps(change, seen) or sentence(change) == told:
                    continue
                told = sentence(change)
                item = QListWidgetItem(f"✓ {told}" if seen else told)
                item.setToolTip(plain_tip(told))
                item.setData(Qt.ItemDataRole.UserRole, change.note)
                self.list.addItem(item)
        self.list.blockSignals(False)
        self._from_score(self.pair.chosen)

    # What is chosen.

    def _from_list(self, item: QListWidgetItem | None) -> None:
        note = str(item.data(Qt.ItemDataRole.UserRole)) if item is not None else ""
        if note:
            self.pair.choose_note(note)

    def _from_score(self, note: str) -> None:
        row = next((i for i in range(self.list.count()) if note and
                    self.list.item(i).data(Qt.ItemDataRole.UserRole) == note), -1)  # fmt: skip
        self.list.blockSignals(True)
        self.list.setCurrentRow(row)
        self.list.blockSignals(False)
        self._allow()

    def _allow(self) -> None:
        """What can be done with the chosen note."""
        lesson, fate = self._session.lesson, self.pair.fates.get(self.pair.chosen)
        free = (
            lesson is not None and self._source is not None and fate is not None
            and arrangement.open_to_decisions(lesson, self._source)
        )  # fmt: skip
        can = dict.fromkeys(self.buttons, False)
        if free and fate is not None:
            there = fate.now is not None
            can = {
                RESTORE: fate.altered, OUT: there, UP: there, DOWN: there,
                ACCEPT: fate.altered and not fate.decision.accepted,
                FREED: self.pair.chosen in decisions(lesson.wanted if lesson else ()),
            }  # fmt: skip
        for act, button in self.buttons.items():
            button.setEnabled(can[act])
        self.voice.setEnabled(free and fate is not None and fate.now is not None)
        self.about.setText(fate_words(fate) if fate is not None else
                           say("Choose a note in the music or a line of the list."))  # fmt: skip
        self.hear.setEnabled(self.pair.above is not None)
        self.easier.setEnabled(
            lesson is not None and self._source is not None and self.pair.above is not None
            and arrangement.open_to_decisions(lesson, self._source)
        )  # fmt: skip

    def _list_voices(self) -> None:
        self.voices.clear()
        fate = self.pair.fates.get(self.pair.chosen)
        if fate is None or fate.now is None:
            return
        most = max(f.now.voice for f in self.pair.fates.values() if f.now is not None)
        for voice in range(1, min(MOST_VOICES, most + 1) + 1):
            action = self.voices.addAction(say("Voice {voice}", voice=voice))
            action.setEnabled(voice != fate.now.voice)
            action.triggered.connect(partial(self.act, VOICE, voice=voice))

    def _menu(self, point: QPoint) -> None:
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        for act, name, _ in ACTS:
            action = menu.addAction(say(name))
            action.setEnabled(self.buttons[act].isEnabled())
            action.triggered.connect(partial(self.act, act))
        self._list_voices()
        action = menu.addMenu(self.voices)
        action.setText(self.voice.text())
        action.setEnabled(self.voice.isEnabled())
        menu.popup(point)

    # What is done.

    def ask_easier(self) -> None:
        """Show versions for other grades, and lay the lesson anew by the one that is taken."""
        if self._source is None:
            return
        dialog = self.dialog = EasierDialog(self._session, self._source, self)
        dialog.open()

    def act(self, act: str, *_: bool, voice: int | None = None) -> None:
        """Decide of the chosen note, and lay the piece anew around all decisions, in the
        background; one sentence where that cannot be."""
        session, lesson, source = self._session, self._session.lesson, self._source
        note = self.pair.chosen
        if lesson is None or source is None or note not in self.pair.fates:
            return
        try:
            wanted = arrangement.decided(lesson, source, (note,), act, voice)
        except BadInput as wrong:
            session.failed.emit(str(wrong))
            return
        if act == ACCEPT:
            session.edit(say(STEPS[act]), lambda old: edits.accepted(old, wanted))
            return
        instrument = session.instrument

        def arrived(placed: Arranged) -> None:
            now = session.lesson
            if now is None or now.id != lesson.id or now.piece is not lesson.piece:
                return  # the lesson has changed meanwhile
            session.edit(
                say(STEPS[act]),
                lambda old: edits.redecided(old, placed, wanted, instrument),
            )

        session.jobs.start(
            JOB, say("Laying the piece on the instrument"),
            lambda _: arrangement.laid_anew(lesson, source, wanted), arrived,
        )  # fmt: skip


def legend() -> str:
    """What the signs in the music mean."""
    return say(
        "Rings: left out. Arrows: another octave. A stroke after a note: it ends early. "
        "Boxes: another voice. Faint: accepted."
    )


class _Changes(WordList):
    """The list: Enter accepts, Delete leaves out."""

    def __init__(self, owner: ArrangingView) -> None:
        super().__init__()
        self._owner = owner

    def keyPressEvent(self, event: QKeyEvent) -> None:
        acts = {Qt.Key.Key_Return: ACCEPT, Qt.Key.Key_Enter: ACCEPT, Qt.Key.Key_Delete: OUT}
        act = acts.get(Qt.Key(event.key()))
        if act is not None and self._owner.buttons[act].isEnabled():
            self._owner.act(act)
        else:
            super().keyPressEvent(event)
