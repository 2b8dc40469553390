"""Real scores: music21's corpus read, played in order, written and read back.

The outside word is music21's own parse and its own repeat expander.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest
from music21 import corpus

from tests.music.outside import (
    corpus_files,
    expanded,
    has_repeats,
    implied_starts,
    ours_struck,
    parsed,
    struck,
)
from tests.music.small_scores import sounded
from tests.whole import share
from workbench.music.errors import BadInput
from workbench.music.order.form import playing_order
from workbench.music.reading.score import read_score
from workbench.music.writing.score import write_musicxml

# Why our order may differ from the expander's, each proved by taking the cause away
AGREES = "same order"
START = "a repeat without a start: the expander goes back to the very beginning"
LEFT = "an end of a repeat that the ABC parser puts on the left of its bar"
JUMP = "a jump in words that the expander does not know"
ENDINGS = "first endings that the expander plays each time"
SILENT = "the expander gives up"

# a fixed sample: chorales with split bars, a keyboard part, a quartet, songs, fiddle
# tunes, a score without bar lines
SAMPLE = {
    "bach/bwv66.6": None,
    "bach/bwv389": AGREES,
    "bach/bwv245.26": AGREES,
    "schoenberg/opus19/movement2": None,
    "schumann_robert/opus48no2": None,
    "mozart/k80/movement4": JUMP,
    "ryansMammoth/LafricansJig": LEFT,
    "ryansMammoth/DevilsDreamReel": START,
    "ryansMammoth/CrabsInTheSkilletJig": START,
    "ryansMammoth/MoneyMuskReel": AGREES,
    "ryansMammoth/LoveLinksJig": AGREES,
    "ryansMammoth/NewLineReel": SILENT,
    "ryansMammoth/CosmopoliteReelThe": AGREES,
    "josquin/fortunaDunGranTempo": None,
}


def compared(piece, part):
    """Which of the reasons holds; None where none explains the difference."""
    ours, theirs = playing_order(piece), expanded(part)
    if theirs == ours:
        return AGREES
    signed = expanded(part, starts=implied_starts(piece))
    if signed is not None and signed == ours:
        return START
    if expanded(part, starts=implied_starts(piece), ends_right=True) == ours:
        return LEFT
    if theirs is not None and first_endings_once(piece, theirs) == ours:
        return ENDINGS
    plain = tuple(replace(b, jump="") for b in piece.bars)
    if any(b.jump for b in piece.bars):
        without = playing_order(replace(piece, bars=plain))
        if without in (theirs, signed):
            return JUMP
    if theirs is None:
        return SILENT
    return None


def first_endings_once(piece, order):
    """An order in which first endings are left out when they come again."""
    first = {b.index for b in piece.bars if 1 in b.endings}
    kept = []
    for bar in order:
        if bar not in first or bar not in kept:
            kept.append(bar)
    return tuple(kept)


def checked(path, folder):
    """Read, compare and write one file; the reason for its playing order or None.

    Gives (read, reason): ``read`` is False where the file is refused.
    """
    try:
        piece = read_score(path, parts="all")
    except BadInput as error:
        assert str(error).endswith(".")
        return False, None
    outside = parsed(path)
    new, ends = struck(outside)
    ours = ours_struck(piece)
    # nothing is missing; what is more are ends of ties whose beginning is missing
    assert new - ours == Counter()
    assert (ours - new) - ends == Counter()
    target = folder / "again.musicxml"
    write_musicxml(piece, target)
    again = read_score(target, parts="all")
    assert sounded(again) == sounded(piece)
    assert [b.length for b in again.bars] == [b.length for b in piece.bars]
    assert playing_order(again) == playing_order(piece)
    written, _ = struck(parsed(target))
    assert written == ours
    if not outside.parts or not has_repeats(outside.parts[0]):
        return True, None
    reason = compared(piece, outside.parts[0])
    assert reason is not None, "the order differs from the expander's for no known reason"
    return True, reason


@pytest.mark.parametrize("name", SAMPLE)
def test_sample(name, tmp_path):
    assert checked(corpus.getWork(name), tmp_path) == (True, SAMPLE[name])


@pytest.mark.slow
def test_the_whole_corpus(tmp_path, record_property):
    """Scores of the corpus in every format that is read."""
    failed, reasons, refused = [], Counter(), []
    for path in share(corpus_files(), 12):
        try:
            read, reason = checked(path, tmp_path)
        except Exception as error:
            failed.append(f"{path.name}: {type(error).__name__} {str(error)[:80]}")
            continue
        if not read:
            refused.append(path.name)
        elif reason:
            reasons[reason] += 1
    record_property("playing order", dict(reasons))
    record_property("refused", refused)
    assert failed == []
    # percussion, or no notes at all
    assert len(refused) <= 5, refused
    assert reasons[AGREES] > 0.8 * reasons.total(), reasons
