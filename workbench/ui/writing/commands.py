"""Every command of writing music: each is one step of the undo history.

Commands without a note of their own act on the note at hand.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction

from workbench.language.names import chord_typed, chord_words
from workbench.language.speech import say
from workbench.music.edits import bars as bar_edits
from workbench.music.edits import lengths, notes, signs
from workbench.music.edits.bars import Rebarred, span_words
from workbench.music.edits.line import MOST_VOICES, end_of, find
from workbench.music.model import Piece, Pitch
from workbench.music.parsing.spelling import spell
from workbench.teaching.lessons import edits
from workbench.teaching.lessons.lesson import Lesson
from workbench.ui.bench.session import Session
from workbench.ui.writing.correct import Change, correct
from workbench.ui.writing.pen import Pen


class MusicHand:
    """What a teacher who writes music does to the open lesson, with the pen where it stands."""

    def __init__(self, session: Session, pen: Pen) -> None:
        self._session = session
        self.pen = pen

    # Writing.

    def _correct(
        self, label: str, change: Change, then: Callable[[Lesson], Lesson] | None = None
    ) -> bool:
        return correct(self._session, label, change, then)

    def write(self, pitch: Pitch, *, chord: bool = False) -> bool:
        """Write a note of the chosen length where the caret stands and go on; with
        ``chord`` to what is struck there, and stay."""
        caret = self.pen.caret
        length = caret.length
        joins = chord and bool(caret.struck(self.pen.piece))

        def change(piece: Piece) -> Rebarred:
            at = caret.moment(piece)
            room = grown(piece, at + (Fraction(0) if joins else length.quarters))
            here = caret.put(room, at)
            return Rebarred(
                notes.write_note(
                    room, here.bar, here.onset, here.voice, pitch, length, chord=chord
                ),
                tuple(range(len(piece.bars))),
            )

        if not self._correct(say("Write {pitch}", pitch=pitch.name), change):
            return False
        at = caret.moment(self.pen.piece)
        here = replace(caret.put(self.pen.piece, at), step=notes.step_number(pitch), alter=None)
        written = next((n.id for n in here.struck(self.pen.piece) if n.pitch == pitch), None)
        self.pen.caret = here
        self.pen.select(written)
        self.pen.caret = here if joins else here.put(self.pen.piece, at + length.quarters)
        self.pen.figure = None
        self.pen.moved.emit()
        return True

    def letter(self, name: str, *, chord: bool = False) -> bool:
        """Write the note of that letter nearest to the caret."""
        bar = self.pen.piece.bars[self.pen.caret.bar]
        pitch = notes.nearest(name, self.pen.caret.step, bar.key, self.pen.caret.alter)
        return self.write(pitch, chord=chord)

    def here(self, *, chord: bool = False) -> bool:
        """Write the note on the line where the caret stands."""
        bar = self.pen.piece.bars[self.pen.caret.bar]
        return self.write(
            notes.pitch_at(self.pen.caret.step, bar.key, self.pen.caret.alter), chord=chord
        )

    def figure(self, digit: int) -> bool:
        """Write a fret on the caret's string; a second figure makes it a greater fret."""
        session, caret, before = self._session, self.pen.caret, self.pen.figure
        fret = digit
        if before is not None and before[0] == caret and before[2] > 0:
            longer = 10 * before[2] + digit
            if longer <= session.instrument.playable_frets:
                fret = longer
        return self.fret(fret)

    def fret(self, fret: int) -> bool:
        """Write the note of a fret on the caret's string, pinned there."""
        session, caret = self._session, self.pen.caret
        neck = session.instrument
        if not 0 <= fret <= neck.playable_frets:
            session.failed.emit(
                say("String {string} has frets 0 to {most}; choose one of them.",
                    string=caret.string, most=neck.playable_frets)
            )  # fmt: skip
            return False
        struck = caret.struck(self.pen.piece)
        midi = neck.open_midi[caret.string - 1] + fret
        pitch = spell(midi, self.pen.piece.bars[caret.bar].key)
        same = next((n for n in struck if n.midi == midi), None)
        old = same or next((n for n in struck if self.pen.string_of(n.id) == caret.string), None)

        def change(piece: Piece) -> Rebarred:
            kept = tuple(range(len(piece.bars)))
            if same is not None:
                return Rebarred(piece, kept)
            if old is not None:
                return Rebarred(notes.set_pitch(piece, old.id, pitch), kept)
            at = caret.moment(piece)
            room = grown(piece, at + (Fraction(0) if struck else caret.length.quarters))
            here = caret.put(room, at)
            made = notes.write_note(
                room, here.bar, here.onset, here.voice, pitch, caret.length, chord=bool(struck)
            )
            return Rebarred(made, kept)

        def pinned(lesson: Lesson) -> Lesson:
            here = caret.put(lesson.piece, caret.moment(lesson.piece))
            note = next(n for n in here.struck(lesson.piece) if n.midi == midi)
            return edits.move_note(lesson, note.id, caret.string, fret)

        label = say("Write fret {fret} on string {string}", fret=fret, string=caret.string)
        if not self._correct(label, change, pinned):
            return False
        here = caret.put(self.pen.piece, caret.moment(self.pen.piece))
        self.pen.caret = replace(here, step=notes.step_number(pitch))
        note = next((n.id for n in here.struck(self.pen.piece) if n.midi == midi), None)
        self.pen.select(note)
        self.pen.figure = (self.pen.caret, note or "", fret)
        self.pen.moved.emit()
        return True

    def rest(self) -> bool:
        """Write silence of the chosen length and go on."""
        caret = self.pen.caret
        done = self._correct(
            say("Write a rest"),
            lambda piece: notes.write_rest(
                piece, caret.bar, caret.onset, caret.voice, caret.length
            ),
        )
        if done:
            self.pen.on()
        return done

    # The note at hand.

    def _on_note(self, label: str, change: Callable[[Piece, str], Piece]) -> bool:
        note = self.pen.note
        if note is None:
            self._session.failed.emit(say("No note is at hand; put the caret on one, or click it."))
            return False
        done = self._correct(label, lambda piece: change(piece, note.id))
        after = self.pen.note
        if done and after is not None and after.pitch != note.pitch:
            self.pen.choose(step=notes.step_number(after.pitch))
        return done

    def _on_sound(self, label: str, change: Callable[[Piece, str], Piece]) -> bool:
        """A change of what is heard: to every stem of the note at hand."""
        lesson = self._session.lesson

        def every(piece: Piece, note: str) -> Piece:
            for stem in edits.stems(lesson, note) if lesson else (note,):
                piece = change(piece, stem)
            return piece

        return self._on_note(label, every)

    def raise_steps(self, by: int) -> bool:
        return self._on_sound(say("Move a note"), lambda p, n: notes.move_steps(p, n, by))

    def raise_semitones(self, by: int) -> bool:
        return self._on_sound(say("Move a note"), lambda p, n: notes.move_semitones(p, n, by))

    def raise_octaves(self, by: int) -> bool:
        return self._on_sound(say("Move a note"), lambda p, n: notes.move_octaves(p, n, by))

    def to_string(self, by: int) -> bool:
        """Play the note at hand on the next string (by +1) or the one before (-1)."""
        done = self._session.hand_edits.step_string(by)
        string = self.pen.string_of(self._session.selection.note_id or "")
        if done and string:
            self.pen.choose(string=string)
        return done

    def rename(self) -> bool:
        return self._on_sound(say("Spell a note otherwise"), notes.respell)

    def relength(self) -> bool:
        """Give the note at hand the chosen length."""
        length = self.pen.caret.length
        return self._on_note(
            say("Change a note's length"), lambda p, n: lengths.set_length(p, n, length)
        )

    def tie(self) -> bool:
        return self._on_note(say("Tie two notes"), lengths.tie)

    def untie(self) -> bool:
        """Strike the note at hand anew: where the caret stands inside it, else at the bar
        line that it is tied over."""

        def change(piece: Piece, note_id: str) -> Piece:
            at, note = find(piece, note_id)
            now = self.pen.caret.moment(piece)
            inside = at < now < at + note.duration
            return lengths.untie(piece, note_id, now if inside else None)

        return self._on_note(say("Untie a note"), change)

    def to_next_voice(self) -> bool:
        """Give the note at hand to the next voice."""
        note = self.pen.note
        voice = note.voice % MOST_VOICES + 1 if note else 1
        done = self._on_note(
            say("Move a note to another voice"), lambda p, n: notes.to_voice(p, n, voice)
        )
        if done:
            self.pen.choose(voice=voice)
        return done

    def delete(self) -> bool:
        """Delete the note at hand; the caret stands where it was struck."""
        note = self.pen.note
        caret = self.pen.caret.on(self.pen.piece, note) if note else self.pen.caret
        done = self._on_sound(say("Delete a note"), lambda p, n: notes.delete_notes(p, [n]))
        if done:
            self.pen.move(caret)
        return done

    # Bars.

    def insert_bar(self, after: bool) -> bool:
        """An empty bar before or after the caret's; the caret goes into it."""
        at = self.pen.caret.bar + after
        done = self._correct(say("Insert a bar"), lambda p: bar_edits.insert_bars(p, at))
        if done:
            self.pen.move(replace(self.pen.caret, bar=at, onset=Fraction(0)))
        return done

    def duplicate_bars(self, first: int, last: int) -> bool:
        """Write bars once more after the last of them; the caret goes to the copy."""
        done = self._correct(
            say("Write bars again"), lambda p: bar_edits.duplicate_bars(p, first, last)
        )
        if done:
            self.pen.move(replace(self.pen.caret, bar=last + 1, onset=Fraction(0)))
        return done

    def delete_bars(self, first: int, last: int) -> bool:
        """Delete bars; what went is told."""
        lesson = self._session.lesson
        assert lesson
        words = span_words(lesson.piece, first, last)
        gone = len(bar_edits.notes_in(lesson.piece, first, last))
        told: list[str] = []
        listen = self._session.told.connect(told.append)
        try:
            done = self._correct(
                say("Delete {bars}", bars=words),
                lambda p: bar_edits.delete_bars(p, first, last),
            )
        finally:
            self._session.told.disconnect(listen)
        if done:
            went = say(
                "{bars} went, with the notes in it: {notes}.",
                bars=span_words(lesson.piece, first, last, opening=True),
                notes=gone,
            )
            self._session.told.emit(" ".join([went, *told]))
            bar = min(first, len(self.pen.piece.bars) - 1)
            self.pen.move(replace(self.pen.caret, bar=bar, onset=Fraction(0)))
        return done

    def toggle_repeat(self, end: bool) -> bool:
        """A repeat begins, or ends, with the caret's bar; or no longer does."""
        index, bar = self.pen.caret.bar, self.pen.piece.bars[self.pen.caret.bar]
        if end:
            return self._correct(
                say("Set a repeat"),
                lambda p: signs.set_repeat(p, index, end=not bar.repeat_end),
            )
        return self._correct(
            say("Set a repeat"),
            lambda p: signs.set_repeat(p, index, start=not bar.repeat_start),
        )

    def set_endings(self, first: int, last: int, passes: tuple[int, ...]) -> bool:
        """Bars become an ending; without passes the endings around them are dissolved."""
        if not passes:
            return self._correct(
                say("Dissolve the endings"), lambda p: signs.clear_endings(p, first)
            )
        return self._correct(
            say("Set an ending"), lambda p: signs.set_endings(p, first, last, passes)
        )

    def set_chord(self, text: str) -> bool:
        """The chord name over the caret's moment; none where it is empty."""
        caret = self.pen.caret
        return self._correct(
            say("Write a chord name"),
            lambda p: signs.set_chord(p, caret.bar, caret.onset, chord_typed(text)),
        )

    @property
    def chord_here(self) -> str:
        """The chord name that stands over the caret's moment."""
        chords = self.pen.piece.bars[self.pen.caret.bar].chords
        here = (c.text for c in chords if c.onset == self.pen.caret.onset)
        return chord_words(next(here, ""))


def grown(piece: Piece, moment: Fraction) -> Piece:
    """The piece with as many empty bars at its end as it takes to reach a moment."""
    while end_of(piece) < moment:
        piece = bar_edits.insert_bars(piece, len(piece.bars)).piece
    return piece
