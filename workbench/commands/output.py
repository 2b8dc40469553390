"""What a verb gives back, and how it is shown: one JSON document or plain text."""

from __future__ import annotations

import contextlib
import json
import shutil
import sys
import textwrap
from collections.abc import Container, Iterator, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from pathlib import Path
from typing import TYPE_CHECKING, Any

from workbench.language.message import Text
from workbench.music.errors import BadInput

if TYPE_CHECKING:
    pass


@dataclass
class Result:
    """``document`` is the JSON document; ``text`` the same for people, in lines."""

    document: Any
    text: list[str] = field(default_factory=list)
    status: int = 0


@contextlib.contextmanager
def quiet_stdout() -> Iterator[None]:
    """Send whatever libraries print while working to stderr, so that stdout stays ours."""
    with contextlib.redirect_stdout(sys.stderr):
        yield


def show(result: Result, as_json: bool) -> None:
    """Print a result on stdout."""
    if as_json:
        print(json.dumps(result.document, ensure_ascii=False, indent=1, default=_value))
    else:
        for line in result.text:
            print(line.rstrip())
    sys.stdout.flush()


def _value(value: object) -> str:
    if isinstance(value, Fraction):
        return str(value)
    raise TypeError(f"{type(value).__name__} has no place in JSON")


class Meter:
    """A line of progress on the terminal; silent where stderr is no terminal."""

    silent = False  # set in processes whose progress somebody else shows

    def __init__(self, label: str) -> None:
        self.label = label
        self.shown = ""

    def __call__(self, done: int, of: int) -> None:
        line = f"{self.label} {100 * done // max(1, of)} %"
        if line != self.shown and not self.silent and sys.stderr.isatty():
            print(f"\r{line}", end="", file=sys.stderr, flush=True)
            self.shown = line

    def __enter__(self) -> Meter:
        return self

    def __exit__(self, *_: object) -> None:
        if self.shown:
            print(f"\r{' ' * len(self.shown)}\r", end="", file=sys.stderr, flush=True)


WIDEST = 60  # signs in a column


def _short(cell: object) -> str:
    text = "" if cell is None else str(cell)
    return text if len(text) <= WIDEST else text[: WIDEST - 1] + "…"


def table(
    heads: Sequence[str], rows: Sequence[Sequence[object]], right: Container[int] = ()
) -> list[str]:
    """Rows under heads in columns that fit. Columns whose place, from 0, is in ``right``
    are set flush right. A very long word or title is cut, so
    that it does not widen all rows; the last column, which widens none, is not."""
    cells = [
        [*(_short(cell) for cell in row[:-1]), *("" if c is None else str(c) for c in row[-1:])]
        for row in rows
    ]
    widths = [
        max([len(head), *(len(row[place]) for row in cells)]) for place, head in enumerate(heads)
    ]

    def line(row: Sequence[str]) -> str:
        parts = [
            cell.rjust(width) if place in right else cell.ljust(width)
            for place, (cell, width) in enumerate(zip(row, widths, strict=True))
        ]
        return "  ".join(parts).rstrip()

    return [line(list(heads)), "  ".join("-" * width for width in widths), *map(line, cells)]


def wrapped(text: Text, indent: str = "") -> list[str]:
    """A paragraph in lines of the terminal's width."""
    width = max(40, min(100, shutil.get_terminal_size((88, 24)).columns))
    return textwrap.wrap(str(text), width, initial_indent=indent, subsequent_indent=indent) or [""]


def file_to_write(text: str, example: str) -> Path:
    """The path of a file that is to be written. Raises BadInput where a folder stands there;
    ``example`` is a fitting name inside it."""
    path = Path(text)
    if path.is_dir():
        raise BadInput(
            "{path} is a folder; name the file to write, such as {name}.",
            path=path,
            name=path / example,
        )
    return path
