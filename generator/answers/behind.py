"""What stands behind a plan: the values it reckons with, and the sources and cautions of its parts. The page does the same walk."""

from typing import Any

from generator.answers.encode import compared_values, value_ids
from generator.answers.shared import cautions, publication, value_used
from generator.reading.rulebook import Rulebook

KINDS = ("sources", "cautions")


def behind(rulebook: Rulebook, calculator: str) -> dict[str, Any]:
    """All that a plan may refer to: {values, uses: {decision or calculator: {sources: [id], cautions: [id]}}, sources: {id: source in
    brief}, cautions: {id: caution}}. The plan picks from it by id, so that a page can carry it. A value of which every author's figure is
    taken has no one number: its figures are among the sources of the calculators that hold them side by side."""
    compared = compared_values(calculator)
    values = [value_used(rulebook, name) for name in value_ids(calculator) if name not in compared]
    decisions = {name: table for name, table in rulebook.decisions.items() if in_plan(rulebook, table.stage)}
    uses = {name: {"sources": [], "cautions": list(table.cautions)} for name, table in decisions.items()}
    uses |= {
        name: {"sources": [cite.id for cite in form.cites] + _figures(rulebook, set(compared) & set(form.values)), "cautions": list(form.cautions)}
        for name, form in rulebook.calculators.items()
    }
    cited = [cite.id for table in decisions.values() for row in table.rows for cite in row.cites]
    cited += [source for kind in (*uses.values(), *values) for source in kind["sources"]]
    return {
        "values": values,
        "uses": uses,
        "sources": {name: _brief(rulebook, name) for name in dict.fromkeys(cited)},
        "cautions": {one["id"]: one for one in cautions(rulebook, list(rulebook.cautions))},
    }


def in_plan(rulebook: Rulebook, stage: str) -> bool:
    """True for a stage that asks something of the plan. What is decided at each vine, by the person with the shears, is not planned for
    the block: its facts and tables have pages of their own."""
    return stage in rulebook.stages and bool(rulebook.stages[stage].asks)


def picked(found: dict[str, Any], parts: list[Any]) -> dict[str, Any]:
    """{values, sources, cautions} of a plan's parts, each once: those of the rows that decided, then those of the decisions and
    calculators used, then the sources of the values."""
    uses = [found["uses"][name] for part in parts for name in part.uses if name in found["uses"]]
    ids = {kind: [name for part in parts for name in getattr(part, kind)] + [name for use in uses for name in use[kind]] for kind in KINDS}
    ids["sources"] += [source for value in found["values"] for source in value["sources"]]
    chosen = {kind: [found[kind][name] for name in dict.fromkeys(ids[kind]) if name in found[kind]] for kind in KINDS}
    return {"values": found["values"], **chosen}


def _figures(rulebook: Rulebook, values: set[str]) -> list[str]:
    """The sources of every figure of these values, each once."""
    cited = [cite.id for name, value in rulebook.values.items() if name in values for one in value.figures for cite in one.cites]
    return list(dict.fromkeys(cited))


def _brief(rulebook: Rulebook, name: str) -> dict[str, Any]:
    """A piece of evidence or a source in brief: its standing, and who printed it where."""
    evidence = rulebook.evidence.get(name)
    if evidence is None:
        return {"id": name, "standing": "published", "by": [_who(rulebook, name, "")]}
    return {"id": name, "standing": evidence.standing, "by": [_who(rulebook, cite.id, cite.place) for cite in evidence.cites]}


def _who(rulebook: Rulebook, source: str, place: str) -> str:
    """Author, year and place in one line."""
    found = publication(rulebook, source)
    return ", ".join(str(part) for part in (found.get("author", source), found.get("year"), place) if part)
