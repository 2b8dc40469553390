from fractions import Fraction as F

import pytest

from tests.teaching.hand_made import GUITAR, HAND, UKE, bar, build, n, song
from workbench.fingering.types import Barre
from workbench.music.errors import BadInput
from workbench.music.model import Key
from workbench.teaching.lessons.lesson import NOTE_KINDS
from workbench.teaching.techniques.catalogue import (
    FAMILIES,
    catalogue,
    find_techniques,
    technique,
)
from workbench.teaching.techniques.exercises import KINDS, exercise, exercises_for


def places(name, *bars, instrument=UKE, **options):
    """(bar, onset, notes, detail) of a technique in hand-made music."""
    piece, fingering = build(*bars, instrument=instrument, **options)
    for f in find_techniques(piece, fingering, instrument, HAND):
        if f.technique.id == name:
            return [(o.bar, o.onset, o.notes, str(o.detail)) for o in f.occurrences]
    return []


def ids(b, *events):
    return tuple(f"b{b}n{k}" for k in events)


def test_alternation_is_four_single_notes_with_changing_fingers():
    line = bar(n("C4", right="i"), n("D4", right="m"), n("E4", right="i"), n("F4", right="m"))
    assert places("alternation", line) == [(0, 0, ids(0, 0, 1, 2, 3), "i m")]
    twice = bar(n("C4", right="i"), n("D4", right="i"), n("E4", right="m"), n("F4", right="i"))
    assert places("alternation", twice) == []


def test_thumb_with_a_finger_and_chords():
    row = bar(
        n("C4", 1, 0, right="p"),
        n("A4", 1, 0, right="m"),
        n("C4", 1, 1, right="p"),
        n("E4", 1, 1, right="i"),
        n("A4", 1, 1, right="m"),
        n("G4", 1, 2, right="p"),
        n("C4", 1, 2, right="i"),
        n("E4", 1, 2, right="m"),
        n("A4", 1, 2, right="a"),
        n("E4", 1, 3, right="i"),
        n("A4", 1, 3, right="m"),
    )
    assert places("thumb-finger", row) == [(0, 0, ids(0, 1, 0), "p m")]
    assert [p[1] for p in places("pim-chord", row)] == [1]
    assert [p[1] for p in places("pima-chord", row)] == [2]
    assert [p[1:] for p in places("fingers-together", row)] == [(3, ids(0, 10, 9), "i m")]


def test_arpeggio_names_its_fingers_and_is_no_alternation():
    row = bar(
        n("C4", F(1, 2), string=3, right="p"),
        n("E4", F(1, 2), string=2, right="i"),
        n("A4", F(1, 2), string=1, right="m"),
        n("E4", F(1, 2), string=2, right="i"),
        n("C4", 2, string=3, right="p"),
    )
    assert places("arpeggio", row) == [(0, 0, ids(0, 0, 1, 2, 3, 4), "p i m i p")]
    assert places("alternation", row) == []


def test_left_hand_moves_are_read_from_the_fingering():
    row = bar(
        n("C5", left=3),
        n("D5", left=3, move="guide"),
        n("F4", left=1, move="hop"),
        n("C5", left=3, move="planted"),
    )
    assert places("guide-finger", row) == [(0, 1, ids(0, 1), "finger 3")]
    assert places("hop", row) == [(0, 2, ids(0, 2), "finger 1")]
    assert places("planted-finger", row) == [(0, 3, ids(0, 3), "finger 3")]
    again = bar(n("C5", 2, left=3), n("C5", 2, left=3, move="planted"))
    assert places("planted-finger", again) == []
    up = bar(n("A#4", 2, left=1), n("D5", 2, string=1, left=1, move="shift"))
    assert places("shift", up) == [(0, 2, ids(0, 1), "to position V")]
    assert places("high-position", up) == [(0, 2, ids(0, 1), "position V")]


def test_a_shift_hides_behind_an_open_string():
    row = bar(n("A#4", left=1), n("E4"), n("D5", string=1, left=1), n("D5", string=1, left=1))
    assert places("open-string-shift", row) == [(0, 1, ids(0, 1), "to position V")]
    near = bar(n("A#4", left=1), n("E4"), n("B4", string=1, left=1), n("E4"))
    assert places("open-string-shift", near) == []
    two = bar(n("A#4", left=1), n("E4"), n("A4"), n("C5", string=1, left=1, move="shift"))
    assert [p[1] for p in places("open-string-shift", two)] == [2]


