"""plan: a block's file in, a plan out, to read or as JSON; a fault of the file is told with its line."""

import json

import pytest

from generator.answers.compute import plan

DEMO = "rules/blocks/demo.yml"


def test_the_json_is_the_plan_to_the_last_digit(command, rulebook):
    """What is printed is what the plan gives, and nothing else is on stdout."""
    done = command("plan", DEMO, "--json")
    assert done.returncode == 0, done.stderr
    assert json.loads(done.stdout) == plan(rulebook, rulebook.blocks["demo"].facts)


def test_the_plan_can_be_read(command, rulebook):
    """It names the block, says every part, and ends with the rules that it rests on."""
    done = command("plan", DEMO)
    parts = plan(rulebook, rulebook.blocks["demo"].facts)["plan"]["parts"]
    flat = " ".join(done.stdout.split())
    assert done.stdout.startswith(rulebook.blocks["demo"].name + "\n")
    assert all(" ".join(part["headline"]["text"].split()) in flat for part in parts)
    assert done.stdout.endswith(f"Rules {rulebook.version}, edition base.\n")


def test_the_facts_alone_are_enough(command, tmp_path):
    """A file need not have a name and a note."""
    (tmp_path / "mine.yml").write_text("row_spacing_m: 2.4\nvine_spacing_m: unknown\n")
    done = command("plan", str(tmp_path / "mine.yml"))
    assert done.returncode == 0, done.stderr
    assert done.stdout.startswith("mine\n")


@pytest.mark.parametrize(
    ("text", "line"),
    [
        ("name: Mine\nfacts:\n  row_spacing_m: wide\n", ":3: row_spacing_m: "),
        ("row_spacing_m: 2.4\nrow_spacng_m: 2.4\n", ":2: row_spacng_m: is not asked here, did you mean row_spacing_m?"),
        ("- 1\n", ":1: There are no facts in this file."),
        ("facts: {row_spacing_m: 2.4\n", ":"),
    ],
)
def test_a_fault_of_the_file_is_told_with_its_line(command, tmp_path, text, line):
    """Nothing is on stdout; status 2; no traceback."""
    file = tmp_path / "mine.yml"
    file.write_text(text)
    done = command("plan", str(file))
    assert (done.returncode, done.stdout) == (2, "")
    assert done.stderr.startswith(f"{file}{line}")
    assert "Traceback" not in done.stderr


def test_a_file_that_is_not_there_is_said(command):
    """In the words of every other problem."""
    done = command("plan", "no-such-file.yml")
    assert done.returncode == 2
    assert done.stderr.startswith("no-such-file.yml:0: The file cannot be read")
