"""The ledger of ids: it only grows, and every change of an id that was published is told."""

from pathlib import Path

import pytest

from generator.pages.site import site_pages
from generator.reading.ledger import PAGES, add_missing, ledger_faults, missing, vanished
from generator.reading.read import read_rulebook
from generator.reading.rulebook import Rulebook

TODAY = "2026-11-25"


@pytest.fixture
def listed(rules: Path) -> Path:
    """Rules whose ids are all listed."""
    add_missing(rules, TODAY)
    return rules


def faults(rules: Path) -> list[str]:
    """What is told of a ledger, sentence by sentence."""
    book, problems = read_rulebook(rules)
    assert problems == []
    return [problem.sentence for problem in ledger_faults(book)]


def test_every_id_is_listed_after_adding(listed: Path) -> None:
    """Adding once leaves nothing missing, and adding again changes nothing."""
    text = (listed / "ids.yml").read_text()
    assert faults(listed) == []
    assert add_missing(listed, "2027-01-01") == []
    assert (listed / "ids.yml").read_text() == text


def test_lines_that_are_there_stay_as_they_are(listed: Path) -> None:
    """Comments, order and spacing of a hand-kept ledger survive; new lines stand at the end of their part."""
    path = listed / "ids.yml"
    kept = path.read_text().replace("  climate: {", "  # asked first\n  climate:   {")
    path.write_text(kept)
    (listed / "facts" / "aspect.yml").write_text(
        (listed / "facts" / "severe_winters.yml").read_text().replace("SW", "AS")
    )
    assert add_missing(listed, "2027-01-01") == ["fact aspect"]
    after = path.read_text().splitlines()
    assert [line for line in after if "aspect" not in line] == kept.splitlines()
    assert after[after.index("choice:") - 1] == "  aspect: {since: 2027-01-01, code: AS}"


def test_rows_outcomes_and_choices_are_listed_under_what_they_belong_to(rules: Path) -> None:
    """Links and printed cards name them; rows made from varieties follow from the varieties."""
    found = missing(read_rulebook(rules)[0])
    assert "wood.B2" in found["row"]
    assert "wood.usable" in found["outcome"]
    assert list(found["choice"]) == ["climate.cool", "climate.warm", "climate.hot", "variety.other"]
    assert not any(name.startswith("variety_lists") for name in found["row"])


def test_an_id_that_is_not_listed_is_told(listed: Path) -> None:
    """A new item needs its line."""
    (listed / "terms" / "arm.yml").write_text("term: arm\ndefinition: A limb.\n")
    assert faults(listed) == ["The term `arm` is not in the ledger of ids."]


def test_an_id_that_is_not_listed_is_told_where_it_stands(rules: Path) -> None:
    """At the item's line, a row's at its own, a page's in the ledger; never at a line that is none."""
    told = {problem.sentence: problem for problem in ledger_faults(read_rulebook(rules)[0])}
    row = told["The row `wood.B2` is not in the ledger of ids."]
    lines = (rules.parent / row.path).read_text().splitlines()
    assert (row.path, "id: B2" in lines[row.line - 1]) == ("rules/decisions/wood.yml", True)
    assert told["The choice `climate.cool` is not in the ledger of ids."].path == "rules/facts/climate.yml"
    assert told["The unit `m` is not in the ledger of ids."].path == "rules/units.yml"
    assert told["The page `index` is not in the ledger of ids."].path == "rules/ids.yml"
    assert all(problem.line > 0 and (problem.path == "rules/ids.yml" or (rules.parent / problem.path).is_file()) for problem in told.values())


def test_a_renamed_id_is_told_with_its_new_name(listed: Path) -> None:
    """Renaming is the usual way to lose an id."""
    (listed / "cautions" / "cutting_tools.yml").rename(listed / "cautions" / "cutting_tool.yml")
    book, _ = read_rulebook(listed)
    told = [problem for problem in ledger_faults(book) if problem.path == "rules/ids.yml"]
    assert [entry.id for entry in vanished(book)] == ["cutting_tools"]
    assert told[0].next_step.startswith("Did you mean `cutting_tool`, which is new?")


def test_a_retired_id_may_go(listed: Path) -> None:
    """With its reason it is no longer missed."""
    path = listed / "ids.yml"
    path.write_text(
        path.read_text().replace(
            "cutting_tools: {since: 2026-11-25}",
            "cutting_tools: {since: 2026-11-25, state: retired, reason: Said elsewhere.}",
        )
    )
    (listed / "cautions" / "cutting_tools.yml").unlink()
    assert faults(listed) == []


def test_a_retired_id_may_not_come_back(listed: Path) -> None:
    """An old link would mean something else."""
    path = listed / "ids.yml"
    path.write_text(
        path.read_text().replace(
            "cutting_tools: {since: 2026-11-25}", "cutting_tools: {since: 2026-11-25, state: retired, reason: Gone.}"
        )
    )
    assert faults(listed) == ["The caution `cutting_tools` is retired, and yet there is one."]


def test_an_id_moves_to_one_that_is_there(listed: Path) -> None:
    """A link to the old one has to end somewhere."""
    path = listed / "ids.yml"
    path.write_text(
        path.read_text().replace(
            "term:\n", "term:\n  arm: {since: 2026-11-25, state: moved, to: cordn, reason: One word.}\n"
        )
    )
    assert faults(listed) == ["The term `arm` moved to `cordn`, and there is none."]


def test_a_published_code_does_not_change(listed: Path) -> None:
    """Printed links carry it."""
    path = listed / "facts" / "climate.yml"
    path.write_text(path.read_text().replace("code: CL", "code: CM"))
    assert faults(listed) == ["The fact `climate` has the code CM; it was published as CL."]


def test_two_facts_have_two_codes(rules: Path) -> None:
    """Even before they are listed."""
    path = rules / "facts" / "climate.yml"
    path.write_text(path.read_text().replace("code: CL", "code: SC"))
    book, _ = read_rulebook(rules)
    assert "The fact `sound_cordon_pct` has the code SC, which `climate` has." in [
        problem.sentence for problem in ledger_faults(book)
    ]


def test_the_code_of_a_retired_fact_is_not_given_again(listed: Path) -> None:
    """A printed link with the old code would fill in the new fact."""
    path = listed / "ids.yml"
    path.write_text(
        path.read_text().replace(
            "fact:\n", "fact:\n  heat: {since: 2026-11-24, code: CL, state: retired, reason: Gone.}\n"
        )
    )
    assert faults(listed) == ["The fact `climate` has the code CL, which `heat` has."]


def test_a_ledger_that_cannot_be_read_is_not_written(listed: Path) -> None:
    """Adding to it would lose what it says."""
    (listed / "ids.yml").write_text("fact: [climate\n")
    with pytest.raises(ValueError, match="rules/ids.yml:1: A bracket"):
        add_missing(listed, TODAY)


def test_every_page_that_no_item_has_is_listed(rulebook: Rulebook, project_root: Path) -> None:
    """The ledger's fixed pages are those that the site writes outside the folders of items, and the one for lost links."""
    pages = {path.removesuffix(".md") for path in site_pages(rulebook, project_root / "docs") if "/" not in path}
    assert pages | {"404"} == set(PAGES)
