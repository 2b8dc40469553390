"""Fewer notes where the instrument cannot sound them all.

Melody and bass stay longest. What goes first is what the ear misses least;
``REASONS`` names the steps in that order.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction

from workbench.arranging.spots import Ledger, Spot
from workbench.arranging.together import have_strings, playable
from workbench.instrument.model import Instrument
from workbench.language.numbers import in_words
from workbench.language.speech import mark, say

REASONS = (
    mark("a unison with another voice"),
    mark("an inner note that doubles another in the octave"),
    mark("an inner fifth above the bass"),
    mark("an inner note"),
    mark("the bass"),
)
_UNISON, _DOUBLING, _FIFTH, _INNER, _BASS = range(len(REASONS))


def thin(spots: Sequence[Spot], instrument: Instrument, ledger: Ledger) -> None:
    """Drop, move or shorten notes until what sounds at once can be played.

    Notes struck together are thinned by ``REASONS``; notes still held from
    before are shortened where a new note needs their string.
    """
    struck: dict[Fraction, list[Spot]] = defaultdict(list)
    for spot in spots:
        if spot.kept and not spot.note.grace:
            struck[spot.start].append(spot)
    held: list[Spot] = []
    for start in sorted(struck):
        now = _chord(struck[start], instrument, ledger)
        held = [s for s in held if s.end > start]
        _release(held, now, start, instrument, ledger)
        held = [s for s in held if s.end > start] + now
    _graces(spots, ledger)


def _midis(spots: Sequence[Spot]) -> tuple[int, ...]:
    return tuple(sorted(s.midi for s in spots))


def _chord(struck: list[Spot], instrument: Instrument, ledger: Ledger) -> list[Spot]:
    left = list(struck)
    while not playable(_midis(left), instrument):
        if len(left) == 1:
            break  # one note inside the compass is always playable
        melody, bass = _outer(left)
        ranks = {id(s): _rank(s, left, melody, bass) for s in left if s is not melody}
        order = sorted(
            (s for s in left if s is not melody),
            key=lambda s: (ranks[id(s)], -s.note.part, -s.note.voice, s.midi),
        )
        if ranks[id(order[0])] == _BASS:
            if not _move_bass(bass, melody, instrument, ledger):
                _drop(bass, left, ranks[id(bass)], instrument, ledger)
                left.remove(bass)
            continue
        # one note whose going is enough, or else the first in the order
        enough = [
            s
            for s in order
            if s is not bass and playable(_midis([o for o in left if o is not s]), instrument)
        ]
        goes = enough[0] if enough else order[0]
        _drop(goes, left, ranks[id(goes)], instrument, ledger)
        left.remove(goes)
    return left


def _outer(left: Sequence[Spot]) -> tuple[Spot, Spot]:
    top_voice = min(s.voice for s in left)
    melody = max((s for s in left if s.voice == top_voice), key=lambda s: s.midi)
    bass = min((s for s in left if s is not melody), key=lambda s: s.midi)
    return melody, bass


def _rank(spot: Spot, left: Sequence[Spot], melody: Spot, bass: Spot) -> int:
    others = [s for s in left if s is not spot]
    if any(s.midi == spot.midi for s in others):
        return _UNISON
    if spot is bass:
        return _BASS
    if any((s.midi - spot.midi) % 12 == 0 for s in others):
        return _DOUBLING
    if (spot.midi - bass.midi) % 12 == 7:
        return _FIFTH
    return _INNER


def _why(left: Sequence[Spot], instrument: Instrument) -> str:
    midis = _midis(left)
    if len(midis) > instrument.strings:
        return say(
            "{notes} notes at once are more than the instrument's {strings} strings",
            notes=in_words(len(midis)),
            strings=in_words(instrument.strings),
        )
    if not have_strings(midis, instrument):
        return say("there is no string of its own for every note of the chord")
    return say("no hand reaches all notes of the chord at once")


def _drop(
    spot: Spot, left: Sequence[Spot], rank: int, instrument: Instrument, ledger: Ledger
) -> None:
    spot.kept = False
    ledger.add(
        spot,
        "dropped",
        say(
            "{pitch} is left out, {what}: {why}.",
            pitch=spot.note.pitch.name,
            what=say(REASONS[rank]),
            why=_why(left, instrument),
        ),
    )


def _move_bass(bass: Spot, melody: Spot, instrument: Instrument, ledger: Ledger) -> bool:
    was = bass.note
    for octaves in (1, -1, 2, -2):
        midi = bass.midi + 12 * octaves
        if midi >= melody.midi or not instrument.places(midi):
            continue
        if playable(tuple(sorted((midi, melody.midi))), instrument):
            bass.raise_by(octaves)
            way = "up" if octaves > 0 else "down"
            ledger.add(
                bass,
                "octave",
                say(
                    "the bass {pitch} goes {way} to {other}: it cannot be struck together with "
                    "the melody where it was.",
                    pitch=was.pitch.name,
                    way=way,
                    other=bass.note.pitch.name,
                ),
            )
            return True
    return False


def _release(
    held: list[Spot],
    now: Sequence[Spot],
    start: Fraction,
    instrument: Instrument,
    ledger: Ledger,
) -> None:
    """End held notes at ``start`` until all that sounds has strings."""
    while held and not have_strings(_midis([*held, *now]), instrument):
        fresh = {s.midi for s in now}
        lowest, top = min(s.midi for s in held), min(s.voice for s in (*held, *now))
        enough = [
            s
            for s in held
            if have_strings(_midis([*(o for o in held if o is not s), *now]), instrument)
        ]
        goes = min(
            enough or held,
            key=lambda s: (s.midi not in fresh, s.voice == top, s.midi == lowest, s.end, s.midi),
        )
        held.remove(goes)
        _shorten(goes, start, goes.midi in fresh, ledger)


def _shorten(spot: Spot, start: Fraction, again: bool, ledger: Ledger) -> None:
    spot.note = replace(spot.note, duration=start - spot.start)
    why = (
        say("the same note is struck again on the only string left for it")
        if again
        else say("a new note needs its string")
    )
    ledger.add(
        spot,
        "shortened",
        say(
            "{pitch} ends after {quarters}: {why}.",
            pitch=spot.note.pitch.name,
            quarters=_quarters(spot.note.duration),
            why=why,
        ),
    )


def _graces(spots: Sequence[Spot], ledger: Ledger) -> None:
    """A grace note goes with the note it leads to."""
    kept = {(s.voice, s.start) for s in spots if s.kept and not s.note.grace}
    gone = {(s.voice, s.start) for s in spots if not s.kept and not s.note.grace} - kept
    for s in spots:
        if s.kept and s.note.grace and (s.voice, s.start) in gone:
            s.kept = False
            name = s.note.pitch.name
            ledger.add(
                s, "dropped", say("the grace note {name} goes with the note it led to.", name=name)
            )


def _quarters(length: Fraction) -> str:
    if length == 1:
        return say("one quarter")
    whole, part = divmod(length, 1)
    if not part:
        return say("{whole} quarters", whole=whole)
    return (
        say("{whole} {part} quarters", whole=whole, part=part)
        if whole
        else say("{part} of a quarter", part=part)
    )
