"""Which key suits a piece, an instrument and a hand.

All twelve keys of the piece's mode are laid on the instrument. A quick
estimate sorts them; the most promising are then fingered by the engine,
wholly or, for a long piece, on an excerpt, until the leading ones all rest
on a real fingering. Keys never fingered keep the estimate, brought to the
engine's scale, and their reasons say so.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable
from dataclasses import dataclass, replace
from fractions import Fraction

from workbench.arranging.arrange import Arranged, arrange
from workbench.arranging.transpose import shift_by
from workbench.fingering.engine import solve
from workbench.fingering.types import Settings
from workbench.instrument.model import Hand, Instrument
from workbench.language.numbers import in_words
from workbench.language.speech import count, say
from workbench.music.errors import BadInput
from workbench.music.model import Key, Piece

Progress = Callable[[int, int], None]

LEADING = 3  # so many keys at the top must rest on a real fingering
FIRST = 4  # so many are fingered before looking again
WHOLE_NOTES = 64  # up to so many notes the whole piece is fingered
EXCERPT_BARS = 6  # of a longer one: the first and the densest so many bars
HIGH_FRET = 7  # above it a hand is out of the easy positions (common practice, no source)

# What the ranking adds to the effort of a note, in the engine's units a note.
UNPLAYABLE = 20.0  # per share of notes lost
CHANGED = 3.0  # per share of notes changed
ACCIDENTAL = 0.02  # per sharp or flat in the signature, for the reader's sake


@dataclass(frozen=True)
class Candidate:
    """One key for a piece.

    ``transposition`` in semitones from the source; ``unplayable`` counts notes
    lost, by dropping or because no hand can play them; ``changed`` those put
    in another octave or shortened; ``effort`` is the cost of an average note,
    in the fingering engine's units; ``reasons`` are sentences.
    """

    key: str
    transposition: int
    unplayable: int
    changed: int
    effort: float
    reasons: tuple[str, ...]


@dataclass
class _Draft:
    arranged: Arranged
    key: Key
    lost: int
    changed: int
    open_share: float
    top_fret: int
    estimate: float
    effort: float | None = None
    bars: int = 0
    stuck: int = 0

    def rank(self, scale: float) -> float:
        effort = self.estimate * scale if self.effort is None else self.effort
        notes = max(1, len(self.arranged.piece.notes) + self.lost)
        return (
            effort
            + UNPLAYABLE * (self.lost + self.stuck) / notes
            + CHANGED * self.changed / notes
            + ACCIDENTAL * abs(self.key.fifths)
        )


def candidate_keys(
    piece: Piece,
    instrument: Instrument,
    hand: Hand,
    *,
    settings: Settings | None = None,
    progress: Progress | None = None,
) -> tuple[Candidate, ...]:
    """The twelve keys ranked, best first, for the student's ``settings``;
    ``progress(done, all)`` is told of each step.

    Raises BadInput where the piece has no notes.
    """
    if not piece.notes:
        raise BadInput(f"'{piece.title}' has no notes, so no key suits it better than another.")
    drafts: list[_Draft] = []
    for step in range(12):
        fifths = piece.key.fifths + shift_by(piece.key, step).fifths
        drafts.append(_draft(piece, instrument, Key(fifths, piece.key.mode)))
        _tell(progress, step + 1)
    scale = 1.0
    solved = 0
    while True:
        drafts.sort(key=lambda d: d.rank(scale))
        look = FIRST if not solved else LEADING
        waiting = [d for d in drafts[:look] if d.effort is None]
        if not waiting:
            break
        for draft in waiting:
            _finger(draft, instrument, hand, settings)
            solved += 1
            _tell(progress, 12 + solved)
        scale = _scale(drafts)
    return tuple(_candidate(draft, scale) for draft in drafts)


def _tell(progress: Progress | None, done: int) -> None:
    if progress is not None:
        progress(done, max(done, 12 + FIRST + 1))


def _draft(piece: Piece, instrument: Instrument, key: Key) -> _Draft:
    got = arrange(piece, instrument, key=key.name)
    kinds = [change.kind for change in got.changes if change.note]
    lost = kinds.count("dropped")
    # the lowest place of each note; the hand may take another, but not a lower one
    frets = [min(fret for _, fret in instrument.places(n.midi)) for n in got.piece.notes]
    count = max(1, len(frets))
    return _Draft(
        got,
        key,
        lost,
        len(kinds) - lost,
        frets.count(0) / count,
        max(frets, default=0),
        _estimate(got.piece, instrument),
    )


def _estimate(piece: Piece, instrument: Instrument) -> float:
    """A cheap guess at the effort of a note: fingers at once, and how high they go."""
    at: dict[Fraction, list[int]] = defaultdict(list)
    for bar in piece.bars:
        for note in bar.notes:
            lowest = min(fret for _, fret in instrument.places(note.midi))
            at[piece.starts[bar.index] + note.onset].append(lowest)
    total, before = 0.0, 0
    for _, frets in sorted(at.items()):
        down = [fret for fret in frets if fret]
        total += sum(0.4 + 0.05 * fret + 0.3 * max(0, fret - HIGH_FRET) for fret in down)
        total += 0.4 * max(0, len(down) - 1)
        if down:
            total += 0.15 * abs(down[0] - before) if before else 0.0
            before = down[0]
    return total / max(1, len(piece.notes))


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


def _finger(draft: _Draft, instrument: Instrument, hand: Hand, settings: Settings | None) -> None:
    part = excerpt(draft.arranged.piece)
    got = solve(part, instrument, hand, settings=settings)
    draft.effort = got.cost / 1000 / max(1, len(part.notes))
    draft.bars = len(part.bars)
    stuck = sum(1 for bar in got.bars for note in bar.notes if note.impossible)
    # the excerpt speaks for the whole
    draft.stuck = round(stuck * len(draft.arranged.piece.notes) / max(1, len(part.notes)))


def _scale(drafts: list[_Draft]) -> float:
    known = [(d.effort, d.estimate) for d in drafts if d.effort is not None]
    guessed = sum(estimate for _, estimate in known)
    return sum(effort for effort, _ in known) / guessed if guessed else 1.0


def _candidate(draft: _Draft, scale: float) -> Candidate:
    estimated = draft.effort is None
    effort = draft.estimate * scale if draft.effort is None else draft.effort
    return Candidate(
        draft.arranged.key,
        draft.arranged.transposition,
        draft.lost + draft.stuck,
        draft.changed,
        round(effort, 3),
        tuple(_reasons(draft, estimated)),
    )


def _reasons(draft: _Draft, estimated: bool) -> list[str]:
    said = [
        say("{open_share:.0%} of the notes can be open strings.", open_share=draft.open_share),
        say("The highest note lies at fret {top_fret} or above.", top_fret=draft.top_fret)
        if draft.top_fret > HIGH_FRET
        else say("No note needs a fret above {top_fret}.", top_fret=draft.top_fret),
        _signature(draft.key),
    ]
    if draft.lost:
        said.append(say("{notes} must be left out.", notes=_notes(draft.lost)))
    if draft.stuck:
        said.append(say("About {notes} cannot be reached by this hand.", notes=_notes(draft.stuck)))
    if draft.changed:
        said.append(say("{notes} moved by an octave or shortened.", notes=_notes(draft.changed)))
    if not (draft.lost or draft.stuck or draft.changed):
        said.append(say("Every note stays as it is."))
    whole = draft.bars == len(draft.arranged.piece.bars)
    if estimated:
        said.append(say("The effort is estimated from open strings and frets, not fingered."))
    elif not whole:
        said.append(
            say("The effort was measured on {bars} bars, the densest among them.", bars=draft.bars)
        )
    return said


def _signature(key: Key) -> str:
    if not key.fifths:
        return say("No sharps or flats in the signature.")
    number = abs(key.fifths)
    word = _capital(number)
    if key.fifths > 0:
        words = count(
            number, "{word} sharp in the signature.", "{word} sharps in the signature.", word=word
        )
    else:
        words = count(
            number, "{word} flat in the signature.", "{word} flats in the signature.", word=word
        )
    return words


def _notes(number: int) -> str:
    return count(number, "{word} note", "{word} notes", word=_capital(number))


def _capital(number: int) -> str:
    word = in_words(number)
    return word[:1].upper() + word[1:]
