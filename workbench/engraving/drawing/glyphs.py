"""Outlines of SMuFL signs that stand inside text (flat in a chord name, note of a tempo)."""

from __future__ import annotations

import re
from functools import lru_cache
from pathlib import Path

import verovio

_FOLDER = Path(verovio.__file__).parent / "data"
FONTS = ("Leipzig", "Bravura")


@lru_cache(maxsize=256)
def outline(code: int) -> tuple[str, float] | None:
    """Path data (y upwards, 1000 to the em) and advance width, None if no font has it."""
    name = f"{code:04X}"
    for font in FONTS:
        drawing = _FOLDER / font / f"{name}.xml"
        if not drawing.is_file():
            continue
        found = re.search(r' d="([^"]*)"', drawing.read_text(encoding="utf-8"))
        if found:
            return found.group(1), _advances(font).get(name, 400.0)
    return None


@lru_cache(maxsize=4)
def _advances(font: str) -> dict[str, float]:
    text = (_FOLDER / f"{font}.xml").read_text(encoding="utf-8")
    rows = re.findall(r'<g c="([0-9A-F]+)"[^>]*h-a-x="([0-9.]+)"', text)
    return {code: float(width) for code, width in rows}


def is_music_sign(char: str) -> bool:
    """True in the private area that SMuFL uses."""
    return 0xE000 <= ord(char) <= 0xF8FF


@lru_cache(maxsize=256)
def extent(name: str) -> tuple[float, float, float, float] | None:
    """Bounding box x, y, width, height (y upwards, 1000 to the em) of a sign such as E0A4."""
    for font in FONTS:
        found = _extents(font).get(name)
        if found:
            return found
    return None


@lru_cache(maxsize=4)
def _extents(font: str) -> dict[str, tuple[float, float, float, float]]:
    text = (_FOLDER / f"{font}.xml").read_text(encoding="utf-8")
    rows = re.findall(
        r'<g c="([0-9A-F]+)" x="([-0-9.]+)" y="([-0-9.]+)" w="([0-9.]+)" h="([0-9.]+)"', text
    )
    return {r[0]: (float(r[1]), float(r[2]), float(r[3]), float(r[4])) for r in rows}
