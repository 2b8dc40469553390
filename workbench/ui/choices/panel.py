"""Other fingerings of the selected bar, with their reasons; Enter takes one."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QHBoxLayout,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.engraving.options import TABLATURE, SmallLook
from workbench.fingering.telling.reaches import widest
from workbench.fingering.telling.words import words as told
from workbench.fingering.types import Alternative, FingeredBar, FingeredNote
from workbench.language.speech import count, say
from workbench.music.bar_names import bars_named
from workbench.teaching.lessons import edits
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Caution, Faint, Heading, plain_tip
from workbench.ui.kit.word_list import WordList

if TYPE_CHECKING:
    from workbench.ui.choices.compare_dialog import CompareDialog

MOST_NAMED = 24  # characters of bar numbers that a button has room for


def compared(other: Alternative, now: tuple[FingeredNote, ...]) -> str:
    """How many notes lie elsewhere, and how many are cut, against the present fingering."""
    here = {note.id: note for note in now}
    moved = sum(
        (n.string, n.fret, n.left, n.right)
        != (here[n.id].string, here[n.id].fret, here[n.id].left, here[n.id].right)
        for n in other.notes
        if n.id in here
    )
    cut = sum(n.cut_reason is not None for n in other.notes)
    was = sum(n.cut_reason is not None for n in now)
    words = say("{moved} of {notes} notes differ", moved=moved, notes=len(other.notes))
    return f"{words}; {say('{cut} cut (now {was})', cut=cut, was=was)}" if cut != was else words


class Choices(QWidget):
    """The list of other fingerings, and what the present one asks of the hand."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.dialog: QDialog | None = None  # the comparison or trial that is open
        self.heading = Heading(say("Other fingerings of this bar"))
        self.remarks = Faint()
        self.caution = Caution()
        self._care = True
        self.list = _Rows(self)
        self.list.setAccessibleName(say("Other fingerings of this bar"))
        self.list.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.status = Faint()
        self.take_button = QPushButton(say("&Take it"))
        self.take_button.setToolTip(say("Keep the selected fingering (Enter)"))
        self.keep_button = QPushButton(say("&Pin this bar"))
        self.keep_button.setToolTip(
            say("Keep the bar's present fingering whatever changes around it")
        )
        self.compare_button = QPushButton(say("&Compare"))
        self.compare_button.setToolTip(
            say("Set the selected fingering beside the present one, or two selected ones beside "
                "each other")
        )  # fmt: skip
        self.why_button = QPushButton(say("&Why not …"))
        self.why_button.setToolTip(say("Type a fingering of your own and see what it would bring"))
        self.same_button = QPushButton()
        self.same_button.setAccessibleName(say("The same in all bars alike"))
        self.same_button.setToolTip(self.same_button.accessibleName())
        self.same_button.clicked.connect(self.match)
        self._lay_out()
        self.take_button.clicked.connect(self.take)
        self.keep_button.clicked.connect(self.keep)
        self.compare_button.clicked.connect(self.compare)
        self.why_button.clicked.connect(self.why_not)
        self.list.itemDoubleClicked.connect(lambda _: self.take())
        self.list.itemSelectionChanged.connect(self._allow)
        for signal in (
            session.opened, session.changed, session.fingers.fingered, session.selection.selected,
            session.fingers.choices_changed,
        ):  # fmt: skip
            signal.connect(self.refresh)
        self.refresh()

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        for part in (self.heading, self.remarks, self.caution, self.status):
            layout.addWidget(part)
        layout.addWidget(self.list, 1)
        layout.addStretch(0)  # has the room while there is no list: the heading stays above
        for pair in (
            (self.take_button, self.compare_button), (self.keep_button, self.why_button),
        ):  # fmt: skip
            row = QHBoxLayout()
            for button in pair:
                row.addWidget(button)
            layout.addLayout(row)
        layout.addWidget(self.same_button)

    def refresh(self) -> None:
        """Show what the session has found."""
        session = self._session
        hands = session.fingers.bar_hands
        choices = session.fingers.choices
        self.list.clear()
        for at, other in enumerate(choices or (), 1):
            words = f"{at}  {told(other.reason)}\n{compared(other, hands.notes if hands else ())}"
            item = QListWidgetItem(words)
            item.setToolTip(plain_tip(words))
            self.list.addItem(item)
        if choices:
            self.list.setCurrentRow(0)
        if session.lesson is None:
            status = ""
        elif hands is not None and hands.impossible:
            status = told(hands.impossible)
        elif choices is None:
            status = say("Looking for other fingerings …")
        elif not choices:
            status = say("There is no other fingering worth naming.")
        else:
            status = ""
        self.status.setText(status)
        self.status.setVisible(bool(status))
        self.list.setVisible(bool(choices))
        self.keep_button.setEnabled(hands is not None)
        self.why_button.setEnabled(hands is not None and bool(hands.notes))
        self.remarks.setText("\n".join(map(told, hands.remarks)) if hands else "")
        self.remarks.setVisible(bool(hands and hands.remarks))
        self._say_caution()
        self._offer_same()
        self._allow()

    def show_care(self, care: bool) -> None:
        """Whether a caution says what to do as well: not where the plan says it beside."""
        self._care = care
        self._say_caution()

    def _say_caution(self) -> None:
        self.caution.say(stretch_caution(self._session, care=self._care))

    def _offer_same(self) -> None:
        """Offer, once for them all, to play bars of the same music as this one is held."""
        bars, lesson = self._session.hand_edits.bars_to_match, self._session.lesson
        self.same_button.setVisible(bool(bars))
        if bars and lesson is not None:
            words = str(bars_named(lesson.piece, bars))
            self.same_button.setToolTip(say("The same music: {bars}", bars=words))
            if len(words) > MOST_NAMED:
                words = count(len(bars), "{n} bar like it", "{n} bars like it")
            self.same_button.setText(say("&Same in {bars}", bars=words))

    def match(self) -> None:
        """Play all bars of the same music as this one is held."""
        self._session.hand_edits.match_bars()

    def _allow(self) -> None:
        """What can be done with what is selected."""
        rows = self.selected_rows
        hands = self._session.fingers.bar_hands
        self.take_button.setEnabled(len(rows) == 1)
        self.compare_button.setEnabled(len(rows) in (1, 2) and hands is not None)

    @property
    def selected_rows(self) -> tuple[int, ...]:
        """The places of the selected fingerings in the list."""
        return tuple(sorted(self.list.row(item) for item in self.list.selectedItems()))

    def take(self) -> None:
        """Take the selected fingering."""
        rows = self.selected_rows
        if len(rows) == 1:
            self._session.hand_edits.take_choice(rows[0])

    def compare(self) -> None:
        """Show two fingerings in a table: the selected one beside the present one, or the
        two that are selected; either can be taken there."""
        from workbench.ui.choices.compare_dialog import Compared, CompareDialog

        hands, choices, rows = (
            self._session.fingers.bar_hands,
            self._session.fingers.choices,
            self.selected_rows,
        )
        if hands is None or not choices or len(rows) not in (1, 2) or rows[-1] >= len(choices):
            return
        found = [(row, choices[row]) for row in rows]
        sides = []
        for row, other in found:
            if other.bar is None:
                return
            head = say("Fingering {number}", number=row + 1)
            take = say("&Take the other")
            if len(found) == 2:
                take = say("Take fingering &{number}", number=row + 1)
            sides.append(Compared(other.bar, head, told(other.reason), take))
        if len(found) == 1:
            sides.insert(0, Compared(hands, say("As it is")))
        dialog = CompareDialog(sides, self.window())
        dialog.taken.connect(lambda side: self._take(found[side - 2 + len(found)][1]))
        self._open(dialog)
        self._draw(dialog, [side.bar for side in sides])

    def _draw(self, dialog: CompareDialog, bars: Sequence[FingeredBar]) -> None:
        """Draw the fingerings for the comparison, in the background."""
        session = self._session
        lesson, instrument = session.lesson, session.instrument
        assert lesson is not None
        palette, room = dialog.palette(), em(dialog, 24)
        look = SmallLook(
            TABLATURE, palette.windowText().color().name(), room, em(dialog, 16),
            dialog.devicePixelRatioF(), 1.4,
        )  # fmt: skip

        def work(_: Progress) -> list[QImage]:
            from workbench.engraving.small import SmallBars

            small = SmallBars()
            return [small.whole(lesson.piece, b.index, b, instrument, look) for b in bars]

        def done(images: list[QImage]) -> None:
            if self.dialog is dialog:
                dialog.show_pictures(images)

        session.jobs.start("compare", say("Drawing the two fingerings"), work, done)

    def _take(self, other: Alternative) -> None:
        """Take one of the choices, wherever in the list it is by now."""
        choices = self._session.fingers.choices or ()
        if other in choices:
            self._session.hand_edits.take_choice(choices.index(other))

    def why_not(self) -> None:
        """Ask for a fingering typed by hand, and tell what it would bring."""
        from workbench.ui.choices.why_not import WhyNotDialog

        if self._session.selection.bar is not None and self._session.selection.bar.notes:
            self._open(WhyNotDialog(self._session, self.window()))
        else:
            self._session.told.emit(say("Select a bar with notes first."))

    def _open(self, dialog: QDialog) -> None:
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.finished.connect(self._closed)
        self.dialog = dialog
        dialog.open()
        dialog.resize(dialog.sizeHint().boundedTo(self.window().size()))

    def _closed(self) -> None:
        self.dialog = None

    def keep(self) -> None:
        """Pin the bar as it is."""
        hands = self._session.fingers.bar_hands
        if hands is not None:
            self._session.edit(
                say("Pin the bar"), lambda lesson: edits.pin_all(lesson, hands.notes)
            )


