"""Published chord shapes to measure against: chords-db 0.5.1 (MIT, see data/LICENSE).

Rows that contradict themselves are dropped by rules stated here, each row
under the first rule it breaks.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from pathlib import Path

DATA = Path(__file__).parent / "data"
TUNINGS = {"ukulele": (67, 60, 64, 69), "guitar": (40, 45, 50, 55, 59, 64)}  # lowest column first
# Every other key of the chromatic scale; the others are kept for judging.
FIT_KEYS = frozenset(("C", "D", "E", "F#", "Gb", "Ab", "Bb"))


@dataclass(frozen=True)
class Published:
    """A published shape; frets counted from the nut, None not played."""

    key: str
    suffix: str
    frets: tuple[int | None, ...]
    fingers: tuple[int, ...]
    barres: tuple[int, ...]
    midi: tuple[int, ...]

    @property
    def for_fit(self) -> bool:
        return self.key in FIT_KEYS


def _numbers(text: str) -> tuple[int, ...]:
    return tuple(int(w) for w in text.split(",") if w)


def read(instrument: str) -> list[Published]:
    """All rows of the data file, filtered by nothing."""
    rows = []
    for line in (DATA / f"{instrument}.tsv").read_text(encoding="utf-8").splitlines():
        if line.startswith(("#", "key\t")):
            continue
        key, suffix, base, frets, fingers, barres, midi = line.split("\t")
        up = int(base) - 1
        absolute = tuple(None if f < 0 else f + up if f else 0 for f in _numbers(frets))
        laid = tuple(b + up for b in _numbers(barres))
        rows.append(Published(key, suffix, absolute, _numbers(fingers), laid, _numbers(midi)))
    return rows


def contradiction(row: Published, tuning: tuple[int, ...]) -> str | None:
    """The first rule a row breaks, or None."""
    sounding = tuple(o + f for o, f in zip(tuning, row.frets, strict=True) if f is not None)
    if sounding != row.midi:
        return "MIDI numbers are not those of the frets"
    pairs = list(zip(row.frets, row.fingers, strict=True))
    if any(finger and not fret for fret, finger in pairs):
        return "a finger on an open string or one not played"
    if any(fret and not finger for fret, finger in pairs):
        return "no finger on a stopped string"
    where: dict[int, int] = {}
    for fret, finger in pairs:
        if fret and where.setdefault(finger, fret) != fret:
            return "one finger on two frets"
    in_order = [where[finger] for finger in sorted(where)]
    if in_order != sorted(in_order):
        return "a lower finger on a higher fret"
    for finger, fret in where.items():
        columns = [c for c, f in enumerate(row.fingers) if f == finger]
        under = pairs[columns[0] : columns[-1] + 1]
        if any(f is not None and f < fret for f, _ in under):
            return "a barre over a string that is open or stopped lower"
        if any(f == fret and other != finger for f, other in under):
            return "a barre over a string that another finger stops at the same fret"
    return None


def usable(instrument: str) -> tuple[list[Published], Counter[str]]:
    """The rows without contradiction, and how many each rule dropped."""
    kept, dropped = [], Counter[str]()
    for row in read(instrument):
        broken = contradiction(row, TUNINGS[instrument])
        if broken:
            dropped[broken] += 1
        else:
            kept.append(row)
    return kept, dropped
