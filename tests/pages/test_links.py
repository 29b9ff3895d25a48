"""No page leads nowhere, on either host."""

from tests.links import dead_links
from tests.other_host import build


def test_the_site_has_no_dead_link(site):
    """Files and anchors alike."""
    assert dead_links(site) == []


def test_another_host_has_no_dead_link(built, tmp_path):
    """The same Markdown rendered by a second host leads nowhere wrong."""
    build(built, tmp_path)
    assert dead_links(tmp_path) == []


def test_another_host_passes_forms_and_tables_through(built, tmp_path):
    """HTML in the Markdown reaches the reader as it was written."""
    build(built, tmp_path)
    form, table = ((tmp_path / f"d/{name}.html").read_text(encoding="utf-8") for name in ("pruning_system", "pruning_system.more"))
    assert '<form class="form" id="form" novalidate hidden>' in form
    assert '<table class="rules">' in table and "&lt;td" not in form + table


def test_a_planted_dead_link_is_found(tmp_path):
    """The checker bites: a missing file, a missing anchor, another host."""
    (tmp_path / "a.html").write_text('<p id="x"></p><a href="b.html"></a><a href="#x"></a><a href="#y"></a><a href="https://b.example/"></a>')
    assert dead_links(tmp_path) == ["a.html: b.html", "a.html: #y", "a.html: https://b.example/"]
