"""What is asked about a bar while music is written: signatures, tempo, repeats, jumps."""

from __future__ import annotations

from fractions import Fraction

from PySide6.QtWidgets import QInputDialog, QWidget

from workbench.language.names import key_words
from workbench.language.speech import mark, say
from workbench.music.edits import meters, signs
from workbench.music.model import Bar, Key
from workbench.music.parsing.signs import MOST_TIMES
from workbench.ui.bench.session import Session
from workbench.ui.writing.commands import MusicHand
from workbench.ui.writing.correct import Change, correct

#: Time signatures to choose from.
METERS = ("4/4", "3/4", "2/4", "6/8", "3/8", "9/8", "12/8", "2/2", "3/2", "5/4", "7/8")
#: Pickups to choose from, in quarter lengths.
PICKUPS: tuple[tuple[Fraction, str], ...] = (
    (Fraction(0), mark("no pickup")),
    (Fraction(1, 2), mark("eighth note")),
    (Fraction(1), mark("quarter note")),
    (Fraction(3, 2), mark("dotted quarter note")),
    (Fraction(2), mark("half note")),
    (Fraction(3), mark("dotted half note")),
)


def key_names() -> dict[str, Key]:
    """Every key signature by its name, major keys first, the fewest signs first."""
    order = sorted(range(-7, 8), key=lambda fifths: (abs(fifths), -fifths))
    keys = [Key(fifths, mode) for mode in ("major", "minor") for fifths in order]
    return {key_words(key.name): key for key in keys}


class MusicMarks:
    """Asks, and changes the caret's bar. Every answer is one step of the undo history."""

    def __init__(self, session: Session, hand: MusicHand, window: QWidget) -> None:
        self._session, self._hand, self._window = session, hand, window

    @property
    def _bar(self) -> Bar:
        return self._hand.pen.piece.bars[self._hand.pen.caret.bar]

    def _set(self, label: str, change: Change) -> bool:
        return correct(self._session, label, change)

    def _choose(self, title: str, label: str, words: list[str], now: str) -> str | None:
        at = words.index(now) if now in words else 0
        found, agreed = QInputDialog.getItem(self._window, title, label, words, at, False)
        return found if agreed else None

    def key(self) -> None:
        """The key signature from the bar on."""
        names, index = key_names(), self._bar.index
        found = self._choose(
            say("Key signature"),
            say("Key from this bar on"),
            list(names),
            key_words(self._bar.key.name),
        )
        if found is not None:
            self._set(say("Key signature"), lambda p: meters.set_key(p, index, names[found],
                                                                     names=True))  # fmt: skip

    def time(self, alone: bool) -> None:
        """The time signature from the bar on, or of the bar ``alone``."""
        index = self._bar.index
        now = "{}/{}".format(*self._bar.time_signature)
        label = say("Time signature of this bar") if alone else say("Time from this bar on")
        found = self._choose(
            say("Time signature"), label, [*METERS, *(() if now in METERS else (now,))], now
        )
        if found is not None:
            beats, unit = (int(part) for part in found.split("/"))
            self._set(
                say("Time signature"),
                lambda p: meters.set_time(p, index, (beats, unit), alone=alone),
            )

    def pickup(self) -> None:
        """How long the pickup is."""
        first = self._hand.pen.piece.bars[0]
        now = first.length if first.pickup else Fraction(0)
        names = {say(name): length for length, name in PICKUPS}
        shown = next((name for name, length in names.items() if length == now), "")
        found = self._choose(say("Pickup"), say("Pickup before the first bar"), list(names), shown)
        if found is not None:
            self._set(say("Pickup"), lambda p: meters.set_pickup(p, names[found]))

    def tempo(self) -> None:
        """Quarter notes a minute from the bar on; 0 takes the mark away."""
        bar = self._bar
        now = bar.tempo or (self._hand.pen.piece.tempo if bar.index == 0 else 0)
        found, agreed = QInputDialog.getInt(
            self._window, say("Tempo"),
            say("Quarter notes a minute from this bar on; 0 takes the mark away"),
            round(now), 0, signs.FASTEST,
        )  # fmt: skip
        if agreed:
            self._set(say("Tempo"), lambda p: signs.set_tempo(p, bar.index, found or None))

    def times(self) -> None:
        """How often the repeat that ends with the bar is played in all."""
        bar = self._bar
        found, agreed = QInputDialog.getInt(
            self._window, say("Repeat"), say("Played how many times in all"),
            bar.times, 2, MOST_TIMES,
        )  # fmt: skip
        if agreed:
            self._set(
                say("Set a repeat"),
                lambda p: signs.set_repeat(p, bar.index, end=True, times=found),
            )

    def jump(self) -> None:
        """D.C. or D.S. after the bar."""
        bar, none = self._bar, say("none")
        found = self._choose(
            say("Jump"), say("After this bar"), [none, *signs.JUMPS[1:]], bar.jump or none
        )
        if found is not None:
            jump = "" if found == none else found
            self._set(say("Jump"), lambda p: signs.set_jump(p, bar.index, jump))

    def sign(self, name: str) -> None:
        """Put a sign that jumps lead to on the bar, or take it away."""
        bar = self._bar
        on = not getattr(bar, name)
        self._set(say("Jump"), lambda p: signs.set_signs(p, bar.index, **{name: on}))

    def double_bar(self) -> None:
        """End the bar with a double bar line, or with a plain one."""
        bar = self._bar
        self._set(
            say("Double bar line"),
            lambda p: signs.set_double_bar(p, bar.index, not bar.double_bar),
        )

    def titles(self) -> None:
        """Title, composer and arranger, one after the other."""
        piece = self._hand.pen.piece
        given = []
        for label, now in (
            (say("Title"), piece.title), (say("Composer"), piece.composer),
            (say("Arranger"), piece.arranger),
        ):  # fmt: skip
            text, agreed = QInputDialog.getText(self._window, say("Titles"), label, text=now)
            if not agreed:
                return
            given.append(text)
        self._set(say("Titles"), lambda p: signs.set_titles(p, *given))
