"""Facts that are asked by node: one file that says `by_node: 15` stands for fifteen facts, `<file>_1` to `<file>_15`.

Each is a fact like any other, with an id, a code (the file's one letter and A for node 1, B for node 2, ...) and texts in which
`{node}` is the number of its node. Calculators and stages name the file, and mean them all.
"""

import re
from collections.abc import Iterable, Iterator
from dataclasses import replace
from string import ascii_uppercase

from generator.problems import Problem
from generator.reading.build_items import BadItem, fact
from generator.reading.documents import Document
from generator.reading.items import Choice, Fact
from generator.reading.near import suggestion
from generator.reading.rulebook import Rulebook, Stage
from generator.reading.tables import CalculatorForm, Input

FIELD = "by_node"
PLACE = "{node}"
ANY_PLACE = re.compile(r"\{[^{}]*\}")
TEXTS = ("label", "ask", "observe")
NEEDED = ("label", "ask")


def facts_of(document: Document, varieties: tuple[Choice, ...]) -> tuple[Fact, ...]:
    """The facts of one file: itself, or one for each node. Raises BadItem."""
    problems = list(_text_faults(document))
    if problems:
        raise BadItem(problems)
    nodes = document.data.get(FIELD)
    if nodes is None:
        return (fact(document, varieties),)
    return tuple(_at_node(document, varieties, node) for node in range(1, nodes + 1))


def whole(document: Document, varieties: tuple[Choice, ...]) -> Fact:
    """A file that is asked by node as one fact, for lists and pages: its texts name all nodes (`at node {node}` is `at nodes 1 to 15`),
    its code the first and the last, its node is the last one."""
    nodes = document.data[FIELD]
    letter = document.data["code"]
    plural = {name: document.data[name].replace(f"node {PLACE}", f"nodes {PLACE}") for name in TEXTS}
    texts = _texts(replace(document, data=plural), f"1 to {nodes}")
    texts["code"] = f"{letter}A to {letter}{ascii_uppercase[nodes - 1]}"
    made = fact(replace(document, data={**document.data, **texts}), varieties)
    return replace(made, series=document.id, node=nodes)


def clashes(files: dict[str, tuple[Fact, ...]]) -> Iterator[Problem]:
    """Files whose id is made for a node of another file."""
    for name, facts in files.items():
        for one in facts:
            if one.id != name and one.id in files:
                other = files[one.id][0].where
                sentence = f"`{one.id}` is the fact that {name}.yml makes for node {one.node}."
                yield Problem(other.path, other.line, sentence, "Rename one of the two files.")


def names_of(names: Iterable[str], facts: dict[str, Fact]) -> tuple[str, ...]:
    """The names, where the name of a file that is asked by node stands for its facts."""
    return tuple(one for name in names for one in _nodes(name, facts) or [name])


def stage_of(stage: Stage, facts: dict[str, Fact]) -> Stage:
    """The stage with each fact that it asks by node."""
    return replace(stage, asks=names_of(stage.asks, facts))


def form_of(form: CalculatorForm, facts: dict[str, Fact]) -> CalculatorForm:
    """The form with an input for each node; of an input that may not be left out, node 1 is needed."""
    return replace(form, inputs=tuple(one for given in form.inputs for one in _inputs(given, facts)))


def once(rulebook: Rulebook) -> dict[str, Fact]:
    """The facts as lists and pages show them: what is asked by node once, in the place of its first node."""
    return {fact.series or fact.id: rulebook.by_node.get(fact.series, fact) for fact in rulebook.facts.values()}


def _inputs(given: Input, facts: dict[str, Fact]) -> list[Input]:
    """One input, or one for each node."""
    nodes = _nodes(given.fact, facts)
    return [replace(given, fact=one, optional=given.optional or facts[one].node > 1, series=given.fact) for one in nodes] or [given]


def _nodes(name: str, facts: dict[str, Fact]) -> list[str]:
    """The facts of a file that is asked by node, from node 1; none for any other name."""
    return [one.id for one in facts.values() if one.series == name]


def _at_node(document: Document, varieties: tuple[Choice, ...], node: int) -> Fact:
    """The fact of one node."""
    code = document.data["code"] + ascii_uppercase[node - 1]
    data = {**document.data, **_texts(document, str(node)), "code": code}
    made = fact(replace(document, id=f"{document.id}_{node}", data=data), varieties)
    return replace(made, series=document.id, node=node)


def _texts(document: Document, node: str) -> dict[str, str]:
    """The texts with the node in its place."""
    return {name: document.data[name].replace(PLACE, node) for name in TEXTS}


def _text_faults(document: Document) -> Iterator[Problem]:
    """`{node}` is missing, misspelt, or stands in a fact that is not asked by node."""
    for name in TEXTS:
        text = document.data[name]
        if FIELD not in document.data:
            if PLACE in text:
                step = f"Write `{FIELD}: 10` for nodes 1 to 10, or take {PLACE} out."
                yield document.problem((name,), f"`{name}` holds {PLACE}, and the fact is not asked by node.", step)
            continue
        misspelt = [place for place in ANY_PLACE.findall(text) if place != PLACE]
        for place in misspelt:
            step = suggestion(place, [PLACE], f"Write {PLACE}.")
            yield document.problem((name,), f"`{name}` holds {place}, and only {PLACE} is filled in.", step)
        if name in NEEDED and PLACE not in text and not misspelt:
            step = f"Write {PLACE} where the number of the node belongs."
            yield document.problem((name,), f"`{name}` needs {PLACE}, as the fact is asked by node.", step)
