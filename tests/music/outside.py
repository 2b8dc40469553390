"""music21's own view of a score, to hold our reading and our form against."""

from __future__ import annotations

import copy
from collections import Counter
from fractions import Fraction

from music21 import bar, converter, corpus, repeat

READABLE = (".mxl", ".xml", ".musicxml", ".abc")


def corpus_files():
    """Every corpus score in a format that is read, in a fixed order."""
    return sorted(p for p in corpus.getCorePaths() if p.suffix in READABLE)


def parsed(path):
    """music21's parse of the file; of a book the first tune."""
    score = converter.parse(path, forceSource=True)
    return next(iter(score.scores)) if "Opus" in score.classes else score


def struck(score):
    """(notes struck, ends of ties) as Counters of (bar index, onset, MIDI number)."""
    new, ends = Counter(), Counter()
    for part in score.parts:
        shift = next(
            (
                i.transposition
                for i in part.recurse().getElementsByClass("Instrument")
                if i.transposition is not None
            ),
            None,
        )
        measures = part.getElementsByClass("Measure")
        for index, measure in enumerate(
            measures or part.makeMeasures().getElementsByClass("Measure")
        ):
            for element in measure.recurse().notes:
                if {"ChordSymbol", "Unpitched", "PercussionChord"} & set(element.classes):
                    continue
                if element.duration.isGrace:
                    continue
                onset = Fraction(element.getOffsetInHierarchy(measure)).limit_denominator(65_535)
                for member in element.notes if "Chord" in element.classes else [element]:
                    pitch = member.pitch if shift is None else member.pitch.transpose(shift)
                    tie = member.tie
                    first = tie is None or tie.type == "start"
                    (new if first else ends)[(index, onset, round(pitch.ps))] += 1
    return new, ends


def ours_struck(piece):
    """The same of a Piece."""
    return Counter(
        (bar.index, n.onset, n.midi) for bar in piece.bars for n in bar.notes if not n.grace
    )


def has_repeats(part):
    return any({"Repeat", "RepeatExpression"} & set(e.classes) for e in part.recurse())


def expanded(part, *, starts=(), ends_right=False):
    """Written bar indices in music21's expansion of a part.

    Each bar bears its index as a group name, for music21's own map goes by
    bar numbers, which need not be unique. ``starts`` are bars to which a
    forward repeat is added first; ``ends_right`` sets repeat ends that the ABC
    parser left on the left of their bar on its right. None where music21
    cannot expand.
    """
    part = copy.deepcopy(part)
    for index, measure in enumerate(part.getElementsByClass("Measure")):
        measure.groups.append(f"written-{index}")
        line = measure.leftBarline
        if ends_right and line is not None and getattr(line, "direction", "") == "end":
            measure.leftBarline = None
            measure.rightBarline = bar.Repeat(direction="end")
        if index in starts:
            measure.leftBarline = bar.Repeat(direction="start")
    if starts:
        _drop_idle_starts(part)
    try:
        played = repeat.Expander(part).process()
    except Exception:
        return None
    return tuple(
        int(next(g for g in m.groups if g.startswith("written-")).removeprefix("written-"))
        for m in played.getElementsByClass("Measure")
    )


def _drop_idle_starts(part):
    """Take away starts that meet another start before any end: they do nothing,
    but music21 counts starts against ends and refuses a surplus."""
    waiting = None
    for measure in part.getElementsByClass("Measure"):
        left, right = measure.leftBarline, measure.rightBarline
        if getattr(left, "direction", "") == "start":
            if waiting is not None:
                waiting.leftBarline = None
            waiting = measure
        if getattr(right, "direction", "") == "end":
            waiting = None


def implied_starts(piece):
    """Bars where common practice sees the start of a repeat that bears no sign:
    after the repeat before it. (music21 goes back to the very beginning.)"""
    out, after, open_ = [], None, False
    for place in piece.bars:
        open_ = open_ or place.repeat_start
        following = piece.bars[place.index + 1 : place.index + 2]
        ends = place.repeat_end and not any(b.endings for b in following)
        if place.repeat_end and not open_ and after is not None:
            out.append(after)
            open_ = True
        if ends or (place.endings and not any(b.endings for b in following)):
            after, open_ = place.index + 1, False
    return tuple(dict.fromkeys(out))
