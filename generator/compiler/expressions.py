"""One small function per kind of expression, calls and comprehensions aside."""

import ast
import json
import math

from generator.compiler.scope import Scope, expression, on
from generator.compiler.types import AND, BOOL, BROKEN, CHOICE, EQUAL, FLOAT, INT, LARGEST, NUMBERS, OR, ORDER, PRODUCT, STR, SUM
from generator.compiler.types import TIGHT, UNARY, Code, Refused, Span, Type, need

ARITHMETIC = {ast.Add: ("+", SUM), ast.Sub: ("-", SUM), ast.Mult: ("*", PRODUCT)}
HELPED = {ast.FloorDiv: "quotient", ast.Mod: "remainder"}
ORDERS = {ast.Lt: "<", ast.LtE: "<=", ast.Gt: ">", ast.GtE: ">="}
COMPARISONS = {ast.Eq: ("===", EQUAL), ast.NotEq: ("!==", EQUAL), **{kind: (sign, ORDER) for kind, sign in ORDERS.items()}}


@on(ast.Constant)
def literal(node: ast.Constant, scope: Scope, wanted: Type | None) -> Code:
    """A number, text, True or False."""
    match node.value:
        case bool() as value:
            return Code(str(value).lower(), BOOL)
        case int() as value if value <= LARGEST:
            return Code(str(value), INT, span=(value, value))
        case float() as value if math.isfinite(value):
            return Code(repr(value), FLOAT)
        case str() as value:
            return Code(json.dumps(value), STR)
    hint = "Write a number below 2**53, a text, True or False; for None a record with ok: bool, such as Maybe."
    raise Refused(node, f"The literal {ast.unparse(node)} is outside the subset.", hint)


@on(ast.Name)
def name(node: ast.Name, scope: Scope, wanted: Type | None) -> Code:
    """A local name that has a value here, or a global constant."""
    known = scope.locals.get(node.id) or scope.globals.get(node.id)
    need(known, node, f"`{node.id}` is not known here.", "Define it above, or import it from generator.calculators.")
    need(isinstance(known, Code), node, f"`{node.id}` stands here without a call.", f"Write {node.id}(...).")
    valued = node.id not in scope.locals or node.id in scope.assigned or known.type == BROKEN
    need(valued, node, f"`{node.id}` may have no value here.", f"Give {node.id} a value before, on every path.")
    return known


@on(ast.Attribute)
def field(node: ast.Attribute, scope: Scope, wanted: Type | None) -> Code:
    """record.field."""
    record = expression(node.value, scope)
    fields = {part.name: part for part in record.type.fields}
    need(node.attr in fields, node, f"{record.type} has no field `{node.attr}`.", f"Its fields: {', '.join(fields) or 'none'}.")
    return Code(f"{record.at(TIGHT)}.{node.attr}", fields[node.attr].type, span=fields[node.attr].span)


@on(ast.UnaryOp)
def unary(node: ast.UnaryOp, scope: Scope, wanted: Type | None) -> Code:
    """not c, -x; an int is taken from 0, since -0 is no int."""
    if isinstance(node.op, ast.Not):
        return Code(f"!{expression(node.operand, scope, BOOL).at(UNARY)}", BOOL, UNARY)
    value = expression(node.operand, scope)
    if not isinstance(node.op, ast.USub) or value.type not in NUMBERS:
        raise Refused(node, f"This sign before {value.type} is outside the subset.", "Write `-` before a number, `not` before a bool.")
    low, high = value.span
    if value.type == INT and not (low > 0 and isinstance(node.operand, ast.Constant)):
        return Code(f"0 - {value.at(PRODUCT)}", INT, SUM, (-high, -low))
    return Code(f"-{value.at(TIGHT)}", value.type, UNARY, (-high, -low))


