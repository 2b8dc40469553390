"""Small score files of our own, read into bars, voices and signs."""

from __future__ import annotations

from fractions import Fraction

import pytest

from tests.music import small_scores as make
from workbench.music.document import read_document
from workbench.music.form import playing_order
from workbench.music.model import Key
from workbench.music.reading import read_score

WHOLE = make.note("C", 48, "whole")


@pytest.fixture
def read(tmp_path):
    def reader(text, name="a.musicxml", **options):
        path = tmp_path / name
        path.write_bytes(text if isinstance(text, bytes) else text.encode())
        return read_score(path, **options)

    return reader


def test_pickup_ties_and_document(read):
    start = make.note("G", 12, "quarter", before="", extra="", notations='<tied type="start"/>')
    start = start.replace("<voice>", '<tie type="start"/><voice>')
    stop = make.note("G", 24, "half").replace("<voice>", '<tie type="stop"/><voice>')
    piece = read(make.score(start, stop + make.note("A", 24, "half"), make.note("B", 36, "half")))
    assert [(b.length, b.pickup) for b in piece.bars] == [(1, True), (4, False), (3, False)]
    assert [(n.pitch.name, n.onset, n.duration) for n in piece.notes] == [
        ("G5", 0, 3), ("A5", 2, 2), ("B5", 0, 3),
    ]  # fmt: skip
    assert piece.warnings == ()
    shown = read_document(piece)
    assert shown["title"] == "Small score" and shown["key"] == "C major"
    assert shown["bars"][1]["notes"][0] == {
        "id": "n2-1", "onset": "2", "duration": "2", "pitch": "A5", "midi": 81, "voice": 1,
        "part": 1, "grace": False,
    }  # fmt: skip
    assert shown["bars"][0]["time_signature"] == "4/4"
    assert shown["playing_order"] == [0, 1, 2]


def test_tuplets_and_grace_notes(read):
    three = (
        "<time-modification><actual-notes>3</actual-notes>"
        "<normal-notes>2</normal-notes></time-modification>"
    )
    grace = make.note("D", 0, "eighth", before="<grace/>")
    triplet = "".join(make.note(s, 4, "eighth", extra=three) for s in "EFG")
    piece = read(make.score(grace + triplet + make.note("C", 36, "half", extra="<dot/>")))
    first, *rest = piece.notes
    assert (first.grace, first.duration, first.onset) == (True, 0, 0)
    third = Fraction(1, 3)
    assert [(n.onset, n.duration, n.tuplet) for n in rest] == [
        (0, third, (3, 2)), (third, third, (3, 2)), (2 * third, third, (3, 2)), (1, 3, None),
    ]  # fmt: skip


def test_repeats_endings_and_da_capo(read):
    piece = read(
        make.score(
            make.left(repeat=True) + WHOLE,
            make.left(ending="1") + WHOLE + make.right(repeat=True, ending="1"),
            make.left(ending="2") + WHOLE + make.words("Fine") + make.right(ending="2"),
            WHOLE,
            WHOLE + make.words("D.C. al Fine"),
        )
    )
    assert [b.endings for b in piece.bars] == [(), (1,), (2,), (), ()]
    assert playing_order(piece) == (0, 1, 0, 2, 3, 4, 0, 2)


@pytest.mark.parametrize("back", ["D.S. al Coda", "Dal Segno al Coda", "D. S. al Coda"])
def test_dal_segno_al_coda_with_signs(read, back):
    sign = "<direction><direction-type><{}/></direction-type></direction>"
    piece = read(
        make.score(
            WHOLE,
            sign.format("segno") + WHOLE,
            WHOLE + sign.format("coda"),
            WHOLE + make.words(back),
            sign.format("coda") + WHOLE,
        )
    )
    assert playing_order(piece) == (0, 1, 2, 3, 1, 2, 4)


