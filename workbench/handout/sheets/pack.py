"""The student's pack: the sheet, the tracks, and a page that plays them in any browser."""

from __future__ import annotations

import json
import shutil
import tempfile
import zipfile
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from workbench.fingering.types import Fingering
from workbench.handout.files.passage import PassageOptions, passage_systems, svg_bytes
from workbench.handout.options import HandoutOptions
from workbench.handout.parts.material import Extras
from workbench.handout.sheets.pack_words import page_words
from workbench.handout.sheets.page import make_handout
from workbench.instrument.model import A4_HZ, Hand, Instrument
from workbench.language.speech import chosen, say
from workbench.music.errors import BadInput
from workbench.music.files import unwritable
from workbench.music.order.form import playing_order
from workbench.sound.files import write_sound
from workbench.sound.render import render
from workbench.sound.timing import bar_times
from workbench.sound.tracks import Track, tracks_of, write_tracks
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.playing import playing_of
from workbench.teaching.planning.plan import Plan, make_plan

PAGE = Path(__file__).resolve().parents[3] / "resources" / "pack"
TEMPOS = (50, 70, 85, 100)  # percent: what the page offers
TRACKS = "tracks"
SHEET = "handout.pdf"
MOST_ITEMS = 40  # of the plan that get tracks: the first weeks

Progress = Callable[[float], None]


@dataclass(frozen=True)
class PackOptions:
    """``paper``, ``large`` and ``left_handed`` as on the handout; ``a4`` in hertz."""

    paper: Any = "a4"
    large: bool = False
    left_handed: bool = False
    a4: float = A4_HZ
    studio: str = ""
    contact: str = ""


def write_pack(
    lesson: Lesson,
    fingering: Fingering,
    target: Path,
    options: PackOptions | None = None,
    extras: Extras | None = None,
    progress: Progress | None = None,
) -> Path:
    """Write the pack as a folder, or packed where the name ends in .zip; where it is.

    It appears whole or not at all. Raises BadInput where there is something of that name
    already that is no pack, or where it cannot be written.
    """
    options, tell = options or PackOptions(), progress or (lambda _share: None)
    packed = target.suffix.lower() == ".zip"
    if target.is_dir() and (packed or (any(target.iterdir()) and not _is_pack(target))):
        raise BadInput(
            "{path} is a folder with other things in it; name a new folder or a .zip file.",
            path=target,
        )
    if target.is_file() and not packed:
        raise BadInput("{path} is a file; name a folder for the pack, or a .zip file.", path=target)
    try:
        with tempfile.TemporaryDirectory(prefix=".pack-", dir=target.parent) as place:
            made = Path(place) / "pack"
            made.mkdir()
            _fill(lesson, fingering, made, options, extras, tell)
            _put(made, target, packed)
    except OSError as fault:
        raise unwritable(target, fault) from fault
    tell(1.0)
    return target


def _is_pack(folder: Path) -> bool:
    return (folder / "index.html").is_file() and (folder / "lesson.js").is_file()


def _put(made: Path, target: Path, packed: bool) -> None:
    """Move what is made to where it was asked for, in place of an older pack."""
    if packed:
        whole = made.parent / "pack.zip"
        with zipfile.ZipFile(whole, "w", zipfile.ZIP_DEFLATED) as archive:
            for path in sorted(made.rglob("*")):
                if path.is_file():
                    archive.write(path, Path(target.stem) / path.relative_to(made))
        whole.replace(target)
        return
    old = made.parent / "old"
    if target.exists():
        target.replace(old)
    try:
        shutil.move(str(made), str(target))
    except OSError:
        if old.exists():
            old.replace(target)
        raise


def _fill(
    lesson: Lesson, fingering: Fingering, folder: Path, options: PackOptions,
    extras: Extras | None, tell: Progress,
) -> None:  # fmt: skip
    instrument, hand = playing_of(lesson)
    piece, order = lesson.piece, playing_order(lesson.piece)
    sheet = HandoutOptions(
        paper=options.paper, large=options.large, left_handed=options.left_handed,
        studio=options.studio, contact=options.contact, tracks=TRACKS,
    )  # fmt: skip
    make_handout(lesson, fingering, folder / SHEET, sheet, extras)
    tell(0.05)

    def plan_of() -> Plan | None:
        return _plan(lesson, fingering, instrument, hand, extras) if piece.notes else None

    plan = plan_of()
    items = [i for i in (plan.items if plan else ()) if i.bars][:MOST_ITEMS]
    tracks = tracks_of(items, order) if items else ()
    by_item: dict[str, list[Track]] = {}
    for track in tracks:
        for name in track.items:
            by_item.setdefault(name, []).append(track)
    pictures = _pictures(lesson, fingering, folder, lambda s: tell(0.05 + 0.3 * s))
    whole = {}
    (folder / TRACKS).mkdir()
    for done, tempo in enumerate(TEMPOS):
        tell(0.35 + 0.25 * done / len(TEMPOS))
        name = f"{TRACKS}/{_whole_name(tempo)}"
        samples = render(piece, fingering, instrument, tempo, order=order, a4=options.a4)
        write_sound(samples, folder / name)
        whole[tempo] = name
    write_tracks(
        piece, fingering, instrument, [t for t in tracks if t.items], folder / TRACKS,
        lambda s: tell(0.6 + 0.38 * s), options.a4,
    )  # fmt: skip
    times = bar_times(piece, order, 100)
    document = {
        "id": lesson.id,
        "title": lesson.title,
        "language": chosen(),
        "left": options.left_handed,
        "large": options.large,
        "tempos": list(TEMPOS),
        "tracks": whole,
        "done": list(lesson.plan_done),
        "bars": [
            {"number": piece.bars[t.index].number, "picture": pictures[t.index],
             "start": t.start, "seconds": t.seconds}
            for t in times
        ],
        "words": page_words(lesson, instrument, plan_of, by_item, TRACKS),
    }  # fmt: skip
    words = json.dumps(document, ensure_ascii=False, indent=1).replace("</", "<\\/")
    (folder / "lesson.js").write_text(f'"use strict";\nwindow.LESSON = {words};\n', "utf-8")
    for name in ("index.html", "page.css", "page.js"):
        shutil.copyfile(PAGE / name, folder / name)


def _whole_name(tempo: int) -> str:
    return say("00 whole piece at {tempo} percent", tempo=tempo) + ".flac"


def _plan(
    lesson: Lesson, fingering: Fingering, instrument: Instrument, hand: Hand,
    extras: Extras | None,
) -> Plan:  # fmt: skip
    return make_plan(
        lesson.piece, fingering, instrument, hand,
        minutes_a_day=max(5, min(240, lesson.minutes_a_day)),
        tempo_percent=max(20, min(200, lesson.tempo_percent)),
        done=lesson.plan_done, model=extras.model if extras else None,
    )  # fmt: skip


def _pictures(lesson: Lesson, fingering: Fingering, folder: Path, tell: Progress) -> dict[int, str]:
    """A picture of every written bar, by its index."""
    (folder / "bars").mkdir()
    out = {}
    bars = lesson.piece.bars
    for bar in bars:
        tell(bar.index / len(bars))
        wanted = PassageOptions(bar.index, bar.index, width_mm=400)
        systems = passage_systems(lesson, fingering, wanted)
        data, _ = svg_bytes(systems, wanted, say("Bar {bar}", bar=bar.number))
        name = f"bars/{bar.index + 1:03}.svg"
        (folder / name).write_bytes(data)
        out[bar.index] = name
    return out
