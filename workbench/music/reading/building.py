"""A music21 score, chosen parts of it, as our Piece."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import replace
from fractions import Fraction
from typing import Any

from workbench.language.fact import Fact, fact
from workbench.language.message import message
from workbench.music.errors import BadInput
from workbench.music.model import Bar, Key, Note, PartInfo, Piece, WrittenFingers
from workbench.music.parsing.barheads import (
    LogicalPart,
    Setting,
    bar_settings,
    logical_parts,
    sounding_shift,
)
from workbench.music.parsing.fingerxml import NONE_PRINTED, NOTHING, PrintedMarks
from workbench.music.parsing.lengthless import lost_notes, without_length
from workbench.music.parsing.signs import (
    MOST_TIMES,
    Signs,
    measure_signs,
    merge,
    settle_codas,
    settle_left_ends,
)
from workbench.music.parsing.staves import (
    BarContent,
    RawNote,
    bar_content,
    merge_ties,
    number_voices,
    slurs_of,
)
from workbench.music.reading.choosing import chosen_parts
from workbench.music.suffixes import SCORES, has_suffix

LONGEST_BAR = 256  # quarter lengths
LONGEST_TEXT = 200  # characters of a title or a name


def build(
    score: Any,
    name: str,
    *,
    parts: str | Sequence[int] | None = None,
    title: str = "",
    meters: frozenset[tuple[int, int]] | None = None,
    sounding: bool = False,
    played: Sequence[Signs] = (),
    printed: PrintedMarks = NONE_PRINTED,
) -> Piece:
    """The piece. ``name`` is the file's, for messages; ``meters`` the time
    signatures that count (None: all); ``sounding``: pitches are not to be transposed;
    ``played``: further signs, bar by bar; ``printed``: the fingering of the source."""
    logical = logical_parts(score)
    contents = [_contents(p, i, name, sounding, printed) for i, p in enumerate(logical, 1)]
    left_out = [without_length(bars) for bars in contents]
    counts = [sum(len(b.notes) for b in bars) for bars in contents]
    if not any(counts):
        if any(b.unpitched for bars in contents for b in bars):
            raise BadInput(
                "{name} holds only percussion; a fretted instrument needs notes with pitch.",
                name=name,
            )
        raise BadInput("{name} has no notes in it; choose a score with notes.", name=name)
    taken, warnings = chosen_parts(parts, counts, name)
    info = tuple(
        _info(p, i, bars) for i, (p, bars) in enumerate(zip(logical, contents, strict=True), 1)
    )
    frame = max((logical[i].measures[0] for i in taken), key=len)
    if len({len(logical[i].measures[0]) for i in taken}) > 1:
        warnings.append(fact("unequal parts"))
    if lost := sorted({index for i in taken for index in left_out[i]}):
        warnings.append(lost_notes(frame, lost, sum(len(left_out[i]) for i in taken)))
    settings = bar_settings(logical, taken, frame, meters)
    signs = _all_signs(logical, len(frame), played)
    settle_left_ends(signs, own_bar=meters is not None)
    chosen = [contents[i] for i in taken]
    shells = _shells(
        frame, settings, signs, chosen, contents, warnings, from_one=meters is not None
    )
    bars, written = _filled(shells, chosen, printed.doubtful)
    key = next((b.key for b in bars if b.notes), bars[0].key)
    data = score.metadata
    return Piece(
        title=title[:LONGEST_TEXT]
        or _no_file(_text(data, "bestTitle"))
        or _no_file(_text(data, "movementName"))
        or _stem(name),
        bars=bars,
        composer=_text(data, "composer"),
        arranger=_text(data, "arranger"),
        key=key,
        tempo=next((b.tempo for b in bars if b.tempo), 90.0),
        parts=info,
        warnings=tuple(warnings),
        written=written,
    )


def _stem(name: str) -> str:
    return name.rpartition(".")[0] or name


def _no_file(title: str) -> str:
    """A title without the ending of a score file, where some program wrote one into it."""
    return _stem(title) if has_suffix(title, SCORES) else title


def _text(data: Any, field: str) -> str:
    if data is None:
        return ""
    text = " ".join(str(getattr(data, field, None) or "")[: 4 * LONGEST_TEXT].split())
    return text if len(text) <= LONGEST_TEXT else text[: LONGEST_TEXT - 1] + "…"


def _contents(
    part: LogicalPart, number: int, name: str, sounding: bool, printed: PrintedMarks
) -> list[BarContent]:
    """The bars of a part with the notes of all its staves; a staff of tablature that
    repeats another one is passed over."""
    out: list[BarContent] = [BarContent() for _ in range(max(map(len, part.measures), default=0))]
    for staff, (stream, measures) in enumerate(zip(part.staves, part.measures, strict=True), 1):
        if (number, staff) in printed.tab_staves:
            continue
        slurs = slurs_of(stream)
        shift = None if sounding else sounding_shift(stream)
        for index, measure in enumerate(measures):
            label = message("{name}, bar {bar}", name=name, bar=measure.measureNumberWithSuffix())
            bar = bar_content(measure, index, number, staff, slurs, shift, label, printed)
            out[index].notes += bar.notes
            out[index].end = max(out[index].end, bar.end)
            out[index].chords += bar.chords
            out[index].dynamics += bar.dynamics
            out[index].unpitched += bar.unpitched
    return out


def _info(part: LogicalPart, number: int, bars: list[BarContent]) -> PartInfo:
    pitches = [n.pitch.midi for b in bars for n in b.notes]
    return PartInfo(
        number,
        part.name or f"Part {number}",
        len(pitches),
        len(part.staves),
        min(pitches, default=None),
        max(pitches, default=None),
    )


def _all_signs(parts: list[LogicalPart], count: int, played: Sequence[Signs]) -> list[Signs]:
    """Signs of each bar, gathered from every part (they are often printed in one only)."""
    out = [Signs() for _ in range(count)]
    for part in parts:
        for stream, measures in zip(part.staves, part.measures, strict=True):
            endings = _endings(stream, measures)
            for index, measure in enumerate(measures[:count]):
                out[index] = merge(out[index], measure_signs(measure, endings))
    for index, sign in enumerate(played[:count]):
        out[index] = merge(out[index], sign)
    settle_codas(out)
    return out


def _endings(stream: Any, measures: list[Any]) -> dict[int, tuple[int, ...]]:
    """``id`` of each measure under an ending bracket to the passes it is played in."""
    places = {id(m): i for i, m in enumerate(measures)}
    out: dict[int, tuple[int, ...]] = {}
    for bracket in stream.recurse().getElementsByClass("RepeatBracket"):
        numbers = tuple(sorted({int(n) for n in bracket.numberRange if 0 < int(n) <= MOST_TIMES}))
        # a bracket may name only its first and last bar
        spanned = [places[id(m)] for m in bracket.getSpannedElements() if id(m) in places]
        for index in range(min(spanned, default=0), max(spanned, default=-1) + 1):
            out[id(measures[index])] = numbers
    return out


def _shells(
    frame: list[Any],
    settings: list[Setting],
    signs: list[Signs],
    chosen: list[list[BarContent]],
    contents: list[list[BarContent]],
    warnings: list[Fact],
    *,
    from_one: bool,
) -> list[Bar]:
    """The bars without notes: lengths, numbers and signs.

    ``from_one``: a first bar that is full is bar 1, a pickup 0, whatever number the library
    gives it.
    """
    nominal = [Fraction(4 * s.meter[0], s.meter[1]) for s in settings]
    ends = _ends(contents, nominal)
    out: list[Bar] = []
    whole = ends[0] >= nominal[0] or len(frame) == 1
    late = (1 if whole else 0) - frame[0].number if from_one else 0
    for index, (measure, setting, sign) in enumerate(zip(frame, settings, signs, strict=True)):
        number = f"{measure.number + late}{measure.numberSuffix or ''}"
        silent = not any(part[index].notes for part in contents if index < len(part))
        # a whole-bar rest is often written as a whole note's, whatever the bar
        length = nominal[index] if silent and ends[index] > nominal[index] else ends[index]
        length = length or nominal[index]
        pickup = False
        if length > LONGEST_BAR:
            raise BadInput(
                "Bar {number} lasts {length} quarter notes; mend its length.",
                number=number,
                length=length,
            )
        if length > nominal[index]:
            warnings.append(_odd_bar("bar too long", number, length, setting.meter, nominal[index]))
        elif length < nominal[index] and len(frame) > 1:
            before = out[-1] if out else None
            after_line = before is None or before.repeat_end or before.double_bar
            opens = (after_line or sign.repeat_start) and not sign.endings
            pickup = opens and (before is None or before.length < nominal[index])
            if not opens and not _short_for_a_reason(index, signs, ends, nominal):
                warnings.append(
                    _odd_bar("bar too short", number, length, setting.meter, nominal[index])
                )
                length = nominal[index]
        chords = sorted(
            {
                (c.onset, c.text): c for p in chosen if index < len(p) for c in p[index].chords
            }.values(),
            key=lambda c: c.onset,
        )
        if not chords:
            # chord symbols are often printed over another part
            rows = [p[index].chords for p in contents if index < len(p) and p[index].chords]
            chords = sorted(rows[0], key=lambda c: c.onset) if rows else []
        dynamics = {
            (d.onset, d.text): d for p in chosen if index < len(p) for d in p[index].dynamics
        }
        out.append(
            Bar(
                index=index,
                number=number,
                time_signature=setting.meter,
                length=length,
                notes=(),
                key=setting.key,
                tempo=setting.tempo,
                pickup=pickup,
                repeat_start=sign.repeat_start,
                repeat_end=sign.repeat_end,
                times=sign.times,
                endings=sign.endings,
                segno=sign.segno,
                coda=sign.coda,
                to_coda=sign.to_coda,
                fine=sign.fine,
                jump=sign.jump,
                section=sign.section,
                chords=tuple(chords),
                double_bar=sign.double_bar,
                dynamics=tuple(sorted(dynamics.values(), key=lambda d: d.onset)),
            )
        )
    return out


def _ends(contents: list[list[BarContent]], nominal: list[Fraction]) -> list[Fraction]:
    """Where each bar ends, by all parts: one that rests through may leave its bar empty. Only
    the second half of a split bar is told by the parts that sound there, for a part that rests
    is often given a whole bar's rest in it."""
    bars = [[part[i] for part in contents if i < len(part)] for i in range(len(nominal))]
    ends = [max((b.end for b in bar), default=Fraction(0)) for bar in bars]
    for i, bar in enumerate(bars[1:], 1):
        sounding = max((b.end for b in bar if b.notes), default=Fraction(0))
        if 0 < ends[i - 1] < nominal[i - 1] == ends[i - 1] + sounding:
            ends[i] = sounding or ends[i]
    return ends


