"""What is handed to others: one version, files opened by the program, the same bytes twice."""

from __future__ import annotations

import re
import shutil
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest

import workbench
from workbench.music.suffixes import SCORES
from workbench.store.archive import ENDING

ROOT = Path(__file__).resolve().parents[2]
PACKING = ROOT / "installer" / "packing"
sys.path[:0] = [str(ROOT / "installer"), str(PACKING)]

import debian  # noqa: E402
import kinds  # noqa: E402
import package  # noqa: E402


def test_there_is_one_version():
    assert package.version() == workbench.__version__
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    assert "version" not in project["project"]
    assert project["tool"]["setuptools"]["dynamic"]["version"]["attr"] == "workbench.__version__"


def test_what_to_build_has_to_be_named(capsys):
    assert package.main([]) == 2 and package.main(["floppy"]) == 2
    assert capsys.readouterr().err.count("\n") == 2


def test_the_desktop_opens_every_kind_of_file_that_the_program_reads():
    entry = kinds.desktop_entry()
    offered = re.search(r"^MimeType=(.*);$", entry, re.MULTILINE)[1].split(";")
    assert offered == [kind.mime for kind in kinds.kinds()]
    opened = {ending for kind in kinds.kinds() for ending in kind.endings}
    # Not everything in XML is music: a desktop knows a MusicXML score by its first element.
    assert opened == {*SCORES, ENDING} - {".xml"}
    assert "Exec=pluckwright %f" in entry


@pytest.fixture
def packed(tmp_path, monkeypatch):
    """A folder laid out as PyInstaller leaves it, and icons."""
    folder, icons = tmp_path / "pluckwright", tmp_path / "icons"
    (folder / "_internal").mkdir(parents=True)
    (folder / "licences").mkdir()
    icons.mkdir()
    (folder / "pluckwright").write_text("#!/bin/sh\n")
    (folder / "pluckwright").chmod(0o700)
    (folder / "licences" / "LICENSE").write_text("as you like")
    (folder / "bill-of-materials.cdx.json").write_text("{}")
    (icons / "48.png").write_bytes(b"")
    monkeypatch.setenv("PLUCKWRIGHT_VERSION", workbench.__version__)
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1700000000")
    return folder, icons


@pytest.mark.skipif(shutil.which("dpkg-deb") is None, reason="dpkg-deb is Debian's")
def test_a_debian_package_is_built_the_same_twice_and_touches_nobodys_home(packed, tmp_path):
    made = [debian.main(*packed, out) for out in (tmp_path, tmp_path / "icons")]
    assert made[0].read_bytes() == made[1].read_bytes()
    listed = subprocess.check_output(["dpkg-deb", "-c", made[0]], text=True)
    files = {line.split()[5].rstrip("/") for line in listed.splitlines()}
    assert "./usr/bin/pluckwright" in files and "./usr/lib/pluckwright/pluckwright" in files
    assert "./usr/share/doc/pluckwright/licences/LICENSE" in files
    assert all(name == "." or name.startswith("./usr") for name in files)
    assert all(line.split()[1] == "root/root" for line in listed.splitlines())
    control = subprocess.check_output(["dpkg-deb", "-f", made[0]], text=True)
    assert f"Version: {workbench.__version__}" in control and "libegl1t64 | libegl1" in control
    # No script of its own runs on removal.
    parts = subprocess.check_output(["dpkg-deb", "--info", made[0]], text=True)
    assert not re.search(r"\b(post|pre)(rm|inst)\b", parts)
