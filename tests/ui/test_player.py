"""The lesson heard in the window, on a device that plays into nothing."""

from __future__ import annotations

import json
import wave

import pytest
import soundfile
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor
from PySide6.QtTest import QTest

from tests.ui.conftest import WAIT
from workbench.music.errors import BadInput
from workbench.sound.device import SoundCard, no_device
from workbench.sound.hearing import SILENCE, WHO, Heard
from workbench.sound.player import Player
from workbench.ui.kit.look import colours
from workbench.ui.player import spans
from workbench.ui.player.trainer import TrainerDialog
from workbench.ui.player.tuner import TunerDialog, string_tones
from workbench.ui.window.sound_files import CLICKS, MIDI, export_sound


@pytest.fixture
def heard_window(qtbot, lesson_window):
    window = lesson_window
    window.conductor.opened = lambda: Player(lambda: SoundCard(null=True))
    return window


@pytest.fixture
def menu(heard_window):
    return heard_window.sounds


def now(window):
    return window.conductor._last


def test_space_starts_and_stops_and_everything_follows(qtbot, heard_window):
    window = heard_window
    score, piece = window.score, window.session.lesson.piece
    score.setFocus()
    with qtbot.waitActive(window):
        window.activateWindow()
    QTest.keyClick(score, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: bool(score.heard[1]), timeout=WAIT)
    bar, notes, _ = score.heard
    assert notes <= {n.id for n in piece.bars[bar].notes}
    assert window.bars.view.heard == bar == window.neck.neck.heard[0]
    lit = {m.note.id for m in window.neck.neck.picture.markers if m.now}
    assert lit == window.neck.neck.heard[1]
    assert "Bar 1" in window.player.now.text() and "Stop" in window.player.play.text()
    first = window.bars.model.rows[0]
    assert window.bars.view.is_heard(first) == (bar == first.position)
    QTest.keyClick(score, Qt.Key.Key_Space)
    assert not window.conductor.playing and "Play" in window.player.play.text()
    qtbot.waitUntil(lambda: score.heard[0] == -1, timeout=WAIT)
    assert window.neck.neck.heard[0] == -1 and window.bars.view.heard == -1
    assert window.panels.neck_heading.text().endswith("bar 1")


def test_a_cut_note_is_ringed_while_it_is_missed_and_both_hands_light_up(heard_window):
    window = heard_window
    bar = window.session.lesson.piece.bars[0]
    sung, cut = bar.notes[0].id, bar.notes[1].id

    def shown(heard):
        window.conductor.heard.emit(heard)
        score = window.score.viewport().grab().toImage()
        alarm = QColor(colours(window.score).alarm).rgb()
        ringed = sum(
            score.pixel(x, y) == alarm for x in range(score.width()) for y in range(score.height())
        )
        return ringed, {m.note.id: m.note for m in window.neck.neck.picture.markers if m.now}

    quiet, _ = shown(Heard(True, 0, 0, frozenset({sung})))
    ringed, lit = shown(Heard(True, 0, 0, frozenset({sung}), missed=frozenset({cut})))
    assert ringed > quiet + 20
    assert lit.keys() == {sung} and lit[sung].left is not None and lit[sung].right
    assert "a note is missed" in window.player.now.text()
    window.conductor.heard.emit(SILENCE)
    assert "missed" not in window.player.now.text()


def test_the_spans_are_what_they_say(heard_window):
    session, window = heard_window.session, heard_window
    session.selection.select(1, session.lesson.piece.bars[1].notes[2].id)

    def span(which, rows=()):
        found = spans.span_of(session, which, rows)
        return found.first, found.last, found.onset

    assert span(spans.FROM_NOTE) == (1, 3, 2)
    assert span(spans.BAR) == (1, 1, 0)
    assert span(spans.SELECTED, (1, 2)) == (1, 2, 0)
    assert span(spans.WHOLE) == (0, 3, 0)
    window.bars.view.section_from((2,))
    assert span(spans.SECTION)[:2] == (0, 1) or span(spans.SECTION)[:2] == (0, 3)


def test_the_controls_change_the_manner_and_are_remembered(heard_window, open_window):
    window = heard_window
    bar, conductor = window.player, window.conductor
    bar.tempo.setValue(60)
    bar.loop.setChecked(True)
    bar.metronome.setChecked(True)
    bar.count_in.setChecked(True)
    bar.who.setCurrentIndex(1)
    bar.who.activated.emit(1)
    manner = conductor.manner
    assert (manner.tempo, manner.loop, manner.metronome, manner.count_in) == (60, True, True, True)
    assert manner.who == WHO[1] and bar.how.isEnabled()
    bar.climb.setChecked(True)
    assert conductor.manner.trainer == conductor.trainer and not bar.tempo.isEnabled()
    again = open_window(wait=False)
    assert again.conductor.manner.tempo == 60 and again.player.tempo.value() == 60


def test_a_change_of_tempo_while_it_plays_goes_on_from_there(qtbot, heard_window):
    window = heard_window
    window.conductor.set_manner(loop=True)
    window.conductor.play(spans.WHOLE)
    qtbot.waitUntil(lambda: bool(now(window)) and now(window).position >= 0, timeout=WAIT)
    window.player.tempo.setValue(150)
    qtbot.waitUntil(lambda: now(window).tempo == 150, timeout=WAIT)
    assert now(window).position >= 0
    qtbot.waitUntil(lambda: now(window).position >= 1, timeout=WAIT)
    window.conductor.stop()


