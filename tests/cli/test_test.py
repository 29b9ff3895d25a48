"""test: a run says what it left out, and pytest's closing line is the last."""

import subprocess
import sys

import pytest

TESTS = '''
def test_plain(): pass
def test_in_a_browser(page): pass
def test_many(amount): assert amount(20, 100) == {expected}
'''


@pytest.fixture
def run(project_root, tmp_path):
    """run(*options): pytest with this project's settings on three small tests; gives the lines of its output."""

    def pytest_on_three(*options: str) -> list[str]:
        file = tmp_path / "test_three.py"
        file.write_text(TESTS.format(expected=100 if "--deep" in options else 20))
        settings = ["-c", "pyproject.toml", "--rootdir", str(tmp_path), "-p", "tests.conftest", "-p", "no:cacheprovider"]
        words = [sys.executable, "-m", "pytest", *settings, *options, str(file)]
        done = subprocess.run(words, cwd=project_root, capture_output=True, text=True, check=False)
        return done.stdout.splitlines()

    return pytest_on_three


def test_what_no_browser_leaves_out_is_counted_by_file(run):
    """An opt-out that hides nothing."""
    lines = run("--no-browser")
    assert "1 browser tests, because of --no-browser:" in lines
    assert "      1 in test_three.py" in lines
    assert "2 passed, 1 deselected" in lines[-1]


def test_what_is_left_to_the_deep_run_is_said(run):
    """How many cases, of which tests."""
    lines = run("--no-browser")
    assert "80 cases, left to a deep run (`python3 -m generator test --deep`):" in lines
    assert "    20 of 100 in test_three.py::test_many" in lines


def test_a_deep_run_leaves_nothing(run):
    """Then the tests take their larger numbers."""
    lines = run("--no-browser", "--deep")
    assert not any("left to a deep run" in line for line in lines)
    assert "2 passed" in lines[-1]


def test_a_missing_browser_fails_a_browser_test(run, monkeypatch):
    """Nothing is skipped."""
    monkeypatch.setenv("PATH", "/nowhere")
    monkeypatch.setenv("PRUNING_GUIDE_BROWSER", "/no/such/browser")
    lines = run()
    assert "1 error" in lines[-1] and "skipped" not in lines[-1]
    assert any("names /no/such/browser, which is not a program" in line for line in lines)
