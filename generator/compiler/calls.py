"""Calls: functions and records, the built-in functions of the subset, comprehensions and what they run over."""

import ast

from generator.compiler.scope import Scope, expression, on
from generator.compiler.types import AND, BOOL, BROKEN, COUNT, FLOAT, INT, NUMBERS, TIGHT, Code, Refused, Signature, Type, js_name, need

# name(type) -> the result's type, its JavaScript, its span
BUILTINS: dict[str, tuple] = {
    "len(list)": (INT, "{}.length", COUNT), "sum(list[int])": (INT, "$.sum({})"), "math.fsum(list[float])": (FLOAT, "$.fsum({})"),
    "abs(int)": (INT, "Math.abs({})"), "abs(float)": (FLOAT, "Math.abs({})"), "math.sqrt(float)": (FLOAT, "$.sqrt({})"),
    "round(float)": (INT, "$.round({})"), "math.floor(float)": (INT, "$.floor({})"), "math.ceil(float)": (INT, "$.ceil({})"),
    "int(float)": (INT, "$.truncate({})"), "int(bool)": (INT, "({} ? 1 : 0)", (0, 1)), "float(int)": (FLOAT, "{}"),
    "min(list[int])": (INT, "$.min({})"), "min(list[float])": (FLOAT, "$.min({})"),
    "max(list[int])": (INT, "$.max({})"), "max(list[float])": (FLOAT, "$.max({})"),
}  # fmt: skip
QUANTIFIERS = {"any": "some", "all": "every"}
BUILTIN_HINT = f"The subset has {', '.join([*BUILTINS, *QUANTIFIERS, 'sorted'])}; sum floats by math.fsum."


@on(ast.Call)
def call(node: ast.Call, scope: Scope, wanted: Type | None) -> Code:
    """name(...) or math.name(...)."""
    name = ast.unparse(node.func)
    known = scope.locals.get(name) or scope.globals.get(name)
    if isinstance(known, Signature):
        return call_known(node, known, scope)
    told = known and known.type == BROKEN
    need(not known, node, "" if told else f"`{name}` is not a function here.", "Leave () out, or give the value another name.")
    if name == "sorted":
        return sort(node, scope)
    return quantifier(node, name, scope) if name in QUANTIFIERS else builtin(node, name, scope)


def call_known(node: ast.Call, known: Signature, scope: Scope) -> Code:
    """A function or record: arguments in the order of its parameters, since Python works them out as they are written."""
    given = [("", value) for value in node.args] + [(keyword.arg, keyword.value) for keyword in node.keywords]
    hint = f"Write {known.name}({', '.join(f'{part.name}: {part.type}' for part in known.parameters)}), in this order."
    parts = []
    for parameter in known.parameters:
        if not given or given[0][0] not in ("", parameter.name):
            need(parameter.default, node, f"`{parameter.name}` is missing here.", hint)
            parts.append(parameter.default)
            continue
        value = expression(given.pop(0)[1], scope, parameter.type)
        if not parameter.span[0] <= value.span[0] <= value.span[1] <= parameter.span[1]:
            raise Refused(node, f"`{parameter.name}` may leave its range.", "Give it a number that is sure to be in range.")
        parts.append(value.text)
    need(not given, node, f"`{known.name}` takes less than is given here.", hint)
    return Code(f"{known.name}({', '.join(parts)})", known.result)


def builtin(node: ast.Call, name: str, scope: Scope) -> Code:
    """A built-in function of one argument; min and max take two or more as well."""
    args = [ast.copy_location(ast.List(node.args), node)] if name in ("min", "max") and len(node.args) > 1 else node.args
    need(len(args) == 1 and not node.keywords, node, f"`{name}` is not called like this here.", BUILTIN_HINT)
    made = isinstance(args[0], ast.GeneratorExp)
    value = comprehension(args[0], scope, None) if made else expression(args[0], scope)
    kind = "list" if name == "len" and value.type.item else value.type
    need(f"{name}({kind})" in BUILTINS, node, f"`{name}` of {value.type} is outside the subset.", BUILTIN_HINT)
    type_, text, *span = BUILTINS[f"{name}({kind})"]
    return Code(text.format(value.at(TIGHT)), type_, TIGHT, *span)


def quantifier(node: ast.Call, name: str, scope: Scope) -> Code:
    """any and all of a comprehension; they stop at the first item that decides."""
    if len(node.args) != 1 or not isinstance(node.args[0], ast.GeneratorExp) or node.args[0].generators[0].ifs:
        raise Refused(node, f"`{name}` takes a comprehension without if.", f"Write {name}(x > 0 for x in xs).")
    xs, names, _, inner = loop(node.args[0], scope)
    test = expression(node.args[0].elt, inner, BOOL)
    return Code(f"{xs.at(TIGHT)}.{QUANTIFIERS[name]}(({names}) => {test.text})", BOOL)


