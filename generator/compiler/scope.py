"""Where an expression stands, and the one door for expressions: refusal by default, one registered function per syntax node."""

import ast
from collections.abc import Callable
from dataclasses import dataclass, field

from generator.compiler.types import BOOL, BROKEN, FLOAT, INT, Code, Refused, Signature, Type


@dataclass
class Scope:
    """The names in sight. assigned: the locals with a value on every path to here, None where nothing comes by;
    loops: names that belong to a running loop; fresh: lists that this function made, so that it may change them."""

    globals: dict[str, Signature | Code]
    locals: dict[str, Code] = field(default_factory=dict)
    assigned: set[str] | None = field(default_factory=set)
    loops: set[str] = field(default_factory=set)
    fresh: set[str] = field(default_factory=set)

    def inner(self, names: dict[str, Code]) -> "Scope":
        """The scope of a comprehension or lambda with its own names."""
        return Scope(self.globals, {**self.locals, **names}, {*self.assigned, *names})


Emit = Callable[[ast.expr, Scope, Type | None], Code]
EXPRESSIONS: dict[type, Emit] = {}


def on(kind: type) -> Callable[[Emit], Emit]:
    """Register the function that turns this syntax node into JavaScript."""
    return lambda emit: EXPRESSIONS.update({kind: emit}) or emit


INSTEAD = {
    "JoinedStr": "No text is made in a calculator: return a Say with the id of a message and its numbers.",
    "Dict": "Write a frozen dataclass, or two lists side by side.",
    "Set": "Write a list.",
    "Tuple": "Write a list, or a frozen dataclass with named fields.",
    "Lambda": "A lambda stands only as the key of sorted(); write a function with a name.",
    "NamedExpr": "Assign on a line of its own first.",
    "GeneratorExp": "Write a list: [... for x in xs].",
    "Starred": "Write each argument out.",
    "Try": "Test before, and raise ValueError for what cannot be.",
    "Assert": 'Write if not ...: raise ValueError("...").',
    "Match": "Write if, elif, else.",
    "FunctionDef": "Move the inner function to the top level.",
}


def outside(node: ast.AST) -> Refused:
    """The refusal of a construct that nothing is registered for."""
    name = type(node).__name__
    hint = INSTEAD.get(name.removesuffix("Comp"), "See the grammar in generator/compiler/__init__.py.")
    return Refused(node, f"`{name}` is outside the subset.", hint)


def expression(node: ast.expr, scope: Scope, wanted: Type | None = None) -> Code:
    """JavaScript for an expression; with `wanted`, of that type. Raises Refused."""
    if type(node) not in EXPRESSIONS:
        raise outside(node)
    code = EXPRESSIONS[type(node)](node, scope, wanted)
    if code.type == BROKEN:
        raise Refused(node, "")
    if wanted and wanted not in (code.type, *code.type.parents):
        raise Refused(node, f"This is {code.type}, but {wanted} is needed here.", conversion(node, code.type, wanted))
    return code


def conversion(node: ast.expr, found: Type, wanted: Type) -> str:
    """What to write to turn one type into another."""
    written = ast.unparse(node)
    if wanted == FLOAT and found == INT:
        return f"Write {written}.0." if written.isdecimal() else f"Write float({written})."
    if wanted == INT and found == FLOAT:
        return f"Write round({written}), int(...), math.floor(...) or math.ceil(...)."
    if wanted == BOOL:
        return f"Write the comparison out: {f'len({written}) > 0' if found.item else f'{written} != 0'}."
    return f"Give a value of type {wanted}."
