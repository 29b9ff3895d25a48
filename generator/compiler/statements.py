"""One small function per kind of statement, and the flow of a function: names have a value on every path, paths end in return."""

import ast
from collections.abc import Callable
from dataclasses import dataclass, field

from generator.compiler.calls import items_of, range_parts, targets
from generator.compiler.expressions import combine
from generator.compiler.modules import Module, read_type
from generator.compiler.nodes import Local, Scope, expression
from generator.compiler.types import BOOL, BROKEN, INT, LOOSE, STR, Code, Refused, Signature, js_name

Lines = list[str]


@dataclass
class Body:
    """A function being compiled: its module, head, scope, and the comments that are still to be placed."""

    module: Module
    head: Signature
    scope: Scope
    comments: list[tuple[int, str]]
    homes: dict[str, ast.stmt] = field(default_factory=dict)
    stores: list[str] = field(default_factory=list)


def function(node: ast.FunctionDef, module: Module, comments: list[tuple[int, str]]) -> Lines:
    """The lines of a function. Refusals are added to the module's, so that all of a run are told."""
    head = module.names[node.name]
    local = {part.name: Local(part.type, js_name(part.name, node)) for part in head.parameters}
    body = Body(module, head, Scope(module.names, local, set(local)), comments)
    body.stores = [part.id for part in ast.walk(node) if isinstance(part, ast.Name) and isinstance(part.ctx, ast.Store)]
    for name in {assigned_name(part) for part in ast.walk(node)} - {"", *local}:
        find_home(name, node.body, body.homes)
    lines = block(node.body, body)
    if body.scope.assigned is not None:
        refuse(body, Refused(node, f"`{node.name}` may end without a result.", "End every path with return or raise."))
    return [f"function {head.name}({', '.join(head.fields())}) {{", *lines, "}"]


def find_home(name: str, statements: list[ast.stmt], homes: dict[str, ast.stmt]) -> None:
    """Find the statement before or at which a local name is declared: the first of the innermost block with all its uses."""
    using = [part for part in statements if mentions(part, name)]
    blocks = [getattr(using[0], part, []) for part in ("body", "orelse")]
    inside = [part for part in blocks if any(mentions(child, name) for child in part)]
    if len(using) == 1 and len(inside) == 1 and not any(mentions(part, name) for part in header(using[0])):
        find_home(name, inside[0], homes)
    else:
        homes[name] = using[0]


def header(node: ast.stmt) -> list[ast.AST]:
    """What a statement with a block works out itself."""
    return [part for part in ast.iter_child_nodes(node) if not isinstance(part, ast.stmt)]


def mentions(node: ast.AST, name: str) -> bool:
    """True when the name occurs in the node."""
    return any(isinstance(part, ast.Name) and part.id == name for part in ast.walk(node))


def refuse(body: Body, refused: Refused) -> None:
    """Keep a refusal and go on."""
    body.module.refusals.append(refused)


def block(statements: list[ast.stmt], body: Body) -> Lines:
    """The lines of a block, indented; comments stand before their statement."""
    lines = []
    for node in statements:
        lines += pop_comments(body.comments, node.lineno if hasattr(node, "body") else node.end_lineno)
        try:
            lines += statement(node, body)
        except Refused as refused:
            refuse(body, refused)
            if isinstance(node, (ast.Return, ast.Raise)):
                body.scope.assigned = None
            elif body.scope.assigned is None:
                body.scope.assigned = set(body.scope.locals)
            for part in ast.walk(node):
                if isinstance(part, ast.Name) and isinstance(part.ctx, ast.Store):
                    body.scope.locals.setdefault(part.id, Local(BROKEN, part.id))
    return ["  " + line for line in lines]


def pop_comments(comments: list[tuple[int, str]], last: int) -> Lines:
    """The comments up to a line, which are then done with."""
    taken = [text for line, text in comments if line <= last]
    del comments[: len(taken)]
    return taken


def statement(node: ast.stmt, body: Body) -> Lines:
    """JavaScript for a statement, with the declarations that it needs."""
    if body.scope.assigned is None:
        raise Refused(node, "This is never reached.", "Take it out.")
    emit = STATEMENTS.get(type(node))
    if emit is None:
        hint = "Write it with = , if, while, for, return, raise ValueError and append."
        raise Refused(node, f"`{type(node).__name__}` is outside the subset.", hint)
    target = assigned_name(node)
    homes = sorted(name for name, home in body.homes.items() if home is node and name != target)
    return [f"let {', '.join(js_name(name, node) for name in homes)};"] * bool(homes) + emit(node, body)


def assigned_name(node: ast.AST) -> str:
    """The name that an assignment gives a value, or nothing."""
    target = node.targets[0] if isinstance(node, ast.Assign) else getattr(node, "target", None)
    return target.id if isinstance(node, (ast.Assign, ast.AnnAssign)) and isinstance(target, ast.Name) else ""


