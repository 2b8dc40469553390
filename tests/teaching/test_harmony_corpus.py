"""Chords and keys against music21's own analysis of the scores in its package.

Reference: music21's ``chordify``, ``Chord.root`` and ``Chord.inversion``, and its
Krumhansl-Kessler key analysis. The agreement is reported as a property of the test
and held to a floor.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.whole import share, so_many

SAMPLE = ("bwv66.6", "bwv1.6", "bwv10.7", "bwv101.7", "bwv102.7", "bwv103.6")


def chorales(names=None):
    from music21 import corpus

    paths = [Path(str(path)) for path in corpus.getComposer("bach")]
    paths = [p for p in paths if p.name.endswith((".mxl", ".xml"))]
    return [p for p in paths if names is None or p.name.rsplit(".", 1)[0] in names]


def in_step(score):
    """Whether music21 begins every bar of all parts at one moment: what it hears at a moment is
    else not what sounds (BWV 171.6, where the trumpets rest through half a bar)."""
    starts = [[m.offset for m in part.getElementsByClass("Measure")] for part in score.parts]
    return all(row == starts[0] for row in starts)


def agreement(paths):
    """(roots the same, inversions the same, chords compared, roots the same on the beat,
    beats compared, keys the same, keys compared).

    A chord is compared where music21 has a plain triad or seventh for the whole span
    that we name; on the beat also where notes move within the span, so that passing
    notes count for either side; a key where both read the whole piece.
    """
    from music21 import converter

    from workbench.music.reading.score import read_score
    from workbench.teaching.bars.harmony import chords, key_heard, root_class, tonic

    roots = turns = every = beats = moving = keys = scores = 0
    for path in paths:
        score = converter.parse(path)
        if not in_step(score):
            continue
        piece = read_score(path, parts="all")
        theirs = score.analyze("key.krumhanslkessler")
        found = key_heard(piece.notes)
        scores += 1
        keys += found is not None and (tonic(found[0]), found[0].mode) == (
            theirs.tonic.pitchClass, theirs.mode,
        )  # fmt: skip
        sounding = [
            (float(c.offset), float(c.offset + c.quarterLength), c)
            for c in score.chordify().flatten().getElementsByClass("Chord")
        ]
        for heard in chords(piece):
            start = float(piece.starts[heard.bar] + heard.onset)
            end = start + float(heard.duration)
            there = [(b, c) for a, b, c in sounding if a <= start + 1e-6 < b]
            if there and (there[0][1].isTriad() or there[0][1].isSeventh()):
                moving += 1
                beats += root_class(heard.label) == there[0][1].root().pitchClass
            whole = [c for b, c in there if b >= end - 1e-6]
            if not whole or not (whole[0].isTriad() or whole[0].isSeventh()):
                continue
            every += 1
            roots += root_class(heard.label) == whole[0].root().pitchClass
            turns += heard.label.inversion == whole[0].inversion()
    return roots, turns, every, beats, moving, keys, scores


def report(record_property, found):
    roots, turns, every, beats, moving, keys, scores = found
    record_property("chord roots", f"{roots} of {every}")
    record_property("inversions", f"{turns} of {every}")
    record_property("roots on the beat", f"{beats} of {moving}")
    record_property("keys", f"{keys} of {scores}")
    print(
        f"roots {roots}/{every}, inversions {turns}/{every}, on the beat {beats}/{moving}, "
        f"keys {keys}/{scores}"
    )


def test_chords_and_keys_of_a_sample_agree(record_property):
    found = agreement(chorales(SAMPLE))
    report(record_property, found)
    roots, turns, every, beats, moving, keys, scores = found
    assert scores == len(SAMPLE) and every >= 80
    assert roots / every > 0.95
    assert turns / every > 0.95
    assert beats / moving > 0.7
    assert keys >= scores - 1


@pytest.mark.slow
def test_chords_and_keys_of_many_chorales_agree(record_property):
    found = agreement(share(chorales(), 5))
    report(record_property, found)
    roots, turns, every, beats, moving, keys, scores = found
    assert scores > so_many(300, 60) and every > so_many(5000, 900)
    assert roots / every > 0.95
    assert turns / every > 0.95
    assert beats / moving > 0.7
    assert keys / scores > 0.95