def test_signs_for_playback_only(read):
    sound = "<direction><direction-type><words>x</words></direction-type><sound {}/></direction>"
    piece = read(
        make.score(
            sound.format('segno="s"') + WHOLE,
            WHOLE + sound.format('tocoda="c"'),
            WHOLE + sound.format('dalsegno="s"'),
            sound.format('coda="c"') + WHOLE + sound.format('fine="yes"'),
        )
    )
    assert playing_order(piece) == (0, 1, 2, 0, 1, 3)
    again = read(make.score(WHOLE, WHOLE + sound.format('dacapo="yes"')))
    assert playing_order(again) == (0, 1, 0, 1)


def test_an_ending_of_several_bars(read):
    piece = read(
        make.score(
            WHOLE,
            make.left(ending="1") + WHOLE,
            WHOLE,
            WHOLE + make.right(repeat=True, ending="1"),
            make.left(ending="2") + WHOLE + make.right(ending="2"),
        )
    )
    assert playing_order(piece) == (0, 1, 2, 3, 0, 4)


def test_voices_top_first(read):
    low = make.note("C", 48, "whole", octave=3, voice=1)
    high = "<backup><duration>48</duration></backup>" + make.note("E", 48, "whole", voice=2)
    piece = read(make.score(low + high, WHOLE))
    assert [(n.pitch.name, n.voice) for n in piece.notes] == [("E5", 1), ("C3", 2), ("C5", 1)]


def test_twelve_voices(read):
    back = "<backup><duration>48</duration></backup>"
    rows = [
        make.note("C", 48, "whole", octave=o % 6 + 2, voice=v) for v, o in enumerate(range(12), 1)
    ]
    piece = read(make.score(back.join(rows)))
    assert sorted(n.voice for n in piece.notes) == list(range(1, 13))
    assert len({n.id for n in piece.notes}) == 12


def test_parts(read):
    low = [make.note("C", 48, "whole", octave=3)]
    text = make.score(WHOLE, names=("Flute", "Bass"), more=(low,))
    top, both, bass = read(text), read(text, parts="all"), read(text, parts=[2])
    assert [n.pitch.name for n in top.notes] == ["C5"]
    assert [(n.pitch.name, n.voice, n.part) for n in both.notes] == [("C5", 1, 1), ("C3", 2, 2)]
    assert [n.pitch.name for n in bass.notes] == ["C3"]
    assert [(p.number, p.name, p.notes, p.lowest) for p in top.parts] == [
        (1, "Flute", 1, 72), (2, "Bass", 1, 48),
    ]  # fmt: skip


def test_a_keyboard_part_is_taken_whole(read):
    staff = "<staff>{}</staff>"
    bar = (
        make.note("C", 48, "whole", extra=staff.format(1))
        + "<backup><duration>48</duration></backup>"
        + make.note("C", 48, "whole", octave=3, voice=5, extra=staff.format(2))
    )
    text = make.score(bar, bar).replace("</time>", "</time><staves>2</staves>", 1)
    piece = read(text)
    assert [(n.pitch.name, n.voice) for n in piece.notes] == [("C5", 1), ("C3", 2)] * 2
    assert piece.parts[0].staves == 2


def test_a_top_part_without_notes_is_passed_over(read):
    piece = read(make.score(make.rest(48), more=([WHOLE],)))
    assert len(piece.notes) == 1 and "part 2 is taken" in piece.warnings[0]


def test_a_transposing_instrument_sounds(read):
    text = make.score(WHOLE).replace(
        "</time>", "</time><transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose>"
    )
    piece = read(text)
    assert [n.pitch.name for n in piece.notes] == ["Bb4"]
    assert piece.key == Key(-2)


def test_minor_from_the_last_note(read):
    assert read(make.score(make.note("A", 48, "whole"))).key == Key(0, "minor")


