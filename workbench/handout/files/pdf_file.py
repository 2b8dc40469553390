"""The finishing of a PDF file: language, bookmarks, structure, names of subset fonts.

References: ISO 32000-1, 9.10.3 (text of glyphs), 12.3.3 (outline), 14.7 and 14.8
(structure and tags). Nothing in the file tells when it was made, so that the same pages
give the same bytes.
"""

from __future__ import annotations

import io
import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from pikepdf import (
    Array,
    Dictionary,
    Name,
    Object,
    ObjectStreamMode,
    OutlineItem,
    Pdf,
    PdfError,
    Stream,
    String,
)

from workbench.handout.files.tags import ARTIFACT, FAR, FIRST, Tag

_MARK = re.compile(
    rb"-(\d+) -" + str(FAR).encode() + rb" m\n-\1 -" + str(FAR + 1).encode() + rb" l\nS\n"
)


@dataclass(frozen=True)
class Bookmark:
    """An entry of the reader's table of contents; ``page`` counts from 0."""

    title: str
    page: int


def finished(
    data: bytes, language: str, bookmarks: Sequence[Bookmark], tags: Sequence[Tag]
) -> bytes:
    """The PDF with its language, its title shown by readers, bookmarks, structure, and
    text that can be searched. Raises ValueError where ``data`` is no PDF."""
    # The library takes plain text alone, none that knows what it was made of: hence str().
    try:
        pdf = Pdf.open(io.BytesIO(data))
    except PdfError as fault:
        raise ValueError(f"this is no PDF: {fault}") from fault
    with pdf:
        _mend_fonts(pdf)
        pdf.Root["/Lang"] = String(language)
        pdf.Root["/ViewerPreferences"] = Dictionary(DisplayDocTitle=True)
        kept = [mark for mark in bookmarks if mark.page < len(pdf.pages)]
        if kept:
            with pdf.open_outline() as outline:
                outline.root.extend(OutlineItem(str(mark.title), mark.page) for mark in kept)
            pdf.Root["/PageMode"] = Name.UseNone
        if tags:
            _add_structure(pdf, tags)
        for date in ("/CreationDate", "/ModDate"):
            if date in pdf.docinfo:
                del pdf.docinfo[date]
        if "/ID" in pdf.trailer:  # of the moment; the new one is of the content
            del pdf.trailer["/ID"]
        out = io.BytesIO()
        pdf.save(out, deterministic_id=True, object_stream_mode=ObjectStreamMode.disable)
    return out.getvalue()


def _mend_fonts(pdf: Pdf) -> None:
    """Let glyphs mean their text, and a font of which only some glyphs are embedded say so in
    its name everywhere (9.6.4); Qt says it in the descriptor alone."""
    subsets = {}
    for found in pdf.objects:
        if isinstance(found, Stream):
            if "/Type" not in found and "/Subtype" not in found:
                content = found.read_bytes()
                if b"begincmap" in content:
                    found.write(with_spaces(content))
        elif isinstance(found, Dictionary) and "/FontName" in found:
            tag, plus, name = str(found.FontName).partition("+")
            if plus and len(tag) == len("/ABCDEF"):
                subsets[f"/{name}"] = found.FontName
    for found in pdf.objects:
        if isinstance(found, Dictionary) and str(found.get("/BaseFont", "")) in subsets:
            found["/BaseFont"] = subsets[str(found.BaseFont)]


def with_spaces(table: bytes) -> bytes:
    """Let the space's glyph mean a space to readers of the text.

    Qt writes it down as a tabulator (U+0009), so that searching for two words
    fails. Only the rows from glyphs to text change.
    """

    def mended(row: re.Match[bytes]) -> bytes:
        return row.group().replace(b"<0009>", b"<0020>")

    return re.sub(rb"(?<=> )\[(?:<[0-9A-F]{4}> ?)+\](?=\s)", mended, table)


def _add_structure(pdf: Pdf, tags: Sequence[Tag]) -> None:
    """The structure tree over the tagged content of all pages."""
    root = pdf.make_indirect(Dictionary(Type=Name.StructTreeRoot, ParentTreeNextKey=len(pdf.pages)))

    def element(role: str, parent: Object, **entries: Any) -> Object:
        return pdf.make_indirect(
            Dictionary(Type=Name.StructElem, S=Name(f"/{role}"), P=parent, **entries)
        )

    def below(role: str, parent: Object, **entries: Any) -> Object:
        made = element(role, parent, **entries)
        parent.K.append(made)
        return made

    root["/K"] = document = element("Document", root, K=Array())
    owners_of_pages = Array()
    table: tuple[int, Object] | None = None  # its mark, the element
    row: tuple[int, Object] | None = None
    for number, page in enumerate(pdf.pages):
        owners = Array()
        for mcid, tag in enumerate(_marked(page.Contents, tags)):
            parent = document
            if tag.within is None:
                table = row = None
            else:
                if table is None or table[0] != tag.within[0]:
                    table, row = (tag.within[0], below("Table", document, K=Array())), None
                if row is None or row[0] != tag.within[1]:
                    row = (tag.within[1], below("TR", table[1], K=Array()))
                parent = row[1]
            made = below(tag.role, parent, Pg=page.obj, K=mcid)
            if tag.alt:
                made["/Alt"] = String(str(tag.alt))
            if tag.role == "TH":
                made["/A"] = Dictionary(O=Name.Table, Scope=Name.Column)
            owners.append(made)
        page.obj["/StructParents"] = number
        page.obj["/Tabs"] = Name.S
        owners_of_pages.append(number)
        owners_of_pages.append(owners)
    root["/ParentTree"] = pdf.make_indirect(Dictionary(Nums=owners_of_pages))
    pdf.Root["/MarkInfo"] = Dictionary(Marked=True)
    pdf.Root["/StructTreeRoot"] = root


def _marked(content: Object, tags: Sequence[Tag]) -> list[Tag]:
    """Turn the painted marks of a page into marked content; the tags in their order."""
    marked: list[Tag] = []

    def opened(found: re.Match[bytes]) -> bytes:
        tag = tags[int(found.group(1)) - FIRST]
        if tag.role == ARTIFACT:
            return b"EMC\n/Artifact BMC\n"
        marked.append(tag)
        return f"EMC\n/{tag.role} << /MCID {len(marked) - 1} >> BDC\n".encode()

    drawn = _MARK.sub(opened, content.read_bytes()).rstrip()
    content.write(b"/Artifact BMC\n" + drawn + b"\nEMC\n")
    return marked
