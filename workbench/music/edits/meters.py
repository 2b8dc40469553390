"""Time signature, key signature and pickup of bars that are there already."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from workbench.music.bar_names import the_bar
from workbench.music.edits.bars import MOST_BARS, Rebarred, settled_form
from workbench.music.edits.lengths import struck_anew
from workbench.music.edits.line import Row, finished, rows_of
from workbench.music.errors import BadInput
from workbench.music.model import Bar, ChordName, Key, Piece
from workbench.music.parsing.spelling import spell

UNITS = (1, 2, 4, 8, 16, 32)
MOST_BEATS = 32


def checked_meter(meter: tuple[int, int]) -> tuple[int, int]:
    """The time signature itself. Raises BadInput where nobody writes it."""
    beats, unit = meter
    if unit not in UNITS or not 1 <= beats <= MOST_BEATS:
        raise BadInput(
            "Time signature {beats}/{unit} cannot be written; take 1 to {most} beats over "
            "1, 2, 4, 8, 16 or 32.",
            beats=beats,
            unit=unit,
            most=MOST_BEATS,
        )
    return meter


def checked_key(key: Key) -> Key:
    """The key itself. Raises BadInput beyond seven sharps or flats."""
    if abs(key.fifths) > 7 or key.mode not in ("major", "minor"):
        raise BadInput("A key has at most seven sharps or flats; choose one of the list.")
    return key


def set_key(piece: Piece, index: int, key: Key, *, names: bool = False) -> Piece:
    """Another key signature from a bar on, until the next change of key.

    What sounds stays; with ``names`` the notes are spelled as the new key does.
    """
    checked_key(key)
    _check_bar(piece, index)
    old, bars = piece.bars[index].key, list(piece.bars)
    for i in range(index, len(bars)):
        if bars[i].key != old:
            break
        notes = bars[i].notes
        if names:
            notes = tuple(replace(n, pitch=spell(n.midi, key)) for n in notes)
        bars[i] = replace(bars[i], key=key, notes=notes)
    return replace(piece, bars=tuple(bars), key=bars[0].key)


def set_time(piece: Piece, index: int, meter: tuple[int, int], *, alone: bool = False) -> Rebarred:
    """Another time signature from a bar on, until the next change of time signature; for
    that bar ``alone`` where asked.

    The music flows on: bar lines move, notes and rests keep their lengths. Passages
    between repeats, endings, signs and changes of key are laid out each for itself, and
    the last bar of each is filled up with rests. Bars without any note stay as many as
    they are. Raises BadInput where a pickup would be a whole bar or longer.
    """
    checked_meter(meter)
    _check_bar(piece, index)
    last = index
    if not alone:
        old = piece.bars[index].time_signature
        while last + 1 < len(piece.bars) and piece.bars[last + 1].time_signature == old:
            last += 1
    size = Fraction(4 * meter[0], meter[1])
    passages = _passages(piece, index, last)
    piece = _untied_between(piece, passages, size)
    rows: list[Row] = []
    bars: list[Bar] = list(piece.bars[:index])
    places: list[int | None] = list(range(index))
    source = rows_of(piece)
    at = piece.starts[index]
    moved = Fraction(0)  # how much later everything begins by now
    rows += [(s, n) for s, n in source if s < at]
    for first, stop in passages:
        begin = piece.starts[first]
        length = sum((b.length for b in piece.bars[first : stop + 1]), Fraction(0))
        new = _laid_out(piece, first, stop, meter, size)
        home = len(bars)
        for i in range(first, stop + 1):
            where = (
                int((piece.starts[i] - begin) // size)
                if len(new) != stop + 1 - first
                else (i - first)
            )
            places.append(home + min(where, len(new) - 1))
        empty = not _anything(piece, first, stop)
        rows += [(s + moved, n) for s, n in source if begin <= s < begin + length and not empty]
        bars += new
        moved += sum((b.length for b in new), Fraction(0)) - length
    tail = piece.bars[last + 1 :]
    shift = len(bars) - (last + 1)
    places += [i + shift for i in range(last + 1, len(piece.bars))]
    end = piece.starts[last] + piece.bars[last].length
    rows += [(s + moved, n) for s, n in source if s >= end]
    if len(bars) + len(tail) > MOST_BARS:
        raise BadInput("That makes more than {most} bars; choose a longer bar.", most=MOST_BARS)
    bars += tail
    numbered = _numbered(bars, piece, index)
    shells = tuple(replace(b, index=i, notes=()) for i, b in enumerate(numbered))
    whole = replace(piece, bars=shells, written=())
    out = finished(whole, rows)
    return Rebarred(settled_form(replace(out, written=piece.written)), tuple(places))


def _check_bar(piece: Piece, index: int) -> None:
    if not 0 <= index < len(piece.bars):
        raise BadInput("There is no such bar; choose one of the piece.")


def _passages(piece: Piece, first: int, last: int) -> list[tuple[int, int]]:
    """Runs of bars inside which nothing but notes and chord names stands."""
    out = [[first, first]]
    for i in range(first + 1, last + 1):
        before, bar = piece.bars[i - 1], piece.bars[i]
        closed = (
            before.repeat_end or before.double_bar or before.fine or before.jump
            or before.to_coda or before.pickup
        )  # fmt: skip
        opens = (
            bar.repeat_start or bar.endings != before.endings or bar.segno or bar.coda
            or bar.section or bar.key != before.key or bar.tempo is not None or bar.pickup
        )  # fmt: skip
        if closed or opens:
            out.append([i, i])
        else:
            out[-1][1] = i
    return [(a, b) for a, b in out]


def _anything(piece: Piece, first: int, last: int) -> bool:
    """Whether something sounds in these bars, or a chord name stands over them."""
    begin, end = piece.starts[first], piece.starts[last] + piece.bars[last].length
    if any(b.chords for b in piece.bars[first : last + 1]):
        return True
    return any(s < end and s + n.duration > begin for s, n in rows_of(piece) if n.duration)


def _laid_out(
    piece: Piece, first: int, last: int, meter: tuple[int, int], size: Fraction
) -> list[Bar]:
    """The bars of a passage in the new time, without notes."""
    old = piece.bars[first : last + 1]
    head, foot = old[0], old[-1]
    if head.pickup:
        if head.length >= size:
            raise BadInput(
                "The pickup is not shorter than a bar of {beats}/{unit}; shorten it first.",
                beats=meter[0],
                unit=meter[1],
            )
        return [replace(head, time_signature=meter)]
    length = sum((b.length for b in old), Fraction(0))
    if not _anything(piece, first, last):
        return [replace(b, time_signature=meter, length=size) for b in old]
    count = max(1, -(-length // size))
    left = length - (count - 1) * size
    nominal = Fraction(4 * foot.time_signature[0], foot.time_signature[1])
    short = left if foot.length < nominal else size  # a bar short for a reason stays so
    plain = replace(
        head.without_form(), time_signature=meter, length=size, endings=head.endings,
        section="", tempo=None, double_bar=False, times=2, chords=(),
    )  # fmt: skip
    out = [plain] * count
    out[0] = replace(
        out[0], repeat_start=head.repeat_start, segno=head.segno, coda=head.coda,
        section=head.section, tempo=head.tempo,
    )  # fmt: skip
    out[-1] = replace(
        out[-1], length=short, repeat_end=foot.repeat_end, times=foot.times, fine=foot.fine,
        jump=foot.jump, to_coda=foot.to_coda, double_bar=foot.double_bar,
    )  # fmt: skip
    begin = piece.starts[first]
    for bar in old:
        for chord in bar.chords:
            at = piece.starts[bar.index] - begin + chord.onset
            place = min(int(at // size), count - 1)
            named = ChordName(at - place * size, chord.text)
            out[place] = replace(out[place], chords=(*out[place].chords, named))
    return out


def _untied_between(piece: Piece, passages: list[tuple[int, int]], size: Fraction) -> Piece:
    """Notes held from one passage into the next are struck anew where the passage they
    come from is filled up with rests."""
    for first, last in passages:
        if last + 1 >= len(piece.bars) or piece.bars[first].pickup:
            continue
        length = sum((b.length for b in piece.bars[first : last + 1]), Fraction(0))
        if length % size == 0:
            continue
        edge = piece.starts[last + 1]
        rows = rows_of(piece)
        held = [n for s, n in rows if s < edge < s + n.duration and not n.grace]
        if held:
            piece = finished(piece, struck_anew(piece, rows, held, edge))
    return piece


def _numbered(bars: list[Bar], before: Piece, index: int) -> list[Bar]:
    """Bars counted on from the one before ``index``; a pickup at the beginning is 0."""
    number = 0
    if index:
        figures = "".join(c for c in before.bars[index - 1].number if c.isdigit())
        number = int(figures or 0)
    out = bars[:index]
    for bar in bars[index:]:
        if bar.pickup and not out:
            out.append(replace(bar, number="0"))
            continue
        number += 1
        out.append(replace(bar, number=str(number)))
    return out


def set_pickup(piece: Piece, length: Fraction) -> Rebarred:
    """Give the piece a pickup of that length (quarter lengths) before its first bar, or
    another length to the one it has; 0 takes an empty one away.

    Raises BadInput where it would be a whole bar, or notes stand in what is cut off.
    """
    first = piece.bars[0]
    full = Fraction(4 * first.time_signature[0], first.time_signature[1])
    if not 0 <= length < full:
        raise BadInput("A pickup is shorter than a bar; choose a shorter one.")
    if not first.pickup:
        if not length:
            return Rebarred(piece, tuple(range(len(piece.bars))))
        new = Bar(
            index=0,
            number="0",
            time_signature=first.time_signature,
            length=length,
            notes=(),
            key=first.key,
            pickup=True,
        )
        bars = (new, *(replace(b, index=b.index + 1) for b in piece.bars))
        return Rebarred(replace(piece, bars=bars), tuple(i + 1 for i in range(len(piece.bars))))
    if any(n.onset < first.length - length for n in first.notes):
        raise BadInput(
            "There are notes at the beginning of {bar}; delete them first.",
            bar=the_bar(first.number),
        )
    if not length:
        if len(piece.bars) == 1:
            raise BadInput("A piece needs at least one bar; keep one, or start a new piece.")
        bars = tuple(replace(b, index=b.index - 1) for b in piece.bars[1:])
        return Rebarred(replace(piece, bars=bars), (None, *range(len(bars))))
    by = length - first.length
    moved = replace(
        first, length=length,
        notes=tuple(replace(n, onset=n.onset + by) for n in first.notes),
        chords=tuple(replace(c, onset=c.onset + by) for c in first.chords if c.onset + by >= 0),
    )  # fmt: skip
    return Rebarred(replace(piece, bars=(moved, *piece.bars[1:])), tuple(range(len(piece.bars))))
