"""From a module of calculators to a classic script that adds to the one global `Guide`; the compiler's door."""

import ast
import io
import re
import tokenize
from pathlib import Path

from generator.compiler import calls, expressions  # noqa: F401  (they register what they turn into JavaScript)
from generator.compiler.modules import CALCULATORS, PACKAGE, Module, read, read_file
from generator.compiler.statements import Comments, Lines, function, pop_comments
from generator.compiler.types import Refused, Signature, Span, js_name
from generator.problems import Problem, ProblemsFound

HELPERS = Path(__file__).with_name("helpers.js")
TWINS = {"numbertext": Path(__file__).with_name("numbertext.js")}


def compile_module(name: str, ranges: dict[str, Span] | None = None) -> str:
    """The script of generator/calculators/<name>.py: classic, strict, ES2018; the same text on every run.

    ranges are the declared ones of its int inputs. Raises ProblemsFound with every refusal; FileNotFoundError without a module.
    """
    return TWINS[name].read_text(encoding="utf-8") if name in TWINS else script(read_file(name, ranges))


def compile_text(text: str, path: str, name: str, ranges: dict[str, Span] | None = None) -> str:
    """The same for the text of a module; path is what problems name. Raises ProblemsFound."""
    return script(read(Module(name, path, text, ranges or {}), (name,)))


def module_order(names: list[str], order: list[str] | None = None) -> list[str]:
    """The named modules and all that they import, each after what it imports and once, since most are imported along many ways; after
    those in order, if any."""
    order = [] if order is None else order
    for name in names:
        if name not in order:
            imported = [node.module or "" for node in ast.parse((CALCULATORS / f"{name}.py").read_text("utf-8")).body if isinstance(node, ast.ImportFrom)]
            module_order([module.removeprefix(PACKAGE) for module in imported if module.startswith(PACKAGE)], order)
            order.append(name)
    return order


def helpers_script(names: list[str]) -> str:
    """The script that makes `Guide` with those helpers that the named modules use; it is loaded first."""
    return helpers_for("".join(map(compile_module, names)))


def helpers_for(scripts: str) -> str:
    """The script that makes `Guide` with those helpers that the given scripts use, in the order of helpers.js."""
    chunks = re.split(r"\n\n(?=//|function)", HELPERS.read_text(encoding="utf-8").strip())[1:]
    parts = {re.search(r"^function (\w+)", chunk, re.M)[1]: chunk for chunk in chunks}
    used: set[str] = set()
    found = set(re.findall(r"\$\.(\w+)\(", scripts))
    while found := (found & set(parts)) - used:
        used |= found
        found = {inner for helper in found for inner in re.findall(r"(\w+)\(", parts[helper])}
    kept = [name for name in parts if name in used]
    lines = [line for name in kept for line in ["", *parts[name].split("\n")]]
    head = '/** What compiled calculators need of Python. */\nvar Guide = {};\nGuide.$ = (function () {\n  "use strict";'
    return "\n".join([head, *indented(lines), f"\n  return {{ {', '.join(kept)} }};\n}})();\n"])


def script(module: Module) -> str:
    """The script of a module that has been read. Raises ProblemsFound."""
    comments = [] if module.refusals else find_comments(module.text)
    lines = [f"const {js_name(name)} = Guide.{source}.{name};" for name, source in module.imports.items()]
    for node in module.tree.body:
        lines += top(node, module, comments)
    refuse_recursion(module)
    if module.refusals:
        told = [refused for refused in module.refusals if refused.sentence]
        raise ProblemsFound([Problem(module.path, one.line, f"Column {one.column}: {one.sentence}", one.hint, "compiler") for one in told])
    exported = [pair(name, js_name(name)) for name in module.names if name not in module.imports]
    lines += [*pop_comments(comments, len(module.text)), "", f"return {{ {', '.join(exported)} }};"]
    head = [*docstring(module.tree), f"Guide.{module.name} = (function ($) {{", '  "use strict";']
    return "\n".join([*head, *indented(lines), "})(Guide.$);", ""])


def indented(lines: Lines) -> Lines:
    """The lines two places further in; empty ones stay empty."""
    return ["  " + line if line else "" for line in lines]


def top(node: ast.stmt, module: Module, comments: Comments) -> Lines:
    """The lines of one statement of the top level, comments before it."""
    match node, module.names.get(getattr(node, "name", "")):
        case ast.AnnAssign(target=ast.Name(id=name)), _ if name in module.constants:
            return [*pop_comments(comments, node.end_lineno), f"const {module.names[name].text} = {module.constants[name]};"]
        case ast.ClassDef(), Signature() as known:
            names = [js_name(part.name) for part in known.parameters]
            fields = ", ".join(pair(part.name, name) for part, name in zip(known.parameters, names))
            made = [f"function {known.name}({', '.join(names)}) {{", f"  return {{ {fields} }};", "}"]
            return ["", *pop_comments(comments, node.end_lineno), *docstring(node), *made]
        case ast.FunctionDef(), Signature():
            return ["", *pop_comments(comments, node.lineno), *docstring(node), *function(node, module, comments)]
    return []


def pair(name: str, js: str) -> str:
    """A property of an object, in short where both names are the same."""
    return name if name == js else f"{name}: {js}"


def docstring(node: ast.Module | ast.ClassDef | ast.FunctionDef) -> Lines:
    """The docstring as a comment in JavaScript."""
    text = (ast.get_docstring(node) or "").replace("*/", "* /")
    return f"/** {text} */".replace("\n", "\n * ").replace(" \n", "\n").split("\n") if text else []


def find_comments(text: str) -> Comments:
    """The comments of a module: line, JavaScript."""
    tokens = tokenize.generate_tokens(io.StringIO(text).readline)
    return [(token.start[0], "//" + token.string[1:]) for token in tokens if token.type == tokenize.COMMENT]


def refuse_recursion(module: Module) -> None:
    """Refuse functions that call themselves, directly or through others."""
    functions = {node.name: node for node in module.tree.body if isinstance(node, ast.FunctionDef)}
    reached = {name: {part.id for part in ast.walk(node) if isinstance(part, ast.Name)} & set(functions) for name, node in functions.items()}
    for _ in functions:
        reached = {name: set().union(others, *(reached[other] for other in others)) for name, others in reached.items()}
    hint = "Write a while loop with a list of what is still to do."
    calling = [name for name, others in reached.items() if name in others]
    module.refusals += [Refused(functions[name], f"`{name}` calls itself, directly or through others.", hint) for name in calling]
