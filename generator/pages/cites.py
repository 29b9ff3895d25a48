"""What rests on what: citations resolved to sources, and for each source, fact, value and term where it is used."""

from dataclasses import dataclass

from generator.reading.by_node import once
from generator.reading.items import Cite, Evidence, Source
from generator.reading.rulebook import Rulebook, kept
from generator.reading.tables import Decision

LONG = 15  # rows that a light page bears


@dataclass(frozen=True)
class Cited:
    """A citation resolved: the source, the place in it, and the evidence (None where the source is cited itself)."""

    source: Source
    place: str
    evidence: Evidence | None

    @property
    def name(self) -> str:
        """Author and year, as in `Skinkis 2010`."""
        return f"{self.source.author} {self.source.year}" if self.source.year else self.source.author

    @property
    def anchor(self) -> str:
        """Where on the source's page the evidence stands."""
        return f"#{self.evidence.id}" if self.evidence else ""


@dataclass(frozen=True)
class Rest:
    """What is cited, by id: what to call it, the evidence (None for a source by itself), and all sources behind it."""

    id: str
    name: str
    evidence: Evidence | None
    cited: list[Cited]


@dataclass(frozen=True)
class Use:
    """A place that uses an item: the kind and id of its page, an anchor on it or empty, and what to call it."""

    kind: str
    id: str
    label: str
    anchor: str = ""


def resolve(rulebook: Rulebook, cites: tuple[Cite, ...]) -> list[Cited]:
    """The sources behind citations, each once, in order; an evidence leads on to its own sources."""
    found: list[Cited] = []
    for cite in cites:
        evidence = rulebook.evidence.get(cite.id)
        pairs = [(inner.id, inner.place) for inner in evidence.cites] if evidence else [(cite.id, cite.place)]
        for source, place in pairs:
            if source in rulebook.sources:
                found.append(Cited(rulebook.sources[source], cite.place or place, evidence))
    return _once(found)


def _once(found: list[Cited]) -> list[Cited]:
    """Each source with each evidence once."""
    seen: dict[tuple[str, str], Cited] = {}
    for cited in found:
        seen.setdefault((cited.source.id, cited.evidence.id if cited.evidence else ""), cited)
    return list(seen.values())


def rests(rulebook: Rulebook, cites: tuple[Cite, ...]) -> list[Rest]:
    """What is cited: evidence with all of its sources, or a source by itself."""
    found = []
    for cite in cites:
        cited = resolve(rulebook, (cite,))
        if cited:
            others = f" and {len(cited) - 1} more" if len(cited) > 1 else ""
            found.append(Rest(cite.id, cited[0].name + others, cited[0].evidence, cited))
    return found


def is_long(table: Decision) -> bool:
    """Whether a table is too long for its page: its rows and their sources then stand on the page beside it."""
    return len(table.rows) > LONG


def rows_page(table: Decision) -> str:
    """The page of folder `d` on which the rows of a table stand."""
    return f"{table.id}.more" if is_long(table) else table.id


def citing(rulebook: Rulebook) -> list[tuple[Use, tuple[Cite, ...]]]:
    """Every place of the rulebook that cites something."""
    rows = [
        (Use("decision", rows_page(table), f"{table.title}, row {row.id}", f"#{row.id}"), row.cites + row.note_cites)
        for table in rulebook.decisions.values()
        if not table.generated
        for row in table.rows
    ]
    rows += [
        (Use("decision", f"{table.id}.more", f"{table.title}: {outcome.label}", f"#{outcome.id}"), one.cites)
        for table in rulebook.decisions.values()
        for outcome in table.outcomes
        for one in outcome.winters
    ]
    figures = [
        (Use("value", value.id, f"{value.label}: {figure.who}"), figure.cites)
        for value in rulebook.values.values()
        for figure in value.figures
    ]
    forms = [(Use("calculator", form.id, form.title), form.cites) for form in rulebook.calculators.values()]
    looks = [(Use("look", look.id, look.title), said.cites) for look in rulebook.looks.values() for said in look.says]
    looks += [(Use("hands", work.id, work.title), said.cites) for work in rulebook.hands.values() for said in work.says]
    terms = [(Use("term", term.id, term.term), term.cites) for term in rulebook.terms.values()]
    varieties = [(Use("variety", one.id, one.name), sum(one.resting, ())) for one in rulebook.varieties.values()]
    faults = [(Use("fault", fault.id, f"Fault: {fault.label}", f"#{fault.id}"), fault.cites) for fault in rulebook.faults.values()]
    return rows + figures + forms + terms + looks + varieties + faults


def uses_of_source(rulebook: Rulebook, source: str) -> list[Use]:
    """Where a source is cited, itself or through its evidence."""
    return [use for use, sources in _sources_cited(rulebook) if source in sources]


@kept
def _sources_cited(rulebook: Rulebook) -> list[tuple[Use, set[str]]]:
    """Every place that cites something, with the ids of the sources behind it."""
    return [(use, {cited.source.id for cited in resolve(rulebook, cites)}) for use, cites in citing(rulebook)]


def uses_of_fact(rulebook: Rulebook, fact: str) -> list[Use]:
    """The decisions and calculators that ask a fact, or a fact by node."""
    named = {fact, *(one.id for one in rulebook.facts.values() if one.series == fact)}
    tables = [Use("decision", t.id, t.title) for t in rulebook.decisions.values() if named & set(t.facts)]
    forms = [
        Use("calculator", form.id, form.title)
        for form in rulebook.calculators.values()
        if named & {needed.fact for needed in form.inputs}
    ]
    return tables + forms


def uses_of_value(rulebook: Rulebook, value: str) -> list[Use]:
    """The calculators that reckon with a value, the pages for the hands that show it, and the facts that have it as their default."""
    forms = [Use("calculator", f.id, f.title) for f in rulebook.calculators.values() if value in f.values]
    works = [Use("hands", work.id, work.title) for work in rulebook.hands.values() if value in work.hours]
    return forms + works + [Use("fact", f.id, f.label) for f in once(rulebook).values() if f.default_value == value]


def uses_of_term(rulebook: Rulebook, term: str) -> list[Use]:
    """The decisions and calculators that point to a term."""
    tables = [Use("decision", t.id, t.title) for t in rulebook.decisions.values() if term in t.terms]
    return tables + [Use("calculator", f.id, f.title) for f in rulebook.calculators.values() if term in f.terms]
