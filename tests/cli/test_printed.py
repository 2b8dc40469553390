"""``finger`` holds to the fingering that a score prints, as published guitar editions do."""

from __future__ import annotations

import pytest

from tests.fingering.editions import NAMES, STUDIES, missing, placed, printed_rows, rest_slow


@pytest.mark.parametrize("name", rest_slow(NAMES, ("sor-op60-01",)))
def test_every_playable_printed_finger_stands_in_the_result(name, call):
    score = str(STUDIES / f"{name}.mxl")
    asked = ("--instrument", "guitar", "--parts", "all", "--transpose", "0", "--json")
    got = call("finger", score, *asked).json
    told = {n["id"]: (n["left"], n["string"]) for bar in got["bars"] for n in bar["notes"]}
    out = {slip["note"] for slip in got["printed"]["left_out"]}
    rows = list(printed_rows(name))
    assert rows and not missing(rows, placed(name), told, out)


def test_refinger_leaves_the_print_alone(call):
    score = str(STUDIES / "sor-op60-01.mxl")
    asked = ("--instrument", "guitar", "--parts", "all", "--transpose", "0", "--json")
    got = call("finger", score, *asked, "--refinger").json
    assert got["printed"] == {"held": 0, "left_out": []}
    assert not any(n["pinned"] for bar in got["bars"] for n in bar["notes"])


def test_what_may_be_wrong_in_the_score_is_told_beside_the_fingering(call):
    asked = ("--instrument", "guitar", "--parts", "all", "--transpose", "0")
    out = call("finger", str(STUDIES / "carcassi-op26-03.mxl"), *asked).out
    told = " ".join(out.partition("To look at in the score")[2].split())
    assert told.startswith("In 2 places") and "bar 17, beat 1" in told
    sound = call("finger", str(STUDIES / "sor-op60-01.mxl"), *asked).out
    assert "To look at in the score" not in sound
