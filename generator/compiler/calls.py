"""Calls: functions and records, the built-in functions of the subset, comprehensions and where they take their items from."""

import ast
from collections.abc import Callable

from generator.compiler.nodes import Local, Scope, expression, on
from generator.compiler.types import (
    AND, BOOL, BROKEN, CHOICE, FLOAT, INT, LOOSE, NUMBERS, OR, UNARY, Code, Parameter, Refused, Signature, Type,
    js_name, list_of,
)  # fmt: skip

MANY = 2**32  # more items than a JavaScript list can hold
COUNT = (0, MANY)
Comprehension = ast.ListComp | ast.GeneratorExp


@on(ast.Call)
def call(node: ast.Call, scope: Scope, wanted: Type | None) -> Code:
    """name(...) or math.name(...)."""
    name = ast.unparse(node.func)
    known = None if name in scope.locals else scope.globals.get(name)
    if isinstance(known, Signature):
        return call_known(node, known, scope)
    if known or name in scope.locals:
        told = known and known.type == BROKEN
        raise Refused(node, "" if told else f"`{name}` is not a function here.", "Write it without (), or give the value another name.")
    if name not in BUILTINS:
        hint = "The subset has " + " ".join(sorted(BUILTINS)) + "; others are defined above or imported from generator.calculators."
        raise Refused(node, f"`{name}()` is outside the subset.", hint)
    return BUILTINS[name](node, scope)


def call_known(node: ast.Call, known: Signature, scope: Scope) -> Code:
    """A function or record: arguments in the order of its parameters, since Python works them out as they are written."""
    given = [(None, value) for value in node.args] + [(keyword.arg, keyword.value) for keyword in node.keywords]
    parts = []
    for parameter in known.parameters:
        if given and given[0][0] in (None, parameter.name):
            parts.append(expression(given.pop(0)[1], scope, parameter.type).text)
        elif parameter.default:
            parts.append(parameter.default)
        else:
            raise Refused(node, f"`{known.name}` misses `{parameter.name}` here.", f"Write {signature(known.name, known.parameters)}, in this order.")
    if given:
        raise Refused(node, f"`{known.name}` does not take so many or such arguments.", f"Write {signature(known.name, known.parameters)}, in this order.")
    return Code(f"{known.name}({', '.join(parts)})", known.result)


def signature(name: str, parameters: tuple[Parameter, ...]) -> str:
    """A call as it should be written."""
    return f"{name}({', '.join(f'{part.name}: {part.type}' for part in parameters)})"


def arguments(node: ast.Call, scope: Scope, *types: Type | None) -> list[Code]:
    """Exactly so many positional arguments of these types (None: any)."""
    if len(node.args) != len(types) or node.keywords:
        raise Refused(node, f"`{ast.unparse(node.func)}` takes {len(types)} argument(s) here and no keyword.", "Leave the rest out.")
    return [expression(value, scope, type_) for value, type_ in zip(node.args, types)]


def length(node: ast.Call, scope: Scope) -> Code:
    """len(xs)."""
    (xs,) = arguments(node, scope, None)
    if xs.type.item is None:
        raise Refused(node, f"`len` counts the items of a list, not {xs.type}.", "Compare texts with == only.")
    return Code(f"{xs.at(UNARY + 1)}.length", INT, span=COUNT)


def absolute(node: ast.Call, scope: Scope) -> Code:
    """abs(x)."""
    (x,) = arguments(node, scope, None)
    if x.type not in NUMBERS:
        raise Refused(node, f"`abs` does not take {x.type}.", "Give a number.")
    return Code(f"Math.abs({x.text})", x.type, span=(0, max(map(abs, x.span))))


def from_float(helper: str) -> Callable[[ast.Call, Scope], Code]:
    """round, math.floor, math.ceil: a float becomes an int."""

    def emit(node: ast.Call, scope: Scope) -> Code:
        if len(node.args) == 2:
            raise Refused(node, "A calculator does not round to digits.", "Return the exact number; the message says its digits.")
        return Code(f"$.{helper}({arguments(node, scope, FLOAT)[0].text})", INT)

    return emit


def to_int(node: ast.Call, scope: Scope) -> Code:
    """int(x): a float is cut at the point, a bool becomes 0 or 1."""
    (x,) = arguments(node, scope, None)
    if x.type == BOOL:
        return Code(f"{x.at(CHOICE + 1)} ? 1 : 0", INT, CHOICE, (0, 1))
    if x.type != FLOAT:
        raise Refused(node, f"`int` takes a float or a bool here, not {x.type}.", "Leave int(...) away around an int.")
    return Code(f"$.truncate({x.text})", INT)


def to_float(node: ast.Call, scope: Scope) -> Code:
    """float(n): the same number in JavaScript."""
    (n,) = arguments(node, scope, None)
    if n.type != INT:
        raise Refused(node, f"`float` takes an int here, not {n.type}.", "Leave float(...) away around a float.")
    return Code(n.text, FLOAT, n.level)


