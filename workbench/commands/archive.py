"""``archive FILE``: lessons carried to another shelf in one open file."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from workbench.commands.output import Meter, Result
from workbench.language.speech import count, say


def options(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("file", metavar="FILE", help="the archive (a zip of JSON and MusicXML)")
    what = parser.add_mutually_exclusive_group()
    what.add_argument(
        "--lesson", action="append", metavar="ID",
        help="only this lesson (repeatable; default: the whole shelf)",
    )  # fmt: skip
    what.add_argument(
        "--merge", action="store_true", help="take the archive's lessons onto the shelf"
    )


def run(options: argparse.Namespace) -> Result:
    from workbench.store.shelf import Shelf
    from workbench.store.told import merged_words

    path = Path(options.file)
    with Shelf() as shelf:
        if options.merge:
            with Meter(say("Merging")) as meter:
                done = shelf.merge_archive(path, meter)
            document = {
                "added": list(done.added), "updated": list(done.updated),
                "newer_here": list(done.newer_here), "same": done.same,
            }  # fmt: skip
            return Result(document, merged_words(done))
        written = shelf.write_archive(path, options.lesson)
    words = count(written, "{n} lesson is in {path}.", "{n} lessons are in {path}.", path=path)
    if written and sys.stderr.isatty():
        print(say("It holds your students' names: keep it to yourself."), file=sys.stderr)
    return Result({"lessons": written, "path": str(path)}, [words])
