"""The list pages (facts, values, sources, words) and the page that counts how sure we are."""

from dataclasses import dataclass

from generator.pages import wording
from generator.pages.cites import Cited, uses_of_source
from generator.pages.jinja import render
from generator.pages.paths import Links
from generator.reading.by_node import once
from generator.reading.items import STANDINGS, Figure, Value
from generator.reading.rulebook import Rulebook

PRINTED = ("published", "abstract", "second_hand", "our_arithmetic")


@dataclass(frozen=True)
class Head:
    """The head of a column: its label, and whether it holds numbers or standings."""

    label: str
    number: bool = False
    standing: bool = False


@dataclass(frozen=True)
class Row:
    """A row: the page it leads to and its cells after the first."""

    kind: str
    id: str
    label: str
    cells: tuple[str, ...]


@dataclass(frozen=True)
class Group:
    """Rows under a heading, or under none."""

    title: str
    rows: list[Row]


@dataclass(frozen=True)
class Count:
    """How much stands on a standing."""

    standing: str
    rows: int
    figures: int
    followed: int
    evidence: int


def list_pages(rulebook: Rulebook) -> dict[str, str]:
    """All lists, and the page of standings."""
    return {
        "facts.md": facts_list(rulebook),
        "values.md": values_list(rulebook),
        "sources.md": sources_list(rulebook),
        "glossary.md": glossary(rulebook),
        "how-sure-we-are.md": standings(rulebook),
    }


def _list(here: str, title: str, intro: str, heads: list[Head], groups: list[Group]) -> str:
    """A list page."""
    return render(
        "list.md.jinja", words=wording, links=Links(here), title=title, intro=intro, heads=heads, groups=groups
    )


def facts_list(rulebook: Rulebook) -> str:
    """Every fact by stage."""
    groups = []
    for stage in rulebook.stages.values():
        facts = [fact for fact in once(rulebook).values() if fact.stage == stage.id]
        rows = [
            Row("fact", f.id, f.label, (wording.allowed(f, rulebook.units.get(f.unit)), wording.LASTS[f.lifetime], f.code))
            for f in facts
        ]
        groups += [Group(stage.title, rows)] if rows else []
    heads = [Head("Fact"), Head("What it may be"), Head("Lasts"), Head("Letters")]
    return _list("facts.md", "Facts", "What the guide asks. Each is asked once and used everywhere.", heads, groups)


def values_list(rulebook: Rulebook) -> str:
    """Every value with the figure that is followed."""
    rows = [
        Row("value", v.id, v.label, (with_figure(rulebook, v, v.followed), v.followed.standing, v.followed.who))
        for v in rulebook.values.values()
    ]
    heads = [Head("Number"), Head("Followed", number=True), Head("Standing", standing=True), Head("Whose")]
    intro = "Numbers of the trade that the guide reckons with. Each page shows what every author gives and why one is followed."
    return _list("values.md", "Values", intro, heads, [Group("", rows)])


def with_figure(rulebook: Rulebook, value: Value, figure: Figure) -> str:
    """An author's figure with the value's unit."""
    return wording.with_unit(figure.number, rulebook.units.get(value.unit))


def sources_list(rulebook: Rulebook) -> str:
    """Every source by author; who published it stands on its own page, since all of it here would make the list heavy."""
    sources = sorted(rulebook.sources.values(), key=lambda source: (source.author.casefold(), source.year or 0))
    rows = [
        Row("source", s.id, Cited(s, "", None).name, (s.title, str(len(uses_of_source(rulebook, s.id)))))
        for s in sources
    ]
    heads = [Head("Source"), Head("Title"), Head("Places resting on it", number=True)]
    return _list("sources.md", "Sources", "What the guide rests on.", heads, [Group("", rows)])


def glossary(rulebook: Rulebook) -> str:
    """Every word of the trade."""
    terms = sorted(rulebook.terms.values(), key=lambda term: term.term.casefold())
    return render("glossary.md.jinja", links=Links("glossary.md"), terms=terms)


def standings(rulebook: Rulebook) -> str:
    """The standings, and how much stands on each, counted from the rulebook."""
    counts = [count(rulebook, standing) for standing in STANDINGS]
    values = list(rulebook.values.values())
    return render(
        "how-sure-we-are.md.jinja",
        words=wording,
        links=Links("how-sure-we-are.md"),
        counts=counts,
        total=Count("", *(sum(getattr(one, part) for one in counts) for part in ("rows", "figures", "followed", "evidence"))),
        unprinted=[value for value in values if value.followed.standing not in PRINTED],
        disputed=[value for value in values if len({figure.number for figure in value.figures}) > 1],
        shown=lambda value, figure: with_figure(rulebook, value, figure),
    )


def count(rulebook: Rulebook, standing: str) -> Count:
    """How many rows, figures, followed figures and findings have a standing."""
    rows = [row for table in rulebook.decisions.values() for row in table.rows]
    values = rulebook.values.values()
    figures = [figure for value in values for figure in value.figures]
    return Count(
        standing,
        sum(row.standing == standing for row in rows),
        sum(figure.standing == standing for figure in figures),
        sum(value.followed.standing == standing for value in values),
        sum(one.standing == standing for one in rulebook.evidence.values()),
    )
