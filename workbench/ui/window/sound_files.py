"""Sound files and the student's pack, written from the window."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QFileDialog, QWidget

from workbench.language.speech import mark, say
from workbench.music.files import readable_name
from workbench.store.setting_names import TEXTS_FOLDER
from workbench.ui.bench.jobs import Progress
from workbench.ui.bench.session import Session
from workbench.ui.player.conductor import Conductor
from workbench.ui.player.spans import span_of

#: The forms of the file dialog, in its order.
FORMS = (
    (mark("Sound as it is played now (*.wav)"), ".wav"),
    (mark("Sound as it is played now, packed (*.flac)"), ".flac"),
    (mark("Click track alone (*.wav)"), ".wav"),
    (mark("MIDI with the lengths really held (*.mid)"), ".mid"),
)
CLICKS, MIDI = 2, 3
PACKS = (mark("Packed (*.zip)"), mark("Folder (*)"))


def export_sound(
    conductor: Conductor, over: QWidget, path: str = "", form: int | None = None
) -> None:
    """Write the chosen span, in the player's manner, as a file; asks where without a path."""
    session: Session = conductor.session
    lesson, fingering = session.lesson, session.fingers.fingering
    if lesson is None:
        return
    if not path:
        filters = [say(words) for words, _ in FORMS]
        folder = Path(str(session.shelf.setting(TEXTS_FOLDER) or Path.home()))
        suggested = str(folder / f"{readable_name(lesson.student, lesson.title, say('sound'))}.wav")
        path, chosen = QFileDialog.getSaveFileName(
            over, say("Export sound"), suggested, ";;".join(filters)
        )
        form = filters.index(chosen) if chosen in filters else None
    if not path:
        return
    target = Path(path)
    if form is None:
        form = next((at for at, (_, s) in enumerate(FORMS) if s == target.suffix.lower()), 0)
    suffix = FORMS[form][1]
    if target.suffix.lower() != suffix:
        target = target.with_name(target.name + suffix)
    span = span_of(session, conductor.span, tuple(conductor.rows()))
    programme = conductor.programme(span, conductor.manner)

    def work(progress: Progress) -> Path:
        from workbench.music.writing.score import write_midi
        from workbench.sound.files import write_sound
        from workbench.sound.tracks import click_track, held_lengths, programme_samples

        if form == MIDI:
            held = held_lengths(fingering) if fingering is not None else None
            write_midi(lesson.piece, target, held=held)
        elif form == CLICKS:
            tempo = programme.manner.tempo
            samples = click_track(lesson.piece, programme.order, tempo, progress)
            write_sound(samples, target)
        else:
            write_sound(programme_samples(programme, progress), target)
        return target

    def written(made: Path) -> None:
        session.guard(lambda: session.shelf.set_setting(TEXTS_FOLDER, str(made.parent)))
        session.told.emit(say("The sound is written: {path}", path=made))

    session.jobs.start("export sound", say("Making the sound"), work, written)


def make_pack(conductor: Conductor, over: QWidget, path: str = "") -> None:
    """Write the student's pack, a folder or a zip; asks where without a path."""
    session: Session = conductor.session
    lesson, fingering = session.lesson, session.fingers.fingering
    if lesson is None:
        return
    if fingering is None:
        session.failed.emit(say("Wait until the lesson is fingered, then make the pack."))
        return
    if not path:
        folder = Path(str(session.shelf.setting(TEXTS_FOLDER) or Path.home()))
        suggested = str(folder / f"{readable_name(lesson.student, lesson.title, say('pack'))}.zip")
        path, chosen = QFileDialog.getSaveFileName(
            over, say("Student's pack"), suggested, ";;".join(say(words) for words in PACKS)
        )
        if path and chosen == say(PACKS[0]) and not path.lower().endswith(".zip"):
            path += ".zip"
    if not path:
        return
    from workbench.handout.from_shelf import extras_of

    target = Path(path)
    left_handed, a4 = session.left_handed, conductor.a4
    extras = extras_of(session.shelf, lesson, fingering)

    def work(progress: Progress) -> Path:
        from workbench.handout.sheets.pack import PackOptions, write_pack
        from workbench.ui.bench.services import engraving_in_this_thread

        engraving_in_this_thread()
        options = PackOptions(left_handed=left_handed, a4=a4)
        return write_pack(lesson, fingering, target, options, extras, progress)

    def written(made: Path) -> None:
        session.guard(lambda: session.shelf.set_setting(TEXTS_FOLDER, str(made.parent)))
        session.told.emit(say("The student's pack is written: {path}", path=made))

    session.jobs.start("pack", say("Making the student's pack"), work, written)
