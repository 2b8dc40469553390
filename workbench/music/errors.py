"""The one error that is the user's to mend."""

from __future__ import annotations


class BadInput(ValueError):
    """Something the user gave cannot be used.

    The message is one clear sentence: what is wrong, where (file, bar, beat)
    and what to do about it. Every face of the program prints it as it stands.
    """
