"""Qt without a window: the application object and the project's own fonts."""

from __future__ import annotations

import os
import sys
from functools import lru_cache
from pathlib import Path

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QFont, QFontDatabase, QFontMetricsF, QGuiApplication

from workbench.music.errors import BadInput

FONT_FOLDER = Path(__file__).resolve().parents[2] / "resources" / "fonts"
SERIF = "Noto Serif"
SANS = "Noto Sans"
#: Families asked in turn for signs the first does not hold (♭ ♯ ①).
FALLBACK = ("Noto Music", "Noto Sans Symbols")

_own_app: list[QCoreApplication] = []
_loaded: list[int] = []
_metrics: dict[tuple[str, bool, bool], QFontMetricsF] = {}


def ensure_gui() -> QCoreApplication:
    """The running application, or a new one that needs no display; fonts loaded."""
    app = QCoreApplication.instance()
    if app is None:
        if sys.platform.startswith("linux"):
            os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
        app = QGuiApplication(["pluckwright"])
        _own_app.append(app)
    load_fonts()
    return app


def load_fonts() -> None:
    """Register the shipped fonts once. Raises BadInput where they are missing."""
    if _loaded:
        return
    files = sorted(FONT_FOLDER.glob("*.ttf"))
    numbers = [QFontDatabase.addApplicationFont(str(f)) for f in files]
    if not files or -1 in numbers:
        raise BadInput(
            "The fonts that belong to the program are missing from resources/fonts; "
            "install it again."
        )
    _loaded.extend(numbers)


def font(size: float, family: str = SERIF, *, bold: bool = False, italic: bool = False) -> QFont:
    """A shipped font; ``size`` in pixels of the painter it is used with."""
    made = QFont([family, *FALLBACK])
    made.setPixelSize(max(1, round(size)))
    made.setBold(bold)
    made.setItalic(italic)
    made.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    made.setKerning(False)
    made.setFeature(QFont.Tag("liga"), 0)  # so that a search for "first" finds it
    return made


def text_width(text: str, size: float, family: str, bold: bool, italic: bool) -> float:
    """Advance width of ``text`` at ``size``, in the unit of ``size``."""
    return _advance(text, family, bold, italic) * size / 1000


@lru_cache(maxsize=8192)
def _advance(text: str, family: str, bold: bool, italic: bool) -> float:
    key = (family, bold, italic)
    if key not in _metrics:
        _metrics[key] = QFontMetricsF(font(1000, family, bold=bold, italic=italic))
    return _metrics[key].horizontalAdvance(text)
