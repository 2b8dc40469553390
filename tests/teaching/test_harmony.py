from fractions import Fraction as F

import pytest

from tests.fingering.build import piece as written
from tests.teaching.hand_made import bar, build, n
from workbench.language.message import SymbolName, message
from workbench.music.model import ChordName, Key
from workbench.teaching.bars.form_words import ChordRow, chord_rows, form_and_harmony, relation
from workbench.teaching.bars.harmony import cadences, chords, key_heard, key_on, section_keys, tonic


def block(*names, length=4, onset=0):
    return [n(name, length, onset) for name in names]


def test_a_broken_chord_is_one_chord_with_its_inversion_and_grip():
    row = bar(n("C4", string=3), n("E4", string=2), n("A4", string=1), n("E4", string=2))
    piece, fingering = build(row)
    found = chords(piece, fingering, 4)
    assert [(c.label.name, c.onset, c.duration, c.grip) for c in found] == [
        ("Am/C", 0, 4, "x-0-0-0")
    ]
    assert str(found[0].words) == "Am/C, first inversion"


def test_two_chords_in_a_bar_are_two():
    row = bar(*block("C4", "E4", "G4", length=2), *block("D4", "G4", "B4", length=2, onset=2))
    piece, _ = build(row)
    assert [(c.label.name, c.onset) for c in chords(piece)] == [("C", 0), ("G/D", 2)]


def test_passing_notes_do_not_colour_the_chord():
    row = bar(n("C4", 4, 0), n("E4", 1, 0), n("F4", F(1, 2), F(3, 2)), n("G4", 2, 2))
    assert [c.label.name for c in chords(build(row)[0])] == ["C"]


def test_a_single_line_of_two_notes_makes_no_chord():
    assert chords(build(bar(n("C4", 2), n("D4", 2)))[0]) == ()


def test_a_note_tied_over_the_bar_line_counts_in_the_next_chord():
    piece, _ = build(bar(n("C4", 8, 0)), bar(*block("E4", "G4")))
    assert [(c.bar, c.label.name) for c in chords(piece)] == [(1, "C")]


def minor_piece():
    f_major = [
        bar(*block("F4", "A4", "C5"), section="A"),
        bar(*block("C4", "E4", "G4", "A#4")),
        bar(*block("F4", "A4", "C5")),
    ]
    d_minor = [
        bar(*block("D4", "F4", "A4"), section="B"),
        bar(*block("C#4", "E4", "G4", "A4")),
        bar(*block("D4", "F4", "A4")),
    ]
    return build(*f_major, *d_minor, key=Key(-1))[0]


def test_sections_have_keys_and_closes():
    piece = minor_piece()
    assert [(k.section.letter, k.key.name, k.written) for k in section_keys(piece)] == [
        ("A", "F major", True),
        ("B", "D minor", False),
    ]
    assert [(c.section.letter, c.kind) for c in cadences(piece)] == [
        ("A", "full close"),
        ("B", "full close"),
    ]


def test_form_and_harmony_in_words():
    said = form_and_harmony(minor_piece())
    assert said[0].startswith("Form: A")
    assert said[1].startswith("Section A (bars 1–3) is in F major, and ends with a full close (C7")
    assert "is in D minor, the relative minor of F major" in said[2]


def test_half_plagal_and_interrupted_closes():
    def close(*last):
        # enough of C major before it that the key is not in doubt
        rows = [block("C4", "E4", "G4"), block("C4", "F4", "A4"), block("C4", "E4", "G4")]
        piece, _ = build(*(bar(*r) for r in (*rows, *last)))
        return [c.kind for c in cadences(piece)]

    assert close(block("C4", "E4", "G4"), block("D4", "G4", "B4")) == ["half close"]
    assert close(block("C4", "F4", "A4"), block("C4", "E4", "G4")) == ["plagal close"]
    assert close(block("D4", "G4", "B4"), block("C4", "E4", "A4")) == ["interrupted close"]


def test_chords_bar_by_bar():
    row = bar(*block("C4", "E4", "G4", length=2), *block("D4", "G4", "B4", length=2, onset=2))
    assert chord_rows(*build(row), 4) == (
        ChordRow(0, "1", SymbolName("C"), "", "0-0-0-x"),
        ChordRow(0, "3", SymbolName("G/D"), message("second inversion"), "0-2-x-2"),
    )


def test_printed_chord_names_stand_beside_what_sounds():
    names = (ChordName(F(0), "C"), ChordName(F(2), "G7"))
    rows = chord_rows(build(bar(*block("C4", "E4", "G4"), chords=names))[0])
    assert [(r.beat, r.printed, str(r.name)) for r in rows] == [("1", "C", "C"), ("3", "G7", "")]
    plain = chord_rows(build(bar(n("C4", 4)))[0])
    assert plain == ()


def test_relative_keys_and_the_chords_met_most():
    said = form_and_harmony(minor_piece())
    assert "The chords met most: Dm, F, A7, C7." in said
    # F major and D minor have one flat: common practice
    assert said[-1] == "Relative keys: F major and D minor have the same signature, 1 flat."


