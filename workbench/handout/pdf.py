"""A PDF in memory, then onto the disk whole or not at all."""

from __future__ import annotations

import contextlib
import os
import re
import tempfile
from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter

from workbench.music.errors import BadInput

_RESOLUTION = 1200


def pdf_bytes(
    pages: Sequence[Callable[[QPainter], None]],
    size: QPageSize,
    *,
    title: str,
    author: str = "",
    language: str = "en",
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
    return with_language(with_spaces(bytes(data.data())), language)


def with_spaces(pdf: bytes) -> bytes:
    """Let the space's glyph mean a space to readers of the text.

    Qt writes it down as a tabulator (U+0009), so that searching for two words
    fails. Only the tables from glyphs to text change (ISO 32000-1, 9.10.3), in
    place and with their length kept.
    """

    def mended(table: re.Match[bytes]) -> bytes:
        return table.group().replace(b"<0009>", b"<0020>")

    return re.sub(rb"(?<=> )\[(?:<[0-9A-F]{4}> ?)+\](?=\s)", mended, pdf)


def with_language(pdf: bytes, language: str) -> bytes:
    """Add /Lang to the document catalogue by an incremental update (ISO 32000-1, 7.5.6).

    A file whose tables are not found is returned as it is.
    """
    trailers = re.findall(rb"trailer\s*<<(.*?)>>\s*startxref\s+(\d+)", pdf, re.DOTALL)
    if not trailers:
        return pdf
    body, start = trailers[-1]
    root = re.search(rb"/Root\s+(\d+)\s+0\s+R", body)
    size = re.search(rb"/Size\s+(\d+)", body)
    if not root or not size:
        return pdf
    number = root.group(1)
    catalogue = re.search(rb"(?:^|\n)" + number + rb" 0 obj\s*<<(.*?)>>\s*endobj", pdf, re.DOTALL)
    if not catalogue or b"/Lang" in catalogue.group(1):
        return pdf
    out = pdf if pdf.endswith(b"\n") else pdf + b"\n"
    at = len(out)
    out += number + b" 0 obj\n<<" + catalogue.group(1).rstrip() + (
        f"\n/Lang ({language})\n>>\nendobj\n".encode("ascii")
    )
    table = len(out)
    kept = re.sub(rb"/Prev\s+\d+", b"", body)
    out += b"xref\n" + number + b" 1\n" + f"{at:010d} 00000 n \n".encode("ascii")
    out += b"trailer\n<<" + kept.rstrip() + b"\n/Prev " + start + b"\n>>\n"
    return out + f"startxref\n{table}\n%%EOF\n".encode("ascii")


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
