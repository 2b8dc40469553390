"""What the program must not do with what others wrote: run it, believe it, or tell it elsewhere."""

from __future__ import annotations

import ast
import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
PROGRAM = {
    path.relative_to(ROOT).as_posix(): ast.parse(path.read_text(encoding="utf-8"))
    for path in sorted((ROOT / "workbench").rglob("*.py"))
}

#: Modules that turn bytes into running code, or reach another machine.
CODE = {"pickle", "_pickle", "cPickle", "marshal", "shelve", "dill", "cloudpickle", "jsonpickle",
        "code", "codeop", "runpy"}  # fmt: skip
NETWORK = {"socket", "ssl", "http", "urllib.request", "requests", "urllib3", "ftplib", "smtplib",
           "telnetlib", "xmlrpc", "socketserver", "asyncio", "webbrowser", "PySide6.QtNetwork",
           "PySide6.QtWebEngineWidgets", "distributed", "dask"}  # fmt: skip
CALLS = {"eval", "exec", "compile", "__import__", "system", "popen"}
#: Where one of them stands all the same, and why.
REASONS = {
    ("workbench/commands/cluster.py", "distributed"): "only when a cluster's address is given",
    ("workbench/commands/cluster.py", "dask"): "only when a cluster's address is given",
}


def imported(tree):
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            yield node.module
            yield from (f"{node.module}.{alias.name}" for alias in node.names)


def called(tree):
    """Names called as plain functions, and what is called on ``os``."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            if isinstance(node.func, ast.Name):
                yield node.func.id
            elif isinstance(node.func, ast.Attribute) and ast.unparse(node.func.value) == "os":
                yield node.func.attr


def within(name, those):
    return any(name == one or name.startswith(one + ".") for one in those)


def test_nothing_read_is_ever_run_and_nothing_reaches_another_machine():
    found = {
        (file, name)
        for file, tree in PROGRAM.items()
        for name in [
            *(name for name in imported(tree) if within(name, CODE | NETWORK)),
            *(name for name in called(tree) if name in CALLS),
        ]
    }
    assert {one for one in found if (one[0], one[1].split(".")[0]) not in REASONS} == set()
    assert {(file, name.split(".")[0]) for file, name in found} == set(REASONS), "reasons for all"


def test_the_search_finds_what_it_looks_for():
    tree = ast.parse("import pickle\nfrom urllib import request\nimport os\nos.system(eval('1'))")
    assert {n for n in imported(tree) if within(n, CODE | NETWORK)} == {"pickle", "urllib.request"}
    assert set(called(tree)) & CALLS == {"system", "eval"}


def test_labels_and_questions_take_no_words_for_a_document():
    """A plain ``QLabel`` or ``QMessageBox`` guesses, and a title may look like HTML: labels are
    ``Words``, which do not guess, and a question says so itself."""
    guessing = []
    for file, tree in PROGRAM.items():
        names = [node.func.id for node in ast.walk(tree)
                 if isinstance(node, ast.Call) and isinstance(node.func, ast.Name)]  # fmt: skip
        told = {node.func.attr for node in ast.walk(tree)
                if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute)}  # fmt: skip
        if "QLabel" in names or ("QMessageBox" in names and "setTextFormat" not in told):
            guessing.append(file)
        if told & {"question", "warning", "critical", "about"} and "QMessageBox" in str(names):
            guessing.append(file)
    assert guessing == []


JOURNEY = """
import os, sys
reached = []
def hook(event, arguments):
    if event.startswith("socket.") and event not in ("socket.gethostname", "socket.__new__"):
        reached.append((event, str(arguments)))
        raise OSError("there is no network")
    if event.startswith(("urllib.", "http.", "ftplib.", "smtplib.")):
        reached.append((event, str(arguments)))
sys.addaudithook(hook)

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
app = QApplication([])
from workbench.cli import main
folder = sys.argv[1]
for words in (
    ["read", "demo"], ["keys", "demo"], ["handout", "demo", "-o", folder + "/page.pdf"],
    ["sound", "demo", "--bars", "1-1", "-o", folder + "/heard.wav"],
    ["export", "demo", "-o", folder + "/score.musicxml"], ["read", folder + "/score.musicxml"],
    ["pack", "demo", "-o", folder + "/pack.zip"],
    ["read", "https://example.org/score.xml"],
):
    print(words[0], main(words), file=sys.stderr)

def leave():
    for window in app.topLevelWidgets():
        window.close()
    app.quit()
QTimer.singleShot(2500, leave)
from workbench.ui.window.app import run
print("window", run(), file=sys.stderr)
print("network modules", [n for n in sys.modules if n.startswith("PySide6.QtNetwork")])
print("reached", reached)
"""


@pytest.mark.slow
def test_a_whole_journey_reaches_for_no_network(tmp_path):
    environment = dict(
        os.environ, QT_QPA_PLATFORM="offscreen", PLUCKWRIGHT_DB=str(tmp_path / "store.db"),
        PYTHONPATH=str(ROOT), PLUCKWRIGHT_LOGS=str(tmp_path),
    )  # fmt: skip
    done = subprocess.run([sys.executable, "-c", JOURNEY, str(tmp_path)], cwd=tmp_path,
                          env=environment, capture_output=True, text=True)  # fmt: skip
    told = done.stdout + done.stderr
    assert "reached []" in done.stdout and "network modules []" in done.stdout, told
    assert "window 0" in done.stderr and "handout 0" in done.stderr, told
    assert done.stderr.count("read 2") == 1, "an address is not a file"
