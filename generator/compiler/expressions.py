"""One small function per kind of expression."""

import ast
import json
import math

from generator.compiler.nodes import Scope, expression, is_plain, on
from generator.compiler.types import (
    AND, ANY_WHOLE, BOOL, BROKEN, CHOICE, EQUAL, FLOAT, INT, LARGEST, LOOSE, NUMBERS, OR, ORDER, PRODUCT, STR, SUM, UNARY,
    Code, Refused, Span, Type, list_of,
)  # fmt: skip

ARITHMETIC = {ast.Add: ("+", SUM), ast.Sub: ("-", SUM), ast.Mult: ("*", PRODUCT)}
HELPED = {ast.Div: "divide", ast.FloorDiv: "quotient", ast.Mod: "remainder"}
COMPARISONS = {
    ast.Eq: ("===", EQUAL), ast.NotEq: ("!==", EQUAL), ast.Lt: ("<", ORDER), ast.LtE: ("<=", ORDER), ast.Gt: (">", ORDER),
    ast.GtE: (">=", ORDER),
}  # fmt: skip


@on(ast.Constant)
def literal(node: ast.Constant, scope: Scope, wanted: Type | None) -> Code:
    """A number, text, True or False."""
    value = node.value
    if isinstance(value, bool):
        return Code(str(value).lower(), BOOL)
    if isinstance(value, int) and abs(value) <= LARGEST:
        return Code(str(value), INT, span=(value, value))
    if isinstance(value, float) and math.isfinite(value):
        return Code(repr(value), FLOAT)
    if isinstance(value, str):
        return Code(json.dumps(value), STR)
    if isinstance(value, (int, float)):
        raise Refused(node, "This number is too large.", "Stay below 2**53 for an int and below 1e308 for a float.")
    hint = "Write a record with ok: bool, such as Maybe." if value is None else "Write a number, text, True or False."
    raise Refused(node, f"`{value}` is outside the subset.", hint)


@on(ast.Name)
def name(node: ast.Name, scope: Scope, wanted: Type | None) -> Code:
    """A local name that has a value here, or a global constant."""
    if local := scope.locals.get(node.id):
        if scope.assigned is not None and node.id not in scope.assigned and local.type != BROKEN:
            raise Refused(node, f"`{node.id}` may have no value here.", f"Give {node.id} a value before, on every path.")
        return Code(local.js, local.type, span=local.span)
    known = scope.globals.get(node.id)
    if isinstance(known, Code):
        return known
    if known:
        raise Refused(node, f"`{node.id}` stands here without a call.", f"Write {node.id}(...).")
    raise Refused(node, f"`{node.id}` is not known here.", "Define it above, or import it from generator.calculators.")


@on(ast.Attribute)
def field(node: ast.Attribute, scope: Scope, wanted: Type | None) -> Code:
    """record.field, math.pi, math.e."""
    if isinstance(node.value, ast.Name) and node.value.id == "math" and "math" not in scope.locals:
        if node.attr in ("pi", "e"):
            return Code(f"Math.{node.attr.upper()}", FLOAT)
        raise Refused(node, f"`math.{node.attr}` is outside the subset.", "math has pi, e, floor, ceil, sqrt, fsum here; exactmath has exp, log, power.")
    record = expression(node.value, scope)
    for part in record.type.fields:
        if part.name == node.attr:
            return Code(f"{record.text}.{node.attr}", part.type)
    fields = ", ".join(part.name for part in record.type.fields) or "none"
    raise Refused(node, f"{record.type} has no field `{node.attr}`.", f"Its fields: {fields}.")


def within(span: Span) -> bool:
    """True when every whole number of the span is exact in JavaScript."""
    return -LARGEST <= span[0] and span[1] <= LARGEST


def whole(text: str, level: int, span: Span) -> Code:
    """An int result: as it is when proved small, else checked when it is run."""
    return Code(text, INT, level, span) if within(span) else Code(f"$.whole({text})", INT)


@on(ast.UnaryOp)
def unary(node: ast.UnaryOp, scope: Scope, wanted: Type | None) -> Code:
    """not c, -x. An int is taken from 0, since -0 is no int."""
    if isinstance(node.op, ast.Not):
        return Code(f"!{expression(node.operand, scope, BOOL).at(UNARY)}", BOOL, UNARY)
    value = expression(node.operand, scope)
    if not isinstance(node.op, ast.USub) or value.type not in NUMBERS:
        raise Refused(node, "Of the signs only `-` before a number is in the subset.", "Leave it out, or write the sum.")
    if value.type == FLOAT:
        return Code(f"-{value.at(UNARY + 1)}", FLOAT, UNARY)
    low, high = value.span
    if low > 0 and isinstance(node.operand, ast.Constant):
        return Code(f"-{value.text}", INT, UNARY, (-high, -low))
    return Code(f"0 - {value.at(SUM + 1)}", INT, SUM, (-high, -low))


