"""The search for chord-shape fingerings: complete, exact, and honest about reach."""

from __future__ import annotations

import json
from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from workbench.fingering.hand.reach import pair_limits, span_mm
from workbench.fingering.shapes.shape import TERMS, ShapeFingering, shape
from workbench.fingering.shapes.words import shape_document, words
from workbench.fingering.weights import alone_for
from workbench.instrument.model import Hand, Instrument
from workbench.instrument.table import hand, instrument
from workbench.music.errors import BadInput

UKULELE, GUITAR = instrument("ukulele"), instrument("guitar")
MEDIUM = hand("medium")
Frets = tuple[int | None, ...]


def holds(frets: Frets, fingers: tuple[int, ...]) -> bool:
    """The hard rules, written down afresh: can these fingers stop these frets?"""
    fret_of: dict[int, int] = {}
    for fret, finger in zip(frets, fingers, strict=True):
        if bool(fret) != bool(finger):
            return False
        if finger and fret_of.setdefault(finger, fret or 0) != fret:
            return False
    fingers_used = sorted(fret_of)
    if any(fret_of[a] > fret_of[b] for a in fingers_used for b in fingers_used if a < b):
        return False
    for finger, fret in fret_of.items():
        first = fingers.index(finger)
        last = len(fingers) - 1 - fingers[::-1].index(finger)
        for column in range(first, last + 1):
            under = frets[column]
            if under is not None and under < fret:
                return False
            if under == fret and fingers[column] != finger:
                return False
    return True


def in_reach(frets: Frets, fingers: tuple[int, ...], made: Instrument, of: Hand) -> bool:
    places: dict[int, list[tuple[int, int]]] = {}
    for column, (fret, finger) in enumerate(zip(frets, fingers, strict=True)):
        if finger:
            places.setdefault(finger, []).append((len(frets) - column, fret or 0))
    for (a, b), (_, most) in pair_limits(of).items():
        if a in places and b in places:
            ends = [
                [(s, fret) for s in range(min(strings), max(strings) + 1)]
                for fret, strings in ((places[f][0][1], [s for s, _ in places[f]]) for f in (a, b))
            ]
            if min(span_mm(made, x, y) for x in ends[0] for y in ends[1]) > most:
                return False
    return True


@settings(max_examples=150, deadline=None, derandomize=True)
@given(
    st.tuples(*[st.one_of(st.none(), st.integers(0, 6))] * 4).filter(lambda f: set(f) != {None}),
    st.sampled_from(["small", "medium", "large"]),
)
def test_all_fingerings_are_found_and_no_others(frets: Frets, of: str) -> None:
    """Against brute force over all 5^4 assignments."""
    found = [f.fingers for f in shape(frets, UKULELE, hand(of)).fingerings]
    wanted = {
        fingers
        for fingers in product(range(5), repeat=4)
        if holds(frets, fingers) and in_reach(frets, fingers, UKULELE, hand(of))
    }
    assert len(found) == len(set(found))
    assert set(found) == wanted


@settings(max_examples=12, deadline=None, derandomize=True)
@given(st.tuples(*[st.sampled_from([None, 0, 1, 2, 3, 4])] * 6).filter(lambda f: set(f) != {None}))
def test_six_strings_against_brute_force(frets: Frets) -> None:
    found = {f.fingers for f in shape(frets, GUITAR, hand("large")).fingerings}
    places = [range(1, 5) if fret else (0,) for fret in frets]
    assert found == {
        fingers
        for fingers in product(*places)
        if holds(frets, fingers) and in_reach(frets, fingers, GUITAR, hand("large"))
    }


def test_easiest_first_and_the_cost_is_the_sum_of_its_terms() -> None:
    found = shape((2, 2, 1, 3), UKULELE, MEDIUM).fingerings
    assert len(found) > 5
    assert [f.cost for f in found] == sorted(f.cost for f in found)
    for one in found:
        assert one.cost == sum(share for _, share in one.terms)
        assert len(one.reasons) <= max(1, len(one.terms))


