"""DEVELOPERS.md is followed to the letter on a copy of the project: what it tells a contributor to do works as written."""

import os
import re
import shutil
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

import pytest

PROJECT = Path(__file__).resolve().parent.parent
FENCE = re.compile(r"^```(\w+) ?(.*?)\n(.*?)^```$", re.MULTILINE | re.DOTALL)
COPIED = ("rules", "generator", "docs", "mkdocs.yml", "pyproject.toml", "DEVELOPERS.md", "README.md", "guide.lock", "test.lock")
LONGEST_RECIPE = 10


@dataclass(frozen=True)
class Step:
    """One fenced block: where it goes (`write PATH`, `below "LINE" in PATH`, or nothing for commands) and its text."""

    place: str
    text: str

    def follow(self, project: Path) -> None:
        """Does what the block says; a command that fails is an assertion with its output."""
        if self.place.startswith("write "):
            (project / self.place.removeprefix("write ")).write_text(self.text)
        elif self.place:
            line, path = re.fullmatch(r'below "(.+)" in (\S+)', self.place).groups()
            self._insert(project / path, line)
        else:
            for command in re.findall(r"^\$ (.+)$", self.text, re.MULTILINE):
                self._run(project, command)

    def _insert(self, path: Path, line: str) -> None:
        before, found, after = path.read_text().partition(f"\n{line}\n")
        assert found, f"{path.name} has no line {line}"
        path.write_text(before + found + self.text + after)

    @staticmethod
    def _run(project: Path, command: str) -> None:
        words = command.replace("python3 -m generator ", f"{sys.executable} -m generator.cli ").split()
        done = subprocess.run(words, cwd=project, env=os.environ | {"PYTHONPATH": str(project)}, capture_output=True, text=True)
        assert done.returncode == 0, f"{command}\n{done.stdout}{done.stderr}"


def recipes() -> dict[str, list[Step]]:
    """The recipes of DEVELOPERS.md by title, in order."""
    text = (PROJECT / "DEVELOPERS.md").read_text().split("## Recipes", 1)[1].split("\n## ", 1)[0]
    parts = re.split(r"^### (.+)$", text, flags=re.MULTILINE)[1:]
    return {
        title: [Step(place, body) for language, place, body in FENCE.findall(section)]
        for title, section in zip(parts[::2], parts[1::2], strict=True)
    }


@pytest.fixture(scope="module")
def followed(tmp_path_factory) -> Path:
    """A copy of the project on which every recipe was followed in order."""
    project = tmp_path_factory.mktemp("contributor") / "project"
    project.mkdir()
    for name in COPIED:
        if (PROJECT / name).is_dir():
            # Python writes there while other tests run.
            shutil.copytree(PROJECT / name, project / name, ignore=shutil.ignore_patterns("__pycache__"))
        else:
            shutil.copy(PROJECT / name, project / name)
    for steps in recipes().values():
        for step in steps:
            step.follow(project)
    return project


def test_every_recipe_is_there():
    """A fact, a value, a decision row, evidence, a calculator, a page, a drawing, a page for the hands and a fault each have their recipe."""
    weighing = "Add evidence to a table that weighs"
    plain = ["Add a calculator", "Add a page", "Add a drawing page", "Add a page for the hands", "Add a fault"]
    assert list(recipes()) == ["Add a fact", "Add a value", "Add a decision row", weighing, *plain]


def test_recipes_are_short():
    """A recipe's own words, fenced blocks aside, take at most ten lines."""
    text = (PROJECT / "DEVELOPERS.md").read_text().split("## Recipes", 1)[1].split("\n## ", 1)[0]
    for section in re.split(r"^### ", FENCE.sub("", text), flags=re.MULTILINE)[1:]:
        assert len([line for line in section.splitlines()[1:] if line.strip()]) <= LONGEST_RECIPE


def test_what_was_added_is_on_the_site(followed):
    """After the last recipe the site holds the new fact, value, calculator, page, drawing and work by hand, and the new row."""
    site = followed / "site"
    for page in ("f/loose_wires", "v/wire_spare_pct", "c/wire_needed", "mending-wires", "look/bent_cane", "h/carry_out_wood"):
        assert (site / f"{page}.html").is_file(), page
    assert "B2_whole" in (site / "d/cordon_state.html").read_text()


def test_the_new_calculator_computes(followed):
    """The calculator of the recipe answers on the command line: 2 ha of rows 2 m apart take 10 000 m and 5 %."""
    words = [sys.executable, "-m", "generator.cli", "compute", "wire_needed", "--input", "-"]
    env = os.environ | {"PYTHONPATH": str(followed)}
    done = subprocess.run(words, cwd=followed, env=env, input='{"area_ha": 2, "row_spacing_m": 2}', capture_output=True, text=True)
    assert '"wire_m": 10500.0' in done.stdout, done.stdout + done.stderr
