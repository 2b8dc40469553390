"""Easier and harder versions of one score on one instrument, and what differs between them.

All versions stand in one key, so that a group may play them together: each is the same
original, laid more or less strictly and graded as fingered.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from workbench.arranging.arrange import Arranged, arrange
from workbench.arranging.ceiling import cut_off
from workbench.arranging.changes import Change
from workbench.arranging.decisions import Decisions
from workbench.arranging.weights import STRICT, Strict, Wishes
from workbench.fingering.engine import solve
from workbench.fingering.types import Fingering, Settings
from workbench.instrument.model import Hand, Instrument
from workbench.language.message import Message, counted, in_a_row, message
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.teaching.grading.grade import Grade, GradeModel, grade_piece

LOW_FRET = 5  # the highest fret of the version that keeps to the lower positions


@dataclass(frozen=True)
class LaidVersion:
    """One way to lay the score: its wishes, the music, the fingers and the estimate."""

    wishes: Wishes
    placed: Arranged
    fingering: Fingering
    grade: Grade


def versions(
    piece: Piece, instrument: Instrument, hand: Hand, *, key: str | None = None,
    transpose: int | None = None, settings: Settings | None = None,
    top_fret: int | None = None, model: GradeModel | None = None, base: Wishes | None = None,
    wanted: Decisions | None = None, told: Callable[[float], None] | None = None,
) -> tuple[LaidVersion, ...]:  # fmt: skip
    """The versions of a score, the easiest by its estimate first: every strictness, and the
    easy ones in the lower positions as well, save those that are neither easier nor fuller
    than another; ``base`` says which part is tune and bass,
    ``wanted`` holds the teacher's decisions, which all versions keep to. ``told`` is given
    the share done."""
    top = Wishes().top_fret if top_fret is None else top_fret

    def of(fret: int, strict: Strict = "playable") -> Wishes:
        return replace(base or Wishes(), top_fret=fret, strict=strict)

    first = arrange(piece, instrument, key=key, transpose=transpose, hand=hand, wishes=of(top),
                    wanted=wanted)  # fmt: skip
    low = [of(min(top, LOW_FRET), s) for s in ("easy", "sparse")]
    asked = tuple(dict.fromkeys([*low, *(of(top, s) for s in STRICT)]))
    out: list[LaidVersion] = []
    for at, wishes in enumerate(asked):
        if told is not None:
            told(at / len(asked))
        placed = first
        if wishes != first.wishes:
            placed = arrange(piece, instrument, transpose=first.transposition, hand=hand,
                             wishes=wishes, wanted=wanted)  # fmt: skip
            moved = placed.transposition != first.transposition
            if moved or (wishes.top_fret < top and placed.kept.tune < first.kept.tune):
                continue  # this low the tune does not lie in the key of the others
            placed = replace(placed, changes=(*_whole(first), *placed.changes))
        neck = cut_off(instrument, placed.piece, wishes.top_fret)
        fingering = solve(placed.piece, neck, hand, settings=settings)
        grade = grade_piece(placed.piece, fingering, instrument, hand, model)
        out.append(LaidVersion(wishes, placed, fingering, grade))
    usual = Wishes().strict
    out.sort(key=lambda v: (v.grade.score, -len(v.placed.piece.notes), v.wishes.strict != usual))
    fuller = [out[0]]
    for version in out[1:]:
        if len(version.placed.piece.notes) > len(fuller[-1].placed.piece.notes):
            fuller.append(version)
    return tuple(fuller)


def _whole(placed: Arranged) -> tuple[Change, ...]:
    return tuple(change for change in placed.changes if not change.note)


def aimed(found: Sequence[LaidVersion], grade: int) -> LaidVersion:
    """The fullest version that asks no more than ``grade`` (0-8); the easiest where all ask
    more. Raises BadInput where the grade is none."""
    if not 0 <= grade <= 8:
        raise BadInput("Grade {grade}: choose a grade from 0 to 8.", grade=grade)
    fits = [v for v in found if v.grade.number <= grade]
    return max(fits, key=lambda v: len(v.placed.piece.notes)) if fits else found[0]


def differs(one: Piece, other: Piece) -> tuple[Message, ...]:
    """What the other version of the music has more, fewer or elsewhere, a sentence for each
    bar; both are laid from one original in one key."""
    was = {n.id: n for n in one.notes}
    now = {n.id: n for n in other.notes}
    more: Counter[int] = Counter()
    fewer: Counter[int] = Counter()
    moved: Counter[int] = Counter()
    for name, bar in other.bar_of.items():
        if name not in was:
            more[bar] += 1
        elif was[name].midi != now[name].midi:
            moved[bar] += 1
    for name, bar in one.bar_of.items():
        fewer[bar] += name not in now
    out = []
    for here in other.bars:
        at = here.index
        said = []
        if more[at]:
            said.append(counted(more[at], "{n} note more", "{n} notes more"))
        if fewer[at]:
            said.append(counted(fewer[at], "{n} note fewer", "{n} notes fewer"))
        if moved[at]:
            said.append(counted(moved[at], "{n} in another octave", "{n} in another octave"))
        if said:
            out.append(message("Bar {bar}: {what}.", bar=here.number, what=in_a_row(said)))
    return tuple(out)