def sort(node: ast.Call, scope: Scope) -> Code:
    """sorted(xs, key=lambda x: number): stable in both languages."""
    match node:
        case ast.Call(args=[listed], keywords=[ast.keyword("key", ast.Lambda(ast.arguments(args=[ast.arg(name)], defaults=[]), body))]):
            xs = expression(listed, scope)
            inner = scope.inner({name: Code(js_name(name), xs.type.item or xs.type)})
            if xs.type.item and (key := expression(body, inner)).type in NUMBERS:
                return Code(f"$.sorted({xs.text}, ({js_name(name)}) => {key.text})", xs.type)
    raise Refused(node, "`sorted` takes a list and a key that is a number.", "Write sorted(xs, key=lambda x: -x.rank); sort twice for ties.")


@on(ast.ListComp)
def comprehension(node: ast.ListComp | ast.GeneratorExp, scope: Scope, wanted: Type | None) -> Code:
    """[e for x in xs if c]: condition and item are worked out in turn, as Python does."""
    xs, names, keep, inner = loop(node, scope)
    item = expression(node.elt, inner, wanted.item if wanted else None)
    if keep:
        return Code(f"$.collect({xs.text}, ({names}) => {keep}, ({names}) => {item.text})", Type("list", item.type))
    return Code(f"{xs.at(TIGHT)}.map(({names}) => {item.text})", Type("list", item.type))


def loop(node: ast.ListComp | ast.GeneratorExp, scope: Scope) -> tuple[Code, str, str, Scope]:
    """The one loop of a comprehension: its list, its names, its condition if any, and the scope inside."""
    need(len(node.generators) == 1, node, "A comprehension has one loop here.", "Write the outer loop as a for.")
    part = node.generators[0]
    xs, items = items_of(part.iter, scope)
    names, local = targets(part.target, items)
    inner = scope.inner(local)
    return xs, names, " && ".join(expression(test, inner, BOOL).at(AND + 1) for test in part.ifs), inner


def items_of(node: ast.expr, scope: Scope) -> tuple[Code, list[Code]]:
    """What a loop runs over, as a list, and what it gives at each turn."""
    name = ast.unparse(node.func) if isinstance(node, ast.Call) else ""
    if name == "range":
        start, stop, step = range_parts(node, scope)
        span = (min(start.span[0], stop.span[0]), max(start.span[1], stop.span[1]))
        return Code(f"$.range({start.text}, {stop.text}, {step})", Type("list", INT)), [Code("", INT, span=span)]
    helped = name in ("enumerate", "zip")
    lists = [expression(part, scope) for part in (node.args if helped else [node])]
    if not all(xs.type.item for xs in lists) or len(lists) != (2 if name == "zip" else 1):
        raise Refused(node, "A loop does not run over this.", "Loop over a list, range(...), enumerate(xs) or zip(xs, ys).")
    items = [Code("", INT, span=COUNT)] * (name == "enumerate") + [Code("", xs.type.item) for xs in lists]
    return Code(f"$.{name}({', '.join(xs.text for xs in lists)})", lists[0].type) if helped else lists[0], items


def range_parts(node: ast.Call, scope: Scope) -> tuple[Code, Code, str]:
    """Start, stop and the literal step of a range."""
    given = node.args if len(node.args) > 1 else [ast.copy_location(ast.Constant(0), node), *node.args]
    step = ast.unparse(given[2]) if len(given) == 3 else "1"
    if node.keywords or not 2 <= len(given) <= 3 or step not in ("1", "2", "-1"):
        raise Refused(node, "`range` is not called like this here.", "Write range(n), range(a, b), or range(a, b, -1) or 2 as the step.")
    return expression(given[0], scope, INT), expression(given[1], scope, INT), step


def targets(node: ast.expr, items: list[Code]) -> tuple[str, dict[str, Code]]:
    """The names of a loop in JavaScript, and what they mean inside it."""
    parts = node.elts if isinstance(node, ast.Tuple) else [node]
    if len(parts) != len(items) or not all(isinstance(part, ast.Name) for part in parts):
        raise Refused(node, f"This loop gives {len(items)} at each turn.", "Write one name for each: for index, x in enumerate(xs).")
    local = {part.id: Code(js_name(part.id), item.type, TIGHT, item.span) for part, item in zip(parts, items)}
    text = ", ".join(code.text for code in local.values())
    return f"[{text}]" if len(items) > 1 else text, local
