"""Which page of the help belongs to which control, and the pages themselves.

The pages are Markdown files in ``resources/help/LANGUAGE``, one a topic, named by it;
their order in the list of contents is that of TOPICS. ``{undo}`` in a page stands for the first
key of that command.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from PySide6.QtWidgets import QWidget

from workbench.language import speech
from workbench.ui.help.shortcut_list import first_key

FOLDER = Path(__file__).resolve().parents[3] / "resources" / "help"
START = "start"

#: Every topic, with the classes of the window whose page it is.
TOPICS: dict[str, tuple[str, ...]] = {
    START: ("Window", "Tour", "LeftDialog", "TroubleDialog", "BackupsDialog"),
    "import": ("ImportDialog",),
    "writing": ("NewPieceDialog",),
    "instrument": ("MusicDialog", "PlayingFields"),
    "hand": ("SpansDialog",),
    "arranging": ("ArrangingView", "EasierDialog"),
    "bars": ("BarList",),
    "score": ("ScoreView",),
    "fretboard": ("NeckView", "Legend"),
    "choices": ("Choices", "CompareDialog", "WhyNotDialog", "FitDialog", "ScoresDialog"),
    "notes": ("NotePanel", "GripDialog", "LinkDialog", "RejectedDialog"),
    "lesson": ("LessonPanel", "GradeView", "GradesDialog"),
    "techniques": ("TechniqueView",),
    "plan": ("PlanView",),
    "sound": ("PlayerBar", "TrainerDialog", "TunerDialog"),
    "script": ("ScriptView",),
    "reading": ("ReadingView", "PedalDialog"),
    "shelf": ("ShelfDialog",),
    "groups": ("GroupsDialog",),
    "versions": ("VersionsDialog",),
    "history": ("HistoryDialog", "MeetingDialog"),
    "handout": ("HandoutDialog",),
    "print": ("PrintPreview",),
    "export": ("ExportDialog",),
    "keys": ("ShortcutList",),
    "look": (),
    "cautions": ("CautionsDialog",),
    "report": ("ReportDialog", "Notice"),
}


@dataclass(frozen=True)
class HelpPage:
    """A page of the help: its topic, its title and its text in Markdown."""

    topic: str
    title: str
    text: str


def topic_of(widget: QWidget | None) -> str:
    """The topic of the nearest part around a control that has one."""
    while widget is not None:
        found = next((t for t in _names(type(widget)) if t), None)
        if found:
            return found
        widget = widget.parentWidget()
    return START


def _names(kind: type) -> Iterator[str | None]:
    for base in kind.__mro__:
        yield topic_of_class(base.__name__)


def topic_of_class(name: str) -> str | None:
    """The topic of a class of the window; None where it has none."""
    return next((topic for topic, names in TOPICS.items() if name in names), None)


def pages() -> tuple[HelpPage, ...]:
    """All pages in the language spoken now; a page that is missing there is English."""
    return _pages(speech.chosen())


@cache
def _pages(code: str) -> tuple[HelpPage, ...]:
    return tuple(_page(topic, code) for topic in TOPICS)


def _page(topic: str, code: str) -> HelpPage:
    path = FOLDER / code / f"{topic}.md"
    if not path.is_file():
        path = FOLDER / "en" / f"{topic}.md"
    text = path.read_text(encoding="utf-8")
    text = re.sub(r"\{([\w-]+)\}", lambda name: first_key(name[1]), text)
    heading = re.match(r"#\s+(.+)", text)
    return HelpPage(topic, heading[1].strip() if heading else topic, text)


def found(words: str) -> tuple[HelpPage, ...]:
    """The pages that have all the words, those with all in the title first."""
    wanted = words.casefold().split()
    hits = [p for p in pages() if all(w in p.text.casefold() for w in wanted)]
    return tuple(sorted(hits, key=lambda p: not all(w in p.title.casefold() for w in wanted)))
