"""One player's right hand on one instrument, at one tempo: asked for a frame and its strings."""

from __future__ import annotations

from dataclasses import dataclass, field

from workbench.fingering.lattice.layers import Frame
from workbench.fingering.right.choices import asked_right, bar_terms, other_rights
from workbench.fingering.right.fingers import Memo, Plucker, solve_right, window_frame
from workbench.fingering.types import Pin
from workbench.language.fact import Fact

Rights = dict[str, str]  # finger by note id
Strings = dict[str, int]  # string by note id


@dataclass
class RightHand:
    """What is asked of one hand, ``who``; it remembers what it has priced."""

    who: Plucker
    memo: Memo = field(default_factory=Memo)

    def solve(self, frame: Frame, strings: Strings, pins: dict[str, Pin]) -> tuple[Rights, int]:
        """The least-cost fingers for all that is plucked, and their cost."""
        return solve_right(self.who, frame, strings, pins, memo=self.memo)

    def solve_bar(
        self, frame: Frame, bar: int, strings: Strings, pins: dict[str, Pin], present: Rights
    ) -> tuple[Rights, int]:
        """The same for one bar; the other bars keep the ``present`` fingers. The cost is that
        from the moment before the bar to those right after."""
        if not frame.of_bar[bar]:
            return {}, 0
        own = {n.id for t in frame.of_bar[bar] for n in frame.layers[t].notes}
        kept = {i: f for i, f in present.items() if i not in own}
        return solve_right(self.who, window_frame(frame, bar), strings, pins, kept, self.memo)

    def terms(self, frame: Frame, bar: int, strings: Strings, picked: Rights) -> dict[str, int]:
        """What given fingers cost by term there, in thousandths."""
        return bar_terms(self.who, frame, bar, strings, picked)

    def others(
        self, frame: Frame, bar: int, strings: Strings, present: Rights, pinned: set[str], most: int
    ) -> list[tuple[Rights, Fact]]:
        """Up to ``most`` other fingers for a bar, the easiest first, each with its reason."""
        return other_rights(self.who, frame, bar, strings, present, pinned, most)

    def asked(
        self, frame: Frame, bar: int, strings: Strings, present: Rights, asked: Rights
    ) -> tuple[Rights, Fact] | None:
        """A bar with fingers asked for, and what they bring; None where no hand can."""
        return asked_right(self.who, frame, bar, strings, present, asked)
