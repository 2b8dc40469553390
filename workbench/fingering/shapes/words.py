"""The words for a chord shape's fingerings, made where they are shown."""

from __future__ import annotations

from typing import Any

from workbench.fingering.shapes.shape import ShapeResult
from workbench.fingering.telling.words import sentence
from workbench.language.fact import Fact
from workbench.language.speech import mark, say

_SENTENCES = {
    "easy": mark("Nothing is stretched, crossed or crowded."),
    "all open": mark("No finger is needed."),
    "fingers too few": mark(
        "Four fingers cannot stop these frets at once, with or without a barre."
    ),
    "beyond the span": mark(
        "It needs {reach:.0f} mm between fingers {a} and {b}; the greatest span of a {hand} "
        "hand there is {most:.0f} mm."
    ),
}


def words(found: Fact) -> str:
    """Why a fingering of a shape is easy or hard, or why there is none, as a sentence."""
    fields: dict[str, Any] = dict(found.fields)
    if found.kind == "asks":
        told = sentence(fields["term"])
        return told[0].upper() + told[1:] + "."
    if "hand" in fields:
        fields["hand"] = say(fields["hand"])
    return say(_SENTENCES[found.kind], **fields)


def shape_document(result: ShapeResult) -> dict[str, Any]:
    """The JSON document of a shape: plain dictionaries, lists, text and numbers, its
    sentences in the language spoken now."""
    label = result.chord
    return {
        "frets": ["x" if f is None else f for f in result.frets],
        "fingerings": [
            {
                "fingers": list(f.fingers),
                "barres": [
                    {"fret": b.fret, "strings": list(b.strings), "finger": b.finger}
                    for b in f.barres
                ],
                "cost": f.cost,
                "reach_mm": f.reach_mm,
                "reasons": [words(why) for why in f.reasons],
            }
            for f in result.fingerings
        ],
        "chord": {
            "name": label.name,
            "inversion": label.inversion,
            "root": label.root,
            "bass": label.bass,
            "notes": list(label.notes),
            "also": list(label.also),
        },
        "impossible": words(result.impossible) if result.impossible else None,
    }
