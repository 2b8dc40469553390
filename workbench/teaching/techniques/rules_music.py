"""Rules for what is written: rhythm, ornaments, keys and form."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from workbench.language.message import KeyName, Message, PitchName, message
from workbench.music.beats import compound
from workbench.music.model import Bar
from workbench.teaching.bars.harmony import section_keys
from workbench.teaching.bars.measure import in_key, is_dotted, is_syncopated
from workbench.teaching.techniques.occurrence import Detail, Music, Occurrence, Rule, at_note

MARKS = {
    "harmonic": "harmonic",
    "fermata": "fermata",
    "staccato": "staccato",
}


def _whole(technique: str, bar: Bar, detail: Detail = "") -> Occurrence:
    first = bar.notes[0].onset if bar.notes else bar.length * 0
    return Occurrence(technique, bar.index, first, tuple(n.id for n in bar.notes), detail)


def rhythm(music: Music) -> Iterator[Occurrence]:
    """Syncopations, dotted rhythms, triplets and notes tied over the bar line."""
    for bar in music.piece.bars:
        triplets = [n for n in bar.notes if n.tuplet == (3, 2)]
        if triplets:
            ids = tuple(n.id for n in triplets)
            yield Occurrence("triplets", bar.index, triplets[0].onset, ids)
        for note in bar.notes:
            if is_syncopated(bar, note):
                yield at_note("syncopation", bar.index, note)
            if is_dotted(bar, note):
                yield at_note("dotted-rhythm", bar.index, note)
            if not note.grace and note.onset + note.duration > bar.length:
                yield at_note("tie", bar.index, note)


def metre(music: Music) -> Iterator[Occurrence]:
    """The pickup, compound time where it begins, changes of time signature."""
    bars = music.piece.bars
    for bar in bars:
        if bar.pickup:
            yield _whole("pickup", bar)
    for k, bar in enumerate(bars):
        changed = k > 0 and bars[k - 1].time_signature != bar.time_signature
        if compound(bar.time_signature) and (k == 0 or changed):
            yield _whole("compound-time", bar, "{}/{}".format(*bar.time_signature))
        if changed:
            signature = "{}/{}".format(*bar.time_signature)
            yield _whole("time-change", bar, message("to {time}", time=signature))


def marks(music: Music) -> Iterator[Occurrence]:
    """Grace notes, harmonics, fermatas and staccato dots."""
    for bar in music.piece.bars:
        for note in bar.notes:
            if note.grace:
                yield at_note("grace-note", bar.index, note)
            for word, technique in MARKS.items():
                if any(word in mark.lower() for mark in note.articulations):
                    yield at_note(technique, bar.index, note)


def accidentals(music: Music) -> Iterator[Occurrence]:
    """Notes outside the key; the raised sixth and seventh of minor are counted in."""
    for bar in music.piece.bars:
        for note in bar.notes:
            if not in_key(note, bar.key):
                yield at_note(
                    "accidentals", bar.index, note, PitchName(note.pitch.name.rstrip("-0123456789"))
                )


def keys(music: Music) -> Iterator[Occurrence]:
    """Changes of key, and the first bar of every stretch in minor, written or heard."""
    bars = music.piece.bars
    if bars and bars[0].key.mode == "minor":
        yield _whole("minor-section", bars[0], KeyName(bars[0].key.name))
    for before, bar in pairwise(bars):
        if before.key == bar.key:
            continue
        yield _whole("key-change", bar, _change(before, bar))
        if bar.key.mode == "minor":
            yield _whole("minor-section", bar, KeyName(bar.key.name))
    for found in section_keys(music.piece):
        # a minor section is often written under its relative major's signature
        first = bars[found.section.first_bar]
        if found.key.mode == "minor" and first.key.mode != "minor":
            yield _whole("minor-section", first, KeyName(found.key.name))


def _change(before: Bar, bar: Bar) -> Message:
    return message(
        "{before} to {after}", before=KeyName(before.key.name), after=KeyName(bar.key.name)
    )


def form(music: Music) -> Iterator[Occurrence]:
    """First and second endings where they begin, and bars that send the player elsewhere."""
    before: tuple[int, ...] = ()
    for bar in music.piece.bars:
        if bar.endings and bar.endings != before:
            names = ", ".join(str(e) for e in bar.endings)
            yield _whole("endings", bar, message("ending {number}", number=names))
        before = bar.endings
        if bar.jump or bar.to_coda:
            yield _whole("jump", bar, bar.jump or message("to the Coda"))


RULES: tuple[Rule, ...] = (rhythm, metre, marks, accidentals, keys, form)