def test_a_minor_section_is_heard_under_its_relative_majors_signature():
    def block(*names):
        return bar(*(n(x, 4, 0) for x in names))

    a = [block("C4", "E4", "G4"), block("G4", "B4", "D4"), block("C4", "E4", "G4")]
    b = [block("A4", "C4", "E4"), block("E4", "G#4", "B4"), block("A4", "C4", "E4")]
    b[0] = bar(*b[0].events, repeat_start=True)
    assert [(p[0], p[3]) for p in places("minor-section", *a, *b)] == [(3, "A minor")]


def test_finger_swap_from_one_pair_to_another():
    row = bar(
        n("F4", 2, 0, string=2, left=1),
        n("D4", 2, 0, string=3, left=2),
        n("C5", 2, 2, string=1, left=3),
        n("G4", 2, 2, string=2, left=4),
    )
    assert places("finger-swap", row) == [(0, 0, ids(0, 0, 1, 2, 3), "1-2 to 3-4")]
    same = bar(
        n("F4", 2, 0, string=2, left=1),
        n("D4", 2, 0, string=3, left=2),
        n("C5", 2, 2, string=1, left=3),
        n("F4", 2, 2, string=2, left=1),
    )
    assert places("finger-swap", same) == []


def test_barres_partial_and_full():
    half = bar(n("A#4", 4, 0, left=1), n("F4", 4, 0, left=1), barres=[Barre(F(0), 1, (1, 2))])
    full = bar(n("A#4", 4, 0, left=1), barres=[Barre(F(0), 1, (1, 2, 3, 4))])
    assert places("partial-barre", half, full) == [(0, 0, ids(0, 0, 1), "fret 1")]
    assert places("full-barre", half, full) == [(1, 0, ids(1, 0), "fret 1")]


def test_stretch_depends_on_the_scale_length():
    def row(instrument):
        low = instrument.open_midi
        return bar(n(low[1] + 1, 4, 0, string=2, left=1), n(low[0] + 5, 4, 0, string=1, left=4))

    assert places("stretch", row(UKE)) == []
    # 650 mm: frets 1 to 5 lie 650 (2^(-1/12) - 2^(-5/12)) = 126.6 mm apart (twelve-tone rule)
    assert places("stretch", row(GUITAR), instrument=GUITAR)[0][3] == "127 mm"


def test_slurs_on_one_string_are_the_left_hands():
    row = bar(
        n("A4", slur_start=True),
        n("B4", slur_stop=True),
        n("C5", slur_start=True),
        n("A4", slur_stop=True),
    )
    assert places("slur-up", row) == [(0, 0, ids(0, 0, 1), "")]
    assert places("slur-down", row) == [(0, 2, ids(0, 2, 3), "")]
    three = bar(n("A4", slur_start=True), n("B4"), n("A4", 2, slur_stop=True))
    assert places("slur-up", three) == [(0, 0, ids(0, 0, 1), "")]
    assert places("slur-down", three) == [(0, 1, ids(0, 1, 2), "")]
    phrase = bar(n("E4", 2, string=2, slur_start=True), n("A4", 2, string=1, slur_stop=True))
    assert places("slur-up", phrase) == []


def test_held_voice_needs_two_notes_against_it_and_to_be_really_held():
    row = [n("C4", 4, 0, voice=2, right="p"), n("E4", 1, 0), n("G4", 1, 1), n("A4", 2, 2)]
    assert places("held-voice", bar(*row)) == [(0, 0, ids(0, 0), "")]
    row[0] = n("C4", 4, 0, voice=2, right="p", held=1, cut="string")
    assert places("held-voice", bar(*row)) == []
    assert places("cut-note", bar(*row)) == [
        (0, 0, ids(0, 0), "its string is needed for another note")
    ]


def test_campanella_is_a_scale_over_the_strings():
    row = bar(n("E4", string=2), n("F4", string=3, left=4), n("G4", string=4), n("A4", string=1))
    assert places("campanella", row) == [(0, 0, ids(0, 0, 1, 2, 3), "")]
    plain = bar(n("E4", string=2), n("F4", string=2), n("G4", string=2), n("A4", string=1))
    assert places("campanella", plain) == []


