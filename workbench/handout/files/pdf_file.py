"""The finishing of a PDF file: language, bookmarks, structure, names of subset fonts.

References: ISO 32000-1, 7.5 (file structure), 9.10.3 (text of glyphs), 12.3.3
(outline), 14.7 and 14.8 (structure and tags). The file is written anew in whole, so
that it holds nothing twice and the same pages give the same bytes.
"""

from __future__ import annotations

import hashlib
import re
import zlib
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from workbench.handout.files.tags import ARTIFACT, FAR, FIRST, Tag

_STREAM = re.compile(rb"stream\r?\n")
_MARK = re.compile(
    rb"-(\d+) -" + str(FAR).encode() + rb" m\n-\1 -" + str(FAR + 1).encode() + rb" l\nS\n"
)


@dataclass(frozen=True)
class Bookmark:
    """An entry of the reader's table of contents; ``page`` counts from 0."""

    title: str
    page: int


class PdfFile:
    """The objects of a PDF with a plain cross-reference table, to be changed and
    written again. Raises ValueError for any other file."""

    def __init__(self, data: bytes) -> None:
        found = re.search(rb"startxref\s+(\d+)\s+%%EOF\s*$", data)
        trailer = re.search(rb"trailer\s*<<(.*?)>>\s*startxref", data, re.DOTALL)
        if not found or not trailer:
            raise ValueError("this is no PDF with a plain cross-reference table")
        table = data[int(found.group(1)) :]
        offsets = [int(m) for m in re.findall(rb"(\d{10}) \d{5} n", table)]
        places = [*sorted(offsets), int(found.group(1))]
        self.objects: dict[int, bytes] = {}
        for start, end in pairwise(places):
            head = re.match(rb"(\d+) 0 obj\s*", data[start:end])
            if head is None:
                raise ValueError("an object is not where the table says")
            body = data[start + head.end() : end].rstrip()
            self.objects[int(head.group(1))] = body.removesuffix(b"endobj").rstrip()
        self.root = self._number(trailer.group(1), b"Root")
        self.info = self._number(trailer.group(1), b"Info")
        self.pages = self._kids(self.root_of(b"Pages"))

    @staticmethod
    def _number(body: bytes, key: bytes) -> int:
        found = re.search(rb"/" + key + rb"\s+(\d+)\s+0\s+R", body)
        if found is None:
            raise ValueError(f"the PDF lacks {key.decode()}")
        return int(found.group(1))

    def root_of(self, key: bytes) -> int:
        """The object that an entry of the catalogue leads to."""
        return self._number(self.objects[self.root], key)

    def _kids(self, tree: int) -> list[int]:
        kids = re.search(rb"/Kids\s*\[(.*?)\]", self.objects[tree], re.DOTALL)
        return [int(n) for n in re.findall(rb"(\d+)\s+0\s+R", kids.group(1))] if kids else []

    def add(self, body: bytes = b"") -> int:
        """A new object; its number."""
        number = max(self.objects) + 1
        self.objects[number] = body
        return number

    def enter(self, number: int, entries: bytes) -> None:
        """Put entries at the end of a dictionary."""
        body = self.objects[number].rstrip()
        if not body.endswith(b">>"):
            raise ValueError(f"object {number} is no dictionary")
        self.objects[number] = body[:-2].rstrip() + b"\n" + entries + b"\n>>"

    def stream(self, number: int) -> bytes:
        """The content of a compressed stream."""
        body = self.objects[number]
        start = _STREAM.search(body)
        if start is None:
            raise ValueError(f"object {number} is no stream")
        return zlib.decompress(body[start.end() : body.rindex(b"endstream")])

    def set_stream(self, number: int, content: bytes) -> None:
        """Another content for a stream, compressed."""
        packed = zlib.compress(content, 6)
        head = f"<<\n/Length {len(packed)}\n/Filter /FlateDecode\n>>\nstream\n".encode()
        self.objects[number] = head + packed + b"\nendstream"

    def written(self) -> bytes:
        """The whole file."""
        out = bytearray(b"%PDF-1.7\n%\xe2\xe3\xcf\xd3\n")
        offsets: dict[int, int] = {}
        for number in sorted(self.objects):
            offsets[number] = len(out)
            out += f"{number} 0 obj\n".encode() + self.objects[number] + b"\nendobj\n"
        size = max(self.objects) + 1
        start = len(out)
        out += f"xref\n0 {size}\n0000000000 65535 f \n".encode()
        for number in range(1, size):
            known = number in offsets
            row = f"{offsets[number]:010d} 00000 n \n" if known else "0000000000 65535 f \n"
            out += row.encode()
        mark = hashlib.md5(_undated(bytes(out)), usedforsecurity=False).hexdigest()
        out += f"trailer\n<<\n/Size {size}\n/Root {self.root} 0 R\n/Info {self.info} 0 R\n".encode()
        out += f"/ID [<{mark}> <{mark}>]\n>>\nstartxref\n{start}\n%%EOF\n".encode()
        return bytes(out)


def _undated(data: bytes) -> bytes:
    return re.sub(rb"\(D:\d{14}[^)]*\)", b"", data)


def finished(
    data: bytes, language: str, bookmarks: Sequence[Bookmark], tags: Sequence[Tag]
) -> bytes:
    """The PDF with its language, its title shown by readers, bookmarks, structure, and
    text that can be searched."""
    file = PdfFile(data)
    for number, body in file.objects.items():
        if b"stream" not in body[:80] or b"begincmap" in body:
            file.objects[number] = with_spaces(body)
    _subset_names(file)
    outline = _outline(file, bookmarks)
    entries = f"/Lang ({language})\n/ViewerPreferences << /DisplayDocTitle true >>"
    if outline:
        entries += f"\n/Outlines {outline} 0 R\n/PageMode /UseNone"
    if tags:
        structure = _structure(file, tags)
        entries += f"\n/MarkInfo << /Marked true >>\n/StructTreeRoot {structure} 0 R"
    file.enter(file.root, entries.encode("ascii"))
    return file.written()


