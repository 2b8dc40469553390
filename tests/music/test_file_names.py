"""Names of files made of the words of a lesson."""

from __future__ import annotations

import pytest

from workbench.music.files import MOST_BYTES, readable_name
from workbench.music.suffixes import SCORES, formats


@pytest.mark.parametrize(
    "title, name",
    [
        ("Étude: Allegro / à 3?", "Étude - Allegro - à 3"),
        ('"Menuet"  in\nG', "Menuet in G"),
        ("Waltz in F♯", "Waltz in F sharp"),
        ("Op. 60, No. 6.", "Op. 60, No. 6"),
        ("Калинка", "Калинка"),
        ("a<b>|c*", "ab - c"),
        ("CON", "CON file"),
        ("../../etc", "etc"),
        ("???", ""),
        ("", ""),
    ],
)
def test_odd_signs_become_readable_names(title, name):
    """Signs and names that file systems refuse: Microsoft, "Naming Files, Paths, and
    Namespaces"; from memory."""
    assert readable_name(title) == name


def test_a_long_title_is_cut_at_a_word():
    name = readable_name("Ada", "Rondo über ein altes Lied " * 20)
    assert len(name.encode()) <= MOST_BYTES and name.split()[-1] in "Rondo über ein altes Lied"


def test_the_formats_told_are_those_that_are_read():
    told = formats()
    assert all(told.count(suffix) == 1 for suffix in (".musicxml", ".mxl", ".xml", ".abc"))
    assert all(f"{suffix}," in told or f"{suffix})" in told for suffix in SCORES)