def test_thirds_that_move():
    row = bar(
        n("C4", 1, 0), n("E4", 1, 0), n("D4", 1, 1), n("F4", 1, 1), n("C4", 2, 2), n("A4", 2, 2)
    )
    assert [p[1:] for p in places("parallel-thirds", row)] == [(0, ids(0, 1, 0, 3, 2), "thirds")]


def test_rhythms():
    row = bar(n("C4", F(1, 2)), n("E4", 1), n("E4", F(1, 2)), n("C4", F(3, 2)), n("E4", F(1, 2)))
    assert places("syncopation", row) == [(0, F(1, 2), ids(0, 1), "")]
    assert places("dotted-rhythm", row) == [(0, 2, ids(0, 3), "")]
    third = F(1, 3)
    trio = bar(
        n("C4", third, tuplet=(3, 2)),
        n("D4", third, tuplet=(3, 2)),
        n("E4", third, tuplet=(3, 2)),
        n("C4", 3),
    )
    assert places("triplets", trio) == [(0, 0, ids(0, 0, 1, 2), "")]
    over = bar(n("C4", 2), n("E4", 3))
    assert places("tie", over, bar(n("C4", 3, 1))) == [(0, 2, ids(0, 1), "")]


def test_dotted_crotchets_are_the_beat_of_compound_time():
    row = bar(n("C4", F(3, 2)), n("E4", F(3, 2)))
    assert places("dotted-rhythm", row, time=(6, 8)) == []
    assert [p[3] for p in places("compound-time", row, row, time=(6, 8))] == ["6/8"]


def test_pickup_change_of_time_and_form():
    bars = [
        bar(n("C4"), pickup=True, length=1, number="0"),
        bar(n("E4", 4)),
        bar(n("E4", 4), endings=(1,), repeat_end=True),
        bar(n("C4", 4), endings=(2,)),
        bar(n("C4", 3), time_signature=(3, 4), jump="D.C. al Fine"),
    ]
    assert [p[0] for p in places("pickup", *bars)] == [0]
    assert [(p[0], p[3]) for p in places("endings", *bars)] == [(2, "ending 1"), (3, "ending 2")]
    assert [(p[0], p[3]) for p in places("time-change", *bars)] == [(4, "to 3/4")]
    assert [(p[0], p[3]) for p in places("jump", *bars)] == [(4, "D.C. al Fine")]


def test_keys_and_accidentals():
    bars = [
        bar(n("C4", 2), n("F#4", 2)),
        bar(n("A4", 2), n("G#4", 2), key=Key(0, "minor")),
        bar(n("D4", 4), key=Key(2)),
    ]
    assert places("accidentals", *bars) == [(0, 2, ids(0, 1), "F♯")]
    assert [(p[0], p[3]) for p in places("minor-section", *bars)] == [(1, "A minor")]
    assert [(p[0], p[3]) for p in places("key-change", *bars)] == [
        (1, "C major to A minor"),
        (2, "A minor to D major"),
    ]


def test_marks_repeated_notes_thumb_and_skips():
    row = bar(
        n("A4", 1, right="p", articulations=("fermata",)),
        n("A4", right="p"),
        n("A4", right="p", articulations=("staccato",)),
        n("A4", right="m", articulations=("natural harmonic",)),
    )
    assert [p[1] for p in places("fermata", row)] == [0]
    assert [p[1] for p in places("staccato", row)] == [2]
    assert [p[1] for p in places("harmonic", row)] == [3]
    assert [p[2] for p in places("repeated-notes", row)] == [ids(0, 0, 1, 2, 3)]
    assert [p[2] for p in places("thumb-alone", row)] == [ids(0, 0, 1, 2)]
    skip = bar(n("A4", 2, string=1, right="i"), n("C4", 2, string=3, right="m"))
    assert [p[3] for p in places("string-skip", skip)] == ["string 1 to 3"]


def test_every_technique_of_the_catalogue_is_whole_and_its_family_is_a_kind_of_note():
    listed = {t.id for t in catalogue()}
    assert len(listed) == len(catalogue())
    assert set(FAMILIES) <= set(NOTE_KINDS)
    assert {t.family for t in catalogue()} == set(FAMILIES)
    for t in catalogue():
        assert t.asks.endswith(".") and t.watch.endswith(".")
        assert t.drills and set(t.drills) <= set(KINDS)


