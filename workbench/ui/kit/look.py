"""The window's own look: two palettes, a font that scales, and measures that follow it."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPalette
from PySide6.QtWidgets import QApplication, QWidget

from workbench.engraving.app import SANS
from workbench.engraving.app import load_fonts as register_fonts
from workbench.language.speech import mark

BASE_POINTS = 10.0
SCALES = (100, 115, 130, 150, 175, 200)  # per cent
THEMES = (mark("light"), mark("dark"), mark("as the system"))


@dataclass(frozen=True)
class Colours:
    """The named colours that widgets paint with."""

    ground: str  # behind everything
    panel: str  # lists and fields
    ink: str
    faint: str  # secondary words
    line: str
    accent: str  # the selected, the current
    accent_ink: str  # words on the accent
    warm: str  # pins
    alarm: str  # cuts, cautions, the impossible
    wood: str  # the fretboard
    wood_line: str
    fret: str
    marker: str  # a finger on the neck
    marker_ink: str


LIGHT = Colours(
    ground="#ECE8DF", panel="#FBF9F4", ink="#24312F", faint="#5F6B66", line="#C9C2B2",
    accent="#2C6157", accent_ink="#FFFFFF", warm="#8A5A10", alarm="#9C3322",
    wood="#DCC7A3", wood_line="#6C5B40", fret="#8C8472", marker="#2F3D3A", marker_ink="#FFFFFF",
)  # fmt: skip
DARK = Colours(
    ground="#1E2422", panel="#272E2B", ink="#E9E5DA", faint="#A9B2AB", line="#46504B",
    accent="#7CC4B2", accent_ink="#10201C", warm="#E0B565", alarm="#F09A83",
    wood="#4A3E2E", wood_line="#C9B894", fret="#A79F8C", marker="#EFEADD", marker_ink="#1E2422",
)  # fmt: skip


@dataclass(frozen=True)
class Look:
    """What the teacher chose: ``theme`` one of THEMES, ``scale`` in per cent."""

    theme: str = "as the system"
    scale: int = 100


def is_dark(theme: str) -> bool:
    """Whether the theme comes out dark on this system."""
    if theme != "as the system":
        return theme == "dark"
    from PySide6.QtCore import Qt

    return QApplication.styleHints().colorScheme() == Qt.ColorScheme.Dark


def colours(widget: QWidget | None = None) -> Colours:
    """The colours in use now."""
    palette = widget.palette() if widget else QApplication.palette()
    dark = palette.color(QPalette.ColorRole.Window).lightnessF() < 0.5
    return DARK if dark else LIGHT


def load_fonts() -> str:
    """Register the text fonts that come with the program; the family to use."""
    register_fonts()
    return SANS


def apply(look: Look) -> None:
    """Dress the whole program; nothing is done where it is dressed so already."""
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    c = DARK if is_dark(look.theme) else LIGHT
    dress = f"{'dark' if c is DARK else 'light'} {look.scale}"
    if app.property("dress") == dress:
        return
    app.setProperty("dress", dress)
    app.setStyle("Fusion")
    app.setPalette(palette(c))
    font = QFont(load_fonts())
    font.setPointSizeF(BASE_POINTS * look.scale / 100)
    app.setFont(font)
    line = QFontMetricsF(font).height()
    box, bar = round(line * 0.85), round(line * 0.8)
    pad = max(3, round(line * 0.22))
    app.setStyleSheet(
        f"""
        QToolTip {{ color: {c.ink}; background: {c.panel}; border: 1px solid {c.line};
            padding: {pad}px; }}
        QPushButton, QToolButton, QComboBox, QLineEdit {{ padding: {pad}px; }}
        QToolButton:checked {{ background: {c.ground}; border: 1px solid {c.accent};
            border-radius: {pad}px; color: {c.accent}; font-weight: bold; }}
        QToolButton:checked:focus {{ border: 2px solid {c.accent}; }}
        QHeaderView::section {{ padding: {pad}px; border: 0; }}
        *[role="heading"] {{ font-weight: bold; color: {c.accent}; }}
        *[role="faint"] {{ color: {c.faint}; }}
        *[role="caution"] {{ color: {c.alarm}; }}
        QSplitter::handle {{ background: {c.line}; }}
        QCheckBox::indicator, QListView::indicator, QTableView::indicator {{
            width: {box}px; height: {box}px; }}
        QScrollBar:vertical {{ width: {bar}px; }}
        QScrollBar:horizontal {{ height: {bar}px; }}
        QStatusBar::item {{ border: 0; }}
        QTabBar::tab {{ padding: {pad}px {3 * pad}px; }}
        """
    )


def palette(c: Colours) -> QPalette:
    """The colours as Qt's roles."""
    role = QPalette.ColorRole
    out = QPalette()
    for which, colour in {
        role.Window: c.ground, role.WindowText: c.ink, role.Base: c.panel,
        role.AlternateBase: c.ground, role.Text: c.ink, role.Button: c.ground,
        role.ButtonText: c.ink, role.BrightText: c.alarm, role.Highlight: c.accent,
        role.HighlightedText: c.accent_ink, role.ToolTipBase: c.panel, role.ToolTipText: c.ink,
        role.PlaceholderText: c.faint, role.Link: c.accent, role.Mid: c.line,
        role.Accent: c.accent,
    }.items():  # fmt: skip
        out.setColor(which, QColor(colour))
    for which in (role.WindowText, role.Text, role.ButtonText):
        faded = QColor(c.faint)
        faded.setAlphaF(0.7)
        out.setColor(QPalette.ColorGroup.Disabled, which, faded)
    return out


def em(widget: QWidget, times: float = 1.0) -> int:
    """A length in pixels that grows with the text: ``times`` its line height."""
    return round(QFontMetricsF(widget.font()).height() * times)
