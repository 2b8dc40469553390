"""How long a fingered piece of 64 bars takes to be looked at: measures, features, grade and
practice plan, techniques, form, keys and chords, and the script.

The yardstick is music21 in the same run on the same music: its key analysis by profiles and
its reduction to chords (``Stream.analyze("key")``, ``Stream.chordify``), a small part of
what is asked of ours. Every round has a piece and a fingering of its own, so that nothing
found before can be used again.
"""

from __future__ import annotations

import statistics
import time
from dataclasses import replace

import music21
import pytest

from tests.fingering.excerpts import two_voices
from workbench.fingering.engine import solve
from workbench.instrument.table import hand, instrument
from workbench.teaching.assess import assess_and_plan
from workbench.teaching.bars.form_words import chord_rows, form_and_harmony
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.scripts.script import make_script
from workbench.teaching.techniques.catalogue import find_techniques

UKULELE, HAND = instrument("ukulele"), hand("medium")
BARS = 64
ROUNDS = 9


@pytest.fixture(scope="module")
def fingered():
    piece = two_voices(BARS)  # hardly any bar is like another: nothing is met twice
    return piece, solve(piece, UKULELE, HAND)


def fresh(fingered):
    return tuple(replace(value) for value in fingered)


def looked_at(piece, fingering):
    """All that the window shows of a piece once it is fingered."""
    given = (piece, fingering, UKULELE, HAND)
    judged, plan = assess_and_plan(*given)
    script = make_script(Lesson("one", "Tune", piece, UKULELE.id), fingering, UKULELE, HAND)
    return (
        judged, plan, find_techniques(*given), form_and_harmony(piece),
        chord_rows(piece, fingering, UKULELE.strings), script,
    )  # fmt: skip


def score_of(piece):
    """The same notes as a score of music21, a part for each voice."""
    score = music21.stream.Score()
    for voice in sorted({n.voice for n in piece.notes}):
        part = music21.stream.Part()
        for bar in piece.bars:
            measure = music21.stream.Measure(number=bar.index + 1)
            if bar.index == 0:
                measure.append(music21.meter.TimeSignature("4/4"))
            for n in (n for n in bar.notes if n.voice == voice):
                note = music21.note.Note(n.midi, quarterLength=n.duration)
                measure.insert(n.onset, note)
            part.append(measure)
        score.insert(0, part)
    return score


def by_music21(score):
    return score.analyze("key"), score.chordify()


def seconds(work, *given):
    """Of the processor: neighbours on a busy machine do not count."""
    begun = time.process_time()
    work(*given)
    return time.process_time() - begun


def test_a_fingered_piece_is_soon_looked_at(benchmark, fingered):
    looked_at(*fresh(fingered))  # catalogue and tables are read once
    taken = [  # in turn, for the machine may change its pace
        (seconds(looked_at, *fresh(fingered)), seconds(by_music21, score_of(fingered[0])))
        for _ in range(ROUNDS)
    ]
    ours, theirs = zip(*taken, strict=True)
    judged, plan, found, said, rows, script = benchmark.pedantic(
        looked_at, setup=lambda: (fresh(fingered), {}), rounds=1
    )
    assert judged.features and plan.days and found and said and rows and script.cues
    mine, other = statistics.median(ours), statistics.median(theirs)
    benchmark.extra_info.update(ours_s=mine, music21_s=other, ratio=other / mine)
    print(
        f"\n{BARS} bars looked at in {mine * 1000:.0f} ms (median; best {min(ours) * 1000:.0f}); "
        f"music21's key and chords {other / mine:.1f} times as long"
    )
    assert other / mine > 1.5


def test_a_second_look_costs_little(benchmark, fingered):
    """What several views ask of one piece is found once."""
    given = (*fresh(fingered), UKULELE, HAND)
    first = min(seconds(find_techniques, *fresh(fingered), UKULELE, HAND) for _ in range(3))
    find_techniques(*given)
    again = benchmark.pedantic(find_techniques, args=given, rounds=5)
    assert again is find_techniques(*given)
    assert min(seconds(find_techniques, *given) for _ in range(5)) < first / 10
