"""A calculator is read anew when anything that it depends on is another: within one `serve`, files change under the compiler."""

from pathlib import Path

import pytest

from generator.compiler import modules, script
from generator.problems import ProblemsFound

FAR = '"""Far away."""\n\n\ndef far(x: float) -> float:\n    """x."""\n    return x\n'
RECORD = '"""Far away."""\n\nfrom dataclasses import dataclass\n\n\n@dataclass(frozen=True)\nclass Pair:\n    """Two."""\n\n    a: float\n    b: float\n'
BETWEEN = '"""Between."""\n\nfrom generator.calculators.far import {name}\n\n\ndef between({x}) -> {type}:\n    """x."""\n    return {call}\n'
NEAR = '"""Near."""\n\nfrom generator.calculators.between import between\n\n\ndef near(x: float) -> float:\n    """x."""\n    return between(x)\n'
PLAIN = BETWEEN.format(name="far", x="x: float", type="float", call="far(x)")


@pytest.fixture
def calculators(tmp_path: Path, monkeypatch) -> Path:
    """A folder of three calculators, each importing the one before; nothing is read yet."""
    monkeypatch.setattr(modules, "CALCULATORS", tmp_path)
    monkeypatch.setattr(modules, "READ", {})
    for name, text in (("far", FAR), ("between", PLAIN), ("near", NEAR)):
        (tmp_path / f"{name}.py").write_text(text)
    script.compile_module("near")
    return tmp_path


def test_what_is_unchanged_is_read_once(calculators):
    """The same text of everything behind it: the same reading."""
    assert modules.read_imported("between", ()) is modules.read_imported("between", ())


def test_a_change_behind_an_import_is_seen(calculators):
    """`between` has not changed, but what it imports has another type now."""
    (calculators / "far.py").write_text(FAR.replace("float) -> float", "int) -> int"))
    with pytest.raises(ProblemsFound, match="between.py:8"):
        script.compile_module("between")
    assert modules.read_imported("between", ()).names["far"].result.name == "int"


def test_a_record_behind_two_imports_is_read_anew(calculators):
    """Its fields are those of now, however the module between stays as it was."""
    (calculators / "far.py").write_text(RECORD)
    (calculators / "between.py").write_text(BETWEEN.format(name="Pair", x="x: float", type="Pair", call="Pair(x, x)"))
    fields = lambda: [field.name for field in modules.read_imported("between", ()).names["between"].result.fields]  # noqa: E731
    assert fields() == ["a", "b"]
    (calculators / "far.py").write_text(RECORD.replace("    b: float\n", "    b: float\n    c: float\n"))
    assert fields() == ["a", "b", "c"]


def test_a_module_that_is_gone_is_missed(calculators):
    """What was read of it before is not used."""
    (calculators / "far.py").unlink()
    with pytest.raises(ProblemsFound, match="cannot be imported"):
        script.compile_module("between")
