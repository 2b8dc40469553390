"""Small scores of our own, as values and as MusicXML text."""

from __future__ import annotations

from fractions import Fraction

from workbench.music.model import Bar, Note, Piece, Pitch

HEAD = (
    '<?xml version="1.0" encoding="UTF-8"?>\n'
    '<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" '
    '"http://www.musicxml.org/dtds/partwise.dtd">\n'
)


def piece(*marks):
    """A piece of one whole note a bar; each mark is a dictionary of Bar fields."""
    bars = []
    for index, mark in enumerate(marks):
        note = Note(f"n{index}", Fraction(0), Fraction(4), Pitch("CDEFGAB"[index % 7], 0, 4))
        bars.append(
            Bar(
                index=index,
                number=str(index + 1),
                time_signature=(4, 4),
                length=Fraction(4),
                notes=(note,),
                **mark,
            )
        )
    return Piece("Small piece", tuple(bars))


def sounded(score):
    """Every note as (bar, onset, duration, pitch, grace), sorted."""
    return sorted(
        (bar.index, n.onset, n.duration, n.pitch, n.grace) for bar in score.bars for n in bar.notes
    )


def note(step, duration, kind, *, octave=5, extra="", before="", voice=1, notations=""):
    held = f"<notations>{notations}</notations>" if notations else ""
    length = f"<duration>{duration}</duration>" if duration else ""
    return (
        f"<note>{before}<pitch><step>{step}</step><octave>{octave}</octave></pitch>"
        f"{length}<voice>{voice}</voice><type>{kind}</type>{extra}{held}</note>"
    )


def rest(duration):
    return f"<note><rest/><duration>{duration}</duration><voice>1</voice></note>"


def words(text):
    return f"<direction><direction-type><words>{text}</words></direction-type></direction>"


def score(*measures, time=(4, 4), fifths=0, names=("Melody",), more=()):
    """A score of one part (``more``: measures of further parts), 12 divisions a quarter."""
    parts = [measures, *more]
    names = [*names, *(f"Part {i}" for i in range(len(names) + 1, len(parts) + 1))]
    listed = "".join(
        f'<score-part id="P{i}"><part-name>{n}</part-name></score-part>'
        for i, n in enumerate(names, 1)
    )
    first = (
        f"<attributes><divisions>12</divisions><key><fifths>{fifths}</fifths></key>"
        f"<time><beats>{time[0]}</beats><beat-type>{time[1]}</beat-type></time></attributes>"
    )
    body = ""
    for i, rows in enumerate(parts, 1):
        body += f'<part id="P{i}">'
        for j, row in enumerate(rows):
            body += f'<measure number="{j + 1}">{first if j == 0 else ""}{row}</measure>'
        body += "</part>"
    return (
        f'{HEAD}<score-partwise version="4.0"><work><work-title>Small score</work-title></work>'
        f"<part-list>{listed}</part-list>{body}</score-partwise>"
    )


def left(*, repeat=False, ending=""):
    inner = f'<ending number="{ending}" type="start"/>' if ending else ""
    inner += '<repeat direction="forward"/>' if repeat else ""
    return f'<barline location="left">{inner}</barline>'


def right(*, repeat=False, ending="", times="", style=""):
    inner = f"<bar-style>{style}</bar-style>" if style else ""
    inner += f'<ending number="{ending}" type="stop"/>' if ending else ""
    inner += f'<repeat direction="backward"{times}/>' if repeat else ""
    return f'<barline location="right">{inner}</barline>'