def extreme(helper: str) -> Callable[[ast.Call, Scope], Code]:
    """min and max of two or more numbers of one type, or of a list."""

    def emit(node: ast.Call, scope: Scope) -> Code:
        if len(node.args) == 1:
            xs = sequence(node, scope)
        else:
            xs = expression(ast.copy_location(ast.List(node.args, ast.Load()), node), scope)
        if xs.type.item not in NUMBERS or node.keywords:
            raise Refused(node, f"`{helper}` takes numbers of one type and no key.", "Write a loop that keeps the best so far.")
        return Code(f"$.{helper}({xs.text})", xs.type.item)

    return emit


def total(node: ast.Call, scope: Scope) -> Code:
    """sum of ints; of floats it is another number in each Python."""
    xs = sequence(node, scope)
    if xs.type.item != INT or len(node.args) != 1 or node.keywords:
        raise Refused(node, "`sum` takes one list of whole numbers.", "Write math.fsum(xs) for floats.")
    return Code(f"$.sum({xs.text})", INT)


def float_sum(node: ast.Call, scope: Scope) -> Code:
    """math.fsum(xs): the exact sum, rounded once."""
    xs = sequence(node, scope)
    if xs.type.item != FLOAT or len(node.args) != 1 or node.keywords:
        raise Refused(node, "`math.fsum` takes one list of floats.", "Write sum(xs) for whole numbers.")
    return Code(f"$.fsum({xs.text})", FLOAT)


def root(node: ast.Call, scope: Scope) -> Code:
    """math.sqrt(x)."""
    return Code(f"$.sqrt({arguments(node, scope, FLOAT)[0].text})", FLOAT)


def sequence(node: ast.Call, scope: Scope) -> Code:
    """The first argument as a list: a list, or a comprehension without its brackets."""
    if not node.args:
        raise Refused(node, f"`{ast.unparse(node.func)}` needs a list.", "Give it one.")
    first = node.args[0]
    return comprehension(first, scope, None) if isinstance(first, ast.GeneratorExp) else expression(first, scope)


def quantifier(method: str) -> Callable[[ast.Call, Scope], Code]:
    """any and all of a comprehension; they stop at the first that decides."""

    def emit(node: ast.Call, scope: Scope) -> Code:
        if len(node.args) != 1 or not isinstance(node.args[0], ast.GeneratorExp):
            raise Refused(node, f"`{ast.unparse(node.func)}` takes a comprehension.", "Write any(x > 0 for x in xs).")
        xs, names, keep, inner = loop(node.args[0], scope)
        test = expression(node.args[0].elt, inner, BOOL)
        if keep and method == "some":
            test = Code(f"{keep.at(AND)} && {test.at(AND + 1)}", BOOL, AND)
        elif keep:
            test = Code(f"!{keep.at(UNARY)} || {test.at(OR + 1)}", BOOL, OR)
        return Code(f"{xs.at(UNARY + 1)}.{method}(({names}) => {test.text})", BOOL)

    return emit


def sort(node: ast.Call, scope: Scope) -> Code:
    """sorted(xs), sorted(xs, key=lambda x: number or (number, number), reverse=True); stable in both languages."""
    xs = expression(node.args[0], scope) if len(node.args) == 1 else arguments(node, scope, None)[0]
    options = {keyword.arg: keyword.value for keyword in node.keywords}
    key, reverse = options.pop("key", None), options.pop("reverse", ast.Constant(False))
    if xs.type.item is None or options or not isinstance(reverse, ast.Constant) or not isinstance(reverse.value, bool):
        raise Refused(node, "`sorted` takes a list, key=lambda and reverse=True here.", "Write sorted(xs, key=lambda x: x.rank).")
    if key is None and xs.type.item in NUMBERS:
        keys = "(x) => [x]"
    elif isinstance(key, ast.Lambda) and len(key.args.args) == 1 and not key.args.defaults:
        name = key.args.args[0].arg
        inner = scope.inner({name: Local(xs.type.item, js_name(name, key))})
        parts = key.body.elts if isinstance(key.body, ast.Tuple) else [key.body]
        keys = f"({js_name(name, key)}) => [{', '.join(sort_key(part, inner) for part in parts)}]"
    else:
        raise Refused(node, f"How to sort {xs.type.item} is not said.", "Write key=lambda x: and a number, or two numbers in ().")
    return Code(f"$.sorted({xs.text}, {keys}, {-1 if reverse.value else 1})", xs.type)


def sort_key(node: ast.expr, scope: Scope) -> str:
    """One number to sort by."""
    key = expression(node, scope)
    if key.type not in NUMBERS:
        raise Refused(node, f"`sorted` orders by numbers here, not by {key.type}.", "Give each item a rank, or write int(...) around a bool.")
    return key.at(LOOSE)


