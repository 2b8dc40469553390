"""The shelf: everything the program keeps, behind one object.

    with Shelf() as shelf:
        same = shelf.find_same(piece)
        row = same or shelf.add_piece(piece, "minuet.musicxml")
        shelf.add(lesson, row.id)
        shelf.save(changed, "Note written")
        lesson = shelf.undo(lesson.id)

Every call is one transaction and may come from any thread. Faults that the
user can mend (a full disk, a locked, damaged or newer store) are BadInput and
leave the store as it was.
"""

from __future__ import annotations

from workbench.store.archiving import ArchivingShelf
from workbench.store.studio import StudioShelf


class Shelf(ArchivingShelf, StudioShelf):
    """Pieces, lessons with their undo histories, versions, groups, settings, choices."""

    def __enter__(self) -> Shelf:
        return self


__all__ = ["Shelf"]
