"""``read SCORE``: parts, bars and form of a score."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING, Any

from workbench.commands.output import Result, table, wrapped
from workbench.commands.source import load, score_options

if TYPE_CHECKING:
    from workbench.music.form import Section
    from workbench.music.model import Bar, Piece


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser)


def run(options: argparse.Namespace) -> Result:
    from workbench.music.form import playing_order, sections

    piece = load(options).piece
    order = playing_order(piece)
    parts_of_form = sections(piece)
    return Result(_document(piece, order, parts_of_form), _text(piece, order, parts_of_form))


def _document(
    piece: Piece, order: tuple[int, ...], sections: tuple[Section, ...]
) -> dict[str, Any]:
    return {
        "title": piece.title,
        "composer": piece.composer,
        "key": piece.key.name,
        "tempo": piece.tempo,
        "parts": [
            {
                "number": part.number,
                "name": part.name,
                "notes": part.notes,
                "staves": part.staves,
                "lowest": part.lowest,
                "highest": part.highest,
            }
            for part in piece.parts
        ],
        "tunes": list(piece.tunes),
        "bars": [_bar(bar) for bar in piece.bars],
        "playing_order": list(order),
        "sections": [
            {"letter": s.letter, "first_bar": s.first_bar, "last_bar": s.last_bar} for s in sections
        ],
        "warnings": list(piece.warnings),
    }


def _bar(bar: Bar) -> dict[str, Any]:
    return {
        "index": bar.index,
        "number": bar.number,
        "time_signature": time_signature(bar),
        "length": str(bar.length),
        "pickup": bar.pickup,
        "key": bar.key.name,
        "repeat_start": bar.repeat_start,
        "repeat_end": bar.repeat_end,
        "endings": list(bar.endings),
        "jump": bar.jump,
        "fine": bar.fine,
        "notes": [
            {
                "id": note.id,
                "onset": str(note.onset),
                "duration": str(note.duration),
                "pitch": note.pitch.name,
                "midi": note.midi,
                "voice": note.voice,
                "part": note.part,
                "grace": note.grace,
            }
            for note in bar.notes
        ],
        "chords": [{"onset": str(chord.onset), "text": chord.text} for chord in bar.chords],
    }


def time_signature(bar: Bar) -> str:
    """For example ``6/8``."""
    return "{}/{}".format(*bar.time_signature)


def signs(bar: Bar) -> str:
    """What the bar says of the form, in words."""
    said = []
    if bar.pickup:
        said.append("pickup")
    if bar.repeat_start:
        said.append("repeat from here")
    if bar.endings:
        said.append("ending " + ", ".join(map(str, bar.endings)))
    if bar.repeat_end:
        said.append("repeat" if bar.times == 2 else f"repeat, {bar.times} times in all")
    for sign, word in (
        (bar.segno, "Segno"),
        (bar.coda, "Coda"),
        (bar.to_coda, "To Coda"),
        (bar.fine, "Fine"),
    ):
        if sign:
            said.append(word)
    if bar.jump:
        said.append(bar.jump)
    return "; ".join(said)


def _text(piece: Piece, order: tuple[int, ...], sections: tuple[Section, ...]) -> list[str]:
    by = f", {piece.composer}" if piece.composer else ""
    lines = [
        f"{piece.title}{by}",
        f"{piece.key.name}, {piece.tempo:g} crotchets a minute, "
        f"{len(piece.bars)} bars written, {len(order)} played, {len(piece.notes)} notes",
        "",
    ]
    if piece.tunes:
        lines += ["Tunes in this book (choose one with --tune N)"]
        lines += [f"  {number}  {title}" for number, title in enumerate(piece.tunes, 1)] + [""]
    if piece.parts:
        rows = [
            (p.number, p.name, p.staves, p.notes, _range(p.lowest, p.highest)) for p in piece.parts
        ]
        heads = ["part", "name", "staves", "notes", "range (MIDI)"]
        lines += [*table(heads, rows, right="part,staves,notes"), ""]
    bars = [
        (
            bar.number,
            time_signature(bar),
            len(bar.notes),
            len({note.voice for note in bar.notes}),
            " ".join(note.pitch.name for note in bar.notes[:12])
            + (" ..." if len(bar.notes) > 12 else ""),
            signs(bar),
        )
        for bar in piece.bars
    ]
    heads = ["bar", "time", "notes", "voices", "pitches", "form"]
    lines += [*table(heads, bars, right="bar,notes,voices"), ""]
    if sections:
        named = ", ".join(
            f"{s.letter} bars {piece.bars[s.first_bar].number}-{piece.bars[s.last_bar].number}"
            for s in sections
        )
        lines += wrapped(f"Sections: {named}")
    lines += wrapped("Played: " + " ".join(piece.bars[index].number for index in order))
    for warning in piece.warnings:
        lines += wrapped(f"Note: {warning}")
    return lines


def _range(lowest: int | None, highest: int | None) -> str:
    return "" if lowest is None or highest is None else f"{lowest}-{highest}"
