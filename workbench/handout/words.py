"""A lesson in the words of its page: facts of the title block, bars, notes."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from workbench.handout.options import HandoutOptions
from workbench.instrument.model import Instrument
from workbench.music.form import form_in_words, sections
from workbench.music.model import Piece, Pitch
from workbench.teaching.lesson import BarNote, Lesson
from workbench.teaching.techniques import catalogue

_NAMES = ("C", "C♯", "D", "E♭", "E", "F", "F♯", "G", "A♭", "A", "B♭", "B")
_BANDS = ("first steps", "beginner", "beginner", "lower intermediate", "lower intermediate",
          "intermediate", "intermediate", "advanced", "advanced")


_PARTS = {Fraction(1, 4): "¼", Fraction(1, 2): "½", Fraction(3, 4): "¾",
          Fraction(1, 3): "⅓", Fraction(2, 3): "⅔"}


def pitch_word(midi: int) -> str:
    """For example ``B♭3``."""
    return f"{_NAMES[midi % 12]}{midi // 12 - 1}"


def pretty_pitch(pitch: Pitch) -> str:
    """A spelled pitch with real signs, such as ``C♯4``."""
    sign = "♯" * pitch.alter if pitch.alter > 0 else "♭" * -pitch.alter
    return f"{pitch.step}{sign}{pitch.octave}"


def pretty_key(name: str) -> str:
    """``Bb major`` with a real flat sign."""
    head, _, rest = name.partition(" ")
    return f"{head[:1]}{head[1:].replace('b', '♭').replace('#', '♯')} {rest}".strip()


def tuning_words(instrument: Instrument) -> str:
    """String names from the highest-numbered string to string 1."""
    rows = [f"{n}\u00a0{pitch_word(m)}" for n, m in enumerate(instrument.tuning, 1)]
    return " · ".join(reversed(rows))


def tempo_words(piece: Piece, percent: int) -> str:
    """Target and, where they differ, practice tempo in the beat of the meter."""
    count, unit = piece.bars[0].time_signature
    tempo = piece.bars[0].tempo or piece.tempo
    beat, rate = "quarter note", tempo
    if unit == 8 and count % 3 == 0:
        beat, rate = "dotted quarter note", tempo * 2 / 3
    elif unit == 2:
        beat, rate = "half note", tempo / 2
    text = f"{beat} = {rate:.0f}"
    if percent != 100:
        text += f" (practise at {rate * percent / 100:.0f})"
    return text


def grade_words(lesson: Lesson) -> str:
    """For example ``grade 2, early (beginner)``; empty where the teacher gave none."""
    if lesson.grade is None:
        return ""
    level = f", {lesson.grade_level}" if lesson.grade_level else ""
    return f"Grade {lesson.grade}{level} ({_BANDS[min(8, max(0, lesson.grade))]})"


def practice_words(lesson: Lesson) -> str:
    """Whole learning time and the days it takes; empty where none is given."""
    whole = lesson.practice_minutes
    if not whole:
        return ""
    hours, minutes = divmod(whole, 60)
    parts = [f"{hours} h"] if hours else []
    parts += [f"{minutes} min"] if minutes or not hours else []
    text = " ".join(parts)
    if lesson.minutes_a_day:
        days = -(-whole // lesson.minutes_a_day)
        text += f": {days} day{'s' if days > 1 else ''} of {lesson.minutes_a_day} min"
    return text


def facts(lesson: Lesson, instrument: Instrument) -> list[tuple[str, str]]:
    """(label, value) rows of the title block."""
    piece = lesson.piece
    capo = f"fret {lesson.capo}" if lesson.capo else "none"
    key = pretty_key(lesson.key or piece.bars[0].key.name)
    rows = [
        ("Instrument", instrument.name),
        ("Tuning (string, note)", tuning_words(instrument)),
        ("Capo", capo),
        ("Key", key),
        ("Tempo", tempo_words(piece, lesson.tempo_percent)),
        ("Grade", grade_words(lesson)),
        ("Practice time", practice_words(lesson)),
        ("Student", lesson.student),
    ]
    return [(label, value) for label, value in rows if value]


def form_words(piece: Piece) -> str:
    """The form in a sentence, with the bars of each section."""
    piece = pickup_joined(piece)
    parts = []
    for section in sections(piece):
        first, last = piece.bars[section.first_bar], piece.bars[section.last_bar]
        if first.pickup and section.first_bar < section.last_bar:
            first = piece.bars[section.first_bar + 1]
        bars = f"bar {first.number}" if first is last else f"bars {first.number}–{last.number}"
        parts.append(f"{section.letter} = {bars}")
    order = form_in_words(piece)
    if len(parts) < 2:
        return "" if order.rstrip(".") in {s.letter for s in sections(piece)} else order
    return f"{'; '.join(parts)}. Order: {order}"


def pickup_joined(piece: Piece) -> Piece:
    """A pickup belongs to the section it leads into."""
    bars = piece.bars
    if len(bars) < 2 or not bars[0].pickup or bars[0].section or not bars[1].section:
        return piece
    first, second = replace(bars[0], section=bars[1].section), replace(bars[1], section="")
    return replace(piece, bars=(first, second, *bars[2:]))


def bars_word(piece: Piece, first: int, last: int) -> str:
    """``Bar 3`` or ``Bars 3–5`` by printed numbers."""
    at = {b.index: b for b in piece.bars}
    if first not in at or last not in at:
        return ""
    if at[first].pickup and first == last:
        return "Pickup"
    if first == last:
        return f"Bar {at[first].number}"
    return f"Bars {at[first].number}–{at[last].number}"


def beat_word(onset: Fraction, unit: int) -> str:
    """The beat an onset falls on, counted from 1: ``2``, ``2½``, ``2 + 1/6``."""
    beat = 1 + onset * Fraction(unit, 4)
    whole, part = divmod(beat, 1)
    if part == 0:
        return str(whole)
    return f"{whole}{_PARTS[part]}" if part in _PARTS else f"{whole} + {part}"


def note_heading(note: BarNote, piece: Piece) -> str:
    """Where and what the note is about."""
    where = f"Section {note.section}, " if note.section else ""
    place = bars_word(piece, note.first_bar, note.last_bar)
    where += place.lower() if where else place
    if note.note is not None and note.note in piece.bar_of:
        bar = piece.bars[piece.bar_of[note.note]]
        found = next(n for n in bar.notes if n.id == note.note)
        where += f", beat {beat_word(found.onset, bar.time_signature[1])}"
    return f"{where} · {note.kind}" if note.kind else where


def hands(options: HandoutOptions) -> tuple[str, str]:
    """(fretting hand, plucking hand) as the player has them."""
    return ("right", "left") if options.left_handed else ("left", "right")


def legend(options: HandoutOptions, barre: bool, guide: bool, rest: bool = False) -> str:
    """How to read the finger marks."""
    fretting, plucking = hands(options)
    text = (
        f"Beside the notes: {fretting} hand, 1 index, 2 middle, 3 ring, 4 little finger. "
        f"Under the tablature: {plucking} hand, p thumb, i index, m middle, a ring finger."
    )
    if guide:
        text += " A dash before a number: guide finger, it slides along its string."
    if rest:
        text += " ˇ after a letter: rest stroke, the finger comes to rest on the next string."
    if barre:
        text += " B with a numeral: barre at that fret."
    return text


def technique_names(lesson: Lesson) -> str:
    """The lesson's techniques by name, those the catalogue knows."""
    known = {t.id: t.name for t in catalogue()}
    return ", ".join(known[t] for t in lesson.techniques if t in known)


CAUTION = (
    "Warm up before you play, rest for a few minutes after every twenty, and stop at once if "
    "anything hurts. Pain that stays or comes back: ask your teacher or a health professional."
)
