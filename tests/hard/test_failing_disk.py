"""A full disk or an error at any write or sync: a sentence, and nothing that was told kept is lost.

The layer refuses under SQLite itself (``failing_disk.py``). The long run goes over every single
write; the short one over some of each kind.
"""

from __future__ import annotations

import itertools
import shutil

import pytest

from tests.hard.editing import lay_out, missing, steps, unsound
from tests.hard.failing_disk import FULL, SYNC_ERROR, WRITE_ERROR, failing_disk, why_not
from workbench.music.errors import BadInput
from workbench.store.shelf import Shelf

pytestmark = pytest.mark.skipif(bool(why_not()), reason=why_not())

KINDS = {"full": FULL, "write error": WRITE_ERROR, "sync error": SYNC_ERROR}
EDITS, SEED = 12, 3  # every kind of edit is among them


@pytest.fixture(scope="module")
def laid_out(tmp_path_factory):
    file = tmp_path_factory.mktemp("laid") / "lessons.db"
    with Shelf(file) as shelf:
        lay_out(shelf)
    return file


def session(file, told):
    """Some edits, going on after every refusal as a teacher would; how many were refused."""
    refused = 0
    with Shelf(file, wait_seconds=0.1) as shelf:
        for step in itertools.islice(steps(shelf, 0, SEED), EDITS):
            try:
                done = step()
            except BadInput as wrong:
                assert "\n" not in str(wrong)
                refused += 1
            else:
                told += [done] if done else []
    return refused


def refuse_at(disk, place, code, for_ever, laid_out, folder):
    """Whether the session came as far as that write."""
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir()
    file = folder / "lessons.db"
    shutil.copy(laid_out, file)
    told = []
    disk.set(place, code, for_ever=for_ever)
    try:
        refused = session(file, told)
    except BadInput as wrong:  # on opening
        assert "\n" not in str(wrong)
        refused = 1
    reached = disk.refused
    disk.set(0)
    # Later ones may be those of closing, after the last edit.
    if reached and for_ever and place < (10 if code == SYNC_ERROR else 20):
        assert refused
    with Shelf(file) as shelf:
        assert missing(shelf, told) == [], (place, code, for_ever)
        assert unsound(shelf) == [], (place, code, for_ever)
    return bool(reached)


def go_over(laid_out, folder, kind, places=None):
    """At these places, or at every one; how many the session came as far as."""
    tried = 0
    with failing_disk() as disk:
        for for_ever in (True, False):
            for place in places or itertools.count(1):
                if not refuse_at(disk, place, KINDS[kind], for_ever, laid_out, folder / "try"):
                    break
                tried += 1
    return tried


def test_every_kind_of_edit_is_tried(laid_out, tmp_path):
    file = tmp_path / "lessons.db"
    shutil.copy(laid_out, file)
    with Shelf(file) as shelf:
        chosen = itertools.islice(steps(shelf, 0, SEED), EDITS)
        names = {step.__name__ for step in chosen if step() or True}
    assert names == {"write", "rewrite", "back", "version", "setting", "solved"}


@pytest.mark.parametrize("kind", KINDS)
def test_a_disk_that_refuses_here_and_there(laid_out, tmp_path, kind):
    assert go_over(laid_out, tmp_path, kind, (1, 6, 23)) >= 4


@pytest.mark.slow
@pytest.mark.parametrize("kind", KINDS)
def test_a_disk_that_refuses_at_every_write(laid_out, tmp_path, kind):
    tried = go_over(laid_out, tmp_path, kind)
    print(f"{kind}: refused at {tried} places")
    assert tried > (20 if kind == "sync error" else 400)


@pytest.mark.parametrize("kind", KINDS)
def test_a_store_that_is_made_on_such_a_disk_is_whole_or_told(tmp_path, kind):
    made = 0
    with failing_disk() as disk:
        for place in (1, 3, 8, 20):
            file = tmp_path / f"{place}.db"
            disk.set(place, KINDS[kind])
            try:
                with Shelf(file, wait_seconds=0.1) as shelf:
                    lay_out(shelf)
            except BadInput as wrong:
                assert "\n" not in str(wrong)
                made += 1
            disk.set(0)
            with Shelf(file) as shelf:
                lay_out(shelf)
                assert unsound(shelf) == []
    assert made, "nothing was refused"
