"""Files written whole or not at all."""

from __future__ import annotations

import contextlib
import os
import tempfile
from pathlib import Path

from workbench.language.speech import say
from workbench.music.errors import BadInput


def write_whole(path: str | Path, data: bytes) -> None:
    """Write ``data`` to ``path`` in one step: beside it first, then moved over it.

    Raises BadInput where the folder or disk does not allow it; an older file
    of that name is then untouched.
    """
    path = Path(path)
    if path.is_dir():
        raise BadInput(say("{path} is a folder; give the name of a file to write.", path=path.name))
    temporary = ""
    try:
        handle, temporary = tempfile.mkstemp(prefix=f".{path.name}.", dir=path.parent)
        with os.fdopen(handle, "wb") as stream:
            stream.write(data)
            stream.flush()
            os.fsync(stream.fileno())
        mask = os.umask(0)
        os.umask(mask)
        os.chmod(temporary, 0o666 & ~mask)
        os.replace(temporary, path)
    except OSError as error:
        if temporary:
            with contextlib.suppress(OSError):
                os.unlink(temporary)
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
