"""Exercises made from a bar of the piece itself: real music, to engrave and to hear."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from fractions import Fraction

from workbench.fingering.types import Audit, FingeredBar, FingeredNote, Fingering
from workbench.instrument.model import Instrument
from workbench.language.message import Message, counted, mark, message
from workbench.music.bar_names import the_bar
from workbench.music.errors import BadInput
from workbench.music.model import Bar, Note, Piece, Pitch
from workbench.teaching.bars.strokes import Stroke, by_bar, fingered_bars, strokes, tempos
from workbench.teaching.techniques.catalogue import Drill, Technique

TIMES = 4  # how often an exercise is repeated
SLOW = 50  # percent of the tempo for slow work

SHARPS = ("C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B")
FLATS = ("C", "Db", "D", "Eb", "E", "F", "Gb", "G", "Ab", "A", "Bb", "B")


@dataclass(frozen=True, kw_only=True)
class Exercise:
    """One exercise: ``kind`` as in KINDS, what to do in a sentence, music and fingering
    of one repeated bar, and the tempo in percent of the piece's."""

    kind: Drill
    bar: int
    title: Message
    text: Message
    piece: Piece
    fingering: Fingering
    tempo_percent: int


def exercises_for(
    technique: Technique, piece: Piece, fingering: Fingering, instrument: Instrument, bar: int
) -> tuple[Exercise, ...]:
    """The exercises that serve a technique, made from written bar ``bar``; kinds to which
    the bar gives nothing (no stopped note, say) are left out."""
    source = _source(piece, fingering, instrument, bar)
    made = [KINDS[kind](source) for kind in technique.drills] if source is not None else []
    return tuple(e for e in made if e is not None)


def exercise(
    kind: Drill, piece: Piece, fingering: Fingering, instrument: Instrument, bar: int
) -> Exercise:
    """One exercise of that kind from that written bar.

    Raises BadInput for an unknown kind or bar, or where the bar gives nothing to it.
    """
    if kind not in KINDS:
        raise BadInput(
            "Exercise '{kind}' is not known; choose one of {known}.",
            kind=kind,
            known=", ".join(KINDS),
        )
    if not 0 <= bar < len(piece.bars):
        raise BadInput("Exercise: the piece has no written bar {bar}.", bar=bar + 1)
    source = _source(piece, fingering, instrument, bar)
    made = KINDS[kind](source) if source is not None else None
    if made is None:
        raise BadInput(
            "Bar {bar} gives nothing to '{kind}'; choose another exercise.",
            bar=piece.bars[bar].number,
            kind=message(kind),
        )
    return made


def alone(piece: Piece, fingering: Fingering, bar: int) -> tuple[Piece, Fingering]:
    """A written bar as a piece of its own; see ``excerpt``."""
    return excerpt(piece, fingering, bar, bar)


def excerpt(piece: Piece, fingering: Fingering, first: int, last: int) -> tuple[Piece, Fingering]:
    """Written bars as a piece of their own, to be shown; what is tied out of them ends with
    the last.

    Raises KeyError where the fingering lacks one of them.
    """
    known = fingered_bars(fingering)
    bars, hands = [], []
    for at, written in enumerate(piece.bars[first : last + 1]):
        left = sum((b.length for b in piece.bars[first + at : last + 1]), Fraction(0))
        notes = tuple(replace(n, duration=min(n.duration, left - n.onset)) for n in written.notes)
        bars.append(replace(written.without_form(), index=at, notes=notes, tempo=None, section=""))
        fingered = known[written.index]
        rows = tuple(replace(h, bar=at) for h in fingered.notes)
        hands.append(replace(fingered, index=at, notes=rows))
    taken = replace(piece, bars=tuple(bars), tempo=tempos(piece)[first])
    return taken, replace(fingering, bars=tuple(hands))


@dataclass(frozen=True)
class _Source:
    """A bar with its strokes and its fingering."""

    piece: Piece
    bar: Bar
    fingered: FingeredBar
    strokes: tuple[Stroke, ...]
    instrument: Instrument
    tempo: float

    @property
    def name(self) -> Message:
        return the_bar(self.bar.number)


Rows = list[tuple[Note, FingeredNote]]


def _source(piece: Piece, fingering: Fingering, instrument: Instrument, bar: int) -> _Source | None:
    """What the exercises of a bar are made from; None where it has nothing to play."""
    fingered = fingered_bars(fingering).get(bar)
    if fingered is None or not piece.bars[bar].notes:
        return None
    return _Source(
        piece,
        piece.bars[bar],
        fingered,
        by_bar(strokes(piece, fingering)).get(bar, ()),
        instrument,
        tempos(piece)[bar],
    )


def _whole(source: _Source) -> Rows:
    hands = {n.id: n for n in source.fingered.notes}
    return [(n, hands[n.id]) for n in source.bar.notes if n.id in hands]


def _loop(source: _Source) -> Exercise | None:
    text = message(
        "Loop {bar} {times} times without a gap at the bar line.", bar=source.name, times=TIMES
    )
    return _exercise(source, "loop", text, _whole(source), 80, barres=True)


def _slow(source: _Source) -> Exercise | None:
    text = message(
        "Play {bar} at half the tempo, every note as long as it is written; "
        "then a little faster, as long as nothing slips.",
        bar=source.name,
    )
    return _exercise(source, "slow", text, _whole(source), SLOW, barres=True)


def _right_alone(source: _Source) -> Exercise | None:
    rows: Rows = []
    for note, hands in _whole(source):
        if hands.string is None or note.grace:
            continue
        midi = source.instrument.open_midi[hands.string - 1]
        rows.append((_at(note, midi, source), replace(_open(hands), midi=midi)))
    text = message(
        "The right hand of {bar} alone on open strings, fingers as written: the left "
        "hand rests. Until it runs by itself.",
        bar=source.name,
    )
    return _exercise(source, "right hand alone", text, rows, 80)


