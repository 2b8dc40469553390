"""A disk that refuses: a layer between SQLite and the system, for this process only.

SQLite's own way for that, a VFS (https://www.sqlite.org/vfs.html, as of 3.40): a copy of the
system's one whose write, truncate and sync count their calls and refuse from the n-th on, or
only the n-th. Made by ctypes in the library that Python's sqlite3 uses.
"""

from __future__ import annotations

import contextlib
import ctypes
import sqlite3
from collections.abc import Iterator

FULL, WRITE_ERROR, SYNC_ERROR = 13, 10 | 3 << 8, 10 | 4 << 8  # SQLite's result codes

_WORDS = 19  # of sqlite3_io_methods: a number and 18 functions
_WRITE, _TRUNCATE, _SYNC = 3, 4, 5

_Open = ctypes.CFUNCTYPE(
    ctypes.c_int, ctypes.c_void_p, ctypes.c_void_p, ctypes.c_void_p, ctypes.c_int, ctypes.c_void_p
)
_Write = ctypes.CFUNCTYPE(
    ctypes.c_int, ctypes.c_void_p, ctypes.c_void_p, ctypes.c_int, ctypes.c_int64
)
_Truncate = ctypes.CFUNCTYPE(ctypes.c_int, ctypes.c_void_p, ctypes.c_int64)
_Sync = ctypes.CFUNCTYPE(ctypes.c_int, ctypes.c_void_p, ctypes.c_int)


class _Vfs(ctypes.Structure):
    _fields_ = (
        ("iVersion", ctypes.c_int),
        ("szOsFile", ctypes.c_int),
        ("mxPathname", ctypes.c_int),
        ("pNext", ctypes.c_void_p),
        ("zName", ctypes.c_char_p),
        ("pAppData", ctypes.c_void_p),
        ("xOpen", ctypes.c_void_p),
        ("others", ctypes.c_void_p * 15),
    )


def why_not() -> str:
    """Why there can be no such layer here; "" where there can."""
    try:
        library = ctypes.CDLL("libsqlite3.so.0")
    except OSError:
        return "SQLite is built into this Python, where no layer can be put under it"
    library.sqlite3_libversion.restype = ctypes.c_char_p
    if library.sqlite3_libversion().decode() != sqlite3.sqlite_version:
        return "this Python uses another SQLite than the system's"
    return ""


class Disk:
    """Counts what is written, and refuses at will.

    ``refuse_at`` is the number of the first refused call, 0 for none; ``for_ever`` refuses all
    that come after it too. ``syncs`` refuses calls that bring data to the disk, not writes.
    """

    def __init__(self) -> None:
        self.count = self.refused = self.refuse_at = self.code = 0
        self.for_ever = self.syncs = False

    def set(self, refuse_at: int, code: int = FULL, *, for_ever: bool = True) -> None:
        self.count = self.refused = 0
        self.refuse_at, self.code, self.for_ever = refuse_at, code, for_ever
        self.syncs = code == SYNC_ERROR

    def asked(self, sync: bool) -> int:
        if sync != self.syncs:
            return 0
        self.count += 1
        late = self.count > self.refuse_at if self.for_ever else False
        if self.refuse_at and (self.count == self.refuse_at or late):
            self.refused += 1
            return self.code
        return 0


@contextlib.contextmanager
def failing_disk() -> Iterator[Disk]:
    """All stores that this process opens meanwhile lie on that disk."""
    library = ctypes.CDLL("libsqlite3.so.0")
    library.sqlite3_vfs_find.restype = ctypes.POINTER(_Vfs)
    library.sqlite3_vfs_find.argtypes = [ctypes.c_char_p]
    library.sqlite3_vfs_register.argtypes = [ctypes.c_void_p, ctypes.c_int]
    library.sqlite3_vfs_unregister.argtypes = [ctypes.c_void_p]
    system = library.sqlite3_vfs_find(None)
    disk = Disk()
    kept: dict[int, object] = {}  # tables of functions by the address of the system's own

    def table(own: int) -> int:
        if own not in kept:
            words = (ctypes.c_void_p * _WORDS).from_address(own)
            write, truncate = _Write(words[_WRITE]), _Truncate(words[_TRUNCATE])
            sync = _Sync(words[_SYNC])
            ours = (
                _Write(lambda file, data, size, at:
                       disk.asked(False) or write(file, data, size, at)),
                _Truncate(lambda file, size: disk.asked(False) or truncate(file, size)),
                _Sync(lambda file, how: disk.asked(True) or sync(file, how)),
            )  # fmt: skip
            new = (ctypes.c_void_p * _WORDS)(*words)
            for place, function in zip((_WRITE, _TRUNCATE, _SYNC), ours, strict=True):
                new[place] = ctypes.cast(function, ctypes.c_void_p)
            kept[own] = (new, ours, write, truncate, sync)
        return ctypes.addressof(kept[own][0])  # type: ignore[index]

    plain_open = _Open(system.contents.xOpen)

    def open_file(_vfs: int, name: int, file: int, flags: int, told: int) -> int:
        status = plain_open(ctypes.addressof(system.contents), name, file, flags, told)
        methods = ctypes.c_void_p.from_address(file)  # the first word of every open file
        if methods.value:
            methods.value = table(methods.value)
        return status

    layer = _Vfs.from_buffer_copy(system.contents)
    layer.zName, layer.pNext = b"failing", None
    opener = _Open(open_file)
    layer.xOpen = ctypes.cast(opener, ctypes.c_void_p)
    library.sqlite3_vfs_register(ctypes.byref(layer), 1)
    try:
        yield disk
    finally:
        disk.set(0)
        library.sqlite3_vfs_unregister(ctypes.byref(layer))
        library.sqlite3_vfs_register(system, 1)
