"""test: a run says what it measured and what it left out, and pytest's closing line is the last."""

import subprocess
import sys

import pytest

TESTS = '''
import pytest
def test_plain(): pass
def test_in_a_browser(page): pass
def test_many(amount): assert amount(20, 100) == {expected}
@pytest.mark.parametrize("part", [1, 2])
def test_telling(told, part): told(1000 * part, "random tables"); told(part, "gaps found", of=2); told.compared("V8", 5, 0)
'''
EXPECTED = {("--deep",): 100, ("--deep", "--deep-divided-by=5"): 20}
TWO_WORKERS = ("-n", "2", "--dist", "load")  # one test each in turn, so that both have something to tell


@pytest.fixture
def run(project_root, tmp_path):
    """run(*options): pytest with this project's settings on a few small tests; gives the lines of its output."""

    def pytest_on_few(*options: str) -> list[str]:
        file = tmp_path / "test_few.py"
        file.write_text(TESTS.format(expected=EXPECTED.get(tuple(one for one in options if one.startswith("--deep")), 20)))
        settings = ["-c", "pyproject.toml", "--rootdir", str(tmp_path), "-p", "tests.conftest", "-p", "no:cacheprovider"]
        words = [sys.executable, "-m", "pytest", *settings, *options, str(file)]
        done = subprocess.run(words, cwd=project_root, capture_output=True, text=True, check=False)
        return done.stdout.splitlines()

    return pytest_on_few


def test_what_no_browser_leaves_out_is_counted_by_file(run):
    """An opt-out that hides nothing."""
    lines = run("--no-browser")
    assert "1 browser tests, because of --no-browser:" in lines
    assert "      1 in test_few.py" in lines
    assert "4 passed, 1 deselected" in lines[-1]


def test_what_is_left_to_the_deep_run_is_said(run):
    """How many cases, of which tests."""
    lines = run("--no-browser")
    assert "80 cases, left to a deep run (`python3 -m generator test --deep`):" in lines
    assert "    20 of 100 in test_few.py::test_many" in lines


def test_a_deep_run_has_the_proofs_alone(run):
    """With their larger numbers: what uses `amount` or `told`; how many others it leaves out is said."""
    lines = run("--no-browser", "--deep")
    assert not any("left to a deep run" in line for line in lines)
    assert "2 tests that are no proofs by number: a deep run has none of them." in lines
    assert "3 passed, 2 deselected" in lines[-1]


def test_a_share_of_the_deep_run_is_not_recorded(run):
    """One case in five, to try it out."""
    lines = run("--no-browser", "--deep", "--deep-divided-by=5")
    assert "Not recorded, because it was a part or a share of the deep run." in lines
    assert "3 passed, 2 deselected" in lines[-1]


def test_what_was_measured_is_added_up(run):
    """What is told in the same words is one line; calls of engines are added up at the end."""
    lines = run("--no-browser")
    assert "                 3,000  random tables" in lines
    assert "                3 of 4  gaps found" in lines
    assert "                    10  evaluations in all, compared bit for bit: 0 mismatches" in lines


@pytest.mark.parametrize("options", [("--no-browser",), ("--deep", "--deep-divided-by=5")], ids=" ".join)
def test_two_workers_report_what_one_process_does(run, options):
    """To the letter, from the first thing measured to pytest's closing line: what each counted is added up, nothing twice."""
    alone, shared = run(*options), run(*options, *TWO_WORKERS)
    assert "created: 2/2 workers" in shared
    assert closing(shared) == closing(alone) != []


def closing(lines: list[str]) -> list[str]:
    """The report of a run, without the closing line, which has the seconds in it, and without empty lines."""
    start = next(place for place, line in enumerate(lines) if "measured in this run" in line)
    return [line for line in lines[start:-1] if line]


def test_a_missing_browser_fails_a_browser_test(run, monkeypatch):
    """Nothing is skipped."""
    monkeypatch.setenv("PATH", "/nowhere")
    monkeypatch.setenv("PRUNING_GUIDE_BROWSER", "/no/such/browser")
    lines = run()
    assert "1 error" in lines[-1] and "skipped" not in lines[-1]
    assert any("names /no/such/browser, which is not a program" in line for line in lines)