def test_without_a_sound_device_one_sentence_offers_the_wav(heard_window):
    window = heard_window

    def none():
        raise BadInput(no_device())

    window.conductor.opened = lambda: Player(none)
    window.player.play.click()
    assert window.notice.words.text() == str(no_device()) and "WAV" in str(no_device())
    assert not window.conductor.playing and "Play" in window.player.play.text()


def test_a_fault_while_sounds_are_made_is_told_and_playing_works_again(
    qtbot, heard_window, monkeypatch
):
    window, said = heard_window, []
    window.session.failed.connect(said.append)

    def broken(*_):
        raise ZeroDivisionError

    conductor = window.conductor
    conductor.toggle()
    qtbot.waitUntil(lambda: bool(window.score.heard[1]), timeout=WAIT)
    with monkeypatch.context() as patch:
        patch.setattr(conductor._player.transport, "fill", broken)
        qtbot.waitUntil(lambda: not conductor.playing and bool(said), timeout=WAIT)
    assert len(said) == 1 and "ZeroDivisionError" in said[0]
    qtbot.waitUntil(lambda: "Play" in window.player.play.text(), timeout=WAIT)
    conductor.toggle()
    qtbot.waitUntil(lambda: bool(window.score.heard[1]), timeout=WAIT)
    assert conductor.playing and len(said) == 1
    conductor.toggle()


def test_the_plans_item_is_played_in_a_loop_by_one_click(qtbot, heard_window):
    window = heard_window
    window.teaching.setCurrentWidget(window.teaching.plan)
    qtbot.waitUntil(lambda: window.teaching.plan.plan is not None, timeout=WAIT)
    window.teaching.plan.play_button.click()
    programme = window.conductor._programme
    item = next(i for i in window.teaching.plan.plan.items if i.bars)
    assert tuple(programme.order) == item.bars and programme.manner.loop
    assert next(programme.rounds()).tempo == (item.tempo_from or item.tempo_to)
    window.conductor.stop()


def test_versions_are_compared_by_ear(qtbot, heard_window, menu):
    window = heard_window
    menu.against_written()
    assert window.conductor._programme.against.fingering is None
    menu.against_original()
    against = window.conductor._programme.against
    assert len(against.piece.bars) == len(window.session.lesson.piece.bars)
    qtbot.waitUntil(lambda: bool(window.session.fingers.choices), timeout=WAIT)
    menu.against_other()
    programme = window.conductor._programme
    assert programme.order == (window.session.selection.bar_index,)
    assert programme.against.fingering != programme.fingering
    window.conductor.stop()


def test_the_trainer_and_the_tuner(heard_window, menu):
    window = heard_window
    menu.trainer()
    dialog = window.dialog
    assert isinstance(dialog, TrainerDialog)
    dialog.start.setValue(90)
    dialog.top.setValue(80)
    dialog.accept()
    assert "not below" in dialog.problem.words.text() and dialog.isVisible()
    dialog.top.setValue(120)
    dialog.accept()
    assert window.conductor.manner.trainer.start == 90 and window.conductor.manner.loop
    menu.tuner()
    dialog = window.dialog
    assert isinstance(dialog, TunerDialog) and len(dialog.tones) == 4
    dialog.a4.setValue(442.0)
    assert window.conductor.bank().hertz(69) == pytest.approx(442.0)
    dialog.tones[0].click()
    assert window.conductor.playing
    assert [n.midi for n in window.conductor._programme.piece.notes] == [67]
    dialog.close()
    assert not window.conductor.playing


def test_tuner_tones_are_the_open_strings(heard_window):
    made = heard_window.session.instrument
    piece, hands = string_tones(made, (4, 3, 2, 1))
    assert [n.midi for n in piece.notes] == [67, 60, 64, 69]
    assert [b.notes[0].string for b in hands.bars] == [4, 3, 2, 1]


def test_sound_is_exported_in_every_form(qtbot, heard_window, tmp_path):
    window = heard_window
    window.conductor.set_span(spans.BAR)

    def written(name, form=None):
        path = tmp_path / name
        export_sound(window.conductor, window, str(path), form)
        qtbot.waitUntil(lambda: path.is_file(), timeout=WAIT)
        return path

    with wave.open(str(written("a.wav"))) as file:
        seconds = file.getnframes() / file.getframerate()
    rate = window.session.lesson.piece.tempo
    assert seconds > 4 * 60 / rate
    found, _ = soundfile.read(str(written("b.flac")))
    assert abs(found).max() > 0.5
    clicks, _ = soundfile.read(str(written("c.wav", CLICKS)))
    assert abs(clicks).max() > 0.5
    assert written("d.mid", MIDI).read_bytes().startswith(b"MThd")


def test_the_pack_is_made_from_the_menu(qtbot, heard_window, menu, tmp_path):
    from workbench.ui.window.sound_files import make_pack

    target = tmp_path / "pack"
    make_pack(heard_window.conductor, heard_window, str(target))
    qtbot.waitUntil(lambda: heard_window.session.jobs.idle, timeout=60_000)
    text = (target / "lesson.js").read_text("utf-8")
    lesson = json.loads(text.split("window.LESSON = ", 1)[1].rstrip().rstrip(";"))
    assert lesson["title"] == "Ferry at dusk" and len(lesson["bars"]) == 4
    assert all((target / bar["picture"]).is_file() for bar in lesson["bars"])
