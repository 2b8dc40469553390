"""The teacher's sections: where each begins and what it is called.

A lesson keeps them as (first written bar, letter), each lasting until the next
begins; where it keeps none, the sections that the score itself shows stand.
"""

from __future__ import annotations

from dataclasses import replace

from workbench.music.errors import BadInput
from workbench.music.order.form import sections
from workbench.teaching.lessons.lesson import Lesson

Starts = tuple[tuple[int, str], ...]
ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


def section_starts(lesson: Lesson) -> Starts:
    """(first written bar, letter) of every section, the teacher's or else the score's."""
    if lesson.sections:
        return tuple(sorted(lesson.sections))
    return tuple((found.first_bar, found.letter) for found in sections(lesson.piece))


def letters_of(starts: Starts, bars: int) -> tuple[str, ...]:
    """The letter of each of so many bars; "" before the first section."""
    out, at = [], dict(starts)
    now = ""
    for index in range(bars):
        now = at.get(index, now)
        out.append(now)
    return tuple(out)


def next_letter(lesson: Lesson) -> str:
    """The first letter of the alphabet that no section has yet; AA and on after Z."""
    used = {letter for _, letter in section_starts(lesson)}
    names = (c * times for times in range(1, len(used) + 2) for c in ALPHABET)
    return next(name for name in names if name not in used)


def make_section(lesson: Lesson, first: int, last: int, letter: str) -> Lesson:
    """Written bars ``first`` to ``last`` become one section; what follows them keeps the
    letter it had.

    Raises BadInput where the bars are not in the piece or the letter is missing.
    """
    bars = len(lesson.piece.bars)
    if not 0 <= first <= last < bars:
        raise BadInput("A section needs a first and a last bar of the piece, in this order.")
    if not letter.strip():
        raise BadInput("A section needs a letter or a name.")
    before = section_starts(lesson)
    starts = {bar: name for bar, name in before if not first <= bar <= last}
    starts[first] = letter.strip()
    if last + 1 < bars:
        rest = letters_of(before, bars)[last + 1]
        starts.setdefault(last + 1, rest or next_letter(replace(lesson, sections=_kept(starts))))
    return replace(lesson, sections=_kept(starts))


def move_start(lesson: Lesson, start: int, to: int) -> Lesson:
    """The section that begins at written bar ``start`` begins at ``to`` instead.

    It swallows no neighbour: at least one bar stays of the section before, and one of
    its own. Raises BadInput where no section begins at ``start``, or it begins the piece.
    """
    starts = list(section_starts(lesson))
    at = next((i for i, (bar, _) in enumerate(starts) if bar == start), None)
    if at is None:
        raise BadInput("No section begins at this bar; choose a bar where one does.")
    if start == 0:
        raise BadInput("The first section begins with the piece; move where the next begins.")
    least = starts[at - 1][0] + 1 if at else 0
    most = (starts[at + 1][0] if at + 1 < len(starts) else len(lesson.piece.bars)) - 1
    starts[at] = (max(least, min(to, most)), starts[at][1])
    return replace(lesson, sections=tuple(starts))


def name_section(lesson: Lesson, start: int, letter: str) -> Lesson:
    """A section begins at a written bar under this letter; without one the bars from
    there join the section before.

    Raises BadInput where the section that begins the piece would lose its letter.
    """
    starts = dict(section_starts(lesson))
    starts.pop(start, None)
    if letter.strip():
        starts[start] = letter.strip()
    elif start == 0:
        raise BadInput("The first section has none before it to join; give it a letter.")
    return replace(lesson, sections=_kept(starts))


def _kept(starts: dict[int, str]) -> Starts:
    return tuple(sorted(starts.items()))
