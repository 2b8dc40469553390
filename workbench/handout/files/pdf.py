"""A PDF in memory, then onto the disk whole or not at all."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from xml.sax.saxutils import escape

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter

from workbench.handout.files.pdf_file import Bookmark, finished
from workbench.handout.files.tags import Recorder, record
from workbench.language.speech import chosen

__all__ = ["Bookmark", "pdf_bytes"]

_RESOLUTION = 1200


def pdf_bytes(
    pages: Sequence[Callable[[QPainter], None]],
    size: QPageSize,
    *,
    title: str,
    author: str = "",
    language: str = "",
    bookmarks: Sequence[Bookmark] = (),
) -> bytes:
    """Paint every page in points; vector, fonts embedded, text as text, tagged as the
    pages tell by ``tags.begin``. ``language`` is the one spoken now where none is given."""
    language = language or chosen()
    recorder = Recorder()
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setPageLayout(QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0)))
    writer.setResolution(_RESOLUTION)
    writer.setTitle(title)
    writer.setCreator("Pluckwright")
    if author and hasattr(writer, "setAuthor"):
        writer.setAuthor(author)
    writer.setDocumentXmpMetadata(QByteArray(_metadata(title, author, language)))
    painter = QPainter()
    if not painter.begin(writer):
        raise RuntimeError("Qt could not begin the PDF")
    record(recorder)
    try:
        for number, paint in enumerate(pages):
            if number:
                writer.newPage()
            painter.save()
            painter.scale(_RESOLUTION / 72, _RESOLUTION / 72)
            paint(painter)
            painter.restore()
    finally:
        record(None)
        painter.end()
    buffer.close()
    return finished(bytes(data.data()), language, bookmarks, recorder.tags)


def _metadata(title: str, author: str, language: str) -> bytes:
    """The file's description as XMP (ISO 16684-1): nothing in it changes with time."""
    words = f'<rdf:li xml:lang="x-default">{escape(title)}</rdf:li>'
    rows = f"<dc:title><rdf:Alt>{words}</rdf:Alt></dc:title>"
    if author:
        rows += f"<dc:creator><rdf:Seq><rdf:li>{escape(author)}</rdf:li></rdf:Seq></dc:creator>"
    rows += f"<dc:language><rdf:Bag><rdf:li>{language}</rdf:li></rdf:Bag></dc:language>"
    rows += "<xmp:CreatorTool>Pluckwright</xmp:CreatorTool>"
    return (
        '<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>'
        '<x:xmpmeta xmlns:x="adobe:ns:meta/">'
        '<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">'
        '<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" '
        f'xmlns:xmp="http://ns.adobe.com/xap/1.0/">{rows}</rdf:Description>'
        '</rdf:RDF></x:xmpmeta><?xpacket end="w"?>'
    ).encode()
