"""The documents speak of what is there."""

from __future__ import annotations

import re
import shlex
from pathlib import Path

import pytest

from workbench.cli import build_parser
from workbench.commands import VERBS

ROOT = Path(__file__).resolve().parents[2]
README = (ROOT / "README.md").read_text(encoding="utf-8")


@pytest.mark.parametrize("name", ["README.md", "DEVELOPERS.md"])
def test_links_and_pictures_lead_somewhere(name):
    text = (ROOT / name).read_text(encoding="utf-8")
    links = [link for link in re.findall(r"\]\(([^)#]+)\)", text) if "://" not in link]
    assert [link for link in links if not (ROOT / link).exists()] == []


def test_the_readme_lists_every_verb():
    assert set(re.findall(r"^\| `(\w+)", README, re.MULTILINE)) == set(VERBS)


EXAMPLES = re.findall(r"^    pluckwright (.+)$", README, re.MULTILINE)


@pytest.mark.parametrize("line", EXAMPLES)
def test_the_examples_are_written_as_the_program_wants_them(line):
    words = shlex.split(line)
    assert build_parser(words).parse_args(words).verb == words[0]


def test_the_two_commands_are_there():
    for name in ("start", "check"):
        assert f"python3 installer/{name}.py" in README
        assert (ROOT / "installer" / f"{name}.py").exists()
