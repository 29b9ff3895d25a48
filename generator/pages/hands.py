"""Pages for the hands: one piece of work at the vine each, short enough to be read in the row on a phone."""

from generator.pages import wording
from generator.pages.cites import resolve
from generator.pages.jinja import render
from generator.pages.paths import Links, page_path
from generator.reading.hands import Hands
from generator.reading.items import Figure, Value
from generator.reading.looks import Said
from generator.reading.rulebook import Rulebook

STYLE = "assets/guide/hands.css"


def hands_pages(rulebook: Rulebook) -> dict[str, str]:
    """The page of every piece of work, and the list of them in the order of the winter."""
    pages = {page_path("hands", work.id): hands_page(rulebook, work) for work in rulebook.hands.values()}
    return {**pages, "hands.md": render("hands_list.md.jinja", links=Links("hands.md"), works=list(rulebook.hands.values()))}


def hands_page(rulebook: Rulebook, work: Hands) -> str:
    """When, with what, the steps, what never, how to see that it is right, how long it takes; then where it leads."""
    links = Links(page_path("hands", work.id))
    return render(
        "hands.md.jinja",
        words=wording,
        links=links,
        style=links.to(STYLE),
        work=work,
        stages=[rulebook.stages[name] for name in work.stages],
        said={part: said(rulebook, getattr(work, part)) for part in ("when", "signs", "steps", "never", "check")},
        hours=[shown(rulebook, rulebook.values[name]) for name in work.hours],
        cautions=[rulebook.cautions[name] for name in work.cautions],
        leads=leads(rulebook, work),
        see=[rulebook.hands[name] for name in work.see],
        next=next((other for other in rulebook.hands.values() if other.number > work.number), None),
    )


def said(rulebook: Rulebook, says: tuple[Said, ...]) -> list[dict]:
    """What a page claims, each with the sources that it rests on, as the macro `said` shows it."""
    return [{"said": one, "cited": resolve(rulebook, one.cites)} for one in says]


def shown(rulebook: Rulebook, value: Value) -> dict:
    """A value with what each author gives, in words."""
    unit = rulebook.units.get(value.unit)

    def figure(one: Figure) -> dict:
        """An author's figure: with its unit, and what stands behind it."""
        return {"item": one, "shown": wording.with_unit(one.number, unit), "cited": resolve(rulebook, one.cites)}

    return {"value": value, "figures": [figure(one) for one in value.figures]}


def leads(rulebook: Rulebook, work: Hands) -> list[tuple[str, str, str, str]]:
    """What belongs to the work beside other pages for the hands: kind, id, title and question of each, drawings first."""
    kinds = (("look", rulebook.looks, work.looks), ("decision", rulebook.decisions, work.decisions), ("calculator", rulebook.calculators, work.calculators))
    return [(kind, name, items[name].title, items[name].question) for kind, items, names in kinds for name in names]


def asked_by(rulebook: Rulebook, part: str, name: str) -> list[Hands]:
    """The pages for the hands that name a stage, a decision, a calculator or a drawing (part: `stages`, `decisions`, `calculators`, `looks`)."""
    return [work for work in rulebook.hands.values() if name in getattr(work, part)]
