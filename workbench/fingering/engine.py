"""The fingering engine's face: a piece in, both hands' fingers out, exact and explained."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace

import numpy as np

from workbench.fingering.both import BothHands, Plucked, Right
from workbench.fingering.hand.grips import neck
from workbench.fingering.hand.holding import IntArray
from workbench.fingering.lattice.campanella import ringing_frame, suited
from workbench.fingering.lattice.consistency import settle
from workbench.fingering.lattice.growth import Lattice, build_lattice
from workbench.fingering.lattice.layers import Frame
from workbench.fingering.lattice.paths import Path, Sweeper
from workbench.fingering.lattice.playable import split_playable
from workbench.fingering.lattice.terms import LEFT_TERMS
from workbench.fingering.pins.shared import apart, lasting, shortened, together
from workbench.fingering.right.fingers import Plucker, faults
from workbench.fingering.right.hand import RightHand
from workbench.fingering.right.plucking import plucked_frame, rests
from workbench.fingering.telling.audit import Told, audit, tell
from workbench.fingering.telling.refused import Refused
from workbench.fingering.types import (
    Alternative,
    FingeredBar,
    FingeredNote,
    Fingering,
    Pin,
    Settings,
)
from workbench.fingering.weights import weights_for
from workbench.instrument.model import Hand, Instrument
from workbench.language.fact import Fact, fact
from workbench.music.model import Piece
from workbench.music.ringing.slurs import slurred
from workbench.music.ringing.sounds import sounds

Progress = Callable[[int, int], None]


def solve(
    piece: Piece,
    instrument: Instrument,
    hand: Hand,
    *,
    settings: Settings | None = None,
    pins: Iterable[Pin] = (),
    progress: Progress | None = None,
) -> Fingering:
    """Finger a piece: the least declared cost under the teacher's pins.

    ``progress(done, all)`` is called now and then; an exception it raises ends
    the work. Notes that cannot be played are named, never in the way.
    """
    made = Solver(piece, instrument, hand, settings=settings, pins=pins, progress=progress)
    return made.solution()


class Solver:
    """A piece's lattice, kept for quick second thoughts.

    ``solution()`` under the pins given; ``with_pins`` solves again under others, by the
    kept tables where the lattice holds them; ``alternatives`` lists others of one bar.
    """

    def __init__(
        self,
        piece: Piece,
        instrument: Instrument,
        hand: Hand,
        *,
        settings: Settings | None = None,
        pins: Iterable[Pin] = (),
        progress: Progress | None = None,
    ) -> None:
        self.piece, self.instrument, self.hand = piece, instrument, hand
        self.settings = suited(settings or Settings(), instrument)
        self.pins = tuple(pins)
        self.progress = progress
        self.neck = neck(instrument, hand)
        self.weights = weights_for(self.settings, instrument.scale_mm)
        self.right = RightHand(
            Plucker(instrument.strings, piece.tempo, self.weights.right, self.settings.style)
        )
        self._hear()
        self._grow({})
        self._solution: Fingering | None = None
        self._path: Path | None = None

    def _hear(self) -> None:
        """Make one note of every sound; pins that ask for two strings keep notes apart."""
        self._apart = apart(self.piece, self.pins)
        heard = self.sounds = sounds(self.piece, self._apart)
        self.played = heard.piece
        self.slurred = {heard.of(n): heard.of(b) for n, b in slurred(self.piece).items()}

    def asked(self, pins: Iterable[Pin]) -> dict[str, Pin]:
        """Pins by the note that stands for the sound; two on one sound are read together."""
        out: dict[str, Pin] = {}
        for p in pins:
            lead = self.sounds.of(p.note)
            out[lead] = together(out[lead], p) if lead in out else replace(p, note=lead)
        return out

    def _grow(self, pins: dict[str, Pin]) -> None:
        """Build the lattice; pins given here are built in, all others are masks on it."""
        self.built_in = pins
        on, table = self.instrument, self.neck
        self.playable, self.impossible = split_playable(self.played, on, table, pins)
        self.frame = ringing_frame(self.played, self.playable, self.slurred, self.settings, on)
        self.lattice: Lattice = build_lattice(
            self.frame, self.instrument, self.neck, self.weights, pins, self.progress
        )
        self.sweeper = Sweeper(self.lattice)
        slurring = {self.piece.bar_of[n] for pair in self.slurred.items() for n in pair}
        self.both = BothHands(self.sweeper, self.played, slurring)

    # -- solving ---------------------------------------------------------------

    def solution(self) -> Fingering:
        """The fingering under the present pins."""
        if self._solution is None:
            self._solution = self._solve()
        return self._solution

    def with_pins(self, pins: Iterable[Pin]) -> Fingering:
        """Solve again under these pins instead of the present ones."""
        self.pins = tuple(pins)
        self._solution = None
        return self.solution()

    def _solve(self) -> Fingering:
        if apart(self.piece, self.pins) != self._apart:
            self._hear()
            self._grow({})
        asked = self.asked(self.pins)
        masks = self.masks(asked)
        if masks is None:
            self._grow({n: p for n, p in asked.items() if n in self.piece.bar_of})
            masks = {}
        elif self.built_in and any(asked.get(n) != p for n, p in self.built_in.items()):
            self._grow({})
            return self._solve()
        path, remarks, free = settle(self.sweeper, self.played, masks)
        wanted = {n: p.right for n, p in asked.items() if p.right}
        right = Right(self._right_of, self._right_in, wanted)
        path, plucked = self.both.together(path, masks, right)
        self._path, self._masks_now = path, masks
        return replace(self.describe(path, remarks, plucked), bound=free)

    def masks(self, pins: dict[str, Pin]) -> dict[int, IntArray] | None:
        """Allowed states by layer under pins; None where the lattice has no state for them."""
        out: dict[int, IntArray] = {}
        for layer in self.frame.layers:
            here = [(j, pins[n.id]) for j, n in enumerate(layer.notes) if n.id in pins]
            if not here:
                continue
            grips = self.lattice.grips[layer.index]
            good = np.array(
                [
                    all(
                        p.string in (None, g.places[j][0])
                        and p.fret in (None, g.places[j][1])
                        and p.left in (None, g.places[j][2])
                        for j, p in here
                    )
                    for g in grips
                ]
            )
            allowed = good[self.lattice.states[layer.index].grip]
            if not allowed.any():
                return None
            if not allowed.all():
                out[layer.index] = allowed
        lost = [n for n in pins if n in self.impossible and n in self.piece.bar_of]
        return None if lost and not self.built_in else out

    # -- telling ---------------------------------------------------------------

    def describe(
        self,
        path: Path,
        remarks: dict[int, list[Fact]] | None = None,
        plucked: Plucked | None = None,
    ) -> Fingering:
        """A path as a Fingering, right hand (``plucked`` where it is known) and audit included."""
        pins = self.asked(self.pins)
        told = tell(self.lattice, path.states, self.played, pins)
        strings, frame = self._plucked(told)
        if plucked:
            right, right_cost = plucked.picked, plucked.cost
        else:
            right, right_cost = self.right.solve(frame, strings, pins)
        said = {b: list(r) for b, r in (remarks or {}).items()}
        for layer, fault in faults(frame, strings, right):
            said.setdefault(layer.bar, []).append(fault)
        effort, terms = self._effort(path)
        terms["right"] = right_cost
        bars = tuple(
            self._bar(index, told, right, effort, said) for index in range(len(self.piece.bars))
        )
        return Fingering(
            path.cost,
            path.optimal,
            bars,
            audit(told, len(self.impossible)),
            path.bound,
            terms,
        )

    def describe_bar(self, path: Path, bar: int) -> Fingering:
        """As ``describe``, with this bar alone; the other bars keep their right hand. The right
        hand's terms are those of the bar."""
        pins = self.asked(self.pins)
        told = tell(self.lattice, path.states, self.played, pins)
        strings, frame = self._plucked(told)
        present = {n.id: n.right for b in self.solution().bars for n in b.notes if n.right}
        right, _ = self.right.solve_bar(frame, bar, strings, pins, present)
        effort, terms = self._effort(path)
        terms |= self.right.terms(frame, bar, strings, {**present, **right})
        one = self._bar(bar, told, right, effort, {})
        return Fingering(
            path.cost, path.optimal, (one,), audit(told, len(self.impossible)), path.bound, terms
        )

    def described(self, bar: int) -> Fingering:
        """The present fingering, the right hand's terms being those of this bar."""
        now = self.solution()
        played = {n.id: n for b in now.bars for n in b.notes if n.string and n.right}
        strings = {i: n.string for i, n in played.items() if n.string}
        picked = {i: n.right for i, n in played.items() if n.right}
        frame = self._plucked_now(played.values())
        return replace(now, terms=now.terms | self.right.terms(frame, bar, strings, picked))

    def _plucked(self, told: Told) -> tuple[dict[str, int], Frame]:
        """Strings by note id, and the frame of what the right hand plucks: a slur that runs
        along one string sounds its notes, one that has to cross strings does not."""
        strings = {i: n.string for i, n in told.notes.items() if n.string is not None}
        return strings, self._frame_on(strings)

    def _frame_on(self, strings: dict[str, int]) -> Frame:
        plucked = {i for i, p in self.asked(self.pins).items() if p.right}
        along = {n for n, b in self.slurred.items() if strings.get(n, 0) == strings.get(b)}
        self.by_slur = frozenset(along - plucked)
        return plucked_frame(self.frame, self.by_slur, self.sounds.low)

    def _right_of(self, strings: dict[str, int]) -> Plucked:
        frame = self._frame_on(strings)
        return Plucked(frame, strings, *self.right.solve(frame, strings, self.asked(self.pins)))

    def _right_in(self, now: Plucked, strings: dict[str, int], bar: int) -> int:
        pins = self.asked(self.pins)
        return self.right.solve_bar(now.frame, bar, strings, pins, now.picked)[1]

    def _effort(self, path: Path) -> tuple[dict[int, int], dict[str, int]]:
        effort: dict[int, int] = {}
        terms = dict.fromkeys(LEFT_TERMS, 0)
        for layer, found in zip(
            self.frame.layers, self.lattice.path_terms(path.states), strict=True
        ):
            for term, value in found.items():
                cost = value * self.weights.left[term]
                terms[term] = terms.get(term, 0) + cost
                effort[layer.bar] = effort.get(layer.bar, 0) + cost
        return effort, terms

    def _bar(
        self,
        index: int,
        told: Told,
        right: dict[str, str],
        effort: dict[int, int],
        said: dict[int, list[Fact]],
    ) -> FingeredBar:
        bar = self.piece.bars[index]
        notes: list[FingeredNote] = []
        for n in bar.notes:
            lead = self.sounds.of(n.id)
            if lead in told.notes:
                note = replace(
                    lasting(lead, told.notes, self.sounds.goes_on),
                    right=right.get(lead),
                    slurred=lead in self.by_slur,
                )
                if lead != n.id:
                    note = replace(note, id=n.id, shares=lead, pitch=n.pitch.name)
                note = shortened(note, n.duration)
                if self.settings.rest_strokes and rests(note, bar, self.sounds):
                    note = replace(note, stroke="rest")
                notes.append(note)
            else:
                notes.append(
                    FingeredNote(
                        n.id,
                        index,
                        n.onset,
                        n.duration,
                        n.midi,
                        string=None,
                        fret=None,
                        left=None,
                        right=None,
                        held=n.duration * 0,
                        impossible=self.impossible.get(lead, fact("not played")),
                        pitch=n.pitch.name,
                        shares=lead if lead != n.id else None,
                    )
                )
        reasons = tuple(self.impossible[n.id] for n in bar.notes if n.id in self.impossible)
        return FingeredBar(
            index,
            bar.number,
            tuple(notes),
            tuple(told.barres.get(index, ())),
            effort.get(index, 0),
            told.reach.get(index, 0.0),
            tuple(told.planted.get(index, ())),
            tuple(said.get(index, ())),
            fact("several", why=reasons) if reasons else None,
        )

    # -- second thoughts ---------------------------------------------------------

    def alternatives(self, bar: int, count: int = 3) -> tuple[Alternative, ...]:
        """Other fingerings of a written bar, cheapest first, the rest of the piece as it is."""
        from workbench.fingering.alternatives import find_alternatives

        return find_alternatives(self, self.path(), self._masks_now, bar, count)

    def right_alternatives(self, bar: int, count: int = 2) -> tuple[Alternative, ...]:
        """Other right hands for a written bar, easiest first; its left hand stays as it is."""
        present = self.solution()
        played = {n.id: n for b in present.bars for n in b.notes if n.string and n.right}
        found = self.right.others(
            self._plucked_now(played.values()),
            bar,
            {i: n.string for i, n in played.items() if n.string},
            {i: n.right for i, n in played.items() if n.right},
            {p.note for p in self.pins if p.right},
            count,
        )
        out = []
        for rights, reason in found:
            notes = tuple(
                replace(n, right=rights.get(n.id, n.right)) for n in present.bars[bar].notes
            )
            one = replace(present.bars[bar], notes=notes)
            out.append(Alternative(present.cost, reason, notes, one))
        return tuple(out)

    def _plucked_now(self, played: Iterable[FingeredNote]) -> Frame:
        """The frame of the notes that the right hand plucks among those told."""
        here = {n.id for n in played}
        rest = [n.id for layer in self.frame.layers for n in layer.notes if n.id not in here]
        return plucked_frame(self.frame, rest, self.sounds.low)

    def path(self) -> Path:
        """The solved path through the lattice."""
        self.solution()
        assert self._path is not None
        return self._path

    def with_rights(self, told: Alternative, bar: int, asked: dict[str, str]) -> Alternative:
        """A fingering of a bar with right fingers asked for by note id, the others' chosen
        anew beside them, and its reason told with them.

        Raises BadInput where the right hand cannot do it.
        """
        from workbench.fingering.telling.reasons import moved

        rest = [n for b in self.solution().bars if b.index != bar for n in b.notes]
        played = [n for n in (*told.notes, *rest) if n.string and n.right]
        found = self.right.asked(
            self._plucked_now(played),
            bar,
            {n.id: n.string for n in played if n.string},
            {n.id: n.right for n in played if n.right},
            asked,
        )
        if found is None:
            raise Refused(fact("right finger twice", bar=self.piece.bars[bar].number))
        rights, reason = found
        notes = tuple(replace(n, right=rights.get(n.id, n.right)) for n in told.notes)
        assert told.bar is not None
        if moved(self.solution().bars[bar], told.bar):
            reason = fact("in a row", why=(told.reason, reason))
        return Alternative(told.cost, reason, notes, replace(told.bar, notes=notes))

    def why_not(self, bar: int, pins: Iterable[Pin]) -> Alternative:
        """What a fingering that the teacher asks for in a bar would bring: the bar
        under those pins, the rest of the piece as it is, and the difference in words.

        Raises BadInput, with the reason, where no hand can hold the pins there.
        """
        from workbench.fingering.alternatives import judge

        asked = tuple(pins)
        if self.built_in:  # pins that no hand holds are part of this lattice; leave them out
            here = {n.id for n in self.piece.bars[bar].notes}
            rest = [p for p in self.pins if p.note not in here]
            other = Solver(self.piece, self.instrument, self.hand, settings=self.settings,
                           pins=rest, progress=self.progress)  # fmt: skip
            return judge(other, other.path(), bar, asked)
        return judge(self, self.path(), bar, asked)
