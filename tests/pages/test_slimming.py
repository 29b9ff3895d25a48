"""What is sent is smaller and means the same: short names only for what is local, nothing guessed at."""

import pytest
from py_mini_racer import MiniRacer

from generator.pages.slimming import slim, slim_style
from tests.parity.scripts import calculators_script

# One trap each: an expression; what it gives must stay the same.
TRAPS = {
    "a property keeps its name": "(function (long) { const name = 1; const made = { name: 2, other: name }; return [made.name, made.other, long.name]; })({ name: 3 })",
    "a property in short": "(function (first, second) { const made = { first, second }; return [made.first, made.second]; })(1, 2)",
    "a choice of two is no property": "(function (yes, no) { return [yes ? no : yes, { no: yes ? yes : no }]; })(0, 5)",
    "an inner name hides an outer one": "(function (thing) { function inner(thing) { return thing + 1; } return inner(thing) + thing; })(10)",
    "an inner function sees the outer name": "(function (outer) { return [1, 2].map((one) => [3].map((two) => one + two + outer)); })(100)",
    "a block hides a name of its function": "(function () { const part = 1; const all = []; for (const part of [5, 6]) { all.push(part); } all.push(part); return all; })()",
    "names from outside stay": "(function (a) { const b = Math.max(a, 2); return [b, typeof undefined, JSON.stringify({ a: b })]; })(1)",
    "a short name is never one used from outside": "(function () { const mine = Guide.A; function own() { return typeof A; } return [mine, own(), typeof B]; })()",
    "lists taken apart": "(function () { let low = 1; let high = 2; [low, high] = [high, low]; return [[1, 2]].map(([a, b]) => a - b).concat([low, high]); })()",
    "any number of arguments": "(function () { function count(...all) { return all.length; } return count(1, 2, 3); })()",
    "signs stay apart": "(function (up, down) { return [up - -down, up + +down, up - (-down)]; })(3, 4)",
    "text and patterns are left alone": """(function (text) { return [text.replace(/[/ ]a \\/ b/g, "x // y"), 'it /* is */', "\\"quoted\\""]; })("/a / b")""",
    "an error that is caught": "(function () { try { throw new Error('no'); } catch (problem) { return problem.message; } })()",
    "a branch without braces": "(function (n) { if (n > 1) return 'many'; else return 'one'; })(2)",
    "counting down": "(function (n) { let left = n; let steps = 0; while (left > 0) { left--; steps++; } return steps; })(4)",
    "an object is no block": "(function () { const made = () => ({ value: 1 }); return made().value; })()",
}


@pytest.mark.parametrize("trap", TRAPS.values(), ids=TRAPS)
def test_a_small_script_means_the_same(trap):
    """The same value comes out of both."""
    script = f"var Guide = {{ A: 7 }};\nGuide.made = {trap};\n"
    assert value(slim(script)) == value(script)


def value(script):
    """What the script puts into Guide.made."""
    return MiniRacer().eval(script + "JSON.stringify(Guide.made)")


def test_local_names_and_comments_go():
    """What only the script itself can see needs no long name."""
    written = 'Guide.sum = (function () {\n  "use strict";\n  // Adds.\n  function total(first, second) {\n    return first + second;\n  }\n\n  return { total: total };\n})();\n'
    assert slim(written) == 'Guide.sum=(function(){"use strict";function A(a,b){return a+b}return{total:A}})();'


def test_a_licence_stays():
    """A notice is part of what we are allowed to send."""
    assert slim("/** Copyright (C) somebody. Keep this notice. */\nvar Guide = {};\n").startswith("/** Copyright (C) somebody.")


@pytest.mark.parametrize("script", ["(function () { const { a } = b; })();", "(function (a = 1) { return a; })();", "(function () { return `text`; })();"])
def test_what_is_not_understood_is_refused(script):
    """Never a guess: the build stops."""
    with pytest.raises(ValueError):
        slim(script)


def test_twice_is_once():
    """What is small already stays as it is, so nothing hangs on how it was written."""
    script = slim(calculators_script())
    assert slim(script) == script


def test_a_style_sheet_keeps_its_spaces_where_they_count():
    """Between selectors and in sums."""
    assert slim_style("/* x */\na b > c , d { margin: 0 1px ; width: calc(100% - 2px); }\n") == "a b>c,d{margin:0 1px;width:calc(100% - 2px)}\n"
