"""Time signatures that cannot be, found before a parser tries to count their beats."""

from __future__ import annotations

import re

from workbench.music.errors import BadInput

MOST_BEATS = 128  # in a bar, and as a beat's unit; printed music stays far below

_ABC = re.compile(r"(?m)(?:^|\[)\s*M:([^\]\n%]*)")
_XML = re.compile(rb"<(beats|beat-type)\b[^>]*>([^<]*)<")


def check_abc_meters(text: str, name: str) -> None:
    """Raises BadInput where an ABC tune has a time signature out of all bounds."""
    for field in _ABC.findall(text):
        numbers = re.findall(r"\d+", field)
        if re.search(r"[^\d\s+/()]", field):
            # The parser drops what is no digit, and reads 4x4 as 44.
            numbers = [re.sub(r"\D", "", word) for word in re.split(r"[/+]", field)]
        _check(list(filter(None, numbers)), field.strip(), name)


def check_xml_meters(data: bytes, name: str) -> None:
    """Raises BadInput where a MusicXML score has a time signature out of all bounds."""
    for _, value in _XML.findall(data):
        text = value.decode("utf-8", "replace").strip()
        _check(re.findall(r"\d+", text), text, name)


def _check(numbers: list[str], said: str, name: str) -> None:
    if any(len(number) > 4 or int(number) > MOST_BEATS for number in numbers):
        raise BadInput(
            "{name}: the time signature '{said}' cannot be read; mend it (at most "
            "{most} beats in a bar) and try again.",
            name=name,
            said=said[:40],
            most=MOST_BEATS,
        )
