"""How a window is laid out, kept on the shelf and found again."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QByteArray
from PySide6.QtWidgets import QSplitter

from workbench.music.errors import BadInput
from workbench.ui.kit import look
from workbench.ui.kit.look import em

if TYPE_CHECKING:
    from workbench.store.shelf import Shelf
    from workbench.ui.window.window import Window

KEPT = "window.state"


def _splitters(window: Window) -> dict[str, QSplitter]:
    """Every splitter under a name that stays: its place among the window's splitters."""
    named = {"across": window.across, "middle": window.middle, "bar_side": window.bar_side}
    rest = [s for s in window.teaching.findChildren(QSplitter) if s not in named.values()]
    return named | {s.objectName() or f"teaching{at}": s for at, s in enumerate(rest)}


def remember(window: Window) -> None:
    """Keep colours, text size, zoom, sizes and tabs."""
    state: dict[str, Any] = {
        "theme": window.look.theme,
        "scale": window.look.scale,
        "left_handed": window.neck.neck.mirrored,
        "zoom": window.score.zoom,
        "neck_zoom": window.neck.neck.zoom,
        "side": window.side.currentIndex(),
        "view": window.teaching.currentIndex(),
        "geometry": _text(window.saveGeometry()),
    }
    for name, splitter in _splitters(window).items():
        state[name] = _text(splitter.saveState())
    session = window.session
    session.guard(lambda: session.shelf.set_setting(KEPT, state))


def _kept(shelf: Shelf) -> dict[str, Any]:
    try:
        kept = shelf.setting(KEPT, {})
    except BadInput:
        return {}
    return kept if isinstance(kept, dict) else {}


def kept_look(shelf: Shelf) -> look.Look:
    """The colours and text size the window had last."""
    kept = _kept(shelf)
    scale, theme = kept.get("scale", 100), kept.get("theme", look.THEMES[2])
    if scale in look.SCALES and theme in look.THEMES:
        return look.Look(theme, scale)
    return look.Look()


def restore(window: Window) -> None:
    """Lay the window out as it was; what is kept no more, or was spoilt, is left as it comes."""
    kept = _kept(window.session.shelf)
    window.resize(em(window, 76), em(window, 46))
    window.look = kept_look(window.session.shelf)
    look.apply(window.look)
    window.menus.show_look()
    window.shape_sizes()
    if "geometry" in kept:
        window.restoreGeometry(_bytes(kept["geometry"]))
    for name, splitter in _splitters(window).items():
        if name in kept:
            along = splitter.orientation()
            splitter.restoreState(_bytes(kept[name]))
            splitter.setOrientation(along)  # kept by an older program, it may lie the other way
    window.set_left_handed(bool(kept.get("left_handed")))
    window.score.zoom = _number(kept.get("zoom"))
    window.neck.neck.zoom = _number(kept.get("neck_zoom"))
    for tabs, name in ((window.side, "side"), (window.teaching, "view")):
        at = kept.get(name)
        if isinstance(at, int) and 0 <= at < tabs.count():
            tabs.setCurrentIndex(at)


def reset(window: Window) -> None:
    """Sizes, tabs and zoom as at the first start; colours and text size stay."""
    if window.isFullScreen() or window.isMaximized():
        window.showNormal()
    window.resize(em(window, 76), em(window, 46))
    window.shape_sizes()
    window.side.setCurrentIndex(0)
    window.teaching.setCurrentIndex(0)
    window.neck.neck.zoom = 1.0
    window.neck.refresh()
    window.score.set_zoom(1.0)


def _number(value: Any) -> float:
    return float(value) if isinstance(value, int | float) and 0.05 <= value <= 20 else 1.0


def _text(state: QByteArray) -> str:
    return bytes(state.toBase64().data()).decode()


def _bytes(text: Any) -> QByteArray:
    return QByteArray.fromBase64(str(text).encode("ascii", "ignore"))
