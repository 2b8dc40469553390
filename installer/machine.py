"""Python, the virtual environment and the installed project. Standard library only.

Written for old Pythons too, so that one that is too old still gets a sentence
and not a syntax error.
"""

import hashlib
import os
import pathlib
import shutil
import subprocess
import sys

import libraries

OLDEST = (3, 11)
HOME = pathlib.Path(__file__).resolve().parent.parent
ENVIRONMENT = HOME / ".venv"
STAMP = "pluckwright.stamp"


class Stop(Exception):
    """The set-up cannot go on; the message is one sentence for the user."""


def say(text):
    """A line of progress, on stderr so that a verb's own output stays clean."""
    print(text, file=sys.stderr, flush=True)


def version_of(command):
    """(major, minor) of the Python that this command starts, or None."""
    ask = "import sys; print(sys.version_info[0], sys.version_info[1])"
    try:
        done = subprocess.run(
            [*list(command), "-c", ask],
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            timeout=30,
        )
        major, minor = done.stdout.decode().split()
        return int(major), int(minor)
    except (OSError, ValueError, subprocess.SubprocessError):
        return None


def find_python(current=None, which=shutil.which, version=version_of):
    """The command of a Python new enough: this one, or another on the path.

    Raises Stop where there is none.
    """
    current = current or sys.version_info[:2]
    if tuple(current) >= OLDEST:
        return [sys.executable]
    newer = [f"python3.{minor}" for minor in range(14, OLDEST[1] - 1, -1)]
    tries = [[name] for name in [*newer, "python3", "python"]]
    if os.name == "nt":
        tries = [["py", f"-3.{minor}"] for minor in range(14, OLDEST[1] - 1, -1)] + tries
    for command in tries:
        if which(command[0]):
            found = version(command)
            if found and found >= OLDEST:
                return command
    raise Stop(
        "Pluckwright needs Python 3.11 or newer and this is Python "
        f"{current[0]}.{current[1]}; install a newer Python and start again with it."
    )


def environment_python(environment=ENVIRONMENT):
    """Where the environment's Python lies on this system."""
    if os.name == "nt":
        return environment / "Scripts" / "python.exe"
    return environment / "bin" / "python"


def lacks_ensurepip(python):
    """True where that Python cannot put pip into a new environment."""
    done = subprocess.run(
        [*list(python), "-c", "import ensurepip, venv"],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    return done.returncode != 0


def make_environment(python, environment=ENVIRONMENT):
    """Make .venv, or leave a sound one as it is. Returns its Python.

    Raises Stop where Python's venv module is missing or fails.
    """
    inner = environment_python(environment)
    found = version_of([str(inner)]) if inner.exists() else None
    if found and found >= OLDEST and pip_works(inner):
        return inner
    if lacks_ensurepip(python):
        provide_venv(python)
    if environment.exists():
        say("The folder .venv is unfinished or made by another Python: making it anew.")
        shutil.rmtree(str(environment), ignore_errors=True)
    say(f"Making the environment {environment.name} ...")
    done = subprocess.run([*list(python), "-m", "venv", str(environment)])
    if done.returncode != 0 or not inner.exists():
        raise Stop(
            f"The environment {environment} could not be made; "
            "see the lines above, and check that the folder may be written to."
        )
    return inner


def pip_works(python):
    done = subprocess.run(
        [str(python), "-m", "pip", "--version"],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    return done.returncode == 0


def provide_venv(python):
    """Install Debian's venv package where we may; Stop with its name otherwise."""
    found = version_of(python) or OLDEST
    package = f"python{found[0]}.{found[1]}-venv"
    kind = libraries.family()
    if libraries.can_install(kind):
        libraries.apt_install([package], say)
        if not lacks_ensurepip(python):
            return
    if kind == "debian":
        raise Stop(
            "This Python lacks its venv module; install it with: "
            f"sudo apt-get install {package} (or python3-venv), then start again."
        )
    raise Stop(
        "This Python lacks the modules venv and ensurepip; install a Python that has "
        "them, then start again."
    )


def fingerprint(extra="", home=HOME):
    """What the installed state depends on: pyproject.toml, where it lies, and the extra."""
    text = (home / "pyproject.toml").read_bytes() + str(home).encode()
    return hashlib.sha256(text).hexdigest() + (f"+{extra}" if extra else "")


def installed(wanted, environment=ENVIRONMENT):
    """True where the stamp says that this state, or one with the extra too, is there."""
    try:
        stamp = (environment / STAMP).read_text(encoding="utf-8").strip()
    except OSError:
        return False
    return stamp == wanted or stamp.startswith(wanted + "+")


def install_project(inner, extra="", environment=ENVIRONMENT, home=HOME):
    """Install the project and what it needs, unless the stamp says it is done.

    Raises Stop where pip fails.
    """
    wanted = fingerprint(extra, home)
    if installed(wanted, environment):
        return False
    what = str(home) + (f"[{extra}]" if extra else "")
    say("Installing Pluckwright and what it needs (the first time takes some minutes) ...")
    command = [str(inner), "-m", "pip", "install", "--disable-pip-version-check", "-e", what]
    # pip's lines are progress: they go to stderr, so that a verb's own output stays clean.
    done = subprocess.run(command, stdout=sys.stderr.fileno())
    if done.returncode != 0:
        raise Stop(
            "pip could not install what Pluckwright needs; see its lines above, "
            "check the network, and start again."
        )
    (environment / STAMP).write_text(wanted + "\n", encoding="utf-8")
    return True


def set_up(extra=""):
    """Environment and project, made or left as they are. Returns the environment's Python.

    Raises Stop with one sentence where that cannot be done.
    """
    inner = environment_python()
    if installed(fingerprint(extra)) and version_of([str(inner)]):
        return inner
    inner = make_environment(find_python())
    if install_project(inner, extra):
        say("Set up.")
    return inner
