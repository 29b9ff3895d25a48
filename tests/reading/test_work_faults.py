"""A fault of the pruner's work is read with its grade, the rows and values that say so, and its place in the list."""

from dataclasses import replace

from generator.pages.trainers import filled, shown
from generator.reading.work_faults import GRADES, JOBS, TEXTS, in_order


def test_a_fault_is_read(good):
    """Everything is there; what the file does not say is empty."""
    fault = good.faults["tips_touch"]
    assert (fault.label, fault.grade, fault.job, fault.unsafe) == ("Tips touch", "crop", "cane", False)
    assert (fault.rows, fault.values, fault.looks, fault.cautions) == (("wood.B1",), ("tip_gap_m",), ("spur_up_close",), ("cutting_tools",))
    assert (fault.standing, fault.cites) == ("common_practice", ())


def test_a_number_is_that_of_the_value(good):
    """It changes with the value, so that an edition's figure is in every text."""
    fault = good.faults["tips_touch"]
    value = good.values["tip_gap_m"]
    assert shown(good, fault).texts["see"] == f"Look along the wire. Less than {value.number:g}\u00a0m is left between two tips."
    other = replace(value, figures=tuple(replace(one, number=0.3) for one in value.figures))
    assert "0.3\u00a0m" in filled(replace(good, values={"tip_gap_m": other}), fault.see)


def test_the_worst_stands_first(good):
    """By grade, unsafe work before the rest, then in the order of the work, then by id."""
    fault = good.faults["tips_touch"]
    kinds = {"b": ("untidy", "cut", False), "a": ("untidy", "cut", False), "c": ("vine", "tidying", False), "d": ("vine", "tidying", True), "e": ("vine", "spur", False)}
    mixed = {name: replace(fault, id=name, grade=grade, job=job, unsafe=unsafe) for name, (grade, job, unsafe) in kinds.items()}
    assert list(in_order(mixed)) == ["d", "e", "c", "a", "b"]


def test_the_guide_covers_the_whole_job(rulebook):
    """Three grades and every part of the work; unsafe work is always of the first grade and names a caution."""
    faults = rulebook.faults.values()
    assert {one.grade for one in faults} == set(GRADES) and {one.job for one in faults} == set(JOBS)
    assert 25 <= len(faults) <= 40
    assert [one.id for one in faults if one.unsafe and not (one.grade == GRADES[0] and one.cautions)] == []


def test_no_number_is_written_twice(rulebook):
    """Not a digit in any text, in the guide's own list too; numbers come from values."""
    texts = [getattr(one, name) for one in rulebook.faults.values() for name in TEXTS]
    assert [text for text in texts if any(sign.isdigit() for sign in text)] == []
    assert sum(text.count("{") for text in texts) > 10
