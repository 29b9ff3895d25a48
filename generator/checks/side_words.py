"""The side of a box in the words of a cell, so that a problem reads like the table and can be pasted into it."""

from generator.answers.border import from_number
from generator.checks.axes import Axis, Box


def box_words(axes: list[Axis], box: Box) -> str:
    """The facts of a box as `fact: cell` pairs; what may be anything is left out."""
    sides = [f"{axis.spec.id}: {side_words(axis, mask)}" for axis, mask in zip(axes, box) if mask != axis.whole]
    return "{" + ", ".join(sides) + "}" if sides else "any facts at all"


def side_words(axis: Axis, mask: int) -> str:
    """One side as a cell: `80 or more`, `warm or hot`, `3 to under 5`; runs that do not touch are joined by `; `."""
    if mask == axis.whole:
        return "any"
    if axis.spec.kind in ("choice", "yes_no"):
        return _choices(axis, mask)
    return "; ".join(_run(axis, first, last) for first, last in _runs(mask))


def number_words(axis: Axis, x: float) -> str:
    """A number or date as an author writes it."""
    value = from_number(axis.spec, x)
    return str(int(value)) if isinstance(value, float) and value == int(value) else str(value)


def _choices(axis: Axis, mask: int) -> str:
    """Choices by name; `not x` when only one of more than three is left out."""
    names = [name for k, name in enumerate(axis.spec.choices) if mask >> k & 1]
    others = [name for name in axis.spec.choices if name not in names]
    return f"not {others[0]}" if len(others) == 1 and len(names) > 2 else " or ".join(names)


def _runs(mask: int) -> list[tuple[int, int]]:
    """The unbroken runs of set bits, as first and last place."""
    runs: list[tuple[int, int]] = []
    for k in range(mask.bit_length()):
        if mask >> k & 1:
            runs = [*runs[:-1], (runs[-1][0], k)] if runs and runs[-1][1] == k - 1 else [*runs, (k, k)]
    return runs


def _run(axis: Axis, first: int, last: int) -> str:
    """A run of stretches of a number line as a cell."""
    low, low_in = _low(axis, first)
    high, high_in = _high(axis, last)
    from_start, to_end = first == 0, last == len(axis.tried) - 1
    a, b = number_words(axis, low), number_words(axis, high)
    if axis.spec.kind == "date":
        return _dates(axis, low, high, from_start, to_end)
    if from_start:
        return f"up to {b}" if high_in else f"under {b}"
    if to_end:
        return f"{a} or more" if low_in else f"over {a}"
    if low == high:
        return a
    return f"{'' if low_in else 'over '}{a} to {'' if high_in else 'under '}{b}"


def _dates(axis: Axis, low: float, high: float, from_start: bool, to_end: bool) -> str:
    """A run of days as a cell."""
    if from_start:
        return f"before {number_words(axis, high + 1)}"
    if to_end:
        return f"from {number_words(axis, low)}"
    return f"{number_words(axis, low)} to {number_words(axis, high)}"


def _low(axis: Axis, first: int) -> tuple[float, bool]:
    """Where a run begins, and whether that point belongs to it. Between two boundaries only the point in their middle
    was tried."""
    tried = axis.tried[first]
    if axis.spec.kind != "number" or _is_mark(axis, first, 0):
        return tried[0], True
    return axis.tried[first - 1][-1], False


def _high(axis: Axis, last: int) -> tuple[float, bool]:
    """Where a run ends, and whether that point belongs to it."""
    tried = axis.tried[last]
    if axis.spec.kind != "number":
        return (axis.tried[last + 1][0] - 1 if last + 1 < len(axis.tried) else tried[-1]), True
    if _is_mark(axis, last, len(tried) - 1):
        return tried[-1], True
    return axis.tried[last + 1][0], False


def _is_mark(axis: Axis, stretch: int, place: int) -> bool:
    """True when the point is a boundary (or an end of the range): the points of a number line are boundary, middle,
    boundary, ..."""
    return (sum(len(points) for points in axis.tried[:stretch]) + place) % 2 == 0
