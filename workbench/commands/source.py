"""What the verbs share: naming a score, an instrument and a hand, and loading them."""

from __future__ import annotations

import argparse
import re
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from workbench.arranging.weights import STRICT, Wishes
from workbench.fingering.pins.printed import PrintedPins, printed_pins
from workbench.fingering.types import LEVELS, STYLES, Level, Pin, Settings
from workbench.instrument.model import A4_HIGHEST, A4_HZ, A4_LOWEST, Hand, Instrument
from workbench.instrument.table import hand as find_hand
from workbench.instrument.table import instrument as find_instrument
from workbench.music.errors import BadInput
from workbench.teaching.lessons.lesson import Lesson

if TYPE_CHECKING:
    from workbench.arranging.arrange import Arranged
    from workbench.arranging.leadsheet import Pattern
    from workbench.music.model import Piece

INSTRUMENT_HELP = (
    "ukulele, ukulele-low-g, baritone-ukulele, guitar ..., or an own one such as "
    "custom:G4,C4,E4,A4@345: highest-numbered string to string 1, then the scale length in mm"
)


def score_options(parser: argparse.ArgumentParser, lessons: bool = False) -> None:
    """SCORE, ``--tune`` and ``--parts``."""
    what = "a score file, or 'demo' ('demo:2' for the second demo piece)"
    if lessons:
        what += ", or the id of a lesson in the store"
    parser.add_argument("score", metavar="SCORE", help=what)
    parser.add_argument("--tune", type=int, default=1, metavar="N", help="in a book of tunes")
    parser.add_argument(
        "--parts", metavar="LIST", help="parts to take, such as 1,3, or 'all' (default: the top)"
    )


def pitch_option(parser: argparse.ArgumentParser) -> None:
    """The pitch of A4 that is to be heard, as ``options.a4``."""
    parser.add_argument(
        "--a4", type=float, default=A4_HZ, metavar="HZ", help="pitch of A4 (default 440, ISO 16)"
    )


def check_pitch(options: argparse.Namespace) -> None:
    """Raises BadInput where strings are not tuned to such an A4."""
    if not A4_LOWEST <= options.a4 <= A4_HIGHEST:
        raise BadInput("--a4 {hertz:g}: choose 390 to 470 hertz.", hertz=options.a4)


def playing_options(parser: argparse.ArgumentParser) -> None:
    """The instrument, the hand, the key and what else steers a fingering."""
    parser.add_argument("--instrument", metavar="I", help=INSTRUMENT_HELP)
    parser.add_argument("--capo", type=int, metavar="FRET", help="fret the capo sits on")
    arranging_options(parser)
    hand_option(parser)
    level_option(parser)
    parser.add_argument("--style", choices=tuple(STYLES), help="style of the right hand")
    parser.add_argument(
        "--school", choices=("strong-fingers", "little-finger", "finger-a-fret"),
        help="school of fingering; without one, what editions have in common",
    )  # fmt: skip
    parser.add_argument(
        "--relaxed-hand", action="store_true",
        help="prefer fingers 1 and 3 to 1 and 2 on neighbouring frets",
    )  # fmt: skip
    parser.add_argument(
        "--campanella", action="store_true",
        help="on a re-entrant tuning: neighbouring scale notes on different strings, ringing on",
    )  # fmt: skip
    parser.add_argument(
        "--rest-strokes", action="store_true", help="mark rest strokes in single-line melody"
    )
    parser.add_argument(
        "--pin",
        action="append",
        default=[],
        metavar="NOTE=...",
        help="fix a note by its id: string:2,fret:3,left:4,right:m (any of the four); repeatable",
    )
    parser.add_argument(
        "--refinger", action="store_true",
        help="finger anew, whatever fingering the score itself prints",
    )  # fmt: skip


def arranging_options(parser: argparse.ArgumentParser) -> None:
    """The key, and how the score is laid on the instrument."""
    key = parser.add_mutually_exclusive_group()
    key.add_argument(
        "--key", metavar="K", help="key to move to, such as F, Bb or 'D minor', or 'best'"
    )
    key.add_argument(
        "--transpose", type=int, metavar="N",
        help="semitones to move by; 0 leaves the key as written",
    )  # fmt: skip
    parser.add_argument(
        "--solo", nargs="?", const="", metavar="LETTERS",
        help="make a solo of a lead sheet: its tune over a right-hand pattern such as 'p i m i', "
        "without letters the one for metre and --level",
    )  # fmt: skip
    part_options(parser)
    parser.add_argument(
        "--top-fret", type=int, metavar="N", help="no note above this fret (default 12)"
    )
    parser.add_argument(
        "--strict", choices=STRICT,
        help="keep what can be kept, or leave out what makes it hard (default playable)",
    )  # fmt: skip


