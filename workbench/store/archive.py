"""The open archive of lessons: a zip file of JSON, with the music as MusicXML beside it.

    archive.json            format, version, when it was made; the lessons, the groups
    lessons/0001.json       one lesson with its versions; it names its music
    music/DIGEST.json       a piece, exactly
    music/DIGEST.musicxml   the same for other programs
    schema.json             the JSON schema of all of that (resources/schema)

Nothing is ever unpacked to a disk, and no more than ``MOST`` bytes are read.
"""

from __future__ import annotations

import json
import re
import zipfile
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace
from datetime import datetime
from pathlib import Path
from typing import Any

from workbench.music.codec import from_dict, piece_from_dict, piece_to_dict, to_dict
from workbench.music.errors import BadInput
from workbench.music.files import appearing, unwritable
from workbench.music.model import Piece
from workbench.music.writing.score import musicxml_bytes
from workbench.store.documents import as_text, music_document
from workbench.teaching.lessons.lesson import Lesson

FORMAT, VERSION = "pluckwright-archive", 2
EARLIER = (1,)  # kept what it found in sentences; they are shown as they stand
ENDING = ".pluckwright"
MOST = 256 * 2**20  # bytes unpacked
MOST_LESSONS = 100_000
SCHEMA = Path(__file__).resolve().parents[2] / "resources" / "schema" / "archive.schema.json"
_PART = re.compile(r"(lessons|music)/[\w-]{1,80}\.json")


@dataclass(frozen=True)
class NamedState:
    """A named state of a lesson."""

    name: str
    made: datetime
    lesson: Lesson


@dataclass(frozen=True)
class Carried:
    """One lesson of an archive: its present state, its versions and the piece that it was
    made of as it was imported; ``bar`` is the place in playing order last looked at."""

    lesson: Lesson
    created: datetime
    updated: datetime
    archived: bool = False
    versions: tuple[NamedState, ...] = ()
    original: Piece | None = None
    source: str = ""
    bar: int = 0


@dataclass(frozen=True)
class Archive:
    """What an archive holds; groups by name."""

    lessons: tuple[Carried, ...]
    groups: dict[str, tuple[str, ...]] = field(default_factory=dict)
    made: datetime | None = None


_NO_PIECE = Piece("", ())


def write_archive(
    path: Path, lessons: Iterable[Carried], groups: dict[str, tuple[str, ...]], made: datetime,
    progress: Callable[[int], None] = lambda done: None,
) -> int:  # fmt: skip
    """Write an archive, whole or not at all; how many lessons are in it.

    Raises BadInput where it cannot be written.
    """
    names: list[str] = []
    written: set[str] = set()
    try:
        with (
            appearing(path, private=True) as part,
            zipfile.ZipFile(part, "w", zipfile.ZIP_DEFLATED) as out,
        ):

            def put(name: str, text: str | bytes) -> None:
                out.writestr(zipfile.ZipInfo(name, made.timetuple()[:6]), text,
                             zipfile.ZIP_DEFLATED)  # fmt: skip

            def music(piece: Piece) -> str:
                digest, _ = music_document(piece)
                if digest not in written:
                    written.add(digest)
                    put(f"music/{digest}.json", as_text(piece_to_dict(piece)))
                    put(f"music/{digest}.musicxml", musicxml_bytes(piece))
                return f"music/{digest}.json"

            for number, carried in enumerate(lessons, 1):
                name = f"lessons/{number:04}.json"
                names.append(name)
                put(name, as_text(_lesson_document(carried, music)))
                progress(number)
            put("schema.json", SCHEMA.read_bytes())
            top = {
                "format": FORMAT,
                "version": VERSION,
                "made": made.isoformat(),
                "lessons": names,
                "groups": [{"name": n, "students": list(who)} for n, who in groups.items()],
            }
            put("archive.json", as_text(top))
    except OSError as fault:
        raise unwritable(path, fault) from fault
    return len(names)


