"""Everybody can use it: names on every control, keys, contrast, text that grows."""

from __future__ import annotations

import re

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialog

from tests.ui.conftest import WAIT
from tests.ui.helpers import nameless
from workbench.ui.bench.commands import MENUS, Menu, commands
from workbench.ui.help.browser import HelpWindow
from workbench.ui.help.topics import FOLDER, TOPICS, pages
from workbench.ui.kit import look
from workbench.ui.lesson.import_dialog import ImportDialog


def test_every_control_of_the_window_has_a_name(lesson_window):
    assert nameless(lesson_window) == []


@pytest.mark.parametrize(
    "opens", ["open_shelf", "change_music", "handout", "show_keys", "show_cautions"]
)
def test_every_control_of_the_dialogs_has_a_name(lesson_window, opens):
    window = lesson_window
    getattr(window.openers, opens)()
    assert isinstance(window.dialog, QDialog)
    assert window.dialog.accessibleName()
    assert nameless(window.dialog) == []


def test_every_control_of_the_import_has_a_name(qtbot, lesson_window, score_file):
    window = lesson_window
    window.import_score(str(score_file))
    qtbot.waitUntil(lambda: isinstance(window.dialog, ImportDialog), timeout=WAIT)
    assert nameless(window.dialog) == []


def activate(qtbot, window):
    with qtbot.waitActive(window):
        window.activateWindow()


def test_the_list_of_keys_is_read_off_the_menus(qtbot, lesson_window):
    window = lesson_window
    activate(qtbot, window)
    QTest.keyClick(window, Qt.Key.Key_Slash, Qt.KeyboardModifier.ControlModifier)
    table = window.dialog.table
    shown = " ".join(table.item(row, 0).text() for row in range(table.rowCount()))
    for key in ("Ctrl+Z", "Ctrl+O", "Ctrl+E", "0 to 4", "P, I, M, A", "F6"):
        assert key in shown


def test_f1_opens_the_help_at_the_control(qtbot, lesson_window):
    window = lesson_window
    activate(qtbot, window)
    window.notes.list.setFocus()
    QTest.keyClick(window.notes.list, Qt.Key.Key_F1)
    assert window.findChild(HelpWindow).topic == "notes"


@pytest.mark.parametrize("code", ["en", "de"])
def test_every_topic_has_a_page_in_both_languages(code):
    for topic in TOPICS:
        text = (FOLDER / code / f"{topic}.md").read_text(encoding="utf-8")
        assert text.startswith("# ") and len(text.split()) > 15, (code, topic)


def test_no_two_actions_share_a_key(lesson_window):
    keys = [key.toString() for a in lesson_window.menus.actions for key in a.shortcuts()]
    assert len(keys) == len(set(keys))


def test_f6_goes_round_the_parts(qtbot, lesson_window):
    window = lesson_window
    activate(qtbot, window)
    window.bars.view.setFocus()
    seen = []
    for _ in range(4):
        window.panels.next_part(1)
        seen.append(window.focusWidget())
    assert seen[:3] == [window.score, window.neck.neck, window.notes.list]


def luminance(colour: str) -> float:
    # Relative luminance and contrast ratio: W3C, Web Content Accessibility Guidelines 2.1.
    c = QColor(colour)
    parts = [
        v / 12.92 if v <= 0.03928 else ((v + 0.055) / 1.055) ** 2.4
        for v in (c.redF(), c.greenF(), c.blueF())
    ]
    return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2]


def contrast(a: str, b: str) -> float:
    high, low = sorted((luminance(a), luminance(b)), reverse=True)
    return (high + 0.05) / (low + 0.05)


@pytest.mark.parametrize("palette", [look.LIGHT, look.DARK], ids=["light", "dark"])
def test_words_stand_out_from_their_ground(palette):
    for ink in (palette.ink, palette.faint, palette.accent, palette.warm, palette.alarm):
        for ground in (palette.ground, palette.panel):
            assert contrast(ink, ground) >= 4.5, (ink, ground)
    assert contrast(palette.accent_ink, palette.accent) >= 4.5
    assert contrast(palette.marker_ink, palette.marker) >= 4.5
    assert contrast(palette.wood_line, palette.wood) >= 3


def test_everything_grows_with_the_text_and_the_choice_is_kept(lesson_window, open_window, settled):
    window = lesson_window
    window.set_look("light", 100)
    small = window.neck.neck.height(), window.bars.view.sizeHintForRow(0)
    window.set_look("dark", 200)
    settled(window)
    large = window.neck.neck.height(), window.bars.view.sizeHintForRow(0)
    assert all(1.8 < b / a < 2.2 for a, b in zip(small, large, strict=True))
    assert window.score.scale == pytest.approx(2.0)
    window.close()
    again = open_window()
    assert (again.look.theme, again.look.scale) == ("dark", 200)
    look.apply(look.Look("light", 100))


def test_a_left_handed_fretboard_is_kept(lesson_window, open_window):
    window = lesson_window
    window.menus["left-handed"].trigger()
    assert window.neck.neck.mirrored
    neck = window.neck.neck.neck
    assert neck.fret_x(0) > neck.fret_x(5)
    window.close()
    assert open_window().neck.neck.mirrored


def test_help_pages_name_the_keys_of_the_commands(lesson_window):
    """No key is written out in a page that a command in the menus has."""
    keys = {key for command in commands() for key in command.keys if "+" in key}
    for page in pages():
        assert "{" not in page.text
    for path in FOLDER.rglob("*.md"):
        written = set(re.findall(r"(?:Ctrl|Shift)\+[\w+]+", path.read_text(encoding="utf-8")))
        assert not written & keys, path.name
    assert lesson_window.menus["undo"].shortcut().toString() in text_of("start")


def text_of(topic):
    return next(page.text for page in pages() if page.topic == topic)


def test_every_command_has_its_place_in_the_menus_and_no_two_share_a_name(lesson_window):
    table = list(commands())
    assert len({command.name for command in table}) == len(table)
    assert len(lesson_window.menus.actions) == len(table)
    done = lesson_window._deeds()
    assert {command.name for command in table} == set(done.plain) | set(done.ticked)
    inner = [entry for menu in MENUS for entry in menu.entries if isinstance(entry, Menu)]
    without = {menu.name for menu in inner if not menu.entries}
    assert without == {*done.choices, *done.filled}
