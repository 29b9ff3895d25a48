"""Everything that is named is there.

Facts, values, units, stages, terms, cautions, evidence and sources are named by id all over the rules. A name that leads
nowhere would be a dead link on the site.

Wrong:

    # terms/spur.yml
    term: spur
    definition: A cane cut to a few nodes.
    see: [cain]
    standing: common_practice

Right:

    # terms/spur.yml
    term: spur
    definition: A cane cut to a few nodes.
    see: [cane]
    standing: common_practice
"""

from collections.abc import Iterator

from generator.checks.shape import Check, at
from generator.problems import Problem
from generator.reading.items import Item
from generator.reading.near import suggestion
from generator.reading.rulebook import Rulebook

EVIDENCE = "That is evidence itself: name the publication in rules/sources/ that it was read in."
YES_NO = "yes_no"  # an output that is true or false
Named = tuple[Item, str, str, int]


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each id that leads nowhere."""
    there = {
        "fact": rulebook.facts,
        "value": rulebook.values,
        "unit": rulebook.units,
        "stage": rulebook.stages,
        "term": rulebook.terms,
        "caution": rulebook.cautions,
        "calculator": rulebook.calculators,
        "source": {**rulebook.evidence, **rulebook.sources},
        "publication": rulebook.sources,
        "decision": rulebook.decisions,
        "decision or calculator": {**rulebook.decisions, **rulebook.calculators},
        "look": rulebook.looks,
        "page for the hands": rulebook.hands,
        "row": {f"{table.id}.{row.id}": row for table in rulebook.decisions.values() for row in table.rows},
    }
    for item, kind, name, line in _all(rulebook):
        if name not in there[kind]:
            step = EVIDENCE if kind == "publication" and name in rulebook.evidence else suggestion(name, there[kind])
            yield at(item, f"There is no {kind} `{name}`.", step, line)


def _all(rulebook: Rulebook) -> Iterator[Named]:
    """Every id named anywhere: by what, of which kind, and on which line (0: where the item begins)."""
    yield from _facts_and_values(rulebook)
    yield from _decisions(rulebook)
    yield from _looks(rulebook)
    yield from _hands(rulebook)
    yield from _faults(rulebook)
    for form in rulebook.calculators.values():
        yield form, "stage", form.stage, 0
        yield from ((form, "fact", one.fact, 0) for one in form.inputs)
        yield from ((form, "fact", one.id, 0) for one in form.rows if one.fact)
        yield from ((form, "value", name, 0) for name in form.values)
        if form.each:
            yield form, "value", form.each.most, 0
        yield from ((form, "fact", one.begin, 0) for one in form.rows if one.begin)
        yield from ((form, "decision", name, 0) for name in form.tables)
        yield from ((form, "unit", output.unit, 0) for output in form.outputs if output.unit != YES_NO)
        yield from ((form, "source", cite.id, 0) for cite in form.cites)
        yield from ((form, "caution", name, 0) for name in form.cautions)
        yield from ((form, "term", name, 0) for name in form.terms)
    for stage in rulebook.stages.values():
        yield from ((stage, "fact", name, 0) for name in stage.asks)
    for message in rulebook.messages.values():
        yield from ((message, "unit", one.unit, 0) for one in message.numbers if one.unit not in ("", "fact"))
    for term in rulebook.terms.values():
        yield from ((term, "term", name, 0) for name in term.see)
        yield from ((term, "source", cite.id, 0) for cite in term.cites)
    for evidence in rulebook.evidence.values():
        yield from ((evidence, "publication", cite.id, 0) for cite in evidence.cites)
    for variety in rulebook.varieties.values():
        yield from ((variety, "source", cite.id, 0) for cites in variety.resting for cite in cites)


def _looks(rulebook: Rulebook) -> Iterator[Named]:
    """What drawings name."""
    for look in rulebook.looks.values():
        for kind, names in (("stage", look.stages), ("decision", look.decisions), ("look", look.see)):
            yield from ((look, kind, name, 0) for name in names)
        yield from ((look, "term", mark.term, mark.line) for mark in look.marks)
        yield from ((look, "source", cite.id, said.line) for said in look.says for cite in said.cites)


def _hands(rulebook: Rulebook) -> Iterator[Named]:
    """What pages for the hands name."""
    for work in rulebook.hands.values():
        named = {"stage": work.stages, "value": work.hours, "caution": work.cautions, "look": work.looks, "decision": work.decisions}
        for kind, names in (*named.items(), ("calculator", work.calculators), ("page for the hands", work.see)):
            yield from ((work, kind, name, 0) for name in names)
        yield from ((work, "source", cite.id, said.line) for said in work.says for cite in said.cites)


def _faults(rulebook: Rulebook) -> Iterator[Named]:
    """What faults of the work name."""
    for fault in rulebook.faults.values():
        for kind, names in (("row", fault.rows), ("value", fault.values), ("look", fault.looks), ("caution", fault.cautions)):
            yield from ((fault, kind, name, 0) for name in names)
        yield from ((fault, "source", cite.id, 0) for cite in fault.cites)


def _facts_and_values(rulebook: Rulebook) -> Iterator[Named]:
    """What facts and values name."""
    for fact in rulebook.facts.values():
        yield fact, "stage", fact.stage, 0
        for kind, name in (("unit", fact.unit), ("value", fact.default_value), ("calculator", fact.computed_by)):
            if name:
                yield fact, kind, name, 0
        yield from ((fact, "source", cite.id, 0) for cite in (fact.assumed.cites if fact.assumed else ()))
    for value in rulebook.values.values():
        yield value, "unit", value.unit, 0
        yield from ((value, "source", cite.id, 0) for figure in value.figures for cite in figure.cites)


def _decisions(rulebook: Rulebook) -> Iterator[Named]:
    """What decision tables name; their facts and outcomes were looked at when they were read."""
    for decision in rulebook.decisions.values():
        yield decision, "stage", decision.stage, 0
        yield from ((decision, "term", name, 0) for name in decision.terms)
        yield from ((decision, "caution", name, 0) for name in decision.cautions)
        yield from ((decision, "decision or calculator", one.onward, 0) for one in decision.outcomes if one.onward)
        winters = [one for outcome in decision.outcomes for one in outcome.winters]
        yield from ((decision, "source", cite.id, one.line) for one in winters for cite in one.cites)
        for row in decision.rows:
            yield from ((decision, "source", cite.id, row.line) for cite in row.cites)
            yield from ((decision, "caution", name, row.line) for name in row.cautions)


CHECK = Check("references", "Every id that is named belongs to something that is there.", check)
