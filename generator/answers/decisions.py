"""The answer of a decision, as data."""

from typing import Any

from generator.answers.border import from_number
from generator.answers.catalogue import WORK, catalogue
from generator.answers.given import Given, given
from generator.answers.link import link
from generator.answers.shared import cautions, rests, sources, stamp
from generator.answers.tables import base_facts, candidates_for, feeding_order, tables_for
from generator.calculators.answer import Answer, Reason, answer
from generator.calculators.changes import Change, would_change
from generator.calculators.specs import FactSpec, spec_of
from generator.calculators.wording import Catalogue, worded
from generator.reading.rulebook import Rulebook
from generator.reading.tables import Outcome


def decide(rulebook: Rulebook, decision: str, inputs: dict[str, Any]) -> dict:
    """Computes one decision; see compute() for the shape. Raises BadInput."""
    asked = base_facts(rulebook, feeding_order(rulebook, decision))
    facts = given(rulebook, asked, inputs)
    tables = tables_for(rulebook, decision)
    found = answer(tables, facts.specs, facts.facts, decision)
    changes = would_change(tables, facts.specs, facts.facts, candidates_for(rulebook, decision), decision)
    return _as_data(rulebook, facts, found, changes)


def _as_data(rulebook: Rulebook, facts: Given, found: Answer, changes: list[Change]) -> dict:
    """The answer in words."""
    words, specs = catalogue(rulebook), facts.specs
    rests_on = rests(words, specs, found.rests_on)
    chain = [rulebook.decisions[name] for name in dict.fromkeys([found.decision, *(r.table for r in found.reasons)])]
    return {
        "name": found.decision,
        "kind": "decision",
        "headline": worded(words, found.headline, "si"),
        "settled": found.settled,
        "covered": found.covered,
        "outcome": found.outcome,
        "possible": found.possible,
        "work": work(rulebook, found.decision, found.outcome),
        "also": [worded(words, say, "si") for say in found.also],
        "ask_next": found.ask_next,
        "status": found.status,
        "reasons": [shown_reason(rulebook, words, reason) for reason in found.reasons],
        "rests_on": rests_on,
        "assumed": [rest["fact"] for rest in rests_on if rest["status"] == "assumed"],
        "would_change": [shown_change(words, specs, change) for change in changes],
        "working": [worded(words, step, "si") for step in found.steps],
        "sources": sources(rulebook, [*(name for r in found.reasons for name in r.sources), *cited(rulebook, found.decision, found.outcome)]),
        "cautions": cautions(
            rulebook, [*(n for r in found.reasons for n in r.cautions), *(n for d in chain for n in d.cautions)]
        ),
        **stamp(rulebook),
        "link": link(rulebook, f"d/{found.decision}.html", facts),
    }


def work(rulebook: Rulebook, table: str, outcome: str) -> dict[str, Any]:
    """What an outcome means for the work, as far as its table says: action (this winter), target, years, spring, winters."""
    one = _outcome(rulebook, table, outcome)
    if one is None:
        return {}
    winters = [
        {"do": each.do, "crop_pct": list(each.crop_pct), "standing": each.standing, "sources": [cite.id for cite in each.cites]}
        for each in one.winters
    ]
    said = {kind: getattr(one, kind) for kind in (*WORK, "onward", "spring")} | {"winters": winters}
    return {kind: said[kind] for kind in said if said[kind]}


def _outcome(rulebook: Rulebook, table: str, outcome: str) -> Outcome | None:
    """The outcome as its table has it; None while it is open."""
    return next((one for one in rulebook.decisions[table].outcomes if one.id == outcome), None)


def cited(rulebook: Rulebook, table: str, outcome: str) -> list[str]:
    """What the winters of an outcome rest on."""
    one = _outcome(rulebook, table, outcome)
    return [cite.id for each in one.winters for cite in each.cites] if one else []


def shown_reason(rulebook: Rulebook, words: Catalogue, reason: Reason) -> dict:
    """A row that speaks for the answer; note is what its sources say against it, if anything."""
    row = next(row for row in rulebook.decisions[reason.table].rows if row.id == reason.row)
    return {
        "table": reason.table,
        "row": reason.row,
        "text": worded(words, reason.says, "si"),
        "outcome": reason.outcome,
        "weight": reason.weight,
        "standing": reason.standing,
        "sources": reason.sources,
        "note": row.note,
    }


def shown_change(words: Catalogue, specs: list[FactSpec], change: Change) -> dict:
    """A flip: the fact, the value it would need as an author writes it, and the outcome."""
    value = from_number(spec_of(specs, change.fact), change.number)
    return {"fact": change.fact, "value": value, "outcome": change.outcome, "text": worded(words, change.says, "si")}
