"""The grade over real scores never falls when more is asked, the hands doing the same.

The scores are those in music21's package, read, arranged and fingered by our own code.
Where the piece is fingered anew for what is asked, the engine may find other, easier
ways; how often the score falls then is reported, not held to nothing.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.fingering.excerpts import taken
from tests.teaching.hand_made import faster, spelled
from workbench.fingering.engine import solve
from workbench.instrument.table import hand, instrument
from workbench.music.model import Key
from workbench.teaching.grading.features import piece_features
from workbench.teaching.grading.grade import score, shipped_model

GUITAR, HAND = instrument("guitar"), hand("medium")
#: Folder of the corpus and which of its parts are taken.
FOLDERS = (("ryansMammoth", None), ("essenFolksong", None), ("bach", "all"))
BARS = 4


def pieces(number):
    for folder, parts in FOLDERS:
        for name, piece in taken(folder, GUITAR, number, BARS, parts=parts):
            fingering = solve(piece, GUITAR, HAND)
            if not any(bar.impossible for bar in fingering.bars):
                yield name, piece, fingering


def total(piece, fingering):
    return score(piece_features(piece, fingering, GUITAR, HAND), shipped_model())


def moved(piece):
    """The piece a fifth on, into the key with one sharp or flat more."""
    by = -1 if piece.bars[0].key.fifths < 0 else 1

    def bar(old):
        notes = tuple(replace(n, pitch=spelled(n.midi + 7 * by)) for n in old.notes)
        return replace(old, key=Key(old.key.fifths + by, old.key.mode), notes=notes)

    return replace(piece, bars=tuple(bar(b) for b in piece.bars), key=bar(piece.bars[0]).key)


def without_lower_voices(piece, fingering):
    """The top voice alone, played by the same fingers; None where there is no other."""
    top = min((n.part, n.voice) for n in piece.notes)
    kept = {n.id for n in piece.notes if (n.part, n.voice) == top}
    if len(kept) == len(piece.notes):
        return None

    def only(bars):
        return tuple(replace(b, notes=tuple(n for n in b.notes if n.id in kept)) for b in bars)

    return replace(piece, bars=only(piece.bars)), replace(fingering, bars=only(fingering.bars))


def check(number, record_property):
    asked = {"tempo": [0, 0], "key": [0, 0], "voice": [0, 0]}
    anew = {"tempo": [0, 0], "voice": [0, 0]}

    def count(table, what, before, after):
        table[what][0] += 1
        table[what][1] += after < before - 1e-9

    for name, piece, fingering in pieces(number):
        now = total(piece, fingering)
        quick = faster(piece)
        assert total(quick, fingering) >= now - 1e-9, name
        count(asked, "tempo", now, total(quick, fingering))
        count(anew, "tempo", now, total(quick, solve(quick, GUITAR, HAND)))
        if abs(piece.bars[0].key.fifths) < 6 and len({b.key for b in piece.bars}) == 1:
            assert total(moved(piece), fingering) >= now - 1e-9, name
            count(asked, "key", now, total(moved(piece), fingering))
        alone = without_lower_voices(piece, fingering)
        if alone is not None:
            assert now >= total(*alone) - 1e-9, name
            count(asked, "voice", total(*alone), now)
            count(anew, "voice", total(alone[0], solve(alone[0], GUITAR, HAND)), now)
    for what, (tried, fell) in anew.items():
        record_property(f"{what}, fingered anew", f"{fell} of {tried} fall")
        print(f"{what}, fingered anew: {fell} of {tried} fall")
    return {what: tried for what, (tried, _) in asked.items()}


def test_more_asked_of_a_sample_never_lowers_the_score(record_property):
    tried = check(2, record_property)
    assert min(tried.values()) >= 1


@pytest.mark.slow
def test_more_asked_of_the_corpus_never_lowers_the_score(record_property):
    tried = check(12, record_property)
    assert tried["tempo"] >= 20 and tried["key"] >= 15 and tried["voice"] >= 5
