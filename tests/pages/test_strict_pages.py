"""Every kind of page is light, asks no other host, runs under the strict policy, and is usable by everybody."""

import gzip
import re

import pytest

from tests.pages.conftest import KINDS

FORMS = {"decision", "calculator", "tally"}
ROOMS = [(390, 844), (810, 1080), (1280, 900)]
# In bytes: what issue and site.md allow on the first visit, gzip on the wire.
FORM_WIRE, PLAN_WIRE, LIST_WIRE, FORM_HTML, MOST_REQUESTS = 35 * 1024, 90 * 1024, 20 * 1024, 25 * 1024, 6
OTHER_WIRE = {"plan": PLAN_WIRE, "drawing": 30 * 1024}  # a drawing: up to six pictures and no script

MARK = "mark.svg"
# What a page fetches by itself: scripts, styles, the mark, pictures.
NAMED = re.compile(r'<(?:script|link|img)[^>]*?(?:src|href)="([^":#]+)"')

kinds = pytest.mark.parametrize("kind", KINDS)


def counts(line):
    """True for an error or warning; a page that must stand alone names no icon, and the browser then asks the host for its own."""
    return line.type in ("error", "warning") and not line.location["url"].endswith("/favicon.ico")


@pytest.fixture
def visit(page, served):
    """visit(path): the page, with all that it fetched and all that the browser complained of."""

    def go(path):
        page.sizes, page.complaints = {}, []
        page.on("response", lambda answer: page.sizes.update({answer.url: int(answer.headers.get("content-length", 0))}))
        page.on("console", lambda line: page.complaints.append(line.text) if counts(line) else None)
        page.on("pageerror", lambda error: page.complaints.append(str(error)))
        page.goto(served + path, wait_until="networkidle")
        return page

    return go


@kinds
def test_a_page_asks_only_its_own_host_and_breaks_no_policy(visit, served, kind):
    """No request leaves the site, and the strict policy has nothing to refuse."""
    page = visit(KINDS[kind])
    assert [url for url in page.sizes if not url.startswith(served)] == []
    assert page.complaints == []


def weighed(path):
    """What a first visit of a page takes over the wire, reckoned from the files that it names: the bytes of each with gzip, by name."""
    named = NAMED.findall(path.read_text(encoding="utf-8"))
    files = [path, *((path.parent / name).resolve() for name in named if not name.endswith(".html"))]
    return {file.name: len(gzip.compress(file.read_bytes(), 9)) for file in files}


@kinds
def test_a_first_visit_is_light(visit, kind, site):
    """Bytes on the wire and requests stay under the budget of the page's class; the browser fetches what was reckoned from the files."""
    page = visit(KINDS[kind])
    wire = sum(page.sizes.values())
    assert wire <= OTHER_WIRE.get(kind, FORM_WIRE if kind in FORMS else LIST_WIRE)
    assert len(page.sizes) <= MOST_REQUESTS
    # The browser may have the mark from another page.
    fetched = {url.rsplit("/", 1)[1]: size for url, size in page.sizes.items() if not url.endswith(MARK)}
    assert {name: size for name, size in weighed(site / KINDS[kind]).items() if name != MARK} == fetched


def test_every_form_page_is_light(site):
    """Each decision, calculator and tally, reckoned from its files: bytes on the first visit, requests, and HTML raw, whatever its table holds."""
    pages = [path for folder in ("d", "c") for path in (site / folder).glob("*.html") if ".more." not in path.name]
    heavy = {}
    for path in pages:
        sizes, html = weighed(path), path.stat().st_size
        if sum(sizes.values()) > FORM_WIRE or len(sizes) > MOST_REQUESTS or html > FORM_HTML:
            heavy[path.name] = (sum(sizes.values()), len(sizes), html)
    assert len(pages) > 25 and heavy == {}


