"""Where a calculator's answer leads: each slip in `used_in` is named, and a sound way is not."""

from dataclasses import replace

import pytest

from generator.checks.calculators import CHECK
from generator.reading.tables import UsedIn


@pytest.mark.parametrize(
    ("way", "said"),
    [
        (UsedIn("no_such_page"), ["`no_such_page`, which is no calculator"]),
        (UsedIn("node_number", {"wire_height_m": "nodes"}), ["`wire_height_m` to `node_number`, which does not ask it"]),
        (UsedIn("node_number", {"capacity_nodes_low": "no_such_output"}), ["`no_such_output` to `node_number`, and no output has this name"]),
        (UsedIn("node_number", {"capacity_nodes_low": "nodes"}), []),
        (UsedIn("node_number", anew=("wire_height_m",)), ["`node_number` ask `wire_height_m` anew, which is not asked there"]),
    ],
    ids=["no calculator", "not asked there", "no output", "sound", "not asked anew"],
)
def test_a_way_that_leads_nowhere_is_named(rulebook, way, said):
    """The problem names what is wrong, and stands at the form."""
    form = replace(rulebook.calculators["balanced_nodes"], used_in=(way,))
    found = list(CHECK.check(replace(rulebook, calculators=rulebook.calculators | {form.id: form})))
    assert len(found) == len(said)
    assert all(part in str(one) and "balanced_nodes.yml" in str(one) for one, part in zip(found, said, strict=True))


def test_dead_buds_inside_a_number_are_asked_anew(rulebook):
    """An answer that was given for another number would count deaths twice: it does not go along from the node number to winter injury."""
    from generator.pages.scripts import uses

    way = next(one for one in uses(rulebook, rulebook.calculators["node_number"]) if "injury" in one["page"])
    assert "wanted_nodes" in way["gives"] and "buds_primary_alive" in way["asks"]
    assert "deaths_in_wanted_nodes" not in way["asks"] and "deaths_in_wanted_nodes" not in way["gives"]
    assert "deaths_in_wanted_nodes" in {one.fact for one in rulebook.calculators["injury_adjustment"].inputs if not one.optional}
