"""How a window is laid out, kept on the shelf and found again."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from PySide6.QtCore import QByteArray

from workbench.music.errors import BadInput
from workbench.store.setting_names import WINDOW_STATE
from workbench.store.shelf import Shelf
from workbench.ui.kit import look
from workbench.ui.window.panels import Panels


@dataclass(frozen=True)
class Layout:
    """Colours, text size, zooms, tabs and sizes. ``view`` and ``side`` are -1, ``geometry`` is
    empty, and a splitter is missing where nothing is kept of it."""

    look: look.Look = field(default_factory=look.Look)
    zoom: float = 1.0
    neck_zoom: float = 1.0
    side: int = -1
    view: int = -1
    geometry: str = ""
    splitters: tuple[tuple[str, str], ...] = ()


def sizes(panels: Panels) -> dict[str, QByteArray]:
    """How the splitters share the room, also those that are not seen in a narrow window."""
    states = {name: splitter.saveState() for name, splitter in panels.splitters.items()}
    return states | panels.columns.states if panels.columns.narrow else states


def put_sizes(panels: Panels, states: Mapping[str, QByteArray]) -> None:
    """Share the room as it was; a splitter that ``states`` does not name stays as it is."""
    columns = panels.columns
    for name, splitter in panels.splitters.items():
        if name not in states:
            continue
        if columns.narrow and name in columns.states:
            columns.states[name] = states[name]  # for when there is room again
            continue
        along = splitter.orientation()
        splitter.restoreState(states[name])
        splitter.setOrientation(along)  # kept by an older program, it may lie the other way


def taken(panels: Panels, shown: look.Look, geometry: QByteArray) -> Layout:
    """The layout of a window as it is now."""
    columns = panels.columns
    return Layout(
        look=shown,
        zoom=panels.score.zoom,
        neck_zoom=panels.neck.neck.zoom,
        side=columns.side if columns.narrow else panels.side.currentIndex(),
        view=panels.teaching.view,
        geometry=_text(geometry),
        splitters=tuple((name, _text(state)) for name, state in sizes(panels).items()),
    )


def put(panels: Panels, layout: Layout) -> None:
    """Lay the parts out as they were; what is kept no more, or was spoilt, stays as it is."""
    put_sizes(panels, {name: as_bytes(state) for name, state in layout.splitters})
    panels.score.zoom = layout.zoom
    panels.neck.neck.zoom = layout.neck_zoom
    if 0 <= layout.side < panels.side.count():
        panels.side.setCurrentIndex(layout.side)
    if 0 <= layout.view < len(panels.teaching.views):
        panels.teaching.show_view(layout.view)


def reset(panels: Panels) -> None:
    """Tabs and zoom as at the first start."""
    panels.side.setCurrentIndex(0)
    panels.teaching.show_view(0)
    panels.neck.neck.zoom = 1.0
    panels.neck.refresh()
    panels.score.set_zoom(1.0)


def keep(shelf: Shelf, layout: Layout) -> None:
    """Keep a layout on the shelf. Raises BadInput where the shelf refuses it."""
    state: dict[str, object] = {
        "theme": layout.look.theme,
        "scale": layout.look.scale,
        "zoom": layout.zoom,
        "neck_zoom": layout.neck_zoom,
        "side": layout.side,
        "view": layout.view,
        "geometry": layout.geometry,
    }
    shelf.set_setting(WINDOW_STATE, state | dict(layout.splitters))


def kept(shelf: Shelf) -> Layout:
    """The layout the window had last; what was spoilt is left as at the first start."""
    try:
        found = shelf.setting(WINDOW_STATE, {})
    except BadInput:
        return Layout()
    if not isinstance(found, dict):
        return Layout()
    own = {"theme", "scale", "zoom", "neck_zoom", "side", "view", "geometry"}
    return Layout(
        look=_look(found.get("scale", 100), found.get("theme", look.THEMES[2])),
        zoom=_number(found.get("zoom")),
        neck_zoom=_number(found.get("neck_zoom")),
        side=_place(found.get("side")),
        view=_place(found.get("view")),
        geometry=str(found.get("geometry", "")),
        splitters=tuple(
            (name, state)
            for name, state in found.items()
            if name not in own and isinstance(state, str)
        ),
    )


def _look(scale: object, theme: object) -> look.Look:
    known = scale in look.SCALES and theme in look.THEMES
    if known and isinstance(theme, str) and isinstance(scale, int):
        return look.Look(theme, scale)
    return look.Look()


def _place(value: object) -> int:
    return value if isinstance(value, int) else -1


def _number(value: object) -> float:
    return float(value) if isinstance(value, int | float) and 0.05 <= value <= 20 else 1.0


def _text(state: QByteArray) -> str:
    return bytes(state.toBase64().data()).decode()


def as_bytes(text: str) -> QByteArray:
    """What ``Layout`` holds as text, for Qt."""
    return QByteArray.fromBase64(text.encode("ascii", "ignore"))