@pytest.mark.parametrize(
    ("key", "home", "words"),
    [
        (Key(-1, "minor"), Key(-1), "the relative minor"),  # D minor, F major: common practice
        (Key(-1), Key(-1, "minor"), "the relative major"),
        (Key(-3, "minor"), Key(0), "the parallel minor"),
        (Key(1), Key(0), "the dominant"),
        (Key(-1), Key(0), "the subdominant"),
        (Key(1, "minor"), Key(0), "the relative minor of the dominant"),
        (Key(0), Key(0), "the same key"),
        (Key(6), Key(0), ""),
    ],
)
def test_relations_of_keys(key, home, words):
    assert relation(key, home) == words


def test_keys_on_every_note_have_the_right_tonic():
    for pc in range(12):
        for mode in ("major", "minor"):
            key = key_on(pc, mode)
            assert tonic(key) == pc and abs(key.fifths) <= 6
    assert key_on(9, "minor").name == "A minor" and key_on(5, "major").name == "F major"


def test_without_notes_there_is_no_key():
    assert key_heard([]) is None


def test_keys_agree_with_music21_on_its_corpus():
    # music21's own Krumhansl-Kessler analysis, on chorales in its package
    from music21 import corpus

    from workbench.music.model import Note, Pitch

    agreed = []
    for name in ("bach/bwv66.6", "bach/bwv1.6", "bach/bwv10.7", "bach/bwv101.7", "bach/bwv102.7"):
        score = corpus.parse(name)
        theirs = score.analyze("key.krumhanslkessler")
        heard = [
            Note("x", F(0), F(item.quarterLength), Pitch("C", p.midi - 60, 4))
            for item in score.flatten().notes
            for p in item.pitches
        ]
        found = key_heard(heard)
        assert found is not None
        agreed.append((tonic(found[0]), found[0].mode) == (theirs.tonic.pitchClass, theirs.mode))
    assert sum(agreed) == len(agreed)


@pytest.mark.slow
def test_chord_roots_agree_with_music21_on_chorales():
    # music21's own roots of plain triads and sevenths, beat by beat, on Bach chorales in
    # its package; agreement is on the root, since the names follow other customs
    from music21 import corpus

    from workbench.fingering.shapes.chordname import name_chord
    from workbench.teaching.bars.harmony import PLAIN, root_class

    same = every = 0
    for path in corpus.getComposer("bach")[:30]:
        for chord in corpus.parse(path).chordify().flatten().getElementsByClass("Chord"):
            if not (chord.isTriad() or chord.isSeventh()):
                continue
            label = name_chord(p.midi for p in chord.pitches)
            if label.symbol not in PLAIN or label.inversion is None:
                continue
            every += 1
            same += root_class(label) == chord.root().pitchClass
    assert every > 1000
    assert same / every > 0.95, f"{same} of {every} roots agree"


def chord_names_of(*bars, key=None):
    marks = {at: {"key": key or Key(0)} for at in range(len(bars))}
    return [c.label.name for c in chords(written(*bars, marks=marks))]


def test_names_follow_the_key_and_the_score():
    """The same keys of a keyboard, spelled as the key says."""
    assert chord_names_of("D#4+F#4+A#4:4", key=Key(4)) == ["D#m"]
    assert chord_names_of("Eb4+Gb4+Bb4:4", key=Key(-3)) == ["Ebm"]
    assert chord_names_of("Cb4+Eb4+Gb4:4", key=Key(1)) == ["B"], "no C flat in G major"
    assert chord_names_of("Cb4+Eb4+Gb4:4", key=Key(-6)) == ["Cb"], "in G flat major it is one"


def test_a_bass_that_moves_on_names_no_chord():
    assert chord_names_of("E4+G4+C5:4|C3:2 G2:2") == ["C"], "the fifth comes later"
    assert chord_names_of("E4+G4+C5:4|E3:2 C3:2") == ["C"], "the root lies lowest of all"
    assert chord_names_of("G4+C5:4|E3:4") == ["C/E"]


def test_the_last_chord_is_named_with_a_note_missing():
    first = "G3+B3+D4+F4:4"
    assert chord_names_of(first, "C3+E4:4") == ["G7", "C"]
    assert chord_names_of(first, "C3+G3:4") == ["G7", "C5"]
    assert chord_names_of(first, "C3+C4:4") == ["G7", "C"]
    assert chord_names_of(first, "B3:1 D4:1 C3+E4:2")[-1] == "C"
    assert chord_names_of(first, "F4:4") == ["G7"], "a single note is no chord"


def test_a_printed_symbol_sounded_is_named_as_it_is_printed():
    """Outside check: the chord symbols of the lead sheets in music21's corpus, sounded by
    music21; the name of the sound is the symbol."""
    from music21 import corpus, harmony

    from workbench.fingering.shapes.chordname import name_chord

    met, same = 0, []
    for sheet in ("leadSheet/fosterBrownHair", "leadSheet/berlinAlexandersRagtime"):
        for symbol in corpus.parse(sheet).recurse().getElementsByClass(harmony.ChordSymbol):
            pitches = symbol.pitches
            if len({p.pitchClass for p in pitches}) < 3:
                continue
            names = {p.pitchClass: p.name.replace("-", "b") for p in pitches}
            found = name_chord((p.midi for p in pitches), names=names)
            met += 1
            root = symbol.root().name.replace("-", "b")
            third = "m" if symbol.third and symbol.semitonesFromChordStep(3) == 3 else ""
            same.append(found.root == root and found.symbol.startswith(("m", "dim")) == bool(third)
                        and found.symbol.endswith("7") == bool(symbol.seventh))  # fmt: skip
    assert met > 40
    print(f"{sum(same)} of {met} symbols")
    assert all(same)
