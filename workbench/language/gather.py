"""Bring the translation files up to date with the sentences in the code.

``python -m workbench.language.gather`` reads every call of ``say``, ``count``, ``mark``,
``message``, ``counted`` and ``BadInput`` and the texts of the data files, keeps the
translations that are there, adds new sentences as unfinished and takes out those that are
gone. ``--check`` only tells how far each language is; its status is 1 where something is
missing.
"""

from __future__ import annotations

import ast
import json
import sys
from collections.abc import Iterator
from pathlib import Path
from xml.sax.saxutils import escape

from workbench.language.speech import CONTEXT, FOLDER, OFFERED, read_translations

PROGRAM = Path(__file__).resolve().parents[1]
# Data files whose texts are shown: file, and the keys under which such texts stand.
DATA = {
    "techniques/catalogue.json": ("name", "family", "asks", "watch", "drills"),
    "techniques/grading.json": ("name",),
    "weights/fingering.json": ("sentence", "less", "title", "does"),
}

#: Where the functions come from whose calls hold sentences, and which of their arguments do.
SOURCES = (
    "workbench.language.speech", "workbench.language.message", "workbench.music.errors",
)  # fmt: skip
ARGUMENTS = {
    "say": (0,), "mark": (0,), "message": (0,), "BadInput": (0,),
    "count": (1, 2), "counted": (1, 2),
}  # fmt: skip

Sentence = tuple[str, str]  # source, sense


def sentences() -> dict[Sentence, list[str]]:
    """Every sentence with the files that use it, in a fixed order."""
    out: dict[Sentence, list[str]] = {}
    for path in sorted(PROGRAM.rglob("*.py")):
        where = path.relative_to(PROGRAM.parent).as_posix()
        for found in in_code(ast.parse(path.read_text(encoding="utf-8"))):
            out.setdefault(found, []).append(where)
    for name, keys in DATA.items():
        document = json.loads((FOLDER.parent / name).read_text(encoding="utf-8"))
        for text in in_data(document, keys):
            out.setdefault((text, ""), []).append(f"resources/{name}")
    return out


def in_code(tree: ast.AST) -> Iterator[Sentence]:
    """The literal sentences of a module. Raises ValueError where one is an f-string."""
    known = {
        alias.name
        for node in ast.walk(tree)
        if isinstance(node, ast.ImportFrom) and node.module in SOURCES
        for alias in node.names
    }
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call) or not isinstance(node.func, ast.Name):
            continue
        name = node.func.id
        places = ARGUMENTS.get(name, ()) if name in known else ()
        if len(node.args) != max(places, default=-1) + 1:
            continue
        texts = [node.args[place] for place in places]
        sense = next((_literal(k.value) for k in node.keywords if k.arg == "sense"), "")
        for text in texts:
            if isinstance(text, ast.JoinedStr):
                raise ValueError(f"line {text.lineno}: a sentence to translate is an f-string")
            literal = _literal(text)
            if literal:
                yield literal, sense


def _literal(node: ast.AST) -> str:
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        return node.value
    return ""


def in_data(document: object, keys: tuple[str, ...]) -> Iterator[str]:
    """The texts under ``keys``, at any depth."""
    if isinstance(document, dict):
        for key, value in document.items():
            if key in keys:
                texts = value if isinstance(value, list) else [value]
                yield from (text for text in texts if isinstance(text, str) and text)
            else:
                yield from in_data(value, keys)
    elif isinstance(document, list):
        for value in document:
            yield from in_data(value, keys)


def written(code: str, found: dict[Sentence, list[str]], known: dict[Sentence, str]) -> str:
    """The Linguist file of one language."""
    lines = [
        '<?xml version="1.0" encoding="utf-8"?>',
        "<!DOCTYPE TS>",
        f'<TS version="2.1" language="{code}" sourcelanguage="en">',
        "<context>",
        f"    <name>{CONTEXT}</name>",
    ]
    for (source, sense), files in sorted(found.items()):
        lines.append("    <message>")
        lines += [f'        <location filename="../../{name}"/>' for name in sorted(set(files))]
        lines.append(f"        <source>{escape(source)}</source>")
        if sense:
            lines.append(f"        <comment>{escape(sense)}</comment>")
        words = known.get((source, sense), "")
        unfinished = "" if words else ' type="unfinished"'
        lines.append(f"        <translation{unfinished}>{escape(words)}</translation>")
        lines.append("    </message>")
    return "\n".join([*lines, "</context>", "</TS>", ""])


def main(arguments: list[str]) -> int:
    """Write or check the files; the exit status."""
    found = sentences()
    missing = 0
    for code in OFFERED:
        if code == "en":
            continue
        path = FOLDER / f"pluckwright_{code}.ts"
        known = read_translations(path)
        lacking = [text for text in found if text not in known]
        missing += len(lacking)
        print(f"{OFFERED[code]}: {len(found) - len(lacking)} of {len(found)} sentences")
        if "--check" not in arguments:
            path.write_text(written(code, found, known), encoding="utf-8")
    return 1 if missing and "--check" in arguments else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
