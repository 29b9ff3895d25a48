"""Bad usage is one line and status 2; every command has its help."""

import pytest

from generator.cli import arguments

COMMANDS = ("serve", "test", "build", "write", "check", "explain", "new", "ids", "compute", "plan", "lock")


@pytest.mark.parametrize(
    ("words", "complaint"),
    [
        (["serve", "--port", "0"], "0 is not a port; take a whole number from 1 to 65535"),
        (["serve", "--port", "web"], "web is not a port"),
        (["write"], "the following arguments are required: DIR"),
        (["compute", "vine_density"], "one of the arguments --input --describe --list is required"),
        (["compute", "--list", "--describe"], "not allowed with argument"),
        (["check", "--", "-k", "name"], "only `test` passes on what follows --, not `check`"),
    ],
)
def test_bad_usage_is_one_line(capsys, words, complaint):
    """The line says what is wrong and how to see what is right."""
    with pytest.raises(SystemExit) as left:
        arguments.read(words)
    told = capsys.readouterr().err
    assert left.value.code == 2
    assert complaint in told and "--help` shows what it takes" in told
    assert len(told.splitlines()) == 1


def test_no_command_shows_them_all(capsys):
    """A person who does not know the words gets them."""
    with pytest.raises(SystemExit) as left:
        arguments.read([])
    told = capsys.readouterr().err
    assert left.value.code == 2
    assert all(f"    {name} " in told for name in COMMANDS)


def test_what_follows_the_dashes_goes_to_pytest():
    """Even what looks like an option of ours."""
    options = arguments.read(["test", "--no-browser", "--", "-k", "engine", "--deep"])
    assert options.extra == ["-k", "engine", "--deep"]
    assert (options.no_browser, options.deep) == (True, False)


def test_an_edition_that_is_not_there_is_said(command):
    """One line, status 2."""
    done = command("check", "--edition", "no/such/folder")
    assert done.returncode == 2
    assert done.stderr == "error: --edition: there is no folder no/such/folder. Give the folder that holds edition.yml.\n"
