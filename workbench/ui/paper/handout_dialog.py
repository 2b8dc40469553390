"""What is printed or exported of a lesson, and where to; seen while it is chosen."""

from __future__ import annotations

from dataclasses import asdict
from pathlib import Path

from PySide6.QtCore import QSize, Qt, QTimer
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QGridLayout,
    QGroupBox,
    QHBoxLayout,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from workbench.handout.offered import AUDIENCES, OFFERED, ORDERS, PAPERS, PARTS, title_of
from workbench.handout.options import HandoutOptions
from workbench.language.speech import count, say
from workbench.music.files import readable_name
from workbench.music.suffixes import NAMES
from workbench.store.setting_names import HANDOUT_OPTIONS
from workbench.ui.bench.session import Session
from workbench.ui.kit.file_rows import FileField, add_row, ask_to_replace, form_layout
from workbench.ui.kit.look import em
from workbench.ui.kit.page_preview import PagePreview
from workbench.ui.kit.parts import Caution, Faint
from workbench.ui.paper import printed_job

SOON = 200  # milliseconds after the last change of an option


class HandoutDialog(QDialog):
    """Lays out and writes in the background; choices are remembered."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.setWindowTitle(say("Handout"))
        self.setAccessibleName(say("Handout"))
        self._fields()
        self.preview = PagePreview()
        self.problem, self.hint = Caution(), Faint()
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Save | QDialogButtonBox.StandardButton.Cancel
        )
        self.save = self.buttons.button(QDialogButtonBox.StandardButton.Save)
        self.save.setText(say("Make the &file"))
        left = QVBoxLayout()
        left.addLayout(self.form)
        left.addWidget(self.hint)
        left.addWidget(self.problem)
        left.addStretch(1)
        left.addWidget(self.buttons)
        both = QHBoxLayout(self)
        both.addLayout(left, 2)
        both.addWidget(self.preview, 3)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(SOON)
        self._soon.timeout.connect(self._lay_out)
        self.buttons.accepted.connect(self.make)
        self.buttons.rejected.connect(self.reject)
        self.preview.wanted.connect(self._soon.start)
        self._recall(session.left_handed)
        self._connect()
        self._suit()

    def _fields(self) -> None:
        self.what, self.audience, self.paper = QComboBox(), QComboBox(), QComboBox()
        for name, product in OFFERED.items():
            self.what.addItem(say(product.words), name)
        for name, (words, _) in AUDIENCES.items():
            self.audience.addItem(say(words), name)
        for name, paper in PAPERS.items():
            self.paper.addItem(paper, name)
        self.order, self.ending = QComboBox(), QComboBox()
        for name, words in ORDERS.items():
            self.order.addItem(say(words), name)
        self.title = QLineEdit()
        self.lessons = QListWidget()
        self.lessons.setDragDropMode(QListWidget.DragDropMode.InternalMove)
        self.lessons.setMinimumHeight(em(self, 6))
        self.lessons.setMaximumHeight(em(self, 9))
        self.first, self.last, self.dots = QComboBox(), QComboBox(), QSpinBox()
        self.dots.setRange(72, 600)
        self.dots.setValue(192)
        self.clear = QCheckBox(say("&Transparent ground"))
        self.large = QCheckBox(say("&Large print"))
        self.left_handed = QCheckBox(say("Left-&handed diagrams"))
        self.strings = QCheckBox(say("Strin&g numbers in circles"))
        self.booklet = QCheckBox(say("&Booklet, to be folded"))
        self.parts = {name: QCheckBox(say(words)) for name, words in PARTS.items()}
        self.with_parts = _grid(tuple(self.parts.values()), say("With"))
        self.studio, self.contact = QLineEdit(), QLineEdit()
        self.file = FileField(self, say("Choose where the file goes"))
        self.path, self.browse = self.file.path, self.file.browse
        self.form = form_layout()
        for label, field in (
            (say("&What"), self.what), (say("&Made"), self.audience),
            (say("&Order of the grips"), self.order), (say("Title of the &book"), self.title),
            (say("L&essons"), self.lessons), (say("&From bar"), self.first),
            (say("To ba&r"), self.last), (say("&Dots an inch"), self.dots),
            (say("For&mat"), self.ending), (say("&Paper"), self.paper),
            (say("&Studio"), self.studio), (say("C&ontact"), self.contact),
        ):  # fmt: skip
            add_row(self.form, label, field)
        self.form.addRow(self.with_parts)
        for box in (self.large, self.left_handed, self.strings, self.booklet, self.clear):
            self.form.addRow(box)
        add_row(self.form, say("F&ile"), self.file)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 62), max(em(self, 36), super().sizeHint().height()))

    def _recall(self, left_handed: bool) -> None:
        kept = self._session.shelf.setting(HANDOUT_OPTIONS, {})
        for box, name in ((self.audience, "audience"), (self.paper, "paper")):
            box.setCurrentIndex(max(0, box.findData(kept.get(name))))
        self.large.setChecked(bool(kept.get("large")))
        self.left_handed.setChecked(left_handed)
        for name, tick in self.parts.items():
            tick.setChecked(bool(kept.get(name, True)))
        self.strings.setChecked(bool(kept.get("strings")))
        self.studio.setText(str(kept.get("studio", "")))
        self.contact.setText(str(kept.get("contact", "")))
        self.title.setText(str(kept.get("book", "")))
        lesson = self._session.lesson
        assert lesson
        for bar in lesson.piece.bars:
            self.first.addItem(bar.number)
            self.last.addItem(bar.number)
        here = max(0, self._session.selection.bar_index)
        self.first.setCurrentIndex(here)
        self.last.setCurrentIndex(min(here + 3, len(lesson.piece.bars) - 1))
        rows = sorted(self._session.shelf.lessons(), key=lambda row: row.id != lesson.id)
        for row in rows:
            name = ", ".join(filter(None, (row.title, row.student)))
            item = QListWidgetItem(name)
            item.setData(Qt.ItemDataRole.UserRole, row.id)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            chosen = row.id == lesson.id
            item.setCheckState(Qt.CheckState.Checked if chosen else Qt.CheckState.Unchecked)
            self.lessons.addItem(item)
        folder = Path(str(kept.get("folder") or Path.home()))
        self.path.setText(str(folder / "handout.pdf"))
        self._propose()

    def _connect(self) -> None:
        self.what.currentIndexChanged.connect(self._suit)
        self.ending.currentIndexChanged.connect(self._suit_file)
        for chooser in (self.what, self.audience, self.first, self.last):
            chooser.currentIndexChanged.connect(self._propose)
        self.title.textChanged.connect(self._propose)
        for combo in (self.audience, self.paper, self.order, self.first, self.last):
            combo.currentIndexChanged.connect(self._soon.start)
        ticks = (self.large, self.left_handed, self.strings, self.booklet, self.clear)
        for box in (*ticks, *self.parts.values()):
            box.toggled.connect(self._soon.start)
        for line in (self.title, self.studio, self.contact):
            line.textChanged.connect(self._soon.start)
        self.dots.valueChanged.connect(self._soon.start)
        self.lessons.itemChanged.connect(self._soon.start)
        self.lessons.model().rowsMoved.connect(self._soon.start)

    @property
    def kind(self) -> str:
        return str(self.what.currentData())

    def _suit(self) -> None:
        """Show the fields that matter for what is made."""
        kind, product = self.kind, OFFERED[self.kind]
        paper = product.paged
        for field, needed in (
            (self.audience, product.audience), (self.with_parts, product.audience),
            (self.order, kind == "grips"),
            (self.title, kind == "book"), (self.lessons, kind == "book"),
            (self.first, kind == "picture"), (self.last, kind == "picture"),
            (self.dots, kind == "picture"), (self.clear, kind == "picture"),
            (self.ending, not paper), (self.paper, paper), (self.studio, paper),
            (self.contact, paper), (self.large, paper), (self.left_handed, paper),
            (self.booklet, paper), (self.strings, kind in ("page", "book")),
        ):  # fmt: skip
            self.form.setRowVisible(field, needed)
        self.ending.blockSignals(True)
        self.ending.clear()
        for suffix in product.suffixes:
            self.ending.addItem(f"{NAMES[suffix]} ({suffix})", suffix)
        self.ending.blockSignals(False)
        self._suit_file()

    def _suit_file(self) -> None:
        suffix = str(self.ending.currentData())
        self.file.kind = f"{NAMES[suffix]} (*{suffix})"
        self.file.suit(suffix, {s for product in OFFERED.values() for s in product.suffixes})
        self._soon.start()

    def _propose(self) -> None:
        """Propose a name that tells for whom, of which lesson and what it is."""
        lesson, kind = self._session.lesson, self.kind
        assert lesson
        what = title_of(kind, str(self.audience.currentData()))
        if kind == "picture":
            bars = say("bars {first} to {last}", first=self.first.currentText(),
                       last=self.last.currentText())  # fmt: skip
            what = bars if self.first.currentIndex() != self.last.currentIndex() else (
                say("bar {number}", number=self.first.currentText())
            )  # fmt: skip
        of = (self.title.text(),) if kind == "book" else (lesson.student, lesson.title)
        self.file.propose(readable_name(*of, what))

    @property
    def options(self) -> HandoutOptions:
        """What the pages are made for."""
        return HandoutOptions(
            audience=self.audience.currentData(),
            paper=self.paper.currentData(),
            large=self.large.isChecked(),
            left_handed=self.left_handed.isChecked(),
            strings=self.strings.isChecked(),
            studio=self.studio.text().strip(),
            contact=self.contact.text().strip(),
            plan=self.parts["plan"].isChecked(),
            grips=self.parts["grips"].isChecked(),
            care=self.parts["care"].isChecked(),
            lines=self.parts["lines"].isChecked(),
        )

    def _job(self) -> printed_job.Job:
        """Everything that is chosen, to be worked off in the background."""
        rows = [self.lessons.item(at) for at in range(self.lessons.count())]
        session = self._session
        assert session.lesson and session.fingers.fingering
        return printed_job.Job(
            self.kind, self.options, self.booklet.isChecked(), self.order.currentData(),
            self.title.text().strip(),
            tuple(str(row.data(Qt.ItemDataRole.UserRole)) for row in rows
                  if row.checkState() == Qt.CheckState.Checked),
            (self.first.currentIndex(), self.last.currentIndex()),
            self.dots.value(), self.clear.isChecked(),
            session.lesson, session.fingers.fingering, session.shelf, session.services,
        )  # fmt: skip

    def _lay_out(self) -> None:
        """See the page that is chosen, as it will be printed."""
        session, preview = self._session, self.preview
        if session.fingers.fingering is None or session.lesson is None:
            self._soon.start()
            return
        job, number = self._job(), preview.number
        wide, ratio = preview.wide, preview.devicePixelRatioF()

        def arrived(found: printed_job.SeenPage) -> None:
            preview.set_count(found.count)
            preview.show_page(found.image)
            self.hint.setText(found.words)

        session.jobs.start(
            "preview", say("Laying out the pages"),
            lambda _: printed_job.seen(job, number, wide, ratio), arrived,
            lane="preview", wrong=preview.show_words,
        )  # fmt: skip

    def make(self) -> None:
        """Make the file; one that is there is replaced only after a question."""
        session = self._session
        path = self.file.target((str(self.ending.currentData()), *OFFERED[self.kind].suffixes))
        if path is None:
            self.problem.say(say("Say where the file goes: write a name, or choose one."))
            return
        if session.fingers.fingering is None or session.lesson is None:
            self.problem.say(say("The fingering is still being worked out; try again in a moment."))
            return
        self.question = ask_to_replace(self, path, lambda: self._make(path))

    def _make(self, path: Path) -> None:
        session = self._session
        kept = asdict(self.options) | {
            "folder": str(path.parent), "book": self.title.text().strip(),
        }  # fmt: skip
        del kept["left_handed"]
        session.guard(lambda: session.shelf.set_setting(HANDOUT_OPTIONS, kept))
        job = self._job()

        def written(pages: int) -> None:
            if pages:
                said = count(pages, "The handout is made: {n} page, {path}",
                             "The handout is made: {n} pages, {path}", path=path)  # fmt: skip
            else:
                said = say("The file is written: {path}", path=path)
            session.told.emit(said)

        self.save.setEnabled(False)
        session.jobs.start(
            "handout", say("Making the handout"),
            lambda progress: printed_job.made(job, str(path), progress), lambda _: self.accept(),
            lane="preview", wrong=self._refused, anyway=written,
        )  # fmt: skip

    def done(self, result: int) -> None:
        self._soon.stop()
        self._session.jobs.cancel("preview")
        super().done(result)

    def _refused(self, sentence: str) -> None:
        self.problem.say(sentence)
        self.save.setEnabled(True)


def _grid(boxes: tuple[QCheckBox, ...], title: str) -> QGroupBox:
    """Boxes to tick, two beside each other."""
    group = QGroupBox(title)
    grid = QGridLayout(group)
    for at, box in enumerate(boxes):
        grid.addWidget(box, at // 2, at % 2)
    return group
