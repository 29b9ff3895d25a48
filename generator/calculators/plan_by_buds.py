"""The fruit's view of the node number where buds were cut open: which layout of bearers carries the crop wanted."""

from dataclasses import dataclass

from generator.calculators.bearers import buds_of, has_buds
from generator.calculators.canopy_space import Room
from generator.calculators.facts import Facts, Maybe, maybe, number
from generator.calculators.plan_bearers import (
    Borne,
    borne_on,
    counts_by_buds,
    layouts_of,
    lost_at_base,
    most_of,
    nearest,
    nodes_known,
    steps_of,
    up_to,
    within_room,
)
from generator.calculators.plan_counts import limits_of, spring_counts
from generator.calculators.plan_records import BlockPlanValues, Fruit, Named, Part
from generator.calculators.plan_room import room_view
from generator.calculators.plan_sampling import sampling_cv_pct
from generator.calculators.plan_vine import can_be_laid, vine_of
from generator.calculators.reconcile import FRUIT, ROOM_HIGH, ROOM_LOW, Ceiling, limit_of, lowest
from generator.calculators.say import Say
from generator.calculators.units import G_PER_KG, KG_PER_T, PER_CENT
from generator.calculators.views import Chosen, View, Views, bearing_of, ceilings_of, no_bearing, no_view, tonnes
from generator.calculators.yield_chain import Counts, amount, cvs_of
from generator.calculators.yield_spread import spread_of


@dataclass(frozen=True)
class Wish:
    """What one vine shall bear from its nodes: kg wanted in all, and the bunches left for the nodes to bear."""

    kg: float
    bunches: float


@dataclass(frozen=True)
class Laid:
    """The layout that is kept, the room for its nodes, the number as the views hold it, and what whole bearers cannot do."""

    borne: Borne
    room: Room
    chosen: Chosen
    notes: list[Say]


def reckons_by_buds(facts: Facts, target: str) -> bool:
    """True when the chain goes bearer by bearer: buds were cut open, and there is a layout for the target."""
    return has_buds(facts) and can_be_laid(facts, target)


def longest_of(facts: Facts, values: BlockPlanValues, target: str) -> int:
    """The most nodes on one bearer: where buds were cut open as many as were dissected, else what the values allow."""
    if reckons_by_buds(facts, target):
        return nodes_known(buds_of(facts))
    return int(max(values.nodes_per_cane_most, values.nodes_per_long_spur_most, values.nodes_per_spur_most, amount(maybe(facts, "nodes_per_cane_wanted"))))


def choices_by_buds(facts: Facts, values: BlockPlanValues, target: str) -> list[Borne]:
    """What each node number bears on its own layout. reckons_by_buds must be true."""
    return layouts_of(facts, values, target, buds_of(facts))


def counts_at(facts: Facts, values: BlockPlanValues, earlier: list[Part], target: str, nodes: int) -> Counts:
    """The chain's links of the layout of so many nodes."""
    buds = buds_of(facts)
    layout = vine_of(facts, values, target, nodes, nodes_known(buds))
    lost = lost_at_base(facts, values)
    return counts_by_buds(facts, earlier, borne_on(layout, buds, lost), sampling_cv_pct(facts, buds, layout, lost))


def chain_counts(facts: Facts, values: BlockPlanValues, earlier: list[Part], target: str, nodes: int) -> Counts:
    """The chain's links for number, crop and layout alike: of the layout of so many nodes where buds were cut open, else spring counts."""
    return counts_at(facts, values, earlier, target, nodes) if reckons_by_buds(facts, target) else spring_counts(facts, earlier)


def room_of(facts: Facts, target: str, borne: Borne) -> Room:
    """The room for nodes that burst as these bearers do; some of theirs must burst."""
    return room_view(facts, target, min(PER_CENT, borne.burst_nodes * PER_CENT / float(borne.nodes)), borne.shoots / borne.burst_nodes)


def held_by_buds(facts: Facts, target: str, choices: list[Borne], wanted: Borne, vine: View, law: View) -> Laid:
    """The layout wanted, held to vine and law as a whole, then inside the room of its own nodes. Where even the smallest layout is over
    vine or law it stays, and that is said."""
    ceilings = most_by(vine, law)
    bound = len(ceilings) > 0
    most = lowest(ceilings) if bound else Ceiling(ROOM_HIGH, float(choices[len(choices) - 1].nodes))
    allowed = up_to(choices, most.nodes)
    start = wanted if float(wanted.nodes) <= most.nodes else most_of(allowed)
    room = room_of(facts, target, start)
    each = start.shoots / float(start.nodes)
    borne = within_room(allowed, start, room.nodes_low_exact * each, room.nodes_high_exact * each)
    on_these = room_of(facts, target, borne)
    nodes = float(borne.nodes)
    high = float(on_these.nodes_high)
    limit = limit_of(float(wanted.nodes), nodes, ROOM_HIGH)
    if limit == ROOM_HIGH and nodes < float(start.nodes):
        high = min(high, nodes)
    elif limit == ROOM_HIGH or nodes > most.nodes:
        limit = most.view
    if bound:
        high = min(high, most.nodes)
    notes = [Say("plan.smallest_layout", [nodes, most.nodes], [])] if nodes > most.nodes else []
    if limit == most.view and bound and nodes < most.nodes:
        notes = [Say("plan.whole_bearers", [nodes, most.nodes], [])]
    return Laid(borne, on_these, Chosen(True, nodes, nodes, True, min(float(on_these.nodes_low), high), high, limit), notes)


