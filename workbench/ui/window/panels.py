"""The parts of the window and how they lie beside each other."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QSizePolicy, QSplitter, QTabWidget, QVBoxLayout, QWidget

from workbench.language.names import key_words
from workbench.language.speech import say
from workbench.ui.bars.panel import BarList
from workbench.ui.bench.session import Session
from workbench.ui.choices.panel import Choices
from workbench.ui.kit.look import em
from workbench.ui.kit.notice import Notice
from workbench.ui.kit.panes import Panes
from workbench.ui.kit.parts import Faint, Heading, plain_tip
from workbench.ui.lesson.panel import LessonPanel
from workbench.ui.neck.legend import Legend
from workbench.ui.neck.moment_words import moment_words
from workbench.ui.neck.view import NeckView
from workbench.ui.notes.panel import NotePanel
from workbench.ui.player.bar import PlayerBar, space_plays
from workbench.ui.player.conductor import Conductor
from workbench.ui.score.view import ScoreView
from workbench.ui.window.columns import Columns, Parts, reveal
from workbench.ui.window.teaching_tabs import TeachingTabs


class Panels(QWidget):
    """Everything in the window below its menus. ``show_dialog`` opens what a part asks for."""

    def __init__(
        self, session: Session, show_dialog: Callable[[QDialog], None], parent: QWidget
    ) -> None:
        super().__init__(parent)
        self.session = session
        self.notice = Notice()
        self.title = Heading("")
        self.title.setAccessibleName(say("Open lesson"))
        self.title.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.bars = BarList(session)
        self.score = ScoreView(session)
        self.neck_heading = Heading(say("Fretboard"))
        self.moment = Faint()
        self.neck = NeckView(session)
        self.legend = Legend()
        self.notes = NotePanel(session)
        self.choices = Choices(session)
        self.lesson_panel = LessonPanel(session)
        self.conductor = Conductor(session)
        self.player = PlayerBar(self.conductor)
        self.below = QWidget()
        self.middle = self._middle()
        self.bar_side = Panes(Qt.Orientation.Vertical)
        self.side = self._side()
        self.teaching = TeachingTabs(session, self.middle, show_dialog)
        self.lesson_panel.estimate.watch(self.teaching.findings)
        self.teaching.currentChanged.connect(lambda _: self._care_once())
        self.across = self._across()
        column = QVBoxLayout(self)
        gap = em(self, 0.4)
        column.setContentsMargins(gap, gap, gap, 0)
        column.addWidget(self.title)
        column.addWidget(self.across, 1)
        column.addWidget(self.player)
        self.notice.lie_over(self)
        self.columns = Columns(
            Parts(
                self.title, self.bars, self.below, self.bar_side, self.lesson_panel,
                self.teaching, self.side, self.middle, self.across,
            )
        )  # fmt: skip

        session.opened.connect(self._opened)
        session.changed.connect(self._retitle)
        session.selection.selected.connect(self.tell_moment)
        session.fingers.fingered.connect(self.tell_moment)
        self.bars.view.selectionModel().selectionChanged.connect(self._rows_selected)
        self.conductor.rows = lambda: self.bars.selected_bars
        for part in (self.score, self.bars.view, self.neck.neck):
            space_plays(part, self.conductor)

    def _middle(self) -> QSplitter:
        under = QVBoxLayout(self.below)
        under.setContentsMargins(0, 0, 0, 0)
        for part in (self.neck_heading, self.moment, self.neck, self.legend):
            under.addWidget(part)
        under.addStretch(1)
        middle = Panes(Qt.Orientation.Vertical)
        middle.addWidget(self.score)
        middle.addWidget(self.below)
        middle.setStretchFactor(0, 1)
        middle.setChildrenCollapsible(False)
        return middle

    def _side(self) -> QTabWidget:
        self.bar_side.addWidget(self.notes)
        self.bar_side.addWidget(self.choices)
        self.bar_side.setChildrenCollapsible(False)
        for panel in (self.notes, self.choices, self.lesson_panel):
            inner = panel.layout()
            assert inner
            gap = em(self, 0.35)
            inner.setContentsMargins(gap, gap, gap, gap)
        side = QTabWidget()
        side.setAccessibleName(say("This bar, or the whole lesson"))
        side.addTab(self.bar_side, say("This bar"))
        side.addTab(self.lesson_panel, say("Whole lesson"))
        return side

    def _across(self) -> QSplitter:
        across = Panes(Qt.Orientation.Horizontal)
        across.addWidget(self.bars)
        across.addWidget(self.teaching)
        across.addWidget(self.side)
        across.setStretchFactor(1, 1)
        across.setChildrenCollapsible(False)
        return across

    def _care_once(self) -> None:
        """What to do where playing hurts is read once in the window: in the plan while that
        is seen."""
        elsewhere = self.teaching.currentWidget() is not self.teaching.plan
        self.choices.show_care(elsewhere)
        self.lesson_panel.caution.setVisible(elsewhere)

    # Sizes.

    def make_room(self, width: int, height: int) -> None:
        """In a window of so many pixels: where there is little height, the music has it, not the
        legend; where there is little width, there is one part at a time."""
        self.columns.fit(width)
        self.legend.setVisible(height >= em(self, 40))

    def shape_sizes(self, width: int, height: int) -> None:
        """Sizes that follow the text, in a window of so many pixels."""
        self.make_room(width, height)
        self.score.setMinimumHeight(em(self, 5))
        if self.columns.narrow:
            return
        self.middle.setSizes([em(self, 40), em(self, 10)])
        self.bar_side.setSizes([em(self, 22), em(self, 16)])
        wide = max(width, em(self, 40))
        left, right = min(em(self, 12), wide // 5), min(em(self, 19), wide * 3 // 10)
        self.across.setSizes([left, wide - left - right, right])

    @property
    def splitters(self) -> dict[str, QSplitter]:
        """Every splitter under a name that stays: its place among the window's splitters."""
        named = {"across": self.across, "middle": self.middle, "bar_side": self.bar_side}
        rest = [s for s in self.teaching.findChildren(QSplitter) if s not in named.values()]
        return named | {s.objectName() or f"teaching{at}": s for at, s in enumerate(rest)}

    # What they show.

    def _opened(self) -> None:
        self._retitle()
        self.tell_moment()

    def _retitle(self) -> None:
        lesson = self.session.lesson
        if lesson is None:
            self.title.setText(say("No lesson is open"))
            return
        words = [
            lesson.title,
            str(self.session.instrument.called),
            key_words(lesson.key or lesson.piece.key.name),
        ]
        if lesson.student:
            words.append(say("for {student}", student=lesson.student))
        self.title.setText("  ·  ".join(words))
        self.title.setToolTip(plain_tip(self.title.text()))  # where it is longer than the window

    def tell_moment(self) -> None:
        """What the hand does in the selected bar, in words above the neck."""
        heading, words = moment_words(self.session)
        self.neck_heading.setText(heading)
        self.moment.setText(words)

    def _rows_selected(self) -> None:
        self.notes.bars = self.bars.selected_bars

    def refresh(self) -> None:
        """Draw anew what does not follow the palette by itself."""
        self.neck.refresh()
        self.score.engrave()

    # What is done with them.

    def commit(self) -> None:
        """Keep what is half written."""
        self.notes.commit()
        self.teaching.commit()

    def new_note(self) -> None:
        """Begin a teaching note on the selected bars."""
        reveal(self.notes)
        self.notes.new_note()

    def next_part(self, by: int) -> None:
        """Move the focus to the next part of the window."""
        parts = [self.bars.view, self.score, self.neck.neck, self.notes.list, self.choices.list]
        if self.columns.narrow:
            parts.append(self.lesson_panel.title)
        elif self.side.currentIndex() == 1:
            parts[3:] = [self.lesson_panel.title]
        stand = parts.copy() if self.columns.narrow else []  # behind tabs, but parts none the less
        parts[3:3] = [self.teaching.techniques.list, self.teaching.plan.table,
                      self.teaching.script.table]  # fmt: skip
        parts = [p for p in parts if (p.isVisible() or p in stand) and p.isEnabled()]
        at = next((i for i, part in enumerate(parts) if part.hasFocus()), -1 if by > 0 else 0)
        if parts:
            part = parts[(at + by) % len(parts)]
            reveal(part)
            part.setFocus(Qt.FocusReason.ShortcutFocusReason)
