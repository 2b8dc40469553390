"""A folder of scores to a folder of pages: goes on after every kind of failure."""

from __future__ import annotations

import os
from argparse import Namespace
from pathlib import Path

import pypdf

from tests.cli.scores import bar_xml, score_xml
from workbench.commands.batch import find_scores, in_processes, pages


def dies_at_two(job):
    """A worker that brings its process down at one score."""
    _, score, _ = job
    if score.name == "2.xml":
        os._exit(9)
    return {"score": str(score), "ok": True, "reason": "", "seconds": 0.0}


def test_a_process_that_dies_costs_only_its_own_score():
    jobs = [(Namespace(), Path(f"{n}.xml"), Path(f"{n}.pdf")) for n in range(5)]
    reports = {report["score"]: report for report in in_processes(dies_at_two, jobs, 2)}
    assert sorted(reports) == [f"{n}.xml" for n in range(5)]
    assert [name for name in sorted(reports) if not reports[name]["ok"]] == ["2.xml"]
    assert "its process died" in reports["2.xml"]["reason"]


def answers(job):
    """A worker that has nothing to do."""
    return {"score": str(job[1]), "ok": True, "reason": "", "seconds": 0.0}


def test_more_scores_than_the_processes_take_before_they_are_renewed(monkeypatch):
    monkeypatch.setattr("workbench.commands.batch.PIECES_A_PROCESS", 3)
    jobs = [(Namespace(), Path(f"{n}.xml"), Path(f"{n}.pdf")) for n in range(14)]
    assert len(list(in_processes(answers, jobs, 2))) == 14


def test_two_scores_of_one_name_get_two_pages(tmp_path):
    scores = [tmp_path / name for name in ("air.abc", "air.mid", "reel.xml")]
    names = [page.name for _, page in pages(scores, tmp_path)]
    assert names == ["air-abc.pdf", "air-mid.pdf", "reel.pdf"]


def test_only_scores_are_taken(tmp_path):
    for name in ("b.MXL", "a.xml", "notes.txt", "page.pdf"):
        (tmp_path / name).touch()
    (tmp_path / "folder.xml").mkdir()
    assert [path.name for path in find_scores(tmp_path)] == ["a.xml", "b.MXL"]


def test_good_and_bad_scores_side_by_side(call, tmp_path):
    scores, out = tmp_path / "scores", tmp_path / "out"
    scores.mkdir()
    tune = score_xml([bar_xml("C4", "D4", "E4", "F4"), bar_xml("G4", "A4", "G4", "C4")])
    (scores / "good.musicxml").write_text(tune)
    (scores / "other.xml").write_text(tune)
    (scores / "empty.mid").touch()
    got = call("batch", scores, "-o", out, "--json", "--jobs", 2)
    assert got.status == 0, got.err
    report = {Path(row["score"]).name: row for row in got.json}
    assert {name: row["ok"] for name, row in report.items()} == {
        "good.musicxml": True,
        "other.xml": True,
        "empty.mid": False,
    }
    assert "empty.mid" in report["empty.mid"]["reason"]
    assert report["good.musicxml"]["reason"] == "" and report["good.musicxml"]["seconds"] > 0
    assert sorted(path.name for path in out.iterdir()) == ["good.pdf", "other.pdf"]
    text = pypdf.PdfReader(out / "good.pdf").pages[0].extract_text()
    assert "Morning Steps" in " ".join(text.split())
    assert [line[:5] for line in got.err.splitlines()] == ["[1/3]", "[2/3]", "[3/3]"]


def test_where_nothing_could_be_made_the_status_says_so(call, tmp_path):
    (tmp_path / "scores").mkdir()
    (tmp_path / "scores" / "empty.xml").touch()
    got = call("batch", tmp_path / "scores", "-o", tmp_path / "out", "--json")
    assert got.status == 2
    assert [row["ok"] for row in got.json] == [False]


def test_a_folder_without_scores_is_told(call, tmp_path):
    got = call("batch", tmp_path, "-o", tmp_path / "out")
    assert got.status == 2 and "holds no score file" in got.err
    assert not (tmp_path / "out").exists()


def test_an_output_folder_that_is_a_file(call, tmp_path, tune):
    got = call("batch", tmp_path, "-o", tune)
    assert got.status == 2 and tune.name in got.err
    assert got.err.count("\n") == 1


def test_a_wrong_instrument_is_told_once_before_any_work(call, tmp_path, tune):
    got = call("batch", tmp_path, "-o", tmp_path / "out", "--instrument", "zither")
    assert got.status == 2 and "zither" in got.err
    assert got.err.count("\n") == 1
