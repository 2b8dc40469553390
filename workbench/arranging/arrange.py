"""A piece moved to a key and laid on an instrument, and all that this altered."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from workbench.arranging.changes import BEST, KEY, WHOLE, Change, ChangeKind
from workbench.arranging.decisions import Decisions, voiced
from workbench.arranging.laying import EVERYTHING, KeptShares, at_length, kept_shares, laid_piece
from workbench.arranging.options import Options
from workbench.arranging.parts import led
from workbench.arranging.search import QUICK, THOROUGH, Laid, Search
from workbench.arranging.sounds import TUNE, Texture, texture
from workbench.arranging.transpose import (
    parse_key,
    shift_by,
    shift_to_key,
    transposed,
)
from workbench.arranging.weights import EASY_FRET, Wishes
from workbench.fingering.pins.printed import prints_for
from workbench.instrument.model import Hand, Instrument
from workbench.instrument.table import HANDS
from workbench.music.errors import BadInput
from workbench.music.model import Key, Piece

__all__ = ["Arranged", "Change", "arrange"]

BEST_KEY = "best"
MOST_SEMITONES = 60  # five octaves: more is a slip of the pen
# A piece lies well where no more of its notes have to change, or lie above the seventh fret.
LIES_TUNE, LIES_REST, LIES_HIGH = 0.02, 0.1, 0.05
WIDE_LOST = 0.2  # share of a wide tune that may need another octave than the rest


@dataclass(frozen=True)
class Arranged:
    """A piece as the instrument can sound it.

    ``transposition`` is what everything moved by, in semitones, octaves of the whole piece
    included; ``key`` the name of the key it is now in; ``changes`` lists every note that
    differs otherwise. ``kept`` holds the shares of tune, bass and inner notes that stayed;
    ``cost`` is the declared cost in thousandths, ``proved`` whether it is shown to be the
    least; ``wishes`` are those it was arranged under.
    """

    piece: Piece
    transposition: int
    key: str
    changes: tuple[Change, ...]
    kept: KeptShares = EVERYTHING
    cost: int = 0
    proved: bool = True
    wishes: Wishes | None = None


def as_written(piece: Piece) -> Arranged:
    """A piece that lies on its instrument as it stands."""
    return Arranged(piece, 0, piece.key.name, ())


def arrange(
    piece: Piece,
    instrument: Instrument,
    *,
    key: str | None = None,
    transpose: int | None = None,
    hand: Hand | None = None,
    wishes: Wishes | None = None,
    wanted: Decisions | None = None,
) -> Arranged:
    """Move a piece to ``key`` or by ``transpose`` semitones, and lay it on the instrument.

    Without either a piece that lies well as written stays, any other is moved to the key
    in which it lies best, as for the key "best". To a key the octave is taken in which it
    lies best; a number of semitones is kept to, save where the tune would leave the
    instrument and another octave holds it. ``wanted`` holds the teacher's decisions by
    note id. An edition with printed fingering for this very
    instrument stays as it is at its own pitch, where nothing else is wished for. Raises
    BadInput where the key is no key, or both key and semitones are given.
    """
    _check(key, transpose)
    plain = key is None and not transpose and not wanted and wishes in (None, Wishes())
    if plain and prints_for(piece, instrument):
        return as_written(piece)
    wishes = wishes or Wishes()
    piece = voiced(led(piece, wishes), wanted or {})
    sounds = texture(piece, wishes.tune_part, wishes.bass_part)
    options = Options(instrument, hand or HANDS["medium"], wishes)
    search = Search(sounds, options, wanted)
    said: list[Change] = []
    if key is not None and key.strip().lower() == BEST_KEY:
        key, laid, move = None, None, _best(search, piece)
    elif key is not None:
        asked = parse_key(key, piece.key)
        target = _in_mode(asked, piece.key)
        if target != asked:
            said.append(_whole(piece, KEY, piece.key.name, asked.name, 0))
        move = _cheapest(search, _to_key(moves(search), piece.key, target), piece.key)
        laid = None
    elif transpose is not None:
        move, laid = _octave(search, transpose, said, piece), None
    else:
        move, laid = 0, search.lay(0)
        if laid is not None and not (search.stays or lies_well(sounds, laid)):
            move = _best(search, piece)
            laid = None if move else laid
    if laid is None:
        laid = search.lay(move, THOROUGH)
    assert laid is not None
    laid = at_length(search, laid, move)
    shift = shift_to_key(piece.key, target, move) if key is not None else shift_by(piece.key, move)
    moved = transposed(piece, shift)
    if key is None and transpose is None and move:
        said.append(_whole(piece, BEST, piece.key.name, moved.key.name, move))
    done, changes = laid_piece(moved, sounds, laid, options, shift, wanted)
    return Arranged(
        done, move, moved.key.name, (*said, *changes), kept_shares(sounds, laid), laid.cost,
        laid.proved, options.wishes,
    )  # fmt: skip


def lies_well(sounds: Texture, laid: Laid) -> bool:
    """Whether hardly a note had to change, and the hand stays in the lower positions."""
    tune = rest = tune_all = rest_all = 0
    for sound, octaves in zip(sounds.sounds, laid.octaves, strict=True):
        if sound.role == TUNE:
            tune, tune_all = tune + (octaves != 0), tune_all + 1
        else:
            rest, rest_all = rest + (octaves != 0), rest_all + 1
    places = [p for p in laid.places if p is not None]
    high = sum(fret > EASY_FRET for _, fret in places)
    return (
        tune <= LIES_TUNE * tune_all
        and rest <= LIES_REST * rest_all
        and high <= LIES_HIGH * len(places)
    )


def moves(search: Search) -> list[int]:
    """The transpositions worth trying, in semitones: for each of the twelve keys every
    octave that keeps all of the tune on the instrument, or else those that lose least, and
    the nearest beside them that loses few of its notes: single phrases may go back."""
    line, where = search.texture.tune, search.options.where
    pitches = sorted(set(line))
    if not pitches:
        return list(range(-6, 6))
    low = min(search.options.instrument.open_midi)
    found: list[int] = []
    for step in range(12):
        first = (low - pitches[-1]) // 12 * 12 + step
        last = search.options.instrument.highest - pitches[0]
        lost = {m: sum(not where(p + m) for p in line) for m in range(first, last + 12, 12)}
        least = min(lost.values())
        few = [m for m, n in lost.items() if least < n <= WIDE_LOST * len(line)]
        found += [m for m, n in lost.items() if n == least]
        found += sorted(few, key=lambda m: (lost[m], abs(m)))[:1]
    return sorted(found, key=lambda m: (abs(m - 2.5), m))


def asked_moves(search: Search, now: Key, key: str | None, transpose: int | None) -> list[int]:
    """The transpositions among which to choose where ``key`` or a number of semitones is asked
    for, as ``arrange`` takes them; all worth trying where neither is. Raises BadInput where the
    key is no key, or both are given."""
    _check(key, transpose)
    if transpose is not None:
        return [_nearest(search, transpose)]
    found = moves(search)
    if key is None or key.strip().lower() == BEST_KEY:
        return found
    return _to_key(found, now, _in_mode(parse_key(key, now), now))


def _check(key: str | None, transpose: int | None) -> None:
    if key is not None and transpose is not None:
        raise BadInput("Give either a key or a number of semitones to move by, not both.")
    if transpose is not None and abs(transpose) > MOST_SEMITONES:
        raise BadInput(
            "Transposing by {transpose} semitones is too far; choose a number from "
            "-{most} to {most}.",
            transpose=transpose,
            most=MOST_SEMITONES,
        )


def _best(search: Search, piece: Piece) -> int:
    return _cheapest(search, moves(search), piece.key)


def _cheapest(search: Search, tried: Sequence[int], key: Key) -> int:
    """The move of least cost; the nearer where two cost the same."""
    best: tuple[int, int] | None = None
    for move in tried:
        extra = key_cost(search, key, move)
        most = None if best is None else best[0] - extra
        laid = search.lay(move, QUICK, most=most)
        if laid is not None and (
            best is None or (laid.cost + extra, abs(move)) < (best[0], abs(best[1]))
        ):
            best = laid.cost + extra, move
    return best[1] if best else 0


# Thousandths a sound for each sharp or flat, and more beyond three, for the reader's sake.
SIGNATURE, MANY_SIGNS = 25, 20
# Thousandths a sound for each semitone moved, and more beyond an octave: a tune far from its
# pitch sounds another.
AWAY, FAR_AWAY = 5, 30
# Thousandths a sound where guitar music goes elsewhere than to the shapes it was written in: they
# are what a study is there to teach, and what its player knows (common practice, no source).
SHAPES = 250


def key_cost(search: Search, key: Key, move: int) -> int:
    """What the key signature after ``move``, the way there and shapes that are not those of the
    guitar add to the cost of a piece."""
    signs = abs(key.fifths + shift_by(key, move).fifths)
    away = AWAY * min(abs(move), 12) + FAR_AWAY * max(0, abs(move) - 12)
    shapes = 0 if search.shapes_kept in (None, move) else SHAPES
    each = SIGNATURE * signs + MANY_SIGNS * max(0, signs - 3) + away + shapes
    return each * len(search.texture.sounds)


def _octave(search: Search, asked: int, said: list[Change], piece: Piece) -> int:
    """The semitones asked for, or another octave where only that one holds the tune."""
    if not asked and search.stays:
        return asked
    least = _nearest(search, asked)
    if least != asked:
        said.append(_whole(piece, WHOLE, "", "", (least - asked) // 12))
    return least


def _nearest(search: Search, asked: int) -> int:
    """The octave of a move that loses least of the tune, the nearest of several."""
    line, where = search.texture.tune, search.options.where
    near = sorted((asked + 12 * k for k in range(-6, 7)), key=lambda m: abs(m - asked))
    return min(near, key=lambda m: sum(not where(p + m) for p in line))


def _to_key(found: Sequence[int], now: Key, target: Key) -> list[int]:
    up = 7 * (target.fifths - now.fifths) % 12
    return [m for m in found if (m - up) % 12 == 0]


def _whole(piece: Piece, kind: ChangeKind, before: str, after: str, amount: int) -> Change:
    number = piece.bars[0].number if piece.bars else "1"
    return Change("", 0, number, Fraction(0), Fraction(1), kind, before=before, after=after,
                  amount=amount)  # fmt: skip


def _in_mode(wanted: Key, now: Key) -> Key:
    """The wanted key in the mode the piece is written in.

    Scores often carry a signature without its mode, so a key of the other mode is taken by
    its signature.
    """
    return replace(wanted, mode=now.mode)
