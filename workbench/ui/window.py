"""The window: its parts, how they are laid out, and what they remember."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QByteArray, Qt
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import (
    QLabel,
    QMainWindow,
    QProgressBar,
    QPushButton,
    QSplitter,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.ui import look
from workbench.ui.bar_list import BarList
from workbench.ui.choices import Choices
from workbench.ui.legend import Legend
from workbench.ui.lesson_panel import LessonPanel
from workbench.ui.look import em
from workbench.ui.menus import Menus
from workbench.ui.neck import NeckView
from workbench.ui.note_panel import NotePanel
from workbench.ui.notice import Notice
from workbench.ui.parts import Faint, Heading
from workbench.ui.score_view import ScoreView
from workbench.ui.session import Session
from workbench.ui.teaching_tabs import TeachingTabs

KEPT = "window.state"
OF_DIALOGS = ("keys", "read again", "arrange", "handout")  # work that ends with its dialog
SUFFIXES = (".musicxml", ".xml", ".mxl", ".mid", ".midi", ".abc")


class Window(QMainWindow):
    """One lesson at a time; everything in it is kept as it is written."""

    def __init__(self, session: Session) -> None:
        super().__init__()
        self.session = session
        self.look = look.Look()
        self.dialog: Any = None  # the one that is open
        self.setWindowTitle("Pluckwright")
        self.setAcceptDrops(True)
        session.setParent(self)

        self.notice = Notice()
        self.title = Heading("")
        self.title.setAccessibleName("Open lesson")
        self.bars = BarList(session)
        self.score = ScoreView(session)
        self.neck_heading = Heading("Fretboard")
        self.moment = Faint()
        self.neck = NeckView(session)
        self.legend = Legend()
        self.notes = NotePanel(session)
        self.choices = Choices(session)
        self.lesson_panel = LessonPanel(session)
        self._lay_out()
        self._make_status()
        self.menus = Menus(self)

        session.opened.connect(self._opened)
        session.changed.connect(self._retitle)
        session.selected.connect(self._tell_moment)
        session.fingered.connect(self._tell_moment)
        session.failed.connect(self.notice.say)
        session.told.connect(lambda words: self.statusBar().showMessage(words, 12_000))
        session.jobs.busy.connect(self._busy)
        self.bars.view.selectionModel().selectionChanged.connect(self._rows_selected)
        self.lesson_panel.wants_music_changed.connect(self.menus.change_music)
        self._restore()
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

        bar_side = QSplitter(Qt.Orientation.Vertical)
        bar_side.addWidget(self.notes)
        bar_side.addWidget(self.choices)
        bar_side.setChildrenCollapsible(False)
        bar_side.setSizes([em(self, 22), em(self, 16)])
        for panel in (self.notes, self.choices, self.lesson_panel):
            layout = panel.layout()
            assert layout
            gap = em(self, 0.35)
            layout.setContentsMargins(gap, gap, gap, gap)
        self.side = QTabWidget()
        self.side.setAccessibleName("This bar, or the whole lesson")
        self.side.addTab(bar_side, "This bar")
        self.side.addTab(self.lesson_panel, "Whole lesson")

        self.across = QSplitter(Qt.Orientation.Horizontal)
        self.across.addWidget(self.bars)
        self.teaching = TeachingTabs(self.session, self.middle, self)
        self.across.addWidget(self.teaching)
        self.across.addWidget(self.side)
        self.across.setStretchFactor(1, 1)
        self.across.setChildrenCollapsible(False)

        whole = QWidget()
        column = QVBoxLayout(whole)
        gap = em(self, 0.4)
        column.setContentsMargins(gap, gap, gap, 0)
        column.addWidget(self.notice)
        column.addWidget(self.title)
        column.addWidget(self.across, 1)
        self.setCentralWidget(whole)
        self._shape()

    def _shape(self) -> None:
        """Sizes that follow the text."""
        self.bars.setMinimumWidth(em(self, 9))
        self.side.setMinimumWidth(em(self, 13))
        self.score.setMinimumHeight(em(self, 5))
        self.middle.setSizes([em(self, 40), em(self, 10)])
        wide = max(self.width(), em(self, 40))
        left, right = min(em(self, 12), wide // 5), min(em(self, 19), wide * 3 // 10)
        self.across.setSizes([left, wide - left - right, right])

    def _make_status(self) -> None:
        self.working = QLabel()
        self.progress = QProgressBar()
        self.progress.setAccessibleName("Progress")
        self.progress.setMaximumWidth(em(self, 9))
        self.progress.setTextVisible(False)
        self.cancel = QPushButton("Cancel")
        self.cancel.setToolTip("Call off what is being worked out")
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
        self.statusBar().showMessage("Called off.", 5_000)

    # Following the session.

    def _opened(self) -> None:
        self._retitle()
        self._tell_moment()

    def _retitle(self) -> None:
        lesson = self.session.lesson
        if lesson is None:
            self.title.setText("No lesson is open")
            self.setWindowTitle("Pluckwright")
            return
        words = [lesson.title, self.session.instrument.name, lesson.key or lesson.piece.key.name]
        if lesson.student:
            words.append(f"for {lesson.student}")
        self.title.setText("  ·  ".join(words))
        self.setWindowTitle(f"{lesson.title} – Pluckwright")

    def _tell_moment(self) -> None:
        """What the hand does in the selected bar, in words above the neck."""
        bar, hands = self.session.bar, self.session.bar_hands
        if bar is None:
            self.neck_heading.setText("Fretboard")
            self.moment.setText("")
            return
        name = "the pickup" if bar.number == "0" else f"bar {bar.number}"
        self.neck_heading.setText(f"Fretboard in {name}")
        if hands is None:
            self.moment.setText("The fingering is being worked out …")
            return
        comfort = self.session.hand.comfort_14
        words = f"Reach {hands.reach_mm:.0f} mm of {comfort:.0f} mm in comfort."
        if hands.reach_mm > comfort:
            words += " Wide: warm up first, and stop if it hurts."
        note = self.session.note_hands
        if note is not None:
            from workbench.ui.grips import spoken

            why = note.cut_reason or note.impossible or ""
            words = f"{spoken(note).capitalize()}. {why} {words}"
        else:
            words += " Click a note to move it."
        self.moment.setText(" ".join(words.split()))

    def _rows_selected(self) -> None:
        self.notes.bars = self.bars.selected_bars

    # Look.

    def set_look(self, theme: str | None = None, scale: int | None = None) -> None:
        """Change colours or text size; remembered."""
        self.look = look.Look(theme or self.look.theme, scale or self.look.scale)
        look.apply(self.look)
        self._shape()
        self.neck.refresh()
        self.score.engrave()
        self.menus.show_look()

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
            from workbench.ui.import_dialog import ImportDialog

            self.show_dialog(ImportDialog(self.session, path, piece, self))

        self.session.jobs.start("read", "Reading the score", lambda _: read(path), arrived)

    def show_dialog(self, dialog: Any) -> None:
        """Open a dialog without stopping the rest of the program."""
        if self.dialog is not None:
            self.dialog.close()
        self.dialog = dialog
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setModal(True)

        def gone() -> None:
            self.session.jobs.cancel(*OF_DIALOGS)
            if self.dialog is dialog:
                self.dialog = None

        dialog.finished.connect(gone)
        dialog.show()
        if dialog.sizeHint().isValid():
            dialog.resize(dialog.sizeHint().boundedTo(self.size()))

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if any(url.isLocalFile() for url in event.mimeData().urls()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        paths = [url.toLocalFile() for url in event.mimeData().urls() if url.isLocalFile()]
        scores = [path for path in paths if path.lower().endswith(SUFFIXES)]
        if scores:
            event.acceptProposedAction()
            self.import_score(scores[0])
        else:
            self.notice.say(
                "That is no score this program reads; drop a MusicXML (.musicxml, .xml, .mxl), "
                "MIDI or ABC file."
            )

    # Remembering.

    def _restore(self) -> None:
        try:
            kept = self.session.shelf.setting(KEPT, {})
        except BadInput:
            kept = {}
        self.resize(em(self, 76), em(self, 46))
        scale, theme = kept.get("scale", 100), kept.get("theme", look.THEMES[2])
        if scale in look.SCALES and theme in look.THEMES:
            self.look = look.Look(theme, scale)
        look.apply(self.look)
        self.menus.show_look()
        self._shape()
        for name, part in (("geometry", self), ("across", self.across), ("middle", self.middle)):
            if name in kept:
                state = QByteArray.fromBase64(str(kept[name]).encode())
                part.restoreGeometry(state) if part is self else part.restoreState(state)  # type: ignore[union-attr]
        self.set_left_handed(bool(kept.get("left_handed")))
        self.score.zoom = float(kept.get("zoom", 1.0))
        self.neck.neck.zoom = float(kept.get("neck_zoom", 1.0))

    def _remember(self) -> None:
        state = {
            "theme": self.look.theme,
            "scale": self.look.scale,
            "left_handed": self.neck.neck.mirrored,
            "zoom": self.score.zoom,
            "neck_zoom": self.neck.neck.zoom,
        }
        for name, kept in (
            ("geometry", self.saveGeometry()), ("across", self.across.saveState()),
            ("middle", self.middle.saveState()),
        ):  # fmt: skip
            state[name] = bytes(kept.toBase64().data()).decode()
        self.session.guard(lambda: self.session.shelf.set_setting(KEPT, state))

    def closeEvent(self, event: QCloseEvent) -> None:
        """Keep what is half written, then go."""
        focus = self.focusWidget()
        if focus is not None:
            focus.clearFocus()
        self.notes.commit()
        self.teaching.commit()
        self._remember()
        self.hide()  # what still runs may take a moment to stop
        self.session.close()
        event.accept()
