"""The window: its parts and commands put together, and what it remembers."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QByteArray, QEvent, Signal
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent, QResizeEvent
from PySide6.QtWidgets import QApplication, QDialog, QMainWindow, QMenu, QProgressBar, QPushButton

from workbench.language import speech
from workbench.language.speech import say
from workbench.music.suffixes import SCORES, has_suffix
from workbench.ui.bench.services import expect_a_score
from workbench.ui.bench.session import Session
from workbench.ui.kit import look
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Words
from workbench.ui.window import languages, layout
from workbench.ui.window.dialogs import Dialogs
from workbench.ui.window.following import Follower
from workbench.ui.window.leaving import Leaving
from workbench.ui.window.menus import Deeds, Menus, TickedMenu
from workbench.ui.window.music import MusicWriting
from workbench.ui.window.openers import Openers
from workbench.ui.window.panels import Panels
from workbench.ui.window.recent import fill_recent
from workbench.ui.window.safe_keeping import SafeKeeping
from workbench.ui.window.sound import SoundCommands
from workbench.ui.window.tour import Guide

#: Commands that show a view of the middle, in the order of its tabs.
VIEWS = (
    "view-score", "view-techniques", "view-plan", "view-script", "view-grade", "view-arrangement",
)  # fmt: skip
LEAST = (25, 18.7)  # em of the smallest window
SCORE_PARTS = ("tab", "left", "right")  # of the row above the score, in the menu as well


class Window(QMainWindow):
    """One lesson at a time; everything in it is kept as it is written.

    ``language_wanted`` and ``restore_wanted`` ask for a new window in this one's place: in
    another language ("": the system's), or on a backup of the store.
    """

    language_wanted = Signal(str)
    restore_wanted = Signal(object)

    def __init__(self, session: Session) -> None:
        super().__init__()
        self.session = session
        self.look = look.Look()
        self._told_fault = ""
        self._sizes: dict[object, dict[str, QByteArray]] = {}  # by text size and the window's size
        self.setWindowTitle("Pluckwright")
        self.setAcceptDrops(True)
        session.setParent(self)

        self.dialogs = Dialogs(session, self)
        panels = self.panels = Panels(session, self.dialogs.show, self)
        self.setCentralWidget(panels)
        self.notice, self.title = panels.notice, panels.title
        self.bars, self.score, self.neck = panels.bars, panels.score, panels.neck
        self.notes, self.choices, self.lesson_panel = (
            panels.notes, panels.choices, panels.lesson_panel,
        )  # fmt: skip
        self.conductor, self.player = panels.conductor, panels.player
        self.teaching, self.side = panels.teaching, panels.side
        self.openers = Openers(session, panels, self.dialogs)
        self.safe = SafeKeeping(session, self.dialogs, self.restore_wanted.emit)
        self.music = MusicWriting(panels, self.dialogs, self._music_menu)
        self.sounds = SoundCommands(panels, self.dialogs)
        self.guide = Guide(self, panels)
        self._leaving = Leaving(session, panels, self.dialogs)
        self._make_status()
        self.menus = Menus(self, session, self._deeds())
        self._connect()
        Follower(panels, self.conductor)
        self._restore()
        self._retitle()

    def _connect(self) -> None:
        session, menus = self.session, self.menus
        session.opened.connect(self._retitle)
        session.changed.connect(self._retitle)
        session.failed.connect(self._failed)
        session.conflicted.connect(self._leaving.choose_state)
        session.handed.connect(partial(menus.tick, "left-handed"))
        session.told.connect(lambda words: self.statusBar().showMessage(words, 12_000))
        session.jobs.busy.connect(self._busy)
        self.notice.report_button.clicked.connect(self.openers.show_report)
        self.lesson_panel.wants_music_changed.connect(self.openers.change_music)
        self.score.wants_note.connect(self.panels.new_note)
        self.music.hand.pen.started.connect(partial(menus.tick, "write"))
        for part, box in self.score.bar.parts.items():
            if part in SCORE_PARTS:  # ticked here and on the score's own row alike
                menus.tick(part, box.isChecked())
                box.toggled.connect(menus[part].setChecked)
        QApplication.styleHints().colorSchemeChanged.connect(self._system_colours)

    # Commands.

    def _deeds(self) -> Deeds:
        """What every command of the menus does."""
        session, panels, teaching = self.session, self.panels, self.teaching
        plain: dict[str, Callable[[], object]] = {
            **self.openers.deeds(),
            **self.safe.deeds(),
            **self.music.deeds(),
            **self.sounds.deeds(),
            "export-plan": teaching.export_plan,
            "export-script": teaching.export_script,
            "read-script": teaching.read,
            "quit": self.close,
            "undo": self._undo,
            "redo": session.redo,
            "new-note": panels.new_note,
            "pin-bar": self.choices.keep,
            "free": session.hand_edits.free_note,
            "take-other": self.choices.take,
            "why-not": self.choices.why_not,
            "section": self.bars.make_section,
            "forget-choices": self._forget_choices,
            "learn-grades": teaching.learn_grades,
            "next-bar": lambda: session.selection.select(session.selection.position + 1),
            "previous-bar": lambda: session.selection.select(session.selection.position - 1),
            **{name: partial(teaching.show_view, at) for at, name in enumerate(VIEWS)},
            "order": self.bars.written.toggle,
            "larger-text": lambda: self._scale(1),
            "smaller-text": lambda: self._scale(-1),
            "zoom-in": lambda: self.score.set_zoom(self.score.zoom * 1.15),
            "zoom-out": lambda: self.score.set_zoom(self.score.zoom / 1.15),
            "zoom-1": lambda: self.score.set_zoom(1.0),
            "forget-layout": self.forget_layout,
            "next-part": lambda: panels.next_part(1),
            "previous-part": lambda: panels.next_part(-1),
            "tour": self.guide.begin,
        }
        parts = self.score.bar.parts
        ticked: dict[str, Callable[[bool], object]] = {
            "write": self._write,
            **{part: parts[part].setChecked for part in SCORE_PARTS},
            "left-handed": session.set_left_handed,
            "full-screen": lambda on: self.showFullScreen() if on else self.showNormal(),
        }
        choices = {
            "colours": TickedMenu(
                {name: _capital(say(name)) for name in look.THEMES},
                lambda theme: self.set_look(theme=theme),
            ),
            "text-size": TickedMenu(
                {f"{scale} %": f"{scale} %" for scale in look.SCALES},
                lambda words: self.set_look(scale=int(words.split()[0])),
            ),
            "language": TickedMenu(
                {"": say("As the system")} | speech.OFFERED,
                self.language_wanted.emit,
                languages.kept_choice(session.shelf),
            ),
        }
        filled: dict[str, Callable[[QMenu], object]] = {
            "recent": lambda menu: fill_recent(menu, session, panels.commit),
            "versions": self._list_versions,
        }
        return Deeds(plain, ticked, choices, filled)

    def _undo(self) -> None:
        self.panels.commit()
        self.session.undo()

    def _write(self, _on: bool) -> None:
        self.music.toggle()
        self.menus.tick("write", self.music.hand.pen.writing)

    def _music_menu(self) -> None:
        at = self.score.viewport().mapToGlobal(self.music.writer.foot())
        self.menus.menu("music").popup(at)

    def _forget_choices(self) -> None:
        from workbench.ui.views.grading.learning import forget

        forget(self.session)

    def _list_versions(self, menu: QMenu) -> None:
        menu.clear()
        session = self.session
        found = session.shelf.versions(session.lesson.id) if session.lesson else ()
        for version in reversed(found):
            made = version.made.astimezone().strftime("%Y-%m-%d %H:%M")
            action = menu.addAction(f"{version.name}, {made}")
            action.triggered.connect(lambda _on=False, number=version.id: session.go_back(number))
        if not found:
            menu.addAction(say("No version is kept yet")).setEnabled(False)

    # Dialogs.

    @property
    def dialog(self) -> QDialog | None:
        """The dialog that is open."""
        return self.dialogs.shown

    def show_dialog(self, dialog: QDialog) -> None:
        """Open a dialog without stopping the rest of the program."""
        self.dialogs.show(dialog)

    def import_score(self, path: str) -> None:
        """Read a score in the background, then ask what to make of it."""
        self.openers.import_score(path)

    # Following the session.

    def _make_status(self) -> None:
        self.working = Words()
        self.progress = QProgressBar()
        self.progress.setAccessibleName(say("Progress"))
        self.progress.setMaximumWidth(em(self, 9))
        self.progress.setTextVisible(False)
        self.cancel = QPushButton(say("Cancel"))
        self.cancel.setToolTip(say("Call off what is being worked out"))
        self.cancel.clicked.connect(self._call_off)
        self.statusBar().addPermanentWidget(self.music.next)
        for part in (self.working, self.progress, self.cancel):
            self.statusBar().addPermanentWidget(part)
            part.hide()
        self.music.next.hide()

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

    def _failed(self, sentence: str) -> None:
        """Say what went wrong; a fault of ours comes with its report, kept on the disk too."""
        fault = self.session.last_fault
        new = bool(fault) and fault is not self._told_fault
        if new:
            from workbench.ui.help.report import keep_report

            self._told_fault = fault
            keep_report(self.session)
        self.notice.say(sentence, fault=new)

    def _retitle(self) -> None:
        lesson = self.session.lesson
        self.setWindowTitle(f"{lesson.title} – Pluckwright" if lesson else "Pluckwright")

    # Look.

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.panels.make_room(self.width(), self.height())

    def shape_sizes(self) -> None:
        """Sizes that follow the text."""
        # Said here, it holds while parts that need more have not made room yet.
        self.setMinimumSize(*(em(self, side) for side in LEAST))
        self.panels.shape_sizes(self.width(), self.height())

    def set_look(self, theme: str | None = None, scale: int | None = None) -> None:
        """Change colours or text size; remembered."""
        # Text made larger and plain again leaves everything where the teacher had put it.
        self._sizes[self.look.scale, self.size().toTuple()] = layout.sizes(self.panels)
        self.look = look.Look(theme or self.look.theme, scale or self.look.scale)
        self._dress()
        self.shape_sizes()
        layout.put_sizes(self.panels, self._sizes.get((self.look.scale, self.size().toTuple()), {}))

    def _dress(self) -> None:
        look.apply(self.look)
        self.panels.refresh()
        self._tick_look()

    def _tick_look(self) -> None:
        self.menus.choices("colours")[self.look.theme].setChecked(True)
        self.menus.choices("text-size")[f"{self.look.scale} %"].setChecked(True)

    def _scale(self, by: int) -> None:
        at = look.SCALES.index(self.look.scale) + by
        if 0 <= at < len(look.SCALES):
            self.set_look(scale=look.SCALES[at])

    def _system_colours(self) -> None:
        if self.look.theme == look.THEMES[2]:
            self._dress()

    def _restore(self) -> None:
        """Lay the window out as it was left."""
        kept = layout.kept(self.session.shelf)
        self.resize(em(self, 76), em(self, 46))
        self.look = kept.look
        look.apply(self.look)
        self._tick_look()
        self.menus.tick("left-handed", self.session.left_handed)
        self.shape_sizes()
        if kept.geometry:
            self.restoreGeometry(layout.as_bytes(kept.geometry))
        layout.put(self.panels, kept)

    def forget_layout(self) -> None:
        """Sizes, tabs and zoom as at the first start; colours and text size stay."""
        if self.isFullScreen() or self.isMaximized():
            self.showNormal()
        self.resize(em(self, 76), em(self, 46))
        self.shape_sizes()
        layout.reset(self.panels)

    # Scores dropped on it.

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
            menus.tick("full-screen", self.isFullScreen())

    def keep_all(self) -> None:
        """Keep what is half written, and how the window is laid out."""
        focus = self.focusWidget()
        if focus is not None:
            focus.clearFocus()
        self.panels.commit()
        state = layout.taken(self.panels, self.look, self.saveGeometry())
        self.session.guard(lambda: layout.keep(self.session.shelf, state))

    def closeEvent(self, event: QCloseEvent) -> None:
        """Keep what is half written, then go."""
        self.keep_all()
        if not self._leaving.all_kept():
            event.ignore()
            return
        self.hide()  # what still runs may take a moment to stop
        self.conductor.close()
        self.session.close()
        event.accept()


def _capital(words: str) -> str:
    return words[0].upper() + words[1:]
