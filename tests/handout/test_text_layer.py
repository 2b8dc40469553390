"""The words of a page can be searched: read back with a PDF library."""

from __future__ import annotations

import io

import pypdf

from workbench.engraving.app import ensure_gui
from workbench.handout.files.pdf import pdf_bytes
from workbench.handout.files.pdf_file import with_spaces
from workbench.handout.options import HandoutOptions, page_size
from workbench.handout.setting.typeset import Style, draw


def test_words_are_parted_by_spaces():
    ensure_gui()
    words = "Thumb and finger close like a pinch"

    def paint(painter):
        draw(painter, 100, 100, words, Style(10))

    pdf = pdf_bytes([paint], page_size(HandoutOptions()), title="Words")
    assert words in pypdf.PdfReader(io.BytesIO(pdf)).pages[0].extract_text()


def test_only_tables_of_text_are_mended():
    table = b"<0001> <0002> [<0041> <0009> ]\n"
    other = b"stream <0009> [ <0009> x ] endstream"
    assert with_spaces(other + table) == other + table.replace(b"<0009>", b"<0020>")
