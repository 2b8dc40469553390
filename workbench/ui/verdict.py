"""What a change of fingering brought, in one sentence."""

from __future__ import annotations

from workbench.fingering.types import Fingering


def verdict(before: Fingering, after: Fingering) -> str:
    """Effort, cut notes and bars that became impossible, against the fingering before."""
    stuck = _impossible(after) - _impossible(before)
    if stuck:
        bars = ", ".join(sorted(stuck))
        return f"That cannot be played: bar {bars} has no fingering that way; undo takes it back."
    parts = []
    more = after.audit.cut - before.audit.cut
    if more:
        count = abs(more)
        parts.append(f"{count} {'more' if more > 0 else 'fewer'} cut note{'s' * (count > 1)}")
    if before.cost:
        share = round(100 * (after.cost - before.cost) / before.cost, 1)
        if share >= 0.1:
            parts.append(f"{share:g} % more effort in the whole piece")
        elif share <= -0.1:
            parts.append(f"{-share:g} % less effort in the whole piece")
    return f"Done: {' and '.join(parts)}." if parts else "Done: as easy as before, nothing cut."


def _impossible(fingering: Fingering) -> set[str]:
    return {bar.number for bar in fingering.bars if bar.impossible}
