"""What barres and the nut make of a grip: fingers among the strings that sound with them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

NEAR_NUT = 3  # up to here, among open strings, finger n stands on fret n
AMONG = (
    "barre_open", "barre_arched", "barre_inner", "beneath", "over_silent", "nut_out", "nut_below",
    "crowded", "lone",
)  # fmt: skip


def among(fingers: Sequence[tuple[int, int, int]], sounded: Mapping[int, int]) -> tuple[int, ...]:
    """The terms AMONG of a grip: ``fingers`` 1 to 4 as (fret, first string, last string), fret
    0 where one is up; ``sounded`` the fret at which each string sounds, 0 open.

    Barres while an open string sounds; such that must arch over one nearer the floor; barres
    that end before string 1 (finger 1 may rest on strings that are silent); strings under
    barres that another finger stops or that are silent; those of them that are silent; near
    the nut among open strings: frets by which the whole hand leaves finger n on fret n, and by
    which fingers stand lower than it; 1 where two fingers or more crowd on one fret.
    """
    free = [s for s, fret in sounded.items() if fret == 0]
    down = [(f, x) for f, x in enumerate(fingers, 1) if x[0]]
    laid = [(f, x) for f, x in down if x[2] > x[1]]
    inner = sum(f > 1 or min(sounded) < x[1] for f, x in laid if x[1] > 1)
    silent = sum(sounded.get(s) != x[0] for _, x in laid for s in range(x[1], x[2] + 1))
    muted = sum(s not in sounded for _, x in laid for s in range(x[1], x[2] + 1))
    near = bool(free) and bool(down) and all(x[0] <= NEAR_NUT for _, x in down)
    return (
        len(laid) if free else 0,
        sum(min(free) < x[1] for _, x in laid) if free else 0,
        inner,
        silent,
        muted,
        min(abs(x[0] - f) for f, x in down) if near else 0,
        sum(max(0, f - x[0]) for f, x in down) if near else 0,
        int(len({x[0] for _, x in down}) < len(down)),
        int(len(down) == 1 and down[0][0] not in (1, down[0][1][0])),
    )