def _left_alone(source: _Source) -> Exercise | None:
    """The grips one after the other, each as a block."""
    rows: Rows = []
    grips: list[tuple[Fraction, Stroke]] = []
    for stroke in source.strokes:
        if stroke.grip and (not grips or grips[-1][1].grip != stroke.grip):
            grips.append((stroke.onset, stroke))
    for k, (onset, stroke) in enumerate(grips):
        end = grips[k + 1][0] if k + 1 < len(grips) else source.bar.length
        for finger, string, fret in sorted(stroke.grip, key=lambda g: g[1]):
            midi = source.instrument.open_midi[string - 1] + fret
            name = f"{source.bar.index}-{k}-{string}-{fret}"
            pitch = _pitch(midi, source.bar.key.fifths)
            note = Note(name, onset, end - onset, pitch)
            rows.append(
                (
                    note,
                    FingeredNote(
                        name,
                        0,
                        onset,
                        end - onset,
                        midi,
                        string=string,
                        fret=fret,
                        left=finger,
                        right=None,
                        held=end - onset,
                        move="place",
                    ),
                )
            )
    text = counted(
        len(grips),
        "The left hand of {bar} alone: {n} grip, set all fingers together, press, let go, "
        "and on to the next without looking.",
        "The left hand of {bar} alone: {n} grips, set all fingers together, press, let go, "
        "and on to the next without looking.",
        bar=source.name,
    )
    return _exercise(source, "left hand alone", text, rows, SLOW, barres=True)


def _rhythm_alone(source: _Source) -> Exercise | None:
    """The bar's rhythm on one open string, the first, fingers taking turns."""
    rows: Rows = []
    midi = source.instrument.open_midi[0]
    struck = [s for s in source.strokes if s.notes]
    for k, stroke in enumerate(struck):
        end = struck[k + 1].onset if k + 1 < len(struck) else source.bar.length
        note = stroke.notes[0].note
        # a top note that ends before the next begins leaves its rest
        length = min(end - stroke.onset, max(p.note.duration for p in stroke.notes))
        timed = replace(_at(note, midi, source), duration=length, voice=1)
        hands = replace(
            _open(stroke.notes[0].hands),
            midi=midi,
            string=1,
            right="im"[k % 2],
            duration=length,
            held=length,
        )
        rows.append((timed, hands))
    text = message(
        "Clap and count the rhythm of {bar}, then play it on the open first string.",
        bar=source.name,
    )
    return _exercise(source, "rhythm alone", text, rows, 80)


KINDS: dict[Drill, Callable[[_Source], Exercise | None]] = {
    mark("loop"): _loop,
    mark("slow"): _slow,
    mark("right hand alone"): _right_alone,
    mark("left hand alone"): _left_alone,
    mark("rhythm alone"): _rhythm_alone,
}


def _exercise(
    source: _Source, kind: Drill, text: Message, rows: Rows, percent: int, *, barres: bool = False
) -> Exercise | None:
    if not rows:
        return None
    length = source.bar.length
    notes, hands = [], []
    for k, (note, fingers) in enumerate(rows):
        # a note tied out of the bar ends with it here
        duration = min(note.duration, length - note.onset)
        held = min(fingers.held, duration)
        name = f"x{k}"
        notes.append(replace(note, id=name, duration=duration))
        hands.append(replace(fingers, id=name, bar=0, duration=duration, held=held))
    bar = replace(
        source.bar.without_form(),
        index=0,
        number="1",
        notes=tuple(notes),
        tempo=None,
        pickup=False,
        repeat_start=True,
        repeat_end=True,
        times=TIMES,
        section="",
        chords=source.bar.chords if kind in ("loop", "slow") else (),
    )
    fingered = FingeredBar(
        0,
        "1",
        tuple(hands),
        source.fingered.barres if barres else (),
        reach_mm=source.fingered.reach_mm if barres else 0.0,
    )
    cut = sum(1 for h in hands if h.held < h.duration)
    whole = float(sum(h.duration for h in hands)) or 1.0
    audit = Audit(len(hands), cut, float(sum(h.held for h in hands)) / whole)
    title = message(
        "{title}: {bar}, {kind}", title=source.piece.title, bar=source.name, kind=message(kind)
    )
    piece = Piece(
        source.piece.title, (bar,), key=source.bar.key, tempo=source.tempo * percent / 100.0
    )
    return Exercise(
        kind=kind,
        bar=source.bar.index,
        title=title,
        text=text,
        piece=piece,
        fingering=Fingering(0, False, (fingered,), audit),
        tempo_percent=percent,
    )


def _open(hands: FingeredNote) -> FingeredNote:
    return replace(
        hands,
        fret=0,
        left=0,
        held=hands.duration,
        cut_reason=None,
        cut_kind="",
        move="open",
        pinned=False,
        impossible=None,
    )


def _at(note: Note, midi: int, source: _Source) -> Note:
    return replace(
        note,
        pitch=_pitch(midi, source.bar.key.fifths),
        slur_start=False,
        slur_stop=False,
        articulations=(),
    )


def _pitch(midi: int, fifths: int) -> Pitch:
    """A spelling that suits the key: flats in flat keys, else sharps."""
    name = (FLATS if fifths < 0 else SHARPS)[midi % 12]
    alter = {"": 0, "#": 1, "b": -1}[name[1:]]
    return Pitch(name[0], alter, midi // 12 - 1)
