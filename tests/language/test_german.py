"""German is complete: whatever the program says in English it can say in German."""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path

import pytest

from workbench.language import gather, speech

FILE = speech.FOLDER / "pluckwright_de.ts"
FIELD = re.compile(r"\{[^{}]*\}")


@pytest.fixture(scope="module")
def german():
    return speech.read_translations(FILE)


def test_every_sentence_of_the_program_has_its_german(german):
    """Mend with ``python -m workbench.language.gather`` and Qt Linguist."""
    assert [text for text in gather.sentences() if text not in german] == []


def test_the_file_holds_nothing_that_the_program_no_longer_says(german):
    assert sorted(set(german) - set(gather.sentences())) == []


def test_fields_and_spaces_at_the_edges_are_kept(german):
    """A field that is missing or new would fail where the sentence is said."""

    def edges(text: str) -> tuple[bool, bool, set[str]]:
        return text[0].isspace(), text[-1].isspace(), set(FIELD.findall(text))

    assert [s for s, translated in german.items() if edges(s[0]) != edges(translated)] == []


def test_qt_itself_takes_the_file(tmp_path, german):
    """Outside check: Qt's own release tool reads it and finds nothing unfinished."""
    tool = Path(sys.executable).with_name("pyside6-lrelease")
    if not tool.exists():
        pytest.skip("Qt's release tool is not beside this Python")
    made = tmp_path / "de.qm"
    said = subprocess.run([tool, FILE, "-qm", made], capture_output=True, text=True, check=False)
    assert said.returncode == 0, said.stderr
    assert made.stat().st_size > 0
    assert f"Generated {len(german)} translation(s) ({len(german)} finished" in said.stdout


def test_a_note_sounds_and_what_the_teacher_writes_is_a_remark(german):
    """Two words for two things, in both languages; a health caution is neither."""
    spoken = "What you will say in this bar."  # the tour: German leaves the word out
    english = [s for s, _ in german if re.search(r"\bremark", s, re.I) and spoken not in s]
    assert len(english) > 40
    assert [s for s in english if "hinweis" not in german[s, ""].lower()] == []
    taught = [s for (s, _), t in german.items() if re.search(r"\b(Unterrichts)?[Hh]inweis", t)]
    assert [
        s
        for s in taught
        if not re.search(r"\bremark|caution|written about", s.replace("&", ""), re.I)
    ] == []
    assert [s for s, _ in german if "teaching note" in s.replace("&", "").lower()] == []
