"""Static pictures on stage pages: the pruned vine of each invented block, drawn from its plan."""

from markupsafe import Markup

from generator.answers.catalogue import catalogue
from generator.answers.plans import plan
from generator.answers.records import record
from generator.calculators.drawing_shapes import Drawing
from generator.calculators.wording import worded
from generator.pages.jinja import block
from generator.pages.svg import figure
from generator.reading.rulebook import Block, Rulebook, Stage

SHOWN_ON = "lay_out"


def stage_pictures(rulebook: Rulebook, stage: Stage) -> Markup:
    """The pictures of a stage as blocks of HTML; empty when it has none."""
    if stage.id != SHOWN_ON:
        return Markup("")
    return Markup("").join(picture(rulebook, one) for one in rulebook.blocks.values())


def picture(rulebook: Rulebook, one: Block) -> Markup:
    """The pruned vine of one invented block; empty while its plan is open."""
    words = catalogue(rulebook)
    drawing = record(Drawing, plan(rulebook, one.facts)["plan"]["drawing"])
    return block(figure(drawing, lambda say: worded(words, say, "si")))
