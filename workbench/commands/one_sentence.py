"""Errors in one sentence: what the user can mend, and what is a fault of ours."""

from __future__ import annotations

import errno
import tempfile
from pathlib import Path

from workbench.language.speech import mark, say
from workbench.music.files import write_private
from workbench.store.fault_text import fault_text
from workbench.store.location import log_folder

#: Errors of files and disks that the user can mend, and how.
_ADVICE: dict[int, str] = {
    errno.ENOENT: mark("is not there; check the name and the folder"),
    errno.EACCES: mark("may not be read or written; choose another place or change its rights"),
    errno.EPERM: mark("may not be read or written; choose another place or change its rights"),
    errno.EISDIR: mark("is a folder; name a file"),
    errno.ENOTDIR: mark("lies under something that is no folder; choose another place"),
    errno.EEXIST: mark("is in the way; choose another name"),
    errno.ENOTEMPTY: mark("is a folder that is not empty; choose another name"),
    errno.ENOSPC: mark("cannot be written, for the disk is full; make room or choose another disk"),
    errno.EFBIG: mark("cannot be written, for the system sets a limit to the size of files"),
    errno.EROFS: mark("lies on a disk that may only be read; choose another place"),
    errno.ENAMETOOLONG: mark("is too long a name; choose a shorter one"),
    errno.EIO: mark("cannot be read or written, for the disk reports an error; try another disk"),
}
if hasattr(errno, "EDQUOT"):
    _ADVICE[errno.EDQUOT] = _ADVICE[errno.ENOSPC]


def file_sentence(fault: OSError) -> str | None:
    """What to tell the user of a file or disk error; None where it is a fault of ours."""
    advice = _ADVICE.get(fault.errno or 0)
    if advice is None:
        return None
    return f"{fault.filename2 or fault.filename or say('The file')} {say(advice)}."


def library_sentence(fault: ImportError) -> str | None:
    """What to tell the user of a missing system library; None for any other import error."""
    if isinstance(fault, ModuleNotFoundError):
        return None
    if ".so" not in str(fault) and "DLL" not in str(fault):
        return None
    return say(
        "A system library is missing ({fault}); run python3 installer/start.py, which names "
        "the packages to install.",
        fault=fault,
    )


def fault_sentence(fault: BaseException) -> str:
    """Write the traceback to a log file; one sentence that says where it is."""
    text = fault_text(fault)
    report = say("please report it")
    for folder in (log_folder(), Path(tempfile.gettempdir())):
        log = folder / "fault.log"
        try:
            folder.mkdir(parents=True, exist_ok=True)
            write_private(log, text.encode("utf-8", "backslashreplace"))
        except OSError:
            continue
        report = say("please report it with the file {log}", log=log)
        break
    what = f"{type(fault).__name__}: {fault}" if str(fault) else type(fault).__name__
    return say(
        "This is a fault of ours ({what}); {report}.", what=" ".join(what.split()), report=report
    )
