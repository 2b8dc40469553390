"""Background work: the newest counts, the rest is dropped."""

from __future__ import annotations

import threading

import pytest
from PySide6.QtCore import QObject
from shiboken6 import delete

from workbench.music.errors import BadInput
from workbench.ui.bench.jobs import Jobs


@pytest.fixture
def jobs(qtbot):
    made = Jobs()
    yield made
    made.stop()


def test_a_stale_result_is_dropped(qtbot, jobs):
    gate = threading.Event()
    got = []

    def slow(_progress):
        gate.wait(5)
        return "old"

    jobs.start("solve", "", slow, got.append, lane="one")
    jobs.start("solve", "", lambda _: "new", got.append, lane="two")
    qtbot.waitUntil(lambda: got == ["new"])
    gate.set()
    jobs._lanes["one"].waitForDone(5000)
    qtbot.wait(20)
    assert got == ["new"]
    assert jobs.idle


def test_work_in_one_lane_keeps_its_order_and_skips_what_is_stale(qtbot, jobs):
    gate = threading.Event()
    ran, got = [], []
    jobs.start("first", "", lambda _: gate.wait(5), lambda _: None, lane="fingers")
    for number in range(5):
        jobs.start("solve", "", lambda _, k=number: ran.append(k) or k, got.append, lane="fingers")
    gate.set()
    qtbot.waitUntil(lambda: jobs.idle)
    assert (ran, got) == ([4], [4])


def test_cancelled_work_stops_at_its_next_word_of_progress(qtbot, jobs):
    started, ended = threading.Event(), []

    def long(progress):
        try:
            while True:
                progress(0.5)
                started.set()
        finally:
            ended.append(True)

    jobs.start("batch", "Long work", long, ended.append)
    assert started.wait(5)
    jobs.cancel("batch")
    qtbot.waitUntil(lambda: ended == [True])
    assert jobs.idle


def test_progress_is_told_and_ends(qtbot, jobs):
    told = []
    jobs.busy.connect(lambda label, share: told.append((label, share)))
    jobs.start("x", "Counting", lambda progress: progress(0.25), lambda _: None)
    qtbot.waitUntil(lambda: told[-1] == ("", 0.0))
    assert told[0] == ("Counting", -1.0)
    assert ("Counting", 0.25) in told


def test_bad_input_is_one_sentence_and_a_fault_is_ours(qtbot, jobs):
    said, faults = [], []
    jobs.failed.connect(said.append)
    jobs.fault.connect(faults.append)

    def bad(_progress):
        raise BadInput("The file\n is empty.")

    def broken(_progress):
        raise ZeroDivisionError

    jobs.start("a", "", bad, said.append)
    jobs.start("b", "", broken, said.append)
    qtbot.waitUntil(lambda: jobs.idle)
    assert said == ["The file is empty."]
    assert [type(f) for f in faults] == [ZeroDivisionError]


def test_an_answer_to_what_was_closed_meanwhile_is_nobodys(qtbot, jobs):
    heard = []

    class Listing(QObject):
        def show(self, found: int) -> None:
            heard.append(found)

    listing, kept = Listing(), Listing()
    go = threading.Event()
    jobs.start("list", "Listing", lambda _: go.wait(10) and 1, listing.show)
    jobs.start("kept", "Keeping", lambda _: go.wait(10) and 2, kept.show, lane="other")
    delete(listing)
    go.set()
    qtbot.waitUntil(lambda: jobs.idle)
    assert heard == [2]
