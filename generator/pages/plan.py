"""The plan page: every fact in the order of a walk through the block, and the places that the scripts fill."""

from dataclasses import dataclass

from generator.answers.given import given
from generator.answers.link import link
from generator.pages import wording
from generator.pages.home import by_number
from generator.pages.jinja import render
from generator.pages.paths import Links
from generator.reading.items import Caution
from generator.reading.rulebook import Block, Rulebook

HERE = "plan.md"


@dataclass(frozen=True)
class BlockShown:
    """An invented block and the link that fills the plan with it."""

    name: str
    note: str
    link: str


def plan_page(rulebook: Rulebook) -> str:
    """The page of the plan."""
    return render(
        "plan.md.jinja",
        words=wording,
        links=Links(HERE),
        stages=by_number(rulebook),
        blocks=[BlockShown(block.name, block.note, block_link(rulebook, block)) for block in rulebook.blocks.values()],
        cautions=cautions(rulebook),
        scripts=["assets/guide/core.js", "assets/guide/plan.js"],
    )


def cautions(rulebook: Rulebook) -> list[Caution]:
    """The cautions of every decision, row and calculator that a plan goes through, each once."""
    parts = [*rulebook.decisions.values(), *rulebook.calculators.values()]
    rows = [row for table in rulebook.decisions.values() for row in table.rows]
    names = dict.fromkeys(name for part in [*parts, *rows] for name in part.cautions)
    return [rulebook.cautions[name] for name in names if name in rulebook.cautions]


def block_link(rulebook: Rulebook, block: Block) -> str:
    """The link to the plan of a block, on the plan's own page."""
    return link(rulebook, "", given(rulebook, list(rulebook.facts), block.facts))
