"""Right-hand patterns of broken chords, as in Mauro Giuliani's 120 studies for the right hand
(op. 1, Vienna 1812, public domain).

From memory: the studies run through arpeggio patterns over a C and a G7 chord, the bass with
stems down for the thumb, i, m and a each on a string of its own. The kinds of pattern are
his; no number of a study is claimed.
"""

from __future__ import annotations

from fractions import Fraction

import pytest
from music21 import corpus

from tests.fingering.build import piece, pitch
from tests.fingering.editions import STUDIES
from workbench.arranging.transpose import Shift, transposed
from workbench.fingering.engine import solve
from workbench.fingering.types import Fingering
from workbench.instrument.table import hand, instrument
from workbench.music.reading.score import read_score

CHORDS = (
    {"p": "C3", "i": "G3", "m": "C4", "a": "E4"},  # strings 5, 3, 2, 1
    {"p": "B2", "i": "G3", "m": "B3", "a": "F4"},
)
PLAIN = (
    "p i m a", "p a m i", "p i m i", "p m i m", "p i a m", "p i m", "p m i", "p i m a m i",
    "p i p m p i p a", "p i m i a i m i",
)  # fmt: skip


def study(pattern: str, voices: bool) -> str:
    """Two times the pattern on each chord in quavers; with ``voices`` the bass is a
    second voice that rings until the next bass, as printed."""
    bars = []
    for chord in CHORDS:
        names = [chord[f] for f in pattern.split()] * 2
        thumbs = [f == "p" for f in pattern.split()] * 2
        if not voices:
            bars.append(" ".join(f"{n}:1/2" for n in names))
            continue
        top = " ".join("r:1/2" if t else f"{n}:1/2" for n, t in zip(names, thumbs, strict=True))
        at = [i for i, t in enumerate(thumbs) if t]
        ends = [*at[1:], len(names)]
        low = " ".join(f"{names[i]}:{Fraction(e - i, 2)}" for i, e in zip(at, ends, strict=True))
        bars.append(f"{top} | {low}")
    return "\n".join(bars)


def rights(f: Fingering) -> list[list[str | None]]:
    return [[n.right for n in bar.notes] for bar in f.bars]


@pytest.mark.parametrize("voices", [False, True], ids=["one voice", "bass with stems down"])
@pytest.mark.parametrize("tempo", [60.0, 120.0])
@pytest.mark.parametrize("pattern", PLAIN)
def test_a_broken_chord_is_plucked_as_printed(pattern: str, tempo: float, voices: bool) -> None:
    music = piece(*study(pattern, voices).split("\n"), tempo=tempo)
    f = solve(music, instrument("guitar"), hand("medium"))
    assert [n.string for n in f.bars[0].notes][:1] == [5]
    assert rights(f) == [pattern.split() * 2] * 2


PINCHED = (
    "pa m i", "pm i", "pi m", "pa i m i", "pa m i m", "pi m a m", "p im", "p ima", "pma i",
    "p im a", "p i ma",
)  # fmt: skip


@pytest.mark.parametrize("tempo", [60.0, 120.0])
@pytest.mark.parametrize("pattern", PINCHED)
def test_thumb_and_fingers_together_as_printed(pattern: str, tempo: float) -> None:
    """Fingers that pluck together stand in one word; the bass has its stem down."""
    bars = []
    for chord in CHORDS:
        top, low = [], []
        for word in pattern.split() * 3:
            upper = "+".join(chord[f] for f in word if f != "p")
            top.append(f"{upper or 'r'}:1/2")
            if "p" in word:
                low.append([chord["p"], 0])
            low[-1][1] += 1
        bars.append(" ".join(top) + " | " + " ".join(f"{n}:{Fraction(k, 2)}" for n, k in low))
    f = solve(piece(*bars, tempo=tempo), instrument("guitar"), hand("medium"))
    for bar, chord in zip(f.bars, CHORDS, strict=True):
        whose = {pitch(name).midi: finger for finger, name in chord.items()}
        assert [n.right for n in bar.notes] == [whose[n.midi] for n in bar.notes]


def test_left_hand_under_the_patterns() -> None:
    """The grips are the first-position C (3 on string 5, 1 on string 2) and G7. Where the bass
    rings under the pattern ours takes 4 for the C, the book 3: a held 4 leaves 1, 2 and 3
    free for notes beneath it, and nothing in the pattern alone asks for it."""
    one, two = (
        solve(piece(*study("p i m a", v).split("\n")), instrument("guitar"), hand("medium"))
        for v in (False, True)
    )
    assert [(n.string, n.fret, n.left) for n in one.bars[0].notes[:4]] == [
        (5, 3, 3),
        (3, 0, 0),
        (2, 1, 1),
        (1, 0, 0),
    ]
    assert [(n.string, n.fret) for n in one.bars[1].notes[:4]] == [(5, 2), (3, 0), (2, 0), (1, 1)]
    held = two.bars[0].notes[0]
    assert (held.string, held.fret) == (5, 3) and held.left in (3, 4)
    assert held.held == held.duration


def test_a_reel_on_the_notes_of_its_chord_lies_among_open_strings() -> None:
    """7th Regiment Reel (Ryan's Mammoth Collection, 1883; music21's corpus), in G on the guitar:
    G, B and D in sixteenths are a tune, for which nobody lays a barre (common practice)."""
    path = next(p for p in corpus.getPaths() if p.name == "7thRegimentReel.abc")
    music = transposed(read_score(path), Shift(-14, -2))
    first = solve(music, instrument("guitar"), hand("medium")).bars[0]
    assert [(n.pitch, n.string, n.fret) for n in first.notes[3:]] == [
        ("D4", 2, 3), ("G3", 3, 0), ("B3", 2, 0), ("D4", 2, 3),
    ]  # fmt: skip
    assert not first.barres


def test_an_arpeggio_over_two_octaves_comes_down_the_neck_with_its_notes() -> None:
    """Carcassi op. 60 no. 25, bar 52 (Mutopia Project; README beside it): eight pitches from D#3
    on. The print has the hand at fret 14 before and in the low positions below; notes that ring
    as one chord would keep it up there, on string 5 at fret 16."""
    music = read_score(STUDIES / "carcassi-op60-25.mxl", parts="all")
    bar = solve(music, instrument("guitar"), hand("medium")).bars[51]
    low = [n for n in bar.notes if n.pitch in ("D#3", "E3", "A3", "C#4") and n.onset >= 2]
    assert len(low) == 4 and all(n.string >= 2 and n.fret <= 4 for n in low)


def test_a_reel_stays_on_its_string_where_the_fourth_is_high() -> None:
    """The Ladies' Delight (Ryan's Mammoth Collection, 1883; music21's corpus), last bar in F on
    a ukulele: D F E D E C C is a tune, not a chord under a barre (common practice)."""
    path = next(p for p in corpus.getPaths() if p.name == "LadiesDelightReel.abc")
    music = transposed(read_score(path), Shift(-2, -2))
    last = solve(music, instrument("ukulele"), hand("medium")).bars[-1]
    assert {n.string for n in last.notes} == {1} and not last.barres
