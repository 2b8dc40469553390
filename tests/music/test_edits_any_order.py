"""Any row of edits leaves a sound piece: it can be played, written, read and engraved."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.music.edits_made import STARTS, edit, faults
from tests.music.small_scores import sounded
from workbench.engraving.mei.document import to_mei
from workbench.instrument.table import INSTRUMENTS
from workbench.music.codec import piece_from_dict, piece_to_dict
from workbench.music.errors import BadInput
from workbench.music.order.form import playing_order
from workbench.music.reading.score import read_score
from workbench.music.telling.form import form_in_words
from workbench.music.writing.score import write_musicxml


def carried_out(piece, row):
    """The piece after every edit that can be done; each step is checked."""
    for name, change in row:
        try:
            after = change(piece)
        except BadInput as refused:
            sentence = str(refused)
            assert sentence[0].isupper() and sentence.endswith(".") and "\n" not in sentence
            continue
        assert faults(after) == [], name
        piece = after
    return piece


@settings(max_examples=150, deadline=None)
@given(STARTS, st.lists(edit(), max_size=25))
def test_a_piece_stays_sound(piece, row):
    piece = carried_out(piece, row)
    assert piece_from_dict(piece_to_dict(piece)) == piece
    if len(playing_order(piece)) < 400:
        assert form_in_words(piece)


@settings(max_examples=25, deadline=None)
@given(STARTS, st.lists(edit(), min_size=5, max_size=25))
def test_what_was_written_is_read_back(tmp_path_factory, piece, row):
    piece = carried_out(piece, row)
    if not piece.notes:
        return
    path = tmp_path_factory.mktemp("edits") / "out.musicxml"
    write_musicxml(piece, path)
    again = read_score(path)
    assert sounded(again) == sounded(piece)
    assert [b.chords for b in again.bars] == [b.chords for b in piece.bars]
    assert [b.time_signature for b in again.bars] == [b.time_signature for b in piece.bars]


@settings(max_examples=25, deadline=None)
@given(STARTS, st.lists(edit(), min_size=5, max_size=25))
def test_it_can_be_engraved(piece, row):
    from workbench.engraving.drawing.render import Engraver
    from workbench.engraving.options import MeiOptions

    piece = carried_out(piece, row)
    engraver = _engraver(Engraver)
    flats = engraver.pages(to_mei(piece, None, INSTRUMENTS["ukulele"], MeiOptions()), None)
    shown = {name for flat in flats for name in flat.ids}
    assert {n.id for n in piece.notes} <= shown


_kept: list = []


def _engraver(make):
    pytest.importorskip("verovio")
    if not _kept:
        _kept.append(make())
    return _kept[0]
