"""Charts of a lesson: effort and cuts along the bars, the learning curve, the plan by days.

For the window and for the teacher's sheet alike; ``charts_for`` gives what a sheet
prints, as vector drawings that ``QSvgRenderer`` paints.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from workbench.engraving.charts.kit import Chart, Columns, Format, axes, draw, legend, spread
from workbench.fingering.types import Fingering
from workbench.instrument.table import hand as find_hand
from workbench.instrument.table import instrument as find_instrument
from workbench.language.names import as_first_word
from workbench.language.speech import count, mark, say
from workbench.music.bar_names import bars_named, the_bar
from workbench.music.model import Piece
from workbench.music.order.form import in_one_part, sections
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.planning.plan import Plan, make_plan
from workbench.teaching.planning.practice import (
    EXPONENT,
    EXPONENT_QUICK,
    EXPONENT_SLOW,
    PracticeTime,
    learning_curve,
)

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

HARDEST = 3  # bars pointed out

#: Kinds of plan items from the bottom of a day's column upwards: name, which shade.
KINDS = (
    ("learn", mark("new bars"), "strong"),
    ("join", mark("joins"), "middle"),
    ("review", mark("review"), "light"),
    ("play through", mark("playing through"), "pale"),
    ("warm up", mark("warm-up"), "ground"),
)


def charts_for(
    lesson: Lesson,
    fingering: Fingering,
    *,
    width: float = 500.0,
    size: float = 8.0,
    plan: Plan | None = None,
) -> list[tuple[str, bytes]]:
    """(title, SVG) of every chart that the teacher's sheet shows, black on white.

    ``width`` of the charts and ``size`` of their text are in points; a chart's height
    stands in its SVG (``QSvgRenderer.viewBoxF``). ``plan`` is the practice plan where it
    is known already. Raises BadInput for a piece without notes.
    """
    form = Format(width, size)
    made = plan or plan_of(lesson, fingering)
    charts = (
        effort_chart(lesson, fingering, form),
        curve_chart(lesson.piece, made.time, form),
        plan_chart(made, form),
    )
    return [(chart.title, chart.svg) for chart in charts]


def plan_of(lesson: Lesson, fingering: Fingering) -> Plan:
    """The practice plan of a lesson as it stands, six days a week."""
    return make_plan(
        lesson.piece,
        fingering,
        find_instrument(lesson.instrument, lesson.capo),
        find_hand(lesson.hand),
        minutes_a_day=max(5, min(240, lesson.minutes_a_day)),
        tempo_percent=max(20.0, min(200.0, float(lesson.tempo_percent))),
        done=lesson.plan_done,
    )


def section_starts(lesson: Lesson) -> tuple[tuple[int, str], ...]:
    """(first written bar, letter) of every section: the teacher's, else the score's; none
    where the whole piece is one."""
    if lesson.sections:
        return tuple(sorted(lesson.sections))
    if in_one_part(lesson.piece):
        return ()
    return tuple((s.first_bar, s.letter) for s in sections(lesson.piece))


# Effort and cuts.


def effort_chart(lesson: Lesson, fingering: Fingering, form: Format) -> Chart:
    """Left-hand effort of every written bar, and below it how many notes are cut there."""
    bars = sorted(fingering.bars, key=lambda b: b.index)
    effort = [b.effort / 1000 for b in bars]
    cuts = [sum(1 for n in b.notes if n.cut_reason or n.cut_kind) for b in bars]
    ranked = sorted(range(len(bars)), key=lambda k: (-effort[k], k))
    hardest = [k for k in ranked[:HARDEST] if effort[k] > 0]

    def paint(fig: Figure) -> Callable[[], Columns]:
        upper, lower = fig.subplots(2, 1, sharex=True, height_ratios=(3.2, 1.0))
        places = range(len(bars))
        axes(upper, form, y=say("Left-hand effort"))
        axes(lower, form, x=say("Bar"), y=say("Cut notes"))
        upper.bar(places, effort, width=0.82, color=form.ink.middle)
        upper.plot(
            hardest, [effort[k] + 0.06 * max(effort) for k in hardest], "v", linestyle="none",
            markersize=form.size * 0.6, color=form.ink.alarm, label=say("most effort"),
        )  # fmt: skip
        lower.bar(places, cuts, width=0.82, color=form.ink.alarm)
        most = max([2, *cuts])
        lower.set_yticks([0, most])
        lower.set_ylim(0, most * 1.1)
        if not any(cuts):
            lower.annotate(
                say("No note is cut."), (0.5, 0.5), xycoords="axes fraction", ha="center",
                va="center", fontsize=form.size, color=form.ink.faint,
                bbox={"facecolor": form.ink.ground or "#ffffff", "linewidth": 0},
            )  # fmt: skip
        upper.set_xlim(-0.6, max(0.4, len(bars) - 0.4))
        upper.set_ylim(0, max([0.8, *effort]) * 1.3)
        names = ["–" if b.number == "0" else b.number for b in bars]
        shown = spread(names, form.width * 0.88, form.size)
        lower.set_xticks(shown, [names[k] for k in shown])
        upper.tick_params(bottom=False)
        _letters(upper, lower, section_starts(lesson), [b.index for b in bars], form)
        if hardest:
            legend(fig, upper, form)
        return lambda: tuple(
            (b.index, _x(upper, k - 0.5), _x(upper, k + 0.5)) for k, b in enumerate(bars)
        )

    piece = lesson.piece
    words = [_bar_words(piece, [bars[k].index for k in hardest], say("Most effort:"))]
    cut = [b.index for b, n in zip(bars, cuts, strict=True) if n]
    words.append(_bar_words(piece, cut, say("Notes are cut in")) if cut else say("No note is cut."))
    title = say("Effort and cut notes along the bars")
    return draw("effort", title, " ".join(words), form.size * 23, form, paint)


def _bar_words(piece: Piece, indices: Sequence[int], lead: str) -> str:
    return f"{lead} {bars_named(piece, tuple(indices))}."


def _x(ax: Axes, value: float) -> float:
    """Where a value lies, in points from the chart's left edge."""
    return float(ax.transData.transform((value, 0.0))[0])


