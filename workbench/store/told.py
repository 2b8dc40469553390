"""What restoring and merging brought, in sentences."""

from __future__ import annotations

from workbench.language.speech import count, say
from workbench.store.archiving import Merged
from workbench.store.backups import Restored

MOST_TITLES = 12


def restored_words(done: Restored) -> list[str]:
    """What restoring brought, and what is lost by it."""
    said = [say("The backup is in place.")]
    if done.aside:
        said.append(say("What was there lies in {path}.", path=done.aside))
    if not done.known:
        said.append(say("What was changed after the backup cannot be told and is lost."))
    elif done.lost:
        said.append(
            count(
                len(done.lost),
                "The last changes of {n} lesson are not in it: {titles}.",
                "The last changes of {n} lessons are not in it: {titles}.",
                titles=_titles(done.lost),
            )
        )
    else:
        said.append(say("Nothing is missing in it."))
    return said


def merged_words(done: Merged) -> list[str]:
    """What merging an archive brought."""
    said = []
    if done.added:
        said.append(
            count(
                len(done.added),
                "{n} lesson is new: {titles}.",
                "{n} lessons are new: {titles}.",
                titles=_titles(done.added),
            )
        )
    if done.updated:
        said.append(
            count(
                len(done.updated),
                "{n} lesson was brought up to date, and what was here is kept as a version: "
                "{titles}.",
                "{n} lessons were brought up to date, and what was here is kept as versions: "
                "{titles}.",
                titles=_titles(done.updated),
            )
        )
    if done.newer_here:
        said.append(
            count(
                len(done.newer_here),
                "{n} lesson is newer here and stays; the archive's state is kept as a version: "
                "{titles}.",
                "{n} lessons are newer here and stay; the archive's states are kept as "
                "versions: {titles}.",
                titles=_titles(done.newer_here),
            )
        )
    if done.same or not said:
        said.append(count(done.same, "{n} lesson was the same.", "{n} lessons were the same."))
    return said


def _titles(titles: tuple[str, ...]) -> str:
    more = " ..." if len(titles) > MOST_TITLES else ""
    return ", ".join(f"'{title}'" for title in titles[:MOST_TITLES]) + more
