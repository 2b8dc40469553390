"""A piece moved to a key and laid on an instrument, and all that this altered."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from workbench.arranging.placing import Weighed, best_move, place, weighed
from workbench.arranging.spots import Change, Ledger, compass, midi_name, rebuilt, spots_of
from workbench.arranging.thinning import thin
from workbench.arranging.transpose import (
    Shift,
    parse_key,
    shift_by,
    shift_to_key,
    transposed,
)
from workbench.instrument.model import Instrument
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.model import Key, Piece

__all__ = ["Arranged", "Change", "arrange"]

MOST_SEMITONES = 60  # five octaves: more is a slip of the pen


@dataclass(frozen=True)
class Arranged:
    """A piece as the instrument can sound it.

    ``transposition`` is what everything moved by, in semitones, octaves of
    the whole piece included; ``key`` the name of the key it is now in;
    ``changes`` lists every note that differs otherwise, with the reason.
    """

    piece: Piece
    transposition: int
    key: str
    changes: tuple[Change, ...]


def arrange(
    piece: Piece,
    instrument: Instrument,
    *,
    key: str | None = None,
    transpose: int | None = None,
) -> Arranged:
    """Move a piece to ``key`` or by ``transpose`` semitones, and lay it on the instrument.

    To a key the nearest way is taken that lies well in the compass. Octaves
    are placed for the whole piece first, then voices, phrases and single
    notes; then chords are thinned. Raises BadInput where the key is no key,
    or both key and semitones are given.
    """
    if key is not None and transpose is not None:
        raise BadInput(say("Give either a key or a number of semitones to move by, not both."))
    if transpose is not None and abs(transpose) > MOST_SEMITONES:
        raise BadInput(
            say(
                "Transposing by {transpose} semitones is too far; choose a number from "
                "-{most} to {most}.",
                transpose=transpose,
                most=MOST_SEMITONES,
            )
        )
    ledger = Ledger()
    notes = weighed(piece)
    if key is not None:
        target = _target(piece, parse_key(key, piece.key), ledger)
        up = 7 * (target.fifths - piece.key.fifths) % 12
        semitones = _settled(notes, instrument, up, (up, up - 12))
        shift = shift_to_key(piece.key, target, semitones)
        # the nearer way is what was asked for; only octaves beyond it need a word
        asked = min((up, up - 12) if up else (0,), key=lambda s: abs(s - semitones))
    else:
        asked = transpose or 0
        shift = shift_by(piece.key, _settled(notes, instrument, asked, (asked,)))
    if shift.semitones != asked:
        _tell_octaves(piece, instrument, shift, asked, ledger)
    moved = transposed(piece, shift)
    spots = spots_of(moved)
    place(spots, instrument, ledger)
    thin(spots, instrument, ledger)
    return Arranged(rebuilt(moved, spots), shift.semitones, moved.key.name, ledger.changes())


def _settled(notes: Weighed, instrument: Instrument, asked: int, ways: tuple[int, ...]) -> int:
    """The semitones to move by: the only way where all notes lie inside, else
    the octave of ``asked`` that lies best."""
    inside = compass(instrument)
    if not notes or (len(ways) == 1 and all(m + ways[0] in inside for m, _ in notes)):
        return min(ways, key=abs)
    return best_move(notes, instrument, [asked + 12 * k for k in range(-6, 7)])


def _target(piece: Piece, wanted: Key, ledger: Ledger) -> Key:
    """The wanted key in the mode the piece is written in.

    Scores often carry a signature without its mode, so a key of the other
    mode is taken by its signature, and that is said.
    """
    if wanted.mode == piece.key.mode:
        return wanted
    same = replace(wanted, mode=piece.key.mode)
    ledger.add_whole(
        piece,
        "key",
        say(
            "The score is marked {key}, and moving it does not change its mode: {wanted} "
            "was taken by its key signature, which is that of {same}.",
            key=piece.key.name,
            wanted=wanted.name,
            same=same.name,
        ),
    )
    return same


def _tell_octaves(
    piece: Piece, instrument: Instrument, shift: Shift, asked: int, ledger: Ledger
) -> None:
    octaves = (shift.semitones - asked) // 12
    count = (
        say("an octave") if abs(octaves) == 1 else say("{octaves} octaves", octaves=abs(octaves))
    )
    further = " further" if asked else ""
    low, high = _range(piece, asked)
    ledger.add_whole(
        piece,
        "whole piece",
        say(
            "The whole piece goes {way} {octaves}{further}: from {low} to "
            "{high} it would lie badly on an instrument from {lowest} to "
            "{highest}.",
            way=say("up") if octaves > 0 else say("down"),
            octaves=count,
            further=further,
            low=midi_name(low),
            high=midi_name(high),
            lowest=midi_name(instrument.lowest),
            highest=midi_name(instrument.highest),
        ),
    )


def _range(piece: Piece, semitones: int) -> Sequence[int]:
    midis = [n.midi + semitones for n in piece.notes]
    return min(midis), max(midis)
