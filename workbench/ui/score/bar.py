"""The row above the score: its size, what it shows, and how voices are told apart."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QColor, QKeySequence, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QToolBar, QWidget

from workbench.language.speech import mark, say
from workbench.ui.kit.look import colours, em
from workbench.ui.kit.parts import plain_tip

#: Inks of the second voice, the third and so on, on light and on dark ground.
VOICE_INKS = {
    False: ("#1D4F91", "#7B2D7F", "#7A4A00", "#0B6B57", "#A3262A", "#4F5B00", "#5A4A8A"),
    True: ("#8DBBF5", "#DDA3E6", "#E9BD7C", "#7FD6BE", "#F2A09C", "#CBD67A", "#BCB0EE"),
}
MOST_INKS = 1 + len(VOICE_INKS[False])  # the first voice has the score's own
#: What can be shown or left out: key, name on the row, what it is.
PARTS = (
    ("tab", mark("Tablature"), mark("Show the tablature under the staff")),
    ("left", mark("Left fingers"), mark("Show the left hand's fingers, 1 to 4")),
    ("right", mark("Right fingers"), mark("Show the right hand's fingers, p i m a")),
    (
        "strings",
        mark("Strings"),
        mark("Show string numbers in circles, also where the score prints none"),
    ),
    ("voices", mark("Voices"), mark("Tell the voices apart by their ink")),
)


def voice_inks(dark: bool) -> tuple[str, ...]:
    """The inks of the voices after the first."""
    return VOICE_INKS[dark]


class ScoreBar(QToolBar):
    """Controls of the strip. Whatever finds no room goes into the list at its end."""

    def __init__(
        self,
        parent: QWidget,
        zoom: Callable[[float], None],
        fit: Callable[[], None],
        show: Callable[..., None],
    ) -> None:
        super().__init__(parent)
        self.setAccessibleName(say("Size and parts of the score"))
        self.setMovable(False)
        self.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextOnly)
        self.smaller = self._add("−", say("Score smaller (Ctrl+-, or Ctrl and the wheel)"),
                                 say("Smaller score"))  # fmt: skip
        self.whole = self._add("100 %", say("Score at 100 % (Ctrl+0)"), say("Score at 100 %"))
        self.larger = self._add("+", say("Score larger (Ctrl++, or Ctrl and the wheel)"),
                                say("Larger score"))  # fmt: skip
        self.fit = self._add(say("Fit"), say("As much of the piece as can be read (Ctrl+9)"),
                             say("Fit the piece into the strip"))  # fmt: skip
        self.fit.setShortcut(QKeySequence("Ctrl+9"))
        self.smaller.triggered.connect(lambda: zoom(1 / 1.15))
        self.larger.triggered.connect(lambda: zoom(1.15))
        self.whole.triggered.connect(lambda: zoom(0.0))
        self.fit.triggered.connect(lambda: fit())
        self.addSeparator()
        self.parts: dict[str, QAction] = {}
        for key, name, words in PARTS:
            action = self._add(say(name), say(words), say(words))
            action.setCheckable(True)
            action.setChecked(True)
            action.toggled.connect(lambda on, key=key: show(**{key: on}))
            self.parts[key] = action
        self.legend = VoiceLegend()
        self._legend_place = self.addWidget(self.legend)
        self._legend_place.setVisible(False)

    def _add(self, name: str, tip: str, spoken: str) -> QAction:
        action = QAction(name, self)
        action.setToolTip(tip)
        self.addAction(action)
        button = self.widgetForAction(action)
        button.setAccessibleName(spoken)
        button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        return action

    def show_zoom(self, zoom: float) -> None:
        """Write the size on the row."""
        self.whole.setText(f"{round(100 * zoom)} %")

    def tell_voices(self, voices: int, inks: bool) -> None:
        """Show what tells so many voices apart, where there are several and they have inks."""
        self.legend.tell(voices, inks)
        self._legend_place.setVisible(self.legend.voices > 0)

    def show_parts(self, shows: dict[str, bool]) -> None:
        """Tick what is shown."""
        for key, action in self.parts.items():
            action.setChecked(shows[key])


class VoiceLegend(QWidget):
    """Each voice with its ink, and the way its stems point."""

    def __init__(self) -> None:
        super().__init__()
        self.voices = 0
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Preferred)

    def tell(self, voices: int, inks: bool) -> None:
        """Show so many voices, with their inks or without."""
        self.voices = min(voices, MOST_INKS) if inks and voices > 1 else 0
        words = [self._words(at) for at in range(self.voices)]
        self.setAccessibleName(say("Voices: {list}", list="; ".join(words)) if words else "")
        self.setToolTip(plain_tip("\n".join(words)))
        self.setFixedWidth(em(self, 0.8) + self.voices * em(self, 2.3) if words else 0)
        self.update()

    @staticmethod
    def _words(at: int) -> str:
        if at == 0:
            return say("voice 1: the score's own ink, stems up, bold figures")
        return say("voice {voice}: an ink of its own, stems down, light figures", voice=at + 1)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        c, step = colours(self), em(self, 2.3)
        dark = QColor(c.panel).lightnessF() < 0.5
        inks = (c.ink, *voice_inks(dark))
        tall, head = self.height() / 2, em(self, 0.22)
        for at in range(self.voices):
            painter.setPen(QPen(QColor(inks[at]), max(1.2, head / 4)))
            painter.setBrush(QColor(inks[at]))
            x, stem = em(self, 0.6) + at * step, head * 4
            y = tall + (head * 1.6 if at == 0 else -head * 1.6)
            painter.drawEllipse(int(x), int(y - head), round(head * 2.4), round(head * 2))
            if at == 0:
                painter.drawLine(int(x + head * 2.4), int(y), int(x + head * 2.4), int(y - stem))
            else:
                painter.drawLine(int(x), int(y), int(x), int(y + stem))
            font = painter.font()
            font.setBold(at == 0)
            painter.setFont(font)
            middle = int(tall + painter.fontMetrics().ascent() / 2 - 1)
            painter.drawText(int(x + head * 4), middle, str(at + 1))
        painter.end()
