"""The names of settings stand in one place."""

from __future__ import annotations

import ast
from pathlib import Path

from workbench.store import setting_names

WORKBENCH = Path(__file__).resolve().parents[2] / "workbench"


def test_no_setting_bears_the_name_of_another():
    names = [value for name, value in vars(setting_names).items() if name.isupper()]
    assert len(names) > 15 and len(set(names)) == len(names)


def test_settings_are_asked_for_by_these_names_alone():
    """No name of a setting is written out where it is used."""
    used = [
        node
        for path in WORKBENCH.rglob("*.py")
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.Call)
        and isinstance(node.func, ast.Attribute)
        and node.func.attr in ("setting", "set_setting")
    ]
    assert len(used) > 30
    assert [
        ast.unparse(n) for n in used if isinstance(n.args[0], ast.Constant | ast.JoinedStr)
    ] == []
