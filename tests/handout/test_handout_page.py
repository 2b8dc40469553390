"""The PDF read back with pypdf and Qt: text, fonts, paper, notes, faults.

Outside references: ISO 216 (A4 is 210 by 297 mm), ISO 32000 for what a PDF's
catalogue and fonts hold.
"""

from __future__ import annotations

import errno
import os
import re
from dataclasses import replace
from fractions import Fraction
from io import BytesIO
from itertools import pairwise

import pytest
from pypdf import PdfReader

from tests.engraving.small_pieces import bar, fingered, piece, walk
from tests.handout.lesson_made import lesson
from workbench.handout.parts.grips import grips_of
from workbench.handout.setting.blocks import SystemBlock
from workbench.handout.sheets.page import Handout, HandoutOptions, make_handout
from workbench.instrument.table import hand, instrument
from workbench.language.fact import Fact
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.teaching.lessons.lesson import BarNote
from workbench.teaching.planning.plan import make_plan


def written(tmp_path, options=None, **changes):
    made = lesson(**changes)
    target = tmp_path / "page.pdf"
    count = make_handout(made, fingered(made.piece, instrument(made.instrument)), target, options)
    reader = PdfReader(target)
    assert len(reader.pages) == count
    return reader


def text_of(reader) -> str:
    whole = "\n".join(p.extract_text() for p in reader.pages).replace("\u00a0", " ")
    return re.sub(r"\s+", " ", whole)


def test_the_page_says_what_the_lesson_says(tmp_path) -> None:
    reader = written(tmp_path, HandoutOptions(studio="Brook Studio", contact="b@brook.example"))
    text = text_of(reader)
    for words in (
        "A walk by the mill",
        "Anna Brook",
        "Concert ukulele, high G",
        "4 G4 · 3 C4 · 2 E4 · 1 A4",
        "F major",
        "quarter note = 88",
        "Grade 2, early (beginner)",
        "2 h 30 min, 20 min a day",
        "Mira",
        "A = bars 1–6; B = bars 7–10",
        "first and second ending",
        "D.C. al Fine",
        "Keep finger 1 down, it is needed again.",
        "First count the figure, then play it.",
        "Bars 2–3 · rhythm",
        "Bar 9, beat 1 · right hand",
        "New grips",
        "Warm up before you play",
        "health professional",
        "My notes",
        "Brook Studio · b@brook.example",
        f"Page 1 of {len(reader.pages)}",
        f"Page {len(reader.pages)} of {len(reader.pages)}",
    ):
        assert words in text, words
    assert "Rejected" not in text


def test_the_teacher_sees_rejected_fingerings_and_the_audit(tmp_path) -> None:
    text = text_of(written(tmp_path, HandoutOptions(audience="teacher")))
    pattern = r"Rejected: E5 on string 1, fret 7, finger 4\. Against the one printed: (.+?)\."
    reason = re.search(pattern, text)
    assert reason and len(reason[1].split()) > 3, "a rejected fingering comes with its reason"
    assert "Legato audit" in text
    assert "100.0% of the written length is held" in text


def test_what_cannot_be_played_is_told_to_the_teacher(tmp_path) -> None:
    made = lesson()
    hands = fingered(made.piece, instrument("ukulele"))
    bars = list(hands.bars)
    bars[3] = replace(bars[3], impossible=Fact.from_text("five strings at once"))
    target = tmp_path / "page.pdf"
    make_handout(made, replace(hands, bars=tuple(bars)), target, HandoutOptions(audience="teacher"))
    assert "Bar 3: five strings at once" in text_of(PdfReader(target))


def test_cuts_are_listed_with_written_and_held_length(tmp_path) -> None:
    made = lesson()
    hands = fingered(made.piece, instrument("ukulele"))
    bars = list(hands.bars)
    first, *rest = bars[10].notes
    why = Fact.from_text("finger 1 hops")
    cut = replace(first, held=Fraction(5, 2), cut_reason=why, cut_kind="hop")
    bars[10] = replace(bars[10], notes=(cut, *rest))
    target = tmp_path / "page.pdf"
    make_handout(made, replace(hands, bars=tuple(bars)), target, HandoutOptions(audience="teacher"))
    assert re.search(r"10 1 A4 3 2 1/2 finger 1 hops", text_of(PdfReader(target)))


