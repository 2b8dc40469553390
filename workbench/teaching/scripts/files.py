"""A script written down: Markdown, SubRip and WebVTT cues, a chapter list."""

from __future__ import annotations

from workbench.language.message import Text
from workbench.language.speech import say
from workbench.teaching.lessons.formatting import plain
from workbench.teaching.scripts.script import Cue, Script


def markdown(script: Script) -> str:
    """The script to read: chapters as headings with their length, one bar a paragraph,
    times in front."""
    lengths = {c.position: c.seconds for c in script.chapters}
    out = [f"# {script.title}", "", say("Length about {time}.", time=clock(script.seconds))]
    if script.opening:
        out += ["", str(script.opening)]
    for cue in script.cues:
        if cue.chapter:
            out += ["", f"## {cue.chapter} ({clock(lengths[cue.position])})"]
        if cue.covered:
            continue
        out += ["", f"**{clock(cue.start)} · {place_words(script, cue)}** {cue.say}"]
        for line in shown(cue):
            out += ["", f"> {line}"]
    if script.closing:
        out += ["", "---", "", f"**{clock(script.closing_start)}** {script.closing}"]
    return "\n".join(out) + "\n"


def srt(script: Script) -> str:
    """SubRip cues (common practice: hours:minutes:seconds,milliseconds)."""
    out = []
    for number, (start, end, text) in enumerate(_lines(script), 1):
        out.append(f"{number}\n{_stamp(start, ',')} --> {_stamp(end, ',')}\n{text}\n")
    return "\n".join(out)


def webvtt(script: Script) -> str:
    """WebVTT cues (W3C), with the bar as the cue's identifier."""
    out = ["WEBVTT\n"]
    for number, (start, end, text) in enumerate(_lines(script), 1):
        safe = text.replace("&", "&amp;").replace("<", "&lt;").replace("-->", "→")
        out.append(f"{number}\n{_stamp(start, '.')} --> {_stamp(end, '.')}\n{safe}\n")
    return "\n".join(out)


def chapters(script: Script) -> str:
    """Chapters in plain text, a time and a title a line, beginning at 0:00."""
    rows: list[tuple[float, Text]] = [(0.0, say("Opening"))] if script.opening_seconds > 0 else []
    rows += [(chapter.start, chapter.name) for chapter in script.chapters]
    if script.closing_seconds > 0:
        rows.append((script.closing_start, say("Closing")))
    if rows and rows[0][0] > 0:
        rows[0] = (0.0, rows[0][1])
    return "".join(f"{clock(start)} {title}\n" for start, title in rows)


def place_words(script: Script, cue: Cue) -> str:
    """ "bar 3", "pickup", or the bars that a cue speaks for, such as "bars 13–15"."""
    bars = bar_words(script, cue)
    if cue.number == "0":
        return bars
    if cue.through > cue.position:
        return say("bars {bars}", bars=bars)
    return say("bar {number}", number=bars)


def bar_words(script: Script, cue: Cue) -> str:
    """ "3", "pickup" or "13–15": the printed numbers of the bars that a cue speaks for."""
    first = say("pickup") if cue.number == "0" else cue.number
    return f"{first}–{script.cues[cue.through].number}" if cue.through > cue.position else first


def clock(seconds: float) -> str:
    """Minutes and seconds, such as 2:05, with hours where there are any."""
    whole = round(seconds)
    hours, minutes = divmod(whole // 60, 60)
    tail = f"{whole % 60:02d}"
    return f"{hours}:{minutes:02d}:{tail}" if hours else f"{minutes}:{tail}"


def shown(cue: Cue) -> tuple[str, ...]:
    """What is shown at a bar, a line each: grips and the right hand, pictures of the
    notes, why another fingering was not taken."""
    parts = []
    if cue.grips:
        between = say(", then ")
        parts.append(say("Grips {grips}", grips=between.join(cue.grips)))
    if cue.right:
        parts.append(say("right hand {pattern}", pattern=cue.right))
    lines = ["; ".join(parts)] if parts else []
    lines += [say("Picture of the grip {grip}", grip=picture) for picture in cue.pictures]
    lines += [
        say("Why not the other fingering: {why}", why=plain(note.why or note.text))
        for note in cue.notes
        if note.rejected
    ]
    return tuple(lines)


def _lines(script: Script) -> list[tuple[float, float, str]]:
    """(start, end, words) of everything that is said."""
    rows: list[tuple[float, float, Text]] = [(0.0, script.opening_seconds, script.opening)]
    rows += [(cue.start, cue.start + cue.speaking, cue.say) for cue in script.cues]
    rows.append((script.closing_start, script.seconds, script.closing))
    said = [(a, b, _one_line(str(text))) for a, b, text in rows]
    return [row for row in said if row[2] and row[1] > row[0]]


def _one_line(text: str) -> str:
    return " ".join(plain(text).split())


def _stamp(seconds: float, mark: str) -> str:
    total = round(seconds * 1000)
    hours, rest = divmod(total, 3_600_000)
    minutes, rest = divmod(rest, 60_000)
    whole, thousandths = divmod(rest, 1000)
    return f"{hours:02d}:{minutes:02d}:{whole:02d}{mark}{thousandths:03d}"
