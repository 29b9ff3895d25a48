"""How many buds to cut open: against the formulas with scipy's quantiles, and against drawing samples."""

import math
import random

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from generator.answers.encode import values_record
from generator.calculators.bud_sample_size import BudSampleSizeInputs, bud_sample_size, design_effect, half_width, wanted_of
from generator.calculators.facts import Maybe
from tests.calculators.cases import OPEN, but, ids, some

MEAN = BudSampleSizeInputs(70.0, OPEN, 10.0, 95.0, 4, 0.2, OPEN)
spreads = st.floats(5.0, 250.0)
nears = st.floats(2.0, 40.0)
levels = st.floats(60.0, 99.0)
eaches = st.integers(1, 16)
likenesses = st.floats(0.0, 1.0)


@pytest.fixture(name="size")
def sized(rulebook):
    """The plain sample with some inputs changed, under the guide's own schemes."""
    return lambda **changes: bud_sample_size(but(MEAN, **changes), values_record(rulebook, "bud_sample_size"))


def needed(cv, near, level, each, likeness, canes):
    """Buds by the formula for a mean, with scipy's t."""
    return (stats.t.ppf(0.5 + level / 200, canes - 1) * cv / near) ** 2 * (1 + (each - 1) * likeness)


@given(cv=spreads, near=nears, level=levels, each=eaches, likeness=likenesses)
def test_a_mean_takes_the_fewest_canes_whose_buds_suffice(rulebook, cv, near, level, each, likeness):
    """t hangs on the canes and the canes on t: these do, and one cane less does not."""
    asked = BudSampleSizeInputs(cv, OPEN, near, level, each, likeness, OPEN)
    found = bud_sample_size(asked, values_record(rulebook, "bud_sample_size"))
    assert found.buds_exact == pytest.approx(needed(cv, near, level, each, likeness, found.canes), rel=1e-9)
    assert found.canes * each >= found.buds_exact * (1 - 1e-12)
    if found.canes > 2:
        assert (found.canes - 1) * each < needed(cv, near, level, each, likeness, found.canes - 1) * (1 + 1e-12)


@given(share=st.floats(1.0, 99.0), near=nears, level=levels, each=eaches, likeness=likenesses)
def test_a_share_takes_the_normal_quantile(rulebook, share, near, level, each, likeness):
    """z2 p (1 - p) / d2 times the design effect; buds and canes round up."""
    asked = BudSampleSizeInputs(70.0, some(share), near, level, each, likeness, OPEN)
    found = bud_sample_size(asked, values_record(rulebook, "bud_sample_size"))
    z = stats.norm.ppf(0.5 + level / 200)
    assert found.buds_exact == pytest.approx(z * z * share * (100 - share) / near**2 * (1 + (each - 1) * likeness), rel=1e-9)
    assert (found.buds, found.canes) == (math.ceil(found.buds_exact), math.ceil(found.buds_exact / each))


@given(block=st.integers(2, 100_000), share=st.floats(1.0, 99.0), near=nears)
def test_a_small_block_never_needs_more_than_it_has(rulebook, block, share, near):
    """n / (1 + n / N) is below both n and N."""
    values = values_record(rulebook, "bud_sample_size")
    free = bud_sample_size(BudSampleSizeInputs(70.0, some(share), near, 95.0, 4, 0.2, OPEN), values).buds_exact
    found = bud_sample_size(BudSampleSizeInputs(70.0, some(share), near, 95.0, 4, 0.2, some(block)), values).buds_exact
    assert found == pytest.approx(free * block / (free + block), rel=1e-12) and found < min(free, block) * (1 + 1e-12)


def test_half_as_far_takes_four_times_the_buds(size):
    """Of a share, where the quantile stays."""
    assert size(share_pct=some(50), precision_pct=5.0).buds_exact == pytest.approx(4 * size(share_pct=some(50)).buds_exact)


def test_buds_of_one_cane_that_are_all_alike_count_once(size):
    """With a likeness of 1 it takes as many canes as with one bud of each."""
    assert size(likeness=1.0).canes == size(buds_per_cane=1).canes == size().canes_for_one_node


