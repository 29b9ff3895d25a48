"""What pages say of the rulebook, before any host."""

import json
import re

from generator.build import build_pages
from generator.pages.broken import with_problems
from generator.pages.cites import is_long
from generator.pages.jinja import markdown
from generator.pages.lists import count
from generator.pages.paths import FOLDERS, page_of_rule
from generator.problems import Problem
from generator.reading.by_node import once
from generator.reading.items import STANDINGS

TEXT = "Row spacing * 2 < 3 & [so] _on_"


def test_every_item_has_its_page(built, rulebook):
    """Path is kind and id, never a title; facts that are asked by node share one."""
    kinds = {"s": rulebook.stages, "d": rulebook.decisions, "c": rulebook.calculators, "f": once(rulebook), "v": rulebook.values}
    kinds |= {"src": rulebook.sources, "t": rulebook.terms}
    assert [f"{folder}/{item}.md" for folder, items in kinds.items() for item in items if f"{folder}/{item}.md" not in built] == []


def test_every_row_has_an_anchor_and_its_reason(built, rulebook):
    """A link to a row leads to it; the rows of a long table stand on the page beside it."""
    for table in rulebook.decisions.values():
        page = built[f"d/{table.id}.more.md" if is_long(table) else f"d/{table.id}.md"]
        assert [row.id for row in table.rows if f'<tr id="{row.id}">' not in page] == []


def test_an_edition_shows_both_figures(project_root):
    """The local value, and the guide's own beside it with its digest."""
    page = build_pages(edition=project_root / "tests/editions/tiny")["v/tip_gap_m.md"]
    assert "What this edition replaced" in page and "Digest of the original" in page


def test_standings_are_counted_from_the_rulebook(rulebook):
    """Every row stands on exactly one."""
    rows = sum(len(table.rows) for table in rulebook.decisions.values())
    assert sum(count(rulebook, standing).rows for standing in STANDINGS) == rows


def test_text_of_an_author_is_no_markup():
    """Signs of Markdown and HTML are taken for themselves."""
    assert markdown(TEXT) == "Row spacing \\* 2 &lt; 3 &amp; \\[so\\] \\_on\\_"


def test_a_number_is_no_list_mark():
    """81.8 stays as it is; `81. ` at the start of a line would begin a list and is kept from it."""
    assert [markdown("81.8 %"), markdown("81. Spurs")] == ["81.8 %", "81\\. Spurs"]


def test_no_page_shows_a_backslash(site):
    """What keeps a character from being a Markdown mark is gone from the finished page."""
    pages = {path: path.read_text(encoding="utf-8") for path in site.rglob("*.html")}
    assert [path.name for path, text in pages.items() if "\\" in re.sub(r"<script.*?</script>", "", text, flags=re.DOTALL)] == []


def test_no_page_has_a_style_or_a_script_in_it(built):
    """The strict policy needs no exception for our pages."""
    pages = {path: text for path, text in built.items() if path.endswith(".md")}
    found = re.compile(r"<style|<script(?! src=)| style=| on\w+=")
    assert [path for path, text in pages.items() if found.search(text)] == []


def test_scripts_are_classic_and_need_no_eval(built):
    """They run from a folder on disk and under default-src 'self'."""
    scripts = {path: text for path, text in built.items() if path.endswith(".js")}
    found = re.compile(r"\beval\(|new Function|innerHTML|^(import|export) |\bfetch\(", re.MULTILINE)
    assert [path for path, text in scripts.items() if found.search(text)] == []


def test_a_broken_item_is_told_on_its_page_and_at_the_start():
    """The last sound page stays under the problem."""
    problem = Problem("rules/facts/climate.yml", 3, "`kind` is not known.", "Write choice.")
    pages = with_problems({"index.md": "# Start\n\nHello\n", "f/climate.md": "# Climate\n\nCool\n"}, [problem])
    for path, rest in (("index.md", "Hello"), ("f/climate.md", "Cool")):
        assert "rules/facts/climate.yml:3: `kind` is not known." in pages[path] and rest in pages[path]


def test_a_page_that_was_never_sound_is_made_of_its_problem():
    """The server has something to show from the first moment."""
    pages = with_problems({}, [Problem("rules/values/x.yml", 1, "Empty.")])
    assert pages["v/x.md"].startswith("# This page cannot be made yet")


def test_a_rule_file_knows_its_page():
    """Kinds without a page of their own have none."""
    assert [page_of_rule(path) for path in ("rules/facts/a.yml", "rules/units.yml", "rules/messages/a.yml")] == ["f/a.md", None, None]


def test_the_page_for_unknown_addresses_knows_every_folder(site):
    """It stands alone, so the folders are written in it by hand."""
    text = (site / "404.html").read_text(encoding="utf-8")
    assert json.loads(re.search(r"folders = (\[.*?\]);", text)[1]) == list(FOLDERS.values())


def test_every_page_leads_to_what_has_changed(site):
    """At its foot; the page for unknown addresses leads to the start only."""
    pages = {path: path.read_text(encoding="utf-8") for path in site.rglob("*.html") if path.name != "404.html"}
    foot = re.compile(r'<footer.*href="[./]*changes\.html".*</footer>', re.DOTALL)
    assert [path.name for path, text in pages.items() if not foot.search(text)] == []
