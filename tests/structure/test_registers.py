"""What is chosen from a list is registered once: endings of files, products, levels, styles."""

from __future__ import annotations

import argparse
import ast
from functools import cache
from pathlib import Path

import pytest

from workbench.commands import handout
from workbench.commands.source import playing_options
from workbench.fingering.types import LEVELS, STYLES
from workbench.handout.offered import OFFERED, PARTS
from workbench.handout.options import HandoutOptions
from workbench.handout.products import Request
from workbench.music import suffixes
from workbench.music.errors import BadInput
from workbench.teaching.grading.grade import THIRDS

ROOT = Path(__file__).resolve().parents[2]
LISTS = {
    "endings of scores": (set(suffixes.SCORES), "workbench/music/suffixes.py"),
    "endings of pictures": (set(suffixes.PICTURES), "workbench/music/suffixes.py"),
    "products": (set(OFFERED) - {"music"}, "workbench/handout/offered.py"),
    "levels of a student": (set(LEVELS), "workbench/fingering/types.py"),
    "styles": (set(STYLES), "workbench/fingering/types.py"),
    "thirds of a grade": (set(THIRDS), "workbench/teaching/grading/grade.py"),
    "audiences": ({"student", "teacher"}, "workbench/handout/offered.py"),
    "papers": ({"a4", "letter"}, "workbench/handout/offered.py"),
}


def _says(value):
    """Whether a value is words: a mapping to figures gives what is registered a measure."""
    return isinstance(value, ast.Call) or isinstance(getattr(value, "value", None), str)


def written_lists(tree):
    """The strings that stand in each list, tuple, set and keys of a mapping to words."""
    types = {  # Literal["a4", "letter"]
        id(part) for node in ast.walk(tree) if isinstance(node, ast.Subscript)
        for part in ast.walk(node.slice)
    }  # fmt: skip
    for node in ast.walk(tree):
        if id(node) in types:
            continue
        if isinstance(node, ast.Tuple | ast.List | ast.Set):
            parts = node.elts
        elif isinstance(node, ast.Dict) and any(_says(value) for value in node.values):
            parts = node.keys
        else:
            continue
        yield {p.value for p in parts if isinstance(p, ast.Constant) and isinstance(p.value, str)}


@cache
def every_list():
    """(file, strings) of every list with two strings at least in the program's own files."""
    return [
        (path.relative_to(ROOT).as_posix(), strings)
        for path in (ROOT / "workbench").rglob("*.py")
        for strings in written_lists(ast.parse(path.read_text("utf-8")))
        if len(strings) > 1
    ]


@pytest.mark.parametrize("what", LISTS)
def test_a_list_is_written_down_once(what):
    names, home = LISTS[what]
    found = [
        place
        for place, strings in every_list()
        # Most of it is enough: a copy that lacks the newest one is a copy all the same.
        if place != home and len(names & strings) >= max(2, len(names) - 1)
    ]
    assert found == []


def test_the_command_line_offers_what_is_registered():
    parser = argparse.ArgumentParser()
    handout.options(parser)
    choices = {a.dest: set(a.choices) for a in parser._actions if a.choices}
    assert choices["what"] == {name for name, product in OFFERED.items() if product.paged}
    assert choices["without"] == set(PARTS)
    other = argparse.ArgumentParser()
    playing_options(other)
    choices = {a.dest: set(a.choices) for a in other._actions if a.choices}
    assert choices["level"] == set(LEVELS) and choices["style"] == set(STYLES)


def test_every_part_that_can_be_left_out_is_an_option():
    assert all(getattr(HandoutOptions(**{part: False}), part) is False for part in PARTS)


def test_pages_are_made_of_what_is_registered():
    for name, product in OFFERED.items():
        if product.paged:
            Request(name)
        else:
            with pytest.raises(BadInput):
                Request(name)
