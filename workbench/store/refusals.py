"""Faults of databases and disks as one sentence that the user can act on."""

from __future__ import annotations

import contextlib
import sqlite3
from collections.abc import Iterator

from sqlalchemy.exc import DBAPIError, SQLAlchemyError

from workbench.language.message import Message, message
from workbench.language.speech import mark
from workbench.music.errors import BadInput
from workbench.store.conflict import StoreRefused

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


_USER = mark(
    "The server of the lesson store {place} does not let this user in; check the user's name "
    "and password in PLUCKWRIGHT_DB."
)
_DATABASE = mark(
    "The server has no database for the lesson store {place}; check its name in PLUCKWRIGHT_DB, "
    "or have it made."
)
_RIGHTS = mark(
    "The server lets this user only look at the lesson store {place}, so nothing was saved; ask "
    "whoever looks after the server for the right to write."
)
#: PostgreSQL's codes (its documentation, appendix A), and words where a connection that
#: fails has no code yet.
_SERVER = (
    (("28P01", "28000"), ("password authentication failed", "role", "no password"), _USER),
    (("3D000",), ("database",), _DATABASE),
    (("55P03", "57014", "40P01", "40001", "23505"), (), _BUSY),
    (("42501", "25006"), (), _RIGHTS),
    (("53100",), (), _SENTENCES[sqlite3.SQLITE_FULL]),
)


#: What SQLite says of a file whose header or schema was written over; the last four of its
#: index of words and its references.
_FOREIGN = (
    "unsupported file format", "malformed", "no such table", "no such column", "tokenize",
    "vtable constructor failed", "foreign key mismatch", "SQL logic error",
)  # fmt: skip
_DATES = (ValueError, TypeError)  # what reading a date says of something else


class DamagedRow(Exception):
    """A row that nothing of ours can have written."""


def _of_server(orig: object) -> str | None:
    code = getattr(orig, "sqlstate", None) or getattr(orig, "pgcode", None)
    words = str(orig)
    for codes, signs, advice in _SERVER:
        refused = "does not exist" in words or "password" in words
        if code in codes or (code is None and refused and any(sign in words for sign in signs)):
            return advice
    return None


def sentence(fault: BaseException, place: str) -> Message | None:
    """What to tell the user; None where the fault is the program's own."""
    orig = fault.orig if isinstance(fault, DBAPIError) else fault
    code = getattr(orig, "sqlite_errorcode", None)
    if code is None:
        if isinstance(fault, DBAPIError) and (advice := _of_server(orig)):
            return message(advice, place=place)
        if isinstance(fault, DBAPIError) and (
            fault.connection_invalidated or type(fault).__name__ == "OperationalError"
        ):
            return message(
                "The lesson store {place} cannot be reached; check the server and the "
                "network and try again.",
                place=place,
            )
        return None
    if code == sqlite3.SQLITE_ERROR and any(sign in str(orig) for sign in _FOREIGN):
        code = sqlite3.SQLITE_CORRUPT
    advice = _SENTENCES.get(code & 0xFF)  # the low byte is the primary result code
    return message(advice, place=place) if advice else None


@contextlib.contextmanager
def plain_words(place: str) -> Iterator[None]:
    """Turn what the user can mend into BadInput; let faults of ours through."""
    try:
        yield
    except (SQLAlchemyError, sqlite3.Error) as fault:
        said = sentence(fault, place)
        if said is None:
            raise
        raise StoreRefused(said) from fault
    except (UnicodeDecodeError, OverflowError, DamagedRow) as fault:
        # Bytes that are no text in a column of texts: the file has been written over.
        raise BadInput(_SENTENCES[sqlite3.SQLITE_CORRUPT], place=place) from fault
    except _DATES as fault:
        if isinstance(fault, BadInput) or "isoformat" not in str(fault):
            raise
        raise BadInput(_SENTENCES[sqlite3.SQLITE_CORRUPT], place=place) from fault
