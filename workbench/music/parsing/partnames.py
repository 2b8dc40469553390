"""What the name of a part says of its instrument. Common names in the languages of printed
music; common practice, no source."""

from __future__ import annotations

import re

_PLUCKED = re.compile(
    r"guit|gitar|chitarr|ukulele|\buke\b|\blutes?\b|\bluth|\blaute|liuto|vihuela|mandol|banjo"
    r"|cavaquinho|charango|bouzouki|bandurria|requinto|\btiple|\bcuatro\b|balalaika|\bgtr",
    re.I,
)
_ANOTHER = re.compile(
    r"piano|klavier|cembalo|harpsichord|clave[cs]in|keyboard|organ\b|orgel|orgue|accord[ei]on"
    r"|akkordeon|celesta|\bharp|harfe|\barpa|viol[ai]|violon|geige|bratsche|cello|contrabas"
    r"|kontrabass|double bass|fl[uöû]te?|flauto|recorder|blockfl|oboe|clarinet|klarinette"
    r"|fagott|bassoon|sax|horn|trumpet|trompete|trombone|posaune|tuba|zither|koto\b",
    re.I,
)


def names_plucked(text: str) -> bool:
    """Whether a name is a plucked, fretted instrument's."""
    return bool(_PLUCKED.search(text))


def names_another(text: str) -> bool:
    """Whether a name is one of an instrument whose finger numbers count otherwise."""
    return bool(_ANOTHER.search(text)) and not names_plucked(text)
