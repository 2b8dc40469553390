"""What can be done with the selected notes, as a menu at the pointer."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtWidgets import QMenu, QWidget

from workbench.language.speech import count, mark, say
from workbench.teaching.lessons import edits
from workbench.ui.bench.session import Session

LEFT = (mark("0, open string"), mark("1, index"), mark("2, middle"), mark("3, ring"),
        mark("4, little finger"))  # fmt: skip
RIGHT = (("p", mark("p, thumb")), ("i", mark("i, index")), ("m", mark("m, middle")),
         ("a", mark("a, ring")))  # fmt: skip


def note_menu(session: Session, parent: QWidget, write: Callable[[], object]) -> QMenu:
    """The menu for the selected notes, or for the bar where none is selected; ``write``
    begins a teaching note about them."""
    menu = QMenu(parent)
    menu.aboutToHide.connect(menu.deleteLater)
    chosen = len(session.selection.note_ids)
    menu.setAccessibleName(
        count(chosen, "The selected note", "{n} selected notes") if chosen else say("This bar")
    )

    def add(inside: QMenu, words: str, does: Callable[[], object]) -> None:
        inside.addAction(words).triggered.connect(lambda _checked=False: does())

    if chosen:
        add(menu, count(chosen, "&Pin this note as it is", "&Pin these {n} notes as they are"),
            session.hand_edits.pin_notes)  # fmt: skip
        add(
            menu,
            count(chosen, "&Free this note", "&Free these {n} notes"),
            session.hand_edits.free_note,
        )
        left = menu.addMenu(say("&Left finger"))
        for finger, words in enumerate(LEFT):
            add(left, say(words), partial(session.hand_edits.set_left, finger))
        right = menu.addMenu(say("&Right finger"))
        for letter, words in RIGHT:
            add(right, say(words), partial(session.hand_edits.set_right, letter))
        lesson, note = session.lesson, session.selection.note_id or ""
        if chosen == 1 and lesson and edits.other_stem(lesson, note):
            if edits.is_unison(lesson, note):
                add(
                    menu,
                    say("Both stems on &one string"),
                    partial(session.hand_edits.set_unison, False),
                )
            else:
                add(menu, say("Each stem on a &string of its own"),
                    partial(session.hand_edits.set_unison, True))  # fmt: skip
        menu.addSeparator()
        add(menu, count(chosen, "&Remark about it …", "&Remark about them …"), write)
    else:
        add(menu, say("&Pin this bar"), session.hand_edits.pin_notes)
        add(menu, say("&Free this bar"), session.hand_edits.free_note)
        menu.addSeparator()
        add(menu, say("&Remark about this bar …"), write)
    return menu
