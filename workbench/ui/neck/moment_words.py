"""What the hand does in the selected bar, in words above the fretboard."""

from __future__ import annotations

from typing import TYPE_CHECKING

from workbench.fingering.telling.words import words as told
from workbench.language.names import as_first_word
from workbench.language.speech import say

if TYPE_CHECKING:
    from workbench.ui.bench.session import Session


def moment_words(session: Session) -> tuple[str, str]:
    """The heading of the fretboard, and a sentence or two below it."""
    bar, hands = session.selection.bar, session.fingers.bar_hands
    if bar is None:
        return say("Fretboard"), ""
    pickup = bar.number == "0"
    heading = (
        say("Fretboard in the pickup") if pickup else say("Fretboard in bar {bar}", bar=bar.number)
    )
    if hands is None:
        return heading, say("The fingering is being worked out …")
    # the reach stands on the neck, and the caution beside the other fingerings
    note = session.fingers.note_hands
    if note is not None:
        from workbench.fingering.telling.words import spoken

        why = told(note.cut_reason or note.impossible)
        said = spoken(note)
        words = f"{as_first_word(said)}. {why}"
    else:
        words = say("Click a note to move it.")
    return heading, " ".join(words.split())
