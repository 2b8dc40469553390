"""A PDF in memory, then onto the disk whole or not at all."""

from __future__ import annotations

import contextlib
import os
import re
import tempfile
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter

from workbench.music.errors import BadInput

_RESOLUTION = 1200


@dataclass(frozen=True)
class Bookmark:
    """An entry of the reader's table of contents; ``page`` counts from 0."""

    title: str
    page: int


def pdf_bytes(
    pages: Sequence[Callable[[QPainter], None]],
    size: QPageSize,
    *,
    title: str,
    author: str = "",
    language: str = "en",
    bookmarks: Sequence[Bookmark] = (),
) -> bytes:
    """Paint every page in points; vector, fonts embedded, text as text."""
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setPageLayout(
        QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0))
    )
    writer.setResolution(_RESOLUTION)
    writer.setTitle(title)
    writer.setCreator("Pluckwright")
    if author and hasattr(writer, "setAuthor"):
        writer.setAuthor(author)
    painter = QPainter()
    if not painter.begin(writer):
        raise RuntimeError("Qt could not begin the PDF")
    for number, paint in enumerate(pages):
        if number:
            writer.newPage()
        painter.save()
        painter.scale(_RESOLUTION / 72, _RESOLUTION / 72)
        paint(painter)
        painter.restore()
    painter.end()
    buffer.close()
    return with_catalogue(with_spaces(bytes(data.data())), language, bookmarks)


def with_spaces(pdf: bytes) -> bytes:
    """Let the space's glyph mean a space to readers of the text.

    Qt writes it down as a tabulator (U+0009), so that searching for two words
    fails. Only the tables from glyphs to text change (ISO 32000-1, 9.10.3), in
    place and with their length kept.
    """

    def mended(table: re.Match[bytes]) -> bytes:
        return table.group().replace(b"<0009>", b"<0020>")

    return re.sub(rb"(?<=> )\[(?:<[0-9A-F]{4}> ?)+\](?=\s)", mended, pdf)


def with_catalogue(pdf: bytes, language: str, bookmarks: Sequence[Bookmark] = ()) -> bytes:
    """Add /Lang and bookmarks to the document catalogue by an incremental update
    (ISO 32000-1, 7.5.6 and 12.3.3).

    A file whose tables are not found is returned as it is.
    """
    trailers = re.findall(rb"trailer\s*<<(.*?)>>\s*startxref\s+(\d+)", pdf, re.DOTALL)
    if not trailers:
        return pdf
    body, start = trailers[-1]
    root = re.search(rb"/Root\s+(\d+)\s+0\s+R", body)
    size = re.search(rb"/Size\s+(\d+)", body)
    catalogue = _object(pdf, int(root.group(1))) if root else None
    if root is None or size is None or catalogue is None or b"/Lang" in catalogue:
        return pdf
    free = int(size.group(1))
    outline = _outline(pdf, catalogue, bookmarks, free)
    entry = catalogue.rstrip() + f"\n/Lang ({language})\n".encode("ascii")
    if outline:
        entry += f"/Outlines {free} 0 R\n/PageMode /UseNone\n".encode("ascii")
    out = pdf if pdf.endswith(b"\n") else pdf + b"\n"
    table = b"xref\n"
    for number, content in ((int(root.group(1)), entry), *enumerate(outline, free)):
        table += f"{number} 1\n{len(out):010d} 00000 n \n".encode("ascii")
        out += f"{number} 0 obj\n<<".encode("ascii") + content + b">>\nendobj\n"
    kept = re.sub(rb"/Prev\s+\d+", b"", body)
    kept = re.sub(rb"/Size\s+\d+", f"/Size {free + len(outline)}".encode("ascii"), kept)
    place = len(out)
    out += table + b"trailer\n<<" + kept.rstrip() + b"\n/Prev " + start + b"\n>>\n"
    return out + f"startxref\n{place}\n%%EOF\n".encode("ascii")


def _object(pdf: bytes, number: int) -> bytes | None:
    """What stands between the outer brackets of an object's dictionary."""
    found = re.search(
        rb"(?:^|\n)" + str(number).encode("ascii") + rb" 0 obj\s*<<(.*?)>>\s*endobj", pdf, re.DOTALL
    )
    return found.group(1) if found else None


def _outline(
    pdf: bytes, catalogue: bytes, bookmarks: Sequence[Bookmark], free: int
) -> list[bytes]:
    """The outline's objects, numbered from ``free``; empty where there is nothing to mark."""
    tree = re.search(rb"/Pages\s+(\d+)\s+0\s+R", catalogue)
    pages = _object(pdf, int(tree.group(1))) if tree else None
    kids = re.search(rb"/Kids\s*\[(.*?)\]", pages, re.DOTALL) if pages else None
    if kids is None or not bookmarks:
        return []
    numbers = re.findall(rb"(\d+)\s+0\s+R", kids.group(1))
    kept = [b for b in bookmarks if b.page < len(numbers)]
    last = free + len(kept)
    out = [f"/Type /Outlines /First {free + 1} 0 R /Last {last} 0 R /Count {len(kept)}".encode()]
    for place, mark in enumerate(kept, free + 1):
        words = mark.title.encode("utf-16-be").hex()
        item = f"/Title <feff{words}> /Parent {free} 0 R"
        item += f" /Dest [{numbers[mark.page].decode()} 0 R /Fit]"
        if place > free + 1:
            item += f" /Prev {place - 1} 0 R"
        if place < last:
            item += f" /Next {place + 1} 0 R"
        out.append(item.encode("ascii"))
    return out


def write_whole(path: Path, data: bytes) -> None:
    """Write beside the target and put it in place in one step.

    Raises BadInput where the folder is missing, may not be written or is full;
    what stood at ``path`` before is then untouched.
    """
    if path.is_dir():
        raise BadInput(f"{path} is a folder; name the file to write, such as {path}/handout.pdf.")
    if not path.parent.is_dir():
        raise BadInput(f"The folder {path.parent} does not exist; make it or choose another.")
    temporary = ""
    try:
        handle, temporary = tempfile.mkstemp(prefix=".", suffix=".part", dir=path.parent)
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        os.chmod(temporary, 0o666 & ~_umask())
        os.replace(temporary, path)
    except OSError as error:
        with contextlib.suppress(OSError):
            if temporary:
                os.unlink(temporary)
        raise BadInput(
            f"{path} could not be written ({error.strerror or error}); "
            "free some space or choose another folder."
        ) from error


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask
