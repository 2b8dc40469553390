"""Every technique of the catalogue has a case in which it is found and one, close to it,
in which it is not."""

from __future__ import annotations

from fractions import Fraction as F

import pytest

from tests.teaching.hand_made import GUITAR, HAND, UKE, bar, build, n
from workbench.fingering.types import Barre
from workbench.music.model import Key
from workbench.teaching.techniques.catalogue import (
    catalogue,
    find_techniques,
    rules_left,
    rules_music,
    rules_right,
)
from workbench.teaching.techniques.occurrence import Music

H = F(1, 2)
T = F(1, 3)


def line(*events, **fields):
    return (bar(*events, **fields),)


def at(*rows):
    """Notes that begin together."""
    return bar(*(n(name, 4, 0, **more) for name, more in rows))


def plucked(fingers, *names):
    return (at(*((name, {"right": f}) for name, f in zip(names, fingers, strict=True))),)


def slur(*names, string=1):
    first, second = names
    return line(
        n(first, 2, string=string, slur_start=True), n(second, 2, string=string, slur_stop=True)
    )


def chord(*names):
    return bar(*(n(x, 4, 0) for x in names))


MAJOR = [chord("C4", "E4", "G4"), chord("G4", "B4", "D4"), chord("C4", "E4", "G4")]
MINOR = [chord("A4", "C4", "E4"), chord("E4", "G#4", "B4"), chord("A4", "C4", "E4")]

#: technique: (bars in which it is found, bars in which it is not)
CASES = {
    "alternation": (
        line(*(n(x, right=f) for x, f in zip(("C4", "D4", "E4", "F4"), "imim", strict=True))),
        line(*(n(x, right=f) for x, f in zip(("C4", "D4", "E4", "F4"), "imii", strict=True))),
    ),
    "repeated-notes": (line(n("A4"), n("A4"), n("A4")), line(n("A4"), n("A4"), n("B4"))),
    "thumb-finger": (plucked("pi", "C4", "A4"), plucked("im", "C4", "A4")),
    "fingers-together": (plucked("im", "C4", "A4"), plucked("pi", "C4", "A4")),
    "pim-chord": (plucked("pim", "C4", "E4", "A4"), plucked("ima", "C4", "E4", "A4")),
    "pima-chord": (
        plucked("pima", "G4", "C4", "E4", "A4"), plucked("pim", "C4", "E4", "A4"),
    ),
    "strum": (
        plucked("pppp", "G4", "C4", "E4", "A4"), plucked("pima", "G4", "C4", "E4", "A4"),
    ),
    "arpeggio": (
        line(n("C4", string=3, right="p"), n("E4", string=2, right="i"),
             n("A4", string=1, right="m"), n("E4", string=2, right="i")),
        line(n("C4", string=3, right="p"), n("E4", string=2, right="p"),
             n("A4", string=1, right="m"), n("E4", string=2, right="i")),
    ),
    "thumb-alone": (
        line(*(n(x, right="p") for x in ("C4", "D4", "E4"))),
        line(n("C4", right="p"), n("D4", right="p"), n("E4", right="i")),
    ),
    "string-skip": (
        line(n("A4", string=1, right="i"), n("C4", string=3, right="m")),
        line(n("A4", string=1, right="i"), n("E4", string=2, right="m")),
    ),
    "rest-stroke": (None, line(n("A4"))),  # a matter of the fingering: see below
    "guide-finger": (
        line(n("C5", left=3), n("D5", left=3, move="guide")),
        line(n("C5", left=3), n("D5", left=4, move="place")),
    ),
    "planted-finger": (
        line(n("C5", left=3), n("E4"), n("C5", left=3, move="planted")),
        line(n("C5", left=3), n("C5", left=3, move="planted")),
    ),
    "hop": (
        line(n("C5", string=1, left=3), n("G4", string=2, left=3, move="hop")),
        line(n("C5", string=1, left=3), n("F4", string=2, left=1, move="place")),
    ),
    "shift": (
        line(n("A#4", left=1), n("D5", string=1, left=1, move="shift")),
        line(n("A#4", left=1), n("C5", string=1, left=3, move="place")),
    ),
    "open-string-shift": (
        line(n("A#4", left=1), n("E4"), n("D5", string=1, left=1)),
        line(n("A#4", left=1), n("E4"), n("B4", string=1, left=1)),
    ),
    "finger-swap": (
        line(n("F4", 2, 0, string=2, left=1), n("D4", 2, 0, string=3, left=2),
             n("C5", 2, 2, string=1, left=3), n("G4", 2, 2, string=2, left=4)),
        line(n("F4", 2, 0, string=2, left=1), n("D4", 2, 0, string=3, left=2),
             n("C5", 2, 2, string=1, left=3), n("F4", 2, 2, string=2, left=1)),
    ),
    "partial-barre": (
        line(n("A#4", 4, 0, left=1), n("F4", 4, 0, left=1), barres=[Barre(F(0), 1, (1, 2))]),
        line(n("A#4", 4, 0, left=1), n("F4", 4, 0, left=1),
             barres=[Barre(F(0), 1, (1, 2, 3, 4))]),
    ),
    "full-barre": (
        line(n("A#4", 4, 0, left=1), barres=[Barre(F(0), 1, (1, 2, 3, 4))]),
        line(n("A#4", 4, 0, left=1), barres=[Barre(F(0), 1, (1, 2, 3))]),
    ),
    "stretch": (
        line(n("C4", 4, 0, string=2, left=1), n("A4", 4, 0, string=1, left=4)),  # guitar: 1 to 5
        line(n("C4", 4, 0, string=2, left=1), n("F4", 4, 0, string=1, left=1)),
    ),
    "slur-up": (slur("A4", "B4"), slur("C5", "A4")),
    "slur-down": (slur("C5", "A4"), slur("A4", "B4")),
    "position": (
        line(*(n(x, string=1, left=f)
               for x, f in (("B4", 1), ("C5", 2), ("C#5", 3), ("D5", 4)))),
        line(*(n(x, string=1, left=f)
               for x, f in (("A#4", 1), ("B4", 2), ("C5", 3), ("C#5", 4)))),
    ),
    "high-position": (
        line(n("D5", string=1, left=1)), line(n("C#5", string=1, left=1)),
    ),
    "held-voice": (
        line(n("C4", 4, 0, voice=2, right="p"), n("E4", 1, 0), n("G4", 1, 1), n("A4", 2, 2)),
        line(n("C4", 4, 0, voice=2, right="p", held=1), n("E4", 1, 0), n("G4", 1, 1),
             n("A4", 2, 2)),
    ),
    "cut-note": (line(n("C4", 2, held=1, cut="hop")), line(n("C4", 2))),
    "campanella": (
        line(n("E4", string=2), n("F4", string=3, left=4), n("G4", string=4)),
        line(n("E4", string=2), n("F4", string=2), n("G4", string=4)),
    ),
    "harmonic": (
        line(n("A4", articulations=("natural harmonic",))),
        line(n("A4", articulations=("accent",))),
    ),
    "parallel-thirds": (
        line(n("C4", 1, 0), n("E4", 1, 0), n("D4", 1, 1), n("F4", 1, 1)),
        line(n("C4", 1, 0), n("E4", 1, 0), n("C4", 1, 1), n("F4", 1, 1)),
    ),
    "pickup": (
        (bar(n("C4"), pickup=True, length=1, number="0"), bar(n("E4", 4))), line(n("C4", 4)),
    ),
    "syncopation": (line(n("C4", H), n("E4", 1), n("E4", H)), line(n("C4", 1), n("E4", 1))),
    "dotted-rhythm": (line(n("C4", F(3, 2)), n("E4", H)), line(n("C4", 1), n("E4", 1))),
    "triplets": (
        line(*(n(x, T, tuplet=(3, 2)) for x in ("C4", "D4", "E4"))),
        line(*(n(x, H) for x in ("C4", "D4"))),
    ),
    "tie": ((bar(n("C4", 2), n("E4", 3)), bar(n("C4", 3, 1))), line(n("C4", 4))),
    "compound-time": (line(n("C4", F(3, 2)), time_signature=(6, 8)),
                      line(n("C4", 3), time_signature=(3, 4))),
    "time-change": (
        (bar(n("C4", 4)), bar(n("C4", 3), time_signature=(3, 4))),
        (bar(n("C4", 4)), bar(n("C4", 4))),
    ),
    "grace-note": (line(n("D4", 0, 0, grace=True), n("C4", 4, 0)), line(n("C4", 4))),
    "fermata": (line(n("C4", 4, articulations=("fermata",))), line(n("C4", 4))),
    "staccato": (line(n("C4", 4, articulations=("staccato",))), line(n("C4", 4))),
    "accidentals": (line(n("F#4", 4)), line(n("F4", 4))),
    "minor-section": ((*MAJOR, bar(*MINOR[0].events, repeat_start=True), *MINOR[1:]),
                      tuple(MAJOR)),
    "key-change": (
        (bar(n("C4", 4)), bar(n("D4", 4), key=Key(2))), (bar(n("C4", 4)), bar(n("D4", 4))),
    ),
    "endings": (
        (bar(n("E4", 4), endings=(1,), repeat_end=True), bar(n("C4", 4), endings=(2,))),
        (bar(n("E4", 4), repeat_end=True), bar(n("C4", 4))),
    ),
    "jump": ((bar(n("C4", 4), jump="D.C."),), (bar(n("C4", 4)),)),
}  # fmt: skip


