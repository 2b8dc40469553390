"""Every score of music21's corpus through ``batch``, and the table of what became of it.

    python -m tests.hard.corpus OUT [JOBS]     goes on where it was stopped
    python -m tests.hard.corpus OUT --table    only the table of what is done so far

Scores of formats that the program does not read (Humdrum, Roman numerals) are brought to MusicXML
by music21 first, in OUT/brought; what it cannot bring is counted as such.
"""

from __future__ import annotations

import json
import subprocess
import sys
from collections import Counter, defaultdict
from pathlib import Path

import music21

from workbench.commands.batch import REPORT
from workbench.music.suffixes import SCORES, has_suffix

CORPUS = Path(music21.__file__).parent / "corpus"
FOREIGN = (".krn", ".rntxt")


def bring(out: Path) -> dict[str, str]:
    """MusicXML of the scores in other formats; why not, by the name of those that failed."""
    out.mkdir(parents=True, exist_ok=True)
    book = out.parent / "not-brought.json"
    failed = json.loads(book.read_text(encoding="utf-8")) if book.is_file() else {}
    for path in sorted(p for p in CORPUS.rglob("*") if has_suffix(p, FOREIGN)):
        name = "-".join(path.relative_to(CORPUS).parts).replace(".", "-")
        made = out / f"{name}.musicxml"
        if made.is_file() or name in failed:
            continue
        part = out / f"{name}.part"
        try:
            music21.converter.parse(path).write("musicxml", fp=str(part))
            next(out.glob(f"{name}.part*")).rename(made)
        except Exception as fault:
            failed[name] = f"{type(fault).__name__}: {fault}"
            book.write_text(json.dumps(failed, indent=1), encoding="utf-8")
    return failed


def run(scores: Path, out: Path, jobs: str) -> None:
    """One batch of a folder, gone on with where there was one."""
    words = ["batch", str(scores), "-o", str(out), "--recursive", "--resume", "--json"]
    words += ["--jobs", jobs] if jobs else []
    subprocess.run(
        [sys.executable, "-m", "workbench", *words], stdout=subprocess.DEVNULL, check=False
    )


def told(*outs: Path) -> list[dict]:
    """The last report of every score."""
    found: dict[str, dict] = {}
    for out in outs:
        book = out / REPORT
        lines = book.read_text(encoding="utf-8").splitlines() if book.is_file() else []
        for entry in map(json.loads, lines):
            found[f"{out.name}/{entry['name']}"] = entry["report"]
    return list(found.values())


def table(out: Path) -> list[str]:
    """Scores, pages made and time by format, then the reasons of the rest."""
    rows: dict[str, list[dict]] = defaultdict(list)
    for report in told(out / "own", out / "foreign"):
        name = Path(report["score"]).name
        kind = next((k[1:] for k in FOREIGN if name.endswith(f"{k[1:]}.musicxml")), "")
        rows[kind or Path(name).suffix[1:].lower()].append(report)
    head = "| format | scores run | handouts | pages | processor's time a score, s |"
    lines = [head, "| --- |" + " ---: |" * 4]
    for kind, found in sorted(rows.items()):
        done = [row for row in found if row["ok"]]
        worked = [row["processor"] for row in done if row.get("processor")]
        seconds = sum(worked) / max(1, len(worked))
        pages = sum(row["pages"] for row in done)
        lines.append(f"| {kind} | {len(found)} | {len(done)} | {pages} | {seconds:.1f} |")
    why = Counter(
        row["reason"].replace(Path(row["score"]).name, "...")
        for found in rows.values() for row in found if not row["ok"]
    )  # fmt: skip
    return [*lines, "", *(f"{n} x {reason}" for reason, n in why.most_common(20))]


def main(out: Path, jobs: str = "", only_table: bool = False) -> None:
    if not only_table:
        own = sum(has_suffix(path, SCORES) for path in CORPUS.rglob("*"))
        run(CORPUS, out / "own", jobs)
        failed = bring(out / "brought")
        print(f"{own} read as they are; {len(failed)} could not be brought to MusicXML", flush=True)
        run(out / "brought", out / "foreign", jobs)
    print("\n".join(table(out)))


if __name__ == "__main__":
    place, *others = sys.argv[1:]
    main(Path(place), "".join(w for w in others if w.isdigit()), "--table" in others)
