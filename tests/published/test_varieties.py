"""The varieties against the lists and trials that name them. The source stands beside each check; names come from its evidence."""

import pytest

from generator.pages.varieties import variety_pages
from generator.reading.rulebook import Rulebook
from generator.reading.varieties import Finding, Variety
from generator.reading.variety_lists import verdict
from tests.published.printed import numbers_in, prints, rules

GROUPS = {  # a list's own word for a group, and what it says of spurs or canes
    "var-02": {"spur": "spur", "cane": "cane"},
    "var-04": {"cane": "cane"},
    "fv-04": {"spur": "spur"},
    "fv-06": {"goblet": "spur", "cordon": "spur"},
}


def variety(rulebook: Rulebook, name: str) -> Variety:
    """The variety that goes by this name, as a list prints it."""
    short = {"Sultana / Thompson Seedless": "Sultana", "Pinots": "Pinot noir"}.get(name, name)
    return next(one for one in rulebook.varieties.values() if short in (one.name, *one.other_names))


def said_by(one: Variety, evidence: str) -> set[str]:
    """What the listings say that rest on this evidence."""
    return {listing.says for listing in one.lists if evidence in [cite.id for cite in listing.cites]}


def found_by(one: Variety, evidence: str) -> list[Finding]:
    """What was found by node in this evidence."""
    return [finding for finding in one.fruitfulness if evidence in [cite.id for cite in finding.cites]]


def named_in_lists() -> list[tuple[str, str, str]]:
    """Every name of the lists that are kept whole: evidence, name, what it says."""
    book = rules()
    return [
        (evidence, name, says)
        for evidence, groups in GROUPS.items()
        for group, says in groups.items()
        for name in book.evidence[evidence].outputs["table"][group]
    ]


@pytest.mark.parametrize(("evidence", "name", "says"), named_in_lists())
def test_a_list_is_kept_whole(rulebook: Rulebook, evidence: str, name: str, says: str) -> None:
    """Every name that the list prints has its listing, in its group and under one of its names."""
    assert said_by(variety(rulebook, name), evidence) == {says}


@pytest.mark.parametrize(
    ("name", "says"), [("Tokay", "spur"), ("Cornichon", "cane"), ("Malaga", "cane"), ("Sultanina", "cane"), ("Semillon", "cane")]
)
def test_the_californian_list_of_1919_is_kept(rulebook: Rulebook, name: str, says: str) -> None:
    """var-03: fruit spurs, half-long canes and fruit canes by variety (Hedrick, after Bioletti)."""
    assert said_by(variety(rulebook, name), "var-03") == {says}


@pytest.mark.parametrize(
    ("name", "says", "source"),
    [
        ("Nebbiolo", "cane", "fv-01"),  # spurs bore four bunches on ten vines in one of two seasons
        ("Autumn King", "cane", "fv-03"),
        ("DOVine", "cane", "fv-02"),
        ("Niagara", "conflict", "sys-11"),  # longer canes bore more in two of five years, but shrank the vines
        ("Gamay", "conflict", "ll-03"),  # a cane of six with a spur, or five spurs of two
        ("Fiesta", "cane", "var-07"),
        ("Selma Pete", "cane", "var-07"),
        ("Cabernet Franc", "conflict", "fv-05"),  # spur or cane, though a list spurs it
        ("Shiraz", "spur", "fv-07"),  # nearly the same crop, and spurs cost less
        ("Semillon", "conflict", "fv-07"),  # canes in 1919
        ("Carmenère", "conflict", "fv-09"),  # usually caned; three seasons gave no rule
        ("Zinfandel", "spur", "fv-11"),
        ("Scarlet Royal", "conflict", "sys-01"),
        ("Merlot", "conflict", "fv-06"),  # Guyot, and goblets at times
        ("Malbec", "cane", "fv-06"),
    ],
)
def test_a_trial_or_a_rule_gives_the_verdict(rulebook: Rulebook, name: str, says: str, source: str) -> None:
    """The verdict on a variety that no long list names rests on the source beside it."""
    one = variety(rulebook, name)
    assert said_by(one, source)
    assert verdict(one) == says


@pytest.mark.parametrize(
    ("name", "evidence"),
    [
        ("Glera", "yc-28"),
        ("Riesling", "pbn-01"),
        ("Fernão Pires", "nf-12"),
        ("Malvasia nera lunga", "nf-03"),
        ("Sunmuscat", "nf-15"),
        ("Scheurebe", "fv-10"),
    ],
)
def test_a_measurement_is_no_list(rulebook: Rulebook, name: str, evidence: str) -> None:
    """Counts by node, or a trial run on one form, say neither spurs nor canes."""
    one = variety(rulebook, name)
    assert verdict(one) == "nothing_published"
    assert found_by(one, evidence)


