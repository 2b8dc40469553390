"""The student's pack, opened in a real headless browser."""

from __future__ import annotations

import json
import re
import zipfile
from dataclasses import replace

import pypdf
import pytest
import soundfile

from tests.pack.browser import Browser, browser_or_skip
from tests.sound.notes_made import bar, note, piece
from workbench.fingering.engine import solve
from workbench.handout.sheets.pack import PackOptions, write_pack
from workbench.instrument.table import hand, instrument
from workbench.music.errors import BadInput
from workbench.teaching.lessons.lesson import Lesson


def small_lesson():
    names = ("C4", "E4", "G4", "A4")
    made = piece(
        *(bar(i, *(note(f"n{i}-{k}", names[(i + k) % 4], k, 1) for k in range(4)))
          for i in range(4)),
        tempo=120.0,
    )  # fmt: skip
    made = replace(made, title="Harbour <lights> & so on")
    return Lesson("harbour-lights", made.title, made, "ukulele", student="Noor", key="C major")


@pytest.fixture(scope="module")
def pack(tmp_path_factory):
    lesson = small_lesson()
    fingering = solve(lesson.piece, instrument("ukulele"), hand("medium"))
    folder = tmp_path_factory.mktemp("packs") / "the pack"
    told = []
    write_pack(lesson, fingering, folder, PackOptions(left_handed=True), progress=told.append)
    assert told == sorted(told) and told[-1] == 1.0
    return lesson, fingering, folder


def content(folder):
    text = (folder / "lesson.js").read_text("utf-8")
    return json.loads(text.split("window.LESSON = ", 1)[1].rstrip().rstrip(";"))


def test_everything_the_page_names_is_there(pack):
    _, _, folder = pack
    lesson = content(folder)
    named = [b["picture"] for b in lesson["bars"]] + list(lesson["tracks"].values())
    for words in lesson["words"].values():
        named += [t["file"] for d in words["days"] for i in d["items"] for t in i["tracks"]]
    assert len(set(named)) > 12
    for name in named:
        assert (folder / name).is_file(), name
    full, half = (soundfile.info(str(folder / lesson["tracks"][t])).duration for t in ("100", "50"))
    assert full == pytest.approx(8 + 1, abs=0.1) and half == pytest.approx(16 + 1, abs=0.1)


def test_the_sheet_names_the_tracks(pack):
    _, _, folder = pack
    text = " ".join(p.extract_text() for p in pypdf.PdfReader(folder / "handout.pdf").pages)
    assert "tracks" in text and "named by bars and tempo" in " ".join(text.split())


def test_nothing_of_it_comes_from_elsewhere(pack):
    _, _, folder = pack
    for path in folder.rglob("*"):
        if path.suffix in (".html", ".css", ".js"):
            text = path.read_text("utf-8")
            assert not re.search(r"(?i)https?:|@import|fetch[(]|XMLHttp", text), path


def test_a_zip_holds_the_same(pack, tmp_path):
    lesson = pack[0]
    target = tmp_path / "lights.zip"
    short = replace(lesson, piece=replace(lesson.piece, bars=lesson.piece.bars[:1]))
    kept = solve(short.piece, instrument("ukulele"), hand("medium"))
    write_pack(short, kept, target)
    with zipfile.ZipFile(target) as archive:
        assert archive.testzip() is None
        names = archive.namelist()
    assert {"lights/index.html", "lights/handout.pdf", "lights/page.js"} <= set(names)
    assert [p.name for p in tmp_path.iterdir()] == ["lights.zip"]


def test_a_folder_of_other_things_is_left_alone(pack, tmp_path):
    lesson, fingering, _ = pack
    (tmp_path / "letters.txt").write_text("dear")
    with pytest.raises(BadInput, match="other things in it"):
        write_pack(lesson, fingering, tmp_path)
    with pytest.raises(BadInput, match="is a file"):
        write_pack(lesson, fingering, tmp_path / "letters.txt")
    assert (tmp_path / "letters.txt").read_text() == "dear"


@pytest.fixture(scope="module")
def page(pack, tmp_path_factory):
    browser = Browser(browser_or_skip(), tmp_path_factory.mktemp("profile"))
    browser.address = (pack[2] / "index.html").as_uri()
    yield browser
    browser.close()


def opened(page):
    page.open(page.address)
    page.run("localStorage.clear()")
    page.open(page.address)
    page.asked.clear()
    return page


SOUND = "document.getElementById('sound')"


def text_of(page, name):
    return page.run(f"document.getElementById('{name}').textContent")


