"""A piece set above another, bar under bar: its staves, and how its elements are named.

Its notes are called as in the piece itself with a word before the id (``ids.over``), so that
a note of the original and what became of it can both be found in the drawing.
"""

from __future__ import annotations

from collections import defaultdict, deque
from collections.abc import Callable
from dataclasses import replace

from lxml import etree

from workbench.engraving import ids
from workbench.engraving.mei import marks, tree
from workbench.engraving.mei.accidentals import accidentals
from workbench.engraving.mei.marked import HalfTie
from workbench.engraving.mei.tree import add
from workbench.engraving.mei.voices import Layer, tie_targets
from workbench.music.model import Note, Piece

MOVED = 100  # added to part and layer numbers, so that no element has the name of another
FIRST_STAFF = 11
OCTAVE_CLEF_UNDER = 53  # what goes lower is written an octave up, or on a second staff
BASS_STAFF_UNDER = 57  # a voice of a lower mean goes on the second staff

Layers = Callable[[Piece], dict[int, list[Layer]]]
_known: deque[tuple[Piece, Piece]] = deque(maxlen=4)


def named(piece: Piece) -> Piece:
    """The piece with its notes named as they are in the drawing."""
    for source, made in list(_known):
        if source is piece:
            return made

    def renamed(note: Note) -> Note:
        return replace(note, id=ids.over(note.id), part=note.part + MOVED)

    bars = tuple(replace(b, notes=tuple(renamed(n) for n in b.notes)) for b in piece.bars)
    made = replace(piece, bars=bars, written=())
    _known.append((piece, made))
    return made


def together(piece: Piece, above: Piece) -> Piece:
    """Both pieces as one of whose notes each can be found in the drawing."""
    upper = named(above)
    bars = tuple(
        replace(bar, notes=(*bar.notes, *over.notes))
        for bar, over in zip(piece.bars, upper.bars, strict=True)
    )
    return replace(piece, bars=bars)


def grand(piece: Piece) -> bool:
    """Whether it takes two staves: several parts, or one of two staves, that go low."""
    several = len({n.part for n in piece.notes}) > 1 or any(p.staves > 1 for p in piece.parts)
    return several and min((n.midi for n in piece.notes), default=127) < OCTAVE_CLEF_UNDER


class Above:
    """Writes the staves of the piece above."""

    def __init__(self, piece: Piece, layers: Layers) -> None:
        self.piece = named(piece)
        self.layers = layers(self.piece)
        self.lower = _low_voices(self.piece) if grand(piece) else frozenset()
        self.low = min((n.midi for n in piece.notes), default=127) < OCTAVE_CLEF_UNDER
        self.next_ids = tie_targets(self.layers[bar.index] for bar in self.piece.bars)

    def staves(self, group: etree._Element, bar: int, first: bool) -> None:
        """The staves' definitions, as they are at a bar."""
        here = self.piece.bars[bar]
        for at in range(2 if self.lower else 1):
            staff = add(group, "staffDef", n=str(FIRST_STAFF + at), lines="5")
            clef = add(staff, "clef", shape="F" if at else "G", line="4" if at else "2")
            if self.low and not self.lower:
                clef.set("dis", "8")
                clef.set("dis.place", "below")
            add(staff, "keySig", sig=tree.signature(here.key))
            tree.meter(staff, here, shown=first)

    def changes(self, group: etree._Element, before: int, bar: int) -> None:
        """Key and time where they change."""
        was, now = self.piece.bars[before], self.piece.bars[bar]
        for at in range(2 if self.lower else 1):
            staff = add(group, "staffDef", n=str(FIRST_STAFF + at))
            if now.key != was.key:
                add(staff, "keySig", sig=tree.signature(now.key))
            if now.time_signature != was.time_signature:
                tree.meter(staff, now)

    def measure(self, measure: etree._Element, index: int) -> list[HalfTie]:
        """Writes the bar of that index, and gives its ties that are cut off."""
        ties: list[HalfTie] = []
        bar = self.piece.bars[index]
        for at in range(2 if self.lower else 1):
            layers = [
                replace(layer, number=layer.number + MOVED)
                for layer in self.layers[index]
                if (layer.voice in self.lower) == bool(at)
            ]
            staff = add(measure, "staff", n=str(FIRST_STAFF + at))
            if not layers:
                add(add(staff, "layer", n="1"), "mRest")
                continue
            signs = accidentals(layers, bar.key)
            for layer in layers:
                tree.staff_layer(staff, layer, bar.time_signature, bar.length, signs, index)
            middle = 50 if at else 59 if self.low and not self.lower else 71
            ties += marks.ties(measure, layers, self.next_ids, middle)
        return ties


def _low_voices(piece: Piece) -> frozenset[tuple[int, int]]:
    heights: dict[tuple[int, int], list[int]] = defaultdict(list)
    for note in piece.notes:
        heights[note.part, note.voice].append(note.midi)
    mean = {voice: sum(found) / len(found) for voice, found in heights.items()}
    return frozenset(v for v, m in mean.items() if m < BASS_STAFF_UNDER and m < max(mean.values()))
