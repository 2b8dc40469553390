"""Background work: the newest counts, the rest is dropped."""

from __future__ import annotations

import threading
from functools import partial

import pytest
from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QWidget
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


def closures_of(listing):
    """Answers that know a listing in other ways than as their owner."""

    def inner(found):
        listing.show(found)

    return {
        "its function": lambda found: listing.show(found),
        "a function of a function": lambda found: inner(found),
        "a part of a call": partial(lambda to, found: to.show(found), listing),
        "a builtin method": listing.setObjectName,
    }


@pytest.mark.parametrize("way", ["its function", "a function of a function", "a part of a call",
                                 "a builtin method"])  # fmt: skip
@pytest.mark.parametrize("wrong", [False, True])
def test_an_answer_that_knows_what_was_closed_is_nobodys(qtbot, jobs, way, wrong):
    heard, faults, said = [], [], []
    jobs.failed.connect(said.append)
    jobs.fault.connect(faults.append)

    class Listing(QObject):
        def show(self, found: object) -> None:
            self.setObjectName(str(found))  # a fault where the object is gone
            heard.append(found)

    def work(_progress):
        go.wait(10)
        if wrong:
            raise BadInput("The shelf is locked.")
        return "found"

    listing, kept = Listing(), Listing()
    go = threading.Event()
    given = {"wrong": closures_of(listing)[way]} if wrong else {}
    jobs.start("list", "", work, closures_of(listing)[way], **given)
    jobs.start("kept", "", lambda _: "kept", closures_of(kept)[way], lane="other")
    delete(listing)
    go.set()
    qtbot.waitUntil(lambda: jobs.idle)
    assert (kept.objectName(), faults) == ("kept", [])
    assert said == (["The shelf is locked."] if wrong else [])


def test_an_answer_that_calls_itself_is_looked_through_once(qtbot, jobs):
    got = []

    def again(number):
        got.append(number)
        if number:
            again(number - 1)

    jobs.start("x", "", lambda _: 2, again)
    qtbot.waitUntil(lambda: got == [2, 1, 0])


def test_a_result_is_shown_while_it_grows_until_nobody_wants_it(qtbot, jobs):
    grown, got = [], []
    told = threading.Event()
    gate = threading.Event()

    def growing_work(progress):
        for number in range(3):
            progress.so_far(number)
        told.set()
        gate.wait(5)
        progress.so_far("late")

    jobs.start("keys", "", growing_work, got.append, growing=grown.append)
    qtbot.waitUntil(lambda: grown == [0, 1, 2])
    assert told.is_set()
    jobs.cancel("keys")
    gate.set()
    qtbot.waitUntil(lambda: jobs.idle)
    jobs._lanes["work"].waitForDone(5000)
    qtbot.wait(20)
    assert (grown, got) == ([0, 1, 2], [])


def test_what_a_closed_dialog_waited_for_is_dropped_while_it_grows(qtbot, jobs):
    class Dialog(QObject):
        def take(self, value):
            seen.append(value)

    seen, ended = [], []
    closed = threading.Event()

    def growing_work(progress):
        number = 0
        while not closed.is_set():
            progress.so_far(number)
            number += 1
        progress.so_far("after")
        return "done"

    dialog = Dialog()
    jobs.start("keys", "", growing_work, ended.append, growing=dialog.take)
    qtbot.waitUntil(lambda: len(seen) > 20)
    delete(dialog)
    closed.set()
    qtbot.waitUntil(lambda: ended == ["done"])
    assert "after" not in seen


def test_what_work_knows_of_a_window_is_let_go_of_in_the_windows_own_thread(qtbot, jobs):
    class Known:
        def __del__(self):
            threads.append(threading.current_thread())

    threads = []

    def work_of(known):
        return lambda _: id(known)

    for _ in range(20):
        jobs.start("x", "", work_of(Known()), lambda _: None, lane="one")
        qtbot.waitUntil(lambda: jobs.idle)
    jobs._lanes["one"].waitForDone(5000)
    assert threads and set(threads) == {threading.main_thread()}


@pytest.mark.parametrize("ends", ["well", "with a fault", "called off"])
def test_what_comes_of_work_is_let_go_of_in_the_windows_own_thread(qtbot, jobs, ends):
    class Known:
        def __del__(self):
            threads.append(threading.current_thread())

    threads = []

    def work(progress):
        known = Known()
        if ends == "called off":
            jobs.cancel("x")
            progress(0.5)
        return known if ends == "well" else 1 / 0

    for _ in range(20):
        jobs.start("x", "", work, lambda _: None, lane="one")
        qtbot.waitUntil(lambda: not jobs._waiting)
    jobs._lanes["one"].waitForDone(5000)
    qtbot.wait(20)
    assert len(threads) >= 19 and set(threads) == {threading.main_thread()}


def test_a_closed_widget_is_let_go_of_in_its_own_thread(qtbot, jobs, tidied):
    class Dialog(QWidget):
        pass

    def alone():
        dialog = Dialog()
        dialog.itself = dialog  # as a dialog and what it connects
        dialog.destroyed.connect(
            lambda: threads.append(threading.current_thread()), Qt.ConnectionType.DirectConnection
        )

    def busy(_progress):
        return [[number] for number in range(50_000)]

    threads, made = [], []
    alone()
    jobs.start("x", "", busy, made.append)
    qtbot.waitUntil(lambda: len(made) == 1)
    assert threads == []
    tidied.tidy()
    assert threads == [threading.main_thread()]


def test_work_that_will_not_end_outlives_its_window(qtbot, monkeypatch):
    monkeypatch.setattr("workbench.ui.bench.jobs.PATIENCE", 20)
    parent, gate, got = QObject(), threading.Event(), []
    jobs = Jobs(parent)
    begun = threading.Event()

    def deaf(_progress):
        begun.set()
        gate.wait(5)

    jobs.start("x", "", deaf, got.append)
    assert begun.wait(5)
    jobs.stop()
    delete(parent)
    gate.set()
    assert jobs._lanes["work"].waitForDone(5000)
    qtbot.wait(20)
    assert (got, jobs.idle) == ([], True)
