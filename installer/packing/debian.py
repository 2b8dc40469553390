"""A Debian package of the packed folder.

    python installer/packing/debian.py FOLDER ICONS OUT

The program lies in /usr/lib/pluckwright, its command in /usr/bin. Lessons lie in the homes of
those who use it: an upgrade or removal never touches them. Layout: Debian Policy 4.6, Freedesktop
Desktop Entry, Icon Theme and Shared MIME Info specifications.
"""

from __future__ import annotations

import gzip
import os
import platform
import shutil
import subprocess
import sys
from pathlib import Path

PACKING = Path(__file__).parent
sys.path[:0] = [str(PACKING.parent), str(PACKING)]

import kinds  # noqa: E402
import libraries  # noqa: E402

ABOUT = """Lesson preparation for teachers of plucked, fretted instruments
 Reads scores, finds fingerings for the ukulele, the guitar and their relatives,
 grades pieces, plans practice and prints handouts. Works without a network; lessons
 stay in the home of whoever writes them, also when this package is removed."""


def either(name: str) -> str:
    """A library's package under its newer name or the one it had before."""
    return f"{name}t64 | {name}"


def control(version: str, architecture: str, kilobytes: int) -> str:
    """The package's own description."""
    system = [either(row[1]) for row in libraries.DRAWING + libraries.WINDOW]
    needs = [f"libc6 (>= {platform.libc_ver()[1]})", *libraries.unique(system)]
    sound = ", ".join(either(row[1]) for row in libraries.SOUND)
    return (
        f"Package: pluckwright\nVersion: {version}\nArchitecture: {architecture}\n"
        "Maintainer: The Pluckwright makers <makers@pluckwright.invalid>\n"
        f"Installed-Size: {kilobytes}\nSection: education\nPriority: optional\n"
        f"Depends: {', '.join(needs)}\nRecommends: {sound}\n"
        f"Description: {ABOUT}\n"
    )


def place(source: Path, target: Path) -> None:
    target.parent.mkdir(parents=True, exist_ok=True)
    shutil.copyfile(source, target)


def lay_out(folder: Path, icons: Path, root: Path) -> None:
    """The files as they will lie on the machine, under ``root``."""
    shutil.rmtree(root, ignore_errors=True)
    share = root / "usr" / "share"
    shutil.copytree(folder, root / "usr/lib/pluckwright", symlinks=True)
    (root / "usr/bin").mkdir(parents=True)
    (root / "usr/bin/pluckwright").symlink_to("../lib/pluckwright/pluckwright")
    place(PACKING / "pluckwright.xml", share / "mime/packages/pluckwright.xml")
    entry = share / "applications/pluckwright.desktop"
    entry.parent.mkdir(parents=True)
    entry.write_text(kinds.desktop_entry(), encoding="utf-8")
    for icon in icons.glob("*.png"):
        size = f"{icon.stem}x{icon.stem}"
        place(icon, share / f"icons/hicolor/{size}/apps/pluckwright.png")
    drawing = PACKING.parents[1] / "resources/pictures/icon.svg"
    place(drawing, share / "icons/hicolor/scalable/apps/pluckwright.svg")
    # Debian keeps what may be copied, and how, in one place.
    papers = share / "doc/pluckwright"
    papers.mkdir(parents=True)
    for name in ("licences", "bill-of-materials.cdx.json"):
        (root / "usr/lib/pluckwright" / name).rename(papers / name)
    (papers / "copyright").write_text(
        "Pluckwright is packed together with the libraries listed, with their licences, in\n"
        "bill-of-materials.cdx.json; the texts of the licences are in the folder licences.\n",
        encoding="utf-8",
    )


def settle(root: Path, moment: int) -> int:
    """Rights and dates that do not depend on who builds; the kilobytes of all files."""
    size = 0
    for path in sorted(root.rglob("*"), reverse=True):
        if path.is_symlink():
            os.utime(path, (moment, moment), follow_symlinks=False)
            continue
        runs = path.is_dir() or path.stat().st_mode & 0o100
        path.chmod(0o755 if runs else 0o644)
        os.utime(path, (moment, moment))
        size += 0 if path.is_dir() else path.stat().st_size
    return -(-size // 1024)


def main(folder: Path, icons: Path, out: Path) -> Path:
    """Build the package; where it lies."""
    version, moment = os.environ["PLUCKWRIGHT_VERSION"], int(os.environ["SOURCE_DATE_EPOCH"])
    root = icons.parent / "debian"
    lay_out(folder, icons, root)
    changes = root / "usr/share/doc/pluckwright/changelog.gz"
    with changes.open("wb") as raw, gzip.GzipFile("", "wb", fileobj=raw, mtime=moment) as packed:
        packed.write(f"pluckwright {version}\n".encode())
    kilobytes = settle(root, moment)
    ask = ["dpkg", "--print-architecture"]
    architecture = subprocess.check_output(ask, text=True).strip()
    (root / "DEBIAN").mkdir(mode=0o755)
    (root / "DEBIAN/control").write_text(control(version, architecture, kilobytes), "utf-8")
    settle(root, moment)
    package = out / f"pluckwright_{version}_{architecture}.deb"
    subprocess.run(
        ["dpkg-deb", "--root-owner-group", "-Zzstd", "--build", str(root), str(package)], check=True
    )
    return package


if __name__ == "__main__":
    print(main(*(Path(word).resolve() for word in sys.argv[1:4])))
