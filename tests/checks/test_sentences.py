"""What the checks say, word for word: the wrong examples of the manual pages, and mistakes that need more than a page."""

from dataclasses import replace
from pathlib import Path

import pytest

from generator.checks import CHECKS, as_annotations, as_json, as_text, completeness, examples, manual, reachability, says
from generator.checks.calculator_examples import same
from generator.problems import Problem
from generator.reading.tables import Example
from tests import made_tables as made
from tests.checks import partitions
from tests.checks.test_manual_pages import examples as of_page
from tests.checks.test_manual_pages import problems_of

WORDS = {
    "references": "There is no term `cain`.\n    Did you mean `cane`?",
    "ranges": "Figure `ours` is 10, outside the range 0 to 1.\n    Correct the figure, or widen the range.",
    "units": "The id `tip_gap_m` names the unit `m`, but it has `cm`.\n    Write `unit: m`, or choose another id.",
    "says": "The message `guard.choice` takes no word, but is given 1.\n"
    f"    It is said in generator/calculators/guard.py:{next(one.line for one in says.said_in_calculators() if one.message == 'guard.choice')}.",
    "completeness": "No row of `cane_thickness` covers {cane_diameter_mm: 6}.\n    Row K1 comes nearest: write `cane_diameter_mm: up to 6`"
    " there instead of `under 6`, add a row for these facts, or list them under `gaps` with the reason.",
    "overlap": "Rows K1 and K2 both fit {cane_diameter_mm: 6}.\n"
    "    Narrow one of them; if the first that fits is to decide, write `policy: first_row`.",
    "reachability": "Row K2 can never apply: row K1 before it takes all its facts.\n"
    "    Move it up, narrow what stands before it, or take it away.",
    "known_gaps": "The known gap {cane_diameter_mm: over 20} is no longer needed: rows cover all of it.\n    Take it out of `gaps`.",
    "examples": "Worked example “A cane of exactly 6 mm is too thin”: it should give `thin`, but it gives `good` by row K2.\n"
    "    Correct the example, or row K2.",
    "standings": "The term “spur” is `published` and names no source.\n    Name the source, or give it the standing it has.",
    "calculators": "The input `area_ha` is number in the form and Maybe in the code.\n"
    "    Write `{fact: area_ha, optional: true}`, or make it float in the code.",
    "weighing": "The weights can come to 0, and no outcome has that sum.\n    Widen the `sum` of an outcome.",
    "calculator_examples": "Worked example “Vines a metre apart in rows of 3 m”: `vines_per_ha` should be 3333.4, but is 3333.333333.\n"
    "    Correct the example, or the calculator.",
    "ledger": "The term `spur` is not in the ledger of ids.\n    Run `python3 -m generator ids`, and keep the line that it adds.",
    "citing": "The evidence `zz-01` is never cited.\n    Cite it where it is used, or take it away.",
}
ALPHA, BETA = made.fact("alpha", "number"), made.fact("beta", "choice", 3)


@pytest.mark.parametrize("check", [check for check in CHECKS if check.name in WORDS], ids=lambda check: check.name)
def test_the_words_of_a_wrong_example(check, tmp_path: Path):
    """The sentence and the next step, after the place."""
    found = problems_of(check, of_page(manual()[check.name])["Wrong"], tmp_path)
    assert [problem.partition(": ")[2] for problem in found] == [WORDS[check.name]]


def table(rows, policy: str = "one_row", outcomes: int = 2):
    """A rulebook of one table on a number and a choice."""
    return partitions.book([ALPHA, BETA], made.decision("table", policy, ["alpha", "beta"], rows, outcomes))


def test_a_gap_of_two_facts_names_both_and_the_nearest_row():
    """Under 2 with any choice but the first: the row that differs in one fact is offered, and both sides are told."""
    first = made.cell(BETA, 0.0, True, 0.0, True)
    rows = [made.row("R0", [made.cell(ALPHA, 2.0, True, made.FAR, False)], "o0"), made.row("R1", [first], "o1")]
    found = list(
        completeness.check(table([rows[0], replace(rows[1], when=(made.cell(ALPHA, -made.FAR, False, 2.0, False), first))]))
    )
    assert found[0].sentence == "No row of `table` covers {alpha: under 2, beta: beta_1 or beta_2}."
    assert found[0].next_step.startswith("Row R0 comes nearest: write `alpha: any` there instead of `2 or more`, add a row")


