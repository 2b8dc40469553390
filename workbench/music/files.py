"""Files written whole or not at all."""

from __future__ import annotations

import contextlib
import os
import re
import tempfile
import unicodedata
from collections.abc import Iterator
from pathlib import Path

from workbench.music.errors import BadInput

MOST_BYTES = 180  # of a name: file systems take 255, and an ending is to come
#: Signs that stand between words, and signs of music, as they are said in a name.
_SAID = {
    **dict.fromkeys("/\\:|", " - "), "♯": " sharp", "♭": " flat", "♮": " natural",
}  # fmt: skip
_RESERVED = re.compile(r"(con|prn|aux|nul|com\d|lpt\d)$", re.IGNORECASE)  # Windows' devices


def readable_name(*parts: str) -> str:
    """A file's name, without its ending, made of words such as student, kind and title, the
    empty ones left out. Every letter of any script stays; what some file system refuses is
    said otherwise or dropped. Empty where nothing is left.

    Forbidden signs and reserved names are those of Windows, which has the most.
    """
    return _shortened(" - ".join(name for part in parts if (name := _readable(part))))


def _readable(part: str) -> str:
    """One part of a name: spaces single, no signs but those that every system takes."""
    text = unicodedata.normalize("NFC", part)
    text = "".join(_SAID.get(sign, sign) for sign in text)
    text = "".join(" " if c.isspace() else c for c in text)
    text = "".join(c for c in text if c.isprintable() and c not in '*?"<>“”„«»')
    text = re.sub(r"\s+", " ", text)
    text = re.sub(r"( - )+", " - ", text).strip(" .-")
    return f"{text} file" if _RESERVED.match(text) else text


def _shortened(name: str) -> str:
    """Cut at a word where it is too long for a file's name."""
    if len(name.encode()) <= MOST_BYTES:
        return name
    kept = name.encode()[:MOST_BYTES].decode(errors="ignore")
    return (kept.rpartition(" ")[0] or kept).strip(" .-")


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


def unwritable(path: Path, fault: Exception) -> BadInput:
    """The sentence for a file that the folder or disk does not take."""
    why = getattr(fault, "strerror", None) or fault
    return BadInput("{path} cannot be written ({why}); choose another place.", path=path, why=why)


@contextlib.contextmanager
def whole_file(path: Path) -> Iterator[Path]:
    """``appearing`` for a file that the user named: what is in its way is told.

    Raises BadInput where a folder stands there, or the folder or disk does not allow it.
    """
    if "\0" in str(path):
        raise unwritable(path, ValueError("embedded null byte"))
    if path.is_dir():
        raise BadInput("{path} is a folder; name the file to write in it.", path=path)
    if not path.parent.is_dir():
        raise BadInput(
            "{path} cannot be written: the folder {folder} does not exist; make it or choose "
            "another.",
            path=path.name,
            folder=path.parent,
        )
    try:
        with appearing(path) as part:
            yield part
    except OSError as fault:
        raise unwritable(path, fault) from fault


def write_whole(path: str | Path, data: bytes) -> None:
    """Write ``data`` to ``path`` whole or not at all. Raises BadInput as ``whole_file`` does."""
    with whole_file(Path(path)) as part:
        part.write_bytes(data)


def write_text(path: str | Path, text: str) -> None:
    """Write a text in UTF-8, its lines ended by a line feed alone, whole or not at all.

    Raises BadInput as ``whole_file`` does.
    """
    with whole_file(Path(path)) as part:
        part.write_text(text, encoding="utf-8", newline="\n")
