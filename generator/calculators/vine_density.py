"""How many vines stand on a hectare and in a block, and how many of them bear.

Vines per hectare = 10 000 m2 / (row spacing x vine spacing) (evidence du-21, du-07); metres of row per hectare =
10 000 m2 / row spacing (du-19); bearing vines = places x (1 - missing) (du-20).
"""

from dataclasses import dataclass

from generator.calculators.counting import half_up
from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.units import M2_PER_HA, share


@dataclass(frozen=True)
class VineDensityInputs:
    """Spacings in m (both above zero), area in ha (may be left out), missing vines in % of the places (0 to 100)."""

    row_spacing_m: float
    vine_spacing_m: float
    area_ha: Maybe
    missing_vines_pct: float


@dataclass(frozen=True)
class VineDensityValues:
    """No number of the trade is needed."""


@dataclass(frozen=True)
class VineDensityResult:
    """Per hectare unrounded; vines of the block whole (nearest, half up) and exact, and left open when the area is."""

    vines_per_ha: float
    row_m_per_ha: float
    bearing_vines_per_ha: float
    vines_in_block_exact: Maybe
    vines_in_block: Maybe
    bearing_vines_exact: Maybe
    bearing_vines: Maybe
    headline: Say
    working: list[Say]
    notes: list[Say]


def vine_density(inputs: VineDensityInputs, values: VineDensityValues) -> VineDensityResult:
    """Vines and metres of row. Raises ValueError when a spacing is not above zero."""
    if inputs.row_spacing_m <= 0.0 or inputs.vine_spacing_m <= 0.0:
        raise ValueError("both spacings must be above zero")
    vine_area = inputs.row_spacing_m * inputs.vine_spacing_m
    vines_per_ha = M2_PER_HA / vine_area
    row_m_per_ha = M2_PER_HA / inputs.row_spacing_m
    bearing_share = 1.0 - share(inputs.missing_vines_pct)
    bearing_per_ha = vines_per_ha * bearing_share
    vines = times(vines_per_ha, inputs.area_ha)
    bearing = times(bearing_per_ha, inputs.area_ha)
    working = [
        Say("vine_density.area_per_vine", [inputs.row_spacing_m, inputs.vine_spacing_m, vine_area], []),
        Say("vine_density.per_ha", [vine_area, vines_per_ha], []),
        Say("vine_density.row_per_ha", [inputs.row_spacing_m, row_m_per_ha], []),
        Say("vine_density.bearing_per_ha", [vines_per_ha, inputs.missing_vines_pct, bearing_per_ha], []),
    ]
    notes: list[Say] = []
    if inputs.area_ha.ok:
        area = inputs.area_ha.number
        working.append(Say("vine_density.in_block", [vines_per_ha, area, vines.number], []))
        working.append(Say("vine_density.bearing_in_block", [bearing_per_ha, area, bearing.number], []))
    else:
        notes.append(Say("vine_density.no_area", [], []))
    headline = Say("vine_density.headline", [vines_per_ha, bearing_per_ha], [])
    return VineDensityResult(
        vines_per_ha, row_m_per_ha, bearing_per_ha, vines, counted(vines), bearing, counted(bearing), headline, working, notes
    )


def times(per_ha: float, area_ha: Maybe) -> Maybe:
    """A number per hectare times the area, open while the area is."""
    if not area_ha.ok:
        return Maybe(False, 0.0)
    return Maybe(True, per_ha * area_ha.number)


def counted(exact: Maybe) -> Maybe:
    """The whole number of a count (nearest, half up), open while the count is."""
    if not exact.ok:
        return Maybe(False, 0.0)
    return Maybe(True, float(half_up(exact.number)))
