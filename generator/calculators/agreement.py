"""How far two people agree who judged the same things: kappa and weighted kappa, and limits of agreement of two counts.

Kappa: J. Cohen, Educational and Psychological Measurement 20 (1960) 37-46. Weighted: J. Cohen, Psychological Bulletin 70 (1968) 213-220.
Their standard error: J. L. Fleiss, J. Cohen, B. S. Everitt, Psychological Bulletin 72 (1969) 323-327. Limits of agreement: J. M. Bland,
D. G. Altman, Lancet i (1986) 307-310; the error of a limit is about that of the square root of three means.
"""

import math
from dataclasses import dataclass

from generator.calculators.counting import PARTS
from generator.calculators.facts import Maybe
from generator.calculators.quantiles import t_quantile, tail_of

LIMIT_VARIANCES: float = 1.0 + 2.0  # a limit varies as three means do: Bland and Altman 1986
LEAST: int = 2  # fewer differences have no spread


@dataclass(frozen=True)
class Kappa:
    """Agreement beyond chance: observed and expected by chance (shares, weighted), kappa (open where chance alone gives full agreement), its
    standard error and range (open where the error is 0, since that is no certainty)."""

    observed: float
    expected: float
    kappa: Maybe
    error: float
    low: Maybe
    high: Maybe


@dataclass(frozen=True)
class MeanRange:
    """The mean of some numbers, their standard deviation, and the range of the mean; open where there are fewer than two."""

    mean: float
    sd: Maybe
    low: Maybe
    high: Maybe


@dataclass(frozen=True)
class Limits:
    """Limits of agreement, and by how much each of them is unsure to either side."""

    low: float
    high: float
    unsure: float


def crossed(first: list[int], second: list[int], classes: int) -> list[list[int]]:
    """How many things the first put into the class of the line and the second into that of the column. Raises ValueError unless both judged
    as many, and at least one."""
    if len(first) != len(second) or len(first) == 0:
        raise ValueError("both have to judge the same things, one at least")
    table: list[list[int]] = []
    for row in range(classes):
        table.append([len([1 for a, b in zip(first, second) if a == row and b == column]) for column in range(classes)])
    return table


def plain_weights(classes: int) -> list[list[float]]:
    """1 where both say the same, else 0."""
    return [[1.0 if row == column else 0.0 for column in range(classes)] for row in range(classes)]


def ordered_weights(classes: int) -> list[list[float]]:
    """1 where both say the same, less for each class between them, down to 0 for the two ends (two classes or more)."""
    return [[1.0 - float(abs(row - column)) / float(classes - 1) for column in range(classes)] for row in range(classes)]


def kappa_of(table: list[list[int]], weights: list[list[float]], z: float) -> Kappa:
    """Kappa of a table of counts with weights of agreement (1: full, 0: none); z is the normal quantile of the range wanted."""
    rows = [float(sum(row)) for row in table]
    columns = [float(sum([row[j] for row in table])) for j in range(len(table))]
    count = math.fsum(rows)
    seen: list[float] = []
    chance: list[float] = []
    for i in range(len(table)):
        seen = seen + [weights[i][j] * float(table[i][j]) for j in range(len(table))]
        chance = chance + [weights[i][j] * (rows[i] * columns[j]) for j in range(len(table))]
    observed = math.fsum(seen) / count
    expected = math.fsum(chance) / (count * count)
    if not expected < 1.0:
        return Kappa(observed, expected, Maybe(False, 0.0), 0.0, Maybe(False, 0.0), Maybe(False, 0.0))
    kappa = max(-1.0, (observed - expected) / (1.0 - expected))
    error = error_of(table, weights, kappa, expected)
    known = error > 0.0
    return Kappa(observed, expected, Maybe(True, kappa), error, Maybe(known, max(-1.0, kappa - z * error)), Maybe(known, min(1.0, kappa + z * error)))


def error_of(table: list[list[int]], weights: list[list[float]], kappa: float, expected: float) -> float:
    """The standard error of a kappa, with what chance would give: Fleiss, Cohen and Everitt 1969. What floats leave of none is none."""
    rows = [float(sum(row)) for row in table]
    columns = [float(sum([row[j] for row in table])) for j in range(len(table))]
    count = math.fsum(rows)
    by_row = [math.fsum([weight * column for weight, column in zip(row, columns)]) / count for row in weights]
    by_column = [math.fsum([weights[i][j] * rows[i] for i in range(len(table))]) / count for j in range(len(table))]
    squares: list[float] = []
    for i in range(len(table)):
        for j in range(len(table)):
            apart = weights[i][j] - (by_row[i] + by_column[j]) * (1.0 - kappa)
            squares.append(float(table[i][j]) * apart * apart)
    middle = kappa - expected * (1.0 - kappa)
    variance = (math.fsum(squares) / count - middle * middle) / (count * (1.0 - expected) * (1.0 - expected))
    return math.sqrt(variance) if variance * float(PARTS) > 1.0 else 0.0


def mean_range(numbers: list[float], confidence_pct: float) -> MeanRange:
    """The mean of one number or more with its range by Student's t. Raises ZeroDivisionError when there is none."""
    count = len(numbers)
    mean = math.fsum(numbers) / float(count)
    if count < LEAST:
        return MeanRange(mean, Maybe(False, 0.0), Maybe(False, 0.0), Maybe(False, 0.0))
    sd = math.sqrt(math.fsum([(one - mean) * (one - mean) for one in numbers]) / float(count - 1))
    half = t_quantile(tail_of(confidence_pct), float(count - 1)) * sd / math.sqrt(float(count))
    return MeanRange(mean, Maybe(True, sd), Maybe(True, mean - half), Maybe(True, mean + half))


def limits_of(mean: float, sd: float, times: float, count: int, confidence_pct: float) -> Limits:
    """Between which two numbers most differences lie: the mean less and more so many standard deviations (two differences or more)."""
    half = t_quantile(tail_of(confidence_pct), float(count - 1)) * sd * math.sqrt(LIMIT_VARIANCES / float(count))
    return Limits(mean - times * sd, mean + times * sd, half)
