"""A chart in the window: painted at any size, its bars to click or step through by keys."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
)
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from workbench.engraving.charts.kit import Chart, Format, Ink
from workbench.language.speech import say
from workbench.ui.kit.look import DARK, colours, em
from workbench.ui.kit.parts import Faint, Heading

LEAST, MOST = 320.0, 1100.0  # pixels a chart is drawn wide
STEP = 80.0  # a chart is drawn anew when its view is that much wider or narrower


def ink_of(widget: QWidget) -> Ink:
    """The inks of the look in use."""
    c = colours(widget)
    shades = ("#7CC4B2", "#5A8F82", "#456D64", "#33504A")
    if c is not DARK:
        shades = ("#2C6157", "#6E9A91", "#A9C6BF", "#DDE9E5")
    return Ink(
        ink=c.ink, faint=c.faint, line=c.line, strong=shades[0], middle=shades[1],
        light=shades[2], pale=shades[3], alarm=c.alarm, ground=c.panel,
    )  # fmt: skip


def form_of(widget: QWidget, share: float = 1.0) -> Format:
    """Width, text size and inks for a chart that fills ``share`` of a widget's width.
    One point of the chart is a pixel on the screen."""
    width = max(LEAST, min(MOST, STEP * int(share * widget.width() / STEP)))
    return Format(width, em(widget, 0.68), ink_of(widget))


class ChartView(QWidget):
    """Paints a chart as wide as there is room. Where it runs along bars or days, a click
    or the arrow keys choose one."""

    chosen = Signal(int)  # a written bar, or a day

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.chart: Chart | None = None
        self._renderer = QSvgRenderer(self)
        self._selected = -1
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setSizePolicy(policy)

    def show_chart(self, chart: Chart) -> None:
        """Show a chart in place of the one before."""
        self.chart = chart
        self._renderer.load(chart.svg)
        self.setAccessibleName(chart.title)
        self.setAccessibleDescription(chart.words)
        along = bool(chart.columns)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus if along else Qt.FocusPolicy.NoFocus)
        self.setMouseTracking(along)
        if along:
            self.setToolTip(
                say("Click a day to go to it; the arrow keys go from day to day")
                if chart.id == "plan"
                else say("Click a bar to select it; the arrow keys go from bar to bar")
            )
        self._claim()
        self.update()

    def select(self, which: int) -> None:
        """Outline the column of a bar or day."""
        if which != self._selected:
            self._selected = which
            self.update()

    @property
    def scale(self) -> float:
        """Pixels for a point of the chart."""
        return self.width() / self.chart.width if self.chart else 1.0

    def sizeHint(self) -> QSize:
        return QSize(self.width(), self.minimumHeight())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._claim()

    def _claim(self) -> None:
        needed = round(self.chart.height * self.scale) if self.chart else 0
        if needed != self.minimumHeight():
            self.setFixedHeight(needed)

    def column(self, which: int) -> QRectF | None:
        """The column of a bar or day in pixels; None where the chart has none."""
        for found, left, right in self.chart.columns if self.chart else ():
            if found == which:
                scale = self.scale
                top = self.chart.top * scale if self.chart else 0.0
                return QRectF(left * scale, top, (right - left) * scale, self.height() - top)
        return None

    def paintEvent(self, _event: QPaintEvent) -> None:
        if self.chart is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._renderer.render(painter, self.rect().toRectF())
        column = self.column(self._selected)
        if column is not None:
            pen = QPen(QColor(colours(self).accent), 3.0 if self.hasFocus() else 1.6)
            painter.setPen(pen)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(column.adjusted(0.5, 2, -0.5, -2), 3, 3)
        painter.end()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        which = self._at(event.position())
        if which is not None and event.button() == Qt.MouseButton.LeftButton:
            self.setFocus(Qt.FocusReason.MouseFocusReason)
            self.chosen.emit(which)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        steps = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}
        step = steps.get(Qt.Key(event.key()))
        every = [which for which, _, _ in self.chart.columns] if self.chart else []
        if step is None or not every:
            super().keyPressEvent(event)
            return
        at = every.index(self._selected) + step if self._selected in every else 0
        self.chosen.emit(every[max(0, min(len(every) - 1, at))])

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.update()

    def _at(self, where: QPointF) -> int | None:
        return self.chart.at(where.x() / self.scale) if self.chart else None


class ChartBox(QWidget):
    """A chart under its title, and below it in words what it shows."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.title = Heading("")
        self.view = ChartView()
        self.words = Faint()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        for part in (self.title, self.view, self.words):
            layout.addWidget(part)

    def show_chart(self, chart: Chart) -> None:
        """Show a chart, its title and its words."""
        self.title.setText(chart.title)
        self.title.setAccessibleName(chart.title)
        self.view.show_chart(chart)
        self.words.setText(chart.words)
