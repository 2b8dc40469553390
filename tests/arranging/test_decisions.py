"""The teacher's word on single notes: held by the search, which stays exact around it."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from tests.arranging.cp_arranging import least_cost
from tests.arranging.make import piece, pieces
from workbench.arranging.arrange import arrange
from workbench.arranging.decisions import Decision, decisions, rows
from workbench.arranging.options import Options
from workbench.arranging.search import EXACT, Search
from workbench.arranging.sounds import texture
from workbench.arranging.weights import Wishes
from workbench.instrument.table import hand, instrument
from workbench.music.errors import BadInput
from workbench.teaching.lessons.arrangement import (
    ACCEPT,
    DOWN,
    FREED,
    OUT,
    RESTORE,
    UP,
    VOICE,
    broken,
    decided,
    fates,
    laid_anew,
)  # fmt: skip
from workbench.teaching.lessons.lesson import Lesson

MEDIUM = hand("medium")
UKULELE, LOW_G = instrument("ukulele"), instrument("ukulele-low-g")
FREE = Decision()

words = st.one_of(
    st.builds(Decision, gone=st.just(True)),
    st.builds(Decision, octaves=st.integers(-1, 1)),
    st.builds(Decision, whole=st.just(True)),
    st.builds(Decision, octaves=st.integers(-1, 1), accepted=st.just(True)),
)


@given(st.dictionaries(st.sampled_from(["n1", "n2", "x"]), words | st.builds(
    Decision, voice=st.integers(1, 4)), max_size=3))  # fmt: skip
def test_a_lesson_keeps_decisions_as_they_are(made):
    assert decisions(rows(made)) == {n: d for n, d in made.items() if d != FREE}


@pytest.mark.parametrize("word", ["", "up", "9", "voice", "voice 0", "+-1"])
def test_a_word_that_says_nothing_is_refused_in_one_sentence(word):
    with pytest.raises(BadInput, match="voice 2"):
        decisions([("n1", word)])


@settings(max_examples=15, deadline=None, suppress_health_check=list(HealthCheck))
@given(pieces(lowest=50, highest=79, voices=3), st.data())
def test_what_is_decided_holds_or_is_told_to_be_impossible(made, data):
    """Notes alone at their moment can always be kept: any that are broken share a moment
    with another decision, or lie where the instrument has nothing."""
    ids = [n.id for n in made.notes]
    assume(ids)
    chosen = data.draw(st.dictionaries(st.sampled_from(ids), words, min_size=1, max_size=3))
    placed = arrange(made, LOW_G, transpose=0, wanted=chosen, hand=MEDIUM)
    lost = broken(made, placed, chosen)
    was = {n.id: (bar.index, n) for bar in made.bars for n in bar.notes}
    for name in lost:
        bar, note = was[name]
        one = chosen[name]
        midi = note.midi + placed.transposition + 12 * (one.octaves or 0)
        there = any(fret <= 12 for _, fret in LOW_G.places(midi))
        near = [n for n in chosen if n != name and was[n][0] in (bar - 1, bar, bar + 1)]
        assert near or one.whole or (one.octaves is not None and not there), (name, one)


@settings(max_examples=5, deadline=None, suppress_health_check=list(HealthCheck))
@given(pieces(lowest=57, highest=76, voices=2), st.data())
def test_around_decisions_the_search_is_exact(made, data):
    """Against OR-Tools CP-SAT under the same decisions."""
    sounds = texture(made)
    assume(sounds.sounds and len(sounds.sounds) <= 7 and all(len(s) <= 3 for s in sounds.struck))
    ids = [n.id for s in sounds.sounds for n in s.notes[:1]]
    chosen = data.draw(st.dictionaries(st.sampled_from(ids), words, min_size=1, max_size=2))
    options = Options(UKULELE, MEDIUM, Wishes(5))
    search = Search(sounds, options, chosen)
    assume(all(choice == [0] for choice in search.phrase_choices(0)))
    got = search.lay(0, EXACT)
    assert got is not None and got.proved
    assert got.cost == least_cost(sounds, options, 0, chosen)


def lesson_of(made, wood=LOW_G):
    placed = arrange(made, wood, transpose=0, hand=MEDIUM)
    return Lesson("l", "t", placed.piece, wood.id, transposition=placed.transposition,
                  arranged=placed.changes)  # fmt: skip


def after(lesson, source, note, act, voice=None):
    """The lesson once an act is carried out."""
    wanted = decided(lesson, source, (note,), act, voice)
    placed = laid_anew(lesson, source, wanted)
    return replace(lesson, piece=placed.piece, wanted=rows(wanted), arranged=placed.changes)


PAGE = piece("E5 G5 E5 C5 | F5 A5 F5 D5", "- G4+C5 - E4 | - A4+C5 - F4", "C3:4 | D3:4")


def test_every_act_and_back():
    """A bass that went up is left out, restored, laid lower, given to the tune's voice, freed."""
    start = lesson_of(PAGE)
    bass = next(n.id for n in PAGE.notes if n.voice == 3)
    assert fates(start, PAGE)[bass].octaves == 1
    out = after(start, PAGE, bass, OUT)
    assert fates(out, PAGE)[bass].now is None
    assert next(c for c in out.arranged if c.note == bass).why == "wish"
    back = after(out, PAGE, bass, RESTORE)
    assert fates(back, PAGE)[bass].octaves == 1  # the nearest that the instrument has
    with pytest.raises(BadInput, match="octave"):
        decided(back, PAGE, (bass,), DOWN)
    up = after(back, PAGE, bass, UP)
    assert fates(up, PAGE)[bass].octaves == 2
    moved = after(up, PAGE, bass, VOICE, 1)
    assert next(n for n in moved.piece.notes if n.id == bass).voice == 1
    free = after(moved, PAGE, bass, FREED)
    assert free.piece == start.piece and free.wanted == ()


def test_accepting_pins_what_was_done_and_keeps_its_reason():
    start = lesson_of(PAGE)
    first = next(c for c in start.arranged if c.note)
    seen = after(start, PAGE, first.note, ACCEPT)
    assert seen.piece == start.piece
    assert next(c for c in seen.arranged if c.note == first.note) == first
    assert decisions(seen.wanted)[first.note].accepted


def test_what_no_hand_can_hold_is_refused_and_named():
    chord = piece("E5:4", "C5:4", "A4:4", "F4:4", "D4:4")
    lesson = lesson_of(chord)
    wanted = {n.id: Decision(octaves=0) for n in chord.notes}
    with pytest.raises(BadInput, match="Bar 1"):
        laid_anew(lesson, chord, wanted)
