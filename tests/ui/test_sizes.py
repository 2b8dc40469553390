"""Large text and small windows: nothing is cut, and one whole system is seen."""

from __future__ import annotations

import contextlib

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QApplication,
    QComboBox,
    QLabel,
    QTabBar,
    QWidget,
)

from tests.ui.conftest import ATTRIBUTES, SCORE, WAIT, make_lesson, settle
from workbench.language import speech

WRAP = Qt.TextFlag.TextWordWrap.value
PATIENCE = 10_000  # milliseconds; reached only where something is cut
SMALL = (1100, 700)
VOICES = (("E5 D5 C5 B4", 1), ("G4 F4 E4 D4", 2), ("C4 D4 E4 G3", 3))


def three_voices(path):
    """A MusicXML file of bars in which three voices meet."""
    bars = []
    for number in range(1, 9):
        voices = []
        for line, voice in VOICES:
            notes = "".join(
                f"<note><pitch><step>{n[0]}</step><octave>{n[1]}</octave></pitch><duration>1"
                f"</duration><voice>{voice}</voice><type>quarter</type></note>"
                for n in line.split()
            )
            voices.append(notes)
        content = "<backup><duration>4</duration></backup>".join(voices)
        start = ATTRIBUTES if number == 1 else ""
        bars.append(f'<measure number="{number}">{start}{content}</measure>')
    path.write_text(SCORE.format(bars="".join(bars)), encoding="utf-8")
    return path


def _called(widget):
    text = getattr(widget, "text", lambda: "")() or widget.accessibleName()
    return f"{type(widget).__name__} {text[:50]!r}"


def _short(widget):
    """How a widget's words have less room than they need; empty where they have enough."""
    size = widget.size()
    if isinstance(widget, QTabBar):
        metrics = widget.fontMetrics()
        return ", ".join(
            widget.tabText(at)
            for at in range(widget.count())
            if widget.tabRect(at).width() < metrics.horizontalAdvance(widget.tabText(at))
            or not widget.rect().contains(widget.tabRect(at))
        )
    if isinstance(widget, QLabel):
        if widget.wordWrap():
            room = QRect(0, 0, max(1, widget.contentsRect().width()), 1_000_000)
            need = widget.fontMetrics().boundingRect(room, WRAP, widget.text()).size()
        else:
            flags = Qt.TextFlag.TextShowMnemonic.value if widget.buddy() else 0
            need = widget.fontMetrics().size(flags, widget.text())
            if widget.pixmap() is not None and not widget.pixmap().isNull():
                need = widget.sizeHint()
    elif isinstance(widget, QComboBox):
        need = widget.minimumSizeHint()
    else:
        need = widget.sizeHint()
    if need.width() > size.width() or need.height() > size.height():
        return f"{need.toTuple()} in {size.toTuple()}"
    return ""


def _over_the_edge(widget, window):
    """The first part of the window beyond whose edge a widget goes, unless that scrolls."""
    inner = widget
    while inner is not window:
        outer = inner.parentWidget()
        holder = outer.parentWidget()
        if isinstance(holder, QAbstractScrollArea) and holder.viewport() is outer:
            bars = holder.verticalScrollBar(), holder.horizontalScrollBar()
            over = outer.rect().united(inner.geometry()) != outer.rect()
            if over and not any(bar.isVisible() for bar in bars):
                return outer
            return None
        at = QRect(inner.mapTo(outer, inner.rect().topLeft()), inner.size())
        if not outer.rect().contains(at):
            return outer
        inner = outer
    return None


def faults_of(window):
    """Every visible button, label, heading and box of a window that is cut."""
    found = []
    for widget in window.findChildren(QWidget):
        if not widget.isVisible() or not isinstance(
            widget, QAbstractButton | QLabel | QComboBox | QTabBar
        ):
            continue
        if widget.objectName().endswith("_button") or isinstance(widget.parent(), QTabBar):
            continue  # what Qt puts at the end of a row that goes on
        if isinstance(widget, QLabel) and not widget.text():
            continue
        tip = widget.toolTip() if not isinstance(widget, QTabBar) else ""
        short = _short(widget)
        if short and not (isinstance(widget, QLabel) and tip):
            found.append(f"{_called(widget)}: {short}")
        edge = _over_the_edge(widget, window)
        if edge is not None:
            found.append(f"{_called(widget)}: beyond {_called(edge)}")
    return found


