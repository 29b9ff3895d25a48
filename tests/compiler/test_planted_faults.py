"""Faults planted in the compiler and its helpers: each must show as a difference in the calls of the constructs at the default N.

A plant replaces one text in one file of the compiler. If a plant survives, the comparison proves less than it says.
"""

import importlib
import inspect
import random

import pytest

from generator.compiler import script
from tests.parity.compare import compare
from tests.parity.engines import v8
from tests.parity.scripts import constructs_script
from tests.parity.test_constructs import FUNCTIONS, NORMAL, calls_of

HELPERS = "helpers.js"
PLANTS = [
    # helpers
    (HELPERS, "rest > 0.5 || (rest === 0.5 && low % 2 !== 0)", "rest >= 0.5"),
    (HELPERS, "rest > 0.5 || (rest === 0.5 && low % 2 !== 0)", "rest > 0.5"),
    (HELPERS, "const rest = x - low;", "const rest = x + 0.5 - low - 0.5;"),
    (HELPERS, "return x + 0;", "return x;"),
    (HELPERS, "x >= -9007199254740991 && x <= 9007199254740991", "x === x"),
    (HELPERS, "x <= 9007199254740991", "x <= 9007199254740992"),
    (HELPERS, "integer(Math.trunc(x))", "integer(Math.floor(x))"),
    (HELPERS, "integer(Math.trunc(x))", "x | 0"),
    (HELPERS, 'if (x !== x) throw error("ValueError", "cannot convert float NaN to integer");', ""),
    (HELPERS, "rest !== 0 && rest < 0 !== b < 0 ? rest + b : rest + 0", "rest + 0"),
    (HELPERS, "rest !== 0 && rest < 0 !== b < 0 ? rest + b : rest + 0", "((rest % b) + b) % b"),
    (HELPERS, "rest + b : rest + 0", "rest + b : rest"),
    (HELPERS, "whole((a - a % b) / b - (rest !== 0 && rest !== a % b ? 1 : 0))", "whole((a - a % b) / b)"),
    (HELPERS, 'if (b === 0) throw error("ZeroDivisionError", "division by zero");\n  return', "return"),
    (HELPERS, 'if (x < 0) throw error("ValueError", "square root of a negative number");', ""),
    (HELPERS, "i < 0 ? i + xs.length : i", "i"),
    (HELPERS, "place < 0 || place >= xs.length", "place >= xs.length"),
    (HELPERS, "place < 0 || place >= xs.length", "place < 0"),
    (HELPERS, "x < best ? x : best", "Math.min(x, best)"),
    (HELPERS, "x > best ? x : best", "x >= best ? x : best"),
    (HELPERS, "(total, x) => whole(total + x)", "(total, x) => total + x"),
    (HELPERS, "if (low !== 0) partials[kept++] = low;", ""),
    (HELPERS, "if (Math.abs(x) < Math.abs(y)) [x, y] = [y, x];", ""),
    (HELPERS, "if (up - high === twice) high = up;", ""),
    (HELPERS, "(low < 0 && below < 0) || (low > 0 && below > 0)", "low !== 0"),
    (HELPERS, "if (given === given) infinite += given;", ""),
    (HELPERS, "a.i - b.i", "b.i - a.i"),
    (HELPERS, "(a.key < b.key ? -1 : a.key > b.key ? 1 : a.i - b.i)", "(String(a.key) < String(b.key) ? -1 : 1)"),
    (HELPERS, "for (const x of xs) if (keep(x)) made.push(item(x));", "for (const x of xs.filter(keep)) made.push(item(x));"),
    (HELPERS, "range(0, min(lists.map((xs) => xs.length)), 1)", "range(0, lists[0].length, 1)"),
    # expressions
    ("expressions", '{right.at(level + 1)}"', '{right.at(level)}"'),
    ("expressions", "return whole_result(op, text, level, left.span, right.span) if", "return Code(text, INT, level) if"),
    ("expressions", "span[0] < -LARGEST or span[1] > LARGEST", "False"),
    ("expressions", "op == ast.Mult and min(*a, *b) < 0", "False"),
    ("expressions", 'return Code(f"0 - {value.at(PRODUCT)}", INT, SUM, (-high, -low))', 'return Code(f"-{value.at(TIGHT)}", INT, UNARY)'),
    ("expressions", "(products[0], products[-1])", "(a[0] * b[0], a[1] * b[1])"),
    ("expressions", "(a[0] + b[0], a[1] + b[1])", "(0, 0)"),
    ("expressions", "(0 if min(*left.span, *right.span) >= 0 else -most, most)", "(0, 1)"),
    ("expressions", 'Code(f"$.divide({left.text}, {right.text})", FLOAT)', 'Code(f"({left.at(PRODUCT)} / {right.at(UNARY)})", FLOAT)'),
    ("expressions", "isinstance(node.right, ast.Constant) and node.right.value:", "True:"),
    ("expressions", 'ast.LtE: "<="', 'ast.LtE: "<"'),
    ("expressions", '{right.at(level + 1)}", BOOL, level)', '{right.at(level + 1)}", BOOL, TIGHT)'),
    ("expressions", '" && ".join(pair.text', '" || ".join(pair.text'),
    ("expressions", ".at(level + 1) for value in node.values", ".at(0) for value in node.values"),
    ("expressions", '("||", OR)', '("||", TIGHT)'),
    ("expressions", "scope, BOOL).at(UNARY)", "scope, BOOL).at(0)"),
    ("expressions", ".includes({item.text})", ".join().includes({item.text})"),
    ("expressions", 'Code(f"!{text}", BOOL, UNARY) if isinstance(node.ops[0], ast.NotIn) else', ""),
    ("expressions", "{test.at(OR)} ? {first.at(CHOICE)} : {second.at(CHOICE)}", "{test.at(OR)} ? {second.at(CHOICE)} : {first.at(CHOICE)}"),
    ("expressions", "span = (min(first.span[0], second.span[0]), max(first.span[1], second.span[1]))", "span = second.span"),
    ("expressions", 'f"$.at({xs.text}, {expression(node.slice, scope, INT).text})"', 'f"{xs.at(TIGHT)}[{expression(node.slice, scope, INT).text}]"'),
    ("expressions", "{start or '0'}", "{start or '1'}"),
    ("expressions", '.concat({right.text})"', '.concat([{right.text}])"'),
    # calls
    ("calls", '"$.round({})"', '"$.whole(Math.round({}))"'),
    ("calls", '(INT, "$.floor({})")', '(INT, "$.truncate({})")'),
    ("calls", '"({} ? 1 : 0)"', '"{}"'),
    ("calls", '(FLOAT, "$.fsum({})")', '(FLOAT, "{}.reduce((a, b) => a + b, 0)")'),
    ("calls", '"$.min({})"),\n    "max', '"Math.min(...{})"),\n    "max'),
    ("calls", '"any": "some"', '"any": "every"'),
    ("calls", ".at(AND + 1) for test in part.ifs", ".at(0) for test in part.ifs"),
    ("calls", "(min(start.span[0], stop.span[0]), max(start.span[1], stop.span[1]))", "(0, 1)"),
    # statements
    ("statements", "TIGHT, value.span if once else ANY_WHOLE", "TIGHT, value.span"),
    ("statements", "$end = {stop.text}; {names} {sign} $end", "$end = 0; {names} {sign} {stop.text}"),
    ("statements", '">" if step == "-1" else "<"', '">=" if step == "-1" else "<"'),
    ("statements", "{test}; $steps", "{test} && $steps < 3; $steps"),
    ("statements", 'lines += ["} else {", *block(node.orelse, body)]', 'lines += ["} else if (false) {", *block(node.orelse, body)]'),
    ("statements", "return [f\"{type(node).__name__.lower()};\"]", 'return ["continue;"]'),
    ("statements", "ast.BinOp(node.target, node.op, node.value)", "ast.BinOp(node.value, node.op, node.target)"),
]


