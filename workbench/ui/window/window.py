"""The window: its parts, how they are laid out, and what they remember."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import (
    QCloseEvent,
    QDragEnterEvent,
    QDropEvent,
    QKeySequence,
    QResizeEvent,
    QShortcut,
)
from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QMainWindow,
    QProgressBar,
    QPushButton,
    QSplitter,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from workbench.language.names import key_words
from workbench.language.speech import say
from workbench.music.model import Piece
from workbench.music.suffixes import SCORES, has_suffix
from workbench.ui.bars.panel import BarList
from workbench.ui.bench.services import expect_a_score
from workbench.ui.bench.session import Session
from workbench.ui.choices.panel import Choices
from workbench.ui.kit import look
from workbench.ui.kit.look import em
from workbench.ui.kit.notice import Notice
from workbench.ui.kit.parts import Faint, Heading, Words
from workbench.ui.lesson.panel import LessonPanel
from workbench.ui.neck.legend import Legend
from workbench.ui.neck.moment_words import moment_words
from workbench.ui.neck.view import NeckView
from workbench.ui.notes.panel import NotePanel
from workbench.ui.player.bar import PlayerBar, space_plays
from workbench.ui.player.conductor import Conductor
from workbench.ui.score.view import ScoreView
from workbench.ui.window import layout, leaving
from workbench.ui.window.following import Follower
from workbench.ui.window.menus import Menus
from workbench.ui.window.teaching_tabs import TeachingTabs

OF_DIALOGS = ("keys", "read again", "arrange", "handout")  # work that ends with its dialog


class Window(QMainWindow):
    """One lesson at a time; everything in it is kept as it is written."""

    def __init__(self, session: Session) -> None:
        super().__init__()
        self.session = session
        self.look = look.Look()
        self.dialog: Any = None  # the one that is open
        self.tour: Any = None  # while it is taken
        self._told_fault = ""
        self.warned = False  # that something is not saved
        self.setWindowTitle("Pluckwright")
        self.setAcceptDrops(True)
        session.setParent(self)

        self.notice = Notice()
        self.title = Heading("")
        self.title.setAccessibleName(say("Open lesson"))
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
        self._lay_out()
        self._make_status()
        self.menus = Menus(self)

        session.opened.connect(self._opened)
        session.changed.connect(self._retitle)
        session.selected.connect(self.tell_moment)
        session.fingered.connect(self.tell_moment)
        session.failed.connect(self._failed)
        session.conflicted.connect(lambda: leaving.choose_state(self))
        self.notice.report_button.clicked.connect(self.menus.show_report)
        session.told.connect(lambda words: self.statusBar().showMessage(words, 12_000))
        session.jobs.busy.connect(self._busy)
        self.bars.view.selectionModel().selectionChanged.connect(self._rows_selected)
        self.lesson_panel.wants_music_changed.connect(self.menus.change_music)
        Follower(self, self.conductor)
        self.conductor.rows = lambda: self.bars.selected_bars
        for part in (self.score, self.bars.view, self.neck.neck):
            space_plays(part, self.conductor)
        layout.restore(self)
        hints = QApplication.styleHints()
        hints.colorSchemeChanged.connect(self._system_colours)
        self._opened()

    # Layout.

    def _lay_out(self) -> None:
        below = QWidget()
        under = QVBoxLayout(below)
        under.setContentsMargins(0, 0, 0, 0)
        for part in (self.neck_heading, self.moment, self.neck, self.legend):
            under.addWidget(part)
        under.addStretch(1)
        self.middle = QSplitter(Qt.Orientation.Vertical)
        self.middle.addWidget(self.score)
        self.middle.addWidget(below)
        self.middle.setStretchFactor(0, 1)
        self.middle.setChildrenCollapsible(False)

        self.bar_side = bar_side = QSplitter(Qt.Orientation.Vertical)
        bar_side.addWidget(self.notes)
        bar_side.addWidget(self.choices)
        bar_side.setChildrenCollapsible(False)
        for panel in (self.notes, self.choices, self.lesson_panel):
            inner = panel.layout()
            assert inner
            gap = em(self, 0.35)
            inner.setContentsMargins(gap, gap, gap, gap)
        self.side = QTabWidget()
        self.side.setAccessibleName(say("This bar, or the whole lesson"))
        self.side.addTab(self.bar_side, say("This bar"))
        self.side.addTab(self.lesson_panel, say("Whole lesson"))

        self.across = QSplitter(Qt.Orientation.Horizontal)
        self.across.addWidget(self.bars)
        self.teaching = TeachingTabs(self.session, self.middle, self)
        self.lesson_panel.estimate.watch(self.teaching.findings)
        self.across.addWidget(self.teaching)
        self.across.addWidget(self.side)
        self.across.setStretchFactor(1, 1)
        self.across.setChildrenCollapsible(False)

        whole = QWidget()
        column = QVBoxLayout(whole)
        gap = em(self, 0.4)
        column.setContentsMargins(gap, gap, gap, 0)
        column.addWidget(self.title)
        column.addWidget(self.across, 1)
        column.addWidget(self.player)
        self.setCentralWidget(whole)
        self.notice.lie_over(whole)
        self.shape_sizes()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._make_room()

    def _make_room(self) -> None:
        """Where large text leaves little height, the music has it, not the legend."""
        self.legend.setVisible(self.height() >= em(self, 34))

    def shape_sizes(self) -> None:
        """Sizes that follow the text."""
        self._make_room()
        self.bars.setMinimumWidth(em(self, 9))
        self.side.setMinimumWidth(em(self, 13))
        self.score.setMinimumHeight(em(self, 5))
        self.middle.setSizes([em(self, 40), em(self, 10)])
        self.bar_side.setSizes([em(self, 22), em(self, 16)])
        wide = max(self.width(), em(self, 40))
        left, right = min(em(self, 12), wide // 5), min(em(self, 19), wide * 3 // 10)
        self.across.setSizes([left, wide - left - right, right])

    def _make_status(self) -> None:
        self.working = Words()
        self.progress = QProgressBar()
        self.progress.setAccessibleName(say("Progress"))
        self.progress.setMaximumWidth(em(self, 9))
        self.progress.setTextVisible(False)
        self.cancel = QPushButton(say("Cancel"))
        self.cancel.setToolTip(say("Call off what is being worked out"))
        self.cancel.clicked.connect(self._call_off)
        for part in (self.working, self.progress, self.cancel):
            self.statusBar().addPermanentWidget(part)
            part.hide()

    def _busy(self, label: str, share: float) -> None:
        for part in (self.working, self.progress, self.cancel):
            part.setVisible(bool(label))
        self.working.setText(f"{label} …" if label else "")
        self.progress.setRange(0, 0 if share < 0 else 100)
        if share >= 0:
            self.progress.setValue(round(100 * share))

    def _call_off(self) -> None:
        self.session.jobs.cancel()
        self._busy("", 0.0)
        self.statusBar().showMessage(say("Called off."), 5_000)

    # Following the session.

    def _failed(self, sentence: str) -> None:
        """Say what went wrong; a fault of ours comes with its report, kept on the disk too."""
        fault = self.session.last_fault
        new = bool(fault) and fault is not self._told_fault
        if new:
            from workbench.ui.help.report import keep_report

            self._told_fault = fault
            keep_report(self.session)
        self.notice.say(sentence, fault=new)

    def _opened(self) -> None:
        self._retitle()
        self.tell_moment()

    def _retitle(self) -> None:
        lesson = self.session.lesson
        if lesson is None:
            self.title.setText(say("No lesson is open"))
            self.setWindowTitle("Pluckwright")
            return
        words = [
            lesson.title,
            say(self.session.instrument.name),
            key_words(lesson.key or lesson.piece.key.name),
        ]
        if lesson.student:
            words.append(say("for {student}", student=lesson.student))
        self.title.setText("  ·  ".join(words))
        self.setWindowTitle(f"{lesson.title} – Pluckwright")

    def tell_moment(self) -> None:
        """What the hand does in the selected bar, in words above the neck."""
        heading, words = moment_words(self.session)
        self.neck_heading.setText(heading)
        self.moment.setText(words)

    def _rows_selected(self) -> None:
        self.notes.bars = self.bars.selected_bars

    # Look.

    def set_look(self, theme: str | None = None, scale: int | None = None) -> None:
        """Change colours or text size; remembered."""
        self.look = look.Look(theme or self.look.theme, scale or self.look.scale)
        self._dress()
        self.shape_sizes()

    def _dress(self) -> None:
        look.apply(self.look)
        self.neck.refresh()
        self.score.engrave()
        self.menus.show_look()

    def _system_colours(self) -> None:
        if self.look.theme == look.THEMES[2]:
            self._dress()

    def speak(self, code: str) -> None:
        """Speak a language from now on ("": the system's); a new window takes this one's place."""
        from workbench.ui.window.app import change_language

        change_language(self, code)

    def forget_layout(self) -> None:
        """Sizes, tabs and zoom as at the first start."""
        layout.reset(self)

    def set_left_handed(self, mirrored: bool) -> None:
        """Mirror the fretboard."""
        self.neck.set_mirrored(mirrored)
        self.menus.left_handed.setChecked(mirrored)

    def next_part(self, by: int) -> None:
        """Move the focus to the next part of the window."""
        parts = [self.bars.view, self.score, self.neck.neck, self.notes.list, self.choices.list]
        if self.side.currentIndex() == 1:
            parts[3:] = [self.lesson_panel.title]
        parts[3:3] = [self.teaching.techniques.list, self.teaching.plan.table,
                      self.teaching.script.table]  # fmt: skip
        parts = [part for part in parts if part.isVisible() and part.isEnabled()]
        at = next((i for i, part in enumerate(parts) if part.hasFocus()), -1 if by > 0 else 0)
        if parts:
            parts[(at + by) % len(parts)].setFocus(Qt.FocusReason.ShortcutFocusReason)

    # Files.

    def import_score(self, path: str) -> None:
        """Read a score in the background, then ask what to make of it."""
        read = self.session.services.read

        def arrived(piece: Piece) -> None:
            from workbench.ui.lesson.import_dialog import ImportDialog

            self.show_dialog(ImportDialog(self.session, path, piece, self))

        self.session.jobs.start(
            "read", say("Reading the score"),
            lambda progress: read(path, tick=lambda: progress(-1.0)), arrived,
        )  # fmt: skip

    def show_dialog(self, dialog: Any) -> None:
        """Open a dialog without stopping the rest of the program."""
        if self.dialog is not None:
            self.dialog.close()
        self.dialog = dialog
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setModal(True)
        key = QShortcut(QKeySequence(Qt.Key.Key_F1), dialog)
        key.activated.connect(lambda: self._help_in(dialog))

        def gone() -> None:
            self.session.jobs.cancel(*OF_DIALOGS)
            if self.dialog is dialog:
                self.dialog = None

        dialog.finished.connect(gone)
        dialog.show()
        if dialog.sizeHint().isValid():
            dialog.resize(dialog.sizeHint().boundedTo(self.size()))

    def _help_in(self, dialog: QDialog) -> None:
        from workbench.ui.help.browser import help_at

        help_at(dialog, dialog.focusWidget())

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if any(url.isLocalFile() for url in event.mimeData().urls()):
            expect_a_score()
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        paths = [url.toLocalFile() for url in event.mimeData().urls() if url.isLocalFile()]
        scores = [path for path in paths if has_suffix(path, SCORES)]
        if scores:
            event.acceptProposedAction()
            self.import_score(scores[0])
        else:
            self.notice.say(
                say(
                    "That is no score this program reads; drop a MusicXML (.musicxml, .xml, "
                    ".mxl), MIDI or ABC file."
                )
            )

    # Going.

    def changeEvent(self, event: QEvent) -> None:
        """Tick "Full screen" where the system changed it."""
        super().changeEvent(event)
        menus = getattr(self, "menus", None)
        if event.type() == QEvent.Type.WindowStateChange and menus is not None:
            menus.full_screen.blockSignals(True)
            menus.full_screen.setChecked(self.isFullScreen())
            menus.full_screen.blockSignals(False)

    def keep_all(self) -> None:
        """Keep what is half written, and how the window is laid out."""
        focus = self.focusWidget()
        if focus is not None:
            focus.clearFocus()
        self.notes.commit()
        self.teaching.commit()
        layout.remember(self)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Keep what is half written, then go."""
        self.keep_all()
        if not leaving.all_kept(self):
            event.ignore()
            return
        self.hide()  # what still runs may take a moment to stop
        self.conductor.close()
        self.session.close()
        event.accept()
