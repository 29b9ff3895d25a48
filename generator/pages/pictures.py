"""Static pictures on stage pages, drawn from the plan of the demo block."""

from markupsafe import Markup

from generator.reading.rulebook import Rulebook, Stage


def stage_pictures(rulebook: Rulebook, stage: Stage) -> Markup:
    """The pictures of a stage as blocks of HTML; empty when it has none."""
    return Markup("")
