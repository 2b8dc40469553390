"""What is kept of a fault tells where it happened, and nobody's name."""

from __future__ import annotations

import pytest
from sqlalchemy.exc import OperationalError

from workbench.commands.one_sentence import fault_sentence
from workbench.music.reading.apart import ReaderFault
from workbench.store.fault_text import fault_text
from workbench.store.location import log_folder

READER = "Traceback:\n  File \"reader.py\", line 3, in read\nValueError: no 'Mara Lind'"


def raised(fault):
    try:
        raise fault
    except BaseException as caught:
        return caught


@pytest.mark.parametrize(
    "fault",
    [
        KeyError("Mara Lind"),
        ValueError("could not convert string to float: 'Mara Lind'"),
        ValueError('invalid literal: "Mara Lind\'s song"'),
        PermissionError(13, "Permission denied", "/lessons/Mara Lind.pdf"),
        RuntimeError("no room for Mara Lind here"),
        ReaderFault(READER),
        OperationalError("SELECT 1 WHERE name = 'Mara Lind'", {}, Exception("near 'Mara Lind'")),
        ExceptionGroup("two", [ValueError("'Mara Lind'"), RuntimeError("Mara Lind")]),
    ],
    ids=lambda fault: type(fault).__name__,
)
def test_no_name_is_kept(fault):
    text = fault_text(raised(fault), ("Mara Lind",))
    assert "Mara" not in text and type(fault).__name__ in text
    assert "test_fault_text.py" in text and "in raised" in text


def test_the_cause_is_kept_without_its_words():
    fault = RuntimeError("the lesson 'Ferry' has no bars")
    fault.__cause__ = raised(KeyError("Mara Lind"))
    text = fault_text(raised(fault))
    assert "Mara" not in text and "Ferry" not in text
    assert "KeyError: '…'" in text and "RuntimeError: the lesson '…' has no bars" in text


def test_what_speaks_of_the_code_is_kept():
    with pytest.raises(AttributeError) as caught:
        None.bars  # noqa: B018
    assert "'NoneType' object has no attribute 'bars'" in fault_text(caught.value)
    assert 'File "reader.py", line 3' in fault_text(raised(ReaderFault(READER)))


def test_the_users_home_is_not_named(monkeypatch, tmp_path):
    monkeypatch.setenv("HOME", str(tmp_path))
    text = fault_text(raised(RuntimeError(f"in {tmp_path}/scores")))
    assert str(tmp_path) not in text and "in ~/scores" in text


def test_the_log_of_the_command_line_carries_no_names():
    fault_sentence(raised(KeyError("Mara Lind")))
    text = (log_folder() / "fault.log").read_text(encoding="utf-8")
    assert "KeyError" in text and "Mara" not in text
