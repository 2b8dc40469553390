"""The work behind the handout dialog: pages laid out, pictured and written. For a job."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtGui import QImage

from workbench.fingering.types import Fingering
from workbench.handout.options import HandoutOptions
from workbench.language.speech import say
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.playing import fingered_on, playing_of
from workbench.ui.bench.services import Services, engraving_in_this_thread

if TYPE_CHECKING:
    from workbench.handout.files.passage import PassageOptions
    from workbench.handout.products import Prepared, Request
    from workbench.handout.sheets.grip_sheet import Order


@dataclass(frozen=True)
class Job:
    """What is to be made, and of what. ``ids`` are the lessons of a book in order;
    ``bars`` the first and last bar of a picture."""

    kind: str
    options: HandoutOptions
    booklet: bool
    order: Order
    title: str
    ids: tuple[str, ...]
    bars: tuple[int, int]
    dots: int
    clear: bool
    lesson: Lesson
    fingering: Fingering
    shelf: Shelf
    services: Services


@dataclass(frozen=True)
class SeenPage:
    """One page as a picture, how many there are, and what is to be known for printing."""

    image: QImage
    count: int
    words: str


def seen(job: Job, number: int, wide: int, ratio: float) -> SeenPage:
    """Page ``number`` of what the job makes, ``wide`` pixels of the screen across."""
    from workbench.handout.files.passage import passage_image, passage_systems
    from workbench.handout.products import laid_out
    from workbench.handout.setting.paged import page_image
    from workbench.handout.sheets.booklet import Booklet, flip_words

    engraving_in_this_thread()
    if job.kind in ("picture", "music"):
        image = passage_image(
            passage_systems(job.lesson, job.fingering, _passage(job)), _passage(job)
        )
        scaled = image.scaledToWidth(min(image.width(), round(wide * ratio)))
        scaled.setDevicePixelRatio(ratio)
        words = ""
        if job.kind == "music":
            words = say("MusicXML holds strings, frets and the fingers of both hands; MIDI the "
                        "notes as they sound, in playing order.")  # fmt: skip
        return SeenPage(scaled, 1, words)
    document = laid_out(_request(job), _lessons(job))
    page = max(0, min(number, document.count - 1))
    words = flip_words(document.inner.count) if isinstance(document, Booklet) else ""
    return SeenPage(page_image(document, page, wide, ratio), document.count, words)


def made(job: Job, path: str, progress: Callable[[float], None]) -> int:
    """Write what the job makes; the number of pages, 0 for what has none."""
    engraving_in_this_thread()
    if job.kind == "picture":
        from workbench.handout.files.passage import make_passage

        make_passage(job.lesson, job.fingering, path, _passage(job))
        return 0
    if job.kind == "music":
        from workbench.music.writing.score import form_of_export, write_midi, write_musicxml

        if form_of_export(path) == "MIDI":
            write_midi(job.lesson.piece, path)
        else:
            write_musicxml(job.lesson.piece, path, job.fingering, playing_of(job.lesson)[0])
        return 0
    from workbench.handout.from_shelf import remember_grades
    from workbench.handout.products import make_product

    lessons = _lessons(job)
    pages = make_product(_request(job), lessons, path, lambda done, of: progress(done / max(1, of)))
    remember_grades(job.shelf, job.kind, lessons)
    return pages


def _request(job: Job) -> Request:
    from workbench.handout.products import Request

    return Request(job.kind, job.options, job.booklet, job.order, job.title)


def _passage(job: Job) -> PassageOptions:
    from workbench.handout.files.passage import PassageOptions

    first, last = job.bars
    if job.kind == "music":
        first, last = 0, min(11, len(job.lesson.piece.bars) - 1)
    return PassageOptions(first, last, dpi=job.dots, transparent=job.clear)


def _lessons(job: Job) -> list[Prepared]:
    from workbench.handout.from_shelf import extras_of
    from workbench.handout.products import Prepared

    ids = job.ids if job.kind == "book" else (job.lesson.id,)
    out = []
    for name in ids:
        lesson, fingering = job.lesson, job.fingering
        if name != lesson.id:
            lesson = job.shelf.load(name)
            kept = job.shelf.cached_fingering(lesson)
            fingering = kept or job.services.solver(lesson, *fingered_on(lesson)).with_pins(
                lesson.pins
            )
        out.append(Prepared(lesson, fingering, extras_of(job.shelf, lesson, fingering)))
    return out
