"""Every small mistake in a table of the guide is caught by a worked example or by a proof."""

from tests.checks import mutants

# Mistakes that nothing catches, each with the reason; one that is caught after all must be taken out.
SURVIVE: dict[str, str] = {}


def test_every_mistake_is_caught(rulebook, told):
    """Boundaries moved a step, outcomes swapped, rows taken away: what changes nothing that can be is no mistake."""
    planted = list(mutants.mutants(rulebook))
    alive = [one for one in planted if mutants.survives(rulebook, one)]
    survivors = {one.name for one in alive if not mutants.is_no_mistake(rulebook, one)}
    told(len(planted) - len(alive), "mistakes made in the guide's tables, caught", of=len(planted) - len(alive) + len(survivors))
    told(len(alive) - len(survivors), "changes of them that change no answer")
    told(len(SURVIVE), "mistakes excused, with the reason")
    assert survivors == set(SURVIVE)


def test_there_are_mistakes_to_catch(rulebook):
    """Every row of every written table has at least two."""
    rows = sum(len(decision.rows) for decision in rulebook.decisions.values() if not decision.generated)
    assert len(list(mutants.mutants(rulebook))) >= 2 * rows
