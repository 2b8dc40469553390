"""The JSON schema of the archive, made from the values that it holds.

python -m workbench.store.archive_schema      writes resources/schema/archive.schema.json
"""

from __future__ import annotations

import dataclasses
import json
import types
import typing
from fractions import Fraction
from typing import Any, Literal, Union

from workbench.music.model import Piece
from workbench.store.archive import FORMAT, SCHEMA, VERSION
from workbench.teaching.lessons.lesson import Lesson

_TIME = {"type": "string", "format": "date-time"}
_MUSIC = {"type": "string", "pattern": r"^music/[0-9a-f]{64}\.json$"}


def schema() -> dict[str, Any]:
    """JSON Schema, draft 2020-12: ``$defs`` has one for each kind of part."""
    found: dict[str, Any] = {}
    _of(Piece, found)
    _of(Lesson, found)
    lesson = dict(found["Lesson"])
    lesson["properties"] = {k: v for k, v in lesson["properties"].items() if k != "piece"}
    lesson["required"] = [name for name in lesson["required"] if name != "piece"]
    found["Lesson"] = lesson
    state = {"lesson": {"$ref": "#/$defs/Lesson"}, "music": _MUSIC}
    found["archive"] = _fields(
        {
            "format": {"const": FORMAT},
            "version": {"const": VERSION},
            "made": _TIME,
            "lessons": {
                "type": "array",
                "items": {"type": "string", "pattern": r"^lessons/[\w-]+\.json$"},
            },
            "groups": {
                "type": "array",
                "items": _fields(
                    {
                        "name": {"type": "string"},
                        "students": {"type": "array", "items": {"type": "string"}},
                    }
                ),
            },
        }
    )
    found["lesson"] = _fields(
        {
            **state,
            "created": _TIME,
            "updated": _TIME,
            "archived": {"type": "boolean"},
            "bar": {"type": "integer"},
            "versions": {
                "type": "array",
                "items": _fields({"name": {"type": "string"}, "made": _TIME, **state}),
            },
            "original": {
                "oneOf": [
                    {"type": "null"},
                    _fields({"music": _MUSIC, "source": {"type": "string"}}),
                ]
            },
        }
    )
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "Archive of lessons",
        "description": "archive.json is of #/$defs/archive, lessons/*.json of #/$defs/lesson, "
        "music/*.json of #/$defs/Piece. Lengths are fractions of a quarter note, as text.",
        "$ref": "#/$defs/archive",
        "$defs": dict(sorted(found.items())),
    }


def _fields(properties: dict[str, Any]) -> dict[str, Any]:
    return {"type": "object", "required": sorted(properties), "properties": properties}


def _of(hint: Any, found: dict[str, Any]) -> dict[str, Any]:
    origin, args = typing.get_origin(hint), typing.get_args(hint)
    if origin in (Union, types.UnionType):
        return {"anyOf": [_of(arg, found) for arg in args]}
    if origin is Literal:
        return {"enum": list(args)}
    if origin in (tuple, list):
        if origin is list or args[-1] is Ellipsis:
            return {"type": "array", "items": _of(args[0], found)}
        rows = [_of(arg, found) for arg in args]
        return {"type": "array", "prefixItems": rows, "minItems": len(rows), "maxItems": len(rows)}
    if origin is dict:
        return {"type": "object", "additionalProperties": _of(args[1], found)}
    if dataclasses.is_dataclass(hint) and isinstance(hint, type):
        return _of_dataclass(hint, found)
    if hint is Fraction:
        return {"type": "string", "pattern": r"^-?\d+(/\d+)?$"}
    names = {
        int: "integer", float: "number", str: "string", bool: "boolean", type(None): "null",
    }  # fmt: skip
    return {"type": names[hint]}


def _of_dataclass(cls: type, found: dict[str, Any]) -> dict[str, Any]:
    if cls.__name__ not in found:
        found[cls.__name__] = {}
        hints = typing.get_type_hints(cls)
        fields = dataclasses.fields(cls)
        found[cls.__name__] = {
            "type": "object",
            "required": [
                f.name
                for f in fields
                if f.default is dataclasses.MISSING and f.default_factory is dataclasses.MISSING
            ],
            "properties": {f.name: _of(hints[f.name], found) for f in fields},
        }
    found_there = {"$ref": f"#/$defs/{cls.__name__}"}
    if hasattr(cls, "from_text"):  # older archives have a sentence there
        return {"anyOf": [found_there, {"type": "string"}]}
    return found_there


def text() -> str:
    """The schema as the file has it."""
    return json.dumps(schema(), indent=1) + "\n"


if __name__ == "__main__":
    SCHEMA.parent.mkdir(exist_ok=True)
    SCHEMA.write_text(text(), encoding="utf-8")
