"""Two stems, one sound (common practice, no source)."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from tests.fingering.build import piece
from workbench.music.model import Bar, Note, Piece, Pitch
from workbench.music.ringing.sounds import sounds


def test_two_stems_of_one_pitch_are_one_sound_for_the_longer_value() -> None:
    music = piece("C4:1 E4:1 G4:1 | C4:3")
    heard = sounds(music)
    assert [n.id for n in heard.piece.notes] == ["b0v1n0a", "b0v1n1a", "b0v1n2a"]
    assert heard.lead == {"b0v2n0a": "b0v1n0a"}
    assert heard.piece.notes[0].duration == 3
    assert heard.low == {"b0v1n0a"}  # the bass moves there: the thumb takes it


def test_a_sound_that_the_upper_voice_holds_is_no_bass() -> None:
    heard = sounds(piece("E4:2 | E4:1 C4:1"))
    assert heard.lead and not heard.low


def test_notes_that_are_to_lie_apart_stay_two_sounds() -> None:
    music = piece("A4:1 | A4:1")
    assert len(sounds(music, {"b0v2n0a"}).piece.notes) == 2


def test_a_pitch_struck_again_within_a_held_one_goes_on_in_the_new_sound() -> None:
    heard = sounds(piece("r:1 C4:1/2 D4:1/2 | C4:2"))
    assert heard.goes_on == {"b0v2n0a": "b0v1n1a"}
    length = {n.id: n.duration for n in heard.piece.notes}
    assert (length["b0v2n0a"], length["b0v1n1a"]) == (1, 1)


NOTES = st.tuples(
    st.integers(0, 7), st.sampled_from((1, 2, 4)), st.integers(60, 64), st.integers(1, 3)
)


@given(rows=st.lists(NOTES, max_size=12, unique_by=lambda r: (r[0], r[2], r[3])))
def test_no_pitch_sounds_twice_at_once_and_no_moment_is_lost(rows) -> None:
    notes = tuple(
        Note(f"n{i}", Fraction(at, 2), Fraction(long, 2), Pitch("C", midi - 60, 4), voice)
        for i, (at, long, midi, voice) in enumerate(rows)
    )
    music = Piece(
        "Trial", (Bar(index=0, number="1", time_signature=(8, 4), length=Fraction(8), notes=notes),)
    )
    heard = sounds(music)
    spans: dict[int, list[tuple[Fraction, Fraction]]] = {}
    for n in heard.piece.notes:
        spans.setdefault(n.midi, []).append((n.onset, n.onset + n.duration))
    for mine in spans.values():
        mine.sort()
        assert all(a[1] <= b[0] for a, b in pairwise(mine))
    for n in notes:  # every written moment sounds
        at = n.onset
        while at < n.onset + n.duration:
            assert any(a <= at < b for a, b in spans[n.midi])
            at += Fraction(1, 2)
    assert set(heard.lead) | {n.id for n in heard.piece.notes} == {n.id for n in notes}
