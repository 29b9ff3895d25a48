"""A gap is told in the words of cells: pasted into a table they mean exactly the set of facts that was meant."""

import random

import pytest

from generator.checks.axes import Axis, axes_of
from generator.checks.side_words import box_words, side_words
from generator.reading.cells import Column, parse_cell
from generator.reading.tables import Cell
from tests import made_tables as made
from tests.checks import partitions


def axes(seed: int, count: int):
    """Axes of random tables: (rng, axis)."""
    rng = random.Random(seed)
    for _ in range(count):
        asked = partitions.facts(rng)
        table = partitions.sound_table(rng, asked, "one_row", rng.randint(1, 12))
        yield from ((rng, axis) for axis in axes_of(partitions.book(asked, table), table))


def read_back(axis: Axis, words: str) -> int:
    """The stretches that a cell of these words allows."""
    spec = axis.spec
    spans = parse_cell(Column(spec.kind, tuple(spec.choices), spec.low, spec.high), words)
    return axis.mask([Cell(spec.id, spans, words, 1)] if spans else [])


def test_every_run_of_stretches_reads_back_as_itself():
    """Numbers, whole numbers, dates: open and closed ends, to the ends of the range, single points."""
    for rng, axis in axes(1, 400):
        first = rng.randrange(len(axis.tried))
        last = rng.randrange(first, len(axis.tried))
        mask = sum(1 << k for k in range(first, last + 1))
        assert read_back(axis, side_words(axis, mask)) == mask


def test_every_set_of_choices_reads_back_as_itself():
    """One, some, all but one, all."""
    for rng, axis in axes(2, 400):
        if axis.spec.kind in ("choice", "yes_no"):
            mask = rng.randint(1, axis.whole)
            assert read_back(axis, side_words(axis, mask)) == mask


@pytest.fixture
def line() -> Axis:
    """A number from 0 to 6, cut at 2 (which belongs above) and at 4 (which belongs below)."""
    fact = made.fact("alpha", "number")
    rows = [made.row("R0", [made.cell(fact, 2.0, True, 4.0, True)], "o0")]
    table = made.decision("table", "one_row", ["alpha"], rows, 1)
    return axes_of(partitions.book([fact], table), table)[0]


@pytest.mark.parametrize(
    ("mask", "words"), [(0b001, "under 2"), (0b010, "2 to 4"), (0b100, "over 4"), (0b101, "under 2; over 4"), (0b111, "any")]
)
def test_words_of_a_number_line(line, mask, words):
    """Ends are in or out as the boundary says; parts that do not touch are told apart."""
    assert side_words(line, mask) == words


def test_a_box_leaves_out_what_may_be_anything(line):
    """Only the facts that matter are named."""
    assert box_words([line, line], (0b010, 0b111)) == "{alpha: 2 to 4}"
