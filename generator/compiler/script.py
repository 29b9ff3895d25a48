"""From a module of calculators to a classic script that adds to the one global `Guide`; the compiler's door."""

import ast
import io
import re
import tokenize
from pathlib import Path

from generator.compiler import calls, expressions  # noqa: F401  (they register what they turn into JavaScript)
from generator.compiler.modules import CALCULATORS, PACKAGE, Module, read_file, read_text
from generator.compiler.statements import Lines, function, pop_comments
from generator.compiler.types import Refused, Signature
from generator.problems import Problem, ProblemsFound

HELPERS = Path(__file__).with_name("helpers.js")
TWINS = {"numbertext": Path(__file__).with_name("numbertext.js")}


def compile_module(name: str) -> str:
    """The script of generator/calculators/<name>.py: classic, strict, ES2018; the same text on every run.

    Raises ProblemsFound with every refusal, and FileNotFoundError when there is no such module.
    """
    return TWINS[name].read_text(encoding="utf-8") if name in TWINS else script(read_file(name))


def compile_text(text: str, path: str, name: str) -> str:
    """The same for the text of a module; path is what problems name. Raises ProblemsFound."""
    return script(read_text(text, path, name))


def module_order(names: list[str]) -> list[str]:
    """The named modules and all that they import, each after what it imports."""
    order: list[str] = []
    for name in names:
        tree = ast.parse((CALCULATORS / f"{name}.py").read_text(encoding="utf-8"))
        imported = [node.module or "" for node in tree.body if isinstance(node, ast.ImportFrom)]
        siblings = [module.removeprefix(PACKAGE) for module in imported if module.startswith(PACKAGE)]
        before = [] if name in TWINS else module_order(siblings)
        order += [module for module in [*before, name] if module not in order]
    return order


def helpers_script(names: list[str]) -> str:
    """The script that makes `Guide` with those helpers that the named modules use; it is loaded first."""
    found = re.split(r"\n\n(?=//|function)", HELPERS.read_text(encoding="utf-8").strip())[1:]
    parts = {re.search(r"^function (\w+)", part, re.M)[1]: part for part in found}
    used: set[str] = set()
    open_ = {helper for name in names for helper in re.findall(r"\$\.(\w+)\(", compile_module(name))} & set(parts)
    while open_:
        used |= open_
        open_ = {inner for helper in open_ for inner in re.findall(r"(\w+)\(", parts[helper])} & set(parts) - used
    lines = ["/** What compiled calculators need of Python. */", "var Guide = {};", "Guide.$ = (function () {", '  "use strict";', ""]
    for helper, part in parts.items():
        lines += ["  " + line for line in part.split("\n")] + [""] if helper in used else []
    return "\n".join([*lines, f"  return {{ {', '.join(name for name in parts if name in used)} }};", "})();", ""])


def script(module: Module) -> str:
    """The script of a module that has been read."""
    comments = find_comments(module.text) if not module.refusals else []
    lines = [*docstring(module.tree), f"Guide.{module.name} = (function ($) {{", '  "use strict";']
    lines += [f"  const {name} = Guide.{source}.{name};" for name, source in module.imports.items()]
    for node in module.tree.body:
        lines += ["  " + line if line else "" for line in top(node, module, comments)]
    refuse_recursion(module)
    if module.refusals:
        raise ProblemsFound([problem(module.path, refused) for refused in module.refusals if str(refused)])
    own = {name: known for name, known in module.names.items() if name not in module.imports}
    exported = [pair(name, known.name if isinstance(known, Signature) else known.text) for name, known in own.items()]
    tail = ["  " + line for line in pop_comments(comments, len(module.text))]
    return "\n".join([*lines, *tail, "", f"  return {{ {', '.join(exported)} }};", "})(Guide.$);", ""])


def top(node: ast.stmt, module: Module, comments: list[tuple[int, str]]) -> Lines:
    """The lines of one statement of the top level, an empty line and comments before it."""
    match node:
        case ast.AnnAssign(target=ast.Name(id=name)) if name in module.constants:
            return [*pop_comments(comments, node.end_lineno), f"const {module.names[name].text} = {module.constants[name]};"]
        case ast.ClassDef() if isinstance(known := module.names.get(node.name), Signature):
            names = [part.name for part in known.parameters]
            js = ", ".join(known.fields())
            fields = ", ".join(map(pair, names, known.fields()))
            lines = [f"function {known.name}({js}) {{", f"  return {{ {fields} }};", "}"]
            return ["", *pop_comments(comments, node.end_lineno), *docstring(node), *lines]
        case ast.FunctionDef() if isinstance(module.names.get(node.name), Signature):
            return ["", *pop_comments(comments, node.lineno), *docstring(node), *function(node, module, comments)]
    return []


def pair(name: str, js: str) -> str:
    """A property of an object, in short where both names are the same."""
    return name if name == js else f"{name}: {js}"


def docstring(node: ast.Module | ast.ClassDef | ast.FunctionDef) -> Lines:
    """The docstring as a comment in JavaScript."""
    text = (ast.get_docstring(node) or "").replace("*/", "* /").split("\n")
    lines = ["/** " + text[0], *(f" * {line}".rstrip() for line in text[1:])]
    return [*lines[:-1], lines[-1] + " */"] if text != [""] else []


def find_comments(text: str) -> list[tuple[int, str]]:
    """The comments of a module as (line, JavaScript)."""
    tokens = tokenize.generate_tokens(io.StringIO(text).readline)
    return [(token.start[0], "//" + token.string[1:]) for token in tokens if token.type == tokenize.COMMENT]


def refuse_recursion(module: Module) -> None:
    """Refuse functions that call themselves, directly or through others."""
    functions = {node.name: node for node in module.tree.body if isinstance(node, ast.FunctionDef)}
    calls_of = {name: {part.id for part in ast.walk(node) if isinstance(part, ast.Name)} & set(functions) for name, node in functions.items()}
    for name, node in functions.items():
        reached, open_ = set(), {name}
        while open_:
            open_ = set().union(*(calls_of[part] for part in open_)) - reached
            reached |= open_
        if name in reached:
            module.refusals.append(Refused(node, f"`{name}` calls itself, directly or through others.", "Write a while loop with a list of what is still to do."))


def problem(path: str, refused: Refused) -> Problem:
    """A refusal as a problem: the column stands in the sentence."""
    return Problem(path, refused.line, f"Column {refused.column}: {refused.sentence}", refused.hint, "compiler")
