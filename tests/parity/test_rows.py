"""A call that differs is kept as a row, once, and read back as the same call."""

import pytest

from generator.calculators.counting import half_up
from generator.calculators.facts import Maybe
from tests.parity import rows
from tests.parity.compare import compare, sample
from tests.parity.engines import Run
from tests.parity.numbers import signature

ANSWER = '["[]","[]","[]"]'


@pytest.fixture
def file(tmp_path, monkeypatch):
    """An empty file of rows instead of the real one."""
    path = tmp_path / "rows.jsonl"
    path.write_text("")
    monkeypatch.setattr(rows, "ROWS", path)
    return path


def test_what_differs_fails_and_is_kept_once(file, expect_same, monkeypatch):
    """However often it fails; what a broken engine answers is the difference."""
    broken = Run("broken", lambda module, function, batch: ANSWER)
    report = compare(sample(half_up, [[1.5], [-0.0], [2.5]], set()), broken)
    monkeypatch.setattr("tests.measured.Told.compared", lambda *_: None)  # a planted difference is none of this run's
    for _ in range(2):
        with pytest.raises(AssertionError, match="counting.half_up in broken: 3 cases, 3 wrong"):
            expect_same([report])
    assert len(file.read_text().splitlines()) == 3


def test_a_row_is_read_back_as_the_call_that_failed(file):
    """To the last bit, minus zero included."""
    rows.keep("counting.half_up", sample(half_up, [[-0.0], [0.1]], set()).encoded)
    found = [rows.decode(part, wanted) for _, given in rows.kept() for part, wanted in zip(given, signature(half_up)[0])]
    assert [str(x) for x in found] == ["-0.0", "0.1"]


def test_a_record_is_read_back_whole():
    """Records come back as records, with fields of their types."""
    assert rows.decode({"ok": True, "number": "n3ff8000000000000"}, Maybe) == Maybe(True, 1.5)
