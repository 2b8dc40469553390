"""What arranging works on: sounds with their place in time and their part in the music.

Two written notes of one pitch that begin together are one sound with two
stems. Every sound has a role. The tune is the top line: the highest note
struck, unless a longer one sounds above it, or, under an accompaniment, a
note more than a fifth higher stands in the same beat (broken chords), or it
belongs to another voice than the top one of its bar and lies lower, or it has a stem of
such a voice too and its beat goes on above it. The bass
is the lowest line in the same way. Where the teacher names the part that is
tune or bass, its top or lowest notes are, and a named tune has all else below
it. All else is inner, and told by its place in the chord of its beat.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property

from workbench.language.message import mark
from workbench.music.beats import beat_length
from workbench.music.model import Bar, Note, Piece
from workbench.music.ringing.sounds import stems

TUNE, BASS, THIRD, SEVENTH, ROOT, FIFTH, OTHER = ROLES = (
    mark("tune"),
    mark("bass"),
    mark("third"),
    mark("seventh"),
    mark("root"),
    mark("fifth"),
    mark("inner motion"),
)
PHRASE_BARS = 4  # a phrase without a rest is taken as so many bars (common practice, no source)
BROKEN = 7  # semitones: further below its neighbours than a fifth, a note is no tune
_CHORDS = (
    ((0, 4, 7), 0), ((0, 3, 7), 0), ((0, 4, 7, 10), 0), ((0, 3, 6), 1), ((0, 3, 7, 10), 1),
    ((0, 4, 7, 11), 1), ((0, 3, 6, 9), 2), ((0, 3, 6, 10), 2), ((0, 4, 8), 2),
)  # fmt: skip
_DEGREES = {0: ROOT, 3: THIRD, 4: THIRD, 6: FIFTH, 7: FIFTH, 8: FIFTH, 9: SEVENTH, 10: SEVENTH,
            11: SEVENTH}  # fmt: skip


MADE = "acc"  # begins the ids of notes that are made of chord symbols


@dataclass(frozen=True)
class Sound:
    """One sound: ``notes`` are its stems, ``start`` and ``end`` in quarter lengths from the
    beginning, ``role`` one of ``ROLES``, ``ceiling`` the MIDI number of the tune it has to
    stay under as the source stands (None for the tune, and where the source itself is
    above it), ``rest`` whether the tune is silent as it begins, ``strong`` True at the
    beginning of a bar."""

    notes: tuple[Note, ...]
    bar: Bar
    start: Fraction
    end: Fraction
    role: str = OTHER
    ceiling: int | None = None
    strong: bool = False
    rest: bool = False

    @property
    def midi(self) -> int:
        return self.notes[0].midi


@dataclass(frozen=True)
class Texture:
    """A piece as sounds: ``sounds`` in order of time, ``moments`` the times at which any
    begin, ``struck`` the indices of those that do, ``phrase`` the phrase of each moment."""

    sounds: tuple[Sound, ...]
    moments: tuple[Fraction, ...]
    struck: tuple[tuple[int, ...], ...]
    phrase: tuple[int, ...]

    @cached_property
    def tune(self) -> tuple[int, ...]:
        """MIDI numbers of the tune as written."""
        return tuple(s.midi for s in self.sounds if s.role == TUNE)

    @cached_property
    def one_players(self) -> bool:
        """Whether it is one part with an accompaniment of its own, as music for a plucked
        instrument is."""
        parts = {n.part for s in self.sounds for n in s.notes}
        return len(parts) == 1 and _several(self.sounds)

    @cached_property
    def made(self) -> bool:
        """Whether its accompaniment was made of chord symbols: nobody's hand held it yet."""
        return any(n.id.startswith(MADE) for s in self.sounds for n in s.notes)

    @cached_property
    def until(self) -> tuple[int, ...]:
        """For every sound the first moment at which it no longer sounds."""
        out, last = [], len(self.moments)
        at = {time: m for m, time in enumerate(self.moments)}
        for sound in self.sounds:
            m = at[sound.start] + 1
            while m < last and self.moments[m] < sound.end:
                m += 1
            out.append(m)
        return tuple(out)


@dataclass
class _Draft:
    notes: list[Note]
    bar: Bar
    start: Fraction
    end: Fraction
    role: str = ""

    @property
    def midi(self) -> int:
        return self.notes[0].midi


