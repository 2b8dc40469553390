"""The rows of the bar list, and sections drawn beside them by hand."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, Qt, Signal
from PySide6.QtGui import QFontMetricsF, QKeyEvent, QMouseEvent, QPixmap
from PySide6.QtWidgets import QAbstractItemView, QLineEdit, QListView

from workbench.engraving.options import STAFF, TABLATURE, SmallLook
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.teaching.lessons.bar_rows import BarRow, section_letters
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.sectioning import (
    letters_of,
    make_section,
    move_start,
    name_section,
    next_letter,
    section_starts,
)
from workbench.ui.bars.band import band_width, section_width
from workbench.ui.bars.delegate import ROW, BarDelegate
from workbench.ui.bars.thumbs import BarThumbs
from workbench.ui.bench import finger_keys as note_keys
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import colours, em

NEAR = 0.4  # of a line: how near the pointer must be to an edge to take hold of it


@dataclass
class _Drag:
    """A section being drawn: from written bar ``start``; ``edge``: its beginning is moved."""

    start: int
    edge: bool
    now: int
    moved: bool = False


class BarView(QListView):
    """Rows with pictures; the band at their left edge takes sections by drag and keys."""

    rename = Signal(int)  # the written bar at which a section begins

    def __init__(self, session: Session, thumbs: BarThumbs) -> None:
        super().__init__()
        self._session, self._thumbs = session, thumbs
        self._drag: _Drag | None = None
        self._preview: tuple[str, ...] | None = None
        self.pictures = "tablature"
        self.heard = -1  # the row that sounds: its place in playing order, or written bar
        self.by_written = False
        self.step = say("Name a section")  # what the next edited letter is in the history
        self.setItemDelegate(BarDelegate(self, self))
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setUniformItemSizes(True)
        self.setMouseTracking(True)
        self.editor = LetterField(self)

    # What the delegate asks.

    def is_heard(self, row: BarRow) -> bool:
        """Whether the row's bar sounds now."""
        return self.heard >= 0 and (row.index if self.by_written else row.position) == self.heard

    def picture_height(self) -> int:
        """The height set apart for a picture in each row."""
        if self.pictures == "none" or self._session.lesson is None:
            return 0
        strings = 5 if self.pictures == STAFF else self._session.instrument.strings
        return round(em(self) * (3.0 if self.pictures == STAFF else 0.62 * (strings - 1) + 0.75))

    def picture(self, index: int) -> QPixmap | None:
        """The picture of a written bar where it is drawn."""
        if self.pictures == "none":
            return None
        room = self.viewport().width() - band_width(em(self)) - em(self, 0.65)
        look = SmallLook(
            STAFF if self.pictures == STAFF else TABLATURE, colours(self).ink,
            max(40, round(room)), self.picture_height(),
            self.devicePixelRatioF(), em(self) / 17,
        )  # fmt: skip
        self._thumbs.look = look
        return self._thumbs.picture(index)

    def band_of(self, row: BarRow) -> tuple[str, bool]:
        """The letter in a row's band, and whether its section begins there."""
        if self._preview is None:
            return row.section, row.starts_section
        here = self._preview[row.index]
        return here, row.index == 0 or self._preview[row.index - 1] != here

    def dragged(self, row: BarRow) -> bool:
        """Whether a section is being drawn over the row."""
        drag = self._drag
        if drag is None or not drag.moved or drag.edge:
            return False
        return min(drag.start, drag.now) <= row.index <= max(drag.start, drag.now)

    # Sections by hand.

    def row_at(self, point: QPoint) -> BarRow | None:
        """The row under a point."""
        found: BarRow | None = self.indexAt(point).data(ROW)
        return found

    def _edge_at(self, point: QPoint) -> int | None:
        """The written bar whose section can be taken hold of by its beginning here."""
        index = self.indexAt(point)
        row: BarRow | None = index.data(ROW)
        if row is None or point.x() > section_width(em(self)):
            return None
        rect, near = self.visualRect(index), em(self, NEAR)
        if row.starts_section and row.index > 0 and point.y() - rect.top() <= near:
            return row.index
        below: BarRow | None = index.siblingAtRow(index.row() + 1).data(ROW)
        if below and below.starts_section and below.index > 0 and rect.bottom() - point.y() <= near:
            return below.index
        return None

    def _in_band(self, point: QPoint) -> bool:
        return 0 <= point.x() <= section_width(em(self)) and self.indexAt(point).isValid()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        point = event.position().toPoint()
        if event.button() == Qt.MouseButton.LeftButton and self._in_band(point):
            edge, row = self._edge_at(point), self.row_at(point)
            if edge is not None and edge in dict(self._starts()):
                self._drag = _Drag(edge, True, edge)
                return
            if row is not None:
                self._drag = _Drag(row.index, False, row.index)
        super().mousePressEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        point = event.position().toPoint()
        if self._drag is None:
            self._point_out(point)
            super().mouseMoveEvent(event)
            return
        lesson, row = self._session.lesson, self.row_at(QPoint(em(self, 0.5), point.y()))
        if lesson is None or row is None:
            return
        drag = self._drag
        drag.moved = drag.moved or row.index != drag.now
        drag.now = row.index
        if drag.moved:
            try:
                made = self._made(lesson, drag)
            except BadInput:
                return
            self._preview = letters_of(section_starts(made), len(made.piece.bars))
            self.scrollTo(self.indexAt(QPoint(em(self, 0.5), point.y())))
            self.viewport().update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        drag, self._drag, self._preview = self._drag, None, None
        if drag is None or not drag.moved:
            super().mouseReleaseEvent(event)
            return
        self.viewport().update()
        if drag.edge:
            self._session.edit(say("Move a section"), lambda old: self._made(old, drag))
        else:
            self.make(min(drag.start, drag.now), max(drag.start, drag.now))

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        point = event.position().toPoint()
        row = self.row_at(point)
        if self._in_band(point) and row is not None:
            self._drag = None
            self.rename.emit(self.start_of(row.index))
        else:
            super().mouseDoubleClickEvent(event)

    def _point_out(self, point: QPoint) -> None:
        """Show by the pointer and a tip what the band can do here."""
        if self._edge_at(point) is not None:
            self.viewport().setCursor(Qt.CursorShape.SizeVerCursor)
        elif self._in_band(point):
            self.viewport().setCursor(Qt.CursorShape.CrossCursor)
        else:
            self.viewport().unsetCursor()

    @staticmethod
    def _made(lesson: Lesson, drag: _Drag) -> Lesson:
        """The lesson with the section that is being drawn."""
        if drag.edge:
            return move_start(lesson, drag.start, drag.now)
        first, last = min(drag.start, drag.now), max(drag.start, drag.now)
        return make_section(lesson, first, last, next_letter(lesson))

    def _starts(self) -> tuple[tuple[int, str], ...]:
        lesson = self._session.lesson
        return section_starts(lesson) if lesson else ()

    def start_of(self, index: int) -> int:
        """The written bar at which the section of a bar begins."""
        return max((bar for bar, _ in self._starts() if bar <= index), default=0)

    def make(self, first: int, last: int) -> None:
        """Written bars become a section under the next free letter, which can be changed."""

        def change(lesson: Lesson) -> Lesson:
            return make_section(lesson, first, last, next_letter(lesson))

        if self._session.edit(say("Make a section"), change):
            self.step = say("Make a section")  # making and naming it are one step to undo
            self.rename.emit(first)
            self.step = say("Name a section")

    def section_from(self, bars: tuple[int, ...]) -> None:
        """A section of the selected bars; of one bar alone, from there to the end of the
        section it is in. Where that section is there already, its letter is edited."""
        lesson = self._session.lesson
        if lesson is None or not bars:
            return
        first, last = bars[0], bars[-1]
        if first == last:
            if first in dict(self._starts()):
                self.rename.emit(first)
                return
            after = [bar for bar, _ in self._starts() if bar > first]
            last = min(after, default=len(lesson.piece.bars)) - 1
        self.make(first, last)

    def move_edge(self, by: int) -> None:
        """The selected bar's section begins a bar later (+1) or earlier (-1)."""
        session = self._session
        start = self.start_of(session.selection.bar_index)
        session.edit(
            say("Move a section"), lambda old: move_start(old, start, start + by), merge=True
        )
        # The selection stays in its section.
        if session.selection.bar_index == start and start + by in dict(self._starts()):
            session.selection.select(session.selection.position_of(start + by))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        both = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
        edge = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}.get(Qt.Key(event.key()))
        if edge and event.modifiers() & both == both:
            self.move_edge(edge)
        elif not note_keys.handle(self._session, event):
            super().keyPressEvent(event)


