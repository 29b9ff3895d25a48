"""Every small mistake in a table of the guide is caught by a worked example or by a proof."""

from tests.checks import mutants

# Mistakes that nothing catches, each with the reason; one that is caught after all must be taken out.
SURVIVE: dict[str, str] = {}


def test_every_mistake_is_caught(rulebook):
    """Boundaries moved a step, outcomes swapped, rows taken away: what changes nothing that can be is no mistake."""
    survivors = {
        one.name
        for one in mutants.mutants(rulebook)
        if mutants.survives(rulebook, one) and not mutants.is_no_mistake(rulebook, one)
    }
    assert survivors == set(SURVIVE)


def test_there_are_mistakes_to_catch(rulebook):
    """Every row of every written table has at least two."""
    rows = sum(len(decision.rows) for decision in rulebook.decisions.values() if not decision.generated)
    assert len(list(mutants.mutants(rulebook))) >= 2 * rows
