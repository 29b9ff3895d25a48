"""Units against a library of units: every one is a unit, and every US factor is exact (foot 0.3048 m, acre 43 560 ft2, ton 2000 lb)."""

import pint
import pytest

REGISTRY = pint.UnitRegistry()
US = {
    "ft": "foot",
    "in": "inch",
    "ft²": "foot**2",
    "acre": "43560 * foot**2",
    "lb": "pound",
    "oz": "ounce",
    "ton/acre": "2000 * pound / (43560 * foot**2)",
    "lb/ft": "pound / foot",
    "per ft": "1 / foot",
    "per acre": "1 / (43560 * foot**2)",
    "h/acre": "hour / (43560 * foot**2)",
    "ft/acre": "foot / (43560 * foot**2)",
}


def test_every_unit_is_a_unit(rulebook):
    """The library reads every unit's expression."""
    for unit in rulebook.units.values():
        REGISTRY.parse_expression(unit.pint)


def test_us_factors_are_exact(rulebook):
    """One SI unit in the US unit, to the last digits of a double."""
    shown = [unit for unit in rulebook.units.values() if unit.us_symbol != unit.symbol]
    for unit in shown:
        factor = (REGISTRY.parse_expression(unit.pint) / REGISTRY.parse_expression(US[unit.us_symbol])).to_base_units()
        assert factor.dimensionless, unit.id
        assert unit.us_factor == pytest.approx(float(factor.magnitude), rel=1e-14), unit.id
    assert shown
