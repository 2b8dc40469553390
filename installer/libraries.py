"""The system libraries that Qt needs, and the packages that bring them.

Standard library only. Runs on old Pythons too, so that a machine with the
wrong one still gets a clear sentence.
"""

import ctypes
import os
import shutil
import subprocess
import sys

#: Needed for anything that draws, the PDF page included.
DRAWING = (
    # library file,       Debian and Ubuntu,     Fedora
    ("libEGL.so.1", "libegl1", "libglvnd-egl"),
    ("libGL.so.1", "libgl1", "libglvnd-glx"),
    ("libxkbcommon.so.0", "libxkbcommon0", "libxkbcommon"),
    ("libdbus-1.so.3", "libdbus-1-3", "dbus-libs"),
    ("libfontconfig.so.1", "libfontconfig1", "fontconfig"),
    ("libfreetype.so.6", "libfreetype6", "freetype"),
    ("libglib-2.0.so.0", "libglib2.0-0", "glib2"),
)
#: Needed besides for a window on an X11 display.
WINDOW = (
    ("libX11-xcb.so.1", "libx11-xcb1", "libX11-xcb"),
    ("libxkbcommon-x11.so.0", "libxkbcommon-x11-0", "libxkbcommon-x11"),
    ("libxcb-cursor.so.0", "libxcb-cursor0", "xcb-util-cursor"),
    ("libxcb-icccm.so.4", "libxcb-icccm4", "xcb-util-wm"),
    ("libxcb-image.so.0", "libxcb-image0", "xcb-util-image"),
    ("libxcb-keysyms.so.1", "libxcb-keysyms1", "xcb-util-keysyms"),
    ("libxcb-render-util.so.0", "libxcb-render-util0", "xcb-util-renderutil"),
    ("libxcb-randr.so.0", "libxcb-randr0", "libxcb"),
    ("libxcb-render.so.0", "libxcb-render0", "libxcb"),
    ("libxcb-shape.so.0", "libxcb-shape0", "libxcb"),
    ("libxcb-shm.so.0", "libxcb-shm0", "libxcb"),
    ("libxcb-sync.so.1", "libxcb-sync1", "libxcb"),
    ("libxcb-xfixes.so.0", "libxcb-xfixes0", "libxcb"),
    ("libxcb-xkb.so.1", "libxcb-xkb1", "libxcb"),
)
BROWSER = "chromium-headless-shell"
#: Needed to hear a lesson; without it everything else works.
SOUND = (("libasound.so.2", "libasound2", "alsa-lib"),)


def present(library):
    """True where the system's loader finds the library (asked by loading it)."""
    try:
        ctypes.CDLL(library)
    except OSError:
        return False
    return True


def missing(window=True):
    """Rows (library, Debian package, Fedora package) that this Linux lacks; [] elsewhere."""
    return lacking(DRAWING + (WINDOW if window else ()))


def lacking(rows):
    """The rows whose library this Linux has not; [] elsewhere."""
    if not sys.platform.startswith("linux"):
        return []
    return [row for row in rows if not present(row[0])]


def debian_name(package, run=subprocess.call):
    """The package under the name this Debian or Ubuntu has it: newer ones add t64."""
    quiet = {"stdout": subprocess.DEVNULL, "stderr": subprocess.DEVNULL}
    try:
        newer = run(["apt-cache", "show", package + "t64"], **quiet) == 0
    except OSError:
        newer = False
    return package + "t64" if newer else package


def provide_browser(say=print):
    """Install a headless browser for the tests of the student's pack where that is possible;
    where it is not, they are skipped with the reason."""
    if shutil.which(BROWSER) is None and can_install(family()):
        apt_install([BROWSER], say)


def provide_sound(say=print):
    """Install what the player lacks where that is possible; only a sentence where it is not."""
    rows = lacking(SOUND)
    if not rows:
        return
    if can_install(family()):
        apt_install([debian_name(row[1]) for row in rows], say)
    elif family() == "fedora":
        say("For sound in the window: sudo dnf install " + rows[0][2])
    elif family() == "debian":
        say("For sound in the window: sudo apt-get install " + debian_name(rows[0][1]))


def family(release="/etc/os-release"):
    """The kind of system by /etc/os-release: "debian", "fedora" or ""."""
    words = []
    try:
        with open(release, encoding="utf-8") as lines:
            for line in lines:
                name, _, value = line.strip().partition("=")
                if name in ("ID", "ID_LIKE"):
                    words += value.strip("\"'").split()
    except OSError:
        return ""
    if "debian" in words or "ubuntu" in words:
        return "debian"
    if "fedora" in words or "rhel" in words:
        return "fedora"
    return ""


def advice(rows, kind):
    """One sentence that names what to install, and how."""
    names = ", ".join(row[0] for row in rows)
    if kind == "debian":
        packages = " ".join(unique(row[1] for row in rows))
        return f"Qt lacks {names}; install them with: sudo apt-get install {packages}"
    if kind == "fedora":
        packages = " ".join(unique(row[2] for row in rows))
        return f"Qt lacks {names}; install them with: sudo dnf install {packages}"
    return f"Qt lacks {names}; install the packages of your system that hold these libraries."


def unique(names):
    """The names once each, in order."""
    return list(dict.fromkeys(names))


def can_install(kind):
    """True where this process may run apt-get itself."""
    root = hasattr(os, "geteuid") and os.geteuid() == 0
    return kind == "debian" and root and shutil.which("apt-get") is not None


def apt_install(packages, say=print, run=subprocess.call):
    """Install Debian packages, refreshing the package lists only if that proves needed.

    True where apt-get reports success. apt-get's own progress shows.
    """
    env = dict(os.environ, DEBIAN_FRONTEND="noninteractive")
    command = ["apt-get", "install", "-y", "--no-install-recommends", *list(packages)]
    say("Installing system packages: " + " ".join(packages))
    if run(command, env=env) == 0:
        return True
    say("Refreshing the system's package lists, then trying again.")
    return run(["apt-get", "update"], env=env) == 0 and run(command, env=env) == 0


def provide(window=True, say=print):
    """Install what Qt lacks where that is possible. The rows still missing after it."""
    rows = missing(window)
    if rows and can_install(family()):
        apt_install(unique(row[1] for row in rows), say)
        rows = missing(window)
    return rows
