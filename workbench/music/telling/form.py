"""The form of a piece in a teacher's words."""

from __future__ import annotations

from dataclasses import dataclass

from workbench.language.message import Unsaid
from workbench.language.speech import mark, say
from workbench.music.model import Piece
from workbench.music.order.playing import Stretch, stretches
from workbench.music.order.sections import Section, leads_in, sections

_TIMES = {1: mark("once"), 2: mark("twice"), 3: mark("three times"), 4: mark("four times")}


def form_in_words(piece: Piece) -> str:
    """The form as one sentence, such as "A twice with first and second ending,
    B twice, then D.C. to the Fine: A."; empty for a piece without bars."""
    if not piece.bars:
        return ""
    start = say("Pickup, then ") if piece.bars[0].pickup and len(piece.bars) > 1 else ""
    groups: list[tuple[str, list[str]]] = [("", [])]
    for run in stretches(piece):
        if run.why in ("D.C.", "D.S.", "Coda"):
            groups.append((run.why, []))
        groups[-1][1].extend(_entered(piece, run, start_anew=not groups[-1][1]))
    phrases: list[str] = []
    for why, letters in groups:
        phrases.append(_leap(why, piece) + _counted(letters, piece, first=not phrases))
    text = start + say(", then ").join(phrases)
    return text + "."


@dataclass(frozen=True)
class ToldForm(Unsaid):
    """``form_in_words``, said where it is shown."""

    piece: Piece

    def __str__(self) -> str:
        return form_in_words(self.piece)


def _entered(piece: Piece, run: Stretch, *, start_anew: bool) -> list[str]:
    """Letters of the sections that the stretch enters (not those it goes on in)."""
    out = []
    for place, section in enumerate(sections(piece)):
        if section.last_bar < run.first or section.first_bar > run.last:
            continue
        inside = section.first_bar < run.first
        if inside and run.why == "ending":
            continue
        if inside and run.why == "" and not start_anew:
            continue
        if run.why == "repeat" and inside and _only_pickup(piece, section, run.first):
            inside = False
        # the place keeps two neighbours of one letter apart from a repeat
        name = say("the end of {letter}", letter=section.letter) if inside else section.letter
        out.append(f"{place}:{name}")
    return out


def _only_pickup(piece: Piece, section: Section, first: int) -> bool:
    return all(leads_in(b) for b in piece.bars[section.first_bar : first])


def _counted(letters: list[str], piece: Piece, *, first: bool) -> str:
    out: list[str] = []
    place = 0
    while place < len(letters):
        count = 1
        while place + count < len(letters) and letters[place + count] == letters[place]:
            count += 1
        number, _, name = letters[place].partition(":")
        text = name
        if count > 1:
            times = say(_TIMES[count]) if count in _TIMES else say("{n} times", n=count)
            text += f" {times}"
            if first and _has_endings(piece, int(number)):
                text += " " + say("with {endings}", endings=_endings_words(count))
        out.append(text)
        place += count
    return ", ".join(out)


def _has_endings(piece: Piece, place: int) -> bool:
    section = sections(piece)[place]
    return any(b.endings for b in piece.bars[section.first_bar : section.last_bar + 1])


def _endings_words(count: int) -> str:
    return (
        say("first and second ending", sense="form")
        if count == 2
        else say("{count} passes and their endings", count=count)
    )


def _leap(why: str, piece: Piece) -> str:
    if not why or why == "Coda":
        return ""
    back = say("D.C. (from the beginning)") if why == "D.C." else say("D.S. (from the sign)")
    goal = (
        " " + say("to the Fine") if any(b.fine for b in piece.bars) and not _to_coda(piece) else ""
    )
    return f"{back}{goal}: "


def _to_coda(piece: Piece) -> bool:
    return any(b.to_coda or b.jump.endswith("al Coda") for b in piece.bars)
