import pytest

from tests.teaching.hand_made import GUITAR, UKE
from workbench.music.errors import BadInput
from workbench.teaching.bars.grip_words import grip_from_text, grip_text


@pytest.mark.parametrize(
    ("text", "grip"),
    [
        ("2-0-1-0", (2, 0, 1, 0)),
        ("2 0 1 0", (2, 0, 1, 0)),
        ("2,0,1,0", (2, 0, 1, 0)),
        ("2010", (2, 0, 1, 0)),
        ("x-0-1-X", (None, 0, 1, None)),
        ("x013", (None, 0, 1, 3)),
        ("10-9-8-10", (10, 9, 8, 10)),
    ],
)
def test_grips_are_typed_in_many_ways(text, grip):
    assert grip_from_text(text, UKE) == grip
    assert grip_from_text(grip_text(grip), UKE) == grip


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("2-0-1", "one fret for each of the 4 strings"),
        ("2-0-1-0-0", "one fret for each of the 4 strings"),
        ("2-0-1-y", "'y' is no fret"),
        ("2-0-1-40", "'40' is no fret"),
        ("x-x-x-x", "at least one string"),
        ("", "one fret for each"),
    ],
)
def test_what_is_no_grip_is_refused(text, says):
    with pytest.raises(BadInput, match=says):
        grip_from_text(text, UKE)


def test_the_number_of_strings_is_the_instruments():
    assert grip_from_text("x32010", GUITAR) == (None, 3, 2, 0, 1, 0)
