"""Octaves: the whole piece first, then voices, phrases, and last single notes.

The larger the thing that moves together, the better the contour is kept, so
each smaller step only takes what the larger ones could not settle.
"""

from __future__ import annotations

from bisect import bisect_right
from collections import defaultdict
from collections.abc import Sequence
from fractions import Fraction

from workbench.arranging.spots import Ledger, Spot, compass, midi_name, voice_name
from workbench.instrument.model import Instrument
from workbench.language.speech import say
from workbench.music.model import Piece

VOICE_SHARE = 0.25  # share of a voice out of range from which the whole voice moves
PHRASE_BARS = 4  # a phrase without a rest is taken as so many bars (common practice, no source)
EASY_FRETS = 5  # above this fret of the highest string a note counts as high
HIGH_COST = 0.2  # cost of a note at the twelfth fret, in melody notes out of range
TOP_COST = 0.6  # and beyond it
LOWER_VOICE = 0.25  # a note of a lower voice out of range counts so much, for it moves more easily
FAR_COST = 0.5  # cost of moving the whole piece an octave, in notes out of range
_OCTAVES = (1, -1, 2, -2, 3, -3, 4, -4, 5, -5)


Weighed = Sequence[tuple[int, float]]  # MIDI numbers, and what being out of range costs


def weighed(piece: Piece) -> list[tuple[int, float]]:
    """The pitches of a piece, those of the melody at full weight."""
    top = min(((n.part, n.voice) for n in piece.notes), default=(1, 1))
    return [(n.midi, 1.0 if (n.part, n.voice) == top else LOWER_VOICE) for n in piece.notes]


def misfit(notes: Weighed, instrument: Instrument, move: int = 0) -> float:
    """How badly pitches moved by ``move`` semitones lie on an instrument: those
    out of range count their weight, high ones a part of it, growing with height."""
    inside = compass(instrument)
    string = max(instrument.open_midi)
    easy, octave = string + EASY_FRETS, string + 12
    total = 0.0
    for midi, weight in notes:
        if midi + move not in inside:
            total += weight
        elif midi + move > octave:
            total += TOP_COST
        elif midi + move > easy:
            total += HIGH_COST * (midi + move - easy) / (octave - easy)
    return total


def best_move(notes: Weighed, instrument: Instrument, moves: Sequence[int]) -> int:
    """Of several transpositions in semitones the one that lies best; the
    nearest where they lie equally well."""
    return min(moves, key=lambda s: (misfit(notes, instrument, s) + far(s), abs(s), -s))


def far(semitones: int) -> float:
    """What moving the whole piece so far costs, in notes out of range."""
    return FAR_COST * abs(semitones) / 12


def place(spots: list[Spot], instrument: Instrument, ledger: Ledger) -> None:
    """Bring every note into the instrument's compass, noting each change.

    A note of which no octave exists on the instrument is dropped.
    """
    inside = compass(instrument)
    by_voice: dict[tuple[int, int], list[Spot]] = defaultdict(list)
    for spot in spots:
        by_voice[spot.voice].append(spot)
    if not by_voice:
        return
    melody = min(by_voice)
    for voice, group in sorted(by_voice.items()):
        name = voice_name(voice, spots)
        top = _Top(by_voice[melody])
        out = [s for s in group if s.midi not in inside]
        if len(out) >= VOICE_SHARE * len(group) and len(group) > 1:
            _move_group(
                group,
                "voice",
                say("the whole of {name}", name=name),
                instrument,
                top,
                voice == melody,
                ledger,
            )
        for phrase in phrases(group):
            if any(s.midi not in inside for s in phrase) and len(phrase) > 1:
                whole = say("its phrase ({bars})", bars=_bars(phrase))
                _move_group(phrase, "phrase", whole, instrument, top, voice == melody, ledger)
        for spot in group:
            if spot.midi not in inside:
                _move_single(spot, instrument, ledger)


def phrases(group: Sequence[Spot]) -> list[list[Spot]]:
    """One voice cut into phrases: at rests of a quarter or more, at sections,
    repeats and endings, and every four bars."""
    found: list[list[Spot]] = []
    heard = Fraction(0)
    for spot in group:
        if found:
            last = found[-1][-1]
            rest = spot.start - heard >= 1
            new_bar = spot.bar.index > last.bar.index
            mark = new_bar and (
                bool(spot.bar.section)
                or spot.bar.repeat_start
                or last.bar.repeat_end
                or spot.bar.endings != last.bar.endings
            )
            long = new_bar and spot.bar.index - found[-1][0].bar.index >= PHRASE_BARS
            if rest or mark or long:
                found.append([])
        else:
            found.append([])
        found[-1].append(spot)
        heard = max(heard, spot.end)
    return found


