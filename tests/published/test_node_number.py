"""The node number against what is printed: legal limits as examples of the check, loads by name, weak and strong vines, capacity."""

import pytest

from generator.answers.compute import compute
from generator.calculators.vine_classes import Mix, vine_classes
from generator.calculators.facts import Maybe
from tests.published.printed import prints


def answer(rulebook, **inputs) -> dict:
    """The answer of the calculator; vine and wire carry a great deal unless given."""
    roomy = {"capacity_nodes_high": 200, "space_nodes_low": 1, "space_nodes_high": 200}
    return compute(rulebook, "node_number", {"fruit_nodes": 100, **roomy, **inputs})


def legal(rulebook, per_vine: float | None, per_ha: float | None, vines_per_ha: float) -> dict:
    """The answer under a legal limit, at a density of vines."""
    limits = {"legal_nodes_per_vine_most": per_vine, "legal_nodes_per_ha_most": per_ha}
    spacing = {"row_spacing_m": 1.0, "vine_spacing_m": 10000 / vines_per_ha}
    return answer(rulebook, **spacing, **{name: limit for name, limit in limits.items() if limit})["outputs"]


@pytest.mark.parametrize(
    ("evidence", "per_vine", "per_ha", "density", "exact", "whole"),
    [
        ("ll-01", 14, 100000, 5500, 14, 14),  # Chablis, decree replacing article 5 of that of 5 January 1944: at 5500 the vine binds
        ("ll-01", 14, 100000, 7142.9, 14, 13),  # where the hectare begins to bind (7142.9 as rounded: a hair under 14)
        ("ll-01", 14, 100000, 8000, 12.5, 12),  # our arithmetic on it: the hectare binds
        ("ll-02", 12, 58000, 4400, 12, 12),  # Cotes d'Auvergne, order of 3 November 2008, article 4, Chardonnay and Pinot noir
        ("ll-02", 12, 58000, 5000, 11.6, 11),
        ("ll-02", 12, 58000, 4833.3, 12, 12),
        ("ll-02", 10, 49000, 4400, 10, 10),  # the same, Gamay
        ("ll-02", 10, 49000, 5000, 9.8, 9),
        ("ll-02", 10, 49000, 4900, 10, 10),
        ("ll-05", 12, None, 6897, 12, 12),  # Muscadet Cotes de Grand Lieu, decree of 29 December 1994, art. 7
        ("ll-06", 12, None, 4000, 12, 12),  # Bonnezeaux, decree of 2 December 1996, art. 4
    ],
)
def test_the_lower_legal_limit_holds(rulebook, evidence, per_vine, per_ha, density, exact, whole):
    """Per vine and per hectare: the lower of the two, exact, and never more in whole nodes."""
    assert {float(per_vine), float(density)} <= prints(rulebook, evidence)
    found = legal(rulebook, per_vine, per_ha, density)
    assert found["legal_most"] == pytest.approx(exact, abs=0.001)
    assert found["nodes"] == found["high"] == whole


@pytest.mark.parametrize(
    ("evidence", "limit", "layout", "allowed"),
    [
        ("ll-03", 8, [6, 2], True),  # article on density and pruning, Gamay: single Guyot 6 + 2
        ("ll-03", 8, [3, 3, 2], True),  # the same: two canes of 3 and a spur of 2
        ("ll-03", 10, [2, 2, 2, 2, 2], True),  # the same: gobelet or Royat, five spurs of 2
        ("ll-03", 8, [2, 2, 2, 2, 2], False),  # five spurs are over the eight of the Guyot
        ("ll-05", 12, [10, 2], True),  # Muscadet, art. 7: ten on a cane and two on a spur
        ("ll-05", 12, [10, 2, 2], False),  # the same: a second spur would break the cap
        ("ll-05", 12, [2, 2, 2, 2, 2], True),  # the same: five spurs of two
    ],
)
def test_printed_layouts_against_the_limit(rulebook, evidence, limit, layout, allowed):
    """A layout stays when its nodes are allowed, and is cut to the limit when not; weak and strong vines keep to it too."""
    found = answer(rulebook, fruit_nodes=sum(layout), legal_nodes_per_vine_most=limit)["outputs"]
    assert (found["nodes"] == sum(layout)) == allowed and found["nodes"] == min(sum(layout), limit)
    assert found["strong_nodes"] <= limit


def test_a_hectare_at_the_vine_s_limit(rulebook):
    """ll-06, Bonnezeaux: 12 eyes at 4000 vines are 48 000 on a hectare, at the relaxed 3300 39 600; as limits of the hectare they give 12 back."""
    for density, per_ha in ((4000, 48000), (3300, 39600)):
        assert per_ha in prints(rulebook, "ll-06")
        assert legal(rulebook, None, per_ha, density)["nodes"] == 12