class LetterField(QLineEdit):
    """A section's letter, edited where it stands."""

    def __init__(self, view: BarView) -> None:
        super().__init__(view.viewport())
        self._view = view
        self._start, self._step = 0, ""
        self.setAccessibleName(say("Letter of the section"))
        self.setToolTip(say("A letter or a name; empty joins the section before"))
        self.hide()
        self.returnPressed.connect(self.keep)
        self.installEventFilter(self)

    def edit(self, start: int, letter: str, rect: QRect) -> None:
        """Begin to edit the section that starts at a written bar, drawn in a row's rectangle."""
        self._start, self._step = start, self._view.step
        self.setText(letter)
        self.selectAll()
        wide = max(em(self, 5), round(QFontMetricsF(self.font()).horizontalAdvance(letter) * 1.5))
        self.setGeometry(rect.left() + 2, rect.top() + 2, wide, em(self, 1.7))
        self.show()
        self.setFocus(Qt.FocusReason.PopupFocusReason)

    def keep(self) -> None:
        """Keep the letter; an empty one joins the section before."""
        if self.isHidden():
            return
        start, letter = self._start, self.text()
        self._away()
        session = self._view._session
        lesson = session.lesson
        if lesson is not None and letter.strip() != section_letters(lesson)[start]:
            session.edit(self._step, lambda old: name_section(old, start, letter), merge=True)

    def _away(self) -> None:
        self.hide()
        self._view.setFocus(Qt.FocusReason.OtherFocusReason)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            if event.key() == Qt.Key.Key_Escape:
                self._away()
                return True
        elif event.type() == QEvent.Type.FocusOut and not self.isHidden():
            self.keep()
        return super().eventFilter(watched, event)
