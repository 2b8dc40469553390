"""Sentences in the chosen language, and the files that hold the translations."""

from __future__ import annotations

import ast

import pytest

from workbench.language import gather, speech


@pytest.fixture
def german(tmp_path, monkeypatch):
    found = {("{n} note", ""): ["a.py"], ("{n} notes", ""): ["a.py"], ("open", "string"): ["a.py"]}
    known = {
        ("{n} note", ""): "{n} Ton",
        ("{n} notes", ""): "{n} Töne",
        ("open", "string"): "leer & <frei>",
    }
    (tmp_path / "pluckwright_de.ts").write_text(gather.written("de", found, known))
    monkeypatch.setattr(speech, "FOLDER", tmp_path)
    speech._words.cache_clear()
    speech.choose("de_AT.UTF-8")
    yield
    speech.choose("en")
    speech._words.cache_clear()


def test_sentences_come_in_the_chosen_language(german):
    assert speech.count(1, "{n} note", "{n} notes") == "1 Ton"
    assert speech.count(3, "{n} note", "{n} notes") == "3 Töne"
    assert speech.say("open", sense="string") == "leer & <frei>"


def test_what_has_no_translation_is_said_in_english(german):
    assert speech.say("open") == "open"
    assert speech.say("Bar {bar}", bar=3) == "Bar 3"


def test_a_language_that_is_not_offered_means_english():
    speech.choose("xx")
    assert speech.chosen() == "en"


def test_braces_stay_where_no_field_is_given():
    assert speech.say("{x}") == "{x}"


def test_a_spoilt_file_gives_english(tmp_path):
    (tmp_path / "a.ts").write_text("<TS><mess")
    assert speech.read_translations(tmp_path / "a.ts") == {}
    assert speech.read_translations(tmp_path / "none.ts") == {}


def test_calls_are_gathered_and_an_f_string_is_refused():
    imports = "from workbench.language.speech import count, mark, say\n"
    code = 'say("A {b}", b=1); count(n, "x", "y", sense="s"); mark("z"); say(name); "a".count("b")'
    found = list(gather.in_code(ast.parse(imports + code)))
    assert found == [("A {b}", ""), ("x", "s"), ("y", "s"), ("z", "")]
    with pytest.raises(ValueError, match="f-string"):
        list(gather.in_code(ast.parse(imports + 'say(f"bar {n}")')))


def test_functions_of_the_same_name_from_elsewhere_are_passed_over():
    assert list(gather.in_code(ast.parse('say("x"); notice.say(f"{y}")'))) == []
