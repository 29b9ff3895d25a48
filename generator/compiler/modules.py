"""The top level of a module: imports, constants, records, function heads. Bodies are left to `statements`."""

import ast
import re
from dataclasses import dataclass, field
from pathlib import Path

from generator.compiler.nodes import Scope, expression
from generator.compiler.types import BOOL, BROKEN, FLOAT, INT, STR, Code, Parameter, Refused, Signature, Type, js_name, list_of

ROOT = Path(__file__).resolve().parents[2]
CALCULATORS = ROOT / "generator" / "calculators"
PACKAGE = "generator.calculators."
UNSAFE = re.compile("[\u2028\u2029\U00010000-\U0010ffff]")
SCALARS = {"int": INT, "float": FLOAT, "bool": BOOL, "str": STR}
Named = Signature | Code


@dataclass
class Module:
    """A module whose top level has been read. names holds its own and its imported names; imports maps a name to its module."""

    name: str
    path: str
    text: str
    tree: ast.Module
    names: dict[str, Named] = field(default_factory=dict)
    imports: dict[str, str] = field(default_factory=dict)
    constants: dict[str, str] = field(default_factory=dict)
    refusals: list[Refused] = field(default_factory=list)


def read_file(name: str, trail: tuple[str, ...] = ()) -> Module:
    """Read the module generator/calculators/<name>.py. Raises FileNotFoundError when there is none."""
    path = CALCULATORS / f"{name}.py"
    return read_text(path.read_text(encoding="utf-8"), path.relative_to(ROOT).as_posix(), name, trail)


def read_text(text: str, path: str, name: str, trail: tuple[str, ...] = ()) -> Module:
    """Read a module from its text; trail names the modules that are importing it."""
    module = Module(name, path, text, ast.Module([], []))
    try:
        module.tree = ast.parse(text)
        refuse_unsafe(text)
    except SyntaxError as error:
        place = ast.Pass(lineno=error.lineno or 0, col_offset=(error.offset or 1) - 1)
        module.refusals.append(Refused(place, "This is not Python.", f"Python says: {error.msg}."))
    except Refused as refused:
        module.refusals.append(refused)
    for node in module.tree.body:
        try:
            read_top(node, module, (*trail, name))
        except Refused as refused:
            module.refusals.append(refused)
            for broken in defined(node):
                module.names.setdefault(broken, Code("", BROKEN))
    return module


def refuse_unsafe(text: str) -> None:
    """Refuse characters that JavaScript counts or breaks lines by otherwise than Python."""
    for number, line in enumerate(text.split("\n"), 1):
        if found := UNSAFE.search(line):
            place = ast.Pass(lineno=number, col_offset=found.start())
            raise Refused(place, f"The character U+{ord(found[0]):04X} is outside the subset.", "Leave it out.")


def defined(node: ast.stmt) -> list[str]:
    """The names that a statement at the top level defines."""
    if isinstance(node, ast.ImportFrom):
        return [alias.name for alias in node.names]
    stored = [part.id for part in ast.walk(node) if isinstance(part, ast.Name) and isinstance(part.ctx, ast.Store)]
    return [node.name] if isinstance(node, (ast.ClassDef, ast.FunctionDef)) else stored


def read_top(node: ast.stmt, module: Module, trail: tuple[str, ...]) -> None:
    """Take in one statement of the top level."""
    match node:
        case ast.Expr(value=ast.Constant(value=str())):
            pass
        case ast.Import(names=[ast.alias(name="math", asname=None)]):
            pass
        case ast.ImportFrom():
            read_import(node, module, trail)
        case ast.AnnAssign():
            read_constant(node, module)
        case ast.ClassDef():
            define(module, node, node.name, read_record(node, module))
        case ast.FunctionDef():
            define(module, node, node.name, read_head(node, module))
        case ast.Assign():
            raise Refused(node, "A constant has a type.", f"Write {ast.unparse(node.targets[0])}: float = ... (or its type).")
        case ast.Import():
            raise Refused(node, "Only `import math` is in the subset.", "Write from generator.calculators.x import y.")
        case _:
            hint = "Only constants, frozen dataclasses and functions stand at the top level."
            raise Refused(node, f"`{type(node).__name__}` at the top level is outside the subset.", hint)


def define(module: Module, node: ast.AST, name: str, what: Named) -> None:
    """Give a global name its meaning. Raises Refused when it has one."""
    if name in module.names or name in SCALARS or name == "math":
        raise Refused(node, f"`{name}` is defined twice.", "Choose another name.")
    module.names[name] = what


