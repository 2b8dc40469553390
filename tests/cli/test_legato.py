"""``finger --audit`` and ``finger --compare``: what a choice costs in held length."""

from __future__ import annotations

import json
from fractions import Fraction

import pytest

from workbench.cli import main

SCORE = """X:1
T:Little Trial
M:4/4
L:1/4
K:C
A D F A|G2 E2|]
"""


@pytest.fixture
def score(tmp_path):
    path = tmp_path / "trial.abc"
    path.write_text(SCORE, encoding="utf-8")
    return str(path)


def ids(score, capsys):
    assert main(["finger", score, "--json"]) == 0
    return [n["id"] for n in json.loads(capsys.readouterr().out)["bars"][0]["notes"]]


def test_audit_lists_the_worst_cut_first_and_its_cause(score, capsys):
    first, second, *_ = ids(score, capsys)
    pins = ["--pin", f"{first}=string:4,left:2", "--pin", f"{second}=string:3,left:2"]
    assert main(["finger", score, "--audit", "--json", *pins]) == 0
    told = json.loads(capsys.readouterr().out)
    lost = [Fraction(n["written"]) - Fraction(n["held"]) for n in told["worst"]]
    assert lost == sorted(lost, reverse=True) and lost[-1] > 0
    assert told["causes"]["hop"] >= 1
    assert any("hops from string 4 to string 3" in n["reason"] for n in told["worst"])
    assert main(["finger", score, "--audit", *pins]) == 0
    assert "a finger hops" in capsys.readouterr().out


def test_compare_sets_the_bar_beside_the_pinned_one(score, capsys):
    first, second, *_ = ids(score, capsys)
    pins = ["--pin", f"{first}=string:4,left:2", "--pin", f"{second}=string:3,left:2"]
    assert main(["finger", score, "--compare", "1", "--json", *pins]) == 0
    told = json.loads(capsys.readouterr().out)
    rows = {r["what"]: (r["first"], r["second"]) for r in told["rows"]}
    assert rows["notes cut"] == ("0", "1") and rows["hops"] == ("0", "1")
    assert told["cost"][1] > told["cost"][0] and "cuts the A" in told["reason"]


@pytest.mark.parametrize(
    ("words", "said"),
    [(["--compare", "9"], "no bar of that number"), (["--compare", "1"], "--pin")],
)
def test_compare_says_what_is_missing(score, words, said, capsys):
    assert main(["finger", score, *words]) == 2
    assert said in capsys.readouterr().err
