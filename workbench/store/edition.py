"""Which fingering engine solved a kept fingering: a digest of all code it depends on, and weights.

A fingering that another edition of the engine has solved is not shown again;
it is solved anew.
"""

from __future__ import annotations

import hashlib
from functools import cache
from pathlib import Path

from workbench import fingering, instrument
from workbench.arranging import ceiling
from workbench.fingering.weights import RESOURCES
from workbench.music import model, order, ringing


def edition_of(*places: Path) -> str:
    """A digest of files, and of all program and data files in and below folders, names included."""
    seen = hashlib.sha256()
    for place in places:
        inside = sorted(place.rglob("*")) if place.is_dir() else [place]
        for file in inside:
            if file.suffix in (".py", ".json"):
                content = file.read_bytes()
                name = file.relative_to(place.parent).as_posix()
                seen.update(f"{name} {len(content)}\n".encode())
                seen.update(content)
    return seen.hexdigest()


def engine_places() -> tuple[Path, ...]:
    """Folders and files that decide a fingering: engine, what it reads of music, weights."""
    packages = (fingering, instrument, order, ringing)
    code = [Path(str(package.__file__)).parent for package in packages]
    return (*code, Path(model.__file__), Path(ceiling.__file__), RESOURCES / "weights")


@cache
def engine_edition() -> str:
    """The edition of the engine in this program; found out once."""
    return edition_of(*engine_places())
