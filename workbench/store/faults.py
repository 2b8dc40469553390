"""Faults of databases and disks as one sentence that the user can act on."""

from __future__ import annotations

import contextlib
import sqlite3
from collections.abc import Iterator

from sqlalchemy.exc import DBAPIError, SQLAlchemyError

from workbench.language.speech import mark, say
from workbench.store.conflict import Refused

_BUSY = mark(
    "The lesson store {place} is being written by another program just now; "
    "close the other one or try again in a moment."
)
_SENTENCES = {
    sqlite3.SQLITE_BUSY: _BUSY,
    sqlite3.SQLITE_LOCKED: _BUSY,
    sqlite3.SQLITE_READONLY: mark(
        "The lesson store {place} may only be read, so nothing was saved; change the rights of "
        "the file and its folder, or name another place in PLUCKWRIGHT_DB."
    ),
    sqlite3.SQLITE_PERM: mark(
        "The lesson store {place} may not be read or written; change the rights of the file and "
        "its folder, or name another place in PLUCKWRIGHT_DB."
    ),
    sqlite3.SQLITE_CANTOPEN: mark(
        "The lesson store {place} cannot be opened for writing; check that its folder is there "
        "and may be written to, or name another place in PLUCKWRIGHT_DB."
    ),
    sqlite3.SQLITE_FULL: mark(
        "The lesson store {place} cannot grow, for the disk is full, and nothing was changed; "
        "make room and try again."
    ),
    sqlite3.SQLITE_IOERR: mark(
        "The lesson store {place} cannot be read or written, for the disk reports an error, and "
        "nothing was changed; check the disk and its free room."
    ),
    sqlite3.SQLITE_CORRUPT: mark(
        "The lesson store {place} is damaged and was left as it is; put a copy of it back, or "
        "move it away to start a new one."
    ),
    sqlite3.SQLITE_NOTADB: mark(
        "The lesson store {place} is no lesson store (or is damaged) and was left as it is; put "
        "a copy of it back, or name another place in PLUCKWRIGHT_DB."
    ),
}


def sentence(fault: BaseException, place: str) -> str | None:
    """What to tell the user; None where the fault is the program's own."""
    orig = fault.orig if isinstance(fault, DBAPIError) else fault
    code = getattr(orig, "sqlite_errorcode", None)
    if code is None:
        if isinstance(fault, DBAPIError) and (
            fault.connection_invalidated or type(fault).__name__ == "OperationalError"
        ):
            return say(
                "The lesson store {place} cannot be reached; check the server and the "
                "network and try again.",
                place=place,
            )
        return None
    advice = _SENTENCES.get(code & 0xFF)  # the low byte is the primary result code
    return say(advice, place=place) if advice else None


@contextlib.contextmanager
def plain_words(place: str) -> Iterator[None]:
    """Turn what the user can mend into BadInput; let faults of ours through."""
    try:
        yield
    except (SQLAlchemyError, sqlite3.Error) as fault:
        said = sentence(fault, place)
        if said is None:
            raise
        raise Refused(said) from fault
