"""The page of a calculator that takes a tally row by row: its own scripts, and what it needs to know of the pages that use its figures."""

from collections.abc import Iterator
from dataclasses import replace
from typing import Any

from generator.answers import encode
from generator.answers.records import plain
from generator.answers.specs import fact_specs
from generator.calculators.tally_facts import DEAD, PRIMORDIA, SURE
from generator.pages.paths import page_path
from generator.pages.questions import Group, of_calculator, of_plan, question
from generator.reading.items import Evidence
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm

Record = dict[str, Any]
# The name of the block stands first on the page: a tally belongs to one.
BLOCK = "block_name"
FIRST = ["tally_rows.js", "tally_keep.js", "tally.js", "tally_board.js"]
LATER = ["tally_csv.js", "tally_files.js", "drawing.js", "tally_chart.js", "tally_result.js"]
STYLE = "assets/guide/tally.css"
# The facts that a tally gives; the last three are worked out from the bearers, and asked where only the decision is.
REACHED = ["spur_reach_low", "spur_reach_high", "dead_primary_rise_pct"]
CARRIED = ["buds_cut", *PRIMORDIA, *SURE, "dead_node_pct", *DEAD, *REACHED]
# Where the figures go: the kind and id of the page, and what its button says.
USES = [
    ("decision", "pruning_system", "Use in spur or cane"),
    ("plan", "", "Use in the plan"),
    ("calculator", "nodes_for_yield", "Use in nodes for the crop"),
    ("calculator", "layout_options", "Use in layout options"),
    ("calculator", "bearer_reach", "Use in reach of spurs and canes"),
]
NODES = "distal_node_last"
BEST_NODE, BEST_NODES = "node of greatest fruitfulness", "best nodes"


def takes_tally(form: CalculatorForm) -> bool:
    """True for a calculator whose rows are cut buds."""
    return {"cane", "node"} <= {column.id for column in form.rows}


def asked(rulebook: Rulebook, form: CalculatorForm) -> list[Group]:
    """The questions of the page: the block's name, then those of the calculator, briefly, since few need them."""
    groups = [Group("", [replace(one, observe="") for one in group.questions]) for group in of_calculator(rulebook, form)]
    return [Group("", [question(rulebook, rulebook.facts[BLOCK], brief=True)]), *groups]


def of_tally(rulebook: Rulebook, data: Record) -> Record:
    """What is told of a tally alone: how many nodes a cane has at first, the facts that it gives, who takes them, and what is published
    elsewhere."""
    facts = plain(fact_specs(rulebook, CARRIED))
    return {
        "nodes": data["values"][NODES],
        "carries": [{name: fact[name] for name in ("id", "kind", "lifetime")} for fact in facts],
        "takes": [{"label": label, **_taker(rulebook, kind, name)} for kind, name, label in USES],
        "published": list(published(rulebook)),
    }


def _taker(rulebook: Rulebook, kind: str, name: str) -> dict[str, Any]:
    """A page's address from the root and the facts that it asks."""
    if kind == "plan":
        return {"page": "plan.html", "asks": [one.id for group in of_plan(rulebook) for one in group.questions]}
    asks = encode.decision_facts(rulebook, name) if kind == "decision" else [one.fact for one in rulebook.calculators[name].inputs]
    return {"page": page_path(kind, name).replace(".md", ".html"), "asks": asks}


def published(rulebook: Rulebook) -> Iterator[dict[str, Any]]:
    """The most fruitful nodes as printed, by evidence: first and last node, whose vines, standing, and the page of the source."""
    for one in rulebook.evidence.values():
        for what, nodes in _best(one):
            yield {
                "id": one.id,
                "what": what,
                "first": nodes[0],
                "last": nodes[-1],
                "standing": one.standing,
                "page": page_path("source", one.cites[0].id).replace(".md", ".html"),
            }


def _best(one: Evidence) -> Iterator[tuple[str, list[int]]]:
    """Whose vines, and the most fruitful node or nodes, for each row of an evidence that prints them."""
    whose = one.statement.split(":")[0]
    if BEST_NODE in one.outputs:
        yield whose, [one.outputs[BEST_NODE]]
    if BEST_NODES in one.outputs:
        yield whose, list(one.outputs[BEST_NODES])
    for row in one.outputs.get("table", []):
        if isinstance(row, dict) and "peak_node" in row:
            yield row["variety"], [row["peak_node"]]
