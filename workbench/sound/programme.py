"""What is to be played: a span of the playing order, round after round."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from fractions import Fraction

from workbench.fingering.types import Fingering
from workbench.instrument.model import Instrument
from workbench.music.beats import beat_length
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.sound.bank import Bank
from workbench.sound.clicks import beats_of, placed_click
from workbench.sound.hearing import HeardVersion, Manner
from workbench.sound.mix import Mix, MixedSound, frame
from workbench.sound.sounding import Sounding
from workbench.sound.timing import BarTime, bar_times, soundings

PART = 8  # bars made in one go
AROUND = 2  # bars before and after that may bear on how their notes end


@dataclass(frozen=True)
class Round:
    """One round, or a part of it, as samples: ``size`` frames until the next begins (what still
    rings then sounds into it). ``counting`` marks the bar counted in before."""

    mix: Mix
    size: int
    times: tuple[BarTime, ...]
    notes: tuple[Sounding, ...]
    tempo: float
    number: int = 0
    counting: bool = False
    version: int = 0
    gaps: tuple[tuple[int, int, str], ...] = ()  # from, until, note: cut, and still written

    def missed(self, at: int) -> frozenset[str]:
        """Ids of the notes that are written to sound at a frame, and are cut."""
        return frozenset(note for begin, end, note in self.gaps if begin <= at < end)

    def sounding(self, at: int) -> frozenset[str]:
        """Ids of the notes that sound at a frame of the round."""
        return frozenset(
            name
            for s in self.notes
            if frame(s.start) <= at < frame(s.end)
            for name in (s.note, *s.also)
            if name
        )

    def bar_at(self, at: int) -> BarTime | None:
        """The bar that is played at a frame of the round."""
        found = None
        for time in self.times:
            if frame(time.start) > at:
                break
            found = time
        return found


@dataclass
class Programme:
    """A span of a piece: ``order`` are written bar indices as played, the first of which
    stands at ``position`` of the whole playing order; play begins at ``onset`` of it.
    ``against`` is another version of the same bars, played in every other round.
    """

    piece: Piece
    fingering: Fingering | None
    instrument: Instrument | None
    order: Sequence[int]
    manner: Manner = field(default_factory=Manner)
    position: int = 0
    onset: Fraction = Fraction(0)
    bank: Bank | None = None
    against: HeardVersion | None = None

    def __post_init__(self) -> None:
        if not self.order:
            raise BadInput("There is nothing to play here; choose a bar with music.")
        self.bank = self.bank or Bank(self.instrument)

    def rounds(self) -> Iterator[Round]:
        """Round after round, each in parts of a few bars, so that the first is there at
        once; without a loop there is one round, with another version two."""
        manner, number = self.manner, 0
        made: dict[tuple[float, bool, int], Round] = {}
        if manner.count_in:
            yield self._count_in(self._tempo(0))
        while True:
            tempo = self._tempo(number)
            other = self.against is not None and number % 2 == 1
            if made and next(iter(made))[0] != tempo:
                made.clear()
            for first in range(0, len(self.order), PART):
                if (tempo, other, first) not in made:
                    made[tempo, other, first] = self._part(tempo, other, first)
                yield replace(made[tempo, other, first], number=number)
            number += 1
            if not manner.loop and number >= (2 if self.against is not None else 1):
                return

    def _tempo(self, number: int) -> float:
        trainer = self.manner.trainer
        return trainer.tempo(number) if trainer else self.manner.tempo

    def _part(self, tempo: float, other: bool, first: int) -> Round:
        """The bars from ``first`` of the order on, played with their neighbours in mind."""
        as_ = HeardVersion(self.piece, self.fingering, self.instrument)
        if other and self.against is not None:
            as_ = self.against
        last = min(len(self.order), first + PART)
        low = max(0, first - AROUND)
        around = bar_times(as_.piece, self.order[low : last + AROUND], tempo)
        played = soundings(as_.piece, around, as_.fingering, as_.instrument)
        begin, closing = around[first - low], around[last - 1 - low]
        opening = as_.piece.bars[begin.index]
        skip = begin.start
        if not first and opening.length:
            skip += float(self.onset) * begin.seconds / float(opening.length)
        end = closing.start + closing.seconds
        notes = _between(played, skip, end, last == len(self.order) and self.manner.loop)
        times = tuple(
            replace(t, start=t.start - skip, position=self.position + low + t.position)
            for t in around[first - low : last - low]
        )
        assert self.bank is not None
        mix = Mix(notes, self.bank, self.manner.gain)
        if self.manner.metronome:
            mix.add(_clicks(as_.piece, times))
        gaps = _gaps(notes, times, as_)
        size = max(1, frame(end - skip))
        return Round(mix, size, times, notes, tempo, version=int(other), gaps=gaps)

    def _count_in(self, tempo: float) -> Round:
        """One bar of clicks; before a pickup or a bar's middle, also what leads there."""
        bar = self.piece.bars[self.order[0]]
        (time,) = bar_times(self.piece, self.order[:1], tempo)
        quarter = time.seconds / float(bar.length) if bar.length else 60 / self.piece.tempo
        full = Fraction(4 * bar.time_signature[0], bar.time_signature[1])
        missing = full - bar.length if bar.pickup else Fraction(0)
        length = full + max(Fraction(0), missing) + self.onset
        beat, at, clicks = beat_length(bar.time_signature), Fraction(0), []
        while at < length:
            clicks.append(placed_click(float(at) * quarter, at % full == 0))
            at += beat
        assert self.bank is not None
        mix = Mix((), self.bank)
        mix.add(clicks)
        return Round(mix, frame(float(length) * quarter), (), (), tempo, counting=True)


def _between(
    notes: Sequence[Sounding], skip: float, end: float, ends_here: bool
) -> tuple[Sounding, ...]:
    """What begins from ``skip`` to ``end`` seconds, told from there; slurs keep what they
    carry on. ``ends_here``: nothing is held past the end, for a loop begins anew."""

    def moved(s: Sounding) -> Sounding:
        return replace(s, start=s.start - skip, after=moved(s.after) if s.after else None)

    found = [moved(s) for s in notes if skip - 1e-9 <= s.start < end - 1e-9]
    if ends_here:
        found = [replace(s, seconds=min(s.seconds, end - skip - s.start)) for s in found]
    return tuple(found)


def _clicks(piece: Piece, times: Sequence[BarTime]) -> list[MixedSound]:
    """The metronome through these bars."""
    out = []
    for time in times:
        bar = piece.bars[time.index]
        for onset, accented in beats_of(bar) if bar.length else ():
            at = time.start + float(onset) * time.seconds / float(bar.length)
            if at >= -1e-9:
                out.append(placed_click(max(0.0, at), accented))
    return out


def _gaps(
    notes: Sequence[Sounding], times: Sequence[BarTime], as_: HeardVersion
) -> tuple[tuple[int, int, str], ...]:
    """Where notes are missed: from their cut until their written end."""
    if as_.fingering is None:
        return ()
    cut = {n.id: n for bar in as_.fingering.bars for n in bar.notes if n.held < n.duration}
    out = []
    for s in notes:
        note = cut.get(s.note)
        if note is None:
            continue
        time = next((t for t in reversed(times) if t.index == s.bar and t.start <= s.start + 0.2),
                    None)  # fmt: skip
        if time is None:
            continue
        quarter = time.seconds / float(as_.piece.bars[s.bar].length)
        until = s.start + float(note.duration) * quarter
        out.append((frame(s.end), frame(until), s.note))
    return tuple(out)
