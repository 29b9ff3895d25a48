"""What the compiler knows: types, signatures, spans of whole numbers, pieces of JavaScript, refusals."""

import ast
from dataclasses import dataclass, field

LARGEST = 2**53 - 1  # up to here every whole number is exact in JavaScript
Span = tuple[int, int]
ANY_WHOLE: Span = (-LARGEST, LARGEST)
COUNT: Span = (0, 2**32)  # how many items a JavaScript list can hold

# How tightly JavaScript binds: a piece of a lower level needs parentheses where a higher one is asked for.
LOOSE, CHOICE, OR, AND, EQUAL, ORDER, SUM, PRODUCT, UNARY, TIGHT = range(10)

RESERVED = frozenset(  # those that Python's own keywords leave over
    "Guide Math arguments case catch const debugger default delete do enum eval export extends false function implements instanceof "
    "interface let new null package private protected public static super switch this throw true typeof var void".split()
)


@dataclass(frozen=True)
class Type:
    """A type: int, float, bool, str, list or a record's name; the type of a list's items; a record's module, fields and the records that it
    goes on from."""

    name: str
    item: "Type | None" = None
    module: str = ""
    fields: tuple["Parameter", ...] = field(default=(), compare=False)
    parents: tuple["Type", ...] = field(default=(), compare=False)

    def __str__(self) -> str:
        """The type as an author writes it."""
        return f"list[{self.item}]" if self.item else self.name


@dataclass(frozen=True)
class Parameter:
    """A parameter of a function or field of a record; span is that of an int; default is JavaScript, empty when there is none."""

    name: str
    type: Type
    span: Span = ANY_WHOLE
    default: str = ""


@dataclass(frozen=True)
class Signature:
    """What a call needs: a function, or a record's constructor (then result is the record). name is in JavaScript."""

    name: str
    parameters: tuple[Parameter, ...]
    result: Type


INT, FLOAT, BOOL, STR = SCALARS = Type("int"), Type("float"), Type("bool"), Type("str")
NUMBERS = (INT, FLOAT)
BROKEN = Type("broken")  # of a name whose definition was refused: what follows from that is not told again


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
    """A construct outside the subset, and what to write instead. An empty sentence: the cause has been told already."""

    def __init__(self, node: ast.AST, sentence: str, hint: str = "") -> None:
        super().__init__(sentence)
        self.line, self.column = getattr(node, "lineno", 0), getattr(node, "col_offset", 0) + 1
        self.sentence, self.hint = sentence, hint


def need(holds: object, node: ast.AST, sentence: str, hint: str) -> None:
    """Refuse the node unless something holds."""
    if not holds:
        raise Refused(node, sentence, hint)


def js_name(name: str) -> str:
    """A Python name in JavaScript: words that JavaScript keeps for itself get a `$`."""
    return f"{name}$" if name in RESERVED else name
