"""What is told of a note when the pointer rests on it."""

from __future__ import annotations

from workbench.fingering.telling.words import quarters, spoken_place
from workbench.fingering.telling.words import words as told
from workbench.fingering.types import FingeredNote
from workbench.handout.parts.words import pretty_pitch
from workbench.language.names import as_first_word
from workbench.language.speech import say
from workbench.music.edits.lengths import length_of
from workbench.music.model import Note
from workbench.ui.bench.session import Session


def tip_of(session: Session, name: str) -> str:
    """What is told of the note of that id; empty where the lesson has no such note."""
    lesson = session.lesson
    if lesson is None or name not in lesson.piece.bar_of:
        return ""
    from workbench.engraving.strip import voices_of

    index = lesson.piece.bar_of[name]
    note = next(n for n in lesson.piece.bars[index].notes if n.id == name)
    bar = session.fingers.hands_of(index)
    hands = next((n for n in bar.notes if n.id == name), None) if bar else None
    voices = voices_of(lesson.piece)
    voice = voices.index((note.part, note.voice)) + 1 if len(voices) > 1 else 0
    return note_tip(note, hands, voice)


def note_tip(note: Note, hands: FingeredNote | None, voice: int = 0) -> str:
    """Name, place and fingers, written and held length, and why it is cut, a line each.
    ``voice`` counts from 1 where the piece has several."""
    name = pretty_pitch(note.pitch)
    lines = [say("{name}, voice {voice}", name=name, voice=voice) if voice else name]
    if hands is not None:
        place = spoken_place(hands)
        lines.append(as_first_word(place))
    if note.grace:
        lines.append(say("Grace note"))
        return "\n".join(lines)
    value = length_of(note)
    written = quarters(note.duration)
    if value is not None:
        lines.append(say("Written: {value} ({quarters} quarters)",
                         value=value.words, quarters=written))  # fmt: skip
    else:
        lines.append(say("Written: {quarters} quarters", quarters=written))
    if hands is not None and hands.string is not None:
        if hands.held < note.duration:
            lines.append(say("Held: {quarters} quarters", quarters=quarters(hands.held)))
        else:
            lines.append(say("Held: all of it"))
        if hands.cut_reason:
            lines.append(say("Cut short: {why}", why=told(hands.cut_reason)))
    return "\n".join(lines)
