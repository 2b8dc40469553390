"""The one error that is the user's to mend."""

from __future__ import annotations

from workbench.language.message import Message, message


class BadInput(ValueError):
    """Something the user gave cannot be used.

    ``message`` is one clear sentence: what is wrong, where (file, bar, beat)
    and what to do about it. It is said, by ``str``, where somebody reads it;
    every face of the program prints it as it stands.

        raise BadInput("Bar {bar} cannot be read; mend it.", bar=bar.number)
    """

    def __init__(self, text: str | Message, /, *, sense: str = "", **fields: object) -> None:
        super().__init__(text)
        self.message = text if isinstance(text, Message) else message(text, sense=sense, **fields)

    def __str__(self) -> str:
        return str(self.message)
