"""The words of a table's cells as spans of the number line.

Numbers: `under 3`, `up to 3`, `over 3`, `3 or more`, `3 to 5` (both ends in), `3 to under 5`, `over 3 to 5`, `over 3 to under 5`, `3`.
Choices: `cool`, `warm or hot`, `not young`. Yes or no: `yes`, `no`. Dates: `before 2026-03-01`, `from 2026-03-01`,
`2026-03-01 to 2026-04-01`. `any` restricts nothing.
"""

import re
from dataclasses import dataclass
from datetime import date

from generator.reading.near import suggestion
from generator.reading.tables import Span

FAR = 1e300
EPOCH = date(1970, 1, 1).toordinal()
NUMBER = r"-?[0-9]+(?:\.[0-9]+)?"
SHAPES = (
    (re.compile(rf"under (?P<high>{NUMBER})"), False, False),
    (re.compile(rf"up to (?P<high>{NUMBER})"), False, True),
    (re.compile(rf"over (?P<low>{NUMBER})"), False, False),
    (re.compile(rf"(?P<low>{NUMBER}) or more"), True, False),
    (re.compile(rf"(?P<low>{NUMBER}) to (?P<high>{NUMBER})"), True, True),
    (re.compile(rf"(?P<low>{NUMBER}) to under (?P<high>{NUMBER})"), True, False),
    (re.compile(rf"over (?P<low>{NUMBER}) to (?P<high>{NUMBER})"), False, True),
    (re.compile(rf"over (?P<low>{NUMBER}) to under (?P<high>{NUMBER})"), False, False),
    (re.compile(rf"(?P<low>(?P<high>{NUMBER}))"), True, True),
)
MADE = (
    (r"(?:<|less than|below|fewer than) ?({n})", "under {0}"),
    (r"(?:<=|=<|≤|at most|not more than|maximum|max) ?({n})", "up to {0}"),
    (r"({n}) or (?:less|fewer|under|below)", "up to {0}"),
    (r"(?:>|more than|above) ?({n})", "over {0}"),
    (r"(?:>=|=>|≥|at least|from|minimum|min) ?({n})", "{0} or more"),
    (r"({n}) ?(?:\+|and more|and over|or over|or above)", "{0} or more"),
    (r"(?:from |between )?({n}) ?(?:-|–|\.\.|and|to|until) ?({n})", "{0} to {1}"),
    (r"=+ ?({n})", "{0}"),
)
NUMBER_WORDS = "Write `under 3`, `up to 3`, `over 3`, `3 or more`, `3 to 5`, `3 to under 5`, `over 3 to 5` or `3`."
DATE_WORDS = "Write `before 2026-03-01`, `from 2026-03-01` or `2026-03-01 to 2026-04-01`."
DAY = r"[0-9]{4}-[0-9]{2}-[0-9]{2}"


@dataclass(frozen=True)
class Column:
    """What a cell of one fact may say: its kind, the words of its choices in order, its range (days for dates)."""

    kind: str
    choices: tuple[str, ...] = ()
    low: float = -FAR
    high: float = FAR


class BadCell(ValueError):
    """A cell that cannot be read: `sentence` ends a sentence that begins with the cell; `next_step` may be empty."""

    def __init__(self, sentence: str, next_step: str = "") -> None:
        super().__init__(sentence)
        self.sentence = sentence
        self.next_step = next_step


def parse_cell(column: Column, text: str) -> tuple[Span, ...]:
    """The spans of a cell, ascending and disjoint; none when the cell is `any`. Raises BadCell."""
    words = " ".join(text.split())
    if words == "any":
        return ()
    if column.kind == "choice":
        return _choices(column.choices, words)
    if column.kind == "yes_no":
        return _choices(("no", "yes"), words)
    if column.kind == "date":
        return (_inside(column, _dates(words), words),)
    if column.kind == "text":
        raise BadCell("tests a text, and no table can", "Ask a number, a choice, a yes or no, or a date.")
    return (_inside(column, _numbers(words), words),)


