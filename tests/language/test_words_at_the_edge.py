"""Music, instruments, fingerings, arrangements and lessons hold facts; words are made where
something is shown."""

from __future__ import annotations

import ast
from pathlib import Path

WORKBENCH = Path(__file__).resolve().parents[2] / "workbench"
DOMAIN = ("music", "instrument", "fingering", "arranging", "teaching")
#: Where facts get their words, and who else may call for these: errors that are said when
#: they are shown, and documents that are printed as they are.
WORDS = {
    "workbench.arranging.words",
    "workbench.fingering.shapes.words",
    "workbench.fingering.telling.comparing",
    "workbench.fingering.telling.words",
    "workbench.music.telling.form",
    "workbench.music.telling.warnings",
    "workbench.teaching.bars.form_words",
    "workbench.teaching.lessons.differences",
    "workbench.teaching.planning.files",
    "workbench.teaching.scripts.files",
}
SHOWN = {
    "workbench.fingering.telling.refused", "workbench.music.document",
    "workbench.teaching.lessons.altered", "workbench.teaching.scripts.words",
}  # fmt: skip
SENTENCES = {
    "fingering": ("fingering/telling/words.py", "fingering/shapes/words.py"),
    "music": ("music/telling/warnings.py",),
    "arranging": ("music/telling/warnings.py",),
}


def modules() -> dict[str, ast.Module]:
    """The code of the domain by module."""
    return {
        ".".join(path.relative_to(WORKBENCH.parent).with_suffix("").parts): ast.parse(
            path.read_text(encoding="utf-8")
        )
        for folder in DOMAIN
        for path in (WORKBENCH / folder).rglob("*.py")
    }


def imported(code: ast.Module) -> set[str]:
    return {n.module for n in ast.walk(code) if isinstance(n, ast.ImportFrom) and n.module}


def literals(node: ast.expr) -> set[str]:
    """The text that stands there, or the two between which it is chosen."""
    if isinstance(node, ast.IfExp):
        return literals(node.body) | literals(node.orelse)
    return {node.value} if isinstance(node, ast.Constant) and isinstance(node.value, str) else set()


def test_nothing_but_the_modules_of_words_asks_for_words():
    askers = {name for name, code in modules().items() if imported(code) & WORDS}
    assert set(modules()) >= WORDS
    assert sorted(askers - WORDS - SHOWN) == []


def test_the_chosen_language_is_known_to_nothing_but_the_words():
    speaking = {
        name
        for name, code in modules().items()
        for node in ast.walk(code)
        if isinstance(node, ast.Call)
        and isinstance(node.func, ast.Name)
        and node.func.id in ("say", "chosen", "speaking")
    }
    assert speaking and speaking <= WORDS


def test_every_kind_of_fact_has_its_words():
    """Each kind named in the code can be told; found by reading the code."""
    made: dict[str, set[str]] = {}
    for name, code in modules().items():
        for node in ast.walk(code):
            if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "fact":
                made.setdefault(name.split(".")[1], set()).update(literals(node.args[0]))
    assert len(made["fingering"]) > 30 and len(made["music"]) > 5
    for folder, kinds in made.items():
        told = "".join((WORKBENCH / p).read_text(encoding="utf-8") for p in SENTENCES[folder])
        assert [kind for kind in sorted(kinds) if f'"{kind}"' not in told] == []


def test_no_error_is_said_before_it_is_shown():
    """What a ``BadInput`` holds is said by ``str`` where somebody reads it."""
    early = [
        f"{path.relative_to(WORKBENCH)}:{node.lineno}"
        for path in WORKBENCH.rglob("*.py")
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.Call)
        and getattr(node.func, "id", "") in ("BadInput", "StoreRefused")
        for inner in ast.walk(node)
        if isinstance(inner, ast.Call)
        and getattr(inner.func, "id", "") in ("say", "count", "pitch_words", "key_words", "decimal")
    ]
    assert early == []
