"""Classes: held as parts rather than inherited, under names that are used once."""

from __future__ import annotations

import ast
from collections import defaultdict
from dataclasses import dataclass
from pathlib import Path

WORKBENCH = Path(__file__).resolve().parents[2] / "workbench"


@dataclass(frozen=True)
class Found:
    name: str
    file: str
    bases: tuple[str, ...]


def trees():
    for path in sorted(WORKBENCH.rglob("*.py")):
        yield str(path.relative_to(WORKBENCH)), ast.parse(path.read_text(encoding="utf-8"))


def base_name(base):
    plain = base.value if isinstance(base, ast.Subscript) else base
    return plain.attr if isinstance(plain, ast.Attribute) else getattr(plain, "id", "")


def classes(found):
    return [
        Found(node.name, file, tuple(map(base_name, node.bases)))
        for file, tree in found
        for node in ast.walk(tree)
        if isinstance(node, ast.ClassDef)
    ]


def made(found):
    """Names that are called, as a class is to make one of it."""
    return {
        base_name(node.func)
        for _, tree in found
        for node in ast.walk(tree)
        if isinstance(node, ast.Call)
    }


def halves(found):
    """Classes with one child and no life of their own: two halves of one class. What is made
    by itself as well is a whole class with a special kind beside it."""
    every = classes(found)
    children = defaultdict(list)
    for one in every:
        for base in one.bases:
            children[base].append(one.name)
    alive = made(found)
    return sorted(
        f"{one.file}: {one.name}, of which only {children[one.name][0]} is made"
        for one in every
        if len(children[one.name]) == 1
        and one.name not in alive
        and not {"Protocol", "ABC"} & set(one.bases)
    )


def test_no_class_is_half_of_its_only_child():
    assert halves(list(trees())) == []


def test_a_chain_of_classes_is_found():
    chain = "class Lower: ...\nclass Upper(Lower): ...\nmade = Upper()\n"
    assert halves([("a.py", ast.parse(chain))]) == ["a.py: Lower, of which only Upper is made"]
    kinds = chain + "plain = Lower()\n"
    assert halves([("a.py", ast.parse(kinds))]) == []


def test_nothing_is_left_to_a_child_to_write():
    raised = [
        file
        for file, tree in trees()
        for node in ast.walk(tree)
        if isinstance(node, ast.Raise) and "NotImplementedError" in ast.unparse(node)
    ]
    assert raised == []


#: Lines of the window that may say ``Any``; a type of its own says more.
MOST_ANY = 20


def lines_of_any(tree):
    """Lines on which ``Any`` is used; bringing it in is none."""
    return {n.lineno for n in ast.walk(tree) if isinstance(n, ast.Name) and n.id == "Any"}


def test_the_window_says_what_its_values_are():
    found = [(file, line) for file, tree in trees() for line in lines_of_any(tree)]
    window = [place for place in found if place[0].startswith("ui/")]
    assert len(found) > 0 and len(window) <= MOST_ANY, window


def test_options_are_no_dictionaries_of_anything():
    """JSON documents are; what a function is told has fields of its own."""
    loose = [
        f"{file}:{node.lineno}"
        for file, tree in trees()
        for node in ast.walk(tree)
        if isinstance(node, ast.arg | ast.AnnAssign)
        and node.annotation is not None
        and ast.unparse(node.annotation) == "dict[str, Any]"
        and (node.arg if isinstance(node, ast.arg) else ast.unparse(node.target))
        in ("options", "choice", "wanted", "settings")
    ]
    assert loose == []


def named_twice(found):
    places = defaultdict(list)
    for one in classes(found):
        places[one.name].append(one.file)
    return {name: files for name, files in places.items() if len(files) > 1}


def test_no_two_classes_bear_one_name():
    assert named_twice(trees()) == {}


def test_a_name_used_twice_is_found():
    two = [("a.py", ast.parse("class Grip: ...")), ("b.py", ast.parse("class Grip: ..."))]
    assert named_twice(two) == {"Grip": ["a.py", "b.py"]}