def _lesson_document(carried: Carried, music: Callable[[Piece], str]) -> dict[str, Any]:
    def state(lesson: Lesson) -> dict[str, Any]:
        plain = to_dict(replace(lesson, piece=_NO_PIECE))
        del plain["piece"]
        return {"lesson": plain, "music": music(lesson.piece)}

    original = carried.original
    return {
        **state(carried.lesson),
        "created": carried.created.isoformat(),
        "updated": carried.updated.isoformat(),
        "archived": carried.archived,
        "bar": carried.bar,
        "versions": [
            {"name": v.name, "made": v.made.isoformat(), **state(v.lesson)}
            for v in carried.versions
        ],
        "original": {"music": music(original), "source": carried.source} if original else None,
    }


class _Parts:
    """Reads the parts of an archive, and keeps count of how much that is."""

    def __init__(self, archive: zipfile.ZipFile, name: str) -> None:
        self._archive, self._name, self._left = archive, name, MOST
        self._music: dict[str, Piece] = {}

    def part(self, name: str) -> dict[str, Any]:
        with self._archive.open(name) as stream:
            data = stream.read(self._left + 1)
        self._left -= len(data)
        if self._left < 0:
            raise BadInput(
                "{name} unpacks to more than lessons need; it is not opened.", name=self._name
            )
        found = json.loads(data)
        if not isinstance(found, dict):
            raise ValueError(name)
        return found

    def state(self, document: dict[str, Any]) -> Lesson:
        plain = dict(document["lesson"])
        plain["piece"] = piece_to_dict(_NO_PIECE)
        return replace(from_dict(Lesson, plain), piece=self.music(document["music"]))

    def music(self, name: Any) -> Piece:
        if not isinstance(name, str) or not _PART.fullmatch(name):
            raise ValueError(name)
        if name not in self._music:
            self._music[name] = piece_from_dict(self.part(name))
        return self._music[name]


def read_archive(path: str | Path) -> Archive:
    """What is in an archive.

    Raises BadInput where it is no archive, is damaged, or comes from a newer program.
    """
    path = Path(path)
    try:
        with zipfile.ZipFile(path) as archive:
            reader = _Parts(archive, path.name)
            top = reader.part("archive.json")
            if top.get("format") != FORMAT:
                raise KeyError("format")
            if top["version"] not in (VERSION, *EARLIER):
                raise BadInput(
                    "{name} was written by a newer version of the program; update this one.",
                    name=path.name,
                )
            return _archive(reader, top)
    except FileNotFoundError:
        raise BadInput("{path} does not exist; check the name and the folder.", path=path) from None
    except IsADirectoryError:
        raise BadInput("{name} is a folder; name an archive.", name=path.name) from None
    except BadInput:
        raise
    except OSError as fault:
        raise BadInput(
            "{name} cannot be read: {reason}.", name=path.name, reason=fault.strerror or str(fault)
        ) from fault
    except Exception as fault:  # of zip, zlib, JSON and its shape: all mean the same
        raise BadInput(
            "{name} is no archive of lessons, or is damaged; get it again from where it was made.",
            name=path.name,
        ) from fault


def _archive(reader: _Parts, top: dict[str, Any]) -> Archive:
    names = list(dict.fromkeys(top["lessons"]))
    if len(names) > MOST_LESSONS or not all(_PART.fullmatch(name) for name in names):
        raise ValueError("lessons")
    groups = {
        str(group["name"]): tuple(str(student) for student in group["students"])
        for group in top.get("groups", ())
    }
    lessons = tuple(_carried(reader, reader.part(name)) for name in names)
    return Archive(lessons, groups, datetime.fromisoformat(top["made"]))


def _carried(reader: _Parts, document: dict[str, Any]) -> Carried:
    original = document.get("original")
    return Carried(
        reader.state(document),
        _time(document["created"]),
        _time(document["updated"]),
        document.get("archived") is True,
        tuple(
            NamedState(str(v["name"]), _time(v["made"]), reader.state(v))
            for v in document.get("versions", ())
        ),
        reader.music(original["music"]) if original else None,
        str(original.get("source", "")) if original else "",
        # once a field of the lesson
        max(0, int(document.get("bar", document["lesson"].get("selected_bar", 0)))),
    )


def _time(text: str) -> datetime:
    found = datetime.fromisoformat(text)
    if found.tzinfo is None:
        raise ValueError(text)
    return found
