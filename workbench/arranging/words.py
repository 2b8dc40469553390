"""The words for what arranging altered and for why a key suits, made where they are shown."""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING

from workbench.arranging.changes import (
    BEST,
    COVERS,
    DOUBLED,
    DROPPED,
    GRIP,
    KEY,
    PHRASE,
    RANGE,
    REENTRANT,
    SHORTENED,
    STRINGS,
    WHOLE,
    WISH,
    Change,
    tally,
)
from workbench.arranging.sounds import TUNE
from workbench.language.names import as_first_word, key_words, percent, pitch_words
from workbench.language.numbers import in_words
from workbench.language.speech import count, mark, say
from workbench.music.beats import beat_in_digits

if TYPE_CHECKING:
    from workbench.arranging.keys import Candidate


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
    where = say("Bar {bar}, beat {beat}", bar=change.bar_number, beat=beat_in_digits(change.beat))
    return f"{where}: {_note(change)}"


def _note(change: Change) -> str:
    what = say(change.role)
    before = pitch_words(change.before)
    after = change.after if change.kind == SHORTENED else pitch_words(change.after)
    if change.kind == DROPPED:
        return say("{pitch} ({role}) is left out: {why}.", pitch=before, role=what,
                   why=_why_out(change))  # fmt: skip
    if change.kind == SHORTENED and change.why == COVERS:
        return say("{pitch} ({role}) ends after {length}: it would sound above the tune.",
                   pitch=before, role=what, length=_quarters(Fraction(after)))  # fmt: skip
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
    return as_first_word(words) + "."


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


def key_reason(one: Candidate) -> str:
    """Why a key stands where it does, in one sentence."""
    way = semitones(one.transposition) if one.transposition else say("as written")
    said = [way]
    if one.tune:
        said.append(count(one.tune, "{n} note of the tune has to change",
                          "{n} notes of the tune have to change"))  # fmt: skip
    if one.unplayable:
        said.append(count(one.unplayable, "{n} note is left out", "{n} notes are left out"))
    if one.changed:
        said.append(count(one.changed, "{n} note lies in another octave or ends early",
                          "{n} notes lie in another octave or end early"))  # fmt: skip
    if not (one.tune or one.unplayable or one.changed):
        said.append(say("every note stays as it is"))
    said.append(
        say("no fret above {fret}, {open} open strings", fret=one.top_fret,
            open=percent(one.open_share))
    )  # fmt: skip
    if one.level_share < 0.995:
        said.append(say("{share} of the grips suit the level", share=percent(one.level_share)))
    if one.shapes:
        said.append(say("the shapes are those of the guitar's upper strings"))
    said.append(_signature(one.fifths))
    words = "; ".join(said) + "."
    return as_first_word(words)


def _signature(fifths: int) -> str:
    if fifths > 0:
        return count(fifths, "{n} sharp", "{n} sharps")
    if fifths < 0:
        return count(-fifths, "{n} flat", "{n} flats")
    return say("no sharps or flats")
