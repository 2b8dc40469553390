"""An exercise as a file: a sound to play along with, a strip of music to print."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QMarginsF, QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QFont, QImage, QPageSize, QPainter, QPdfWriter

from workbench.engraving.app import SANS
from workbench.engraving.paint import ScoreImage
from workbench.instrument.model import Instrument
from workbench.language.message import message
from workbench.music.errors import BadInput
from workbench.music.files import whole_file
from workbench.music.suffixes import PDF
from workbench.teaching.techniques.exercises import Exercise
from workbench.ui.bench.jobs import Progress
from workbench.ui.score.short import engraved

WIDTH = 620.0  # image units of an exercise on paper
EDGE = 18.0
FINE = 4  # pixels of a PNG to an image unit
SUFFIXES = (PDF, ".png")


def write_sound(
    exercise: Exercise, instrument: Instrument, percent: float, path: Path, progress: Progress
) -> Path:
    """The exercise, as often as it is to be repeated, at ``percent`` of the piece's tempo.

    Raises BadInput where it cannot be written.
    """
    from workbench.sound.files import make_sound

    make_sound(
        exercise.piece,
        path,
        exercise.fingering,
        instrument,
        tempo_percent=100.0 * percent / exercise.tempo_percent,
        progress=progress,
    )
    return path


def write_strip(exercise: Exercise, instrument: Instrument, path: Path) -> Path:
    """The exercise as a strip of music with its title and what to do: PDF (vector) or PNG
    by the name's ending. Raises BadInput for another ending or an unwritable place."""
    suffix = path.suffix.lower()
    if suffix not in SUFFIXES:
        raise BadInput(
            "{path}: write an exercise as .pdf or .png; end the name with one of them.", path=path
        )
    image = engraved(exercise.piece, exercise.fingering, instrument, WIDTH, "#000000")
    words = _words(exercise)
    height = _text_height(words) + image.size.height() + 2 * EDGE
    size = QSizeF(max(WIDTH, image.size.width()) + 2 * EDGE, height)
    with whole_file(path) as part:
        (_pdf if suffix == PDF else _png)(part, image, words, size)
        if part.stat().st_size == 0:
            raise OSError(message("nothing could be written"))
    return path


def _words(exercise: Exercise) -> list[tuple[str, QFont]]:
    heading, plain = QFont(SANS), QFont(SANS)
    heading.setPixelSize(17)
    heading.setBold(True)
    plain.setPixelSize(13)
    return [(str(exercise.title), heading), (str(exercise.text), plain)]


def _room(font: QFont, top: float) -> QRectF:
    return QRectF(EDGE, top, WIDTH, font.pixelSize() * 1.4 * 4)


def _text_height(words: list[tuple[str, QFont]]) -> float:
    from PySide6.QtGui import QFontMetricsF

    flags = int(Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft)
    return sum(
        QFontMetricsF(font).boundingRect(_room(font, 0), flags, text).height() + 6
        for text, font in words
    )


def _paint(painter: QPainter, image: ScoreImage, words: list[tuple[str, QFont]]) -> None:
    top = EDGE
    flags = int(Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft)
    for text, font in words:
        painter.setFont(font)
        room = _room(font, top)
        painter.drawText(room, flags, text)
        top += _text_height([(text, font)])
    painter.translate(QPointF(EDGE, top))
    image.paint(painter)


def _pdf(path: Path, image: ScoreImage, words: list[tuple[str, QFont]], size: QSizeF) -> None:
    writer = QPdfWriter(str(path))
    points = size * 0.75  # an image unit is a pixel at 96 to the inch
    writer.setPageSize(QPageSize(points, QPageSize.Unit.Point))
    writer.setPageMargins(QMarginsF(0, 0, 0, 0))
    writer.setTitle(words[0][0])
    writer.setCreator("Pluckwright")
    writer.setResolution(1200)
    painter = QPainter(writer)
    painter.scale(1200 / 96, 1200 / 96)
    _paint(painter, image, words)
    painter.end()


def _png(path: Path, image: ScoreImage, words: list[tuple[str, QFont]], size: QSizeF) -> None:
    picture = QImage((size * FINE).toSize(), QImage.Format.Format_RGB32)
    picture.fill(Qt.GlobalColor.white)
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.scale(FINE, FINE)
    _paint(painter, image, words)
    painter.end()
    if not picture.save(str(path)):
        raise OSError(message("the picture could not be saved"))
