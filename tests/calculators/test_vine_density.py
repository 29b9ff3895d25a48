"""Vines per hectare and in the block."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.calculators.vine_density import VineDensityValues, vine_density
from tests.calculators.cases import DENSITY, OPEN, but, ids, some

SPACING = st.floats(0.5, 6.0)


def density(**changes):
    """The result for the plain block with some inputs changed."""
    return vine_density(but(DENSITY, **changes), VineDensityValues())


def test_missing_vines_take_ground_but_bear_nothing():
    """Vines per hectare count places; bearing vines are fewer by the missing share."""
    result = density(missing_vines_pct=10.0)
    assert result.bearing_vines_per_ha == pytest.approx(0.9 * result.vines_per_ha)


def test_people_count_whole_vines():
    """The block's vines are given whole, a half rounded up, with the exact number beside it."""
    result = density(row_spacing_m=2.0, vine_spacing_m=1.0, area_ha=some(0.0001), missing_vines_pct=0.0)
    assert (result.vines_in_block_exact.number, result.vines_in_block.number) == (0.5, 1.0)


def test_without_an_area_the_block_stays_open():
    """No area: vines per hectare are given, the block's numbers are open and a note says how to get them."""
    result = density(area_ha=OPEN)
    assert not result.vines_in_block.ok and not result.bearing_vines.ok
    assert ids(result.notes) == ["vine_density.no_area"]


def test_spacings_are_not_rounded_to_millimetres():
    """Feet are not whole millimetres: 8 x 4 ft is 3363.7 vines and not the 3364.9 of rounded spacings."""
    result = density(row_spacing_m=2.4384, vine_spacing_m=1.2192)
    assert result.vines_per_ha == pytest.approx(3363.73, abs=0.01)


@given(SPACING, SPACING, SPACING)
def test_wider_spacing_never_means_more_vines(row, a, b):
    """Of two vine spacings the wider one has at most as many vines."""
    near, wide = sorted([a, b])
    assert density(row_spacing_m=row, vine_spacing_m=wide).vines_per_ha <= density(row_spacing_m=row, vine_spacing_m=near).vines_per_ha


def test_a_spacing_of_nothing_is_refused():
    """Zero between rows is no vineyard."""
    with pytest.raises(ValueError, match="above zero"):
        density(row_spacing_m=0.0)
