"""What the right hand has to pluck, and what it is called when several strings sound at once."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import replace

from workbench.fingering.lattice.layers import Frame, LatticeLayer
from workbench.fingering.types import FingeredNote
from workbench.music.model import Bar
from workbench.music.ringing.sounds import Sounds

LOW = 2  # voice under which the right hand takes a shared sound that the lower voice moves


def plucked_frame(frame: Frame, slurred: Collection[str], low: Collection[str]) -> Frame:
    """The frame without notes that a slur sounds; moments left empty fall out, what follows
    hangs on the moment before. Sounds in ``low`` are taken as the lower voice's."""
    place: dict[int, int] = {}  # old layer -> its new index, or that of the one before it
    layers: list[LatticeLayer] = []
    for layer in frame.layers:
        parent = place[layer.parent] if layer.parent >= 0 else -1
        notes = tuple(
            replace(n, voice=max(n.voice, LOW)) if n.id in low else n
            for n in layer.notes
            if n.id not in slurred
        )
        if notes:
            place[layer.index] = len(layers)
            layers.append(replace(layer, index=len(layers), parent=parent, notes=notes))
        else:
            place[layer.index] = parent
    children: list[list[int]] = [[] for _ in layers]
    of_bar: list[list[int]] = [[] for _ in frame.of_bar]
    for layer in layers:
        of_bar[layer.bar].append(layer.index)
        if layer.parent >= 0:
            children[layer.parent].append(layer.index)
    return Frame(
        tuple(layers), (), tuple(tuple(c) for c in children), tuple(tuple(b) for b in of_bar)
    )


def rests(note: FingeredNote, bar: Bar, heard: Sounds) -> bool:
    """Whether i, m or a may rest on the next string: a single melody note, nothing else ringing."""
    here = next(n for n in bar.notes if n.id == note.id)
    together = any(
        heard.of(n.id) != heard.of(note.id)
        and n.onset < note.onset + note.duration
        and note.onset < n.onset + n.duration
        for n in bar.notes
    )
    return note.right in ("i", "m", "a") and here.voice == 1 and not together


def together(notes: Collection[FingeredNote]) -> str:
    """How notes of one moment are sounded by the right hand: "strum" (one finger over three
    strings or more), "pinch" (the thumb with fingers), "fingers" (several without the thumb),
    "" for a single note or none."""
    right = [n.right for n in notes if n.right and not n.shares]
    used = set(right)
    if len(right) > 2 and len(used) == 1:
        return "strum"
    if len(used) < 2:
        return ""
    return "pinch" if "p" in used else "fingers"
