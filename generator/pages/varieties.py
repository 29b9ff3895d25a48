"""The pages of the varieties: one for each, with its lists, its fruit by node and what follows for pruning, and the list of all."""

import re
from dataclasses import dataclass
from itertools import groupby
from unicodedata import normalize

from generator.answers.compute import compute
from generator.pages import wording
from generator.pages.cites import Rest, rests
from generator.pages.jinja import render
from generator.pages.paths import Links, page_path
from generator.reading.rulebook import Rulebook
from generator.reading.tables import Decision
from generator.reading.varieties import Finding, Variety
from generator.reading.variety_lists import verdict

HERE = "varieties.md"
BY_LISTS = "fruit_from_lists"
NOTHING = "Nothing found"
SAYS = {"spur": "spurs", "cane": "canes", "either": "either"}
USES = {"wine": "Wine and juice", "table": "Table", "dried": "Dried"}
MEASURES = {
    "bunches_per_shoot": "bunches on a shoot",
    "inflorescences_per_bud": "inflorescences in a bud",
    "fruitful_buds": "buds that bear",
    "fruit_per_node": "fruit on a node",
    "crop": "crop",
    "budburst": "nodes that burst",
    "dead_primaries": "dead primary buds",
    "secondary_buds": "secondary buds",
    "against_others": "against other varieties",
}
PLACES = {"base": "the lowest nodes", "tip": "the end nodes", "all": "the whole bearer"}


@dataclass(frozen=True)
class Told:
    """What one list says, how sure that is, and where it stands."""

    says: str
    standing: str
    rests: list[Rest]


@dataclass(frozen=True)
class Found:
    """What one source found: on which nodes, of what, in words, where, how sure that is, and where it stands."""

    nodes: str
    measure: str
    says: str
    place: str
    standing: str
    rests: list[Rest]


@dataclass(frozen=True)
class Line:
    """A variety in the list of all: its names, what the lists come to, for which nodes something was found (empty: nothing),
    and the anchor of its letter when it is the first under it."""

    id: str
    name: str
    other_names: str
    verdict: str
    found: str
    anchor: str


@dataclass(frozen=True)
class Group:
    """The varieties of one use, in the order of the alphabet, and the letters they begin with as (letter, anchor)."""

    id: str
    title: str
    lines: list[Line]
    letters: list[tuple[str, str]]


def variety_pages(rulebook: Rulebook) -> dict[str, str]:
    """The page of every variety, and the list of all."""
    table = lists_table(rulebook)
    follows = {one.id: what_follows(rulebook, one.id) for one in table.outcomes} if table else {}
    pages = {
        page_path("variety", one.id): variety_page(rulebook, one, table, follows.get(verdict(one), []))
        for one in rulebook.varieties.values()
    }
    return {HERE: varieties_list(rulebook, table), **pages}


def lists_table(rulebook: Rulebook) -> Decision | None:
    """The table that is made from the varieties; None in rules without one."""
    return next((table for table in rulebook.decisions.values() if table.generated), None)


def variety_page(rulebook: Rulebook, variety: Variety, table: Decision | None, follows: list[tuple[str, str]]) -> str:
    """One variety: names, lists, fruit by node, what follows for pruning, and what all of it rests on."""
    said = {one.id: one for one in table.outcomes} if table else {}
    return render(
        "variety.md.jinja",
        words=wording,
        links=Links(page_path("variety", variety.id)),
        variety=variety,
        use=USES[variety.use],
        also=[USES[one].lower() for one in variety.also],
        names=[(one.name, rests(rulebook, one.cites)) for one in variety.synonyms],
        verdict=said.get(verdict(variety)),
        told=[Told(SAYS[one.says], one.standing, rests(rulebook, one.cites)) for one in variety.lists],
        found=[found(rulebook, one) for one in outward(variety)],
        noted=rests(rulebook, variety.cites),
        follows=follows,
        dissection=rulebook.stages.get("find_fruit"),
        decisions=[rulebook.decisions[one] for one in ("pruning_system", BY_LISTS) if one in rulebook.decisions],
        rests=list({one.id: one for cites in variety.resting for one in rests(rulebook, cites)}.values()),
    )


def found(rulebook: Rulebook, one: Finding) -> Found:
    """A finding in the words of the page."""
    nodes = wording.capital(nodes_words(one.nodes))
    return Found(nodes, MEASURES[one.measure], one.says, one.place, one.standing, rests(rulebook, one.cites))


def outward(variety: Variety) -> list[Finding]:
    """What was found of a variety, from the whole bearer and its base outward."""
    named = [name for name in PLACES if name != "tip"]
    return sorted(variety.fruitfulness, key=lambda one: (one.nodes == "tip", one.nodes not in named, [int(node) for node in re.findall(r"\d+", one.nodes)]))


def nodes_words(nodes: str) -> str:
    """The nodes of a finding in words: `nodes 1 to 2`, `node 9`, `nodes beyond 10`, `the lowest nodes`."""
    return PLACES.get(nodes) or (f"node {nodes}" if nodes.isdigit() else f"nodes {nodes}")


def what_follows(rulebook: Rulebook, says: str) -> list[tuple[str, str]]:
    """What the guide takes of the lowest buds when nobody cut any, for varieties of which the lists say this: (climate, sentence),
    with an empty climate where it does not matter; empty when the rules have no such decision."""
    one = next((one.id for one in rulebook.varieties.values() if verdict(one) == says), None)
    climate = rulebook.facts.get("climate")
    if one is None or climate is None or BY_LISTS not in rulebook.decisions:
        return []
    answers = [
        (choice.label, compute(rulebook, BY_LISTS, {"variety": one, "climate": choice.id})["headline"]) for choice in climate.choices
    ]
    if len({sentence for _, sentence in answers}) == 1:
        return [("", answers[0][1])]
    alike = groupby(answers, key=lambda answer: answer[1])
    return [(" or ".join(label.lower() for label, _ in group), sentence) for sentence, group in alike]


def varieties_list(rulebook: Rulebook, table: Decision | None) -> str:
    """All varieties by use, with anchors from A to Z."""
    labels = {one.id: one.label for one in table.outcomes} | {"nothing_published": NOTHING} if table else {}
    groups = [group(rulebook, use, labels) for use in USES]
    return render("varieties.md.jinja", words=wording, links=Links(HERE), groups=[one for one in groups if one.lines], table=table)


def group(rulebook: Rulebook, use: str, labels: dict[str, str]) -> Group:
    """The varieties of one use; one with several uses stands under each."""
    those = sorted((one for one in rulebook.varieties.values() if use in (one.use, *one.also)), key=lambda one: plain(one.name))
    lines, letters = [], []
    for one in those:
        letter = plain(one.name)[0].upper()
        anchor = "" if letters and letters[-1][0] == letter else f"{use}-{letter.lower()}"
        if anchor:
            letters.append((letter, anchor))
        where = dict.fromkeys(nodes_words(finding.nodes) for finding in outward(one))
        says = labels.get(verdict(one), "")
        lines.append(Line(one.id, one.name, ", ".join(one.other_names), says, ", ".join(where), anchor))
    return Group(use, USES[use], lines, letters)


def plain(name: str) -> str:
    """A name as it is sorted: without accents, in small letters."""
    return normalize("NFKD", name).encode("ascii", "ignore").decode().casefold()
