"""What a packed folder is made of: a bill of materials, and the licences of all its parts.

    python installer/packing/contents.py FOLDER

Looks into the packed folder itself, so that nothing is named that is not there and nothing is
there that is not named. Writes FOLDER/bill-of-materials.cdx.json (CycloneDX 1.6) and
FOLDER/licences/PART/... ; ends with status 1 where a part has no licence that can be told.
"""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import UTC, datetime
from importlib.metadata import Distribution, distribution, packages_distributions
from pathlib import Path
from typing import Any
from uuid import NAMESPACE_URL, uuid5

from cyclonedx.contrib.license.factories import LicenseFactory
from cyclonedx.model.bom import Bom
from cyclonedx.model.component import Component, ComponentType
from cyclonedx.output.json import JsonV1Dot6
from cyclonedx.schema import SchemaVersion
from cyclonedx.validation.json import JsonStrictValidator
from packageurl import PackageURL
from PyInstaller.archive.readers import CArchiveReader

RESOURCES = Path(__file__).parents[2] / "resources"
PAPERS = re.compile(r"licen[cs]e|copying|notice|copyright|authors", re.IGNORECASE)
#: Words of licences in metadata that have no name of SPDX's, as their files state them.
_PLAIN = {
    "BSD": "BSD-3-Clause", "MIT License": "MIT", "Apache 2": "Apache-2.0",
    "Apache License 2.0": "Apache-2.0", "BSD License": "BSD-3-Clause", "PSF": "PSF-2.0",
    "GNU Lesser General Public License v3 (LGPLv3)": "LGPL-3.0-only",
}  # fmt: skip


@dataclass
class Part:
    """One thing in the folder: its licence by name, and the files that hold its words."""

    name: str
    version: str
    licence: str
    purl: PackageURL | None = None
    papers: list[Path] = field(default_factory=list)


def licence_of(found: Distribution) -> str:
    """What a distribution's metadata says of its licence; "" where it says nothing."""
    told: Any = found.metadata
    said = (told.get("License-Expression") or "").strip()
    if said:
        return said
    short = (told.get("License") or "").strip()
    if short and "\n" not in short and len(short) < 80:
        return _PLAIN.get(short, short)
    classes = [
        line.split("::")[-1].strip()
        for line in told.get_all("Classifier") or []
        if line.startswith("License ::")
    ]
    return _PLAIN.get(classes[0], classes[0]) if classes else ""


def modules_in(folder: Path) -> set[str]:
    """The top names of all modules in the program's archive and beside it."""
    program = CArchiveReader(str(next(folder.glob("pluckwright*"))))
    names: set[str] = set()
    for name, entry in program.toc.items():
        if entry[-1] == "z":
            names |= {key.split(".")[0] for key in program.open_embedded_archive(name).toc}
    inside = folder / "_internal"
    return names | {path.name.split(".")[0] for path in inside.iterdir()}


def python_parts(folder: Path) -> Iterator[Part]:
    """The distributions whose modules are packed, and what packs and runs them."""
    here = modules_in(folder)
    names = {name for top, owners in packages_distributions().items() if top in here
             for name in owners}  # fmt: skip
    # Its loader is the program that is started.
    for name in sorted({*names, "pyinstaller"} - {"pluckwright"}, key=str.lower):
        found = distribution(name)
        papers = [Path(str(found.locate_file(file))) for file in found.files or []
                  if (PAPERS.search(file.name) or "licenses" in file.parts)
                  and file.suffix not in (".py", ".pyc")]  # fmt: skip
        yield Part(name, found.version, licence_of(found),
                   PackageURL("pypi", None, name.lower().replace("_", "-"), found.version),
                   [path for path in papers if path.is_file()])  # fmt: skip
    version = ".".join(str(number) for number in sys.version_info[:3])
    likely = (
        Path(sys.base_prefix) / "LICENSE.txt",
        Path(os.__file__).parent / "LICENSE.txt",
        Path(f"/usr/share/doc/python3.{sys.version_info[1]}/copyright"),
    )
    yield Part("CPython", version, "PSF-2.0", PackageURL("generic", None, "cpython", version),
               [path for path in likely if path.is_file()][:1])  # fmt: skip


