"""What the compiler writes: the same bytes on every run, classic strict scripts of ES2018, comments kept, spans used."""

import os
import re
import subprocess
import sys

import pytest
import quickjs

from generator.compiler.script import TWINS, compile_module, compile_text, helpers_script, module_order
from generator.problems import ProblemsFound
from tests.parity.scripts import calculator_names, calculators_script, constructs_script

DIGEST = """
import hashlib
from tests.parity.scripts import calculators_script, constructs_script
print(hashlib.sha256((calculators_script() + constructs_script()).encode()).hexdigest())
"""
NEWER = r"\?\?|\?\.|\*\*|\bcatch \{|flatMap|\.flat\(|(?<!\$)\.at\(|BigInt|\b\d+n\b|fromEntries|matchAll|replaceAll|\|\|=|&&=|\bimport\b|\bexport\b|#\w"


def code_of(script: str) -> str:
    """The script without comments and texts."""
    return re.sub(r'/\*.*?\*/|//[^\n]*|"(?:\\.|[^"\\])*"', "", script, flags=re.S)


def test_hash_seed_changes_nothing(project_root):
    """Byte-identical scripts under different PYTHONHASHSEED."""
    found = set()
    for seed in ("0", "1", "4711"):
        given = {**os.environ, "PYTHONHASHSEED": seed, "PYTHONPATH": str(project_root)}
        run = subprocess.run([sys.executable, "-c", DIGEST], cwd=project_root, env=given, capture_output=True, text=True, check=True)
        found.add(run.stdout)
    assert len(found) == 1


@pytest.mark.parametrize("script", [calculators_script, constructs_script], ids=["calculators", "constructs"])
def test_nothing_newer_than_es2018(script):
    """No syntax or built-in function that ES2018 lacks, no module syntax, no eval."""
    assert re.findall(NEWER + r"|\beval\b|new Function", code_of(script())) == []


def test_scripts_add_to_one_global_only():
    """Loading everything makes `Guide` and nothing else."""
    engine = quickjs.Context()
    before = set(engine.eval("Object.getOwnPropertyNames(globalThis).join()").split(","))
    engine.eval(calculators_script())
    after = set(engine.eval("Object.getOwnPropertyNames(globalThis).join()").split(","))
    assert after - before == {"Guide"}


@pytest.mark.parametrize("name", calculator_names())
def test_each_module_is_strict(name):
    """Every script is a function of its own with "use strict"."""
    assert re.search(r'^Guide\.\w+ = \(function \(\$?\) \{\n  "use strict";$', compile_module(name), re.M)


def test_modules_come_after_what_they_import():
    """module_order names each module once, imports first."""
    order = module_order(calculator_names())
    assert sorted(order) == calculator_names()
    assert order.index("say") < order.index("vine_density")


def test_only_used_helpers_are_written():
    """Records alone need no helper."""
    assert helpers_script(["say"]).count("function") == 1


def test_a_module_that_is_not_there():
    """The name is an error of the caller, not a problem of an author."""
    with pytest.raises(FileNotFoundError):
        compile_module("nowhere")


def test_comments_and_docstrings_are_kept():
    """A reader of the script finds the words of the author."""
    text = '"""About."""\n\n# Why.\nLIMIT: int = 3\n\n\ndef f(n: int) -> int:\n    """What."""\n    # How.\n    return n  # Then.\n'
    script = compile_text(text, "x.py", "x")
    assert [line.strip() for line in script.split("\n") if line.strip()[:2] in ("//", "/*")] == ["/** About. */", "// Why.", "/** What. */", "// How.", "// Then."]


DENSE = """from dataclasses import dataclass


@dataclass(frozen=True)
class XInputs:
    n: int


def x(inputs: XInputs) -> int:
    return inputs.n * 7 - 1
"""


def test_declared_ranges_drop_checks():
    """An int input of a declared range needs no check at 2**53; without a range it does."""
    assert "$.whole" in compile_text(DENSE, "x.py", "x")
    assert "inputs.n * 7 - 1;" in compile_text(DENSE, "x.py", "x", {"n": (0, 9)})


def test_declared_ranges_are_kept():
    """Inputs made by a calculator itself must be sure to be in range."""
    text = DENSE + "\n\ndef y(n: int) -> int:\n    return x(XInputs(n))\n"
    with pytest.raises(ProblemsFound, match="`n` may leave its range"):
        compile_text(text, "x.py", "x", {"n": (0, 9)})


def test_twins_say_the_same_names():
    """A module with a hand-written script has the same functions on both sides."""
    from generator.calculators import numbertext

    for path in TWINS.values():
        exported = re.search(r"return \{ (.*?) \};", path.read_text(encoding="utf-8"))[1]
        assert all(callable(getattr(numbertext, part.split(":")[0])) for part in exported.split(", "))
