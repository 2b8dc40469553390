"""The set-up: the right Python, the right packages named, nothing done twice."""

from __future__ import annotations

import ast
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

INSTALLER = Path(__file__).resolve().parents[2] / "installer"
sys.path.insert(0, str(INSTALLER))

import check  # noqa: E402
import libraries  # noqa: E402
import machine  # noqa: E402
import start  # noqa: E402


@pytest.mark.parametrize("path", sorted(INSTALLER.glob("*.py")), ids=lambda path: path.name)
def test_an_old_python_can_still_read_the_installer(path):
    ast.parse(path.read_text(encoding="utf-8"), feature_version=(3, 6))


@pytest.mark.parametrize("path", sorted(INSTALLER.glob("*.py")), ids=lambda path: path.name)
def test_the_installer_needs_only_the_standard_library(path):
    known = sys.stdlib_module_names | {"machine", "libraries"}
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            assert {alias.name for alias in node.names} <= known
        elif isinstance(node, ast.ImportFrom):
            assert node.module in known


def test_this_python_is_taken_where_it_is_new_enough():
    assert machine.find_python(current=(3, 11)) == [sys.executable]


def test_a_newer_python_on_the_path_is_found():
    versions = {"python3.13": None, "python3.12": (3, 12), "python3": (3, 8)}
    found = machine.find_python(
        current=(3, 8),
        which=lambda name: name if name in versions else None,
        version=lambda command: versions[command[0]],
    )
    assert found == ["python3.12"]


def test_no_python_new_enough_is_said_in_a_sentence():
    with pytest.raises(machine.Stop, match=r"needs Python 3\.11 or newer and this is Python 3\.8"):
        machine.find_python(current=(3, 8), which=lambda name: None)


def test_a_missing_venv_module_is_named_with_its_package(monkeypatch):
    monkeypatch.setattr(machine, "version_of", lambda command: (3, 12))
    monkeypatch.setattr(libraries, "family", lambda: "debian")
    monkeypatch.setattr(libraries, "can_install", lambda kind: False)
    with pytest.raises(machine.Stop, match=r"sudo apt-get install python3\.12-venv"):
        machine.provide_venv(["python3.12"])


def test_the_project_is_installed_only_when_its_description_changed(tmp_path, monkeypatch):
    home, environment = tmp_path / "home", tmp_path / "venv"
    home.mkdir()
    environment.mkdir()
    (home / "pyproject.toml").write_text("one")
    calls = []

    def pip(command, **_):
        calls.append(command[-1])
        return subprocess.CompletedProcess(command, 0)

    monkeypatch.setattr(machine.subprocess, "run", pip)
    monkeypatch.setattr(machine.sys, "stderr", sys.__stderr__)

    def install(extra=""):
        return machine.install_project(Path("python"), extra, environment, home)

    assert install() and not install()
    assert install("check") and not install("check")
    assert not install(), "what has the extra has the rest as well"
    (home / "pyproject.toml").write_text("two")
    assert install()
    assert calls == [str(home), f"{home}[check]", str(home)]


def test_a_failed_installation_leaves_no_stamp(tmp_path, monkeypatch):
    (tmp_path / "pyproject.toml").write_text("one")
    monkeypatch.setattr(
        machine.subprocess, "run", lambda command, **_: subprocess.CompletedProcess(command, 1)
    )
    monkeypatch.setattr(machine.sys, "stderr", sys.__stderr__)
    with pytest.raises(machine.Stop, match="pip could not install"):
        machine.install_project(Path("python"), "", tmp_path, tmp_path)
    assert not machine.installed(machine.fingerprint("", tmp_path), tmp_path)


@pytest.mark.parametrize(
    "release, kind",
    [
        ("ID=debian\n", "debian"),
        ('ID=linuxmint\nID_LIKE="ubuntu debian"\n', "debian"),
        ("ID=fedora\n", "fedora"),
        ("ID=arch\n", ""),
    ],
)
def test_the_family_of_the_system_is_told(tmp_path, release, kind):
    (tmp_path / "os-release").write_text(release)
    assert libraries.family(str(tmp_path / "os-release")) == kind


def test_missing_libraries_are_named_with_their_packages(monkeypatch):
    monkeypatch.setattr(libraries.sys, "platform", "linux")
    monkeypatch.setattr(
        libraries, "present", lambda name: name not in ("libEGL.so.1", "libxcb-cursor.so.0")
    )
    sentence = libraries.advice(libraries.missing(window=True), "debian")
    assert sentence.endswith("sudo apt-get install libegl1 libxcb-cursor0")
    assert [row[0] for row in libraries.missing(window=False)] == ["libEGL.so.1"]
    assert "libEGL.so.1" in libraries.advice(libraries.missing(), "")


def test_a_library_is_looked_for_by_loading_it():
    assert not libraries.present("libthere-is-no-such-library.so.9")


