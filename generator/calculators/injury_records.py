"""The records of injury_adjustment, and the published limits among its values."""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.figures import Compared, Figure
from generator.calculators.injury_bands import Bands
from generator.calculators.say import Say


@dataclass(frozen=True)
class InjuryAdjustmentInputs:
    """Nodes wanted per vine and which deaths they hold; buds cut, and of these primaries alive and secondaries alone; s; what lives
    after an ordinary winter (%); for the room: burst of living nodes (%), curtains, spacing (m), shoots per metre, non-count shoots."""

    wanted_nodes: float
    buds_cut_for_injury: int
    buds_primary_alive: int
    buds_secondary_only: int
    secondary_share: float
    deaths_in_wanted_nodes: int
    ordinary_primary_alive_pct: Maybe
    ordinary_secondary_only_pct: Maybe
    living_budburst_pct: float
    curtains: int
    vine_spacing_m: Maybe
    shoots_per_m_high: float
    noncount_shoots_kept: Maybe


@dataclass(frozen=True)
class InjuryAdjustmentValues:
    """The severe limit (%), the published bands (%; see injury_bands; the first of each source with its standing), the two steps of
    sampling (buds), the interval's level (%), and how many times the nodes wanted are left until burst."""

    severe_injury_pct: float
    injury_cornell_from_pct: list[Figure]
    injury_cornell_to_pct: float
    injury_northern_above_pct: list[Figure]
    injury_purdue_normal_pct: list[Figure]
    injury_purdue_light_pct: float
    injury_purdue_heavy_printed_pct: float
    injury_purdue_heavy_pct: float
    injury_purdue_light_extra_pct: float
    injury_purdue_heavy_extra_pct: float
    injury_sheet_normal_pct: list[Figure]
    injury_sheet_from_pct: float
    injury_sheet_to_pct: float
    injury_first_buds: float
    injury_full_buds: float
    injury_level_pct: float
    injury_wait_least_times: float
    injury_wait_most_times: float


@dataclass(frozen=True)
class InjuryAdjustmentResult:
    """Primaries dead in % with Wilson's interval; nodes that replace them, exact and rounded up, without and with the crop of
    secondaries; nodes by each published rule; shoots on the last of the guide's own, and the most that the canopy takes. What has no
    number is left out. `compared` are the published rules, side by side."""

    mortality_pct: float
    mortality_low_pct: float
    mortality_high_pct: float
    nodes_replacing_exact: Maybe
    nodes_replacing: Maybe
    nodes_replacing_with_secondaries_exact: Maybe
    nodes_replacing_with_secondaries: Maybe
    nodes_cornell: Maybe
    nodes_purdue: Maybe
    nodes_table_grapes: Maybe
    shoots: Maybe
    shoots_most: Maybe
    headline: Say
    compared: list[Compared]
    working: list[Say]
    notes: list[Say]


def bands_of(values: InjuryAdjustmentValues) -> Bands:
    """The published limits together."""
    return Bands(
        values.injury_cornell_from_pct[0].number,
        values.injury_cornell_to_pct,
        values.injury_northern_above_pct[0].number,
        values.injury_purdue_normal_pct[0].number,
        values.injury_purdue_light_pct,
        values.injury_purdue_heavy_printed_pct,
        values.injury_purdue_heavy_pct,
        values.injury_purdue_light_extra_pct,
        values.injury_purdue_heavy_extra_pct,
        values.injury_sheet_normal_pct[0].number,
        values.injury_sheet_from_pct,
        values.injury_sheet_to_pct,
    )
