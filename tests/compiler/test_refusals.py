"""What is outside the subset is refused where it stands, with what to write instead; nothing of it is compiled, nothing crashes.

Each snippet marks with `@` the place that the refusal must name; `words` must stand in its sentence or its hint.
"""

import pytest

from generator.compiler.script import compile_text
from generator.problems import ProblemsFound

HEAD = """from dataclasses import dataclass
import math

@dataclass(frozen=True)
class Point:
    x: float
    count: int

"""
EXPRESSIONS = [  # an expression in a function of x: float, n: int, ok: bool, text: str, xs: list[float], ns: list[int], p: Point
    ('@f"{x}"', "float", "Say"),
    ("@{1: 2.0}", "float", "frozen dataclass"),
    ("@{n: n for n in ns}", "float", "frozen dataclass"),
    ("@{1, 2}", "float", "Write a list"),
    ("@{n for n in ns}", "float", "Write a list"),
    ("@(1.0, 2.0)", "float", "list, or a frozen dataclass"),
    ("(@lambda a: a)", "float", "key of sorted"),
    ("(@y := x)", "float", "line of its own"),
    ("@(x for x in xs)", "list[float]", "Write a list"),
    ("@None", "float", "Maybe"),
    ("@1j", "float", "literal"),
    ("@b'a'", "str", "literal"),
    ("@...", "float", "literal"),
    ("@9007199254740992", "int", "2**53"),
    ("@1e400", "float", "literal"),
    ("@1", "float", "Write 1.0."),
    ("@n", "float", "Write float(n)."),
    ("@x", "int", "math.floor"),
    ("@ok", "int", "of type int"),
    ("n if @n else 0", "int", "n != 0"),
    ("1 if @xs else 0", "int", "len(xs) > 0"),
    ("not @text", "bool", "comparison"),
    ("ok and @n", "bool", "n != 0"),
    ("ok or @x", "bool", "x != 0"),
    ("@~n", "int", "sign"),
    ("@+x", "float", "sign"),
    ("@-ok", "int", "sign"),
    ("@x ** 2", "float", "x * x"),
    ("@n ** 2", "int", "power"),
    ("@n & 1", "int", "operator"),
    ("@n << 1", "int", "operator"),
    ("@x // 2.0", "float", "math.floor(a / b)"),
    ("@x % 2.0", "float", "whole numbers"),
    ("@ok + 1", "int", "int(...)"),
    ("@text + text", "str", "Say"),
    ("@text * 2", "str", "Say"),
    ("xs + @ns", "list[float]", "list[float]"),
    ("@2 * xs", "list[float]", "of type list[float]"),
    ("len(@xs + ns)", "int", "one type"),
    ("x is @x", "bool", "outside"),
    ("xs == @xs", "bool", "part by part"),
    ("p == @p", "bool", "part by part"),
    ("text < @text", "bool", "=="),
    ("ok < @ok", "bool", "=="),
    ("n == @text", "bool", "compared"),
    ("0.0 < @abs(x) < 1.0", "bool", "line before"),
    ("@x in xs", "bool", "any(x == y"),
    ("n in @sorted(ns, key=lambda n: n)", "bool", "line before"),
    ("text in @text", "bool", "list[str]"),
    ("x if ok else @n", "float", "float(n)"),
    ("[x, @n]", "list[float]", "float(n)"),
    ("len(@[])", "int", "xs: list[float] = []"),
    ("@text[0]", "str", "lists are indexed"),
    ("xs[@x]", "float", "math.floor"),
    ("@xs[::2]", "list[float]", "range(start, stop, 2)"),
    ("@p.y", "float", "x, count"),
    ("@x.real", "float", "no field"),
    ("@math.pi", "float", "not known"),
    ("@math.exp(x)", "float", "math.sqrt"),
    ("@pow(x, 2.0)", "float", "The subset has"),
    ("@print(x)", "float", "The subset has"),
    ("@str(n)", "str", "The subset has"),
    ("@round(x, 2)", "float", "not called like this"),
    ("@round(n)", "int", "outside"),
    ("@int(text)", "int", "outside"),
    ("@float(text)", "float", "outside"),
    ("@len(text)", "int", "outside"),
    ("@sum(xs)", "float", "math.fsum"),
    ("@min(x)", "float", "outside"),
    ("min(x, @n)", "float", "float(n)"),
    ("@max(ns, key=lambda n: n)", "int", "not called like this"),
    ("@max(n, n, default=0)", "int", "not called like this"),
    ("@sorted(xs)", "list[float]", "key=lambda"),
    ("@sorted(xs, key=lambda x: x, reverse=True)", "list[float]", "-x.rank"),
    ("@sorted(xs, key=abs)", "list[float]", "key=lambda"),
    ("@sorted(ns, key=lambda n: n > 0)", "list[int]", "a key that is a number"),
    ("@any(xs)", "bool", "any(x > 0 for x in xs)"),
    ("@all(x > 0.0 for x in xs if ok)", "bool", "without if"),
    ("@[x for a in ns for x in xs]", "list[float]", "outer loop"),
    ("[a for @a, b in ns]", "list[int]", "gives 1"),
    ("[a for a in @zip(ns)]", "list[int]", "zip(xs, ys)"),
    ("[a for a in @text]", "list[str]", "Loop over a list"),
    ("[a for a in @range(0, 9, 3)]", "list[int]", "range(a, b, -1)"),
    ("[a for a in range(@x)]", "list[int]", "round(x)"),
    ("@Point(1.0)", "Point", "`count` is missing"),
    ("@Point(1.0, 1, 2)", "Point", "Point(x: float, count: int)"),
    ("@Point(count=1, x=1.0)", "Point", "in this order"),
    ("Point(@*xs)", "Point", "each argument"),
    ("@unknown(x)", "float", "The subset has"),
    ("@y", "float", "import it from generator.calculators"),
    ("@Point", "Point", "Write Point(...)"),
    ("@x(1.0)", "float", "another name"),
    ("@text.upper()", "str", "The subset has"),
    ("@await_me", "float", "not known"),
]
STATEMENTS = [  # a body of the same function, which returns a float
    ("@try:\n    return x\nexcept ValueError:\n    return 0.0", "raise ValueError for what cannot be"),
    ("@with x:\n    return x", "the grammar"),
    ("@assert ok\nreturn x", "if not ...: raise ValueError"),
    ("@del xs\nreturn x", "the grammar"),
    ("@global y\nreturn x", "the grammar"),
    ("@match n:\n    case 1:\n        return x\nreturn x", "if, elif, else"),
    ("@def inner(a: float) -> float:\n    return a\nreturn x", "top level"),
    ("@import math\nreturn x", "outside"),
    ("@yield x", "Nothing keeps"),
    ("@a = b = 1.0\nreturn a", "one name a value"),
    ("@a, b = 1.0, 2.0\nreturn a", "one name a value"),
    ("@xs[0] = 1.0\nreturn x", "new list"),
    ("@p.x = 1.0\nreturn x", "new list or record"),
    ("@xs[0] += 1.0\nreturn x", "new list"),
    ("ys = xs[:]\n@ys += xs\nreturn x", "xs.append(x)"),
    ("@xs.append(x)\nreturn x", "Copy it first"),
    ("ys = xs\n@ys.append(x)\nreturn x", "Copy it first"),
    ("ys = xs[:]\n@ys.pop()\nreturn x", "append"),
    ("@abs(x)\nreturn x", "keeps this value"),
    ("ys = @[]\nreturn x", "list[float] = []"),
    ("y: @dict = 1\nreturn x", "type `dict`"),
    ("@y: float\nreturn x", "one name a value"),
    ("y = 1.0\ny = @2\nreturn y", "Write 2.0."),
    ("y = 1.0\n@y: int = 2\nreturn x", "in use already"),
    ("@Point = 1.0\nreturn x", "in use already"),
    ("if ok:\n    y = 1.0\nreturn @y", "on every path"),
    ("while ok:\n    y = 1.0\nreturn @y", "on every path"),
    ("for y in xs:\n    pass\nreturn @y", "not known"),
    ("for y in xs:\n    @y = 1.0\nreturn x", "in use already"),
    ("y = 1.0\nfor @y in xs:\n    pass\nreturn x", "for the loop"),
    ("ys = xs[:]\nfor y in ys:\n    @ys.append(y)\nreturn x", "Loop over a copy"),
    ("@for y in xs:\n    pass\nelse:\n    return x\nreturn x", "Keep a bool"),
    ("if @n:\n    return x\nreturn x", "n != 0"),
    ("while @xs:\n    return x\nreturn x", "len(xs) > 0"),
    ("return @n", "float(n)"),
    ("@return", "Return float"),
    ("return x\n@y = 1.0", "Take it out"),
    ('@raise TypeError("a")', "ValueError"),
    ("@raise ValueError(text)", "literal text"),
    ('@raise ValueError("a") from None', "ValueError"),
    ('@raise ValueError(f"{x}")', "literal text"),
]
MODULES = [  # whole modules
    ("@import os\n", "outside"),
    ("@import math as m\n", "outside"),
    ("@from os import path\n", "cannot be imported"),
    ("@from generator.calculators.nowhere import a\n", "cannot be imported"),
    ("@from generator.calculators.say import Nobody\n", "not defined in generator/calculators/say.py"),
    ("@from generator.calculators.say import Say as Told\n", "under its name"),
    ("@from generator.calculators.say import *\n", "not defined"),
    ("@LIMIT = 3.0\n", "LIMIT: float"),
    ("LIMIT: float = @3\n", "Write 3.0."),
    ("LIMIT: int = 3\n@LIMIT: int = 4\n", "twice"),
    ("@class A:\n    x: float\n", "@dataclass(frozen=True)"),
    ("from dataclasses import dataclass\n\n@dataclass\n@@class A:\n    x: float\n", "@dataclass(frozen=True)"),
    ("from dataclasses import dataclass\n\n@dataclass(frozen=True)\nclass A(@@B):\n    x: float\n", "frozen dataclass that is defined above"),
    ("from dataclasses import dataclass\n\n@dataclass(frozen=True)\n@@class A(int):\n    x: float\n", "a record defined above"),
    ("from dataclasses import dataclass\n\n@dataclass(frozen=True)\n@@class A(B, C):\n    x: float\n", "class Name(Record):"),
    (HEAD + "@dataclass(frozen=True)\n@@class A(Point):\n    x: float\n", "other names"),
    (HEAD + "@dataclass(frozen=True)\nclass A(Point):\n    y: float\n\n\ndef f(point: Point) -> A:\n    return @@point\n", "A is needed"),
    (HEAD + "@dataclass(frozen=True)\nclass A(Point):\n    y: float\n\n\ndef f(rows: list[A]) -> list[Point]:\n    return @@rows\n", "list[Point] is needed"),
    ("from dataclasses import dataclass\n\n@dataclass(frozen=True)\nclass A:\n    @@def f(self) -> float:\n        return 1.0\n", "a function"),
    ("from dataclasses import dataclass\n\n@dataclass(frozen=True)\nclass A:\n    @@__proto__: float\n", "annotated fields"),
    ("from dataclasses import dataclass\n\n@dataclass(frozen=True)\nclass A:\n    x: list[int] = [@@LIMIT]\n", "not known"),
    ("from dataclasses import dataclass\n\n@dataclass(frozen=True)\nclass A:\n    x: @@float | None\n", "Maybe"),
    ("def f(@a) -> float:\n    return 1.0\n", "name: float"),
    ("@def f(a: float):\n    return a\n", "-> float"),
    ("@def f(a: float = 1.0) -> float:\n    return a\n", "without defaults"),
    ("@def f(*a: float) -> float:\n    return 1.0\n", "plain function"),
    ("@def f(a: float, *, b: float) -> float:\n    return 1.0\n", "plain function"),
    ("@from functools import cache\n", "cannot be imported"),
    ("@async def f(a: float) -> float:\n    return a\n", "outside"),
    ("def f(a: @tuple[int, int]) -> float:\n    return 1.0\n", "outside"),
    ("def f(a: @object) -> float:\n    return 1.0\n", "outside"),
    ("@def f(n: int) -> int:\n    return f(n)\n", "calls itself"),
    ("@@def f(n: int) -> int:\n    return g(n)\n\n\n@@def g(n: int) -> int:\n    return f(n)\n", "calls itself"),
    ("@def f(n: int) -> int:\n    if n > 0:\n        return 1\n", "return or raise"),
    ("@def f(n: int) -> int:\n    while True:\n        pass\n", "return or raise"),
    ("@if True:\n    pass\n", "outside"),
    ("def f(@:\n", "Python says"),
    ('NAME: str = "@\U0001f347"\n', "U0001f347"),
    ("def f(len: list[int]) -> int:\n    return @len(len)\n", "another name"),
]


