"""A form that names tables and code that takes them go together."""

from dataclasses import replace

from generator.checks import calculators, references


def problems(check, rulebook, tables):
    """What a check says when the form of the density names these tables, which its code does not take."""
    form = replace(rulebook.calculators["vine_density"], tables=tables)
    return [str(one) for one in check.CHECK.check(replace(rulebook, calculators=rulebook.calculators | {form.id: form}))]


def test_tables_that_the_code_does_not_take_are_told(rulebook):
    """Naming a table alone makes nobody ask it."""
    found = problems(calculators, rulebook, ("cane_wood",))
    assert len(found) == 1 and "vine_density.yml" in found[0] and "`tables`, which the code does not have" in found[0]


def test_a_table_that_is_not_there_is_told(rulebook):
    """A misspelt table is named with the nearest one."""
    assert any("There is no decision `cane_wod`" in one and "cane_wood" in one for one in problems(references, rulebook, ("cane_wod",)))