def test_two_rows_that_only_together_take_everything_are_both_named():
    """Neither of them alone hides the third."""
    rows = [
        made.row("R0", [made.cell(ALPHA, -made.FAR, False, 3.0, False)], "o0"),
        made.row("R1", [made.cell(ALPHA, 3.0, True, made.FAR, False)], "o1"),
        made.row("R2", [], "o0"),
    ]
    found = list(reachability.check(table(rows, "first_row")))
    assert found[0].sentence == "Row R2 can never apply: rows R0 and R1 before it take all its facts."


def example(facts: dict, expect: dict) -> list[str]:
    """What is said of a worked example of a table that gives o0 under 3 and o1 from 3 on."""
    low = made.row("R0", [made.cell(ALPHA, -made.FAR, False, 3.0, False)], "o0")
    book = table([low, made.row("R1", [], "o1")], "first_row")
    decision = replace(book.decisions["table"], examples=(Example("it", facts, expect, 9),))
    return [problem.sentence for problem in examples.check(replace(book, decisions={"table": decision}))]


@pytest.mark.parametrize(
    ("facts", "expect", "sentence"),
    [
        ({"alpha": 2}, {"outcome": "o0"}, None),
        ({"alpha": 2}, {"row": "R0", "outcome": "o0"}, None),
        ({}, {"unsettled": ["o1", "o0"], "ask_next": "alpha"}, None),
        ({"alpha": 2}, {"row": "R1", "outcome": "o0"}, "row R1 should give it, but it gives `o0` by row R0."),
        ({"alpha": 2}, {"outcome": "o7"}, "there is no outcome `o7`."),
        ({"alpha": 2}, {"unsettled": ["o0", "o1"]}, "it should be open between o0 and o1, but it gives `o0` by row R0."),
        (
            {"alpha": "unknown"},
            {"outcome": "o0"},
            "it should give `o0`, but it is open between o0 and o1, asking `alpha` next.",
        ),
        ({}, {"unsettled": ["o0", "o1"], "ask_next": "beta"}, "it should ask `beta` next, but asks `alpha`."),
        ({"alpha": "two"}, {"outcome": "o0"}, "alpha: `two` is not a number, allowed is a number such as 2.5."),
        ({"gamma": 1}, {"outcome": "o0"}, "gamma: is not asked here, allowed are alpha, beta."),
    ],
)
def test_worked_examples(facts, expect, sentence):
    """An outcome, a row, what is left open: each is compared, and what came out is told."""
    assert example(facts, expect) == ([] if sentence is None else [f"Worked example “it”: {sentence}"])


@pytest.mark.parametrize(
    ("wanted", "came", "agrees"),
    [
        (4132.2, 4132.24, True),
        (4132.2, 4132.26, False),
        (20, 20.49, True),
        (20, 20.51, False),
        (6.0, 6.04, True),
        (True, True, True),
    ],
)
def test_printed_numbers_agree_to_half_their_last_digit(wanted, came, agrees):
    """4132.2 is anything from 4132.15 to 4132.25."""
    assert same(wanted, came) is agrees


def test_both_branches_of_a_choice_of_message_are_seen():
    """Say(a if c else b, ...) says either; a list that is not written out has no number."""
    found = list(says.said_in('x = Say("a.b" if c else "a.c", [1.0, 2.0], words)', "m.py"))
    assert [(said.message, said.numbers, said.words) for said in found] == [("a.b", 2, -1), ("a.c", 2, -1)]


def test_problems_are_printed_for_people_for_code_hosts_and_as_data():
    """The same problem three times; what a code host reserves is escaped."""
    problem = Problem("rules/a.yml", 3, "100 % wrong, twice.", "Mend it.", "ranges")
    assert as_text([problem]) == "rules/a.yml:3: 100 % wrong, twice.\n    Mend it.  [ranges]"
    assert as_annotations([problem]) == "::error file=rules/a.yml,line=3,title=ranges::100 %25 wrong, twice. Mend it."
    assert as_annotations([Problem("rules/b.yml", 0, "Gone.")]) == "::error file=rules/b.yml,line=1::Gone."
    assert '"sentence": "100 % wrong, twice."' in as_json([problem])
