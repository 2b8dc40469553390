"""A walk through the window: a card beside one control after another, telling what to do
there. Everything stays usable meanwhile; it can be left at any step and taken again."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, QSize, Qt, SignalInstance
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QHBoxLayout, QMainWindow, QPushButton, QVBoxLayout, QWidget

from workbench.language.speech import mark, say
from workbench.store.setting_names import TOUR_TAKEN
from workbench.ui.kit.look import colours, em
from workbench.ui.kit.parts import Faint, Heading, Words
from workbench.ui.window.columns import reveal
from workbench.ui.window.panels import Panels


@dataclass(frozen=True)
class Stop:
    """One stop: the control, what it is, what to do there, and what tells that it was done."""

    at: Callable[[Panels], QWidget]
    title: str
    words: str
    done: Callable[[Panels], SignalInstance] | None = None
    view: int = 0  # which view of the middle it needs


def _menu_bar(panels: Panels) -> QWidget:
    window = panels.window()
    assert isinstance(window, QMainWindow)
    return window.menuBar()


STOPS = (
    Stop(
        lambda p: p.bars.view,
        mark("Bars in playing order"),
        mark(
            "Each row is a bar as it is played, repeats written out. Select another bar with the "
            "arrow keys or a click: everything else in the window follows."
        ),
        lambda p: p.session.selection.selected,
    ),
    Stop(
        lambda p: p.score,
        mark("The score with its fingers"),
        mark(
            "Click a note. Its string, fret and fingers are told below the score, and the keys "
            "Left and Right go on to its neighbours."
        ),
        lambda p: p.session.selection.selected,
    ),
    Stop(
        lambda p: p.neck.neck,
        mark("The fretboard"),
        mark(
            "All places of the selected note are shown here. Double click another one: the note "
            "is fixed there, and the rest of the piece is fingered around it. Ctrl+Z takes it back."
        ),
        lambda p: p.session.changed,
    ),
    Stop(
        lambda p: p.choices.list,
        mark("Other fingerings"),
        mark(
            "Other ways to play this bar, each with its reason. Select one and press Enter to "
            "take it, or leave the bar as it is."
        ),
        lambda p: p.session.changed,
    ),
    Stop(
        lambda p: p.notes,
        mark("Remarks"),
        mark(
            "What you will say in this bar. Press Ctrl+N, choose what the remark is about, and "
            "write a sentence; Ctrl+Return keeps it."
        ),
        lambda p: p.session.changed,
    ),
    Stop(
        lambda p: p.lesson_panel,
        mark("The whole lesson"),
        mark(
            "Title, student, hand and grade. Change the student's hand here and watch the reach "
            "above the fretboard."
        ),
        lambda p: p.session.changed,
    ),
    Stop(
        lambda p: p.teaching.tabBar(),
        mark("Techniques, practice plan, script"),
        mark(
            "The same lesson seen otherwise: what it teaches, how it is practised day by day, "
            "and what you will say. Ctrl+1 to Ctrl+4 turn to them."
        ),
        lambda p: p.teaching.currentChanged,
    ),
    Stop(
        _menu_bar,
        mark("On paper, and back on the shelf"),
        mark(
            "Lesson, Handout makes the page for the student; Lesson, Shelf holds all your "
            "lessons. F1 opens the help at any control, and Help, Tour begins this walk anew."
        ),
    ),
)


WIDTHS = (22, 17, 13)  # em of the card


class _Frame(QWidget):
    """A line around the control spoken of; the mouse goes through it."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        width = max(3, em(self, 0.2))
        painter.setPen(QPen(QColor(colours(self).warm), width))
        inset = width / 2
        painter.drawRoundedRect(self.rect().toRectF().adjusted(inset, inset, -inset, -inset), 6, 6)
        painter.end()


