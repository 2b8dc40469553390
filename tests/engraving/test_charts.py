"""What the charts show, read from the drawings and their words."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from lxml import etree
from PySide6.QtCore import QByteArray
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

from tests.teaching.hand_made import bar as bar_of
from tests.teaching.hand_made import build, n
from workbench.commands.prepare import fingering_of
from workbench.engraving.charts.grades import Moved, demands_chart, grades_chart
from workbench.engraving.charts.kit import Format, Ink
from workbench.engraving.charts.lesson import (
    charts_for,
    curve_chart,
    effort_chart,
    plan_chart,
    plan_of,
    section_starts,
)
from workbench.instrument.table import hand, instrument
from workbench.language.fact import fact
from workbench.language.speech import speaking
from workbench.teaching.assess import assess
from workbench.teaching.lessons.demo import demo_lessons
from workbench.teaching.lessons.lesson import Lesson

FORM = Format(500.0, 8.0, Ink(alarm="#aa0000"))  # black would be no colour in the drawing
NS = {"s": "http://www.w3.org/2000/svg"}


@pytest.fixture(scope="module")
def lesson():
    return demo_lessons()[4]


@pytest.fixture(scope="module")
def fingering(lesson):
    return fingering_of(lesson)


def tree(chart):
    return etree.fromstring(chart.svg)


def texts(chart):
    return ["".join(t.itertext()).strip() for t in tree(chart).iterfind(".//s:text", NS)]


def bars_drawn(chart, within=0):
    """Filled shapes of a colour, as (left, top, right, bottom), by fill, of one plot."""
    found = {}
    plot = tree(chart).findall(".//s:g[@id]", NS)
    plot = [g for g in plot if re.fullmatch(r"axes_\d+", g.get("id"))][within]
    for path in plot.iterfind(".//s:path", NS):
        fill = re.search(r"fill: (#[0-9a-f]{6})", path.get("style") or "")
        if not fill or not path.get("clip-path"):
            continue
        numbers = [float(x) for x in re.findall(r"-?\d+\.?\d*", path.get("d"))]
        xs, ys = numbers[0::2], numbers[1::2]
        found.setdefault(fill.group(1), []).append((min(xs), min(ys), max(xs), max(ys)))
    return found


def test_every_chart_can_be_painted_and_tells_itself_in_words(lesson, fingering):
    charts = charts_for(lesson, fingering)
    assert len(charts) == 3
    for title, svg in charts:
        assert title
        drawing = QSvgRenderer(QByteArray(svg))
        assert drawing.isValid()
        image = QImage(500, 250, QImage.Format.Format_RGB32)
        image.fill(QColor("white"))
        painter = QPainter(image)
        drawing.render(painter)
        painter.end()
        blank = QImage(500, 250, QImage.Format.Format_RGB32)
        blank.fill(QColor("white"))
        assert image != blank


def test_a_column_for_every_bar_as_high_as_its_effort(lesson, fingering):
    chart = effort_chart(lesson, fingering, FORM)
    efforts = [b.effort for b in sorted(fingering.bars, key=lambda b: b.index)]
    drawn = sorted(bars_drawn(chart)[FORM.ink.middle])
    assert len(drawn) == len(lesson.piece.bars)
    high = [bottom - top for _, top, _, bottom in drawn]
    scale = max(high) / max(efforts)
    assert high == pytest.approx([e * scale for e in efforts], abs=0.1)
    hardest = max(range(len(efforts)), key=lambda k: efforts[k])
    number = lesson.piece.bars[hardest].number
    assert re.search(rf"Most effort: .*\b{number}\b", chart.words)
    for _, letter in section_starts(lesson):
        assert letter in texts(chart)


def test_a_click_finds_the_bar_that_is_drawn_there(lesson, fingering):
    chart = effort_chart(lesson, fingering, FORM)
    drawn = sorted(bars_drawn(chart)[FORM.ink.middle])
    for bar, (left, _, right, _) in zip(lesson.piece.bars, drawn, strict=True):
        assert chart.at((left + right) / 2) == bar.index
    assert chart.at(0.0) is None


def test_cut_notes_are_drawn_below_their_bars_and_told(lesson, fingering):
    bars = sorted(fingering.bars, key=lambda b: b.index)
    cut = replace(bars[1].notes[0], cut_reason=fact("out of stretch", note="C"), cut_kind="hop")
    spoilt = replace(bars[1], notes=(cut, *bars[1].notes[1:]))
    others = [replace(b, notes=tuple(replace(n, cut_reason=None, cut_kind="") for n in b.notes))
              for b in bars]  # fmt: skip
    whole = replace(fingering, bars=tuple(others))
    assert "No note is cut." in texts(effort_chart(lesson, whole, FORM))
    chart = effort_chart(lesson, replace(whole, bars=(others[0], spoilt, *others[2:])), FORM)
    number = lesson.piece.bars[bars[1].index].number
    assert f"Notes are cut in bar {number}." in chart.words
    high = [b - t for _, t, _, b in sorted(bars_drawn(chart, 1)[FORM.ink.alarm])]
    assert [k for k, h in enumerate(high) if h > 0.1] == [1]


def test_the_days_of_the_plan_are_as_high_as_their_minutes(lesson, fingering):
    plan = plan_of(lesson, fingering)
    chart = plan_chart(plan, FORM)
    drawn = bars_drawn(chart)
    learned = sorted(drawn[FORM.ink.strong])
    minutes = [sum(i.minutes for i in d.items if i.kind == "learn") for d in plan.days]
    high = [bottom - top for _, top, _, bottom in learned]
    scale = max(high) / max(minutes)
    assert high == pytest.approx([m * scale for m in minutes], abs=0.2)
    assert f"day {plan.last_day}" in chart.words
    assert {"new bars", "review", "free day"} <= set(texts(chart))
    done = replace(plan, days=())
    assert plan_chart(done, FORM).words == "Everything is done."


def test_the_learning_curve_names_the_bar_that_takes_longest(lesson, fingering):
    plan = plan_of(lesson, fingering)
    chart = curve_chart(lesson.piece, plan.time, FORM)
    longest = max(plan.time.bars, key=lambda b: (b.minutes, b.bar))
    number = lesson.piece.bars[longest.bar].number
    assert chart.words.startswith(f"Bar {number} takes longest")
    assert f"bar {number}, takes longest" in texts(chart)


def test_demands_are_drawn_hardest_on_top(lesson, fingering):
    judged = assess(lesson.piece, fingering, instrument(lesson.instrument), hand(lesson.hand))
    chart = demands_chart(judged.features, judged.estimate, FORM, teacher=3.5)
    rows = sorted(bars_drawn(chart)[FORM.ink.middle], key=lambda b: b[1])
    long = [right - left for left, _, right, _ in rows]
    levels = sorted((f.level for f in judged.features), reverse=True)
    scale = max(long) / max(levels)
    assert long == pytest.approx([x * scale for x in levels], abs=0.2)
    assert {"estimate", "teacher's grade"} <= set(texts(chart))
    assert str(judged.estimate.words) in chart.words
    assert "teacher's grade" not in texts(demands_chart(judged.features, judged.estimate, FORM))


def test_graded_pieces_are_told_before_and_after():
    rows = [Moved("Ferry", 1.2, 2.4, 2.5), Moved("Harbour", 3.0, 3.1)]
    chart = grades_chart(rows, FORM)
    assert {"Ferry", "Harbour", "before", "now", "your grade"} <= set(texts(chart))
    assert "Ferry: 1.2 before, 2.4 after, your grade 2.5." in chart.words
    assert "Harbour: 3.0 before, 3.1 after, your grade –." in chart.words


def test_the_same_chart_gives_the_same_bytes_and_dark_ink_another(lesson, fingering):
    first = effort_chart(lesson, fingering, FORM)
    assert effort_chart(lesson, fingering, FORM).svg == first.svg
    dark = replace(FORM, ink=Ink(ink="#eeeeee", ground="#202020"))
    assert b"#202020" in effort_chart(lesson, fingering, dark).svg
    assert b"#202020" not in first.svg


@pytest.mark.parametrize("language", ["en", "de"])
def test_words_beside_the_plots_keep_clear_of_one_another(lesson, fingering, language):
    with speaking(language):
        chart = effort_chart(lesson, fingering, FORM)
    font = QFont("Noto Sans")
    font.setPixelSize(8)
    spans = []
    for text in tree(chart).iterfind(".//s:text", NS):
        if (text.get("transform") or "").startswith("rotate(-90 "):
            half = QFontMetricsF(font).horizontalAdvance("".join(text.itertext()).strip()) / 2
            middle = float(text.get("y"))
            spans.append((middle - half, middle + half))
    assert len(spans) == 2
    first, second = sorted(spans)
    assert first[1] < second[0]


def test_a_piece_in_one_part_has_no_letters_over_its_chart():
    made, _ = build(bar_of(n("C4", 4)), bar_of(n("D4", 4)))
    assert section_starts(Lesson("x", "X", made, "ukulele")) == ()
    two, _ = build(bar_of(n("C4", 4), section="A"), bar_of(n("D4", 4), section="B"))
    assert section_starts(Lesson("x", "X", two, "ukulele")) == ((0, "A"), (1, "B"))
