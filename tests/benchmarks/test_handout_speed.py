"""How long a four-page handout takes, from the fingered lesson to the bytes of its PDF.

The yardstick is matplotlib's PDF backend, in the same run and on the same paper: as many
pages with as many strings of text and as many shapes, placed one by one and known
beforehand, while the handout has to engrave, wrap and break its pages as well.
"""

from __future__ import annotations

import io
import re
import statistics
import time

import matplotlib
import pytest
from matplotlib.backends.backend_pdf import FigureCanvasPdf, PdfPages
from matplotlib.figure import Figure
from matplotlib.patches import Rectangle
from pypdf import PdfReader

from workbench.engraving.app import ensure_gui
from workbench.fingering.engine import solve
from workbench.handout.setting import engraved
from workbench.handout.sheets.page import Handout, HandoutOptions
from workbench.instrument.table import hand, instrument
from workbench.teaching.lessons.demo import demo_lessons

PAGES = 4
ROUNDS = 5


@pytest.fixture(scope="module")
def lesson_and_options():
    """A shipped lesson with its fingering, and options that give it four pages."""
    ensure_gui()
    choices = (HandoutOptions(), HandoutOptions(large=True), HandoutOptions(audience="teacher"))
    for lesson in demo_lessons():
        player = instrument(lesson.instrument, lesson.capo)
        fingering = solve(
            lesson.piece, player, hand(lesson.hand), settings=lesson.settings, pins=lesson.pins
        )
        for options in choices:
            if Handout(lesson, fingering, options).count == PAGES:
                return lesson, fingering, options
    raise AssertionError("no shipped lesson fills four pages")


def made(lesson, fingering, options) -> bytes:
    """The PDF, nothing kept from before."""
    engraved.forget()
    return Handout(lesson, fingering, options).pdf()


def marks(pdf: bytes) -> list[tuple[int, int]]:
    """(strings of text, painted shapes) of every page."""
    out = []
    for page in PdfReader(io.BytesIO(pdf)).pages:
        drawn = page.get_contents().get_data()
        shapes = re.findall(rb"(?m)^(?:f|f\*|S|B|B\*|b)\s*$", drawn)
        out.append((drawn.count(b"\nBT\n"), len(shapes)))
    return out


def by_matplotlib(counts) -> bytes:
    """As many pages, strings and shapes by matplotlib's PDF backend."""
    target = io.BytesIO()
    with matplotlib.rc_context({"pdf.fonttype": 42}), PdfPages(target) as book:
        for texts, shapes in counts:
            figure = Figure(figsize=(8.27, 11.69))
            FigureCanvasPdf(figure)
            for k in range(texts):
                figure.text(
                    0.05 + 0.9 * (k % 20) / 20,
                    0.05 + 0.9 * (k // 20 % 60) / 60,
                    "wait 3",
                    fontsize=8,
                )
            for k in range(shapes):
                corner = (0.05 + 0.9 * (k % 40) / 40, 0.05 + 0.9 * (k // 40 % 60) / 60)
                figure.add_artist(Rectangle(corner, 0.01, 0.004, color="black"))
            book.savefig(figure)
    return target.getvalue()


def seconds(work) -> float:
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


def test_a_four_page_handout_is_soon_made(benchmark, lesson_and_options):
    counts = marks(made(*lesson_and_options))
    by_matplotlib(counts)
    ours, theirs = [], []
    for _ in range(ROUNDS):
        ours.append(seconds(lambda: made(*lesson_and_options)))
        theirs.append(seconds(lambda: by_matplotlib(counts)))
    benchmark.pedantic(made, args=lesson_and_options, rounds=1)
    mine, other = statistics.median(ours), statistics.median(theirs)
    texts, shapes = (sum(c[k] for c in counts) for k in (0, 1))
    benchmark.extra_info.update(ours_s=mine, matplotlib_s=other, ratio=mine / other)
    print(
        f"\n{PAGES} pages, {texts} strings and {shapes} shapes: handout {mine:.2f} s, "
        f"matplotlib {other:.2f} s"
    )
    assert mine / other < 1.5


def test_another_option_is_soon_seen(benchmark, lesson_and_options):
    """A preview after a change of option against the first one: the music is kept."""
    lesson, fingering, options = lesson_and_options

    def first():
        engraved.forget()
        Handout(lesson, fingering, options)

    def again():
        Handout(lesson, fingering, options)

    fresh = statistics.median(seconds(first) for _ in range(ROUNDS))
    kept = statistics.median(seconds(again) for _ in range(ROUNDS))
    benchmark.pedantic(again, rounds=1)
    print(f"\nlaid out in {fresh:.2f} s, again in {kept:.2f} s")
    assert kept < fresh
