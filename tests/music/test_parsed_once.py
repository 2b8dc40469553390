"""A score's XML is parsed twice: once here, for what the reading library drops, once by it."""

from __future__ import annotations

import xml.etree.ElementTree as ET
from pathlib import Path

import pytest

from workbench.music.reading import loading
from workbench.music.reading.score import read_score

STUDIES = Path(__file__).parent.parent / "data" / "guitar-editions"
SPACED = """<?xml version="1.0"?>
<m:score-partwise xmlns:m="urn:music"><m:part-list><m:score-part id="P1">
<m:part-name>A &amp; B</m:part-name></m:score-part></m:part-list>
<m:part id="P1"><m:measure number="1"><m:attributes><m:divisions>1</m:divisions></m:attributes>
<m:note><m:pitch><m:step>C</m:step><m:octave>4</m:octave></m:pitch><m:duration>4</m:duration>
</m:note></m:measure></m:part></m:score-partwise>"""


@pytest.fixture
def parses(monkeypatch):
    """Every whole document that a parser is given."""
    seen = []

    def counted(name, real):
        def parse(*arguments, **options):
            seen.append(name)
            return real(*arguments, **options)

        return parse

    for name in ("fromstring", "parse", "XML"):
        monkeypatch.setattr(ET, name, counted(name, getattr(ET, name)))
    monkeypatch.setattr(loading, "elements", counted("elements", loading.elements))
    return seen


def test_a_packed_study_with_printed_fingers_is_parsed_twice(parses):
    piece = read_score(STUDIES / "sor-op60-12.mxl", parts="all")
    assert len(piece.written) > 10
    # the archive's list of contents, the score here, the score by music21
    assert parses.count("elements") == 2
    assert len(parses) == 3, parses


def test_elements_are_those_that_the_standard_library_finds(tmp_path):
    file = tmp_path / "spaced.musicxml"
    file.write_text(SPACED)
    found = loading.elements(SPACED.encode(), "spaced")
    assert ET.tostring(found) == ET.tostring(ET.fromstring(SPACED))
    assert [n.midi for n in read_score(file).notes] == [60]
