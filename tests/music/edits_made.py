"""What a sound piece is, and random edits to hold the edits to it."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from hypothesis import strategies as st

from workbench.music.edits import bars, fresh, lengths, meters, notes, signs
from workbench.music.edits.lengths import VALUES, Length
from workbench.music.edits.line import rows_of
from workbench.music.model import Key, Pitch
from workbench.music.order.form import playing_order

F = Fraction
QUARTER, HALF, EIGHTH = Length(), Length(F(2)), Length(F(1, 2))


def faults(piece):
    """Everything that is not in order in a piece; nothing in a sound one."""
    out = []
    if [b.index for b in piece.bars] != list(range(len(piece.bars))) or not piece.bars:
        out.append("bars are not counted through")
    ids = [n.id for n in piece.notes]
    if len(ids) != len(set(ids)):
        out.append("two notes have one id")
    for bar in piece.bars:
        if bar.length <= 0 or bar.length > F(4 * bar.time_signature[0], bar.time_signature[1]):
            out.append(f"bar {bar.index} lasts {bar.length}")
        if bar.pickup and bar.length >= F(4 * bar.time_signature[0], bar.time_signature[1]):
            out.append(f"the pickup {bar.index} is a whole bar")
        for n in bar.notes:
            if not 0 <= n.onset < bar.length or (n.duration <= 0) != n.grace:
                out.append(f"{n.id} stands at {n.onset} for {n.duration}")
        if any(not 0 <= c.onset < bar.length or not c.text for c in bar.chords):
            out.append(f"a chord name lies outside bar {bar.index}")
        if list(bar.notes) != sorted(bar.notes, key=lambda n: (n.onset, n.voice)):
            out.append(f"bar {bar.index} is not in time")
    end = piece.starts[-1] + piece.bars[-1].length
    line = [r for r in rows_of(piece) if not r[1].grace]
    for voice in {n.voice for _, n in line}:
        mine = sorted((r for r in line if r[1].voice == voice), key=lambda r: (r[0], r[1].id))
        for (at, one), (later, other) in pairwise(mine):
            together = at == later and one.duration == other.duration
            if together and any(one.midi == n.midi for s, n in mine if s == at and n.id != one.id):
                out.append(f"{one.id} is struck twice")
            if not together and at + one.duration > later:
                out.append(f"{one.id} and {other.id} overlap in voice {voice}")
        if any(at + n.duration > end for at, n in mine):
            out.append("a note runs past the end")
    for voice in {n.voice for n in piece.notes}:
        open_slurs = 0
        for n in (n for n in piece.notes if n.voice == voice):
            open_slurs += n.slur_start - n.slur_stop
        if open_slurs:
            out.append(f"slurs of voice {voice} are torn")
    playing_order(piece)
    return out


LENGTHS = st.builds(
    Length, st.sampled_from([base for base, _ in VALUES]), st.integers(0, 2), st.booleans()
)
PITCHES = st.builds(
    Pitch, st.sampled_from("CDEFGAB"), st.sampled_from((-1, 0, 0, 0, 1)), st.integers(3, 5)
)
KEYS = st.builds(Key, st.integers(-7, 7), st.sampled_from(("major", "minor")))
METERS = st.sampled_from(((4, 4), (3, 4), (2, 4), (6, 8), (2, 2), (5, 8), (9, 8), (3, 8)))


@st.composite
def edit(draw):
    """One edit as (name, function from piece to piece); it may raise BadInput."""
    share, other = draw(st.floats(0, 0.999)), draw(st.floats(0, 0.999))
    length, pitch, voice = draw(LENGTHS), draw(PITCHES), draw(st.integers(1, 3))
    by, flag, eighth = draw(st.integers(-3, 3)), draw(st.booleans()), draw(st.integers(0, 8))

    def bar(piece, where=share):
        return int(where * len(piece.bars))

    def span(piece):
        return sorted((bar(piece), min(bar(piece) + abs(by), len(piece.bars) - 1)))

    def note(piece):
        every = piece.notes
        return every[int(share * len(every))].id if every else "none"

    def onset(piece):
        size = piece.bars[bar(piece)].length
        return F(eighth, 2) % size if eighth < 8 else F(4)

    meter, key = draw(METERS), draw(KEYS)
    text = draw(st.sampled_from(("", "F7", "Am/C", "N.C.", "Bb", "A")))
    jump = draw(st.sampled_from(signs.JUMPS))
    passes = draw(st.sampled_from(((), (1,), (2,), (1, 2), (3,))))
    write = (
        "write",
        lambda p: notes.write_note(p, bar(p), onset(p), voice, pitch, length, chord=flag),
    )
    every = {
        "rest": lambda p: notes.write_rest(p, bar(p), onset(p), voice, length),
        "pitch": lambda p: notes.set_pitch(p, note(p), pitch),
        "steps": lambda p: notes.move_steps(p, note(p), by),
        "semitones": lambda p: notes.move_semitones(p, note(p), by),
        "octaves": lambda p: notes.move_octaves(p, note(p), by),
        "respell": lambda p: notes.respell(p, note(p)),
        "voice": lambda p: notes.to_voice(p, note(p), voice),
        "delete": lambda p: notes.delete_notes(p, [note(p)]),
        "length": lambda p: lengths.set_length(p, note(p), length),
        "tie": lambda p: lengths.tie(p, note(p)),
        "untie": lambda p: lengths.untie(p, note(p)),
        "insert": lambda p: bars.insert_bars(p, int(share * (len(p.bars) + 1)), 1 + abs(by)).piece,
        "duplicate": lambda p: bars.duplicate_bars(p, *span(p)).piece,
        "delete bars": lambda p: bars.delete_bars(p, *span(p)).piece,
        "time": lambda p: meters.set_time(p, bar(p), meter, alone=flag).piece,
        "key": lambda p: meters.set_key(p, bar(p), key, names=flag),
        "pickup": lambda p: meters.set_pickup(p, onset(p)).piece,
        "repeat": lambda p: signs.set_repeat(p, bar(p), start=flag, end=not flag, times=2 + eighth),
        "endings": lambda p: signs.set_endings(p, *span(p), passes),
        "no endings": lambda p: signs.clear_endings(p, bar(p)),
        "chord": lambda p: signs.set_chord(p, bar(p), onset(p), text),
        "double bar": lambda p: signs.set_double_bar(p, bar(p), flag),
        "jump": lambda p: signs.set_jump(p, bar(p), jump),
        "signs": lambda p: signs.set_signs(p, bar(p, other), segno=flag, fine=not flag,
                                           coda=eighth == 1, to_coda=eighth == 2),
        "tempo": lambda p: signs.set_tempo(p, bar(p), 40 + 10 * eighth),
    }  # fmt: skip
    if draw(st.booleans()):
        return write
    name = draw(st.sampled_from(sorted(every)))
    return name, every[name]


STARTS = st.builds(
    fresh.new_piece,
    st.just("Study"),
    key=KEYS,
    meter=METERS,
    bars=st.integers(1, 6),
    pickup=st.sampled_from((F(0), F(0), F(1, 2), F(1))),
)
