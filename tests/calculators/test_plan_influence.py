"""What was assumed, the most influential first."""

import pytest

from generator.answers.compute import plan


def assumed(rulebook, block, **changes):
    """The assumed facts of a stored block with some facts changed; None takes a fact out."""
    facts = {**rulebook.blocks[block].facts, **changes}
    return plan(rulebook, {name: value for name, value in facts.items() if value is not None})["assumed"]


@pytest.mark.parametrize("block", ["demo", "gappy_cordon", "drying_on_the_vine"])
def test_what_changes_the_system_stands_before_what_moves_numbers(rulebook, block):
    """First those that flip the answer, then by how far they move the nodes or the crop."""
    found = assumed(rulebook, block)
    flips = [one["flips"] != "" for one in found]
    assert flips == sorted(flips, reverse=True)
    rest = [one["moves_pct"] for one in found if not one["flips"]]
    assert rest == sorted(rest, reverse=True)


def test_every_assumed_fact_is_there_once(rulebook):
    """The list is the plan's own, in another order."""
    found = plan(rulebook, rulebook.blocks["gappy_cordon"].facts)
    assert sorted(one["fact"] for one in found["assumed"]) == sorted(found["plan"]["assumed"])


def test_the_size_shown_is_the_one_that_the_plan_moves_by(rulebook):
    """Budburst at the lowest and highest printed figure, entered instead of assumed, moves the nodes or the crop that far."""
    facts = {name: value for name, value in rulebook.blocks["demo"].facts.items() if name != "budburst_pct"}
    one = next(one for one in plan(rulebook, facts)["assumed"] if one["fact"] == "budburst_pct")
    figures = [figure.number for figure in rulebook.values["budburst_usual_pct"].figures]

    def shown(**more):
        parts = plan(rulebook, {**facts, **more})["plan"]["parts"]
        return {number["id"]: number["number"] for part in parts for number in part["numbers"]}

    was = shown()
    ends = [shown(budburst_pct=end) for end in (min(figures), max(figures))]
    moved = max(abs(end[name] / was[name] - 1) * 100 for end in ends for name in ("nodes", "t_per_ha"))
    assert one["moves_pct"] == pytest.approx(moved) and moved > 5


def test_while_there_is_no_number_no_size_is_claimed(rulebook):
    """What a fact moves shows once there is something to move."""
    assert all(one["moves_pct"] == 0 for one in assumed(rulebook, "much_unknown"))
    assert not any("moves neither" in one["text"] for one in assumed(rulebook, "much_unknown"))
