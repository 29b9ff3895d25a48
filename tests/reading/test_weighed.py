"""Tables that collect: weights instead of outcomes in rows, sums in outcomes, and what is told when they are mixed up."""

from pathlib import Path

import pytest

from generator.checks import check_rulebook, weighing
from generator.reading.read import read_rulebook
from generator.reading.tables import Span

RULES = {
    "units.yml": "m: {symbol: m, name: metre, pint: metre, digits: 2}\n",
    "stages/assess.yml": "number: 1\ntitle: Assess\nquestion: What?\nintro: Look.\n",
    "facts/frost.yml": "label: Frost\nask: Frost?\nobserve: Look.\nkind: yes_no\nlifetime: block\ncode: FR\nstage: assess\n",
}
HEAD = "title: Weighed\nquestion: Which?\nwhy: Because.\nstage: assess\npolicy: {policy}\nfacts: [frost]\n"
OUTCOMES = "outcomes:\n  - {id: less, label: Less, says: Less., sum: under 1}\n  - {id: more, label: More, says: More., sum: 1 or more}\n"
ROWS = "rows:\n  - {id: R1, when: {frost: yes}, weight: 2, because: Frost kills., standing: our_judgement}\n"
EXAMPLES = "examples:\n  - {name: Frost, facts: {frost: yes}, expect: {row: R1, outcome: more}}\n"


def read(folder: Path, table: str, policy: str = "collect"):
    """The rulebook of a small folder with the table, and its problems."""
    for name, text in {**RULES, "decisions/weighed.yml": HEAD.format(policy=policy) + table}.items():
        path = folder / "rules" / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
    return read_rulebook(folder / "rules")


def test_sums_and_weights_are_read(tmp_path):
    """A row has its weight and no outcome; an outcome has its sums; the worked example comes out."""
    book, problems = read(tmp_path, OUTCOMES + ROWS + EXAMPLES)
    table = book.decisions["weighed"]
    assert problems == [] and [one for one in check_rulebook(book) if one.check != "ledger"] == []
    assert (table.rows[0].weight, table.rows[0].then) == (2.0, "")
    assert table.outcomes[1].sums == (Span(1.0, True, 1e300, False),)


@pytest.mark.parametrize(
    ("table", "policy", "sentence"),
    [
        (
            OUTCOMES + ROWS.replace("weight: 2", "then: more"),
            "collect",
            "Row R1 lacks `weight`: rows of the policy `collect` are weighed.",
        ),
        (
            OUTCOMES + ROWS.replace("weight: 2", "weight: 2, then: more"),
            "collect",
            "Row R1 has `then`: rows of the policy `collect` are weighed.",
        ),
        (
            OUTCOMES.replace(", sum: under 1", "") + ROWS,
            "collect",
            "Outcome less lacks `sum`: rows of the policy `collect` are weighed.",
        ),
        (
            OUTCOMES.replace("under 1", "below") + ROWS,
            "collect",
            "Outcome less: the sum `below` cannot be read as numbers.",
        ),
        (
            OUTCOMES + ROWS.replace("weight: 2", "then: more"),
            "first_row",
            "Outcome less has `sum`: only rows of the policy `collect` are weighed.",
        ),
        (OUTCOMES + ROWS, "first_row", "Row R1 lacks `then`: only rows of the policy `collect` are weighed."),
    ],
)
def test_what_is_mixed_up_is_told(tmp_path, table, policy, sentence):
    """Each row and outcome says what its policy does not take."""
    _, problems = read(tmp_path, table + EXAMPLES, policy)
    assert sentence in [problem.sentence for problem in problems]


def test_sums_that_leave_something_out_or_overlap(tmp_path):
    """The weights can come to 0 and 2; each needs one outcome, not none and not two."""
    book, _ = read(
        tmp_path,
        OUTCOMES.replace("under 1", "under 0").replace("1 or more", "0 or more").replace("under 0", "under 3")
        + ROWS
        + EXAMPLES,
    )
    assert [one.sentence for one in weighing.check(book)] == ["The sum 0 gives both `less` and `more`."]
    book, _ = read(tmp_path, OUTCOMES.replace("under 1", "under 0") + ROWS + EXAMPLES)
    assert [one.sentence for one in weighing.check(book)] == [
        "The weights can come to 0, and no outcome has that sum.",
        "No sum that the weights can come to gives `less`.",
    ]
