"""Slurs that the left hand plays, told from those that only phrase.

The rule is common practice, no source. The studies are published guitar editions (see
tests/data/guitar-editions): their two-note slurs are played by the left hand.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.music import small_scores as make
from tests.music.outside import parsed
from workbench.music.model import Bar, Note, Piece, Pitch
from workbench.music.reading.score import read_score
from workbench.music.ringing.slurs import LEAP, slurred, slurs
from workbench.music.writing.score import musicxml_bytes

STUDIES = Path(__file__).parent.parent / "data" / "guitar-editions"
SPELT = (("C", 0), ("C", 1), ("D", 0), ("E", -1), ("E", 0), ("F", 0), ("F", 1), ("G", 0),
         ("A", -1), ("A", 0), ("B", -1), ("B", 0))  # fmt: skip


def outside_pairs(path):
    """Two-note slurs between unlike single pitches by music21: (bar, onset, MIDI) of both ends."""
    found = set()
    for part in parsed(path).parts:
        place = {}
        for index, measure in enumerate(part.getElementsByClass("Measure")):
            for element in measure.recurse().notes:
                onset = Fraction(element.getOffsetInHierarchy(measure)).limit_denominator(65535)
                place[id(element)] = (index, onset, max(p.midi for p in element.pitches))
        for slur in part.recurse().getElementsByClass("Slur"):
            found.add((place[id(slur.getFirst())], place[id(slur.getLast())]))
    return found


@pytest.mark.parametrize(
    "name",
    ["carcassi-op60-22", "carcassi-op60-25", pytest.param("air-varie", marks=pytest.mark.slow)],
)
def test_the_slurs_of_guitar_studies_are_played(name):
    piece = read_score(STUDIES / f"{name}.mxl", parts="all")
    at = {n.id: (piece.bar_of[n.id], n.onset, n.midi) for n in piece.notes}
    ours = {(at[before], at[note]) for note, before in slurred(piece).items()}
    assert len(ours) > 30 and ours == outside_pairs(STUDIES / f"{name}.mxl")


# -- small cases: one voice of eighths unless told otherwise -----------------------------------


def line(midis, voice=1, length=Fraction(1, 2), start=Fraction(0), **marks):
    """Notes in a row; ``marks`` gives fields by place, such as s0=dict(slur_start=True)."""
    out = []
    for place, midi in enumerate(midis):
        step, alter = SPELT[midi % 12]
        note = Note(
            f"v{voice}-{place}", start + place * length, length,
            Pitch(step, alter, midi // 12 - 1), voice,
        )  # fmt: skip
        out.append(replace(note, **marks.get(f"s{place}", {})))
    return out


BEGIN, END = {"slur_start": True}, {"slur_stop": True}


def under_slur(midis, voice=1, **more):
    last = len(midis) - 1
    marks = {"s0": BEGIN, f"s{last}": END}
    for place, fields in more.items():
        marks[place] = {**marks.get(place, {}), **fields}
    return line(midis, voice, **marks)


def piece_of(*notes, bars=None):
    rows = sorted(notes, key=lambda n: (n.onset, n.voice, not n.grace, -n.midi))
    return Piece(
        "Small",
        bars
        or (
            Bar(index=0, number="1", time_signature=(4, 4), length=Fraction(4), notes=tuple(rows)),
        ),
    )


def linked(*notes):
    return slurred(piece_of(*notes))


def test_two_three_and_four_notes_are_played_each_from_the_one_before():
    assert linked(*under_slur([64, 65])) == {"v1-1": "v1-0"}
    assert linked(*under_slur([64, 65, 67, 65])) == {
        "v1-1": "v1-0", "v1-2": "v1-1", "v1-3": "v1-2"
    }  # fmt: skip


@pytest.mark.parametrize(
    "midis",
    [
        [60, 62, 64, 65, 67],  # too many
        [64, 64],  # a repeated note: a tie, or a phrase
        [64, 65, 65, 67],
        [60, 69],  # a leap that no string gives
        [60, 64, 68],  # small steps, too wide in all
    ],
)
def test_phrases_are_plucked(midis):
    assert linked(*under_slur(midis)) == {}


def test_a_rest_or_portato_under_a_slur_is_a_phrase():
    late = [*line([64], s0=BEGIN), replace(line([0, 0, 65])[2], slur_stop=True)]
    assert linked(*late) == {}
    assert linked(*under_slur([64, 65], s1={"articulations": ("tenuto",)})) == {}
    assert linked(*under_slur([64, 65], s0={"articulations": ("accent",)})) != {}


def test_a_slur_on_both_voices_at_once_is_a_phrase_but_not_on_two_stems_of_one_sound():
    assert linked(*under_slur([64, 65]), *under_slur([48, 50], voice=2)) == {}
    both = linked(*under_slur([64, 65]), *under_slur([64, 65], voice=2))
    assert both == {"v1-1": "v1-0", "v2-1": "v2-0"}
    assert linked(*under_slur([64, 65]), *line([48, 50], voice=2)) == {"v1-1": "v1-0"}


def test_the_highest_note_of_a_chord_is_meant():
    chord = [replace(n, id=f"c{n.id}", slur_start=True) for n in line([57])]
    assert linked(*under_slur([64, 65]), *chord) == {"v1-1": "v1-0"}


def test_one_note_may_end_a_slur_and_begin_the_next():
    notes = line([64, 65, 67], s0=BEGIN, s1={**BEGIN, **END}, s2=END)
    assert linked(*notes) == {"v1-1": "v1-0", "v1-2": "v1-1"}
    assert [len(s.moments) for s in slurs(piece_of(*notes))] == [2, 2]


def test_slurs_within_a_long_one_are_played_and_the_long_one_is_not():
    notes = line([60, 62, 64, 65, 67, 69], s0=BEGIN, s1=BEGIN, s2=END, s5=END)
    assert linked(*notes) == {"v1-2": "v1-1"}


def test_grace_notes_are_slurred_to_their_note_without_a_mark():
    grace = replace(line([65])[0], id="g", grace=True, duration=Fraction(0))
    assert linked(grace, *line([64, 60])) == {"v1-0": "g"}
    far = replace(grace, pitch=Pitch("E", 0, 5))
    assert linked(far, *line([64, 60])) == {}
    chord = replace(line([57])[0], id="low")
    assert linked(grace, *line([64]), chord) == {"v1-0": "g"}


def test_a_slur_does_not_run_through_a_repeat_sign():
    notes = line([64, 65], s0=BEGIN, s1=END)
    first = replace(notes[0], onset=Fraction(7, 2))
    second = replace(notes[1], onset=Fraction(0))
    bars = [
        Bar(index=0, number="1", time_signature=(4, 4), length=Fraction(4), notes=(first,)),
        Bar(index=1, number="2", time_signature=(4, 4), length=Fraction(4), notes=(second,)),
    ]
    assert slurred(piece_of(bars=tuple(bars))) == {"v1-1": "v1-0"}
    bars[0] = replace(bars[0], repeat_end=True)
    assert slurred(piece_of(bars=tuple(bars))) == {}


@pytest.fixture
def read(tmp_path):
    def reader(text):
        path = tmp_path / "a.musicxml"
        path.write_text(text, encoding="utf-8")
        return read_score(path)

    return reader


def mark(kind, number=1):
    return f'<slur type="{kind}" number="{number}"/>'


def test_slurs_are_read_across_bar_lines_and_several_at_once(read):
    first = (
        make.note("C", 24, "half", notations=mark("start", 2))
        + make.note("D", 24, "half", notations=mark("start"))
    )  # fmt: skip
    second = (
        make.note("E", 24, "half", notations=mark("stop") + mark("start"))
        + make.note("F", 24, "half", notations=mark("stop") + mark("stop", 2))
    )  # fmt: skip
    piece = read(make.score(first, second))
    assert slurred(piece) == {"n2-1": "n1-2", "n2-2": "n2-1"}


def test_a_slur_that_begins_within_a_tie_begins_with_its_note(read):
    tied = make.note("C", 24, "half", before="", notations='<tied type="start"/>')
    tied = tied.replace("<voice>", '<tie type="start"/><voice>')
    on = make.note("C", 24, "half", notations='<tied type="stop"/>' + mark("start"))
    on = on.replace("<voice>", '<tie type="stop"/><voice>')
    after = make.note("D", 48, "whole", notations=mark("stop"))
    piece = read(make.score(tied + on, after))
    assert slurred(piece) == {"n2-1": "n1-1"}


@given(st.data())
def test_every_link_is_to_the_note_before_within_reach(data):
    midis = data.draw(st.lists(st.integers(55, 72), min_size=2, max_size=10))
    marks = data.draw(
        st.lists(st.sampled_from([{}, BEGIN, END, {**BEGIN, **END}]),
                 min_size=len(midis), max_size=len(midis))
    )  # fmt: skip
    notes = line(midis, **{f"s{i}": m for i, m in enumerate(marks)})
    before = {b.id: a for a, b in pairwise(notes)}
    by_id = {n.id: n for n in notes}
    for note, source in linked(*notes).items():
        assert before[note].id == source
        assert 0 < abs(by_id[note].midi - by_id[source].midi) <= LEAP


def test_a_slur_from_a_chord_is_written_once_and_closed(tmp_path):
    """Several slurs that begin at one chord and never end leave no number for the next."""
    notes = line([64, 65, 67, 69, 71, 72], s0=BEGIN, s1=END, s2=BEGIN, s3=END, s4=BEGIN, s5=END)
    low = [
        replace(n, id=f"c{n.id}", pitch=Pitch("C", 0, 4), slur_start=True)
        for n in notes
        if n.slur_start
    ]
    made = piece_of(*notes, *low)
    text = musicxml_bytes(made).decode()
    assert text.count('<slur type="start"') == text.count('<slur type="stop"') == 3
    path = tmp_path / "a.musicxml"
    path.write_text(text, encoding="utf-8")
    assert [[m.top.midi for m in s.moments] for s in slurs(read_score(path))] == [
        [64, 65], [67, 69], [71, 72]
    ]  # fmt: skip
