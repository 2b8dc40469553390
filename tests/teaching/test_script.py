import re
from itertools import pairwise

import pytest

from tests.teaching.hand_made import HAND, UKE, bar, build, n
from workbench.music.errors import BadInput
from workbench.teaching.lessons.formatting import StyledText, as_html, plain, spans
from workbench.teaching.lessons.lesson import CLOSING, OPENING, BarNote, Lesson
from workbench.teaching.scripts.files import chapters, clock, markdown, shown, srt, webvtt
from workbench.teaching.scripts.script import make_script, spoken_seconds, with_edit
from workbench.teaching.scripts.telling import Telling, tellings
from workbench.teaching.scripts.words import at_bar
from workbench.teaching.techniques.news import Move, MoveAt, new_in_bars


def lesson(**fields):
    piece, fingering = build(
        bar(n("C5", 2, left=3), n("D5", 2, left=3, move="guide"), section="A"),
        bar(n("E4", 4), repeat_end=True),
        bar(n("C5", 2, left=3), n("D5", 2, left=3, move="guide"), section="B"),
        bar(n("F4", 2, 0, string=2, left=1), n("A#4", 2, 0, string=1, left=1), n("C5", 2, 2)),
        tempo=120.0,
        title="Small study",
    )
    return Lesson("x", "Small study", piece, "ukulele", **fields), fingering


def script(**fields):
    made, fingering = lesson(**fields)
    return make_script(made, fingering, UKE, HAND)


def test_the_script_follows_the_playing_order():
    made = script()
    assert [c.bar for c in made.cues] == [0, 1, 0, 1, 2, 3]
    assert [c.as_bar for c in made.cues] == [None, None, 0, 1, 0, None]
    assert str(made.cues[2].say) == "Bars 1 to 2 again."
    assert str(made.cues[4].say) == "Bar 3 is as in bar 1."


def quiet_piece(*bars, notes=(), edits=()):
    piece, fingering = build(*bars, title="Quiet")
    made = Lesson("q", "Quiet", piece, "ukulele", notes=notes, script_edits=edits)
    known = (Move("technique", "alternation: i m"),)
    return make_script(made, fingering, UKE, HAND, known=known)


def whole(name):
    return bar(n(name, 4))


def halves(pair):
    """A bar of two half notes, such as "CD"; C, D and E lie on one string."""
    return bar(*(n(f"{name}4", 2) for name in pair))


def test_bars_with_nothing_to_say_are_taken_together():
    tune = [halves(pair) for pair in ("CD", "CD", "DC", "CE", "EC", "DE")]
    made = quiet_piece(*tune, halves("CD"), halves("CE"), bar())
    said = {c.position: str(c.say) for c in made.cues if str(c.say)}
    assert said == {
        0: "Bar 1: nothing new.",
        1: "Bar 2 is as in bar 1.",
        2: "Bars 3 to 6: as before.",
        6: "Bar 7 is as in bar 1.",
        7: "Bar 8 is as in bar 4.",
        8: "Bar 9: rest.",
    }
    assert [c.position for c in made.cues if c.covered] == [3, 4, 5]
    assert [made.speaker(c.position) for c in made.cues] == [0, 1, 2, 2, 2, 2, 6, 7, 8]
    text = markdown(made)
    assert "· bars 3–6** Bars 3 to 6: as before." in text and "· bar 4**" not in text
    alike = quiet_piece(*tune[1:], *tune[1:])
    assert [str(c.say) for c in alike.cues if str(c.say)][-1] == "Bars 6 to 10 are as bars 1 to 5."


def test_words_of_the_teacher_part_a_run_of_bars():
    tune = [halves(pair) for pair in ("CD", "DC", "CE", "EC", "DE")]
    note = BarNote("n", "sound", "Softly", 2, 2)
    made = quiet_piece(*tune, notes=(note,), edits=((4, "The last one."),))
    assert [str(c.say) for c in made.cues] == [
        "Bars 1 to 2: nothing new.", "", "Bar 3. Softly.", "Bar 4: as before.", "The last one.",
    ]  # fmt: skip


