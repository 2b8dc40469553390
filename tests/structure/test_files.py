"""Every file says what it is for, and nothing of the machine it was written on."""

from __future__ import annotations

import ast
import re
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]

#: A home or work folder of some machine, or a package index by its host.
PATHS = re.compile(
    r"(?<![\w.<])/(?:home|root|Users|work|mnt)/\w+|[A-Z]:\\\\?Users\\\\?\w"
    r"|https?://[\w.:-]*(?:/simple/?|pypi|artifact|nexus|mirror)[\w./-]*"
    r"|--(?:extra-)?index-url|--trusted-host",
    re.IGNORECASE,
)
TEST_MODULE = re.compile(r"^tests\.(\w+\.)*test_\w+$")
TEXT = {".py", ".toml", ".md", ".txt", ".cfg", ".ini", ".json", ".yml", ".yaml", ".ts", ".sh", ""}


def tracked() -> list[Path]:
    """The files of the repository, or of the folder where it came without its history."""
    try:
        names = subprocess.run(
            ["git", "ls-files", "-z"], cwd=ROOT, capture_output=True, check=True
        ).stdout.decode()
        files = [ROOT / name for name in names.split("\0") if name]
    except (OSError, subprocess.CalledProcessError):
        files = [path for path in ROOT.rglob("*") if not set(path.parts) & {".venv", ".git"}]
    return [path for path in files if path.is_file()]


def test_no_machine_paths_and_no_package_hosts():
    here = Path(__file__).resolve()
    found = [
        f"{path.relative_to(ROOT).as_posix()}: {match.group()}"
        for path in tracked()
        if path.suffix in TEXT and path.resolve() != here
        for match in PATHS.finditer(path.read_text(encoding="utf-8", errors="replace"))
    ]
    assert found == []


@pytest.mark.parametrize(
    "line",
    ["see /home/anna/scores", "C:\\Users\\anna", "--index-url x", "https://host.example/simple/"],
)
def test_the_search_finds_what_it_looks_for(line):
    assert PATHS.search(line)


def test_nothing_built_or_cached_is_kept():
    unwanted = [
        path.relative_to(ROOT).as_posix()
        for path in tracked()
        if path.suffix in {".pyc", ".db", ".log"} or "__pycache__" in path.parts
    ]
    assert unwanted == []


def test_no_test_takes_its_helpers_from_another_test():
    """What two tests share stands in a plain module beside them."""
    taken = [
        f"{path.relative_to(ROOT).as_posix()}: {module}"
        for path in (ROOT / "tests").rglob("*.py")
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.Import | ast.ImportFrom)
        for module in [*(alias.name for alias in node.names), getattr(node, "module", None) or ""]
        if TEST_MODULE.search(module)
    ]
    assert taken == []


def test_no_method_is_there_only_to_raise():
    """What somebody else does is handed in or asked for by a signal, not left to a subclass."""
    empty = [
        path.relative_to(ROOT).as_posix()
        for path in (ROOT / "workbench").rglob("*.py")
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.Raise) and "NotImplementedError" in ast.dump(node)
    ]
    assert empty == []


def test_modules_of_the_program_say_what_they_are():
    silent = [
        path.relative_to(ROOT).as_posix()
        for path in (ROOT / "workbench").rglob("*.py")
        if (text := path.read_text(encoding="utf-8").strip())
        and path.name != "__main__.py"
        and not text.startswith(('"""', 'r"""'))
    ]
    assert silent == []
