"""plan: a block's file in, a plan out, to read or as JSON; a fault of the file is told with its line."""

import json
import os
import subprocess
import sys

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
    assert done.stderr.startswith("no-such-file.yml: The file cannot be read")


def test_parts_are_numbered_as_on_the_page(command, rulebook):
    """One number a stage, 1 to n; the forecast belongs to the node number, so it has no number of its own."""
    done = command("plan", DEMO)
    parts = plan(rulebook, rulebook.blocks["demo"].facts)["plan"]["parts"]
    stages = list(dict.fromkeys(part["stage"] for part in parts))
    wanted = [f"{number}. {rulebook.stages[stage].title}" for number, stage in enumerate(stages, 1)]
    assert [line for line in done.stdout.splitlines() if line in wanted] == wanted
    assert len(wanted) == 5


def test_what_to_mind_stands_before_the_reasons(command):
    """What to do this winter is read at a glance; why comes after it."""
    text = command("plan", DEMO).stdout
    assert text.index("This winter: ") < text.index("The aim: ") < text.index("Spur or cane: ")


def test_what_would_change_it_stands_under_the_system(command, rulebook):
    """After the reasons and before the node number; an open system has none."""
    text = " ".join(command("plan", DEMO).stdout.split())
    heading = text.index("What would change it:")
    assert text.index("3. Choose spur or cane") < heading < text.index("4. Set the node number")
    changes = plan(rulebook, rulebook.blocks["demo"].facts)["would_change"]
    assert all(" ".join(change["text"].split()) in text for change in changes)
    assert "What would change it" not in command("plan", "rules/blocks/much_unknown.yml").stdout


def test_the_plan_ends_with_care_sources_and_the_way_to_the_page(command, rulebook):
    """What every answer shows: cautions, sources by standing, and the link that reproduces it."""
    text = command("plan", DEMO).stdout
    found = plan(rulebook, rulebook.blocks["demo"].facts)
    assert text.index("\nTake care\n") < text.index("\nSources: ") < text.index("\nThe same on the page: plan.html#")
    assert all(f"   - {caution['label']}. " in text for caution in found["cautions"])


@pytest.mark.parametrize("words", [("plan", DEMO, "--json"), ("plan", DEMO), ("compute", "--list")])
def test_a_reader_who_has_enough_causes_no_traceback(project_root, words):
    """Output into a pipe that was closed ends quietly, with the status that a shell gives for it."""
    read_end, write_end = os.pipe()
    os.close(read_end)
    line = [sys.executable, "-m", "generator.cli", *words]
    done = subprocess.run(line, cwd=project_root, stdout=write_end, stderr=subprocess.PIPE, text=True, check=False)
    os.close(write_end)
    assert (done.returncode, done.stderr) == (141, "")