def test_marks_chords_sections_and_tempo(read):
    chord = (
        "<harmony><root><root-step>B</root-step><root-alter>-1</root-alter></root>"
        "<kind>dominant</kind></harmony>"
    )
    mark = "<direction><direction-type><rehearsal>B</rehearsal></direction-type></direction>"
    pace = (
        "<direction><direction-type><metronome><beat-unit>half</beat-unit>"
        "<per-minute>60</per-minute></metronome></direction-type></direction>"
    )
    dot = make.note(
        "C", 48, "whole", notations="<articulations><staccato/></articulations><fermata/>"
    )
    slur = make.note("D", 24, "half", notations='<slur type="start" number="1"/>') + make.note(
        "E", 24, "half", notations='<slur type="stop" number="1"/>'
    )
    piece = read(make.score(pace + chord + dot, mark + slur))
    assert piece.tempo == 120
    assert piece.bars[0].chords[0].text == "Bb7"
    assert piece.bars[1].section == "B"
    assert set(piece.notes[0].articulations) == {"staccato", "fermata"}
    assert [(n.slur_start, n.slur_stop) for n in piece.notes[1:]] == [(True, False), (False, True)]


def test_short_and_long_bars_are_told(read):
    long = WHOLE + make.note("D", 12, "quarter")
    piece = read(make.score(WHOLE, make.note("C", 24, "half"), WHOLE, long, WHOLE))
    assert [b.length for b in piece.bars] == [4, 4, 4, 5, 4]
    assert len(piece.warnings) == 2
    assert "Bar 2 lasts 2" in piece.warnings[0] and "Bar 4 lasts 5" in piece.warnings[1]


def test_a_bar_split_by_a_repeat_is_right(read):
    half = make.note("C", 24, "half")
    piece = read(make.score(WHOLE, half + make.right(repeat=True), half, WHOLE))
    assert [b.length for b in piece.bars] == [4, 2, 2, 4]
    assert piece.warnings == () and piece.bars[2].pickup


def test_bar_by_bar_documents(read):
    text = make.score(WHOLE, make.note("D", 48, "whole"))
    head, _, rest = text.partition('<part id="P1">')
    timewise = head.replace("score-partwise", "score-timewise") + rest.replace(
        "</part>", ""
    ).replace("score-partwise", "score-timewise").replace(
        '<measure number="1">', '<measure number="1"><part id="P1">'
    ).replace('<measure number="2">', '<measure number="2"><part id="P1">').replace(
        "</measure>", "</part></measure>"
    )
    assert [n.pitch.name for n in read(timewise).notes] == ["C5", "D5"]


BOOK = """X:1
T:First tune
M:4/4
L:1/4
K:G
D|GABc|d4:|
X:2
T:Second tune
M:3/4
L:1/8
K:Dm
|:"Dm"a6|1 b6:|2 {g}c6|]
"""


def test_a_book_of_tunes(read):
    first, second = read(BOOK, "a.abc"), read(BOOK, "a.abc", tune=2)
    assert first.tunes == second.tunes == ("First tune", "Second tune")
    assert (first.title, second.title) == ("First tune", "Second tune")
    assert (first.key, second.key) == (Key(1), Key(-1, "minor"))
    assert first.bars[0].pickup
    assert playing_order(first) == (0, 1, 2, 0, 1, 2)
    assert playing_order(second) == (0, 1, 0, 2)
    assert [(n.pitch.name, n.grace) for n in second.bars[2].notes] == [("G5", True), ("C5", False)]
    assert second.bars[0].chords[0].text == "Dm"


def test_jump_marks_that_are_not_read_are_told(read):
    for mark in ("!D.C.!", '"^D.C. al Fine"', "!fine!"):
        piece = read(f"X:1\nT:A\nM:4/4\nL:1/4\nK:C\nCDEF|GAB{mark}c|]\n", "a.abc")
        assert any("D.C." in w for w in piece.warnings), mark
    plain = read('X:1\nT:A\nM:4/4\nL:1/4\nK:C\nCDEF|G"D"A"Dm"Bc|]\n', "a.abc")
    assert plain.warnings == ()
