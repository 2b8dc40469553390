"""What belongs to the studio and not to one lesson: groups, settings, choices."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from sqlalchemy import delete, select
from sqlalchemy.orm import Session

from workbench.fingering.types import FingeredNote
from workbench.language.fact import Fact
from workbench.language.speech import say
from workbench.music.codec import from_dict, to_dict
from workbench.music.errors import BadInput
from workbench.store.base import Store, aware
from workbench.store.documents import as_text, clean, fold, read_text
from workbench.store.rows import ChoiceKind, Group, KeptChoice
from workbench.store.schema import (
    NAME,
    ChoiceRecord,
    GroupMember,
    LessonRecord,
    SettingRecord,
)

FORGOTTEN = "null"  # hides, for one teacher, a setting that belongs to nobody
_BESIDE = ("id", "made", "kind", "lesson_id", "active")  # kept in columns of their own


class Studio:
    """Student groups, settings, and choices to learn from."""

    def __init__(self, store: Store) -> None:
        self._store = store

    # Groups.

    def groups(self) -> tuple[Group, ...]:
        """All student groups by name, their students by name."""
        found: dict[str, list[str]] = {}
        with self._store.reading() as session:
            for name, student in session.execute(select(GroupMember.group, GroupMember.student)):
                found.setdefault(name, []).extend([student] if student else [])
        return tuple(
            Group(name, tuple(sorted(found[name], key=fold))) for name in sorted(found, key=fold)
        )

    def set_group(self, name: str, students: Iterable[str] = ()) -> None:
        """Make a group, or say anew who is in it."""
        name = clean(name).strip()
        if not 0 < len(name) <= NAME:
            raise BadInput("A group's name has 1 to {n} characters.", n=NAME)
        members = dict.fromkeys(clean(student).strip()[:NAME] for student in students)
        members.pop("", None)
        with self._store.writing() as session:
            session.execute(delete(GroupMember).where(GroupMember.group == name))
            session.add_all(GroupMember(group=name, student=s) for s in members or [""])

    def delete_group(self, name: str) -> None:
        """Dissolve a group; its students' lessons stay."""
        with self._store.writing() as session:
            session.execute(delete(GroupMember).where(GroupMember.group == name))

    # Settings.

    def setting(self, name: str, default: Any = None) -> Any:
        """A setting's value, or ``default`` where it was never set."""
        with self._store.reading() as session:
            found = self._kept_settings(session, SettingRecord.name == name)
        return (
            default
            if name not in found
            else read_text(found[name], say("Setting '{name}'", name=name))
        )

    def settings(self) -> dict[str, Any]:
        """All settings."""
        with self._store.reading() as session:
            found = self._kept_settings(session)
        return {
            name: read_text(value, say("Setting '{name}'", name=name))
            for name, value in found.items()
        }

    def _kept_settings(self, session: Session, *which: Any) -> dict[str, str]:
        """Name to value: the teacher's own, and those that were there before any had one."""
        mine = SettingRecord.owner.in_(("", self._store.owner))
        rows = session.execute(
            select(SettingRecord.name, SettingRecord.value)
            .where(mine, *which)
            .order_by(SettingRecord.owner)
        )
        found: dict[str, str] = {name: value for name, value in rows}  # the own one comes last
        return {name: value for name, value in found.items() if value != FORGOTTEN}

    def set_setting(self, name: str, value: Any) -> None:
        """Keep a setting; ``value`` is what JSON can hold, None forgets it.

        Raises TypeError for other values.
        """
        self.set_settings({name: value})

    def set_settings(self, values: Mapping[str, Any]) -> None:
        """Keep several settings, all or none; in a store that may only be read, none."""
        if self._store.read_only:
            return
        texts = {name: None if v is None else as_text(v) for name, v in values.items()}
        with self._store.writing() as session:
            for name, value in texts.items():
                if value is None and not self._store.owner:
                    session.execute(delete(SettingRecord).where(SettingRecord.name == name))
                else:
                    kept = FORGOTTEN if value is None else value
                    session.merge(SettingRecord(owner=self._store.owner, name=name, value=kept))

    # Choices.

    def remember_choice(
        self,
        kind: ChoiceKind,
        *,
        lesson_id: str | None,
        bar: int,
        chosen: tuple[FingeredNote, ...],
        rejected: tuple[FingeredNote, ...] = (),
        chosen_terms: Mapping[str, int] | None = None,
        rejected_terms: Mapping[str, int] | None = None,
        instrument: str = "",
        hand: str = "",
        level: str = "",
        reason: Fact | None = None,
    ) -> KeptChoice:
        """Keep a decision of the teacher to learn from; see ``KeptChoice``.

        ``kind`` is "pin" or "alternative", ``bar`` the index of the written bar.
        """
        if kind not in ("pin", "alternative"):
            raise BadInput("A choice is a 'pin' or an 'alternative', not '{kind}'.", kind=kind)
        with self._store.writing() as session:
            number = None
            if lesson_id is not None:
                query = select(LessonRecord.number).where(LessonRecord.id == lesson_id)
                number = session.scalar(query)
            choice = KeptChoice(
                id=0, made=self._store.now(), kind=kind, lesson_id=lesson_id, bar=bar,
                instrument=instrument, hand=hand, level=level, chosen=tuple(chosen),
                rejected=tuple(rejected), chosen_terms=dict(chosen_terms or {}),
                rejected_terms=dict(rejected_terms or {}), reason=reason,
            )  # fmt: skip
            record = ChoiceRecord(
                made=self._store.time(),
                kind=kind,
                lesson=number,
                active=True,
                document=_text(choice),
            )
            session.add(record)
            session.flush()
            return _choice(record, lesson_id if number is not None else None)

    def choices(self) -> tuple[KeptChoice, ...]:
        """The decisions to learn from, oldest first."""
        query = (
            select(ChoiceRecord, LessonRecord.id)
            .outerjoin(LessonRecord, LessonRecord.number == ChoiceRecord.lesson)
            .where(ChoiceRecord.active)
            .order_by(ChoiceRecord.id)
        )
        with self._store.reading() as session:
            return tuple(_choice(record, lesson) for record, lesson in session.execute(query))


def _text(choice: KeptChoice) -> str:
    rows = {
        "chosen": [to_dict(note) for note in choice.chosen],
        "rejected": [to_dict(note) for note in choice.rejected],
        "reason": to_dict(choice.reason) if choice.reason else None,
    }
    plain = {k: v for k, v in vars(choice).items() if k not in _BESIDE}
    return as_text(plain | rows)


def _choice(record: ChoiceRecord, lesson_id: str | None) -> KeptChoice:
    data = read_text(record.document, say("A kept choice"))

    def notes(name: str) -> tuple[FingeredNote, ...]:
        return tuple(from_dict(FingeredNote, row) for row in data.pop(name))

    reason = data.pop("reason", None)  # once a sentence, "" for none
    return KeptChoice(
        id=record.id,
        made=aware(record.made),
        kind="pin" if record.kind == "pin" else "alternative",
        lesson_id=lesson_id,
        active=record.active,
        chosen=notes("chosen"),
        rejected=notes("rejected"),
        reason=from_dict(Fact, reason) if reason else None,
        **data,
    )
