"""Sound files: RIFF WAVE, 16 bits, one channel; written whole or not at all."""

from __future__ import annotations

import wave
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from workbench.fingering.types import Fingering
from workbench.instrument.model import Instrument
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.files import appearing
from workbench.music.model import Piece
from workbench.sound.plucked import RATE
from workbench.sound.render import Progress, render


def write_wav(samples: NDArray[np.floating[Any]], path: str | Path, rate: int = RATE) -> float:
    """Write samples (-1 to 1; beyond that they are clipped); the length in seconds.

    The file appears whole or not at all. Raises BadInput where it cannot be written.
    """
    path = Path(path)
    data = np.round(np.clip(samples, -1.0, 1.0) * 32767).astype("<i2").tobytes()
    if len(data) > 2**32 - 100:
        raise BadInput(
            say("{path}: that is more sound than a WAVE file holds; choose fewer bars.", path=path)
        )
    try:
        with appearing(path) as part, wave.open(str(part), "wb") as file:
            file.setnchannels(1)
            file.setsampwidth(2)
            file.setframerate(rate)
            file.writeframes(data)
    except OSError as fault:
        raise BadInput(
            say(
                "{path} cannot be written ({reason}); choose another place.",
                path=path,
                reason=fault.strerror or fault,
            )
        ) from fault
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
) -> dict[str, Any]:
    """Render a piece into a sound file; ``seconds`` and ``path`` as a document.

    The arguments are those of ``render.render``. Raises BadInput.
    """
    samples = render(piece, fingering, instrument, tempo_percent, bars, order, progress)
    seconds = write_wav(samples, path)
    return {"seconds": round(seconds, 3), "path": str(path)}