class _Rows(WordList):
    def __init__(self, owner: Choices) -> None:
        super().__init__()
        self._owner = owner

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._owner.take()
        else:
            super().keyPressEvent(event)


def stretch_caution(session: Session, *, care: bool = True) -> str:
    """A caution where the bar asks for more than the hand spans in comfort. Without ``care``
    the fact alone, where what to do about it is read elsewhere in the window."""
    hands = session.fingers.bar_hands
    if session.lesson is None or hands is None:
        return ""
    hand = session.hand
    reach = widest(hands, session.instrument, hand)
    if reach is None or not reach.wide:
        return ""
    first, second = reach.fingers
    told = {"first": str(first), "second": str(second)}
    told |= {"reach": f"{reach.apart:.0f}", "comfort": f"{reach.comfort:.0f}"}
    if hand.name.startswith("own:"):
        fact = say(
            "Wide stretch: fingers {first} and {second} {reach} mm apart; this hand spans "
            "{comfort} mm there in comfort.",
            **told,
        )
    else:
        fact = say(
            "Wide stretch: fingers {first} and {second} {reach} mm apart; a {size} hand spans "
            "{comfort} mm there in comfort.",
            size=say(hand.name),
            **told,
        )
    return f"{fact} {say('Warm up first, rest often, and stop if it hurts.')}" if care else fact