def test_package_lists_are_refreshed_only_when_that_proves_needed():
    calls = []

    def apt(answers):
        left = iter(answers)
        return lambda command, env: calls.append(command[1]) or next(left)

    assert libraries.apt_install(["libegl1"], lambda text: None, apt([0]))
    assert calls == ["install"]
    calls.clear()
    assert libraries.apt_install(["libegl1"], lambda text: None, apt([100, 0, 0]))
    assert calls == ["install", "update", "install"]
    assert not libraries.apt_install(["libegl1"], lambda text: None, apt([100, 0, 100]))


def test_what_is_missing_stops_the_window_but_not_a_verb(monkeypatch, capsys):
    calls = []
    monkeypatch.setattr(machine, "set_up", lambda extra="": Path("python"))
    monkeypatch.setattr(libraries, "provide", lambda window, say: [libraries.DRAWING[0]])
    monkeypatch.setattr(libraries, "family", lambda: "debian")
    monkeypatch.setattr(start.subprocess, "call", lambda command: calls.append(command) or 0)
    monkeypatch.setenv("DISPLAY", ":0")
    assert start.main([]) == 2
    assert calls == []
    assert "sudo apt-get install libegl1" in capsys.readouterr().err
    assert start.main(["read", "demo"]) == 0
    assert calls == [["python", "-P", "-m", "workbench", "read", "demo"]]


def test_the_checks_run_through_and_the_sum_names_what_failed():
    results = [
        ("lint", 0, 1.0, "ok"),
        ("types", 1, 2.0, "Found 1 error"),
        ("tests", 0, 9.0, "5 passed"),
    ]
    lines = check.sum_up(results)
    assert "Failed: types" in lines
    assert lines[-1] == "5 passed"


def test_full_adds_the_slow_tests():
    def words(full):
        return next(words for name, words in check.steps(full) if name == "tests")

    assert "slow or not slow" in words(True) and "slow or not slow" not in words(False)


@pytest.mark.parametrize("server", [None, "Xvfb", "Xorg"])
def test_the_check_provides_what_a_window_needs_where_one_can_be_opened(monkeypatch, server):
    """A machine without a display server needs no window; one that has a server runs the
    test of the real start, which needs them all."""
    asked = []
    for name in ("DISPLAY", "WAYLAND_DISPLAY"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setattr(shutil, "which", lambda name: name if name == server else None)
    monkeypatch.setattr(machine, "set_up", lambda extra="": Path("python"))
    monkeypatch.setattr(libraries, "provide", lambda window, say: asked.append(window) or [])
    monkeypatch.setattr(libraries, "provide_browser", lambda *_, **__: None)
    monkeypatch.setattr(libraries, "provide_sound", lambda *_, **__: None)
    monkeypatch.setattr(check, "run_step", lambda words, environment: (0, "ok"))
    assert check.main([]) == 0
    assert asked == [server is not None]


def test_a_browser_and_sound_are_asked_for_once_and_only_where_that_can_be(monkeypatch):
    asked = []
    monkeypatch.setattr(libraries, "apt_install", lambda names, say: asked.append(names))
    monkeypatch.setattr(libraries, "family", lambda: "debian")
    monkeypatch.setattr(libraries, "debian_name", lambda name: name + "t64")
    monkeypatch.setattr(libraries, "lacking", lambda rows: list(rows))
    monkeypatch.setattr(libraries.shutil, "which", lambda name: None)
    monkeypatch.setattr(libraries, "can_install", lambda kind: True)
    libraries.provide_browser()
    libraries.provide_sound()
    assert asked == [["chromium-headless-shell"], ["libasound2t64"]]
    monkeypatch.setattr(libraries, "can_install", lambda kind: False)
    said = []
    libraries.provide_browser(said.append)
    libraries.provide_sound(said.append)
    assert len(asked) == 2
    assert said == ["For sound in the window: sudo apt-get install libasound2t64"]


def test_the_package_has_the_name_that_this_system_knows():
    known = lambda command, **_: 0 if command[-1] == "libasound2t64" else 100  # noqa: E731
    assert libraries.debian_name("libasound2", known) == "libasound2t64"
    assert libraries.debian_name("libasound2", lambda *_, **__: 100) == "libasound2"


FALLS = {
    "crashes": "import ctypes\ndef test_it():\n    ctypes.string_at(0)\n",
    "hangs": "import time\ndef test_it():\n    time.sleep(600)\n",
}


@pytest.mark.parametrize("fall", FALLS)
def test_the_tests_come_to_an_end_where_one_brings_its_process_down(tmp_path, monkeypatch, fall):
    monkeypatch.setattr(check, "HUNG", 5)
    monkeypatch.setattr(check, "workers", lambda: 2)
    for name in ("one", "two", "three"):
        (tmp_path / f"test_{name}.py").write_text("def test_it():\n    pass\n" * 3)
    (tmp_path / "test_fall.py").write_text(FALLS[fall])
    words = next(words for name, words in check.steps() if name == "tests")
    words = [word for word in words if word != "tests"]
    ended = subprocess.run(
        [sys.executable, "-m", *words], cwd=tmp_path, capture_output=True, text=True, timeout=300
    )
    assert ended.returncode == 1
    assert "crashed while running 'test_fall.py::test_it'" in ended.stdout
