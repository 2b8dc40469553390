"""Every bad file ends in one clear sentence that names it."""

from __future__ import annotations

import io
import os
import struct
import zipfile

import pytest

from tests.music import small_scores as make
from workbench.music.errors import BadInput
from workbench.music.reading.score import read_score

BAR = make.note("C", 48, "whole")
GOOD = make.score(BAR)


def packed(data: bytes, name: str = "score.xml") -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr(
            "META-INF/container.xml",
            f'<container><rootfiles><rootfile full-path="{name}"/></rootfiles></container>',
        )
        archive.writestr(name, data)
    return out.getvalue()


def midi(track: bytes, division: int = 96) -> bytes:
    head = b"MThd" + struct.pack(">IHHH", 6, 0, 1, division)
    return head + b"MTrk" + struct.pack(">I", len(track)) + track


def lying(data: bytes) -> bytes:
    """An archive whose directory claims that everything in it is tiny."""
    return data.replace(struct.pack("<I", 150 * 2**20), struct.pack("<I", 10))


LAUGHS = (
    '<?xml version="1.0"?><!DOCTYPE score-partwise [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;">]>'
    "<score-partwise><part-list/><work><work-title>&b;</work-title></work></score-partwise>"
)
OUTSIDE = LAUGHS.replace('<!ENTITY a "ha">', '<!ENTITY a SYSTEM "file:///etc/hostname">')
PARAMETER = LAUGHS.replace('<!ENTITY a "ha">', '<!ENTITY % a SYSTEM "http://192.0.2.1/a">')
FAR = make.score(make.note("C", 48, "whole", octave=9), make.note("B", 48, "whole", octave=12))
DRUM = (
    "<note><unpitched><display-step>C</display-step><display-octave>5</display-octave>"
    "</unpitched><duration>48</duration><voice>1</voice><type>whole</type></note>"
)
TRUNCATED = packed(GOOD.encode())[:-60]

