"""Work behind the interface knows values alone: a widget belongs to the window's thread."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

from workbench.ui import __file__ as ui

ROOT = Path(ui).parent
#: What is a widget, holds widgets, or lives in the window's thread with its signals.
OF_THE_WINDOW = {"self", "session", "conductor", "dialog", "window", "parent", "over"}


def started(tree):
    """(function around, work) of every call that starts work."""
    for function in ast.walk(tree):
        if isinstance(function, ast.FunctionDef):
            for call in ast.walk(function):
                if isinstance(call, ast.Call) and ast.unparse(call.func).endswith("jobs.start"):
                    yield function, call.args[2]


def named(node):
    """What a function goes by, or a lambda that is given a name."""
    if isinstance(node, ast.FunctionDef):
        return node.name
    if isinstance(node, ast.Assign) and isinstance(node.value, ast.Lambda):
        return ast.unparse(node.targets[0])
    return None


def touched(function, work):
    """The names of the window's own that work uses where it runs."""
    if isinstance(work, ast.Name):
        bodies = [n for n in ast.walk(function) if named(n) == work.id]
    else:
        bodies = [work] if isinstance(work, ast.Lambda) else []
    names = {n.id for body in bodies for n in ast.walk(body) if isinstance(n, ast.Name)}
    return names & OF_THE_WINDOW


def test_work_touches_nothing_of_the_window():
    found, calls = [], 0
    for path in sorted(ROOT.rglob("*.py")):
        for function, work in started(ast.parse(path.read_text(encoding="utf-8"))):
            calls += 1
            for name in touched(function, work):
                found.append(f"{path.relative_to(ROOT)}: {function.name} uses {name}")
    assert calls >= 35
    assert found == []


@pytest.mark.parametrize(
    ("work", "names"),
    [
        ("def work(_): return self.field.text()", {"self"}),
        (
            "def work(_):\n        def deep(): return session.lesson\n        return deep",
            {"session"},
        ),
        ("def work(_): return value", set()),
        ("work = lambda _: dialog.words", {"dialog"}),
    ],
)
def test_the_search_finds_what_it_looks_for(work, names):
    text = f"def go(self):\n    {work}\n    self.jobs.start('x', '', work, print)"
    ((function, name),) = started(ast.parse(text))
    assert touched(function, name) == names


def test_the_views_make_their_work_of_values():
    """Where a view hands its work over, it is made in a method of its own."""
    found = []
    for path in sorted((ROOT / "views").rglob("*.py")):
        for method in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(method, ast.FunctionDef) and method.name in ("work", "planning"):
                inner = [n for n in method.body if isinstance(n, ast.FunctionDef)]
                for n in (n for body in inner for n in ast.walk(body)):
                    if isinstance(n, ast.Name) and n.id in OF_THE_WINDOW:
                        found.append(f"{path.relative_to(ROOT)}: {method.name} uses {n.id}")
    assert found == []
