"""A score file from disk as safe bytes, and which of the formats it is.

Everything is checked before a parser sees it: size, archive bombs, XML
entities. Each fault is one BadInput sentence.
"""

from __future__ import annotations

import io
import re
import zipfile
from dataclasses import dataclass
from pathlib import Path
from typing import Literal
from xml.etree import ElementTree
from xml.parsers import expat

from workbench.music import suffixes
from workbench.music.errors import BadInput
from workbench.music.suffixes import formats, has_suffix

MOST_BYTES = 64 * 2**20
MOST_UNPACKED = 128 * 2**20
DEEPEST = 100  # elements within elements; a score has about twelve
MOST_RATIO = 250  # scores pack about 20:1 to 60:1 (measured on MusicXML files)


@dataclass(frozen=True)
class Source:
    """Bytes of a score; of a MusicXML score its elements as well."""

    kind: Literal["musicxml", "midi", "abc"]
    data: bytes
    name: str
    root: ElementTree.Element | None = None


def load(path: str | Path) -> Source:
    """Read and check the file at ``path``. The content decides the format, not the ending.

    Raises BadInput for anything that is no readable, safe score file.
    """
    path = Path(path)
    data = _bytes(path)
    name = path.name
    if not data.strip(b"\x00\t\r\n "):
        raise BadInput("{name} is empty; save or download the score again.", name=name)
    if data.startswith(b"MThd"):
        return Source("midi", data, name)
    if data.startswith(b"PK"):
        return _musicxml(_unpack(data, name), name)
    if has_suffix(path, (suffixes.PACKED,)):
        raise BadInput(
            "{name} is no packed MusicXML file (.mxl); export the score again.", name=name
        )
    if has_suffix(path, suffixes.MIDI):
        raise BadInput("{name} is no MIDI file: its header is missing; export it again.", name=name)
    if (
        data.startswith((b"\xff\xfe", b"\xfe\xff"))
        or data.lstrip(b"\xef\xbb\xbf \t\r\n")[:1] == b"<"
    ):
        return _musicxml(data, name)
    if b"\x00" not in data and re.search(rb"(?m)^\s*X:\s*\d|^K:", data):
        return Source("abc", data, name)
    raise BadInput(
        "{name} is no score that can be read; give {formats}.", name=name, formats=formats()
    )


def _bytes(path: Path) -> bytes:
    if path.is_dir():
        raise BadInput(
            "{name} is a folder; give a score file: {formats}.",
            name=path.name,
            formats=formats(),
        )
    try:
        if path.stat().st_size > MOST_BYTES:
            raise BadInput(
                "{name} is larger than {most} MB; that is no score, "
                "or it has to be split into its movements.",
                name=path.name,
                most=MOST_BYTES // 2**20,
            )
        if not path.is_file():
            raise BadInput(
                "{name} is no ordinary file; give a score file: {formats}.",
                name=path.name,
                formats=formats(),
            )
        return path.read_bytes()
    except BadInput:
        raise
    except FileNotFoundError:
        raise BadInput("{path} does not exist; check the name and the folder.", path=path) from None
    except PermissionError:
        raise BadInput(
            "{name} may not be read; ask for the right to read it.", name=path.name
        ) from None
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        raise BadInput("{name} cannot be read: {reason}.", name=path.name, reason=reason) from None


def _unpack(data: bytes, name: str) -> bytes:
    """The root score of a packed MusicXML file."""
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            unpacked = sum(entry.file_size for entry in archive.infolist())
            if unpacked > MOST_UNPACKED or (unpacked > 2**20 and unpacked > MOST_RATIO * len(data)):
                raise BadInput(
                    "{name} unpacks to {size} MB, far more than a score needs; it is not "
                    "opened. Export the score again.",
                    name=name,
                    size=unpacked // 2**20,
                )
            return _entry(archive, _root_name(archive, name), name)
    except (zipfile.BadZipFile, EOFError, NotImplementedError, RuntimeError, OSError):
        raise BadInput(
            "{name} is damaged or cut off: the packed MusicXML cannot be unpacked; "
            "download or export it again.",
            name=name,
        ) from None
    except ValueError as error:
        if isinstance(error, BadInput):
            raise
        raise BadInput(
            "{name} is damaged: it cannot be unpacked; export it again.", name=name
        ) from None
    except Exception as error:
        # zlib and lzma errors share no public base
        if type(error).__module__ in ("zlib", "lzma", "_lzma"):
            raise BadInput(
                "{name} is damaged: it cannot be unpacked; download or export it again.",
                name=name,
            ) from None
        raise


