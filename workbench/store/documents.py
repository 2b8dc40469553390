"""Domain values as the text and bytes that the tables hold, and back, exactly."""

from __future__ import annotations

import base64
import hashlib
import json
import re
import threading
import unicodedata
import zlib
from collections import OrderedDict
from dataclasses import replace
from typing import Any, TypeVar

from workbench.language.speech import say
from workbench.music.codec import from_dict, piece_to_dict, to_dict
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.teaching.lessons.lesson import Lesson

T = TypeVar("T")

#: Fields of a lesson that are kept beside its state, not in it.
_BESIDE = ("id", "piece")

#: Fields of a lesson that its fingering does not depend on. Whatever is not
#: named here counts: a needless new solution is better than a stale one.
_NOT_FINGERED = frozenset(
    (
        *_BESIDE, "title", "student", "key", "transposition", "notes", "changes", "sections",
        "grade", "grade_level", "practice_minutes", "minutes_a_day", "techniques",
        "script_edits", "plan_done", "corrected", "arranged", "strict", "wanted",
        "tune_part", "bass_part",
    )
)  # fmt: skip


def as_text(value: Any) -> str:
    """JSON with one spelling for one value; pure ASCII, so any text survives."""
    return json.dumps(value, sort_keys=True, separators=(",", ":"), allow_nan=False)


def digest(text: str) -> str:
    """SHA-256 in hexadecimal."""
    return hashlib.sha256(text.encode("ascii")).hexdigest()


def pack(value: Any) -> bytes:
    """A dataclass value as compressed JSON."""
    return zlib.compress(as_text(to_dict(value)).encode("ascii"), 6)


def unpack(cls: type[T], data: bytes, what: str) -> T:
    """What ``pack`` wrote; BadInput naming ``what`` where it is damaged."""
    try:
        plain = json.loads(zlib.decompress(data))
    except (zlib.error, ValueError) as fault:
        raise _damaged(what) from fault
    return from_dict(cls, plain)


PACKED = "z:"  # begins a text that was packed


def pack_text(text: str) -> str:
    """A long text made short enough for a step of a history: a lesson with a thousand
    notes is kept once for every edit."""
    if len(text) < 2000:
        return text
    return PACKED + base64.b85encode(zlib.compress(text.encode("ascii"), 6)).decode("ascii")


def read_text(text: str, what: str) -> Any:
    """What ``as_text`` wrote, packed or not; BadInput naming ``what`` where it is damaged."""
    try:
        if text.startswith(PACKED):
            text = zlib.decompress(base64.b85decode(text[len(PACKED) :])).decode("ascii")
        return json.loads(text)
    except (ValueError, zlib.error) as fault:
        raise _damaged(what) from fault


def _damaged(what: str) -> BadInput:
    return BadInput(
        "{what} is damaged in the lesson store; go back to a version of the lesson "
        "or restore the store from a copy.",
        what=what,
    )


def lesson_state(lesson: Lesson) -> str:
    """Everything a lesson's undo history keeps but the music."""
    # The piece is swapped out first: writing its notes is the costly part.
    data = to_dict(replace(lesson, piece=_EMPTY))
    return as_text({k: v for k, v in data.items() if k not in _BESIDE})


def lesson_from(state: str, piece: Piece, lesson_id: str, what: str = "") -> Lesson:
    """The lesson of a state; BadInput where the state is damaged."""
    what = what or say("Lesson {id}", id=lesson_id)
    data = read_text(state, what)
    if not isinstance(data, dict):
        raise _damaged(what)
    data |= {"id": lesson_id, "piece": piece_to_dict(_EMPTY)}
    return replace(from_dict(Lesson, data), piece=piece)


_EMPTY = Piece("", ())


def fingerprint(piece: Piece) -> str:
    """A digest of the music alone: what sounds when, and how it repeats.

    Titles, note ids, bar numbers, spelling and tempo do not count, so that the
    same score read again, or saved under another name, is known as the same.
    """
    rows: list[Any] = []
    for bar in piece.bars:
        notes = sorted(
            (str(n.onset), str(n.duration), n.midi, n.voice, n.part, n.grace) for n in bar.notes
        )
        form = [
            bar.repeat_start, bar.repeat_end, bar.times, bar.endings, bar.segno, bar.coda,
            bar.to_coda, bar.fine, bar.jump,
        ]  # fmt: skip
        rows.append([bar.time_signature, str(bar.length), form, notes])
    return digest(as_text(rows))


def fingering_key(lesson: Lesson, music: str, edition: str = "") -> str:
    """A digest of everything the lesson's fingering depends on.

    ``music`` is the digest of its piece; ``edition`` names whatever else the
    engine depends on, such as its own version and weights.
    """
    data = json.loads(lesson_state(lesson))
    rest = {k: v for k, v in data.items() if k not in _NOT_FINGERED}
    return digest(as_text([edition, music, rest]))


def clean(text: str) -> str:
    """Text that every database takes: no NUL, no half of a surrogate pair."""
    return text.replace("\0", "").encode("utf-8", "replace").decode("utf-8")


def fold(text: str) -> str:
    """Lower case without accents, for finding."""
    plain = unicodedata.normalize("NFKD", clean(text))
    return "".join(c for c in plain if not unicodedata.combining(c)).casefold()


def words(text: str) -> list[str]:
    """The words of a search; underscores and punctuation part them."""
    return re.findall(r"[^\W_]+", unicodedata.normalize("NFC", clean(text)))


class MusicMemory:
    """Pieces lately written or read, so that an edit does not write the whole
    score out again, nor an undo read it. Safe between threads."""

    def __init__(self, size: int = 32) -> None:
        self._size = size
        self._lock = threading.Lock()
        self._by_digest: OrderedDict[str, Piece] = OrderedDict()
        self._by_identity: dict[int, str] = {}

    def digest_of(self, piece: Piece) -> str | None:
        """The digest of this very object, if it was met before."""
        with self._lock:
            found = self._by_identity.get(id(piece))
            # The held reference guards against a new object at an old address.
            return found if found and self._by_digest.get(found) is piece else None

    def piece_of(self, music: str) -> Piece | None:
        with self._lock:
            piece = self._by_digest.get(music)
            if piece is not None:
                self._by_digest.move_to_end(music)
            return piece

    def hold(self, music: str, piece: Piece) -> None:
        with self._lock:
            old = self._by_digest.pop(music, None)
            if old is not None:
                self._by_identity.pop(id(old), None)
            self._by_digest[music] = piece
            self._by_identity[id(piece)] = music
            while len(self._by_digest) > self._size:
                _, gone = self._by_digest.popitem(last=False)
                self._by_identity.pop(id(gone), None)


def music_document(piece: Piece) -> tuple[str, bytes]:
    """Digest and compressed JSON of a piece."""
    text = as_text(piece_to_dict(piece))
    return digest(text), zlib.compress(text.encode("ascii"), 6)
