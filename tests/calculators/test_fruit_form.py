"""The forms of the fruit: spring counts, buds node by node, spring counts scaled; never two at once, and what is not used is told."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import norm

from generator.calculators.nodes_for_yield import nodes_for_yield
from generator.calculators.yield_forecast import yield_forecast
from tests.calculators.cases import FORECAST, FORECAST_LIMITS, LIMITS, NODES, OPEN, but, ids, some

SPRING, BY_NODE, SCALED = some(0), some(1), some(2)
PRIMORDIA = [0.7, 0.85, 1.25, 1.4, 1.5, 1.5, 1.5, 1.5, 1.45, 1.4]
BURST = [55, 75, 90] + [97] * 7


def series(numbers) -> list:
    """Numbers from node 1 on, the rest left out."""
    return [some(number) for number in numbers] + [OPEN] * (15 - len(numbers))


TALLY = dict(
    primordia_node=series(PRIMORDIA),
    cane_budburst_node=series(BURST),
    fruiting_wood=some(0),
    bearer_nodes=some(10),
    dead_primary_pct=some(4),
    dead_node_pct=some(1),
    inner_zone_nodes=some(4),
    spur_budburst_pct=some(95),
    secondary_share=some(0.3),
    dissection_to_spring=some(1),
    shoots_per_burst_node=1.03,
)


def wanted(**changes):
    """Nodes for the crop of the plain block with some inputs changed."""
    return nodes_for_yield(but(NODES, **changes), LIMITS)


def expected(**changes):
    """The forecast for the plain block with some inputs changed."""
    return yield_forecast(but(FORECAST, **changes), FORECAST_LIMITS)


def by_hand(nodes: int, on_cane: bool) -> tuple[float, float]:
    """Bunches and count shoots of a cane, or of a spur of two nodes, by the chain of the definitions: P .95, S .04, s .3, d .03."""
    bunches = shoots = 0.0
    for node in range(nodes):
        burst = BURST[node] / 100 if on_cane else 0.95
        bunches += burst * (0.95 + (0.95 * 0.03 + 0.04) * 0.3) * PRIMORDIA[node]
        shoots += burst * (0.95 * 1.03 + 0.04)
    return bunches, shoots


def test_by_node_is_the_chain_of_the_bearer():
    """A cane of ten and its renewal spur of two, reckoned by hand: bunches of the nodes, nothing of the spring counts."""
    cane, spur = by_hand(10, True), by_hand(2, False)
    found = expected(nodes=12, **TALLY)
    assert found.bunches == pytest.approx(cane[0] + spur[0])
    assert found.count_shoots == pytest.approx(cane[1] + spur[1])
    assert found.promised_bunches_per_shoot.number == pytest.approx((cane[0] + spur[0]) / (cane[1] + spur[1]))


def test_spurs_carry_at_spur_value():
    """Two-node spurs burst like spurs, and have no renewal spur beside them."""
    found = expected(nodes=2, **{**TALLY, "fruiting_wood": some(1), "bearer_nodes": OPEN})
    assert (found.bunches, found.count_shoots) == pytest.approx(by_hand(2, False))


@given(st.floats(0.1, 4.0), st.floats(10.0, 100.0))
def test_by_node_takes_nothing_from_the_spring_counts(u, burst):
    """Bunches per shoot and the block's budburst may be what they like: the number by node stays."""
    assert wanted(bunches_per_shoot=some(u), budburst_pct=burst, **TALLY).nodes_exact == wanted(bunches_per_shoot=OPEN, **TALLY).nodes_exact


@given(st.floats(0.05, 4.0))
def test_spring_counts_take_nothing_from_the_buds(primordia):
    """Chosen, the spring counts stand alone, whatever was cut."""
    tally = {**TALLY, "primordia_node": series([primordia] * 10)}
    assert wanted(fruit_from=SPRING, **tally).nodes_exact == wanted(shoots_per_burst_node=1.03).nodes_exact


def test_both_given_the_one_that_is_not_used_is_told_with_its_number():
    """By node is used, the spring counts stand beside it with what they alone would ask for."""
    found = wanted(**TALLY)
    assert ids(found.notes)[:3] == ["fruit_form.by_node", "fruit_form.spring_not_used", "nodes_for_yield.other_form"]
    assert found.notes[2].numbers == [float(wanted(fruit_from=SPRING, **TALLY).nodes)]


