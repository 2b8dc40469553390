"""What the teacher's sheet adds: rejected fingerings and why, the legato audit, charts,
the lesson's history and its script."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter
from PySide6.QtSvg import QSvgRenderer

from workbench.engraving.charts.lesson import charts_for
from workbench.fingering.engine import Solver
from workbench.fingering.telling.legato import NOTHING_PLAYED
from workbench.fingering.telling.words import words as told
from workbench.fingering.types import Fingering, Pin
from workbench.handout.files.tags import begin
from workbench.handout.parts.words import pretty_pitch, within
from workbench.handout.setting.blocks import Column, Space, TableRow, TextBlock
from workbench.handout.setting.compose import Loose, Part, Table
from workbench.handout.setting.typeset import HEADING, draw
from workbench.instrument.table import hand
from workbench.instrument.table import instrument as instrument_of
from workbench.language.names import percent
from workbench.language.speech import count, mark, say
from workbench.music.bar_names import stretch_heading
from workbench.music.beats import beat_at, beat_figure
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.teaching.lessons.lesson import BarNote, Lesson, RejectedNote
from workbench.teaching.planning.plan import Plan
from workbench.teaching.scripts.files import bar_words, clock
from workbench.teaching.scripts.script import Script

_AUDIT = (
    Column(mark("Bar"), 7),
    Column(mark("Beat"), 8),
    Column(mark("Note"), 8),
    Column(mark("Written"), 10),
    Column(mark("Held"), 10),
    Column(mark("Why it is cut"), 57),
)
_HISTORY = (Column(mark("When"), 26), Column(mark("What"), 74))
_SCRIPT = (Column(mark("Time"), 9), Column(mark("Bar"), 11), Column(mark("Say"), 80))
MOST_TO_SOLVE = 400  # notes; beyond it a rejected fingering is printed without its price


def _head(columns: Sequence[Column], width: float, scale: float) -> TableRow:
    return TableRow([say(c.title) for c in columns], columns, width, scale, head=True)


def rejected_reasons(lesson: Lesson) -> dict[RejectedNote, str]:
    """For every rejected fingering of the lesson's notes, what it would cost against the
    chosen one. Empty where none is rejected or the piece is long."""
    rows = [r for note in lesson.notes for r in note.rejected]
    if not rows or len(lesson.piece.notes) > MOST_TO_SOLVE:
        return {}
    player = instrument_of(lesson.instrument, lesson.capo)
    solver = Solver(
        lesson.piece, player, hand(lesson.hand), settings=lesson.settings, pins=lesson.pins
    )
    solver.solution()
    out: dict[RejectedNote, str] = {}
    for row in rows:
        note, string, fret, finger = row
        if note in lesson.piece.bar_of:
            try:
                pins = (Pin(note, string=string, fret=fret, left=finger),)
                out[row] = told(solver.why_not(lesson.piece.bar_of[note], pins).reason)
            except BadInput as fault:
                out[row] = str(fault)
    return out


def rejected_words(note: BarNote, piece: Piece, reasons: Mapping[RejectedNote, str]) -> str:
    """The rejected fingerings of a note and why, as more paragraphs."""
    names = {n.id: pretty_pitch(n.pitch) for n in piece.notes}
    out = ""
    for row in note.rejected:
        words = say(
            "{note} on string {string}, fret {fret}, finger {finger}",
            note=names.get(row[0], say("note", sense="music")),
            string=row[1],
            fret=row[2],
            finger=row[3],
        )
        why = reasons.get(row, "")
        out += f"\n**{say('Rejected:')}** {words}."
        if why:
            out += " " + say("Against the one printed: {reason}", reason=why)
    return out


def length_word(length: Fraction) -> str:
    """Quarter length as a number with a fraction: ``1 1/2``."""
    whole, part = divmod(length, 1)
    if part == 0:
        return str(whole)
    return f"{whole} {part}" if whole else str(part)


def audit_parts(piece: Piece, fingering: Fingering, width: float, scale: float) -> list[Part]:
    """Legato in figures, and a table of every note cut, the longest loss first."""
    audit = fingering.audit
    cut_words = say("No note is cut.") if not audit.cut else say("{n} cut short.", n=audit.cut)
    summary = say(
        "{notes} notes. {cut} {held} of the written length is held.",
        notes=audit.notes,
        cut=cut_words,
        held=percent(audit.held_fraction, 1),
    )
    if not audit.notes:
        summary = say(NOTHING_PLAYED)
    title = TextBlock(summary, width, scale, heading=say("Legato audit"))
    cuts = [(b, n) for b in fingering.bars for n in b.notes if n.cut_reason]
    cuts.sort(key=lambda c: (c[1].held - c[1].duration, c[0].index, c[1].onset))
    names = {n.id: pretty_pitch(n.pitch) for n in piece.notes}
    rows = []
    for bar, note in cuts:
        cells = (
            bar.number,
            beat_figure(beat_at(piece.bars[bar.index], note.onset), " + "),
            names.get(note.id, ""),
            length_word(note.duration),
            length_word(note.held),
            told(note.cut_reason),
        )
        rows.append(TableRow(cells, _AUDIT, width, scale))
    parts: list[Part] = [Table(title, _head(_AUDIT, width, scale), rows) if rows else title]
    lost = [
        say("Bar {bar}: {reason}", bar=b.number, reason=reason)
        for b in fingering.bars
        for reason in dict.fromkeys(told(n.impossible) for n in b.notes if n.impossible)
        or ([told(b.impossible)] if b.impossible else [])
    ]
    if lost:
        heading = say("Cannot be played as written")
        parts.append(TextBlock("\n".join(lost), width, scale, heading=heading))
    joins = [
        say(
            "From {before} into {after}: {reason}",
            before=within(stretch_heading(piece, j.from_bar, j.from_bar)),
            after=within(stretch_heading(piece, j.to_bar, j.to_bar)),
            reason=told(j.reason),
        )
        for j in audit.joins
    ]
    if joins:
        parts.append(TextBlock("\n".join(joins), width, scale, heading=say("At the joins")))
    return [*parts, Space(6 * scale)]


def history_parts(history: Sequence[tuple[str, str]], width: float, scale: float) -> list[Part]:
    """The lesson's history as a table; nothing where there is none."""
    if not history:
        return []
    rows = [TableRow(row, _HISTORY, width, scale) for row in history]
    title = TextBlock("", width, scale, heading=say("Lesson history"), after=2)
    return [Table(title, _head(_HISTORY, width, scale), rows), Space(8 * scale)]


