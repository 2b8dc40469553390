"""Tune, bass and inner parts as the teacher names them."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest

from tests.arranging.make import THREE_LINES, piece
from workbench.arranging.arrange import arrange
from workbench.arranging.parts import led
from workbench.arranging.sounds import BASS, TUNE, texture
from workbench.arranging.weights import Wishes
from workbench.cli import main
from workbench.instrument.table import instrument
from workbench.music.errors import BadInput

UKULELE = instrument("ukulele-low-g")
#: A descant above the tune, and two lines below it.
LINES = ("G5:2 A5:2", "E4 F4 E4 D4", "C4:2 C4:2", "C3:2 F3:2")


def four_parts():
    """Each line a part of its own."""
    made = piece(*LINES)

    def parted(note):
        return replace(note, part=note.voice)

    bars = tuple(replace(b, notes=tuple(map(parted, b.notes))) for b in made.bars)
    return replace(made, bars=bars)


def roles(found, role):
    return [(n.part, s.midi) for s in found.sounds for n in s.notes if s.role == role]


def test_heard_from_the_notes_the_descant_is_the_tune_and_named_it_is_not():
    made = four_parts()
    assert roles(texture(made), TUNE) == [(1, 79), (1, 81)]
    named = texture(made, tune_part=2, bass_part=3)
    assert roles(named, TUNE) == [(2, 64), (2, 65), (2, 64), (2, 62)]
    assert roles(named, BASS) == [(3, 60), (3, 60)]
    assert roles(texture(made, bass_part=1), BASS) == [(1, 79), (1, 81)]
    descant = [s for s in named.sounds if s.notes[0].part == 1]
    assert [s.ceiling for s in descant] == [64, 64], "what lay above the tune is to lie below it"


def test_the_named_tune_lies_on_top_and_is_the_first_voice():
    made = four_parts()
    done = arrange(made, UKULELE, transpose=0, wishes=Wishes(tune_part=2, bass_part=4)).piece
    tune = [n for n in done.notes if n.part == 2]
    assert [n.midi for n in tune] == [64, 65, 64, 62] and {n.voice for n in tune} == {1}
    low = max(n.voice for n in made.notes)
    assert {n.voice for n in done.notes if n.part == 4} <= {low}
    for n in done.notes:
        if n.part != 2:
            sung = max(t.midi for t in tune if t.onset <= n.onset)
            above = [t.midi for t in tune if t.onset == n.onset] or [sung]
            assert n.midi <= above[0]


def test_voices_change_places_and_none_is_lost():
    made = four_parts()
    moved = led(made, Wishes(tune_part=3))
    by_part = {n.part: n.voice for n in moved.notes}
    assert by_part == {3: 1, 1: 2, 2: 3, 4: 4}
    assert led(made, Wishes()) is made


@pytest.mark.parametrize(
    "wishes, words", [({"tune_part": 7}, "Part 7"), ({"bass_part": 5}, "1, 2, 3, 4")]
)
def test_a_part_that_is_not_there_is_said(wishes, words):
    with pytest.raises(BadInput, match=words):
        arrange(four_parts(), UKULELE, wishes=Wishes(**wishes))


@pytest.mark.parametrize("tune, bass, words", [(2, 2, "at once"), (-1, 0, "count from 1")])
def test_parts_that_cannot_be_are_said(tune, bass, words):
    with pytest.raises(BadInput, match=words):
        Wishes(tune_part=tune, bass_part=bass)


def test_parts_are_named_on_the_command_line(tmp_path, capsys):
    path = tmp_path / "three.abc"
    path.write_text(THREE_LINES)

    def run(*more):
        code = main(["arrange", str(path), "--instrument", "ukulele-low-g", "--transpose", "0",
                     "--json", *more])  # fmt: skip
        return code, capsys.readouterr()

    for more, words in (
        (("--tune-part", "9"), "Part 9"), (("--parts", "1,3", "--tune-part", "2"), "1, 3"),
        (("--tune-part", "1", "--bass-part", "1"), "at once"),
    ):  # fmt: skip
        code, told = run(*more)
        assert code == 2 and words in told.err and len(told.err.strip().splitlines()) == 1
    code, told = run("--tune-part", "2", "--bass-part", "3")
    document = json.loads(told.out)
    assert code == 0 and document["kept"]["tune"] == 1
    assert {c["part"] for c in document["changes"]} == {1, 3}, "all parts are taken"
    assert all(c["role"] == "bass" for c in document["changes"] if c["part"] == 3)
