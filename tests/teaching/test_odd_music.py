"""Music that is empty, unplayable or unusual goes through everything without a fault."""

from dataclasses import replace
from fractions import Fraction as F

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.teaching.hand_made import HAND, UKE, B, bar, build, n
from workbench.teaching.assess import assess_and_plan, grade_document
from workbench.teaching.bars.form_words import chord_rows, form_and_harmony
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.planning.plan import make_plan
from workbench.teaching.scripts.files import chapters, markdown, srt, webvtt
from workbench.teaching.scripts.script import make_script
from workbench.teaching.techniques.catalogue import find_techniques
from workbench.teaching.techniques.exercises import KINDS, exercises_for
from workbench.teaching.techniques.news import moves_of


def through_everything(piece, fingering):
    document = grade_document(*assess_and_plan(piece, fingering, UKE, HAND))
    assert 0 <= document["grade"] <= 8 and document["days"] >= 1
    found = find_techniques(piece, fingering, UKE, HAND)
    ids = {x.id for x in piece.notes}
    for f in found:
        for o in f.occurrences:
            assert set(o.notes) <= ids and 0 <= o.bar < len(piece.bars)
        for e in exercises_for(f.technique, piece, fingering, UKE, f.bars[0]):
            assert e.kind in KINDS and e.piece.notes
    moves_of(piece, fingering, UKE, HAND, found)
    assert make_plan(piece, fingering, UKE, HAND, minutes_a_day=15).days
    script = make_script(Lesson("x", piece.title, piece, "ukulele"), fingering, UKE, HAND)
    for write in (markdown, srt, webvtt, chapters):
        assert write(script)
    assert form_and_harmony(piece)
    chord_rows(piece, fingering, 4)


def test_rests_grace_notes_and_unplayable_notes():
    piece, fingering = build(
        bar(),
        bar(n("C4", 0, 0, grace=True), n("D4", 1, 0), n("E4", 1, 2)),
        bar(n("F4", 8, 0), length=4),
        bar(n("A4", F(1, 3), tuplet=(3, 2)), n("A4", F(1, 12), 2)),
    )
    lost = tuple(
        replace(
            b,
            notes=tuple(
                replace(
                    h,
                    string=None,
                    fret=None,
                    left=None,
                    right=None,
                    held=F(0),
                    impossible="below the lowest string",
                )
                for h in b.notes
            ),
        )
        if b.index == 2
        else b
        for b in fingering.bars
    )
    through_everything(piece, fingering)
    through_everything(piece, replace(fingering, bars=lost))


@pytest.mark.parametrize("time", [(1, 8), (5, 8), (12, 16), (3, 2), (7, 4)])
def test_unusual_metres(time):
    length = F(4 * time[0], time[1])
    piece, fingering = build(
        bar(n("C4", length / 2), n("A4", length / 2)), bar(n("E4", length)), time=time
    )
    through_everything(piece, fingering)


notes = st.builds(
    lambda m, d, o, f, mv, cut, v: n(
        m, d, o, right=f, move=mv, cut=cut, voice=v, held=d / 2 if cut else None
    ),
    st.integers(60, 80),
    st.sampled_from([F(1, 4), F(1, 3), F(1, 2), F(1), F(3, 2), F(5)]),
    st.sampled_from([F(0), F(1, 2), F(1), F(5, 3), F(2), F(7, 2)]),
    st.sampled_from("pima"),
    st.sampled_from(["", "place", "guide", "planted", "hop", "shift"]),
    st.sampled_from(["", "", "hop", "string"]),
    st.integers(1, 3),
)


@given(st.lists(st.lists(notes, max_size=5), min_size=1, max_size=4))
@settings(max_examples=40, deadline=None)
def test_any_music_with_notes_goes_through(rows):
    piece, fingering = build(*(B(tuple(r)) for r in rows), bar(n("C4", 4)))
    through_everything(piece, fingering)
