"""The scope of a function, and the one door for expressions: refusal by default, one registered function per syntax node."""

import ast
from collections.abc import Callable
from dataclasses import dataclass, field

from generator.compiler.types import ANY_WHOLE, BOOL, BROKEN, FLOAT, INT, Code, Refused, Signature, Span, Type


@dataclass
class Local:
    """A name inside a function. loop: it belongs to a running loop; fresh: its lists were made here, so they may be changed."""

    type: Type
    js: str
    span: Span = ANY_WHOLE
    loop: bool = False
    fresh: bool = False


@dataclass
class Scope:
    """Where an expression stands: global names, local names, and the locals that have a value on every path to here.

    assigned is None where the code can never be reached.
    """

    globals: dict[str, Signature | Code]
    locals: dict[str, Local] = field(default_factory=dict)
    assigned: set[str] | None = field(default_factory=set)

    def inner(self, names: dict[str, Local]) -> "Scope":
        """The scope of a comprehension or lambda with its own names."""
        return Scope(self.globals, {**self.locals, **names}, (self.assigned or set()) | set(names))


Emit = Callable[[ast.expr, Scope, Type | None], Code]
EXPRESSIONS: dict[type, Emit] = {}


def on(*kinds: type) -> Callable[[Emit], Emit]:
    """Register the function that turns these syntax nodes into JavaScript."""

    def register(emit: Emit) -> Emit:
        EXPRESSIONS.update(dict.fromkeys(kinds, emit))
        return emit

    return register


INSTEAD = {
    ast.JoinedStr: ("Text is not made in a calculator.", "Return a Say with the id of a message and its numbers."),
    ast.Dict: ("A dictionary is outside the subset.", "Write a frozen dataclass, or two lists side by side."),
    ast.DictComp: ("A dictionary is outside the subset.", "Write a frozen dataclass, or two lists side by side."),
    ast.Set: ("A set is outside the subset.", "Write a list."),
    ast.SetComp: ("A set is outside the subset.", "Write a list comprehension: [... for x in xs]."),
    ast.Tuple: ("A tuple is outside the subset.", "Write a list, or a frozen dataclass with named fields."),
    ast.Lambda: ("A lambda stands only as the key of sorted().", "Write a function with a name."),
    ast.NamedExpr: ("`:=` is outside the subset.", "Assign on a line of its own first."),
    ast.GeneratorExp: ("A generator stands only inside any(), all(), sum() and the like.", "Write a list: [... for x in xs]."),
    ast.Await: ("`await` is outside the subset.", "A calculator is a plain function."),
    ast.Yield: ("`yield` is outside the subset.", "Append to a list and return it."),
    ast.YieldFrom: ("`yield` is outside the subset.", "Append to a list and return it."),
    ast.Starred: ("A star argument is outside the subset.", "Write each argument out."),
}


def expression(node: ast.expr, scope: Scope, wanted: Type | None = None) -> Code:
    """JavaScript for an expression; with `wanted`, of exactly that type."""
    emit = EXPRESSIONS.get(type(node))
    if emit is None:
        known = (f"`{type(node).__name__}` is outside the subset.", "Write it with what the subset has.")
        raise Refused(node, *INSTEAD.get(type(node), known))
    code = emit(node, scope, wanted)
    if code.type == BROKEN:
        raise Refused(node, "")
    if wanted and code.type != wanted:
        raise Refused(node, f"This is {code.type}, but {wanted} is needed here.", conversion(node, code.type, wanted))
    return code


def conversion(node: ast.expr, found: Type, wanted: Type) -> str:
    """What to write to turn one type into another."""
    if (found, wanted) == (INT, FLOAT):
        return f"Write {node.value}.0." if isinstance(node, ast.Constant) else f"Write float({ast.unparse(node)})."
    if (found, wanted) == (FLOAT, INT):
        return "Write round(...), int(...), math.floor(...) or math.ceil(...)."
    if wanted == BOOL and found.item:
        return f"Write len({ast.unparse(node)}) > 0."
    if wanted == BOOL:
        return f"Write the comparison out: {ast.unparse(node)} != {'0' if found == INT else '...'}."
    return f"Give a value of type {wanted}."


def is_plain(node: ast.expr) -> bool:
    """True for what costs and changes nothing to look at twice or in another order: literals, names, fields, lists of them."""
    if isinstance(node, ast.UnaryOp):
        return isinstance(node.operand, ast.Constant)
    if isinstance(node, (ast.List, ast.Tuple)):
        return all(is_plain(item) for item in node.elts)
    return isinstance(node, (ast.Constant, ast.Name)) or isinstance(node, ast.Attribute) and is_plain(node.value)