def texture(piece: Piece, tune_part: int = 0, bass_part: int = 0) -> Texture:
    """The sounds of a piece with their roles; grace notes belong to no sound. ``tune_part``
    and ``bass_part`` name the parts that are tune and bass, 0 where that is heard."""
    drafts: list[_Draft] = []
    for bar, begins in zip(piece.bars, piece.starts, strict=True):
        for notes in stems(bar.notes):
            start = begins + notes[0].onset
            drafts.append(_Draft(notes, bar, start, start + max(n.duration for n in notes)))
    drafts.sort(key=lambda d: (d.start, d.midi))
    at: dict[Fraction, list[_Draft]] = defaultdict(list)
    for draft in drafts:
        at[draft.start].append(draft)
    moments = sorted(at)
    if tune_part:
        _named(at, tune_part, TUNE, -1)
    else:
        _tune(at, moments, bass_part)
    if bass_part:
        _named(at, bass_part, BASS, 0)
    else:
        _bass(at, moments)
    _degrees(drafts)
    ceilings = _ceilings(drafts, moments)
    sung = _sung(drafts, moments)
    sounds = tuple(
        Sound(
            tuple(d.notes), d.bar, d.start, d.end, d.role,
            None if d.role == TUNE
            else ceilings[d.start] if tune_part or d.midi <= ceilings[d.start] else None,
            d.start == piece.starts[d.bar.index],
            d.start not in sung,
        )
        for d in drafts
    )  # fmt: skip
    index = {id(d): i for i, d in enumerate(drafts)}
    return Texture(
        sounds,
        tuple(moments),
        tuple(tuple(index[id(d)] for d in at[time]) for time in moments),
        _phrases(at, moments),
    )


def _beat(bar: Bar) -> Fraction:
    """A beat as it is counted: dotted where the bar is compound."""
    return beat_length(bar.time_signature)


def _beat_start(draft: _Draft, starts: dict[int, Fraction]) -> tuple[int, int]:
    return draft.bar.index, int((draft.start - starts[draft.bar.index]) / _beat(draft.bar))


def _named(at: dict[Fraction, list[_Draft]], part: int, role: str, which: int) -> None:
    """Give the role to the top (-1) or lowest (0) note of a part at every moment."""
    for here in at.values():
        own = [d for d in here if not d.role and any(n.part == part for n in d.notes)]
        if own:
            own[which].role = role


def _tune(at: dict[Fraction, list[_Draft]], moments: list[Fraction], bass_part: int = 0) -> None:
    bars: dict[int, list[_Draft]] = defaultdict(list)
    starts: dict[int, Fraction] = {}
    for time in moments:
        for d in at[time]:
            bars[d.bar.index].append(d)
            starts.setdefault(d.bar.index, d.start - d.notes[0].onset)
    beats: dict[tuple[int, int], list[_Draft]] = defaultdict(list)
    for time in moments:
        for d in at[time]:
            beats[_beat_start(d, starts)].append(d)
    many = _several([d for time in moments for d in at[time]])
    lead = {
        index: {(n.part, n.voice) for n in max(group, key=lambda d: d.midi).notes}
        for index, group in bars.items()
    }
    sounding: list[_Draft] = []
    for time in moments:
        sounding = [d for d in sounding if d.end > time]
        top = at[time][-1]
        bar = top.bar.index
        covered = any(d.midi > top.midi for d in sounding)
        broken = many and any(d.midi - top.midi > BROKEN for d in beats[_beat_start(top, starts)])
        voices = {(n.part, n.voice) for n in top.notes}
        under = (
            many
            and not voices & lead[bar]
            and any(
                d.midi > top.midi and {(n.part, n.voice) for n in d.notes} & lead[bar]
                for d in bars[bar]
            )
        )
        # a stem of the lower voice as well, and the figure goes on above it: its bass
        stem = many and len(voices) > 1 and any(
            d.midi > top.midi for d in beats[_beat_start(top, starts)]
        )  # fmt: skip
        named = all(n.part == bass_part for n in top.notes)  # the teacher's bass is no tune
        if not (covered or broken or under or stem or named):
            top.role = TUNE
        sounding += at[time]
    if many:
        _no_valleys(at, moments, starts)


def _no_valleys(
    at: dict[Fraction, list[_Draft]], moments: list[Fraction], starts: dict[int, Fraction]
) -> None:
    """A beat on which the tune rests leaves its bass on top: what lies more than a fifth
    below the beats before and after is no tune."""
    tops: dict[tuple[int, int], int] = {}
    for time in moments:
        for d in at[time]:
            beat = _beat_start(d, starts)
            tops[beat] = max(tops.get(beat, 0), d.midi)
    beats = sorted(tops)
    place = {beat: i for i, beat in enumerate(beats)}
    for time in moments:
        top = at[time][-1]
        if top.role != TUNE:
            continue
        i = place[_beat_start(top, starts)]
        before = max((tops[b] for b in beats[max(0, i - 2) : i]), default=0)
        after = max((tops[b] for b in beats[i + 1 : i + 3]), default=0)
        near = min(before or after, after or before)
        if near - top.midi > BROKEN:
            top.role = ""


