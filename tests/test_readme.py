"""The two pages at the top: what they link to is there, and they name the commands that exist."""

import re
from pathlib import Path

import pytest

from generator.cli import arguments

PROJECT = Path(__file__).resolve().parent.parent
PAGES = ("README.md", "DEVELOPERS.md")


@pytest.mark.parametrize("page", PAGES)
def test_every_link_and_picture_is_there(page):
    """A relative link or picture names a file of the project."""
    prose = re.sub(r"^```.*?^```", "", (PROJECT / page).read_text(), flags=re.MULTILINE | re.DOTALL)
    targets = re.findall(r"\]\(([^)#:]+)\)", prose)
    assert targets and [target for target in targets if not (PROJECT / target).is_file()] == []


@pytest.mark.parametrize("page", PAGES)
def test_every_command_is_one(page):
    """`python3 -m generator WORD` names a command, wherever it stands."""
    commands = re.findall(r"python3 -m generator ([a-z]+)", (PROJECT / page).read_text())
    for command in commands:
        with pytest.raises(SystemExit) as left:
            arguments.read([command, "--help"])
        assert left.value.code == 0, command


def test_the_two_commands_come_first():
    """README shows `serve` and `test`, each in a block of its own, before anything else."""
    blocks = re.findall(r"^```console\n(.+?)^```", (PROJECT / "README.md").read_text(), flags=re.MULTILINE | re.DOTALL)
    assert blocks == ["python3 -m generator serve\n", "python3 -m generator test\n"]
