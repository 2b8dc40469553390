"""Bad input through the real command line: one clear sentence, nothing half-written."""

from __future__ import annotations

import errno
import hashlib
import json
import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

from tests.cli.scores import bar_xml, note_xml, score_xml

ROOT = Path(__file__).resolve().parents[2]
SECRET = "the-secret-of-the-machine"
CONTAINER = (
    '<?xml version="1.0"?><container><rootfiles><rootfile full-path="score.xml"/>'
    "</rootfiles></container>"
)


def zipped(path: Path, text: str) -> bytes:
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as book:
        book.writestr("META-INF/container.xml", CONTAINER)
        book.writestr("score.xml", text)
    return path.read_bytes()


def empty(folder: Path) -> Path:
    (folder / "empty.musicxml").touch()
    return folder / "empty.musicxml"


def page(folder: Path) -> Path:
    path = folder / "page.xml"
    path.write_text("<!DOCTYPE html><html><body><h1>Not found</h1></body></html>")
    return path


def broken_xml(folder: Path) -> Path:
    path = folder / "broken.musicxml"
    path.write_text(score_xml([bar_xml("C4", "D4", "E4", "F4")])[:-60])
    return path


def cut_short(folder: Path) -> Path:
    path = folder / "cut.mxl"
    whole = zipped(path, score_xml([bar_xml("C4", "D4", "E4", "F4")] * 40))
    path.write_bytes(whole[: len(whole) // 2])
    return path


def too_large(folder: Path) -> Path:
    path = folder / "too_large.xml"
    with path.open("wb") as stream:
        stream.truncate(65 * 2**20)
    return path


def bomb(folder: Path) -> Path:
    path = folder / "bomb.mxl"
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as book:
        book.writestr("META-INF/container.xml", CONTAINER)
        with book.open("score.xml", "w") as inner:
            for _ in range(300):
                inner.write(bytes(1 << 20))
    return path


def laughs(folder: Path) -> Path:
    """Entities that grow to a thousand million words (the "billion laughs" of XML)."""
    path = folder / "laughs.musicxml"
    steps = "".join(f'<!ENTITY l{n} "{f"&l{n - 1};" * 10}">' for n in range(1, 10))
    head = f'<!DOCTYPE score-partwise [<!ENTITY l0 "ha">{steps}]>'
    path.write_text(score_xml([bar_xml("C4", "D4", "E4", "F4")], title="&l9;", head=head))
    return path


def outside(folder: Path) -> Path:
    (folder / "secret.txt").write_text(SECRET)
    path = folder / "outside.musicxml"
    where = (folder / "secret.txt").as_uri()
    head = f'<!DOCTYPE score-partwise [<!ENTITY x SYSTEM "{where}">]>'
    path.write_text(score_xml([bar_xml("C4", "D4", "E4", "F4")], title="&x;", head=head))
    return path


def midi_of_nothing(folder: Path) -> Path:
    (folder / "nothing.mid").touch()
    return folder / "nothing.mid"


def no_midi(folder: Path) -> Path:
    (folder / "noise.mid").write_bytes(bytes(range(256)) * 8)
    return folder / "noise.mid"


def no_notes(folder: Path) -> Path:
    path = folder / "rests.musicxml"
    path.write_text(score_xml(["<note><rest/><duration>8</duration></note>"] * 2))
    return path


def other_kind(folder: Path) -> Path:
    (folder / "letter.docx").write_bytes(b"PK\x03\x04 a letter")
    return folder / "letter.docx"


def not_there(folder: Path) -> Path:
    return folder / "not-there.musicxml"


BAD = [
    empty,
    page,
    broken_xml,
    cut_short,
    bomb,
    laughs,
    outside,
    midi_of_nothing,
    no_midi,
    no_notes,
    other_kind,
    not_there,
    too_large,
]


def assert_one_sentence(text: str) -> None:
    assert text.count("\n") == 1 and text.endswith("\n"), text
    assert "Traceback" not in text
    assert len(text) < 500
    assert text.rstrip()[-1] in ".!" and text.rstrip()[-2] != "."


@pytest.mark.parametrize("verb", ["read", "finger"])
@pytest.mark.parametrize("make", BAD, ids=lambda make: make.__name__)
def test_a_bad_score_gets_one_sentence_that_names_it(call, tmp_path, make, verb):
    path = make(tmp_path)
    got = call(verb, path, "--json")
    assert (got.status, got.out) == (2, "")
    assert_one_sentence(got.err)
    assert path.name in got.err
    assert SECRET not in got.err


@pytest.mark.parametrize("make", BAD, ids=lambda make: make.__name__)
def test_a_bad_score_leaves_no_page_and_the_store_as_it_was(call, tmp_path, make, monkeypatch):
    store = tmp_path / "kept.db"
    monkeypatch.setenv("PLUCKWRIGHT_DB", f"sqlite:///{store}")
    assert call("lessons").status == 0
    before = hashlib.sha256(store.read_bytes()).hexdigest() if store.exists() else None
    path = make(tmp_path)
    out = tmp_path / "out"
    out.mkdir()
    got = call("handout", path, "-o", out / "page.pdf")
    assert got.status == 2
    assert_one_sentence(got.err)
    assert list(out.iterdir()) == []
    after = hashlib.sha256(store.read_bytes()).hexdigest() if store.exists() else None
    assert before == after


def test_the_usual_document_type_is_no_reason_to_refuse(call, tmp_path):
    """MusicXML files carry a DOCTYPE that names a DTD on the web; it is not fetched."""
    head = (
        '<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" '
        '"http://www.musicxml.org/dtds/partwise.dtd">'
    )
    path = tmp_path / "usual.musicxml"
    path.write_text(score_xml([bar_xml("C4", "D4", "E4", "F4")], head=head))
    got = call("read", path, "--json")
    assert got.status == 0
    assert [note["midi"] for note in got.json["bars"][0]["notes"]] == [60, 62, 64, 65]


def test_notes_far_out_of_range_are_placed_or_named(call, tmp_path):
    path = tmp_path / "far.musicxml"
    path.write_text(score_xml([bar_xml("C1", "D4", "E9", "C0")]))
    got = call("finger", path, "--json")
    assert got.status == 0, got.err
    notes = {note["id"]: note for note in got.json["bars"][0]["notes"]}
    explained = {change["note"]: change["reason"] for change in got.json["changes"]}
    by = got.json["transposition"]
    assert not by or explained[""]
    read = call("read", path, "--json").json["bars"][0]["notes"]
    for note in read:
        kept = notes.get(note["id"])
        moved = kept is None or kept["midi"] != note["midi"] + by
        assert not moved or explained[note["id"]]
        assert moved or kept["string"] or kept["impossible"]
    assert len(explained) >= 2


def test_twelve_voices_are_thinned_with_reasons(call, tmp_path):
    steps = ["C4", "E4", "G4", "A4", "C5", "D4", "F4", "B4", "D5", "E5", "C3", "G3"]
    back = "<backup><duration>8</duration></backup>"
    bar = back.join(note_xml(step, 8, voice) for voice, step in enumerate(steps, 1))
    path = tmp_path / "voices.musicxml"
    path.write_text(score_xml([bar, bar]))
    assert len(call("read", path, "--json").json["bars"][0]["notes"]) == 12
    got = call("finger", path, "--json")
    assert got.status == 0, got.err
    for bar in got.json["bars"]:
        played = [note["string"] for note in bar["notes"] if note["string"]]
        assert 1 <= len(played) <= 4 and len(set(played)) == len(played)
        dropped = 12 - len(bar["notes"])
        unplayed = [note for note in bar["notes"] if not note["string"]]
        assert all(note["impossible"] for note in unplayed)
        assert dropped + len(unplayed) >= 8
    assert all(change["reason"] for change in got.json["changes"])


@pytest.mark.parametrize(
    "words, says",
    [
        (["play", "x"], "play"),
        (["read"], "SCORE"),
        (["finger", "demo", "--key", "F", "--transpose", "2"], "--transpose"),
        (["finger", "demo", "--key", "H"], "H"),
        (["finger", "demo", "--transpose", "much"], "much"),
        (["finger", "demo", "--instrument", "zither"], "zither"),
        (["finger", "demo", "--instrument", "custom:G4,Q9@345"], "Q9"),
        (["finger", "demo", "--hand", "huge"], "huge"),
        (["finger", "demo", "--capo", "30"], "30"),
        (["finger", "demo", "--pin", "nowhere=left:1"], "nowhere"),
        (["finger", "demo", "--pin", "x=left:9"], "0 (open) to 4"),
        (["finger", "demo", "--alternatives", "-1"], "-1"),
        (["read", "demo:99"], "demo:1"),
        (["read", "demo", "--parts", "one"], "one"),
        (["archive", "\0"], "zero character"),
        (["shape", "2,0,1"], "4 strings"),
        (["shape", "2,0,1,z"], "z"),
        (["shape", "2,0,1,99"], "99"),
        (["shape", "x,x,x,x"], "no string"),
    ],
    ids=lambda value: " ".join(value) if isinstance(value, list) else "",
)
def test_wrong_use_gets_one_sentence(call, words, says):
    got = call(*words)
    assert (got.status, got.out) == (2, "")
    assert_one_sentence(got.err)
    assert says in got.err


def test_without_a_display_one_sentence_points_at_the_verbs(call, monkeypatch):
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setattr(sys, "platform", "linux")
    got = call()
    assert (got.status, got.out) == (2, "")
    assert_one_sentence(got.err)
    assert "handout demo -o" in got.err


def test_a_fault_of_ours_is_one_sentence_with_a_log(call, tune, tmp_path, monkeypatch):
    import workbench.music.reading.apart as reading

    def broken(*_args, **_kwargs):
        raise RuntimeError("a wheel came off")

    monkeypatch.setattr(reading, "read_apart", broken)
    got = call("read", tune)
    assert (got.status, got.out) == (1, "")
    assert_one_sentence(got.err)
    assert "a fault of ours" in got.err and "please report" in got.err
    log = tmp_path / "logs" / "fault.log"
    assert str(log) in got.err
    assert "RuntimeError: a wheel came off" in log.read_text()


def test_a_file_where_a_folder_should_be(call, tune, tmp_path):
    (tmp_path / "file").write_text("kept")
    got = call("handout", tune, "-o", tmp_path / "file" / "page.pdf")
    assert (got.status, got.out) == (2, "")
    assert_one_sentence(got.err)
    assert (tmp_path / "file").read_text() == "kept"


def test_a_folder_where_the_page_should_be(call, tune, tmp_path):
    (tmp_path / "page.pdf").mkdir()
    got = call("handout", tune, "-o", tmp_path / "page.pdf")
    assert got.status == 2
    assert_one_sentence(got.err)
    assert list((tmp_path / "page.pdf").iterdir()) == []


@pytest.mark.skipif(os.name == "nt", reason="limits of file size are a thing of Unix")
@pytest.mark.parametrize("verb, name", [("handout", "page.pdf"), ("sound", "tune.wav")])
def test_a_disk_that_fills_up_leaves_what_was_there(tune, tmp_path, verb, name):
    """The system itself refuses more than 4 KiB a file: as near to a full disk as a test gets."""
    out = tmp_path / "out"
    out.mkdir()
    (out / name).write_text("the old one")
    code = (
        "import resource, sys, workbench.cli; resource.setrlimit(resource.RLIMIT_FSIZE, "
        "(4096, 4096)); sys.exit(workbench.cli.main(sys.argv[1:]))"
    )
    done = subprocess.run(
        [sys.executable, "-B", "-c", code, verb, str(tune), "-o", str(out / name)],
        cwd=ROOT,
        capture_output=True,
        text=True,
    )
    assert done.returncode == 2, done.stderr
    assert_one_sentence(done.stderr)
    assert [path.name for path in out.iterdir()] == [name]
    assert (out / name).read_text() == "the old one"


def test_the_process_itself_keeps_the_contract(tune, tmp_path):
    """A real process: status, stdout and stderr as a script sees them."""

    def process(*words: str) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            [sys.executable, "-m", "workbench", *words],
            cwd=ROOT,
            capture_output=True,
            text=True,
        )

    good = process("read", str(tune), "--json")
    assert (good.returncode, good.stderr) == (0, "")
    assert json.loads(good.stdout)["title"] == "Morning Steps"
    bad = process("read", str(empty(tmp_path)), "--json")
    assert (bad.returncode, bad.stdout) == (2, "")
    assert_one_sentence(bad.stderr)


@pytest.mark.parametrize("verb, name", [("handout", "page.pdf"), ("sound", "tune.wav")])
@pytest.mark.parametrize(
    "fault", [errno.ENOSPC, errno.EACCES, errno.EROFS], ids=errno.errorcode.get
)
def test_what_cannot_be_put_in_place_leaves_nothing(
    call, tune, tmp_path, monkeypatch, verb, name, fault
):
    """The last step of writing fails as a full or read-only disk makes it fail."""
    out = tmp_path / "out"
    out.mkdir()

    def refuse(source, target, **_):
        raise OSError(fault, os.strerror(fault), str(target))

    monkeypatch.setattr(os, "replace", refuse)
    monkeypatch.setattr(os, "rename", refuse)
    got = call(verb, tune, "-o", out / name)
    assert (got.status, got.out) == (2, "")
    assert_one_sentence(got.err)
    assert name in got.err or str(out) in got.err
    assert list(out.iterdir()) == []


@pytest.mark.skipif(
    not hasattr(os, "geteuid") or os.geteuid() == 0, reason="rights do not bind the superuser"
)
def test_a_folder_that_may_only_be_read(call, tune, tmp_path):
    out = tmp_path / "out"
    out.mkdir(mode=0o500)
    got = call("handout", tune, "-o", out / "page.pdf")
    assert got.status == 2
    assert_one_sentence(got.err)


@pytest.mark.parametrize("meter", ["1000000000/4", "Bd4Bd42F84 d44/4", "4/1000000"])
def test_a_time_signature_out_of_all_bounds_is_told_at_once(call, tmp_path, meter):
    path = tmp_path / "meter.abc"
    path.write_text(f"X:1\nT:Air\nM:{meter}\nL:1/8\nK:D\n|DAFd|\n")
    got = call("read", path)
    assert got.status == 2
    assert_one_sentence(got.err)
    assert "time signature" in got.err


def test_a_time_signature_of_millions_of_beats_in_musicxml(call, tmp_path):
    path = tmp_path / "meter.musicxml"
    score = score_xml([bar_xml("C4", "D4", "E4", "F4")])
    path.write_text(score.replace("<beats>4<", "<beats>1000000000<"))
    got = call("read", path)
    assert got.status == 2
    assert_one_sentence(got.err)
    assert "time signature" in got.err
