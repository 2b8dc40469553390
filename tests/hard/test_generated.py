"""Scores that hypothesis makes up, of the pieces of their formats and of nothing at all: each is
read or refused with one sentence, in the process and under the limits that the program reads with.
"""

from __future__ import annotations

import tempfile
from pathlib import Path
from xml.sax.saxutils import escape, quoteattr

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.hard.readers import check_sentence, take
from tests.whole import so_many
from workbench.music.errors import BadInput
from workbench.music.reading import apart
from workbench.music.writing.score import musicxml_bytes

few = settings(max_examples=so_many(1000, 25), deadline=None)


def read(data: bytes, ending: str) -> None:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / f"made{ending}"
        path.write_bytes(data)
        try:
            found = apart.read_apart(path, seconds=2)
        except BadInput as wrong:
            check_sentence(str(wrong))
        else:
            assert musicxml_bytes(found)


@few
@given(
    st.sampled_from(
        (b"", b"MThd\0\0\0\6\0\1\0\1\0\x60MTrk", b"X:1\nK:C\n", b"<score-partwise>", b"PK\3\4")
    ),
    st.binary(max_size=300), st.sampled_from((".mid", ".abc", ".xml", ".mxl", ".musicxml")),
)  # fmt: skip
def test_any_bytes(head, tail, ending):
    read(head + tail, ending)


_SIGNS = """
C D E F G A B c d e f g z x | || |: :| [1 [2 |] [CEG] (3abc (5abcde {c} ^c _B =f c' C, C2 c/ c//
c3/2 > < - ( ) "Am" !fine! !D.C.! [K:G] [M:2/4] [L:1/16] & \\ y % w: V:2
"""
_HEADS = """
T:Ash\u202eton M:4/4 M:C M:none M:7/16 L:1/8 L:1/4 Q:120 Q:1/4=60 K:C K:Bbm K:none R:reel V:1
"""
_ABC, _HEAD = (st.sampled_from(signs.split()) for signs in (_SIGNS, _HEADS))


@few
@given(st.lists(_HEAD, max_size=6), st.lists(_ABC, max_size=60))
def test_any_abc(heads, signs):
    text = (
        "\n".join(["X:1", "L:1/8", *heads, "K:D"])
        + "\n"
        + " ".join(signs).replace("% ", "%\n")
        + "\n"
    )
    read(text.encode(), ".abc")


_NUMBER = st.one_of(
    st.integers(1, 8), st.integers(1, 8), st.integers(-2, 2),
    st.sampled_from((10**9, -(10**9), "1.5", "", "x", "²", "1e9", "0.333")),
).map(str)  # fmt: skip
_WORDS = st.text(max_size=12).map(lambda t: "".join(c for c in t if c.isprintable()))


_INSIDE = {
    "divisions": "<attributes><divisions>{a}</divisions></attributes>",
    "time": "<attributes><time><beats>{a}</beats><beat-type>{b}</beat-type></time></attributes>",
    "key": "<attributes><key><fifths>{a}</fifths></key></attributes>",
    "backup": "<backup><duration>{a}</duration></backup>",
    "words": "<direction><direction-type><words>{words}</words></direction-type>"
             "<sound tempo='{a}'/></direction>",
    "rest": "<note><rest/><duration>{a}</duration></note>",
}  # fmt: skip
_NOTE = (
    "<note>{first}<pitch><step>{step}</step><alter>{b}</alter><octave>{octave}</octave></pitch>"
    "<duration>{a}</duration><voice>{voice}</voice></note>"
)


@st.composite
def measures(draw: st.DrawFn, number: int) -> str:
    """One measure of MusicXML with anything in it, in any order."""
    inside = []
    for kind in draw(st.lists(st.sampled_from((*_INSIDE, "note", "note")), max_size=8)):
        inside.append(
            _INSIDE.get(kind, _NOTE).format(
                a=draw(_NUMBER), b=draw(_NUMBER), words=escape(draw(_WORDS)),
                step=draw(st.sampled_from("ABCDEFGH")), octave=draw(st.integers(0, 9)),
                voice=draw(st.integers(1, 3)),
                first=draw(st.sampled_from(("", "", "<chord/>", "<grace/>"))),
            )
        )  # fmt: skip
    return f"<measure number={quoteattr(str(number))}>{''.join(inside)}</measure>"


_SOUND = (
    "<measure number='0'><attributes><divisions>2</divisions></attributes><note><pitch>"
    "<step>C</step><octave>5</octave></pitch><duration>2</duration></note></measure>"
)


@few
@given(st.integers(1, 3).flatmap(lambda n: st.tuples(*(measures(i) for i in range(n)))), _WORDS)
def test_any_musicxml(made, title):
    read(
        (
            f"<score-partwise><work><work-title>{escape(title)}</work-title></work><part-list>"
            "<score-part id='P1'><part-name>x</part-name></score-part></part-list><part id='P1'>"
            f"{_SOUND}{''.join(made)}</part></score-partwise>"
        ).encode("utf-8", "replace"),
        ".musicxml",
    )


def _length(number: int) -> bytes:
    out = [number & 0x7F]
    while number := number >> 7:
        out.append(number & 0x7F | 0x80)
    return bytes(out[::-1])


_DATA = st.integers(0, 127)
_EVENT = st.one_of(
    st.tuples(st.sampled_from((0x90, 0x80, 0x91, 0xB0, 0xE0)), _DATA, _DATA).map(bytes),
    st.tuples(_DATA, st.integers(0, 500)).map(  # a whole note
        lambda n: bytes((0x90, n[0], 64)) + _length(n[1]) + bytes((0x80, n[0], 0))
    ),
    st.tuples(st.just(0xC0), _DATA).map(bytes),
    st.tuples(st.sampled_from((0x51, 0x58, 0x59, 0x03, 0x2F, 0x7F)), st.binary(max_size=6)).map(
        lambda e: bytes((0xFF, e[0], len(e[1]))) + e[1]
    ),
)  # fmt: skip


@few
@given(
    st.sampled_from((1, 1, 0, 2)), st.sampled_from((96, 480, 24, 1, 0x7FFF, 0xE728)),
    st.lists(st.lists(st.tuples(st.integers(0, 2000), _EVENT), max_size=20), max_size=3),
)  # fmt: skip
def test_any_midi(kind, division, tracks):
    data = b"MThd" + bytes((0, 0, 0, 6, 0, kind, 0, len(tracks))) + division.to_bytes(2, "big")
    for events in tracks:
        body = b"".join(_length(wait) + event for wait, event in events) + b"\0\xff\x2f\0"
        data += b"MTrk" + len(body).to_bytes(4, "big") + body
    read(data, ".mid")


@few
@given(
    st.sampled_from(("read", "shape", "finger", "lessons", "keys", "grade")),
    st.lists(st.one_of(st.text(max_size=10), st.integers(-(10**20), 10**20).map(str)), max_size=4),
)
def test_any_words(verb, words):
    sent = "\n".join([verb, *(w.replace("\n", "") for w in words)]).encode("utf-8", "replace")
    assert take("words", Path(), sent, 0) in ("taken", "refused")
