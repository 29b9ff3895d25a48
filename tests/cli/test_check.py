"""check and explain: every problem in three forms, and the manual page of each check."""

import json

import pytest

from generator.calculators.facts import Maybe
from generator.checks import CHECKS
from generator.checks.calculators import type_words
from generator.cli.check import refusals
from generator.compiler import modules, script


@pytest.fixture
def broken(tmp_path):
    """An edition with one fault: a value without its fields."""
    (tmp_path / "values").mkdir()
    (tmp_path / "edition.yml").write_text("id: broken\nname: Broken\nby: nobody\n")
    (tmp_path / "values/tip_gap_m.yml").write_text("label: The gap\n")
    return str(tmp_path)


def test_sound_rules_are_said_to_be_sound(command, rulebook):
    """With the version that was checked."""
    done = command("check")
    assert done.stdout == f"The rules are sound: no problem found (rules {rulebook.version}, edition base).\n"
    assert done.returncode == 0


def test_problems_are_told_with_file_and_line(command, broken):
    """And counted at the end."""
    done = command("check", "--edition", broken)
    assert done.returncode == 1
    assert "values/tip_gap_m.yml:1: " in done.stdout
    assert "in 1 file." in done.stdout.splitlines()[-1]


def test_problems_are_given_as_json(command, broken):
    """For other programs: nothing else is on stdout."""
    found = json.loads(command("check", "--edition", broken, "--json").stdout)
    assert {problem["path"].split("/")[-1] for problem in found} == {"tip_gap_m.yml"}


def test_problems_are_given_as_annotations(command, broken):
    """For a code host, one line a problem."""
    lines = command("check", "--edition", broken, "--annotations").stdout.splitlines()
    assert lines and all(line.startswith("::error file=") for line in lines)


def test_every_check_has_a_manual_page(command):
    """Without a name, all names with what they hold."""
    listed = command("explain").stdout.splitlines()
    assert [line.split(":")[0] for line in listed] == [check.name for check in CHECKS]


def test_a_manual_page_is_shown(command):
    """More than its first line."""
    name = CHECKS[0].name
    assert len(command("explain", name).stdout.splitlines()) > 1


def test_a_check_that_is_not_there_is_said(command):
    """With the one that was meant."""
    name = CHECKS[0].name
    done = command("explain", name[:-1])
    assert done.returncode == 2
    assert done.stderr == f"error: There is no check {name[:-1]}. Did you mean `{name}`?\n"


def test_what_the_compiler_refuses_is_told_by_the_check(tmp_path, monkeypatch):
    """A calculator that Python runs and a page cannot is no sound one: line, column and what to write."""
    (tmp_path / "roots.py").write_text('"""Roots."""\n\n\ndef roots(x: float) -> float:\n    """One."""\n    return x**0.5\n')
    for part in (modules, script):
        monkeypatch.setattr(part, "CALCULATORS", tmp_path)
    (problem,) = refusals(["roots"])
    assert problem.path.endswith("roots.py") and problem.line == 6 and problem.sentence.startswith("Column ") and problem.next_step


def test_any_type_of_an_input_can_be_named():
    """`float | None`, which a newcomer may write for an optional input, is told and does not stop the check."""
    assert [type_words(Maybe), type_words(float | None)] == ["Maybe", "float | None"]
