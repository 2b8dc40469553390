"""What the teacher does by hand to the fingers of the selected notes."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import reduce
from typing import Protocol, TypeVar

from PySide6.QtCore import SignalInstance

from workbench.fingering.types import Alternative, FingeredNote
from workbench.instrument.model import Instrument
from workbench.language.speech import count, say
from workbench.store.shelf import Shelf
from workbench.teaching.lessons import edits
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.same_bars import bars_to_match, match_bars
from workbench.ui.bench.fingers import Fingers
from workbench.ui.bench.selecting import Selection

T = TypeVar("T")


class Edited(Protocol):
    """What has a lesson that is changed in steps."""

    shelf: Shelf
    lesson: Lesson | None

    @property
    def instrument(self) -> Instrument: ...

    @property
    def told(self) -> SignalInstance: ...

    @property
    def failed(self) -> SignalInstance: ...

    def edit(self, label: str, change: Callable[[Lesson], Lesson]) -> bool: ...

    def guard(self, work: Callable[[], object]) -> bool: ...


class HandEdits:
    """Commands on the selected notes; each is one step of the lesson's history, and tells
    whether it was taken."""

    def __init__(self, bench: Edited, selection: Selection, fingers: Fingers) -> None:
        self._bench = bench
        self._selection = selection
        self._fingers = fingers

    def move_note(self, note: str, string: int, fret: int) -> bool:
        """Put a note on another string."""
        return self._bench.edit(
            say("Move a note to string {string}, fret {fret}", string=string, fret=fret),
            lambda lesson: edits.move_note(lesson, note, string, fret),
        )

    def step_string(self, by: int) -> bool:
        """Put the selected note on the next string (by +1) or the one before (-1)."""
        hands = self._fingers.note_hands
        if not hands or len(self._selection.note_ids) > 1:
            self._bench.failed.emit(say("Select one note first, then move it to another string."))
            return False
        places = sorted(self._bench.instrument.places(hands.midi))
        beyond = [p for p in places if hands.string is None or (p[0] - hands.string) * by > 0]
        if not beyond:
            self._bench.told.emit(say("This note cannot be played on a string further that way."))
            return False
        return self.move_note(hands.id, *(beyond[0] if by > 0 else beyond[-1]))

    def set_left(self, finger: int) -> bool:
        """Give every selected note this left finger; several under one finger are a barre."""
        return self._each(
            say("Left finger {finger}", finger=finger), self._fingers.chosen_hands,
            lambda lesson, hands: edits.set_left(lesson, hands, finger),
            say("Select a note first, then give it a left finger."),
        )  # fmt: skip

    def set_right(self, finger: str) -> bool:
        """Give every selected note this right finger."""
        return self._each(
            say("Right finger {finger}", finger=finger), self._selection.note_ids,
            lambda lesson, note: edits.set_right(lesson, note, finger),
            say("Select a note first, then give it a right finger."),
        )  # fmt: skip

    def _each(
        self, label: str, chosen: Sequence[T], one: Callable[[Lesson, T], Lesson], unchosen: str
    ) -> bool:
        """One change of the lesson for each of the chosen, in one step; where there is none,
        ``unchosen`` is what to do first."""
        if not chosen:
            self._bench.failed.emit(unchosen)
            return False
        return self._bench.edit(label, lambda lesson: reduce(one, chosen, lesson))

    def set_unison(self, wanted: bool) -> bool:
        """Play the selected note, written with two stems, on two strings or on one."""
        note = self._selection.note_id or ""
        label = say("Play a note on two strings") if wanted else say("Play a note on one string")
        return self._bench.edit(label, lambda lesson: edits.set_unison(lesson, note, wanted))

    def pin_notes(self) -> bool:
        """Keep the selected notes as they are fingered now; all of the bar without any."""
        bar = self._fingers.bar_hands
        chosen = self._fingers.chosen_hands or (bar.notes if bar else ())
        if not chosen:
            self._bench.failed.emit(say("Wait until the bar is fingered, then pin its notes."))
            return False
        label = count(len(chosen), "Pin a note", "Pin {n} notes")
        return self._bench.edit(label, lambda lesson: edits.pin_all(lesson, chosen, right=True))

    def free_note(self) -> bool:
        """Let the selected notes free, or all of the bar where none is selected."""
        if not self._selection.bar:
            return False
        notes = self._selection.note_ids or tuple(note.id for note in self._selection.bar.notes)
        label = (
            count(len(notes), "Free a note", "Free {n} notes")
            if self._selection.note_ids
            else say("Free the bar's notes")
        )
        return self._bench.edit(label, lambda lesson: edits.unpin(lesson, notes))

    def take_choice(self, place: int) -> bool:
        """Keep one of the other fingerings of the bar."""
        if not self._fingers.choices or not 0 <= place < len(self._fingers.choices):
            return False
        found, hands, lesson = (
            self._fingers.choices[place],
            self._fingers.bar_hands,
            self._bench.lesson,
        )
        if not self._bench.edit(
            say("Take another fingering"), lambda e: edits.pin_all(e, found.notes)
        ):
            return False
        assert lesson
        self._bench.guard(lambda: self._remember(lesson, found, hands.notes if hands else ()))
        return True

    @property
    def bars_to_match(self) -> tuple[int, ...]:
        """Bars with the music of the selected one that are not held as it is."""
        lesson, index = self._bench.lesson, self._selection.bar_index
        return bars_to_match(lesson, index) if lesson is not None and index >= 0 else ()

    def match_bars(self) -> bool:
        """Hold every bar of the same music as the selected one is held."""
        index, others = self._selection.bar_index, self.bars_to_match
        if not others:
            return False
        label = count(len(others), "The same in {n} bar like it", "The same in {n} bars like it")
        return self._bench.edit(label, lambda lesson: match_bars(lesson, index, others))

    def _remember(
        self, lesson: Lesson, found: Alternative, rejected: tuple[FingeredNote, ...]
    ) -> None:
        self._bench.shelf.remember_choice(
            "alternative",
            lesson_id=lesson.id,
            bar=self._selection.bar_index,
            chosen=found.notes,
            rejected=rejected,
            instrument=lesson.instrument,
            hand=lesson.hand,
            level=lesson.settings.level,
            reason=found.reason,
        )