def test_the_practice_plan_comes_as_a_table_to_tick(tmp_path) -> None:
    without = text_of(written(tmp_path, HandoutOptions(plan=False)))
    assert "Practice plan" not in without
    assert "2 h 30 min: 8 days of 20 min" in without
    made = lesson(techniques=("pickup", "gone"))
    text = text_of(written(tmp_path, techniques=made.techniques))
    assert "Practice plan" in text and "Techniques: pickup." in text
    player = instrument(made.instrument)
    plan = make_plan(
        made.piece,
        fingered(made.piece, player),
        player,
        hand(made.hand),
        minutes_a_day=made.minutes_a_day,
    )
    days = " ".join(str(d.day) for d in plan.days[:14])
    assert f"Day {days} warm up" in text
    minutes = " ".join("rest" if d.rest else f"{d.minutes:.0f}" for d in plan.days[:14])
    assert f"Minutes {minutes}" in text
    for item in plan.items:
        assert item.kind == "join" or re.sub(r"\s+", " ", str(item.exercise)) in text
        assert item.kind == "play through" or str(item.where) in text


@pytest.mark.parametrize(
    ("paper", "width", "height"),
    [("a4", 210 / 25.4 * 72, 297 / 25.4 * 72), ("letter", 612, 792)],
)
def test_paper(tmp_path, paper, width, height) -> None:
    for page in written(tmp_path, HandoutOptions(paper=paper)).pages:
        assert float(page.mediabox.width) == pytest.approx(width, abs=1)
        assert float(page.mediabox.height) == pytest.approx(height, abs=1)


def fonts(reader):
    for page in reader.pages:
        for font in page["/Resources"]["/Font"].values():
            font = font.get_object()
            for inner in font.get("/DescendantFonts", [font]):
                inner = inner.get_object()
                yield str(inner["/BaseFont"]), inner["/FontDescriptor"].get_object()


def test_all_fonts_are_ours_and_embedded(tmp_path) -> None:
    found = list(fonts(written(tmp_path)))
    assert len({name for name, _ in found}) >= 3
    for name, descriptor in found:
        assert "Noto" in name
        assert any(k in descriptor for k in ("/FontFile", "/FontFile2", "/FontFile3")), name


def test_title_language_and_author_are_in_the_file(tmp_path) -> None:
    reader = written(tmp_path, HandoutOptions(studio="Brook Studio"))
    assert reader.metadata.title == "A walk by the mill"
    assert reader.trailer["/Root"]["/Lang"] == "en"
    assert reader.metadata.creator == "Pluckwright"


def test_bookmarks_lead_to_sections_and_what_follows(tmp_path) -> None:
    reader = written(tmp_path, HandoutOptions(plan=True), title="Žluť – walk")
    marks = [(m.title, reader.get_destination_page_number(m)) for m in reader.outline]
    titles = [t for t, _ in marks]
    assert titles[:3] == ["Žluť – walk", "Section A", "Section B"]
    assert "New grips" in titles and titles[-1] == "Practice plan"
    for title, page in marks[3:]:
        assert title in reader.pages[page].extract_text()


def test_no_picture_stands_for_music_or_text(tmp_path) -> None:
    assert all(not list(p.images) for p in written(tmp_path).pages)


def test_the_same_lesson_gives_the_same_bytes() -> None:
    made = lesson()
    player = instrument("ukulele")
    one, two = (
        Handout(made, fingered(made.piece, player), HandoutOptions()).pdf() for _ in range(2)
    )
    assert one == two


def boxes_of(handout: Handout):
    for page in handout._pages:
        rows = sorted((y, y + b.height, b) for b, y in page.placed if b.height > 0)
        yield rows


def long_piece(bars: int) -> Piece:
    melody = ("C5:1 D5:1/2 E5:1/2 F5:1 C5:1", "A4:1/2 G4:1/2 F4:1 G4:2", "F4+A4:2 E4+C5:2")
    return piece([bar(k, melody[k % 3], "C4:4") for k in range(bars)], title="A long road")


@pytest.mark.parametrize("bars", [2, 7, 16, 33, 64])
@pytest.mark.parametrize("options", [HandoutOptions(), HandoutOptions(paper="letter", large=True)])
def test_blocks_stay_on_the_paper_and_apart(bars, options) -> None:
    notes = tuple(
        BarNote(f"n{k}", "left hand", "Listen to the lower voice. " * (1 + k % 5), k, k)
        for k in range(0, bars, 3)
    )
    made = lesson(piece=long_piece(bars), notes=notes)
    handout = Handout(made, fingered(made.piece, instrument("ukulele")), options)
    seen = []
    for rows in boxes_of(handout):
        assert rows[0][0] >= 0
        assert rows[-1][1] <= handout.sheet.room + 0.5
        for (_, low, _), (top, _, _) in pairwise(rows):
            assert top >= low - 0.01
        seen += [b.system for _, _, b in rows if isinstance(b, SystemBlock)]
    assert [s.first for s in seen] == [0, *(s.last + 1 for s in seen[:-1])]
    assert seen[-1].last == bars - 1
    if bars > 2:
        assert seen[-1].last > seen[-1].first, "a lonely last bar"


