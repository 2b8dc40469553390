"""Which key suits a piece, an instrument and a hand.

The piece is laid on the instrument in every key, in every octave that keeps
its tune there. The arranging search prices each; the leading ones are then
fingered by the engine, wholly or, for a long piece, on an excerpt. The
ranking grows while this goes on, and can be shown as it does.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace

from workbench.arranging.arrange import key_cost, moves
from workbench.arranging.ceiling import cut_off
from workbench.arranging.laying import at_length, laid_piece
from workbench.arranging.options import Options
from workbench.arranging.parts import led
from workbench.arranging.search import QUICK, Laid, Search
from workbench.arranging.sounds import TUNE, Texture, texture
from workbench.arranging.transpose import shift_by, transposed
from workbench.arranging.weights import Wishes
from workbench.fingering.engine import solve
from workbench.fingering.types import Level, Settings
from workbench.instrument.model import Hand, Instrument
from workbench.music.errors import BadInput
from workbench.music.model import Key, Piece

Progress = Callable[[int, int], None]

LEADING = 3  # so many keys at the top rest on a real fingering
MOST_FINGERED = 8  # no more are fingered in search of them
FINGERED = 250  # thousandths of arranging cost for a unit of the engine's effort a note
WHOLE_NOTES = 64  # up to so many notes the whole piece is fingered
EXCERPT_BARS = 6  # of a longer one: the first and the densest so many bars
#: Grips of a level: highest fret, most fingers, millimetres beyond comfort (common
#: practice, no source).
LEVEL_GRIPS = {
    "beginner": (3, 2, 0), "easy": (5, 3, 0), "middle": (7, 4, 0), "advanced": (12, 4, 5),
}  # fmt: skip


@dataclass(frozen=True)
class Candidate:
    """One key for a piece.

    ``transposition`` in semitones from the source; ``unplayable`` counts notes left out;
    ``changed`` those put in another octave or shortened, ``tune`` those of the tune among
    both, ``bass`` the bass notes left out. ``effort`` is the cost of an average note in the
    fingering engine's units where ``fingered``, else estimated; ``cost`` what arranging
    costs a sound, in thousandths. ``top_fret`` is the highest fret, ``open_share`` the
    share of open strings, ``level_share`` that of grips that suit the level, ``shapes``
    whether guitar music keeps its shapes of the left hand.
    """

    key: str
    transposition: int
    unplayable: int
    changed: int
    effort: float
    cost: int = 0
    fingered: bool = False
    tune: int = 0
    bass: int = 0
    top_fret: int = 0
    open_share: float = 0.0
    level_share: float = 1.0
    fifths: int = 0
    shapes: bool = False


def candidate_keys(
    piece: Piece,
    instrument: Instrument,
    hand: Hand,
    *,
    settings: Settings | None = None,
    wishes: Wishes | None = None,
    progress: Progress | None = None,
    growing: Callable[[tuple[Candidate, ...]], None] | None = None,
    made: Callable[[int], Piece] | None = None,
) -> tuple[Candidate, ...]:
    """The twelve keys in their octaves ranked, best first, for the student's ``settings``
    and the teacher's ``wishes``.

    ``progress(done, all)`` is told of each step; ``growing`` is given the ranking so far.
    ``made`` gives the piece, in its own pitch, that is to be moved by so many semitones, where
    that is not the same for all (``leadsheet.solos``).
    Raises BadInput where the piece has no notes.
    """
    if not piece.notes:
        raise BadInput(
            "'{title}' has no notes, so no key suits it better than another.", title=piece.title
        )
    wishes = wishes or Wishes()
    options = Options(instrument, hand, wishes)

    def search_of(some: Piece) -> tuple[Piece, Search]:
        some = led(some, wishes)
        return some, Search(texture(some, wishes.tune_part, wishes.bass_part), options)

    plain = search_of(piece)
    tried = moves(plain[1])
    level = (settings or Settings()).level
    steps = len(tried) + LEADING
    found: dict[int, Candidate] = {}
    kept: dict[int, tuple[Piece, Search, Laid]] = {}

    def ranked() -> tuple[Candidate, ...]:
        # what is not fingered yet is taken to be as hard for the hand as those that are
        efforts = [c.effort for c in found.values() if c.fingered]
        like = round(FINGERED * (sum(efforts) / len(efforts) - 1)) if efforts else 0
        rows = (c if c.fingered else replace(c, cost=c.cost + like) for c in found.values())
        return tuple(sorted(rows, key=lambda c: (c.cost, abs(c.transposition))))

    for at, move in enumerate(tried):
        there, search = plain if made is None else search_of(made(move))
        laid = search.lay(move, QUICK)
        assert laid is not None
        kept[move] = there, search, at_length(search, laid, move)
        found[move] = _candidate(*kept[move], move, level)
        if growing is not None:
            growing(ranked())
        if progress is not None:
            progress(at + 1, steps)
    done = 0
    while True:
        waiting = [c for c in ranked()[:LEADING] if not c.fingered]
        if not waiting or done >= MOST_FINGERED:
            break
        for one in waiting:
            move = one.transposition
            found[move] = _fingered(found[move], *kept[move], hand, settings)
            done += 1
            if growing is not None:
                growing(ranked())
            if progress is not None and done <= LEADING:
                progress(len(tried) + done, steps)
    return ranked()


def _candidate(piece: Piece, search: Search, laid: Laid, move: int, level: Level) -> Candidate:
    sounds = search.texture
    count_ = max(1, len(sounds.sounds))
    tune = _altered(sounds, laid)
    places = [p for p in laid.places if p is not None]
    shift = shift_by(piece.key, move)
    key = Key(piece.key.fifths + shift.fifths, piece.key.mode)
    left_out = sum(len(s.notes) for s, k in zip(sounds.sounds, laid.octaves, strict=True)
                   if k is None)  # fmt: skip
    changed = sum(
        len(s.notes)
        for s, k, cut in zip(sounds.sounds, laid.octaves, laid.cuts, strict=True)
        if k or (k is not None and cut is not None)
    )
    cost = round((laid.cost + key_cost(search, piece.key, move)) / count_)
    return Candidate(
        key.name,
        move,
        left_out,
        changed,
        round(cost / 1000, 3),
        cost + FINGERED,  # as if it had the effort of one unit, until it is fingered
        False,
        tune,
        sum(k is None and s.role == "bass" for s, k in zip(sounds.sounds, laid.octaves,
                                                           strict=True)),
        max((fret for _, fret in places), default=0),
        sum(fret == 0 for _, fret in places) / max(1, len(places)),
        _level_share(search, laid, level),
        key.fifths,
        search.shapes_kept == move,
    )  # fmt: skip


def _altered(sounds: Texture, laid: Laid) -> int:
    """Notes of the tune that leave their phrase's octave or are left out."""
    return sum(
        sounds.sounds[i].role == TUNE and laid.octaves[i] != laid.phrase_octaves[sounds.phrase[m]]
        for m, struck in enumerate(sounds.struck)
        for i in struck
    )