def test_limit_cuts_the_list_and_nothing_else() -> None:
    everything = shape((3, 3, 1, 2), UKULELE, MEDIUM)
    few = shape((3, 3, 1, 2), UKULELE, MEDIUM, 3)
    assert few.fingerings == everything.fingerings[:3]
    assert few.chord == everything.chord


# Fingers as printed in beginners' chord charts (chords-db 0.5.1 among them).
@pytest.mark.parametrize(
    ("name", "frets", "fingers"),
    [
        ("C", (0, 0, 0, 3), (0, 0, 0, 3)),
        ("F", (2, 0, 1, 0), (2, 0, 1, 0)),
        ("Am", (2, 0, 0, 0), (2, 0, 0, 0)),
        ("A", (2, 1, 0, 0), (2, 1, 0, 0)),
        ("A7", (0, 1, 0, 0), (0, 1, 0, 0)),
        ("C7", (0, 0, 0, 1), (0, 0, 0, 1)),
        ("G", (0, 2, 3, 2), (0, 1, 3, 2)),
        ("G7", (0, 2, 1, 2), (0, 2, 1, 3)),
        ("Dm", (2, 2, 1, 0), (2, 3, 1, 0)),
        ("D", (2, 2, 2, 0), (1, 2, 3, 0)),
        ("Em", (0, 4, 3, 2), (0, 3, 2, 1)),
        ("Bb", (3, 2, 1, 1), (3, 2, 1, 1)),
        ("Gm", (0, 2, 3, 1), (0, 2, 3, 1)),
    ],
)
def test_beginners_chords_get_the_fingers_of_the_charts(
    name: str, frets: Frets, fingers: tuple[int, ...]
) -> None:
    first = shape(frets, UKULELE, MEDIUM, 1)
    assert first.fingerings[0].fingers == fingers
    assert first.chord.root is not None
    assert f"{first.chord.root}{first.chord.symbol}" == name


@pytest.mark.parametrize(
    ("frets", "fingers"),
    [
        ((0, 2, 2, 1, 0, 0), (0, 2, 3, 1, 0, 0)),  # E
        ((0, 2, 0, 1, 0, 0), (0, 2, 0, 1, 0, 0)),  # E7
        ((None, 0, 2, 2, 1, 0), (0, 0, 2, 3, 1, 0)),  # Am
        ((None, 3, 2, 0, 1, 0), (0, 3, 2, 0, 1, 0)),  # C
        ((None, None, 0, 2, 3, 2), (0, 0, 0, 1, 3, 2)),  # D
        ((1, 3, 3, 2, 1, 1), (1, 3, 4, 2, 1, 1)),  # F, full barre
    ],
)
def test_first_guitar_chords(frets: Frets, fingers: tuple[int, ...]) -> None:
    """Open-position guitar chords of any method book (from memory)."""
    assert shape(frets, GUITAR, MEDIUM, 1).fingerings[0].fingers == fingers


def test_barres_name_all_strings_they_lie_over() -> None:
    best = shape((1, 3, 3, 2, 1, 1), GUITAR, MEDIUM, 1).fingerings[0]
    (barre,) = best.barres
    assert (barre.fret, barre.strings, barre.finger) == (1, (1, 2, 3, 4, 5, 6), 1)
    moved = shape((5, 4, 3, 3), UKULELE, MEDIUM, 1).fingerings[0]
    (barre,) = moved.barres
    assert (barre.fret, barre.strings, barre.finger) == (3, (1, 2), 1)


def test_nothing_to_stop_needs_no_finger() -> None:
    (only,) = shape((0, 0, None, 0), UKULELE, MEDIUM).fingerings
    assert only.fingers == (0, 0, 0, 0)
    assert only.cost == 0
    assert only.reach_mm == 0.0
    assert only.reasons


def test_reach_grows_with_the_instrument() -> None:
    def reach(name: str) -> float:
        return shape((1, 2, 3, 4), instrument(name), hand("large"), 1).fingerings[0].reach_mm

    assert reach("ukulele-soprano") < reach("ukulele") < reach("ukulele-tenor")


