"""The tables, for SQLite and any other database that SQLAlchemy speaks to.

Music is kept once under the digest of its content: a lesson's states, its
versions and the imported piece point at it, so that an undo step costs a few
kilobytes and not a copy of the score. Times are UTC without a zone.
"""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import (
    Boolean,
    DateTime,
    ForeignKey,
    Index,
    Integer,
    LargeBinary,
    MetaData,
    String,
    Text,
    UniqueConstraint,
)
from sqlalchemy.orm import DeclarativeBase, Mapped, mapped_column

DIGEST = 64  # hexadecimal digits of SHA-256
NAME = 200

#: Names for constraints, so that later migrations can address them everywhere.
NAMING = {
    "ix": "ix_%(table_name)s_%(column_0_N_name)s",
    "uq": "uq_%(table_name)s_%(column_0_N_name)s",
    "fk": "fk_%(table_name)s_%(column_0_name)s",
    "pk": "pk_%(table_name)s",
}


class Base(DeclarativeBase):
    metadata = MetaData(naming_convention=NAMING)


class MusicRecord(Base):
    """A piece's exact content, compressed JSON."""

    __tablename__ = "music"

    digest: Mapped[str] = mapped_column(String(DIGEST), primary_key=True)
    document: Mapped[bytes] = mapped_column(LargeBinary)


class PieceRecord(Base):
    """A piece as it was imported."""

    __tablename__ = "pieces"

    id: Mapped[str] = mapped_column(String(NAME), primary_key=True)
    fingerprint: Mapped[str] = mapped_column(String(DIGEST), index=True)
    music: Mapped[str] = mapped_column(ForeignKey("music.digest"))
    title: Mapped[str] = mapped_column(Text)
    composer: Mapped[str] = mapped_column(Text)
    key: Mapped[str] = mapped_column(String(NAME))
    bars: Mapped[int] = mapped_column(Integer)
    source: Mapped[str] = mapped_column(Text)
    created: Mapped[datetime] = mapped_column(DateTime)
    deleted: Mapped[datetime | None] = mapped_column(DateTime)


class LessonRecord(Base):
    """A lesson's place on the shelf. What it says is in its present step
    (``place``); the columns repeat what lists show and filter by."""

    __tablename__ = "lessons"

    number: Mapped[int] = mapped_column(Integer, primary_key=True)
    id: Mapped[str] = mapped_column(String(NAME), unique=True)
    piece_id: Mapped[str] = mapped_column(ForeignKey("pieces.id"), index=True)
    place: Mapped[int] = mapped_column(Integer)
    view: Mapped[str] = mapped_column(Text)
    title: Mapped[str] = mapped_column(Text)
    composer: Mapped[str] = mapped_column(Text)
    student: Mapped[str] = mapped_column(Text)
    instrument: Mapped[str] = mapped_column(Text)
    key: Mapped[str] = mapped_column(String(NAME))
    grade: Mapped[int | None] = mapped_column(Integer)
    grade_level: Mapped[str] = mapped_column(String(NAME))
    created: Mapped[datetime] = mapped_column(DateTime)
    updated: Mapped[datetime] = mapped_column(DateTime)
    used: Mapped[datetime] = mapped_column(DateTime, index=True)
    archived: Mapped[bool] = mapped_column(Boolean)
    deleted: Mapped[datetime | None] = mapped_column(DateTime)
    # Rises with every change of the content, so that one writer notices another.
    revision: Mapped[int] = mapped_column(Integer, server_default="0", default=0)


class StepRecord(Base):
    """One state of a lesson. Places rise along the history without a gap."""

    __tablename__ = "steps"
    __table_args__ = (UniqueConstraint("lesson", "place"),)

    id: Mapped[int] = mapped_column(Integer, primary_key=True)
    lesson: Mapped[int] = mapped_column(ForeignKey("lessons.number", ondelete="CASCADE"))
    place: Mapped[int] = mapped_column(Integer)
    label: Mapped[str] = mapped_column(Text)
    made: Mapped[datetime] = mapped_column(DateTime)
    bar: Mapped[int] = mapped_column(Integer)
    state: Mapped[str] = mapped_column(Text)
    music: Mapped[str] = mapped_column(ForeignKey("music.digest"), index=True)


class VersionRecord(Base):
    """A named state of a lesson, kept until the teacher throws it away."""

    __tablename__ = "versions"

    id: Mapped[int] = mapped_column(Integer, primary_key=True)
    lesson: Mapped[int] = mapped_column(
        ForeignKey("lessons.number", ondelete="CASCADE"), index=True
    )
    name: Mapped[str] = mapped_column(Text)
    made: Mapped[datetime] = mapped_column(DateTime)
    state: Mapped[str] = mapped_column(Text)
    music: Mapped[str] = mapped_column(ForeignKey("music.digest"), index=True)


class GroupMember(Base):
    """One student in a group; a group without students has a row with none."""

    __tablename__ = "group_members"

    group: Mapped[str] = mapped_column("group_name", String(NAME), primary_key=True)
    student: Mapped[str] = mapped_column(String(NAME), primary_key=True)


class FingeringRecord(Base):
    """A solved fingering, found again by what it depends on."""

    __tablename__ = "fingerings"

    key: Mapped[str] = mapped_column("depends_on", String(DIGEST), primary_key=True)
    document: Mapped[bytes] = mapped_column(LargeBinary)
    made: Mapped[datetime] = mapped_column(DateTime, index=True)


class ChoiceRecord(Base):
    """A decision of the teacher to learn from; it outlives its lesson."""

    __tablename__ = "choices"

    id: Mapped[int] = mapped_column(Integer, primary_key=True)
    made: Mapped[datetime] = mapped_column(DateTime)
    kind: Mapped[str] = mapped_column(String(NAME))
    lesson: Mapped[int | None] = mapped_column(
        ForeignKey("lessons.number", ondelete="SET NULL"), index=True
    )
    active: Mapped[bool] = mapped_column(Boolean)
    document: Mapped[str] = mapped_column(Text)


class SettingRecord(Base):
    """One setting of a teacher's window, JSON; without an owner in a store of one's own."""

    __tablename__ = "teacher_settings"

    owner: Mapped[str] = mapped_column(String(NAME), primary_key=True)
    name: Mapped[str] = mapped_column(String(NAME), primary_key=True)
    value: Mapped[str] = mapped_column(Text)


class LessonText(Base):
    """What is searched in a lesson. In SQLite triggers keep a full text index
    over the first five; ``folded`` is all of them, lower case, no accents."""

    __tablename__ = "lesson_texts"

    number: Mapped[int] = mapped_column(
        ForeignKey("lessons.number", ondelete="CASCADE"), primary_key=True, autoincrement=False
    )
    title: Mapped[str] = mapped_column(Text)
    composer: Mapped[str] = mapped_column(Text)
    student: Mapped[str] = mapped_column(Text)
    techniques: Mapped[str] = mapped_column(Text)
    notes: Mapped[str] = mapped_column(Text)
    folded: Mapped[str] = mapped_column(Text)


class LessonTechnique(Base):
    """One technique that a lesson teaches."""

    __tablename__ = "lesson_techniques"
    __table_args__ = (Index(None, "technique"),)

    lesson: Mapped[int] = mapped_column(
        ForeignKey("lessons.number", ondelete="CASCADE"), primary_key=True
    )
    technique: Mapped[str] = mapped_column(String(NAME), primary_key=True)
    place: Mapped[int] = mapped_column(Integer)