def _odd_bar(
    kind: str, number: str, length: Fraction, meter: tuple[int, int], nominal: Fraction
) -> Fact:
    beats, unit = meter
    return fact(kind, number=number, length=str(length), beats=beats, unit=unit,
                nominal=str(nominal))  # fmt: skip


def _short_for_a_reason(
    index: int, signs: list[Signs], ends: list[Fraction], nominal: list[Fraction]
) -> bool:
    """A short bar is right at a repeat, an ending or the close, or as half of a split bar."""
    sign = signs[index]
    if index == len(signs) - 1 or sign.repeat_end or sign.double_bar or sign.endings:
        return True
    if sign.fine or sign.jump or signs[index + 1].repeat_start or signs[index + 1].endings:
        return True
    halves = [(index, index + 1), (index - 1, index)]
    return any(ends[a] + ends[b] == nominal[a] and ends[a] and ends[b] for a, b in halves)


def _filled(
    shells: list[Bar], chosen: list[list[BarContent]], doubtful: Collection[int] = ()
) -> tuple[tuple[Bar, ...], tuple[WrittenFingers, ...]]:
    """The bars with their notes: ties merged, voices numbered, ids given; and the
    fingering that the source prints. ``doubtful``: parts of which nothing tells whose
    fingers they count."""
    starts = [Fraction(0)]
    for bar in shells:
        starts.append(starts[-1] + bar.length)
    raw = [n for part in chosen for bar in part for n in bar.notes]
    merged = merge_ties(raw, starts)
    numbers = number_voices(merged)

    def voice_of(note: RawNote) -> int:
        return numbers[(note.part, *note.voice)]

    by_bar: dict[int, list[RawNote]] = {}
    for note in merged:
        by_bar.setdefault(note.bar, []).append(note)
    out: list[Bar] = []
    written: list[WrittenFingers] = []
    for bar in shells:
        rows = sorted(
            by_bar.get(bar.index, ()),
            key=lambda n: (
                n.onset,
                voice_of(n),
                not n.grace,
                n.order if n.grace else 0,
                -n.pitch.midi,
                n.order,
            ),
        )
        notes = tuple(
            Note(
                f"n{bar.index + 1}-{place}",
                n.onset,
                n.duration,
                n.pitch,
                voice_of(n),
                n.part,
                n.grace,
                n.tuplet,
                bool(n.slur_starts),
                bool(n.slur_stops),
                n.articulations,
            )
            for place, n in enumerate(rows, 1)
        )
        out.append(replace(bar, notes=notes))
        written += [
            WrittenFingers(
                note.id,
                string=m.string,
                fret=m.fret,
                left=m.left,
                right=m.right,
                midi=note.midi,
                doubtful=n.part in doubtful,
            )
            for note, n in zip(notes, rows, strict=True)
            if (m := n.marks) != NOTHING
        ]
    return _with_modes(out), tuple(written)


def _with_modes(bars: list[Bar]) -> tuple[Bar, ...]:
    """Give keys without a mode one: minor where the last bass note is its keynote."""
    out = list(bars)
    start = 0
    while start < len(out):
        stop = start
        while stop < len(out) and out[stop].key == out[start].key:
            stop += 1
        if not out[start].key.mode:
            notes = [n for b in out[start:stop] for n in b.notes if not n.grace]
            fifths = out[start].key.fifths
            last = None
            if notes:
                final = max((b.index, n.onset) for b in out[start:stop] for n in b.notes)
                last = min(n.midi for n in out[final[0]].notes if n.onset == final[1])
            minor = last is not None and last % 12 == (7 * fifths + 9) % 12
            for index in range(start, stop):
                key = Key(fifths, "minor" if minor else "major")
                out[index] = replace(out[index], key=key)
        start = stop
    return tuple(out)
