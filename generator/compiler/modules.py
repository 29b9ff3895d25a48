"""The top level of a module: imports, constants, records, function heads. Bodies are left to `statements`."""

import ast
import re
from dataclasses import dataclass, field
from pathlib import Path

from generator.compiler.scope import Scope, expression, outside
from generator.compiler.types import ANY_WHOLE, BROKEN, SCALARS, Code, Parameter, Refused, Signature, Span, Type, js_name, need

CALCULATORS = Path(__file__).resolve().parents[1] / "calculators"
PACKAGE = "generator.calculators."
UNSAFE = re.compile("[\u2028\u2029\U00010000-\U0010ffff]")


@dataclass
class Module:
    """A module whose top level has been read: what its own and its imported names mean, where the imported ones come from,
    the values of its constants. ranges are the declared ones of the ints among its inputs (the fields of ...Inputs). texts are all that the
    reading depends on: of its file and of every file behind its imports."""

    name: str
    path: str
    text: str
    ranges: dict[str, Span] = field(default_factory=dict)
    texts: dict[Path, str] = field(default_factory=dict)
    tree: ast.Module = field(default_factory=lambda: ast.Module([], []))
    names: dict[str, Signature | Code] = field(default_factory=dict)
    imports: dict[str, str] = field(default_factory=dict)
    constants: dict[str, str] = field(default_factory=dict)
    refusals: list[Refused] = field(default_factory=list)


def read_file(name: str, ranges: dict[str, Span] | None = None, trail: tuple[str, ...] = ()) -> Module:
    """Read generator/calculators/<name>.py; trail names the modules that are importing it. Raises FileNotFoundError."""
    path = CALCULATORS / f"{name}.py"
    text = path.read_text("utf-8")
    return read(Module(name, f"generator/calculators/{name}.py", text, ranges or {}, {path: text}), (*trail, name))


READ: dict[str, Module] = {}  # modules already read: many ways of importing lead to the same one


def read_imported(name: str, trail: tuple[str, ...]) -> Module:
    """The module that another imports; a sound one is read once, until a text that it depends on is another."""
    found = READ.get(name)
    if not found or found.refusals or any(not path.is_file() or path.read_text("utf-8") != text for path, text in found.texts.items()):
        found = READ[name] = read_file(name, None, trail)
    return found


def read(module: Module, trail: tuple[str, ...]) -> Module:
    """Fill in a module from its text. What is refused is kept in it; names so left without a meaning are BROKEN."""
    try:
        module.tree = ast.parse(module.text)
    except SyntaxError as error:
        place = ast.Pass(lineno=error.lineno or 0, col_offset=(error.offset or 1) - 1)
        module.refusals.append(Refused(place, "This is not Python.", f"Python says: {error.msg}."))
    for number, line in enumerate(module.text.split("\n"), 1):
        if found := UNSAFE.search(line):
            module.refusals.append(Refused(ast.Pass(lineno=number, col_offset=found.start()), f"The character {ascii(found[0])} is outside the subset.", "Leave it out."))
    for node in module.tree.body:
        try:
            read_top(node, module, trail)
        except Refused as refused:
            module.refusals.append(refused)
            names = [getattr(part, "name", "") for part in getattr(node, "names", [node])] + [getattr(getattr(node, "target", node), "id", "")]
            module.names = {**{name: Code("", BROKEN) for name in names}, **module.names}
    return module