@pytest.fixture(scope="module")
def calls():
    """The calls of all sample functions, with Python's answers."""
    return [calls_of(function, random.Random(function.__name__), NORMAL) for function in FUNCTIONS]


@pytest.fixture
def plant(monkeypatch, tmp_path):
    """Replace one text in one file of the compiler, until the test ends."""
    replaced = []

    def put(file: str, old: str, new: str) -> None:
        if file == HELPERS:
            text = script.HELPERS.read_text(encoding="utf-8")
            (tmp_path / file).write_text(changed(text, old, new), encoding="utf-8")
            monkeypatch.setattr(script, "HELPERS", tmp_path / file)
        else:
            module = importlib.import_module(f"generator.compiler.{file}")
            replaced.append((module, inspect.getsource(module)))
            exec(compile(changed(replaced[0][1], old, new), file, "exec"), vars(module))

    yield put
    for module, source in replaced:
        exec(compile(source, module.__name__, "exec"), vars(module))


def changed(text: str, old: str, new: str) -> str:
    """The text with one place replaced; a plant whose place is gone must be planted anew."""
    assert text.count(old) >= 1, f"nothing to plant in: {old}"
    return text.replace(old, new, 1)


@pytest.mark.parametrize("file, old, new", PLANTS, ids=[f"{file}: {new or 'without ' + old}" for file, old, new in PLANTS])
def test_a_planted_fault_is_caught(file, old, new, plant, calls):
    """At least one call differs."""
    plant(file, old, new)
    run = v8(constructs_script())
    assert any(compare(part, run).wrong for part in calls)


def test_without_a_fault_nothing_differs(calls):
    """The same calls are equal when nothing is planted."""
    run = v8(constructs_script())
    assert not any(compare(part, run).wrong for part in calls)
