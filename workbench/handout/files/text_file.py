"""Teaching texts as files: the script and the practice plan."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from workbench.language.message import Listed, in_a_row, message
from workbench.language.speech import mark
from workbench.music.errors import BadInput
from workbench.teaching.scripts import files as script_files
from workbench.teaching.scripts.script import Script

#: Suffix, what such a file is, and what writes it.
SCRIPT_FORMATS: dict[str, tuple[str, Callable[[Script], str]]] = {
    ".md": (mark("Markdown"), script_files.markdown),
    ".srt": (mark("SubRip cues"), script_files.srt),
    ".vtt": (mark("WebVTT cues"), script_files.webvtt),
    ".txt": (mark("Chapter list"), script_files.chapters),
}


def script_form(path: str | Path) -> Callable[[Script], str]:
    """What writes a script in the form that a file's name asks for.

    Raises BadInput for a name that no form goes with.
    """
    suffix = Path(path).suffix
    found = SCRIPT_FORMATS.get(suffix.lower())
    if found is None:
        forms = ((end, message(words)) for end, (words, _) in SCRIPT_FORMATS.items())
        known = in_a_row(Listed((f"{end} (", words, ")"), "") for end, words in forms)
        if suffix:
            raise BadInput(
                "{path}: a script is not written as '{suffix}'; end the name with one of {known}.",
                path=path,
                suffix=suffix,
                known=known,
            )
        raise BadInput(
            "{path}: the name says no form; end it with one of {known}.", path=path, known=known
        )
    return found[1]
