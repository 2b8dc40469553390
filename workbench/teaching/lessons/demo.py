"""The demo shelf: pieces written for this project, each with a real lesson.

A lesson file (``resources/demo/NAME.lesson.json``) is written by hand and
speaks of notes as a teacher does, "bar 3 beat 1 C5"; the piece beside it
(``NAME.piece.json``) is made from the score ``NAME.musicxml`` by
``resources/demo/build.py``, so that opening the shelf needs no score reader.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache
from pathlib import Path
from typing import Any

from workbench.arranging.arrange import as_written
from workbench.fingering.pins.printed import PrintedPins
from workbench.fingering.types import Pin, Settings
from workbench.instrument.table import instrument as find_instrument
from workbench.music.codec import from_dict, piece_from_dict
from workbench.music.errors import BadInput
from workbench.music.model import Bar, Note, Piece
from workbench.teaching.lessons.edits import new_lesson
from workbench.teaching.lessons.lesson import BarNote, Lesson

_WHERE = re.compile(r"^bar (\S+) beat (\d+)(?: (\d+/\d+))? ([A-G](?:#|b)?-?\d)$")


@dataclass(frozen=True)
class Student:
    """A student of the invented studio; ``about`` is what the teacher keeps in mind."""

    name: str
    age: int
    instrument: str
    hand: str
    level: str
    minutes_a_day: int
    about: str
    lessons: tuple[str, ...] = ()


@dataclass(frozen=True)
class Scenario:
    """The invented studio that the demo lessons belong to."""

    studio: str
    contact: str
    teacher: str
    about: str
    students: tuple[Student, ...]


def demo_folder() -> Path:
    """The folder of the demo shelf: in the checkout, else beside the packages.

    Raises BadInput where there is none.
    """
    here = Path(__file__).resolve()
    tried = (here.parents[3], here.parents[2])
    for root in tried:
        folder = root / "resources" / "demo"
        if (folder / "scenario.json").is_file():
            return folder
    raise BadInput(
        "The demo pieces are missing; they belong in {folder}: "
        "install the program from its complete folder.",
        folder=tried[0] / "resources" / "demo",
    )


def demo_lessons() -> tuple[Lesson, ...]:
    """The lessons of the demo shelf, easiest uses first in the order of the shelf.

    Raises BadInput where a file of the shelf is damaged.
    """
    return _lessons(demo_folder())


@cache
def _lessons(folder: Path) -> tuple[Lesson, ...]:
    shelf = _json(folder / "shelf.json")["lessons"]
    return tuple(demo_lesson(folder, name) for name in shelf)


def demo_scenario() -> Scenario:
    """The studio, teacher and students of the demo shelf."""
    return from_dict(Scenario, _json(demo_folder() / "scenario.json"))


def demo_lesson(folder: Path, name: str) -> Lesson:
    """One lesson of the shelf, its words about bars and beats turned into note ids.

    Raises BadInput naming the file where it speaks of a note that is not there.
    """
    path = folder / f"{name}.lesson.json"
    told = _json(path)
    piece = piece_from_dict(_json(folder / f"{name}.piece.json"))
    bars = {bar.number: bar.index for bar in piece.bars}

    def note_id(where: str) -> str:
        return find_note(piece, where, path.name).id

    try:
        instrument = find_instrument(told["instrument"])
        return replace(
            new_lesson(as_written(piece), instrument, told["hand"], PrintedPins()),
            id=name,
            student=told["student"],
            settings=from_dict(Settings, told["settings"]),
            pins=tuple(
                Pin(note=note_id(pin["at"]), **{k: v for k, v in pin.items() if k != "at"})
                for pin in told["pins"]
            ),
            notes=tuple(_notes(told["notes"], bars, note_id)),
            sections=tuple((bars[number], letter) for number, letter in told["sections"]),
            grade=told["grade"],
            grade_level=told["grade_level"],
            practice_minutes=told["practice_minutes"],
            minutes_a_day=told["minutes_a_day"],
            tempo_percent=told.get("tempo_percent", 100),
            techniques=tuple(told["techniques"]),
        )
    except (KeyError, TypeError) as error:
        raise BadInput(
            "Demo file {file} is damaged at {place}.", file=path.name, place=error
        ) from error


def _notes(rows: list[dict[str, Any]], bars: dict[str, int], note_id: Any) -> Iterator[BarNote]:
    for count, row in enumerate(rows, 1):
        first, _, last = row["bars"].partition("-")
        yield BarNote(
            id=f"note{count}",
            kind=row["kind"],
            text=row["text"],
            first_bar=bars[first],
            last_bar=bars[last or first],
            note=note_id(row["at"]) if "at" in row else None,
            section=row.get("section"),
            rejected=tuple(
                (note_id(r["at"]), r["string"], r["fret"], r["left"])
                for r in row.get("rejected", ())
            ),
            grip=tuple(row["grip"]) if "grip" in row else None,
            link=row.get("link"),
        )


def find_note(piece: Piece, where: str, source: str) -> Note:
    """The note that ``bar 3 beat 2 1/2 C5`` means, beats counted in the time signature.

    A pickup bar counts from its end, as players do. Raises BadInput naming ``source``.
    """
    found = _WHERE.match(where)
    if found:
        number, whole, part, pitch = found.groups()
        beat = Fraction(whole) + Fraction(part or 0)
        for bar in piece.bars:
            if bar.number != number:
                continue
            onset = _onset(bar, beat)
            for note in bar.notes:
                if note.onset == onset and note.pitch.name == pitch:
                    return note
    raise BadInput(
        "Demo file {file}: there is no note '{place}' in {title}.",
        file=source,
        place=where,
        title=piece.title,
    )


def _onset(bar: Bar, beat: Fraction) -> Fraction:
    count, unit = bar.time_signature
    length = Fraction(4, unit)
    late = max(count * length - bar.length, Fraction(0)) if bar.pickup else Fraction(0)
    return (beat - 1) * length - late


def _json(path: Path) -> Any:
    try:
        return json.loads(path.read_text(encoding="utf-8"))
    except FileNotFoundError:
        raise BadInput(
            "Demo file {file} is missing from {folder}.", file=path.name, folder=path.parent
        ) from None
    except (OSError, ValueError) as error:
        raise BadInput(
            "Demo file {file} cannot be read: {why}.", file=path.name, why=error
        ) from None
