"""Sound files, RIFF WAVE or FLAC, 16 bits, one channel; written whole or not at all."""

from __future__ import annotations

import wave
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from workbench.fingering.types import Fingering
from workbench.instrument.model import A4_HZ, Instrument
from workbench.music.errors import BadInput
from workbench.music.files import unwritable, whole_file
from workbench.music.model import Piece
from workbench.sound.plucked import RATE
from workbench.sound.render import Progress, render

SUFFIXES = (".wav", ".flac")


def write_sound(samples: NDArray[np.floating[Any]], path: str | Path, rate: int = RATE) -> float:
    """Write samples (-1 to 1) in the form that the name's ending asks for; their seconds.

    The file appears whole or not at all. Raises BadInput for another ending, or where it
    cannot be written.
    """
    path = Path(path)
    suffix = path.suffix.lower()
    if suffix == ".wav":
        return write_wav(samples, path, rate)
    if suffix != ".flac":
        raise BadInput(
            "{path}: sound is written as .wav or .flac; end the name with one of them.", path=path
        )
    import soundfile

    data = np.round(np.clip(samples, -1.0, 1.0) * 32767).astype("<i2")
    try:
        with whole_file(path) as part:
            soundfile.write(str(part), data, rate, format="FLAC", subtype="PCM_16")
    except soundfile.SoundFileError as fault:
        raise unwritable(path, fault) from fault
    return len(samples) / rate


def write_wav(samples: NDArray[np.floating[Any]], path: str | Path, rate: int = RATE) -> float:
    """Write samples (-1 to 1; beyond that they are clipped); the length in seconds.

    The file appears whole or not at all. Raises BadInput where it cannot be written.
    """
    path = Path(path)
    data = np.round(np.clip(samples, -1.0, 1.0) * 32767).astype("<i2").tobytes()
    if len(data) > 2**32 - 100:
        raise BadInput(
            "{path}: that is more sound than a WAVE file holds; choose fewer bars.", path=path
        )
    with whole_file(path) as part, wave.open(str(part), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(rate)
        file.writeframes(data)
    return len(samples) / rate


def make_sound(
    piece: Piece,
    path: str | Path,
    fingering: Fingering | None = None,
    instrument: Instrument | None = None,
    tempo_percent: float = 100,
    bars: tuple[int, int] | None = None,
    order: Sequence[int] | None = None,
    progress: Progress | None = None,
    a4: float = A4_HZ,
) -> dict[str, Any]:
    """Render a piece into a sound file; ``seconds`` and ``path`` as a document.

    The arguments are those of ``render.render``. Raises BadInput.
    """
    samples = render(piece, fingering, instrument, tempo_percent, bars, order, progress, a4)
    seconds = write_sound(samples, path)
    return {"seconds": round(seconds, 3), "path": str(path)}
