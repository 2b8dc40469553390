"""First, second and further endings as groups."""

from __future__ import annotations

from dataclasses import dataclass

from workbench.music.model import Bar


@dataclass(frozen=True)
class EndingRun:
    """Consecutive bars ``first`` to ``last`` under one ending bracket."""

    first: int
    last: int
    passes: tuple[int, ...]


@dataclass(frozen=True)
class EndingGroup:
    """The endings of one repeat, side by side, at written bars ``first`` to ``last``."""

    runs: tuple[EndingRun, ...]

    @property
    def first(self) -> int:
        return self.runs[0].first

    @property
    def last(self) -> int:
        return self.runs[-1].last

    @property
    def total(self) -> int:
        """How often the passage is played in all: a lone first ending means twice."""
        return max(2, *(max(r.passes) for r in self.runs))

    def run_at(self, index: int) -> EndingRun:
        """The bracket over written bar ``index``; KeyError outside the group."""
        for run in self.runs:
            if run.first <= index <= run.last:
                return run
        raise KeyError(index)

    def run_for(self, turn: int) -> EndingRun | None:
        """The bracket played in pass ``turn``; None where the pass goes past all of them.

        A pass no bracket names takes the next bracket: after "1." and "3."
        the second pass takes "3.".
        """
        later = [r for r in self.runs if max(r.passes) >= turn]
        named = [r for r in later if turn in r.passes]
        fitting = named or later
        return fitting[0] if fitting else None


def ending_groups(bars: tuple[Bar, ...]) -> tuple[EndingGroup, ...]:
    """All groups of endings in written order.

    Brackets stand in one group while no bar lies between them and their
    numbers rise.
    """
    groups: list[list[EndingRun]] = []
    before: Bar | None = None
    for bar in bars:
        if bar.endings:
            if before is not None and before.endings == bar.endings and not bar.repeat_start:
                run = groups[-1].pop()
                groups[-1].append(EndingRun(run.first, bar.index, run.passes))
            else:
                run = EndingRun(bar.index, bar.index, bar.endings)
                joins = (
                    before is not None and before.endings and min(bar.endings) > max(before.endings)
                )
                if joins:
                    groups[-1].append(run)
                else:
                    groups.append([run])
        before = bar
    return tuple(EndingGroup(tuple(g)) for g in groups)