def test_one_cane_shows_no_spread(size):
    """However near enough two buds would be, a mean takes two canes; a share can do with one."""
    assert size(cv_pct=1.0, precision_pct=100.0).canes == 2
    assert size(share_pct=some(1), precision_pct=100.0).canes == 1


@pytest.mark.parametrize("likeness", [0.0, 0.2, 0.5, 1.0])
def test_the_design_effect_is_what_drawn_samples_show(likeness):
    """Means of 5 canes of 4 buds, the buds of a cane correlated so: their variance over that of 20 single buds, 20,000 draws."""
    draw = random.Random(5)
    means = []
    for _ in range(20_000):
        canes = [draw.gauss(0.0, math.sqrt(likeness)) for _ in range(5)]
        means.append(sum(cane + draw.gauss(0.0, math.sqrt(1.0 - likeness)) for cane in canes for _ in range(4)) / 20)
    seen = sum(mean * mean for mean in means) / len(means) * 20
    assert seen == pytest.approx(design_effect(4, likeness), rel=0.05)


@pytest.mark.parametrize(("canes", "each", "likeness"), [(20, 4, 0.2), (30, 5, 0.0), (8, 2, 0.5)])
def test_the_promised_range_holds_as_often_as_it_says(canes, each, likeness):
    """Nine samples in ten of correlated normal buds with a spread of 0.5 about 1 come as near as half_width says, 10,000 draws."""
    draw = random.Random(6)
    promised = half_width(wanted_of(but(MEAN, cv_pct=50.0, confidence_pct=90.0)), canes, each, design_effect(each, likeness)) / 100
    within, tries = 0, 10_000
    for _ in range(tries):
        shared = [draw.gauss(0.0, 0.5 * math.sqrt(likeness)) for _ in range(canes)]
        mean = sum(one + draw.gauss(0.0, 0.5 * math.sqrt(1.0 - likeness)) for one in shared for _ in range(each)) / canes / each
        within += abs(mean) <= promised
    # The spread is known here, so t on canes - 1 promises a little less than it could: never fewer than nine in ten.
    assert 0.89 <= within / tries <= 2 * stats.norm.cdf(stats.t.ppf(0.95, canes - 1)) - 1 + 0.01


def test_every_printed_scheme_stands_beside_the_own_sample(size, rulebook):
    """In the order of the file, each with who says so."""
    shown = size().compared
    assert [line.who.words for line in shown] == [[f"figure.bud_scheme_units.{one.id}"] for one in rulebook.values["bud_scheme_units"].figures]
    assert all(line.says.id == "bud_sample_size.scheme_mean" for line in shown)
    assert all(line.says.id == "bud_sample_size.scheme_share" for line in size(share_pct=some(80)).compared)


def test_a_scheme_that_takes_the_whole_block_misses_nothing(size):
    """80 buds of a block of 80 leave no doubt; of 81 they leave some."""
    laboratory = [line.says.numbers[3] for n in (80, 81) for line in size(buds_in_block=some(n)).compared if line.says.numbers[2] == 80]
    assert laboratory[0] == 0.0 < laboratory[1]


def test_notes_tell_where_the_sample_is_not_to_be_had(size):
    """More canes than anybody cuts; a range that would pass none."""
    assert "bud_sample_size.too_many_mean" in ids(size(precision_pct=2.0).notes)
    assert "bud_sample_size.too_many_share" in ids(size(share_pct=some(50), precision_pct=1.0).notes)
    assert "bud_sample_size.near_none_or_all" in ids(size(share_pct=some(5)).notes)
    assert ids(size().notes) == ["bud_sample_size.one_node", "bud_sample_size.sample_only"]


def test_what_no_number_of_canes_can_give_is_refused():
    """A level of nearly all at no distance at all."""
    with pytest.raises(ValueError, match="more buds than can be cut"):
        bud_sample_size(but(MEAN, precision_pct=1e-6), None)


def test_a_share_given_goes_before_the_spread(size):
    """The spread of a mean has a default, so it is always there."""
    assert size(share_pct=Maybe(True, 50.0), cv_pct=20.0).buds == size(share_pct=Maybe(True, 50.0), cv_pct=90.0).buds