def test_the_boundary_of_density(rulebook):
    """ll-10, Pacherenc du Vic-Bilh, decree of 31 May 1997, art. 5: 2.5 x 1.0 m is exactly 4000 vines, so 48 000 a hectare are 12 and not 11."""
    assert 4000.0 in prints(rulebook, "ll-10")
    found = answer(rulebook, row_spacing_m=2.5, vine_spacing_m=1.0, legal_nodes_per_ha_most=48000)["outputs"]
    assert (found["legal_most"], found["nodes"]) == (12, 12)


def test_a_legal_limit_comes_with_a_word_on_what_it_is(rulebook):
    """ll-01: the printed limits are examples of the check; the answer says that it is no legal advice."""
    notes = answer(rulebook, legal_nodes_per_vine_most=14)["notes"]
    assert any("no legal advice" in note for note in notes)


@pytest.mark.parametrize(("nodes", "load"), [(9, "low"), (10, "medium"), (30, "medium"), (31, "high")])
def test_loads_by_name(rulebook, nodes, load):
    """hg-08, L'Informatore Agrario 2013, La potatura secca della vite, page 2: below 10 low, 10 to 30 medium, above 30 high."""
    assert any(f"called a {load} load" in note for note in answer(rulebook, fruit_nodes=nodes)["notes"])


def test_a_poor_crop_is_not_mended_by_nodes(rulebook):
    """hg-08: do not raise the load to make good a poor crop, rather lower it."""
    raised = answer(rulebook, fruit_nodes=20, nodes_left=15)["notes"]
    assert any("do not mend a poor crop" in note for note in raised)
    assert not any("do not mend" in note for note in answer(rulebook, fruit_nodes=15, nodes_left=15)["notes"])


@pytest.mark.parametrize(("kind", "low", "high"), [("weak", 30, 40), ("strong", 45, 60)])
def test_weak_and_strong_vines_of_the_short_cut(rulebook, kind, low, high):
    """bp-03, Illinois Extension: 30 to 40 buds on weak vines, 45 to 60 on strong ones; a block of both has 43.75 and the guide's ratios give their middles."""
    assert {float(low), float(high)} <= prints(rulebook, "bp-03")
    ratios = [rulebook.values[f"{name}_vine_nodes_usual_pct"].number for name in ("weak", "strong")]
    found = vine_classes(43.75, Mix(50.0, 50.0, *ratios), Maybe(False, 0.0))
    assert getattr(found, kind) == pytest.approx((low + high) / 2)


@pytest.mark.parametrize(
    ("evidence", "value", "figure", "number"),
    [
        ("bp-16", "weak_vine_nodes_usual_pct", "thin_canes", 50),  # Trought and others 2017, page 58: 7-10 mm counts 0.5
        ("bp-16", "strong_vine_nodes_usual_pct", "thick_canes", 200),  # the same: over 15 mm counts 2
        ("bp-20", "strong_vine_nodes_usual_pct", "wineskills", 250),  # WineSkills, section on charge: 2 or even 3
    ],
)
def test_the_far_ends_are_kept(rulebook, evidence, value, figure, number):
    """What else is printed for weak and strong stands beside the ratio followed."""
    found = next(one for one in rulebook.values[value].figures if one.id == figure)
    assert found.number == number and number / 100 in prints(rulebook, evidence)


@pytest.mark.parametrize(("evidence", "kg", "grape", "nodes"), [("bp-01", 0.45359237, "american", 30), ("bp-02", 1.36077711, "american", 50), ("bp-04", 1.36077711, "american", 50), ("bp-13", 0.90718474, "vinifera", 40)])
def test_prunings_are_the_vine_s_view(rulebook, evidence, kg, grape, nodes):
    """The printed examples of balanced pruning come out as an end of the vine's view, and a crop above it is held at the view's high end."""
    assert float(nodes) in prints(rulebook, evidence)
    found = compute(rulebook, "node_number", {"fruit_nodes": 150, "pruning_weight_kg": kg, "grape_type": grape, "space_nodes_low": 1, "space_nodes_high": 200})
    ends = found["outputs"]["capacity_low"], found["outputs"]["capacity_high"]
    assert any(end == pytest.approx(nodes) for end in ends)
    assert found["limits"] == "capacity" and found["outputs"]["nodes"] == round(ends[1])


def test_the_cool_block_s_wire_is_smaller_than_its_vine(rulebook):
    """bp-28 and bp-13 on 0.62 kg: 18.6 to 27 nodes are more than the wire of the first worked block; nothing is added, and it is said."""
    inputs = {"fruit_nodes": 12, "pruning_weight_kg": 0.62, "grape_type": "vinifera", "vine_spacing_m": 1.1, "curtains": 1, "tip_gap_m": 0.1}
    found = compute(rulebook, "node_number", {**inputs, "budburst_pct": 92, "shoots_per_burst_node": 1, "noncount_shoots_kept": 0, "shoots_per_m_low": 10, "shoots_per_m_high": 15})
    assert (found["outputs"]["capacity_low"], found["outputs"]["capacity_high"]) == pytest.approx((18.6, 27.3), abs=0.05)
    assert found["outputs"]["nodes"] == 12 and any("lay more wire" in note.casefold() for note in found["notes"])
