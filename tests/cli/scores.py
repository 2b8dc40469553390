"""Small MusicXML scores written by hand."""

from __future__ import annotations


def score_xml(bars: list[str], title: str = "Morning Steps", head: str = "") -> str:
    """A MusicXML score of one part; ``bars`` hold the XML inside each measure."""
    attributes = (
        "<attributes><divisions>2</divisions><key><fifths>0</fifths></key>"
        "<time><beats>4</beats><beat-type>4</beat-type></time>"
        "<clef><sign>G</sign><line>2</line></clef></attributes>"
    )
    measures = "".join(
        f'<measure number="{number}">{attributes if number == 1 else ""}{bar}</measure>'
        for number, bar in enumerate(bars, 1)
    )
    return (
        f'<?xml version="1.0" encoding="UTF-8"?>\n{head}<score-partwise version="4.0">'
        f"<work><work-title>{title}</work-title></work>"
        '<part-list><score-part id="P1"><part-name>Melody</part-name></score-part></part-list>'
        f'<part id="P1">{measures}</part></score-partwise>'
    )


def note_xml(pitch: str, duration: int = 2, voice: int = 1, chord: bool = False) -> str:
    """A note such as ``C4``, ``duration`` in quavers."""
    return (
        f"<note>{'<chord/>' if chord else ''}<pitch><step>{pitch[0]}</step>"
        f"<octave>{pitch[1:]}</octave></pitch><duration>{duration}</duration>"
        f"<voice>{voice}</voice></note>"
    )


def bar_xml(*pitches: str) -> str:
    return "".join(note_xml(pitch) for pitch in pitches)
