"""What a handout is made for."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from PySide6.QtGui import QPageSize

from workbench.music.errors import BadInput

MM = 72 / 25.4  # points to a millimetre
#: Staff height of solo parts in common engraving practice is 7 to 8 mm (from memory).
STAFF_MM = 7.0
#: Taken where it saves a page.
COMPACT_MM = 6.5
LARGE = 1.4


@dataclass(frozen=True)
class HandoutOptions:
    """``large``: everything at 140 %. ``left_handed``: mirrored diagrams, and the
    hands named for a left-handed player. ``studio`` and ``contact`` stand at
    the foot of every page. ``plan`` adds the practice plan as a table to tick."""

    paper: Literal["a4", "letter"] = "a4"
    audience: Literal["student", "teacher"] = "student"
    large: bool = False
    left_handed: bool = False
    studio: str = ""
    contact: str = ""
    plan: bool = False

    def __post_init__(self) -> None:
        if self.paper not in ("a4", "letter"):
            raise BadInput(f"Paper '{self.paper}' is not known; choose a4 or letter.")
        if self.audience not in ("student", "teacher"):
            raise BadInput(f"Audience '{self.audience}' is not known; choose student or teacher.")


@dataclass(frozen=True)
class Sheet:
    """Measures of the paper in points. The left margin leaves room for punched holes."""

    width: float
    height: float
    scale: float = 1.0
    left: float = 19 * MM
    right: float = 13 * MM
    top: float = 13 * MM
    bottom: float = 17 * MM

    @property
    def line(self) -> float:
        """Width between the margins."""
        return self.width - self.left - self.right

    @property
    def room(self) -> float:
        """Height between the margins."""
        return self.height - self.top - self.bottom


def page_size(options: HandoutOptions) -> QPageSize:
    """ISO 216 A4, or US Letter."""
    letter = options.paper == "letter"
    return QPageSize(QPageSize.PageSizeId.Letter if letter else QPageSize.PageSizeId.A4)


def sheet(options: HandoutOptions) -> Sheet:
    """The paper of these options."""
    size = page_size(options).size(QPageSize.Unit.Point)
    return Sheet(size.width(), size.height(), LARGE if options.large else 1.0)
