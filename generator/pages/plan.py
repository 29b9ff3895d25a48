"""The plan page: every fact in the order of a walk through the block, and the places that the scripts fill."""

from dataclasses import dataclass
from urllib.parse import quote

from generator.pages import wording
from generator.pages.home import by_number
from generator.pages.jinja import render
from generator.pages.paths import Links
from generator.reading.items import Caution, Fact
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
    """The cautions of every decision and calculator that a plan goes through, each once."""
    parts = [*rulebook.decisions.values(), *rulebook.calculators.values()]
    names = dict.fromkeys(name for part in parts for name in part.cautions)
    return [rulebook.cautions[name] for name in names if name in rulebook.cautions]


def block_link(rulebook: Rulebook, block: Block) -> str:
    """The link to the plan of a block: the form of assets/link.js, written by the same rules."""
    head = {"v": "1", "e": rulebook.edition.id, "r": rulebook.version}
    facts = {name: fact_text(rulebook.facts[name], value) for name, value in block.facts.items() if kept(rulebook, name)}
    return "#" + "&".join(f"{name}={quote(text, safe='')}" for name, text in {**head, **facts}.items())


def kept(rulebook: Rulebook, name: str) -> bool:
    """True for a fact that a link carries: one that is known to the guide and does not end with the day."""
    return name in rulebook.facts and rulebook.facts[name].lifetime != "today"


def fact_text(fact: Fact, value: object) -> str:
    """A block's value as a link writes it."""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float) and value.is_integer():
        return str(int(value))
    return str(value)
