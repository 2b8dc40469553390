"""The score strip: a piece engraved system by system, only what changed drawn anew."""

from __future__ import annotations

import time
from collections import OrderedDict
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from itertools import cycle

from PySide6.QtCore import QPointF

from workbench.engraving import ids
from workbench.engraving.app import ensure_gui
from workbench.engraving.drawing.flatten import Flat, Tint
from workbench.engraving.drawing.render import STAFF_HEIGHT, Engraver, SystemDrawing
from workbench.engraving.mei.document import OCTAVE_CLEF_BELOW, to_mei
from workbench.engraving.mei.marked import Marked
from workbench.engraving.options import MeiOptions
from workbench.engraving.paint import PaintedSystem, Placed, ScoreImage
from workbench.fingering.types import FingeredBar, Fingering
from workbench.instrument.model import Instrument
from workbench.music.errors import BadInput
from workbench.music.model import Piece

#: While a long piece is drawn, what is there already is shown so often (seconds).
SHOWN_EVERY = 0.25
_HEIGHT = 3300.0  # of a system not drawn yet where none is, engraving units

Progress = Callable[[float], None]


@dataclass(frozen=True)
class _Plan:
    """Where systems break, for one piece on one width."""

    piece: Piece
    instrument: Instrument | None
    line: float
    breaks: tuple[int, ...]

    def fits(self, piece: Piece, instrument: Instrument | None, line: float) -> bool:
        return self.piece is piece and self.instrument == instrument and self.line == line


@dataclass(frozen=True)
class _State:
    """What a system is drawn from: its bars, their fingers, the teacher's marks in them."""

    first: int
    last: int
    bars: tuple[FingeredBar | None, ...]
    marks: tuple[tuple[int, int], ...]
    system: PaintedSystem | None = field(default=None, compare=False)


