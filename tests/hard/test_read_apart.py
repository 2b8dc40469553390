"""Files that hang, fill or break a reader: each is read or refused with a sentence, by a
process that can be given up. The files and where they come from: files/README.md."""

from __future__ import annotations

import os
import threading
import time
from pathlib import Path

import pytest

from workbench.music.errors import BadInput
from workbench.music.reading import apart, budget, reader
from workbench.music.reading.score import read_score
from workbench.music.telling.warnings import warnings
from workbench.music.writing.score import musicxml_bytes

FILES = Path(__file__).parent / "files"
DEMO = Path(__file__).parents[2] / "resources" / "demo" / "harbour-waltz.musicxml"


@pytest.mark.parametrize("name", ["hang-1.mid", "longline.abc"])
def test_what_takes_too_long_is_given_up_with_a_sentence(name):
    with pytest.raises(BadInput, match=rf"{name} takes too long to read and was given up"):
        apart.read_apart(FILES / name, seconds=0.5)


@pytest.mark.slow
@pytest.mark.parametrize("path", sorted(FILES.glob("*.[mal]*")), ids=lambda p: p.name)
def test_every_hard_file_is_read_or_refused_within_its_limits(path):
    begun = os.times()
    try:
        apart.read_apart(path)
    except BadInput as wrong:
        assert path.name in str(wrong)
    finally:
        apart.let_go()  # only then the system tells what the process used
    used = os.times()
    assert used.children_user + used.children_system < (
        begun.children_user + begun.children_system + 10 + reader.SECONDS / 4
    )


def test_what_needs_too_much_memory_is_given_up_with_a_sentence(monkeypatch):
    resource = pytest.importorskip("resource")
    if not hasattr(resource, "RLIMIT_DATA"):
        pytest.skip("this system has no limit to the memory of a process")
    with pytest.raises(BadInput, match=r"padded-bomb.mxl needs more than \d+ MB of memory"):
        apart.read_apart(FILES / "padded-bomb.mxl", memory=64 * 2**20)


def test_a_score_read_apart_is_the_score_read_here():
    assert apart.read_apart(DEMO) == read_score(DEMO)
    assert apart.read_apart(DEMO) == read_score(DEMO)  # by the process that was kept


def test_a_refusal_comes_with_the_same_words(tmp_path):
    page = tmp_path / "page.xml"
    page.write_text("<html></html>", encoding="utf-8")
    with pytest.raises(BadInput) as apart_said:
        apart.read_apart(page)
    with pytest.raises(BadInput) as said:
        read_score(page)
    assert str(apart_said.value) == str(said.value)


def test_a_reader_that_died_meanwhile_is_started_anew():
    apart.warm()
    apart._kept[0].end()
    assert apart.read_apart(DEMO).bars


def test_a_reader_that_dies_over_a_score_is_told_and_the_next_score_is_read(monkeypatch):
    apart.let_go()
    begun = threading.Event()

    def kill():
        if not begun.is_set() and readers:
            begun.set()
            readers[0]._process.kill()

    readers = []
    take = apart._take
    monkeypatch.setattr(apart, "_take", lambda: readers.append(take()) or readers[-1])
    with pytest.raises(BadInput, match="was given up"):
        apart.read_apart(DEMO, tick=kill)
    assert apart.read_apart(DEMO).bars


def test_reading_can_be_called_off():
    class Off(Exception):
        pass

    def off():
        raise Off

    begun = time.monotonic()
    with pytest.raises(Off):
        apart.read_apart(FILES / "hang-1.mid", tick=off)
    assert time.monotonic() - begun < reader.SECONDS  # long before the limit of time


def test_deep_nesting_is_refused():
    with pytest.raises(BadInput, match=r"deep3000.musicxml is nested too deeply"):
        read_score(FILES / "deep3000.musicxml")


@pytest.mark.parametrize("name", ["zero-duration.musicxml", "negative-divisions.musicxml"])
def test_as_many_notes_are_written_as_are_told(name, tmp_path):
    piece = read_score(FILES / name)
    assert any("length" in told and "left out" in told for told in warnings(piece))
    out = tmp_path / "out.musicxml"
    out.write_bytes(musicxml_bytes(piece))
    assert len(read_score(out).notes) == len(piece.notes) > 0


def test_a_fault_in_the_reader_comes_back_with_its_traceback(monkeypatch):
    def broken(*_given, **_named):
        raise RuntimeError("a wheel came off")

    monkeypatch.setattr("workbench.music.reading.score.read_score", broken)
    watch = budget.Watch()
    asked = {"language": "en", "seconds": None, "memory": reader.MEMORY, "folder": os.getcwd()}
    monkeypatch.setattr(budget, "_limit", lambda *_: None)  # not in the process of the tests
    said = reader.answer({**asked, "path": "x", "tune": 1, "parts": None}, watch)["fault"]
    assert "a wheel came off" in said and "Traceback" in said

    class Told:
        def ask(self, *_):
            return {"fault": said, "goes_on": False}

    monkeypatch.setattr(apart, "_take", Told)
    with pytest.raises(apart.ReaderFault, match="a wheel came off"):
        apart.read_apart("x")