def assign(node: ast.Assign | ast.AnnAssign, body: Body) -> Lines:
    """x = e, x: type = e, xs[i] = e."""
    target = node.targets[0] if isinstance(node, ast.Assign) else node.target
    if isinstance(node, ast.Assign) and len(node.targets) > 1 or isinstance(target, (ast.Tuple, ast.List)):
        raise Refused(node, "One name takes one value here.", "Write one assignment a line.")
    if isinstance(target, ast.Subscript):
        return [store(target, body, lambda item: expression(node.value, body.scope, item.type))]
    if not isinstance(target, ast.Name):
        raise Refused(node, "A field of a record is never changed.", "Make a new record.")
    known = body.scope.locals.get(target.id)
    wanted = read_type(node.annotation, body.module) if isinstance(node, ast.AnnAssign) else known and known.type
    if node.value is None:
        raise Refused(node, f"`{target.id}` gets no value here.", "Give it one on this line.")
    value = expression(node.value, body.scope, wanted)
    give(target, value, is_fresh(node.value), body)
    first = "" if body.homes.get(target.id) is not node else "const " if body.stores.count(target.id) == 1 else "let "
    return [f"{first}{js_name(target.id, node)} = {value.text};"]


def is_fresh(node: ast.expr) -> bool:
    """True when the value is made here, so that changing it changes nothing else."""
    if isinstance(node, ast.Subscript):
        return isinstance(node.slice, ast.Slice)
    return not isinstance(node, (ast.Name, ast.Attribute, ast.IfExp))


def give(target: ast.Name, value: Code, fresh: bool, body: Body) -> None:
    """Note that a local name has a value now. A name keeps its type; one that is assigned once keeps its span."""
    known = body.scope.locals.get(target.id)
    if known and known.loop:
        raise Refused(target, f"`{target.id}` belongs to the loop.", "Choose another name.")
    if known and known.type not in (value.type, BROKEN):
        raise Refused(target, f"`{target.id}` is {known.type} above and {value.type} here.", "Choose another name.")
    if target.id in body.module.names:
        raise Refused(target, f"`{target.id}` is a name of the module.", "Choose another name.")
    local = Local(value.type, js_name(target.id, target), fresh=fresh and (known is None or known.fresh))
    local.span = value.span if body.stores.count(target.id) == 1 and known is None else local.span
    body.scope.locals[target.id] = local
    body.scope.assigned.add(target.id)


def changed_list(node: ast.expr, body: Body) -> Code:
    """A list that may be changed: one that this function made."""
    base = node
    while isinstance(base, ast.Subscript):
        base = base.value
    xs = expression(node, body.scope)
    local = body.scope.locals.get(base.id) if isinstance(base, ast.Name) else None
    if xs.type.item is None or local is None or not local.fresh:
        raise Refused(node, "Only a list that this function made is changed.", "Copy it first: ys = xs[:], and return it.")
    return xs


def store(target: ast.Subscript, body: Body, value_of: Callable[[Code], Code]) -> str:
    """xs[i] = value; Python works the value out first."""
    xs, index = changed_list(target.value, body), expression(target.slice, body.scope, INT)
    value = value_of(Code(f"$.at({xs.text}, {index.text})", xs.type.item))
    return f"$.store({value.text}, {xs.text}, {index.text});"


def augment(node: ast.AugAssign, body: Body) -> Lines:
    """x += e, xs[i] += e."""

    def value_of(item: Code) -> Code:
        right = expression(node.value, body.scope)
        value = combine(node, node.op, item, right)
        if value.type != item.type or item.type.item:
            raise Refused(node, f"This makes {value.type} of {item.type}.", "Write x = ... with the whole sum; xs.append(v) for a list.")
        return value

    if isinstance(node.target, ast.Subscript):
        return [store(node.target, body, value_of)]
    if not isinstance(node.target, ast.Name):
        raise Refused(node, "A field of a record is never changed.", "Make a new record.")
    loaded = ast.copy_location(ast.Name(node.target.id, ast.Load()), node.target)
    value = value_of(expression(loaded, body.scope))
    give(node.target, value, True, body)
    return [f"{js_name(node.target.id, node)} = {value.text};"]


def call_alone(node: ast.Expr, body: Body) -> Lines:
    """xs.append(e); a docstring is set above the function."""
    match node.value:
        case ast.Constant(value=str()):
            return []
        case ast.Call(func=ast.Attribute(value=xs, attr="append"), args=[item], keywords=[]):
            changed = changed_list(xs, body)
            return [f"{changed.text}.push({expression(item, body.scope, changed.type.item).text});"]
    raise Refused(node, "Nothing keeps this value.", "Assign it, or take the line out; lists have only append.")


