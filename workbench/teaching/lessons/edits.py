"""Every change a teacher makes to a lesson, as a plain function from lesson to lesson."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from typing import TYPE_CHECKING, Any
from uuid import uuid4

from workbench.arranging.decisions import Decisions, rows
from workbench.arranging.weights import Wishes
from workbench.fingering.types import FingeredNote, Pin, Settings
from workbench.instrument.model import Instrument
from workbench.instrument.table import hand as find_hand
from workbench.language.message import in_a_row, mark, message
from workbench.music.errors import BadInput
from workbench.music.ringing.sounds import stems_of
from workbench.teaching.lessons.lesson import NOTE_KINDS, BarNote, Lesson

if TYPE_CHECKING:  # the window starts without the search and the tables of grips
    from workbench.arranging.arrange import Arranged
    from workbench.fingering.pins.printed import PrintedPins

RIGHT = ("p", "i", "m", "a")

#: What ``set_field`` may change, and the least and greatest value where it is a number.
FIELDS: dict[str, tuple[int, int] | None] = {
    "title": None,
    "student": None,
    "hand": None,
    "grade": (0, 8),
    "grade_level": None,
    "practice_minutes": (0, 100_000),
    "minutes_a_day": (1, 600),
    "tempo_percent": (10, 400),
    "techniques": None,
    "sections": None,
}
_NAMES = {
    "grade": mark("Grade"),
    "practice_minutes": mark("Practice minutes"),
    "minutes_a_day": mark("Minutes a day"),
    "tempo_percent": mark("Tempo percent"),
}


def fresh_id(stem: str) -> str:
    """An id that no other lesson or note has."""
    return f"{stem}-{uuid4().hex[:12]}"


def new_lesson(
    placed: Arranged,
    instrument: Instrument,
    hand: str = "medium",
    held: PrintedPins | None = None,
    wishes: Wishes | None = None,
) -> Lesson:
    """A lesson on a piece as it was placed on an instrument. ``held`` is what it holds to of
    the fingering that the score prints, by default all that the hand can; ``wishes`` what it
    was placed under, where ``placed`` does not say."""
    if held is None:
        from workbench.fingering.pins.printed import printed_pins

        held = printed_pins(placed.piece, instrument, find_hand(hand))
    wishes = wishes or placed.wishes or Wishes()
    return Lesson(
        id=fresh_id("lesson"),
        title=placed.piece.title or str(message("Untitled piece")),
        piece=placed.piece,
        instrument=instrument.id,
        capo=instrument.capo,
        hand=hand,
        key=placed.key,
        transposition=placed.transposition,
        changes=tuple(m.reason for m in held.left_out),
        arranged=placed.changes,
        top_fret=wishes.top_fret,
        strict=wishes.strict,
        tune_part=wishes.tune_part,
        bass_part=wishes.bass_part,
        pins=held.pins,
    )


def duplicate(lesson: Lesson, student: str) -> Lesson:
    """The same lesson for another student, under an id of its own."""
    return replace(lesson, id=fresh_id("lesson"), student=student, plan_done=())


def rearranged(
    lesson: Lesson, placed: Arranged, instrument: Instrument, *, again: bool = False
) -> Lesson:
    """The lesson with its piece placed anew; ``again`` where the lesson's own music was
    placed, not the score it came from: transpositions and changes add up.

    Notes stay with their bars. Pins speak of strings, so they stay only where
    the instrument and the note's pitch are the same as before.
    """
    was = {note.id: note.midi for note in lesson.piece.notes}
    now = {note.id: note.midi for note in placed.piece.notes}
    same = (instrument.id, instrument.capo) == (lesson.instrument, lesson.capo)
    pins = tuple(pin for pin in lesson.pins if same and now.get(pin.note) == was.get(pin.note))
    last = len(placed.piece.bars) - 1
    wishes = placed.wishes or lesson.wishes
    notes = tuple(
        replace(
            note,
            first_bar=min(note.first_bar, last),
            last_bar=min(note.last_bar, last),
            note=note.note if note.note in now else None,
            rejected=note.rejected if same else (),
            grip=note.grip if same else None,
        )
        for note in lesson.notes
    )
    return replace(
        lesson,
        piece=placed.piece,
        instrument=instrument.id,
        capo=instrument.capo,
        key=placed.key,
        transposition=placed.transposition + (lesson.transposition if again else 0),
        changes=lesson.changes if again else (),
        arranged=(*(lesson.arranged if again else ()), *placed.changes),
        top_fret=wishes.top_fret,
        strict=wishes.strict,
        tune_part=wishes.tune_part,
        bass_part=wishes.bass_part,
        pins=pins,
        notes=notes,
    )


def redecided(
    lesson: Lesson, placed: Arranged, decided: Decisions, instrument: Instrument
) -> Lesson:
    """The lesson with its piece laid anew around the teacher's decisions."""
    whole = tuple(change for change in lesson.arranged if not change.note)
    return replace(
        rearranged(lesson, placed, instrument),
        changes=lesson.changes,
        arranged=(*whole, *(change for change in placed.changes if change.note)),
        wanted=rows(decided),
    )


