"""Keeping the open lesson: what the store refuses is written aside and tried again, and what
somebody else changed meanwhile is never overwritten."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Protocol

from PySide6.QtCore import QObject, QTimer, SignalInstance

from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.store.conflict import Conflict, StoreRefused
from workbench.store.recovery import Recovery, Unsaved
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import Lesson
from workbench.teaching.lessons.merging import merged
from workbench.ui.bench.selecting import Selection

Step = Callable[[str, "int | None"], "Lesson | None"]  # lesson id, base
AGAIN = 3000  # milliseconds until the store is asked again


@dataclass(frozen=True)
class Meeting:
    """Two changes of one lesson that do not go together."""

    mine: Lesson
    label: str
    theirs: Lesson
    revision: int


class Kept(Protocol):
    """What has a lesson to keep, and is told how that went."""

    shelf: Shelf
    lesson: Lesson | None
    selection: Selection

    @property
    def told(self) -> SignalInstance: ...

    @property
    def failed(self) -> SignalInstance: ...

    @property
    def conflicted(self) -> SignalInstance: ...

    def guard(self, work: Callable[[], object]) -> bool: ...

    def open(self, lesson_id: str) -> bool: ...

    def show_state(self, found: Lesson) -> None: ...


class Keeper:
    """Saves the lesson on the bench; ``parent`` ends it."""

    def __init__(self, bench: Kept, parent: QObject) -> None:
        self._bench = bench
        self.recovery = Recovery(bench.shelf.place)
        self._base: Lesson | None = None  # as it is on the shelf, as far as we know
        self._revision: int | None = None
        self.label = ""  # of the change that the store has not taken yet
        self.meeting: Meeting | None = None
        self._again = QTimer(parent)
        self._again.setInterval(AGAIN)
        self._again.timeout.connect(self.try_again)

    def take_up(self, lesson: Lesson, revision: int | None) -> None:
        """A lesson comes onto the bench as it is on the shelf."""
        self.stop()
        self.meeting = None
        self._base, self._revision, self.label = lesson, revision, ""

    def stop(self) -> None:
        """Ask no more."""
        self._again.stop()

    @property
    def waiting(self) -> bool:
        """Whether the store has not taken the last change yet."""
        return bool(self.label)

    def save(self, after: Lesson, label: str, *, merge: bool = False) -> Lesson:
        """Keep a changed lesson; as it then is. Raises BadInput where it is refused for good."""
        if self.meeting is not None:
            self._bench.conflicted.emit()
            raise _to_choose()
        try:
            return self._put(after, label, merge and not self.waiting)
        except Conflict:
            return self._meet(after, label)
        except StoreRefused as fault:
            self._aside(after, label, fault)
            return after

    def _put(self, after: Lesson, label: str, merge: bool) -> Lesson:
        shelf = self._bench.shelf
        changed = shelf.save(
            after, label, merge=merge, base=self._revision, bar=self._bench.selection.position
        )
        if changed and self._revision is not None:
            self._revision += 1
        self._base = after
        if self.waiting:
            self.label = ""
            self._again.stop()
            self.recovery.drop(after.id)
            self._bench.told.emit(say("The lesson is saved now."))
        return after

    def _aside(self, after: Lesson, label: str, fault: StoreRefused) -> None:
        kept = self.recovery.keep(after, label)
        if kept is None:
            raise fault  # nobody takes it: the field keeps what was typed
        self.label = label
        self._again.start()
        self._bench.failed.emit(
            say(
                "{fault} Your change is kept in {path} meanwhile and is tried again.",
                fault=" ".join(str(fault).split()),
                path=kept,
            )
        )

    def try_again(self) -> bool:
        """Ask the store once more to take what waits; whether nothing waits any more."""
        lesson = self._bench.lesson
        if not self.waiting or lesson is None:
            return True
        try:
            self._put(lesson, self.label, False)
        except Conflict:
            self._bench.guard(lambda: self._join(lesson, self.label))
        except StoreRefused:
            return False
        return not self.waiting

    def travel(self, lesson_id: str, step: Step) -> Lesson | None:
        """Go through the history on the shelf."""
        if not self.try_again():
            raise BadInput("The last change is not saved yet; it is tried again.")
        try:
            found = step(lesson_id, self._revision)
        except Conflict:
            self.refresh(lesson_id)
            raise BadInput(
                "The lesson was changed in another window; its newest state is shown now. "
                "Look at it, then try again."
            ) from None
        if found is not None:
            self._base = found
            if self._revision is not None:
                self._revision = self._bench.shelf.revision(lesson_id)
        return found

    def refresh(self, lesson_id: str) -> None:
        """Show the lesson as it is on the shelf now."""
        lesson, _, revision = self._bench.shelf.open(lesson_id)
        self._base, self._revision = lesson, revision
        self._bench.show_state(lesson)

    # Meeting another writer.

    def _meet(self, mine: Lesson, label: str) -> Lesson:
        theirs, _, revision = self._bench.shelf.open(mine.id)
        both = merged(self._base, mine, theirs) if self._base else None
        if both is None:
            self.meeting = Meeting(mine, label, theirs, revision)
            self.recovery.keep(mine, label)
            self._bench.conflicted.emit()
            raise _to_choose()
        self._revision = revision
        both = self._put(both, label, False)
        self._bench.told.emit(
            say("The lesson was changed in another window too; both changes are kept.")
        )
        return both

    def _join(self, mine: Lesson, label: str) -> None:
        both = self._meet(mine, label)
        self._bench.show_state(both)

    def settle(self, choice: str) -> None:
        """End a meeting: "mine" over theirs, "theirs", or "both" with mine as a lesson of its
        own. Whatever gives way stays in the history, or as a version."""
        found, bench = self.meeting, self._bench
        if found is None:
            return
        shelf = bench.shelf
        if choice == "mine":
            shelf.save(found.mine, found.label, base=found.revision)
        elif choice == "both":
            name = say("{title} (my changes)", title=found.mine.title)
            shelf.save(_copy(found.mine, name), say("Copy of '{title}'", title=found.mine.title))
        else:
            shelf.keep_state(found.mine, say("What gave way: {label}", label=found.label))
        self.meeting = None
        self.label = ""
        self.recovery.drop(found.mine.id)
        self.refresh(found.mine.id)

    # At the next start.

    def left(self) -> tuple[Unsaved, ...]:
        """What earlier sessions could not save."""
        here = self._bench.lesson
        return tuple(
            kept
            for kept in self.recovery.found()
            if not (self.waiting and here is not None and kept.lesson.id == here.id)
        )

    def put_back(self, kept: Unsaved) -> bool:
        """Make what was left a step of its lesson, and open it."""
        bench = self._bench
        label = say("Put back: {label}", label=kept.label)
        if not bench.guard(lambda: bench.shelf.save(kept.lesson, label)):
            return False
        self.recovery.drop(kept.lesson.id)
        return bench.open(kept.lesson.id)


def _copy(lesson: Lesson, title: str) -> Lesson:
    import uuid
    from dataclasses import replace

    return replace(lesson, id=uuid.uuid4().hex, title=title)


def _to_choose() -> BadInput:
    return BadInput(
        "The lesson was changed in another window meanwhile; choose which state stands."
    )
