"""A page for the hands is read with all that it claims, in the order of the work."""

from pathlib import Path
from shutil import copytree

from generator.checks import check_rulebook
from generator.reading.read import read_rulebook

GOOD = Path(__file__).parent / "rules"


def test_a_page_for_the_hands_is_read(good):
    """Steps keep their order, each with its line, its standing and its sources."""
    work = good.hands["tie_it"]
    assert [(step.text, step.line, step.standing) for step in work.steps] == [
        ("Bend it slowly.", 9, "common_practice"),
        ("Leave the gap to the neighbour.", 10, "published"),
    ]
    assert [cite.id for cite in work.steps[1].cites] == ["hg-05"] and work.signs == ()


def test_all_that_it_claims_is_in_its_order(good):
    """From when it is done to how one sees that it is right: what checks and pages walk over leaves nothing out."""
    assert [said.text for said in good.hands["tie_it"].says] == [
        "After the cut.",
        "Bend it slowly.",
        "Leave the gap to the neighbour.",
        "Never by force.",
        "The end holds.",
    ]


def test_pages_stand_in_the_order_of_the_work(tmp_path):
    """By number, and of one number by id; the order of the files does not count."""
    rules = copytree(GOOD, tmp_path / "rules")
    text = (rules / "hands/tie_it.yml").read_text(encoding="utf-8")
    for name, number in (("zealous_start", 1), ("a_later_one", 3), ("see_it", 2)):
        (rules / f"hands/{name}.yml").write_text(text.replace("number: 2", f"number: {number}"), encoding="utf-8")
    book, problems = read_rulebook(rules)
    assert (list(book.hands), problems) == (["zealous_start", "see_it", "tie_it", "a_later_one"], [])


def test_what_only_such_a_page_cites_is_cited(tmp_path):
    """Evidence that a step rests on is in use; without the page it would be told as never cited."""
    rules = copytree(GOOD, tmp_path / "rules")
    evidence = (rules / "evidence/hg-05.yml").read_text(encoding="utf-8")
    (rules / "evidence/zz-01.yml").write_text(evidence, encoding="utf-8")
    path = rules / "hands/tie_it.yml"
    path.write_text(path.read_text(encoding="utf-8").replace("hg-05", "zz-01"), encoding="utf-8")
    told = [problem.sentence for problem in check_rulebook(read_rulebook(rules)[0]) if "zz-01" in problem.sentence and "ledger" not in problem.sentence]
    assert told == []
    path.unlink()
    assert "The evidence `zz-01` is never cited." in [problem.sentence for problem in check_rulebook(read_rulebook(rules)[0])]