@on(ast.BinOp)
def binary(node: ast.BinOp, scope: Scope, wanted: Type | None) -> Code:
    """Two operands; the tree stays as it is written, since sums of floats depend on their order."""
    wanted = wanted if wanted and wanted.item else None
    left = expression(node.left, scope, wanted)
    right = expression(node.right, scope, wanted if isinstance(node.op, ast.Add) else None)
    types = (left.type, right.type)
    if left.type.item and types[0] == types[1] and isinstance(node.op, ast.Add):
        return Code(f"{left.at(TIGHT)}.concat({right.text})", left.type)
    if left.type.item and right.type == INT and isinstance(node.op, ast.Mult):
        return Code(f"$.repeat({left.text}, {right.text})", left.type)
    if left.type in NUMBERS and right.type in NUMBERS:
        return arithmetic(node, left, right)
    hint = "Join texts in a message: return a Say." if STR in types else "Write float(...) or int(...); join lists of one type."
    raise Refused(node, f"This operator does not join {left.type} and {right.type}.", hint)


def arithmetic(node: ast.BinOp, left: Code, right: Code) -> Code:
    """left op right of numbers; an int beside a float counts as a float, exactly."""
    op, both_whole = type(node.op), left.type == right.type == INT
    if op in ARITHMETIC:
        sign, level = ARITHMETIC[op]
        text = f"{left.at(level)} {sign} {right.at(level + 1)}"
        return whole_result(op, text, level, left.span, right.span) if both_whole else Code(text, FLOAT, level)
    if op in HELPED and both_whole:
        most = max(map(abs, left.span if op == ast.FloorDiv else right.span))
        return Code(f"$.{HELPED[op]}({left.text}, {right.text})", INT, span=(0 if min(*left.span, *right.span) >= 0 else -most, most))
    if op == ast.Div and isinstance(node.right, ast.Constant) and node.right.value:
        return Code(f"{left.at(PRODUCT)} / {right.text}", FLOAT, PRODUCT)
    if op == ast.Div:
        return Code(f"$.divide({left.text}, {right.text})", FLOAT)
    hint = "Write x * x, or power(x, y) from exactmath." if op == ast.Pow else "Of whole numbers // and % are taken; else math.floor(a / b)."
    raise Refused(node, "This operator is outside the subset here.", hint)


def whole_result(op: type, text: str, level: int, a: Span, b: Span) -> Code:
    """a op b of ints: checked when it runs, unless the span of the result proves it exact; a product loses the sign of -0."""
    products = sorted(x * y for x in a for y in b)
    span = {ast.Add: (a[0] + b[0], a[1] + b[1]), ast.Sub: (a[0] - b[1], a[1] - b[0]), ast.Mult: (products[0], products[-1])}[op]
    if span[0] < -LARGEST or span[1] > LARGEST:
        return Code(f"$.whole({text})", INT)
    return Code(f"{text} + 0", INT, SUM, span) if op == ast.Mult and min(*a, *b) < 0 else Code(text, INT, level, span)


@on(ast.BoolOp)
def logic(node: ast.BoolOp, scope: Scope, wanted: Type | None) -> Code:
    """and, or: of bools only, so that the result is a bool in both languages."""
    sign, level = ("&&", AND) if isinstance(node.op, ast.And) else ("||", OR)
    return Code(f" {sign} ".join(expression(value, scope, BOOL).at(level + 1) for value in node.values), BOOL, level)


@on(ast.Compare)
def comparison(node: ast.Compare, scope: Scope, wanted: Type | None) -> Code:
    """a < b, a < b < c, x in xs."""
    if isinstance(node.ops[0], (ast.In, ast.NotIn)) and len(node.ops) == 1:
        return membership(node, scope)
    for middle in node.comparators[:-1]:
        refuse_work(middle, "The middle of a chained comparison is worked out twice.")
    terms = [node.left, *node.comparators]
    pairs = [compare(op, terms[i], terms[i + 1], scope) for i, op in enumerate(node.ops)]
    return pairs[0] if len(pairs) == 1 else Code(" && ".join(pair.text for pair in pairs), BOOL, AND)