class _Top:
    """The melody as it stands: its highest note at any time."""

    def __init__(self, melody: Sequence[Spot]) -> None:
        found: dict[Fraction, Spot] = {}
        for spot in melody:
            other = found.get(spot.start)
            if other is None or spot.midi > other.midi:
                found[spot.start] = spot
        self._spots = [found[start] for start in sorted(found)]
        self._starts = [spot.start for spot in self._spots]

    def at(self, time: Fraction) -> int | None:
        """The MIDI number sounding at a time, None in a rest."""
        before = bisect_right(self._starts, time) - 1
        if before < 0 or self._spots[before].end <= time:
            return None
        return self._spots[before].midi


def _move_group(
    group: Sequence[Spot],
    kind: str,
    name: str,
    instrument: Instrument,
    top: _Top,
    is_melody: bool,
    ledger: Ledger,
) -> bool:
    """Move notes together by the fewest octaves that bring them all inside.

    Refused where a lower voice would rise above the melody. On a re-entrant
    instrument notes that must move anyway may, since there the bass strings
    are no lower.
    """
    inside = compass(instrument)

    def crosses(spot: Spot, octaves: int) -> bool:
        above = top.at(spot.start)
        if above is None or not spot.midi <= above < spot.midi + 12 * octaves:
            return False
        return spot.midi in inside or not instrument.reentrant

    for octaves in _OCTAVES:
        if not all(s.midi + 12 * octaves in inside for s in group):
            continue
        if not is_melody and any(crosses(s, octaves) for s in group):
            continue
        out = [s for s in group if s.midi not in inside]
        cause = _outside(out[0].midi, instrument)
        for s in group:
            was, here = s.note.pitch.name, s.midi not in inside
            s.raise_by(octaves)
            why = (
                say("it lies {cause}; {name} moves with it", cause=cause, name=name)
                if here
                else say(
                    "{name} moves together, since {some} {cause}",
                    name=name,
                    some=_some(len(out)),
                    cause=cause,
                )
            )
            ledger.add(
                s,
                kind,
                say(
                    "{was} goes {way} to {pitch}: {why}.",
                    was=was,
                    way=_way(octaves),
                    pitch=s.note.pitch.name,
                    why=why,
                ),
            )
        return True
    return False


def _move_single(spot: Spot, instrument: Instrument, ledger: Ledger) -> None:
    inside = compass(instrument)
    cause = _outside(spot.midi, instrument)
    was = spot.note.pitch.name
    for octaves in _OCTAVES:
        if spot.midi + 12 * octaves in inside:
            spot.raise_by(octaves)
            ledger.add(
                spot,
                "octave",
                say(
                    "{was} lies {cause}, so it goes {way} to {pitch}.",
                    was=was,
                    cause=cause,
                    way=_way(octaves),
                    pitch=spot.note.pitch.name,
                ),
            )
            return
    spot.kept = False
    ledger.add(
        spot,
        "dropped",
        say("{was} is left out: the instrument has this note in no octave.", was=was),
    )


def _outside(midi: int, instrument: Instrument) -> str:
    if midi < instrument.lowest:
        return say("below the lowest string ({note})", note=midi_name(instrument.lowest))
    if midi > instrument.highest:
        return say("above the highest fret ({note})", note=midi_name(instrument.highest))
    return say("between the strings' ranges")


def _bars(phrase: Sequence[Spot]) -> str:
    first, last = phrase[0].bar.number, phrase[-1].bar.number
    return (
        say("bar {first}", first=first)
        if first == last
        else say("bars {first} to {last}", first=first, last=last)
    )


def _some(count: int) -> str:
    return (
        say("one of its notes lies") if count == 1 else say("{count} of its notes lie", count=count)
    )


def _way(octaves: int) -> str:
    count = abs(octaves)
    way = say("up") if octaves > 0 else say("down")
    return (
        say("{way} an octave", way=way)
        if count == 1
        else say("{way} {count} octaves", way=way, count=count)
    )
