"""A lesson as the blocks of its handout: what stands over the music, what follows it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property

from workbench.engraving.mei.stringmarks import strings_told
from workbench.engraving.options import EVERY, PRINTED
from workbench.fingering.types import Fingering
from workbench.handout.options import HandoutOptions, Sheet
from workbench.handout.parts import teacher
from workbench.handout.parts.form_map import FormMap
from workbench.handout.parts.grip_boxes import GripsBlock
from workbench.handout.parts.grips import grips_of, with_pictures
from workbench.handout.parts.plan_grid import plan_parts
from workbench.handout.parts.words import (
    CAUTION,
    facts,
    form_words,
    grade_words,
    legend,
    note_heading,
    practice_words,
    technique_names,
)
from workbench.handout.setting.blocks import Block, FactsBlock, SystemBlock, TextBlock, TitleBlock
from workbench.handout.setting.compose import Loose, Part, column_width
from workbench.handout.setting.remarks import NoteBlock, OwnNotesBlock
from workbench.handout.setting.typeset import BODY, SMALL, Style
from workbench.instrument.table import hand
from workbench.instrument.table import instrument as instrument_of
from workbench.language.names import chord_words
from workbench.language.speech import say
from workbench.music.bar_names import stretch_heading
from workbench.music.model import Piece
from workbench.teaching.grading.grade import Grade, GradeModel, grade_piece
from workbench.teaching.lessons.lesson import BarNote, Lesson, RejectedNote
from workbench.teaching.planning.cautions import cautions
from workbench.teaching.planning.plan import Plan, make_plan
from workbench.teaching.scripts.script import make_script

_LEGEND = Style(7.6, italic=True)
_NARROW = 9.0  # size of note text in columns


@dataclass(frozen=True)
class Extras:
    """What the caller knows besides the lesson. ``history``: (when, what) rows for the
    teacher's sheet, oldest first. ``known_grips``: grips that earlier lessons taught,
    as frets from the highest-numbered string (``2-0-1-0``); only new or hard ones are
    drawn. ``grade``: what to print where the teacher gave none, such as the estimate
    that is printed already; without it the estimate of ``model``, by which the practice
    plan is made as well (None: as shipped)."""

    history: tuple[tuple[str, str], ...] = ()
    known_grips: frozenset[str] = frozenset()
    grade: Grade | None = None
    model: GradeModel | None = None


class Material:
    """Makes the blocks of one lesson for one kind of handout."""

    def __init__(
        self,
        lesson: Lesson,
        fingering: Fingering,
        options: HandoutOptions,
        page: Sheet,
        extras: Extras,
    ) -> None:
        self.lesson, self.fingering, self.options, self.extras = lesson, fingering, options, extras
        self.piece = with_sections(lesson)
        self.instrument = instrument_of(lesson.instrument, lesson.capo)
        self.hand = hand(lesson.hand)
        self.notes = ordered_notes(lesson)
        self.sheet, self.scale, self.line = page, page.scale, page.line

    @property
    def teacher(self) -> bool:
        return self.options.audience == "teacher"

    @property
    def title(self) -> str:
        return self.lesson.title or self.piece.title

    @cached_property
    def plan(self) -> Plan | None:
        """The practice plan; None for a piece without notes."""
        if not self.piece.notes:
            return None
        lesson = self.lesson
        return make_plan(
            self.piece,
            self.fingering,
            self.instrument,
            self.hand,
            minutes_a_day=max(5, min(240, lesson.minutes_a_day)),
            tempo_percent=max(20.0, min(200.0, float(lesson.tempo_percent))),
            done=lesson.plan_done,
            model=self.extras.model,
        )

    def head(self) -> list[Block]:
        """Title, facts and form map."""
        lesson, scale = self.lesson, self.scale
        blocks: list[Block] = [
            TitleBlock(self.title, self.piece.composer, self.piece.arranger, self.line, scale),
            FactsBlock(
                facts(lesson, self.instrument, self._grade(), self._practice()), self.line, scale
            ),
        ]
        form = form_words(self.piece)
        plan = FormMap(self.piece, self.line, scale)
        if plan.useful:
            blocks.append(plan)
        if form:
            words = f"**{say('Form:')}** {form}"
            blocks.append(TextBlock(words, self.line, scale, style=BODY.scaled(0.95), after=7.0))
        return blocks

    def _grade(self) -> str:
        lesson = self.lesson
        if lesson.grade is not None:
            return grade_words(lesson.grade, lesson.grade_level)
        if not self.piece.notes:
            return ""
        found = self.extras.grade or grade_piece(
            self.piece, self.fingering, self.instrument, self.hand, self.extras.model
        )
        return grade_words(found.number, found.level, estimated=True)

    def _practice(self) -> str:
        lesson = self.lesson
        planned = self.options.plan and self.plan is not None and bool(self.plan.days)
        if lesson.practice_minutes:
            return practice_words(
                lesson.practice_minutes, lesson.minutes_a_day, days_told=not planned
            )
        if self.plan is None:
            return ""
        minutes = max(5, round(self.plan.time.minutes / 5) * 5)
        return practice_words(minutes, lesson.minutes_a_day, estimated=True, days_told=not planned)

    def system_words(self, first: int, last: int) -> str:
        """What a system shows, for those who cannot see it."""
        bars = stretch_heading(self.piece, first, last)
        chords = [
            chord_words(c.text)
            for b in self.piece.bars
            if first <= b.index <= last
            for c in b.chords
        ]
        words = say("{bars} in notes and tablature", bars=bars)
        if any(chords):
            words = say(
                "{words}; chords {chords}", words=words, chords=", ".join(c for c in chords if c)
            )
        return words + "."

    @cached_property
    def _rejected(self) -> dict[RejectedNote, str]:
        return teacher.rejected_reasons(self.lesson) if self.teacher else {}

    @cached_property
    def wide_notes(self) -> list[NoteBlock]:
        """Every note over the whole width."""
        return [self._note(k, n, self.line, BODY.size) for k, n in enumerate(self.notes, 1)]

    @cached_property
    def narrow_notes(self) -> list[NoteBlock]:
        """Every note in the width of a column."""
        width = column_width(self.line, self.scale)
        return [self._note(k, n, width, _NARROW) for k, n in enumerate(self.notes, 1)]

    def _note(self, number: int, note: BarNote, width: float, size: float) -> NoteBlock:
        text = note.text
        if self.teacher:
            text += teacher.rejected_words(note, self.piece, self._rejected)
        heading = note_heading(note, self.piece)
        return NoteBlock.made(number, heading, text, width, self.scale, size)

    def note_span(self, block: SystemBlock) -> tuple[int, int]:
        """(from, to) of the notes whose first bar is in this system."""
        first = sum(n.first_bar < block.system.first for n in self.notes)
        return first, sum(n.first_bar <= block.system.last for n in self.notes)

    def legend(self) -> Block:
        """How to read the finger marks."""
        barre = any(b.barres for b in self.fingering.bars)
        notes = [n for b in self.fingering.bars for n in b.notes]
        guide = any(n.move == "guide" for n in notes)
        rest = any(n.stroke == "rest" for n in notes)
        asked = EVERY if self.options.strings else PRINTED
        fingered = {n.id: n for n in notes}
        strings = bool(strings_told(self.piece, fingered, self.instrument, asked))
        words = legend(self.options, barre, guide, rest, strings)
        return TextBlock(words, self.line, self.scale, style=_LEGEND, after=8.0)

    @cached_property
    def parts(self) -> list[Part]:
        """What follows the music, but the lines for own notes."""
        scale, line = self.scale, self.line
        parts: list[Part] = []
        grips = grips_of(self.piece, self.fingering, self.instrument, known=self.extras.known_grips)
        grips = with_pictures(grips, self.notes, self.piece, self.fingering, self.instrument)
        if grips and self.options.grips:
            parts.append(
                GripsBlock(
                    grips,
                    line,
                    scale,
                    self.options.left_handed,
                    self._grips_heading(any(g.name in self.extras.known_grips for g in grips)),
                )
            )
        names = technique_names(self.lesson)
        if names:
            words = f"**{say('Techniques:')}** {names}."
            parts.append(Loose(TextBlock(words, line, scale, after=8.0)))
        if self.options.care:
            parts.append(Loose(self._care()))
        if self.teacher:
            parts += teacher.audit_parts(self.piece, self.fingering, line, scale)
            parts += teacher.history_parts(self.extras.history, line, scale)
        if self.options.plan and self.plan is not None and self.plan.days:
            parts += plan_parts(self.plan, line, self.sheet.room, scale, tracks=self.options.tracks)
        if self.teacher:
            if self.options.charts:
                parts += teacher.chart_parts(self.lesson, self.fingering, self.plan, line, scale)
            if self.options.script and self.piece.notes:
                script = make_script(
                    replace(self.lesson, piece=self.piece),
                    self.fingering,
                    self.instrument,
                    self.hand,
                )
                parts += teacher.script_parts(script, line, scale)
        return parts

    def _grips_heading(self, known: bool) -> str:
        heading = say("New and hard grips") if known else say("New grips")
        if self.options.left_handed:
            return say("{heading} (left-handed: string 1 on the left)", heading=heading)
        return heading

    def _care(self) -> Block:
        extra = cautions(
            self.piece,
            self.fingering,
            self.instrument,
            self.hand,
            minutes_a_day=self.lesson.minutes_a_day,
        )[1:]
        care = " ".join((say(CAUTION), *map(str, extra)))
        return TextBlock(
            f"**{say('Take care.')}** {care}",
            self.line,
            self.scale,
            style=SMALL,
            after=9.0,
            boxed=True,
        )

    def own_notes(self) -> OwnNotesBlock:
        """Lines for the student's or the teacher's own hand."""
        heading = say("Lesson record") if self.teacher else say("My notes")
        return OwnNotesBlock(self.line, self.scale, 4, heading)


def ordered_notes(lesson: Lesson) -> tuple[BarNote, ...]:
    """Notes by bar; a note whose bars are gone from the piece is left out."""
    indices = {b.index for b in lesson.piece.bars}
    kept = [n for n in lesson.notes if n.first_bar in indices and n.text.strip()]
    return tuple(sorted(kept, key=lambda n: (n.first_bar, n.last_bar)))


def with_sections(lesson: Lesson) -> Piece:
    """The piece with the teacher's section letters."""
    letters = dict(lesson.sections)
    if not letters:
        return lesson.piece
    bars = tuple(replace(b, section=letters.get(b.index, "")) for b in lesson.piece.bars)
    return replace(lesson.piece, bars=bars)


def marks_of(notes: Sequence[BarNote]) -> tuple[tuple[int, int], ...]:
    """(bar index, number) of every note, as they stand over the music."""
    return tuple((n.first_bar, k) for k, n in enumerate(notes, 1))
