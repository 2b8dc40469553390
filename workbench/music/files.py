"""Files written whole or not at all."""

from __future__ import annotations

import contextlib
import os
import tempfile
from collections.abc import Iterator
from pathlib import Path

from workbench.language.speech import say
from workbench.music.errors import BadInput


def write_private(path: Path, data: bytes) -> None:
    """Write a file that only its owner may read, whole or not at all.

    Raises OSError as the system does.
    """
    with appearing(path, private=True) as part:
        part.write_bytes(data)


@contextlib.contextmanager
def appearing(path: Path, *, private: bool = False) -> Iterator[Path]:
    """A file beside ``path`` to write to, of the same ending, that takes its place when all
    went well and is gone when anything did not; an older file is then untouched.
    ``private``: only its owner may read it.

    Raises OSError as the system does: the caller knows what to tell the user.
    """
    handle, name = tempfile.mkstemp(path.suffix, f".part-{path.stem[:80]}-", path.parent)
    os.close(handle)
    part = Path(name)
    try:
        yield part
        with part.open("rb+") as stream:
            os.fsync(stream.fileno())
        if os.name == "posix" and not private:  # which a temporary file is
            mask = os.umask(0)
            os.umask(mask)
            part.chmod(0o666 & ~mask)
        os.replace(part, path)
    except BaseException:
        with contextlib.suppress(OSError):
            part.unlink()
        raise


def write_whole(path: str | Path, data: bytes) -> None:
    """Write ``data`` to ``path`` in one step: beside it first, then moved over it.

    Raises BadInput where the folder or disk does not allow it; an older file
    of that name is then untouched.
    """
    path = Path(path)
    if path.is_dir():
        raise BadInput(say("{path} is a folder; give the name of a file to write.", path=path.name))
    try:
        with appearing(path) as part:
            part.write_bytes(data)
    except OSError as error:
        reason = (error.strerror or str(error)).lower()
        raise BadInput(
            say(
                "{path} cannot be written into {parent}: {reason}; choose another folder or "
                "make room.",
                path=path.name,
                parent=path.parent,
                reason=reason,
            )
        ) from None
