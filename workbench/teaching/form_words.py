"""Form and harmony said as a teacher would say them."""

from __future__ import annotations

from workbench.fingering.types import Fingering
from workbench.music.form import form_in_words
from workbench.music.model import Key, Piece
from workbench.teaching.harmony import cadences, chords, section_keys, tonic
from workbench.teaching.strokes import bars_in_words, beat_number


def relation(key: Key, home: Key) -> str:
    """How a key stands to another: "the relative minor", "the dominant" ...; "" where
    the trade has no short word for it."""
    if key == home:
        return "the same key"
    if key.fifths == home.fifths:
        return f"the relative {key.mode}"
    step = (tonic(key) - tonic(home)) % 12
    if step == 0:
        return f"the parallel {key.mode}"
    if key.mode == home.mode:
        return {7: "the dominant", 5: "the subdominant"}.get(step, "")
    if key.mode == "minor":
        return {
            2: "the relative minor of the subdominant",
            4: "the relative minor of the dominant",
        }.get(step, "")
    return {
        10: "the relative major of the dominant",
        8: "the relative major of the subdominant",
    }.get(step, "")


def form_and_harmony(piece: Piece) -> tuple[str, ...]:
    """Sentences on the form, the key of every section and how it closes."""
    if not piece.bars:
        return ()
    said = [f"Form: {form_in_words(piece)}"]
    closes = {c.section: c for c in cadences(piece)}
    home = piece.bars[0].key
    for found in section_keys(piece):
        s = found.section
        name = f"Section {s.letter}" if len(s.letter) <= 2 else s.letter
        where = bars_in_words(piece, tuple(range(s.first_bar, s.last_bar + 1)))
        how = relation(found.key, home)
        beside = f", {how} of {home.name}" if how and how != "the same key" else ""
        text = f"{name} ({where}) is in {found.key.name}{beside}"
        close = closes.get(s)
        if close:
            a, b = close.chords
            text += f", and ends with a {close.kind} ({a.label.name} to {b.label.name})"
        said.append(text + ".")
    return tuple(said)


def chord_line(piece: Piece, fingering: Fingering | None = None, strings: int = 0) -> str:
    """The chords bar by bar: "bar 1: C; bar 2: F/A, first inversion, beat 3 G7 ..."."""
    rows: dict[int, list[str]] = {}
    for c in chords(piece, fingering, strings):
        bar = piece.bars[c.bar]
        where = "" if c.onset == 0 else f"beat {beat_number(bar, c.onset)} "
        grip = f" [{c.grip}]" if c.grip else ""
        rows.setdefault(c.bar, []).append(f"{where}{c.words}{grip}")
    return "; ".join(f"bar {piece.bars[b].number}: {', '.join(t)}" for b, t in rows.items())
