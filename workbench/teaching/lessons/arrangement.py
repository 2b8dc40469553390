"""What arranging made of every note of the original, and what the teacher decides of it.

The original stays as it was read; a lesson holds the arrangement and the decisions. To
decide is to add a pin and to arrange anew around all pins: ``decided`` gives the pins,
``laid_anew`` the music, ``broken`` tells which of them no hand or instrument can keep.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from workbench.arranging.decisions import FREE, Decision, decisions
from workbench.instrument.model import Hand, Instrument
from workbench.instrument.table import hand as find_hand
from workbench.instrument.table import instrument as find_instrument
from workbench.music.errors import BadInput
from workbench.music.model import Note, Piece
from workbench.music.ringing.sounds import stems_of
from workbench.teaching.lessons.lesson import Lesson

if TYPE_CHECKING:
    from workbench.arranging.arrange import Arranged

RESTORE, OUT, UP, DOWN, ACCEPT, FREED, VOICE = (
    "restore", "out", "up", "down", "accept", "free", "voice",
)  # fmt: skip


@dataclass(frozen=True)
class Fate:
    """A note of the original and what became of it: ``now`` is None where it is left out,
    ``octaves`` how far it lies from where the whole piece went, ``short`` whether it ends
    early, ``decision`` the teacher's word on it."""

    source: Note
    bar: int
    now: Note | None
    octaves: int = 0
    short: bool = False
    decision: Decision = FREE

    @property
    def altered(self) -> bool:
        return self.now is None or bool(self.octaves) or self.short


def comparable(lesson: Lesson, source: Piece) -> bool:
    """Whether the lesson's bars still are those of the original."""
    return len(source.bars) == len(lesson.piece.bars) and all(
        a.length == b.length for a, b in zip(source.bars, lesson.piece.bars, strict=True)
    )


def open_to_decisions(lesson: Lesson, source: Piece) -> bool:
    """Whether the arrangement can be made anew without losing the teacher's corrections."""
    ids = source.bar_of
    return (
        not lesson.corrected
        and comparable(lesson, source)
        and all(n.id in ids for n in lesson.piece.notes)
    )


def fates(lesson: Lesson, source: Piece) -> dict[str, Fate]:
    """What became of every note of the original, by its id."""
    now = {n.id: n for n in lesson.piece.notes}
    said = decisions(lesson.wanted)
    out = {}
    for bar in source.bars:
        for note in bar.notes:
            got = now.get(note.id)
            octaves = 0 if got is None else (got.midi - note.midi - lesson.transposition) // 12
            short = got is not None and got.duration < note.duration
            out[note.id] = Fate(note, bar.index, got, octaves, short, said.get(note.id, FREE))
    return out


def decided(
    lesson: Lesson, source: Piece, notes: Iterable[str], act: str, voice: int | None = None
) -> dict[str, Decision]:
    """All decisions of the lesson with ``act`` done to some notes of the original.

    ``act`` is one of RESTORE (it sounds again in full, in the nearest octave the
    instrument has), OUT, UP and DOWN (an octave from where it lies), VOICE (with
    ``voice``), ACCEPT (as it is now, and no more to be asked about) and FREED. The two
    stems of one sound go together. Raises BadInput where a note can go no further.
    """
    out, now = decisions(lesson.wanted), fates(lesson, source)
    playing = find_instrument(lesson.instrument, lesson.capo)
    for name in dict.fromkeys(s for n in notes for s in stems_of(source, n)):
        fate = now[name]
        one = out.get(name, FREE)
        if act == FREED:
            out.pop(name, None)
            continue
        if act == ACCEPT:
            one = _accepted(one, fate)
        elif act == OUT:
            one = replace(one, gone=True, octaves=None, accepted=False)
        elif act == RESTORE:
            one = _restored(one, fate, lesson, playing)
        elif act in (UP, DOWN):
            octaves = fate.octaves + (1 if act == UP else -1)
            if not _there(fate, lesson, playing, octaves):
                raise BadInput(
                    "The instrument does not have this note in that octave up to fret {fret}.",
                    fret=lesson.top_fret,
                )
            one = replace(one, gone=False, octaves=octaves, accepted=False)
        else:
            one = replace(one, voice=voice)
        out[name] = one
    return out


def _accepted(one: Decision, fate: Fate) -> Decision:
    if fate.now is None:
        return replace(one, gone=True, octaves=None, accepted=True)
    return replace(one, octaves=fate.octaves if fate.octaves else one.octaves, accepted=True)


def _restored(one: Decision, fate: Fate, lesson: Lesson, playing: Instrument) -> Decision:
    octaves = sorted(range(-3, 4), key=lambda k: (abs(k), -k))
    nearest = next((k for k in octaves if _there(fate, lesson, playing, k)), None)
    if nearest is None:
        raise BadInput(
            "The instrument has this note in no octave up to fret {fret}.", fret=lesson.top_fret
        )
    return replace(one, gone=False, octaves=nearest, whole=fate.short or one.whole, accepted=False)


def _there(fate: Fate, lesson: Lesson, playing: Instrument, octaves: int) -> bool:
    midi = fate.source.midi + lesson.transposition + 12 * octaves
    return any(fret <= lesson.top_fret for _, fret in playing.places(midi))


def laid_anew(
    lesson: Lesson, source: Piece, wanted: dict[str, Decision],
    hand: Hand | None = None,
) -> Arranged:  # fmt: skip
    """The original laid on the lesson's instrument, in its key, around these decisions.

    Raises BadInput with one sentence where a decision cannot be kept.
    """
    from workbench.arranging.arrange import arrange

    placed = arrange(
        source,
        find_instrument(lesson.instrument, lesson.capo),
        transpose=lesson.transposition,
        hand=hand or find_hand(lesson.hand),
        wishes=lesson.wishes,
        wanted=wanted,
    )
    refused = broken(source, placed, wanted)
    if refused:
        bars = dict.fromkeys(source.bars[source.bar_of[n]].number for n in refused)
        raise BadInput(
            "Bar {bars}: no hand can play all the notes you hold to at once; let one of them "
            "go first, or allow higher frets.",
            bars=", ".join(bars),
        )
    return placed


def broken(source: Piece, placed: Arranged, wanted: dict[str, Decision]) -> tuple[str, ...]:
    """The notes whose decisions the arrangement does not keep."""
    was, now = {n.id: n for n in source.notes}, {n.id: n for n in placed.piece.notes}
    out = []
    for name, one in wanted.items():
        if name not in was:
            continue
        got = now.get(name)
        kept = got is None if one.gone else True
        if one.octaves is not None:
            kept = got is not None and (
                got.midi == was[name].midi + placed.transposition + 12 * one.octaves
            )
        if one.whole and not one.gone:
            kept = kept and got is not None and got.duration == was[name].duration
        if not kept:
            out.append(name)
    return tuple(out)
