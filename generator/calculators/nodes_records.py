"""The records of nodes_for_yield."""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.fruit_records import FruitInputs, FruitValues
from generator.calculators.say import Say
from generator.calculators.yield_told import Most


@dataclass(frozen=True)
class NodesForYieldInputs(FruitInputs):
    """What the fruit stands on (see FruitInputs), the crop wanted, and the room where it is known."""

    target_yield_t_ha: float
    vine_spacing_m: Maybe
    curtains: Maybe


@dataclass(frozen=True)
class NodesForYieldValues(FruitValues):
    """See FruitValues; besides the most nodes and shoots in print."""

    nodes_per_vine_in_print: float
    shoots_per_m_in_print: float


@dataclass(frozen=True)
class NodesForYieldResult:
    """Nodes per bearing vine: exact, whole (nearest, half up), and the ends of the range (exact): by the counts alone (sampling),
    by the season alone, and by both (low and high). bearers: whole ones that carry the crop, by node only. Shares of the uncertainty
    in % (log scale); what the buds promise on a shoot."""

    kg_per_vine: float
    nodes_exact: float
    nodes: int
    bearers: Maybe
    sampling_low: Maybe
    sampling_high: Maybe
    season_low: float
    season_high: float
    low: float
    high: float
    extrapolated: bool
    share_budburst_pct: Maybe
    share_shoots_pct: Maybe
    share_bunches_pct: Maybe
    share_weight_pct: Maybe
    share_season_pct: float
    promised_bunches_per_shoot: Maybe
    headline: Say
    working: list[Say]
    notes: list[Say]


def most_of(values: NodesForYieldValues) -> Most:
    """The most that vines in print carried."""
    return Most(values.nodes_per_vine_in_print, values.shoots_per_m_in_print)
