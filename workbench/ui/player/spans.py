"""The spans that can be played: from the note, the bar, what is selected, a section, all."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING

from workbench.language.speech import mark
from workbench.teaching.lessons.bar_rows import section_letters

if TYPE_CHECKING:
    from workbench.ui.bench.session import Session

SPANS = (
    mark("from the note"),
    mark("this bar"),
    mark("the selected bars"),
    mark("this section"),
    mark("the whole piece"),
)
FROM_NOTE, BAR, SELECTED, SECTION, WHOLE = SPANS


@dataclass(frozen=True)
class Span:
    """Positions ``first`` to ``last`` of the playing order, from ``onset`` of the first on."""

    first: int
    last: int
    onset: Fraction = Fraction(0)


def span_of(session: Session, which: str, rows: tuple[int, ...] = ()) -> Span:
    """The span of that name. ``rows`` are the written bars selected in the bar list."""
    at, last = session.selection.position, len(session.selection.order) - 1
    if which == WHOLE:
        return Span(0, last)
    if which == FROM_NOTE:
        return Span(at, last, _onset(session))
    if which == SELECTED:
        return _reaching(
            session, set(rows) | set(session.selection.note_bars) | {session.selection.bar_index}
        )
    if which == SECTION:
        return _section(session)
    return Span(at, at)


def _onset(session: Session) -> Fraction:
    bar, note = session.selection.bar, session.selection.note_id
    found = next((n for n in bar.notes if n.id == note), None) if bar else None
    return found.onset if found else Fraction(0)


def _reaching(session: Session, bars: set[int]) -> Span:
    """The stretch of the playing order around here that holds these written bars."""
    first = last = session.selection.position
    low, high = min(bars), max(bars)
    order = session.selection.order
    while first > 0 and low <= order[first - 1] <= high and order[first - 1] == order[first] - 1:
        first -= 1
    while last < len(order) - 1 and order[last + 1] == order[last] + 1 <= high:
        last += 1
    return Span(first, last)


def _section(session: Session) -> Span:
    """The stretch of the playing order around here with one section's letter."""
    if session.lesson is None:
        return Span(0, 0)
    letters, order = section_letters(session.lesson), session.selection.order
    first = last = session.selection.position

    def letter(position: int) -> str:
        return letters[order[position]]

    while first > 0 and letter(first - 1) == letter(first) and order[first - 1] == order[first] - 1:
        first -= 1
    while (
        last < len(order) - 1
        and letter(last + 1) == letter(last)
        and order[last + 1] == order[last] + 1
    ):
        last += 1
    return Span(first, last)
