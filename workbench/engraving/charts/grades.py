"""Charts of judgements: what makes up a grade, and what a fit changed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from textwrap import shorten
from typing import TYPE_CHECKING

from workbench.engraving.charts.kit import Chart, Format, axes, draw, legend
from workbench.language.names import decimal
from workbench.language.speech import say
from workbench.teaching.grading.features import Feature
from workbench.teaching.grading.grade import Grade, place_of

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

LONGEST = 46  # characters of a name beside a chart


@dataclass(frozen=True)
class Moved:
    """Something a fit moved: its name, where it stood before and after, and where the
    teacher wants it (None: they said nothing of it)."""

    name: str
    before: float
    after: float
    wanted: float | None = None


def demands_chart(
    features: Sequence[Feature], estimate: Grade, form: Format, teacher: float | None = None
) -> Chart:
    """At which grade each demand is typical, the hardest on top, beside the estimate and
    the teacher's own grade where they gave one."""
    rows = sorted(features, key=lambda f: (f.level, f.demand.name))
    names = [say(f.demand.name) for f in rows]

    def paint(fig: Figure) -> None:
        ax = fig.subplots()
        _grades(ax, form, names)
        ax.barh(range(len(rows)), [f.level for f in rows], height=0.72, color=form.ink.middle)
        ax.axvline(
            place_of(estimate.number, estimate.level), color=form.ink.ink, linewidth=1.4,
            label=say("estimate"),
        )  # fmt: skip
        if teacher is not None:
            ax.axvline(
                teacher, color=form.ink.ink, linewidth=1.4, linestyle=(0, (2, 2)),
                label=say("teacher's grade"),
            )  # fmt: skip
        legend(fig, ax, form)

    top = rows[::-1][:3]
    words = say(
        "Estimate: {estimate}. What asks most: {names}.",
        estimate=estimate.words,
        names=", ".join(say(f.demand.name) for f in top),
    )
    title = say("What makes up the grade")
    return draw("demands", title, words, form.size * (9 + 1.9 * len(rows)), form, paint)


def grades_chart(rows: Sequence[Moved], form: Format) -> Chart:
    """Pieces graded by the teacher: the estimate before and after a fit, and their word.
    Places are grades with their thirds as fractions."""
    title = say("Estimates before and after, beside your grades")
    words = " ".join(
        say(
            "{name}: {before} before, {after} after, your grade {wanted}.",
            name=r.name,
            before=decimal(r.before),
            after=decimal(r.after),
            wanted="–" if r.wanted is None else decimal(r.wanted),
        )
        for r in rows
    )

    def paint(fig: Figure) -> None:
        ax = fig.subplots()
        _grades(ax, form, [r.name for r in rows][::-1])
        _pairs(ax, rows[::-1], form)
        wanted = [(r.wanted, k) for k, r in enumerate(rows[::-1]) if r.wanted is not None]
        if wanted:
            ax.plot(
                [x for x, _ in wanted], [k for _, k in wanted], "|", linestyle="none",
                markersize=form.size * 1.7, markeredgewidth=2.2, color=form.ink.alarm,
                label=say("your grade"),
            )  # fmt: skip
        legend(fig, ax, form)

    return draw("grades", title, words, form.size * (9 + 2.1 * len(rows)), form, paint)


def weights_chart(rows: Sequence[Moved], form: Format) -> Chart:
    """Weights that a fit changed, as parts of what they were: 1 is no change."""
    title = say("How the weights moved")
    words = " ".join(
        say(
            "{name}: {before} before, {after} now.",
            name=r.name,
            before=decimal(r.before, 2),
            after=decimal(r.after, 2),
        )
        for r in rows
    )

    def paint(fig: Figure) -> None:
        ax = fig.subplots()
        _sideways(ax, form, [r.name for r in rows][::-1], say("Weight"))
        _pairs(ax, rows[::-1], form)
        ax.set_xlim(0, max([0.1, *(max(r.before, r.after) for r in rows)]) * 1.08)
        legend(fig, ax, form)

    return draw("weights", title, words, form.size * (9 + 2.1 * len(rows)), form, paint)


def _pairs(ax: Axes, rows: Sequence[Moved], form: Format) -> None:
    """A hollow point where each stood, a full one where it stands, a line between."""
    places = range(len(rows))
    ax.hlines(
        places, [r.before for r in rows], [r.after for r in rows],
        color=form.ink.middle, linewidth=1.4,
    )  # fmt: skip
    ax.plot(
        [r.before for r in rows], places, "o", linestyle="none", color=form.ink.ink,
        markerfacecolor=form.ink.ground or "#ffffff", markersize=form.size * 0.8,
        label=say("before"),
    )  # fmt: skip
    ax.plot(
        [r.after for r in rows], places, "o", linestyle="none", color=form.ink.ink,
        markersize=form.size * 0.65, label=say("now"),
    )  # fmt: skip


def _sideways(ax: Axes, form: Format, names: Sequence[str], x: str) -> None:
    """Axes whose rows have names."""
    axes(ax, form, x=x)
    ax.grid(visible=False, axis="y")
    ax.grid(axis="x", color=form.ink.line, linewidth=0.6)
    longest = max(18, min(LONGEST, int(form.width / form.size * 0.75)))
    ax.set_yticks(range(len(names)), [shorten(n, longest, placeholder=" …") for n in names])
    ax.tick_params(axis="y", length=0)
    ax.set_ylim(-0.7, len(names) - 0.3)


def _grades(ax: Axes, form: Format, names: Sequence[str]) -> None:
    """Rows along the scale of grades."""
    _sideways(ax, form, names, say("Grade"))
    ax.set_xlim(-0.5, 9)
    ax.set_xticks(range(9))