def _root_name(archive: zipfile.ZipFile, name: str) -> str:
    names = archive.namelist()
    if "META-INF/container.xml" in names:
        container = elements(_entry(archive, "META-INF/container.xml", name), name)
        for element in container.iter():
            path = element.get("full-path", "")
            if element.tag.endswith("rootfile") and path in names:
                return path
    for entry in names:
        if has_suffix(entry, suffixes.UNPACKED) and not entry.startswith("META-INF"):
            return entry
    raise BadInput(
        "{name} is an archive without a score in it; give {formats}.",
        name=name,
        formats=formats(),
    )


def _entry(archive: zipfile.ZipFile, entry: str, name: str) -> bytes:
    # what the archive says of sizes may be false: count while reading
    with archive.open(entry) as stream:
        data = stream.read(MOST_UNPACKED + 1)
    if len(data) > MOST_UNPACKED:
        raise BadInput(
            "{name} unpacks to far more than a score needs; it is not opened.", name=name
        )
    return data


def elements(data: bytes, name: str) -> ElementTree.Element:
    """The elements of an XML document, comments left out. BadInput where it declares entities,
    is nested without end or is not well formed."""

    def refuse(*_: object) -> int:
        raise BadInput(
            "{name} declares XML entities, which a score does not need and which can do "
            "harm; it is not opened. Export the score again.",
            name=name,
        )

    depth = 0

    builder = ElementTree.TreeBuilder()

    def deeper(tag: str, attributes: dict[str, str]) -> None:
        nonlocal depth
        depth += 1
        if depth > DEEPEST:
            raise BadInput(
                "{name} is nested too deeply to be a score; export it again.",
                name=name,
            )

        builder.start(_named(tag), {_named(k): v for k, v in attributes.items()})

    def back(tag: str) -> None:
        nonlocal depth
        depth -= 1
        builder.end(_named(tag))

    parser = expat.ParserCreate(namespace_separator="}")
    parser.buffer_text = True
    parser.CharacterDataHandler = builder.data
    parser.StartElementHandler = deeper
    parser.EndElementHandler = back
    parser.EntityDeclHandler = refuse
    parser.ExternalEntityRefHandler = refuse
    parser.SetParamEntityParsing(expat.XML_PARAM_ENTITY_PARSING_NEVER)
    try:
        parser.Parse(data, True)
    except expat.ExpatError as error:
        raise BadInput(
            "{name} is damaged: the XML breaks off or is wrong in line {line}; "
            "export the score again.",
            name=name,
            line=error.lineno,
        ) from None
    except (ValueError, LookupError) as error:
        if isinstance(error, BadInput):
            raise
        raise BadInput(
            "{name} has a text encoding that is not known; save it as UTF-8.", name=name
        ) from None
    return builder.close()


def _named(word: str) -> str:
    """A name with its namespace, as ElementTree writes it."""
    return "{" + word if "}" in word else word


def _musicxml(data: bytes, name: str) -> Source:
    """MusicXML as a part-wise document; BadInput for other XML and for HTML."""
    head = data[:2000].lower().replace(b"\x00", b"")
    if b"<html" in head or b"<!doctype html" in head:
        raise BadInput(
            "{name} is a web page, not a score; use the download link of the page itself.",
            name=name,
        )
    root = elements(data, name)
    tag = root.tag.rpartition("}")[2]
    if tag == "score-timewise":
        root = _partwise(root)
        tag = root.tag
    if tag != "score-partwise":
        raise BadInput(
            "{name} is XML but no score (it begins with '{tag}'); give {formats}.",
            name=name,
            tag=tag,
            formats=formats(),
        )
    if root.tag != tag:
        for element in root.iter():
            if isinstance(element.tag, str):
                element.tag = element.tag.rpartition("}")[2]
    document = bytes(ElementTree.tostring(root, encoding="utf-8", xml_declaration=True))
    return Source("musicxml", document, name, root)


def _partwise(root: ElementTree.Element) -> ElementTree.Element:
    """A bar-by-bar document turned into the usual part-by-part one."""
    parts: dict[str, ElementTree.Element] = {}
    out = ElementTree.Element("score-partwise", root.attrib)
    for child in root:
        if child.tag != "measure":
            out.append(child)
            continue
        for part in child:
            name = part.get("id", "P1")
            row = parts.setdefault(name, ElementTree.Element("part", {"id": name}))
            ElementTree.SubElement(row, "measure", child.attrib).extend(list(part))
    out.extend(parts.values())
    return out
