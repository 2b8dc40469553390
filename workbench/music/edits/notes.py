"""Notes: written, moved, spelled otherwise, given to another voice, taken away."""

from __future__ import annotations

from collections.abc import Callable, Collection
from dataclasses import replace
from fractions import Fraction

from workbench.language.message import PitchName
from workbench.music.bar_names import the_bar
from workbench.music.edits.lengths import Length, set_length
from workbench.music.edits.line import (
    MOST_VOICES,
    Row,
    beginning,
    checked_pitch,
    cleared,
    end_of,
    find,
    finished,
    fresh_ids,
    rows_of,
    with_graces,
)
from workbench.music.errors import BadInput
from workbench.music.model import STEPS, Key, Note, Piece, Pitch
from workbench.music.parsing.spelling import spell

_SHARPS = "FCGDAEB"


def key_alter(key: Key, step: str) -> int:
    """What the key signature makes of a step: +1 sharp, -1 flat, 0."""
    if key.fifths >= 0:
        return int(step in _SHARPS[: key.fifths])
    return -int(step in _SHARPS[key.fifths :])


def step_number(pitch: Pitch) -> int:
    """Place on the staff, counted in steps: C0 is 0, D0 is 1."""
    return 7 * pitch.octave + STEPS.index(pitch.step)


def pitch_at(step: int, key: Key, alter: int | None = None) -> Pitch:
    """The pitch at a place on the staff, as the key has it or with ``alter``."""
    octave, place = divmod(step, 7)
    name = STEPS[place]
    return Pitch(name, key_alter(key, name) if alter is None else alter, octave)


def nearest(letter: str, near: int, key: Key, alter: int | None = None) -> Pitch:
    """The pitch of that letter nearest to a place on the staff, at most a fourth away."""
    place = STEPS.index(letter)
    step = place + 7 * round((near - place) / 7)
    return pitch_at(step, key, alter)


def write_note(
    piece: Piece,
    bar: int,
    onset: Fraction,
    voice: int,
    pitch: Pitch,
    length: Length,
    *,
    chord: bool = False,
) -> Piece:
    """Write a note at a moment of a voice.

    Where one note is struck there already, it takes the new pitch and length; several
    give way. With ``chord`` the note joins what is struck there, for as long as that
    lasts. A note still sounding is shortened, what follows gives way as in
    ``set_length``. Raises BadInput where there is no such place, the pitch is struck
    there already, or the note would run past the end of the piece.
    """
    _check_place(piece, bar, onset, voice)
    checked_pitch(pitch)
    at = piece.starts[bar] + onset
    rows = rows_of(piece)
    struck = beginning(rows, voice, at)
    if chord and struck:
        _refuse_double(struck, pitch)
        like = struck[0]
        new = Note(fresh_ids(piece, 1)[0], onset, like.duration, pitch, voice, like.part,
                   tuplet=like.tuplet)  # fmt: skip
        return finished(piece, [*rows, (at, new)])
    if len(struck) == 1:
        again = set_length(piece, struck[0].id, length)
        return _with_pitch(again, struck[0].id, pitch)
    end = at + length.quarters
    rows = [row for row in rows if row[1] not in struck]
    if end > end_of(piece):
        raise BadInput(
            "The length chosen ({value}) would run past the last bar; add a bar first.",
            value=length.words,
        )
    part = next((n.part for n in piece.notes if n.voice == voice), _top_part(piece))
    new = Note(
        fresh_ids(piece, 1)[0], onset, length.quarters, pitch, voice, part, tuplet=length.tuplet
    )
    free = with_graces(cleared(rows, voice, at, end), voice, {at} if struck else ())
    return finished(piece, [*free, (at, new)])


def write_rest(piece: Piece, bar: int, onset: Fraction, voice: int, length: Length) -> Piece:
    """Silence in a voice from a moment on: what is struck there goes, a note still
    sounding is shortened, one that the rest covers in part is struck later."""
    _check_place(piece, bar, onset, voice)
    at = piece.starts[bar] + onset
    end = min(at + length.quarters, end_of(piece))
    rows = rows_of(piece)
    struck = beginning(rows, voice, at)
    free = cleared([row for row in rows if row[1] not in struck], voice, at, end)
    return finished(piece, with_graces(free, voice, {at} if struck else ()))


def _top_part(piece: Piece) -> int:
    return min((n.part for n in piece.notes), default=1)


def _check_place(piece: Piece, bar: int, onset: Fraction, voice: int) -> None:
    if not 0 <= bar < len(piece.bars):
        raise BadInput("There is no such bar; choose one of the piece.")
    if not 0 <= onset < piece.bars[bar].length:
        raise BadInput(
            "That moment lies outside {bar}; choose one inside.",
            bar=the_bar(piece.bars[bar].number),
        )
    if not 1 <= voice <= MOST_VOICES:
        raise BadInput("Voices are numbered 1 to {most}; choose one.", most=MOST_VOICES)


