"""Small score files of our own, read into bars, voices and signs."""

from __future__ import annotations

from fractions import Fraction

import pytest

from tests.music import small_scores as make
from workbench.music.document import read_document
from workbench.music.model import Key
from workbench.music.order.form import playing_order
from workbench.music.reading.score import read_score
from workbench.music.telling.warnings import warnings
from workbench.music.writing.score import musicxml_bytes

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


def test_a_tuplet_of_no_notes_tells_nothing(read):
    none = (
        "<time-modification><actual-notes>3</actual-notes>"
        "<normal-notes>0</normal-notes></time-modification>"
    )
    piece = read(make.score(make.note("D", 48, "whole", extra=none)))
    assert all(n.tuplet is None for n in piece.notes) and musicxml_bytes(piece)


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
    assert len(piece.notes) == 1 and "part 2 is taken" in warnings(piece)[0]


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
    assert "Bar 2 lasts 2" in warnings(piece)[0] and "Bar 4 lasts 5" in warnings(piece)[1]


def test_a_bar_split_by_a_repeat_is_right(read):
    half = make.note("C", 24, "half")
    piece = read(make.score(WHOLE, half + make.right(repeat=True), half, WHOLE))
    assert [b.length for b in piece.bars] == [4, 2, 2, 4]
    assert piece.warnings == () and piece.bars[2].pickup


def test_half_a_bar_in_a_new_meter_is_as_long_as_what_sounds_there(read):
    """So written in music21's BWV 171.6: the trumpets rest through a whole bar of the new meter
    where the others have one beat."""
    three = "<attributes><time><beats>3</beats><beat-type>4</beat-type></time></attributes>"
    tune = (
        WHOLE,
        make.note("C", 36, "half", extra="<dot/>"),
        three + make.note("E", 12, "quarter"),
        make.note("C", 36, "half", extra="<dot/>"),
    )
    resting = (make.rest(48), make.rest(36), three + make.rest(36), make.rest(36))
    piece = read(make.score(*tune, more=[resting]), parts="all")
    assert [b.length for b in piece.bars] == [4, 3, 1, 3]
    assert piece.warnings == ()


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


@pytest.mark.parametrize(
    ("mark", "expected"),
    [
        ("!D.C.!", ("D.C.", False)), ('"^D.C. al Fine"', ("D.C. al Fine", False)),
        ('"Fine"', ("", True)), ("!fine!", ("", True)), ("!D.C.alfine!", ("D.C. al Fine", False)),
        ("!D.S.!", ("D.S.", False)), ('"_D.S. al Coda"', ("D.S. al Coda", False)),
    ],
    ids=str,
)  # fmt: skip
def test_jump_marks_of_abc(read, mark, expected):
    for music in (f"CDEF|G-G{{c}}z{mark}c|]", f"CDEF|[CE]2B-B{mark}|]", f"CDEF|GABc|{mark}\n"):
        piece = read(f"X:1\nT:A\nM:4/4\nL:1/4\nK:C\n{music}\n", "a.abc")
        assert (piece.bars[1].jump, piece.bars[1].fine) == expected
        assert piece.bars[0].jump == "" and not piece.bars[0].fine and piece.warnings == ()


def test_a_whole_form_of_abc_is_played(read):
    tune = "!segno!CDEF|GABc !coda!|c2c2 !D.S.alcoda!|!coda!C4|]"
    piece = read(f"X:1\nT:A\nM:4/4\nL:1/4\nK:C\n{tune}\n", "a.abc")
    assert playing_order(piece) == (0, 1, 2, 0, 1, 3)


def test_jump_marks_that_are_not_read_are_told(read):
    head = "X:1\nT:A\nM:4/4\nL:1/4\nK:C\n"
    voices = "V:1\nCDEF|GAB!fine!c|]\nV:2\nC4|C4|]\n"
    assert any("D.C." in w for w in warnings(read(head + voices, "a.abc")))
    plain = read(f'{head}CDEF|G"D"A"Dm"Bc|]\n', "a.abc")
    assert plain.warnings == ()


def test_a_full_first_bar_of_abc_is_bar_one(read):
    head = "X:1\nT:A\nM:4/4\nL:1/4\nK:C\n"
    assert [b.number for b in read(f"{head}CDEF|GABc|]\n", "a.abc").bars] == ["1", "2"]
    assert [b.number for b in read(f"{head}C|GABc|GABc|GAB|]\n", "a.abc").bars][:2] == ["0", "1"]


def fingers(**marks):
    inner = "".join(f"<{tag}>{text}</{tag}>" for tag, text in marks.items())
    return f"<technical>{inner}</technical>"


def marks_of(piece):
    return [(w.note, w.string, w.fret, w.left, w.right) for w in piece.written]


def test_printed_fingering(read):
    chord = make.note("C", 24, "half", octave=4, notations=fingers(string=3, fret=0, pluck="p"))
    top = make.note(
        "E", 24, "half", before="<chord/>", octave=4, notations=fingers(string=2, fret=0, pluck="M")
    )
    last = make.note("A", 24, "half", octave=4, notations=fingers(fingering="0", pluck="x"))
    piece = read(make.score(chord + top + last))
    assert marks_of(piece) == [
        ("n1-1", 2, 0, None, "m"), ("n1-2", 3, 0, None, "p"), ("n1-3", None, None, 0, None),
    ]  # fmt: skip


def one_finger(names=("Melody",), clef="", head="", finger="1"):
    """A score of one note with a finger number alone."""
    clef = f"<attributes>{clef}</attributes>" if clef else ""
    text = make.score(
        clef + make.note("C", 48, "whole", octave=4, notations=fingers(fingering=finger)),
        names=names,
    )
    return text.replace("</part-name>", f"</part-name>{head}", 1)


