"""The order in which written bars are played.

Rules (common practice, no source): a repeat without a start goes back to the
end of the repeat before it or to the beginning; a first ending implies its
repeat; a D.C. or D.S. inside a repeated passage waits for the last pass;
repeats already taken are not taken again after it, and the last ending is
played; repeats met for the first time after it (a Coda) are taken.
"""

from __future__ import annotations

from dataclasses import dataclass

from workbench.music.errors import BadInput
from workbench.music.model import Bar, Piece
from workbench.music.order.endings import EndingGroup, ending_groups

MOST_BARS = 50_000  # more than any score asks; stops a damaged one


@dataclass(frozen=True)
class Stretch:
    """Written bars ``first`` to ``last`` played in a row; ``why`` says how one
    came to its first bar: "" (the beginning), "repeat", "ending", "D.C.",
    "D.S." or "Coda"."""

    first: int
    last: int
    why: str


def playing_order(piece: Piece) -> tuple[int, ...]:
    """Indices of the written bars in the order in which they are played.

    Raises BadInput where the repeats ask for more than 50,000 bars.
    """
    return tuple(i for s in stretches(piece) for i in range(s.first, s.last + 1))


def stretches(piece: Piece) -> tuple[Stretch, ...]:
    """The playing order as runs of consecutive bars, with the reason of every leap."""
    return _Walk(piece.bars).run()


class _Walk:
    """One walk through the bars, as a player would take them."""

    def __init__(self, bars: tuple[Bar, ...]) -> None:
        self.bars = bars
        self.group_at: dict[int, EndingGroup] = {
            i: g for g in ending_groups(bars) for i in range(g.first, g.last + 1)
        }
        self.at = 0
        self.start = 0  # where the next repeat goes back to
        self.turn = 1  # which pass through the current repeat
        self.done: set[int] = set()  # repeat ends and ending groups (last bar) used up
        self.jumped: set[int] = set()
        self.kind = ""  # the jump in force
        self.played: list[tuple[int, str]] = []

    def run(self) -> tuple[Stretch, ...]:
        why = ""
        while self.at < len(self.bars):
            bar = self.bars[self.at]
            if self._skipped():
                why = why or "ending"
                continue
            if bar.repeat_start and self.at != self.start:
                self._start_here()
            self.played.append((self.at, why))
            if len(self.played) > MOST_BARS:
                raise BadInput(
                    "Bar {bar}: the repeats ask for more than {most} bars; lower the number "
                    "of times the passage is repeated.",
                    bar=bar.number,
                    most=MOST_BARS,
                )
            if self._stops(bar):
                break
            why = self._leap(bar)
        return self._stretches()

    def _stretches(self) -> tuple[Stretch, ...]:
        out: list[Stretch] = []
        for index, why in self.played:
            if out and not why and index == out[-1].last + 1:
                out[-1] = Stretch(out[-1].first, index, out[-1].why)
            else:
                out.append(Stretch(index, index, why))
        return tuple(out)

    def _skipped(self) -> bool:
        """Step over an ending that is not this pass's."""
        group = self.group_at.get(self.at)
        if group is None:
            return False
        turn = group.total if group.last in self.done else self.turn
        run = group.run_at(self.at)
        if run is group.run_for(turn):
            return False
        self.at = run.last + 1
        if self.at > group.last:
            self._close(group.last)
        return True

    def _start_here(self) -> None:
        """A repeat starts; in a last ending the one before is then used up."""
        group = self.group_at.get(self.at)
        if group is not None and group.run_at(self.at) is group.runs[-1] and self.turn > 1:
            self.done.add(group.last)
        self.start, self.turn = self.at, 1

    def _close(self, end: int) -> None:
        """A repeat is used up; the next one starts after it, or inside its last ending."""
        self.done.add(end)
        group = self.group_at.get(end)
        if group is None or self.start < group.runs[-1].first:
            self.start, self.turn = end + 1, 1

    def _stops(self, bar: Bar) -> bool:
        return bar.fine and bool(self.kind) and not self.kind.endswith("al Coda")

    def _leap(self, bar: Bar) -> str:
        """Move on from the bar just played; the reason where it is no plain step."""
        if self.kind and not self.kind.endswith("al Fine") and bar.to_coda:
            coda = self._coda_after(bar.index)
            if coda is not None:
                return self._go(coda, "Coda")
        if self._repeats(bar):
            self.turn += 1
            self.at = self.start
            return "repeat"
        if bar.jump and bar.index not in self.jumped and not self._waits(bar):
            self.jumped.add(bar.index)
            self.kind = bar.jump
            if bar.jump.startswith("D.S."):
                return self._go(self._segno_before(bar.index), "D.S.")
            return self._go(0, "D.C.")
        if bar.jump and bar.index in self.jumped and self.kind.endswith("al Coda"):
            # no To Coda sign was met: leave where the jump was
            coda = self._coda_after(bar.index)
            if coda is not None:
                return self._go(coda, "Coda")
        self.at = bar.index + 1
        return ""

    def _go(self, target: int, why: str) -> str:
        if why == "Coda":
            self.kind = "Coda al Fine"
        self.at = self.start = target
        self.turn = 1
        return why

    def _repeats(self, bar: Bar) -> bool:
        """Whether the repeat that ends with this bar is taken now."""
        group = self.group_at.get(bar.index)
        if group is not None:
            run = group.run_at(bar.index)
            implied = bar.index == run.last and run is not group.runs[-1]
            asked = bar.repeat_end or implied
            if asked and group.last not in self.done and self.turn < group.total:
                return True
            if bar.index == group.last:
                self._close(group.last)
            return False
        if not bar.repeat_end:
            return False
        if bar.index not in self.done and self.turn < bar.times:
            return True
        self._close(bar.index)
        return False

    def _waits(self, bar: Bar) -> bool:
        """Whether a jump here is left for a later pass through the same repeat."""
        if bar.index in self.group_at:
            return False
        for later in self.bars[bar.index + 1 :]:
            if later.repeat_start or later.coda or later.segno:
                return False
            group = self.group_at.get(later.index)
            if group is not None:
                return group.last not in self.done and self.turn < group.total
            if later.repeat_end:
                return later.index not in self.done and self.turn < later.times
        return False

    def _segno_before(self, index: int) -> int:
        marks = [b.index for b in self.bars if b.segno]
        before = [i for i in marks if i <= index]
        return before[-1] if before else (marks[0] if marks else 0)

    def _coda_after(self, index: int) -> int | None:
        marks = [b.index for b in self.bars if b.coda]
        after = [i for i in marks if i > index]
        return after[0] if after else (marks[-1] if marks else None)
