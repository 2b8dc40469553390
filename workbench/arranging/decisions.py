"""The teacher's word on single notes of an arrangement: pins that the search works around.

A lesson keeps them as rows of words, (note id, word): ``gone``, a number of octaves beyond
the whole piece (``0``, ``1``, ``-1``), ``whole``, ``voice 2``, ``accepted``.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from workbench.music.errors import BadInput
from workbench.music.model import Note, Piece

GONE, WHOLE_LENGTH, VOICE, ACCEPTED = "gone", "whole", "voice", "accepted"
MOST_OCTAVES_AWAY = 4

Rows = tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class Decision:
    """What is decided of one note of the source.

    ``octaves``: how many octaves it goes up beyond the whole piece; ``gone``: it is left
    out; both None and False where the search may choose. ``whole``: it is not cut for the
    sake of its string. ``voice``: the voice it belongs to from now on. ``accepted``: what
    the search did with it is seen and agreed to.
    """

    octaves: int | None = None
    gone: bool = False
    whole: bool = False
    voice: int | None = None
    accepted: bool = False

    @property
    def own(self) -> bool:
        """Whether what becomes of the note is the teacher's wish, not the search's."""
        return (self.gone or self.octaves is not None) and not self.accepted


FREE = Decision()
Decisions = Mapping[str, Decision]


def decisions(rows: Iterable[tuple[str, str]]) -> dict[str, Decision]:
    """The decisions that the rows of a lesson tell; BadInput at a word that is none."""
    out: dict[str, Decision] = {}
    for note, word in rows:
        out[note] = _with(out.get(note, FREE), word)
    return out


def _with(one: Decision, word: str) -> Decision:
    if word == GONE:
        return replace(one, gone=True, octaves=None)
    if word == WHOLE_LENGTH:
        return replace(one, whole=True)
    if word == ACCEPTED:
        return replace(one, accepted=True)
    found = re.fullmatch(rf"{VOICE} ([1-9][0-9]?)", word)
    if found:
        return replace(one, voice=int(found[1]))
    if re.fullmatch(r"[+-]?[0-9]", word) and abs(int(word)) <= MOST_OCTAVES_AWAY:
        return replace(one, octaves=int(word), gone=False)
    raise BadInput(
        "'{word}' says nothing of a note in an arrangement; write gone, whole, accepted, "
        "voice 2, or octaves such as -1, 0 or 1.",
        word=word,
    )


def rows(decided: Decisions) -> Rows:
    """The decisions as a lesson keeps them, in one order for one content."""
    out: list[tuple[str, str]] = []
    for note, one in sorted(decided.items()):
        words = [GONE] if one.gone else [] if one.octaves is None else [str(one.octaves)]
        words += [WHOLE_LENGTH] if one.whole else []
        words += [f"{VOICE} {one.voice}"] if one.voice is not None else []
        words += [ACCEPTED] if one.accepted else []
        out += [(note, word) for word in words]
    return tuple(out)


def voiced(piece: Piece, decided: Decisions) -> Piece:
    """The piece with the notes in the voices they were given."""
    voice = {note: d.voice for note, d in decided.items() if d.voice is not None}
    if not voice:
        return piece

    def moved(note: Note) -> Note:
        wanted = voice.get(note.id)
        return note if wanted is None or wanted == note.voice else replace(note, voice=wanted)

    bars = tuple(replace(bar, notes=tuple(moved(n) for n in bar.notes)) for bar in piece.bars)
    return replace(piece, bars=bars)