class Tour(QWidget):
    """The card. ``at`` counts the stops from 0; ``over`` is called when it is left."""

    def __init__(self, window: QWidget, panels: Panels, over: Callable[[], None]) -> None:
        super().__init__(window)
        self._window, self._panels, self._over = window, panels, over
        self.at = 0
        self.setAccessibleName(say("Tour of the window"))
        self.setAutoFillBackground(True)
        self.frame = _Frame(window)
        self.title = Heading("")
        self.title.setWordWrap(True)
        self.words = Words()
        self.words.setWordWrap(True)
        self.state = Faint()
        self.back_button = QPushButton(say("&Back"))
        self.next_button = QPushButton(say("&Next"))
        self.skip_button = QPushButton(say("S&kip the tour"))
        self.buttons = QWidget()
        row = QHBoxLayout(self.buttons)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.skip_button)
        row.addStretch(1)
        row.addWidget(self.back_button)
        row.addWidget(self.next_button)
        self._head = QHBoxLayout()
        self._head.addWidget(self.title, 1)
        self._card = QVBoxLayout(self)
        self._card.addLayout(self._head)
        for part in (self.words, self.state):
            self._card.addWidget(part)
        self._card.addStretch(1)
        self._card.addWidget(self.buttons)
        self._flat = False
        self.back_button.clicked.connect(lambda: self.go(self.at - 1))
        self.next_button.clicked.connect(lambda: self.go(self.at + 1))
        self.skip_button.clicked.connect(self.leave)
        self._waits: SignalInstance | None = None
        window.installEventFilter(self)

    @property
    def target(self) -> QWidget:
        """The control spoken of now."""
        return STOPS[self.at].at(self._panels)

    def go(self, at: int) -> None:
        """Go to a stop; beyond the last one the tour is over."""
        if at >= len(STOPS):
            self.leave()
            return
        self._wait_for(None)
        self.at = max(0, at)
        stop, panels = STOPS[self.at], self._panels
        panels.teaching.show_view(stop.view)
        reveal(stop.at(panels))
        self.title.setText(say(stop.title))
        self.words.setText(say(stop.words))
        self.setAccessibleDescription(f"{self.title.text()}. {self.words.text()}")
        self.state.setText(say("Step {step} of {steps}", step=self.at + 1, steps=len(STOPS)))
        self.back_button.setEnabled(self.at > 0)
        last = self.at == len(STOPS) - 1
        self.next_button.setText(say("&Finish") if last else say("&Next"))
        self.skip_button.setVisible(not last)
        self.show()
        self.frame.show()
        self.place()
        self.next_button.setFocus()
        if stop.done is not None:
            self._wait_for(stop.done(panels))

    def _wait_for(self, signal: SignalInstance | None) -> None:
        if self._waits is not None:
            self._waits.disconnect(self._done)
        self._waits = signal
        if signal is not None:
            signal.connect(self._done)

    def _done(self) -> None:
        """What the card asked for was done."""
        self._wait_for(None)
        self.state.setText(say("Done. Step {step} of {steps}", step=self.at + 1, steps=len(STOPS)))
        self.place()

    def leave(self) -> None:
        """End the tour, and do not begin it by itself again."""
        self._wait_for(None)
        self._window.removeEventFilter(self)
        session = self._panels.session
        session.guard(lambda: session.shelf.set_setting(TOUR_TAKEN, True))
        self.frame.hide()
        self.hide()
        self.frame.deleteLater()
        self.deleteLater()
        self._over()
        self._panels.bars.view.setFocus()

    def sizeHint(self) -> QSize:
        return self._size(WIDTHS[0])

    def _size(self, wide: int) -> QSize:
        """The card's size at so many em of width, or more where the buttons need it."""
        least = max(self.buttons.minimumSizeHint().width(), self.words.minimumSizeHint().width())
        margins = self._card.contentsMargins()
        width = max(em(self, wide), least + margins.left() + margins.right())
        tall = [self.title.heightForWidth(width - margins.left() - margins.right())]
        tall += [self.words.heightForWidth(width - margins.left() - margins.right())]
        tall += [self.state.sizeHint().height(), self.buttons.sizeHint().height()]
        return QSize(width, self._stacked(tall))

    def _flat_size(self, width: int) -> QSize:
        """The size of the card lying flat: step and buttons beside its title."""
        margins = self._card.contentsMargins()
        inner = width - margins.left() - margins.right()
        beside = self.state.sizeHint().width() + self.buttons.sizeHint().width()
        title = self.title.heightForWidth(inner - beside - 2 * self._head.spacing())
        tall = [max(title, self.buttons.sizeHint().height())]
        return QSize(width, self._stacked([*tall, self.words.heightForWidth(inner)]))

    def _stacked(self, tall: list[int]) -> int:
        margins = self._card.contentsMargins()
        return sum(tall) + self._card.spacing() * len(tall) + margins.top() + margins.bottom()

    def place(self) -> None:
        """Put the frame around the control, and the card where it hides least of it: narrower
        where a wide one would hide some, and flat where every other would."""
        window, target = self._window, self.target
        seen = target.visibleRegion().boundingRect()  # what scrolls is larger than it looks
        room = QRect(target.mapTo(window, seen.topLeft()), seen.size()) & window.rect()
        grow = em(self, 0.25)
        self.frame.setGeometry(room.adjusted(-grow, -grow, grow, grow) & window.rect())
        self.frame.raise_()
        gap = em(self, 0.6)
        inside = window.rect().adjusted(gap, gap, -gap, -gap)
        cards = []
        for wide in WIDTHS:
            size = self._size(wide).boundedTo(window.size())
            spots = (
                QPoint(room.right() + gap, room.top()),
                QPoint(room.left() - gap - size.width(), room.top()),
                QPoint(room.left(), room.bottom() + gap),
                QPoint(room.left(), room.top() - gap - size.height()),
            )
            cards += [_kept_in(QRect(spot, size), inside) for spot in spots]
        size = self._flat_size(inside.width())
        edge = QRect(QPoint(inside.left(), window.height() - size.height() - 2), size)
        cards.append(edge)
        best = min(cards, key=lambda card: _area(card & room))
        self._lie(best is edge)
        self.setGeometry(best)
        self.raise_()

    def _lie(self, flat: bool) -> None:
        """Put step and buttons beside the title, or below the words."""
        if flat == self._flat:
            return
        self._flat = flat
        self._head.addWidget(self.state) if flat else self._card.insertWidget(2, self.state)
        (self._head if flat else self._card).addWidget(self.buttons)

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        if event.type() in (QEvent.Type.Resize, QEvent.Type.LayoutRequest):
            self.place()
        return False

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.leave()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.go(self.at + 1)
        else:
            super().keyPressEvent(event)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), self.palette().base())
        width = max(3, em(self, 0.2))
        painter.fillRect(0, 0, self.width(), width, QColor(colours(self).warm))
        painter.setPen(QColor(colours(self).line))
        painter.drawRect(self.rect().adjusted(0, 0, -1, -1))
        painter.end()


def _kept_in(card: QRect, room: QRect) -> QRect:
    """The card moved into the room where it sticks out."""
    card.moveLeft(max(room.left(), min(card.left(), room.right() - card.width())))
    card.moveTop(max(room.top(), min(card.top(), room.bottom() - card.height())))
    return card


def _area(rect: QRect) -> int:
    return max(0, rect.width()) * max(0, rect.height())


class Guide:
    """Takes the teacher on the tour. ``tour`` is the card while it is taken."""

    def __init__(self, window: QWidget, panels: Panels) -> None:
        self._window, self._panels = window, panels
        self.tour: Tour | None = None

    def begin(self) -> None:
        """Begin the tour, anew where one is under way."""
        if self.tour is not None:
            self.tour.leave()
        self.tour = Tour(self._window, self._panels, self._left)
        self.tour.go(0)

    def _left(self) -> None:
        self.tour = None

    def offer(self) -> None:
        """Begin the tour by itself once a lesson is open, where it was never taken."""
        session = self._panels.session
        if session.shelf.setting(TOUR_TAKEN):
            return
        if session.lesson is not None:
            self.begin()
            return

        def opened() -> None:
            if session.lesson is not None:
                session.opened.disconnect(opened)
                self.begin()

        session.opened.connect(opened)