def day_number(text: str) -> float:
    """Days from 1970-01-01 to an ISO date. Raises BadCell when it is no day of the calendar."""
    try:
        return float(date.fromisoformat(text).toordinal() - EPOCH)
    except ValueError:
        raise BadCell(f"has `{text}`, which is no day of the calendar", DATE_WORDS) from None


def _choices(known: tuple[str, ...], words: str) -> tuple[Span, ...]:
    """`a`, `a or b`, `not a`, `not a or b` (neither of them)."""
    turned = words.startswith("not ")
    named = [part.strip() for part in re.split(r",| or | nor ", words[4:] if turned else words)]
    for name in named:
        if name == "unknown":
            raise BadCell(
                "tests `unknown`, and no row can: every table asks for what is unknown", "Name what it may be."
            )
        if name not in known:
            raise BadCell(f"names `{name}`, which is not one of the choices", suggestion(name, known))
    if len(set(named)) < len(named):
        raise BadCell("names a choice twice", "Name each once.")
    kept = [index for index, name in enumerate(known) if (name in named) != turned]
    if not kept:
        raise BadCell("leaves no choice over", "Name the choices that the row is for.")
    return tuple(Span(float(index), True, float(index), True) for index in kept)


def _numbers(words: str) -> Span:
    """One stretch of numbers."""
    for shape, low_in, high_in in SHAPES:
        match = shape.fullmatch(words)
        if match:
            ends = match.groupdict()
            low = float(ends["low"]) if "low" in ends else -FAR
            high = float(ends["high"]) if "high" in ends else FAR
            return Span(low, low_in, high, high_in)
    raise BadCell("cannot be read as numbers", _made(words))


def _made(words: str) -> str:
    """A next step for words that only look like a cell: signs instead of words, a unit, a decimal comma."""
    plain = re.sub(r"(?<=[0-9]),(?=[0-9])", ".", words.lower())
    bare = re.sub(r"(?<=[0-9]) ?(%|°|[a-z]+(/[a-z]+)?)(?= |$)", _unit_away, plain).strip()
    for candidate in (plain, bare):
        if any(shape.fullmatch(candidate) for shape, _, _ in SHAPES):
            return f"Write `{candidate}`: a point for decimals, no unit."
        for pattern, form in MADE:
            match = re.fullmatch(pattern.replace("{n}", NUMBER), candidate)
            if match:
                return f"Write `{form.format(*match.groups())}`."
    return NUMBER_WORDS


def _unit_away(match: re.Match) -> str:
    """Takes a unit away, and leaves the words of cells."""
    return match.group(0) if match.group(1) in ("to", "or", "and", "until", "under", "over", "more") else ""


def _dates(words: str) -> Span:
    """One stretch of days."""
    match = re.fullmatch(rf"before ({DAY})", words)
    if match:
        return Span(-FAR, False, day_number(match[1]), False)
    match = re.fullmatch(rf"from ({DAY})", words)
    if match:
        return Span(day_number(match[1]), True, FAR, False)
    match = re.fullmatch(rf"({DAY}) to ({DAY})", words)
    if match:
        return Span(day_number(match[1]), True, day_number(match[2]), True)
    raise BadCell("cannot be read as dates", DATE_WORDS)


def _inside(column: Column, span: Span, words: str) -> Span:
    """The span, when it is not empty, not upside down and inside what the fact can be."""
    if span.low > span.high or (span.low == span.high and not (span.low_in and span.high_in)):
        raise BadCell("fits nothing: its ends are the wrong way round or the same", "Write the smaller end first.")
    ends = [end for end in (span.low, span.high) if abs(end) < FAR]
    outside = [end for end in ends if not column.low <= end <= column.high]
    above = span.low > column.high or (span.low == column.high and not span.low_in)
    below = span.high < column.low or (span.high == column.low and not span.high_in)
    if outside or above or below:
        raise BadCell(
            f"is outside the fact's range, {_end(column, column.low)} to {_end(column, column.high)}",
            "Mend the cell, or the range of the fact.",
        )
    return span


def _end(column: Column, number: float) -> str:
    """An end of a range as the author writes it."""
    if column.kind == "date":
        return date.fromordinal(int(number) + EPOCH).isoformat()
    return f"{number:g}"
