"""The drawn neck against the twelve-tone rule, and clicks on it."""

from __future__ import annotations

from itertools import pairwise

import pytest

from workbench.instrument.table import INSTRUMENTS
from workbench.ui.neck_layout import NeckLayout


def layout(name, mirrored=False):
    return NeckLayout(INSTRUMENTS[name], 2.0, 24.0, 60.0, 18.0, 30.0, mirrored)


@pytest.mark.parametrize("name", sorted(INSTRUMENTS))
def test_frets_are_spaced_by_the_twelve_tone_rule(name):
    # Equal temperament: the string from each fret to the saddle is shorter than from the
    # fret before by the twelfth root of two; at the twelfth fret it is halved.
    neck = layout(name)
    scale = neck.instrument.scale_mm * 2.0
    saddle = neck.fret_x(0) + scale
    rest = [saddle - neck.fret_x(fret) for fret in range(neck.frets + 1)]
    for before, after in pairwise(rest):
        assert before / after == pytest.approx(2 ** (1 / 12))
    assert rest[12] == pytest.approx(scale / 2)


@pytest.mark.parametrize("mirrored", [False, True])
@pytest.mark.parametrize("name", ["ukulele", "guitar"])
def test_a_click_on_a_drawn_finger_finds_its_place(name, mirrored):
    neck = layout(name, mirrored)
    for string in range(1, neck.instrument.strings + 1):
        for fret in range(neck.frets + 1):
            at = neck.place_at(neck.finger_x(fret), neck.string_y(string))
            assert at == (string, fret)


def test_fingers_press_behind_their_fret():
    neck = layout("guitar")
    for fret in range(1, neck.frets + 1):
        assert neck.fret_x(fret - 1) < neck.finger_x(fret) < neck.fret_x(fret)


def test_a_left_handed_neck_is_the_mirror_image():
    right, left = layout("ukulele"), layout("ukulele", True)
    for fret in range(right.frets + 1):
        assert right.fret_x(fret) + left.fret_x(fret) == pytest.approx(right.width)
        assert right.finger_x(fret) + left.finger_x(fret) == pytest.approx(right.width)
    assert left.string_y(1) == right.string_y(1)


def test_beside_the_neck_there_is_no_place():
    neck = layout("ukulele")
    assert neck.place_at(neck.width + 50, neck.string_y(1)) is None
    assert neck.place_at(neck.fret_x(3), neck.string_y(4) + 40) is None
    assert neck.place_at(2, neck.string_y(1)) is None