CASES: dict[str, tuple[str, bytes, str]] = {
    "empty": ("a.musicxml", b"", "is empty"),
    "only blanks": ("a.abc", b" \n\n", "is empty"),
    "empty midi": ("a.mid", b"", "is empty"),
    "a web page": ("a.xml", b"<!DOCTYPE html><html><body>Not found</body></html>", "web page"),
    "other xml": ("a.xml", b"<svg xmlns='http://www.w3.org/2000/svg'/>", "no score"),
    "broken xml": ("a.musicxml", GOOD[: len(GOOD) // 2].encode(), "in line"),
    "unknown encoding": ("a.xml", b"<?xml version='1.0' encoding='none-such'?><a/>", "a.xml"),
    "cut off mxl": ("a.mxl", TRUNCATED, "damaged"),
    "mxl with damaged bytes": (
        "a.mxl",
        packed(GOOD.encode() * 1)[:150] + b"\xff" * 40 + packed(GOOD.encode())[190:],
        "damaged",
    ),
    "mxl that is none": ("a.mxl", b"hello", "packed MusicXML"),
    "mxl without score": ("a.mxl", packed(b"x", "picture.png"), "a.mxl"),
    "zip bomb": ("a.mxl", packed(b" " * (20 * 2**20)), "unpacks to"),
    "huge archive": ("a.mxl", packed(os.urandom(2**20) + b" " * (150 * 2**20)), "unpacks to"),
    "archive that lies": ("a.mxl", lying(packed(b" " * (150 * 2**20))), "a.mxl"),
    "entities": ("a.xml", LAUGHS.encode(), "entities"),
    "external entity": ("a.xml", OUTSIDE.encode(), "entities"),
    "parameter entity": ("a.xml", PARAMETER.encode(), "entities"),
    "entities in an mxl": ("a.mxl", packed(LAUGHS.encode()), "entities"),
    "no notes": ("a.xml", make.score(make.rest(48)).encode(), "no notes"),
    "no bars": ("a.xml", make.score().encode(), "a.xml"),
    "far out of range": ("a.xml", FAR.encode(), "bar 2: B12"),
    "percussion": ("a.xml", make.score(DRUM).encode(), "percussion"),
    "picture": ("a.png", b"\x89PNG\r\n\x1a\n" + b"\x00" * 90, "no score"),
    "plain text": ("a.abc", b"Dear teacher, here is the tune.", "no score"),
    "abc without notes": ("a.abc", b"X:1\nT:Nothing\nK:C\n", "a.abc"),
    "midi that is none": ("a.mid", b"RIFFxxxx", "no MIDI"),
    "midi header cut": ("a.mid", b"MThd\x00\x00\x00\x06\x00", "cut off"),
    "midi cut in a track": ("a.mid", midi(b"\x00\x90\x3c\x40" * 9)[:-7], "cut off in track 1"),
    "midi damaged": ("a.mid", midi(b"\x00\x3c\x40"), "damaged in track 1"),
    "midi without ticks": ("a.mid", midi(b"\x00\xff\x2f\x00", 0), "quarter note"),
    "midi in film frames": ("a.mid", midi(b"\x00\xff\x2f\x00", 0xE728), "film frames"),
    "midi without notes": ("a.mid", midi(b"\x00\xff\x2f\x00"), "no notes"),
    "midi without tracks": ("a.mid", b"MThd" + struct.pack(">IHHH", 6, 0, 1, 96), "no tracks"),
    "endless midi": (
        "a.mid",
        midi(b"\x00\x90\x3c\x40" + b"\xff\xff\xff\x7f\x80\x3c\x40\x00\xff\x2f\x00", 1),
        "lasts more than",
    ),
    "no divisions": ("a.xml", GOOD.replace(">12<", ">0<").encode(), "a.xml"),
    "a bar of a million beats": ("a.xml", GOOD.replace(">48<", ">48000000<").encode(), "lasts"),
}


@pytest.mark.parametrize("case", CASES)
def test_one_sentence(case, tmp_path):
    name, data, said = CASES[case]
    path = tmp_path / name
    path.write_bytes(data)
    with pytest.raises(BadInput) as caught:
        read_score(path)
    sentence = str(caught.value)
    assert said in sentence
    assert sentence.endswith(".") and "\n" not in sentence and len(sentence) < 300


def test_what_is_no_file(tmp_path):
    with pytest.raises(BadInput, match="does not exist"):
        read_score(tmp_path / "none.xml")
    with pytest.raises(BadInput, match="folder"):
        read_score(tmp_path)
    with pytest.raises(BadInput):
        read_score("a\x00b.xml")


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no named pipes here")
def test_a_pipe_is_refused_without_waiting(tmp_path):
    os.mkfifo(tmp_path / "pipe.xml")
    with pytest.raises(BadInput, match="no ordinary file"):
        read_score(tmp_path / "pipe.xml")


def test_a_file_that_may_not_be_read(tmp_path, monkeypatch):
    path = tmp_path / "locked.xml"
    path.write_text(GOOD)

    def refuse(self):
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(type(path), "read_bytes", refuse)
    with pytest.raises(BadInput, match="may not be read"):
        read_score(path)


def test_a_file_too_large(tmp_path):
    path = tmp_path / "large.xml"
    with path.open("wb") as stream:
        stream.truncate(65 * 2**20)
    with pytest.raises(BadInput, match=r"^large\.xml is larger than 64 MB; .* movements\.$"):
        read_score(path)


def test_parts_and_tunes_that_are_not_there(tmp_path):
    path = tmp_path / "a.xml"
    path.write_text(GOOD)
    for wrong, said in (([2], "no part 2"), ([0], "no part 0"), ("some", "names no parts")):
        with pytest.raises(BadInput, match=said):
            read_score(path, parts=wrong)
    with pytest.raises(BadInput, match="no tune 2"):
        read_score(path, tune=2)


def test_the_plain_document_type_and_other_endings_are_taken(tmp_path):
    for name, data in (
        ("a.xml", GOOD.encode()),
        ("a.txt", GOOD.encode("utf-8-sig")),
        ("b.xml", GOOD.replace("UTF-8", "UTF-16").encode("utf-16")),
        ("a.mxl", packed(GOOD.encode())),
    ):
        path = tmp_path / name
        path.write_bytes(data)
        assert [n.pitch.name for n in read_score(path).notes] == ["C5"]


def test_the_parser_keeps_its_remarks_to_itself(tmp_path, capfd):
    path = tmp_path / "a.xml"
    path.write_text(GOOD)
    read_score(path)
    assert capfd.readouterr() == ("", "")
