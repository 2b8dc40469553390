"""Form and harmony said as a teacher would say them."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from workbench.fingering.types import Fingering
from workbench.language.message import SymbolName, Text
from workbench.language.names import chord_words, key_words
from workbench.language.speech import count, mark, say
from workbench.music.bar_names import bars_named
from workbench.music.beats import counted_beat
from workbench.music.model import Key, Piece
from workbench.music.order.form import has_form, in_one_part
from workbench.music.telling.form import form_in_words
from workbench.teaching.bars.harmony import (
    Cadence,
    HeardChord,
    SectionKey,
    cadences,
    chords,
    section_keys,
    tonic,
)

SAME = mark("the same key")
MINOR = {
    2: mark("the relative minor of the subdominant"),
    4: mark("the relative minor of the dominant"),
}
MAJOR = {
    10: mark("the relative major of the dominant"),
    8: mark("the relative major of the subdominant"),
}
LIKE = {7: mark("the dominant"), 5: mark("the subdominant")}
OF_MODE = {
    "relative major": mark("the relative major"),
    "relative minor": mark("the relative minor"),
    "parallel major": mark("the parallel major"),
    "parallel minor": mark("the parallel minor"),
}


@dataclass(frozen=True)
class ChordRow:
    """A chord as it stands in a table: the written bar, the beat it begins on, its name
    ("" where the notes make none), its inversion in words ("" for none), the strings used
    of its grip, and the chord printed in the score there ("" for none)."""

    bar: int
    beat: Text
    name: Text
    inversion: Text
    grip: str
    printed: str = ""


def relation(key: Key, home: Key) -> str:
    """How a key stands to another: "the relative minor", "the dominant" ...; "" where
    the trade has no short word for it."""
    if key == home:
        return say(SAME)
    if key.fifths == home.fifths:
        return say(OF_MODE[f"relative {key.mode}"])
    step = (tonic(key) - tonic(home)) % 12
    if step == 0:
        return say(OF_MODE[f"parallel {key.mode}"])
    table = LIKE if key.mode == home.mode else MINOR if key.mode == "minor" else MAJOR
    return say(table[step]) if step in table else ""


def form_and_harmony(piece: Piece) -> tuple[str, ...]:
    """Sentences on the form, the key of every section and how it closes, its relative key
    and the chords that come most often in it."""
    if not piece.bars:
        return ()
    heard = chords(piece)
    closes = {c.section: c for c in cadences(piece, heard)}
    home = piece.bars[0].key
    said = [say("Form: {form}", form=form_in_words(piece))] if has_form(piece) else []
    for found in section_keys(piece):
        said.append(_section(piece, found, closes.get(found.section), home))
    main = _printed_chords(piece) or _main_chords(heard)
    if main:
        said.append(say("The chords met most: {chords}.", chords=", ".join(map(chord_words, main))))
    said.append(_relative(home))
    return tuple(said)


def _section(piece: Piece, found: SectionKey, close: Cadence | None, home: Key) -> str:
    s = found.section
    if in_one_part(piece):
        name = say("The piece")
    else:
        name = say("Section {letter}", letter=s.letter) if len(s.letter) <= 2 else s.letter
    where = bars_named(piece, tuple(range(s.first_bar, s.last_bar + 1)))
    how = relation(found.key, home) if found.key != home else ""
    key = key_words(found.key.name)
    if how:
        key = say("{key}, {relation} of {home}", key=key, relation=how, home=key_words(home.name))
    if close is None:
        return say("{section} ({bars}) is in {key}.", section=name, bars=where, key=key)
    return say(
        "{section} ({bars}) is in {key}, and ends with a {close} ({before} to {last}).",
        section=name,
        bars=where,
        key=key,
        close=say(close.kind),
        before=chord_words(close.chords[0].label.name),
        last=chord_words(close.chords[1].label.name),
    )


def _main_chords(heard: tuple[HeardChord, ...]) -> list[str]:
    """Up to four chord names, the one that lasts longest first, whatever their bass."""
    lasting: dict[str, Fraction] = {}
    for chord in heard:
        name = (chord.label.root or "") + chord.label.symbol
        lasting[name] = lasting.get(name, Fraction(0)) + chord.duration
    return sorted(lasting, key=lambda name: (-lasting[name], name))[:4]


def _printed_chords(piece: Piece) -> list[str]:
    """Up to four of the chord names that the score prints, the most frequent first."""
    times: dict[str, int] = {}
    for bar in piece.bars:
        for chord in bar.chords:
            if chord.text:
                times[chord.text] = times.get(chord.text, 0) + 1
    return sorted(times, key=lambda name: -times[name])[:4]


def _relative(home: Key) -> str:
    other = Key(home.fifths, "minor" if home.mode == "major" else "major")
    signs = abs(home.fifths)
    if home.fifths > 0:
        shared = count(signs, "{n} sharp", "{n} sharps")
    elif home.fifths < 0:
        shared = count(signs, "{n} flat", "{n} flats")
    else:
        shared = say("no sharp or flat")
    return say(
        "Relative keys: {key} and {relative} have the same signature, {signs}.",
        key=key_words(home.name),
        relative=key_words(other.name),
        signs=shared,
    )


def chord_rows(
    piece: Piece, fingering: Fingering | None = None, strings: int = 0
) -> tuple[ChordRow, ...]:
    """The chords in written order, one row for each that is heard or printed."""
    heard = {(c.bar, c.onset): c for c in chords(piece, fingering, strings)}
    printed = {(bar.index, c.onset): c.text for bar in piece.bars for c in bar.chords if c.text}
    out = []
    for bar, onset in sorted(heard.keys() | printed.keys()):
        beat, text = counted_beat(piece.bars[bar], onset), printed.get((bar, onset), "")
        c = heard.get((bar, onset))
        name: Text
        turn: Text
        name, turn, grip = (SymbolName(c.label.name), c.inversion, c.grip) if c else ("", "", "")
        out.append(ChordRow(bar, beat, name, turn, grip, text))
    return tuple(out)
