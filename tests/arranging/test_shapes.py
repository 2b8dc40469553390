"""Shapes of the hand as arranging prices them, against the grips that the fingering lists."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from workbench.arranging.shapes import Prices, shapes
from workbench.fingering.hand.grips import PAIRS, apart, grips, neck
from workbench.fingering.types import Pin
from workbench.instrument.table import hand, instrument
from workbench.music.model import Note, Pitch

MEDIUM = hand("medium")


PRICES = Prices(wide=1800, stretch=40, barre=300, barre_other=700, barre_string=150)


def by_grips(places, wood):
    """The least it costs to hold the places, and the fewest fingers at that, among all grips
    of theirs, each note pinned to its string."""
    table = neck(wood, MEDIUM)
    notes, pins = [], {}
    for i, (string, fret) in enumerate(places):
        midi = wood.open_midi[string - 1] + fret
        # any spelling will do: only the MIDI number counts
        note = Note(f"n{i}", Fraction(0), Fraction(1), Pitch("C", midi % 12, midi // 12 - 1))
        notes.append(note)
        pins[note.id] = Pin(note.id, string=string, fret=fret)
    found = []
    for grip in grips(notes, wood, table, pins):
        over = [
            int(table.span[a[0], b[0], apart(a, b)]) - table.comfort[i]
            for i, (f, g) in enumerate(PAIRS)
            for a, b in [(grip.fingers[f], grip.fingers[g])]
            if a[0] and b[0]
        ]
        beyond = max([0, *over])
        cost = PRICES.wide + PRICES.stretch * beyond if beyond else 0
        for finger, (fret, low, high) in enumerate(grip.fingers):
            if fret and high > low:
                cost += PRICES.barre_other if finger else PRICES.barre
                cost += PRICES.barre_string * (high - low - 1)
        found.append((cost, sum(1 for f in grip.fingers if f[0])))
    return min(found, default=None)


@pytest.mark.parametrize("name", ["ukulele", "guitar"])
@settings(max_examples=150, deadline=None)
@given(data=st.data())
def test_the_easiest_hand_is_the_one_the_fingering_knows(name, data):
    wood = instrument(name)
    strings = data.draw(st.lists(st.integers(1, wood.strings), min_size=1, max_size=4, unique=True))
    low = data.draw(st.integers(0, 9))
    places = tuple(
        sorted((s, data.draw(st.sampled_from([0, *range(low, low + 5)]))) for s in strings)
    )
    got = shapes(wood, MEDIUM, PRICES).ease(places)
    assert (None if got is None else got[:2]) == by_grips(places, wood)
