"""Make the stored pieces of the demo shelf from their scores.

    python resources/demo/build.py

Reads every NAME.musicxml of this folder that shelf.json lists and writes
NAME.piece.json beside it. Run it after a score was edited; the tests fail
while score and stored piece disagree.
"""

from __future__ import annotations

import json
from pathlib import Path

from workbench.music.codec import piece_to_dict
from workbench.music.reading.score import read_score

HERE = Path(__file__).resolve().parent


def main() -> None:
    """Write the stored piece of every score on the shelf."""
    for name in json.loads((HERE / "shelf.json").read_text(encoding="utf-8"))["lessons"]:
        piece = read_score(HERE / f"{name}.musicxml")
        text = json.dumps(piece_to_dict(piece), indent=1, ensure_ascii=False)
        (HERE / f"{name}.piece.json").write_text(text + "\n", encoding="utf-8")
        print(f"{name}: {len(piece.bars)} bars, {len(piece.notes)} notes")


if __name__ == "__main__":
    main()