def with_spaces(pdf: bytes) -> bytes:
    """Let the space's glyph mean a space to readers of the text.

    Qt writes it down as a tabulator (U+0009), so that searching for two words
    fails. Only the tables from glyphs to text change (ISO 32000-1, 9.10.3), in
    place and with their length kept.
    """

    def mended(table: re.Match[bytes]) -> bytes:
        return table.group().replace(b"<0009>", b"<0020>")

    return re.sub(rb"(?<=> )\[(?:<[0-9A-F]{4}> ?)+\](?=\s)", mended, pdf)


def _subset_names(file: PdfFile) -> None:
    """A font of which only some glyphs are embedded says so in its name everywhere
    (ISO 32000-1, 9.6.4); Qt says it in the descriptor alone."""
    full = {}
    for body in file.objects.values():
        found = re.search(rb"/FontName /([A-Z]{6}\+(\S+))", body)
        if found:
            full[found.group(2)] = found.group(1)
    for number, body in file.objects.items():
        found = re.search(rb"/BaseFont /(\S+)", body)
        if found and found.group(1) in full:
            name = b"/BaseFont /" + full[found.group(1)]
            file.objects[number] = body.replace(found.group(0), name)


def _outline(file: PdfFile, bookmarks: Sequence[Bookmark]) -> int:
    """The outline's object; 0 where there is nothing to mark."""
    kept = [b for b in bookmarks if b.page < len(file.pages)]
    if not kept:
        return 0
    top = file.add()
    first = top + 1
    last = top + len(kept)
    file.objects[top] = (
        f"<< /Type /Outlines /First {first} 0 R /Last {last} 0 R /Count {len(kept)} >>".encode()
    )
    for place, mark in enumerate(kept, first):
        item = f"<< /Title {_text(mark.title)} /Parent {top} 0 R"
        item += f" /Dest [{file.pages[mark.page]} 0 R /Fit]"
        if place > first:
            item += f" /Prev {place - 1} 0 R"
        if place < last:
            item += f" /Next {place + 1} 0 R"
        file.add(f"{item} >>".encode("ascii"))
    return top


def _text(words: str) -> str:
    return f"<feff{words.encode('utf-16-be').hex()}>"


def _structure(file: PdfFile, tags: Sequence[Tag]) -> int:
    """The structure tree over the tagged content of all pages; its object's number."""
    root = file.add()
    document = file.add()
    kids: list[int] = []
    table: tuple[int, int] | None = None  # (object, its mark)
    row: tuple[int, int] | None = None
    children: dict[int, list[int]] = {}
    parents: list[str] = []
    for number, page in enumerate(file.pages):
        content = PdfFile._number(file.objects[page], b"Contents")
        drawn = file.stream(content)
        marked: list[Tag] = []

        def opened(found: re.Match[bytes], marked: list[Tag] = marked) -> bytes:
            tag = tags[int(found.group(1)) - FIRST]
            if tag.role == ARTIFACT:
                return b"EMC\n/Artifact BMC\n"
            marked.append(tag)
            return f"EMC\n/{tag.role} << /MCID {len(marked) - 1} >> BDC\n".encode()

        drawn = b"/Artifact BMC\n" + _MARK.sub(opened, drawn).rstrip() + b"\nEMC\n"
        file.set_stream(content, drawn)
        file.enter(page, f"/StructParents {number}\n/Tabs /S".encode())
        owners = []
        for mcid, tag in enumerate(marked):
            parent = document
            if tag.within is None:
                table = row = None
            else:
                if table is None or table[1] != tag.within[0]:
                    table, row = (file.add(), tag.within[0]), None
                    file.objects[table[0]] = b"Table"
                    kids.append(table[0])
                if row is None or row[1] != tag.within[1]:
                    row = (file.add(), tag.within[1])
                    file.objects[row[0]] = f"TR {table[0]}".encode()
                    children.setdefault(table[0], []).append(row[0])
                parent = row[0]
            entry = f"<< /Type /StructElem /S /{tag.role} /P {parent} 0 R /Pg {page} 0 R /K {mcid}"
            if tag.alt:
                entry += f" /Alt {_text(tag.alt)}"
            if tag.role == "TH":
                entry += " /A << /O /Table /Scope /Column >>"
            owner = file.add(f"{entry} >>".encode("ascii"))
            (kids if parent == document else children.setdefault(parent, [])).append(owner)
            owners.append(owner)
        parents.append(f"{number} [{_references(owners)}]")
    for group, members in children.items():
        kind, _, above = file.objects[group].decode().partition(" ")
        entry = f"<< /Type /StructElem /S /{kind} /P {above or document} 0 R"
        file.objects[group] = f"{entry} /K [{_references(members)}] >>".encode()
    tree = file.add(f"<< /Nums [{' '.join(parents)}] >>".encode())
    file.objects[document] = (
        f"<< /Type /StructElem /S /Document /P {root} 0 R /K [{_references(kids)}] >>".encode()
    )
    file.objects[root] = (
        f"<< /Type /StructTreeRoot /K {document} 0 R /ParentTree {tree} 0 R"
        f" /ParentTreeNextKey {len(file.pages)} >>".encode()
    )
    return root


def _references(numbers: Sequence[int]) -> str:
    return " ".join(f"{n} 0 R" for n in numbers)
