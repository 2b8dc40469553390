"""What a path means for the notes: fingers, ways of the fingers, lengths held, reasons of cuts."""

from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction

from workbench.fingering.lattice.growth import Lattice
from workbench.fingering.lattice.layers import Join, LatticeLayer
from workbench.fingering.lattice.terms import MOVE
from workbench.fingering.types import Audit, Barre, CutKind, FingeredNote, FingerMove, JoinCut, Pin
from workbench.language.fact import Fact, fact
from workbench.music.model import Note, Piece

GAP = Fraction(1, 8)  # quarter lengths a finger needs to hop; at most half of the note it leaves


@dataclass
class Told:
    """What is found along the path, by note id, and by bar index for barres."""

    notes: dict[str, FingeredNote] = field(default_factory=dict)
    barres: dict[int, list[Barre]] = field(default_factory=dict)
    reach: dict[int, float] = field(default_factory=dict)
    planted: dict[int, list[tuple[Fraction, int, int, int]]] = field(default_factory=dict)
    joins: list[JoinCut] = field(default_factory=list)


def hop_gap(duration: Fraction) -> Fraction:
    """Quarter lengths lost when the finger must hop away: an eighth of a quarter,
    or half of a shorter note."""
    return min(GAP, duration / 2)


def _hand(lattice: Lattice, t: int, state: int) -> list[tuple[int, int, int]]:
    s = lattice.states[t]
    return [(int(s.fret[state, f]), int(s.lo[state, f]), int(s.hi[state, f])) for f in range(4)]


def tell(lattice: Lattice, path: tuple[int, ...], piece: Piece, pins: dict[str, Pin]) -> Told:
    """Read notes, moves, cuts, barres and reach off a path."""
    out = Told()
    layers = lattice.frame.layers
    hands = [_hand(lattice, t, path[t]) for t in range(len(layers))]
    nothing = [(0, 0, 0)] * 4
    placed: dict[str, tuple[int, int, int]] = {}  # note id -> string, fret, finger
    starts: dict[str, Fraction] = {}
    held: dict[str, Fraction] = {}
    cuts: dict[str, tuple[CutKind, Fact | None]] = {}
    moves: dict[str, FingerMove] = {}
    rings: dict[str, Fraction] = {}
    for layer in layers:
        t = layer.index
        grip = lattice.grips[t][int(lattice.states[t].grip[path[t]])]
        before = hands[layer.parent] if layer.parent >= 0 else nothing
        for n, place in zip(layer.notes, grip.places, strict=True):
            placed[n.id], starts[n.id], held[n.id] = place, layer.time, n.duration
            moves[n.id] = _move(place, before, hands[t], lattice, layer, path)
        if layer.parent >= 0:
            _cuts(lattice, path, layer, before, hands[t], grip.fingers, placed, starts, held, cuts)
            _rings(lattice, path, layer, starts, rings)
        _surroundings(out, lattice, layer, hands[t], before)
    for join in lattice.frame.joins:
        _join_cuts(out, lattice, path, join, hands, placed, held, cuts, piece)
    for bar in piece.bars:
        for n in bar.notes:
            if n.id not in placed:
                continue
            string, fret, finger = placed[n.id]
            kind, reason = cuts.get(n.id, ("", None))
            pin = pins.get(n.id)
            out.notes[n.id] = FingeredNote(
                n.id,
                bar.index,
                n.onset,
                n.duration,
                n.midi,
                string=string,
                fret=fret,
                left=finger,
                right=None,
                held=held[n.id],
                cut_reason=reason,
                cut_kind=kind,
                move=moves[n.id],
                pinned=pin is not None,
                pitch=n.pitch.name,
                rings=rings.get(n.id),
            )
    return out


def _rings(
    lattice: Lattice, path: tuple[int, ...], layer: LatticeLayer, starts: dict[str, Fraction],
    rings: dict[str, Fraction],
) -> None:  # fmt: skip
    """How long notes of a scale ring that the hand lets ring into the next."""
    above = lattice.frame.layers[layer.parent]
    ringing = {int(x) for x in lattice.states[layer.index].ring[path[layer.index]]}
    for slot in (int(x) for x in lattice.states[layer.parent].ring[path[layer.parent]]):
        note = above.slots[slot - 1] if slot else None
        if note is None or note.id not in lattice.frame.bells or not layer.wished[slot - 1]:
            continue
        if layer.carry[slot - 1] in ringing:
            rings[note.id] = lattice.frame.bells[note.id]
        elif note.id in rings:
            rings[note.id] = layer.time - starts[note.id]


