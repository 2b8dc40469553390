"""What changed between two states of a lesson, in a teacher's words."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from difflib import SequenceMatcher

from workbench.fingering.types import Pin
from workbench.fingering.weights import COMMON, schools
from workbench.instrument.table import instrument
from workbench.language.names import as_first_word, key_words, pitch_words
from workbench.language.speech import count, say
from workbench.music.bar_names import bars_named, the_bar
from workbench.music.beats import counted_beat
from workbench.music.errors import BadInput
from workbench.music.model import Bar, Note, Piece
from workbench.teaching.bars.strokes import bar_content
from workbench.teaching.lessons.lesson import BarNote, Lesson

MOST_IN_ONE_BAR = 3  # pins of a bar told one by one; of more only the number
LONGEST_QUOTE = 60


def differences(before: Lesson, after: Lesson) -> tuple[str, ...]:
    """One sentence for each difference, the whole lesson first, then bar by bar; none
    where both say the same."""
    return tuple(
        (
            *_whole(before, after),
            *_settings(before, after),
            *_music(before.piece, after.piece),
            *_pins(before, after),
            *_notes(before, after),
            *_rest(before, after),
        )
    )


def _whole(before: Lesson, after: Lesson) -> Iterator[str]:
    for name, old, new in (
        (say("Title"), before.title, after.title),
        (say("Student"), before.student, after.student),
        (say("Instrument"), _instrument(before), _instrument(after)),
        (say("Capo"), _capo(before.capo), _capo(after.capo)),
        (say("Hand"), say(before.hand), say(after.hand)),
        (say("Key"), _key(before), _key(after)),
        (say("Grade"), _grade(before), _grade(after)),
        (say("Practice in all"), _minutes(before.practice_minutes),
         _minutes(after.practice_minutes)),
        (say("Practice a day"), _minutes(before.minutes_a_day), _minutes(after.minutes_a_day)),
        (say("Tempo"), f"{before.tempo_percent} %", f"{after.tempo_percent} %"),
    ):  # fmt: skip
        if old != new:
            yield say(
                "{name}: {old}, now {new}.",
                name=name, old=old or say("none"), new=new or say("none"),
            )  # fmt: skip
    gained = [name for name in after.techniques if name not in before.techniques]
    lost = [name for name in before.techniques if name not in after.techniques]
    if gained:
        yield say("Techniques added: {names}.", names=", ".join(gained))
    if lost:
        yield say("Techniques taken out: {names}.", names=", ".join(lost))


def _settings(before: Lesson, after: Lesson) -> Iterator[str]:
    old, new = before.settings, after.settings
    if old.level != new.level:
        yield say("Level: {old}, now {new}.", old=say(old.level), new=say(new.level))
    if old.style != new.style:
        yield say("Right hand: {old}, now {new}.", old=say(old.style), new=say(new.style))
    if old.school != new.school:
        titles = {"": COMMON, **{name: title for name, (title, _) in schools().items()}}
        yield say(
            "School of fingering: {old}, now {new}.",
            old=say(titles.get(old.school, COMMON)),
            new=say(titles.get(new.school, COMMON)),
        )
    if old.relaxed_hand != new.relaxed_hand:
        yield (
            say("The hand is relaxed now: 1 and 3 on neighbouring frets.")
            if new.relaxed_hand
            else say("The hand is not relaxed any more.")
        )
    if old.campanella != new.campanella:
        yield (
            say("Campanella now: scales ring across the strings.")
            if new.campanella
            else say("No campanella any more: scales lie where they lie best.")
        )
    if old.rest_strokes != new.rest_strokes:
        yield (
            say("Rest strokes are marked now.")
            if new.rest_strokes
            else say("Rest strokes are not marked any more.")
        )
    if old.weights != new.weights:
        yield say("What the fingering prefers has changed: weights learnt from choices.")


def _music(before: Piece, after: Piece) -> Iterator[str]:
    """What was written otherwise; a piece that was only moved is told in one sentence."""
    if before is after or before.bars == after.bars:
        return
    if len(before.bars) != len(after.bars):
        yield say(
            "Length: {old}, now {new}.",
            old=count(len(before.bars), "{n} bar", "{n} bars"),
            new=count(len(after.bars), "{n} bar", "{n} bars"),
        )
    moved = _moved(before, after)
    if moved:
        yield (
            count(
                moved,
                "All notes are {n} semitone higher.",
                "All notes are {n} semitones higher.",
            )
            if moved > 0
            else count(
                -moved,
                "All notes are {n} semitone lower.",
                "All notes are {n} semitones lower.",
            )
        )
        return
    gone, new, kept = _aligned(before.bars, after.bars)
    changed = tuple(b for a, b in kept if _written(before.bars[a]) != _written(after.bars[b]))
    pairs = [(before.bars[a], after.bars[b]) for a, b in kept]
    if gone:
        yield say("Music taken out: {bars}.", bars=bars_named(before, gone))
    if new:
        yield say("Music added: {bars}.", bars=bars_named(after, new))
    if changed:
        yield say("Notes changed: {bars}.", bars=bars_named(after, changed))
    lone = [before.bars[at] for at in gone] + [after.bars[at] for at in new]
    if any(_form(a) != _form(b) for a, b in pairs) or any(
        bar != bar.without_form() for bar in lone
    ):
        yield say("Repeats, endings or jumps have changed.")
    if any(a.chords != b.chords for a, b in pairs):
        yield say("Chord names have changed.")


def _moved(before: Piece, after: Piece) -> int:
    """By how many semitones every single note was moved; 0 where not all by the same."""
    old, new = before.notes, after.notes
    if not old or len(old) != len(new):
        return 0
    steps = {b.midi - a.midi for a, b in zip(old, new, strict=True)}
    same = all(
        (a.onset, a.duration) == (b.onset, b.duration) for a, b in zip(old, new, strict=True)
    )
    return steps.pop() if same and len(steps) == 1 else 0


def _aligned(
    before: Sequence[Bar], after: Sequence[Bar]
) -> tuple[tuple[int, ...], tuple[int, ...], tuple[tuple[int, int], ...]]:
    """Bars taken out by their old places, those added by their new ones, and old and new
    place of every bar that stayed, changed or not."""
    old, new = [_written(bar) for bar in before], [_written(bar) for bar in after]
    gone: list[int] = []
    added: list[int] = []
    kept: list[tuple[int, int]] = []
    for _, a, b, c, d in SequenceMatcher(None, old, new, autojunk=False).get_opcodes():
        both = min(b - a, d - c)
        kept += zip(range(a, a + both), range(c, c + both), strict=True)
        gone += range(a + both, b)
        added += range(c + both, d)
    return tuple(gone), tuple(added), tuple(kept)


def _written(bar: Bar) -> object:
    return bar.time_signature, bar.length, bar_content(bar)


def _form(bar: Bar) -> object:
    return (
        bar.repeat_start, bar.repeat_end, bar.times, bar.endings, bar.segno, bar.coda, bar.to_coda,
        bar.fine, bar.jump,
    )  # fmt: skip


def _pins(before: Lesson, after: Lesson) -> Iterator[str]:
    old = {pin.note: pin for pin in before.pins}
    new = {pin.note: pin for pin in after.pins}
    by_bar: dict[int, list[str]] = {}
    lost = 0
    for bar in after.piece.bars:
        for note in bar.notes:
            a, b = old.pop(note.id, None), new.get(note.id)
            if a != b:
                by_bar.setdefault(bar.index, []).append(_pin_words(bar, note, a, b))
    lost = len(old)
    for index, rows in by_bar.items():
        if len(rows) <= MOST_IN_ONE_BAR:
            yield from rows
        else:
            yield count(
                len(rows), "{bar}: {n} pin changed.", "{bar}: {n} pins changed.",
                bar=as_first_word(the_bar(after.piece.bars[index].number)),
            )  # fmt: skip
    if lost:
        yield count(lost, "{n} pin went with its note.", "{n} pins went with their notes.")


def _pin_words(bar: Bar, note: Note, old: Pin | None, new: Pin | None) -> str:
    where = say(
        "{bar}, beat {beat}, {pitch}",
        bar=as_first_word(the_bar(bar.number)), beat=counted_beat(bar, note.onset),
        pitch=pitch_words(note.pitch.name),
    )  # fmt: skip
    if new is None:
        return say("{where}: not pinned any more.", where=where)
    if old is None:
        return say("{where}: pinned to {pin}.", where=where, pin=_pin(new))
    return say("{where}: pinned to {old}, now {new}.", where=where, old=_pin(old), new=_pin(new))


def _pin(pin: Pin) -> str:
    words = []
    if pin.string is not None and pin.fret is not None:
        words.append(say("string {string}, fret {fret}", string=pin.string, fret=pin.fret))
    elif pin.string is not None:
        words.append(say("string {string}", string=pin.string))
    if pin.left is not None:
        words.append(say("finger {finger}", finger=pin.left))
    if pin.right is not None:
        words.append(say("right finger {finger}", finger=pin.right))
    return ", ".join(words)


def _notes(before: Lesson, after: Lesson) -> Iterator[str]:
    old = {note.id: note for note in before.notes}
    rows: list[tuple[int, str]] = []
    for note in after.notes:
        was = old.pop(note.id, None)
        where = as_first_word(bars_named(after.piece, _covers(note, after.piece)))
        if was is None:
            words = say("{bars}: remark added: “{text}”", bars=where, text=_quote(note.text))
        elif was.text != note.text:
            words = say(
                "{bars}: remark was “{old}”, now “{new}”",
                bars=where, old=_quote(was.text), new=_quote(note.text),
            )  # fmt: skip
        elif was != note:
            words = say("{bars}: remark changed: “{text}”", bars=where, text=_quote(note.text))
        else:
            continue
        rows.append((note.first_bar, words))
    for note in old.values():
        where = as_first_word(bars_named(before.piece, _covers(note, before.piece)))
        rows.append(
            (
                note.first_bar,
                say("{bars}: remark deleted: “{text}”", bars=where, text=_quote(note.text)),
            )
        )
    for _, words in sorted(rows, key=lambda row: row[0]):
        yield words


def _covers(note: BarNote, piece: Piece) -> tuple[int, ...]:
    return tuple(range(note.first_bar, min(note.last_bar, len(piece.bars) - 1) + 1))


def _quote(text: str) -> str:
    plain = " ".join(text.replace("*", "").split())
    return plain if len(plain) <= LONGEST_QUOTE else plain[: LONGEST_QUOTE - 1].rstrip() + "…"


def _rest(before: Lesson, after: Lesson) -> Iterator[str]:
    if before.sections != after.sections:
        yield say("Sections have changed.")
    old, new = dict(before.script_edits), dict(after.script_edits)
    places = [at for at in sorted(old.keys() | new.keys()) if old.get(at) != new.get(at)]
    if places:
        yield count(
            len(places), "Script: the words of {n} bar changed.",
            "Script: the words of {n} bars changed.",
        )  # fmt: skip
    ticked = len(set(after.plan_done) - set(before.plan_done))
    open_again = len(set(before.plan_done) - set(after.plan_done))
    if ticked:
        yield count(
            ticked, "Practice plan: {n} item more is done.",
            "Practice plan: {n} items more are done.",
        )  # fmt: skip
    if open_again:
        yield count(
            open_again, "Practice plan: {n} item is open again.",
            "Practice plan: {n} items are open again.",
        )  # fmt: skip


def _instrument(lesson: Lesson) -> str:
    try:
        return instrument(lesson.instrument, 0).name
    except BadInput:
        return lesson.instrument


def _capo(fret: int) -> str:
    return say("fret {fret}", fret=fret) if fret else ""


def _key(lesson: Lesson) -> str:
    return key_words(lesson.key or lesson.piece.key.name)


def _grade(lesson: Lesson) -> str:
    if lesson.grade is None:
        return ""
    level = say(lesson.grade_level) if lesson.grade_level else ""
    return f"{lesson.grade} {level}".strip()


def _minutes(minutes: int | None) -> str:
    return "" if minutes is None else say("{n} min", n=minutes)
