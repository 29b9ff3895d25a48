"""The records of yield_forecast."""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.fruit_records import FruitInputs, FruitValues
from generator.calculators.say import Say


@dataclass(frozen=True)
class YieldForecastInputs(FruitInputs):
    """What the fruit stands on (see FruitInputs), and nodes per bearing vine; a block mean need not be whole."""

    nodes: float


@dataclass(frozen=True)
class YieldForecastValues(FruitValues):
    """See FruitValues."""


@dataclass(frozen=True)
class YieldForecastResult:
    """Per bearing vine: count shoots, bunches, kg. Per hectare: t, with the ends of its interval in t/ha: by the counts alone
    (sampling), by the season alone, and by both (low and high). Shares of the uncertainty in % (log scale); what the buds promise on
    a shoot."""

    count_shoots: float
    bunches: float
    kg_per_vine: float
    t_per_ha: float
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
