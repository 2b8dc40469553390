"""``fit SCORE --report``: the bars that differ most from what an edition prints.

Edition: Sor, opus 60 no. 8 (Mutopia Project; tests/data/guitar-editions/README.md).
"""

from __future__ import annotations

import re
from pathlib import Path

STUDY = Path(__file__).resolve().parents[1] / "data" / "guitar-editions" / "sor-op60-08.mxl"


def test_the_bars_that_differ_stand_side_by_side(call, tmp_path):
    page = tmp_path / "report.html"
    got = call("fit", STUDY, "--report", page, "--json")
    assert (got.status, got.err) == (0, "")
    bars = got.json["bars"]
    assert bars
    missed = [row["printed"] - row["met"] for row in bars]
    assert missed == sorted(missed, reverse=True) and missed[-1] > 0
    assert all(0 <= met <= row["printed"] for row in bars for met in row["schools"].values())
    text = page.read_text(encoding="utf-8")
    assert text.count("<section>") == len(bars) == len(re.findall("<h2>", text))
    assert text.count("data:image/png;base64,") == 2 * len(bars)
    assert "http" not in text  # nothing is fetched from elsewhere


def test_a_report_needs_scores_and_a_file(call, tmp_path):
    assert "name some" in call("fit", "--report", tmp_path / "out.html").err
    assert "is a folder" in call("fit", STUDY, "--report", tmp_path).err
