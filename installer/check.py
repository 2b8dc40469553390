"""Set up with the checking tools, then check everything.

    python3 installer/check.py          lint, types, layers, dead code, benchmarks, tests
    python3 installer/check.py --full   the slow tests as well: an even share of the long counts,
                                        with PLUCKWRIGHT_WHOLE=1 in the environment the whole

Goes through all checks even where one fails, sums up at the end and exits 1
if any failed. Standard library only.
"""

import os
import shutil
import subprocess
import sys
import time

import libraries
import machine

BENCHMARKS = "tests/benchmarks"
#: Seconds after which a test counts as hung: far above the slowest, on a slow machine too.
HUNG, HUNG_FULL = 900, 10800
#: Where one of these is there, a test starts the program as a desktop does, in a window.
DISPLAY_SERVERS = ("Xvfb", "Xorg", "X", "Xwayland")


def workers():
    """How many test processes to run: one a core, at most four."""
    return max(1, min(4, os.cpu_count() or 1))


def opens_windows():
    """True where the tests can have a display of their own, or the developer has one."""
    shown = any(os.environ.get(name) for name in ("DISPLAY", "WAYLAND_DISPLAY"))
    return shown or any(shutil.which(server) for server in DISPLAY_SERVERS)


def steps(full=False):
    """The checks in order: (name, arguments after the environment's ``python -m``)."""
    which = ["-m", "slow or not slow"] if full else []
    quick = ["--benchmark-max-time=0.5", "--benchmark-min-rounds=3", "--benchmark-columns=median"]
    # A run always ends: a hung test shows where it stands and stops its process, and a process
    # that died is not begun anew, for that can leave the others waiting for good.
    ending = ["-o", f"faulthandler_timeout={HUNG_FULL if full else HUNG}"]
    ending += ["-o", "faulthandler_exit_on_timeout=true"]
    several = ["-n", str(workers()), "--dist", "loadfile", "--max-worker-restart=0"]
    tests = ["pytest", "-q", "--no-header", "--durations=10", *ending, *several]
    return [
        ("lint", ["ruff", "check", "."]),
        ("types", ["mypy"]),
        ("layers", ["importlinter.cli"]),
        ("dead code", ["vulture"]),
        # Timed by themselves, one after another: a ratio needs quiet neighbours.
        ("benchmarks", ["pytest", "-q", "--no-header", *ending, *quick, *which, BENCHMARKS]),
        ("tests", [*tests, *which, "--ignore", BENCHMARKS, "tests"]),
    ]


def command(inner, arguments):
    """The command line of a check; the layer contract has a script, not a module."""
    if arguments[0] == "importlinter.cli":
        return [str(inner.parent / ("lint-imports.exe" if os.name == "nt" else "lint-imports"))]
    return [str(inner), "-m", *arguments]


def run_step(words, environment):
    """Run one check, showing its lines as they come. (exit status, last line that says anything)"""
    last = ""
    with subprocess.Popen(
        words,
        cwd=str(machine.HOME),
        env=environment,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        encoding="utf-8",
        errors="replace",
    ) as running:
        for line in running.stdout or ():
            sys.stdout.write(line)
            sys.stdout.flush()
            last = line.strip() or last
    return running.returncode, last


def sum_up(results):
    """Lines that say what passed; the tests' own summary comes last."""
    lines = ["", "Summary"]
    for name, status, seconds, last in results:
        verdict = "ok" if status == 0 else "FAILED"
        lines.append(f"  {name:<11} {verdict:<7} {seconds:6.0f} s   {last}")
    lines.append("")
    failed = [name for name, status, _, _ in results if status != 0]
    lines.append("Failed: " + ", ".join(failed) if failed else "All checks passed.")
    lines.append(results[-1][3])
    return lines


def main(arguments):
    """Exit status: 0 all passed, 1 a check failed, 2 the set-up failed or wrong use."""
    unknown = [word for word in arguments if word != "--full"]
    if unknown:
        machine.say(f"Unknown option {unknown[0]}; only --full is known.")
        return 2
    try:
        inner = machine.set_up("check")
        rows = libraries.provide(window=opens_windows(), say=machine.say)
        if rows:
            raise machine.Stop(libraries.advice(rows, libraries.family()))
    except machine.Stop as stop:
        machine.say(str(stop))
        return 2
    libraries.provide_browser(say=machine.say)
    environment = dict(os.environ)
    environment.setdefault("QT_QPA_PLATFORM", "offscreen")
    environment["PYTHONUTF8"] = "1"
    results = []
    for name, words in steps("--full" in arguments):
        print(f"\n== {name} ==", flush=True)
        begun = time.monotonic()
        status, last = run_step(command(inner, words), environment)
        results.append((name, status, time.monotonic() - begun, last))
    print("\n".join(sum_up(results)), flush=True)
    return 1 if any(status != 0 for _, status, _, _ in results) else 0


if __name__ == "__main__":
    try:
        sys.exit(main(sys.argv[1:]))
    except KeyboardInterrupt:
        machine.say("Stopped.")
        sys.exit(130)
