"""Grip sheet, plan alone, book, booklet order and pictures, looked at from outside."""

from __future__ import annotations

import io
import re

import pypdf
import pytest
from lxml import etree
from PySide6.QtGui import QImage

from workbench.commands.prepare import fingering_of
from workbench.handout.files.passage import PassageOptions, make_passage
from workbench.handout.options import HandoutOptions
from workbench.handout.products import Prepared, Request, laid_out, make_product
from workbench.handout.setting.paged import pdf_of
from workbench.handout.sheets.booklet import booklet_order
from workbench.music.errors import BadInput
from workbench.teaching.lessons.demo import demo_lessons


@pytest.fixture(scope="module")
def shelf():
    return [Prepared(lesson, fingering_of(lesson)) for lesson in demo_lessons()[:2]]


def read(document):
    return pypdf.PdfReader(io.BytesIO(pdf_of(document)))


def words(page):
    return " ".join(page.extract_text().split())


@pytest.mark.parametrize("count", range(1, 18))
def test_a_folded_booklet_reads_in_order(count):
    """Sheets laid in one another and folded: leaf by leaf, front then back."""
    sides = booklet_order(count)
    fronts, backs = sides[0::2], sides[1::2]
    read_from_the_front = [p for f, b in zip(fronts, backs, strict=True) for p in (f[1], b[0])]
    rest = [p for f, b in reversed(list(zip(fronts, backs, strict=True))) for p in (b[1], f[0])]
    pages = [p for p in read_from_the_front + rest if p is not None]
    assert pages == list(range(count))
    assert len(sides) % 2 == 0 and len(sides) * 2 - count < 4


@pytest.mark.parametrize("options", [{}, {"paper": "letter", "left_handed": True}, {"large": True}])
def test_a_grip_sheet_is_one_page_with_every_grip_once(shelf, options):
    for order in ("appearance", "difficulty"):
        request = Request("grips", HandoutOptions(**options), order=order)
        pages = read(laid_out(request, shelf[:1])).pages
        assert len(pages) == 1
        said = words(pages[0])
        assert "Take care." in said and re.search(r"bars? \d", said)


def test_a_grip_sheet_without_grips_is_refused():
    lesson = demo_lessons()[4]
    with pytest.raises(BadInput, match="no grip of two"):
        laid_out(Request("grips"), [Prepared(lesson, fingering_of(lesson))])


def test_the_plan_alone_has_its_cautions(shelf):
    document = laid_out(Request("plan", HandoutOptions(studio="Linde")), shelf[:1])
    said = words(read(document).pages[0])
    assert "Practice plan" in said and "Take care." in said and "Linde" in said


def test_a_book_counts_its_pages_and_leads_to_them(shelf):
    document = laid_out(Request("book", title="Tuesday class"), shelf)
    reader = read(document)
    contents = words(reader.pages[1])
    for one, start in zip(shelf, document.starts(), strict=True):
        assert one.lesson.title in words(reader.pages[start])
        assert re.search(rf"{re.escape(one.lesson.title)}[ .]*{start + 1}\b", contents)
    marks = {m.title: reader.get_destination_page_number(m) for m in reader.outline}
    assert marks["Contents"] == 1
    assert [marks[one.lesson.title] for one in shelf] == list(document.starts())
    last = f"{len(reader.pages)}{shelf[-1].lesson.title}"  # the foot of the last page
    assert words(reader.pages[-1]).endswith(last)


def test_a_booklet_lies_crosswise_and_keeps_its_bookmarks(shelf):
    plain = laid_out(Request("page"), shelf[:1])
    folded = laid_out(Request("page", booklet=True), shelf[:1])
    reader = read(folded)
    assert len(reader.pages) == len(booklet_order(plain.count))
    box = reader.pages[0].mediabox
    assert round(box.width) == 842 and round(box.height) == 595  # A4, ISO 216, in points
    assert shelf[0].lesson.title in words(reader.pages[0])
    assert reader.outline


def test_the_same_book_gives_the_same_bytes(shelf):
    one, other = (pdf_of(laid_out(Request("book"), shelf)) for _ in range(2))
    assert one == other


def test_a_picture_in_svg_needs_no_fonts(shelf, tmp_path):
    one = shelf[0]
    size = make_passage(one.lesson, one.fingering, tmp_path / "a.svg", PassageOptions(1, 2))
    root = etree.parse(tmp_path / "a.svg").getroot()
    tags = {element.tag.split("}")[1] for element in root.iter()}
    assert "text" not in tags and {"path", "title"} <= tags
    ids = [element.get("id") for element in root.iter() if element.get("id")]
    assert len(ids) == len(set(ids))
    assert root.get("width") == f"{size.width:.2f}mm" and size.width <= 170.1
    said = "".join(e.get("aria-label", "") for e in root.iter())
    assert re.search("[pima]", said) and re.search(r"\d", said)


def test_a_picture_in_png(shelf, tmp_path):
    one = shelf[0]
    for name, options in (
        ("a.png", PassageOptions(1, 2, dpi=96)),
        ("b.png", PassageOptions(1, 2, dpi=192, transparent=True)),
        ("c.png", PassageOptions(1, 2, dpi=96)),
    ):
        make_passage(one.lesson, one.fingering, tmp_path / name, options)
    small, large = QImage(str(tmp_path / "a.png")), QImage(str(tmp_path / "b.png"))
    assert abs(large.width() - 2 * small.width()) <= 2
    assert small.pixelColor(0, 0).alpha() == 255 and large.pixelColor(0, 0).alpha() == 0
    assert (tmp_path / "a.png").read_bytes() == (tmp_path / "c.png").read_bytes()


def test_what_cannot_be_made_is_told(shelf, tmp_path):
    one = shelf[0]
    with pytest.raises(BadInput, match="in order"):
        PassageOptions(3, 2)
    with pytest.raises(BadInput, match=r"\.svg or \.png"):
        make_passage(one.lesson, one.fingering, tmp_path / "a.gif", PassageOptions(0, 1))
    with pytest.raises(BadInput, match="needs a lesson"):
        make_product(Request("book"), [], tmp_path / "a.pdf")
    with pytest.raises(BadInput, match="cannot be printed"):
        Request("poster")
    assert list(tmp_path.iterdir()) == []