def _move(
    place: tuple[int, int, int],
    before: list[tuple[int, int, int]],
    after: list[tuple[int, int, int]],
    lattice: Lattice,
    layer: LatticeLayer,
    path: tuple[int, ...],
) -> FingerMove:
    string, fret, finger = place
    if finger == 0:
        return "open"
    r, lo, hi = before[finger - 1]
    if _stays(before[finger - 1], after[finger - 1]):
        return "planted"
    if r and lo <= string <= hi:
        return "planted" if r == fret else "guide"
    if r and layer.parent >= 0 and _upto(lattice, path, layer, finger):
        return "hop"
    if layer.parent >= 0:
        p, q = (int(lattice.states[x].pos[path[x]]) for x in (layer.parent, layer.index))
        if abs(p - q) >= MOVE:
            return "shift"
    return "place"


def _stays(before: tuple[int, int, int], after: tuple[int, int, int]) -> bool:
    """Whether a finger stays on its fret and strings, be it rolled down to a barre."""
    return (
        before[0] > 0 and before[0] == after[0] and after[1] <= before[1] <= before[2] <= after[2]
    )


def _upto(lattice: Lattice, path: tuple[int, ...], layer: LatticeLayer, finger: int) -> bool:
    """Whether the finger's old note sounds right up to this layer."""
    s, a = lattice.states[layer.parent], path[layer.parent]
    r, lo, hi = (int(x[a, finger - 1]) for x in (s.fret, s.lo, s.hi))
    for string in range(lo, hi + 1):
        slot = int(s.ring[a, string - 1])
        top = max(
            (int(s.fret[a, f]) for f in range(4) if s.lo[a, f] <= string <= s.hi[a, f]), default=0
        )
        if slot and top == r and layer.upto[slot - 1]:
            return True
    return False


def _cuts(
    lattice: Lattice,
    path: tuple[int, ...],
    layer: LatticeLayer,
    before: list[tuple[int, int, int]],
    after: list[tuple[int, int, int]],
    asked: tuple[tuple[int, int, int], ...],
    placed: dict[str, tuple[int, int, int]],
    starts: dict[str, Fraction],
    held: dict[str, Fraction],
    cuts: dict[str, tuple[CutKind, Fact | None]],
) -> None:
    """Notes of the parent that end here before their time, and why."""
    above = lattice.frame.layers[layer.parent]
    old, new = lattice.states[layer.parent], lattice.states[layer.index]
    ringing = {int(x) for x in new.ring[path[layer.index]]}
    onsets = {placed[n.id][0]: n for n in layer.notes}
    for slot in (int(x) for x in old.ring[path[layer.parent]]):
        if not slot:
            continue
        note = above.slots[slot - 1]
        string, fret, finger = placed[note.id]
        goes_on = layer.carry[slot - 1]
        sounded = layer.time - starts[note.id]
        if goes_on and goes_on not in ringing and not layer.wished[slot - 1]:
            held[note.id] = sounded
            cuts[note.id] = _why_cut(note, string, fret, finger, onsets, asked, after)
        hopped = (
            finger
            and layer.upto[slot - 1]
            and asked[finger - 1][0]
            and not _stays(before[finger - 1], after[finger - 1])
            and not (
                asked[finger - 1][1] <= string <= asked[finger - 1][2]
                or (
                    asked[finger - 1][0] != fret
                    and before[finger - 1][1] <= asked[finger - 1][1] <= before[finger - 1][2]
                )
            )
            and goes_on not in ringing - {0}
        )
        if hopped:
            held[note.id] = min(held[note.id], sounded - hop_gap(sounded))
            to = asked[finger - 1]
            cuts[note.id] = (
                "hop",
                fact(
                    "hop",
                    finger=finger,
                    string=string,
                    to=to[1],
                    fret=to[0],
                    note=note.pitch.name,
                ),
            )


