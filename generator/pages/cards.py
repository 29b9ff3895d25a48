"""The page of a calculator whose rows stand for things at hand (canes, vines): a card with one at a time, and what is said of each."""

from typing import Any, get_type_hints

from generator.answers.border import from_number
from generator.answers.records import plain
from generator.answers.rows import Reader, observed, record_of
from generator.answers.specs import column_specs, unit_specs
from generator.calculators.facts import Maybe
from generator.calculators.specs import FactSpec
from generator.pages.wording import plain_number
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm, RowColumn

BOARD = ["tally_keep.js", "card_board.js"]
SAID = ["card_result.js"]
# So many columns that are facts stand in view; the others are folded away under them. Own columns are few, and all in view.
SHOWN = 5
# A press on a button beside a number with decimals changes it by so many of its smallest steps.
PRESS = 5


def board(rulebook: Rulebook, form: CalculatorForm) -> dict[str, Any]:
    """What the card needs: the noun of a row, the columns in their order, how many of them stand in view, and how many rows at most."""
    types, begin = get_type_hints(record_of(form)), starts(rulebook)
    after = {unit.id: unit.after for unit in unit_specs(rulebook)}
    own = {one.id: one for one in form.rows}
    columns = [column(spec, types[spec.id], after[spec.unit]) | own_words(own[spec.id]) for spec in column_specs(rulebook, form)]
    return {
        "columns": [one | {"start": begin.get(one["id"], one["start"])} for one in columns],
        "shown": SHOWN if all(one.fact for one in form.rows) else len(columns),
        "most": rulebook.values[form.each.most].number,
        "each": {"one": form.each.one, "many": form.each.many},
    }


def starts(rulebook: Rulebook) -> dict[str, float]:
    """Where a number without a default begins when its button is pressed: the middle of the window of thickness, a well ripened cane."""
    least, most = (rulebook.values[name].number for name in ("cane_diameter_least_mm", "cane_diameter_most_mm"))
    return {"cane_diameter_mm": float(round((least + most) / 2)), "cane_ripe_nodes": rulebook.values["nodes_per_cane_most"].number}


def column(spec: FactSpec, kind: Any, after: str) -> dict[str, Any]:
    """One column: usual is what is taken where nothing is answered, as a link writes it; "" where nothing is."""
    known = spec.default.ok and kind is not Maybe
    shown = {name: part for name, part in plain(spec).items() if name in ("id", "label", "kind", "low", "high", "choices", "labels")}
    return shown | {
        "type": kind.__name__,
        "needed": kind is not Maybe and not spec.default.ok,
        "usual": str(from_number(spec, spec.default.number)) if known else "",
        "after": after,
        "step": spec.step * PRESS if spec.step < 1 else spec.step,
        "start": spec.default.number if spec.default.ok else spec.low,
    }


def own_words(one: RowColumn) -> dict[str, str]:
    """What only a column of the calculator's own has: how it is counted, and the input at which its buttons begin. A fact has a page."""
    return {} if one.fact else {"observe": one.observe, "begin": one.begin}


def listed(rulebook: Rulebook, form: CalculatorForm) -> list[dict[str, Any]]:
    """The columns as the page lists them: name, what is allowed, whether every row needs it, whether it is a fact, and what it holds."""
    own = {one.id: one for one in form.rows}
    return [
        {
            "id": spec.id,
            "allowed": ", ".join(spec.choices) or f"{plain_number(spec.low)} to {plain_number(spec.high)}",
            "needed": spec.id in Reader(rulebook, form).needed(),
            "fact": own[spec.id].fact,
            "observe": observed(rulebook, form, spec.id),
            "label": spec.label,
        }
        for spec in column_specs(rulebook, form)
    ]
