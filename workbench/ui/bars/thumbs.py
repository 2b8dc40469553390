"""Small pictures of the bars, drawn behind the interface when they come into sight."""

from __future__ import annotations

from collections import OrderedDict
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtGui import QImage, QPixmap

from workbench.engraving.options import SmallLook
from workbench.fingering.types import FingeredBar
from workbench.language.speech import mark, say
from workbench.music.model import Bar
from workbench.ui.bench.jobs import Progress, Ticket
from workbench.ui.bench.session import Session

if TYPE_CHECKING:
    from workbench.engraving.small import SmallBars

KIND = "small bars"
AT_ONCE = 6  # bars drawn before the window hears of them
KEPT = 400  # pictures remembered
#: What a picture shows: in code, and on the screen.
SHOWN = (
    ("tablature", mark("Tablature")),
    ("staff", mark("Staff")),
    ("none", mark("No picture")),
)


@dataclass(frozen=True)
class _Kept:
    """A picture and what it was drawn from."""

    bar: Bar
    figures: tuple[tuple[int | None, int | None], ...]
    look: SmallLook
    picture: QPixmap

    def fits(self, bar: Bar, figures: object, look: object) -> bool:
        return (self.bar is bar or self.bar == bar) and (self.figures, self.look) == (figures, look)


class _Engraver:
    """Draws bars, for the lane's thread alone: what it needs is loaded there."""

    def __init__(self) -> None:
        self._small: SmallBars | None = None

    @property
    def small(self) -> SmallBars:
        if self._small is None:
            from workbench.engraving.small import SmallBars

            self._small = SmallBars()
        return self._small


class BarThumbs(QObject):
    """Pictures of the open lesson's bars. ``drawn`` tells which written bars are new."""

    drawn = Signal(object)

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.look: SmallLook | None = None
        self._known: OrderedDict[int, _Kept] = OrderedDict()
        self._wanted: dict[int, None] = {}
        self._engraver = _Engraver()
        self._ticket: Ticket | None = None
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(0)
        self._soon.timeout.connect(self._start)
        session.opened.connect(self._forget)

    def _forget(self) -> None:
        self._known.clear()
        self._wanted.clear()
        self._session.jobs.cancel(KIND)

    def picture(self, index: int) -> QPixmap | None:
        """The picture of a written bar, asked for where it is missing or out of date; what
        is there meanwhile is the old one."""
        lesson, known = self._session.lesson, self._known.get(index)
        if lesson is None or self.look is None:
            return None
        bar = lesson.piece.bars[index]
        if known is None or not known.fits(bar, figures_of(self._hands(index)), self.look):
            self._wanted.pop(index, None)
            self._wanted[index] = None
            self._soon.start()
        return known.picture if known else None

    def _hands(self, index: int) -> FingeredBar | None:
        fingering = self._session.fingers.fingering
        if fingering is None or index >= len(fingering.bars):
            return None
        return fingering.bars[index]

    def _start(self) -> None:
        session, look = self._session, self.look
        lesson = session.lesson
        if lesson is None or not self._wanted or look is None:
            return
        if self._ticket is not None and session.jobs.current(self._ticket):
            return  # the next are drawn when these are done
        instrument = session.instrument
        bars = len(lesson.piece.bars)
        tasks = [(i, self._hands(i)) for i in list(self._wanted)[-AT_ONCE:] if i < bars]
        self._wanted.clear()  # who is still in sight asks again

        engraver = self._engraver

        def work(progress: Progress) -> list[QImage]:
            out = []
            for at, (index, hands) in enumerate(tasks):
                progress(at / len(tasks))
                out.append(engraver.small.draw(lesson.piece, index, hands, instrument, look))
            return out

        def done(images: list[QImage]) -> None:
            self._ticket = None
            here = session.lesson is not None and session.lesson.piece is lesson.piece
            for (index, hands), image in zip(tasks, images, strict=True) if here else ():
                self._known[index] = _Kept(
                    lesson.piece.bars[index], figures_of(hands), look, QPixmap.fromImage(image)
                )
                self._known.move_to_end(index)
            while len(self._known) > KEPT:
                self._known.popitem(last=False)
            self.drawn.emit(tuple(index for index, _ in tasks))

        self._ticket = session.jobs.start(
            KIND, say("Drawing the small bars"), work, done, lane="small bars"
        )


def figures_of(hands: FingeredBar | None) -> tuple[tuple[int | None, int | None], ...]:
    """What tablature shows of a bar."""
    return tuple((n.string, n.fret) for n in hands.notes) if hands else ()
