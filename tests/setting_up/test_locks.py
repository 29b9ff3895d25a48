"""The locks: every package with its hashes, one version for all Pythons, no address, and the pins that matter."""

import re
import tomllib

import pytest

LOCKS = ("guide.lock", "test.lock")
PIN = re.compile(r"^([a-z0-9-]+)==(\S+)( ; .*)? \\$")


def pins(path) -> dict[str, str]:
    """Package name -> version, of a lock."""
    return {match[1]: match[2] for line in path.read_text().splitlines() if (match := PIN.match(line))}


@pytest.mark.parametrize("name", LOCKS)
def test_every_package_has_a_hash(project_root, name):
    """Every line is a pin followed by hashes, or a comment."""
    lines = (project_root / name).read_text().splitlines()
    assert pins(project_root / name)
    for line, following in zip(lines, [*lines[1:], ""]):
        assert PIN.match(line) or line.lstrip().startswith(("#", "--hash=sha256:")), line
        assert not PIN.match(line) or following.startswith("    --hash=sha256:"), line


@pytest.mark.parametrize("name", LOCKS)
def test_no_address_is_in_a_lock(project_root, name):
    """Each machine asks its own index; none is written down."""
    assert "://" not in (project_root / name).read_text()


@pytest.mark.parametrize("name", LOCKS)
def test_two_pythons_get_the_same_versions(project_root, name):
    """No package is pinned twice, and no marker looks at the last number of a Python's version."""
    text = (project_root / name).read_text()
    named = [match[1] for line in text.splitlines() if (match := PIN.match(line))]
    assert len(named) == len(set(named))
    assert not re.search(r"python_full_version [<>=]+ '\d+\.\d+\.[1-9]", text)


def test_the_test_lock_holds_the_guides(project_root):
    """So an environment for the tests serves the pages just the same."""
    assert pins(project_root / "guide.lock").items() <= pins(project_root / "test.lock").items()


def test_serving_does_not_bring_the_tests_tools(project_root):
    """They are hundreds of megabytes that a grower or author has no use for."""
    assert not {"scipy", "playwright", "pytest", "mini-racer", "numpy"} & set(pins(project_root / "guide.lock"))


def test_what_the_project_asks_for_is_locked(project_root):
    """Every exact pin of pyproject.toml is the version in the lock; the rest is there at all."""
    project = tomllib.loads((project_root / "pyproject.toml").read_text())["project"]
    locked = pins(project_root / "test.lock")
    wanted = [*project["dependencies"], *(one for extra in project["optional-dependencies"].values() for one in extra)]
    for requirement in wanted:
        name, sign, version = re.match(r"([\w-]+)(==|>=)([\d.]+)", requirement).groups()
        assert name.lower().replace("_", "-") in locked
        assert sign != "==" or locked[name.lower()] == version