def findings() -> list[tuple[str, int, str]]:
    """Every finding by its variety, its place in the list, and the first evidence that it rests on."""
    varieties = rules().varieties.values()
    return [(one.id, place, finding.cites[0].id) for one in varieties for place, finding in enumerate(one.fruitfulness)]


@pytest.mark.parametrize(("name", "place", "evidence"), findings())
def test_figures_and_nodes_of_a_finding_are_printed(rulebook: Rulebook, name: str, place: int, evidence: str) -> None:
    """Nothing is put into a finding that its sources do not print: no figure, no node, no number in its words."""
    finding = rulebook.varieties[name].fruitfulness[place]
    printed = set().union(*(prints(rulebook, cite.id) for cite in finding.cites))
    shares = {number / 100 for number in printed} | {number * 100 for number in printed}
    words = "" if finding.measure == "against_others" else finding.says  # a rank is checked below
    told = {*finding.numbers, *numbers_in(finding.nodes), *numbers_in(words)}
    assert {number for number in told if number not in printed | shares} <= {0.0, 1.0}


@pytest.mark.parametrize(
    ("name", "nodes", "evidence"),
    [
        ("Sultana", "9", "nf-01"),
        ("Concord", "3 to 6", "sys-11"),
        ("Niagara", "2 to 6", "sys-11"),
        ("Malvasia di Schierano", "5", "nf-03"),
        ("Malvasia nera lunga", "7", "nf-03"),
        ("Barbera", "9", "nf-03"),
        ("Pinot noir", "4 to 5", "sys-03"),
        ("Crimson Seedless", "beyond 10", "var-05"),
    ],
)
def test_the_best_nodes_are_those_of_the_comparison(rulebook: Rulebook, name: str, nodes: str, evidence: str) -> None:
    """dis-03 sets the best part of the cane side by side by variety; each stands with its variety, from its own source."""
    assert nodes in [finding.nodes for finding in found_by(variety(rulebook, name), evidence)]
    assert set(numbers_in(nodes)) <= prints(rulebook, "dis-03")


@pytest.mark.parametrize(("place", "word"), list(enumerate(["most", "second", "third", "least"])))
def test_the_rank_of_four_varieties_is_kept(rulebook: Rulebook, place: int, word: str) -> None:
    """var-08: Chardonnay, Cabernet Sauvignon, Flame Seedless, Thompson Seedless, from the most fruitful to the least."""
    name = rulebook.evidence["var-08"].outputs["rank"][place]
    assert [word in finding.says.casefold() for finding in found_by(variety(rulebook, name), "var-08")] == [True]


@pytest.mark.parametrize(("place", "word"), list(enumerate(["most", "second", "as fruitful as thompson"])))
def test_the_rank_of_the_raisin_varieties_is_kept(rulebook: Rulebook, place: int, word: str) -> None:
    """var-06: Fiesta, Selma Pete, then Thompson Seedless and DOVine alike; on all of them the base bears least."""
    name = rulebook.evidence["var-06"].outputs["rank"][place].split(" = ")[-1]
    found = found_by(variety(rulebook, name), "var-06")
    assert {finding.nodes for finding in found} == {"base", "all"}
    assert any(word in finding.says.casefold() for finding in found if finding.nodes == "all")


@pytest.mark.parametrize(
    ("name", "evidence", "word"),
    [
        ("Norton", "bi-10", "seldom"),
        ("Concord", "bi-11", "35"),
        ("Niagara", "bi-11", "35"),
        ("Concord", "pbn-06", "barren"),
        ("Sultana", "pbn-06", "rarely"),
        ("Shiraz", "pbn-04", "fewer"),
    ],
)
def test_secondary_buds_are_told_by_variety(rulebook: Rulebook, name: str, evidence: str, word: str) -> None:
    """What a secondary bud bears is no constant: each source stands by itself, Concord's two side by side."""
    said = [finding.says.casefold() for finding in found_by(variety(rulebook, name), evidence) if finding.measure == "secondary_buds"]
    assert any(word in one for one in said)


@pytest.mark.parametrize(("name", "first", "second"), [("Pinot noir", "sys-03", "nf-06")])
def test_both_sides_of_a_dispute_stand_on_the_page(rulebook: Rulebook, name: str, first: str, second: str) -> None:
    """dis-01: whether the lowest buds of Pinot noir bear is disputed; neither side is dropped."""
    one = variety(rulebook, name)
    assert found_by(one, first) and found_by(one, second)
    page = variety_pages(rulebook)[f"y/{one.id}.md"]
    assert f'<div id="{first}">' in page and f'<div id="{second}">' in page
