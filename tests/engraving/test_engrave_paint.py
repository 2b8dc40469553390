"""The painted systems: rectangles, clicks, redrawing, and no ink on top of other ink.

The collision check looks at painted pixels, not at the boxes marks are placed by.
"""

from __future__ import annotations

import sys
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace

import numpy as np
import pytest
from lxml import etree
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QImage, QPainter

from tests.engraving.painted import SVG, ink
from tests.engraving.small_pieces import (
    compound,
    fingered,
    overlapping,
    piece,
    tied_over,
    tuplets,
    two_voices,
    walk,
)
from workbench.engraving.app import FONT_FOLDER, ensure_gui
from workbench.engraving.drawing.render import Engraver
from workbench.engraving.options import MeiOptions
from workbench.engraving.strip import Strip
from workbench.instrument.table import instrument
from workbench.music.errors import BadInput


@pytest.fixture(scope="module")
def walked():
    ensure_gui()
    player = instrument("ukulele")
    made = walk()
    return made, player, fingered(made, player)


def parts(flat, ground=None):
    """The drawing without marks and staff lines; and each mark alone, without the
    rectangle of colour ``ground`` behind it."""
    bare = etree.fromstring(flat.svg)
    for group in list(bare.iter(f"{SVG}g")):
        kind = (group.get("class") or "").split(" ")[0]
        if kind in ("fing", "ledgerLines"):
            group.getparent().remove(group)
        if kind == "staff":
            for line in group.findall(f"{SVG}rect"):
                group.remove(line)
    marks = [
        g.get("id") for g in etree.fromstring(flat.svg).iter(f"{SVG}g") if g.get("class") == "fing"
    ]
    alone = {}
    for mark in marks:
        root = etree.fromstring(flat.svg)
        page = next(g for g in root.iter(f"{SVG}g") if g.get("class") == "page-margin")
        for child in list(page):
            if child.get("id") != mark:
                page.remove(child)
        for rect in [r for r in page.iter(f"{SVG}rect") if r.get("fill") == ground]:
            rect.getparent().remove(rect)
        alone[mark] = root
    return bare, alone


MADE = [walk(), tuplets(), two_voices(), compound(), overlapping(), tied_over()]


@pytest.mark.parametrize("made", MADE, ids=[p.title for p in MADE])
@pytest.mark.parametrize("name", ["ukulele", "guitar"])
def test_no_finger_mark_touches_anything(made, name) -> None:
    ensure_gui()
    player = instrument(name)
    systems = Engraver().systems(made, fingered(made, player), player, MeiOptions(), 16000.0)
    seen = 0
    for system in systems:
        flat = system.flat
        bare, alone = parts(flat)
        ground = ink(bare, flat.width, flat.height) > 100
        total = np.zeros(ground.shape, dtype=np.uint8)
        for name_of_mark, root in alone.items():
            mark = ink(root, flat.width, flat.height) > 100
            assert mark.sum() > 10, f"{name_of_mark} is not painted"
            assert not (mark & ground).any(), f"{name_of_mark} lies on other signs"
            total += mark
            seen += 1
        assert total.max(initial=0) <= 1, "finger marks lie on one another"
    wanted = sum((n.left or 0) > 0 for b in fingered(made, player).bars for n in b.notes)
    assert seen >= wanted


def test_the_pixel_check_sees_a_collision(walked) -> None:
    made, player, fingering = walked
    flat = Engraver().systems(made, fingering, player, MeiOptions(), 16000.0)[0].flat
    bare, alone = parts(flat)
    mark = next(k for k in alone if k.startswith("fl-"))
    alone[mark].find(f".//{SVG}g[@id='{mark}']").set("transform", "translate(190,0)")
    ground = ink(bare, flat.width, flat.height) > 100
    assert ((ink(alone[mark], flat.width, flat.height) > 100) & ground).any()


def test_every_note_is_found_where_it_is_painted(walked) -> None:
    made, player, fingering = walked
    image = Strip(900.0).image(made, fingering, player)
    for note in made.notes:
        head = image.rect_of(f"head-{note.id}")
        assert image.note_at(head.center()) == note.id
        figure = image.rect_of(f"t-{note.id}")
        if figure is not None:
            assert image.note_at(figure.center()) == note.id
        assert image.bar_rect(made.bar_of[note.id]).contains(head.center())
        assert image.bar_at(head.center()) == made.bar_of[note.id]
    assert image.note_at(QPointF(-500, -500)) is None


def test_systems_fill_the_width_and_none_runs_over(walked) -> None:
    made, player, fingering = walked
    systems = Engraver().systems(made, fingering, player, MeiOptions(), 20000.0)
    assert [s.first for s in systems[1:]] == [s.last + 1 for s in systems[:-1]]
    assert systems[-1].last - systems[-1].first >= 1
    for system in systems:
        edge = max(right for _, right in system.flat.bars.values())
        assert 19500 < edge <= 20000


def test_an_edit_redraws_its_own_system_only(walked) -> None:
    made, player, fingering = walked
    strip = Strip(900.0)
    before = strip.image(made, fingering, player)
    changed = [n for n in fingering.bars[8].notes]
    bars = list(fingering.bars)
    bars[8] = replace(bars[8], notes=(replace(changed[0], left=3), *changed[1:]))
    after = strip.image(made, replace(fingering, bars=tuple(bars)), player)
    same = [a.system is b.system for a, b in zip(before.placed, after.placed, strict=True)]
    assert same.count(False) == 1
    assert not same[[p.system.first <= 8 <= p.system.last for p in before.placed].index(True)]


def test_another_thread_draws_the_same(walked) -> None:
    made, player, fingering = walked
    with ThreadPoolExecutor(1) as pool:
        there = pool.submit(
            lambda: Engraver().systems(made, fingering, player, MeiOptions(), 16000.0)
        ).result()
    here = Engraver().systems(made, fingering, player, MeiOptions(), 16000.0)
    assert [s.flat.bars for s in there] == [s.flat.bars for s in here]


def test_a_row_has_its_staves_on_one_line(walked) -> None:
    made, player, fingering = walked
    image = Strip(None).image(made, fingering, player)
    tops = [p.corner.y() + p.system.flat.staff_top * p.scale for p in image.placed]
    assert max(tops) - min(tops) < 0.01
    assert image.size.width() > 1000


def test_ink_and_paper_follow_the_theme(walked) -> None:
    made, player, fingering = walked
    image = Strip(900.0, ink="#e8e6df", paper="#20242a").image(made, fingering, player)
    size = image.size
    picture = QImage(int(size.width()), int(size.height()), QImage.Format.Format_RGB32)
    picture.fill(Qt.GlobalColor.black)
    painter = QPainter(picture)
    image.paint(painter)
    painter.end()
    data = np.frombuffer(picture.constBits(), dtype=np.uint8)
    assert data.reshape(-1, 4)[:, :3].max() > 220


def test_a_piece_without_bars_is_refused() -> None:
    with pytest.raises(BadInput):
        Strip(900.0).image(piece([]))


def test_fonts_come_with_their_licence() -> None:
    assert "SIL OPEN FONT LICENSE" in (FONT_FOLDER / "OFL.txt").read_text().upper()


def test_a_long_session_does_not_use_up_the_references_to_none() -> None:
    """PySide6 6.12 lost one with each call that returns nothing, until the interpreter aborted."""
    ensure_gui()
    before = sys.getrefcount(None)
    image = QImage(4, 4, QImage.Format.Format_ARGB32)
    for _ in range(1000):
        image.setDotsPerMeterX(1)
    assert before - sys.getrefcount(None) < 500
