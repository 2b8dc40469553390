"""Speed of the fingering engine, as ratios within one run: same lattice, same optimum."""

from __future__ import annotations

import statistics
import subprocess
import sys
import time
from collections.abc import Callable
from typing import Any

import pytest

from tests.benchmarks.fingering_rivals import networkx_graph, networkx_least, scipy_least
from tests.fingering.cp_model import cp_sat
from tests.fingering.excerpts import excerpt, files, two_voices
from tests.whole import share, so_many
from workbench.fingering.engine import Solver, solve
from workbench.fingering.lattice.paths import Sweeper
from workbench.fingering.types import Pin
from workbench.instrument.table import hand, instrument

UKULELE, HAND = instrument("ukulele"), hand("medium")
BARS_FOR_CP_SAT = 2  # 64 bars are too many for CP-SAT to finish within a minute


def median(job: Callable[[], object], rounds: int) -> float:
    """Median seconds of a job."""
    took = []
    for _ in range(rounds):
        start = time.perf_counter()
        job()
        took.append(time.perf_counter() - start)
    return statistics.median(took)


def told(benchmark: Any, **figures: float) -> None:
    """Put figures on record and print them."""
    rounded = {k: round(v, 5) for k, v in figures.items()}
    benchmark.extra_info.update(rounded)
    print("; ".join(f"{k.replace('_', ' ')} {v:g}" for k, v in rounded.items()))


@pytest.fixture(scope="module")
def solver() -> Solver:
    return Solver(two_voices(64), UKULELE, HAND)


def sweep(solver: Solver) -> int:
    """A whole solve by fresh tables (the lattice is there)."""
    return Sweeper(solver.lattice).solve().cost


def test_sweep_against_networkx(benchmark: Any, solver: Solver) -> None:
    least = benchmark.pedantic(sweep, args=(solver,), rounds=9, warmup_rounds=2)
    ours = benchmark.stats.stats.median
    start = time.perf_counter()
    graph, end = networkx_graph(solver.lattice)
    build = time.perf_counter() - start
    assert networkx_least(graph, end) == least
    theirs = median(lambda: networkx_least(graph, end), 2)
    told(
        benchmark, sweep_s=ours, networkx_s=theirs, networkx_build_s=build,
        ratio=theirs / ours, ratio_with_build=(theirs + build) / ours,
        steps=sum(len(e.cost) for e in solver.lattice.edges),
    )  # fmt: skip
    # The best of ours: a busy neighbour must not decide; the medians are what is told.
    assert theirs / benchmark.stats.stats.min >= 20


def test_lattice_and_sweep_against_lattice_and_networkx(benchmark: Any) -> None:
    """From the notes to the least path, where both must first grow the lattice: the
    engine's growing and sweep against the same growing, networkx's graph and its search."""
    music = two_voices(16)

    def ours() -> int:
        return Solver(music, UKULELE, HAND).sweeper.solve().cost

    def theirs() -> int:
        return networkx_least(*networkx_graph(Solver(music, UKULELE, HAND).lattice))

    least = benchmark.pedantic(ours, rounds=3, warmup_rounds=1)
    assert theirs() == least
    a, b = benchmark.stats.stats.median, median(theirs, 2)
    whole = median(lambda: solve(music, UKULELE, HAND), 2)
    told(
        benchmark, bars=16, ours_s=a, networkx_s=b, ratio=b / a, both_hands_and_telling_s=whole,
    )  # fmt: skip
    assert b / a > 1


def test_sweep_against_scipy(benchmark: Any, solver: Solver) -> None:
    least = benchmark.pedantic(sweep, args=(solver,), rounds=9, warmup_rounds=2)
    ours = benchmark.stats.stats.median
    assert scipy_least(solver.lattice) == least
    theirs = median(lambda: scipy_least(solver.lattice), 3)
    told(benchmark, sweep_s=ours, scipy_s=theirs, ratio=theirs / ours)
    assert theirs / benchmark.stats.stats.min >= 3


def test_against_cp_sat(benchmark: Any) -> None:
    """On fewer bars, so that CP-SAT ends within a minute; no figure is carried over to 64."""
    music = two_voices(BARS_FOR_CP_SAT)
    few = Solver(music, UKULELE, HAND)
    least = benchmark.pedantic(sweep, args=(few,), rounds=9, warmup_rounds=2)
    ours = benchmark.stats.stats.median
    whole = median(lambda: Solver(music, UKULELE, HAND).sweeper.solve(), 3)
    start = time.perf_counter()
    answer = cp_sat(few.sweeper)
    theirs = time.perf_counter() - start
    assert (answer.status, answer.cost) == ("optimal", least)
    told(
        benchmark, bars=BARS_FOR_CP_SAT, sweep_s=ours, with_lattice_s=whole, cp_sat_s=theirs,
        ratio=theirs / ours, ratio_with_lattice=theirs / whole,
    )  # fmt: skip
    assert theirs / ours >= 100


