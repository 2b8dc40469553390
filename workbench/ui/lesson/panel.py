"""What is true of the whole lesson: for whom, on what, how hard, how long."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QFormLayout,
    QFrame,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from workbench.fingering.telling.legato import NOTHING_PLAYED
from workbench.fingering.types import LEVELS, STYLES, Settings
from workbench.fingering.weights import COMMON, schools
from workbench.instrument.table import HANDS
from workbench.instrument.table import instrument as find_instrument
from workbench.language.names import key_words
from workbench.language.speech import mark, say
from workbench.music.reading.building import LONGEST_TEXT
from workbench.teaching.grading.grade import THIRD_WORDS
from workbench.teaching.lessons import edits
from workbench.teaching.lessons.altered import altered
from workbench.teaching.lessons.lesson import Lesson
from workbench.ui.bench.session import Session
from workbench.ui.kit.parts import Caution, Faint, Heading, Words
from workbench.ui.lesson.estimate_row import EstimateRow
from workbench.ui.lesson.spans_dialog import SAFETY

NONE = -1  # a spin box at its special value: not given
#: Stored words as they are shown; others, such as "i-m", are shown as they are.
SHOWN: dict[str, str] = {
    "small": mark("small"),
    "medium": mark("medium"),
    "large": mark("large"),
    **{str(level): words for level, words in LEVELS.items()},
    "thumb": mark("thumb"),
    **{str(third): words for third, words in THIRD_WORDS.items()},
    "": mark("not given"),
}
#: What a step of the history is called, by the field that it changes.
STEPS = {
    "title": mark("Change the title"),
    "student": mark("Change the student"),
    "hand": mark("Change the hand"),
    "level": mark("Change the level"),
    "style": mark("Change the style"),
    "grade": mark("Change the grade"),
    "grade_level": mark("Change the grade level"),
    "practice_minutes": mark("Change the practice minutes"),
    "minutes_a_day": mark("Change the minutes a day"),
    "tempo_percent": mark("Change the tempo percent"),
    "techniques": mark("Change the techniques"),
}


def shown(word: str) -> str:
    """A stored word as it is shown."""
    return say(SHOWN[word]) if word in SHOWN else word


def with_word(settings: Settings, name: str, at: int) -> Settings:
    """The settings with another level or style, the one at that place of the list."""
    if name == "level":
        return replace(settings, level=tuple(LEVELS)[at])
    return replace(settings, style=tuple(STYLES)[at])


def with_tick(settings: Settings, name: str, on: bool) -> Settings:
    """The settings with the relaxed hand, campanella or the rest strokes switched."""
    if name == "relaxed_hand":
        return replace(settings, relaxed_hand=on)
    if name == "campanella":
        return replace(settings, campanella=on)
    return replace(settings, rest_strokes=on)


class LessonPanel(QWidget):
    """The lesson's fields; every change is kept at once."""

    wants_music_changed = Signal()  # another instrument or key

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._filling = False
        self._show: list[Callable[[Lesson], None]] = []
        self.form = QFormLayout()
        self.form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        self.form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        self.title = self._line(say("&Title"), "title")
        self.student = self._line(say("&Student or group"), "student")
        self.music = Faint()
        self.music_button = QPushButton(say("Instrument and &key …"))
        self.form.addRow(self.music)
        self.form.addRow(self.music_button)
        self.hand = self._choice(say("&Hand"), tuple(HANDS), "hand")
        self.spans = QPushButton(say("&Measured hand …"))
        self.spans.setToolTip(say("Enter three spans of the student's left hand in millimetres"))
        self.spans.clicked.connect(self._measure)
        self.form.addRow(self.spans)
        self.level = self._setting(say("&Level"), tuple(LEVELS), "level")
        self.school = self._schools()
        self._setting(say("&Right hand"), tuple(STYLES), "style")
        self.relaxed = self._tick(
            say("Relaxed hand: 1 and 3 on neighbouring frets"), "relaxed_hand"
        )
        self.campanella = self._tick(
            say("Campanella: scales ring across the strings"), "campanella"
        )
        self.campanella.setToolTip(
            say(
                "Neighbouring notes of a scale lie on different strings and ring on; "
                "for re-entrant tunings"
            )
        )
        self._show.append(self._show_campanella)
        self.rest_strokes = self._tick(say("Mark rest strokes"), "rest_strokes")
        self.grade = self._number(say("&Grade"), "grade", 0, 8, "", say("not given"))
        self.grade_level = self._choice(say("Within the grade"), ("", *THIRD_WORDS), "grade_level")
        self.estimate = EstimateRow(self._session)
        self.form.addRow(self.estimate)
        self.practice = self._number(
            say("&Practice in all"),
            "practice_minutes",
            0,
            100_000,
            say(" min"),
            say("not given"),
        )
        self.daily = self._number(say("Practice a &day"), "minutes_a_day", 1, 600, say(" min"), "")
        self.tempo = self._number(say("T&empo"), "tempo_percent", 10, 400, " %", "")
        self.techniques = QLineEdit()
        self.techniques.editingFinished.connect(self._techniques_done)
        self._show.append(lambda lesson: self.techniques.setText(", ".join(lesson.techniques)))
        self._show.append(lambda _: self.techniques.setCursorPosition(0))
        self._row(say("Techni&ques"), self.techniques)
        self.changes = Faint()
        self.audit = Faint()
        self.caution = Caution()
        self.caution.say(say(SAFETY))

        inner = QWidget()
        column = QVBoxLayout(inner)
        column.addLayout(self.form)
        column.addWidget(Heading(say("Legato")))
        column.addWidget(self.audit)
        self.changes_heading = Heading(say("What arranging changed"))
        column.addWidget(self.changes_heading)
        column.addWidget(self.changes)
        column.addWidget(self.caution)
        column.addStretch(1)
        area = QScrollArea()
        area.setWidget(inner)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setAccessibleName(say("The whole lesson"))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(area)
        self.music_button.clicked.connect(self.wants_music_changed)
        for signal in (session.opened, session.changed, session.fingers.fingered):
            signal.connect(self.refresh)
        self.refresh()

    def _row(self, label: str, field: QWidget) -> None:
        words = Words(label)
        words.setBuddy(field)
        field.setAccessibleName(label.replace("&", ""))
        self.form.addRow(words, field)

    def _line(self, label: str, name: str) -> QLineEdit:
        line = QLineEdit()
        line.setMaxLength(LONGEST_TEXT)
        self._row(label, line)
        line.editingFinished.connect(lambda: self._write(name, line.text().strip()))
        self._show.append(lambda lesson: line.setText(getattr(lesson, name)))
        return line

    def _choice(self, label: str, values: tuple[str, ...], name: str) -> QComboBox:
        box = QComboBox()
        box.addItems([shown(value) for value in values])
        self._row(label, box)
        box.activated.connect(lambda at: self._write(name, values[at]) if at < len(values) else 0)

        def show(lesson: Lesson) -> None:
            value = getattr(lesson, name)
            if value in values:
                box.setCurrentIndex(values.index(value))
            else:  # a measured hand, say
                if box.findText(value) < 0:
                    box.addItem(value)
                box.setCurrentIndex(box.findText(value))

        self._show.append(show)
        return box

    def _setting(self, label: str, values: tuple[str, ...], name: str) -> QComboBox:
        box = QComboBox()
        box.addItems([shown(value) for value in values])
        self._row(label, box)
        box.activated.connect(
            lambda at: self._session.edit(
                say(STEPS[name]),
                lambda lesson: edits.set_settings(lesson, with_word(lesson.settings, name, at)),
            )
        )
        self._show.append(
            lambda lesson: box.setCurrentIndex(values.index(getattr(lesson.settings, name)))
        )
        return box

    def _schools(self) -> QComboBox:
        """The school of fingering, each told in the tip of its row."""
        box = QComboBox()
        box.addItem(say(COMMON), "")
        for name, (title, does) in schools().items():
            box.addItem(say(title), name)
            box.setItemData(box.count() - 1, say(does), Qt.ItemDataRole.ToolTipRole)
        self._row(say("S&chool of fingering"), box)
        box.activated.connect(
            lambda at: self._session.edit(
                say("Change the school of fingering"),
                lambda lesson: edits.set_settings(
                    lesson, replace(lesson.settings, school=str(box.itemData(at)))
                ),
            )
        )
        self._show.append(
            lambda lesson: box.setCurrentIndex(max(0, box.findData(lesson.settings.school)))
        )
        return box

    def _tick(self, label: str, name: str) -> QCheckBox:
        box = QCheckBox(label)
        box.setAccessibleName(label)
        self.form.addRow(box)
        box.clicked.connect(
            lambda on: self._session.edit(
                say("Change: {what}", what=label),
                lambda lesson: edits.set_settings(lesson, with_tick(lesson.settings, name, on)),
            )
        )
        self._show.append(lambda lesson: box.setChecked(getattr(lesson.settings, name)))
        return box

    def _show_campanella(self, lesson: Lesson) -> None:
        """The choice is there where the tuning is re-entrant."""
        reentrant = find_instrument(lesson.instrument, lesson.capo).reentrant
        self.form.setRowVisible(self.campanella, reentrant)

    def _number(self, label: str, name: str, low: int, high: int, unit: str, none: str) -> QSpinBox:
        box = QSpinBox()
        box.setRange(NONE if none else low, high)
        box.setSpecialValueText(none)
        box.setSuffix(unit)
        box.setKeyboardTracking(False)
        self._row(label, box)
        box.valueChanged.connect(
            lambda value: self._write(name, None if none and value == NONE else value)
        )

        def show(lesson: Lesson) -> None:
            value = getattr(lesson, name)
            box.setValue(NONE if value is None else value)

        self._show.append(show)
        return box

    def _write(self, name: str, value: Any) -> None:
        lesson = self._session.lesson
        if self._filling or lesson is None or getattr(lesson, name) == value:
            return
        if not self._session.edit(
            say(STEPS[name]), lambda old: edits.set_field(old, name, value), merge=True
        ):
            self.refresh()

    def _measure(self) -> None:
        """Ask for the three spans of the student's own hand."""
        from workbench.ui.lesson.spans_dialog import SpansDialog

        dialog = SpansDialog(self._session.hand, self)
        if dialog.exec():
            self._write("hand", dialog.hand())

    def _techniques_done(self) -> None:
        names = tuple(w.strip() for w in self.techniques.text().split(",") if w.strip())
        self._write("techniques", names)

    def refresh(self) -> None:
        """Show the lesson."""
        lesson = self._session.lesson
        self.setEnabled(lesson is not None)
        if lesson is None:
            return
        self._filling = True
        for show in self._show:
            show(lesson)
        self._filling = False
        instrument = self._session.instrument
        key = key_words(lesson.key or lesson.piece.key.name)
        music = say("{instrument}; {key}", instrument=instrument.called, key=key)
        if lesson.capo:
            music = say(
                "{instrument}, capo at fret {fret}; {key}",
                instrument=instrument.called,
                fret=lesson.capo,
                key=key,
            )
        self.music.setText(music)
        self.changes.setText("\n".join(f"– {reason}" for reason in altered(lesson)))
        for part in (self.changes, self.changes_heading):
            part.setVisible(bool(lesson.changes or lesson.arranged))
        fingering = self._session.fingers.fingering
        if fingering:
            audit = fingering.audit
            self.audit.setText(
                say(
                    "{held} of {notes} notes are held for their full length; {percent} % of all "
                    "written length sounds.",
                    held=audit.notes - audit.cut,
                    notes=audit.notes,
                    percent=f"{100 * audit.held_fraction:.0f}",
                )
                if audit.notes
                else say(NOTHING_PLAYED)
            )
        else:
            self.audit.setText(say("The fingering is being worked out."))
