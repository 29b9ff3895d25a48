"""Computes anything that has a name: calculators, decisions and the block plan; what the command line prints as JSON."""

from typing import Any

from generator.answers import calculators, decisions, plans
from generator.answers.describing import describe, names
from generator.answers.given import BadInput
from generator.answers.plans import plan
from generator.reading.rulebook import Rulebook

__all__ = ["BadInput", "compute", "describe", "names", "plan"]


def compute(rulebook: Rulebook, name: str, inputs: dict[str, Any]) -> dict:
    """The answer, ready for JSON. Raises BadInput with one line for each fault, KeyError for a name that names() does not list.

    A calculator and a decision give: name, kind, headline, settled, ask_next (a fact or ""), status (the weakest it
    rests on), reasons [{table, row, text, outcome, weight, standing, sources, note}] strongest first, rests_on [{fact,
    label, value, status, text}], assumed [fact], would_change [{fact, value, outcome, text}], working [sentence],
    sources, cautions [{id, label, text, defer}], rules, edition, link (the page that shows it, from the root of the site); a
    decision also covered, outcome ("" while open), possible [outcome], work {action, target, years, onward, spring, winters [{do, crop_pct, standing, sources}]} as
    far as its table says,
    and also [sentence], what has to be done besides; a calculator also outputs {id: number or null}, notes [sentence] and
    values. `block_plan` gives what plan() gives."""
    if name == plans.PLAN:
        return plan(rulebook, inputs)
    if name in rulebook.decisions:
        return decisions.decide(rulebook, name, inputs)
    return calculators.calculate(rulebook, name, inputs)
