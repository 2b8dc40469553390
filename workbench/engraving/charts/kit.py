"""What all charts share: inks, the shipped fonts, and a figure as SVG that Qt can paint.

Shades differ in lightness, so that a chart can be read in grey as well; there are no
hatches, which Qt would turn into pictures. The same chart always gives the same bytes.
"""

from __future__ import annotations

import io
import threading
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING

from workbench.engraving.app import FALLBACK, FONT_FOLDER, SANS
from workbench.language.names import point_words

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

_drawing = threading.Lock()  # the drawing library keeps state of its own


@dataclass(frozen=True)
class Ink:
    """Colours as ``#rrggbb``. ``strong``, ``middle``, ``light`` and ``pale`` differ in
    lightness in that order; ``alarm`` is for what is cut or pushes the grade up;
    ``ground`` lies behind the chart (None: nothing does)."""

    ink: str = "#000000"
    faint: str = "#555555"
    line: str = "#c4c4c4"
    strong: str = "#2f2f2f"
    middle: str = "#7d7d7d"
    light: str = "#bdbdbd"
    pale: str = "#ececec"
    alarm: str = "#000000"
    ground: str | None = None


PRINT = Ink()


@dataclass(frozen=True)
class Chart:
    """A drawn chart. ``words`` tell what it shows to whoever cannot see it; lengths in
    points. ``columns`` are (written bar or day, left, right) where the chart runs along
    bars or days, and ``top`` is where they begin."""

    id: str
    title: str
    words: str
    svg: bytes
    width: float
    height: float
    columns: tuple[tuple[int, float, float], ...] = ()
    top: float = 0.0

    def at(self, x: float) -> int | None:
        """The bar or day whose column holds that distance from the left edge."""
        return next((which for which, left, right in self.columns if left <= x < right), None)


@dataclass(frozen=True)
class Format:
    """``width`` of the chart and ``size`` of its text, both in points."""

    width: float = 500.0
    size: float = 8.0
    ink: Ink = PRINT


Columns = tuple[tuple[int, float, float], ...]
Paint = Callable[["Figure"], Callable[[], Columns] | None]


def draw(chart_id: str, title: str, words: str, height: float, form: Format, paint: Paint) -> Chart:
    """Draw a chart: ``paint`` fills the figure and may return what gives the columns
    once everything has found its place. ``height`` in points."""
    with _drawing:
        _prepare()
        from matplotlib.backends.backend_svg import FigureCanvasSVG
        from matplotlib.figure import Figure

        fig = Figure(figsize=(form.width / 72, height / 72), dpi=72, layout="constrained")
        FigureCanvasSVG(fig)
        fig.patch.set_visible(form.ink.ground is not None)
        if form.ink.ground:
            fig.patch.set_facecolor(form.ink.ground)
        columns = paint(fig)
        out = io.BytesIO()
        fig.savefig(
            out, format="svg", transparent=form.ink.ground is None,
            metadata={"Date": None, "Creator": None, "Format": None, "Type": None},
        )  # fmt: skip
        found = columns() if columns else ()
        top = height * (1.0 - max(ax.get_position().y1 for ax in fig.axes))
    return Chart(chart_id, title, words, out.getvalue(), form.width, height, found, top)


@cache
def _prepare() -> None:
    """Set up the drawing library once: our fonts, text that stays text, no chance."""
    import matplotlib
    from matplotlib import font_manager

    for path in sorted(FONT_FOLDER.glob("*.ttf")):
        font_manager.fontManager.addfont(str(path))
    matplotlib.rcParams.update(
        {
            "svg.fonttype": "none",
            "svg.hashsalt": "chart",
            "font.family": [SANS, *FALLBACK],
            "axes.unicode_minus": False,
        }
    )


def axes(ax: Axes, form: Format, *, x: str = "", y: str = "") -> None:
    """Give axes the project's look: two quiet edges, names in words, figures small."""
    ink = form.ink
    ax.set_facecolor("none")
    for side in ("top", "right"):
        ax.spines[side].set_visible(False)
    for side in ("left", "bottom"):
        ax.spines[side].set_color(ink.faint)
        ax.spines[side].set_linewidth(0.7)
    ax.tick_params(colors=ink.ink, labelsize=form.size, width=0.7, length=form.size * 0.35)
    ax.set_axisbelow(True)
    ax.grid(axis="y", color=ink.line, linewidth=0.6)
    ax.set_xlabel(x, color=ink.ink, fontsize=form.size)
    ax.set_ylabel(y, color=ink.ink, fontsize=form.size)
    plain, spoken = _figures()
    for axis in (ax.xaxis, ax.yaxis):
        if type(axis.get_major_formatter()) is plain:
            axis.set_major_formatter(spoken())


@cache
def _figures() -> tuple[type, type]:
    """How the library writes figures beside an axis, and how the language spoken does."""
    from matplotlib.ticker import ScalarFormatter

    class Spoken(ScalarFormatter):
        def __call__(self, x: float, pos: int | None = None) -> str:
            return point_words(super().__call__(x, pos))

    return ScalarFormatter, Spoken


def legend(fig: Figure, ax: Axes, form: Format) -> None:
    """The legend above the axes, in as many rows as it needs."""
    from matplotlib.container import BarContainer

    named = list(zip(*ax.get_legend_handles_labels(), strict=True))
    named.sort(key=lambda pair: not isinstance(pair[0], BarContainer))  # bars first
    handles, labels = [h for h, _ in named], [name for _, name in named]
    widths = [form.size * (0.56 * len(name) + 3.6) for name in labels] or [form.width]
    columns = max(1, min(len(labels), int(form.width / max(widths))))
    if sum(widths) <= form.width:
        columns = len(labels)
    order = [k for column in range(columns) for k in range(column, len(labels), columns)]
    fig.legend(
        [handles[k] for k in order], [labels[k] for k in order],
        loc="outside upper left", ncols=columns, frameon=False, fontsize=form.size,
        labelcolor=form.ink.ink, handlelength=1.4, columnspacing=1.4,
    )  # fmt: skip


def spread(names: Sequence[str], room: float, size: float) -> list[int]:
    """Places of the names that fit beside each other in ``room``: every one, every
    second, fourth, eighth ..."""
    widest = max((len(n) for n in names), default=1) * size * 0.62 + size * 0.6
    step = next((s for s in (1, 2, 4, 8, 16, 32, 64, 128) if len(names) / s * widest <= room), 256)
    return list(range(0, len(names), step))
