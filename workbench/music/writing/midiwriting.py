"""A piece in playing order as bytes of a Standard MIDI File, format 0."""

from __future__ import annotations

import math
from collections.abc import Mapping
from fractions import Fraction

from workbench.music.model import Piece
from workbench.music.order.playing import playing_order
from workbench.music.ringing.sounds import sounds

GRACE = Fraction(1, 8)  # quarter length lent to a grace note before the beat


def midi_bytes(piece: Piece, program: int, held: Mapping[str, Fraction] | None = None) -> bytes:
    """The file. Ticks fit the lengths exactly where 16 bits allow, else nearest. ``held``
    gives the quarter lengths that notes are really held, by id; without it they sound as
    long as written, and 0 leaves a note out."""
    held = held or {}
    lengths = [n.onset for n in piece.notes] + [n.duration for n in piece.notes]
    lengths += held.values()
    lengths += [b.length for b in piece.bars]
    fit = math.lcm(24, *(x.denominator for x in lengths))
    quarter = fit * max(1, 480 // fit) if fit < 0x8000 else 0x7FF8
    events: list[tuple[int, int, bytes]] = [(0, 0, bytes((0xC0, program)))]
    start, meter, key, tempo = Fraction(0), None, None, None
    piece = sounds(piece).piece
    for index in playing_order(piece):
        bar = piece.bars[index]
        at = round(start * quarter)
        if bar.time_signature != meter:
            meter = bar.time_signature
            power = meter[1].bit_length() - 1
            events.append((at, 0, _meta(0x58, bytes((meter[0] & 0xFF, power, 24, 8)))))
        if bar.key != key:
            key = bar.key
            minor = 1 if key.mode == "minor" else 0
            events.append((at, 0, _meta(0x59, bytes((key.fifths & 0xFF, minor)))))
        now = bar.tempo or (tempo if tempo is not None else piece.tempo)
        if now != tempo:
            tempo = now
            micro = min(0xFFFFFF, round(60_000_000 / tempo))
            events.append((at, 0, _meta(0x51, micro.to_bytes(3, "big"))))
        for note in bar.notes:
            onset, length = start + note.onset, held.get(note.id, note.duration)
            if length == 0 and not note.grace:
                continue
            if note.grace:
                onset, length = max(Fraction(0), onset - GRACE), GRACE
            begin = round(onset * quarter)
            end = max(begin + 1, round((onset + length) * quarter))
            events.append((begin, 2, bytes((0x90, note.midi, 80))))
            events.append((end, 1, bytes((0x80, note.midi, 64))))
        start += bar.length
    body, now_tick = b"", 0
    for at, _, data in sorted(events, key=lambda e: e[:2]):
        body += _number(at - now_tick) + data
        now_tick = at
    body += _number(max(0, round(start * quarter) - now_tick)) + b"\xff\x2f\x00"
    header = b"MThd" + bytes((0, 0, 0, 6, 0, 0, 0, 1)) + quarter.to_bytes(2, "big")
    return header + b"MTrk" + len(body).to_bytes(4, "big") + body


def _meta(kind: int, data: bytes) -> bytes:
    return bytes((0xFF, kind)) + _number(len(data)) + data


def _number(value: int) -> bytes:
    """A variable-length quantity."""
    out = [value & 0x7F]
    while value := value >> 7:
        out.append(value & 0x7F | 0x80)
    return bytes(reversed(out))
