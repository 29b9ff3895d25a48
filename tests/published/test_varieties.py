"""The varieties against the lists and trials that name them. The source stands beside each check; names come from its evidence."""

import pytest

from generator.reading.rulebook import Rulebook
from generator.reading.varieties import Variety
from generator.reading.variety_lists import verdict


def variety(rulebook: Rulebook, name: str) -> Variety:
    """The variety that goes by this name."""
    return next(one for one in rulebook.varieties.values() if name in (one.name, *one.other_names))


def said_by(one: Variety, evidence: str) -> set[str]:
    """What the listings say that rest on this evidence."""
    return {listing.says for listing in one.lists if evidence in [cite.id for cite in listing.cites]}


@pytest.mark.parametrize("group", ["spur", "cane"])
def test_the_list_of_the_toronto_gardeners_is_kept_whole(rulebook: Rulebook, group: str) -> None:
    """var-02: 17 names in the spur group and 14 in the cane group, each in its group under one of its names."""
    for name in rulebook.evidence["var-02"].outputs["table"][group]:
        short = name.removesuffix(" Currant")
        assert said_by(variety(rulebook, short), "var-02") == {group}, name


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
    ],
)
def test_a_trial_or_a_rule_gives_the_verdict(rulebook: Rulebook, name: str, says: str, source: str) -> None:
    """The verdict on a variety that no long list names rests on the source beside it."""
    one = variety(rulebook, name)
    assert said_by(one, source)
    assert verdict(one) == says


@pytest.mark.parametrize("name", ["Glera", "Riesling", "Fernão Pires", "Malvasia nera lunga", "Sunmuscat", "Scheurebe"])
def test_a_measurement_is_no_list(rulebook: Rulebook, name: str) -> None:
    """yc-28, pbn-01, nf-12, nf-03, nf-15, fv-10: counts by node, or a trial run on one form, say neither spurs nor canes."""
    one = variety(rulebook, name)
    assert verdict(one) == "nothing_published"
    assert one.cites