def test_spring_counts_chosen_tell_the_buds_beside_them():
    """And the other way round."""
    found = wanted(fruit_from=SPRING, **TALLY)
    assert ids(found.notes)[:2] == ["fruit_form.buds_not_chosen", "nodes_for_yield.other_form"]
    assert found.notes[1].numbers == [float(wanted(**TALLY).nodes)]


def test_buds_cut_before_a_freeze_are_not_used_and_that_is_said():
    """Where nothing is chosen the spring counts are used; chosen, the void tally is refused."""
    void = dict(tally_date=some(100), last_freeze_date=some(101), **TALLY)
    assert "fruit_form.buds_void" in ids(wanted(**void).notes)
    with pytest.raises(ValueError, match="before the last hard frost"):
        wanted(fruit_from=BY_NODE, **void)


@pytest.mark.parametrize("lacking", ["fruiting_wood", "dead_node_pct", "dead_primary_pct", "secondary_share"])
def test_a_tally_that_is_not_whole_is_not_used(lacking):
    """The spring counts are used, and it is said why the buds are not."""
    found = wanted(**{**TALLY, lacking: OPEN})
    assert "fruit_form.buds_not_whole" in ids(found.notes) and not found.bearers.ok


def test_a_bearer_longer_than_the_nodes_cut_open_is_refused():
    """Nothing is made up for nodes that nobody cut."""
    with pytest.raises(ValueError, match="every node of the bearer"):
        wanted(fruit_from=BY_NODE, **{**TALLY, "bearer_nodes": some(11)})


def test_without_any_fruit_there_is_a_plain_word():
    """No spring count, no buds."""
    with pytest.raises(ValueError, match="counted in spring, or what was found in buds"):
        wanted(bunches_per_shoot=OPEN)


def test_scaling_needs_both_winters():
    """A ratio of one is none."""
    with pytest.raises(ValueError, match="to scale"):
        wanted(fruit_from=SCALED, dissected_bunches_per_shoot=some(1.2))


@given(st.floats(0.05, 4.0), st.floats(0.05, 4.0))
def test_a_new_winter_scales_the_bunches_and_nothing_else(now, before):
    """u now = u past x v now / v past: nodes go by its inverse, and the unit of the dissection falls out."""
    scaled = wanted(dissected_bunches_per_shoot=some(now), dissected_bunches_per_shoot_before=some(before))
    assert scaled.nodes_exact == pytest.approx(wanted().nodes_exact * before / now)


def test_scaling_takes_the_promise_of_the_tally_where_no_figure_is_given():
    """The tally's own promise is this winter's; primordia are never multiplied into the spring count."""
    promised = wanted(**TALLY).promised_bunches_per_shoot.number
    scaled = wanted(dissected_bunches_per_shoot_before=some(promised), **TALLY)
    assert scaled.nodes_exact == pytest.approx(wanted(shoots_per_burst_node=1.03).nodes_exact)


def test_whole_bearers_carry_the_crop():
    """Canes are laid whole: as many as carry the crop, and one fewer would not."""
    found = wanted(target_yield_t_ha=20.0, **TALLY)
    kg = [expected(nodes=12.0 * canes, **TALLY).kg_per_vine for canes in (found.bearers.number, found.bearers.number - 1)]
    assert kg[0] >= found.kg_per_vine > kg[1]


def test_the_spread_of_buds_is_in_the_range_where_canes_were_counted():
    """Ten canes leave the bunches less sure than a hundred; the spring count's own spread is not taken for them."""
    few, many = (wanted(canes_dissected=some(canes), bunches_per_shoot_cv_pct=some(50), **TALLY) for canes in (10, 100))
    assert few.share_bunches_pct.number > many.share_bunches_pct.number > 0
    assert not wanted(bunches_per_shoot_cv_pct=some(50), **TALLY).share_bunches_pct.ok


def test_the_shares_are_of_the_variance_on_the_log_scale():
    """ln 1.04, ln 1.01 and (ln 0.75 / z)2 over their sum (numbers by scipy); what has no spread has no share."""
    found = wanted(bunches_per_shoot_cv_pct=some(20), bunch_weight_cv_pct=some(10))
    parts = [0.03922071315328133, 0.009950330853168092, (0.2876820724517809 / norm.ppf(0.95)) ** 2]
    shares = [found.share_bunches_pct.number, found.share_weight_pct.number, found.share_season_pct]
    assert shares == pytest.approx([100 * part / sum(parts) for part in parts], rel=1e-12)
    assert not found.share_budburst_pct.ok and not found.share_shoots_pct.ok


