"""The window's thread and workers, and several programs, use one store at once."""

from __future__ import annotations

import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace

import pytest

from tests.store.lessons_made import fingering, lesson
from workbench.store.shelf import Shelf


@pytest.mark.parametrize("url", [None, "sqlite://"])
def test_threads_do_not_disturb_each_other(url):
    with Shelf(url, wait_seconds=10) as shelf:
        made = [lesson(f"l{i}") for i in range(4)]
        shelf.save_all(made)

        def edit(start):
            for step in range(1, 11):
                shelf.save(replace(start, tempo_percent=step), f"Tempo {step}")
                shelf.put_fingering(replace(start, capo=step), fingering(step))
                assert shelf.load(start.id).tempo_percent == step
                assert len(shelf.lessons()) == 4
            return shelf.undo(start.id)

        with ThreadPoolExecutor(4) as pool:
            undone = list(pool.map(edit, made))
        assert undone == [replace(m, tempo_percent=9) for m in made]
        assert all(len(shelf.history(m.id).steps) == 11 for m in made)
        assert shelf.cached_fingering(replace(made[0], capo=7)).cost == 7


def test_two_windows_on_one_lesson_lose_nothing(file):
    """The later save is what shows; the earlier one stays a step away."""
    made = lesson()
    with Shelf(file) as one, Shelf(file) as two:
        one.save(made)
        mine, theirs = replace(made, title="Mine"), replace(made, capo=2)
        assert two.load(made.id) == made
        one.save(mine, "Title")
        two.save(theirs, "Capo")
        assert one.load(made.id) == theirs
        assert one.undo(made.id) == mine
        assert two.history(made.id).redo_label == "Capo"


def test_two_programs_that_open_a_new_store_at_once_both_succeed(file):
    code = (
        "import sys; from workbench.store.shelf import Shelf; sys.stdin.readline()\n"
        "with Shelf(sys.argv[1], wait_seconds=20) as s: s.set_setting(sys.argv[2], 1)"
    )
    running = [
        subprocess.Popen(
            [sys.executable, "-c", code, f"sqlite:///{file}", name],
            stdin=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
        )
        for name in ("one", "two")
    ]
    for program in running:
        program.stdin.write("go\n")
        program.stdin.flush()
    for program in running:
        _, said = program.communicate(timeout=60)
        assert program.returncode == 0, said
    with Shelf(file) as shelf:
        assert shelf.settings() == {"one": 1, "two": 1}
