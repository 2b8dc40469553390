"""Our fingerings beside the printed ones of chords-db 0.5.1 (MIT, data/LICENSE).

The weights were fitted on every other key; the figures here are of the keys
left out. The figures of all go to the test report as properties.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable

import pytest

from tests.fingering.agreement import chart_rows, learn_alone
from tests.shape.shape_charts import Published, read, usable
from workbench.fingering.shapes.grips import Frets
from workbench.fingering.shapes.shape import TERMS, shape
from workbench.fingering.types import Settings
from workbench.fingering.weights import alone_for, weights_for
from workbench.instrument.table import hand, instrument


def moved_down(frets: Frets) -> Frets:
    """The shape pushed to fret 1, so that one shape in many keys counts as one."""
    lowest = min((f for f in frets if f), default=1)
    return tuple(f - lowest + 1 if f else f for f in frets)


def shares(rows: Iterable[Published], name: str, of: str = "medium") -> tuple[float, float, int]:
    """Shares of rows whose printed fingers are our first choice, or in the first three."""
    first = three = count = 0
    for row in rows:
        best = [f.fingers for f in shape(row.frets, instrument(name), hand(of), 3).fingerings]
        count += 1
        first += best[:1] == [row.fingers]
        three += row.fingers in best
    return first / count, three / count, count


def test_rows_are_dropped_only_for_contradicting_themselves(record_testsuite_property) -> None:
    assert len(read("ukulele")) == 2114
    kept, dropped = usable("ukulele")
    assert dropped == {"a lower finger on a higher fret": 2}
    assert len(kept) == 2112
    guitar, guitar_dropped = usable("guitar")
    assert len(read("guitar")) == 2069
    assert guitar_dropped == {
        "a barre over a string that is open or stopped lower": 9,
        "no finger on a stopped string": 9,
        "a finger on an open string or one not played": 6,
        "a lower finger on a higher fret": 5,
    }
    assert len(guitar) == 2040
    record_testsuite_property("rows dropped, ukulele", dict(dropped))
    record_testsuite_property("rows dropped, guitar", dict(guitar_dropped))


def test_agreement_on_keys_that_were_not_fitted(record_testsuite_property) -> None:
    kept, _ = usable("ukulele")
    left_out = [row for row in kept if not row.for_fit]
    fitted = [row for row in kept if row.for_fit]
    assert not {row.key for row in left_out} & {row.key for row in fitted}
    first, three, count = shares(left_out, "ukulele")
    record_testsuite_property(
        "ukulele, keys left out: first, first three, rows", (first, three, count)
    )
    record_testsuite_property("ukulele, keys fitted", shares(fitted, "ukulele"))
    assert count == 1060
    assert first >= 0.93
    assert three >= 0.995


def test_the_charts_disagree_with_themselves(record_testsuite_property) -> None:
    """One shape moved along the neck is printed with different fingers: what the
    best rule blind to the fret could agree with at most."""
    kept, _ = usable("ukulele")
    printed: dict[Frets, Counter[tuple[int, ...]]] = {}
    for row in kept:
        printed.setdefault(moved_down(row.frets), Counter())[row.fingers] += 1
    most = sum(max(found.values()) for found in printed.values()) / len(kept)
    record_testsuite_property("ukulele: agreement of a shape's commonest fingers", most)
    assert 0.95 < most < 0.97


def test_every_printed_fingering_can_be_held_by_a_large_hand() -> None:
    kept, _ = usable("ukulele")
    concert, large = instrument("ukulele"), hand("large")
    beyond = [
        (row.key, row.suffix, row.frets, row.fingers)
        for row in kept
        if row.fingers not in {f.fingers for f in shape(row.frets, concert, large).fingerings}
    ]
    assert beyond == []


def test_six_strings_on_keys_that_were_not_fitted(record_testsuite_property) -> None:
    rows = [row for row in usable("guitar")[0] if not row.for_fit]
    first, three, count = shares(rows, "guitar")
    record_testsuite_property("guitar: first, first three, rows", (first, three, count))
    assert first >= 0.90
    assert three >= 0.985


def test_two_printed_fingerings_of_the_guitar_lie_beyond_a_medium_hand() -> None:
    guitar, medium = instrument("guitar"), hand("medium")
    beyond = [
        (row.key, row.suffix)
        for row in usable("guitar")[0]
        if row.fingers not in {f.fingers for f in shape(row.frets, guitar, medium).fingerings}
    ]
    assert beyond == [("G", "m9"), ("Ab", "m9")]


def test_printed_barres_are_our_barres() -> None:
    """Where our fingers are the printed ones, so are the frets of the barres."""
    kept, _ = usable("ukulele")
    differ = []
    for row in kept:
        best = shape(row.frets, instrument("ukulele"), hand("medium"), 1).fingerings[0]
        if best.fingers == row.fingers and {b.fret for b in best.barres} != set(row.barres):
            differ.append((row.key, row.suffix, row.frets, row.barres))
    # Two rows of the charts leave a second finger's barre out of their list.
    assert differ == [
        ("Eb", "7sus4", (3, 3, 4, 4), (3, 3)),
        ("G", "7sus4", (7, 7, 8, 8), (7, 7)),
    ]


def test_the_weights_file_holds_what_the_fit_gives() -> None:
    fitted = learn_alone("ukulele", weights_for(Settings()).left)
    for name, weight in alone_for(381.0).items():
        assert weight == pytest.approx(fitted[name], abs=150), name


def test_fitting_helps() -> None:
    """Against all weights alike, in the same run and on the keys left out."""
    left_out = [row for _, row in chart_rows("ukulele", False)]
    alike = tuple((t, 1000) for t in TERMS)
    met = sum(
        shape(r.frets, instrument("ukulele"), hand("medium"), 1, alike).fingerings[0].fingers
        == r.fingers
        for r in left_out
    )
    assert shares(left_out, "ukulele")[0] > met / len(left_out) + 0.1
