"""Which tune of a book and which parts of a score are taken."""

from __future__ import annotations

import itertools
import re
from collections.abc import Sequence

from workbench.language.fact import Fact, fact
from workbench.language.message import counted, message
from workbench.music.errors import BadInput


def tunes_of(text: str, name: str) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Titles and texts of the tunes in an ABC book; the file header is set before each."""
    starts = [m.start() for m in re.finditer(r"(?m)^X:", text)]
    if not starts:
        return (_title(text, name),), ("X:1\n" + text,)
    header = "".join(
        line + "\n" for line in text[: starts[0]].splitlines() if re.match(r"[A-Za-z]:", line)
    )
    bounds = [*starts, len(text)]
    texts = [text[a:b] for a, b in itertools.pairwise(bounds)]
    titles = tuple(_title(t, f"{name} {i}") for i, t in enumerate(texts, 1))
    return titles, tuple(_with_header(t, header) for t in texts)


def _with_header(tune: str, header: str) -> str:
    first, _, rest = tune.partition("\n")
    return f"{first}\n{header}{rest}"


def _title(text: str, otherwise: str) -> str:
    found = re.search(r"(?m)^T:[ \t]*(.*\S)", text)
    return found.group(1) if found else otherwise


def check_tune(tune: int, titles: Sequence[str], name: str) -> None:
    """BadInput where the file has no tune of that number."""
    if not 1 <= tune <= len(titles):
        last = len(titles)
        holds, choice = (
            (message("one tune"), "1")
            if last == 1
            else (message("{last} tunes", last=last), message("1 to {last}", last=last))
        )
        raise BadInput(
            "{name} holds {holds}: there is no tune {tune}; choose {choice}.",
            name=name,
            holds=holds,
            tune=tune,
            choice=choice,
        )


def chosen_parts(
    parts: str | Sequence[int] | None, notes: Sequence[int], name: str
) -> tuple[list[int], list[Fact]]:
    """Indices of the parts taken and warnings. ``notes`` counts each part's notes.

    By default the top part that has notes; "all" takes every part with notes.
    Raises BadInput for numbers the score does not have.
    """
    sounding = [i for i, n in enumerate(notes) if n]
    if not sounding:
        raise BadInput("{name} has no notes; choose a score with notes in it.", name=name)
    if parts is None:
        warned = [fact("other part", part=sounding[0] + 1)] if sounding[0] != 0 else []
        return [sounding[0]], warned
    if parts == "all":
        return sounding, []
    if isinstance(parts, str):
        raise BadInput(
            "'{parts}' names no parts; write numbers such as 1,3 or the word all.", parts=parts
        )
    wanted = list(dict.fromkeys(int(p) for p in parts))
    for number in wanted:
        if not 1 <= number <= len(notes):
            raise BadInput(
                counted(
                    len(notes),
                    "{name} has {n} part: there is no part {number}.",
                    "{name} has {n} parts: there is no part {number}.",
                    name=name,
                    number=number,
                )
            )
    taken = sorted(n - 1 for n in wanted)
    if not any(notes[i] for i in taken):
        raise BadInput("{name}: the chosen part has no notes; choose another.", name=name)
    return taken, []