def accepted(lesson: Lesson, decided: Decisions) -> Lesson:
    """The lesson with decisions that leave the music as it is."""
    return replace(lesson, wanted=rows(decided))


def stems(lesson: Lesson, note: str) -> tuple[str, ...]:
    """The notes that are one sound with this one, itself included; those that the teacher
    wants on two strings are two sounds."""
    return stems_of(lesson.piece, note, {pin.note for pin in lesson.pins if pin.apart})


def pin_of(lesson: Lesson, note: str) -> Pin:
    """The pin of the note's sound; an empty one where it is free."""
    here = stems(lesson, note)
    found = [pin for pin in lesson.pins if pin.note in here]
    return replace(found[0], note=here[0]) if found else Pin(here[0])


def _with_pin(lesson: Lesson, pin: Pin) -> Lesson:
    here = stems(lesson, pin.note)
    rest = tuple(old for old in lesson.pins if old.note not in here)
    empty = pin == Pin(pin.note)
    return replace(lesson, pins=rest if empty else (*rest, pin))


def other_stem(lesson: Lesson, note: str) -> str | None:
    """The note that a unison on two strings would put on a string of its own, or has put
    there: the lower voice's, where ``note`` is written with two stems; else None."""
    written = stems_of(lesson.piece, note)
    return written[-1] if len(written) > 1 else None


def is_unison(lesson: Lesson, note: str) -> bool:
    """Whether the note, written with two stems, is to lie on two strings."""
    here = stems_of(lesson.piece, note)
    return any(pin.apart for pin in lesson.pins if pin.note in here)


def set_unison(lesson: Lesson, note: str, wanted: bool) -> Lesson:
    """Play a note that is written with two stems on two strings, or on one again.

    Raises BadInput where it is written once.
    """
    other = other_stem(lesson, note)
    if other is None:
        raise BadInput("This note is written with one stem; only two can be two strings.")
    here = stems_of(lesson.piece, note)
    rest = tuple(pin for pin in lesson.pins if pin.note not in here)
    return replace(lesson, pins=(*rest, Pin(other, apart=True)) if wanted else rest)


def move_note(lesson: Lesson, note: str, string: int, fret: int) -> Lesson:
    """Fix the note's place. A finger fixed before is let go unless it still makes sense."""
    pin = pin_of(lesson, note)
    stays = pin.left is not None and (pin.left == 0) == (fret == 0)
    left = pin.left if stays else None
    return _with_pin(lesson, replace(pin, string=string, fret=fret, left=left))