@on(ast.BinOp)
def arithmetic(node: ast.BinOp, scope: Scope, wanted: Type | None) -> Code:
    """Two operands, worked out from the left as written: float sums must keep their tree."""
    whose = wanted if wanted and wanted.item else None
    left, right = expression(node.left, scope, whose), expression(node.right, scope, whose if isinstance(node.op, ast.Add) else None)
    return combine(node, node.op, left, right)


def combine(node: ast.AST, op: ast.operator, left: Code, right: Code) -> Code:
    """left op right."""
    if left.type.item and isinstance(op, ast.Add) and left.type == right.type:
        return Code(f"{left.at(UNARY + 1)}.concat({right.text})", left.type)
    if left.type.item and isinstance(op, ast.Mult) and right.type == INT:
        return Code(f"$.repeat({left.text}, {right.text})", left.type)
    if left.type not in NUMBERS or right.type not in NUMBERS:
        sign = ast.unparse(ast.BinOp(ast.Name("a"), op, ast.Name("b")))[2:-2]
        hint = "Return a Say with the id of a message." if STR in (left.type, right.type) else "Write int(...) around a bool; add lists of one type."
        raise Refused(node, f"`{sign}` does not join {left.type} and {right.type}.", hint)
    both_whole = left.type == right.type == INT
    if type(op) in ARITHMETIC:
        sign, level = ARITHMETIC[type(op)]
        text = f"{left.at(level)} {sign} {right.at(level + 1)}"
        return whole_result(op, text, level, left.span, right.span) if both_whole else Code(text, FLOAT, level)
    if isinstance(op, ast.Div):
        return division(left, right)
    if type(op) in HELPED and both_whole:
        return Code(f"$.{HELPED[type(op)]}({left.text}, {right.text})", INT, span=smaller(left.span, right.span, op))
    if type(op) in HELPED:
        raise Refused(node, "`//` and `%` take whole numbers only.", "Write math.floor(a / b).")
    hint = "Write x * x, or power(x, y) from generator.calculators.exactmath." if isinstance(op, ast.Pow) else "Use + - * / // %."
    raise Refused(node, "This operator is outside the subset.", hint)


def whole_result(op: ast.operator, text: str, level: int, a: Span, b: Span) -> Code:
    """a op b for ints, with the span of the result worked out; a product that may be zero loses its sign by + 0."""
    if isinstance(op, ast.Mult):
        corners = [x * y for x in a for y in b]
        span = (min(corners), max(corners))
        if within(span) and min(*a, *b) < 0:
            return Code(f"{text} + 0", INT, SUM, span)
        return whole(text, level, span)
    return whole(text, level, (a[0] + b[0], a[1] + b[1]) if isinstance(op, ast.Add) else (a[0] - b[1], a[1] - b[0]))


def smaller(a: Span, b: Span, op: ast.operator) -> Span:
    """The span of a // b or a % b."""
    most = max(map(abs, a if isinstance(op, ast.FloorDiv) else b))
    return (0 if min(*a, *b) >= 0 else -most, most)


def division(left: Code, right: Code) -> Code:
    """a / b, checked for zero unless b is a literal."""
    try:
        plain = float(right.text) != 0
    except ValueError:
        plain = False
    if plain:
        return Code(f"{left.at(PRODUCT)} / {right.at(PRODUCT + 1)}", FLOAT, PRODUCT)
    return Code(f"$.divide({left.text}, {right.text})", FLOAT)


@on(ast.BoolOp)
def logic(node: ast.BoolOp, scope: Scope, wanted: Type | None) -> Code:
    """and, or: of bools only, so that the result is a bool in both languages."""
    sign, level = ("&&", AND) if isinstance(node.op, ast.And) else ("||", OR)
    parts = [expression(value, scope, BOOL).at(level + 1) for value in node.values]
    return Code(f" {sign} ".join(parts), BOOL, level)


