"""What the editions print against what they print elsewhere, on rows made for it."""

from __future__ import annotations

from tests.fingering.self_agreement import LIKES, Found, Printed, against_others, printed_in


def row(study: str, left: int, midi: int = 60) -> Printed:
    return Printed(study, left, midi, (), (midi,), ())


def test_a_finger_is_judged_by_most_of_its_likes_in_other_works() -> None:
    rows = [row("a1", 1), row("a1", 1), row("a2", 2), row("a3", 2), row("a3", 3, midi=62)]
    found = against_others(rows, lambda r: r.midi, lambda study: study[0])
    # The two in a1 meet 2 elsewhere; that in a2 meets 1 twice, 2 once; that in a3 as well.
    assert found == Found(5, 4, 0)
    assert against_others(rows[2:4], lambda r: r.midi, lambda s: s[0]) == Found(2, 2, 2)
    assert against_others(rows, lambda r: r.midi, lambda study: study) == Found(5, 0, 0)


def test_a_study_is_read_with_the_chords_around_each_printed_finger() -> None:
    rows = printed_in("sor-op60-01")
    assert len(rows) > 20 and all(1 <= r.left <= 4 and r.midi in r.here for r in rows)
    found = against_others(
        [*rows, *(r._replace(study="again") for r in rows)], LIKES["the note"], lambda _: "all"
    )
    assert found.alike == found.every == 2 * len(rows)
    assert found.same > len(rows)  # the same piece twice mostly agrees with itself