def system_parts(folder: Path) -> Iterator[Part]:
    """The libraries of this system that were packed along, by the package they are from."""
    if shutil.which("dpkg-query") is None:
        return
    packages: list[str] = []
    for path in sorted((folder / "_internal").glob("*.so*")):
        # A link into a wheel's own folder, or a module: both are of a distribution.
        if path.is_symlink() or re.search(r"\.(abi3|cpython-\w+)[.-]|^libpython", path.name):
            continue
        said = subprocess.run(["dpkg-query", "-S", f"*/{path.name}"], capture_output=True,
                              text=True).stdout  # fmt: skip
        owners = sorted(line.split(":")[0] for line in said.splitlines())
        packages.append(owners[0] if owners else path.name)
    for package in dict.fromkeys(packages):
        version = subprocess.run(["dpkg-query", "-W", "-f=${Version}", package],
                                 capture_output=True, text=True).stdout  # fmt: skip
        paper = Path("/usr/share/doc") / package / "copyright"
        text = paper.read_text(encoding="utf-8", errors="replace") if paper.is_file() else ""
        names = sorted(set(re.findall(r"^License: *(\S.*)$", text, re.MULTILINE)))
        licence = "; ".join(names) or ("as its copyright file says" if text else "")
        yield Part(package, version or "unknown", licence,
                   PackageURL("deb", "debian", package, version) if version else None,
                   [paper] if text else [])  # fmt: skip


def own_parts() -> Iterator[Part]:
    """What lies in the program's own resources and is not of this project."""
    yield Part("Noto fonts", "2.x", "OFL-1.1", None, [RESOURCES / "fonts" / "OFL.txt"])


def bill(parts: list[Part], version: str, moment: int) -> Bom:
    """The bill of materials; the same parts give the same bytes."""
    naming = LicenseFactory()
    made = Bom(serial_number=uuid5(NAMESPACE_URL, f"pluckwright-{version}-{moment}"))
    made.metadata.timestamp = datetime.fromtimestamp(moment, UTC)
    made.metadata.component = Component(
        name="pluckwright", version=version, type=ComponentType.APPLICATION, bom_ref="pluckwright"
    )
    for part in parts:
        made.components.add(
            Component(
                name=part.name, version=part.version, type=ComponentType.LIBRARY,
                bom_ref=f"{part.name}@{part.version}", purl=part.purl,
                licenses=[naming.make_from_string(part.licence)] if part.licence else [],
            )
        )  # fmt: skip
    made.register_dependency(made.metadata.component, made.components)
    return made


def main(folder: Path) -> int:
    version, moment = os.environ["PLUCKWRIGHT_VERSION"], int(os.environ["SOURCE_DATE_EPOCH"])
    parts = [*python_parts(folder), *system_parts(folder), *own_parts()]
    licences = folder / "licences"
    shutil.rmtree(licences, ignore_errors=True)
    for part in parts:
        for number, paper in enumerate(part.papers):
            place = licences / part.name / (f"{number}-{paper.name}" if number else paper.name)
            place.parent.mkdir(parents=True, exist_ok=True)
            shutil.copyfile(paper, place)
    text = JsonV1Dot6(bill(parts, version, moment)).output_as_string(indent=1)
    wrong = JsonStrictValidator(SchemaVersion.V1_6).validate_str(text)
    if wrong:
        raise SystemExit(f"The bill of materials is not as its schema says: {wrong}")
    (folder / "bill-of-materials.cdx.json").write_text(text + "\n", encoding="utf-8")
    unnamed = [part.name for part in parts if not part.licence]
    unworded = [part.name for part in parts if not part.papers]
    print(f"{len(parts)} parts; {len(parts) - len(unworded)} with the text of their licence.")
    print("Only the name of the licence: " + (", ".join(unworded) or "none"))
    if unnamed:
        print("No licence told: " + ", ".join(unnamed), file=sys.stderr)
    return 1 if unnamed else 0


if __name__ == "__main__":
    raise SystemExit(main(Path(sys.argv[1]).resolve()))
