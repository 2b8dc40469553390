"""How what is drawn is named: every id of the engraving is made here, and read here.

The first head of a note bears the note's own id, later parts of it ``.2``, ``.3``. What
belongs to a note has a word before its id; other things bear their bar's index.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction

HEAD, FIGURE, LEFT, RIGHT, STRING = "head-", "t-", "fl-", "fr-", "sn-"
_OF_NOTES = (HEAD, FIGURE, LEFT, RIGHT, STRING)
_OVER = "o-"
_BAR, _REST, _LAYER, _TEMPO, _REMARKS = "bar-", "rest-", "voice-", "tempo-", "mark-"


def part(note: str, count: int) -> str:
    """The ``count``th written part of a note, from 1."""
    return note if count == 1 else f"{note}.{count}"


def head(note: str) -> str:
    """The head of a note by itself, without its stem."""
    return HEAD + note


def figure(note: str) -> str:
    """The tablature figure of a note."""
    return FIGURE + note


def left(note: str) -> str:
    """The left hand's number of a note."""
    return LEFT + note


def right(note: str) -> str:
    """The right hand's letter of a note."""
    return RIGHT + note


def string(note: str) -> str:
    """The number of a note's string, in its circle."""
    return STRING + note


def over(note: str) -> str:
    """A note of the piece that is set above another."""
    return _OVER + note


def under(element_id: str) -> str | None:
    """The note, by its id in its own piece, of a head of the piece above; None for any other."""
    name = element_id.removeprefix(HEAD)
    return name.removeprefix(_OVER) if name.startswith(_OVER) else None


def whole(element_id: str) -> str:
    """A note's id without the number of the part of it."""
    return element_id.rpartition(".")[0] or element_id


def note_of(element_id: str, notes: Mapping[str, int]) -> str | None:
    """The note (one of ``notes``) that a head, a figure or a finger mark belongs to."""
    for prefix in ("", *_OF_NOTES):
        if element_id.startswith(prefix):
            name = element_id[len(prefix) :]
            for candidate in (name, name.rpartition(".")[0]):
                if candidate in notes:
                    return candidate
    return None


def beside_note(element_id: str) -> bool:
    """Whether it is a figure or a finger mark, which lie outside the voice of their note."""
    return element_id.startswith((FIGURE, LEFT, RIGHT, STRING))


def first_head_or_figure(element_id: str) -> str | None:
    """The id that a head or figure bears behind its word; None for all else."""
    name = element_id.removeprefix(HEAD).removeprefix(FIGURE)
    return name if name != element_id else None


def bar(index: int) -> str:
    """The bar of an index."""
    return f"{_BAR}{index}"


def bar_of(element_id: str) -> int | None:
    """The index of a bar's id; None for any other."""
    return int(element_id.removeprefix(_BAR)) if element_id.startswith(_BAR) else None


def rest(bar_index: int, layer: int, onset: Fraction) -> str:
    """A rest, from whose id its moment can be told."""
    return f"{_REST}{bar_index}-{layer}-{onset.numerator}_{onset.denominator}"


def onset_of_rest(element_id: str) -> tuple[int, Fraction] | None:
    """Bar and moment of a rest's id; None for any other."""
    if not element_id.startswith(_REST):
        return None
    bar_index, _, onset = element_id.removeprefix(_REST).split("-")
    above, below = onset.split("_")
    return int(bar_index), Fraction(int(above), int(below))


def layer(bar_index: int, number: int, voice: tuple[int, int]) -> str:
    """A layer of a bar, from whose id its part and voice can be told."""
    return f"{_LAYER}{bar_index}-{number}-{voice[0]}-{voice[1]}"


def voice_of_layer(element_id: str) -> tuple[int, int] | None:
    """Part and voice of a layer's id; None for any other."""
    if not element_id.startswith(_LAYER):
        return None
    own_part, voice = element_id.split("-")[-2:]
    return int(own_part), int(voice)


def tempo(bar_index: int) -> str:
    """The metronome mark of a bar."""
    return f"{_TEMPO}{bar_index}"


def is_tempo(element_id: str) -> bool:
    """Whether it is a metronome mark."""
    return element_id.startswith(_TEMPO)


def remarks(numbers: Iterable[int], bar_index: int) -> str:
    """The numbers of a bar's remarks, as one mark."""
    return f"{_REMARKS}{'.'.join(map(str, numbers))}-{bar_index}"


def numbers_of_remarks(element_id: str) -> list[str] | None:
    """The numbers in a mark of remarks; None for any other."""
    if not element_id.startswith(_REMARKS):
        return None
    return element_id.split("-")[1].split(".")


def of_bar(kind: str, bar_index: int, number: int | None = None) -> str:
    """Any other mark of a bar: a word for its kind, and its number where there may be several."""
    return f"{kind}-{bar_index}" if number is None else f"{kind}-{bar_index}-{number}"
