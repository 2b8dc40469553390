"""Read a score file into a Piece: MusicXML, MIDI and ABC, by way of music21.

music21 is imported when first needed, for it takes long.
"""

from __future__ import annotations

import contextlib
import io
import re
import traceback
import warnings
from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import Any

from workbench.language.fact import Fact, fact
from workbench.language.message import Message, message
from workbench.music.errors import BadInput
from workbench.music.model import Key, Piece
from workbench.music.parsing.abcsigns import abc_signs
from workbench.music.parsing.abcvoices import each_voice_once, voice_names
from workbench.music.parsing.fingerxml import printed_fingering
from workbench.music.parsing.heardkey import (
    LEAST,
    key_of_chords,
    quarter_tones_told,
    with_fitting_keys,
    with_heard_key,
    with_settled_keys,
)
from workbench.music.parsing.meters import check_abc_meters, check_xml_meters
from workbench.music.parsing.midifile import check_midi
from workbench.music.parsing.signs import sound_signs
from workbench.music.parsing.spelling import spelled
from workbench.music.reading.building import build
from workbench.music.reading.choosing import check_tune, tunes_of
from workbench.music.reading.clashes import clashes
from workbench.music.reading.loading import Source, load

OWN = Path(__file__).resolve().parents[2]
_ABC_JUMP = re.compile(
    r"""[!"][\^_<>@]?\s*(D\.?C\.?|D\.?S\.?|da\s?capo|da\s?coda|fine|segno|coda)\b[^!"\n]*[!"]""",
    re.I,
)


def read_score(
    path: str | Path,
    *,
    tune: int = 1,
    parts: str | Sequence[int] | None = None,
    loaded: Callable[[int], None] = lambda size: None,
) -> Piece:
    """The piece in the file.

    ``tune`` picks one of a book of several, from 1; ``parts`` are part
    numbers from 1, "all", or None for the top part (with all its staves).
    ``loaded`` is told how many bytes there are to be understood. Raises
    BadInput with one sentence where the file cannot be used.
    """
    source = load(path)
    loaded(len(source.data))
    if source.kind == "abc":
        return _read_abc(source, tune, parts)
    check_tune(tune, (source.name,), source.name)
    if source.kind == "midi":
        divisors = check_midi(source.data, source.name)
        score = _parsed(source, source.data, "midi", quarterLengthDivisors=divisors)
        piece = _built(source, score, parts=parts, sounding=True)
        return spelled(piece, None if _keyed(score) else _heard_key(score))
    assert source.root is not None, "a MusicXML score comes with its elements"
    check_xml_meters(source.data, source.name)
    score = _parsed(source, source.data, "musicxml")
    piece = _built(
        source,
        score,
        parts=parts,
        played=sound_signs(source.root),
        printed=printed_fingering(source.root),
    )
    if not any(bar.key.fifths for bar in piece.bars):
        if chords := key_of_chords(piece):
            piece = with_heard_key(piece, chords)
        elif sum(n.pitch.alter != 0 for n in piece.notes) >= LEAST:
            piece = with_heard_key(piece, _heard_key(score))
    piece = with_fitting_keys(with_settled_keys(piece))
    told = (*quarter_tones_told(source.data.decode("utf-8", "replace")), *clashes(piece))
    if piece.written:
        told = (*told, _printed_told(piece))
    return replace(piece, warnings=(*piece.warnings, *told)) if told else piece


def _printed_told(piece: Piece) -> Fact:
    """What becomes of the fingering that the score prints."""
    doubtful = all(w.doubtful for w in piece.written)
    return fact("fingers of some instrument" if doubtful else "fingers", n=len(piece.written))


