"""How far the right hand agrees with printed fingers and with taught figures.

    python -m tests.fingering.right_agreement

Printed fingers: Carcassi's method (right_printed.py, with its source). Figures: the 120
arpeggios of Giuliani's opus 1 (giuliani.py, from memory). Beside each stands the plainest
rule that a beginner is given: the thumb has the three lowest strings, i m a have 3, 2 and 1.
"""

from __future__ import annotations

from dataclasses import dataclass

from tests.fingering.giuliani import ALSO, FIGURES, study
from tests.fingering.right_printed import PRELUDES, printed
from workbench.fingering.engine import solve
from workbench.fingering.lattice.layers import build_frame
from workbench.fingering.right.fingers import Plucker, solve_right
from workbench.fingering.types import Settings
from workbench.fingering.weights import weights_for
from workbench.instrument.table import hand, instrument

GUITAR = instrument("guitar")


@dataclass(frozen=True)
class Row:
    """A passage: the fingers told (more than one row where either does), ours, and those of
    the plainest rule."""

    name: str
    told: tuple[tuple[str, ...], ...]
    ours: tuple[str, ...]
    plain: tuple[str, ...]

    def met(self, by: tuple[str, ...]) -> int:
        """How many of the fingers told are met, by the row that is met best."""
        return max(sum(a == b for a, b in zip(t, by, strict=True)) for t in self.told)


def plainest(string: int) -> str:
    """The finger that a string has by the plainest rule on a guitar."""
    return {1: "a", 2: "m", 3: "i"}.get(string, "p")


def editions() -> list[Row]:
    """Printed right fingers against ours, the left hand being ours too."""
    out = []
    for number in PRELUDES:
        what = printed(number)
        found = solve(what.piece, GUITAR, hand("medium"))
        notes = [found.note(note) for note in what.fingers]
        out.append(
            Row(
                f"Carcassi, prelude {number}",
                (tuple(what.fingers.values()),),
                tuple(n.right or "-" for n in notes),
                tuple(plainest(n.string or 0) for n in notes),
            )
        )
    return out


def figures() -> list[Row]:
    """Taught figures against ours, on the strings of the chord."""
    out = []
    weights = weights_for(Settings()).right
    for name, text in FIGURES:
        piece, pins, taught = study(text)
        strings = {pin.note: pin.string for pin in pins if pin.string}
        frame = build_frame(piece)
        who = Plucker(GUITAR.strings, piece.tempo, weights, "i-m")
        right, _ = solve_right(who, frame, strings, {})
        told = [tuple(taught.values())]
        if name in ALSO:
            told.append(tuple(ALSO[name] * (len(taught) // len(ALSO[name]))))
        ours = tuple(right[n] for n in taught)
        out.append(Row(name, tuple(told), ours, tuple(plainest(strings[n]) for n in taught)))
    return out


def summed(rows: list[Row]) -> tuple[int, int, int]:
    """Fingers told, met by ours, met by the plainest rule."""
    return (
        sum(len(r.ours) for r in rows),
        sum(r.met(r.ours) for r in rows),
        sum(r.met(r.plain) for r in rows),
    )


def main() -> None:
    for title, rows in (("Printed fingers", editions()), ("Taught figures", figures())):
        told, ours, plain = summed(rows)
        print(f"{title}: {told}; met by ours {ours} ({ours / told:.1%}),"
              f" by the plainest rule {plain} ({plain / told:.1%})")  # fmt: skip
        for row in rows:
            if row.met(row.ours) < len(row.ours):
                print(f"  {row.name}: {row.met(row.ours)} of {len(row.ours)}")
                print(f"    told  {' '.join(row.told[0])}\n    ours  {' '.join(row.ours)}")


if __name__ == "__main__":
    main()
