"""Lessons of our own making for the tests of the store."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import strategies as st

from workbench.fingering.types import (
    LEVELS,
    Audit,
    Barre,
    FingeredBar,
    FingeredNote,
    Fingering,
    JoinCut,
    Pin,
    Settings,
)
from workbench.language.fact import Fact, fact
from workbench.music.model import Bar, ChordName, Key, Note, PartInfo, Piece, Pitch
from workbench.teaching.lessons.lesson import NOTE_KINDS, BarNote, Lesson

SCALE = "CDEFGAB"


def piece(title="Boat Song", bars=4, composer="Ida Brandt", shift=0) -> Piece:
    """A pickup bar, then quavers up and down the scale, with a repeat."""
    made = [
        Bar(
            index=0, number="0", time_signature=(3, 4), length=Fraction(1), pickup=True,
            key=Key(-1),
            notes=(Note("n0", Fraction(0), Fraction(1), Pitch("C", 0, 5)),),
        )
    ]  # fmt: skip
    for index in range(1, bars + 1):
        notes = tuple(
            Note(
                f"n{index}-{i}", Fraction(i, 2), Fraction(1, 2),
                Pitch(SCALE[(index + i + shift) % 7], 0, 4), voice=1 + i % 2,
            )
            for i in range(6)
        )  # fmt: skip
        made.append(
            Bar(
                index=index, number=str(index), time_signature=(3, 4), length=Fraction(3),
                notes=notes, key=Key(-1), repeat_start=index == 1, repeat_end=index == bars,
                section="A" if index == 1 else "",
                chords=(ChordName(Fraction(0), "F"),),
            )
        )  # fmt: skip
    return Piece(title, tuple(made), composer, key=Key(-1), tempo=84.0)


def lesson(lesson_id="lesson-1", **changes) -> Lesson:
    """A lesson on that piece with something in most fields."""
    given = {
        "title": "Boat Song for Mondays",
        "piece": piece(),
        "instrument": "ukulele",
        "student": "Mara",
        "key": "F major",
        "settings": Settings(level="beginner", weights=(("shift", 1200),)),
        "pins": (Pin("n1-0", string=2, fret=1, left=1), Pin("n1-1", right="p")),
        "notes": (
            BarNote(
                "b1", "left hand", "Keep the *first* finger down as a guide.", 1, 2, note="n1-0",
                rejected=(("n1-0", 3, 5, 4),), grip=(2, 0, None, 0),
            ),
        ),
        "techniques": ("pickup", "guide finger"),
        "grade": 2,
        "grade_level": "middle",
    }  # fmt: skip
    return Lesson(lesson_id, **{**given, **changes})


def fingering(cost=1234) -> Fingering:
    """A fingering of one bar, every field in use."""
    note = FingeredNote(
        "n1-0", 1, Fraction(1, 3), Fraction(1), 69,
        string=1, fret=0, left=0, right="i", held=Fraction(2, 3),
        cut_reason=fact("hop", finger=2, string=4, to=3, fret=2, note="Bb4"),
        cut_kind="hop", move="open", stroke="rest", pinned=True,
    )  # fmt: skip
    lost = FingeredNote(
        "n1-1", 1, Fraction(1), Fraction(1), 30, held=Fraction(0),
        impossible=fact("out of range", note="E1", where="below", instrument="ukulele"),
    )  # fmt: skip
    bar = FingeredBar(
        1, "1", (note, lost), (Barre(Fraction(0), 2, (1, 2)),), 77, 41.5,
        ((Fraction(1, 2), 1, 2, 1),), (fact("unlike", bar="1", worse="hop"),),
        fact("several", why=(fact("pins in the way", pinned=("B3", "D4"), note="F4"),)),
    )  # fmt: skip
    audit = Audit(2, 1, 0.75, (JoinCut("n1-0", 4, 1, fact("hand shifts", fret=2, note="A4")),))
    return Fingering(cost, False, (bar,), audit, bound=1200, terms={"shift": 34, "stretch": 1})


#: Any text at all, halves of surrogate pairs and NUL included.
any_text = st.text(st.characters(exclude_categories=()), max_size=12)
_quarters = st.fractions(min_value=0, max_value=16, max_denominator=480)
_pitches = st.builds(Pitch, st.sampled_from(SCALE), st.integers(-2, 2), st.integers(-1, 9))
_notes = st.builds(
    Note, any_text, _quarters, _quarters, _pitches, st.integers(1, 4), st.integers(1, 3),
    st.booleans(), st.none() | st.tuples(st.integers(1, 9), st.integers(1, 9)),
    articulations=st.lists(any_text, max_size=2).map(tuple),
)  # fmt: skip
_bars = st.builds(
    Bar, index=st.integers(0, 99), number=any_text,
    time_signature=st.tuples(st.integers(1, 12), st.sampled_from([2, 4, 8])),
    length=_quarters, notes=st.lists(_notes, max_size=3).map(tuple),
    key=st.builds(Key, st.integers(-7, 7), st.sampled_from(["major", "minor"])),
    tempo=st.none() | st.floats(1, 400), endings=st.lists(st.integers(1, 4), max_size=2).map(tuple),
    chords=st.lists(st.builds(ChordName, _quarters, any_text), max_size=2).map(tuple),
)  # fmt: skip
_facts = st.recursive(
    st.builds(Fact.from_text, any_text),
    lambda inner: st.builds(
        Fact, any_text, st.lists(
            st.tuples(any_text, st.integers(-9, 9) | st.floats(-9, 9) | any_text
                      | st.lists(any_text, max_size=2).map(tuple)
                      | st.lists(inner, max_size=2).map(tuple)), max_size=2,
        ).map(tuple),
    ), max_leaves=3,
)  # fmt: skip
any_piece = st.builds(
    Piece, any_text, st.lists(_bars, max_size=3).map(tuple), any_text, any_text,
    tempo=st.floats(1, 400), parts=st.lists(
        st.builds(PartInfo, st.integers(1, 9), any_text, st.integers(0, 999)), max_size=2
    ).map(tuple),
    warnings=st.lists(_facts, max_size=2).map(tuple),
)  # fmt: skip
_maybe = st.none() | st.integers(0, 4)
any_lesson = st.builds(
    Lesson, st.just("any"), any_text, any_piece, any_text, st.integers(0, 7), any_text, any_text,
    any_text, st.integers(-24, 24),
    st.just(Settings()) | st.builds(Settings, level=st.sampled_from(sorted(LEVELS))),
    pins=st.lists(
        st.builds(Pin, any_text, string=_maybe, fret=_maybe, left=_maybe), max_size=2
    ).map(tuple),
    notes=st.lists(
        st.builds(
            BarNote, any_text, st.sampled_from(NOTE_KINDS), any_text,
            st.integers(0, 9), st.integers(0, 9),
            grip=st.none() | st.lists(_maybe, max_size=4).map(tuple),
        ),
        max_size=2,
    ).map(tuple),
    grade=st.none() | st.integers(0, 8),
    changes=st.lists(_facts, max_size=2).map(tuple),
    techniques=st.lists(any_text, max_size=3).map(tuple),
    script_edits=st.lists(st.tuples(st.integers(0, 99), any_text), max_size=2).map(tuple),
)  # fmt: skip
