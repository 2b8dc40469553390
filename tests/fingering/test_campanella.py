"""Campanella: scales across the strings, exact, held by hands, heard, and asked for in words."""

from __future__ import annotations

import json
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import assume, given, settings

from tests.fingering.build import piece
from tests.fingering.hand_check import complaints
from tests.fingering.reference import Player, brute_force, size
from tests.fingering.reference_score import Score
from tests.fingering.small_music import MOST_SEQUENCES, SMALL, UKULELE, music
from workbench.cli import main
from workbench.fingering.engine import Solver, solve
from workbench.fingering.types import Settings
from workbench.fingering.weights import weights_for
from workbench.instrument.table import HANDS, instrument
from workbench.music.ringing.campanella import overlapping
from workbench.sound.timing import bar_times, soundings
from workbench.sound.tracks import held_lengths

MEDIUM = HANDS["medium"]
HIGH_G = instrument("ukulele")
BELLS = Settings(campanella=True)
SCALES = (
    "D4:1/2 E4:1/2 F#4:1/2 G4:1/2 A4:1/2 B4:1/2 C#5:1/2 D5:1/2",
    "G4:1/2 A4:1/2 B4:1/2 C5:1/2 D5:1/2 C5:1/2 B4:1/2 A4:1/2",
    "C5:1/2 B4:1/2 A4:1/2 G4:1/2 F4:1/2 E4:1/2 F4:1/2 G4:1/2",
)


def crossed(found):
    """The share of neighbouring notes that lie on different strings."""
    strings = [n.string for n in found.bars[0].notes]
    return sum(a != b for a, b in pairwise(strings)) / (len(strings) - 1)


@pytest.mark.parametrize("scale", SCALES)
def test_a_scale_runs_across_the_strings_and_rings(scale):
    made = piece(scale)
    plain, bells = (solve(made, HIGH_G, MEDIUM, settings=s) for s in (Settings(), BELLS))
    assert crossed(bells) == 1 and crossed(plain) < 0.7
    assert complaints(bells, made, HIGH_G, MEDIUM) == []
    assert all(n.rings == 1 for n in bells.bars[0].notes[:-1])
    assert all(n.rings is None for n in plain.bars[0].notes)
    assert bells.optimal and bells.audit.held_fraction <= 1


def test_what_rings_is_a_step_of_one_voice_and_no_slur():
    made = piece("C4:1/2 D4:1/2 D4:1/2 G4:1/2 A4:2", "B4:1 C5:1")
    rings = overlapping(made, {})
    assert rings == {
        "b0v1n0a": 1, "b0v1n3a": Fraction(3, 2), "b1v1n0a": 2,
    }  # fmt: skip
    assert "b0v1n0a" not in overlapping(made, {"b0v1n1a": "b0v1n0a"})


def test_it_is_heard_and_written_to_midi_as_it_rings():
    made = piece(SCALES[0])
    found = solve(made, HIGH_G, MEDIUM, settings=BELLS)
    heard = soundings(made, bar_times(made, (0,)), found, HIGH_G)
    last = heard[-1]
    assert all(s.end > t.start for s, t in pairwise(heard)) and last.end > last.start
    assert list(held_lengths(found).values())[:-1] == [1] * 7


def test_on_a_linear_tuning_nothing_changes():
    made = piece(SCALES[0])
    low = instrument("ukulele-low-g")
    assert solve(made, low, MEDIUM, settings=BELLS) == solve(made, low, MEDIUM)


@settings(SMALL, max_examples=25)
@given(case=music())
def test_it_is_the_least_cost_of_all_sequences(case):
    """What rings is told anew here, note by note."""
    made, _, pins = case
    score = Score(made, UKULELE.tuning)
    at = {n.id: made.starts[b.index] + n.onset for b in made.bars for n in b.notes}
    bells = 0
    for n in made.notes:
        ends = at[n.id] + n.duration
        after = [
            min(m.duration, 1) for m in made.notes
            if not (m.grace or n.grace) and m.voice == n.voice and at[m.id] == ends
            and abs(m.midi - n.midi) in (1, 2) and n.duration <= 1
        ]  # fmt: skip
        if after:
            longest = max(score.ringing.get(n.id, Fraction(0)), n.duration + min(after))
            bells += 1
            score.ringing = {**score.ringing, n.id: longest}
    player = Player(UKULELE, MEDIUM, weights_for(BELLS, UKULELE.scale_mm).left)
    asked = {p.note: p for p in pins}
    assume(all(UKULELE.places(n.midi) for n in made.notes))
    assume(bells)
    assume(2 <= len(score.moments) <= 5)
    assume(1 <= size(score, player, asked) <= MOST_SEQUENCES)
    solver = Solver(made, UKULELE, MEDIUM, settings=BELLS, pins=pins)
    masks = solver.masks(asked)
    assert masks is not None
    assert solver.sweeper.solve(masks).cost == brute_force(score, player, asked)


def test_it_is_asked_for_on_the_command_line(tmp_path, capsys):
    path = tmp_path / "scale.abc"
    path.write_text("X:1\nT:Up\nM:4/4\nL:1/8\nK:D\nDEFG ABcd|\n")

    def finger(*more):
        code = main(["finger", str(path), "--transpose", "0", *more])
        return code, capsys.readouterr()

    code, out = finger("--campanella", "--json")
    notes = json.loads(out.out)["bars"][0]["notes"]
    assert code == 0 and [n["rings"] for n in notes] == ["1"] * 7 + [None]
    assert all(a["string"] != b["string"] for a, b in pairwise(notes))
    code, out = finger("--campanella", "--instrument", "guitar")
    assert code == 2 and "re-entrant" in out.err and len(out.err.strip().splitlines()) == 1