OCTAVE = "<clef><sign>G</sign><line>2</line><clef-octave-change>-1</clef-octave-change></clef>"


@pytest.mark.parametrize(
    "score",
    [
        one_finger(clef=OCTAVE),
        one_finger(clef="<clef><sign>TAB</sign></clef>"),
        one_finger(names=("Guitarra I",)),
        one_finger(names=("Ukulele",)),
        one_finger(head='<score-instrument id="P1-I1"><instrument-name>Nylon</instrument-name>'
                   "<instrument-sound>pluck.guitar.nylon-string</instrument-sound>"
                   "</score-instrument>"),
        one_finger(head='<midi-instrument id="P1-I1"><midi-program>25</midi-program>'
                   "</midi-instrument>"),
    ],
    ids=["octave clef", "tablature", "name", "ukulele", "sound", "program"],
)  # fmt: skip
def test_finger_numbers_of_a_plucked_part_are_read(read, score):
    (mark,) = read(score).written
    assert (mark.left, mark.midi, mark.doubtful) == (1, 60, False)


@pytest.mark.parametrize(
    "score",
    [
        one_finger(names=("Piano",)),
        one_finger(names=("Violine",), clef=OCTAVE),
        one_finger(names=("Flute",)),
        one_finger(clef=OCTAVE, finger="5"),
    ],
    ids=["piano", "violin", "flute", "five fingers"],
)
def test_finger_numbers_of_another_instrument_are_left_out(read, score):
    assert read(score).written == ()


def test_finger_numbers_of_a_part_that_says_nothing_are_doubtful(read):
    piece = read(one_finger())
    assert [(w.left, w.doubtful) for w in piece.written] == [(1, True)]
    assert any("does not say for what instrument" in w for w in warnings(piece))


def test_a_tie_keeps_the_fingering_of_its_beginning(read):
    start = make.note("A", 48, "whole", octave=4, notations=fingers(string=1, fret=0))
    start = start.replace("<voice>", '<tie type="start"/><voice>')
    stop = make.note("A", 48, "whole", octave=4).replace("<voice>", '<tie type="stop"/><voice>')
    piece = read(make.score(start, stop))
    assert len(piece.notes) == 1 and marks_of(piece) == [("n1-1", 1, 0, None, None)]


def test_a_tablature_staff_that_repeats_the_music_is_not_read_twice(read):
    def staff(number, notations=""):
        one = make.note("A", 48, "whole", octave=4, voice=number, notations=notations)
        return one.replace("<notations>", f"<staff>{number}</staff><notations>").replace(
            "</type></note>", f"</type><staff>{number}</staff></note>"
        )

    clefs = (
        "<attributes><staves>2</staves><clef number='1'><sign>G</sign><line>2</line></clef>"
        "<clef number='2'><sign>TAB</sign><line>5</line></clef></attributes>"
    )
    back = "<backup><duration>48</duration></backup>"
    both = clefs + staff(1) + back + staff(2, fingers(string=1, fret=0))
    piece = read(make.score(both))
    assert len(piece.notes) == 1
    assert marks_of(piece) == [("n1-1", 1, 0, None, None)]
    # with other music in it, it is a staff like any other
    other = both.replace("<octave>4</octave></pitch><duration>48</duration><voice>2",
                         "<octave>5</octave></pitch><duration>48</duration><voice>2")  # fmt: skip
    assert len(read(make.score(other)).notes) == 2


def test_wedges_are_read_and_written_again(read, tmp_path):
    """Between the notes at which MusicXML begins and stops them."""
    from workbench.music.writing.score import write_musicxml

    wedge = '<direction><direction-type><wedge type="{}"/></direction-type></direction>'
    notes = [make.note(step, 12, "quarter") for step in "CDEF"]
    text = wedge.format("diminuendo") + "".join(notes[:3]) + wedge.format("stop") + notes[3]
    piece = read(make.score(text))
    first, last = piece.bars[0].dynamics
    assert (first.onset, first.text) == (0, "diminuendo") and last.text == "stop"
    assert 2 <= last.onset <= 3
    path = tmp_path / "again.musicxml"
    write_musicxml(piece, path)
    assert '<wedge type="diminuendo"' in path.read_text(encoding="utf-8")
    assert [d.text for d in read(path.read_bytes()).bars[0].dynamics] == ["diminuendo", "stop"]


VOICES = {"One": ("cdef|gabc'|", "c4|e4|"), "Two": ("C4|E4|", "G4|C4|")}


def by_voice(between):
    """Two voices, written in one run each or line by line; ``between`` is a way to name one."""
    head = 'X:1\nT:Both\nM:4/4\nL:1/4\nV:One name="Upper"\nV:Two name="Lower" clef=bass\nK:C\n'
    rows = [(name, k) for k in (0, 1) for name in VOICES]
    if between == "runs":
        rows = [(name, k) for name in VOICES for k in (0, 1)]
    named = "[V:{}] {}\n" if between == "inline" else "V:{}\n{}\n"
    return head + "".join(named.format(name, VOICES[name][k]) for name, k in rows)


@pytest.mark.parametrize("between", ["runs", "fields", "inline"])
def test_abc_voices_are_one_part_each_however_they_are_written(read, between):
    """The ABC standard 2.1, section 7: a tune may go back to a voice line by line."""
    piece = read(by_voice(between), "a.abc", parts="all")
    assert [(p.name, p.notes) for p in piece.parts] == [("Upper", 10), ("Lower", 4)]
    assert len(piece.bars) == 4 and piece.warnings == ()
    assert [n.pitch.name for n in piece.notes if n.part == 2] == ["C4", "E4", "G4", "C4"]
    lower = read(by_voice(between), "a.abc", parts=[2])
    assert [n.midi for n in lower.notes] == [60, 64, 67, 60]
