"""Frozen values to JSON-safe dictionaries and back, exactly.

Works from the type hints of any frozen dataclass, so the layers above use it
for their own values. Fractions travel as strings such as ``"3/2"``, tuples as
lists. What comes back equals what went in.
"""

from __future__ import annotations

import dataclasses
import math
import types
import typing
from fractions import Fraction
from functools import cache
from typing import Any, Literal, TypeVar, Union

from workbench.music.errors import BadInput
from workbench.music.model import Piece

T = TypeVar("T")


def to_dict(obj: Any) -> dict[str, Any]:
    """A dataclass value as a dictionary that ``json.dumps`` takes as it stands.

    Raises TypeError for a field whose value JSON cannot hold.
    """
    if not dataclasses.is_dataclass(obj) or isinstance(obj, type):
        raise TypeError(f"{type(obj).__name__} is no dataclass value")
    return {f.name: _plain(getattr(obj, f.name)) for f in dataclasses.fields(obj)}


def from_dict(cls: type[T], data: Any) -> T:
    """The value of dataclass ``cls`` that ``to_dict`` wrote.

    Fields that are missing take their default, unknown ones are passed over,
    so that older and newer files open. Raises BadInput naming the field where
    the data does not fit.
    """
    value: T = _read_dataclass(cls, data, cls.__name__)
    return value


def piece_to_dict(piece: Piece) -> dict[str, Any]:
    """A piece as a JSON-safe dictionary."""
    return to_dict(piece)


def piece_from_dict(data: Any) -> Piece:
    """The piece that ``piece_to_dict`` wrote; BadInput where the data does not fit."""
    return from_dict(Piece, data)


def _plain(value: Any) -> Any:
    if value is None or isinstance(value, bool | int | str):
        return value
    if isinstance(value, float):
        if not math.isfinite(value):
            raise TypeError(f"{value} has no place in JSON")
        return value
    if isinstance(value, Fraction):
        return str(value)
    if isinstance(value, tuple | list):
        return [_plain(v) for v in value]
    if isinstance(value, dict):
        for key in value:
            if not isinstance(key, str):
                raise TypeError(f"dictionary key {key!r} is no text")
        return {k: _plain(v) for k, v in value.items()}
    return to_dict(value)


@cache
def _hints(cls: type) -> dict[str, Any]:
    return typing.get_type_hints(cls)


def _read_dataclass(cls: type, data: Any, where: str) -> Any:
    if isinstance(data, str) and hasattr(cls, "from_text"):  # once it was a plain text
        return cls.from_text(data)
    if not isinstance(data, dict):
        raise _misfit(where, "a group of fields", data)
    hints = _hints(cls)
    given: dict[str, Any] = {}
    for f in dataclasses.fields(cls):
        if f.name in data:
            given[f.name] = _read(hints[f.name], data[f.name], f"{where}.{f.name}")
        elif f.default is dataclasses.MISSING and f.default_factory is dataclasses.MISSING:
            raise BadInput(
                "Saved data: {where}.{field} is missing; the data is damaged.",
                where=where,
                field=f.name,
            )
    return cls(**given)


def _read(hint: Any, data: Any, where: str) -> Any:
    origin = typing.get_origin(hint)
    if origin in (Union, types.UnionType):
        return _read_union(hint, data, where)
    if origin is tuple:
        return _read_tuple(typing.get_args(hint), data, where)
    if origin is list:
        (inner,) = typing.get_args(hint)
        return [_read(inner, v, f"{where}[{i}]") for i, v in enumerate(_rows(data, where))]
    if origin is dict:
        inner = typing.get_args(hint)[1]
        if not isinstance(data, dict):
            raise _misfit(where, "a group of fields", data)
        return {str(k): _read(inner, v, f"{where}.{k}") for k, v in data.items()}
    if origin is Literal:
        known = typing.get_args(hint)
        if data not in known:
            raise _misfit(where, " / ".join(map(repr, known)), data)
        return data
    if hint is Any:
        return data
    if dataclasses.is_dataclass(hint) and isinstance(hint, type):
        return _read_dataclass(hint, data, where)
    return _read_plain(hint, data, where)


def _read_plain(hint: Any, data: Any, where: str) -> Any:
    if hint is Fraction:
        if isinstance(data, str) or (isinstance(data, int) and not isinstance(data, bool)):
            try:
                return Fraction(data)
            except (ValueError, ZeroDivisionError):
                pass
        raise _misfit(where, "a fraction such as 3/2", data)
    if hint is float and isinstance(data, int) and not isinstance(data, bool):
        return float(data)
    if hint is float and isinstance(data, float) and not math.isfinite(data):
        raise _misfit(where, "a finite number", data)
    if hint is type(None):
        if data is not None:
            raise _misfit(where, "nothing", data)
        return None
    # bool is an int to Python, not to us
    if not isinstance(data, hint) or (isinstance(data, bool) and hint is not bool):
        names = {int: "a whole number", float: "a number", str: "text", bool: "true or false"}
        raise _misfit(where, names.get(hint, getattr(hint, "__name__", str(hint))), data)
    return data


def _read_union(hint: Any, data: Any, where: str) -> Any:
    args = typing.get_args(hint)
    if data is None and type(None) in args:
        return None
    complaint: BadInput | None = None
    for arg in args:
        if arg is type(None):
            continue
        try:
            return _read(arg, data, where)
        except BadInput as error:
            complaint = complaint or error
    raise complaint or _misfit(where, "nothing", data)


def _read_tuple(args: tuple[Any, ...], data: Any, where: str) -> tuple[Any, ...]:
    rows = _rows(data, where)
    if len(args) == 2 and args[1] is Ellipsis:
        return tuple(_read(args[0], v, f"{where}[{i}]") for i, v in enumerate(rows))
    if len(rows) != len(args):
        raise _misfit(where, f"a row of {len(args)}", data)
    return tuple(
        _read(a, v, f"{where}[{i}]") for i, (a, v) in enumerate(zip(args, rows, strict=True))
    )


def _rows(data: Any, where: str) -> list[Any]:
    if not isinstance(data, list | tuple):
        raise _misfit(where, "a list", data)
    return list(data)


def _misfit(where: str, wanted: str, data: Any) -> BadInput:
    shown = repr(data)
    if len(shown) > 40:
        shown = shown[:37] + "..."
    return BadInput(
        "Saved data: {where} should be {wanted} but is {shown}; the data is damaged.",
        where=where,
        wanted=wanted,
        shown=shown,
    )
