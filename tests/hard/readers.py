"""Sound inputs of everything the program reads, spoilt by number, and what it does with them.

Input ``n`` is always the same one, so that it can be looked at again by itself.
"""

from __future__ import annotations

import contextlib
import io
import random
import zlib
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from tests.hard.mutations import mutated, spoilt_store, spoilt_words
from tests.store.lessons_made import fingering, lesson, piece
from workbench.cli import main
from workbench.music import suffixes
from workbench.music.errors import BadInput
from workbench.music.reading.score import read_score
from workbench.music.writing.score import musicxml_bytes, write_midi, write_musicxml
from workbench.store.archive import read_archive
from workbench.store.shelf import Shelf

FILES = Path(__file__).parent / "files"
ABC = (
    'X:1\nT:Quay Street\nM:6/8\nL:1/8\nQ:3/8=90\nK:G\n|:G2B d2g|f2e d3|"C"e2c "D"{c}d2B|[1A3 G3:|'
    "[2(3ABc G3|]\nV:2\nG,6|D6|C3 D3|G,6|\n",
    'X:7\nT:Fern Bank\nC:Ida Brandt\nM:3/4\nL:1/4\nK:Dm\n"Dm"A,DF|[DFA]3|'
    "!segno!F>E ^C/D/|D2z!fine!|]\n"
    "w: one two three four five * six\n",
    "X:1\nT:One\nM:C|\nL:1/8\nK:A mix\nAB c2 d2 =g2|a4-a2 z2|\n\nX:2\nT:Two\nM:2/4\nK:Eb\n"
    "[M:3/4] E2 .F2 ~G2|(B,C) [K:F] A4|1 B4 c2:|2 B6|]\n",
)

#: Formats that are not written here and have no spoiling of their own, by their ending: a small
#: score of each lies in files/.
FURTHER = tuple(e.lstrip(".") for e in suffixes.SCORES if suffixes.NAMES[e] not in
                ("MusicXML", "MIDI", "ABC"))  # fmt: skip
#: Of a hundred inputs, how many of every kind; a further format has as many as ABC beside.
SHARES = {
    "musicxml": 30, "mxl": 20, "midi": 18, "abc": 18, "archive": 6, "store": 5, "words": 3,
    **dict.fromkeys(FURTHER, 18),
}  # fmt: skip
SCORES = ("musicxml", "mxl", "midi", "abc", *FURTHER)
BYTES = ("utf-8", "surrogateescape")  # of words
Sound = dict[str, list[tuple[str, bytes]]]

#: What is asked of a store that could be opened.
WORK: tuple[Callable[[Shelf], object], ...] = (
    lambda shelf: shelf.lessons("boat"),
    lambda shelf: [shelf.load(row.id) for row in shelf.lessons()],
    lambda shelf: shelf.save(lesson("l2", capo=3)),
    lambda shelf: shelf.undo("l3"),
    lambda shelf: shelf.versions("l1"),
    lambda shelf: shelf.history("l4"),
    lambda shelf: shelf.groups(),
    lambda shelf: shelf.settings(),
    lambda shelf: shelf.cached_fingering(lesson("l1")),
    lambda shelf: shelf.pieces(),
    lambda shelf: shelf.techniques(),
    lambda shelf: shelf.choices(),
)


def sound_store(folder: Path) -> bytes:
    """A store with something of everything in it."""
    file = folder / "sound.db"
    with Shelf(file) as shelf:
        for number in range(8):
            made = lesson(f"l{number}", piece=piece(shift=number % 3))
            shelf.save(made)
            shelf.save(replace(made, capo=2))
        shelf.keep_version("l1", "v")
        shelf.put_fingering(lesson("l1"), fingering())
        shelf.set_group("Monday", ["Mara"])
        shelf.set_setting("a", {"b": 1})
    return file.read_bytes()


def further(kind: str) -> tuple[str, bytes]:
    """Ending and bytes of the small score of a format."""
    return f".{kind}", (FILES / f"small.{kind}").read_bytes()


def sound_inputs(folder: Path) -> Sound:
    """Small sound inputs of every kind, each with the ending of its name."""
    small = (FILES / "small.musicxml").read_bytes()
    found: Sound = {kind: [] for kind in SHARES}
    found["musicxml"].append((".musicxml", small))
    found["abc"] = [(".abc", text.encode()) for text in ABC]
    for kind in FURTHER:
        found[kind] = [further(kind)]
    scores = [read_score(FILES / "small.musicxml")]
    for number, text in enumerate(ABC):
        path = folder / f"{number}.abc"
        path.write_text(text, encoding="utf-8")
        scores.append(read_score(path))
    for score in scores:
        write_musicxml(score, folder / "a.mxl")
        write_midi(score, folder / "a.mid")
        found["musicxml"].append((".musicxml", musicxml_bytes(score)))
        found["mxl"].append((".mxl", (folder / "a.mxl").read_bytes()))
        found["midi"].append((".mid", (folder / "a.mid").read_bytes()))
    with Shelf(folder / "a.db") as shelf:
        shelf.save(lesson(piece=piece(bars=2)))
        shelf.write_archive(folder / "a.pluckwright")
    found["archive"].append((".pluckwright", (folder / "a.pluckwright").read_bytes()))
    found["store"].append((".db", sound_store(folder)))
    found["words"].append(("", b""))
    return found


def spoilt(number: int, sound: Sound) -> tuple[str, str, bytes]:
    """Kind, ending and bytes of an input; of words of the command line, a line for each."""
    chance = random.Random(number)
    kind = chance.choices(list(SHARES), weights=list(SHARES.values()))[0]
    ending, whole = chance.choice(sound[kind])
    if kind == "words":
        return kind, ending, "\n".join(spoilt_words(chance)).encode(*BYTES)
    if kind == "store":
        return kind, ending, spoilt_store(whole, chance)
    return kind, ending, mutated(kind, whole, chance)


def _score(path: Path, number: int) -> None:
    found = read_score(path, parts="all" if number % 5 == 0 else None)
    assert found.notes, "a score without notes"
    if number % 8 == 0:
        assert musicxml_bytes(found)


def _store(path: Path) -> None:
    with Shelf(path) as shelf:
        for work in WORK:
            with contextlib.suppress(BadInput):
                work(shelf)


def _words(words: list[str]) -> bool:
    """Whether they were understood."""
    told, wrong = io.StringIO(), io.StringIO()
    with contextlib.redirect_stdout(told), contextlib.redirect_stderr(wrong):
        try:
            status = main(words)
        except SystemExit as end:  # --help and --version
            status = int(end.code or 0)
    said = wrong.getvalue()
    assert status in (0, 2), (words, said[-400:])
    assert "Traceback" not in said
    return status == 0


def take(kind: str, path: Path, data: bytes, number: int) -> str:
    """ "taken" or "refused". Whatever else is raised, is a fault."""
    if kind == "words":
        words = data.decode(*BYTES).split("\n")
        return "taken" if _words(words) else "refused"
    try:
        if kind == "store":
            for old in path.parent.glob(f"{path.name}*"):
                old.unlink()
        path.write_bytes(data)
        if kind == "store":
            _store(path)
        elif kind == "archive":
            read_archive(path)
        else:
            _score(path, number)
    except BadInput as wrong:
        check_sentence(str(wrong))
        return "refused"
    return "taken"


def check_sentence(said: str) -> None:
    assert said and "\n" not in said and "Traceback" not in said, said


def digest(data: bytes) -> int:
    """A number that tells inputs apart."""
    return zlib.crc32(data) << 32 | zlib.adler32(data)
