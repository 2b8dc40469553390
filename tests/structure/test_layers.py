"""The layers of the design hold: an arrow may only point down."""

from __future__ import annotations

import ast
import re
import tomllib
from pathlib import Path

from grimp import build_graph
from importlinter.cli import lint_imports
from networkx import DiGraph, strongly_connected_components

ROOT = Path(__file__).resolve().parents[2]
WORKBENCH = ROOT / "workbench"


def test_the_contracts_of_pyproject_hold(monkeypatch, capsys):
    monkeypatch.chdir(ROOT)
    status = lint_imports(no_cache=True)
    assert status == 0, capsys.readouterr().out


def test_every_folder_of_the_program_has_a_layer():
    contracts = tomllib.loads((ROOT / "pyproject.toml").read_text())["tool"]["importlinter"]
    layers = " ".join(contracts["contracts"][0]["layers"])
    folders = [place.name for place in WORKBENCH.iterdir() if (place / "__init__.py").exists()]
    assert folders
    assert [name for name in folders if f"workbench.{name}" not in layers] == []


def test_music21_stays_with_the_reader_and_the_writers():
    """Objects of the reading library stop at workbench/music/."""
    strangers = [
        path.relative_to(ROOT).as_posix()
        for path in WORKBENCH.rglob("*.py")
        if path.relative_to(WORKBENCH).parts[0] != "music" and "music21" in imports(path)
    ]
    assert strangers == []


def test_names_in_the_drawing_are_made_and_read_in_one_module():
    """No other module knows the words that stand before a note's or a bar's name."""
    words = re.compile(r"""["'](?:head|fl|fr|sn|t|bar|rest|voice|tempo|mark)-["'{]""")
    strangers = [
        path.relative_to(ROOT).as_posix()
        for folder in ("engraving", "handout", "ui")
        for path in (WORKBENCH / folder).rglob("*.py")
        if words.search(path.read_text(encoding="utf-8"))
    ]
    assert strangers == ["workbench/engraving/ids.py"]


def test_no_circle_among_the_modules_and_none_among_the_folders():
    """Imports for types count too, and those inside a function."""
    graph = build_graph("workbench", cache_dir=None, exclude_type_checking_imports=False)
    modules, folders = DiGraph(), DiGraph()
    for one in graph.modules:
        for other in graph.find_modules_directly_imported_by(one):
            modules.add_edge(one, other)
            if folder_of(one) != folder_of(other):
                folders.add_edge(folder_of(one), folder_of(other))
    assert len(modules) > 300
    for arrows in (modules, folders):
        assert [sorted(c) for c in strongly_connected_components(arrows) if len(c) > 1] == []


def folder_of(module: str) -> str:
    """The folder that a module lies in; a module beside folders stands for itself."""
    whole = ROOT.joinpath(*module.split("."))
    if whole.is_dir():
        return module
    rooms = [place for place in whole.parent.iterdir() if (place / "__init__.py").exists()]
    return module if rooms else module.rpartition(".")[0]


def test_the_search_for_circles_counts_imports_for_types():
    graph = build_graph("workbench", cache_dir=None, exclude_type_checking_imports=False)
    assert "workbench.store.shelf" in graph.find_modules_directly_imported_by(
        "workbench.ui.window.app"
    )


def imports(path: Path) -> set[str]:
    """The top names of what a module imports, at any depth of its code."""
    found: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found |= {alias.name.split(".")[0] for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.module:
            found.add(node.module.split(".")[0])
    return found
