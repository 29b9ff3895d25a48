"""Pages for the hands against what is published: each figure stands in what its sentence cites, and each figure of hours in its evidence."""

import pytest

from generator.reading.rulebook import Rulebook
from tests.published.printed import NUMBER, numbers_in, prints, rules
from tests.published.vines import outcome, printed

SAID = [
    (work.id, said.text, " ".join(cite.id for cite in said.cites))
    for work in rules().hands.values()
    for said in work.says
    if said.cites and said.standing != "our_judgement" and NUMBER.search(said.text)
]
HOURS = [
    ("hw-01", "tying_h_per_ha", "munzingen", "bending_and_tying_h_per_ha"),
    ("hw-02", "tying_h_per_ha", "baden_estate", "bending_and_tying_h_per_ha"),
    ("hw-02", "pulling_out_low_h_per_ha", "baden_estate", "pulling_out_h_per_ha"),
    ("hw-02", "pulling_out_high_h_per_ha", "baden_estate", "pulling_out_h_per_ha"),
    ("hw-01", "pruning_and_trellis_h_per_ha", "munzingen", "pruning_and_trellis_h_per_ha"),
    ("hw-03", "hail_more_h_per_ha", "loire", "more_after_severe_hail_h_per_ha"),
]


@pytest.mark.parametrize(("work", "text", "evidence"), SAID)
def test_figures_of_the_steps_are_printed(rulebook: Rulebook, work: str, text: str, evidence: str) -> None:
    """Every figure in a sentence that rests on print stands in what it cites."""
    there = set().union(*(prints(rulebook, name) for name in evidence.split()))
    assert {float(number) for number in NUMBER.findall(text)} <= there, work


@pytest.mark.parametrize(("evidence", "value", "figure", "place"), HOURS)
def test_hours_are_as_printed(rulebook: Rulebook, evidence: str, value: str, figure: str, place: str) -> None:
    """Hours a hectare are those of the evidence; of a printed range the lower end stands as the least, the upper as the most."""
    found = printed(rulebook, evidence)[place]
    ends = found if isinstance(found, list) else [found]
    number = next(one.number for one in rulebook.values[value].figures if one.id == figure)
    assert number == (ends[0] if "low" in value else ends[-1])


def test_no_hours_without_print(rulebook: Rulebook) -> None:
    """hw-01, hw-02, hw-03: every time that a page shows was read somewhere; there is none of our own."""
    shown = {name for work in rulebook.hands.values() for name in work.hours}
    assert {one.standing for name in shown for one in rulebook.values[name].figures} == {"published"}
    assert shown == {value for _, value, _, _ in HOURS}


@pytest.mark.parametrize(("evidence", "nodes", "laid"), [("cs-06", 12, "flat"), ("cs-06", 13, "arch")])
def test_the_step_and_the_decision_bend_alike(rulebook: Rulebook, evidence: str, nodes: int, laid: str) -> None:
    """cs-06: up to twelve nodes are printed for a well-ripened cane. The step and the table part at the same number."""
    step = next(said for said in rulebook.hands["tying_and_bending"].steps if "arch" in said.text and said.cites)
    assert {12.0} == set(numbers_in(step.text)) <= prints(rulebook, evidence)
    assert outcome(rulebook, "cane_bend", cane_nodes_left=nodes, blind_mid_cane_pct=0) == laid


@pytest.mark.parametrize(("evidence", "place", "part"), [("D31-sucker-wounds", "infected_percent", "never"), ("hw-16", "bunches_lost_pct", "never")])
def test_what_is_never_done_tells_why(rulebook: Rulebook, evidence: str, place: str, part: str) -> None:
    """D31: 62 % of sucker wounds were infected. Garlock: 54 % of the bunches were lost. The page says the printed share."""
    works = [said for work in rulebook.hands.values() for said in getattr(work, part) if evidence in {cite.id for cite in said.cites}]
    assert works and all(printed(rulebook, evidence)[place] in numbers_in(said.text) for said in works)


def test_both_sides_of_the_dry_stub_stand(rulebook: Rulebook) -> None:
    """D29, sl-07, D28, hw-25: once its thickness, twice, or the distance from the node: no side is left out, none is averaged."""
    cited = {cite.id for said in rulebook.hands["dry_stubs"].says for cite in said.cites}
    assert {"D29-stub-rule", "sl-07", "D28-necrosis-diameter", "hw-25"} <= cited


def test_reserve_cane_is_told_for_and_against(rulebook: Rulebook) -> None:
    """hw-30, hw-31: an encyclopedia lays it where more than 20 % failed; growers disagree whether it is worth it."""
    works = rulebook.hands["reserve_cane"]
    assert {"hw-30", "hw-31"} <= {cite.id for said in works.says for cite in said.cites}
    assert any(printed(rulebook, "hw-30")["tie_down_above_failed_pct"] in numbers_in(said.text) for said in works.steps)
