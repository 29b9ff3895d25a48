"""One small function per kind of statement, and the flow of a function: a name has a value on every path, a path ends in return."""

import ast
from collections.abc import Callable
from dataclasses import dataclass, field

from generator.compiler.calls import items_of, range_parts, targets
from generator.compiler.modules import Module, read_type
from generator.compiler.scope import Scope, expression, outside
from generator.compiler.types import ANY_WHOLE, BOOL, BROKEN, STR, TIGHT, Code, Refused, Type, js_name, need

Lines = list[str]
Comments = list[tuple[int, str]]


@dataclass
class Body:
    """A function being compiled: its module, result, scope, the comments still to be placed, at or before which statement
    a local name is declared, and how often each is given a value."""

    module: Module
    result: Type
    scope: Scope
    comments: Comments
    homes: dict[str, ast.stmt] = field(default_factory=dict)
    stores: list[str] = field(default_factory=list)


def function(node: ast.FunctionDef, module: Module, comments: Comments) -> Lines:
    """The lines of a function. What is refused is added to the module's refusals, so that all of a run are told."""
    head = module.names[node.name]
    local = {part.name: Code(js_name(part.name), part.type) for part in head.parameters}
    body = Body(module, head.result, Scope(module.names, local, set(local)), comments)
    body.stores = [part.id for part in ast.walk(node) if isinstance(part, ast.Name) and isinstance(part.ctx, ast.Store)] + list(local)
    for name in {assigned_name(part) for part in ast.walk(node)} - {"", *local}:
        find_home(name, node.body, body.homes)
    names, before = ", ".join(code.text for code in local.values()), len(module.refusals)
    lines = block(node.body, body)
    if body.scope.assigned is not None and len(module.refusals) == before:
        module.refusals.append(Refused(node, f"`{node.name}` may end without a result.", "End every path with return or raise."))
    return [f"function {head.name}({names}) {{", *lines, "}"]


def assigned_name(node: ast.AST) -> str:
    """The name that an assignment gives a value, or nothing."""
    target = node.targets[0] if isinstance(node, ast.Assign) else getattr(node, "target", None)
    return target.id if isinstance(node, (ast.Assign, ast.AnnAssign, ast.AugAssign)) and isinstance(target, ast.Name) else ""


def mentions(node: ast.AST, name: str) -> bool:
    """True when the name occurs in the node."""
    return any(isinstance(part, ast.Name) and part.id == name for part in ast.walk(node))


def elif_of(node: ast.stmt) -> list[ast.stmt]:
    """The `elif` of an if, which stands in the same column; nothing when there is none."""
    rest = node.orelse if isinstance(node, ast.If) else []
    return rest if len(rest) == 1 and isinstance(rest[0], ast.If) and rest[0].col_offset == node.col_offset else []


def find_home(name: str, statements: list[ast.stmt], homes: dict[str, ast.stmt]) -> None:
    """Find where a local name is declared: at the first statement of the innermost block that holds all its uses."""
    using = [part for part in statements if mentions(part, name)]
    inner, last = [], using[0]
    while chain := elif_of(last):
        inner, last = [*inner, last.body], chain[0]
    inner += [getattr(last, "body", []), getattr(last, "orelse", [])]
    inside = [block for block in inner if any(mentions(part, name) for part in block)]
    if len(using) == len(inside) == 1:
        find_home(name, inside[0], homes)
    else:
        homes[name] = using[0]


def block(statements: list[ast.stmt], body: Body) -> Lines:
    """The lines of a block, indented; comments stand before their statement, a refused statement does not stop the next."""
    lines, scope = [], body.scope
    for node in statements:
        lines += pop_comments(body.comments, node.lineno if hasattr(node, "body") else node.end_lineno)
        if scope.assigned is None:
            body.module.refusals.append(Refused(node, "This is never reached.", "Take it out."))
            break
        try:
            if type(node) not in STATEMENTS:
                raise outside(node)
            names = sorted(js_name(name) for name, home in body.homes.items() if home is node and name != assigned_name(node))
            lines += [f"let {', '.join(names)};"] * bool(names) + STATEMENTS[type(node)](node, body)
        except Refused as refused:
            body.module.refusals.append(refused)
            scope.locals = {**{name: Code("", BROKEN) for name in body.stores}, **scope.locals}
            scope.assigned = scope.assigned or set(scope.locals)
    return ["  " + line for line in lines]


def pop_comments(comments: Comments, last: int) -> Lines:
    """The comments up to a line, which are then done with."""
    taken = [text for line, text in comments if line <= last]
    del comments[: len(taken)]
    return taken


def assign(node: ast.Assign | ast.AnnAssign, body: Body) -> Lines:
    """x = e, x: type = e. A name keeps its type; one that is given a value once keeps the value's span."""
    target, scope = node.targets[0] if isinstance(node, ast.Assign) else node.target, body.scope
    if not isinstance(target, ast.Name) or len(getattr(node, "targets", [1])) > 1 or node.value is None:
        raise Refused(node, "An assignment gives one name a value.", "Write x = ... for each; make a new list or record instead of changing one.")
    name, known = target.id, scope.locals.get(target.id)
    known = known.type if known and known.type != BROKEN else None
    wanted = read_type(node.annotation, node, body.module) if isinstance(node, ast.AnnAssign) else known
    need(name not in scope.loops and name not in body.module.names and known in (None, wanted), target, f"`{name}` is in use already.", "Choose another name.")
    value = expression(node.value, scope, wanted)
    once = body.stores.count(name) == 1
    scope.locals[name] = Code(js_name(name), value.type, TIGHT, value.span if once else ANY_WHOLE)
    scope.assigned.add(name)
    made = isinstance(node.value, (ast.List, ast.ListComp, ast.Call, ast.BinOp)) or isinstance(getattr(node.value, "slice", None), ast.Slice)
    scope.fresh = scope.fresh | {name} if made else scope.fresh - {name}
    first = "" if body.homes.get(name) is not node else "const " if once else "let "
    return [f"{first}{js_name(name)} = {value.text};"]


