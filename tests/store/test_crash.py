"""A crash at any moment leaves the last saved state, whole."""

from __future__ import annotations

import subprocess
import sys
from dataclasses import replace

import pytest
from sqlalchemy import event, text

from tests.store.lessons_made import lesson, piece
from workbench.store.shelf import Shelf

WRITER = """
import sys
from dataclasses import replace
from tests.store.lessons_made import lesson, piece
from workbench.store.shelf import Shelf
shelf = Shelf(sys.argv[1])
made = lesson()
shelf.save(made)
number = 0
while True:
    number += 1
    made = replace(made, tempo_percent=number, piece=piece(bars=40, title=str(number)))
    shelf.save(made, f"Tempo {number}")
    print(number, flush=True)
"""


@pytest.mark.parametrize("saves", [1, 7, 20])
def test_a_program_killed_while_writing_loses_nothing_it_had_saved(file, saves):
    with subprocess.Popen(
        [sys.executable, "-c", WRITER, f"sqlite:///{file}"], stdout=subprocess.PIPE, text=True
    ) as program:
        for _ in range(saves):
            told = int(program.stdout.readline())
        program.kill()
        told = int(([told, *program.stdout.read().split()])[-1])
    with Shelf(file) as shelf:
        found = shelf.load("lesson-1")
        assert found.tempo_percent in (told, told + 1)
        assert found.piece == piece(bars=40, title=str(found.tempo_percent))
        labels = [step.label for step in shelf.history("lesson-1").steps]
        assert labels == ["Edit", *(f"Tempo {n}" for n in range(1, found.tempo_percent + 1))]
        assert shelf.undo("lesson-1").tempo_percent in (found.tempo_percent - 1, 100)
        with shelf.engine.connect() as connection:
            assert connection.scalar(text("PRAGMA integrity_check")) == "ok"
            assert connection.execute(text("PRAGMA foreign_key_check")).all() == []


class FellOver(Exception):
    """What goes wrong in the middle of a save."""


def content(shelf):
    with shelf.engine.connect() as connection:
        return list(connection.connection.driver_connection.iterdump())


def test_a_save_is_kept_whole_or_not_at_all(shelf):
    """Fall over at every single statement of a save that touches all tables."""
    made = lesson()
    shelf.save(made)
    shelf.save(replace(made, piece=piece(shift=1)), "Music")
    shelf.save(replace(made, piece=piece(shift=2)), "Music")
    shelf.undo(made.id)
    before = content(shelf)
    changed = replace(made, title="New", techniques=("barre",), piece=piece(shift=5), notes=())
    left = [0]

    def fall_over(_connection, _cursor, statement, *_):
        left[0] -= not statement.startswith("BEGIN")
        if left[0] == 0:
            raise FellOver

    event.listen(shelf.engine, "after_cursor_execute", fall_over)
    fell = 0
    while True:
        left[0] = fell + 1
        try:
            shelf.save(changed, "All")
        except FellOver:
            fell += 1
            left[0] = -1
            assert content(shelf) == before
        else:
            left[0] = -1
            break
    assert fell > 10
    assert shelf.load(made.id) == changed
    assert shelf.history(made.id).redo_label is None