def read_top(node: ast.stmt, module: Module, trail: tuple[str, ...]) -> None:
    """Take in one statement of the top level."""
    match node:
        case ast.Import(names=[ast.alias(name="math", asname=None)]) | ast.Expr(value=ast.Constant(value=str())):
            pass
        case ast.ImportFrom():
            read_import(node, module, trail)
        case ast.AnnAssign(target=ast.Name(id=name), value=ast.expr() as value):
            code = expression(value, Scope(module.names), read_type(node.annotation, node, module))
            define(module, node, name, Code(js_name(name), code.type, span=code.span))
            module.constants[name] = code.text
        case ast.ClassDef(bases=bases, decorator_list=[decorator]) if ast.unparse(decorator) == "dataclass(frozen=True)" and len(bases) < 2:
            parents = tuple(one for base in bases for parent in [read_type(base, node, module)] for one in (parent, *parent.parents))
            own = tuple(parameter(part, module, module.ranges if node.name.endswith("Inputs") else {}) for part in node.body[ast.get_docstring(node) is not None :])
            fields = parents[0].fields + own if parents else own
            sound = all(one.module for one in parents) and len({part.name for part in fields}) == len(fields)
            need(sound, node, f"`{node.name}` is no record with new fields.", "Go on from a record defined above, with fields of other names.")
            define(module, node, node.name, Signature(js_name(node.name), fields, Type(node.name, None, module.name, fields, parents)))
        case ast.ClassDef():
            raise Refused(node, f"`{node.name}` is not a plain frozen dataclass.", "Write @dataclass(frozen=True) above class Name: or class Name(Record):.")
        case ast.FunctionDef(decorator_list=[], args=ast.arguments([], given, None, [], [], None, [])):
            head = tuple(parameter(part, module, {}) for part in given)
            define(module, node, node.name, Signature(js_name(node.name), head, read_type(node.returns, node, module)))
        case ast.FunctionDef():
            raise Refused(node, f"`{node.name}` is not a plain function.", "Write def name(a: float, b: int) -> float: without defaults.")
        case ast.Assign():
            raise Refused(node, "A constant has a type.", f"Write {ast.unparse(node.targets[0])}: float = ... (or its type).")
        case _:
            raise outside(node)


def define(module: Module, node: ast.AST, name: str, what: Signature | Code) -> None:
    """Give a global name its meaning."""
    need(name not in module.names, node, f"`{name}` is defined twice.", "Choose another name.")
    module.names[name] = what


def read_import(node: ast.ImportFrom, module: Module, trail: tuple[str, ...]) -> None:
    """from dataclasses import dataclass | from generator.calculators.x import y."""
    if ast.unparse(node) == "from dataclasses import dataclass":
        return
    other = (node.module or "").removeprefix(PACKAGE)
    if other == node.module or not (CALCULATORS / f"{other}.py").is_file():
        raise Refused(node, f"`{node.module}` cannot be imported here.", "Write from generator.calculators.x import y, or import math.")
    need(other not in trail, node, f"The import of `{other}` goes round in a circle.", "Move what both need into a third module.")
    exported = read_imported(other, trail)
    module.texts |= exported.texts
    for alias in node.names:
        if alias.asname or alias.name not in exported.names or alias.name in exported.imports:
            raise Refused(node, f"`{alias.name}` is not defined in {exported.path}.", "Import it under its name from where it is defined.")
        define(module, node, alias.name, exported.names[alias.name])
        module.imports[alias.name] = other


def parameter(node: ast.stmt | ast.arg, module: Module, ranges: dict[str, Span]) -> Parameter:
    """A parameter of a function, or a field of a record, which may have a literal as default."""
    value = getattr(node, "value", None)
    match node:
        case ast.arg(arg=name) | ast.AnnAssign(target=ast.Name(id=name)) if not name.startswith("__"):
            type_ = read_type(node.annotation, node, module)
            return Parameter(name, type_, ranges.get(name, ANY_WHOLE), expression(value, Scope({}), type_).text if value else "")
    raise Refused(node, "A record has annotated fields and nothing else.", "Write name: type; make a method a function.")


def read_type(node: ast.expr | None, owner: ast.AST, module: Module) -> Type:
    """The type that an annotation of the owner means."""
    match node:
        case None:
            raise Refused(owner, "A type is missing here.", "Write name: float for a parameter and -> float: for a result (or its type).")
        case ast.Name(id=name) if name in map(str, SCALARS):
            return Type(name)
        case ast.Name(id=name) if isinstance(known := module.names.get(name), Signature) and known.result.name == name:
            return known.result
        case ast.Name(id=name) if known and known.type == BROKEN:
            raise Refused(node, "")
        case ast.Subscript(value=ast.Name(id="list"), slice=item):
            return Type("list", read_type(item, owner, module))
    hint = "Write int, float, bool, str, list[...] or a frozen dataclass that is defined above; for None a record such as Maybe."
    raise Refused(node, f"The type `{ast.unparse(node)}` is outside the subset.", hint)
