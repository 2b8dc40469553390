"""Sound scores, stores and words of the command line, spoilt in many ways: each is taken or
refused with one sentence, within the limits of the reader; never a traceback.

The slow test tries some thousands, ``python -m tests.hard.many 100000 FOLDER`` the number of the
table in DEVELOPERS.md.
"""

from __future__ import annotations

import os
import random
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from tests.hard import many
from tests.hard.mutations import mutated, spoilt_store, spoilt_words
from tests.hard.readers import ABC, BYTES, FURTHER, SCORES, further, sound_store, take
from tests.whole import so_many
from workbench.music.errors import BadInput
from workbench.music.reading import apart
from workbench.music.reading.score import read_score
from workbench.music.writing.score import musicxml_bytes, write_midi, write_musicxml
from workbench.store.shelf import Shelf

MANY = so_many(20_000, 3000)
DEMO = Path(__file__).parents[2] / "resources" / "demo"


@pytest.fixture(scope="module")
def sound_ones(tmp_path_factory):
    """A sound score of every kind, by the ending of its name."""
    folder = tmp_path_factory.mktemp("sound")
    score = read_score(DEMO / "evening-at-the-mill.musicxml")
    write_musicxml(score, folder / "a.mxl")
    write_midi(score, folder / "a.mid")
    return {
        "musicxml": (".musicxml", musicxml_bytes(score)),
        "mxl": (".mxl", (folder / "a.mxl").read_bytes()),
        "midi": (".mid", (folder / "a.mid").read_bytes()),
        "abc": (".abc", ABC[0].encode()),
        **{kind: further(kind) for kind in FURTHER},
    }


def try_many(kind, sound_ones, path, seed, number):
    """How many of so many spoilt scores were taken; raises whatever is no sentence."""
    ending, whole = sound_ones[kind]
    chance = random.Random(seed)
    path = path / f"spoilt{ending}"
    taken = 0
    for at in range(number):
        path.write_bytes(mutated(kind, whole, chance))
        try:
            score = apart.read_apart(path)
        except BadInput as wrong:
            said = str(wrong)
            assert "\n" not in said and "Traceback" not in said, (kind, seed, at, said)
        else:
            taken += 1
            assert score.notes
            if at % 10 == 0:
                assert musicxml_bytes(score)
    return taken


@pytest.mark.parametrize("kind", SCORES)
def test_a_score_of_every_kind_is_read(kind, sound_ones, tmp_path):
    ending, whole = sound_ones[kind]
    path = tmp_path / f"sound{ending}"
    path.write_bytes(whole)
    assert take(kind, path, whole, 0) == "taken"


@pytest.mark.parametrize("kind", SCORES)
def test_spoilt_scores(kind, sound_ones, tmp_path):
    assert try_many(kind, sound_ones, tmp_path, 1, 6) >= 0


@pytest.fixture(scope="module")
def whole_store(tmp_path_factory):
    return sound_store(tmp_path_factory.mktemp("store"))


def test_spoilt_stores(whole_store, tmp_path):
    chance = random.Random(3)
    for _ in range(15):
        assert take("store", tmp_path / "lessons.db", spoilt_store(whole_store, chance), 0)


def test_spoilt_words(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    chance = random.Random(5)
    for _ in range(25):
        assert take("words", tmp_path, "\n".join(spoilt_words(chance)).encode(*BYTES), 0)


def test_a_store_with_bytes_written_over_is_a_sentence(tmp_path):
    """The file of this folder: a text column that holds no text."""
    damaged = Path(__file__).parent / "files" / "damaged.sqlite"
    file = tmp_path / "lessons.db"
    file.write_bytes(damaged.read_bytes())
    with pytest.raises(BadInput, match="damaged"), Shelf(file) as shelf:
        shelf.lessons()
    with closing(sqlite3.connect(damaged)) as same, pytest.raises(Exception, match=r"codec|malf"):
        same.execute("SELECT * FROM lessons").fetchall()


@pytest.mark.parametrize("inputs", [30, pytest.param(MANY, marks=pytest.mark.slow)])
def test_very_many_of_every_kind_go_on_where_they_were_stopped(inputs, tmp_path, capsys):
    before = os.environ.get("TMPDIR")
    assert many.main(inputs - 10, tmp_path, 1, 10) == 0
    assert os.environ.get("TMPDIR") == before, "what comes after has a place for its own files"
    capsys.readouterr()
    assert many.main(inputs, tmp_path, 1, 10) == 0
    assert f"{inputs} inputs" in capsys.readouterr().out
    firsts = [entry["first"] for entry in many.done_before(tmp_path / many.BOOK)]
    assert sorted(firsts) == list(range(0, inputs, 10))
