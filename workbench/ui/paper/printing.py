"""Handout and teacher's sheet as they will be on paper, and onto it.

What is shown and printed is painted by the same functions as the PDF.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QMarginsF, QSize, Qt
from PySide6.QtGui import QPageLayout, QPainter
from PySide6.QtPrintSupport import QPrintDialog, QPrinter, QPrinterInfo, QPrintPreviewWidget
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QGraphicsView,
    QHBoxLayout,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from workbench.fingering.types import Fingering
from workbench.handout.from_shelf import extras_of, remember_grades
from workbench.handout.offered import AUDIENCES, PAPERS
from workbench.handout.options import Audience, HandoutOptions, page_size
from workbench.handout.products import Prepared
from workbench.handout.sheets.page import Handout
from workbench.language.speech import count, say
from workbench.music.codec import from_dict
from workbench.music.errors import BadInput
from workbench.store.setting_names import HANDOUT_OPTIONS
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import Lesson
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.services import engraving_in_this_thread
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import em
from workbench.ui.kit.parts import Caution, Faint, Words

ZOOM = 1.2


def compose(lesson: Lesson, fingering: Fingering, options: HandoutOptions, shelf: Shelf) -> Handout:
    """Lay the pages out; for a thread behind the interface."""
    engraving_in_this_thread()
    return Handout(lesson, fingering, options, extras_of(shelf, lesson, fingering))


def make_ready(printer: QPrinter, handout: Handout) -> None:
    """Give a printer the handout's paper and name."""
    printer.setPageLayout(
        QPageLayout(
            page_size(handout.options), QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0)
        )
    )
    printer.setFullPage(True)
    printer.setDocName(handout.title)
    printer.setCreator("Pluckwright")


def paint_on(
    printer: QPrinter, handout: Handout, progress: Callable[[float], None] | None = None
) -> int:
    """Paint the pages that the printer asks for, all by default; how many.

    Where the printer holds other paper the page is made to fit it. Raises BadInput where
    nothing can be printed.
    """
    first = max(1, printer.fromPage() or 1)
    last = min(handout.count, printer.toPage() or handout.count)
    painter = QPainter()
    if not painter.begin(printer):
        raise BadInput(
            "The printer does not answer, and nothing was printed; check it and try again."
        )
    paper = printer.paperRect(QPrinter.Unit.DevicePixel)
    sheet = handout.sheet
    scale = min(paper.width() / sheet.width, paper.height() / sheet.height)
    try:
        for number in range(first, last + 1):
            if number > first:
                printer.newPage()
            painter.save()
            painter.scale(scale, scale)
            handout.paint_page(painter, number - 1)
            painter.restore()
            if progress:
                progress((number - first + 1) / (last - first + 1))
    except BaseException:
        painter.end()
        printer.abort()
        raise
    painter.end()
    return last - first + 1


def options_for(session: Session, audience: Audience) -> HandoutOptions:
    """The options remembered for handouts, as far as they are known to the page."""
    kept = from_dict(HandoutOptions, session.shelf.setting(HANDOUT_OPTIONS, {}))
    return replace(kept, audience=audience, left_handed=session.left_handed)


