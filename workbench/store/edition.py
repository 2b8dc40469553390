"""Which fingering engine solved a kept fingering: a digest of its code and weights.

A fingering that another edition of the engine has solved is not shown again;
it is solved anew.
"""

from __future__ import annotations

import hashlib
from functools import cache
from pathlib import Path

from workbench import fingering, instrument
from workbench.fingering.weights import RESOURCES


def edition_of(*folders: Path) -> str:
    """A digest of the files in the folders, their names included."""
    seen = hashlib.sha256()
    for folder in folders:
        for file in sorted(folder.glob("*")):
            if file.suffix in (".py", ".json"):
                content = file.read_bytes()
                seen.update(f"{file.name} {len(content)}\n".encode())
                seen.update(content)
    return seen.hexdigest()


@cache
def engine_edition() -> str:
    """The edition of the engine in this program; found out once."""
    code = [Path(str(package.__file__)).parent for package in (fingering, instrument)]
    return edition_of(*code, RESOURCES / "weights")