class Strip:
    """Makes score images of a piece and, after an edit, redraws only the systems
    that changed.

    ``width``: image units for systems one below the other; None sets them side
    by side in one row. ``staff``: staff height in image units.
    ``ink`` draws; ``paper``, where given, is the ground behind numbers on staff lines.
    ``voices``: the inks of the second voice, the third and so on, ``ink`` without.
    """

    def __init__(
        self,
        width: float | None = None,
        *,
        staff: float = 32.0,
        ink: str = "#000000",
        paper: str | None = None,
        options: MeiOptions | None = None,
        gap: float = 14.0,
        voices: Sequence[str] = (),
    ) -> None:
        ensure_gui()
        self.width, self.ink, self.paper, self.gap = width, ink, paper, gap
        self.options = options or MeiOptions()
        self.scale = staff / STAFF_HEIGHT
        self.voices = tuple(voices)
        self._engraver = Engraver()
        self._plan: _Plan | None = None
        self._kept: dict[int, _State] = {}
        self._cache: OrderedDict[tuple[float, Marked], PaintedSystem] = OrderedDict()

    def image(
        self,
        piece: Piece,
        fingering: Fingering | None = None,
        instrument: Instrument | None = None,
        marks: tuple[tuple[int, int], ...] = (),
        *,
        near: int = 0,
        shown: Callable[[ScoreImage], None] | None = None,
        progress: Progress | None = None,
    ) -> ScoreImage:
        """The image for this state of the lesson. Raises BadInput without bars.

        The systems around the bar ``near`` are drawn first. ``shown`` takes the image as
        far as it is, every now and then; ``progress`` the share that is done, and may raise
        to call it off.
        """
        if not piece.bars:
            raise BadInput("'{title}' has no bars; there is nothing to engrave.", title=piece.title)
        line = 14000.0 if self.width is None else self.width / self.scale
        plan = self._plan
        if plan is None or not plan.fits(piece, instrument, line):
            options = replace(self.options, marks=marks)
            breaks = self._engraver.breaks(
                piece, fingering, instrument, options, line, progress=progress
            )
            plan = self._plan = _Plan(piece, instrument, line, breaks)
            self._kept.clear()
        states = self._states(plan, fingering, marks)
        stale = [s for s in states if self._kept.get(s.first) != s]
        stale.sort(key=lambda s: 0 if s.first <= near <= s.last else abs(s.first - near))
        tint = self._tint(piece)
        last_shown = time.monotonic()
        for done, state in enumerate(stale):
            if progress is not None:
                progress(done / len(stale))
            options = replace(self.options, marks=state.marks, first=state.first, last=state.last)
            mei = to_mei(piece, fingering, instrument, options)
            system = self._system(mei, state.first, state.last, line, tint)
            system.prepare(self._known(piece).bar_of)
            self._kept[state.first] = replace(state, system=system)
            if shown is not None and time.monotonic() - last_shown > SHOWN_EVERY:
                shown(self._image(states, piece, instrument))
                last_shown = time.monotonic()
        while len(self._cache) > 4 * len(states) + 40:
            self._cache.popitem(last=False)
        return self._image(states, piece, instrument)

    def _states(
        self, plan: _Plan, fingering: Fingering | None, marks: tuple[tuple[int, int], ...]
    ) -> list[_State]:
        starts = [plan.piece.bars[0].index, *plan.breaks]
        ends = [*(b - 1 for b in plan.breaks), plan.piece.bars[-1].index]
        bars = {b.index: b for b in fingering.bars} if fingering else {}
        return [
            _State(
                first,
                last,
                tuple(bars.get(k) for k in range(first, last + 1)),
                tuple(m for m in marks if first <= m[0] <= last),
            )
            for first, last in zip(starts, ends, strict=True)
        ]

    def _system(
        self, marked: Marked, first: int, last: int, line: float, tint: Tint | None
    ) -> PaintedSystem:
        """Drawn anew, or as it was at an earlier state (undo)."""
        key = (line, marked)
        if key not in self._cache:
            width = None if self.width is None else line
            flat = self._engraver.pages(marked, width, self.ink, self.paper, tint=tint)[0]
            self._cache[key] = PaintedSystem(SystemDrawing(flat, first, last))
        self._cache.move_to_end(key)
        return self._cache[key]

    def _tint(self, piece: Piece) -> Tint | None:
        """The ink of an element by the voice it belongs to."""
        if not self.voices:
            return None
        inks = dict(zip(voices_of(piece)[1:], cycle(self.voices), strict=False))
        if not inks:
            return None
        voice = {note.id: (note.part, note.voice) for note in piece.notes}

        def tint(element_id: str) -> str | None:
            layer = ids.voice_of_layer(element_id)
            if layer is None and ids.beside_note(element_id):
                note = ids.note_of(element_id, piece.bar_of)
                layer = voice[note] if note is not None else None
            return None if layer is None else inks.get(layer)

        return tint

    def _image(
        self, states: Sequence[_State], piece: Piece, instrument: Instrument | None
    ) -> ScoreImage:
        """The systems as far as they are drawn; empty room for the others."""
        drawn = [kept.system for kept in self._kept.values() if kept.system is not None]
        middle = sum(s.flat.height for s in drawn) / len(drawn) if drawn else _HEIGHT
        systems = []
        for state in states:
            kept = self._kept.get(state.first)
            if kept is not None and kept.system is not None:
                systems.append(kept.system)
            else:
                wide = (self.width or 0.0) / self.scale
                blank = Flat(b"", wide, middle, ())
                systems.append(PaintedSystem(SystemDrawing(blank, state.first, state.last)))
        below = instrument is not None and instrument.lowest < OCTAVE_CLEF_BELOW
        return ScoreImage(self._place(systems), self._known(piece), below)

    def _known(self, piece: Piece) -> Piece:
        """The piece whose notes are found in the drawing."""
        return piece

    def _place(self, systems: Sequence[PaintedSystem]) -> list[Placed]:
        out: list[Placed] = []
        at = 0.0
        top = max((s.flat.staff_top for s in systems), default=0.0)
        for system in systems:
            if self.width is None:
                drop = (top - system.flat.staff_top) * self.scale
                out.append(Placed(system, QPointF(at, drop), self.scale))
                at += system.size.width() * self.scale
            else:
                out.append(Placed(system, QPointF(0.0, at), self.scale))
                at += system.size.height() * self.scale + self.gap
        return out


def voices_of(piece: Piece) -> tuple[tuple[int, int], ...]:
    """Part and voice of every voice of a piece, the first one first."""
    return tuple(sorted({(note.part, note.voice) for note in piece.notes}))