def set_left(lesson: Lesson, hands: FingeredNote, finger: int) -> Lesson:
    """Fix the note's left finger where it stands now.

    Raises BadInput where the finger cannot be meant.
    """
    if hands.string is None or hands.fret is None:
        raise BadInput("This note has no place on the neck yet; choose a place for it first.")
    if finger == 0 and hands.fret > 0:
        raise BadInput(
            "Finger 0 is the open string, but this note is stopped at fret {fret}; "
            "choose 1 to 4, or move it to a string where it is open.",
            fret=hands.fret,
        )
    if finger > 0 and hands.fret == 0:
        raise BadInput(
            "This note is an open string and takes no left finger; "
            "move it to another string to stop it."
        )
    pin = replace(pin_of(lesson, hands.id), string=hands.string, fret=hands.fret, left=finger)
    return _with_pin(lesson, pin)


def set_right(lesson: Lesson, note: str, finger: str) -> Lesson:
    """Fix the note's right finger."""
    if finger not in RIGHT:
        raise BadInput("Right finger '{finger}' is not known; choose p, i, m or a.", finger=finger)
    return _with_pin(lesson, replace(pin_of(lesson, note), right=finger))


def unpin(lesson: Lesson, notes: Iterable[str]) -> Lesson:
    """Let these notes free again."""
    gone = {stem for note in notes for stem in stems_of(lesson.piece, note)}
    return replace(lesson, pins=tuple(pin for pin in lesson.pins if pin.note not in gone))


def pin_all(lesson: Lesson, notes: Iterable[FingeredNote], right: bool = False) -> Lesson:
    """Fix notes as they are fingered here: how an alternative, or a whole bar, is kept."""
    for hands in notes:
        if hands.string is None or hands.fret is None:
            continue
        old = pin_of(lesson, hands.id)
        pin = replace(old, string=hands.string, fret=hands.fret, left=hands.left)
        lesson = _with_pin(lesson, replace(pin, right=hands.right) if right else pin)
    return lesson


def pin_as_typed(lesson: Lesson, notes: Iterable[str], pins: Iterable[Pin]) -> Lesson:
    """Hold these notes to these pins and to nothing else; those without one become free."""
    lesson = unpin(lesson, notes)
    for pin in pins:
        lesson = _with_pin(lesson, pin)
    return lesson


def put_note(lesson: Lesson, note: BarNote) -> Lesson:
    """Add a teaching note, or write it over the one of the same id.

    Raises BadInput where it says nothing or covers no bar of the piece.
    """
    if not note.text.strip():
        raise BadInput("This remark has no words yet; write some, or delete it.")
    if note.kind not in NOTE_KINDS:
        raise BadInput(
            "Kind '{kind}' is not known; choose one of {kinds}.",
            kind=note.kind,
            kinds=in_a_row(map(message, NOTE_KINDS)),
        )
    if not 0 <= note.first_bar <= note.last_bar < len(lesson.piece.bars):
        raise BadInput("The remark's last bar comes before its first one, or is not in the piece.")
    if any(old.id == note.id for old in lesson.notes):
        return replace(
            lesson, notes=tuple(note if old.id == note.id else old for old in lesson.notes)
        )
    return replace(lesson, notes=(*lesson.notes, note))


def delete_note(lesson: Lesson, note: str) -> Lesson:
    """Take a teaching note away."""
    return replace(lesson, notes=tuple(old for old in lesson.notes if old.id != note))


def set_field(lesson: Lesson, name: str, value: Any) -> Lesson:
    """Write one of ``FIELDS``. Raises BadInput where the value makes no sense."""
    limits = FIELDS[name]
    if limits and value is not None and not limits[0] <= value <= limits[1]:
        raise BadInput(
            "{field}: give {least} to {most}.",
            field=message(_NAMES[name]),
            least=limits[0],
            most=limits[1],
        )
    if name == "title" and not str(value).strip():
        raise BadInput("A lesson needs a title; write at least one word.")
    return replace(lesson, **{name: value})


def set_settings(lesson: Lesson, settings: Settings) -> Lesson:
    """How the fingering is sought: the student's level, the right hand's style."""
    return replace(lesson, settings=settings)