def augment(node: ast.AugAssign, body: Body) -> Lines:
    """x += e: the same as x = x + e, but of numbers only, since a list would be changed in place."""
    changed = expression(node.target, body.scope).type.item
    need(not changed, node, "A list is not changed by an operator.", "Write xs = xs + ys, or xs.append(x).")
    value = ast.copy_location(ast.BinOp(node.target, node.op, node.value), node)
    return assign(ast.copy_location(ast.Assign([node.target], value), node), body)


def append(node: ast.Expr, body: Body) -> Lines:
    """xs.append(e); a docstring is set above the function."""
    match node.value:
        case ast.Constant(value=str()):
            return []
        case ast.Call(func=ast.Attribute(value=ast.Name() as target, attr="append"), args=[item], keywords=[]):
            xs = expression(target, body.scope)
            if not xs.type.item or target.id not in body.scope.fresh:
                raise Refused(node, "Only a list that this function made is changed.", "Copy it first, ys = xs[:], and return it.")
            return [f"{xs.text}.push({expression(item, body.scope, xs.type.item).text});"]
    raise Refused(node, "Nothing keeps this value.", "Assign it, or take the line out; a list that has a name takes append.")


def if_else(node: ast.If, body: Body, word: str = "if") -> Lines:
    """if, elif, else: afterwards those names have a value that have one on every way that goes on."""
    scope = body.scope
    lines = [f"{word} ({expression(node.test, scope, BOOL).text}) {{"]
    before = set(scope.assigned)
    lines += block(node.body, body)
    after, scope.assigned = scope.assigned, before
    if chain := elif_of(node):
        lines += if_else(chain[0], body, "} else if")[:-1]
    elif node.orelse:
        lines += ["} else {", *block(node.orelse, body)]
    ways = [way for way in (after, scope.assigned) if way is not None]
    scope.assigned = set.intersection(*ways) if ways else None
    return [*lines, "}"]


def loop_block(node: ast.For | ast.While, body: Body) -> Lines:
    """The block of a loop, which may run not at all: what it assigns has no value for certain afterwards."""
    need(not node.orelse, node, "`else` after a loop is outside the subset.", "Keep a bool and test it after the loop.")
    before = set(body.scope.assigned)
    lines = block(node.body, body)
    body.scope.assigned = before
    return [*lines, "}"]


def while_loop(node: ast.While, body: Body) -> Lines:
    """while: with a limit of steps, so that a page never hangs."""
    test = expression(node.test, body.scope, BOOL).text
    return [f"for (let $steps = 0; {test}; $steps = $.step($steps)) {{", *loop_block(node, body)]


def for_loop(node: ast.For, body: Body) -> Lines:
    """for over a list, range, enumerate or zip; the end of a range is worked out once, a running list is not changed."""
    scope = body.scope
    xs, items = items_of(node.iter, scope)
    names, local = targets(node.target, items)
    taken = [name for name in local if name in scope.assigned or name in body.module.names]
    need(not taken, node.target, f"`{', '.join(taken)}` is in use already.", "Choose another name for the loop.")
    for part in ast.walk(node):
        if isinstance(part, ast.Attribute) and part.attr == "append" and mentions(node.iter, ast.unparse(part.value)):
            raise Refused(part, "A list is changed while the loop runs over it.", "Loop over a copy: xs[:].")
    opening = f"for (const {names} of {xs.text}) {{"
    if isinstance(node.iter, ast.Call) and ast.unparse(node.iter.func) == "range":
        start, stop, step = range_parts(node.iter, scope)
        sign = ">" if step == "-1" else "<"
        opening = f"for (let {names} = {start.text}, $end = {stop.text}; {names} {sign} $end; {names} += {step}) {{"
    outer = (scope.locals, scope.loops)
    scope.locals, scope.loops = {**scope.locals, **local}, scope.loops | set(local)
    scope.assigned |= set(local)
    lines = [opening, *loop_block(node, body)]
    scope.locals, scope.loops = {**{name: code for name, code in scope.locals.items() if name not in local}, **outer[0]}, outer[1]
    scope.assigned -= set(local)
    return lines


def give_back(node: ast.Return, body: Body) -> Lines:
    """return e."""
    need(node.value, node, "A function returns a value.", f"Return {body.result}.")
    value = expression(node.value, body.scope, body.result)
    body.scope.assigned = None
    return [f"return {value.text};"]


def fail(node: ast.Raise, body: Body) -> Lines:
    """raise ValueError("text")."""
    match node:
        case ast.Raise(exc=ast.Call(func=ast.Name("ValueError"), args=[ast.Constant(str()) as text], keywords=[]), cause=None):
            body.scope.assigned = None
            return [f'throw $.error("ValueError", {expression(text, body.scope, STR).text});']
    raise Refused(node, "Only a ValueError with a literal text is raised.", 'Write raise ValueError("what is wrong").')


def leave(node: ast.Break | ast.Continue, body: Body) -> Lines:
    """break, continue."""
    body.scope.assigned = None
    return [f"{type(node).__name__.lower()};"]


STATEMENTS: dict[type, Callable[[ast.stmt, Body], Lines]] = {
    ast.Assign: assign, ast.AnnAssign: assign, ast.AugAssign: augment, ast.Expr: append, ast.If: if_else, ast.While: while_loop,
    ast.For: for_loop, ast.Return: give_back, ast.Raise: fail, ast.Break: leave, ast.Continue: leave, ast.Pass: lambda node, body: [],
}  # fmt: skip