def test_the_teachers_own_words_come_first():
    made = script(notes=(BarNote("n", "sound", "Listen to the top", 0, 0),))
    said = str(made.cues[0].say)
    assert said.startswith("Bar 1. Listen to the top. New here:") and "guide finger" in said


def test_fingers_together_are_counted():
    assert str(Move("technique", "fingers-together: i m").words) == "two fingers together (i m)"
    assert (
        str(Move("technique", "thumb-finger: p i a").words) == "pinch of thumb and fingers (p i a)"
    )
    assert (
        str(Move("technique", "fingers-together: p m a").words) == "three fingers together (p m a)"
    )
    assert "Two fingers" not in said_at([["alternation: i m a"]])[0]


def said_at(bars, own=(), known=(), kind="technique"):
    """What is said at bars in which these techniques are met."""
    piece = build(*[whole("C4")] * len(bars))[0]
    moves = [MoveAt(Move(kind, name), k) for k, names in enumerate(bars) for name in names]
    taught = [Move(kind, name) for name in known]
    told = tellings(moves, new_in_bars(moves, taught), range(len(bars)), own, taught)
    return [str(at_bar(piece, k, None, told.get(k, Telling()), ())) for k in range(len(bars))]


def test_nothing_is_new_that_an_earlier_bar_had():
    """Another pair of fingers is no new technique; another pattern is named, not as new."""
    first, second, third, fourth = said_at(
        [
            ["thumb-finger: p m"],
            ["thumb-finger: p i", "thumb-finger: p a"],
            ["arpeggio: p i m"],
            ["arpeggio: m i p"],
        ]
    )
    assert "New here: pinch of thumb and finger (p m)." in first
    assert second == ""
    assert "New here: arpeggio (p i m)." in third
    assert fourth == "Bar 4. Another pattern: arpeggio (m i p)."


def test_what_the_teacher_spoke_of_is_not_new_afterwards():
    """The teacher's own words stand at bar 1, where an arpeggio comes first."""
    said = said_at([["arpeggio: p i m"], ["arpeggio: m i p"]], own={0})
    assert said[1] == "Bar 2. Another pattern: arpeggio (m i p)."


MANY = ["accidentals", "dotted-rhythm", "fermata", "guide-finger", "held-voice", "hop", "pickup"]


def test_three_things_are_explained_at_a_bar_and_the_rest_where_they_come_again():
    said = said_at([MANY, MANY[:4], MANY[:1], ["hop"], MANY[:1]])
    new = [re.findall("New here: ([a-z ]+)", text) for text in said]
    assert new == [["accidentals", "dotted rhythm", "fermata"], [], [], [], []]
    assert said[0].endswith("Also in this bar: held voice, pickup.")
    assert said[1].startswith("Bar 2. Now to this: guide finger. A finger stays on its string")
    assert said[3].startswith("Bar 4. Now to this: finger hop. The same finger")
    assert said[2] == said[4] == ""


def test_what_comes_for_the_last_time_is_named_where_there_is_too_much_to_explain():
    rest = ["shift", "staccato", "stretch"]
    said = said_at([MANY[:3] + rest, MANY[:3] + rest, MANY[:3]])
    assert said[1].count("Now to this") == 2
    assert said[1].endswith("Also in this bar: stretch.")
    every = " ".join(said)
    for name in ("accidentals", "dotted rhythm", "fermata", "shift", "staccato", "stretch"):
        assert len(re.findall(f": {name}[.,]|, {name}[.,]", every)) == 1, name


def test_positions_are_named_at_once():
    said = said_at([["III", "V", "IX"]], kind="position")
    assert said == ["Bar 1. New here: positions III, V and IX."]


def test_what_is_new_is_explained_once_and_what_is_known_not_at_all():
    made = script()
    assert "guide finger" in str(made.cues[0].say)
    assert all("guide finger" not in str(c.say) for c in made.cues[1:])
    piece, fingering = lesson()
    again = make_script(piece, fingering, UKE, HAND, known=[Move("technique", "guide-finger")])
    assert "guide finger" not in str(again.cues[0].say)


