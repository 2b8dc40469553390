"""Names of notes and keys, and numbers, as the chosen language writes them.

What the code holds is English spelling with ASCII signs (``Bb4``, ``F# minor``). German
calls B natural H and B flat B, has Fis and Es for F sharp and E flat, and writes minor
keys small (Duden, "Tonbezeichnungen"; from memory).
"""

from __future__ import annotations

import re

from workbench.language.speech import chosen

_PITCH = re.compile(r"^([A-Ga-g])(#{0,3}|b{0,3})(-?\d+)?$")
_KEY = re.compile(r"^([A-G])(#{0,3}|b{0,3})[ ]?(major|minor)?$")
# A root or bass, and then the chord's kind or nothing: "Bm7" but not "Bridge".
_AFTER = r"(?=$|[\s/\d()+^°øΔ-]|m|M|o(?![a-z])|dim|aug|sus|add|omit|no|alt)"
_ROOT = re.compile(rf"(?:(?<=/)|^)([A-G])(#{{1,2}}|b{{1,2}}|){_AFTER}")
_TYPED = re.compile(rf"(?:(?<=/)|^)([A-H])([#b]?){_AFTER}")
_ALTERED = re.compile(r"(?<!/)([#b])(?=\d)")  # of a step in a chord's kind: m7b5, 7#9
_REAL = {"#": "♯", "b": "♭"}


def pitch_words(name: str) -> str:
    """A note's name, with its octave where ``name`` has one: ``Bb4`` is B♭4, in German B4.
    What is no note name comes back as it is."""
    found = _PITCH.match(name)
    if not found:
        return name
    step, signs, octave = found[1].upper(), found[2], found[3] or ""
    if chosen() == "de":
        return _german(step, signs) + octave
    return step + "".join(_REAL[s] for s in signs) + octave


def as_first_word(words: object) -> str:
    """The words with a capital, as they begin a sentence."""
    text = str(words)
    return text[:1].upper() + text[1:]


def note_words(name: str) -> str:
    """A note's name without its octave."""
    return pitch_words(name.rstrip("0123456789").rstrip("-"))


def key_words(name: str) -> str:
    """A key's name: ``Bb major`` is B♭ major, in German B-Dur; ``E minor`` is e-Moll.
    What is no key name comes back as it is."""
    found = _KEY.match(name.strip())
    if not found:
        return name
    step, signs, mode = found[1], found[2], found[3] or ""
    if chosen() == "de":
        tonic = _german(step, signs)
        if mode == "minor":
            tonic = tonic.lower()
        return tonic + {"major": "-Dur", "minor": "-Moll", "": ""}[mode]
    return f"{step}{''.join(_REAL[s] for s in signs)} {mode}".strip()


def chord_words(name: str) -> str:
    """A chord's name with real signs: ``Bbm7/F#`` is B♭m7/F♯. German has H for B natural;
    B flat keeps its sign, so that nobody takes the one for the other. The same wherever a
    chord is named: over the music, beside a grip, in a sentence."""
    return _ALTERED.sub(lambda found: _REAL[found[1]], _ROOT.sub(_root, name))


def chord_typed(text: str) -> str:
    """A chord's name as somebody wrote it, in English spelling with ASCII signs. In German
    H is B natural and B is B flat."""
    text = text.replace("♯", "#").replace("♭", "b")
    return _TYPED.sub(_typed_root, text) if chosen() == "de" else text


def _typed_root(found: re.Match[str]) -> str:
    step, sign = found[1], found[2]
    if step == "H":
        return "B" + sign
    return "Bb" if step == "B" and not sign else step + sign


def _root(found: re.Match[str]) -> str:
    step, signs = found[1], found[2]
    if chosen() == "de" and step == "B" and not signs:
        step = "H"
    return step + "".join(_REAL[s] for s in signs)


def _german(step: str, signs: str) -> str:
    if step == "B":
        if signs == "b":
            return "B"
        step = "H"
    if not signs:
        return step
    if signs[0] == "#":
        return step + "is" * len(signs)
    # Es and As drop the vowel of the ending, and B flat flat is Heses
    first = "s" if step in "EA" else "es"
    return step + first + "es" * (len(signs) - 1)


def decimal(value: float, places: int = 1) -> str:
    """A number with so many decimals: 1.5, in German 1,5. No minus before nothing."""
    text = f"{value:.{places}f}"
    if text.startswith("-") and not text.strip("-0."):
        text = text[1:]
    return point_words(text)


def point_words(figure: str) -> str:
    """A number in figures with its decimal sign: 1.5, in German 1,5."""
    return figure.replace(".", ",") if chosen() == "de" else figure


def plain(value: float) -> str:
    """A number with the decimals it needs, at most six figures: 2, 1.5, in German 1,5."""
    return point_words(f"{value:g}")


def ordinal(number: int) -> str:
    """A place in a row in figures: 1st, 2nd, 3rd, 4th; in German 1., 2."""
    if chosen() != "en":
        return f"{number}."
    teens = 10 < number % 100 < 20
    return f"{number}{'th' if teens else {1: 'st', 2: 'nd', 3: 'rd'}.get(number % 10, 'th')}"


def percent(share: float, places: int = 0) -> str:
    """A share of 1 in per cent: 98%, in German 98 %."""
    figure = decimal(share * 100, places)
    return f"{figure}\u00a0%" if chosen() == "de" else f"{figure}%"