def most_by(vine: View, law: View) -> list[Ceiling]:
    """The ceilings of vine and law in whole nodes, as far as they are known."""
    return ceilings_of(Views(no_view(), vine, no_view(), law, no_bearing(Maybe(False, 0.0))), True)


def wish_of(facts: Facts, counts: Counts, factor: float) -> Wish:
    """The wish of one vine, times a factor: the crop, and what of it the other shoots leave to the nodes."""
    kg = factor * number(facts, "target_yield_t_ha") * KG_PER_T / counts.bearing_vines_per_ha
    weight = counts.bunch_weight_g
    if counts.noncount_bunch_weight_g.ok:
        weight = counts.noncount_bunch_weight_g.number
    others = amount(counts.noncount_shoots_kept) * amount(counts.bunches_per_noncount_shoot) * weight / G_PER_KG
    return Wish(kg, max(0.0, (kg - others) * G_PER_KG / counts.bunch_weight_g))


def fruit_by_buds(facts: Facts, values: BlockPlanValues, earlier: list[Part], target: str, choices: list[Borne]) -> Fruit:
    """The nodes that the crop wanted asks for, and between which they lie when the crop swings."""
    fixed = steps_of(facts, values, target, nodes_known(buds_of(facts))).fixed
    wish = wish_of(facts, counts_by_buds(facts, earlier, choices[0], Maybe(False, 0.0)), 1.0)
    chosen = nearest(choices, wish.bunches, fixed)
    counts = counts_at(facts, values, earlier, target, chosen.nodes)
    spread = spread_of(cvs_of(counts), limits_of(values))
    low = nearest(choices, wish_of(facts, counts, 1.0 / spread.both).bunches, fixed)
    high = nearest(choices, wish_of(facts, counts, spread.both).bunches, fixed)
    lost = lost_at_base(facts, values)
    notes = [Say("plan.by_buds", [float(nodes_known(buds_of(facts)))], [])]
    if lost > 0:
        notes.append(Say("plan.dries_beyond_cut", [float(lost)], []))
    if chosen.bunches < wish.bunches and chosen.nodes == most_of(choices).nodes:
        notes.append(Say("plan.buds_fall_short", [chosen.bunches, wish.bunches], []))
    return Fruit(
        nodes=chosen.nodes,
        exact=float(chosen.nodes),
        low=float(low.nodes),
        high=float(high.nodes),
        uses=[],
        headline=Say("nodes_for_yield.headline", [float(chosen.nodes), number(facts, "target_yield_t_ha")], []),
        numbers=[Named("bunches_wanted", wish.bunches), Named("bunches_borne", chosen.bunches)],
        lines=working_by_buds(counts, wish, chosen),
        notes=notes + [Say("nodes_for_yield.no_ceiling", [], [])],
    )


def against_wish(facts: Facts, counts: Counts, laid: Laid, most: Borne) -> list[Say]:
    """What the bearers that are laid carry over the wish, or what crop is honest where no bearers carry it. counts are theirs, most is the
    layout of most bunches."""
    wish = wish_of(facts, counts, 1.0)
    over = laid.borne.bunches - wish.bunches
    if over >= 1.0:
        return [Say("plan.thin_to_wish", [over, laid.borne.bunches, wish.bunches], [])]
    if most.bunches >= wish.bunches or laid.chosen.limit != FRUIT:
        return []
    crop = tonnes(bearing_of(counts), laid.chosen.nodes)
    return [Say("node_number.honest_crop", [crop.number, laid.chosen.nodes, number(facts, "target_yield_t_ha")], [])]


def working_by_buds(counts: Counts, wish: Wish, chosen: Borne) -> list[Say]:
    """From the crop wanted to bunches, and from the bearers to bunches."""
    lines = [Say("plan.wish_in_bunches", [wish.kg, counts.bunch_weight_g, wish.bunches], [])]
    if chosen.cane_nodes > 0:
        lines.append(Say("plan.canes_bear", [float(chosen.cane_nodes), chosen.on_canes, chosen.on_canes / float(chosen.cane_nodes)], []))
    spurs = chosen.nodes - chosen.cane_nodes
    if spurs > 0:
        on_spurs = chosen.bunches - chosen.on_canes
        lines.append(Say("plan.spurs_bear", [float(spurs), on_spurs, on_spurs / float(spurs)], []))
    return lines + [Say("plan.bearers_bear", [float(chosen.nodes), chosen.bunches], [])]
