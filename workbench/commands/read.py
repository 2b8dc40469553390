"""``read SCORE``: parts, bars and form of a score."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from typing import TYPE_CHECKING

from workbench.commands.output import Result, table, wrapped
from workbench.commands.source import load, score_options
from workbench.language.names import key_words, pitch_words
from workbench.language.speech import say
from workbench.music.bar_names import bars_named

if TYPE_CHECKING:
    from workbench.music.model import Bar, Piece
    from workbench.music.order.form import Section


def options(parser: argparse.ArgumentParser) -> None:
    score_options(parser)


def run(options: argparse.Namespace) -> Result:
    from workbench.music.document import read_document
    from workbench.music.order.form import playing_order, sections

    piece = load(options).piece
    return Result(read_document(piece), _text(piece, playing_order(piece), sections(piece)))


def time_signature(bar: Bar) -> str:
    """For example ``6/8``."""
    return "{}/{}".format(*bar.time_signature)


def signs(bar: Bar) -> str:
    """What the bar says of the form, in words."""
    said = []
    if bar.pickup:
        said.append(say("pickup"))
    if bar.repeat_start:
        said.append(say("repeat from here"))
    if bar.endings:
        said.append(say("ending {endings}", endings=", ".join(map(str, bar.endings))))
    if bar.repeat_end:
        said.append(
            say("repeat")
            if bar.times == 2
            else say("repeat, {times} times in all", times=bar.times)
        )
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
    from workbench.music.telling.warnings import warnings

    by = f", {piece.composer}" if piece.composer else ""
    lines = [
        f"{piece.title}{by}",
        say(
            "{key}, {tempo:g} crotchets a minute, {bars} bars written, {order} played, "
            "{notes} notes",
            key=key_words(piece.key.name),
            tempo=piece.tempo,
            bars=len(piece.bars),
            order=len(order),
            notes=len(piece.notes),
        ),
        "",
    ]
    if piece.tunes:
        lines += [say("Tunes in this book (choose one with --tune N)")]
        lines += [f"  {number}  {title}" for number, title in enumerate(piece.tunes, 1)] + [""]
    if piece.parts:
        rows = [
            (p.number, p.name, p.staves, p.notes, _range(p.lowest, p.highest)) for p in piece.parts
        ]
        heads = [say("part"), say("name"), say("staves"), say("notes"), say("range (MIDI)")]
        lines += [*table(heads, rows, right=(0, 2, 3)), ""]
    bars = [
        (
            bar.number,
            time_signature(bar),
            len(bar.notes),
            len({note.voice for note in bar.notes}),
            " ".join(pitch_words(note.pitch.name) for note in bar.notes[:12])
            + (" ..." if len(bar.notes) > 12 else ""),
            signs(bar),
        )
        for bar in piece.bars
    ]
    heads = [
        say("bar", sense="head"),
        say("time", sense="head"),
        say("notes", sense="head"),
        say("voices", sense="head"),
        say("pitches", sense="head"),
        say("form", sense="head"),
    ]
    lines += [*table(heads, bars, right=(0, 2, 3)), ""]
    if sections:
        named = ", ".join(
            f"{s.letter} {bars_named(piece, tuple(range(s.first_bar, s.last_bar + 1)))}"
            for s in sections
        )
        lines += wrapped(say("Sections: {named}", named=named))
    lines += wrapped(say("Played: {bars}", bars=_played(piece, order)))
    for warning in warnings(piece):
        lines += wrapped(say("Warning: {warning}", warning=warning))
    return lines


def _range(lowest: int | None, highest: int | None) -> str:
    return "" if lowest is None or highest is None else f"{lowest}-{highest}"


def _played(piece: Piece, order: Sequence[int]) -> str:
    """The playing order in spans: "1–8, 1–7, 9"."""
    runs: list[list[int]] = []
    for index in order:
        if runs and index == runs[-1][1] + 1:
            runs[-1][1] = index
        else:
            runs.append([index, index])
    number = {bar.index: bar.number for bar in piece.bars}
    return ", ".join(number[a] if a == b else f"{number[a]}–{number[b]}" for a, b in runs)
