"""Printing in grey: what is told apart on the page is told apart without colour."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QImage, QPainter

from tests.engraving.small_pieces import fingered
from tests.handout.lesson_made import lesson
from workbench.engraving.app import ensure_gui
from workbench.handout.parts.grip_boxes import draw_grip, grip_words, signs
from workbench.handout.parts.grips import GripDiagram, grips_of, with_pictures
from workbench.handout.setting.paged import page_image
from workbench.handout.sheets.page import Handout, HandoutOptions
from workbench.instrument.table import instrument
from workbench.teaching.lessons.lesson import BarNote

PLACED = GripDiagram("F", "bar 1, beat 1", (1, 0, None, 2), (1, 0, 0, 2))


def grey(grip: GripDiagram, mirrored: bool = False) -> np.ndarray:
    """The box painted and turned to grey, 0 black to 255 white."""
    ensure_gui()
    image = QImage(300, 400, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.scale(4, 4)
    draw_grip(painter, grip, QRectF(0, 0, 75, 100), 1.0, mirrored)
    painter.end()
    plain = image.convertToFormat(QImage.Format.Format_Grayscale8)
    data = np.frombuffer(plain.constBits(), dtype=np.uint8)
    return data.reshape(plain.height(), plain.bytesPerLine())[:, :300].astype(int)


@pytest.mark.parametrize("audience", ["student", "teacher"])
def test_a_page_has_no_colour_at_all(audience) -> None:
    made = lesson()
    handout = Handout(
        made, fingered(made.piece, instrument("ukulele")), HandoutOptions(audience=audience)
    )
    for number in range(handout.count):
        image = page_image(handout, number, 500).convertToFormat(QImage.Format.Format_RGB888)
        data = np.frombuffer(image.constBits(), dtype=np.uint8)
        pixels = data.reshape(image.height(), image.bytesPerLine())[:, :1500]
        pixels = pixels.reshape(image.height(), 500, 3).astype(int)
        assert (pixels.max(axis=2) - pixels.min(axis=2)).max() <= 2
        assert pixels.min() < 60, "the page is empty"


def test_fingers_that_stay_differ_in_grey_from_those_set_down() -> None:
    """By far more than the dust of a copier: a ring is mostly white, a spot mostly black."""
    stays = replace(PLACED, stays=(True, False, False, False))
    apart = np.abs(grey(PLACED) - grey(stays)) > 128
    assert apart.sum() > 300
    rows, columns = np.nonzero(apart)
    spot = grey(PLACED)[rows.min() : rows.max(), columns.min() : columns.max()]
    ring = grey(stays)[rows.min() : rows.max(), columns.min() : columns.max()]
    assert spot.mean() < 100 < ring.mean()


def test_guide_fingers_and_waiting_ones_have_signs_of_their_own() -> None:
    slides = replace(PLACED, slides=(True, False, False, False))
    waits = replace(PLACED, planted=((3, 3, 4),))
    pictures = [grey(g) for g in (PLACED, slides, waits)]
    for k, one in enumerate(pictures):
        for other in pictures[k + 1 :]:
            assert (np.abs(one - other) > 128).sum() > 40
    assert "Ring" not in signs((PLACED,))
    assert "Dash" in signs((slides,)) and "Dotted ring" in signs((waits,))


def test_left_handed_boxes_are_mirrored() -> None:
    bare = GripDiagram("", "", (1, 0, None, 2), (0, 0, 0, 0))
    right, left = grey(bare), grey(bare, mirrored=True)
    assert (np.abs(right - left) > 128).sum() > 300
    flipped = right[:, ::-1]
    off = min((np.abs(np.roll(flipped, k, axis=1) - left) > 128).sum() for k in (-1, 0, 1))
    assert off < 60


def test_words_of_a_box_say_every_string() -> None:
    assert grip_words(PLACED) == (
        "F, bar 1, beat 1: string 4 fret 2, finger 2; string 3 not played; string 2 open; "
        "string 1 fret 1, finger 1"
    )


def test_no_box_is_shown_twice() -> None:
    made = lesson()
    player = instrument("ukulele")
    hands = fingered(made.piece, player)
    grips = grips_of(made.piece, hands, player)
    shown = grips[0]
    notes = (
        BarNote("a", "left hand", "This one.", 1, 1, grip=tuple(reversed(shown.frets))),
        BarNote("b", "left hand", "Again.", 2, 2, grip=tuple(reversed(shown.frets))),
        BarNote("c", "left hand", "Another.", 2, 2, grip=(9, 9, None, 7)),
    )
    found = with_pictures(grips, notes, made.piece, hands, player)
    assert len(found) == len(grips) + 1
    assert found[0].note == "remark 1, 2"
    assert found[-1].note == "remark 3" and found[-1].frets == (7, None, 9, 9)
    places = [tuple(f or None for f in g.frets) + g.fingers for g in found]
    assert len(set(places)) == len(places)


def test_known_grips_are_shown_only_where_they_are_hard() -> None:
    made = lesson()
    player = instrument("ukulele")
    hands = fingered(made.piece, player)
    every = grips_of(made.piece, hands, player, most=99)
    known = frozenset(g.name for g in every)
    left = grips_of(made.piece, hands, player, most=99, known=known)
    assert set(left) == {g for g in every if g.hard}
    easy = next(g for g in every if not g.hard)
    assert easy in grips_of(made.piece, hands, player, most=99, known=known - {easy.name})
