"""Calculator pages: the form, the answer, worked examples reckoned while the site is built, and the numbers used."""

from dataclasses import dataclass

from generator.answers.compute import compute
from generator.answers.encode import compared_values
from generator.answers.rows import ROWS, without_rows
from generator.pages import wording
from generator.pages.cards import listed
from generator.pages.cites import Cited, resolve
from generator.pages.decisions import known_words
from generator.pages.hands import asked_by
from generator.pages.jinja import render
from generator.pages.paths import Links, page_path
from generator.pages.tally import STYLE, takes_tally
from generator.reading.items import Cite, Value
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm, Example, Output


@dataclass(frozen=True)
class OutputShown:
    """An output: what it is called, the symbol of its unit, and how it is rounded, in words."""

    label: str
    symbol: str
    rounding: str


@dataclass(frozen=True)
class Used:
    """A value that the calculator reckons with, with its number and unit in words; of one that is shown author by author, how many
    there are."""

    item: Value
    shown: str
    authors: int = 0


@dataclass(frozen=True)
class Worked:
    """A worked example: the inputs in words, the working line by line, the result, and where the figure is published."""

    name: str
    known: str
    working: list[str]
    comes_out: str
    cited: list[Cited]


def calculator_pages(rulebook: Rulebook) -> dict[str, str]:
    """Two pages for each calculator that has a form: the calculator, and beside it what would make that page heavy and long."""
    pages = {}
    for form in rulebook.calculators.values():
        examples = [worked(rulebook, form, example) for example in form.examples]
        pages[page_path("calculator", form.id)] = calculator_page(rulebook, form, examples[:1])
        pages[more_path(form)] = more_page(rulebook, form, examples)
    return pages


def more_path(form: CalculatorForm) -> str:
    """Where all worked examples of a calculator stand, with its sources."""
    return page_path("calculator", f"{form.id}.more")


def more_page(rulebook: Rulebook, form: CalculatorForm, examples: list[Worked]) -> str:
    """All worked examples, and what the calculator rests on."""
    return render(
        "calculator_more.md.jinja",
        words=wording,
        links=Links(more_path(form)),
        form=form,
        examples=examples,
        cited=resolve(rulebook, form.cites),
    )


def calculator_page(rulebook: Rulebook, form: CalculatorForm, examples: list[Worked]) -> str:
    """The page of one calculator, with one worked example or none."""
    return render(
        "calculator.md.jinja",
        words=wording,
        links=Links(page_path("calculator", form.id)),
        form=form,
        stage=rulebook.stages[form.stage],
        outputs=[output(rulebook, one) for one in form.outputs],
        values=[used(rulebook, rulebook.values[name], compared_values(form.id)) for name in form.values if name in rulebook.values],
        example=examples[0] if examples else None,
        more_html=more_path(form).replace(".md", ".html"),
        cautions=[rulebook.cautions[name] for name in form.cautions if name in rulebook.cautions],
        terms=[rulebook.terms[name] for name in form.terms if name in rulebook.terms],
        hands=asked_by(rulebook, "calculators", form.id),
        columns=listed(rulebook, form),
        counted=takes_tally(form),
        style=Links(page_path("calculator", form.id)).to(STYLE) if form.rows else "",
        scripts=["assets/guide/core.js", f"assets/guide/c/{form.id}.js"],
    )


def output(rulebook: Rulebook, one: Output) -> OutputShown:
    """An output in words."""
    unit = rulebook.units.get(one.unit)
    places = {0: "a whole number", 1: "one decimal"}
    return OutputShown(one.label, unit.symbol if unit else "", places.get(one.digits, f"{one.digits} decimals"))


def used(rulebook: Rulebook, value: Value, compared: list[str]) -> Used:
    """A value with its number in words; one of several figures that are compared with how many there are."""
    shown = wording.with_unit(value.number, rulebook.units.get(value.unit))
    return Used(value, shown, len(value.figures) if value.id in compared and len(value.figures) > 1 else 0)


def worked(rulebook: Rulebook, form: CalculatorForm, example: Example) -> Worked:
    """A worked example, reckoned now, so that the page shows it with scripts off."""
    answer = compute(rulebook, form.id, example.facts)
    cited = resolve(rulebook, (Cite(example.source),)) if example.source else []
    known = known_words(rulebook, without_rows(form, example.facts))
    rows = example.facts.get(ROWS, []) if form.rows else []
    if rows:
        known = "; ".join(filter(None, [f"{wording.capital(form.each.many) if form.each else 'Rows of the tally'}: {len(rows)}", known]))
    return Worked(example.name, f"{known}.", list(answer.get("working", [])), answer.get("headline", ""), cited)
