"""Endings of the files that are read and written, and what they are called. Whatever asks
for one takes it from here."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

PACKED = ".mxl"  # MusicXML in an archive
UNPACKED = (".musicxml", ".xml")
MUSICXML = (*UNPACKED, PACKED)
MIDI = (".mid", ".midi")
ABC = (".abc",)
#: Scores that can be read.
SCORES = (*MUSICXML, *MIDI, *ABC)
#: What music is written as.
EXPORTS = (".musicxml", PACKED, ".mid")
PDF = ".pdf"
#: Pictures of some bars.
PICTURES = (".svg", ".png")
SOUND = ".wav"
#: What a format is called; these are names, the same in every language.
NAMES = {
    **dict.fromkeys(MUSICXML, "MusicXML"),
    **dict.fromkeys(MIDI, "MIDI"),
    ".abc": "ABC",
    PDF: "PDF",
    ".svg": "SVG",
    ".png": "PNG",
    SOUND: "WAV",
    ".md": "Markdown",
}


def formats() -> str:
    """The formats of scores that are read, with their endings: the same in every language."""
    endings: dict[str, list[str]] = {}
    for suffix in SCORES:
        endings.setdefault(NAMES[suffix], []).append(suffix)
    return ", ".join(f"{name} ({', '.join(found)})" for name, found in endings.items())


def patterns(suffixes: Iterable[str]) -> str:
    """As a file dialog takes them: ``*.mid *.midi``."""
    return " ".join(f"*{suffix}" for suffix in suffixes)


def has_suffix(path: str | Path, suffixes: Iterable[str]) -> bool:
    """Whether a file's name ends so, in small letters or capitals."""
    return Path(path).suffix.lower() in tuple(suffixes)