@on(ast.Compare)
def comparison(node: ast.Compare, scope: Scope, wanted: Type | None) -> Code:
    """a < b, a < b < c, x in xs."""
    if isinstance(node.ops[0], (ast.In, ast.NotIn)) and len(node.ops) == 1:
        return membership(node, scope)
    if not all(is_plain(middle) for middle in node.comparators[:-1]):
        raise Refused(node, "The middle of a chained comparison is worked out twice.", "Give it a name on a line before.")
    terms = [node.left, *node.comparators]
    pairs = [compare_pair(op, terms[i], terms[i + 1], scope) for i, op in enumerate(node.ops)]
    return pairs[0] if len(pairs) == 1 else Code(" && ".join(pair.at(AND + 1) for pair in pairs), BOOL, AND)


def compare_pair(op: ast.cmpop, first: ast.expr, second: ast.expr, scope: Scope) -> Code:
    """Two numbers in any way; two texts or two bools for equality."""
    if type(op) not in COMPARISONS:
        raise Refused(first, "`is` and chained `in` are outside the subset.", "Write == or !=; write `x in xs` alone.")
    left, right = expression(first, scope), expression(second, scope)
    sign, level = COMPARISONS[type(op)]
    numbers = left.type in NUMBERS and right.type in NUMBERS
    if not numbers and (level == ORDER or left.type != right.type or left.type not in (STR, BOOL)):
        hint = "Compare numbers in any way, two texts or two bools with == and !=; compare lists and records part by part."
        raise Refused(second, f"{left.type} and {right.type} are not compared so.", hint)
    return Code(f"{left.at(level + 1)} {sign} {right.at(level + 1)}", BOOL, level)


def membership(node: ast.Compare, scope: Scope) -> Code:
    """x in xs, x not in xs, of ints, texts or bools."""
    target = node.comparators[0]
    item = expression(node.left, scope)
    if isinstance(target, ast.Tuple):
        target = ast.copy_location(ast.List(target.elts, ast.Load()), target)
    if not is_plain(target):
        raise Refused(target, "The list after `in` is worked out first in JavaScript.", "Give it a name on a line before.")
    if item.type not in (INT, STR, BOOL):
        raise Refused(node, f"`in` does not look for {item.type}.", "Write any(x == y for y in ys).")
    text = f"{expression(target, scope, list_of(item.type)).text}.includes({item.text})"
    return Code(f"!{text}", BOOL, UNARY) if isinstance(node.ops[0], ast.NotIn) else Code(text, BOOL)


@on(ast.IfExp)
def choice(node: ast.IfExp, scope: Scope, wanted: Type | None) -> Code:
    """a if c else b, both of one type."""
    test, first = expression(node.test, scope, BOOL), expression(node.body, scope, wanted)
    second = expression(node.orelse, scope, first.type)
    span = (min(first.span[0], second.span[0]), max(first.span[1], second.span[1]))
    return Code(f"{test.at(CHOICE + 1)} ? {first.at(CHOICE)} : {second.at(CHOICE)}", first.type, CHOICE, span)


@on(ast.List)
def list_literal(node: ast.List, scope: Scope, wanted: Type | None) -> Code:
    """[a, b], all of one type; an empty one needs a place that says which."""
    item = wanted.item if wanted else None
    if not node.elts and item is None:
        raise Refused(node, "It is not said what this list holds.", "Write xs: list[float] = [] (or its type).")
    parts = []
    for part in node.elts:
        parts.append(expression(part, scope, item))
        item = parts[0].type
    return Code(f"[{', '.join(part.at(LOOSE) for part in parts)}]", list_of(item))


@on(ast.Subscript)
def subscript(node: ast.Subscript, scope: Scope, wanted: Type | None) -> Code:
    """xs[i], xs[a:b]."""
    xs = expression(node.value, scope)
    if xs.type.item is None:
        raise Refused(node, f"{xs.type} is not a list.", "Only lists are indexed.")
    if not isinstance(node.slice, ast.Slice):
        return Code(f"$.at({xs.text}, {expression(node.slice, scope, INT).text})", xs.type.item)
    if node.slice.step:
        raise Refused(node, "A slice has no step.", "Write a comprehension over range(start, stop, step).")
    ends = [expression(end, scope, INT).text if end else "" for end in (node.slice.lower, node.slice.upper)]
    arguments = ", ".join([ends[0] or "0", ends[1]] if ends[1] else ends[:1])
    return Code(f"{xs.at(UNARY + 1)}.slice({arguments})", xs.type)
