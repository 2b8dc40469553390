"""The command line: without a verb the window opens, with one it works without a display.

Exit status 0 done, 2 wrong use or bad input, 1 a fault of ours, 3 where some of
several scores failed. Every error is one sentence on stderr; with ``--json``
stdout holds one JSON document and nothing else.
"""

from __future__ import annotations

import argparse
import importlib
import os
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import NoReturn

from workbench import __version__
from workbench.commands import VERBS
from workbench.commands.one_sentence import fault_sentence, file_sentence, library_sentence
from workbench.commands.output import quiet_stdout, show
from workbench.language import speech
from workbench.music.errors import BadInput

PROGRAM = "pluckwright"
READER = "--reader"  # what the packed program tells itself; see music/reading/apart.py


class Parser(argparse.ArgumentParser):
    """argparse, saying what is wrong in one sentence."""

    def error(self, message: str) -> NoReturn:
        raise BadInput("{prog}: {wrong}; see {prog} --help.", prog=self.prog, wrong=message)


def build_parser(words: Sequence[str] = ()) -> Parser:
    """The parser of all verbs; only the one that ``words`` begin with gets its options."""
    parser = Parser(
        prog=PROGRAM,
        description="Prepare lessons for plucked, fretted instruments. "
        "Without a verb the window opens, on a SCORE where one is named.",
        epilog="SCORE is a MusicXML (.musicxml, .xml, .mxl), MIDI or ABC file, or 'demo'. "
        "'pluckwright VERB --help' tells the options of a verb.",
    )
    parser.add_argument("--version", action="version", version=f"{PROGRAM} {__version__}")
    verbs = parser.add_subparsers(dest="verb", metavar="VERB", title="verbs")
    for verb, does in VERBS.items():
        sub = verbs.add_parser(verb, help=does, description=does[0].upper() + does[1:] + ".")
        if verb in words:
            importlib.import_module(f"workbench.commands.{verb}").options(sub)
            sub.add_argument("--json", action="store_true", help="one JSON document on stdout")
    return parser


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the command line; the exit status."""
    words = list(sys.argv[1:] if arguments is None else arguments)
    if words == [READER]:
        from workbench.music.reading.reader import serve

        serve()
        return 0
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(encoding="utf-8", errors="backslashreplace")
    speech.choose(speech.from_environment())
    try:
        if not words or (len(words) == 1 and words[0] not in VERBS and Path(words[0]).is_file()):
            return open_window(words)
        return run_verb(words)
    except BadInput as wrong:
        return _say(str(wrong), 2)
    except KeyboardInterrupt:
        return _say("Stopped.", 130)
    except BrokenPipeError:
        # The reader of our output went away, as `| head` does: nobody's fault.
        os.dup2(os.open(os.devnull, os.O_WRONLY), 1)
        return 0
    except OSError as fault:
        return _tell(fault, file_sentence(fault))
    except ImportError as fault:
        return _tell(fault, library_sentence(fault))
    except Exception as fault:
        return _tell(fault, None)


def run_verb(words: Sequence[str]) -> int:
    """Parse, run the verb with stdout kept clean, then show its result."""
    if any("\0" in word for word in words):
        raise BadInput(
            "A word of the command holds a zero character, which no name has; type it anew."
        )
    options = build_parser(words).parse_args(words)
    if not options.verb:
        raise BadInput(
            "{program}: name a verb ({verbs}), or none for the window.",
            program=PROGRAM,
            verbs=", ".join(VERBS),
        )
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    command = importlib.import_module(f"workbench.commands.{options.verb}")
    with quiet_stdout():
        result = command.run(options)
    show(result, as_json=options.json)
    return int(result.status)


def open_window(files: Sequence[str] = ()) -> int:
    """Open the window, on a score file where one is named.

    Raises BadInput where there is no display.
    """
    shown = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    if sys.platform.startswith("linux") and not any(os.environ.get(name) for name in shown):
        raise BadInput(
            "There is no display to open the window on; use a verb instead, such as "
            "'read demo' or 'handout demo -o handout.pdf' (verbs: {verbs}).",
            verbs=", ".join(VERBS),
        )
    from workbench.ui.window.app import run

    return run(files)


def _tell(fault: Exception, sentence: str | None) -> int:
    return _say(sentence, 2) if sentence else _say(fault_sentence(fault), 1)


def _say(sentence: str, status: int) -> int:
    print(" ".join(sentence.split()), file=sys.stderr)
    return status