def click(page, choice):
    page.run(f"document.querySelector({json.dumps(choice)}).click()")


def test_a_bar_is_heard_where_it_is_tapped(page):
    opened(page)
    assert text_of(page, "title") == "Harbour <lights> & so on"
    page.wait("[...document.images].every(i => i.complete && i.naturalWidth > 20)")
    click(page, '[data-place="2"]')
    page.wait(f"!{SOUND}.paused && {SOUND}.currentTime > 4.05")
    assert page.run(f"{SOUND}.currentTime") < 6
    page.wait("document.querySelector('.heard')?.dataset.place === '2'")
    assert "3" in text_of(page, "now")
    click(page, "#play")
    assert page.run(f"{SOUND}.paused")


def test_loop_and_tempo(page):
    opened(page)
    page.run("(t => { t.value = 50; t.dispatchEvent(new Event('change')); })"
             "(document.getElementById('tempo'))")  # fmt: skip
    click(page, "#loop")
    click(page, '[data-place="1"]')
    page.wait(f"{SOUND}.currentTime > 4.05")
    # At half the tempo bar 2 is heard from 4 to 8 seconds: leap near its end, and it begins anew.
    page.run(f"{SOUND}.currentTime = 7.8")
    page.wait(f"{SOUND}.currentTime < 5")
    assert not page.run(f"{SOUND}.paused")
    assert "50 percent" in page.run(f"decodeURI({SOUND}.src)")
    click(page, '[data-place="2"]')
    assert page.run("document.querySelectorAll('.chosen').length") == 2


def test_todays_plan_keeps_its_ticks(page, pack):
    opened(page)
    days = content(pack[2])["words"]["en"]["days"]
    assert page.run("document.querySelectorAll('#plan li').length") == len(days[0]["items"])
    click(page, "#plan li:nth-child(2) input")
    page.open(page.address)
    assert page.run("document.querySelector('#plan li:nth-child(2) input').checked")
    for at in range(len(days[0]["items"])):
        page.run(f"(b => b.checked || b.click())(document.querySelectorAll('#plan input')[{at}])")
    assert text_of(page, "today").endswith(f"day {days[1]['day']} of the plan")
    click(page, "#plan .tracks button")
    page.wait(f"{SOUND}.currentTime > 0.1")
    assert "tracks/" in page.run(f"{SOUND}.src")


def test_it_speaks_both_languages_and_remembers(page):
    opened(page)
    assert text_of(page, "loop") == "Loop"
    click(page, "#language")
    assert page.run("document.documentElement.lang") == "de"
    assert text_of(page, "loop") == "Schleife"
    page.open(page.address)
    assert text_of(page, "loop") == "Schleife"


def test_keys_large_text_and_the_left_hand(page):
    opened(page)
    assert page.run("document.documentElement.classList.contains('left')"), "as the pack was made"
    plain = page.run("parseFloat(getComputedStyle(document.body).fontSize)")
    click(page, "#larger")
    assert page.run("parseFloat(getComputedStyle(document.body).fontSize)") > 1.3 * plain
    page.key("ArrowRight")
    assert page.run("document.activeElement.dataset.place") == "0"
    page.key("ArrowRight")
    assert page.run("document.activeElement.dataset.place") == "1"
    page.key("l")
    assert page.run("document.getElementById('loop').getAttribute('aria-pressed')") == "true"
    page.key("-")
    assert page.run("document.getElementById('tempo').value") == "85"
    page.run("document.activeElement.blur()")
    page.key(" ")
    page.wait(f"!{SOUND}.paused")
    page.key(" ")
    assert page.run(f"{SOUND}.paused")


@pytest.mark.parametrize("width, phone", [(360, True), (1200, False)])
def test_it_fits_a_phone_and_a_desk_and_every_control_has_a_name(page, width, phone):
    page.size(width, 740, phone)
    opened(page)
    assert page.run("document.documentElement.scrollWidth") <= width
    nameless = page.run(
        "[...document.querySelectorAll('button, select, a, input')].filter(e => "
        "!(e.ariaLabel || e.textContent.trim() || e.labels?.length)).length"
    )
    assert nameless == 0
    small = page.run(
        "[...document.querySelectorAll('button')].filter(b => b.offsetHeight < 40).length"
    )
    assert small == 0, "fingers need room"


def test_no_network_is_asked(page):
    opened(page)
    click(page, '[data-place="0"]')
    page.wait(f"{SOUND}.currentTime > 0.1")
    assert page.asked and all(a.startswith("file:") for a in page.asked)