def script_parts(script: Script, width: float, scale: float) -> list[Part]:
    """What is said bar by bar, with the time at which it is said."""
    rows = []
    if script.opening:
        rows.append(TableRow((clock(0.0), "", str(script.opening)), _SCRIPT, width, scale))
    for cue in script.cues:
        words = str(cue.say)
        if words.strip():
            number = bar_words(script, cue)
            rows.append(TableRow((clock(cue.start), number, words), _SCRIPT, width, scale))
    if script.closing:
        row = (clock(script.closing_start), "", str(script.closing))
        rows.append(TableRow(row, _SCRIPT, width, scale))
    whole = count(
        round(script.seconds / 60), "About {n} minute in all.", "About {n} minutes in all."
    )
    title = TextBlock(whole, width, scale, heading=say("Script"), after=4)
    return [Table(title, _head(_SCRIPT, width, scale), rows), Space(8 * scale)]


class ChartBlock:
    """A chart under its title."""

    def __init__(self, title: str, svg: bytes, width: float, scale: float) -> None:
        self.heading, self._scale, self._width = title, scale, width
        self._renderer = QSvgRenderer(svg)
        box = self._renderer.viewBoxF()
        self._high = box.height() * width / box.width() if box.width() else 0.0

    @property
    def height(self) -> float:
        return HEADING.size * 1.6 * self._scale + self._high + 8 * self._scale

    def paint(self, painter: QPainter, x: float, y: float) -> None:
        begin(painter, "H2")
        draw(painter, x, y + HEADING.size * self._scale, self.heading, HEADING.scaled(self._scale))
        y += HEADING.size * 1.6 * self._scale
        begin(painter, "Figure", self.heading)
        self._renderer.render(painter, QRectF(x, y, self._width, self._high))


def chart_parts(
    lesson: Lesson, fingering: Fingering, plan: Plan | None, width: float, scale: float
) -> list[Part]:
    """The charts of the lesson; none for a piece without notes."""
    if not lesson.piece.notes:
        return []
    charts = charts_for(lesson, fingering, width=width, size=7.5 * scale, plan=plan)
    return [Loose(ChartBlock(title, svg, width, scale)) for title, svg in charts]
