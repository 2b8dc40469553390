"""What a handout is made for."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from PySide6.QtGui import QPageSize

from workbench.handout.offered import AUDIENCES, PAPERS
from workbench.music.errors import BadInput

MM = 72 / 25.4  # points to a millimetre
#: Height of the five-line staff. Engravers' rastral sizes run from about 9.2 mm (0, for
#: the stand of an orchestra) over 7.9 (1), 7.4 (2) and 7.0 (3, solo parts and sheet music
#: to be read from a stand) to 6.5 (4) and 3.7 (8, miniature scores); from memory, after
#: the tables in handbooks of music engraving. 7.0 reads at arm's length.
STAFF_MM = 7.0
#: Rastral size 4, the least that is usual for sheet music; taken where it saves a page
#: or a page turn.
COMPACT_MM = 6.5
#: Large print: the staff is then 9.8 mm high, more than rastral size 0.
LARGE = 1.4


Paper = Literal["a4", "letter"]
Audience = Literal["student", "teacher"]


@dataclass(frozen=True)
class HandoutOptions:
    """``large``: everything at 140 %. ``left_handed``: mirrored diagrams, and the
    hands named for a left-handed player. ``studio`` and ``contact`` stand at
    the foot of every page. ``plan`` adds the practice plan as a table to tick,
    ``grips`` the boxes, ``care`` the health cautions, ``lines`` those for own words;
    ``script`` and ``charts`` belong to the teacher's sheet alone. ``strings``:
    string numbers in circles also where the score prints none. ``tracks`` names the
    folder beside the page that holds practice tracks, "" where there is none."""

    paper: Paper = "a4"
    audience: Audience = "student"
    large: bool = False
    left_handed: bool = False
    studio: str = ""
    contact: str = ""
    plan: bool = True
    grips: bool = True
    care: bool = True
    lines: bool = True
    script: bool = True
    charts: bool = True
    strings: bool = False
    tracks: str = ""

    def __post_init__(self) -> None:
        if self.paper not in PAPERS:
            raise BadInput("Paper '{paper}' is not known; choose a4 or letter.", paper=self.paper)
        if self.audience not in AUDIENCES:
            raise BadInput(
                "Audience '{audience}' is not known; choose student or teacher.",
                audience=self.audience,
            )


@dataclass(frozen=True)
class Sheet:
    """Measures of the paper in points. The left margin of 19 mm leaves room for punched
    holes: by ISO 838 they are 6 mm wide, 12 mm from the edge to the middle."""

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
