"""Where pages end: against every way to break them, and on real handouts."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.engraving.small_pieces import bar, fingered, piece
from workbench.handout.options import HandoutOptions, sheet
from workbench.handout.parts.form_map import FormMap
from workbench.handout.parts.words import form_words
from workbench.handout.setting.blocks import Space
from workbench.handout.setting.compose import Flow, Loose, Together
from workbench.handout.setting.layout import (
    EMPTY,
    LONELY,
    PAGE,
    TURN,
    break_pages,
    joints,
    repeat_spans,
    turns_back,
)
from workbench.handout.setting.remarks import OwnNotesBlock
from workbench.handout.sheets.page import Handout
from workbench.instrument.table import instrument
from workbench.teaching.lessons.lesson import Lesson


def cost_of(starts, heights, room, head, feet, tail, bad) -> float | None:
    """The declared cost of page starts; None where a page is too full."""
    total, count = 0.0, len(heights)
    for start, end in zip(starts, [*starts[1:], count], strict=True):
        need = sum(heights[start:end]) + sum(feet[start:end])
        need += (head if start == 0 else 0) + (tail if end == count else 0)
        if need > room:
            return None
        total += PAGE
        if end < count:
            total += EMPTY * ((room - need) / room) ** 2 + TURN * bad[end - 1]
        elif end - start == 1 and count > 1:
            total += LONELY
    return total


@given(
    st.lists(
        st.tuples(st.integers(80, 160), st.integers(0, 90), st.booleans()), min_size=1, max_size=9
    ),
    st.integers(0, 200),
    st.integers(0, 60),
)
def test_no_other_page_ends_are_better(rows, head, tail) -> None:
    heights, feet, bad = ([r[k] for r in rows] for k in range(3))
    room, count = 520.0, len(rows)
    every = [
        cost
        for size in range(count)
        for cut in combinations(range(1, count), size)
        if (cost := cost_of([0, *cut], heights, room, head, feet, tail, bad)) is not None
    ]
    found = break_pages(heights, room, head, lambda i, j: sum(feet[i:j]), tail, bad)
    if not every:
        assert found is None or cost_of(found.starts, heights, room, head, feet, tail, bad) is None
        return
    assert found is not None
    assert found.cost == pytest.approx(min(every))
    assert found.turns == sum(bad[s - 1] for s in found.starts[1:])


def repeated(bars: int, first: int, last: int):
    """A piece whose bars ``first`` to ``last`` are played twice."""
    lines = ("C5:1 D5:1/2 E5:1/2 F5:1 C5:1", "A4:1/2 G4:1/2 F4:1 G4:2", "F4+A4:2 E4+C5:2")
    made = [bar(k, lines[k % 3], "C4:4") for k in range(bars)]
    made[first] = replace(made[first], repeat_start=True)
    made[last] = replace(made[last], repeat_end=True)
    return piece(made, title="There and back")


def handout_of(made, **options) -> Handout:
    lesson = Lesson("l", "There and back", made, "ukulele")
    return Handout(
        lesson, fingered(made, instrument("ukulele")), HandoutOptions(plan=False, **options)
    )


def test_spans_are_what_is_played_again() -> None:
    made = repeated(12, 2, 7)
    assert repeat_spans(made) == ((2, 7),)
    assert [turns_back(((2, 7),), k) for k in (1, 2, 6, 7)] == [False, True, True, False]


@pytest.mark.parametrize(
    ("bars", "first", "last"),
    [(36, 14, 27), (40, 18, 31), (30, 0, 15), (48, 20, 30), (44, 16, 25), (60, 36, 47)],
)
def test_no_page_is_turned_inside_a_repeat_that_one_page_can_hold(bars, first, last) -> None:
    made = repeated(bars, first, last)
    ends = handout_of(made).last_bars()
    assert len(ends) > 1, "the piece takes more than one page"
    spans = repeat_spans(made)
    assert not any(turns_back(spans, end) for end in ends[:-1])


def test_no_bar_is_left_alone_at_the_edge_of_a_repeat() -> None:
    made = repeated(20, 1, 18)
    bars = (replace(made.bars[0], pickup=True), *made.bars[1:])
    made = replace(made, bars=bars)
    assert joints(made, repeat_spans(made)) == ()
    assert joints(repeated(20, 4, 12), ((4, 12),)) == (4, 13)


def test_a_repeat_longer_than_a_page_is_turned_as_seldom_as_can_be() -> None:
    made = repeated(70, 0, 69)
    handout = handout_of(made)
    ends = handout.last_bars()
    assert all(turns_back(repeat_spans(made), end) for end in ends[:-1])
    assert handout.count <= 5


def test_systems_share_the_height_and_none_is_alone() -> None:
    for bars in (17, 25, 33, 41):
        handout = handout_of(repeated(bars, 0, 3))
        per_page = {}
        for system in handout.systems():
            page = next(k for k, e in enumerate(handout.last_bars()) if system.last <= e)
            per_page[page] = per_page.get(page, 0) + 1
        assert min(per_page.values()) > 1


def test_a_page_of_music_is_filled_before_what_follows_it() -> None:
    """Four systems of which three fill a page: two and a third of a page of nothing are worse
    where grips and cautions stand under the last; lines for own notes never part the music."""
    heights, room, head = [165.0] * 4, 680.0, 140.0
    rest = (lambda i, j: 0.0, 30.0, [False] * 4)
    assert break_pages(heights, room, head, *rest).starts == (0, 2)
    assert break_pages(heights, room, head, *rest, last=False).starts == (0, 3)
    page = sheet(HandoutOptions())
    flow = Flow(page)
    flow.put(Space(page.room - 200.0))
    flow.new_page()
    flow.put(Space(page.room - 100.0))
    own = OwnNotesBlock(page.line, page.scale, 0)
    flow.own_notes(own, 1)
    assert [len(p.placed) for p in flow.pages] == [1, 2]


def test_loose_parts_go_ahead_to_fill_a_page() -> None:
    page = sheet(HandoutOptions())
    flow = Flow(page)
    small, rest = Space(60.0), Space(30.0)
    flow.put(Space(page.room - 100.0))
    flow.parts([Space(200.0), Loose(small), rest])
    assert any(b is small for b, _ in flow.pages[0].placed)
    assert [b.height for b, _ in flow.pages[1].placed] == [200.0, 30.0]


def test_what_belongs_together_is_parted_only_where_no_page_holds_it() -> None:
    page = sheet(HandoutOptions())
    flow = Flow(page)
    flow.put(Space(page.room - 100.0))
    flow.parts([Together([Space(80.0), Space(80.0)])])
    assert [len(p.placed) for p in flow.pages] == [1, 2]
    flow.parts([Together([Space(page.room * 0.7), Space(page.room * 0.7)])])
    assert len(flow.pages) == 3


def test_the_form_in_words_and_its_map_name_the_same_bars() -> None:
    """Also where a later section begins with a pickup bar that bears a number of its own."""
    bars = [bar(k, "C4:1 D4:1 E4:1 F4:1", number=str(k)) for k in range(7)]
    bars[0] = replace(bars[0], pickup=True, section="A")
    bars[3] = replace(bars[3], pickup=True, section="B")
    made = piece(bars)
    shown = [words for _, words in FormMap(made, 400.0, 1.0)._words]
    assert shown == ["1–2", "3–6"]
    assert form_words(made).startswith("A = bars 1–2; B = bars 3–6.")


def test_the_form_map_has_the_width_of_the_page():
    from tests.teaching.hand_made import bar, build, n

    made, _ = build(bar(n("C4", 4), section="A"), bar(n("D4", 4), section="B"))
    assert sum(FormMap(made, 400.0, 1.0)._wide) == pytest.approx(400.0)
