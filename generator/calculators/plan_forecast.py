"""The plan's crop to expect from the node number, with what is in its interval."""

from generator.calculators.facts import Facts
from generator.calculators.plan_by_buds import chain_counts, reckons_by_buds
from generator.calculators.plan_counts import limits_of
from generator.calculators.plan_nodes import NODES
from generator.calculators.plan_records import BlockPlanValues, Named, Part, found, not_asked, rests_of, status_of, waiting
from generator.calculators.plan_system import FORMING, NONE, SYSTEM, target_of
from generator.calculators.say import Say
from generator.calculators.yield_forecast import Crop, crop_of_nodes

FORECAST: str = "forecast"


def forecast(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> Part:
    """The crop that the chosen number should give. Buds cut open were counted on no node number, so that none is missed there."""
    nodes = found(earlier, "nodes")
    if target_of(earlier) in [FORMING, NONE]:
        return not_asked(FORECAST, NODES, facts, rests_of(earlier, SYSTEM), Say("plan.no_forecast", [], []))
    if not nodes.ok:
        return waiting(FORECAST, NODES, facts, [], Say("plan.forecast_open", [], []))
    result = crop_of(facts, values, earlier, nodes.number)
    rests_on = rests_of(earlier, NODES)
    by_buds = reckons_by_buds(facts, target_of(earlier))
    return Part(
        id=FORECAST,
        stage=NODES,
        ready=True,
        settled=True,
        choice="",
        possible=[],
        uses=["yield_forecast"],
        needs=[],
        ask_next="",
        rests_on=rests_on,
        status=status_of(facts, rests_on),
        headline=result.headline,
        numbers=numbers_of(result, found(earlier, "canopy_m").number),
        lines=result.working,
        notes=[note for note in result.notes if not (by_buds and note.id == "yield_chain.measured_where")],
        sources=[],
        cautions=[],
    )


def crop_of(facts: Facts, values: BlockPlanValues, earlier: list[Part], nodes: float) -> Crop:
    """The forecast for a node number: by the bearers of its layout where buds were cut open, else by spring counts."""
    return crop_of_nodes(nodes, chain_counts(facts, values, earlier, target_of(earlier), int(nodes)), limits_of(values))


def numbers_of(result: Crop, canopy_m: float) -> list[Named]:
    """Crop with the ends of its interval by each cause and by both; shoots and bunches of one vine."""
    numbers = [
        Named("kg_per_vine", result.kg_per_vine),
        Named("t_per_ha", result.t_per_ha),
        Named("t_per_ha_low", result.low),
        Named("t_per_ha_high", result.high),
        Named("season_low", result.season_low),
        Named("season_high", result.season_high),
    ]
    if result.sampling_low.ok:
        numbers = numbers + [Named("sampling_low", result.sampling_low.number), Named("sampling_high", result.sampling_high.number)]
    numbers = numbers + [Named("count_shoots", result.count_shoots), Named("bunches", result.bunches)]
    if canopy_m > 0.0:
        numbers.append(Named("shoots_per_m", result.count_shoots / canopy_m))
    return numbers
