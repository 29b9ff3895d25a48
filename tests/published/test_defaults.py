"""The numbers that the guide reckons with when nobody enters any: each author's figure stands as the source prints it."""

import pytest

from generator.reading.items import Figure
from generator.reading.rulebook import Rulebook
from tests.published.printed import prints, rules

READ = ("published", "abstract", "second_hand")
# A source may print centimetres, millimetres, inches, pounds or a share where the guide keeps metres, centimetres, kilograms or per cent.
SCALES = (1, 100, 0.01, 0.1, 0.0254, 0.45359237)
CLOSE = 0.0006  # two sides of a rounded inch


def close(number: float, printed: float) -> bool:
    """The same number, in one of the units that sources use."""
    return any(abs(number - printed * scale) <= CLOSE * max(1, abs(number)) for scale in SCALES)


def holder(rulebook: Rulebook, figure: Figure) -> str:
    """The evidence among those that a figure cites that prints it; the first of them when none does."""
    cited = [cite.id for cite in figure.cites if cite.id in rulebook.evidence]
    holding = [name for name in cited if any(close(figure.number, number) for number in prints(rulebook, name))]
    return [*holding, *cited, ""][0]


def cases() -> list[tuple[str, str, str]]:
    """Every figure that was read in print: value, figure, evidence."""
    book = rules()
    figures = [(value.id, figure) for value in book.values.values() for figure in value.figures if figure.standing in READ]
    held = [(value, figure.id, holder(book, figure)) for value, figure in figures]
    return [case for case in held if case[2]]


@pytest.mark.parametrize(("value", "figure", "evidence"), cases())
def test_a_figure_is_the_one_that_its_source_prints(rulebook: Rulebook, value: str, figure: str, evidence: str) -> None:
    """Whichever author the guide follows, all figures stand as printed; of a printed range its middle may be taken."""
    one = next(one for one in rulebook.values[value].figures if one.id == figure)
    assert any(close(one.number, number) for number in prints(rulebook, evidence)), one.number


@pytest.mark.parametrize(
    ("value", "evidence", "printed"),
    [
        ("tip_gap_m", "bp-32", 0.1),  # about 10 cm between cane ends
        ("shoots_per_m_high", "sl-03", 15),  # the shade limit
    ],
)
def test_what_the_guide_follows_is_printed(rulebook: Rulebook, value: str, evidence: str, printed: float) -> None:
    """The defaults that weigh most in a plan are printed figures themselves."""
    followed = rulebook.values[value].followed
    assert followed.number == printed and evidence in [cite.id for cite in followed.cites]
    assert any(close(printed, number) for number in prints(rulebook, evidence))


@pytest.mark.parametrize("evidence", ["nf-20", "yc-24"])
def test_the_swing_of_the_season_is_a_judgement_beside_what_is_printed(rulebook: Rulebook, evidence: str) -> None:
    """nf-20 and yc-24 print 25 % for bunches per shoot in one valley, at no level and without set and losses; the guide takes as much for more than that, and says
    that this is its own judgement."""
    value = rulebook.values["season_spread_pct"]
    printed = next(one for one in value.figures if evidence in [cite.id for cite in one.cites])
    assert printed.standing == "published" and printed.number in prints(rulebook, evidence)
    assert value.followed.standing == "our_judgement" and not value.followed.cites
    assert value.followed.number == printed.number
