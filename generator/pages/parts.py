"""One page with every part that pages are made of, in its states, for whoever changes them. Only `serve` has it (parts.html)."""

from generator.answers import encode
from generator.answers.records import plain
from generator.pages import wording
from generator.pages.jinja import render
from generator.pages.packing import add, bare_catalogue, bare_tables
from generator.pages.paths import Links
from generator.pages.questions import Group, question
from generator.pages.scripts import ANSWERS, FOLDER, OPEN, SENTENCES, asset, by_node, page_data
from generator.pages.slimming import slim
from generator.reading.items import Fact
from generator.reading.rulebook import Rulebook

HERE = "parts.md"
SCRIPT = FOLDER + "parts.js"
FEW = 8


def parts_files(rulebook: Rulebook) -> dict[str, str]:
    """The page and its script: a living form with a question of every kind, an answer that weighs, and all that is only markup."""
    return {HERE: parts_page(rulebook), SCRIPT: slim(parts_script(rulebook))}


def parts_page(rulebook: Rulebook) -> str:
    """The page, with the real macros where there are some."""
    return render(
        "parts.md.jinja",
        words=wording,
        links=Links(HERE),
        stage=next(iter(rulebook.stages.values())),
        cautions=list(rulebook.cautions.values())[:2],
        terms=list(rulebook.terms.values())[:2],
        strokes=strokes(),
        scripts=["assets/guide/core.js", FOLDER + ANSWERS, SCRIPT],
    )


def parts_script(rulebook: Rulebook) -> str:
    """A decision page of the first table that weighs, with a question of every kind in front of its own."""
    table = next((one for one in rulebook.decisions.values() if one.policy == "collect"), next(iter(rulebook.decisions.values())))
    asked = list(dict.fromkeys([*(fact.id for fact in one_of_each(rulebook)), *encode.decision_facts(rulebook, table.id)]))
    groups = [Group("A question of every kind", [question(rulebook, rulebook.facts[name], place % 2 == 1) for place, name in enumerate(asked)])]
    facts = encode.encode_catalogue(rulebook, SENTENCES, [], asked)
    data = {
        **page_data(rulebook, table.id, ""),
        "groups": plain(groups),
        "catalogue": bare_catalogue(facts),
        "tables": bare_tables(rulebook, encode.encode_tables(rulebook, table.id), {table.id}, sourced=False),
        "candidates": encode.encode_candidates(rulebook, table.id),
        "sides": {table.id: list(table.sides)} if table.sides else {},
        "rows": {table.id: f"d/{table.id}.html"},
        "answers": [],
        "after": {},
        "onward": [],
    }
    return "\n".join([add(data), *by_node(data), asset("reasons.js"), asset("decision.js"), "Guide.page.decision();", f"{OPEN}\n"])


def one_of_each(rulebook: Rulebook) -> list[Fact]:
    """A fact of each kind that a form shows in its own way, and a whole series."""
    kinds: dict[tuple, Fact] = {}
    for fact in rulebook.facts.values():
        kind = (fact.kind, bool(fact.default_value or fact.assumed), len(fact.choices) > FEW)
        if not fact.series:
            kinds.setdefault(kind, fact)
    series = next((fact.series for fact in rulebook.facts.values() if fact.series), "")
    return [*kinds.values(), *(fact for fact in rulebook.facts.values() if series and fact.series == series)]


def strokes() -> list[str]:
    """The classes of drawings, as the style sheet has them."""
    names = {rule.split("{")[0] for rule in asset("guide.css").splitlines() if ".v-" in rule}
    return sorted({name.strip(" .,:)") for rule in names for name in rule.replace(".drawing", " ").split() if ".v-" in name})
