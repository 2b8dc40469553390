"""Sound scores, stores and words of the command line, spoilt in many ways: each is taken or
refused with one sentence, within the limits of the reader; never a traceback.

The long run: ``PLUCKWRIGHT_MUTATIONS=25000 python -m pytest -m slow tests/hard/test_mutations.py``
tries so many of every kind.
"""

from __future__ import annotations

import os
import random
import sqlite3
from contextlib import closing, suppress
from dataclasses import replace
from pathlib import Path

import pytest

from tests.hard.mutations import mutated
from tests.store.lessons_made import fingering, lesson, piece
from workbench.cli import main
from workbench.commands import VERBS
from workbench.music.errors import BadInput
from workbench.music.reading import apart
from workbench.music.reading.score import read_score
from workbench.music.writing.score import musicxml_bytes, write_midi, write_musicxml
from workbench.store.shelf import Shelf

MANY = int(os.environ.get("PLUCKWRIGHT_MUTATIONS", "300"))
DEMO = Path(__file__).parents[2] / "resources" / "demo"
ABC = """X:1
T:Quay Street
M:6/8
L:1/8
Q:3/8=90
K:G
|:G2B d2g|f2e d3|"C"e2c "D"{c}d2B|[1A3 G3:|[2(3ABc G3|]
V:2
G,6|D6|C3 D3|G,6|
"""


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
        "abc": (".abc", ABC.encode()),
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


@pytest.mark.parametrize("kind", ["musicxml", "mxl", "midi", "abc"])
def test_spoilt_scores(kind, sound_ones, tmp_path):
    assert try_many(kind, sound_ones, tmp_path, 1, 6) >= 0


@pytest.mark.slow
@pytest.mark.parametrize("kind", ["musicxml", "mxl", "midi", "abc"])
def test_very_many_spoilt_scores(kind, sound_ones, tmp_path):
    taken = try_many(kind, sound_ones, tmp_path, 2, MANY)
    assert 0 < taken < MANY


@pytest.fixture(scope="module")
def sound_store(tmp_path_factory):
    file = tmp_path_factory.mktemp("store") / "lessons.db"
    with Shelf(file) as shelf:
        for number in range(8):
            made = lesson(f"l{number}", piece=piece(shift=number % 3))
            shelf.save(made)
            shelf.save(replace(made, capo=2))
        shelf.keep_version("l1", "v")
        shelf.put_fingering(lesson("l1"), fingering())
        shelf.set_group("Monday", ["Mara"])
        shelf.set_setting("a", {"b": 1})
    return file.read_bytes()


WORK = (
    lambda shelf: shelf.lessons("boat"),
    lambda shelf: [shelf.load(row.id) for row in shelf.lessons()],
    lambda shelf: shelf.save(lesson("l2", capo=3)),
    lambda shelf: shelf.undo("l3"),
    lambda shelf: shelf.versions("l1"),
    lambda shelf: shelf.history("l4"),
    lambda shelf: shelf.groups(),
    lambda shelf: shelf.settings(),
    lambda shelf: shelf.cached_fingering(lesson("l1")),
    lambda shelf: shelf.pieces(),
    lambda shelf: shelf.techniques(),
    lambda shelf: shelf.choices(),
)


def spoil_stores(whole, file, seed, number):
    chance = random.Random(seed)
    refused = 0
    for _ in range(number):
        data = bytearray(whole)
        for _ in range(chance.choice((1, 3, 10, 200))):
            at, size = chance.randrange(len(data)), chance.choice((1, 1, 8, 64))
            data[at : at + size] = chance.randbytes(size)
        if chance.random() < 0.1:
            del data[chance.randrange(len(data)) :]
        for old in file.parent.glob("lessons.db*"):
            old.unlink()
        file.write_bytes(data)
        try:
            with Shelf(file) as shelf:
                for work in WORK:
                    with suppress(BadInput):
                        work(shelf)
        except BadInput as wrong:
            refused += 1
            assert "\n" not in str(wrong)
    return refused


def test_spoilt_stores(sound_store, tmp_path):
    assert spoil_stores(sound_store, tmp_path / "lessons.db", 3, 15) <= 15


@pytest.mark.slow
def test_very_many_spoilt_stores(sound_store, tmp_path):
    assert spoil_stores(sound_store, tmp_path / "lessons.db", 4, MANY) > 0


WORDS = (
    *VERBS, "demo", "demo:2", "demo:99999999999999999999", "--json", "--key", "F", "H##", "--pin",
    "n1-1=string:²", "n1-1=string:99999999999999", "=", "--transpose", "1e9", "-999999999",
    "--instrument", "custom:", "custom:G4@", "custom:G4,C4@1e400", "custom:G99,C4@345", "ukulele",
    "--bars", "9-1", "١-٢", "--tempo", "0", "nan", "inf", "--hand", "own:1,2,3", "own:nan,1,1",
    "--capo", "-5", "999", "--parts", "0", "1,,2", "all", "--tune", "0", "\udcff.xml", "", "\0",
    "/dev/null", "-o", "--", "-x", "x,x,x,x", "2,0,1,0", "²,0,0,0", "99999999999,0,0,0", "--level",
)  # fmt: skip


def spoil_words(capsys, seed, number):
    chance = random.Random(seed)
    for _ in range(number):
        words = [chance.choice(tuple(VERBS))]
        if words[0] in ("batch", "sound", "handout", "fit"):
            words.append("--help-me-not")  # these would work for long: only their options
        words += [chance.choice(WORDS) for _ in range(chance.randint(1, 4))]
        words = [word for word in words if word not in ("-o", "backup")] or ["read"]
        try:
            status = main(words)
        except SystemExit as end:  # --help and --version
            status = end.code
        said = capsys.readouterr()
        assert status in (0, 2), (words, said.err[-400:])
        assert "Traceback" not in said.err


def test_spoilt_words(capsys, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    spoil_words(capsys, 5, 25)


@pytest.mark.slow
def test_very_many_spoilt_words(capsys, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    spoil_words(capsys, 6, MANY)


def test_a_store_with_bytes_written_over_is_a_sentence(tmp_path):
    """The file of this folder: a text column that holds no text."""
    damaged = Path(__file__).parent / "files" / "damaged.sqlite"
    file = tmp_path / "lessons.db"
    file.write_bytes(damaged.read_bytes())
    with pytest.raises(BadInput, match="damaged"), Shelf(file) as shelf:
        shelf.lessons()
    with closing(sqlite3.connect(damaged)) as same, pytest.raises(Exception, match=r"codec|malf"):
        same.execute("SELECT * FROM lessons").fetchall()