def _letters(
    upper: Axes,
    lower: Axes,
    starts: Sequence[tuple[int, str]],
    indices: Sequence[int],
    form: Format,
) -> None:
    """A line where a section begins, and its letter above."""
    for first, letter in starts:
        if first not in indices:
            continue
        at = indices.index(first) - 0.5
        for ax in (upper, lower):
            ax.axvline(at, color=form.ink.faint, linewidth=0.7, linestyle=(0, (4, 3)))
        upper.annotate(
            letter, (at, 1.0), xycoords=("data", "axes fraction"), xytext=(form.size * 0.3, 0),
            textcoords="offset points", va="top", fontsize=form.size * 1.15, color=form.ink.ink,
        )  # fmt: skip


# The learning curve.


def curve_chart(piece: Piece, time: PracticeTime, form: Format) -> Chart:
    """How the hardest bar, and one in the middle, come up to tempo with the minutes
    spent on them; the band lies between quick and slow learners."""
    ranked = sorted(time.bars, key=lambda b: (b.minutes, b.bar))
    hard = ranked[-1]
    middle = ranked[(len(ranked) - 1) // 2]
    chosen = [hard] if middle.bar == hard.bar else [hard, middle]
    looks = (("strong", "light", "-"), ("middle", "pale", "--"))

    def paint(fig: Figure) -> None:
        ax = fig.subplots()
        axes(ax, form, x=say("Minutes spent on the bar"), y=say("Tempo reached (%)"))
        last = 0.0
        for bar, (line, band, dash) in zip(chosen, looks, strict=False):
            quick = learning_curve(bar, EXPONENT_QUICK)
            slow = learning_curve(bar, EXPONENT_SLOW)
            outline = [*quick, (slow[-1][0], 1.0), *reversed(slow)]
            ax.fill(
                [x for x, _ in outline], [100 * y for _, y in outline],
                color=getattr(form.ink, band), linewidth=0,
            )  # fmt: skip
            likely = learning_curve(bar, EXPONENT)
            name = the_bar(piece.bars[bar.bar].number)
            label = (
                say("{bar}, takes longest", bar=name)
                if bar is hard
                else say("{bar}, in the middle", bar=name)
            )
            ax.plot(
                [x for x, _ in likely], [100 * y for _, y in likely],
                color=getattr(form.ink, line), linestyle=dash, linewidth=1.8, label=label,
            )  # fmt: skip
            last = max(last, slow[-1][0])
        ax.set_ylim(0, 105)
        ax.set_xlim(0, last * 1.02)
        legend(fig, ax, form)

    quick, slow = learning_curve(hard, EXPONENT_QUICK)[-1][0], learning_curve(hard, EXPONENT_SLOW)
    words = say(
        "{bar} takes longest: {low} to {high} minutes until it is in tempo. The bands lie "
        "between quick and slow learners.",
        bar=as_first_word(the_bar(piece.bars[hard.bar].number)),
        low=round(quick),
        high=round(slow[-1][0]),
    )
    return draw("curve", say("How a bar comes up to tempo"), words, form.size * 20, form, paint)


# The plan by days.


def plan_chart(plan: Plan, form: Format) -> Chart:
    """Minutes of every day of the plan, by what they go to; free days are marked."""
    days = plan.days
    minutes = {
        kind: [sum(i.minutes for i in d.items if i.kind == kind) for d in days]
        for kind, _, _ in KINDS
    }

    def paint(fig: Figure) -> Callable[[], Columns]:
        ax = fig.subplots()
        axes(ax, form, x=say("Day"), y=say("Minutes"))
        places = range(len(days))
        below = [0.0] * len(days)
        for kind, name, shade in KINDS:
            part = minutes[kind]
            if any(part):
                fill = getattr(form.ink, shade) or "#ffffff"
                ax.bar(
                    places, part, bottom=below, width=0.82, color=fill, label=say(name),
                    edgecolor=form.ink.faint, linewidth=0.6,
                )  # fmt: skip
            below = [a + b for a, b in zip(below, part, strict=True)]
        free = [k for k, d in enumerate(days) if d.rest]
        if free:
            ax.plot(
                free, [0.03 * max([1.0, *below])] * len(free), "o", color=form.ink.ink,
                markerfacecolor="none", markersize=form.size * 0.5, linestyle="none",
                label=say("free day"),
            )  # fmt: skip
        ax.set_xlim(-0.6, max(0.4, len(days) - 0.4))
        ax.set_ylim(0, max([5.0, *below]) * 1.05)
        names = [str(d.day) for d in days]
        shown = spread(names, form.width * 0.88, form.size)
        ax.set_xticks(shown, [names[k] for k in shown])
        legend(fig, ax, form)
        return lambda: tuple((d.day, _x(ax, k - 0.5), _x(ax, k + 0.5)) for k, d in enumerate(days))

    if days:
        used = sum(1 for d in days if not d.rest)
        words = say(
            "{days}, the last of them day {last}; {minutes} minutes in all.",
            days=count(used, "{n} day with practice", "{n} days with practice"),
            last=plan.last_day,
            minutes=round(plan.minutes),
        )
    else:
        words = say("Everything is done.")
    return draw("plan", say("The plan by days"), words, form.size * 20, form, paint)
