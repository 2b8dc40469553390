from dataclasses import replace
from fractions import Fraction as F

import pytest

from tests.teaching.hand_made import GUITAR, HAND, UKE, bar, build, n
from workbench.language import speech
from workbench.teaching.techniques.news import (
    Move,
    Profile,
    listed,
    moves_of,
    new_in_bars,
    pairs,
    profile,
    seen_before,
    teach_next,
    tune_of,
)

GUIDE = Move("technique", "guide-finger")
SHIFT = Move("technique", "shift")
HOP = Move("technique", "hop")
BARRE = Move("technique", "full-barre")


def made():
    chord = (n("F4", 2, 0, string=2, left=1), n("A#4", 2, 0, string=1, left=1))
    return build(
        bar(n("C5", 2, left=3), n("D5", 2, left=3, move="guide")),
        bar(*chord, n("C5", 2, 2, left=3)),
        bar(n("C5", 2, left=3), n("D5", 2, left=3, move="guide")),
        bar(n("D5", 4, string=1, left=1, move="shift")),
    )


def lesson(name, *moves, grade=1.5, instrument="ukulele"):
    return Profile(name, f"Piece {name}", instrument, grade, tuple(moves))


def test_moves_are_techniques_grips_positions_and_keys():
    found = {(m.move.kind, m.move.name, m.bar) for m in moves_of(*made(), UKE, HAND)}
    assert ("technique", "guide-finger", 0) in found and ("technique", "guide-finger", 2) in found
    assert ("grip", "x-x-1-1", 1) in found
    assert ("position", "I", 0) in found and ("position", "V", 3) in found
    assert ("key", "C major", 0) in found


def test_kinds_of_an_arpeggio_are_moves_of_their_own():
    def arpeggio(*right):
        row = [n("C4", F(1, 2), string=3), n("E4", F(1, 2), string=2), n("A4", 3, string=1)]
        return bar(*(replace(e, right=r) for e, r in zip(row, right, strict=True)))

    piece, fingering = build(arpeggio("p", "i", "m"), arpeggio("i", "m", "a"))
    new = new_in_bars(moves_of(piece, fingering, UKE, HAND))
    assert Move("technique", "arpeggio: p i m") in new[0]
    assert Move("technique", "arpeggio: i m a") in new[1]


def test_what_is_new_is_told_at_its_first_bar_only():
    moves = moves_of(*made(), UKE, HAND)
    new = new_in_bars(moves)
    assert GUIDE in new[0] and 2 not in new
    assert SHIFT in new[3]
    assert GUIDE not in new_in_bars(moves, known=[GUIDE])[0]


def test_each_move_names_the_lesson_that_taught_it_first():
    earlier = [lesson("a", GUIDE), lesson("b", GUIDE, HOP)]
    seen = {
        s.move: s for s in seen_before(moves_of(*made(), UKE, HAND), earlier, [lesson("c", SHIFT)])
    }
    assert seen[GUIDE].taught_in is earlier[0]
    assert str(seen[GUIDE].sentence) == "guide finger: known from 'Piece a'"
    assert seen[SHIFT].taught_in is None and seen[SHIFT].on_shelf == ("Piece c",)
    assert str(seen[SHIFT].sentence) == "shift: new" and seen[SHIFT].bar == 3


def test_teach_next_takes_up_what_was_just_learned_and_adds_little():
    taught = [lesson("a", HOP), lesson("b", HOP, GUIDE)]
    shelf = [
        *taught,
        lesson("reuses", GUIDE, SHIFT),
        lesson("too much", GUIDE, *(Move("grip", str(k)) for k in range(12))),
        lesson("nothing of it", BARRE),
        lesson("too hard", GUIDE, grade=4.5),
        lesson("elsewhere", GUIDE, instrument="guitar"),
    ]
    found = teach_next(shelf, taught)
    assert [s.profile.id for s in found] == ["reuses", "too much"]
    assert found[0].reused == (GUIDE,) and found[0].new == (SHIFT,)
    assert str(found[0].reason) == "Takes up again guide finger; adds shift."
    assert "and 9 more" in str(found[1].reason)
    assert teach_next(shelf, []) == ()


def test_pairs_share_most():
    one = lesson("one", GUIDE, HOP)
    near = lesson("near", GUIDE, HOP, SHIFT)
    far = lesson("far", GUIDE, SHIFT, BARRE)
    other = lesson("other", BARRE)
    found = pairs([far, other, near, one], one)
    assert [p.second.id for p in found] == ["near", "far"]
    assert found[0].shared == (GUIDE, HOP) and found[0].only_second == (SHIFT,)


def test_a_profile_can_be_kept_and_comes_back_the_same():
    import json

    from workbench.music.codec import from_dict, to_dict

    made_of = profile("x", "A piece", 1.5, *made(), UKE, HAND)
    kept = json.loads(json.dumps(to_dict(made_of)))
    assert from_dict(Profile, kept) == made_of
    assert len(set(made_of.moves)) == len(made_of.moves)


@pytest.mark.parametrize(
    ("move", "words"),
    [
        (Move("technique", "arpeggio: p i m"), "arpeggio (p i m)"),
        (Move("position", "V"), "position V"),
        (Move("grip", "2-0-1-0"), "the grip 2-0-1-0"),
        (Move("key", "F major"), "the key of F major"),
    ],
)
def test_moves_in_words(move, words):
    assert str(move.words) == words


def test_techniques_are_named_before_positions_and_grips():
    moves = (Move("grip", "2-0-1-0"), Move("grip", "x-0-1-0"), Move("position", "V"), GUIDE, SHIFT)
    assert str(listed(moves, "")) == "guide finger, shift, position V and 2 more"


def test_a_key_is_named_in_the_language_spoken():
    speech.choose("de")
    try:
        assert str(Move("key", "Bb major").words) == "die Tonart B-Dur"
    finally:
        speech.choose("en")


def test_grips_are_named_over_all_strings():
    e = GUITAR
    piece, fingering = build(
        bar(n("C4", 4, 0, string=2, left=1), n("E3", 4, 0, string=4, left=2)), instrument=e
    )
    names = {m.move.name for m in moves_of(piece, fingering, e, HAND) if m.move.kind == "grip"}
    assert names == {"x-x-2-x-1-x"}


def test_a_piece_that_the_student_has_is_never_proposed():
    """Whether taught later, or copied for somebody else, or moved to another key."""
    tune, _ = build(bar(n("C4", 2), n("E4", 2)), bar(n("D4", 4)))
    higher, _ = build(bar(n("D4", 2), n("F#4", 2)), bar(n("E4", 4)))
    below, _ = build(bar(n("C4", 2), n("E4", 2), n("C4", 4, 0, voice=2)), bar(n("D4", 4)))
    other, _ = build(bar(n("C4", 2), n("D4", 2)), bar(n("D4", 4)))
    assert tune_of(tune) == tune_of(higher) == tune_of(below) != tune_of(other)
    moves = (Move("technique", "arpeggio"), Move("technique", "scale"))

    def row(name, piece):
        return Profile(name, name, "ukulele", 2.0, moves, tune_of(piece))

    here, copy, later, fresh = row("here", tune), row("copy", higher), row("later", other), None
    fresh = Profile("fresh", "fresh", "ukulele", 2.0, moves, "another tune")
    shelf = (copy, later, fresh)
    assert [s.profile.id for s in teach_next(shelf, (here,))] == ["fresh", "later"]
    assert [s.profile.id for s in teach_next(shelf, (here,), has={"later"})] == ["fresh"]
    assert "copy" not in [p.second.id for p in pairs(shelf, here)]
