"""The words for what the fingering engine found, made where they are shown.

Every kind of fact that the engine makes has its sentence here and nowhere else.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction
from typing import Any

from workbench.fingering.habits import BANDS, is_habit
from workbench.fingering.types import FingeredNote
from workbench.fingering.weights import sentences
from workbench.instrument.table import instrument
from workbench.language.fact import TEXT, Fact
from workbench.language.names import decimal, note_words, ordinal, pitch_words, plain
from workbench.language.speech import chosen, mark, say
from workbench.music.errors import BadInput

MOST_MOVED = 3  # notes named one by one where a fingering differs

_FRETS_APART = (
    mark("on one fret"), mark("on neighbouring frets"), mark("two frets apart"),
    mark("three frets apart or more"),
)  # fmt: skip
_STRINGS_APART = {
    -2: mark("{b} two strings or more towards string 1"),
    -1: mark("{b} one string towards string 1"),
    1: mark("{b} one string away from string 1"),
    2: mark("{b} two strings or more away from string 1"),
}

_SENTENCES = {
    # why a note ends early
    "hop": mark(
        "finger {finger} hops from string {string} to string {to} (fret {fret}) and cuts the {note}"
    ),
    "hop at join": mark(
        "finger {finger} hops from string {string} to string {to} (fret {fret}) from bar "
        "{from_bar} into bar {to_bar} and cuts the {note}"
    ),
    "string taken": mark("string {string} is taken by the {taker}, which ends the {note}"),
    "struck elsewhere": mark("the {note} is struck again on string {string} and goes on there"),
    "open damped": mark("a finger laid over string {string} damps the open {note}"),
    "first finger moves": mark("finger 1 moves to fret {fret} and lets the {note} go"),
    "finger needed": mark(
        "finger {finger} is needed on string {to} (fret {fret}) and cuts the {note}"
    ),
    "hand shifts": mark("the hand shifts to fret {fret} and lets the {note} go"),
    "out of stretch": mark("the hand cannot hold the {note} and reach the next grip in comfort"),
    # why a note cannot be played
    "not played": mark("it is not played"),
    "at bar": mark("bar {bar}, beat {beat}: {why}"),
    "silent pin": mark("the pin on {pitch} asks a place or finger that does not sound it"),
    "pins in the way": mark("with the pins on {pinned} no hand reaches {pitch}; lift a pin"),
    "too many notes": mark("{notes} notes at once, but only {strings} strings"),
    "same string": mark("{pitch} and {other} need the same string at once"),
    "out of reach": mark("no hand position reaches {notes} together"),
    # what is printed and left out
    "printed finger": mark(
        "Bar {bar}, beat {beat}: the printed finger {finger} on {pitch} is left out: {why}."
    ),
    "printed string": mark(
        "Bar {bar}, beat {beat}: the printed string {string} for {pitch} is left out: {why}."
    ),
    "printed fret": mark(
        "Bar {bar}, beat {beat}: the printed fret {fret} for {pitch} is left out: {why}."
    ),
    "print for another": mark(
        "The fingering that the score prints is for another instrument than the {instrument} "
        "and is left out."
    ),
    # why a fingering that is asked for cannot be held
    "at beat": mark("beat {beat}: {why}"),
    "refused": mark("Bar {bar}, {why}."),
    "cannot be held": mark(
        "Bar {bar}: no hand can hold these fingers together; free one of the notes."
    ),
    "right finger twice": mark(
        "Bar {bar}: one right finger would have to pluck two strings at once; free one of them."
    ),
    "others out of reach": mark("with {held} held like this no hand reaches {notes}"),
    "not held together": mark("no hand holds {notes} like this together"),
    "no string sounds": mark("no string sounds {pitch} at fret {fret}"),
    "string does not sound": mark("string {string} does not sound {pitch}"),
    "sounds otherwise": mark("string {string}, fret {fret} sounds {sounds}, not {pitch}"),
    "needs a finger": mark("{pitch} is stopped there and needs a finger, 1 to 4"),
    "takes no finger": mark("{pitch} is an open string there and takes no finger"),
    "no such finger": mark("left fingers are 0 for the open string and 1 to 4"),
    "two frets at once": mark("finger {finger} cannot stop frets {first} and {second} at once"),
    "two strings at once": mark(
        "finger {finger} cannot stop two strings there; only finger 1 lies as a barre, and "
        "nothing may sound below it"
    ),
    "fingers crossed": mark(
        "finger {first} would stand in front of finger {second}: fret {one} and fret {other}"
    ),
    "too wide": mark(
        "fingers {first} and {second} would be {apart} mm apart; this hand reaches {most} mm at "
        "most"
    ),
    # remarks
    "twice": mark("{finger} plucks twice running at the {pitch}"),
    # differences between two fingerings
    "place": mark("{note} on string {string}, fret {fret}"),
    "finger": mark("finger {finger} on the {note}"),
    "plucks": mark("{finger} on the {note}"),
    "nth place": mark("the {nth} {note} on string {string}, fret {fret}"),
    "nth finger": mark("finger {finger} on the {nth} {note}"),
    "keeps": mark("keeps the {note} to its full length"),
    "keeps by": mark("holds the {note} longer, by {much} quarter notes"),
    "keeps one": mark("holds the {note} longer, by a quarter note"),
    "cuts": mark("cuts the {note}"),
    "cuts by": mark("cuts the {note} by {much} quarter notes"),
    "cuts one": mark("cuts the {note} by a quarter note"),
    "reach": mark("asks a reach of {reach} mm"),
    "wide reach": mark("asks a reach of {reach} mm (your setting for this hand is {comfort} mm)"),
    "no reach": mark("asks no two fingers at once, where there is a reach of {other} mm"),
    "less reach": mark("needs only {reach} mm of reach instead of {other}"),
    "both hands": mark("easier for both hands together"),
}
_RANGE = {
    "below": mark("{pitch} lies below the range of the {instrument}"),
    "above": mark("{pitch} lies above the range of the {instrument}"),
    "outside": mark("{pitch} lies outside the range of the {instrument}"),
}
_NOTES = ("note", "taker")  # fields that name a note; as {pitch} with its octave
_PITCHES = ("sounds", "other")


def words(found: Fact | None) -> str:
    """A fact as a sentence in the language spoken now; "" for none."""
    if found is None:
        return ""
    fields = dict(found.fields)
    if found.kind == TEXT:
        return str(fields["text"])
    if found.kind in ("several", "in a row"):
        told = dict.fromkeys(words(f) for f in found.parts("why"))
        return ("; " if found.kind == "several" else " ").join(told)
    if found.kind == "difference":
        return _difference(found)
    if found.kind == "right hand":
        return _right_hand(found)
    if found.kind == "unlike":
        return _unlike(fields)
    if found.kind in ("more", "less"):
        return (sentence if found.kind == "more" else gain)(str(fields["term"]))
    if found.kind == "out of range":
        return say(
            _RANGE[str(fields["where"])],
            pitch=pitch_words(str(fields["note"])),
            instrument=_instrument(str(fields["instrument"])),
        )
    return say(_SENTENCES[found.kind], **_spoken(found)) if fields else say(_SENTENCES[found.kind])


def _spoken(found: Fact) -> dict[str, Any]:
    """The fields of a fact as they stand in a sentence."""
    out: dict[str, Any] = {}
    for name, value in found.fields:
        if name == "why":
            out[name] = " ".join(words(f) for f in found.parts(name))
        elif isinstance(value, tuple):
            out[name] = listed([pitch_words(v) for v in value if isinstance(v, str)])
        elif name in _NOTES and isinstance(value, str):
            out[name] = note_words(value)
        elif name in _PITCHES and isinstance(value, str):
            out[name] = pitch_words(value)
        elif name == "instrument":
            out[name] = _instrument(str(value))
        elif name in ("reach", "comfort", "other") and isinstance(value, float):
            out[name] = decimal(value, 0)
        elif isinstance(value, float):
            out[name] = plain(value)
        elif name == "nth" and isinstance(value, int):
            out[name] = ordinal(value)
        else:
            out[name] = value
    if isinstance(note := dict(found.fields).get("note"), str):
        out["pitch"] = pitch_words(note)
    return out


def _instrument(name: str) -> str:
    try:
        own = str(instrument(name).called)
    except BadInput:  # kept by a program that knew more instruments
        own = name
    return f"{own[:1].lower()}{own[1:]}" if chosen() == "en" else own


def listed(names: Sequence[str]) -> str:
    """Names joined as in a sentence."""
    return say(" and ").join(names)


def _moved(found: Fact) -> str:
    moved = found.parts("moved")
    more = say(" and more") if len(moved) > MOST_MOVED else ""
    return "; ".join(words(f) for f in moved[:MOST_MOVED]) + more


def _balance(found: Fact, between: str) -> str:
    """What is gained, then what it costs."""
    good = between.join(words(f) for f in found.parts("good"))
    bad = between.join(words(f) for f in found.parts("bad"))
    if good and bad:
        return say("{good}, but {bad}", good=good, bad=bad)
    return good or bad


def _difference(found: Fact) -> str:
    return say(
        "{what}: {difference}.",
        what=_moved(found),
        difference=_balance(found, "; ") or say("no other difference"),
    )


def _right_hand(found: Fact) -> str:
    return say(
        "Right hand, {what}: {difference}.",
        what=_moved(found),
        difference=_balance(found, "; ") or say("as easy"),
    )


def _unlike(fields: Mapping[str, object]) -> str:
    if "worse" not in fields:
        return say(
            "same music as bar {bar}, other fingers: what stands around it leaves no fingering "
            "in common",
            bar=fields["bar"],
        )
    return say(
        "same music as bar {bar}, other fingers: with the same ones {reason}",
        bar=fields["bar"],
        reason=sentence(str(fields["worse"])),
    )


def sentence(term: str) -> str:
    """What a teacher would say of a term of the cost, or of a habit."""
    if is_habit(term):
        return say("{habit}, seldom in your scores", habit=habit_words(term))
    return say(sentences(term)[0])


def gain(term: str) -> str:
    """What a teacher would say of having less of a term of the cost, or of a habit."""
    if is_habit(term):
        return say("without {habit}, seldom in your scores", habit=habit_words(term))
    return say(sentences(term)[1])


def habit_words(habit: str) -> str:
    """A habit by its name: which finger where, or how two fingers lie to each other."""
    _, fingers, what, amount, *rest = habit.split()
    if what == "string":
        return say("finger {finger} on string {string}", finger=fingers, string=amount)
    if what == "fret":
        if int(amount) == BANDS[0]:
            return say("finger {finger} at fret {fret} or above", finger=fingers, fret=amount)
        if int(amount) == BANDS[1]:
            last = BANDS[0] - 1
            return say(
                "finger {finger} at frets {fret} to {last}", finger=fingers, fret=amount, last=last
            )
        return say("finger {finger} at fret {fret}", finger=fingers, fret=amount)
    a, b = fingers.split("-")
    frets, strings = say(_FRETS_APART[int(amount)]), say(_STRINGS_APART[int(rest[1])], b=b)
    return say("fingers {a} and {b} {frets}, {strings}", a=a, b=b, frets=frets, strings=strings)


def spoken(note: FingeredNote) -> str:
    """A fingered note in words."""
    if not note.cut_reason or note.string is None:
        return spoken_place(note)
    held, written = quarters(note.held), quarters(note.duration)
    cut = say("held {held} of {written} quarters", held=held, written=written)
    return f"{spoken_place(note)}, {cut}"


def spoken_place(note: FingeredNote) -> str:
    """Where a note is played, with which fingers, and whether that is pinned."""
    if note.string is None or note.fret is None:
        return say("no place: {reason}", reason=words(note.impossible) or say("cannot be played"))
    if note.fret == 0:
        parts = [say("string {string} open", string=note.string)]
    else:
        parts = [say("string {string} fret {fret}", string=note.string, fret=note.fret)]
    if note.left:
        parts.append(say("left finger {finger}", finger=note.left))
    if note.right:
        parts.append(say("right finger {finger}", finger=note.right))
    if note.pinned:
        parts.append(say("pinned"))
    return ", ".join(parts)


def quarters(value: Fraction) -> str:
    """A length in quarters, such as 1½ or 2/3."""
    whole, rest = divmod(value, 1)
    known = {Fraction(1, 2): "½", Fraction(1, 4): "¼", Fraction(3, 4): "¾"}
    if rest == 0:
        return str(whole)
    small = known.get(rest, f"{' ' if whole else ''}{rest}")
    return f"{whole or ''}{small}"
