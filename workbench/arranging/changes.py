"""What arranging altered, as values; the words are made where something is shown."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from workbench.arranging.sounds import BASS, TUNE
from workbench.language.names import key_words, pitch_words
from workbench.language.numbers import in_words
from workbench.language.speech import count, mark, say
from workbench.music.model import Bar

KINDS = (
    mark("key"),
    mark("whole piece"),
    mark("best key"),
    mark("phrase"),
    mark("octave"),
    mark("shortened"),
    mark("dropped"),
)
KEY, WHOLE, BEST, PHRASE, OCTAVE, SHORTENED, DROPPED = KINDS
#: Why: the instrument has no such note there, too few strings, no grip, a doubling, a
#: string is needed by the next note, the line it belongs to, the teacher's word.
RANGE, STRINGS, GRIP, DOUBLED, NEEDED, HARD, LINE, REENTRANT, WISH = (
    "range", "strings", "grip", "doubled", "needed", "hard", "line", "reentrant", "wish",
)  # fmt: skip


@dataclass(frozen=True)
class Change:
    """One thing arranging altered, besides the transposition of everything.

    ``note`` is the note's id, "" where the whole piece is meant; ``bar`` the index of its
    written bar and ``bar_number`` the printed one; ``onset`` in quarter lengths from the
    start of the bar, ``beat`` from 1 in the beats of the time signature. ``kind`` is one of
    ``KINDS``, ``role`` what the note is in the music. ``before`` and ``after`` are pitch
    names (keys for the whole piece, quarter lengths where shortened), ``after`` empty where
    the note is left out; ``amount`` is octaves, or semitones for the whole piece. ``why``
    names the cause.
    """

    note: str
    bar: int
    bar_number: str
    onset: Fraction
    beat: Fraction
    kind: str
    why: str = ""
    role: str = ""
    part: int = 1
    voice: int = 1
    before: str = ""
    after: str = ""
    amount: int = 0

    @property
    def reason(self) -> str:
        """One sentence for the teacher, in the language now chosen."""
        return sentence(self)


def beat_of(bar: Bar, onset: Fraction) -> Fraction:
    """The beat, from 1, of an onset in quarter lengths; a pickup bar counts from its end."""
    unit = Fraction(4, bar.time_signature[1])
    full = bar.time_signature[0] * unit
    late = max(full - bar.length, Fraction(0)) if bar.pickup else Fraction(0)
    return (onset + late) / unit + 1


def sentence(change: Change) -> str:
    """What was altered, where and why."""
    if change.kind == KEY:
        return say(
            "The score is marked {key}, and moving it does not change its mode: {wanted} "
            "was taken by its key signature.",
            key=key_words(change.before),
            wanted=key_words(change.after),
        )
    if change.kind == BEST:
        return say(
            "As written the piece does not lie on this instrument; it is moved {way}, to {key}.",
            way=semitones(change.amount),
            key=key_words(change.after),
        )
    if change.kind == WHOLE:
        return say(
            "The whole piece goes {way} beyond what was asked: elsewhere the tune "
            "leaves the instrument.",
            way=octaves(change.amount),
        )
    whole, part = divmod(change.beat, 1)
    where = say(
        "Bar {bar}, beat {beat}", bar=change.bar_number, beat=f"{whole} {part}" if part else whole
    )
    return f"{where}: {_note(change)}"


def _note(change: Change) -> str:
    what = say(change.role)
    before = pitch_words(change.before)
    after = change.after if change.kind == SHORTENED else pitch_words(change.after)
    if change.kind == DROPPED:
        return say("{pitch} ({role}) is left out: {why}.", pitch=before, role=what,
                   why=_why_out(change))  # fmt: skip
    if change.kind == SHORTENED:
        return say("{pitch} ({role}) ends after {length}: its string is needed.",
                   pitch=before, role=what, length=_quarters(Fraction(after)))  # fmt: skip
    way = octaves(change.amount)
    if change.kind == PHRASE:
        return say("{pitch} of the tune goes {way} to {other} with its phrase: the instrument "
                   "does not have all of it as written.", pitch=before, way=way,
                   other=after)  # fmt: skip
    if change.role == TUNE:
        return say("{pitch} of the tune goes {way} to {other}: the instrument does not have it "
                   "in the octave of its phrase. Listen whether the tune bears it.",
                   pitch=before, way=way, other=after)  # fmt: skip
    why = {
        RANGE: say("the instrument does not have it where it was"),
        REENTRANT: say("it lies on the high fourth string, above the inner notes"),
        WISH: say("as you wished"),
        GRIP: say("where it was no hand reaches it together with the others"),
    }.get(change.why, say("there it can be played with the others, below the tune"))
    return say("{pitch} ({role}) goes {way} to {other}: {why}.", pitch=before, role=what,
               way=way, other=after, why=why)  # fmt: skip


def _why_out(change: Change) -> str:
    if change.why == RANGE:
        return (
            say("the instrument has it in no octave below the tune")
            if change.role != TUNE
            else say("the instrument does not have it in any octave that is free")
        )
    return {
        DOUBLED: say("another note that stays has the same name"),
        STRINGS: say("there are more notes than strings"),
        GRIP: say("no hand reaches it together with the others"),
        WISH: say("as you wished"),
    }.get(change.why, say("with the others it would be hard to play"))


def octaves(number: int) -> str:
    """``up an octave``, ``down two octaves``."""
    n = abs(number)
    if number > 0:
        return count(n, "up an octave", "up {word} octaves", word=in_words(n))
    return count(n, "down an octave", "down {word} octaves", word=in_words(n))


_INTERVALS = (
    mark("nothing"), mark("a semitone"), mark("a tone"), mark("a minor third"),
    mark("a major third"), mark("a fourth"), mark("a tritone"), mark("a fifth"),
    mark("a minor sixth"), mark("a major sixth"), mark("a minor seventh"),
    mark("a major seventh"), mark("an octave"),
)  # fmt: skip


def semitones(number: int) -> str:
    """A move as musicians say it: ``up a fourth``, ``down an octave and a tone``."""
    if not number:
        return say("not at all")
    whole, rest = divmod(abs(number), 12)
    if not rest:
        return octaves(whole if number > 0 else -whole)
    interval = say(_INTERVALS[rest])
    if whole:
        many = say("an octave") if whole == 1 else say("{number} octaves", number=in_words(whole))
        interval = say("{octaves} and {interval}", octaves=many, interval=interval)
    return (
        say("up {interval}", interval=interval)
        if number > 0
        else say("down {interval}", interval=interval)
    )


def tally(changes: tuple[Change, ...]) -> dict[str, int]:
    """How many notes were moved, shortened and left out, and of the tune how many in all."""
    moved = {c.note for c in changes if c.kind in (PHRASE, OCTAVE)}
    short = {c.note for c in changes if c.kind == SHORTENED}
    out = {c.note for c in changes if c.kind == DROPPED}
    tune = {c.note for c in changes if c.role == TUNE and c.kind in (OCTAVE, DROPPED)}
    bass = {c.note for c in changes if c.role == BASS and c.kind in (OCTAVE, DROPPED)}
    return {"moved": len(moved), "shortened": len(short), "dropped": len(out),
            "tune": len(tune), "bass": len(bass)}  # fmt: skip


def counted(changes: tuple[Change, ...]) -> str:
    """One line that counts what was altered; "" where nothing was."""
    n = tally(changes)
    said = []
    if n["dropped"]:
        said.append(count(n["dropped"], "{n} note is left out", "{n} notes are left out"))
    if n["moved"]:
        said.append(count(n["moved"], "{n} lies in another octave", "{n} lie in another octave"))
    if n["shortened"]:
        said.append(count(n["shortened"], "{n} ends early", "{n} end early"))
    if not said:
        return ""
    words = ", ".join(said)
    if n["tune"]:
        words += "; " + count(n["tune"], "{n} note of the tune had to change",
                              "{n} notes of the tune had to change")  # fmt: skip
    return words[:1].upper() + words[1:] + "."


def _quarters(length: Fraction) -> str:
    if length == 1:
        return say("one quarter")
    whole, part = divmod(length, 1)
    if not part:
        return say("{whole} quarters", whole=whole)
    return (
        say("{whole} {part} quarters", whole=whole, part=part)
        if whole
        else say("{part} of a quarter", part=part)
    )