def test_solving_again_after_a_pin(benchmark: Any) -> None:
    """A pin in the middle set and lifted, against the whole solve."""
    music = two_voices(64)
    start = time.perf_counter()
    kept = Solver(music, UKULELE, HAND)
    free = kept.solution()
    whole = time.perf_counter() - start
    notes = [n for n in free.bars[32].notes if n.left]
    pins = [Pin(n.id, string=n.string, left=n.left % 4 + 1) for n in notes[:3] if n.left]
    kept.with_pins([pins[0]])

    def again() -> None:
        for pin in pins:
            kept.with_pins([pin])
            kept.with_pins([])

    benchmark.pedantic(again, rounds=3)
    ours = benchmark.stats.stats.median / (2 * len(pins))
    assert kept.with_pins([]) == free
    told(benchmark, whole_s=whole, again_s=ours, share=ours / whole)
    assert ours <= whole / 10


def per_bar(bars: int, stretches: int) -> float:
    """Mean processor seconds a bar of a whole solve, both hands, over stretches of one long
    piece."""
    whole = two_voices(128)
    parts = [excerpt(whole, k * 128 // stretches, bars) for k in range(stretches)]
    start = time.process_time()
    for part in parts:
        solve(part, UKULELE, HAND)
    return (time.process_time() - start) / (bars * stretches)


def test_cost_grows_with_the_bars_and_no_faster(benchmark: Any) -> None:
    few = benchmark.pedantic(per_bar, args=(16, 4), rounds=1)
    many = per_bar(128, 1)
    few = max(few, per_bar(16, 4))  # before and after: the machine may change its pace
    told(benchmark, s_a_bar_16=few, s_a_bar_128=many, ratio=many / few)
    assert many / few < 1.5


PROBE = """
import resource, time
from tests.fingering.excerpts import two_voices
from workbench.fingering.engine import solve
from workbench.instrument.table import hand, instrument
music = two_voices({bars})
base = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
start = time.perf_counter()
f = solve(music, instrument("ukulele"), hand("medium"))
took = time.perf_counter() - start
print(base, resource.getrusage(resource.RUSAGE_SELF).ru_maxrss, took, f.optimal)
"""


@pytest.mark.slow
@pytest.mark.skipif(sys.platform != "linux", reason="peak memory in kilobytes is Linux's unit")
def test_memory_and_time_of_1024_bars(benchmark: Any) -> None:
    def probe(bars: int) -> list[str]:
        code = PROBE.format(bars=bars)
        done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True)
        assert done.returncode == 0, done.stderr
        return done.stdout.split()

    few = probe(256)
    base, peak, took, optimal = benchmark.pedantic(probe, args=(1024,), rounds=1)
    told(
        benchmark, base_mb=int(base) / 1024, peak_mb=int(peak) / 1024, seconds=float(took),
        s_a_bar_1024=float(took) / 1024, s_a_bar_256=float(few[2]) / 256,
    )  # fmt: skip
    assert optimal == "True"
    assert float(took) / 1024 < 1.5 * float(few[2]) / 256
    assert (int(peak) - int(base)) / 1024 < 300  # what the solve adds to the bare process


@pytest.mark.slow
def test_throughput_of_a_fiddle_collection(benchmark: Any) -> None:
    """Ryan's Mammoth Collection (1883, in music21's corpus), every tune (of ``check.py --full``
    every twelfth) fingered for ukulele."""
    from workbench.arranging.arrange import arrange
    from workbench.music.reading.score import read_score

    scores = files("ryansMammoth")
    assert len(scores) >= 1000
    tunes = [arrange(read_score(p), UKULELE).piece for p in share(scores, 12)]
    found: list[tuple[int, bool, int]] = []

    def all_of_them() -> None:
        for tune in tunes:
            f = solve(tune, UKULELE, HAND)
            dumb = [n for bar in f.bars for n in bar.notes if n.string is None]
            assert all(n.impossible for n in dumb), tune.title  # each says why
            found.append((f.audit.notes, f.optimal, len(dumb)))

    benchmark.pedantic(all_of_them, rounds=1)
    seconds = benchmark.stats.stats.median
    told(
        benchmark, tunes=len(tunes), bars=sum(len(t.bars) for t in tunes),
        notes=sum(n for n, _, _ in found), silent=sum(s for _, _, s in found),
        proved=sum(o for _, o, _ in found), seconds=seconds, tunes_a_s=len(tunes) / seconds,
    )  # fmt: skip
    # A few double stops lie beyond a medium hand: 36 notes of 122,535 when it was written.
    assert sum(s for _, _, s in found) <= so_many(40, 8)
    assert sum(o for _, o, _ in found) >= 0.99 * len(tunes)
