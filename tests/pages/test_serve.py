"""`serve` shows what changed at once, and outlives a broken rule. A copy of the project is served by the real command."""

import shutil
import subprocess
import sys
import time
import urllib.request

import pytest

from tests.serving import free_port

# A build on a busy machine takes its time; what is tested is that the change arrives.
# A bound for a machine that is busy with other things, not a measure of speed.
LONGEST_S = 600
COPIED = ("rules", "generator", "docs", "mkdocs.yml")


@pytest.fixture(scope="module")
def project(tmp_path_factory, project_root):
    """A copy of what the site is made from, to be changed by the tests."""
    folder = tmp_path_factory.mktemp("project")
    for name in COPIED:
        place = project_root / name
        if place.is_dir():
            shutil.copytree(place, folder / name, ignore=shutil.ignore_patterns("__pycache__"))
        else:
            shutil.copy(place, folder / name)
    return folder


@pytest.fixture(scope="module")
def server(project, tmp_path_factory):
    """The address of the copy, served until the tests are over."""
    port = free_port()
    log = (tmp_path_factory.mktemp("log") / "serve.txt").open("w")
    words = [sys.executable, "-m", "mkdocs", "serve", "--livereload", "--dev-addr", f"127.0.0.1:{port}"]
    running = subprocess.Popen(words, cwd=project, stdout=log, stderr=log)
    yield f"http://127.0.0.1:{port}/"
    running.terminate()
    running.wait(LONGEST_S)


def arrives(address, text, there=True):
    """True as soon as the page holds the text (or holds it no longer)."""
    end = time.monotonic() + LONGEST_S
    while time.monotonic() < end:
        try:
            with urllib.request.urlopen(address, timeout=LONGEST_S) as answer:
                if (text in answer.read().decode()) == there:
                    return True
        except OSError:
            pass
        time.sleep(0.5)
    return False


@pytest.fixture
def change(project, server):
    """change(path, old, new): changes a file of the copy. It stays changed: the copy is these tests' own, and each change that is
    served costs a build of the site."""

    def write(path, old, new):
        text = (project / path).read_text(encoding="utf-8")
        assert old in text
        (project / path).write_text(text.replace(old, new), encoding="utf-8")

    assert arrives(server, "The pruning guide")
    return write


def test_a_changed_rule_is_on_its_page(server, change):
    """A new wording of a fact reaches its page."""
    change("rules/facts/row_spacing_m.yml", "ask: ", "ask: Tell me - ")
    assert arrives(server + "f/row_spacing_m.html", "Tell me - ")


def test_a_changed_template_is_on_the_pages(server, change):
    """A template counts as well as a rule."""
    change("generator/pages/templates/fact.md.jinja", "## How to find it out", "## How you find out")
    assert arrives(server + "f/climate.html", "How you find out")


def test_a_changed_style_is_served(server, change):
    """So does an asset."""
    change("generator/pages/assets/guide.css", "#f6f3ea", "#f6f3eb")
    assert arrives(server + "assets/guide/guide.css", "#f6f3eb")


def test_a_changed_calculator_is_compiled_again(server, change):
    """And a calculator, in its script and in the worked examples of its page."""
    change("generator/calculators/vine_density.py", "inputs.row_spacing_m * inputs.vine_spacing_m", "inputs.vine_spacing_m * inputs.row_spacing_m")
    assert arrives(server + "assets/guide/c/vine_density.answer.js", ".vine_spacing_m*")


def test_a_broken_rule_is_shown_and_the_server_lives_on(server, change):
    """On the page of the broken item and on the start page, in words; mended, it is gone."""
    change("rules/facts/climate.yml", "kind: choice", "kind: choise")
    assert arrives(server + "f/climate.html", "rules/facts/climate.yml:")
    assert arrives(server, "not right")
    assert arrives(server + "f/row_spacing_m.html", "not right", there=False)
    change("rules/facts/climate.yml", "kind: choise", "kind: choice")
    assert arrives(server + "f/climate.html", "rules/facts/climate.yml:", there=False)