def test_notes_are_said_where_they_begin_and_only_once():
    notes = (
        BarNote("n1", "sound", "Let it *sing*", 0, 1),
        BarNote("n2", "left hand", "Little finger ready!", 3, 3),
    )
    made = script(notes=notes)
    assert [k for k, c in enumerate(made.cues) if "Let it *sing*." in str(c.say)] == [0]
    assert [k for k, c in enumerate(made.cues) if "Little finger ready!" in str(c.say)] == [5]


def test_times_add_up_and_follow_the_tempo():
    made = script()
    assert made.cues[0].start == made.opening_seconds > 0
    for a, b in pairwise(made.cues):
        assert b.start == pytest.approx(a.end)
    assert made.closing_start == pytest.approx(made.cues[-1].end)
    assert made.seconds == pytest.approx(made.closing_start + spoken_seconds(str(made.closing)))
    assert made.cues[0].playing == pytest.approx(2.0)  # four crotchets at 120
    assert script(tempo_percent=50).cues[0].playing == pytest.approx(4.0)


def test_speech_is_timed_by_its_words():
    assert spoken_seconds("") == 0.0
    assert spoken_seconds("word " * 140) == pytest.approx(60.6)
    assert spoken_seconds("**a** *b*") == spoken_seconds("a b")


def test_grips_and_right_hand_are_shown():
    cue = script().cues[5]
    assert cue.grips == ("x-x-1-1",)
    assert cue.right == "im i"


def test_sections_are_chapters_each_time_they_are_entered():
    made = script()
    assert {c.position: str(c.chapter) for c in made.cues if str(c.chapter)} == {
        0: "Section A",
        2: "Section A, time 2",
        4: "Section B",
    }
    own = script(sections=((0, "Verse"), (3, "Ending")))
    assert {c.position: str(c.chapter) for c in own.cues if str(c.chapter)} == {
        0: "Verse",
        2: "Verse, time 2",
        5: "Ending",
    }


def test_edits_stand_and_can_be_given_back():
    made, fingering = lesson()
    edited = with_edit(made, 4, "Now the second part.")
    cue = make_script(edited, fingering, UKE, HAND).cues[4]
    assert str(cue.say) == "Now the second part." and cue.edited
    back = with_edit(edited, 4, None)
    assert back.script_edits == ()
    assert str(make_script(back, fingering, UKE, HAND).cues[4].say) == "Bar 3 is as in bar 1."


def test_opening_and_closing_words_can_be_the_teachers_own():
    made, fingering = lesson()
    plainly = make_script(made, fingering, UKE, HAND)
    assert str(plainly.opening).startswith("Small study, in C major.")
    assert str(plainly.closing).startswith("That was Small study. New in it: guide finger")
    assert plainly.edited == frozenset()
    own = with_edit(with_edit(made, OPENING, "Hello."), CLOSING, "Until next time.")
    said = make_script(own, fingering, UKE, HAND)
    assert (str(said.opening), str(said.closing)) == ("Hello.", "Until next time.")
    assert said.is_edited(OPENING) and said.is_edited(CLOSING) and not said.is_edited(0)
    assert said.words_at(OPENING) == "Hello." and said.words_at(2) == str(said.cues[2].say)
    assert said.cues[0].start == pytest.approx(spoken_seconds("Hello."))
    for text in (srt(said), webvtt(said), markdown(said)):
        assert text.index("Hello.") < text.index("Bar 4") < text.index("Until next time.")
    assert str(make_script(with_edit(own, OPENING, ""), fingering, UKE, HAND).opening) == str(
        plainly.opening
    )


def test_sections_have_lengths_that_add_up():
    made = script()
    assert [str(c.name) for c in made.chapters] == ["Section A", "Section A, time 2", "Section B"]
    whole = made.opening_seconds + sum(c.seconds for c in made.chapters) + made.closing_seconds
    assert whole == pytest.approx(made.seconds)


def test_a_note_on_a_section_is_said_where_the_section_is_entered():
    notes = (BarNote("n1", "form", "The tune comes home.", 2, 3, section="B"),)
    made = script(notes=notes)
    assert [k for k, c in enumerate(made.cues) if "comes home" in str(c.say)] == [4]