def refusal(source: str) -> tuple[list[str], list[str]]:
    """The places that the source marks by `@@`, as `line: Column column`, and the problems found in it."""
    lines = source.split("\n")
    places = [f"{number}: Column {line.index('@@') + 1}:" for number, line in enumerate(lines, 1) if "@@" in line]
    with pytest.raises(ProblemsFound) as found:
        compile_text(source.replace("@@", ""), "x.py", "x")
    return places, [str(problem) for problem in found.value.problems]


def check(source: str, words: str) -> None:
    """Exactly the marked places are refused, and the words are said."""
    places, problems = refusal(source)
    assert [problem.split(":", 1)[1][: len(place)] for problem, place in zip(problems, places)] == places, problems
    assert len(problems) == len(places), problems
    assert words in problems[0], problems[0]


def in_function(body: str, result: str = "float") -> str:
    """A module with a function of this body."""
    lines = "".join(f"    {line}\n" for line in body.replace("@", "@@").split("\n"))
    return f"{HEAD}def f(x: float, n: int, ok: bool, text: str, xs: list[float], ns: list[int], p: Point) -> {result}:\n{lines}"


@pytest.mark.parametrize("body, result, words", EXPRESSIONS, ids=[body for body, _, _ in EXPRESSIONS])
def test_expression_is_refused(body, result, words):
    """One refusal, at the mark, saying what to write."""
    check(in_function(f"return {body}", result), words)


@pytest.mark.parametrize("body, words", STATEMENTS, ids=[body for body, _ in STATEMENTS])
def test_statement_is_refused(body, words):
    """One refusal, at the mark, saying what to write."""
    check(in_function(body), words)


@pytest.mark.parametrize("source, words", MODULES, ids=[source for source, _ in MODULES])
def test_module_is_refused(source, words):
    """One refusal for each mark, saying what to write."""
    check(source if "@@" in source else source.replace("@", "@@"), words)


def test_every_refusal_of_a_run_is_told():
    """A refusal does not hide the next, and what follows from one is not told again."""
    source = in_function("y = @x ** 2\nz = y + 1.0\nif @n:\n    return z\nreturn @n").replace("@@x ** 2", "@@x ** 2")
    places, problems = refusal(source)
    assert len(places) == len(problems) == 3


def test_a_refusal_reads_as_one_sentence_and_what_to_write():
    """path:line: Column: sentence, then an indented next step."""
    _, problems = refusal(in_function("return @n"))
    assert problems == ["x.py:10: Column 12: This is int, but float is needed here.\n    Write float(n)."]