def test_a_small_hand_is_told_what_it_cannot_reach() -> None:
    wide = (None, None, 7, None, None, 1)
    assert shape(wide, GUITAR, MEDIUM).fingerings == ()
    found = shape(wide, GUITAR, MEDIUM).impossible
    sentence = words(found) if found else ""
    assert sentence is not None
    assert "mm between fingers 1 and 4" in sentence
    assert "medium hand" in sentence
    nearer = (None, None, 4, None, None, 1)
    assert shape(nearer, GUITAR, MEDIUM).impossible is None


def test_five_frets_at_once_are_too_many() -> None:
    found = shape((1, 2, 3, 4, 5, 0), GUITAR, hand("large"))
    assert found.fingerings == ()
    assert found.impossible is not None
    assert "Four fingers" in words(found.impossible)


def test_stretch_is_told_in_millimetres_and_counts_more_for_a_small_hand() -> None:
    def of(size: str) -> ShapeFingering:
        found = shape((None, None, None, None, 4, 1), GUITAR, hand(size)).fingerings
        return next(f for f in found if f.fingers[-2:] == (4, 1))

    assert dict(of("small").terms)["stretch"] > dict(of("large").terms).get("stretch", 0)
    assert any("beyond its comfortable span" in words(reason) for reason in of("small").reasons)


def test_the_same_shape_higher_up_has_the_same_grips() -> None:
    low = {f.fingers for f in shape((1, 1, 1, 4), UKULELE, hand("large")).fingerings}
    high = {f.fingers for f in shape((9, 9, 9, 12), UKULELE, hand("large")).fingerings}
    assert low == high


def test_a_capo_counts_frets_from_itself() -> None:
    plain = shape((2, 0, 1, 0), UKULELE, MEDIUM, 1)
    capo = shape((2, 0, 1, 0), instrument("ukulele", 2), MEDIUM, 1)
    assert capo.fingerings[0].fingers == plain.fingerings[0].fingers
    assert (plain.chord.root, capo.chord.root) == ("F", "G")


def test_weights_can_be_overridden_by_name() -> None:
    usual = shape((2, 2, 1, 3), UKULELE, MEDIUM, 1).fingerings[0]
    assert usual.barres
    dear = shape((2, 2, 1, 3), UKULELE, MEDIUM, 1, (("barre_2", 50000),)).fingerings[0]
    assert not dear.barres
    with pytest.raises(BadInput, match="no cost term"):
        shape((2, 2, 1, 3), UKULELE, MEDIUM, 1, (("charm", 5),))


@pytest.mark.parametrize("scale_mm", [381.0, 650.0])
def test_every_term_has_a_weight_that_is_no_reward(scale_mm: float) -> None:
    weights = alone_for(scale_mm)
    assert set(weights) == set(TERMS)
    assert all(weight >= 0 for weight in weights.values())


@pytest.mark.parametrize(
    ("frets", "word"),
    [
        ((2, 0, 1), "4 strings"),
        ((2, 0, 1, 0, 0), "4 strings"),
        ((2, 0, 1, 19), "fret 19"),
        ((-1, 0, 1, 0), "fret -1"),
        ((None, None, None, None), "No string"),
    ],
)
def test_frets_the_instrument_has_not_are_refused(frets: Frets, word: str) -> None:
    with pytest.raises(BadInput, match=word):
        shape(frets, UKULELE, MEDIUM)


def test_the_document_is_plain_json() -> None:
    document = shape_document(shape((3, 2, 1, 1), UKULELE, MEDIUM, 2))
    assert json.loads(json.dumps(document)) == document
    first = document["fingerings"][0]
    assert first["fingers"] == [3, 2, 1, 1]
    assert first["barres"] == [{"fret": 1, "strings": [1, 2], "finger": 1}]
    assert set(first) == {"fingers", "barres", "cost", "reach_mm", "reasons"}
    # G4 string at fret 3 is B flat 4; the lowest note is D4 on string 3.
    assert document["chord"]["name"] == "Bb/D"
    assert document["chord"]["inversion"] == 1
