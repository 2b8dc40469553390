"""A note as it sounds: when, how long, how loud, and on what it carries on."""

from __future__ import annotations

from dataclasses import dataclass

GRACE_SECONDS = 0.09  # a grace note's length, taken from before its main note


@dataclass(frozen=True)
class Sounding:
    """A note as it sounds: from ``start`` for ``seconds``, at ``gain`` (1 = full).

    ``string`` is None where there is no fingering; ``finger`` is the plucking one;
    ``loud`` 0 (softest) to 1; ``node`` as in ``plucked.Tone``. ``after`` is the sound
    that a slur or slide carries on from without a new pluck; ``ends`` tells how it
    stops: "damped" (by a lifted finger), "struck" (its string is plucked anew) or
    "slurred" (another carries on from it).
    """

    start: float
    seconds: float
    midi: int
    gain: float
    string: int | None = None
    note: str = ""
    voice: int = 1
    bar: int = 0  # index of the written bar
    finger: str = "i"
    loud: float = 0.5
    rest_stroke: bool = False
    node: int = 1
    after: Sounding | None = None
    ends: str = "damped"
    also: tuple[str, ...] = ()  # further notes that are written for the same sound

    @property
    def end(self) -> float:
        return self.start + self.seconds
