"""The PDF for those who hear it or search it: tags, alternative words, fonts, bytes.

Outside references: ISO 32000-1, 14.6 to 14.8 (marked content, structure, tags), 9.6.4
(names of subset fonts); pypdf reads the file.
"""

from __future__ import annotations

import io
import re
from dataclasses import replace

import pytest
from pypdf import PdfReader

from tests.engraving.small_pieces import fingered
from tests.handout.lesson_made import lesson
from workbench.handout.files.pdf_file import finished
from workbench.handout.sheets.page import Extras, Handout, HandoutOptions
from workbench.instrument.table import instrument
from workbench.language.speech import choose


def pdf_of(**options) -> bytes:
    made = lesson(techniques=("pickup",))
    extras = Extras(history=(("2026-03-12", "Version 'first'"),))
    return Handout(
        made, fingered(made.piece, instrument("ukulele")), HandoutOptions(**options), extras
    ).pdf()


@pytest.fixture(scope="module")
def teacher() -> PdfReader:
    return PdfReader(io.BytesIO(pdf_of(audience="teacher")), strict=True)


def elements(node, above=()):
    """(path of roles, element) of the structure tree, in reading order."""
    node = node.get_object()
    role = str(node.get("/S", ""))[1:]
    path = (*above, role) if role else above
    if role:
        yield path, node
    kids = node.get("/K", [])
    for kid in kids if isinstance(kids, list) else [kids]:
        if not isinstance(kid, int):
            yield from elements(kid, path)


def test_every_page_is_tagged_from_its_first_to_its_last_sign(teacher) -> None:
    for page in teacher.pages:
        data = page.get_contents().get_data()
        open_tags: list[bytes] = []
        for line in data.split(b"\n"):
            if line.endswith((b" BDC", b" BMC")):
                open_tags.append(line.split()[0])
            elif line == b"EMC":
                open_tags.pop()
            elif line.endswith((b" Tj", b" re")) or line in (b"f", b"S", b"B", b"f*"):
                assert open_tags, "something is painted that no tag covers"
            assert open_tags[1:] in ([], [b"/Span"]), "tags do not stand in one another"
        assert not open_tags


def test_the_structure_tells_headings_tables_and_figures(teacher) -> None:
    root = teacher.trailer["/Root"]
    assert root["/MarkInfo"]["/Marked"]
    rows = list(elements(root["/StructTreeRoot"]))
    roles = [path[-1] for path, _ in rows]
    assert roles[0] == "Document" and roles[1] == "H1"
    assert roles.count("H1") == 1 and roles.count("H2") >= 4
    for path, node in rows:
        if path[-1] in ("TD", "TH"):
            assert path[:3] == ("Document", "Table", "TR")
        if path[-1] == "Figure":
            assert node["/Alt"], "a figure without words"
        if path[-1] == "TH":
            assert node["/A"]["/Scope"]
    words = [str(node["/Alt"]) for path, node in rows if path[-1] == "Figure"]
    assert any("in notes and tablature" in w for w in words)
    assert any("fret 1, finger 1" in w for w in words)


def test_tags_and_marked_content_agree(teacher) -> None:
    """14.7.4.4: the parent tree gives for each mark of a page the element that owns it."""
    tree = teacher.trailer["/Root"]["/StructTreeRoot"]["/ParentTree"]["/Nums"]
    owners = {tree[k]: tree[k + 1] for k in range(0, len(tree), 2)}
    for page in teacher.pages:
        data = page.get_contents().get_data()
        marks = re.findall(rb"/(\w+) << /MCID (\d+) >> BDC", data)
        mine = owners[page["/StructParents"]]
        assert [int(n) for _, n in marks] == list(range(len(mine)))
        for (role, number), owner in zip(marks, mine, strict=True):
            element = owner.get_object()
            assert element["/S"] == f"/{role.decode()}"
            assert element["/K"] == int(number)
            assert element["/Pg"].get_object() == page.get_object()


def test_fonts_are_embedded_and_named_as_subsets(teacher) -> None:
    seen = set()
    for page in teacher.pages:
        for font in page["/Resources"]["/Font"].values():
            font = font.get_object()
            (inner,) = (f.get_object() for f in font["/DescendantFonts"])
            described = inner["/FontDescriptor"].get_object()
            assert re.fullmatch(r"/[A-Z]{6}\+Noto.+", font["/BaseFont"])
            assert font["/BaseFont"] == inner["/BaseFont"] == described["/FontName"]
            data = described["/FontFile2"].get_object().get_data()
            assert len(data) < 60_000, "the font is whole, not a subset"
            seen.add(font["/BaseFont"])
    assert len(seen) >= 3


def test_the_same_pages_are_the_same_bytes() -> None:
    one, two = pdf_of(), pdf_of()
    assert one == two
    assert not re.search(rb"\(D:\d{14}", one), "it tells when it was made"


def test_the_language_is_the_one_spoken() -> None:
    choose("de")
    try:
        root = PdfReader(io.BytesIO(pdf_of())).trailer["/Root"]
    finally:
        choose("en")
    assert root["/Lang"] == "de"
    assert b"<rdf:li>de</rdf:li>" in root["/Metadata"].get_data()


def test_a_file_of_another_make_is_not_touched() -> None:
    with pytest.raises(ValueError):
        finished(b"%PDF-1.7\nnothing in it", "en", (), ())


def test_text_read_back_is_the_lesson(teacher) -> None:
    """Every word of every note, the script and the history stand in the file as text."""
    whole = re.sub(r"\s+", " ", "\n".join(p.extract_text() for p in teacher.pages))
    made = lesson()
    for note in made.notes:
        assert note.text.replace("*", "") in whole
    for words in (
        made.title,
        made.student,
        "2026-03-12 Version 'first'",
        "Legato audit",
        "Script",
        "pickup",
        "Effort and cut notes along the bars",
    ):
        assert words in whole, words
    figures = [
        str(n["/Alt"])
        for p, n in elements(teacher.trailer["/Root"]["/StructTreeRoot"])
        if p[-1] == "Figure"
    ]
    for bar in made.piece.bars:
        for chord in bar.chords:
            assert any(chord.text.replace("b", "♭") in words for words in figures)


def test_only_the_teacher_sees_what_is_the_teachers() -> None:
    whole = "\n".join(p.extract_text() for p in PdfReader(io.BytesIO(pdf_of())).pages)
    for words in ("Rejected", "Legato audit", "Lesson history", "Script", "Lesson record"):
        assert words not in whole


def test_grade_and_time_are_estimated_where_the_teacher_gave_none() -> None:
    made = replace(lesson(), grade=None, grade_level="", practice_minutes=None)
    handout = Handout(made, fingered(made.piece, instrument("ukulele")), HandoutOptions())
    whole = PdfReader(io.BytesIO(handout.pdf())).pages[0].extract_text().replace("\n", " ")
    assert re.search(r"Grade \d, (early|middle|late) \(.+\), estimated", whole)
    assert re.search(r"about (\d+ h )?\d+ min", whole) or re.search(r"about \d+ h", whole)
