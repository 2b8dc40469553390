"""The archive: what is written is read, elsewhere and by anybody; merging loses nothing."""

from __future__ import annotations

import io
import json
import random
import zipfile
from dataclasses import replace

import pytest

from tests.store.lessons_made import lesson, piece
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.reading.score import read_score
from workbench.store import archive, archive_schema
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.altered import altered


@pytest.fixture
def full(shelf, tmp_path):
    """A shelf with three lessons, a version, a group; and its archive."""
    one = lesson("one")
    row = shelf.add_piece(one.piece, "boat.musicxml")
    shelf.add(one, row.id)
    shelf.keep_version("one", "as first taught")
    shelf.save(replace(one, capo=2), "Capo")
    shelf.save(lesson("two", student="Ole", piece=piece(shift=2)))
    shelf.save(lesson("three", student="", title="Ωmega <b>"))
    shelf.archive("three")
    shelf.set_group("Monday", ["Mara", "Ole"])
    path = tmp_path / "all.pluckwright"
    assert shelf.write_archive(path) == 3
    return shelf, path


def test_everything_is_on_the_other_shelf(full, tmp_path):
    shelf, path = full
    with Shelf(tmp_path / "other.db") as other:
        merged = other.merge_archive(path)
        assert sorted(merged.added) == sorted(r.title for r in shelf.lessons(archived=None))
        for row in shelf.lessons(archived=None):
            assert other.load(row.id) == shelf.load(row.id)
            there = other.lesson_row(row.id)
            assert (there.created, there.updated, there.archived) == (
                row.created, row.updated, row.archived,
            )  # fmt: skip
        assert [v.name for v in other.versions("one")] == ["as first taught"]
        assert other.load_version(other.versions("one")[0].id) == lesson("one")
        assert other.groups() == shelf.groups()
        assert [p.source for p in other.pieces()].count("boat.musicxml") == 1
        again = other.merge_archive(path)
        assert (again.added, again.updated, again.newer_here, again.same) == ((), (), (), 3)
        assert len(other.versions("one")) == 1


def test_what_was_changed_on_both_sides_is_kept_from_both(full, tmp_path):
    shelf, path = full
    with Shelf(tmp_path / "other.db", now=shelf.store.now) as other:
        other.merge_archive(path)
        other.save(replace(other.load("one"), title="Changed there"))
        assert other.merge_archive(path).newer_here == ("Boat Song for Mondays",)
        assert other.load("one").title == "Changed there"
        assert "From an archive" in [v.name for v in other.versions("one")]
        shelf.save(replace(shelf.load("one"), title="Changed here, later"))
        shelf.write_archive(path, ["one"])
        assert other.merge_archive(path).updated == ("Changed here, later",)
        assert other.load("one").title == "Changed here, later"
        assert other.undo("one").title == "Changed there"
        assert "Before the archive was merged" in [v.name for v in other.versions("one")]


def test_the_archive_keeps_to_its_published_schema(full):
    jsonschema = pytest.importorskip("jsonschema")  # an implementation of JSON Schema
    _, path = full
    with zipfile.ZipFile(path) as found:
        published = json.loads(found.read("schema.json"))
        assert published == json.loads(archive.SCHEMA.read_text(encoding="utf-8"))
        jsonschema.Draft202012Validator.check_schema(published)

        def valid(name, part):
            schema = {"$defs": published["$defs"], "$ref": f"#/$defs/{part}"}
            jsonschema.Draft202012Validator(schema).validate(json.loads(found.read(name)))

        kinds = {"lessons/": "lesson", "music/": "Piece", "archive": "archive"}
        checked = 0
        for name in found.namelist():
            for begins, part in kinds.items():
                if name.startswith(begins) and name.endswith(".json"):
                    valid(name, part)
                    checked += 1
        assert checked == 1 + 3 + 2
        broken = json.loads(found.read("lessons/0001.json"))
        broken["lesson"]["capo"] = "second"
        with pytest.raises(jsonschema.ValidationError):
            schema = {"$defs": published["$defs"], "$ref": "#/$defs/lesson"}
            jsonschema.Draft202012Validator(schema).validate(broken)


def test_the_schema_is_that_of_the_program():
    assert archive.SCHEMA.read_text(encoding="utf-8") == archive_schema.text()


def test_other_programs_find_the_music_as_musicxml(full, tmp_path):
    _, path = full
    with zipfile.ZipFile(path) as found:
        scores = [name for name in found.namelist() if name.endswith(".musicxml")]
        out = tmp_path / "x.musicxml"
        out.write_bytes(found.read(scores[0]))
    assert len(scores) == 2 and len(read_score(out).notes) == len(piece().notes)


def with_part(path, name, data, tmp_path):
    """The archive with one part in another wording."""
    made = tmp_path / "made.pluckwright"
    with zipfile.ZipFile(path) as old, zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED) as new:
        for part in old.namelist():
            new.writestr(part, data if part == name else old.read(part))
    return made


def edited(path, name, change):
    with zipfile.ZipFile(path) as found:
        document = json.loads(found.read(name))
    change(document)
    return json.dumps(document)