def read_import(node: ast.ImportFrom, module: Module, trail: tuple[str, ...]) -> None:
    """from dataclasses import dataclass | from generator.calculators.x import y."""
    source = node.module or ""
    if source == "dataclasses" and [alias.name for alias in node.names] == ["dataclass"]:
        return
    other = source.removeprefix(PACKAGE)
    if other == source or node.level or not (CALCULATORS / f"{other}.py").is_file():
        raise Refused(node, f"`{source}` cannot be imported by a calculator.", "Write from generator.calculators.x import y.")
    if other in trail:
        raise Refused(node, f"The import of `{other}` goes round in a circle.", "Move what both need into a third module.")
    exported = read_file(other, trail)
    for alias in node.names:
        if alias.asname or alias.name not in exported.names or alias.name in exported.imports:
            raise Refused(node, f"`{alias.name}` is not defined in {exported.path}.", "Import it from where it is defined, under its name.")
        define(module, node, alias.name, exported.names[alias.name])
        module.imports[alias.name] = other


def read_constant(node: ast.AnnAssign, module: Module) -> None:
    """NAME: type = expression of constants."""
    if not isinstance(node.target, ast.Name) or node.value is None:
        raise Refused(node, "A constant is one name with a value.", "Write NAME: float = 1.0.")
    value = expression(node.value, Scope(module.names), read_type(node.annotation, module))
    name = node.target.id
    define(module, node, name, Code(js_name(name, node), value.type, span=value.span))
    module.constants[name] = value.text


def read_type(node: ast.expr | None, module: Module) -> Type:
    """The type that an annotation means."""
    match node:
        case ast.Name(id=name) if name in SCALARS:
            return SCALARS[name]
        case ast.Name(id=name) if isinstance(known := module.names.get(name), Signature) and known.result.name == name:
            return known.result
        case ast.Name(id=name) if isinstance(known, Code) and known.type == BROKEN:
            raise Refused(node, "")
        case ast.Subscript(value=ast.Name(id="list"), slice=item):
            return list_of(read_type(item, module))
    written = ast.unparse(node) if node else "nothing"
    hint = "Write int, float, bool, str, list[...] or a frozen dataclass that is defined above."
    if "None" in written or "Optional" in written:
        hint = "Write a record with ok: bool, such as Maybe in generator/calculators/facts.py."
    raise Refused(node, f"The type `{written}` is outside the subset.", hint)


def read_record(node: ast.ClassDef, module: Module) -> Signature:
    """A frozen dataclass with annotated fields."""
    if [ast.unparse(decorator) for decorator in node.decorator_list] != ["dataclass(frozen=True)"] or node.bases:
        raise Refused(node, f"The class `{node.name}` is not a plain frozen dataclass.", "Write @dataclass(frozen=True) above class Name:.")
    fields = []
    for part in node.body:
        if isinstance(part, ast.Expr) and isinstance(part.value, ast.Constant) or isinstance(part, ast.Pass):
            continue
        if not isinstance(part, ast.AnnAssign) or not isinstance(part.target, ast.Name):
            raise Refused(part, "A record has annotated fields and nothing else.", "Write name: type; make a method a function.")
        js_name(part.target.id, part)
        type_ = read_type(part.annotation, module)
        fields.append(Parameter(part.target.id, type_, default(part.value, type_, module)))
    return Signature(js_name(node.name, node), tuple(fields), Type(node.name, None, module.name, tuple(fields)))


def read_head(node: ast.FunctionDef, module: Module) -> Signature:
    """The head of a function: plain annotated parameters and an annotated result."""
    given = node.args
    if node.decorator_list or given.vararg or given.kwarg or given.kwonlyargs or given.posonlyargs:
        raise Refused(node, "A function has plain parameters and no decorator.", "Write def name(a: float, b: int = 0) -> float:.")
    if node.returns is None:
        raise Refused(node, f"The result of `{node.name}` has no type.", "Write -> float: (or its type).")
    defaults = [None] * (len(given.args) - len(given.defaults)) + list(given.defaults)
    parameters = []
    for part, value in zip(given.args, defaults):
        if part.annotation is None:
            raise Refused(part, f"The parameter `{part.arg}` has no type.", f"Write {part.arg}: float (or its type).")
        js_name(part.arg, part)
        type_ = read_type(part.annotation, module)
        parameters.append(Parameter(part.arg, type_, default(value, type_, module)))
    return Signature(js_name(node.name, node), tuple(parameters), read_type(node.returns, module))


def default(node: ast.expr | None, type_: Type, module: Module) -> str:
    """The JavaScript of a default: a literal, so that it means the same in every module; empty when there is none."""
    if node is None:
        return ""
    if type_.item or not isinstance(getattr(node, "operand", node), ast.Constant):
        raise Refused(node, "A default is a literal number, text, True or False.", "Leave it out and give the value in each call.")
    return expression(node, Scope(module.names), type_).text
