"""Plays the open lesson and tells what is heard: the player behind the window's controls."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import asdict, replace
from fractions import Fraction
from typing import TYPE_CHECKING, TypedDict, Unpack

from PySide6.QtCore import QObject, Qt, QTimer, Signal

from workbench.fingering.types import Fingering
from workbench.instrument.model import A4_HIGHEST, A4_HZ, A4_LOWEST
from workbench.language.speech import say
from workbench.music.errors import BadInput
from workbench.music.model import Piece
from workbench.sound.hearing import Heard, HeardVersion, Manner, Trainer
from workbench.store.setting_names import PLAYER
from workbench.ui.player.spans import SPANS, Span, span_of

if TYPE_CHECKING:
    from workbench.sound.bank import Bank
    from workbench.sound.player import Player
    from workbench.sound.programme import Programme
    from workbench.ui.bench.session import Session

TICK = 15  # milliseconds between two looks at the device's clock


def opened_player() -> Player:
    """The player on this computer's sound device."""
    from workbench.sound.player import Player

    return Player()


class MannerChange(TypedDict, total=False):
    """Fields of a ``Manner`` to be changed."""

    tempo: float
    loop: bool
    count_in: bool
    metronome: bool
    who: str
    alone: bool
    trainer: Trainer | None


class Conductor(QObject):
    """What the window plays, and how. All signals come on the interface thread."""

    heard = Signal(object)  # Heard: what sounds now has changed
    state = Signal(bool)  # playing or not
    changed = Signal()  # the manner, the span's name or A4

    def __init__(self, session: Session, opened: Callable[[], Player] = opened_player) -> None:
        super().__init__(session)
        self.session = session
        self.opened = opened
        self._player: Player | None = None
        self._programme: Programme | None = None
        self._banks: dict[object, Bank] = {}
        self._last: Heard | None = None
        self._shown = True  # what plays is the lesson's own music
        self.manner = Manner()
        self.trainer = Trainer(60.0)
        self.span = SPANS[4]
        self.a4 = A4_HZ
        self.rows: Callable[[], tuple[int, ...]] = tuple
        self._recall()
        self._tick = QTimer(self)
        self._tick.setTimerType(Qt.TimerType.PreciseTimer)
        self._tick.setInterval(TICK)
        self._tick.timeout.connect(self._look)
        session.opened.connect(self.stop)
        session.fingers.fingered.connect(self._warm)

    # How it is played.

    def set_manner(self, **which: Unpack[MannerChange]) -> None:
        """Change the manner; what plays changes with the next round, tempo and voices now."""
        self.manner = replace(self.manner, **which)
        self._keep()
        if self.playing and self._programme is not None:
            self._programme.manner = replace(
                self.manner, count_in=False, loop=self._programme.manner.loop
                if "loop" not in which else self.manner.loop,
            )  # fmt: skip
            self._again()
        self.changed.emit()

    def set_trainer(self, trainer: Trainer, on: bool) -> None:
        """How the tempo climbs, and whether it does."""
        self.trainer = trainer
        self.set_manner(trainer=trainer if on else None, loop=on or self.manner.loop)

    def set_span(self, which: str) -> None:
        """What is played next, one of ``SPANS``."""
        self.span = which
        self._keep()
        self.changed.emit()

    def set_a4(self, hertz: float) -> None:
        """The pitch of A4."""
        self.a4 = max(A4_LOWEST, min(A4_HIGHEST, hertz))
        self._banks.clear()
        self._keep()
        self.changed.emit()

    def _keep(self) -> None:
        kept = {
            "tempo": self.manner.tempo, "loop": self.manner.loop, "a4": self.a4,
            "count_in": self.manner.count_in, "metronome": self.manner.metronome,
            "span": self.span, "trainer": asdict(self.trainer),
        }  # fmt: skip
        self.session.guard(lambda: self.session.shelf.set_setting(PLAYER, kept))

    def _recall(self) -> None:
        try:
            kept = self.session.shelf.setting(PLAYER, {}) or {}
            self.manner = Manner(
                tempo=min(150.0, max(25.0, float(kept.get("tempo", 100.0)))),
                loop=bool(kept.get("loop", False)), count_in=bool(kept.get("count_in", False)),
                metronome=bool(kept.get("metronome", False)),
            )  # fmt: skip
            self.trainer = Trainer(**kept.get("trainer", {"start": 60.0}))
            self.a4 = float(kept.get("a4", A4_HZ))
            self.span = next((s for s in SPANS if s == kept.get("span")), SPANS[4])
        except (BadInput, TypeError, ValueError):
            pass  # what cannot be read is as at the first start

    # Playing.

    @property
    def playing(self) -> bool:
        return self._player is not None and self._player.playing

    @property
    def against_original(self) -> bool:
        """Whether the music is compared with other notes than its own."""
        programme = self._programme
        other = programme.against if programme is not None else None
        return other is not None and programme is not None and other.piece is not programme.piece

    def toggle(self) -> None:
        """Stop what plays, or play the chosen span."""
        if self.playing:
            self.stop()
        else:
            self.play(self.span)

    def play(self, which: str, against: HeardVersion | None = None) -> None:
        """Play a span of the open lesson, one of ``SPANS``; with another version of it, both
        in turn."""
        if self.session.lesson is not None and self.session.selection.order:
            span = span_of(self.session, which, tuple(self.rows()))
            self.start(self.programme(span, self.manner, against))

    def play_bars(self, bars: tuple[int, ...], manner: Manner) -> None:
        """Play written bars in a manner of their own, as a plan's item asks."""
        lesson = self.session.lesson
        if lesson is not None and bars:
            at = self.session.selection.position_of(bars[0])
            self.start(self._of(lesson.piece, self.session.fingers.fingering, bars, at, manner))

    def programme(
        self, span: Span, manner: Manner, against: HeardVersion | None = None
    ) -> Programme:
        """A span of the open lesson as a programme."""
        session = self.session
        assert session.lesson
        order = session.selection.order[span.first : span.last + 1]
        made = self._of(session.lesson.piece, session.fingers.fingering, order, span.first, manner)
        made.onset, made.against = span.onset, against
        return made

    def _of(
        self, piece: Piece, fingering: Fingering | None, order: tuple[int, ...], position: int,
        manner: Manner,
    ) -> Programme:  # fmt: skip
        from workbench.sound.programme import Programme

        return Programme(
            piece, fingering, self.session.instrument, order, manner, position, bank=self.bank()
        )

    def bank(self) -> Bank:
        """The sounds of the lesson's instrument, kept from one time to the next."""
        from workbench.sound.bank import Bank

        instrument = self.session.instrument
        key = (instrument, self.a4)
        if key not in self._banks:
            self._banks = {key: Bank(instrument, self.a4)}
        return self._banks[key]

    def start(self, programme: Programme) -> None:
        """Play a programme now; one sentence where that cannot be."""
        try:
            player = self._player or self.opened()
            self._player = player
            player.play(programme)
        except BadInput as wrong:
            self._programme = None
            self.session.failed.emit(" ".join(str(wrong).split()))
            self.state.emit(False)
            return
        lesson = self.session.lesson
        self._shown = lesson is not None and programme.piece is lesson.piece
        self._programme = programme
        self._tick.start()
        self.state.emit(True)

    def _again(self) -> None:
        """Go on at once where it is, in the manner that was changed."""
        player, programme = self._player, self._programme
        if player is None or programme is None:
            return
        now = player.heard()
        at = now.position - programme.position
        if not 0 <= at < len(programme.order) or programme.manner.trainer is not None:
            player.change(programme)
            return
        length = programme.piece.bars[now.bar].length
        rest = replace(
            programme, order=programme.order[at:], position=now.position,
            onset=Fraction(now.share * float(length)).limit_denominator(960), against=None,
            manner=replace(programme.manner, loop=False),
        )  # fmt: skip
        player.play(rest)
        if programme.manner.loop:
            player.change(programme)

    def stop(self) -> None:
        """Silence."""
        if self._player is not None and self._programme is not None:
            self._player.stop()
            self._over()

    def _over(self) -> None:
        self._programme = self._last = None
        self.state.emit(False)

    def close(self) -> None:
        """Silence, and the sound device is let go."""
        self._tick.stop()
        if self._player is not None:
            self._player.close()
            self._player = None

    def _look(self) -> None:
        """Tell what is heard where that has changed; rest when all is over."""
        player = self._player
        if player is None:
            return
        fault = player.fault()
        if fault is not None:
            self.session.report(fault)
        now = player.heard()
        if now != self._last and self._programme is not None:
            self._last = now
            self.heard.emit(now if self._shown else replace(now, position=-1, bar=-1))
        if not player.transport.playing and not now.playing:
            player.rest()
            if not player.transport.ringing:
                self._tick.stop()
            if self._programme is not None:
                self._over()

    def _warm(self) -> None:
        """Make the first sounds of the lesson before anybody asks for them."""
        session = self.session
        if session.lesson is None or not session.selection.order:
            return
        programme = self.programme(span_of(session, SPANS[0]), Manner())

        def work(_progress: object) -> None:
            first = next(programme.rounds())
            for _ in range(8):
                if not first.mix.prepare(0, 44_100):
                    return

        session.jobs.start("sound", say("Tuning up"), work, lambda _: None, lane="sound")