def test_a_first_song_has_few_techniques():
    piece, fingering = song()
    found = find_techniques(piece, fingering, UKE, HAND)
    names = {f.technique.id for f in found}
    # G lies on the fourth string of a high-G ukulele, so A G F rings across three strings
    assert names == {"alternation", "thumb-finger", "dotted-rhythm", "campanella", "string-skip"}
    dotted = next(f for f in found if f.technique.id == "dotted-rhythm")
    assert str(dotted.words(piece)).startswith("dotted rhythm in bars 7, 15: ")


def test_an_unknown_technique_is_refused():
    with pytest.raises(BadInput, match="not in the catalogue"):
        technique("juggling")


# -- exercises --------------------------------------------------------------------------------


def two_bars():
    return build(
        bar(n("C4", 4)),
        bar(
            n("C4", 4, 0, right="p", voice=2),
            n("C5", 1, 0, string=1, left=3, right="m"),
            n("F4", 1, 1, string=2, left=1, right="i"),
            n("A4", 4, 2, right="m"),
            reach=30.0,
        ),
        tempo=100.0,
    )


def test_the_right_hand_alone_keeps_strings_fingers_and_rhythm_on_open_strings():
    piece, fingering = two_bars()
    made = exercise("right hand alone", piece, fingering, UKE, 1)
    hands = made.fingering.bars[0].notes
    assert [(h.string, h.fret, h.left, h.right, h.onset) for h in hands] == [
        (3, 0, 0, "p", 0),
        (1, 0, 0, "m", 0),
        (2, 0, 0, "i", 1),
        (1, 0, 0, "m", 2),
    ]
    assert [x.midi for x in made.piece.notes] == [60, 69, 64, 69]
    assert made.piece.bars[0].repeat_end and made.piece.tempo == 80.0


def test_the_left_hand_alone_is_the_grips_as_blocks():
    piece, fingering = two_bars()
    made = exercise("left hand alone", piece, fingering, UKE, 1)
    rows = [(h.onset, h.string, h.fret, h.left) for h in made.fingering.bars[0].notes]
    assert rows == [(0, 1, 3, 3), (1, 2, 1, 1)]
    assert "2 grips" in str(made.text)


def test_loop_and_slow_keep_the_bar_and_end_tied_notes_with_it():
    piece, fingering = two_bars()
    made = exercise("slow", piece, fingering, UKE, 1)
    assert [x.midi for x in made.piece.notes] == [60, 72, 65, 69]
    assert all(x.onset + x.duration <= 4 for x in made.piece.notes)
    assert made.piece.tempo == 50.0
    assert made.fingering.bars[0].index == 0 and len(made.piece.bars) == 1


def test_the_rhythm_alone_is_on_one_string():
    piece, fingering = two_bars()
    made = exercise("rhythm alone", piece, fingering, UKE, 1)
    assert [(x.onset, x.duration, x.midi) for x in made.piece.notes] == [
        (0, 1, 69),
        (1, 1, 69),
        (2, 2, 69),
    ]


def test_exercises_can_be_measured_and_searched_like_any_piece():
    piece, fingering = two_bars()
    for kind in KINDS:
        made = exercise(kind, piece, fingering, UKE, 1)
        find_techniques(made.piece, made.fingering, UKE, HAND)
        assert {x.id for x in made.piece.notes} == {h.id for h in made.fingering.bars[0].notes}


def test_a_technique_brings_its_exercises_and_leaves_out_what_the_bar_lacks():
    piece, fingering = two_bars()
    kinds = [e.kind for e in exercises_for(technique("shift"), piece, fingering, UKE, 1)]
    assert kinds == ["left hand alone", "slow", "loop"]
    kinds = [e.kind for e in exercises_for(technique("shift"), piece, fingering, UKE, 0)]
    assert kinds == ["slow", "loop"]  # only an open string: nothing for the left hand


@pytest.mark.parametrize(
    ("kind", "number", "says"),
    [
        ("dance", 0, "not known"),
        ("loop", 7, "no written bar 8"),
        ("left hand alone", 0, "gives nothing"),
    ],
)
def test_exercises_that_cannot_be_are_refused(kind, number, says):
    piece, fingering = two_bars()
    with pytest.raises(BadInput, match=says):
        exercise(kind, piece, fingering, UKE, number)