def wishes(options: argparse.Namespace, lesson: Lesson | None) -> Wishes:
    """Highest fret, strictness and parts as asked for, the rest as the lesson has it."""
    asked = {
        name: value
        for name in ("top_fret", "strict", "tune_part", "bass_part")
        if (value := getattr(options, name, None)) is not None
    }
    return replace(lesson.wishes if lesson else Wishes(), **asked)


def part_options(parser: argparse.ArgumentParser) -> None:
    """Which part is the tune, which the bass."""
    parser.add_argument(
        "--tune-part", type=int, metavar="N",
        help="the part that is the tune; with this or --bass-part all parts are taken, unless "
        "--parts says which",
    )  # fmt: skip
    parser.add_argument("--bass-part", type=int, metavar="N", help="the part that is the bass")


def level_option(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--level", choices=tuple(LEVELS), help="level of the student")


def hand_option(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "--hand",
        metavar="H",
        help="small, medium (default), large, or own:34,74,53: spans of fingers 1-2, 1-4, "
        "2-4 in mm",
    )


@dataclass(frozen=True)
class Asked:
    """A piece, and the lesson it came from where it did."""

    piece: Piece
    lesson: Lesson | None = None


def load(options: argparse.Namespace, lessons: bool = False) -> Asked:
    """The score or lesson that the options name.

    Raises BadInput with one sentence where there is no such thing.
    """
    named, parts = str(options.score), _parts(options.parts)
    if parts is None and (
        getattr(options, "tune_part", None) or getattr(options, "bass_part", None)
    ):
        parts = "all"
    demo = re.fullmatch(r"demo(?::(\d+))?", named)
    if demo and not Path(named).exists():
        return _demo(int(demo.group(1) or 1))
    if lessons and not Path(named).exists() and not Path(named).suffix:
        kept = _kept_lesson(named)
        if kept is None:
            raise BadInput(
                "{named} is neither a score file nor the id of a lesson; 'lessons' lists the ids.",
                named=named,
            )
        return Asked(kept.piece, kept)
    from workbench.music.reading.apart import read_apart

    return Asked(read_apart(Path(named), tune=options.tune, parts=parts))


def _demo(number: int) -> Asked:
    from workbench.teaching.lessons.demo import demo_lessons

    shelf = demo_lessons()
    if not 1 <= number <= len(shelf):
        raise BadInput(
            "There are {last} demo pieces; write demo:1 to demo:{last}.", last=len(shelf)
        )
    return Asked(shelf[number - 1].piece, shelf[number - 1])


def _parts(text: str | None) -> Any:
    if text is None or text == "all":
        return text
    try:
        numbers = [int(word) for word in text.split(",")]
    except ValueError:
        raise BadInput("--parts {text}: write numbers such as 1,3, or all.", text=text) from None
    if min(numbers) < 1:
        raise BadInput("--parts {text}: parts count from 1, the top one.", text=text)
    return numbers


def _kept_lesson(named: str) -> Lesson | None:
    """The lesson of that id in the store; None where it has none."""
    from workbench.store.shelf import Shelf

    with Shelf() as shelf:
        if all(row.id != named for row in shelf.lessons(archived=None)):
            return None
        return shelf.load(named)


def player(options: argparse.Namespace, lesson: Lesson | None) -> tuple[Instrument, Hand]:
    """Instrument and hand: as asked for, else the lesson's own, else ukulele and medium."""
    name = options.instrument or (lesson.instrument if lesson else "ukulele")
    capo = getattr(options, "capo", None)
    if capo is None:
        capo = lesson.capo if lesson and name == lesson.instrument else 0
    hand = options.hand or (lesson.hand if lesson else "medium")
    return find_instrument(name, capo), find_hand(hand)


def settings(
    options: argparse.Namespace, lesson: Lesson | None, instrument: Instrument
) -> Settings:
    """Level, style, hand and strokes as asked for, the rest as the lesson has it; a score
    is fingered with what was learnt for the instrument."""
    from workbench.store.learning import weights_in_force

    base = lesson.settings if lesson else Settings(weights=weights_in_force(instrument.scale_mm))
    if options.level:
        base = replace(base, level=options.level)
    if options.style:
        base = replace(base, style=options.style)
    if options.school:
        base = replace(base, school=options.school)
    if options.relaxed_hand:
        base = replace(base, relaxed_hand=True)
    if options.campanella:
        if not instrument.reentrant:
            raise BadInput(
                "--campanella needs a re-entrant tuning such as the ukulele's with high G; "
                "on {instrument} leave it out.",
                instrument=instrument.called,
            )
        base = replace(base, campanella=True)
    if options.rest_strokes:
        base = replace(base, rest_strokes=True)
    return base


def pattern_asked(options: argparse.Namespace, piece: Piece) -> Pattern | None:
    """The right-hand pattern where a solo of a lead sheet is asked for."""
    letters = getattr(options, "solo", None)
    if letters is None:
        return None
    from workbench.arranging.leadsheet import pattern_for, pattern_named

    level: Level = getattr(options, "level", None) or "middle"
    return pattern_named(piece, letters) if letters else pattern_for(piece, level)


def taken(
    options: argparse.Namespace, source: Asked, instrument: Instrument, hand: Hand
) -> tuple[Piece, str | None, int | None]:
    """The piece as it is to be laid, a solo of a lead sheet where that is asked for, and the key
    or the semitones to lay it at: for a solo those that it is made for."""
    pattern = pattern_asked(options, source.piece)
    if pattern is None:
        return source.piece, options.key, options.transpose
    from workbench.arranging.leadsheet import solo_on

    piece, move = solo_on(
        source.piece, pattern, instrument, key=options.key, transpose=options.transpose,
        hand=hand, wishes=wishes(options, source.lesson),
    )  # fmt: skip
    return piece, None, move


def arranged(
    options: argparse.Namespace, source: Asked, instrument: Instrument, hand: Hand
) -> Arranged:
    """The piece in the key asked for, placed on the instrument; a lesson that stays on its
    instrument and in its key is taken as it stands."""
    from workbench.arranging.arrange import arrange, as_written

    lesson, wanted = source.lesson, wishes(options, source.lesson)
    piece, key, transpose = taken(options, source, instrument, hand)
    free = (options.key, options.transpose) == (None, None)
    if lesson is not None and free and piece is source.piece:
        same = (instrument.id, instrument.capo) == (lesson.instrument, lesson.capo)
        if same and wanted == lesson.wishes:
            return as_written(source.piece)
    placed = arrange(piece, instrument, key=key, transpose=transpose, hand=hand, wishes=wanted)
    if not any(instrument.places(note.midi) for note in placed.piece.notes):
        raise BadInput(
            "No note of '{title}' lies on the neck of this instrument; choose another tuning.",
            title=placed.piece.title,
        )
    return placed


def printed(
    options: argparse.Namespace, piece: Piece, lesson: Lesson | None, instrument: Instrument,
    hand: Hand,
) -> PrintedPins:  # fmt: skip
    """What is held of the fingering that a score prints; nothing of a lesson's, or where it
    is to be fingered anew."""
    if lesson is not None or options.refinger:
        return PrintedPins()
    return printed_pins(piece, instrument, hand, chosen=options.instrument is not None)


def pins(
    options: argparse.Namespace,
    piece: Piece,
    lesson: Lesson | None,
    printed: PrintedPins = PrintedPins(),  # noqa: B008 - a frozen value
) -> tuple[Pin, ...]:
    """The pins asked for, over the lesson's own where it stays on its instrument and key,
    or over what a score prints.

    Raises BadInput where a pin names no note or says nothing.
    """
    known = {note.id for note in piece.notes}
    asked = {pin.note: pin for pin in (parse_pin(text) for text in options.pin)}
    for note in asked:
        if note not in known:
            raise BadInput(
                "--pin {note}: the piece has no note of that id; 'finger' shows the ids.",
                note=note,
            )
    moved = options.key or options.transpose or options.capo is not None
    if lesson and not moved and options.instrument in (None, lesson.instrument):
        kept = {pin.note: pin for pin in lesson.pins if pin.note in known}
        asked = {**kept, **asked}
    asked = {pin.note: pin for pin in printed.pins} | asked
    return tuple(asked.values())


def parse_pin(text: str) -> Pin:
    """A pin such as ``n12=string:2,fret:3,left:4,right:m``.

    Raises BadInput where it is written wrongly.
    """
    note, _, rest = text.partition("=")
    found: dict[str, int] = {}
    right: str | None = None
    for word in filter(None, rest.split(",")):
        name, _, value = word.partition(":")
        if name in ("string", "fret", "left") and re.fullmatch(r"[0-9]{1,3}", value):
            found[name] = int(value)
        elif name == "right" and value in ("p", "i", "m", "a"):
            right = value
        else:
            raise BadInput(
                "--pin {text}: '{word}' is not understood; "
                "write string:2, fret:3, left:4 (0 to 4) or right:m (p i m a).",
                text=text,
                word=word,
            )
    if not note or not (found or right):
        raise BadInput("--pin {text}: write it like n12=string:2,left:4.", text=text)
    if not 0 <= found.get("left", 0) <= 4:
        raise BadInput("--pin {text}: left fingers are 0 (open) to 4.", text=text)
    return Pin(
        note,
        string=found.get("string"),
        fret=found.get("fret"),
        left=found.get("left"),
        right=right,
    )
