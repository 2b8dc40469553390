"""How long the packed program takes to start, against the source run. Linux only.

    python installer/packing/start_time.py dist/pluckwright/pluckwright

Seconds of the processor, so that a busy machine does not matter, the least of some starts: until
the version is said, until the demo piece is read, and until the window has opened on a new store
and laid out the demo shelf in it.
"""

import os
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time
from contextlib import closing, suppress
from pathlib import Path

STARTS = 3


def spent(words: list[str], folder: Path) -> float:
    """Processor seconds of a call that ends by itself."""
    before = os.times()
    subprocess.run(words, cwd=folder, check=True, capture_output=True)
    after = os.times()
    return after[2] + after[3] - before[2] - before[3]


def laid_out(store: Path) -> bool:
    with suppress(sqlite3.Error), closing(sqlite3.connect(f"file:{store}?mode=ro", uri=True)) as it:
        return bool(it.execute("SELECT count(*) FROM lessons").fetchone()[0])
    return False


def until_open(words: list[str], folder: Path) -> float:
    """Processor seconds until the demo shelf is there; then the window is closed."""
    store = folder / "window.db"
    for old in folder.glob("window.db*"):
        old.unlink()
    environment = dict(os.environ, QT_QPA_PLATFORM="offscreen", PLUCKWRIGHT_DB=str(store))
    with subprocess.Popen(words, cwd=folder, env=environment, stderr=subprocess.DEVNULL) as running:
        try:
            while not laid_out(store):
                if running.poll() is not None:
                    raise SystemExit("The window closed by itself.")
                time.sleep(0.02)
            stat = Path(f"/proc/{running.pid}/stat").read_text(encoding="ascii")
        finally:
            with suppress(ProcessLookupError):
                running.send_signal(signal.SIGKILL)
    user, system = stat.rsplit(")", 1)[1].split()[11:13]
    return (int(user) + int(system)) / os.sysconf("SC_CLK_TCK")


def main(program: str) -> None:
    ways = {"source": [sys.executable, "-m", "workbench"], "packed": [str(Path(program).resolve())]}
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        for what, measure, more in (
            ("version", spent, ["--version"]), ("read demo", spent, ["read", "demo"]),
            ("window", until_open, []),
        ):  # fmt: skip
            found = {way: min(measure([*words, *more], folder) for _ in range(STARTS))
                     for way, words in ways.items()}  # fmt: skip
            ratio = found["packed"] / found["source"]
            print(f"{what:<10} source {found['source']:.2f} s, packed {found['packed']:.2f} s, "
                  f"ratio {ratio:.2f}")  # fmt: skip


if __name__ == "__main__":
    main(sys.argv[1])
