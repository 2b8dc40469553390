"""The verbs ``script`` and ``plan``."""

from __future__ import annotations

import re

from tests.cli.scores import bar_xml, score_xml


def test_script_runs_on_without_gaps(call, tune):
    got = call("script", tune, "--json")
    assert (got.status, got.err) == (0, "")
    document = got.json
    cues = document["cues"]
    assert [cue["number"] for cue in cues] == ["1", "2"]
    # four crotchets at the tempo of the piece sound as long in both bars
    assert cues[0]["playing"] == cues[1]["playing"] > 0
    assert abs(cues[1]["start"] - sum(cues[0][k] for k in ("start", "speaking", "playing"))) < 0.01
    last = cues[-1]
    end = last["start"] + last["speaking"] + last["playing"]
    assert abs(document["closing_start"] - end) < 0.01
    assert document["path"] is None


def test_a_bar_that_comes_again_is_named_once(call, tmp_path):
    bars = [bar_xml("C4", "D4", "E4", "F4")] * 2
    path = tmp_path / "twice.musicxml"
    path.write_text(score_xml(bars), encoding="utf-8")
    cues = call("script", path, "--json").json["cues"]
    assert cues[1]["as_bar"] == 0
    assert cues[1]["say"] == "Bar 2 is as in bar 1."


def test_script_in_every_form(call, tune, tmp_path):
    texts = {}
    for suffix in (".md", ".srt", ".vtt", ".txt"):
        out = tmp_path / f"steps{suffix}"
        got = call("script", tune, "-o", out)
        assert (got.status, got.err) == (0, "")
        assert str(out) in got.out
        texts[suffix] = out.read_text(encoding="utf-8")
    assert texts[".md"].startswith("# Morning Steps\n")
    # W3C WebVTT: the first line, and times as hh:mm:ss.ttt
    assert texts[".vtt"].startswith("WEBVTT\n")
    assert re.search(r"^00:00:00\.000 --> \d\d:\d\d:\d\d\.\d{3}$", texts[".vtt"], re.M)
    assert re.search(r"^1\n00:00:00,000 --> \d\d:\d\d:\d\d,\d{3}\n", texts[".srt"])
    assert texts[".txt"].startswith("0:00 ")
    assert not list(tmp_path.glob(".*part"))


def test_script_refuses_a_form_it_does_not_write(call, tune, tmp_path):
    out = tmp_path / "steps.docx"
    got = call("script", tune, "-o", out)
    assert got.status == 2
    assert ".docx" in got.err and ".vtt" in got.err and got.err.count("\n") == 1
    assert not out.exists()


def test_script_where_nothing_can_be_written(call, tune, tmp_path):
    got = call("script", tune, "-o", tmp_path / "no such folder" / "steps.md")
    assert got.status == 2
    assert "cannot be written" in got.err and got.err.count("\n") == 1


def test_script_of_a_lesson_says_its_notes(call):
    from workbench.teaching.lessons.demo import demo_lessons

    lesson = demo_lessons()[0]
    said = " ".join(cue["say"] for cue in call("script", "demo", "--json").json["cues"])
    assert lesson.notes
    assert lesson.notes[0].text.rstrip(".") in said


def test_each_technique_is_explained_once(call):
    from workbench.teaching.techniques.catalogue import catalogue

    cues = call("script", "demo", "--json").json["cues"]
    said = " ".join(cue["say"] for cue in cues)
    times = [said.count(entry.asks) for entry in catalogue()]
    assert max(times) == 1
    # A second kind of it is not new.
    assert said.count("New here: pinch of thumb and finger") == 1


def test_what_a_students_earlier_lessons_taught_is_passed_over(call):
    from dataclasses import replace

    from workbench.store.shelf import Shelf
    from workbench.teaching.lessons.demo import demo_lessons

    first = replace(demo_lessons()[0], id="first", title="First one", student="Ada")
    again = replace(first, id="second", title="Second one", script_edits=())
    with Shelf() as shelf:
        shelf.save_all((first, again))
    plain = call("script", "second", "--json").json
    known = call("script", "second", "--student", "Ada", "--json").json
    assert plain["earlier"] == []
    assert known["earlier"] == [{"id": "first", "title": "First one"}]
    # the same piece again: every move was taught, so that nothing is new in it
    assert any(cue["new"] for cue in plain["cues"])
    assert not any(cue["new"] for cue in known["cues"])
    assert "New here" not in " ".join(cue["say"] for cue in known["cues"])
    # of the first lesson nothing was taught before; of a score all of it was
    assert call("script", "first", "--student", "Ada", "--json").json["earlier"] == []
    asked = call("script", "demo:2", "--student", "Ada", "--json").json
    assert [row["id"] for row in asked["earlier"]] == ["first", "second"]


def test_a_student_without_lessons_is_told_of(call, tune):
    got = call("script", tune, "--student", "Nobody")
    assert got.status == 2
    assert "no lesson of that student" in got.err and got.err.count("\n") == 1


def test_the_script_ends_with_closing_words(call, tune):
    got = call("script", tune, "--json").json
    assert got["closing"].startswith("That was ")
    last = got["cues"][-1]
    assert got["seconds"] > got["closing_start"] > last["start"] + last["speaking"]


def test_a_pickup_goes_by_its_name(call):
    cues = call("script", "demo", "--json").json["cues"]
    assert cues[0]["number"] == "0"
    assert cues[0]["say"].startswith("The pickup. ")
    items = [i for d in call("plan", "demo", "--json").json["days"] for i in d["items"]]
    assert any(i["where"].startswith("pickup") for i in items)
    assert not any("bar 0" in i["where"] or "bar 0" in i["exercise"] for i in items)


def test_plan_adds_up(call, tune):
    got = call("plan", tune, "--json", "--minutes-a-day", "20")
    assert (got.status, got.err) == (0, "")
    document = got.json
    low, high = document["minutes_range"]
    assert low <= document["minutes_total"] <= high
    assert [day["day"] for day in document["days"]] == list(range(1, len(document["days"]) + 1))
    for day in document["days"]:
        assert abs(sum(i["minutes"] for i in day["items"]) - day["minutes"]) < 0.5
        assert day["rest"] == (not day["items"])
    learned = {bar for d in document["days"] for i in d["items"] for bar in i["bars"]}
    assert learned == {0, 1}
    assert document["cautions"]


def test_more_minutes_a_day_need_no_more_days(call, tune):
    slow = call("plan", tune, "--json", "--minutes-a-day", "10").json
    fast = call("plan", tune, "--json", "--minutes-a-day", "40").json
    assert len(fast["days"]) <= len(slow["days"])
    assert fast["minutes_total"] == slow["minutes_total"]


def test_plan_as_markdown(call, tune, tmp_path):
    out = tmp_path / "plan.md"
    got = call("plan", tune, "-o", out)
    assert (got.status, got.err) == (0, "")
    text = out.read_text(encoding="utf-8")
    assert text.startswith("# Morning Steps: practice plan\n")
    assert "- [ ] " in text and "## Take care" in text


def test_plan_refuses_impossible_days(call, tune):
    for words in (("--minutes-a-day", "1"), ("--days-a-week", "8"), ("-o", "plan.pdf")):
        got = call("plan", tune, *words)
        assert got.status == 2
        assert got.err.count("\n") == 1 and got.err.strip()
