"""How far the bunches of a layout may be out because only some canes were cut open: see bearer_sampling.py."""

from generator.calculators.bearer_sampling import Bearers, CaneSample, sampled_cv_pct
from generator.calculators.bearers import Buds
from generator.calculators.facts import Facts, Maybe, maybe
from generator.calculators.layout_records import VineLayoutResult


def sampling_cv_pct(facts: Facts, buds: Buds, layout: VineLayoutResult, lost: int) -> Maybe:
    """The spread of the layout's bunches, as a coefficient of variation in %; see sampled_cv_pct for when it is left out."""
    sample = CaneSample(maybe(facts, "canes_dissected"), maybe(facts, "bud_spread"), maybe(facts, "likeness"))
    return sampled_cv_pct(sample, buds, Bearers(layout.canes, layout.spurs + layout.renewals, lost))
