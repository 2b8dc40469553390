"""The program as a desktop starts it: a process of its own on a display of its own, keys
from outside, and what is on the shelf when it has ended."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import time
from collections.abc import Iterator

import pytest

from tests.sound.notes_made import bar, note, piece
from workbench.music.errors import BadInput
from workbench.store.setting_names import LAST_LESSON, TOUR_TAKEN
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import Lesson

PATIENCE = 60.0  # seconds; reached only when something hangs
MISSING = [name for name in ("Xvfb", "xdotool") if shutil.which(name) is None]
NO_DISPLAY = "this machine has no " + " and no ".join(MISSING)


@pytest.fixture
def display() -> Iterator[dict[str, str]]:
    """The environment of a display without a window manager."""
    reads, writes = os.pipe()
    server = subprocess.Popen(
        ["Xvfb", "-displayfd", str(writes), "-screen", "0", "1400x900x24", "-noreset"],
        pass_fds=(writes,),
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    os.close(writes)
    with os.fdopen(reads) as answer:
        number = answer.readline().strip()  # written once it takes clients; empty if it died
    if not number:
        pytest.skip("Xvfb does not start here")
    yield {**os.environ, "DISPLAY": f":{number}", "QT_QPA_PLATFORM": "xcb"}
    server.terminate()
    server.wait(PATIENCE)


def until(found, process=None):
    """Ask again and again until there is an answer."""
    end = time.monotonic() + PATIENCE
    while time.monotonic() < end:
        answer = found()
        if answer:
            return answer
        assert process is None or process.poll() is None, process.stderr.read().decode()
        time.sleep(0.05)
    raise AssertionError(f"{found.__name__}: nothing came")


@pytest.mark.skipif(bool(MISSING), reason=NO_DISPLAY)
def test_a_bar_pinned_by_key_is_on_the_shelf_after_the_window_was_closed(display) -> None:
    bars = (("C4", "E4"), ("G4", "A4"), ("F4", "D4"))
    tune = piece(
        *(
            bar(i, *(note(f"n{i}{j}", name, 2 * j, 2) for j, name in enumerate(names)))
            for i, names in enumerate(bars)
        )
    )
    with Shelf() as shelf:
        shelf.add(Lesson("tune", "Three bars", tune, "ukulele"))
        shelf.set_setting(LAST_LESSON, "tune")
        shelf.set_setting(TOUR_TAKEN, True)

    def tool(*words: str) -> str:
        done = subprocess.run(["xdotool", *words], env=display, capture_output=True, text=True)
        return done.stdout.strip() if done.returncode == 0 else ""

    process = subprocess.Popen(
        [sys.executable, "-m", "workbench"], env=display,
        stdout=subprocess.DEVNULL, stderr=subprocess.PIPE,
    )  # fmt: skip
    try:

        def window() -> str:
            return tool("search", "--onlyvisible", "--name", "Three bars").partition("\n")[0]

        def fingered() -> bool:
            try:
                with Shelf() as kept:
                    return kept.cached_fingering(kept.load("tune")) is not None
            except BadInput:  # it is being written
                return False

        def pinned() -> set[str]:
            with Shelf() as kept:
                return {pin.note for pin in kept.load("tune").pins}

        shown = until(window, process)
        until(fingered, process)
        tool("windowfocus", "--sync", shown)
        tool("key", "ctrl+Down")  # the next bar
        tool("key", "ctrl+b")  # pin it

        assert until(pinned, process) == {"n10", "n11"}
        tool("key", "ctrl+q")
        assert process.wait(PATIENCE) == 0, process.stderr.read().decode()
    finally:
        if process.poll() is None:
            process.kill()
            process.wait()
        process.stderr.close()
    with Shelf() as kept:
        assert kept.view("tune").selected_bar == 1
        assert {pin.note for pin in kept.load("tune").pins} == {"n10", "n11"}
