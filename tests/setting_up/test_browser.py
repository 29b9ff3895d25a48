"""Finding a browser: the one named, then the path, then Debian's package, then the test library's own, then a clear word."""

import subprocess
import sys

import pytest

from generator.setting_up import browser
from generator.setting_up.telling import Stop

NO_LIBRARY = "import sys\nprint('no network')\nsys.exit(1)\n"


@pytest.fixture
def bare(monkeypatch, tmp_path):
    """A machine without any browser, and without a way to get one; gives the folder that is its whole path."""
    folder = tmp_path / "path"
    folder.mkdir()
    monkeypatch.setenv("PATH", str(folder))
    monkeypatch.delenv(browser.VARIABLE, raising=False)
    monkeypatch.setattr(browser, "APPLICATIONS", (str(tmp_path / "Chrome.app"),))
    monkeypatch.setattr(browser, "is_debian", lambda: False)
    library = tmp_path / "library/playwright"
    library.mkdir(parents=True)
    (library / "__init__.py").write_text("")
    (library / "__main__.py").write_text(NO_LIBRARY)
    monkeypatch.setenv("PYTHONPATH", str(library.parent))
    return folder


def put(path, text="exit 0"):
    """A program at path."""
    path.write_text(f"#!/bin/sh\n{text}\n")
    path.chmod(0o755)
    return str(path)


def test_the_one_named_by_the_variable_comes_first(bare, monkeypatch, tmp_path):
    """A person's choice is not second-guessed."""
    put(bare / "chromium")
    monkeypatch.setenv(browser.VARIABLE, put(tmp_path / "mine"))
    assert browser.find_or_install() == str(tmp_path / "mine")


def test_a_wrong_choice_is_said_and_not_passed_over(bare, monkeypatch):
    """Testing another browser than the one asked for would be a quiet lie."""
    put(bare / "chromium")
    monkeypatch.setenv(browser.VARIABLE, "/no/such/browser")
    with pytest.raises(Stop, match="names /no/such/browser, which is not a program"):
        browser.find_or_install()


@pytest.mark.parametrize("name", browser.NAMES)
def test_one_on_the_path_is_found(bare, name):
    """Under every name that it goes by."""
    path = put(bare / name)
    assert browser.find_or_install() == path


def test_an_application_of_macos_is_found(bare, tmp_path):
    """Applications there are not on the path."""
    path = put(tmp_path / "Chrome.app")
    assert browser.find_or_install() == path


def test_as_root_on_debian_its_package_is_installed(bare, monkeypatch):
    """apt-get is asked, and what it brought is used."""
    monkeypatch.setattr(browser, "is_debian", lambda: True)
    monkeypatch.setattr(browser, "is_root", lambda: True)
    script = f'echo "$@" >> {bare}/asked\nprintf "#!/bin/sh\\n" > {bare}/chromium\n/bin/chmod +x {bare}/chromium'
    put(bare / "apt-get", script)
    assert browser.find_or_install() == str(bare / "chromium")
    asked = (bare / "asked").read_text().splitlines()
    assert asked[0] == "update" and "chromium" in asked[1]


def test_when_debian_cannot_the_test_library_is_asked(bare, monkeypatch, capsys):
    """A failure on the way is told, and the next way is tried."""
    monkeypatch.setattr(browser, "is_debian", lambda: True)
    monkeypatch.setattr(browser, "is_root", lambda: True)
    put(bare / "apt-get", "echo no archive; exit 100")
    with pytest.raises(Stop):
        browser.find_or_install()
    told = capsys.readouterr().err
    assert "apt-get could not install Chromium (no archive)" in told
    assert "The test library could not fetch a browser (no network)" in told


def test_the_test_librarys_own_is_used(bare, tmp_path):
    """What it fetched is asked for by its own path."""
    own = put(tmp_path / "own-chromium")
    library = tmp_path / "library/playwright"
    (library / "__main__.py").write_text("")
    (library / "sync_api.py").write_text(
        "class own:\n    chromium = property(lambda self: self)\n"
        f"    executable_path = {own!r}\n    stop = lambda self: None\n    start = lambda self: self\nsync_playwright = own\n"
    )
    assert browser.find_or_install() == own


@pytest.mark.parametrize(
    ("text", "answer"),
    [("ID=debian", True), ('ID=raspbian\nID_LIKE="debian"', True), ("ID=ubuntu\nID_LIKE=debian", False), ("ID=fedora", False)],
)
def test_debian_is_known_by_its_release_file(tmp_path, text, answer):
    """Ubuntu's package of that name is only a pointer to another store, so it does not count."""
    (tmp_path / "release").write_text(text)
    assert browser.is_debian(str(tmp_path / "release")) is answer


def test_without_any_the_command_says_exactly_what_to_do(bare, project_root):
    """The test command ends with one line: the package, the variable, and how to go on without."""
    start = (
        "import runpy, sys; from generator.setting_up import browser; browser.APPLICATIONS = (); "
        "sys.argv[1:] = ['test']; runpy.run_module('generator.cli', run_name='__main__')"
    )
    done = subprocess.run([sys.executable, "-c", start], cwd=project_root, capture_output=True, text=True, check=False)
    line = done.stderr.splitlines()[-1]
    assert done.returncode == 1
    assert line == f"error: {browser.MISSING}"
    assert all(word in line for word in ("sudo apt-get install chromium", browser.VARIABLE, "test --no-browser"))
