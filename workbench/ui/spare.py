"""Spare references for the constants that Qt's Python bindings use up."""

from __future__ import annotations

import ctypes
import sys

from workbench.engraving.app import keep_none_alive

_SPARE = 1 << 40


def spare_references() -> None:
    """Give None, True and False references to spare, once.

    PySide6 6.12 under Python before 3.12 drops a reference to True with every
    signal emitted, and one to None with every call that returns nothing; when
    they are used up the interpreter aborts. From 3.12 on they cannot be freed.
    """
    keep_none_alive()
    if sys.version_info < (3, 12):
        for constant in (True, False):
            if sys.getrefcount(constant) < _SPARE:
                ctypes.c_ssize_t.from_address(id(constant)).value += _SPARE