CVS = st.floats(0.0, 60.0)


@given(CVS, CVS, CVS, CVS)
def test_the_shares_add_up(a, b, c, d):
    """To a hundred, whatever is known."""
    spreads = dict(zip(["budburst_cv_pct", "shoots_per_burst_node_cv_pct", "bunches_per_shoot_cv_pct", "bunch_weight_cv_pct"], map(some, (a, b, c, d))))
    found = expected(**spreads)
    parts = [found.share_budburst_pct, found.share_shoots_pct, found.share_bunches_pct, found.share_weight_pct]
    assert sum(part.number for part in parts) + found.share_season_pct == pytest.approx(100)


@pytest.mark.parametrize(("cv", "said"), [(5, "yield_told.season_largest"), (40, "yield_told.count_largest")])
def test_it_is_said_what_the_uncertainty_hangs_on(cv, said):
    """The season, or the count to count better; and how often the range holds when its assumption does not."""
    told = {note.id: note for note in wanted(bunch_weight_cv_pct=some(cv)).notes}
    assert told[said].words == ["fact.bunch_weight_g"]
    assert told["yield_told.if_not_independent"].numbers == [90.0, 95.7, 77.6, 89.7]


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"bunch_weight_g": 1.0}, "yield_told.nodes_absurd"),  # next to no weight
        ({"bunch_weight_g": 20.0, "vine_spacing_m": some(1.2)}, "yield_told.shoots_absurd"),  # 115 nodes on 1.2 m
        ({"bunches_per_shoot": some(0.01)}, "yield_told.nodes_absurd"),
    ],
)
def test_absurd_numbers_are_called_no_plan(changes, said):
    """More nodes than any vine in print had, or more shoots than any wall: the answer says so in plain words, without a stop."""
    assert wanted(**changes).headline.id == said


def test_a_number_that_vines_have_carried_is_not_called_absurd():
    """300 nodes were counted at Oakville; 36 shoots a metre were tried in British Columbia."""
    assert wanted(target_yield_t_ha=9.0, vine_spacing_m=some(1.5)).headline.id == "nodes_for_yield.headline"


def test_a_node_that_gives_next_to_nothing_is_refused():
    """Less than a milligram is a slip, and no number of nodes."""
    with pytest.raises(ValueError, match="next to nothing"):
        wanted(bunches_per_shoot=some(1e-12))


BARREN = dict(
    primordia_node=series([0.08, 0.15, 0.35, 0.5, 0.65, 0.75, 0.85, 0.9, 0.95, 0.95, 0.9, 0.9, 0.85, 0.85]),
    cane_budburst_node=series([45, 55, 65, 75, 80, 85]),
    bearer_nodes=some(14),
    dead_primary_pct=some(0),
    dead_node_pct=some(5),
    secondary_share=some(0),
    shoots_per_burst_node=1.0,
)


def test_a_barren_base_asks_for_six_long_canes():
    """25 t/ha of 550 g bunches on 3.6 x 2.4 m, 2 % missing, worked by hand: six canes of 14 with renewal spurs, 46.6 bunches, 0.1 a spur node."""
    block = dict(bearing_vines_per_ha=1134.259, bunch_weight_g=550.0, **{**TALLY, **BARREN})
    assert wanted(target_yield_t_ha=25.0, **block).bearers == some(6)
    assert expected(nodes=96, **block).bunches == pytest.approx(46.6, abs=0.05)
    spurs = {**block, "fruiting_wood": some(1), "bearer_nodes": some(2)}
    assert expected(nodes=10, **spurs).bunches == pytest.approx(1.0, abs=0.1)


def test_a_cool_block_comes_out_as_worked_by_hand():
    """2.2 x 1.1 m, 3 % missing, 115 g: twelve nodes on a cane of ten and a renewal spur of two bear 6.07 t/ha."""
    block = dict(bearing_vines_per_ha=4008.264, bunch_weight_g=115.0, **TALLY)
    assert (wanted(target_yield_t_ha=6.0, **block).nodes, wanted(target_yield_t_ha=6.0, **block).bearers) == (12, some(1))
    assert expected(nodes=12, **block).t_per_ha == pytest.approx(6.07, abs=0.005)
