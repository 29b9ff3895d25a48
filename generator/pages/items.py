"""Pages of the items that stand for themselves: stages, facts, values, sources, terms."""

from generator.answers.tables import asked_by_others
from generator.pages import looks, wording
from generator.pages.cites import Cited, resolve, uses_of_fact, uses_of_source, uses_of_term, uses_of_value
from generator.pages.decisions import replaced_note
from generator.pages.hands import asked_by
from generator.pages.jinja import render
from generator.pages.paths import Links, page_path
from generator.pages.pictures import stage_pictures
from generator.reading.by_node import once
from generator.reading.items import Evidence, Fact, Source, Term, Value
from generator.reading.rulebook import Rulebook, Stage


def item_pages(rulebook: Rulebook) -> dict[str, str]:
    """The page of every stage, fact, value, source and term."""
    kinds = {
        "stage": (rulebook.stages, stage_page),
        "fact": (once(rulebook), fact_page),
        "value": (rulebook.values, value_page),
        "source": (rulebook.sources, source_page),
        "term": (rulebook.terms, term_page),
    }
    return {
        page_path(kind, item.id): page(rulebook, item, Links(page_path(kind, item.id)))
        for kind, (items, page) in kinds.items()
        for item in items.values()
    }


def stage_page(rulebook: Rulebook, stage: Stage, links: Links) -> str:
    """What is decided in a stage, and how to look at it."""
    later = [other for other in rulebook.stages.values() if other.number > stage.number]
    own, asked = [table for table in rulebook.decisions.values() if table.stage == stage.id], asked_by_others(rulebook)
    return render(
        "stage.md.jinja",
        words=wording,
        links=links,
        stage=stage,
        pictures=stage_pictures(rulebook, stage),
        looks=looks.of_stage(rulebook, stage.id),
        hands=asked_by(rulebook, "stages", stage.id),
        decisions=[table for table in own if table.id not in asked],
        behind=[table for table in own if table.id in asked],
        # The one that the stage is named after brings the others together, and comes first.
        calculators=sorted((form for form in rulebook.calculators.values() if form.stage == stage.id), key=lambda form: form.id != stage.id),
        facts=[fact for fact in once(rulebook).values() if fact.stage == stage.id],
        next=min(later, key=lambda other: other.number) if later else None,
    )


def fact_page(rulebook: Rulebook, fact: Fact, links: Links) -> str:
    """How a fact is asked and found out, and who asks it."""
    unit = rulebook.units.get(fact.unit)
    default = rulebook.values.get(fact.default_value)
    return render(
        "fact.md.jinja",
        words=wording,
        links=links,
        fact=fact,
        stage=rulebook.stages.get(fact.stage),
        allowed=wording.allowed(fact, unit),
        default=default,
        default_shown=wording.with_unit(default.number, unit) if default else "",
        assumed_shown=wording.assumed(fact, unit),
        assumed_cited=resolve(rulebook, fact.assumed.cites) if fact.assumed else [],
        computed_by=rulebook.calculators.get(fact.computed_by),
        lifetime=wording.LIFETIME[fact.lifetime],
        uses=uses_of_fact(rulebook, fact.id),
        replaced_note=replaced_note(fact.replaced),
    )


def value_page(rulebook: Rulebook, value: Value, links: Links) -> str:
    """Every author's figure, which one is followed and why; in an edition the original beside it."""
    unit = rulebook.units.get(value.unit)
    return render(
        "value.md.jinja",
        words=wording,
        links=links,
        value=value,
        shown=lambda number: wording.with_unit(float(number), unit),
        figures=[{"item": figure, "cited": resolve(rulebook, figure.cites)} for figure in value.figures],
        original=value.replaced.original if value.replaced else None,
        edition=rulebook.edition,
        uses=uses_of_value(rulebook, value.id),
    )


def source_page(rulebook: Rulebook, source: Source, links: Links) -> str:
    """What a source says and where the guide rests on it."""
    return render(
        "source.md.jinja",
        words=wording,
        links=links,
        source=source,
        name=Cited(source, "", None).name,
        evidence=[{"item": one, "place": place_in(one, source)} for one in rulebook.evidence.values() if names(one, source)],
        uses=uses_of_source(rulebook, source.id),
    )


def names(evidence: Evidence, source: Source) -> bool:
    """True when the evidence comes from the source."""
    return source.id in {cite.id for cite in evidence.cites}


def place_in(evidence: Evidence, source: Source) -> str:
    """Where in the source the evidence stands."""
    return next(cite.place for cite in evidence.cites if cite.id == source.id)


def term_page(rulebook: Rulebook, term: Term, links: Links) -> str:
    """A word of the trade."""
    return render(
        "term.md.jinja",
        words=wording,
        links=links,
        term=term,
        cited=resolve(rulebook, term.cites),
        see=[rulebook.terms[name] for name in term.see if name in rulebook.terms],
        uses=uses_of_term(rulebook, term.id),
        drawings=looks.of_term(rulebook, term.id),
    )
