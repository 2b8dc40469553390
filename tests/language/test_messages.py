"""Sentences found in one place and said in another, in the language spoken there."""

from __future__ import annotations

import ast
import json
import pickle

import pytest

from workbench.fingering.telling.refused import Refused
from workbench.instrument.table import instrument
from workbench.language import gather
from workbench.language.fact import fact
from workbench.language.message import (
    KeyName,
    PitchName,
    counted,
    from_plain,
    message,
    to_plain,
)
from workbench.language.speech import say, speaking
from workbench.music.errors import BadInput
from workbench.music.reading.apart import read_apart

MADE = (
    BadInput("There are notes at the beginning of {bar}; delete them first.",
             bar=message("bar {bar}", bar=5)),
    BadInput("{pitch} is struck there already in this voice; choose another pitch.",
             pitch=PitchName("Bb4")),
    Refused(fact("right finger twice", bar="5")),
)  # fmt: skip


def test_an_error_speaks_the_language_in_which_it_is_read():
    assert str(MADE[0]) == "There are notes at the beginning of bar 5; delete them first."
    assert "B♭4 is struck" in str(MADE[1])
    with speaking("de"):
        assert str(MADE[0]) == "Am Anfang von Takt 5 stehen Töne; löschen Sie sie zuerst."
        assert str(MADE[1]).startswith("B4 ")
        assert "Takt 5" in str(MADE[2])


@pytest.mark.parametrize("wrong", MADE, ids=lambda wrong: type(wrong).__name__)
def test_an_error_comes_whole_out_of_another_process(wrong):
    """Worker processes hand on what they raise by pickling it."""
    again = pickle.loads(pickle.dumps(wrong))
    assert type(again) is type(wrong) and str(again) == str(wrong)
    with speaking("de"):
        assert str(again) == str(wrong) != str(MADE[0].message.text)


def test_a_plain_text_stays_as_it_is_braces_too():
    assert str(BadInput("a {b} c")) == "a {b} c"
    assert str(BadInput(say("{path} does not exist; check the name and the folder.",
                            path="{x}.mid"))).startswith("{x}.mid does not")  # fmt: skip


def test_messages_travel_as_json():
    told = message("{a}, {b}", a=counted(1, "{n} note", "{n} notes"), b=KeyName("E minor"))
    again = from_plain(json.loads(json.dumps(to_plain(told))))
    assert again == told and str(again) == "1 note, E minor"
    with speaking("de"):
        assert str(again) == "1 Ton, e-Moll"


def test_the_reading_process_hands_on_what_is_wrong_unsaid(tmp_path):
    with pytest.raises(BadInput) as wrong:
        read_apart(tmp_path / "none.abc")
    assert "does not exist" in str(wrong.value)
    with speaking("de"):
        assert "gibt es nicht" in str(wrong.value)


def test_an_instrument_is_called_in_the_language_of_the_moment():
    own = instrument("custom:G4,C4,E4,A4@345")
    assert str(own.called) == "Own tuning G4,C4,E4,A4"
    with speaking("de"):
        assert str(own.called) == say("Own tuning {body}", body="G4,C4,E4,A4") != own.name
        assert str(instrument("guitar").called) == "Konzertgitarre"


def test_messages_and_errors_are_gathered():
    imports = (
        "from workbench.language.message import counted, message\n"
        "from workbench.music.errors import BadInput\n"
    )
    code = 'BadInput("A {b}", b=1); message("x"); counted(n, "y", "z", sense="s"); BadInput(told)'
    found = list(gather.in_code(ast.parse(imports + code)))
    assert found == [("A {b}", ""), ("x", ""), ("y", "s"), ("z", "s")]
    with pytest.raises(ValueError, match="f-string"):
        list(gather.in_code(ast.parse(imports + 'BadInput(f"bar {n}")')))
