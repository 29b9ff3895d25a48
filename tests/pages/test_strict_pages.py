"""Every kind of page is light, asks no other host, runs under the strict policy, and is usable by everybody."""

import pytest

from tests.pages.conftest import KINDS

FORMS = {"decision", "calculator", "tally"}
ROOMS = [(390, 844), (810, 1080), (1280, 900)]
# In bytes: what issue and site.md allow on the first visit, gzip on the wire.
FORM_WIRE, PLAN_WIRE, LIST_WIRE, FORM_HTML, MOST_REQUESTS = 35 * 1024, 90 * 1024, 20 * 1024, 25 * 1024, 6
OTHER_WIRE = {"plan": PLAN_WIRE, "drawing": 30 * 1024}  # a drawing: up to six pictures and no script

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


@kinds
def test_a_first_visit_is_light(visit, kind, site):
    """Bytes on the wire and requests stay under the budget of the page's class."""
    page = visit(KINDS[kind])
    wire = sum(page.sizes.values())
    assert wire <= OTHER_WIRE.get(kind, FORM_WIRE if kind in FORMS else LIST_WIRE)
    assert len(page.sizes) <= MOST_REQUESTS


@pytest.mark.parametrize("folder", ["d", "c"])
def test_every_form_page_is_small(site, folder):
    """The HTML of a decision or calculator stays under 25 KB raw, whatever its table holds."""
    heavy = {path.name: path.stat().st_size for path in (site / folder).glob("*.html") if ".more." not in path.name}
    assert {name: size for name, size in heavy.items() if size > FORM_HTML} == {}


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
@kinds
def test_axe_finds_nothing(new_page, served, axe, kind, dark):
    """In light and dark, with an answer on the screen where there is a form."""
    page = new_page(dark=dark)
    page.goto(served + KINDS[kind])
    if page.locator("form#form").count():
        page.click("button[type=submit]")
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
        ("calculator", "the worked examples below show how it is done", "h2#worked-examples"),
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
    """Also those without a published check."""
    pages = [path for path in (site / "c").glob("*.html")]
    assert [path.name for path in pages if 'id="worked-examples"' not in path.read_text(encoding="utf-8")] == []
