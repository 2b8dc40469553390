"""The demo shelf: scores and stored pieces agree, lessons say what the fingers do."""

from __future__ import annotations

import json
import re
import subprocess
import sys
from collections import Counter
from itertools import pairwise
from pathlib import Path

import pytest
from music21 import converter, harmony

from workbench.arranging.arrange import arrange
from workbench.fingering.engine import solve
from workbench.instrument.table import hand, instrument
from workbench.music.codec import piece_from_dict
from workbench.music.errors import BadInput
from workbench.music.order.form import playing_order
from workbench.music.reading.score import read_score
from workbench.teaching.lessons.demo import demo_folder, demo_lesson, demo_lessons, demo_scenario
from workbench.teaching.lessons.lesson import NOTE_KINDS
from workbench.teaching.planning.plan import make_plan

LESSONS = {lesson.id: lesson for lesson in demo_lessons()}
FOLDER = demo_folder()
MOST_CUTS = 2  # a shelf that shows held notes must hold them
each = pytest.mark.parametrize("name", list(LESSONS))
solved = {}


def fingering(name):
    if name not in solved:
        lesson = LESSONS[name]
        wood, span = instrument(lesson.instrument), hand(lesson.hand)
        solved[name] = solve(lesson.piece, wood, span, settings=lesson.settings, pins=lesson.pins)
    return solved[name]


@each
def test_stored_piece_equals_its_score(name):
    stored = json.loads((FOLDER / f"{name}.piece.json").read_text(encoding="utf-8"))
    assert piece_from_dict(stored) == read_score(FOLDER / f"{name}.musicxml"), (
        "run resources/demo/build.py after a score was edited"
    )


@each
def test_scores_read_without_complaint(name):
    assert LESSONS[name].piece.warnings == ()


@each
def test_piece_lies_on_its_instrument_as_it_stands(name):
    lesson = LESSONS[name]
    got = arrange(lesson.piece, instrument(lesson.instrument))
    assert got.piece == lesson.piece and got.changes == ()


@each
def test_piece_is_playable_and_held(name):
    got = fingering(name)
    assert got.optimal
    assert not [bar.number for bar in got.bars if bar.impossible]
    assert all(note.impossible is None for bar in got.bars for note in bar.notes)
    assert got.audit.cut <= MOST_CUTS
    assert got.audit.held_fraction > 0.99


@each
def test_pins_are_held(name):
    got = fingering(name)
    for pin in LESSONS[name].pins:
        note = got.note(pin.note)
        for field in ("string", "fret", "left", "right"):
            wanted = getattr(pin, field)
            assert wanted is None or getattr(note, field) == wanted


@each
def test_grip_pictures_show_what_is_played(name):
    lesson, got = LESSONS[name], fingering(name)
    for note in lesson.notes:
        if note.grip is None:
            continue
        here = {
            (n.string, n.fret)
            for bar in got.bars
            if note.first_bar <= bar.index <= note.last_bar
            for n in bar.notes
        }
        strings = instrument(lesson.instrument).strings
        assert len(note.grip) == strings
        drawn = {(strings - i, f) for i, f in enumerate(note.grip) if f is not None}
        assert drawn <= here, (note.text, drawn - here)


SAID = re.compile(
    r"\b([A-G])( sharp| flat)?(?: is played)? with \**(\d)"
    r"|\b(\d) on the (?:low |high )?([A-G])\b( sharp| flat)?"
)


@each
def test_fingers_named_in_the_remarks_are_those_of_the_fingering(name):
    """ "C with 3", "2 on the B below": one such note of the bars has that finger."""
    lesson, got = LESSONS[name], fingering(name)
    for note in lesson.notes:
        here = {
            (n.pitch[:-1], n.left)
            for bar in got.bars
            if note.first_bar <= bar.index <= note.last_bar
            for n in bar.notes
        }
        here |= {(got.note(row[0]).pitch[:-1], row[3]) for row in note.rejected}
        for a, sign_a, with_a, on_b, b, sign_b in SAID.findall(note.text):
            sign = {" sharp": "#", " flat": "b"}.get(sign_a or sign_b, "")
            assert ((a or b) + sign, int(with_a or on_b)) in here, (note.text, here)


def test_the_walking_hand_of_the_first_piece_never_repeats_a_finger():
    """Its remark says so: "never twice the same finger"; the rest of bar 12 starts anew."""
    row = [n.right for bar in fingering("pebble-path").bars for n in bar.notes]
    assert set(row) == {"i", "m"}
    within = [
        [n.right for n in bar.notes] for bar in fingering("pebble-path").bars if len(bar.notes) > 1
    ]
    assert all(a != b for bar in within for a, b in pairwise(bar))


@each
def test_rejected_fingerings_are_possible_and_not_the_one_chosen(name):
    lesson, got = LESSONS[name], fingering(name)
    wood = instrument(lesson.instrument)
    for note in lesson.notes:
        for note_id, string, fret, left in note.rejected:
            chosen = got.note(note_id)
            assert (string, fret) in wood.places(chosen.midi)
            assert (chosen.string, chosen.fret, chosen.left) != (string, fret, left)


@each
def test_notes_are_about_the_piece(name):
    lesson = LESSONS[name]
    count = len(lesson.piece.bars)
    sections = {letter for _, letter in lesson.sections}
    assert len({note.id for note in lesson.notes}) == len(lesson.notes) >= 12
    for note in lesson.notes:
        assert 0 <= note.first_bar <= note.last_bar < count
        assert note.kind in NOTE_KINDS
        assert note.section is None or note.section in sections
        if note.note is not None:
            assert note.first_bar <= lesson.piece.bar_of[note.note] <= note.last_bar
    assert Counter(note.kind for note in lesson.notes)["caution"] >= 1
    bars = {b for note in lesson.notes for b in range(note.first_bar, note.last_bar + 1)}
    assert bars == set(range(count)), "every bar has a word of the teacher"