def _read_abc(source: Source, tune: int, parts: str | Sequence[int] | None) -> Piece:
    text = _decoded(source.data).replace("\r\n", "\n").replace("\r", "\n")
    titles, texts = tunes_of(text, Path(source.name).stem)
    check_tune(tune, titles, source.name)
    chosen = each_voice_once(texts[tune - 1])
    check_abc_meters(chosen, source.name)
    score = _parsed(source, chosen, "abc")
    if "Opus" in score.classes:
        score = next(iter(score.scores), None)
        if score is None:
            raise BadInput(
                "{name}: tune {tune} has no notes; choose another.",
                name=source.name,
                tune=tune,
            )
    built = partial(
        _built, source, score, parts=parts, title=titles[tune - 1],
        meters=_abc_meters(chosen), sounding=True,
    )  # fmt: skip
    piece = built()
    jumps = _ABC_JUMP.search(chosen)
    if jumps:
        struck = [sum(not n.grace for n in b.notes) for b in piece.bars]
        signs = abc_signs(chosen, struck)
        piece = built(played=signs) if signs else piece
    notes = [*piece.warnings, *clashes(piece)]
    if jumps and not any(b.jump or b.fine or b.segno or b.coda for b in piece.bars):
        notes.append(fact("jumps without a place"))
    names = dict(enumerate(voice_names(chosen), 1))
    heads = tuple(replace(p, name=names.get(p.number) or p.name) for p in piece.parts)
    return replace(
        piece, tunes=titles if len(titles) > 1 else (), parts=heads, warnings=tuple(notes)
    )


def _keyed(score: Any) -> bool:
    return any(True for _ in score.recurse().getElementsByClass("KeySignature"))


def _heard_key(score: Any) -> Key:
    """The key by music21's analysis of the notes (Krumhansl and Schmuckler's profiles)."""
    with _quiet():
        found = score.analyze("key")
    return Key(int(found.sharps), "minor" if found.mode == "minor" else "major")


def _abc_meters(text: str) -> frozenset[tuple[int, int]]:
    """The time signatures the tune states; the parser adds its own for short bars."""
    out: set[tuple[int, int]] = set()
    for field in re.findall(r"(?m)(?:^|\[)M:\s*([^\]\n%]*)", text):
        value = field.strip()
        if value.startswith("C|"):
            out.add((2, 2))
        elif value.startswith("C"):
            out.add((4, 4))
        elif found := re.match(r"\(?([\d+\s]+)\)?\s*/\s*(\d+)", value):
            numbers = [int(n) for n in re.findall(r"\d+", found.group(1))]
            out.add((sum(numbers), int(found.group(2))))
    return frozenset(out)


def _decoded(data: bytes) -> str:
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError:
        return data.decode("latin-1")


def _parsed(source: Source, data: str | bytes, kind: str, **options: Any) -> Any:
    """The music21 score; whatever its parser raises becomes one sentence."""
    with _quiet():
        from music21 import converter

        try:
            if kind == "abc":
                return converter.parseData(data, format="abc")
            return converter.parseData(data, format=kind, **options)
        except RecursionError:
            raise BadInput("{name} is nested too deeply to be a score.", name=source.name) from None
        except MemoryError:
            raise BadInput("{name} is too large to be read.", name=source.name) from None
        except Exception as error:
            raise BadInput(_complaint(source, error)) from None


def _built(source: Source, score: Any, **options: Any) -> Piece:
    with _quiet():
        try:
            return build(score, source.name, **options)
        except BadInput:
            raise
        except Exception as error:
            if _ours(error):
                raise
            raise BadInput(_complaint(source, error)) from None


def _ours(error: Exception) -> bool:
    """Whether an exception comes out of our own code, not out of the library that reads
    the score: then it is a fault of the program, and no fault of the score."""
    last = None
    for frame, _ in traceback.walk_tb(error.__traceback__):
        last = frame.f_code.co_filename
    return last is not None and Path(last).is_relative_to(OWN)


def _complaint(source: Source, error: Exception) -> Message:
    reason = " ".join(str(error).split()).rstrip(".")
    if len(reason) > 120:
        reason = reason[:117] + "..."
    kind = {"musicxml": "MusicXML", "midi": "MIDI", "abc": "ABC"}[source.kind]
    shown = f" ({reason})" if reason else ""
    return message(
        "{name} cannot be understood as {format}{reason}; export the score again.",
        name=source.name,
        format=kind,
        reason=shown,
    )


@contextlib.contextmanager
def _quiet() -> Any:
    """Keep the parser's own remarks off the streams."""
    with warnings.catch_warnings(), contextlib.redirect_stderr(io.StringIO()):
        warnings.simplefilter("ignore")
        yield