@on(ast.ListComp)
def comprehension(node: Comprehension, scope: Scope, wanted: Type | None) -> Code:
    """[e for x in xs if c]: test and item are worked out in turn, as Python does."""
    xs, names, keep, inner = loop(node, scope)
    item = expression(node.elt, inner, wanted.item if wanted else None)
    if keep:
        return Code(f"$.collect({xs.text}, ({names}) => {keep.text}, ({names}) => {item.text})", list_of(item.type))
    if item.text == names:
        return Code(f"{xs.at(UNARY + 1)}.slice()", list_of(item.type))
    return Code(f"{xs.at(UNARY + 1)}.map(({names}) => {item.text})", list_of(item.type))


def loop(node: Comprehension, scope: Scope) -> tuple[Code, str, Code | None, Scope]:
    """The one loop of a comprehension: its list, its names, its condition if any, and the scope inside."""
    if len(node.generators) != 1 or node.generators[0].is_async:
        raise Refused(node, "A comprehension has one loop here.", "Write the outer loop as a for.")
    part = node.generators[0]
    xs, items = items_of(part.iter, scope)
    names, local = targets(part.target, items, scope)
    inner = scope.inner(local)
    keep = [expression(test, inner, BOOL) for test in part.ifs]
    joined = keep[0] if len(keep) == 1 else Code(" && ".join(test.at(AND + 1) for test in keep), BOOL, AND) if keep else None
    return xs, names, joined, inner


def items_of(node: ast.expr, scope: Scope) -> tuple[Code, list[Local]]:
    """What a loop runs over, as a JavaScript list, and the types of what it gives at each turn."""
    name = ast.unparse(node.func) if isinstance(node, ast.Call) else ""
    if name == "range":
        start, stop, step = range_parts(node, scope)
        text = f"$.range({start.text}, {stop.text}, {step})"
        return Code(text, list_of(INT)), [Local(INT, "", (min(start.span[0], stop.span[0]), max(start.span[1], stop.span[1])))]
    if name not in ("enumerate", "zip"):
        xs = expression(node, scope)
        if xs.type.item is None:
            raise Refused(node, f"A loop does not run over {xs.type}.", "Loop over a list, range(...), enumerate(xs) or zip(xs, ys).")
        return xs, [Local(xs.type.item, "")]
    lists = arguments(node, scope, *[None] * (1 if name == "enumerate" else max(2, len(node.args))))
    if any(xs.type.item is None for xs in lists):
        raise Refused(node, f"`{name}` takes lists here.", "Give it lists.")
    items = [Local(INT, "", COUNT)] * (name == "enumerate") + [Local(xs.type.item, "") for xs in lists]
    return Code(f"$.{name}({', '.join(xs.text for xs in lists)})", list_of(INT)), items


def range_parts(node: ast.Call, scope: Scope) -> tuple[Code, Code, int]:
    """Start, stop and the literal step of a range."""
    given = node.args if len(node.args) > 1 else [ast.copy_location(ast.Constant(0), node), *node.args]
    if node.keywords or len(given) not in (2, 3):
        raise Refused(node, "`range` takes one to three whole numbers.", "Write range(n), range(a, b) or range(a, b, -1).")
    step = ast.unparse(given[2]) if len(given) == 3 else "1"
    if not step.removeprefix("-").isdecimal() or int(step) == 0:
        raise Refused(node, "The step of a range is a literal whole number, not 0.", "Write range(a, b, 2) or range(a, b, -1).")
    return expression(given[0], scope, INT), expression(given[1], scope, INT), int(step)


def targets(node: ast.expr, items: list[Local], scope: Scope) -> tuple[str, dict[str, Local]]:
    """The names of a loop as JavaScript, and what they mean inside it."""
    parts = node.elts if isinstance(node, ast.Tuple) else [node]
    if len(parts) != len(items) or not all(isinstance(part, ast.Name) for part in parts):
        raise Refused(node, f"This loop gives {len(items)} at each turn.", "Write one name for each: for index, x in enumerate(xs).")
    local = {}
    for part, item in zip(parts, items):
        local[part.id] = Local(item.type, js_name(part.id, part), item.span, loop=True)
    text = ", ".join(name.js for name in local.values())
    return (f"[{text}]" if len(items) > 1 else text), local


BUILTINS: dict[str, Callable[[ast.Call, Scope], Code]] = {
    "len": length, "abs": absolute, "int": to_int, "float": to_float, "min": extreme("min"), "max": extreme("max"), "sum": total,
    "any": quantifier("some"), "all": quantifier("every"), "sorted": sort, "round": from_float("round"),
    "math.floor": from_float("floor"), "math.ceil": from_float("ceil"), "math.sqrt": root, "math.fsum": float_sum,
}  # fmt: skip