def names(bars, instrument=UKE):
    piece, fingering = build(*bars, instrument=instrument)
    return {f.technique.id for f in find_techniques(piece, fingering, instrument, HAND)}


def test_every_technique_has_its_cases():
    assert set(CASES) == {t.id for t in catalogue()}


@pytest.mark.parametrize("technique", [name for name in CASES if name != "rest-stroke"])
def test_it_is_found_where_it_is_and_only_there(technique):
    there, not_there = CASES[technique]
    instrument = GUITAR if technique == "stretch" else UKE
    assert technique in names(there, instrument)
    assert technique not in names(not_there, instrument)


def test_every_rule_finds_something_in_the_cases_and_only_what_the_catalogue_lists():
    listed = {t.id for t in catalogue()}
    for rule in (*rules_right.RULES, *rules_left.RULES, *rules_music.RULES):
        found = set()
        for technique, (there, _) in CASES.items():
            if there is None:  # marked by the fingering, see below
                continue
            instrument = GUITAR if technique == "stretch" else UKE
            piece, fingering = build(*there, instrument=instrument)
            music = Music(piece, fingering, instrument, HAND)
            found |= {occurrence.technique for occurrence in rule(music)}
        assert found <= listed, rule.__name__
        assert found or rule is rules_right.rest_stroke, rule.__name__


def test_rest_strokes_are_those_the_fingering_marks():
    from dataclasses import replace

    piece, fingering = build(*CASES["rest-stroke"][1])
    first = fingering.bars[0]
    marked = replace(first, notes=tuple(replace(h, stroke="rest") for h in first.notes))
    rested = replace(fingering, bars=(marked,))
    assert "rest-stroke" in {f.technique.id for f in find_techniques(piece, rested, UKE, HAND)}
    assert "rest-stroke" not in names(CASES["rest-stroke"][1])