def _level_share(search: Search, laid: Laid, level: Level) -> float:
    most_fret, most_fingers, most_excess = LEVEL_GRIPS.get(level, LEVEL_GRIPS["middle"])
    good = 0
    for struck in search.texture.struck:
        places = tuple(sorted(p for i in struck if (p := laid.places[i]) is not None))
        got = search.options.shapes.ease(places)
        high = max((f for _, f in places), default=0)
        good += (
            got is not None
            and got.excess <= most_excess
            and got.fingers <= most_fingers
            and high <= most_fret
        )
    return good / max(1, len(search.texture.struck))


def excerpt(piece: Piece) -> Piece:
    """The bars an effort is measured on: all of a short piece, else the first
    bars and the densest ones, without repeats."""
    if len(piece.notes) <= WHOLE_NOTES or len(piece.bars) <= 2 * EXCERPT_BARS:
        return piece
    counts = [len(bar.notes) for bar in piece.bars]
    first = range(EXCERPT_BARS)
    starts = range(EXCERPT_BARS, len(counts) - EXCERPT_BARS + 1)
    dense = max(starts, key=lambda s: (sum(counts[s : s + EXCERPT_BARS]), -s))
    chosen = [*first, *range(dense, dense + EXCERPT_BARS)]
    bars = tuple(
        replace(piece.bars[old].without_form(), index=new) for new, old in enumerate(chosen)
    )
    return replace(piece, bars=bars)


def _fingered(
    one: Candidate, piece: Piece, search: Search, laid: Laid, hand: Hand, settings: Settings | None
) -> Candidate:
    """A candidate with the engine's word: the effort of a note, and what no hand reaches."""
    shift = shift_by(piece.key, one.transposition)
    done, _ = laid_piece(transposed(piece, shift), search.texture, laid, search.options, shift)
    part = excerpt(done)
    neck = cut_off(search.options.instrument, part, search.options.wishes.top_fret)
    got = solve(part, neck, hand, settings=settings)
    effort = got.cost / 1000 / max(1, len(part.notes))
    stuck = sum(1 for bar in got.bars for note in bar.notes if note.impossible)
    # the excerpt speaks for the whole
    stuck = round(stuck * len(done.notes) / max(1, len(part.notes)))
    return replace(
        one,
        effort=round(effort, 3),
        cost=one.cost - FINGERED + round(FINGERED * effort),
        unplayable=one.unplayable + stuck,
        fingered=True,
    )


def by_key(ranked: tuple[Candidate, ...]) -> tuple[Candidate, ...]:
    """The best octave of every key, in the order of the ranking."""
    best: Mapping[int, Candidate] = {c.transposition % 12: c for c in reversed(ranked)}
    return tuple(c for c in ranked if best[c.transposition % 12] is c)