def compare(op: ast.cmpop, first: ast.expr, second: ast.expr, scope: Scope) -> Code:
    """Two numbers in any way; two texts or two bools for equality."""
    need(type(op) in COMPARISONS, second, "`is` and chained `in` are outside the subset.", "Write == or !=; x in xs stands alone.")
    left, right = expression(first, scope), expression(second, scope)
    sign, level = COMPARISONS[type(op)]
    same = left.type == right.type and left.type in (STR, BOOL) and level == EQUAL
    if not same and not (left.type in NUMBERS and right.type in NUMBERS):
        hint = "Numbers are compared in any way, two texts or two bools with == and !=; lists and records part by part."
        raise Refused(second, f"{left.type} and {right.type} are not compared like this.", hint)
    return Code(f"{left.at(level + 1)} {sign} {right.at(level + 1)}", BOOL, level)


def refuse_work(node: ast.expr, sentence: str) -> None:
    """Refuse anything but literals, names, fields and lists of them, where JavaScript looks twice or in another order."""
    plain = (ast.Constant, ast.Name, ast.Attribute, ast.List, ast.UnaryOp, ast.expr_context, ast.unaryop)
    need(all(isinstance(part, plain) for part in ast.walk(node)), node, sentence, "Give it a name on a line before.")


def membership(node: ast.Compare, scope: Scope) -> Code:
    """x in xs, x not in xs, of ints, texts or bools."""
    refuse_work(node.comparators[0], "JavaScript works the list after `in` out first.")
    item = expression(node.left, scope)
    need(item.type in (INT, STR, BOOL), node, f"`in` does not look for {item.type}.", "Write any(x == y for y in ys).")
    text = f"{expression(node.comparators[0], scope, Type('list', item.type)).text}.includes({item.text})"
    return Code(f"!{text}", BOOL, UNARY) if isinstance(node.ops[0], ast.NotIn) else Code(text, BOOL)


@on(ast.IfExp)
def choice(node: ast.IfExp, scope: Scope, wanted: Type | None) -> Code:
    """a if c else b, both of one type."""
    test, first = expression(node.test, scope, BOOL), expression(node.body, scope, wanted)
    second = expression(node.orelse, scope, first.type)
    span = (min(first.span[0], second.span[0]), max(first.span[1], second.span[1]))
    return Code(f"{test.at(OR)} ? {first.at(CHOICE)} : {second.at(CHOICE)}", first.type, CHOICE, span)


@on(ast.List)
def list_literal(node: ast.List, scope: Scope, wanted: Type | None) -> Code:
    """[a, b], all of one type; an empty one needs a place that says which."""
    item = wanted.item if wanted else None
    parts = []
    for part in node.elts:
        parts.append(expression(part, scope, item))
        item = parts[0].type
    need(item, node, "It is not said what this list holds.", "Write xs: list[float] = [] (or its type).")
    return Code(f"[{', '.join(part.text for part in parts)}]", Type("list", item))


@on(ast.Subscript)
def subscript(node: ast.Subscript, scope: Scope, wanted: Type | None) -> Code:
    """xs[i], xs[a:b]."""
    xs = expression(node.value, scope)
    need(xs.type.item, node, f"{xs.type} is not a list.", "Only lists are indexed.")
    if not isinstance(node.slice, ast.Slice):
        return Code(f"$.at({xs.text}, {expression(node.slice, scope, INT).text})", xs.type.item)
    need(not node.slice.step, node, "A slice has no step here.", "Write a comprehension over range(start, stop, 2).")
    start, stop = (expression(end, scope, INT).text if end else "" for end in (node.slice.lower, node.slice.upper))
    return Code(f"{xs.at(TIGHT)}.slice({start or '0'}{', ' * bool(stop)}{stop})", xs.type)
