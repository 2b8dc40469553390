"""From the search's answer back to the music: the piece as it is laid, and the changes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from workbench.arranging.ceiling import seated
from workbench.arranging.changes import (
    COVERS,
    DOUBLED,
    DROPPED,
    GRIP,
    HARD,
    LINE,
    NEEDED,
    OCTAVE,
    PHRASE,
    RANGE,
    REENTRANT,
    SHORTENED,
    STRINGS,
    WISH,
    Change,
    ChangeKind,
)
from workbench.arranging.decisions import FREE, Decisions
from workbench.arranging.options import Options
from workbench.arranging.search import Laid, Search
from workbench.arranging.shapes import Places
from workbench.arranging.sounds import BASS, TUNE, Sound, Texture
from workbench.arranging.transpose import Shift, move_octaves
from workbench.arranging.weights import EASY_FRET
from workbench.music.beats import beat_at
from workbench.music.model import Bar, Note, Piece


@dataclass(frozen=True)
class KeptShares:
    """Shares from 0 to 1 of what stayed: of the tune the notes in the octave of their
    phrase at full length; of the bass and of inner notes those that sound at all."""

    tune: float = 1.0
    bass: float = 1.0
    inner: float = 1.0


EVERYTHING = KeptShares()


def at_length(search: Search, laid: Laid, semitones: int) -> Laid:
    """The arrangement with the lengths that its sounds come to have."""
    as_written = not semitones and bool(search.stays)
    cuts = _needed_cuts(search.texture, laid, search.options, semitones, as_written)
    return replace(laid, cuts=cuts)


def _needed_cuts(
    sounds: Texture, laid: Laid, options: Options, semitones: int, as_written: bool
) -> tuple[int | None, ...]:
    """The moments at which sounds have to end for want of a string or of a hand, or for the tune
    to stay on top. The written lengths stay, the tune's before others, as long as every sound
    can have a string and (of the tune, and of music that stays ``as_written``, even where this
    is not so) a hand holds all at ease; how long it does is for the fingering to decide."""
    cuts = list(laid.cuts)
    pitch = _pitches(sounds, laid, semitones)
    meets = _meetings(sounds, laid, pitch)
    alive: list[list[int]] = [[] for _ in sounds.moments]
    first = [m for m, struck in enumerate(sounds.struck) for _ in struck]
    for i, until in enumerate(sounds.until):
        if pitch[i] is not None:
            for m in range(first[i], until if cuts[i] is None else cuts[i] or 0):
                alive[m].append(i)
    short = [(i, cut) for i, cut in enumerate(laid.cuts) if cut is not None]
    for i, cut in sorted(short, key=lambda row: sounds.sounds[row[0]].role != TUNE):
        cuts[i] = None
        for m in range(cut, sounds.until[i]):
            heard = [pitch[j] or 0 for j in (*alive[m], i)]
            fits = as_written or sounds.sounds[i].role == TUNE or _at_ease(tuple(heard), options)
            if not fits or _covers(sounds, pitch, i, m) or not seated(heard, options.where):
                cuts[i] = m
                break
            alive[m].append(i)
    for i, m in meets.items():
        cuts[i] = m if cuts[i] is None else min(m, cuts[i] or m)
    return tuple(cuts)


def _pitches(sounds: Texture, laid: Laid, semitones: int) -> list[int | None]:
    """The MIDI number of every sound as it is laid; None where it is left out."""
    return [
        None if k is None else s.midi + semitones + 12 * k
        for s, k in zip(sounds.sounds, laid.octaves, strict=True)
    ]


def _covers(sounds: Texture, pitch: Sequence[int | None], i: int, m: int) -> bool:
    """Whether a sound would lie above the tune struck at a moment, and did not in the source."""
    line = [j for j in sounds.struck[m] if sounds.sounds[j].role == TUNE and pitch[j] is not None]
    return (
        bool(line)
        and (pitch[i] or 0) > max(pitch[j] or 0 for j in line)
        and sounds.sounds[i].midi <= max(sounds.sounds[j].midi for j in line)
    )


def _meetings(sounds: Texture, laid: Laid, pitch: Sequence[int | None]) -> dict[int, int]:
    """The sounds that another octave has brought to a pitch which is struck anew while they
    last, and the moment of that: one string cannot do both."""
    out: dict[int, int] = {}
    begun = [m for m, struck in enumerate(sounds.struck) for _ in struck]
    for i, until in enumerate(sounds.until):
        for m in range(begun[i] + 1, until if pitch[i] is not None else 0):
            again = [j for j in sounds.struck[m] if pitch[j] == pitch[i]]
            if any(sounds.sounds[j].midi != sounds.sounds[i].midi for j in again):
                out[i] = m
                break
    return out


def _at_ease(pitches: tuple[int, ...], options: Options) -> bool:
    """Whether a hand holds all pitches within comfort, none above the seventh fret that has a
    lower place."""

    def go(n: int, places: Places) -> bool:
        if n == len(pitches):
            ease = options.shapes.ease(tuple(sorted(places)))
            return ease is not None and not ease.excess
        own = options.where(pitches[n])
        most = max(EASY_FRET, min((fret for _, fret in own), default=0))
        return any(
            go(n + 1, (*places, place))
            for place in own
            if place[1] <= most and all(place[0] != s for s, _ in places)
        )

    return go(0, ())


def kept_shares(sounds: Texture, laid: Laid) -> KeptShares:
    """What of the music an arrangement keeps."""
    count = {"tune": [0, 0], "bass": [0, 0], "inner": [0, 0]}
    for m, struck in enumerate(sounds.struck):
        octave = laid.phrase_octaves[sounds.phrase[m]]
        for i in struck:
            role, k = sounds.sounds[i].role, laid.octaves[i]
            row = count["tune" if role == TUNE else "bass" if role == BASS else "inner"]
            row[1] += 1
            row[0] += k == octave and laid.cuts[i] is None if role == TUNE else k is not None
    shares = {name: n / of if of else 1.0 for name, (n, of) in count.items()}
    return KeptShares(**shares)


def laid_piece(
    moved: Piece,
    sounds: Texture,
    laid: Laid,
    options: Options,
    shift: Shift,
    wanted: Decisions | None = None,
) -> tuple[Piece, tuple[Change, ...]]:
    """The moved piece with every note as it is laid, and all changes in the order of the music."""
    now: dict[str, Note | None] = {}
    changes: list[Change] = []
    notes = {n.id: n for n in moved.notes}
    pitch = _pitches(sounds, laid, shift.semitones)
    for m, struck in enumerate(sounds.struck):
        for i in struck:
            sound = sounds.sounds[i]
            octave = laid.octaves[i]
            wish = any((wanted or {}).get(n.id, FREE).own for n in sound.notes)
            for stem in sound.notes:
                note = notes[stem.id]
                if octave is None:
                    why = WISH if wish else _why_out(sounds, laid, options, m, i, shift.semitones)
                    now[note.id] = None
                    changes.append(_told(sound, note, DROPPED, why, note.pitch.name))
                    continue
                after = replace(note, pitch=move_octaves(note.pitch, octave))
                if octave:
                    with_phrase = (
                        sound.role == TUNE and octave == laid.phrase_octaves[sounds.phrase[m]]
                    )
                    why = WISH if wish else _why_moved(sounds, laid, options, m, i, shift.semitones)
                    kind = PHRASE if with_phrase else OCTAVE
                    changes.append(
                        _told(sound, note, kind, why, note.pitch.name, after.pitch.name, octave)
                    )
                cut = laid.cuts[i]
                if cut is not None:
                    length = sounds.moments[cut] - sound.start
                    if length < note.duration:
                        after = replace(after, duration=length)
                        why = COVERS if _covers(sounds, pitch, i, cut) else NEEDED
                        changes.append(
                            _told(sound, note, SHORTENED, why, after.pitch.name, str(length))
                        )
                now[note.id] = after
    _graces(moved, now, changes, options)
    bars = tuple(
        replace(
            bar,
            notes=tuple(n for n in (now.get(old.id, old) for old in bar.notes) if n is not None),
        )
        for bar in moved.bars
    )
    order = {note.id: at for at, note in enumerate(moved.notes)}
    changes.sort(key=lambda c: (c.bar, c.onset, order[c.note]))
    return replace(moved, bars=bars), tuple(changes)


def _told(
    sound: Sound,
    note: Note,
    kind: ChangeKind,
    why: str,
    before: str,
    after: str = "",
    amount: int = 0,
) -> Change:
    return _change(sound.bar, note, kind, why, sound.role, before, after, amount)


def _change(
    bar: Bar, note: Note, kind: ChangeKind, why: str, role: str, before: str, after: str = "",
    amount: int = 0,
) -> Change:  # fmt: skip
    return Change(
        note.id, bar.index, bar.number, note.onset, beat_at(bar, note.onset), kind, why, role,
        note.part, note.voice, before, after, amount,
    )  # fmt: skip


def _why_out(sounds: Texture, laid: Laid, options: Options, m: int, i: int, semitones: int) -> str:
    sound = sounds.sounds[i]
    midi = sound.midi + semitones
    octave = laid.phrase_octaves[sounds.phrase[m]]
    ceiling = 127 if sound.ceiling is None else sound.ceiling + semitones + 12 * octave
    if not any(options.where(midi + 12 * k) for k in range(-4, 5) if midi + 12 * k < ceiling):
        return RANGE
    kept = [j for j in sounds.struck[m] if laid.octaves[j] is not None]
    if any((sounds.sounds[j].midi - sound.midi) % 12 == 0 for j in kept):
        return DOUBLED
    if len(sounds.struck[m]) > options.instrument.strings:
        return STRINGS
    taken = {p[0]: p[1] for j in kept if (p := laid.places[j]) is not None}
    for k in range(-4, 5):
        if midi + 12 * k < ceiling:
            for string, fret in options.where(midi + 12 * k):
                if string not in taken and options.shapes.ease(
                    tuple(sorted([*taken.items(), (string, fret)]))
                ):
                    return HARD
    return GRIP


def _why_moved(
    sounds: Texture, laid: Laid, options: Options, m: int, i: int, semitones: int
) -> str:
    sound, octave = sounds.sounds[i], laid.octaves[i] or 0
    if not options.where(sound.midi + semitones):
        inner = [
            sounds.sounds[j].midi + 12 * (laid.octaves[j] or 0)
            for j in sounds.struck[m]
            if laid.octaves[j] is not None and sounds.sounds[j].role not in (TUNE, BASS)
        ]
        over = any(high < sound.midi + 12 * octave for high in inner)
        if sound.role == BASS and over and options.instrument.reentrant:
            return REENTRANT
        return RANGE
    own = options.where(sound.midi + semitones)
    taken = {p[0]: p[1] for j in sounds.struck[m] if j != i and (p := laid.places[j]) is not None}
    if not any(
        s not in taken and options.shapes.ease(tuple(sorted([*taken.items(), (s, f)])))
        for s, f in own
    ):
        return GRIP
    return LINE


def _graces(
    moved: Piece, now: dict[str, Note | None], changes: list[Change], options: Options
) -> None:
    """A grace note goes with the note it leads to: as many octaves, or out."""
    for bar in moved.bars:
        for note in bar.notes:
            if not note.grace:
                continue
            at = note.onset, note.part, note.voice
            led = [
                n for n in bar.notes
                if not n.grace and (n.onset, n.part, n.voice) == at
            ]  # fmt: skip
            fate = [(n, now.get(n.id, n)) for n in led]
            stays = [(n, after) for n, after in fate if after is not None]
            octave = (stays[0][1].pitch.octave - stays[0][0].pitch.octave) if stays else 0
            midi = note.midi + 12 * octave
            role = next((c.role for c in changes if led and c.note == led[0].id), TUNE)
            if (led and not stays) or not options.where(midi):
                now[note.id] = None
                changes.append(_change(bar, note, DROPPED, LINE if led else RANGE, role,
                                       note.pitch.name))  # fmt: skip
            elif octave:
                after = replace(note, pitch=move_octaves(note.pitch, octave))
                now[note.id] = after
                changes.append(_change(bar, note, OCTAVE, LINE, role, note.pitch.name,
                                       after.pitch.name, octave))  # fmt: skip
