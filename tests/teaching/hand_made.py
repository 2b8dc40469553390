"""Small music of our own, fingered by hand, for the teaching tests."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from workbench.fingering.types import Audit, Barre, FingeredBar, FingeredNote, Fingering
from workbench.instrument.table import HANDS, INSTRUMENTS
from workbench.language.fact import fact
from workbench.music.model import Bar, Key, Note, Piece, Pitch

UKE = INSTRUMENTS["ukulele"]
GUITAR = INSTRUMENTS["guitar"]
C_MAJOR = Key(0)
HAND = HANDS["medium"]
SPELLING = ("C0", "C1", "D0", "D1", "E0", "F0", "F1", "G0", "G1", "A0", "A1", "B0")


@dataclass(frozen=True)
class Event:
    """One note with its fingers; what is None is chosen in first position."""

    midi: int
    duration: Fraction
    onset: Fraction | None = None
    string: int | None = None
    left: int | None = None
    right: str | None = None
    voice: int = 1
    move: str = ""
    held: Fraction | None = None
    cut: str = ""
    extra: tuple[tuple[str, object], ...] = ()


def n(
    midi,
    duration=1,
    onset=None,
    string=None,
    left=None,
    right=None,
    voice=1,
    move="",
    held=None,
    cut="",
    **extra,
):
    """A note: MIDI number or a name such as "A4", length, and what is fixed by hand."""
    if isinstance(midi, str):
        midi = pitch_named(midi).midi
    fraction = lambda v: None if v is None else Fraction(v)  # noqa: E731
    return Event(
        midi,
        Fraction(duration),
        fraction(onset),
        string,
        left,
        right,
        voice,
        move,
        fraction(held),
        cut,
        tuple(extra.items()),
    )


def pitch_named(text):
    alter = text.count("#") - text.count("b")
    return Pitch(text[0], alter, int(text[-1]))


def spelled(midi):
    step, alter = SPELLING[midi % 12]
    return Pitch(step, int(alter), midi // 12 - 1)


@dataclass(frozen=True)
class B:
    """A bar: its events (in a row where they have no onset) and what else it carries."""

    events: tuple[Event, ...]
    barres: tuple[Barre, ...] = ()
    reach: float = 0.0
    fields: tuple[tuple[str, object], ...] = ()


def bar(*events, barres=(), reach=0.0, **fields):
    return B(events, tuple(barres), reach, tuple(fields.items()))


def build(*bars, instrument=UKE, key=C_MAJOR, tempo=80.0, time=(4, 4), title="Study"):
    """The piece and its fingering."""
    written, fingered = [], []
    for index, b in enumerate(bars):
        fields = dict(b.fields)
        signature = fields.pop("time_signature", time)
        length = Fraction(fields.pop("length", Fraction(4 * signature[0], signature[1])))
        notes, hands, at = [], [], Fraction(0)
        for k, e in enumerate(b.events):
            onset = at if e.onset is None else e.onset
            if e.onset is None:
                at += e.duration
            note_id = f"b{index}n{k}"
            extra = dict(e.extra)
            notes.append(Note(note_id, onset, e.duration, spelled(e.midi), e.voice, **extra))
            string, fret = place(instrument, e)
            left = e.left if e.left is not None else (0 if fret == 0 else min(4, fret))
            hands.append(
                FingeredNote(
                    note_id,
                    index,
                    onset,
                    e.duration,
                    e.midi,
                    string=string,
                    fret=fret,
                    left=left,
                    right=e.right or ("im"[k % 2]),
                    held=e.held if e.held is not None else e.duration,
                    cut_reason=fact("out of stretch", note="C") if e.cut else None,
                    cut_kind=e.cut,
                    move=e.move,
                )
            )
        number = fields.pop("number", str(index + 1))
        written.append(
            Bar(
                index=index,
                number=number,
                time_signature=signature,
                length=length,
                notes=tuple(sorted(notes, key=lambda x: x.onset)),
                key=fields.pop("key", key),
                **fields,
            )
        )
        fingered.append(FingeredBar(index, number, tuple(hands), b.barres, reach_mm=b.reach))
    count = sum(len(f.notes) for f in fingered)
    piece = Piece(title, tuple(written), key=key, tempo=tempo)
    return piece, Fingering(0, True, tuple(fingered), Audit(count, 0, 1.0))


def place(instrument, event):
    found = [p for p in instrument.places(event.midi) if event.string in (None, p[0])]
    if not found:
        raise ValueError(f"{event.midi} cannot be played there")
    return min(found, key=lambda p: (p[1], p[0]))


def faster(piece, times=2):
    """The same piece at so many times the tempo."""
    return replace(
        piece,
        tempo=piece.tempo * times,
        bars=tuple(replace(b, tempo=b.tempo * times if b.tempo else None) for b in piece.bars),
    )


def song():
    """A sixteen-bar melody with an open bass, as a first piece might be: A A' B A'."""
    a = [
        bar(n("C4", 1, 0, right="p", voice=2), n("E4", 1), n("G4", 1), n("A4", 2)),
        bar(n("A4"), n("G4"), n("F4"), n("E4")),
        bar(n("D4", 1), n("E4", 1), n("F4", 1), n("D4", 1)),
        bar(n("E4", 2), n("C4", 2)),
    ]
    end = [
        bar(n("D4", Fraction(3, 2)), n("E4", Fraction(1, 2)), n("F4", 1), n("B4", 1)),
        bar(n("C5", 4), n("C4", 4, 0, right="p", voice=2)),
    ]
    b = [
        bar(n("G4", Fraction(1, 2)), n("A4", Fraction(1, 2)), n("B4"), n("C5", 2)),
        bar(n("A4"), n("F4"), n("A4", 2)),
        bar(n("G4", Fraction(1, 2)), n("F4", Fraction(1, 2)), n("E4"), n("C4", 2)),
        bar(n("D4", 2), n("G4", 2)),
    ]
    return build(*a, *a[:2], *end, *b, *a[:2], *end, title="First song", tempo=92.0)