def test_pictures_and_rejected_fingerings_are_shown_with_their_reason():
    notes = (
        BarNote("n1", "left hand", "Here.", 0, 0, grip=(0, None, 1, 3)),
        BarNote("n2", "left hand", "So *not*.", 3, 3, rejected=(("b3n0", 3, 5, 4),), why="Too far"),
    )
    made = script(notes=notes)
    assert made.cues[0].pictures == ("0-x-1-3",)
    assert "Picture of the grip 0-x-1-3" in shown(made.cues[0])
    assert "Why not the other fingering: Too far" in shown(made.cues[5])
    text = markdown(made)
    assert "> Picture of the grip 0-x-1-3" in text
    assert "> Why not the other fingering: Too far" in text


def test_an_edit_of_a_bar_that_is_not_played_is_refused():
    made, fingering = lesson(script_edits=((9, "x"),))
    with pytest.raises(BadInput, match="no bar 10 in playing order"):
        make_script(made, fingering, UKE, HAND)


def test_srt_cues_are_numbered_and_in_order():
    text = srt(script())
    rows = re.findall(
        r"(\d+)\n(\d\d):(\d\d):(\d\d),(\d{3}) --> (\d\d):(\d\d):(\d\d),(\d{3})\n(.+)\n", text
    )
    assert [int(r[0]) for r in rows] == list(range(1, 8))  # two bars are said at once
    times = [
        (
            int(r[1]) * 3600 + int(r[2]) * 60 + int(r[3]) + int(r[4]) / 1000,
            int(r[5]) * 3600 + int(r[6]) * 60 + int(r[7]) + int(r[8]) / 1000,
        )
        for r in rows
    ]
    assert all(a < b for a, b in times)
    assert all(x[1] <= y[0] for x, y in pairwise(times))


def test_webvtt_begins_as_the_standard_says_and_is_escaped():
    # W3C WebVTT: the file begins with WEBVTT; & and < are written as references
    made, fingering = lesson(notes=(BarNote("n", "sound", "p < f & back", 0, 0),))
    text = webvtt(make_script(made, fingering, UKE, HAND))
    assert text.startswith("WEBVTT\n\n1\n00:00:00.000 --> ")
    assert "p &lt; f &amp; back" in text


def test_chapters_begin_at_zero():
    rows = chapters(script()).splitlines()
    assert rows[0] == "0:00 Opening"
    assert [r.split(" ", 1)[1] for r in rows[1:]] == [
        "Section A", "Section A, time 2", "Section B", "Closing",
    ]  # fmt: skip


def test_markdown_has_headings_times_and_what_is_shown():
    text = markdown(script())
    assert text.startswith("# Small study\n")
    assert "## Section B (0:" in text and "> Grips x-x-1-1; right hand im i" in text
    assert "· bar 3** Bar 3 is as in bar 1." in text


def test_clock():
    assert [clock(s) for s in (0, 65, 3725)] == ["0:00", "1:05", "1:02:05"]


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("plain", [StyledText("plain")]),
        ("a *b* c", [StyledText("a "), StyledText("b", emphasis=True), StyledText(" c")]),
        ("**b**", [StyledText("b", strong=True)]),
        ("**a *b***", [StyledText("a ", strong=True), StyledText("b", emphasis=True, strong=True)]),
        ("2 * 3 * 4", [StyledText("2 * 3 * 4")]),
        ("lone *star", [StyledText("lone *star")]),
    ],
)
def test_note_formatting(text, found):
    assert list(spans(text)) == found


def test_formatting_as_html_is_safe_and_as_speech_plain():
    assert as_html("<b> *x*\n**y**") == "&lt;b&gt; <em>x</em><br><strong>y</strong>"
    assert plain("**a** *b*") == "a b"


def test_a_piece_in_one_part_has_no_form_to_tell_and_no_section_a():
    piece, fingering = build(halves("CD"), halves("DE"), title="Quiet")
    alone = make_script(Lesson("q", "Quiet", piece, "ukulele"), fingering, UKE, HAND)
    assert "form" not in str(alone.opening)
    assert [str(c.chapter) for c in alone.cues if str(c.chapter)] == ["The piece"]
    assert "The form: A twice" in str(script().opening)
