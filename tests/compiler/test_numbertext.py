"""Numbers as text: exact, halves away from zero, groups from 10 000, one minus, no -0; the same in both languages."""

import quickjs
import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.calculators.numbertext import fixed, join
from generator.compiler.script import compile_module


@pytest.mark.parametrize(
    "x, digits, text",
    [
        (0.5, 0, "1"),
        (2.5, 0, "3"),
        (-2.5, 0, "−3"),
        (2.675, 2, "2.67"),  # the number itself lies below the half
        (1.125, 2, "1.13"),
        (-0.0, 1, "0.0"),
        (-0.04, 1, "0.0"),
        (9999.0, 0, "9999"),
        (9999.5, 0, "10\u202f000"),
        (1234567.891, 1, "1\u202f234\u202f567.9"),
        (-12345.0, 0, "−12\u202f345"),
        (0.1, 20, "0.10000000000000000555"),
    ],
)
def test_fixed(x, digits, text):
    """Figures that a reader can check."""
    assert fixed(x, digits) == text


@pytest.mark.parametrize("x, digits", [(float("nan"), 0), (float("inf"), 0), (1e21, 0), (1.0, -1), (1.0, 21)])
def test_what_cannot_be_written(x, digits):
    """Not finite, too large, no such digits."""
    with pytest.raises(ValueError):
        fixed(x, digits)


def test_join():
    """The parts one after another."""
    assert join(["a", "", "−1"]) == "a−1"


ENGINE = quickjs.Context()
ENGINE.eval("var Guide = {};" + compile_module("numbertext"))


@given(st.floats(-1e15, 1e15) | st.integers(-4000, 4000).map(lambda n: n / 16) | st.floats(-2.0, 2.0), st.integers(0, 6))
def test_the_script_writes_the_same(x, digits):
    """numbertext.js is written by hand; this holds it to the Python."""
    assert ENGINE.eval(f"Guide.numbertext.fixed({x!r}, {digits})") == fixed(x, digits)