@pytest.fixture(params=["de", pytest.param("en", marks=pytest.mark.slow)])
def small_window(request, qtbot, open_window, tmp_path):
    """A small window in one of the languages, on a lesson in three voices."""
    before = speech.chosen()
    speech.choose(request.param)
    try:
        window = open_window()
        window.resize(*SMALL)
        make_lesson(qtbot, window, three_voices(tmp_path / "three.musicxml"))
        settle(qtbot, window)
        yield window
        window.set_look(scale=100)
    finally:
        speech.choose(before)


def _still(qtbot, window):
    """Wait until the music is engraved in the size that it is shown in."""
    jobs, soon = window.session.jobs, window.score._soon
    qtbot.waitUntil(lambda: jobs.idle and not soon.isActive(), timeout=WAIT)
    settle(qtbot, window)


def _looked_through(qtbot, window):
    """What is cut in any part of the window; the score is seen last."""
    found = []
    for at in reversed(range(window.teaching.count())):
        window.teaching.setCurrentIndex(at)
        for side in range(window.side.count() or 1):
            window.side.setCurrentIndex(side)
            settle(qtbot, window)
            with contextlib.suppress(qtbot.TimeoutError):  # layouts follow a moment later
                qtbot.waitUntil(lambda: not faults_of(window), timeout=PATIENCE)
            where = f"{window.look.scale} %, {window.teaching.tabText(at)}"
            found += [f"{where}: {fault}" for fault in faults_of(window)]
    return found


def _seen_whole(window):
    """Whether the tallest system would find room in the score's viewport."""
    tallest = max(item.rect.height() for item in window.score.image.placed)
    return tallest * window.score.scale <= window.score.viewport().height()


def _sizes(window):
    parts = (window.bars, window.score, window.neck, window.side, window.notes, window.choices,
             window.player)  # fmt: skip
    return window.size(), [part.geometry() for part in parts], window.score.scale


def test_nothing_is_cut_at_any_text_size_and_all_comes_back(qtbot, small_window):
    window = small_window
    window.teaching.setCurrentIndex(0)
    _still(qtbot, window)
    before = _sizes(window)
    for scale in (200, 100):
        window.set_look(scale=scale)
        faults = _looked_through(qtbot, window)
        assert not faults, "\n".join(sorted(set(faults)))
        _still(qtbot, window)
        for least in (window.minimumSize(), window.minimumSizeHint()):
            assert least.width() <= SMALL[0] and least.height() <= SMALL[1]
        assert window.size().toTuple() == SMALL
        qtbot.waitUntil(lambda: _seen_whole(window), timeout=PATIENCE)
    window.side.setCurrentIndex(0)
    with contextlib.suppress(qtbot.TimeoutError):
        qtbot.waitUntil(lambda: _sizes(window) == before, timeout=PATIENCE)
    assert _sizes(window) == before


def test_one_part_at_a_time_can_all_be_reached_and_goes_back(qtbot, lesson_window):
    window = lesson_window
    window.resize(*SMALL)
    window.panels.across.setSizes([260, 500, 340])
    before = window.panels.across.sizes()
    names = [window.teaching.tabText(at) for at in range(window.teaching.count())]
    window.side.setCurrentIndex(1)
    window.resize(700, 700)
    assert window.panels.columns.narrow and not window.side.isVisible()
    with qtbot.waitActive(window):
        window.activateWindow()
    window.menus["view-plan"].trigger()
    assert window.teaching.currentWidget() is window.teaching.plan
    window.menus["new-note"].trigger()
    assert window.notes.isVisible()
    reached = set()
    for _ in range(12):
        window.menus["next-part"].trigger()
        reached.add(QApplication.focusWidget())
    assert reached >= {
        window.bars.view, window.score, window.neck.neck, window.notes.list, window.choices.list,
        window.lesson_panel.title,
    }  # fmt: skip
    window.resize(*SMALL)
    assert not window.panels.columns.narrow
    assert [window.teaching.tabText(at) for at in range(window.teaching.count())] == names
    assert window.side.isVisible() and window.side.currentIndex() == 1
    assert window.panels.across.sizes() == before


def test_a_layout_kept_in_a_narrow_window_is_that_of_the_wide_one(
    qtbot, lesson_window, open_window
):
    window = lesson_window
    window.resize(*SMALL)
    window.panels.across.setSizes([260, 500, 340])
    before = window.panels.across.sizes()
    window.teaching.setCurrentWidget(window.teaching.script)
    window.side.setCurrentIndex(1)
    window.resize(700, 700)
    window.close()
    again = open_window()
    assert again.size().toTuple() == (700, 700)
    assert again.teaching.currentWidget() is again.teaching.script
    again.resize(*SMALL)
    assert again.teaching.currentWidget() is again.teaching.script
    assert again.side.currentIndex() == 1
    assert again.panels.across.sizes() == pytest.approx(before, abs=2)
