"""What a fact says is assumed: read as a number, refused where it does not fit, shown as assumed with how sure that is."""

import pytest

from generator.answers.compute import describe
from generator.answers.given import given
from generator.calculators.facts import ASSUMED, ENTERED, UNKNOWN
from generator.pages.questions import question
from generator.reading.read import read_rulebook
from tests.reading.test_weighed import EXAMPLES, OUTCOMES, ROWS, RULES

HEAD = "title: Weighed\nquestion: Which?\nwhy: Because.\nstage: assess\npolicy: collect\nfacts: [frost]\n"
SAID = "standing: our_judgement, because: Frost is rare."
KINDS = {
    "yes_no": "kind: yes_no",
    "choice": "kind: choice\nchoices: [{id: low, label: Low}, {id: high, label: High}]",
    "number": "kind: number\nunit: m\nrange: [0, 5]\nstep: 0.1",
    "date": "kind: date",
    "text": "kind: text",
}


def book_and_problems(folder, kind: str, assume: str):
    """The small rules with the fact `frost` of the kind, assuming something."""
    fact = RULES["facts/frost.yml"].replace("kind: yes_no", KINDS[kind]) + f"assume: {{{assume}}}\n"
    table = {"decisions/weighed.yml": HEAD + OUTCOMES + ROWS + EXAMPLES} if kind == "yes_no" else {}
    for name, text in {**RULES, "facts/frost.yml": fact, **table}.items():
        path = folder / "rules" / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
    return read_rulebook(folder / "rules")


@pytest.mark.parametrize(
    ("kind", "said", "number"),
    [
        ("yes_no", "choice: no", 0.0),
        ("yes_no", 'choice: "yes"', 1.0),
        ("choice", "choice: high", 1.0),
        ("number", "number: 0", 0.0),
    ],
)
def test_what_is_assumed_is_a_number(tmp_path, kind, said, number):
    """A choice is its place, yes is 1; the standing and the reason stay with it."""
    book, problems = book_and_problems(tmp_path, kind, f"{said}, {SAID}")
    assumed = book.facts["frost"].assumed
    assert problems == [] and (assumed.number, assumed.standing, assumed.because) == (number, "our_judgement", "Frost is rare.")


@pytest.mark.parametrize(
    ("kind", "said", "wrong"),
    [
        ("choice", "choice: hihg", "`assume`: `choice` names `hihg`, which is not one of its choices."),
        ("choice", "number: 1", "`assume`: `number` goes with numbers only."),
        ("number", "choice: low", "`assume`: `choice` goes with kinds choice and yes_no only."),
        ("date", "number: 3", "`assume`: `because` is given, but nothing can be assumed of a date."),
        ("text", "number: 3", "`assume`: `because` is given, but nothing can be assumed of a text."),
    ],
)
def test_what_does_not_fit_the_fact_is_told(tmp_path, kind, said, wrong):
    """The author hears which word is wrong, at its line."""
    problems = book_and_problems(tmp_path, kind, f"{said}, {SAID}")[1]
    assert [problem.sentence for problem in problems] == [wrong]


def test_an_assumed_answer_counts_and_is_told_as_assumed(tmp_path):
    """It counts until somebody answers, and the form and the description say how sure it is; asked in vain it is not assumed."""
    book, _ = book_and_problems(tmp_path, "yes_no", f"choice: no, {SAID}")
    statuses = [given(book, ["frost"], inputs).facts.statuses for inputs in ({}, {"frost": "yes"}, {"frost": "unknown"})]
    assert statuses == [[ASSUMED], [ENTERED], [UNKNOWN]]
    asked = describe(book, "weighed")["inputs"][0]
    assert (asked["default"], asked["default_standing"]) == ("no", "our_judgement")
    assert question(book, book.facts["frost"]).standing == "our judgement"


def test_a_fact_has_a_default_or_says_itself_what_is_assumed(tmp_path):
    """Two defaults would leave open which of them counts."""
    said = f"number: 1, {SAID}}}\ndefault: some_value\n#{{"
    problems = book_and_problems(tmp_path, "number", said)[1]
    assert [problem.sentence for problem in problems] == ["`assume` goes without `default` only: a fact has one or the other."]