def test_a_note_is_on_the_page_of_its_bar(tmp_path) -> None:
    made = long_piece(48)
    notes = tuple(BarNote(f"n{k}", "sound", f"word{k}word", k, k) for k in (0, 20, 47))
    reader = written(tmp_path, piece=made, notes=notes)
    pages = [p.extract_text() for p in reader.pages]
    assert "word0word" in pages[0]
    handout = Handout(
        lesson(piece=made, notes=notes), fingered(made, instrument("ukulele")), HandoutOptions()
    )
    for number, page in enumerate(handout._pages):
        for block, _ in page.placed:
            if isinstance(block, SystemBlock):
                for k in (0, 20, 47):
                    if block.system.first <= k <= block.system.last:
                        assert f"word{k}word" in pages[number]


def test_a_note_longer_than_a_page_goes_on(tmp_path) -> None:
    words = " ".join(f"w{k}x" for k in range(3000))
    reader = written(tmp_path, notes=(BarNote("n", "form", words, 1, 1),))
    text = text_of(reader)
    assert len(reader.pages) > 2
    assert "(continued)" in text
    assert [w for w in text.split() if re.fullmatch(r"w\d+x", w)] == words.split()


@pytest.mark.parametrize("title", ["", "X" * 300, "Žluťoučký kůň – Ωμέγα – Жук", "<b>*&\"'"])
def test_odd_titles_are_printed(tmp_path, title) -> None:
    text = text_of(written(tmp_path, title=title))
    assert title[:40].replace("*", "") in text.replace("*", "")


def test_left_handed_diagrams_are_mirrored_and_said_to_be(tmp_path) -> None:
    text = text_of(written(tmp_path, HandoutOptions(left_handed=True)))
    assert "left-handed: string 1 on the left" in text
    assert "Beside the notes: right hand" in text


def test_grips_are_distinct_and_hold_two_fretted_notes() -> None:
    made = walk()
    player = instrument("ukulele")
    grips = grips_of(made, fingered(made, player), player)
    assert 0 < len(grips) <= 8
    assert len({(g.frets, g.fingers) for g in grips}) == len(grips)
    assert all(g.fretted >= 2 for g in grips)
    f_chord = next(g for g in grips if g.where == "bar 3, beat 1")
    assert (f_chord.title, f_chord.frets, f_chord.fingers) == ("F", (3, 1, None, 2), (3, 1, 0, 2))


def test_a_folder_is_no_file_to_write(tmp_path) -> None:
    made = lesson()
    hands = fingered(made.piece, instrument("ukulele"))
    with pytest.raises(BadInput, match="is a folder"):
        make_handout(made, hands, tmp_path)
    with pytest.raises(BadInput, match="does not exist"):
        make_handout(made, hands, tmp_path / "none" / "page.pdf")


def test_a_full_disk_leaves_the_old_page_as_it_was(tmp_path, monkeypatch) -> None:
    target = tmp_path / "page.pdf"
    target.write_bytes(b"old")

    def full(handle):
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    made = lesson()
    with pytest.raises(BadInput, match="No space left on device"):
        make_handout(made, fingered(made.piece, instrument("ukulele")), target)
    assert target.read_bytes() == b"old"
    assert os.listdir(tmp_path) == ["page.pdf"]


def test_unknown_options_are_refused() -> None:
    with pytest.raises(BadInput, match="a4 or letter"):
        HandoutOptions(paper="a5")  # type: ignore[arg-type]
    with pytest.raises(BadInput, match="student or teacher"):
        HandoutOptions(audience="parent")  # type: ignore[arg-type]


def test_a_lesson_without_bars_is_refused(tmp_path) -> None:
    made = lesson(piece=Piece("Nothing", ()))
    with pytest.raises(BadInput, match="no bars"):
        make_handout(made, fingered(made.piece, instrument("ukulele")), tmp_path / "page.pdf")


def test_the_file_is_one_that_strict_readers_accept() -> None:
    made = lesson()
    data = Handout(made, fingered(made.piece, instrument("ukulele")), HandoutOptions()).pdf()
    assert data.count(b"startxref") == 1
    root = PdfReader(BytesIO(data), strict=True).trailer["/Root"]
    assert root["/Lang"] == "en"
    assert root["/ViewerPreferences"]["/DisplayDocTitle"]
