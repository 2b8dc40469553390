"""What a change of fingering brought, in one sentence."""

from __future__ import annotations

from workbench.fingering.types import Fingering
from workbench.language.names import as_first_word, plain
from workbench.language.speech import count, say


def verdict(before: Fingering, after: Fingering) -> str:
    """Effort, cut notes and bars that became impossible, against the fingering before."""
    stuck = _impossible(after) - _impossible(before)
    if stuck:
        return say(
            "That cannot be played: bar {bars} has no fingering that way; undo takes it back.",
            bars=", ".join(sorted(stuck)),
        )
    parts = _parts(before, after)
    if not parts:
        return say("Done: as easy as before, nothing cut.")
    if len(parts) == 1:
        return say("Done: {what}.", what=parts[0])
    return say("Done: {cut} and {effort}.", cut=parts[0], effort=parts[1])


def price(before: Fingering, after: Fingering) -> str:
    """What a fingering that is not taken would bring, as a sentence of its own."""
    stuck = _impossible(after) - _impossible(before)
    if stuck:
        return say("Bar {bars} has no fingering that way.", bars=", ".join(sorted(stuck)))
    parts = _parts(before, after)
    if not parts:
        return say("As easy as before, nothing cut.")
    words = parts[0] if len(parts) == 1 else say("{cut} and {effort}", cut=parts[0],
                                                 effort=parts[1])  # fmt: skip
    return f"{as_first_word(words)}."


def _parts(before: Fingering, after: Fingering) -> list[str]:
    """More or fewer cut notes, more or less effort; nothing where both are as before."""
    parts = []
    cut = after.audit.cut - before.audit.cut
    if cut > 0:
        parts.append(count(cut, "{n} more cut note", "{n} more cut notes"))
    elif cut < 0:
        parts.append(count(-cut, "{n} fewer cut note", "{n} fewer cut notes"))
    was = _effort(before)
    if was:
        share = round(100 * (_effort(after) - was) / was, 1)
        if share >= 0.1:
            parts.append(say("{share} % more effort in the whole piece", share=plain(share)))
        elif share <= -0.1:
            parts.append(say("{share} % less effort in the whole piece", share=plain(-share)))
    return parts


def _effort(fingering: Fingering) -> int:
    """What both hands have to do."""
    return fingering.cost + fingering.terms.get("right", 0)


def _impossible(fingering: Fingering) -> set[str]:
    return {bar.number for bar in fingering.bars if bar.impossible}