@each
def test_chord_names_fit_the_notes(name):
    """Outside reference: the chord tones that music21 gives for the printed name."""
    piece = LESSONS[name].piece
    for bar in piece.bars:
        for i, chord in enumerate(bar.chords):
            end = bar.chords[i + 1].onset if i + 1 < len(bar.chords) else bar.length
            tones = {p.pitchClass for p in harmony.ChordSymbol(chord.text).pitches}
            there = {n.midi % 12 for n in bar.notes if chord.onset <= n.onset < end}
            assert len(tones & there) >= 2 or len(there) == 1, (bar.number, chord.text)


@each
def test_the_teachers_practice_time_agrees_with_the_plan_printed_beside_it(name):
    lesson = LESSONS[name]
    planned = make_plan(
        lesson.piece, fingering(name), instrument(lesson.instrument), hand(lesson.hand),
        minutes_a_day=lesson.minutes_a_day, tempo_percent=float(lesson.tempo_percent),
    ).time  # fmt: skip
    assert lesson.practice_minutes == pytest.approx(planned.minutes, rel=0.1)
    assert planned.low <= lesson.practice_minutes <= planned.high


@each
def test_techniques_are_named_as_in_the_catalogue(name):
    data = json.loads((FOLDER.parent / "techniques" / "catalogue.json").read_text(encoding="utf-8"))
    assert set(LESSONS[name].techniques) <= {row["id"] for row in data["techniques"]}


def test_the_two_solos_have_the_form_they_teach():
    for name, second in (("lantern-walk", 9), ("harbour-waltz", 9)):
        piece = LESSONS[name].piece
        assert piece.bars[0].pickup
        order = playing_order(piece)
        assert order[-1] == next(bar.index for bar in piece.bars if bar.fine)
        assert order.count(second) == 2  # second ending: before the middle part, and at the end
        assert order.count(0) == 2  # the pickup again after the D.C.


def test_playing_orders():
    def told(name):
        piece = LESSONS[name].piece
        return [int(piece.bars[i].number) for i in playing_order(piece)]

    # common practice, no source: no repeats after a D.C., and the last ending then
    assert told("lantern-walk") == [
        *range(0, 9), *range(1, 8), 9, *range(10, 18), *range(0, 8), 9,
    ]  # fmt: skip
    assert told("harbour-waltz") == [
        *range(0, 9), *range(1, 7), *range(9, 19), *range(0, 7), 9, 10,
    ]  # fmt: skip


@pytest.mark.parametrize("name", ["rain-on-the-skylight", "evening-at-the-mill"])
def test_plain_repeats_are_played_as_music21_plays_them(name):
    """Outside reference: music21's repeat expander."""
    piece = LESSONS[name].piece
    part = converter.parse(FOLDER / f"{name}.musicxml").parts[0].expandRepeats()
    theirs = [
        sorted(p.midi for n in m.flatten().notes if not isinstance(n, harmony.Harmony)
               for p in n.pitches)
        for m in part.getElementsByClass("Measure")
    ]  # fmt: skip
    ours = [sorted(n.midi for n in piece.bars[i].notes) for i in playing_order(piece)]
    assert ours == theirs


def test_everyone_in_the_scenario_has_their_lesson():
    students = demo_scenario().students
    assert {x for s in students for x in s.lessons} == set(LESSONS)
    for student in students:
        for name in student.lessons:
            lesson = LESSONS[name]
            assert lesson.student == student.name
            assert (lesson.instrument, lesson.hand) == (student.instrument, student.hand)
            assert lesson.settings.level == student.level
            assert lesson.minutes_a_day == student.minutes_a_day


def test_the_shelf_opens_without_the_score_reader():
    code = (
        "import sys\n"
        "from workbench.teaching.lessons.demo import demo_lessons\n"
        "assert len(demo_lessons()) >= 5\n"
        "assert 'music21' not in sys.modules\n"
    )
    subprocess.run([sys.executable, "-c", code], check=True)


def _copy(folder: Path, change) -> Path:
    for file in FOLDER.glob("pebble-path.*.json"):
        (folder / file.name).write_bytes(file.read_bytes())
    path = folder / "pebble-path.lesson.json"
    data = json.loads(path.read_text(encoding="utf-8"))
    change(data)
    path.write_text(json.dumps(data), encoding="utf-8")
    return folder


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (lambda d: d["pins"][0].update(at="bar 1 beat 1 F#4"), "no note 'bar 1 beat 1 F#4'"),
        (lambda d: d["pins"][0].update(at="somewhere"), "no note 'somewhere'"),
        (lambda d: d.pop("grade"), "damaged at 'grade'"),
        (lambda d: d["notes"][0].update(bars="77"), "damaged at '77'"),
    ],
)
def test_a_damaged_lesson_is_named(tmp_path, change, said):
    with pytest.raises(BadInput, match=r"pebble-path\.lesson\.json") as caught:
        demo_lesson(_copy(tmp_path, change), "pebble-path")
    assert said in str(caught.value)


def test_a_missing_piece_is_named(tmp_path):
    folder = _copy(tmp_path, lambda d: None)
    (folder / "pebble-path.piece.json").unlink()
    with pytest.raises(BadInput, match=r"pebble-path\.piece\.json is missing"):
        demo_lesson(folder, "pebble-path")
