"""The kinds of files that a desktop hands to the program. They stand in ``pluckwright.xml``
and nowhere else: the desktop entry, macOS and Windows take them from there."""

from __future__ import annotations

import xml.etree.ElementTree as ET
from dataclasses import dataclass
from pathlib import Path

HERE = Path(__file__).parent
SPACE = "{http://www.freedesktop.org/standards/shared-mime-info}"
OWN = "application/x-pluckwright"


@dataclass(frozen=True)
class FileKind:
    """A type by its MIME name, its English name, and the endings of its files."""

    mime: str
    name: str
    endings: tuple[str, ...]


def kinds() -> tuple[FileKind, ...]:
    """All of them, as they stand in the file."""
    return tuple(
        FileKind(
            kind.get("type", ""),
            kind.findtext(f"{SPACE}comment", ""),
            tuple(glob.get("pattern", "").lstrip("*") for glob in kind.iter(f"{SPACE}glob")),
        )
        for kind in ET.parse(HERE / "pluckwright.xml").getroot()  # noqa: S314 - our own file
    )


def desktop_entry() -> str:
    """What Linux desktops read of the program."""
    entry = (HERE / "pluckwright.desktop").read_text(encoding="utf-8")
    return f"{entry}MimeType={';'.join(kind.mime for kind in kinds())};\n"
