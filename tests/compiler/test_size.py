"""The compiler stays small: when it outgrows its measure, the subset is too large."""

import ast
from pathlib import Path

COMPILER = Path(__file__).parents[2] / "generator" / "compiler"
MOST = 700


def lines_of_code(text: str) -> int:
    """Lines that are neither empty nor only a comment nor part of a docstring."""
    documented = (ast.Module, ast.ClassDef, ast.FunctionDef)
    said = [node.body[0] for node in ast.walk(ast.parse(text)) if isinstance(node, documented) and ast.get_docstring(node) is not None]
    words = {line for node in said for line in range(node.lineno, node.end_lineno + 1)}
    lines = enumerate(text.split("\n"), 1)
    return sum(1 for number, line in lines if line.strip() and not line.strip().startswith("#") and number not in words)


def test_the_compiler_is_at_most_700_lines_of_code():
    """Docstrings, comments and empty lines aside."""
    assert sum(lines_of_code(path.read_text(encoding="utf-8")) for path in COMPILER.glob("*.py")) <= MOST
