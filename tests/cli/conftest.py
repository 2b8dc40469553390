"""The command line called in this process, and a score or two to call it with."""

from __future__ import annotations

import json
from dataclasses import dataclass
from pathlib import Path

import pytest

from tests.cli.scores import bar_xml, score_xml
from workbench.cli import main


@dataclass
class Outcome:
    """What a call gave: exit status, stdout and stderr."""

    status: int
    out: str
    err: str

    @property
    def json(self):
        """The one document on stdout; fails where stdout holds anything else."""
        return json.loads(self.out)


@pytest.fixture
def call(capfd):
    """Call the command line with words; stdout and stderr caught as the system sees them."""

    def run(*words: object) -> Outcome:
        capfd.readouterr()
        status = main([str(word) for word in words])
        caught = capfd.readouterr()
        return Outcome(status, caught.out, caught.err)

    return run


@pytest.fixture
def tune(tmp_path) -> Path:
    """Two bars of four crotchets within an ukulele's first position."""
    path = tmp_path / "tune.musicxml"
    bars = [bar_xml("C4", "D4", "E4", "F4"), bar_xml("G4", "A4", "G4", "C4")]
    path.write_text(score_xml(bars), encoding="utf-8")
    return path
