"""A few bars of engraved music beside words."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from workbench.fingering.types import Fingering
from workbench.language.speech import say
from workbench.music.model import Piece
from workbench.ui.bench.session import Session
from workbench.ui.kit.look import BASE_POINTS, colours, em

if TYPE_CHECKING:
    from workbench.engraving.paint import ScoreImage


class MusicStrip(QWidget):
    """A few bars of engraved music, painted as the score is."""

    engraved = Signal()

    def __init__(self, session: Session, kind: str) -> None:
        super().__init__()
        self._session, self._kind = session, kind
        self._wanted: tuple[Piece, Fingering] | None = None
        self.image: ScoreImage | None = None
        self.tallest = math.inf  # pixels; what would be taller is drawn smaller
        self.setAccessibleName(say("The music in notes and tablature"))
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(120)
        self._soon.timeout.connect(self.engrave)

    @property
    def scale(self) -> float:
        """Pixels to an image unit: with the text size, as far as there is room for it."""
        wanted = self.font().pointSizeF() / BASE_POINTS
        if self.image is None or self.width() < 50:
            return wanted
        size = self.image.size
        across = (self.width() - 4) / max(1.0, size.width())
        return float(min(wanted, across, (self.tallest - 8) / max(1.0, size.height())))

    def show_music(self, piece: Piece | None, fingering: Fingering | None) -> None:
        """Engrave other bars, in the background."""
        self._wanted = (piece, fingering) if piece is not None and fingering is not None else None
        self.setAccessibleDescription(piece.title if piece is not None else "")
        self.engrave()

    def engrave(self) -> None:
        """Engrave what is shown in the present width and colour."""
        from workbench.ui.score.short import engraved

        wanted, session = self._wanted, self._session
        if wanted is None or session.lesson is None:
            self.image = None
            self.update()
            return
        instrument = session.instrument
        width = max(260.0, self.width() * BASE_POINTS / self.font().pointSizeF() - 4)
        ink = colours(self).ink

        def arrived(image: ScoreImage) -> None:
            self.image = image
            self.setFixedHeight(self.sizeHint().height())
            self.update()
            self.engraved.emit()

        session.jobs.start(
            self._kind, say("Engraving"),
            lambda _: engraved(*wanted, instrument, width, ink), arrived, lane="engrave",
        )  # fmt: skip

    def fit(self, tallest: float) -> None:
        """Be no taller than so many pixels."""
        self.tallest = max(60.0, tallest)
        if self.image is not None:
            self.setFixedHeight(self.sizeHint().height())
            self.update()

    def stop(self) -> None:
        """Engrave nothing any more: what it is in is about to go."""
        self._soon.stop()
        self._wanted = None
        self._session.jobs.cancel(self._kind)

    def sizeHint(self) -> QSize:
        tall = self.image.size.height() * self.scale + 8 if self.image else em(self, 8)
        return QSize(em(self, 20), round(tall))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.oldSize().width() != event.size().width():
            self._soon.start()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), QColor(colours(self).panel))
        if self.image is not None:
            for item in self.image.placed:
                corner = item.corner * self.scale + QPointF(2, 4)
                item.system.paint(painter, corner, item.scale * self.scale)
        else:
            painter.setPen(QColor(colours(self).faint))
            words = say("Engraving …") if self._wanted else ""
            painter.drawText(QRectF(self.rect()), Qt.AlignmentFlag.AlignCenter, words)
        painter.end()
