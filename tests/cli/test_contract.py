"""The command and JSON contract of the verbs, to the letter."""

from __future__ import annotations

from fractions import Fraction

import pypdf
import pytest

from workbench.cli import main
from workbench.commands import VERBS
from workbench.commands.source import parse_pin
from workbench.fingering.types import Pin

UKULELE = [69, 64, 60, 67]


def test_read(call, tune):
    got = call("read", tune, "--json")
    assert (got.status, got.err) == (0, "")
    document = got.json
    assert document["title"] == "Morning Steps"
    assert document["key"] == "C major"
    assert document["playing_order"] == [0, 1]
    assert isinstance(document["sections"], list)
    assert [bar["number"] for bar in document["bars"]] == ["1", "2"]
    assert document["bars"][0]["time_signature"] == "4/4"
    first = document["bars"][0]["notes"][1]
    assert {name: first[name] for name in ("onset", "duration", "pitch", "midi", "voice")} == {
        "onset": "1",
        "duration": "1",
        "pitch": "D4",
        "midi": 62,
        "voice": 1,
    }
    assert [part["name"] for part in document["parts"]] == ["Melody"]


def test_finger(call, tune):
    got = call("finger", tune, "--json", "--alternatives", "2")
    assert (got.status, got.err) == (0, "")
    document = got.json
    assert document["instrument"] == "ukulele"
    assert document["tuning"] == UKULELE
    assert document["key"] == "C major"
    assert isinstance(document["cost"], int)
    assert isinstance(document["optimal"], bool)
    assert document["changes"] == []
    assert [(bar["index"], bar["number"]) for bar in document["bars"]] == [(0, "1"), (1, "2")]
    for bar in document["bars"]:
        for note in bar["notes"]:
            assert UKULELE[note["string"] - 1] + note["fret"] == note["midi"]
            assert note["left"] in range(5) and (note["left"] == 0) == (note["fret"] == 0)
            assert note["right"] in ("p", "i", "m", "a")
            held, written = Fraction(note["held"]), Fraction(note["duration"])
            assert held <= written and (note["cut_reason"] is None) == (held == written)
        for barre in bar["barres"]:
            assert set(barre) >= {"onset", "fret", "strings"}
        for other in bar["alternatives"]:
            assert set(other) >= {"cost", "reason", "notes"}
            assert [n["midi"] for n in other["notes"]] == [n["midi"] for n in bar["notes"]]
    assert any(bar["alternatives"] for bar in document["bars"])
    notes = [note for bar in document["bars"] for note in bar["notes"]]
    audit = document["audit"]
    assert audit["notes"] == len(notes) == 8
    assert audit["cut"] == sum(note["cut_reason"] is not None for note in notes)
    assert 0 <= audit["held_fraction"] <= 1


def test_finger_in_another_key(call, tune):
    by_name = call("finger", tune, "--json", "--key", "D").json
    by_step = call("finger", tune, "--json", "--transpose", "2").json
    assert by_name["key"] == by_step["key"] == "D major"
    pitches = [[n["midi"] for b in d["bars"] for n in b["notes"]] for d in (by_name, by_step)]
    assert pitches[0] == pitches[1] == [62, 64, 66, 67, 69, 71, 69, 62]


def test_finger_on_an_own_instrument(call, tune):
    document = call("finger", tune, "--json", "--instrument", "custom:G3,C4,E4,A4@345").json
    assert document["tuning"] == [69, 64, 60, 55]
    assert document["instrument"] == "custom:G3,C4,E4,A4@345"


def test_a_pin_is_held(call, tune):
    notes = call("finger", tune, "--json").json["bars"][0]["notes"]
    wanted = next(note for note in notes if note["midi"] == 65)
    pin = f"{wanted['id']}=string:3,fret:5,left:4,right:p"
    pinned = call("finger", tune, "--json", "--pin", pin).json["bars"][0]["notes"]
    held = next(note for note in pinned if note["id"] == wanted["id"])
    assert [held[name] for name in ("string", "fret", "left", "right")] == [3, 5, 4, "p"]


def test_pins_as_written():
    assert parse_pin("n1=string:2") == Pin("n1", string=2)
    assert parse_pin("n1=left:0,right:a") == Pin("n1", left=0, right="a")


def test_shape_one_and_several(call):
    one = call("shape", "2,0,1,0", "--json").json
    first = one["fingerings"][0]
    assert set(first) >= {"fingers", "barres", "cost", "reach_mm", "reasons"}
    assert first["fingers"] == [2, 0, 1, 0]  # F: common practice, no source
    assert one["chord"]["name"].split("/")[0] == "F"
    assert "inversion" in one["chord"]
    costs = [found["cost"] for found in one["fingerings"]]
    assert costs == sorted(costs)
    several = call("shape", "2,0,1,0", "0,0,0,3", "x,2,1,2", "--json").json
    assert isinstance(several, list) and len(several) == 3
    assert several[0] == one


def test_keys(call, tune):
    document = call("keys", tune, "--json", "--instrument", "ukulele").json
    assert document["source_key"] == "C major"
    assert document["candidates"]
    for found in document["candidates"]:
        assert set(found) >= {
            "key",
            "transposition",
            "unplayable",
            "changed",
            "effort",
            "reasons",
        }
        assert isinstance(found["transposition"], int) and found["reasons"]


