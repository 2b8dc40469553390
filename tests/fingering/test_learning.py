"""Fitting the weights to a teacher's choices."""

from __future__ import annotations

import random
from dataclasses import replace

from tests.fingering.build import piece
from workbench.fingering.engine import Solver
from workbench.fingering.lattice.terms import LEFT_TERMS
from workbench.fingering.learning.preferences import (
    FACTOR,
    Choice,
    apply,
    choice_from,
    fit,
    reproduced,
    undo,
)
from workbench.fingering.telling.words import sentence
from workbench.fingering.types import Pin, Settings
from workbench.fingering.weights import weights_for
from workbench.instrument.table import hand, instrument

UKULELE, HAND = instrument("ukulele"), hand("medium")
FILE = weights_for(Settings()).left


def synthetic(hidden: dict[str, int], count: int, seed: int) -> list[Choice]:
    """Choices of a teacher with hidden weights among random fingerings."""
    rng = random.Random(seed)
    out = []
    for bar in range(count):
        options = [tuple(rng.choice([0, 0, 0, 1, 1, 2]) for _ in LEFT_TERMS) for _ in range(5)]
        ranked = sorted(
            options, key=lambda o: sum(x * hidden[t] for x, t in zip(o, LEFT_TERMS, strict=True))
        )
        out.append(Choice(bar, ranked[0], tuple(ranked[1:])))
    return out


def test_the_fit_carries_over_to_choices_it_has_not_seen() -> None:
    hidden = dict(FILE)
    hidden.update({t: FILE[t] // 4 for t in ("barre_4", "crossed", "beyond")})
    hidden.update(inverted=FILE["inverted"] * 4, slur=FILE["slur"] * 3)
    learnt = fit(synthetic(hidden, 40, 1))
    new = synthetic(hidden, 200, 2)
    fitted = weights_for(apply(learnt, Settings())).left
    before = sum(reproduced(c, FILE) for c in new)
    after = sum(reproduced(c, fitted) for c in new)
    assert after >= before + 20
    assert learnt.reproduced_after > learnt.reproduced_before
    assert learnt.reproduced_before < learnt.leave_one_out <= learnt.total


def test_weights_stay_within_their_bounds_and_never_turn_negative() -> None:
    wild = dict.fromkeys(LEFT_TERMS, 0) | {"place": 90000}
    fitted = weights_for(apply(fit(synthetic(wild, 30, 3)), Settings())).left
    for term, weight in fitted.items():
        if FILE[term]:
            assert FILE[term] / FACTOR - 1 <= weight <= FILE[term] * FACTOR + 1
        else:
            assert weight >= 0


def test_contradictory_choices_are_borne() -> None:
    one = Choice(0, (1, *([0] * (len(LEFT_TERMS) - 1))), ((0, 1, *([0] * (len(LEFT_TERMS) - 2))),))
    two = Choice(1, one.rejected[0], (one.chosen,))
    found = fit([one, two])
    assert found.total == 2 and found.reproduced_after <= 1


def test_no_choices_change_nothing() -> None:
    found = fit([])
    assert found.changes == () and found.weights == () and found.total == 0


def test_undo_brings_the_weights_back_exactly() -> None:
    settings = Settings(level="beginner", weights=(("hop", 3000), ("repeat", 450)))
    found = fit(synthetic(dict(FILE) | {"hop": 900, "shift": 150}, 20, 4), settings)
    fitted = apply(found, settings)
    assert fitted != settings and ("repeat", 450) in fitted.weights
    assert undo(found, fitted) == settings


def test_a_teacher_who_wants_one_and_three_gets_them_on_new_music() -> None:
    tight = ["Bb4+F#4:2", "F4+D4:2", "F#4+C#4:2"]
    places = {70: (1, 1, 1), 66: (2, 2, 3), 65: (2, 1, 1), 62: (3, 2, 3), 61: (3, 1, 1)}
    choices = []
    for text in tight:
        solver = Solver(piece(text), UKULELE, HAND)
        notes = [n for bar in solver.solution().bars for n in bar.notes]
        pins = [
            Pin(n.id, string=string, fret=fret, left=left)
            for n in notes
            for string, fret, left in [places[n.midi]]
        ]
        found = choice_from(solver, 0, pins)
        assert found is not None
        choices.append(found)
    learnt = fit(choices, scale_mm=UKULELE.scale_mm)
    assert learnt.reproduced_before == 0 and learnt.reproduced_after == len(tight)
    assert learnt.changes and all(sentence(c.term) for c in learnt.changes)
    fresh = piece("G4:1 F4+D4:1 C4:1")
    settings = apply(learnt, Settings())
    before = Solver(fresh, UKULELE, HAND).solution()
    after = Solver(fresh, UKULELE, HAND, settings=settings).solution()
    assert [before.note(f"b0v1n1{x}").left for x in "ab"] == [1, 2]
    assert [after.note(f"b0v1n1{x}").left for x in "ab"] == [1, 3]


def test_pins_of_the_right_hand_alone_are_no_left_hand_choice() -> None:
    solver = Solver(piece("A4:1 C5:1"), UKULELE, HAND)
    assert choice_from(solver, 0, [Pin("b0v1n0a", right="a")]) is None
    assert replace(Settings(), weights=()) == Settings()
