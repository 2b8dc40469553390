"""A school's store on a real PostgreSQL server, started for the tests alone."""

from __future__ import annotations

import os
import shutil
import socket
import subprocess
import sys
import tempfile
from dataclasses import replace
from pathlib import Path

import pytest

from tests.store.lessons_made import fingering, lesson, piece
from workbench.music.errors import BadInput
from workbench.store.conflict import Conflict
from workbench.store.shelf import Shelf

pytest.importorskip("psycopg", reason="the driver is not installed (pip install psycopg[binary])")


def program(name: str) -> str | None:
    places = [str(path) for path in sorted(Path("/usr/lib/postgresql").glob("*/bin"), reverse=True)]
    return shutil.which(name, path=os.pathsep.join([*places, os.environ.get("PATH", "")]))


@pytest.fixture(scope="module")
def server():
    """A server on a free port of this machine; the URL without a database."""
    init, run = program("initdb"), program("postgres")
    if not init or not run:
        pytest.skip("no PostgreSQL server is installed here")
    folder = Path(tempfile.mkdtemp(prefix="pw-pg-"))
    other = {}
    if hasattr(os, "geteuid") and os.geteuid() == 0:  # the server refuses to be root
        other = {"user": "nobody"}
        shutil.chown(folder, "nobody")
    data = folder / "data"
    made = subprocess.run(
        [init, "-D", data, "-U", "school", "-A", "trust", "--no-sync", "-E", "UTF8"],
        capture_output=True, text=True, cwd=folder, **other,
    )  # fmt: skip
    if made.returncode:
        shutil.rmtree(folder)
        pytest.skip(f"no PostgreSQL server can be set up here: {made.stderr.strip()[-200:]}")
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    running = subprocess.Popen(
        [run, "-D", data, "-p", str(port), "-k", folder, "-h", "127.0.0.1", "-F"],
        stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, cwd=folder, **other,
    )  # fmt: skip
    try:
        yield f"postgresql://school@127.0.0.1:{port}"
    finally:
        running.terminate()
        running.wait(30)
        shutil.rmtree(folder, ignore_errors=True)


def sql(server, statement):
    import psycopg

    for attempt in range(100):
        try:
            with psycopg.connect(f"{server}/postgres", autocommit=True) as connection:
                connection.execute(statement)
                return
        except psycopg.OperationalError:
            if attempt == 99:
                raise
            import time

            time.sleep(0.1)


@pytest.fixture
def url(server, request):
    name = f"lessons_{abs(hash(request.node.name)) % 10**8}"
    sql(server, f"CREATE DATABASE {name}")
    yield f"{server}/{name}"
    sql(server, f"DROP DATABASE {name} WITH (FORCE)")


def test_a_day_at_work(url):
    made = lesson()
    with Shelf(url) as shelf:
        assert shelf.save(made)
        assert shelf.load(made.id) == made
        changed = replace(made, title="Nul \0 and \ud800", piece=piece(shift=2))
        shelf.save(changed, "All")
        assert shelf.load(made.id).piece == changed.piece
        assert shelf.undo(made.id) == made
        assert [row.id for row in shelf.lessons("boat mara")] == [made.id]
        assert not shelf.lessons("barge")
        version = shelf.keep_version(made.id, "v")
        assert shelf.load_version(version.id) == made
        shelf.put_fingering(made, fingering())
        assert shelf.cached_fingering(made) == fingering()
        shelf.set_group("Monday", ["Mara"])
        assert [row.id for row in shelf.lessons(group="Monday")] == [made.id]
        shelf.delete(made.id)
        assert shelf.empty_bin(older_than_days=-1) == 1
        assert shelf.lessons(deleted=True) == ()
    with Shelf(url) as shelf:
        assert shelf.lessons() == ()


def test_two_teachers_lose_nothing_of_each_other(url, monkeypatch):
    made = lesson()
    with Shelf(url) as one:
        monkeypatch.setenv("PLUCKWRIGHT_TEACHER", "berit")
        one.save(made)
        with Shelf(url) as two:
            _, _, base = two.open(made.id)
            one.save(replace(made, capo=1))
            with pytest.raises(Conflict):
                two.save(replace(made, title="Theirs"), base=base)
            assert two.load(made.id).capo == 1


def test_settings_and_language_are_each_teachers_own(url, monkeypatch):
    monkeypatch.setenv("PLUCKWRIGHT_TEACHER", "anna")
    with Shelf(url) as anna:
        anna.set_setting("language", "de")
        monkeypatch.setenv("PLUCKWRIGHT_TEACHER", "berit")
        with Shelf(url) as berit:
            assert berit.setting("language", "en") == "en"
            berit.set_setting("language", "en")
            assert (anna.setting("language"), berit.setting("language")) == ("de", "en")
            berit.set_setting("language", None)
            assert berit.setting("language") is None
            assert anna.settings() == {"language": "de"}


def test_four_that_open_an_empty_database_at_once_all_succeed(url):
    code = (
        "import sys; from workbench.store.shelf import Shelf; sys.stdin.readline()\n"
        "with Shelf(sys.argv[1], wait_seconds=30) as s: s.set_setting(sys.argv[2], 1)"
    )
    running = [
        subprocess.Popen(
            [sys.executable, "-c", code, url, str(n)], stdin=subprocess.PIPE,
            stderr=subprocess.PIPE, text=True,
        )
        for n in range(4)
    ]  # fmt: skip
    for program in running:
        program.stdin.write("go\n")
        program.stdin.flush()
    for program in running:
        _, said = program.communicate(timeout=120)
        assert program.returncode == 0, said
    with Shelf(url) as shelf:
        assert set(shelf.settings()) == {"0", "1", "2", "3"}


def test_a_wait_for_another_writer_has_an_end(url):
    import psycopg

    made = lesson()
    with Shelf(url, wait_seconds=1) as shelf:
        shelf.save(made)
        with psycopg.connect(url) as other:
            other.execute("SELECT * FROM lessons FOR UPDATE")
            with pytest.raises(BadInput, match="being written by another program"):
                shelf.save(replace(made, capo=3))
        shelf.save(replace(made, capo=3))


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (lambda url: url.replace("school@", "nobody_here@"), "does not let this user in"),
        (lambda url: url + "_not_there", "has no database"),
        (lambda url: url.rpartition(":")[0] + ":1/x", "cannot be reached"),
        (lambda url: url.replace("postgresql://", "postgresql+nodriver://"), "driver"),
        (lambda url: url.replace("127.0.0.1", "127.0.0.1:port:port"), "database"),
    ],
)
def test_what_is_wrong_with_the_address_is_said(url, change, said):
    with pytest.raises(BadInput, match=said) as caught:
        Shelf(change(url))
    assert "sqlalche" not in str(caught.value) and "\n" not in str(caught.value)


def test_a_user_who_may_only_look(url, server):
    made = lesson()
    with Shelf(url) as shelf:
        shelf.save(made)
    sql(url.rpartition("/")[0], "DROP ROLE IF EXISTS guest")
    sql(url.rpartition("/")[0], "CREATE ROLE guest LOGIN")
    import psycopg

    with psycopg.connect(url, autocommit=True) as connection:
        connection.execute("GRANT SELECT ON ALL TABLES IN SCHEMA public TO guest")
    with (
        pytest.raises(BadInput, match="only look"),
        Shelf(url.replace("school@", "guest@")) as shelf,
    ):
        shelf.save(replace(made, capo=3))
    with psycopg.connect(url, autocommit=True) as connection:
        connection.execute("DROP OWNED BY guest")
        connection.execute("DROP ROLE guest")
