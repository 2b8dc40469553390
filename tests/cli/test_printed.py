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