def test_an_archive_of_the_first_version_is_read_with_its_sentences(full, tmp_path):
    """It kept what arranging changed as sentences; they are shown as they stand."""
    _, path = full
    told = ["Bar 2: the bass moved up an octave."]

    def older(name, text):
        document = json.loads(text)
        if name == "archive.json":
            document["version"] = 1
        elif "lesson" in document:
            document["lesson"]["changes"] = told
        return json.dumps(document)

    earlier = tmp_path / "earlier.pluckwright"
    with zipfile.ZipFile(path) as here, zipfile.ZipFile(earlier, "w") as there:
        for name in here.namelist():
            text = here.read(name).decode()
            there.writestr(name, older(name, text) if name.endswith(".json") else text)
    with Shelf(tmp_path / "other.db") as other:
        assert len(other.merge_archive(earlier).added) == 3
        assert list(altered(other.load("one"))) == told


@pytest.mark.parametrize(
    ("part", "make"),
    [
        ("archive.json", lambda p: "{}"),
        ("archive.json", lambda p: "[" * 100_000),
        ("archive.json", lambda p: edited(p, "archive.json", lambda d: d.update(version=99))),
        ("archive.json", lambda p: edited(p, "archive.json", lambda d: d["lessons"].append(7))),
        (
            "archive.json",
            lambda p: edited(p, "archive.json", lambda d: d["lessons"].append("../../etc/passwd")),
        ),
        (
            "lessons/0001.json",
            lambda p: edited(p, "lessons/0001.json", lambda d: d.update(music="/etc/passwd")),
        ),
        (
            "lessons/0001.json",
            lambda p: edited(p, "lessons/0001.json", lambda d: d.update(created="yesterday")),
        ),
        (
            "lessons/0001.json",
            lambda p: edited(p, "lessons/0001.json", lambda d: d["lesson"].update(capo=[])),
        ),
        (
            "lessons/0001.json",
            lambda p: edited(p, "lessons/0001.json", lambda d: d["lesson"].update(id="x" * 500)),
        ),
        ("lessons/0001.json", lambda p: b"\xff\xfe\x00"),
    ],
)
def test_a_spoilt_archive_is_one_sentence_and_takes_nothing_in(full, tmp_path, part, make):
    _, path = full
    made = with_part(path, part, make(path), tmp_path)
    with Shelf(tmp_path / "other.db") as other:
        with pytest.raises(BadInput) as caught:
            other.merge_archive(made)
        assert "\n" not in str(caught.value)
        assert other.lessons(archived=None) == () and other.groups() == ()


def test_an_archive_that_would_fill_the_memory_is_not_opened(full, tmp_path, monkeypatch):
    _, path = full
    monkeypatch.setattr(archive, "MOST", 200_000)
    made = with_part(path, "lessons/0001.json", b" " * 10**6, tmp_path)
    with pytest.raises(BadInput, match="more than lessons need"):
        archive.read_archive(made)


def test_no_spoilt_byte_is_a_fault_of_ours(full, tmp_path):
    _, path = full
    whole = path.read_bytes()
    chance = random.Random(7)
    made = tmp_path / "made.pluckwright"
    refused = 0
    for _ in range(300):
        data = bytearray(whole)
        for _ in range(chance.randint(1, 4)):
            data[chance.randrange(len(data))] = chance.randrange(256)
        if chance.random() < 0.3:
            del data[chance.randrange(len(data)) :]
        made.write_bytes(data)
        try:
            archive.read_archive(made)
        except BadInput as wrong:
            refused += "\n" not in str(wrong)
    assert refused > 200


def test_a_full_disk_leaves_the_older_archive(full, tmp_path, monkeypatch):
    shelf, path = full
    before = path.read_bytes()

    class Full(io.BytesIO):
        pass

    def fail(*_given):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(zipfile.ZipFile, "writestr", fail)
    with pytest.raises(BadInput, match="cannot be written"):
        shelf.write_archive(path)
    assert path.read_bytes() == before
    assert [p.name for p in tmp_path.iterdir() if "part" in p.name] == []


@pytest.mark.parametrize("name", ["Xanthippe Quill", 'Xanthippe "Xän" Quîll'])
def test_a_student_is_forgotten_to_the_last_byte(file, clock, name):
    with Shelf(file, now=clock) as shelf:
        shelf.save(lesson("hers", student=name))
        shelf.keep_version("hers", f"for {name}")
        shelf.save(lesson("other", student="Ole"))
        shelf.save(lesson("once", student=name))
        shelf.save(lesson("once", student="Ole"), say("Copy of '{title}'", title=name))
        shelf.delete("hers")
        shelf.set_group("Monday", [name, "Ole"])
        assert b"Xanthippe" in b"".join(p.read_bytes() for p in file.parent.iterdir())
        assert shelf.erase_student(name) == 1
        assert {row.id for row in shelf.lessons(archived=None)} == {"other", "once"}
        assert shelf.groups()[0].students == ("Ole",)
        assert shelf.undo("once").student == ""
        assert shelf.lessons("xanthippe") == ()
    left = b"".join(p.read_bytes() for p in file.parent.iterdir())
    assert b"Xanthippe" not in left and b"xanthippe" not in left
