"""The layers of the design hold: an arrow may only point down."""

from __future__ import annotations

import ast
import tomllib
from pathlib import Path

from importlinter.cli import lint_imports

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


def imports(path: Path) -> set[str]:
    """The top names of what a module imports, at any depth of its code."""
    found: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found |= {alias.name.split(".")[0] for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.module:
            found.add(node.module.split(".")[0])
    return found