def test_grade(call, tune):
    slow = call("grade", tune, "--json", "--minutes-a-day", "10").json
    fast = call("grade", tune, "--json", "--minutes-a-day", "60").json
    assert 0 <= slow["grade"] <= 8
    assert slow["level"] in ("early", "middle", "late")
    assert slow["evidence"] and isinstance(slow["hardest_bars"], list)
    assert slow["minutes_total"] == fast["minutes_total"] > 0
    assert slow["days"] >= fast["days"] >= 1


def test_lessons_of_an_empty_store(call):
    got = call("lessons", "--json")
    assert (got.status, got.json) == (0, [])


def test_the_demo_is_a_score_for_every_verb(call, tmp_path):
    title = call("read", "demo", "--json").json["title"]
    assert title
    assert call("finger", "demo", "--json").json["audit"]["notes"] > 0
    got = call("handout", "demo", "-o", tmp_path / "page.pdf", "--json")
    assert got.status == 0, got.err
    assert got.json == {"pages": got.json["pages"], "path": str(tmp_path / "page.pdf")}
    assert got.json["pages"] >= 1 and (tmp_path / "page.pdf").stat().st_size > 1000


@pytest.mark.parametrize("what", ["grips", "plan"])
def test_other_sheets(call, tmp_path, what):
    out = tmp_path / "sheet.pdf"
    got = call("handout", "demo", "-o", out, "--what", what, "--large", "--left-handed", "--json")
    assert got.status == 0, got.err
    assert got.json["path"] == str(out) and got.json["pages"] == len(pypdf.PdfReader(out).pages)


def test_a_book_in_booklet_order(call, tmp_path):
    words = ["--what", "book", "--with", "demo:2", "--title", "Tuesday", "--studio", "Linde"]
    plain = call("handout", "demo:5", *words, "-o", tmp_path / "book.pdf", "--json").json
    folded = call("handout", "demo:5", *words, "-o", tmp_path / "fold.pdf", "--json", "--booklet")
    assert folded.json["pages"] == (plain["pages"] + 3) // 4 * 2
    text = pypdf.PdfReader(tmp_path / "book.pdf").pages[0].extract_text()
    assert "Tuesday" in text and "2 lessons" in text and "Linde" in text


def test_some_bars_as_a_picture(call, tmp_path):
    out = tmp_path / "bars.png"
    got = call("handout", "demo", "-o", out, "--bars", "2-3", "--resolution", "96", "--json")
    assert got.status == 0, got.err
    assert set(got.json) == {"pages", "path", "width", "height", "unit"}
    assert got.json["unit"] == "px" and out.read_bytes().startswith(b"\x89PNG")
    wrong = call("handout", "demo", "-o", tmp_path / "page.pdf", "--bars", "2-3")
    assert wrong.status == 2 and ".svg or .png" in wrong.err and wrong.err.count("\n") == 1
    assert call("handout", "demo", "-o", out, "--what", "plan").status == 2
    assert call("handout", "demo", "--with", "demo:2", "-o", tmp_path / "page.pdf").status == 2
    assert not (tmp_path / "page.pdf").exists()


def test_export_and_its_fingering_come_back(call, tmp_path):
    out = tmp_path / "piece.musicxml"
    got = call("export", "demo:2", "-o", out, "--json").json
    assert got == {"path": str(out), "format": "MusicXML", "notes": got["notes"],
                   "fingered": got["notes"]}  # fmt: skip
    first, again = (
        [
            [(n["string"], n["fret"], n["left"], n["right"]) for n in bar["notes"]]
            for bar in call("finger", score, "--json").json["bars"]
        ]
        for score in ("demo:2", out)
    )
    assert first == again
    fresh = call("finger", out, "--json", "--refinger").json
    assert len(fresh["bars"]) == len(first)
    assert call("export", "demo", "-o", tmp_path / "a.mid", "--json").json["format"] == "MIDI"
    assert call("read", tmp_path / "a.mid", "--json").status == 0
    assert call("export", "demo", "-o", tmp_path / "a.doc").status == 2


def test_sound(call, tune, tmp_path):
    import wave

    whole = call("sound", tune, "-o", tmp_path / "whole.wav", "--json").json
    bar = call("sound", tune, "-o", tmp_path / "bar.wav", "--json", "--bars", "1-1").json
    slow = call("sound", tune, "-o", tmp_path / "slow.wav", "--json", "--tempo", "50").json
    assert bar["seconds"] < whole["seconds"] < slow["seconds"]
    with wave.open(str(tmp_path / "whole.wav")) as heard:
        assert abs(heard.getnframes() / heard.getframerate() - whole["seconds"]) < 0.01


@pytest.mark.parametrize("verb", VERBS)
def test_every_verb_explains_itself(verb, capsys):
    with pytest.raises(SystemExit) as left:
        main([verb, "--help"])
    assert left.value.code == 0
    said = capsys.readouterr().out
    assert VERBS[verb][1:].split(",")[0] in " ".join(said.split())
    assert "--json" in said


@pytest.mark.parametrize("words", [["read"], ["finger", "--alternatives", "1"]], ids=str)
def test_the_plain_form_is_a_table_that_fits(call, tune, words):
    got = call(words[0], tune, *words[1:])
    assert (got.status, got.err) == (0, "")
    assert "Morning Steps" in got.out
    assert max(map(len, got.out.splitlines())) <= 160
