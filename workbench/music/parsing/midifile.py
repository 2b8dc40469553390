"""A look at a MIDI file before it is parsed: is it whole, and how fine is its rhythm."""

from __future__ import annotations

from workbench.music.errors import BadInput

MOST_QUARTERS = 20_000  # three hours at 110 to the minute


def check_midi(data: bytes, name: str) -> tuple[int, ...]:
    """Divisors of the quarter note to which onsets are rounded.

    A file whose notes all lie exactly on the 1/24 grid (written, not played)
    keeps its exact rhythm; else sixteenths and triplets, as for a played one.
    Raises BadInput for a damaged, endless or time-code file.
    """
    if len(data) < 14:
        raise BadInput(
            "{name} is cut off: the MIDI header is not whole; export it again.", name=name
        )
    division = int.from_bytes(data[12:14], "big")
    if division & 0x8000:
        raise BadInput(
            "{name} counts in film frames (SMPTE), not in beats; export it in beats.", name=name
        )
    if division == 0:
        raise BadInput("{name} has no length for the quarter note; export it again.", name=name)
    at, times, tracks = 8 + int.from_bytes(data[4:8], "big"), set[int](), 0
    while at + 8 <= len(data):
        size = int.from_bytes(data[at + 4 : at + 8], "big")
        body = data[at + 8 : at + 8 + size]
        if data[at : at + 4] == b"MTrk":
            if len(body) < size:
                raise BadInput(
                    "{name} is cut off in track {tracks}; download it again.",
                    name=name,
                    tracks=tracks + 1,
                )
            tracks += 1
            try:
                times |= _times(body)
            except IndexError:
                raise BadInput(
                    "{name} is damaged in track {tracks}; export it again.",
                    name=name,
                    tracks=tracks,
                ) from None
        at += 8 + size
    if not tracks:
        raise BadInput("{name} has no tracks; choose a MIDI file with notes.", name=name)
    if max(times, default=0) > MOST_QUARTERS * division:
        raise BadInput(
            "{name} lasts more than {most} quarter notes; its times are damaged.",
            name=name,
            most=MOST_QUARTERS,
        )
    exact = all(24 * t % division == 0 for t in times)
    on_eighth_triplets = all(3 * t % division == 0 or 4 * t % division == 0 for t in times)
    return (8, 6) if exact and not on_eighth_triplets else (4, 3)


def _times(body: bytes) -> set[int]:
    """Times of note events in ticks."""
    at, now, status, out = 0, 0, 0, set[int]()
    while at < len(body):
        delta, at = _number(body, at)
        now += delta
        if body[at] & 0x80:
            status = body[at]
            at += 1
        if status == 0xFF:
            size, at = _number(body, at + 1)
            at += size
        elif status in (0xF0, 0xF7):
            size, at = _number(body, at)
            at += size
        else:
            if status < 0x80:
                raise IndexError(at)
            if status >> 4 in (8, 9):
                out.add(now)
            at += 1 if status >> 4 in (0xC, 0xD) else 2
    out.add(now)
    return out


def _number(body: bytes, at: int) -> tuple[int, int]:
    """A variable-length quantity and the place after it."""
    value = 0
    for _ in range(4):
        byte = body[at]
        at += 1
        value = value << 7 | byte & 0x7F
        if not byte & 0x80:
            break
    return value, at
