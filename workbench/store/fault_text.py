"""A fault of the program as text to be kept: where it happened, without anybody's words."""

from __future__ import annotations

import re
import traceback
from collections.abc import Iterable, Iterator
from pathlib import Path

HIDDEN = "…"
LEAST = 3  # letters of a word that is looked for; shorter ones are in any sentence
#: Errors whose message speaks of the program's own names and of numbers.
_OF_THE_CODE = (
    ArithmeticError, AttributeError, ImportError, IndexError, NameError, RecursionError, TypeError,
)  # fmt: skip
_QUOTED = re.compile(r"""(?<!File )(?P<sign>['"])(?:\\.|(?!(?P=sign)).)*(?P=sign)""", re.DOTALL)


def fault_text(fault: BaseException, words: Iterable[str] = ()) -> str:
    """The traceback of a fault. Only the message of an error can hold a name, a title or a
    path: what is quoted there is hidden, but for errors that speak of the code, and so are
    ``words`` and the user's home."""
    whole = traceback.TracebackException.from_exception(fault)
    text = "".join(whole.format())
    hidden = sorted({w for w in words if len(w) >= LEAST}, key=len, reverse=True)
    for one in _chain(whole):
        message = "".join(one.format_exception_only())
        text = text.replace(message, _masked(message, hidden, one.exc_type))
    return text.replace(str(Path.home()), "~")


def _chain(whole: traceback.TracebackException) -> Iterator[traceback.TracebackException]:
    left: list[traceback.TracebackException | None] = [whole]
    while left:
        one = left.pop()
        if one is not None:
            yield one
            left += one.__cause__, one.__context__, *(one.exceptions or ())


def _masked(message: str, hidden: list[str], kind: type[BaseException] | None) -> str:
    if kind is None or not issubclass(kind, _OF_THE_CODE):
        message = _QUOTED.sub(f"'{HIDDEN}'", message)
    for word in hidden:
        message = message.replace(word, HIDDEN)
    return message
