"""Parts as a musician counts them, and time signature, key and tempo of every bar."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from workbench.music.model import Key

_MINOR_LIKE = {"minor", "aeolian", "dorian", "phrygian", "locrian"}


@dataclass
class LogicalPart:
    """A part with its staves, each a music21 part with its list of measures."""

    name: str
    staves: list[Any]
    measures: list[list[Any]]


def logical_parts(score: Any) -> list[LogicalPart]:
    """The parts as a musician counts them: the staves of a keyboard part are one."""
    streams = list(score.parts) if "Score" in score.classes else [score]
    out: list[LogicalPart] = []
    before = ""
    for given in streams:
        stream = given
        measures = list(stream.getElementsByClass("Measure"))
        if not measures and stream.recurse().notes:
            # a source without bar lines
            stream = stream.makeMeasures()
            measures = list(stream.getElementsByClass("Measure"))
        root, staff, _ = str(stream.id).rpartition("-Staff")
        together = "PartStaff" in stream.classes and bool(staff) and root == before
        before = root if staff else ""
        if together:
            out[-1].staves.append(stream)
            out[-1].measures.append(measures)
        else:
            name = str(getattr(stream, "partName", None) or "").strip()
            out.append(LogicalPart(name, [stream], [measures]))
    return out


def sounding_shift(stream: Any) -> Any:
    """Interval from written to sounding pitch of a transposing instrument."""
    for instrument in stream.recurse().getElementsByClass("Instrument"):
        if instrument.transposition is not None:
            return instrument.transposition
    return None


@dataclass
class Setting:
    meter: tuple[int, int]
    key: Key
    tempo: float | None


def bar_settings(
    parts: list[LogicalPart],
    taken: list[int],
    frame: list[Any],
    meters: frozenset[tuple[int, int]] | None,
) -> list[Setting]:
    """Time signature, key and tempo of every bar."""
    meter, key = (4, 4), Key(0)
    others = [m for p in parts for m in p.measures if m is not frame]
    lead = [parts[i].measures[0] for i in taken]
    shift = sounding_shift(parts[taken[0]].staves[0])
    out: list[Setting] = []
    for index, measure in enumerate(frame):
        row = [measure] + [m[index] for m in lead if m is not frame and index < len(m)]
        for source in row[:1] if out else row:
            found = source.timeSignature
            if found is not None:
                ratio = (int(found.numerator), int(found.denominator))
                if meters is None or not meters or ratio in meters:
                    meter = ratio
                    break
        signature = measure.keySignature
        if signature is not None:
            key = _key(signature, shift)
        tempo = _tempo(measure)
        for other in others if tempo is None else ():
            if index < len(other) and (tempo := _tempo(other[index])) is not None:
                break
        out.append(Setting(meter, key, tempo))
    return out


def _key(signature: Any, shift: Any) -> Key:
    if shift is not None:
        signature = signature.transpose(shift)
    mode = getattr(signature, "mode", None)
    fifths = max(-7, min(7, int(signature.sharps or 0)))
    return Key(fifths, "minor" if mode in _MINOR_LIKE else "major" if mode else "")


def _tempo(measure: Any) -> float | None:
    for mark in measure.recurse().getElementsByClass("MetronomeMark"):
        speed = mark.getQuarterBPM()
        if speed is not None and 5 <= speed <= 1000:
            return float(speed)
    return None
