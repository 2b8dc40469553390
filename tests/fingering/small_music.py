"""Small music drawn by hypothesis, for engines that are held to brute force."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from hypothesis import HealthCheck, Phase, settings
from hypothesis import strategies as st

from workbench.fingering.types import Pin
from workbench.instrument.model import Instrument
from workbench.instrument.table import instrument
from workbench.music.model import Bar, Note, Piece, Pitch

MOST_SEQUENCES = 4000
UKULELE = replace(instrument("ukulele"), frets=6)
LOW_G = replace(instrument("ukulele-low-g"), frets=5)
THREE = Instrument("three", "Own three strings", (67, 62, 55), 420.0, 6, 10.0)
SPELLED = ("C0", "C1", "D0", "E-1", "E0", "F0", "F1", "G0", "A-1", "A0", "B-1", "B0")
LENGTHS = (Fraction(1, 2), Fraction(1), Fraction(3, 2), Fraction(2))


def spelled(midi: int) -> Pitch:
    name = SPELLED[midi % 12]
    return Pitch(name[0], int(name[1:]), midi // 12 - 1)


@st.composite
def music(draw: st.DrawFn, long: bool = False) -> tuple[Piece, Instrument, tuple[Pin, ...]]:
    """1 to 3 bars on a beat of a quarter or an eighth: a line, sometimes with a
    longer second voice, chords, a grace note, repeats and endings, random pins.
    ``long``: lines of eight beats, where a finger may wait for a note far off."""
    on = draw(st.sampled_from((UKULELE, UKULELE, LOW_G, THREE)))
    top = max(on.open_midi)
    pitches = st.integers(min(on.open_midi), top + 4)
    shape = draw(st.sampled_from(("line", "line", "repeat", "endings", "back")))
    beats = {"line": draw(st.sampled_from(((4,), (2, 3), (5,), (1, 2, 1)))),
             "repeat": draw(st.sampled_from(((3,), (2, 2), (4,)))),
             "endings": (2, 1, 1), "back": (2, 2)}[shape]  # fmt: skip
    if long:
        beats = draw(st.sampled_from(((8,), (4, 4)))) if shape == "line" else beats
    step = draw(st.sampled_from((Fraction(1, 2), Fraction(1))))
    bars = []
    for index, count in enumerate(beats):
        notes: list[Note] = []
        for k in range(count):
            at = k * step
            kind = draw(st.sampled_from(("note", "note", "chord", "rest", "low", "grace")))
            length = draw(st.sampled_from((step, step, *LENGTHS)))
            if kind != "rest" or not notes:
                notes.append(Note(f"b{index}k{k}a", at, length, spelled(draw(pitches))))
            if kind in ("chord", "low"):
                voice, long = (2, Fraction(2)) if kind == "low" else (1, length)
                other = draw(pitches)
                if other != notes[-1].midi:
                    notes.append(Note(f"b{index}k{k}b", at, long, spelled(other), voice))
            if kind == "grace":
                early = Note(f"b{index}k{k}g", at, Fraction(0), spelled(draw(pitches)), grace=True)
                notes.append(early)
        bars.append(
            Bar(
                index=index,
                number=str(index + 1),
                time_signature=(count, 4),
                length=count * step,
                notes=tuple(notes),
            )
        )
    if shape == "repeat":
        bars[0] = replace(bars[0], repeat_start=True)
        bars[-1] = replace(bars[-1], repeat_end=True)
    if shape == "endings":
        bars[0] = replace(bars[0], repeat_start=True)
        bars[1] = replace(bars[1], endings=(1,), repeat_end=True)
        bars[2] = replace(bars[2], endings=(2,))
    if shape == "back":
        bars[0] = replace(bars[0], fine=True)
        bars[1] = replace(bars[1], jump="D.C. al Fine")
    piece = Piece("Trial", tuple(bars))
    pins = []
    for n in piece.notes:
        if draw(st.integers(0, 5)) == 0:
            places = on.places(n.midi)
            if places:
                string, fret = draw(st.sampled_from(places))
                left = 0 if fret == 0 else draw(st.sampled_from((1, 2, 3, 4)))
                what = draw(st.sampled_from(("string", "all", "left")))
                pins.append({
                    "string": Pin(n.id, string=string), "left": Pin(n.id, left=left),
                    "all": Pin(n.id, string=string, fret=fret, left=left),
                }[what])  # fmt: skip
    return piece, on, tuple(pins)


SMALL = settings(
    max_examples=60, deadline=None, derandomize=True, database=None, phases=[Phase.generate],
    suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow],
)  # fmt: skip
