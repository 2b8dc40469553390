"""Exercises in the window: seen, heard, kept and written out."""

from __future__ import annotations

import wave

import pytest
from pypdf import PdfReader
from PySide6.QtGui import QImage

from tests.ui.conftest import WAIT
from tests.ui.helpers import choose, show
from workbench.sound.device import SoundCard
from workbench.sound.player import Player


@pytest.fixture
def pane(qtbot, lesson_window):
    view = show(qtbot, lesson_window, "techniques")
    pane = view.exercise
    qtbot.waitUntil(lambda: pane.music.image is not None, timeout=WAIT)
    return pane


def test_the_exercise_is_engraved_and_on_the_neck(qtbot, pane, lesson_window):
    view, session = lesson_window.teaching.techniques, lesson_window.session
    assert pane.exercises and pane.kind.count() == len(pane.exercises)
    for at in range(pane.kind.count()):
        with qtbot.waitSignal(pane.music.engraved, timeout=WAIT):
            choose(pane.kind, at)
        made = pane.exercise
        assert pane.text.text() == str(made.text)
        for note in made.piece.notes:
            assert pane.music.image.rects_of_note(note.id), note.id
        drawn = {m.note.id for m in pane.neck.picture.markers}
        assert drawn == {h.id for h in made.fingering.bars[0].notes}
    # another place of the technique: made from its bar
    view.places.setCurrentRow(view.places.count() - 1)
    assert pane.exercise.bar == view.current.occurrences[-1].bar
    assert session.lesson.notes == ()


def test_the_sound_follows_the_tempo(qtbot, pane, tmp_path):
    seconds = []
    for percent in (100, 50):
        pane.tempo.setValue(percent)
        out = tmp_path / f"at{percent}.wav"
        pane.save(sound=True, path=str(out))
        qtbot.waitUntil(out.is_file, timeout=WAIT)
        with wave.open(str(out)) as file:
            seconds.append(file.getnframes() / file.getframerate())
    made = pane.exercise
    beats = made.piece.bars[0].length * made.piece.bars[0].times
    played = float(beats) * 60 / (made.piece.tempo * 100 / made.tempo_percent)
    tail = 1.5  # the last notes ring on
    assert played <= seconds[0] <= played + tail
    assert 2 * played <= seconds[1] <= 2 * played + tail


def test_the_strip_is_written_as_pdf_and_as_a_picture(qtbot, pane, lesson_window, tmp_path):
    told = []
    lesson_window.session.told.connect(told.append)
    for name in ("strip.pdf", "strip.png"):
        pane.save(sound=False, path=str(tmp_path / name))
        qtbot.waitUntil(lambda name=name: any(name in words for words in told), timeout=WAIT)
    page = PdfReader(tmp_path / "strip.pdf").pages[0]
    text = " ".join(page.extract_text().split())
    assert str(pane.exercise.title) in text and str(pane.exercise.text).split(",")[0] in text
    picture = QImage(str(tmp_path / "strip.png"))
    assert picture.width() > 2000
    assert len({picture.pixel(x, picture.height() // 2) for x in range(picture.width())}) > 1


def test_a_place_that_cannot_be_written_is_told(qtbot, pane, lesson_window, tmp_path):
    pane.save(sound=False, path=str(tmp_path / "no such folder" / "strip.pdf"))
    notice = lesson_window.notice
    qtbot.waitUntil(lambda: "cannot be written" in notice.words.text(), timeout=WAIT)


def test_it_is_kept_as_a_note_on_its_bar(pane, lesson_window):
    session = lesson_window.session
    pane.tempo.setValue(60)
    pane.note_button.click()
    note = session.lesson.notes[0]
    assert note.text == f"Exercise at 60 % of the tempo: {pane.exercise.text}"
    assert note.first_bar == note.last_bar == pane.exercise.bar


def test_the_windows_player_plays_it(pane, lesson_window):
    conductor = lesson_window.conductor
    conductor.opened = lambda: Player(lambda: SoundCard(null=True))
    pane.tempo.setValue(60)
    pane.hear_button.click()
    assert conductor.playing and conductor._programme.piece is pane.exercise.piece
    assert conductor._programme.manner.tempo == 100 * 60 / pane.exercise.tempo_percent
    pane.hear_button.click()
    assert not conductor.playing
