"""A folder of scores to a folder of pages: goes on after every kind of failure."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pypdf
import pytest

from tests.cli.scores import bar_xml, score_xml
from workbench.commands.batch import REPORT, find_scores, pages
from workbench.commands.workers import Limits, worked_off


def dies_at_two(job):
    """A worker that brings its process down at one score, and waits for nothing at another."""
    if job == 2:
        os._exit(9)
    if job == 3:
        time.sleep(600)
    return job * 10


def test_a_process_that_dies_or_hangs_costs_only_its_own_job():
    limits = Limits(2, 2**31, slack=4)
    found = dict(worked_off(dies_at_two, range(6), 2, limits))
    assert [found[n] for n in (0, 1, 4, 5)] == [0, 10, 40, 50]
    assert found[2].why == "died" and found[3].why == "clock"


def works_at_one(job):
    """A worker that works without end at one score."""
    while job == 1:
        pass
    return job * 10


def test_a_process_that_works_without_end_costs_only_its_own_job():
    found = dict(worked_off(works_at_one, range(3), 1, Limits(0.5, 2**31, slack=1000)))
    assert (found[0], found[1].why, found[2]) == (0, "time", 20)


def answers(job):
    """A worker that has nothing to do."""
    return job, os.getpid()


def test_more_jobs_than_a_process_takes_before_it_is_renewed(monkeypatch):
    monkeypatch.setattr("workbench.commands.workers.JOBS_A_PROCESS", 3)
    found = dict(worked_off(answers, range(8), 1, Limits(60, 2**31)))
    assert [found[n][0] for n in range(8)] == list(range(8))
    assert len({process for _, process in found.values()}) == 3


def fills(job):
    """A worker that takes all the memory there is."""
    try:
        return len(bytearray(job))
    except MemoryError:
        return "refused"


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="the limit is Linux's")
def test_memory_has_a_limit():
    assert dict(worked_off(fills, [2**30], 1, Limits(60, 2**29))) == {2**30: "refused"}


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
    assert got.status == 3, got.err  # some failed
    report = {Path(row["score"]).name: row for row in got.json}
    assert {name: row["ok"] for name, row in report.items()} == {
        "good.musicxml": True,
        "other.xml": True,
        "empty.mid": False,
    }
    assert "empty.mid" in report["empty.mid"]["reason"]
    assert report["good.musicxml"]["reason"] == "" and report["good.musicxml"]["seconds"] > 0
    assert sorted(path.name for path in out.iterdir()) == ["batch.jsonl", "good.pdf", "other.pdf"]
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


TUNE = score_xml([bar_xml("C4", "D4", "E4", "F4"), bar_xml("G4", "A4", "G4", "C4")])


def made_at(out):
    return {path.name: path.stat().st_mtime_ns for path in out.glob("*.pdf")}


def test_what_is_done_is_passed_over_when_a_batch_is_taken_up_again(call, tmp_path):
    scores, out = tmp_path / "scores", tmp_path / "out"
    scores.mkdir()
    for name in ("a.xml", "b.xml"):
        (scores / name).write_text(TUNE)
    (scores / "c.xml").symlink_to(tmp_path / "nowhere.xml")
    assert call("batch", scores, "-o", out, "--jobs", 1).status == 3
    before = made_at(out)
    with (out / REPORT).open("a") as book:
        book.write('{"name": "cut o')
    (scores / "b.xml").write_text(TUNE.replace("Morning", "Evening"))
    (scores / "c.xml").unlink()
    (scores / "c.xml").write_text(TUNE)
    got = call("batch", scores, "-o", out, "--resume", "--json", "--jobs", 1)
    assert got.status == 0, got.err
    assert [row["ok"] for row in got.json] == [True] * 3
    after = made_at(out)
    assert after["a.pdf"] == before["a.pdf"], "of the same score and options: not made again"
    assert after["b.pdf"] != before["b.pdf"] and "c.pdf" in after
    got = call("batch", scores, "-o", out, "--resume", "--large", "--jobs", 1)
    assert got.status == 0, got.err
    assert made_at(out)["a.pdf"] != after["a.pdf"], "other options are another page"


def drawn(out):
    """What every page of a folder is made of, by the title that stands on it."""
    found = {}
    for path in sorted(out.glob("*.pdf")):
        pages = pypdf.PdfReader(path).pages
        words = " ".join(pages[0].extract_text().split())
        found[words] = [page.get_contents().get_data() for page in pages]
    return found


def test_the_order_and_the_number_of_processes_change_nothing(call, tmp_path):
    tunes = [
        TUNE.replace("Morning", "Early"),
        TUNE.replace("<step>D", "<step>A"),
        score_xml([bar_xml("C4", "E4", "G4", "C5")] * 9).replace("Morning", "Late"),
    ]
    for way, made in (("there", tunes), ("back", tunes[::-1])):
        (tmp_path / way).mkdir()
        for number, text in enumerate(made):
            (tmp_path / way / f"{number}.xml").write_text(text)
        jobs = 1 if way == "there" else 2
        got = call("batch", tmp_path / way, "-o", tmp_path / f"{way}-out", "--jobs", jobs)
        assert got.status == 0, got.err
    assert len(drawn(tmp_path / "there-out")) == 3
    assert drawn(tmp_path / "there-out") == drawn(tmp_path / "back-out")


def test_a_link_that_leads_nowhere_is_told(call, tmp_path):
    (tmp_path / "gone.xml").symlink_to(tmp_path / "nowhere.xml")
    got = call("batch", tmp_path, "-o", tmp_path / "out", "--json")
    assert got.status == 2
    assert "leads nowhere" in got.json[0]["reason"]


def test_scores_in_folders_inside(call, tmp_path):
    for name in ("x/tune.xml", "y/tune.xml"):
        (tmp_path / "in" / name).parent.mkdir(parents=True)
        (tmp_path / "in" / name).write_text(TUNE)
    got = call("batch", tmp_path / "in", "-o", tmp_path / "out", "--recursive", "--json")
    assert got.status == 0, got.err
    assert sorted(made_at(tmp_path / "out")) == ["x-tune.pdf", "y-tune.pdf"]


def test_a_score_that_takes_too_long_is_named_and_the_rest_is_made(call, tmp_path):
    (tmp_path / "a.xml").write_text(TUNE)
    got = call("batch", tmp_path, "-o", tmp_path / "out", "--seconds", "0.2", "--json")
    assert got.status == 2
    assert "takes more than 0.2 s" in got.json[0]["reason"]
    assert not list((tmp_path / "out").glob("*.pdf"))


@pytest.mark.skipif(os.name != "posix", reason="signals are POSIX's")
def test_ctrl_c_stops_at_once_and_says_how_to_go_on(tmp_path):
    scores, out = tmp_path / "scores", tmp_path / "out"
    scores.mkdir()
    for number in range(40):
        (scores / f"{number:02}.xml").write_text(TUNE)
    words = [sys.executable, "-m", "workbench", "batch", str(scores), "-o", str(out)]
    with subprocess.Popen(
        [*words, "--jobs", "2"], stderr=subprocess.PIPE, text=True, start_new_session=True,
        cwd=Path(__file__).parents[2],
        # A shell starts what runs in the background deaf to Ctrl-C, the tests as well.
        preexec_fn=lambda: signal.signal(signal.SIGINT, signal.SIG_DFL),
    ) as running:  # fmt: skip
        said = running.stderr.readline()
        assert said.startswith("[1/40]"), said
        os.killpg(running.pid, signal.SIGINT)
        rest = running.stderr.read()
        assert running.wait(30) == 130
    assert "--resume" in rest and "Traceback" not in rest and "Stopped" in rest
    with pytest.raises(ProcessLookupError):
        for _ in range(50):  # nobody of the group goes on
            os.killpg(running.pid, 0)
            time.sleep(0.1)
    done = [json.loads(line) for line in (out / REPORT).read_text().splitlines()]
    assert 1 <= len(done) < 40
    assert not [p for p in out.iterdir() if "part" in p.name]