class PrintPreview(QDialog):
    """The pages on the screen, and a button that prints them."""

    def __init__(
        self, session: Session, handout: Handout, lesson: Lesson, fingering: Fingering,
        parent: QWidget | None = None,
    ) -> None:  # fmt: skip
        super().__init__(parent)
        self._session, self._lesson, self._fingering = session, lesson, fingering
        self.handout = handout
        self.setWindowTitle(say("Print"))
        self.setAccessibleName(say("Print"))
        self.printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        make_ready(self.printer, handout)
        self.pages = QPrintPreviewWidget(self.printer)
        self.pages.setAccessibleName(say("Pages as they will be printed"))
        for inner in self.pages.findChildren(QGraphicsView):  # it takes the focus
            inner.setAccessibleName(self.pages.accessibleName())
        self.audience, self.paper = QComboBox(), QComboBox()
        for name, (words, _) in AUDIENCES.items():
            self.audience.addItem(say(words), name)
        for name, size in PAPERS.items():
            self.paper.addItem(size, name)
        self.large = QCheckBox(say("&Large print"))
        self.where = Faint()
        self.problem = Caution()
        self.back_button = QPushButton(say("Page &back"))
        self.on_button = QPushButton(say("&Next page"))
        self.in_button = QPushButton(say("Zoom &in"))
        self.out_button = QPushButton(say("Zoom &out"))
        self.fit_button = QPushButton(say("&Whole page"))
        self.print_button = QPushButton(say("P&rint …"))
        self.print_button.setDefault(True)
        self.close_button = QPushButton(say("C&lose"))
        self._lay_out()
        self._show_options()
        for signal, does in (
            (self.pages.paintRequested, self._paint),
            (self.pages.previewChanged, self._tell_page),
            (self.audience.activated, self._compose_anew),
            (self.paper.activated, self._compose_anew),
            (self.large.clicked, self._compose_anew),
            (self.back_button.clicked, lambda: self._turn(-1)),
            (self.on_button.clicked, lambda: self._turn(1)),
            (self.in_button.clicked, lambda: self.pages.zoomIn(ZOOM)),
            (self.out_button.clicked, lambda: self.pages.zoomOut(ZOOM)),
            (self.fit_button.clicked, self.pages.fitInView),
            (self.print_button.clicked, self.ask_and_print),
            (self.close_button.clicked, self.reject),
        ):
            signal.connect(does)
        self.pages.fitInView()
        self.pages.updatePreview()

    @classmethod
    def prepare(
        cls, session: Session, audience: Audience, over: QWidget, show: Callable[[QDialog], None]
    ) -> None:
        """Lay the pages out in the background, then ``show`` them in a dialog over a window."""
        lesson, fingering = session.lesson, session.fingers.fingering
        if lesson is None or fingering is None:
            return
        options, shelf = options_for(session, audience), session.shelf

        def arrived(handout: Handout) -> None:
            show(cls(session, handout, lesson, fingering, over))

        session.jobs.start(
            "pages", say("Laying out the pages"),
            lambda _: compose(lesson, fingering, options, shelf), arrived,
        )  # fmt: skip

    def _lay_out(self) -> None:
        top, bottom = QHBoxLayout(), QHBoxLayout()
        for words, box in ((say("&Made"), self.audience), (say("Pap&er"), self.paper)):
            label = Words(words)
            label.setBuddy(box)
            box.setAccessibleName(words.replace("&", ""))
            top.addWidget(label)
            top.addWidget(box)
        top.addWidget(self.large)
        top.addStretch(1)
        for button in (self.out_button, self.in_button, self.fit_button):
            top.addWidget(button)
        for button in (self.back_button, self.on_button):
            bottom.addWidget(button)
        bottom.addWidget(self.where, 1)
        bottom.addWidget(self.print_button)
        bottom.addWidget(self.close_button)
        layout = QVBoxLayout(self)
        layout.addLayout(top)
        layout.addWidget(self.pages, 1)
        layout.addWidget(self.problem)
        layout.addLayout(bottom)

    def sizeHint(self) -> QSize:
        return QSize(em(self, 52), em(self, 44))

    def _show_options(self) -> None:
        options = self.handout.options
        self.audience.setCurrentIndex(self.audience.findData(options.audience))
        self.paper.setCurrentIndex(max(0, self.paper.findData(options.paper)))
        self.large.setChecked(options.large)

    def _paint(self, printer: QPrinter) -> None:
        try:
            paint_on(printer, self.handout)
        except BadInput as wrong:
            self.problem.say(str(wrong))

    def _turn(self, by: int) -> None:
        self.pages.setCurrentPage(self.pages.currentPage() + by)
        self._tell_page()

    def _tell_page(self) -> None:
        at, every = max(1, self.pages.currentPage()), self.handout.count
        self.where.setText(say("Page {page} of {pages}", page=at, pages=every))
        self.back_button.setEnabled(at > 1)
        self.on_button.setEnabled(at < every)

    def _compose_anew(self) -> None:
        """Other paper, size or reader: lay the pages out again, in the background."""
        lesson, fingering, shelf = self._lesson, self._fingering, self._session.shelf
        options = replace(
            self.handout.options, audience=self.audience.currentData(),
            paper=self.paper.currentData(), large=self.large.isChecked(),
        )  # fmt: skip

        def arrived(handout: Handout) -> None:
            self.handout = handout
            make_ready(self.printer, handout)
            self.print_button.setEnabled(True)
            self.pages.updatePreview()
            self._tell_page()

        self.print_button.setEnabled(False)
        self.where.setText(say("Laying out the pages …"))
        self._session.jobs.start(
            "pages", say("Laying out the pages"),
            lambda _: compose(lesson, fingering, options, shelf),
            arrived, wrong=self._refused,
        )  # fmt: skip

    def ask_and_print(self) -> None:
        """Ask for printer, pages and copies, then print in the background."""
        if not QPrinterInfo.availablePrinterNames():
            self._refused(
                say(
                    "This system knows no printer. Set one up, or close this and make a PDF "
                    "with Lesson, Handout, to print it elsewhere."
                )
            )
            return
        dialog = QPrintDialog(self.printer, self)
        dialog.setMinMax(1, self.handout.count)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setModal(True)
        dialog.accepted.connect(self.print_now)
        dialog.show()

    def print_now(self) -> None:
        """Print on the printer as it is set up."""
        session, printer, handout = self._session, self.printer, self.handout
        shelf = session.shelf
        printed = Prepared(self._lesson, self._fingering, handout.extras)

        def work(progress: Progress) -> int:
            pages = paint_on(printer, handout, progress)
            remember_grades(shelf, "page", [printed])
            return pages

        def sent(pages: int) -> None:
            words = count(pages, "{n} page is on its way to the printer.",
                          "{n} pages are on their way to the printer.")  # fmt: skip
            session.told.emit(words)

        self._let_choose(False)
        session.jobs.start(
            "print", say("Printing"), work, lambda _: self.accept(), wrong=self._refused,
            anyway=sent,
        )  # fmt: skip

    def _let_choose(self, free: bool) -> None:
        """Nothing may be laid out for the printer while it is printed on."""
        for part in (self.audience, self.paper, self.large, self.print_button):
            part.setEnabled(free)

    def _refused(self, sentence: str) -> None:
        self.problem.say(sentence)
        self._let_choose(True)
        self._tell_page()
