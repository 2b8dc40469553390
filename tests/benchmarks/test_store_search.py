"""Searching a shelf of 2,000 lessons: the full text index against a scan by LIKE.

Lessons carry twenty notes of a dozen words each, drawn by a Zipf-like law as
words of a language are, so that searches meet both frequent and rare words.
"""

from __future__ import annotations

import random
import statistics
import time
from dataclasses import replace

import pytest

from tests.store.lessons_made import lesson, piece
from workbench.store.shelf import Shelf
from workbench.teaching.lessons.lesson import BarNote

LESSONS = 2000

SYLLABLES = ["ba", "ri", "to", "ne", "ka", "lu", "mo", "se", "vi", "do", "gra", "pin"]
VOCABULARY = [a + b + c for a in SYLLABLES for b in SYLLABLES for c in SYLLABLES]

#: Search, and what kind it is: a beginning typed so far, a rare pair, a frequent word.
SEARCHES = {
    "beginning": "tonel",
    "pair": f"{VOCABULARY[300]} {VOCABULARY[500]}",
    "frequent": VOCABULARY[3],
}


@pytest.fixture(scope="module")
def big_shelf(tmp_path_factory):
    chance = random.Random(17)
    weights = [1 / (rank + 3) for rank in range(len(VOCABULARY))]
    pieces = [piece(bars=8, title=f"Piece {n}", shift=n) for n in range(7)]

    def made(number):
        words = chance.choices(VOCABULARY, weights, k=20 * 12)
        notes = tuple(
            BarNote(f"b{i}", "sound", " ".join(words[i * 12 : i * 12 + 12]), i, i)
            for i in range(20)
        )
        return lesson(
            f"l{number}",
            title=" ".join(words[:3]).title(),
            piece=pieces[number % 7],
            notes=notes,
            student=f"Student {number % 40}",
            grade=number % 9,
        )

    with Shelf(tmp_path_factory.mktemp("big") / "lessons.db") as shelf:
        shelf.save_all(made(number) for number in range(LESSONS))
        yield shelf


def by_like(shelf, search):
    shelf.store.full_text = False
    try:
        return shelf.lessons(search, limit=200)
    finally:
        shelf.store.full_text = True


def seconds(call):
    begun = time.perf_counter()
    call()
    return time.perf_counter() - begun


def in_turn(one, other, rounds=9):
    """Median seconds of two calls, taken in turn: whatever else runs weighs on both alike."""
    taken = [(seconds(one), seconds(other)) for _ in range(rounds)]
    return tuple(statistics.median(row) for row in zip(*taken, strict=True))


@pytest.mark.parametrize("kind", SEARCHES)
def test_search(benchmark, big_shelf, kind):
    search = SEARCHES[kind]
    assert big_shelf.store.full_text
    found = benchmark(big_shelf.lessons, search, limit=200)
    assert found and {row.id for row in found} <= {row.id for row in big_shelf.lessons(search)}
    indexed, scanned = in_turn(
        lambda: big_shelf.lessons(search, limit=200), lambda: by_like(big_shelf, search)
    )
    benchmark.extra_info.update(
        indexed_ms=round(indexed * 1000, 2),
        like_scan_ms=round(scanned * 1000, 2),
        times_faster_than_like=round(scanned / indexed, 1),
    )
    print(f"\n{kind}: {indexed * 1000:.1f} ms, LIKE {scanned / indexed:.1f} times as long")
    assert indexed / scanned < 1


def test_the_whole_shelf_in_a_list(benchmark, big_shelf):
    assert len(benchmark(big_shelf.lessons)) == LESSONS


def test_save_of_one_edit(benchmark, big_shelf):
    """An edit saved on a full shelf; its own cost must not grow with the shelf."""
    made = big_shelf.load("l17")
    count = [0]

    def edit():
        count[0] += 1
        big_shelf.save(replace(made, title=f"Edit {count[0]}"), "Title")

    benchmark(edit)
    with Shelf("sqlite://") as small:
        small.save(made)
        numbers = iter(range(10**6))

        def edit_alone():
            small.save(replace(made, title=f"Edit {next(numbers)}"), "Title")

        full, alone = in_turn(edit, edit_alone, 25)
    benchmark.extra_info["times_as_long_as_on_an_empty_shelf"] = round(full / alone, 2)
    assert full < 20 * alone