def _why_cut(
    note: Note,
    string: int,
    fret: int,
    finger: int,
    onsets: dict[int, Note],
    asked: tuple[tuple[int, int, int], ...],
    after: list[tuple[int, int, int]],
) -> tuple[CutKind, Fact | None]:
    name = note.pitch.name
    if string in onsets:
        taker = onsets[string].pitch.name
        return "string", fact("string taken", string=string, taker=taker, note=name)
    if finger == 0:
        return "barre", fact("open damped", string=string, note=name)
    to = asked[finger - 1]
    if to[0]:
        if finger == 1 and to[0] != fret:
            return "shift", fact("first finger moves", fret=to[0], note=name)
        return "hop", fact("finger needed", finger=finger, to=to[1], fret=to[0], note=name)
    far = [a for a in after if a[0]]
    away = max((abs(a[0] - fret) for a in far), default=0)
    if away >= 4:
        return "shift", fact("hand shifts", fret=min(a[0] for a in far), note=name)
    return "stretch", fact("out of stretch", note=name)


def _surroundings(
    out: Told,
    lattice: Lattice,
    layer: LatticeLayer,
    hand: list[tuple[int, int, int]],
    before: list[tuple[int, int, int]],
) -> None:
    down = [(f, h) for f, h in enumerate(hand) if h[0]]
    for i, (f, a) in enumerate(down):
        if a[2] > a[1] and before[f] != a:
            _barre(out, layer, f + 1, a, before[f])
        for _, b in down[i + 1 :]:
            gap = max(0, b[1] - a[2], a[1] - b[2])
            mm = float(lattice.neck.span[a[0], b[0], gap])
            out.reach[layer.bar] = max(out.reach.get(layer.bar, 0.0), mm)
    for f, a in down:
        if a == before[f] and a[1] == a[2]:
            out.planted.setdefault(layer.bar, []).append((layer.onset, f + 1, a[1], a[0]))


def _barre(
    out: Told,
    layer: LatticeLayer,
    finger: int,
    laid: tuple[int, int, int],
    was: tuple[int, int, int],
) -> None:
    """A barre that begins, or one that lies already and comes to cover more strings: it is
    laid once, as wide as it will be."""
    fret, low, high = laid
    here = out.barres.setdefault(layer.bar, [])
    strings = tuple(range(low, high + 1))
    if was[0] == fret and was[2] > was[1]:
        for i in range(len(here) - 1, -1, -1):
            if (here[i].finger, here[i].fret) == (finger, fret):
                wider = tuple(sorted({*here[i].strings, *strings}))
                here[i] = Barre(here[i].onset, fret, wider, finger)
                return
    here.append(Barre(layer.onset, fret, strings, finger))


def _join_cuts(
    out: Told,
    lattice: Lattice,
    path: tuple[int, ...],
    join: Join,
    hands: list[list[tuple[int, int, int]]],
    placed: dict[str, tuple[int, int, int]],
    held: dict[str, Fraction],
    cuts: dict[str, tuple[CutKind, Fact | None]],
    piece: Piece,
) -> None:
    """Notes at the end of a bar whose finger must hop at once when the order jumps."""
    target = lattice.grips[join.to_layer][
        int(lattice.states[join.to_layer].grip[path[join.to_layer]])
    ]
    source = lattice.frame.layers[join.from_layer]
    ring = lattice.states[join.from_layer].ring[path[join.from_layer]]
    for slot in (int(x) for x in ring):
        if not slot or not join.upto[slot - 1]:
            continue
        note = source.slots[slot - 1]
        string, _, finger = placed[note.id]
        to = target.fingers[finger - 1] if finger else (0, 0, 0)
        if not to[0] or to[1] <= string <= to[2]:
            continue
        source_bar, target_bar = piece.bars[join.from_bar], piece.bars[join.to_bar]
        reason = fact(
            "hop at join",
            finger=finger,
            string=string,
            to=to[1],
            fret=to[0],
            from_bar=source_bar.number,
            to_bar=target_bar.number,
            note=note.pitch.name,
        )
        out.joins.append(JoinCut(note.id, join.from_bar, join.to_bar, reason))
        if note.id not in cuts:
            held[note.id] -= hop_gap(held[note.id])
            cuts[note.id] = ("hop", reason)


def audit(told: Told, silent: int) -> Audit:
    """Legato in figures. ``silent``: notes that cannot be played at all count as cut."""
    notes = [n for n in told.notes.values() if n.duration > 0]
    written = sum((n.duration for n in notes), Fraction(0))
    kept = sum((n.held for n in notes), Fraction(0))
    cut = sum(1 for n in notes if n.held < n.duration)
    return Audit(
        len(told.notes) + silent,
        cut + silent,
        float(kept / written) if written else 1.0,
        tuple(told.joins),
    )
