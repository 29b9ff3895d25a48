"""Under a Python that is too old the entry says so: it must parse there, and import nothing that does not."""

import ast
import re
import shutil
import subprocess
from pathlib import Path

import pytest

from tests.setting_up.conftest import base_python

PRETEND = """
import runpy, sys
sys.version_info = ({}, {}, 0, "final", 0)
sys.argv[1:] = ["serve"]
runpy.run_module("generator", run_name="__main__")
"""
# Constructs that Python 2.7 or an early Python 3 cannot read.
TOO_NEW = (
    ast.JoinedStr,
    ast.AnnAssign,
    ast.NamedExpr,
    ast.AsyncFunctionDef,
    ast.Await,
    ast.Nonlocal,
    ast.Starred,
    ast.Match,
)


def entry_files(project_root: Path) -> list[Path]:
    """Every file that is read before the version is known, and the rest of the set-up."""
    top = project_root / "generator"
    return [top / "__init__.py", top / "__main__.py", *sorted((top / "setting_up").glob("*.py"))]


def old_pythons() -> list[str]:
    """The Pythons on this machine that are too old; none on many machines."""
    names = ["python2.7", *(f"python3.{minor}" for minor in range(11))]
    found = [path for path in map(shutil.which, names) if path]
    found += [str(path) for path in Path.home().glob(".pyenv/versions/*/bin/python")]
    told = {path: subprocess.run([path, "-V"], capture_output=True, text=True, check=False) for path in found}
    versions = {path: re.match(r"Python (\d+)\.(\d+)", done.stdout + done.stderr) for path, done in told.items()}
    return [path for path, match in versions.items() if match and tuple(map(int, match.groups())) < (3, 11)]


@pytest.mark.parametrize("version", [(2, 7), (3, 6), (3, 10)])
def test_a_python_that_is_too_old_is_told_so(copy, version):
    """One line: which Python, which is needed, and the command to run."""
    done = copy.start(python=(base_python(), "-c", PRETEND.format(*version)))
    assert done.returncode == 1
    assert done.stderr.startswith(f"error: Python {version[0]}.{version[1]} (")
    assert done.stderr.endswith("`python3.12 -m generator serve`.\n")
    assert len(done.stderr.splitlines()) == 1


def test_every_old_python_of_this_machine_is_told_so(copy):
    """The same with real ones, where there are any."""
    for python in old_pythons():
        done = copy.start("serve", python=(python, "-m", "generator"))
        assert (done.returncode, len(done.stderr.splitlines())) == (1, 1), done.stderr
        assert "is too old; the guide needs 3.11 or newer" in done.stderr


def test_the_set_up_uses_no_new_syntax(project_root):
    """No file of it has a construct that an old Python cannot read."""
    for path in entry_files(project_root):
        tree = ast.parse(path.read_text(encoding="utf-8"), feature_version=(3, 4))
        for node in ast.walk(tree):
            assert not isinstance(node, TOO_NEW), f"{path.name}:{node.lineno}"
            if isinstance(node, ast.FunctionDef):
                assert not (node.returns or node.args.kwonlyargs or node.args.posonlyargs), f"{path.name}:{node.lineno}"
            if isinstance(node, ast.arg):
                assert not node.annotation, f"{path.name}:{node.lineno}"
            if isinstance(node, ast.Raise):
                assert not node.cause, f"{path.name}:{node.lineno}"


def test_the_set_up_is_plain_ascii(project_root):
    """Python 2 refuses anything else without a declaration."""
    for path in entry_files(project_root):
        assert path.read_bytes().isascii(), path.name


def test_only_the_standard_library_is_imported_before_the_environment_exists(copy):
    """With no package to be had at all, the entry comes as far as the command line."""
    ask = (
        "import sys; import generator.__main__; from generator.cli import arguments; "
        "from generator.setting_up import environment; arguments.read(['check']); "
        "print([name for name in sys.modules if name.split('.')[0] not in sys.stdlib_module_names "
        "and name.split('.')[0] not in ('generator', '__main__')])"
    )
    done = copy.start(python=(base_python(), "-S", "-c", ask))
    assert done.stdout == "[]\n", done.stderr
