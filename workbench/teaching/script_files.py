"""A script written down: Markdown, SubRip and WebVTT cues, a chapter list."""

from __future__ import annotations

from workbench.teaching.formatting import plain
from workbench.teaching.script import Cue, Script


def markdown(script: Script) -> str:
    """The script to read: chapters as headings, one bar a paragraph, times in front."""
    out = [f"# {script.title}", "", f"Length about {clock(script.seconds)}.", "", script.opening]
    for cue in script.cues:
        if cue.chapter:
            out += ["", f"## {cue.chapter}"]
        where = "pickup" if cue.number == "0" else f"bar {cue.number}"
        out += ["", f"**{clock(cue.start)} · {where}** {cue.say}"]
        shown = _shown(cue)
        if shown:
            out += ["", f"> {shown}"]
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
    rows = [(0.0, "Opening")] if script.opening_seconds > 0 else []
    rows += [(cue.start, cue.chapter) for cue in script.cues if cue.chapter]
    if rows and rows[0][0] > 0:
        rows[0] = (0.0, rows[0][1])
    return "".join(f"{clock(start)} {title}\n" for start, title in rows)


def clock(seconds: float) -> str:
    """Minutes and seconds, such as 2:05, with hours where there are any."""
    whole = round(seconds)
    hours, minutes = divmod(whole // 60, 60)
    tail = f"{whole % 60:02d}"
    return f"{hours}:{minutes:02d}:{tail}" if hours else f"{minutes}:{tail}"


def _lines(script: Script) -> list[tuple[float, float, str]]:
    rows = []
    if script.opening_seconds > 0:
        rows.append((0.0, script.opening_seconds, _one_line(script.opening)))
    for cue in script.cues:
        if cue.say.strip() and cue.speaking > 0:
            rows.append((cue.start, cue.start + cue.speaking, _one_line(cue.say)))
    return rows


def _one_line(text: str) -> str:
    return " ".join(plain(text).split())


def _stamp(seconds: float, mark: str) -> str:
    total = round(seconds * 1000)
    hours, rest = divmod(total, 3_600_000)
    minutes, rest = divmod(rest, 60_000)
    whole, thousandths = divmod(rest, 1000)
    return f"{hours:02d}:{minutes:02d}:{whole:02d}{mark}{thousandths:03d}"


def _shown(cue: Cue) -> str:
    parts = []
    if cue.grips:
        parts.append("Grips " + ", then ".join(cue.grips))
    if cue.right:
        parts.append(f"right hand {cue.right}")
    return "; ".join(parts)
