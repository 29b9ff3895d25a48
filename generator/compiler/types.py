"""What the compiler knows: types, signatures, spans of whole numbers, pieces of JavaScript, refusals."""

import ast
from dataclasses import dataclass, field

LARGEST = 2**53 - 1  # the largest whole number up to which every whole number is exact in JavaScript
Span = tuple[int, int]
ANY_WHOLE: Span = (-LARGEST, LARGEST)

# How tightly JavaScript binds: a piece of a lower level needs parentheses where a higher one is asked for.
LOOSE, CHOICE, OR, AND, EQUAL, ORDER, SUM, PRODUCT, UNARY, TIGHT = range(10)

RESERVED = frozenset(
    "arguments await break case catch class const continue debugger default delete do else enum eval export extends false "
    "finally for function if implements import in instanceof interface let new null package private protected public return "
    "static super switch this throw true try typeof undefined var void while with yield Array Error Guide Infinity Math NaN "
    "Number Object String globalThis".split()
)


@dataclass(frozen=True)
class Type:
    """A type: `name` (int, float, bool, str, list or a record's), the type of a list's items, a record's module and fields."""

    name: str
    item: "Type | None" = None
    module: str = ""
    fields: tuple["Parameter", ...] = field(default=(), compare=False)

    def __str__(self) -> str:
        """The type as an author writes it."""
        return f"list[{self.item}]" if self.item else self.name


@dataclass(frozen=True)
class Parameter:
    """A parameter of a function or field of a record; default is JavaScript, empty when there is none."""

    name: str
    type: Type
    default: str = ""


@dataclass(frozen=True)
class Signature:
    """What a call needs: a function, or a record's constructor (then result is the record)."""

    name: str
    parameters: tuple[Parameter, ...]
    result: Type

    def fields(self) -> list[str]:
        """The names of the parameters in JavaScript."""
        return [js_name(part.name, ast.Pass()) for part in self.parameters]


INT, FLOAT, BOOL, STR = Type("int"), Type("float"), Type("bool"), Type("str")
NUMBERS = (INT, FLOAT)
BROKEN = Type("broken")  # of a name whose definition was refused: what follows from it is not reported again


def list_of(item: Type) -> Type:
    """The type of a list of such items."""
    return Type("list", item)


@dataclass(frozen=True)
class Code:
    """A piece of JavaScript: its text, type, how tightly it binds, and for an int the span it is proved to lie in."""

    text: str
    type: Type
    level: int = TIGHT
    span: Span = ANY_WHOLE

    def at(self, level: int) -> str:
        """The text for a place that asks for this level, in parentheses where needed."""
        return self.text if self.level >= level else f"({self.text})"


class Refused(Exception):
    """A construct outside the subset. An empty sentence means that the cause has been told already."""

    def __init__(self, node: ast.AST, sentence: str, hint: str = "") -> None:
        super().__init__(sentence)
        self.line = getattr(node, "lineno", 0)
        self.column = getattr(node, "col_offset", 0) + 1
        self.sentence, self.hint = sentence, hint


def js_name(name: str, node: ast.AST) -> str:
    """A Python name in JavaScript: words that JavaScript keeps for itself get a `$`."""
    if name.startswith("__"):
        raise Refused(node, f"`{name}` starts with two underscores.", "Choose a name without them.")
    return f"{name}$" if name in RESERVED else name
