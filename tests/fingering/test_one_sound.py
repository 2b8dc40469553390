"""One sound lies on one string; slurs lie on one string and are not plucked."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest

from tests.fingering.build import piece
from tests.fingering.editions import FEW, GUITAR, NAMES, STUDIES, rest_slow
from tests.fingering.hand_check import complaints
from workbench.fingering.engine import solve
from workbench.fingering.telling.words import words
from workbench.fingering.types import Pin
from workbench.instrument.table import hand, instrument
from workbench.music.model import Piece
from workbench.music.reading.score import read_score
from workbench.music.ringing.slurs import slurred
from workbench.music.ringing.sounds import sounds

UKULELE = instrument("ukulele")
HAND = hand("medium")


@pytest.mark.parametrize("name", rest_slow(NAMES, FEW))
def test_no_sound_of_a_published_study_lies_on_two_strings(name: str) -> None:
    music = read_score(STUDIES / f"{name}.mxl", parts="all")
    found = solve(music, GUITAR, HAND)
    by_id = {n.id: n for bar in found.bars for n in bar.notes}
    lead = sounds(music).lead
    for note, chief in lead.items():
        a, b = by_id[note], by_id[chief]
        assert (a.string, a.fret, a.left, a.right) == (b.string, b.fret, b.left, b.right)
        assert a.shares == chief
    assert found.audit.notes == len(by_id) - len(lead)
    slurs = slurred(sounds(music).piece)
    along = [n for n, before in slurs.items() if by_id[n].string == by_id[before].string]
    assert all(by_id[n].right is None and by_id[n].slurred for n in along)
    struck = Counter((bar.index, n.onset) for bar in sounds(music).piece.bars for n in bar.notes)
    written = {n.id: (bar.index, n) for bar in music.bars for n in bar.notes}
    for across in slurs.keys() - set(along):
        (bar_a, a), (bar_b, b) = written[slurs[across]], written[across]
        alone = struck[bar_a, a.onset] == struck[bar_b, b.onset] == 1
        assert not (alone and lies_on_one_string(a.midi, b.midi)), across


def lies_on_one_string(a: int, b: int) -> bool:
    """Whether some string of the guitar has both, one open or the two within three frets."""
    pairs = [(a - open_, b - open_) for open_ in GUITAR.open_midi]
    return any(min(p) == 0 or (min(p) > 0 and abs(p[0] - p[1]) <= 3) for p in pairs)


def test_a_pin_may_ask_for_two_strings() -> None:
    music = piece("A4:2 | A4:2")
    one = solve(music, UKULELE, HAND)
    assert one.note("b0v1n0a").string == one.note("b0v2n0a").string
    two = solve(music, UKULELE, HAND, pins=[Pin("b0v2n0a", apart=True)])
    assert two.note("b0v1n0a").string != two.note("b0v2n0a").string
    pins = [Pin("b0v1n0a", string=1), Pin("b0v2n0a", string=4)]
    three = solve(music, UKULELE, HAND, pins=pins)
    assert (three.note("b0v1n0a").string, three.note("b0v2n0a").string) == (1, 4)


def test_a_pin_on_either_stem_moves_the_sound() -> None:
    music = piece("A4:2 | A4:2")
    for stem in ("b0v1n0a", "b0v2n0a"):
        found = solve(music, UKULELE, HAND, pins=[Pin(stem, string=4)])
        assert found.note("b0v1n0a").string == found.note("b0v2n0a").string == 4


def test_the_longer_stem_holds_the_sound_and_the_shorter_is_not_cut() -> None:
    found = solve(piece("C5:1 D5:1 | C5:2"), UKULELE, HAND)
    short, long = found.note("b0v1n0a"), found.note("b0v2n0a")
    assert short.held == short.duration == 1
    assert long.duration == 2


def _slurred(music: Piece, *pairs: tuple[str, str]) -> Piece:
    start, stop = {a for a, _ in pairs}, {b for _, b in pairs}
    return replace(
        music,
        bars=tuple(
            replace(
                bar,
                notes=tuple(
                    replace(n, slur_start=n.id in start, slur_stop=n.id in stop) for n in bar.notes
                ),
            )
            for bar in music.bars
        ),
    )


def test_a_rising_slur_takes_a_higher_finger_and_a_falling_one_a_lower() -> None:
    up = _slurred(piece("Bb4:1 C5:1"), ("b0v1n0a", "b0v1n1a"))
    down = _slurred(piece("C5:1 Bb4:1"), ("b0v1n0a", "b0v1n1a"))
    for music, sign in ((up, 1), (down, -1)):
        f = solve(music, UKULELE, HAND)
        a, b = f.note("b0v1n0a"), f.note("b0v1n1a")
        assert a.string == b.string and b.slurred
        assert (b.left - a.left) * sign > 0
        assert a.right in ("i", "m", "a", "p") and b.right is None


def test_a_sound_struck_again_on_another_string_ends_there() -> None:
    music = piece("C4:1 A4:1 C5:2 | A4:4")
    pins = [Pin("b0v2n0a", string=4), Pin("b0v1n1a", string=1)]
    found = solve(music, UKULELE, HAND, pins=pins)
    first = found.note("b0v2n0a")
    assert (first.string, first.held) == (4, 1)
    assert first.cut_reason is not None and "string 1" in words(first.cut_reason)
    assert not complaints(found, music, UKULELE, HAND)
    # on its own string it goes on to its end
    pins = [Pin("b0v2n0a", string=4), Pin("b0v1n1a", string=4)]
    whole = solve(music, UKULELE, HAND, pins=pins).note("b0v2n0a")
    assert whole.held == 4 and whole.cut_reason is None
