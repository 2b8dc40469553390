"""A lesson in the words of its page: facts of the title block, bars, notes."""

from __future__ import annotations

from dataclasses import replace

from workbench.handout.options import HandoutOptions
from workbench.instrument.model import Instrument
from workbench.language.message import Text
from workbench.language.names import key_words, pitch_words
from workbench.language.speech import chosen, count, mark, say
from workbench.music.bar_names import stretch_heading
from workbench.music.beats import beat_at, beat_figure
from workbench.music.model import Piece, Pitch
from workbench.music.order.form import has_form, sections
from workbench.music.telling.form import form_in_words
from workbench.teaching.grading.grade import THIRD_WORDS
from workbench.teaching.lessons.lesson import BarNote, GradeThird, Lesson, NoThird
from workbench.teaching.techniques.catalogue import catalogue

_NAMES = ("C", "C#", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B")
_BANDS = (
    mark("first steps"),
    mark("beginner"),
    mark("beginner"),
    mark("lower intermediate"),
    mark("lower intermediate"),
    mark("intermediate"),
    mark("intermediate"),
    mark("advanced"),
    mark("advanced"),
)
_KINDS = {
    "left hand": mark("left hand"),
    "right hand": mark("right hand"),
    "sound": mark("sound"),
    "rhythm": mark("rhythm"),
    "form": mark("form"),
    "listening": mark("listening"),
    "caution": mark("caution"),
}


def pitch_word(midi: int) -> str:
    """For example ``B♭3``."""
    return pitch_words(f"{_NAMES[midi % 12]}{midi // 12 - 1}")


def pretty_pitch(pitch: Pitch) -> str:
    """A spelled pitch with real signs, such as ``C♯4``."""
    return pitch_words(pitch.name)


def tuning_words(instrument: Instrument) -> str:
    """String names from the highest-numbered string to string 1."""
    rows = [f"{n}\u00a0{pitch_word(m)}" for n, m in enumerate(instrument.tuning, 1)]
    return " · ".join(reversed(rows))


def tempo_words(piece: Piece, percent: int) -> str:
    """Target and, where they differ, practice tempo in the beat of the meter."""
    beats, unit = piece.bars[0].time_signature
    tempo = piece.bars[0].tempo or piece.tempo
    beat, rate = say("quarter note"), tempo
    if unit == 8 and beats % 3 == 0:
        beat, rate = say("dotted quarter note"), tempo * 2 / 3
    elif unit == 2:
        beat, rate = say("half note"), tempo / 2
    text = f"{beat} = {rate:.0f}"
    if percent != 100:
        text += say(" (practise at {tempo:.0f})", tempo=rate * percent / 100)
    return text


def grade_words(number: int, level: GradeThird | NoThird, *, estimated: bool = False) -> str:
    """For example ``Grade 2, early (beginner)``."""
    band = say(_BANDS[min(8, max(0, number))])
    told = f", {say(THIRD_WORDS[level])}" if level else ""
    words = say("Grade {number}{level} ({band})", number=number, level=told, band=band)
    return say("{grade}, estimated", grade=words) if estimated else words


def practice_words(
    minutes: int, minutes_a_day: int, *, estimated: bool = False, days_told: bool = True
) -> str:
    """Whole learning time and the days it takes; without the days where a plan, which has
    days of rest, tells them."""
    hours, rest = divmod(minutes, 60)
    parts = [say("{n} h", n=hours)] if hours else []
    parts += [say("{n} min", n=rest)] if rest or not hours else []
    text = " ".join(parts)
    if minutes_a_day and not days_told:
        text = say("{time}, {minutes} min a day", time=text, minutes=minutes_a_day)
    elif minutes_a_day:
        days = -(-minutes // minutes_a_day)
        text += count(
            days, ": {n} day of {minutes} min", ": {n} days of {minutes} min", minutes=minutes_a_day
        )
    return say("about {time}", time=text) if estimated else text


def facts(
    lesson: Lesson, instrument: Instrument, grade: str, practice: str
) -> list[tuple[str, str]]:
    """(label, value) rows of the title block. ``grade`` and ``practice`` in words."""
    piece = lesson.piece
    capo = say("fret {fret}", fret=lesson.capo) if lesson.capo else say("none", sense="capo")
    key = key_words(lesson.key or piece.bars[0].key.name)
    rows = [
        (say("Instrument"), str(instrument.called)),
        (say("Tuning (string, note)"), tuning_words(instrument)),
        (say("Capo"), capo),
        (say("Key"), key),
        (say("Tempo"), tempo_words(piece, lesson.tempo_percent)),
        (say("Grade"), grade),
        (say("Practice time"), practice),
        (say("Student"), lesson.student),
    ]
    return [(label, value) for label, value in rows if value]


def form_words(piece: Piece) -> str:
    """The form in a sentence, with the bars of each section."""
    piece = pickup_joined(piece)
    parts = []
    for section in sections(piece):
        first = piece.bars[first_numbered(piece, section.first_bar, section.last_bar)]
        last = piece.bars[section.last_bar]
        bars = (
            say("bar {bar}", bar=first.number)
            if first is last
            else say("bars {first}–{last}", first=first.number, last=last.number)
        )
        parts.append(f"{section.letter} = {bars}")
    order = form_in_words(piece)
    if len(parts) < 2:
        return order if has_form(piece) else ""
    return say("{sections}. Order: {order}", sections="; ".join(parts), order=order)


def first_numbered(piece: Piece, first: int, last: int) -> int:
    """Where a stretch of bars is said to begin: after the piece's pickup, which is not counted."""
    return 1 if first == 0 < last and piece.bars[0].pickup else first


def pickup_joined(piece: Piece) -> Piece:
    """A pickup belongs to the section it leads into."""
    bars = piece.bars
    if len(bars) < 2 or not bars[0].pickup or bars[0].section or not bars[1].section:
        return piece
    first, second = replace(bars[0], section=bars[1].section), replace(bars[1], section="")
    return replace(piece, bars=(first, second, *bars[2:]))


def note_heading(note: BarNote, piece: Piece) -> str:
    """Where and what the note is about."""
    where = stretch_heading(piece, note.first_bar, note.last_bar)
    if note.section:
        where = say("Section {letter}, {bars}", letter=note.section, bars=within(where))
    if note.note is not None and note.note in piece.bar_of:
        bar = piece.bars[piece.bar_of[note.note]]
        found = next(n for n in bar.notes if n.id == note.note)
        beat = beat_figure(beat_at(bar, found.onset), " + ")
        where = say("{bar}, beat {beat}", bar=where, beat=beat)
    return f"{where} · {say(_KINDS.get(note.kind, note.kind))}" if note.kind else where


def within(heading: Text) -> str:
    """Words that began a line, inside one, where the language writes them small."""
    words = str(heading)
    return words[:1].lower() + words[1:] if chosen() == "en" else words


def hands(options: HandoutOptions) -> tuple[str, str]:
    """(fretting hand, plucking hand) as the player has them."""
    left, right = say("left hand"), say("right hand")
    return (right, left) if options.left_handed else (left, right)


def legend(
    options: HandoutOptions, barre: bool, guide: bool, rest: bool = False, strings: bool = False
) -> str:
    """How to read the finger marks."""
    fretting, plucking = hands(options)
    rows = [
        say("Beside the notes: {hand}, 1 index, 2 middle, 3 ring, 4 little finger.", hand=fretting),
        say(
            "Under the tablature: {hand}, p thumb, i index, m middle, a ring finger.", hand=plucking
        ),
    ]
    if guide:
        rows.append(say("A dash before a number: guide finger, it slides along its string."))
    if rest:
        rows.append(
            say("ˇ after a letter: rest stroke, the finger comes to rest on the next string.")
        )
    if barre:
        rows.append(
            say("B with a numeral: barre at that fret; ½B: half barre, over some of the strings.")
        )
    if strings:
        rows.append(say("A number in a circle: the string."))
    return " ".join(rows)


def technique_names(lesson: Lesson) -> str:
    """The lesson's techniques by name, those the catalogue knows."""
    known = {t.id: t.name for t in catalogue()}
    return ", ".join(say(known[t]) for t in lesson.techniques if t in known)


CAUTION = mark(
    "Warm up before you play, rest for a few minutes after every twenty, and stop at once if "
    "anything hurts. Pain that stays or comes back: ask your teacher or a health professional."
)