def if_else(node: ast.If, body: Body, word: str = "if") -> Lines:
    """if, elif, else: afterwards those names have a value that have one on every way that goes on."""
    lines = [f"{word} ({expression(node.test, body.scope, BOOL).text}) {{"]
    before = set(body.scope.assigned)
    lines += block(node.body, body)
    after, body.scope.assigned = body.scope.assigned, before
    if len(node.orelse) == 1 and isinstance(node.orelse[0], ast.If) and node.orelse[0].col_offset == node.col_offset:
        lines += if_else(node.orelse[0], body, "} else if")[:-1]
    elif node.orelse:
        lines += ["} else {", *block(node.orelse, body)]
    ways = [way for way in (after, body.scope.assigned) if way is not None]
    body.scope.assigned = set.intersection(*ways) if ways else None
    return [*lines, "}"]


def loop_body(node: ast.For | ast.While, body: Body) -> Lines:
    """The block of a loop, which may run not at all: what it assigns has no value for certain afterwards."""
    if node.orelse:
        raise Refused(node, "`else` after a loop is outside the subset.", "Keep a bool and test it after the loop.")
    before = set(body.scope.assigned)
    lines = block(node.body, body)
    body.scope.assigned = before
    return [*lines, "}"]


def while_loop(node: ast.While, body: Body) -> Lines:
    """while: with a limit of steps, so that a page never hangs."""
    test = expression(node.test, body.scope, BOOL)
    return [f"for (let $steps = 0; {test.text}; $steps = $.step($steps)) {{", *loop_body(node, body)]


def for_loop(node: ast.For, body: Body) -> Lines:
    """for over a list, range, enumerate, zip; the end of a range is worked out once."""
    xs, items = items_of(node.iter, body.scope)
    names, local = targets(node.target, items, body.scope)
    for name in local:
        if name in body.scope.assigned or name in body.module.names:
            raise Refused(node.target, f"`{name}` is in use already.", "Choose another name for the loop.")
    for part in ast.walk(node):
        if name := changed_name(part):
            if mentions(node.iter, name):
                raise Refused(part, f"`{name}` is changed while the loop runs over it.", f"Loop over a copy, {name}[:].")
    shadowed = {name: body.scope.locals.pop(name) for name in local if name in body.scope.locals}
    body.scope.locals.update(local)
    body.scope.assigned |= set(local)
    opening = f"for (const {names} of {xs.text}) {{"
    if isinstance(node.iter, ast.Call) and ast.unparse(node.iter.func) == "range":
        start, stop, step = range_parts(node.iter, body.scope)
        sign = "<" if step > 0 else ">"
        opening = f"for (let {names} = {start.text}, $end = {stop.text}; {names} {sign} $end; {names} += {step}) {{"
    lines = loop_body(node, body)
    for name in local:
        body.scope.locals.pop(name, None)
        body.scope.assigned.discard(name)
    body.scope.locals.update(shadowed)
    return [opening, *lines]


def changed_name(node: ast.AST) -> str:
    """The name of a list that this node changes, or nothing."""
    match node:
        case ast.Call(func=ast.Attribute(value=base, attr="append")):
            pass
        case ast.Subscript(value=base, ctx=ast.Store()):
            pass
        case _:
            return ""
    while isinstance(base, ast.Subscript):
        base = base.value
    return base.id if isinstance(base, ast.Name) else ""


def give_back(node: ast.Return, body: Body) -> Lines:
    """return e."""
    if node.value is None:
        raise Refused(node, "A function returns a value.", f"Return {body.head.result}.")
    value = expression(node.value, body.scope, body.head.result)
    body.scope.assigned = None
    return [f"return {value.text};"]


def fail(node: ast.Raise, body: Body) -> Lines:
    """raise ValueError("text")."""
    match node:
        case ast.Raise(exc=ast.Call(func=ast.Name(id="ValueError"), args=[ast.Constant(value=str()) as text], keywords=[]), cause=None):
            body.scope.assigned = None
            return [f'throw $.error("ValueError", {expression(text, body.scope, STR).at(LOOSE)});']
    raise Refused(node, "Only a ValueError with a literal text is raised.", 'Write raise ValueError("what is wrong").')


def leave(node: ast.Break | ast.Continue, body: Body) -> Lines:
    """break, continue."""
    body.scope.assigned = None
    return [f"{type(node).__name__.lower()};"]


def nothing(node: ast.Pass, body: Body) -> Lines:
    """pass."""
    return []


STATEMENTS: dict[type, Callable[[ast.stmt, Body], Lines]] = {
    ast.Assign: assign, ast.AnnAssign: assign, ast.AugAssign: augment, ast.Expr: call_alone, ast.If: if_else, ast.While: while_loop,
    ast.For: for_loop, ast.Return: give_back, ast.Raise: fail, ast.Break: leave, ast.Continue: leave, ast.Pass: nothing,
}  # fmt: skip
