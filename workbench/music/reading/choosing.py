"""Which tune of a book and which parts of a score are taken."""

from __future__ import annotations

import itertools
import re
from collections.abc import Sequence

from workbench.language.speech import count, say
from workbench.music.errors import BadInput


def tunes_of(text: str) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Titles and texts of the tunes in an ABC book; the file header is set before each."""
    starts = [m.start() for m in re.finditer(r"(?m)^X:", text)]
    if not starts:
        return (_title(text, 1),), ("X:1\n" + text,)
    header = "".join(
        line + "\n" for line in text[: starts[0]].splitlines() if re.match(r"[A-Za-z]:", line)
    )
    bounds = [*starts, len(text)]
    texts = [text[a:b] for a, b in itertools.pairwise(bounds)]
    titles = tuple(_title(t, i) for i, t in enumerate(texts, 1))
    return titles, tuple(_with_header(t, header) for t in texts)


def _with_header(tune: str, header: str) -> str:
    first, _, rest = tune.partition("\n")
    return f"{first}\n{header}{rest}"


def _title(text: str, number: int) -> str:
    found = re.search(r"(?m)^T:[ \t]*(.*\S)", text)
    return found.group(1) if found else say("Tune {number}", number=number)


def check_tune(tune: int, titles: Sequence[str], name: str) -> None:
    """BadInput where the file has no tune of that number."""
    if not 1 <= tune <= len(titles):
        last = len(titles)
        holds, choice = (
            (say("one tune"), "1")
            if last == 1
            else (say("{last} tunes", last=last), say("1 to {last}", last=last))
        )
        raise BadInput(
            say(
                "{name} holds {holds}: there is no tune {tune}; choose {choice}.",
                name=name,
                holds=holds,
                tune=tune,
                choice=choice,
            )
        )


def chosen_parts(
    parts: str | Sequence[int] | None, notes: Sequence[int], name: str
) -> tuple[list[int], list[str]]:
    """Indices of the parts taken and warnings. ``notes`` counts each part's notes.

    By default the top part that has notes; "all" takes every part with notes.
    Raises BadInput for numbers the score does not have.
    """
    sounding = [i for i, n in enumerate(notes) if n]
    if not sounding:
        raise BadInput(say("{name} has no notes; choose a score with notes in it.", name=name))
    if parts is None:
        warnings = []
        if sounding[0] != 0:
            warnings.append(
                say(
                    "Part 1 has no pitched notes; part {part} is taken instead.",
                    part=sounding[0] + 1,
                )
            )
        return [sounding[0]], warnings
    if parts == "all":
        return sounding, []
    if isinstance(parts, str):
        raise BadInput(
            say("'{parts}' names no parts; write numbers such as 1,3 or the word all.", parts=parts)
        )
    wanted = list(dict.fromkeys(int(p) for p in parts))
    for number in wanted:
        if not 1 <= number <= len(notes):
            raise BadInput(
                count(
                    len(notes),
                    "{name} has {n} part: there is no part {number}.",
                    "{name} has {n} parts: there is no part {number}.",
                    name=name,
                    number=number,
                )
            )
    taken = sorted(n - 1 for n in wanted)
    if not any(notes[i] for i in taken):
        raise BadInput(say("{name}: the chosen part has no notes; choose another.", name=name))
    return taken, []