def test_an_answer_comes_when_the_form_is_touched(visit):
    """Not before: what answers is no part of the first visit; and it is there before the button is pressed."""
    page = visit(KINDS["calculator"])
    assert not any(".answer.js" in url for url in page.sizes)
    page.locator("#form input").first.focus()
    page.wait_for_function("() => Boolean(Guide.page.answer)")
    assert {url.rsplit("/", 1)[1] for url in page.sizes} > {"answers.js", "yield_forecast.answer.js"}


def test_what_is_folded_away_stands_open_on_paper(page, served):
    """Parts under their headings, with scripts off too: nothing on paper has to be unfolded."""
    page.goto(served + KINDS["calculator"])
    folded = page.locator("details.fold table").first
    assert not folded.is_visible()
    page.emulate_media(media="print")
    assert folded.is_visible()


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
@kinds
def test_axe_finds_nothing(new_page, served, axe, kind, dark):
    """In light and dark, with an answer on the screen where there is a form."""
    page = new_page(dark=dark)
    page.goto(served + KINDS[kind])
    if page.locator("form#form").count():
        page.click("button[type=submit]")
        page.locator("#headline:not(:empty), .error:not(:empty)").first.wait_for()
    assert axe(page) == []


@kinds
def test_axe_finds_nothing_in_print(page, served, axe, kind):
    """Paper is held to the same rules."""
    page.goto(served + KINDS[kind])
    page.emulate_media(media="print")
    assert axe(page) == []


@pytest.mark.parametrize("room", ROOMS, ids=lambda room: str(room[0]))
def test_no_page_scrolls_sideways(new_page, served, room):
    """On phone, tablet and desk; wide tables scroll in their own frame."""
    page = new_page(*room)
    wide = []
    for path in KINDS.values():
        page.goto(served + path)
        if page.locator("form#form").count():
            page.click("button[type=submit]")
            page.locator("#headline:not(:empty), .error:not(:empty)").first.wait_for()
        if page.evaluate("document.documentElement.scrollWidth") > room[0]:
            wide.append(path)
    assert wide == []


@pytest.mark.parametrize("kind", ["home", "decision", "calculator", "tally", "plan"])
def test_targets_are_large_enough_for_gloves(new_page, served, kind):
    """Buttons, fields and links outside running text are at least 44 pixels high."""
    page = new_page(390, 844)
    page.goto(served + KINDS[kind])
    small = page.evaluate(
        """() => [...document.querySelectorAll("button, input[type=text], input[type=date], select, summary, label.tick, header a, footer a, .list a, .stages a")]
            .filter((one) => one.offsetParent && one.getBoundingClientRect().height < 44).map((one) => one.outerHTML.slice(0, 90))"""
    )
    assert small == []


def test_a_page_is_readable_with_scripts_off(new_page, served):
    """The table is whole, a long one on the page beside, and no dead form stands in the way."""
    page = new_page(java_script_enabled=False)
    page.goto(served + KINDS["decision"])
    page.get_by_role("link", name="the whole table").click()
    assert page.locator("table.rules tbody tr").count() > 10
    page.goto(served + KINDS["decision"])
    assert not page.locator("#form").is_visible()


@pytest.mark.parametrize(
    ("kind", "note", "below"),
    [
        ("decision", "The whole table stands on the page beside this one", "h2#the-whole-table"),
        ("calculator", "the worked example below shows how it is done", "h2#a-worked-example"),
        ("plan", "the stages below lead to the tables", ".stages a"),
    ],
)
def test_with_scripts_off_a_page_promises_only_what_it_holds(new_page, served, kind, note, below):
    """The note that stands for the form says what can be read instead, and that is there."""
    page = new_page(java_script_enabled=False)
    page.goto(served + KINDS[kind])
    assert note in page.locator("noscript").inner_text()
    assert page.locator(below).first.is_visible() and not page.locator("#form").is_visible()


def test_every_calculator_has_the_worked_examples_that_its_note_promises(site):
    """One on its page and all beside it, also without a published check."""
    for path in (site / "c").glob("*.html"):
        heading = 'id="worked-examples"' if ".more." in path.name else 'id="a-worked-example"'
        assert heading in path.read_text(encoding="utf-8"), path.name
