"""Work that takes several winters, and the page that goes on from an outcome: as they are written, as they are told, and what is told
when they are written wrongly."""

from pathlib import Path

import pytest

from generator.answers.compute import compute
from generator.checks import check_rulebook
from generator.pages.decisions import more_page
from generator.pages.scripts import after, onward
from tests.reading.test_weighed import EXAMPLES, read

SENTENCES = Path(__file__).resolve().parents[2] / "rules" / "messages" / "answers.yml"
ROW = "rows:\n  - {id: R1, when: {}, then: more, because: Frost kills., standing: our_judgement}\n"
SLOW = """outcomes:
  - id: more
    label: More
    says: More.
    spring: Leave the low shoot
    winters:
      - {do: Lay a cane, crop_pct: [80, 100], standing: our_judgement}
      - {do: Cut the old one off, standing: common_practice}
"""


def slow(folder, outcomes: str = SLOW):
    """A table of one outcome that takes two winters, with the guide's sentences, and the problems of reading it."""
    (folder / "rules" / "messages").mkdir(parents=True)
    (folder / "rules" / "messages" / "answers.yml").write_text(SENTENCES.read_text(encoding="utf-8"), encoding="utf-8")
    return read(folder, outcomes + ROW + EXAMPLES, "first_row")


def test_winters_are_read_and_answered(tmp_path):
    """The answer has the spring's work and each winter with its crop and standing."""
    book, problems = slow(tmp_path)
    assert problems == [] and [one for one in check_rulebook(book) if one.check != "ledger"] == []
    work = compute(book, "weighed", {"frost": "yes"})["work"]
    assert work["spring"] == "Leave the low shoot"
    assert [(one["do"], one["crop_pct"], one["standing"]) for one in work["winters"]] == [
        ("Lay a cane", [80, 100], "our_judgement"),
        ("Cut the old one off", [], "common_practice"),
    ]


def test_pages_say_the_crop_of_each_winter(tmp_path):
    """The page beside the decision and its script say what to do and the crop of the summer after."""
    book, _ = slow(tmp_path)
    table = book.decisions["weighed"]
    page = more_page(book, table)
    assert "<i>In spring:</i> Leave the low shoot." in page and "80 to 100\u00a0% of a full crop" in page
    assert after(table.outcomes[0])["winters"][1] == ["Cut the old one off", "", "common_practice"]


@pytest.mark.parametrize(
    ("good", "bad", "sentence", "line"),
    [
        ("[80, 100]", "[100, 80]", "The crop goes from 100 to 80 %.", 13),
        ("    winters", "    action: Prune\n    winters", "Outcome more has an action and winters.", 13),
    ],
)
def test_winters_written_wrongly_are_told(tmp_path, good: str, bad: str, sentence: str, line: int):
    """A crop from more to less, and winters beside an action: the sentence names what is wrong, the line is where."""
    _, problems = slow(tmp_path, SLOW.replace(good, bad))
    assert [(one.sentence, one.line) for one in problems] == [(sentence, line)]


@pytest.mark.parametrize(
    ("given", "check", "sentence"),
    [
        ("standing: published", "standings", "Winter 1 of `more` is `published` and names no source."),
        ("standing: published, sources: [nobody]", "references", "There is no source `nobody`."),
    ],
)
def test_winters_need_the_sources_of_their_standing(tmp_path, given: str, check: str, sentence: str):
    """What is published names a source that is there."""
    book, _ = slow(tmp_path, SLOW.replace("100], standing: our_judgement", f"100], {given}"))
    assert [one.sentence for one in check_rulebook(book) if one.check == check] == [sentence]


def test_a_way_on_leads_to_its_page(tmp_path):
    """The way is named after the page that it leads to, from the outcomes that name it."""
    book, _ = slow(tmp_path, SLOW.replace("spring:", "onward: weighed\n    spring:"))
    assert onward(book, book.decisions["weighed"], "../") == [{"title": "Weighed", "page": "../d/weighed.html", "outcomes": ["more"]}]
    assert compute(book, "weighed", {"frost": "yes"})["work"]["onward"] == "weighed"


def test_a_way_on_that_leads_nowhere_is_told(tmp_path):
    """It names a decision or a calculator."""
    book, _ = slow(tmp_path, SLOW.replace("spring:", "onward: weihged\n    spring:"))
    assert [one.sentence for one in check_rulebook(book)] == ["There is no decision or calculator `weihged`."]


@pytest.mark.parametrize(
    ("outcome", "page"),
    [("form_young", "young_vine"), ("renew_trunks", "structure_renewal"), ("lay_new_arm", "structure_renewal"), ("change_to_canes", "change_over")],
)
def test_the_system_leads_on_to_the_work_at_the_vine(rulebook, outcome: str, page: str):
    """A young block to the young vine, rebuilding to the renewal, a change of form to the way there."""
    ways = {name: way["page"] for way in onward(rulebook, rulebook.decisions["pruning_system"], "") for name in way["outcomes"]}
    assert ways[outcome] == f"d/{page}.html"
