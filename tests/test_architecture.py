"""The house stays as it was drawn: layers, doors, small rooms, no number of the trade in code."""

from pathlib import Path

import pytest

import architecture as house

PACKAGE = Path(__file__).parent.parent / "generator"
CHECKS = [house.upward_imports, house.cycles, house.doors, house.trade_numbers, house.needless_exceptions, house.too_long, house.without_docstring]


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.__name__)
def test_the_house_is_in_order(check):
    """No module of the generator breaks the rule that the check states."""
    assert check(house.read_modules(PACKAGE)) == []


@pytest.fixture
def plant(tmp_path):
    """Writes small modules into an otherwise tidy package and reads it."""

    def write(**files: str):
        for name, body in files.items():
            path = tmp_path / (name.replace("__", "/") + ".py")
            path.parent.mkdir(exist_ok=True)
            path.write_text('"""A module."""\n' + body)
        return house.read_modules(tmp_path)

    return write


def test_a_planted_upward_import_fails(plant):
    """reading must not know of pages."""
    modules = plant(reading__cells="from generator.pages.jinja import render\n", pages__jinja="")
    assert house.upward_imports(modules) == ["reading/cells.py:2: reading must not import pages"]


def test_an_upward_import_inside_a_function_fails_too(plant):
    """Hiding the import in a function does not help."""
    modules = plant(calculators__a="def f() -> None:\n    from generator.reading import read\n", reading__read="")
    assert house.upward_imports(modules) == ["calculators/a.py:3: calculators must not import reading"]


def test_a_planted_cycle_fails(plant):
    """Two modules of one room must not need each other."""
    modules = plant(reading__a="import generator.reading.b\n", reading__b="from generator.reading.a import x\n")
    assert house.cycles(modules) == ["reading.a -> reading.b -> reading.a"]


def test_a_planted_long_function_fails(plant):
    """A function of 51 lines is one too long; its docstring is not counted."""
    body = 'def f() -> None:\n    """One\n    two."""\n' + "    x = 1\n" * 50
    assert house.too_long(plant(pages__a=body))[0] == "pages/a.py:2: f has 51 lines"


def test_a_planted_trade_number_fails(plant):
    """A calculator that knows how many shoots fit on a metre keeps it from the rules."""
    modules = plant(calculators__a="def f(metres: float) -> float:\n    return metres * 15.0\n")
    assert house.trade_numbers(modules) == ["calculators/a.py:3: 15.0 belongs in rules/values/"]


def test_a_name_in_capitals_hides_no_trade_number(plant):
    """Only the codes on the list may have a number: `SHOOTS_ON_A_METRE: int = 15` belongs in the rules as well."""
    modules = plant(calculators__facts="ENTERED: int = 4\n", calculators__a="SHOOTS_ON_A_METRE: int = 15\nLIMIT: float = 0.25\n")
    assert house.trade_numbers(modules) == [
        "calculators/a.py:2: 15 belongs in rules/values/",
        "calculators/a.py:3: 0.25 belongs in rules/values/",
    ]


def test_an_exception_no_longer_needed_fails(plant):
    """A name on the list that no module has is told."""
    assert "calculators/facts.py: an exception is no longer needed" in house.needless_exceptions(plant(calculators__a=""))


def test_a_second_door_fails(plant):
    """Only reading/yaml_lines.py imports PyYAML."""
    assert house.doors(plant(pages__a="import yaml\n")) == ["pages/a.py:2: only reading/yaml_lines.py imports yaml"]


def test_a_missing_docstring_fails(plant):
    """Public functions say what they are for."""
    assert house.without_docstring(plant(pages__a="def f() -> None:\n    return None\n")) == [
        "pages/a.py:2: f has no docstring"
    ]