def _refuse_double(struck: list[Note], pitch: Pitch) -> None:
    if any(n.midi == pitch.midi for n in struck):
        raise BadInput(
            "{pitch} is struck there already in this voice; choose another pitch.",
            pitch=PitchName(pitch.name),
        )


def set_pitch(piece: Piece, note_id: str, pitch: Pitch) -> Piece:
    """Give a note another pitch. Raises BadInput where its chord has it already."""
    at, note = find(piece, note_id)
    others = [n for n in beginning(rows_of(piece), note.voice, at) if n.id != note_id]
    if not note.grace and pitch.midi != note.midi:
        _refuse_double(others, pitch)
    return _with_pitch(piece, note_id, pitch)


def _with_pitch(piece: Piece, note_id: str, pitch: Pitch) -> Piece:
    checked_pitch(pitch)
    rows = [(at, replace(n, pitch=pitch) if n.id == note_id else n) for at, n in rows_of(piece)]
    return finished(piece, rows)


def _moved(piece: Piece, note_id: str, to: Callable[[Pitch, Key], Pitch]) -> Piece:
    _, note = find(piece, note_id)
    return set_pitch(piece, note_id, to(note.pitch, piece.bars[piece.bar_of[note_id]].key))


def move_steps(piece: Piece, note_id: str, by: int) -> Piece:
    """Move a note up or down the scale of its key."""
    return _moved(piece, note_id, lambda p, key: pitch_at(step_number(p) + by, key))


def move_semitones(piece: Piece, note_id: str, by: int) -> Piece:
    """Move a note by semitones, spelled as its key does."""
    return _moved(piece, note_id, lambda p, key: spell(p.midi + by, key))


def move_octaves(piece: Piece, note_id: str, by: int) -> Piece:
    """Move a note by octaves."""
    return _moved(piece, note_id, lambda p, _: replace(p, octave=p.octave + by))


def respell(piece: Piece, note_id: str) -> Piece:
    """The same sound under its next name: F# becomes Gb, Gb becomes F#."""
    _, note = find(piece, note_id)
    names = other_names(note.pitch)
    if not names:
        raise BadInput(
            "{pitch} has no other name with at most one sign.",
            pitch=PitchName(note.pitch.name),
        )
    return _with_pitch(piece, note_id, names[0])


def other_names(pitch: Pitch) -> list[Pitch]:
    """Other spellings of a pitch with at most one sharp or flat, the next higher step first."""
    out = []
    for by in (1, 2, 3, -3, -2, -1):
        there = pitch_at(step_number(pitch) + by, Key(0))
        alter = pitch.midi - there.midi
        if abs(alter) <= 1:
            out.append(replace(there, alter=alter))
    return out


def to_voice(piece: Piece, note_id: str, voice: int) -> Piece:
    """Give a note to another voice, where it joins what is struck with it for the same
    length. Raises BadInput where something else sounds there."""
    at, note = find(piece, note_id)
    if not 1 <= voice <= MOST_VOICES:
        raise BadInput("Voices are numbered 1 to {most}; choose one.", most=MOST_VOICES)
    if voice == note.voice:
        return piece
    rows = rows_of(piece)
    there = [(s, n) for s, n in rows if n.voice == voice and not n.grace]
    struck = [n for s, n in there if s == at and n.duration == note.duration]
    others = [
        n for s, n in there
        if n not in struck and s < at + note.duration and s + n.duration > at
    ]  # fmt: skip
    if others:
        raise BadInput(
            "Voice {voice} sounds there already; delete or shorten its notes first.",
            voice=voice,
        )
    if not note.grace:
        _refuse_double(struck, note.pitch)
    moved = [(s, replace(n, voice=voice) if n.id == note_id else n) for s, n in rows]
    return finished(piece, with_graces(moved, note.voice, {at}))


def delete_notes(piece: Piece, note_ids: Collection[str]) -> Piece:
    """Take notes away; a rest stays in their place. Raises BadInput for one not there."""
    found = [find(piece, note_id) for note_id in note_ids]
    gone = {note.id for _, note in found}
    rows = [row for row in rows_of(piece) if row[1].id not in gone]
    for at, note in found:
        rows = with_graces(rows, note.voice, {at})
    return finished(piece, rows)


def moments(
    piece: Piece, bar: int, voice: int, length: Fraction, rows: list[Row] | None = None
) -> list[Fraction]:
    """Onsets in a bar at which one would write in a voice: where its notes begin and
    end, and in between them at steps of ``length``, counted from the bar's beginning."""
    start, size = piece.starts[bar], piece.bars[bar].length
    sounding = [
        (max(at, start) - start, min(at + n.duration, start + size) - start)
        for at, n in (rows or rows_of(piece))
        if n.voice == voice and not n.grace and at < start + size and at + n.duration > start
    ]
    out = {Fraction(0)} | {a for a, _ in sounding} | {b for _, b in sounding if b < size}
    step = Fraction(0)
    while step < size:
        if not any(a < step < b for a, b in sounding):
            out.add(step)
        step += length
    return sorted(out)
