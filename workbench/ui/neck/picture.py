"""What is on the neck at one moment: the grip, the one before it and the one after."""

from __future__ import annotations

from collections.abc import Callable

from workbench.fingering.telling.moments import Moment, moment_of, moments, ways
from workbench.fingering.telling.reaches import reach_at, sounding_barres
from workbench.fingering.types import FingeredBar
from workbench.instrument.model import Hand, Instrument
from workbench.ui.neck.paint import Ghost, Marker, Picture


def picture_of(
    hands: FingeredBar,
    chosen: str | None,
    instrument: Instrument,
    hand: Hand,
    neighbour: Callable[[int], Moment | None],
) -> Picture:
    """The moment at which the ``chosen`` note begins, else the first of the bar.

    ``neighbour`` gives the last moment of the bar before (-1), the first of the one after (1).
    """
    now = moment_of(hands, chosen)
    if now is None:
        return Picture()
    found = moments(hands)
    at = found.index(now)
    before = found[at - 1] if at else neighbour(-1)
    after = found[at + 1] if at + 1 < len(found) else neighbour(1)
    sounding, begins = {n.id for n in now.notes}, {n.id for n in now.begins}
    comes = ways(before, now)
    moved = {way.finger for way in comes}
    was = set(before.pressed.values()) if before else set()
    markers = tuple(
        Marker(
            note,
            now=note.id in sounding,
            begins=note.id in begins,
            chosen=note.id == chosen,
            stays=note.id in sounding
            and bool(note.left)
            and ((note.left in was and note.left not in moved) or note.id not in begins),
        )
        for note in hands.notes
    )
    barres = sounding_barres(now, hands.barres)
    offers: tuple[tuple[int, int], ...] = ()
    mark = next((n for n in hands.notes if n.id == chosen), None)
    if mark is not None:
        offers = tuple(p for p in instrument.places(mark.midi) if p != (mark.string, mark.fret))
    return Picture(
        markers, barres, offers, comes, ways(now, after), _ghosts(before, now, after),
        _silent(now), reach_at(now, barres, instrument, hand),
    )  # fmt: skip


def heard_picture(hands: FingeredBar | None, heard: frozenset[str]) -> Picture:
    """The bar's fingers while it is heard: those of the sounding notes light up, with the
    right hand's beside them."""
    if hands is None:
        return Picture()
    markers = tuple(
        Marker(note, now=note.id in heard, begins=note.id in heard) for note in hands.notes
    )
    barres = tuple(
        b for b in hands.barres
        if any(n.id in heard and n.fret == b.fret and n.string in b.strings for n in hands.notes)
    )  # fmt: skip
    return Picture(markers, barres)


def _ghosts(before: Moment | None, now: Moment, after: Moment | None) -> tuple[Ghost, ...]:
    """Where fingers are pressed just before or just after, and not now."""
    here = now.pressed
    was, will = before.pressed if before else {}, after.pressed if after else {}
    return tuple(
        Ghost(*place, was.get(place, 0), will.get(place, 0))
        for place in sorted((was.keys() | will.keys()) - here.keys())
    )


def _silent(now: Moment) -> tuple[tuple[int, int, int], ...]:
    """(finger, string, fret) of what stays down without sounding."""
    sounding = {(n.string, n.fret) for n in now.notes}
    return tuple(row for row in now.planted if row[1:] not in sounding)
