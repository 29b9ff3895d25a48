"""exp, log, power: near the true value (the machine's own functions, good to one unit in the last place), errors, fixed cases."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.calculators.exactmath import exp, log, power


@given(st.floats(-700.0, 700.0))
def test_exp_is_within_one_unit_in_the_last_place(x):
    """fdlibm promises less than one."""
    assert abs(exp(x) - math.exp(x)) <= math.ulp(math.exp(x))


@given(st.floats(1e-300, 1e300))
def test_log_is_within_one_unit_in_the_last_place(x):
    """fdlibm promises less than one."""
    assert abs(log(x) - math.log(x)) <= math.ulp(math.log(x))


@given(st.floats(0.01, 100.0), st.floats(-20.0, 20.0))
def test_power_is_close(x, y):
    """Relative error below 1e-13 for exponents that a calculator meets."""
    assert math.isclose(power(x, y), x**y, rel_tol=1e-13)


def test_whole_powers_are_products():
    """Multiplication in order, so that 0.1 cubed is what a reader would reckon."""
    assert (power(0.1, 3.0), power(-2.0, 3.0), power(2.0, -1.0), power(0.0, 0.0)) == (0.1 * 0.1 * 0.1, -8.0, 0.5, 1.0)


@pytest.mark.parametrize("call", [lambda: exp(710.0), lambda: log(0.0), lambda: log(-1.0), lambda: power(-1.0, 0.5), lambda: power(0.0, -1.0)])
def test_what_has_no_value_is_an_error(call):
    """No inf, no nan."""
    with pytest.raises(ValueError):
        call()


def test_exp_of_very_small_numbers_is_zero():
    """Below -745.13 there is no number left."""
    assert exp(-746.0) == 0.0
