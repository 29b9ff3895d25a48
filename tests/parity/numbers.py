"""Seeded arguments of any type of the subset: half of them ordinary, half at the edges where two languages part."""

import dataclasses
import math
import random
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from typing import Any, get_args, get_type_hints

LARGEST = 2**53 - 1
EDGE_FLOATS = (
    *(0.0, -0.0, 0.5, -0.5, 1.5, -1.5, 2.5, -2.5, 0.125, -0.375, 1.0, -1.0, 2.0, 100.0, 1e-300, -1e-300, 1e300, -1e300),
    *(5e-324, -5e-324, 2.2250738585072014e-308, 0.49999999999999994, 0.5000000000000001, -0.49999999999999994, 1e16, 1e21, 1e22),
    *(2.0**52 - 0.5, 2.0**52 + 0.5, 2.0**52 + 1.0, float(LARGEST), 2.0**53, 2.0**53 + 2.0, -(2.0**53), 2.675, 1.005, 0.1, 9999.5),
    *(1.7976931348623157e308, -1.7976931348623157e308, 709.78, -745.13, 1e-5, 1e-7, 123456789.125, 1.0 / 3.0, math.pi),
)
ENDLESS = (math.inf, -math.inf, math.nan)
EDGE_INTS = (0, 1, -1, 2, -2, 3, -3, 5, 7, 100, 2**31, -(2**31), 2**32 + 1, 94906265, 94906267, 2**52, LARGEST, -LARGEST, LARGEST - 1)
TEXTS = ("", "a", "b", "__proto__", "constructor", "text:é\u202f−", 'quote"\\', "spur")


@dataclass(frozen=True)
class Maker:
    """Makes values of any type of the subset. endless: with nan and inf; largest: no number beyond it, since some functions loop
    so often."""

    rng: random.Random
    endless: bool = True
    largest: float = math.inf

    def arguments(self, types: list[Any], count: int) -> list[list[Any]]:
        """So many lists of arguments, every second one at the edge."""
        return [[self.value(wanted, edge=bool(turn % 2)) for wanted in types] for turn in range(count)]

    def value(self, wanted: Any, edge: bool, depth: int = 0) -> Any:
        """A value of an annotated type; lists have 0 to 6 items, deeper ones fewer, a third of them of few kinds, so that equal
        ones meet."""
        rng = self.rng
        if wanted is bool:
            return rng.random() < 0.5
        if wanted is int:
            return rng.choice([n for n in EDGE_INTS if abs(n) <= self.largest]) if edge and rng.random() < 0.6 else rng.randint(-12, 12)
        if wanted is float:
            return self.edge_float() if edge and rng.random() < 0.7 else self.plain_float()
        if wanted is str:
            return rng.choice(TEXTS)
        if items := get_args(wanted):
            made = [self.value(items[0], edge, depth + 1) for _ in range(rng.randint(0, 6 // (depth + 1)))]
            return [rng.choice(made[:2]) for _ in made] if made and rng.random() < 0.3 else made
        return wanted(*(self.value(part, edge, depth) for part in fields(wanted).values()))

    def plain_float(self) -> float:
        """An ordinary float, a whole one, a half or an eighth."""
        rng = self.rng
        return rng.choice([rng.uniform(-100.0, 100.0), rng.uniform(0.0, 10.0), float(rng.randint(-20, 20)), rng.randint(-80, 80) / 8.0])

    def edge_float(self) -> float:
        """An edge, its neighbour, or rarely nan or inf."""
        x, way = self.rng.choice([x for x in EDGE_FLOATS if abs(x) <= self.largest]), self.rng.random()
        if way < 0.2:
            return math.nextafter(x, self.rng.choice([-math.inf, math.inf]))
        return self.rng.choice(ENDLESS) if self.endless and way > 0.97 else x


@cache
def fields(record: Any) -> dict[str, Any]:
    """The fields of a record with their types, in order."""
    hints = get_type_hints(record)
    return {part.name: hints[part.name] for part in dataclasses.fields(record)}


@cache
def signature(function: Callable[..., object]) -> tuple[list[Any], Any]:
    """The types of a function's parameters, and of its result."""
    hints = dict(get_type_hints(function))
    result = hints.pop("return")
    return list(hints.values()), result
