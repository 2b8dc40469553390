"""What is claimed of speed is claimed as a ratio within one run: no bare figure is asserted."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

TESTS = Path(__file__).resolve().parents[1]
CLOCKS = {"perf_counter", "process_time", "thread_time", "monotonic"}
#: Counts and sizes, not times.
COUNTS = {"len", "sum", "peak_of_children"}


def timed_files() -> list[Path]:
    """The test modules that read a clock."""
    return [
        path
        for path in sorted(TESTS.rglob("*.py"))
        if path != Path(__file__) and any(clock in path.read_text("utf-8") for clock in CLOCKS)
    ]


def figures_of(tree: ast.Module) -> set[str]:
    """Names that the module gives a bare figure."""
    return {
        target.id
        for node in tree.body
        if isinstance(node, ast.Assign) and isinstance(node.value, ast.Constant)
        for target in node.targets
        if isinstance(target, ast.Name)
    }


def ratios_of(tree: ast.Module) -> set[str]:
    """Names that are given a quotient."""
    return {
        name.id
        for node in ast.walk(tree)
        if isinstance(node, ast.Assign) and divides(node.value)
        for target in node.targets
        for name in ast.walk(target)
        if isinstance(name, ast.Name)
    }


def divides(node: ast.AST) -> bool:
    return any(isinstance(part, ast.Div) for part in ast.walk(node))


def bare(source: str) -> list[int]:
    """Lines of assertions that hold a measured value against a figure of the module's."""
    tree = ast.parse(source)
    figures, ratios = figures_of(tree), ratios_of(tree)
    found = []
    for node in ast.walk(tree):
        if not (isinstance(node, ast.Assert) and isinstance(node.test, ast.Compare)):
            continue
        sides = [node.test.left, *node.test.comparators]
        if not all(isinstance(op, ast.Lt | ast.LtE | ast.Gt | ast.GtE) for op in node.test.ops):
            continue
        numbers = [
            s for s in sides
            if isinstance(s, ast.Constant) or (isinstance(s, ast.Name) and s.id in figures)
        ]  # fmt: skip
        for side in sides:
            names = {n.id for n in ast.walk(side) if isinstance(n, ast.Name)}
            counted = isinstance(side, ast.Call) and names & COUNTS
            if numbers and side not in numbers and not (divides(side) or counted or names & ratios):
                found.append(node.lineno)
    return found


def test_a_bare_figure_is_found():
    assert bare("LIMIT = 0.05\ndef test():\n    assert took < LIMIT\n") == [3]
    assert bare("def test():\n    assert busy[64] < 0.016\n") == [2]
    assert not bare("def test():\n    r = a / b\n    assert r < 2\n    assert a / b < 1.5\n")


@pytest.mark.parametrize("path", timed_files(), ids=lambda path: path.name)
def test_no_test_asserts_a_time(path):
    assert bare(path.read_text("utf-8")) == []
