"""Grade, techniques, plan and script of music that the program fingers itself."""

from dataclasses import replace
from fractions import Fraction as F

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.teaching.hand_made import HAND, UKE, B, Event, bar, build, faster, n, song, spelled
from workbench.fingering.engine import solve
from workbench.music.model import Key
from workbench.teaching.assess import assess_and_plan, grade_document
from workbench.teaching.grading.grade import grade_piece
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.scripts.script import make_script
from workbench.teaching.techniques.catalogue import find_techniques
from workbench.teaching.techniques.exercises import KINDS, exercise


def graded(piece):
    return grade_piece(piece, solve(piece, UKE, HAND), UKE, HAND).number


def moved(piece, semitones, fifths):
    """The piece so many semitones higher, in the key with those sharps or flats."""
    return replace(
        piece,
        key=Key(fifths),
        bars=tuple(
            replace(
                b,
                key=Key(fifths),
                notes=tuple(replace(x, pitch=spelled(x.midi + semitones)) for x in b.notes),
            )
            for b in piece.bars
        ),
    )


def test_a_first_song_fingered_by_the_program_is_grade_one_and_takes_one_to_two_weeks():
    piece, _ = song()
    fingering = solve(piece, UKE, HAND)
    for minutes in (20, 30):
        document = grade_document(
            *assess_and_plan(piece, fingering, UKE, HAND, minutes_a_day=minutes, student=1)
        )
        assert document["grade"] == 1
        assert 7 <= document["days"] <= 14  # common practice, no source


def test_the_engine_names_the_moves_that_the_rules_look_for():
    # C# lies on fret 1 only, G#5 on frets 11 and 13 only: the hand has to travel
    piece, _ = build(
        bar(n("C#4", 2, 0), n("F4", 2, 2), n("A#4", 2, 2)),
        bar(n("C#4", 1, 0), n("G#5", 3, 1)),
        bar(n("G#5", 2, 0), n("C#4", 2, 2)),
    )
    fingering = solve(piece, UKE, HAND)
    names = {f.technique.id for f in find_techniques(piece, fingering, UKE, HAND)}
    assert {"shift", "high-position"} <= names
    assert names & {"thumb-finger", "fingers-together"}


def test_exercises_and_script_from_the_engines_fingering():
    piece, _ = song()
    fingering = solve(piece, UKE, HAND)
    script = make_script(Lesson("x", piece.title, piece, "ukulele"), fingering, UKE, HAND)
    assert [c.bar for c in script.cues] == list(range(16))
    assert str(script.cues[4].say) == "Bars 5 to 6 are as bars 1 to 2."
    for kind in KINDS:
        made = exercise(kind, piece, fingering, UKE, 6)
        again = solve(made.piece, UKE, HAND)  # an exercise is playable music of its own
        assert all(h.string is not None for h in again.bars[0].notes)


WHITE = [60, 62, 64, 65, 67, 69, 71, 72]
notes = st.builds(lambda m, d: n(m, d), st.sampled_from(WHITE), st.sampled_from([F(1, 2), F(1)]))
tunes = st.lists(st.lists(notes, min_size=2, max_size=4), min_size=2, max_size=4)


@given(tunes, st.sampled_from([(1, -5), (2, 2), (3, -3), (4, 4)]))
@settings(max_examples=12, deadline=None, derandomize=True)
def test_fingered_again_more_accidentals_never_lower_the_grade(tune, to):
    piece, _ = build(*(B(tuple(row)) for row in tune))
    assert graded(moved(piece, *to)) >= graded(piece)


@given(tunes, st.lists(st.sampled_from([60, 62, 64]), min_size=4, max_size=4))
@settings(max_examples=12, deadline=None, derandomize=True)
def test_fingered_again_another_voice_never_lowers_the_grade(tune, bass):
    piece, _ = build(*(B(tuple(row)) for row in tune))
    rows = [
        B((*row, Event(low, F(2), F(0), voice=2))) for row, low in zip(tune, bass, strict=False)
    ]
    assert graded(build(*rows)[0]) >= graded(piece)


@given(tunes)
@settings(max_examples=12, deadline=None, derandomize=True)
def test_fingered_again_twice_the_tempo_never_lowers_the_grade(tune):
    piece, _ = build(*(B(tuple(row)) for row in tune))
    assert graded(faster(piece)) >= graded(piece)