def _several(drafts: Sequence[_Draft | Sound]) -> bool:
    """Whether there is an accompaniment: a tenth of the sounds begin while another sounds."""
    heard, over = Fraction(-1), 0
    for d in drafts:
        over += d.start < heard
        heard = max(heard, d.end)
    return over * 10 > len(drafts)


def _bass(at: dict[Fraction, list[_Draft]], moments: list[Fraction]) -> None:
    sounding: list[_Draft] = []
    recent: list[_Draft] = []
    for time in moments:
        low = at[time][0]
        sounding = [d for d in sounding if d.end > time]
        recent = [d for d in recent if time - d.start < _beat(d.bar) and d.bar is low.bar]
        if (
            not low.role
            and all(d.midi > low.midi for d in sounding)
            and all(d.midi > low.midi - 2 or d.role == TUNE for d in recent)
        ):
            low.role = BASS
        sounding += at[time]
        recent += at[time]


def _degrees(drafts: list[_Draft]) -> None:
    """The place of every other note in the chord that sounds with it."""
    for i, draft in enumerate(drafts):
        if draft.role:
            continue
        until = draft.start + _beat(draft.bar)
        near = [
            d for d in drafts[max(0, i - 24) : i + 24]
            if d.end > draft.start and d.start < until and d.bar is draft.bar
        ]  # fmt: skip
        root = _root(near)
        draft.role = _DEGREES.get((draft.midi - root) % 12, OTHER) if root is not None else OTHER


def _root(near: list[_Draft]) -> int | None:
    pcs = {d.midi % 12 for d in near}
    if len(pcs) < 2:
        return None
    low = min(d.midi for d in near) % 12
    best: tuple[int, int] | None = None
    for root in sorted(pcs):
        for shape, odd in _CHORDS:
            chord = {(root + i) % 12 for i in shape}
            score = 4 * len(pcs & chord) - 3 * len(chord - pcs) - 3 * len(pcs - chord) - odd
            score += 2 * (root == low)
            if best is None or score > best[0]:
                best = score, root
    return best[1] if best and best[0] > 0 else None


def _ceilings(drafts: list[_Draft], moments: list[Fraction]) -> dict[Fraction, int]:
    """For every moment how high the tune stands: what of it sounds, else its nearer neighbour."""
    tune = [d for d in drafts if d.role == TUNE]
    out: dict[Fraction, int] = {}
    at = 0
    for time in moments:
        while at + 1 < len(tune) and tune[at + 1].start <= time:
            at += 1
        if not tune:
            out[time] = 127
            continue
        here = tune[at]
        if here.start <= time < here.end or at + 1 >= len(tune):
            out[time] = here.midi
        else:
            coming = tune[at] if here.start > time else tune[at + 1]
            out[time] = max(here.midi, coming.midi)
    return out


def _sung(drafts: list[_Draft], moments: list[Fraction]) -> set[Fraction]:
    """The moments at which the tune sounds."""
    tune = [d for d in drafts if d.role == TUNE]
    out: set[Fraction] = set()
    at, until = 0, Fraction(-1)
    for time in moments:
        while at < len(tune) and tune[at].start <= time:
            until, at = max(until, tune[at].end), at + 1
        if time < until:
            out.add(time)
    return out


def _phrases(at: dict[Fraction, list[_Draft]], moments: list[Fraction]) -> tuple[int, ...]:
    """Phrases by the tune: cut at its rests of a quarter or more, at sections, repeats and
    endings, and every four bars."""
    out: list[int] = []
    number, heard, first, last = 0, moments[0] if moments else Fraction(0), None, None
    for time in moments:
        top = at[time][-1]
        sung = next((d for d in at[time] if d.role == TUNE), None)
        if last is not None and first is not None:
            new_bar = top.bar.index > last.bar.index
            mark_here = new_bar and (
                bool(top.bar.section)
                or top.bar.repeat_start
                or last.bar.repeat_end
                or top.bar.endings != last.bar.endings
            )
            long = new_bar and top.bar.index - first.bar.index >= PHRASE_BARS
            rest = sung is not None and time - heard >= 1
            if mark_here or long or rest:
                number += 1
                first = top
        else:
            first = top
        if sung is not None:
            heard = max(heard, sung.end)
        last = top
        out.append(number)
    return tuple(out)
