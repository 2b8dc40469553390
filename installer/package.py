"""Build what can be handed to others. Everything goes to dist/; nothing of it is committed.

    python3 installer/package.py wheel     a wheel, for pip, pipx and a school's own index
    python3 installer/package.py folder    one folder with the program, Python and all libraries
    python3 installer/package.py debian    a Debian package of that folder
    python3 installer/package.py trial     that package in a clean root, installed, used, removed

`folder` works on Linux, Windows and macOS alike, each for itself: PyInstaller does not build
for other systems. Standard library only.
"""

import os
import shutil
import subprocess
import sys

import libraries
import machine

BUILD = machine.HOME / "build"
DIST = machine.HOME / "dist"
PACKING = machine.HOME / "installer" / "packing"
ENVIRONMENT = BUILD / "packing-env"
FOLDER = DIST / "pluckwright"


def version(home=machine.HOME):
    """The version, from the one line that holds it."""
    for line in (home / "workbench" / "__init__.py").read_text(encoding="utf-8").splitlines():
        if line.startswith("__version__"):
            return line.split('"')[1]
    raise machine.Stop("workbench/__init__.py names no version.")


def moment(home=machine.HOME):
    """Seconds since 1970 that built files are dated with: of the last commit, so that the same
    commit gives the same bytes; SOURCE_DATE_EPOCH where it is set."""
    known = os.environ.get("SOURCE_DATE_EPOCH", "")
    if known.isdigit():
        return int(known)
    try:
        said = subprocess.check_output(
            ["git", "log", "-1", "--format=%ct"], cwd=str(home), stderr=subprocess.DEVNULL
        )
        return int(said)
    except (OSError, ValueError, subprocess.CalledProcessError):
        return int((home / "pyproject.toml").stat().st_mtime)


def surroundings():
    """The environment variables of a build that gives the same again."""
    return dict(
        os.environ,
        SOURCE_DATE_EPOCH=str(moment()),
        PYTHONHASHSEED="1",
        PLUCKWRIGHT_VERSION=version(),
        PLUCKWRIGHT_ICONS=str(BUILD / "icons"),
        QT_QPA_PLATFORM="offscreen",
    )


def run(words):
    """Run one step of a build; raises Stop where it fails."""
    done = subprocess.run([str(word) for word in words], cwd=str(machine.HOME), env=surroundings())
    if done.returncode != 0:
        raise machine.Stop("Building stopped at: " + " ".join(str(word) for word in words))


def environment():
    """The Python that packs, with the program's libraries and the tools, and nothing else."""
    inner = machine.make_environment(machine.find_python(), ENVIRONMENT)
    if machine.install_project(inner, "package,school", ENVIRONMENT):
        machine.say("Set up for packing.")
    return inner


def wheel(inner):
    """dist/pluckwright-VERSION-py3-none-any.whl."""
    shutil.rmtree(str(BUILD / "lib"), ignore_errors=True)  # of an earlier state
    run([inner, "-m", "build", "--wheel", "--no-isolation", "--outdir", DIST, machine.HOME])


def folder(inner):
    """dist/pluckwright, with its licences and bill of materials beside the program."""
    rows = libraries.provide(window=False, say=machine.say)
    if rows:
        raise machine.Stop(libraries.advice(rows, libraries.family()))
    run([inner, PACKING / "icons.py", BUILD / "icons"])
    # Nothing of an earlier build: what was compiled then is not told from what is there now.
    run([inner, "-m", "PyInstaller", "--clean", "--noconfirm", "--distpath", DIST, "--workpath",
         BUILD / "pyinstaller", PACKING / "pluckwright.spec"])  # fmt: skip
    run([inner, PACKING / "contents.py", FOLDER])


def debian(inner):
    """dist/pluckwright_VERSION_ARCHITECTURE.deb."""
    if shutil.which("dpkg-deb") is None:
        raise machine.Stop("A Debian package is built on Debian or Ubuntu, where dpkg-deb is.")
    folder(inner)
    run([inner, PACKING / "debian.py", FOLDER, BUILD / "icons", DIST])


def trial(inner):
    """The newest package, tried in a root that holds nothing but Debian's base."""
    found = sorted(DIST.glob("*.deb"), key=lambda path: path.stat().st_mtime)
    if not found:
        debian(inner)
        found = sorted(DIST.glob("*.deb"))
    run(["sh", PACKING / "trial.sh", found[-1], BUILD / "root"])


STEPS = {"wheel": wheel, "folder": folder, "debian": debian, "trial": trial}


def main(arguments):
    """Exit status: 0 built, 2 wrong use or a build that stopped."""
    unknown = [word for word in arguments if word not in STEPS]
    if unknown or not arguments:
        machine.say("Name what to build: " + ", ".join(STEPS) + ".")
        return 2
    try:
        inner = environment()
        for word in arguments:
            STEPS[word](inner)
    except machine.Stop as stop:
        machine.say(str(stop))
        return 2
    return 0


if __name__ == "__main__":
    try:
        sys.exit(main(sys.argv[1:]))
    except KeyboardInterrupt:
        machine.say("Stopped.")
        sys.exit(130)
