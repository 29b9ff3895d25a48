"""The plan's view of the canopy: how many nodes it has room for."""

from generator.calculators.canopy_space import Room, Space, room_of
from generator.calculators.facts import Facts, Maybe, known, maybe, number
from generator.calculators.layout_records import CANE
from generator.calculators.plan_records import Named

WIRE: list[str] = ["vine_spacing_m", "curtains", "tip_gap_m", "shoots_per_m_low", "shoots_per_m_high"]
BURST: list[str] = ["budburst_pct", "shoots_per_burst_node"]


def room_fault(facts: Facts) -> bool:
    """True when the room cannot be reckoned: fewest shoots over most, or a gap as wide as the spacing."""
    swapped = number(facts, "shoots_per_m_low") > number(facts, "shoots_per_m_high")
    return swapped or number(facts, "tip_gap_m") >= number(facts, "vine_spacing_m")


def room_view(facts: Facts, target: str, budburst_pct: float, shoots_per_burst_node: float) -> Room:
    """The nodes that the canopy has room for when they burst like this: on the arms there are, or on canes and arms that fill the
    spacing."""
    curtains = int(number(facts, "curtains"))
    spacing = number(facts, "vine_spacing_m")
    gap = number(facts, "tip_gap_m")
    arms = 2 * curtains
    arm_m = (spacing - gap) / 2.0
    if known(facts, "cordon_arms") and known(facts, "arm_length_m") and target != CANE:
        arms = int(number(facts, "cordon_arms"))
        arm_m = number(facts, "arm_length_m")
    inputs = Space(
        curtains=curtains,
        arm_length_m=arm_m,
        cordon_arms=arms,
        vine_spacing_m=Maybe(True, spacing),
        tip_gap_m=Maybe(True, gap),
        shoots_per_m_low=number(facts, "shoots_per_m_low"),
        shoots_per_m_high=number(facts, "shoots_per_m_high"),
        budburst_pct=budburst_pct,
        shoots_per_burst_node=shoots_per_burst_node,
        noncount_shoots_kept=maybe(facts, "noncount_shoots_kept"),
    )
    return room_of(inputs)


def room_numbers(room: Room) -> list[Named]:
    """The room in whole nodes, and the canopy."""
    return [Named("room_low", float(room.nodes_low)), Named("room_high", float(room.nodes_high)), Named("canopy_m", room.canopy_m)]
